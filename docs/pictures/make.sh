#!/bin/sh
# Makes the pictures of the documentation from the examples.
# Needs Chromium, LibreOffice Calc, pdftoppm, and Python 3 with Pillow.
set -eu
here=$(CDPATH= cd -- "$(dirname -- "$0")" && pwd)
home=$(CDPATH= cd -- "$here/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
"$home/runner/bin/cornerpost" plan "$home/workbook-templates/one-bedroom-40hc.xlsx" --out "$work" >/dev/null
chromium --headless --no-sandbox --disable-gpu --no-first-run --disable-background-networking \
  --user-data-dir="$work/profile" --hide-scrollbars --window-size=1100,2000 \
  --screenshot="$work/page.png" "file://$work/one-bedroom-40hc-plan.html" >/dev/null 2>&1
soffice --headless --norestore "-env:UserInstallation=file://$work/office" --convert-to pdf \
  --outdir "$work" "$work/one-bedroom-40hc-plan.xlsx" >/dev/null 2>&1
summary=$(pdftotext -layout "$work/one-bedroom-40hc-plan.pdf" - | grep -o 'Summary, page [0-9]*' | head -n 1 | grep -o '[0-9]*$')
pdftoppm -r 90 -f "$summary" -l "$summary" -singlefile -png "$work/one-bedroom-40hc-plan.pdf" "$work/summary"
"$home/runner/bin/cornerpost" plan "$home/workbook-templates/mid-build-late-delivery.xlsx" --out "$work" >/dev/null
sed 's#<head>#<head><style>main>section:not(\#moving),header.title-block,nav,footer{display:none!important}</style>#' \
  "$work/mid-build-late-delivery-plan.html" > "$work/late.html"
chromium --headless --no-sandbox --disable-gpu --no-first-run --disable-background-networking \
  --user-data-dir="$work/profile" --hide-scrollbars --window-size=1100,760 \
  --screenshot="$work/late.png" "file://$work/late.html" >/dev/null 2>&1
python3 - "$work" "$here" <<'PY'
import sys
from PIL import Image
work, here = sys.argv[1:]
page = Image.open(work + "/page.png").convert("RGB")
page.crop((0, 0, 1100, 1500)).quantize(64).save(here + "/one-bedroom-page.png", optimize=True)
late = Image.open(work + "/late.png").convert("RGB")
late.crop((0, 60, 1100, 740)).quantize(64).save(here + "/late-box.png", optimize=True)
summary = Image.open(work + "/summary.png").convert("RGB")
summary.quantize(64).save(here + "/one-bedroom-summary-sheet.png", optimize=True)
PY
