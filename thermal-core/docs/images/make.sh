#!/bin/sh
# Makes the README's picture: figure 1 of the report of the boathouse cook, with the report's own style
# sheet inside, so that it shows in light and dark by itself.
set -eu
images=$(CDPATH='' cd -P "$(dirname "$0")" && pwd)
root=$images/../../..
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
"$root/harness/roastfield" simulate "$root/datasets/cooks/boathouse-pork-loin/cook.yaml" --out "$out" >/dev/null
awk -v css="$root/harness/lab/src/main/resources/org/roastfield/lab/report/figure.css" '
  /<svg/ { inside = 1 }
  inside { print }
  /<svg/ {
    print "<style>"
    while ((getline line < css) > 0) print line
    print "</style>"
  }
  /<\/svg>/ { exit }
' "$out/report.html" >"$images/boathouse-pork-loin.svg"
