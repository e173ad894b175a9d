#!/usr/bin/env bash
# Prints the reports of the invented gym in headless Chromium, checks that each is one page of A4, and keeps a picture of
# the week's: docs/draw-report.sh PROGRAM [FOLDER]. For it: apt-get install chromium poppler-utils
# What standard S25 of docs/screen.md says of paper.
set -euo pipefail
[ $# -ge 1 ] || { sed -n '2,3s/^# \{0,1\}//p' "$0" >&2; exit 64; }
program=$1 into=${2:-$(dirname "${BASH_SOURCE[0]}")/pictures}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

print() { # print NAME OPTION...
  local name=$1
  shift
  RACKSIDE_CLOCK=2026-11-25T18:00 "$program" report --demo "$@" --out "$work/$name.html"
  chromium --headless --no-sandbox --disable-gpu --no-first-run --disable-background-networking --user-data-dir="$work/profile" \
    --no-pdf-header-footer --print-to-pdf="$work/$name.pdf" "file://$work/$name.html" >/dev/null 2>&1
  pdfinfo "$work/$name.pdf" | grep -qE '^Pages: +1$' || { echo "$name: more than one page" >&2; exit 1; }
  pdfinfo "$work/$name.pdf" | grep -q 'A4' || { echo "$name: not A4" >&2; exit 1; }
  # Every word lies inside the page: bounding boxes of the text layer against its size in points.
  pdftotext -bbox "$work/$name.pdf" - | awk -F'"' '/<word/ && ($2 < 0 || $4 < 0 || $6 > 595.3 || $8 > 842) { print "outside the page: " $0; bad = 1 } END { exit bad }'
}

print week --week 2026-W47
print month --month 2026-11
print sheet --paper
pdftoppm -r 70 -png -singlefile "$work/week.pdf" "$into/week-report"
echo "three pages, each one sheet of A4; $into/week-report.png"
