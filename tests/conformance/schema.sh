#!/bin/sh
# SPDX-License-Identifier: ISC
# Validates the JSON draft of every script of corpus/, examples/ and
# tests/cases/ with schema.py.
#   sh tests/conformance/schema.sh BUILD_FOLDER
set -eu

build=$1
out=$build/schema
python=$(sh tests/conformance/python.sh)
rm -rf "$out"
mkdir -p "$out"

set --
for script in corpus/*.* examples/*/episode.* tests/cases/*/input.*; do
  [ -e "$script" ] || continue
  case $script in
    *.tsv | *.answers) continue ;;
  esac
  json=$out/$(echo "$script" | tr / -).json
  "$build/tamis" write --format json --output "$json" "$script"
  set -- "$@" "$json"
done
[ $# -gt 0 ] || { echo "schema: there is no script to validate" >&2; exit 1; }
"$python" tests/conformance/schema.py "$@"
echo "schema: $# drafts are as src/write/draft.schema.json says"
