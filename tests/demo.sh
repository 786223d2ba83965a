#!/bin/sh
# SPDX-License-Identifier: ISC
# The tour: drafts the example episode into BUILD/demo/, shows what was found in
# it and its first recipe, and then what the author's answers make of both.
#   sh tests/demo.sh BUILD_FOLDER
set -eu

tamis=$1/tamis
episode=examples/galley/episode.txt
answers=examples/galley/episode.answers
out=$1/demo
mkdir -p "$out"

"$tamis" write --answers /dev/null --output "$out/asked.md" "$episode"
"$tamis" write --output "$out/galley.md" "$episode"
"$tamis" write --format json --output "$out/galley.json" "$episode"
"$tamis" write --format pickups --output "$out/pickups.md" "$episode"

echo "== what is asked: tamis check --answers /dev/null $episode"
echo
# Status 1 says that there are findings, which is what this episode is for.
"$tamis" check --answers /dev/null "$episode" || [ $? = 1 ]
echo
echo "== the first recipe of $out/galley.md"
echo
awk '/^# / && ++dishes == 2 {exit} !/^---$/ {print}' "$out/galley.md"
echo "== what the author answers: $answers"
echo
grep -v '^#' "$answers" | grep .
echo
echo "== with that: tamis check $episode"
echo
status=0
"$tamis" check "$episode" || status=$?
echo "status $status"
echo
echo "== and the recipes have the answers in them:"
echo
diff "$out/asked.md" "$out/galley.md" || [ $? = 1 ]
echo
echo "== written: $out/galley.md $out/galley.json $out/pickups.md"
