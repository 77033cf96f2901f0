#!/bin/sh
# Whole runs on the one-bedroom example, cold, side by side with LibreOffice recalculating the same
# result workbook. Prints each run, then medians, peak memory and the ratio. Usage: cold-run.sh [runs]
set -eu
runs=${1:-7}
home=$(CDPATH= cd -- "$(dirname -- "$0")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir -p "$work/office/user"
cat > "$work/office/user/registrymodifications.xcu" <<'XCU'
<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>
XCU
plan() {
  "$home/runner/bin/cornerpost" plan "$home/workbook-templates/one-bedroom-40hc.xlsx" --out "$work/out"
}
recalculate() {
  soffice --headless --norestore "-env:UserInstallation=file://$work/office" \
    --convert-to 'xlsx:Calc MS Excel 2007 XML' --outdir "$work/again" \
    "$work/out/one-bedroom-40hc-plan.xlsx"
}
timed() { # name, then the command in a shell function; writes "seconds kilobytes" to a list
  /usr/bin/time -f '%e %M' -o "$work/one" sh -c "$2" >/dev/null 2>&1
  cat "$work/one" >> "$work/$1"
  echo "$1: $(cat "$work/one")"
}
plan >/dev/null 2>&1        # builds and practises, if that is still to do
recalculate >/dev/null 2>&1 # makes the office profile
plan_line="'$home/runner/bin/cornerpost' plan '$home/workbook-templates/one-bedroom-40hc.xlsx' --out '$work/out'"
office_line="soffice --headless --norestore '-env:UserInstallation=file://$work/office' --convert-to 'xlsx:Calc MS Excel 2007 XML' --outdir '$work/again' '$work/out/one-bedroom-40hc-plan.xlsx'"
i=0
while [ "$i" -lt "$runs" ]; do
  timed cornerpost "$plan_line"
  timed libreoffice "$office_line"
  i=$((i + 1))
done
median() { sort -n "$1" | awk '{a[NR]=$1} END {print a[int((NR+1)/2)]}'; }
peak() { awk '{if ($2>m) m=$2} END {printf "%.0f", m/1024}' "$1"; }
a=$(median "$work/cornerpost")
b=$(median "$work/libreoffice")
echo "median: cornerpost $a s, libreoffice $b s, ratio $(echo "$a $b" | awk '{printf "%.2f", $1/$2}')"
echo "peak memory: cornerpost $(peak "$work/cornerpost") MB, libreoffice $(peak "$work/libreoffice") MB"
