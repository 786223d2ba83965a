#!/bin/sh
# SPDX-License-Identifier: ISC
# Validates the JSON draft of every script of corpus/, examples/ and
# tests/cases/ against src/write/draft.schema.json with python3-jsonschema.
#   sh tests/conformance/schema.sh BUILD_FOLDER
set -eu

build=$1
schema=src/write/draft.schema.json
out=$build/schema
python=$(sh tests/conformance/python.sh)
rm -rf "$out"
mkdir -p "$out"

set --
n=0
for script in corpus/*.* examples/*/episode.* tests/cases/*/input.*; do
  case $script in
    *.tsv | *.md.gold | *\**) continue ;;
  esac
  n=$((n + 1))
  "$build/tamis" write --format json --output "$out/$n.json" "$script"
  set -- "$@" -i "$out/$n.json"
done
[ "$n" -gt 0 ] || { echo "no script to validate" >&2; exit 1; }
"$python" -W ignore -m jsonschema "$@" "$schema"
echo "schema: $n drafts are as $schema says"
