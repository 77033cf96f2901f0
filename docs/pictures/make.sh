#!/bin/sh
# Makes the pictures of the documentation from the examples.
# Needs Chromium, LibreOffice Calc, pdftoppm, pdftotext, and Python 3 with Pillow.
set -eu
here=$(CDPATH= cd -- "$(dirname -- "$0")" && pwd)
home=$(CDPATH= cd -- "$here/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

plan() { # example
  "$home/runner/bin/cornerpost" plan "$home/workbook-templates/$1.xlsx" --out "$work" >/dev/null
}

# A page, or one section of it with what it holds besides left out, as the browser draws it.
page() { # example, section or "all", what to hide in it or "nothing", picture
  style=''
  if [ "$2" != all ]; then
    style="main>section:not(#$2),header.title-block,nav,footer{display:none!important}"
    style="$style section{border:0!important;margin:0!important}"
  fi
  if [ "$3" != nothing ]; then style="$style $3{display:none!important}"; fi
  sed "s|<head>|<head><style>$style</style>|" "$work/$1-plan.html" > "$work/shown.html"
  chromium --headless --no-sandbox --disable-gpu --no-first-run --disable-background-networking \
    --user-data-dir="$work/profile" --hide-scrollbars --window-size=1100,3000 \
    --screenshot="$work/$4.png" "file://$work/shown.html" >/dev/null 2>&1
}

pdf() { # workbook
  soffice --headless --norestore "-env:UserInstallation=file://$work/office" --convert-to pdf \
    --outdir "$work" "$1" >/dev/null 2>&1
}

# The first page of a sheet as LibreOffice prints it; sheets are told by their foot.
sheet() { # pdf, foot of its first page, picture
  pages=$(pdfinfo "$1" | sed -n 's/^Pages: *//p')
  number=1
  while [ "$number" -le "$pages" ]; do
    if pdftotext -f "$number" -l "$number" -layout "$1" - | grep -q "$2"; then break; fi
    number=$((number + 1))
  done
  pdftoppm -r 110 -f "$number" -l "$number" -singlefile -png "$1" "$work/$3"
}

plan one-bedroom-40hc
page one-bedroom-40hc all nothing one-bedroom-page
pdf "$work/one-bedroom-40hc-plan.xlsx"
sheet "$work/one-bedroom-40hc-plan.pdf" '^ *Openings  ' owner-openings-sheet
sheet "$work/one-bedroom-40hc-plan.pdf" 'Summary, page' one-bedroom-summary-sheet

plan mid-build-late-delivery
page mid-build-late-delivery moving nothing late-box
page mid-build-late-delivery ahead nothing contractor-next-weeks
pdf "$work/mid-build-late-delivery-plan.xlsx"
sheet "$work/mid-build-late-delivery-plan.pdf" 'Bar chart, page' contractor-bar-chart-sheet

plan lender-review
page lender-review review nothing lender-review-page

# Cut to what is drawn on, at most so high, in few colours.
python3 - "$work" "$here" <<'PY'
import sys
from PIL import Image, ImageChops

work, here = sys.argv[1:]
heights = {
    "one-bedroom-page": 1500,
    "owner-openings-sheet": 620,
    "one-bedroom-summary-sheet": 1300,
    "late-box": 525,
    "contractor-next-weeks": 700,
    "contractor-bar-chart-sheet": 900,
    "lender-review-page": 1400,
}
for name, most in heights.items():
    shown = Image.open(f"{work}/{name}.png").convert("RGB")
    ground = Image.new("RGB", shown.size, shown.getpixel((2, 2)))
    left, top, right, bottom = ImageChops.difference(shown, ground).getbbox()
    edge = 24
    box = (max(0, left - edge), max(0, top - edge), min(shown.width, right + edge),
           min(shown.height, bottom + edge, top + most))
    shown.crop(box).quantize(64).save(f"{here}/{name}.png", optimize=True)
PY
