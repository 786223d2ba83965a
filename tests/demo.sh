#!/bin/sh
# SPDX-License-Identifier: ISC
# The tour: drafts the example episode into BUILD/demo/, then shows what was
# found in it and its first recipe.
#   sh tests/demo.sh BUILD_FOLDER
set -eu

tamis=$1/tamis
episode=examples/galley/episode.txt
out=$1/demo
mkdir -p "$out"

"$tamis" write --output "$out/galley.md" "$episode"
"$tamis" write --format json --output "$out/galley.json" "$episode"

echo "== tamis check $episode"
echo
# Status 1 says that there are findings, which is what this episode is for.
"$tamis" check "$episode" || [ $? = 1 ]
echo
echo "== the first recipe of $out/galley.md"
echo
awk '/^# / && ++dishes == 2 {exit} !/^---$/ {print}' "$out/galley.md"
echo "== written: $out/galley.md $out/galley.json"
