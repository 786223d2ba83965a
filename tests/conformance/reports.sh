#!/bin/sh
# SPDX-License-Identifier: ISC
# Validates what `tamis check` prints for programs over every script of
# corpus/, examples/ and tests/cases/, each by itself and all in one document,
# with reports.py.
#   sh tests/conformance/reports.sh BUILD_FOLDER
set -eu

build=$1
out=$build/reports
python=$(sh tests/conformance/python.sh)
rm -rf "$out"
mkdir -p "$out"

# Status 1 says that there are findings.
report() {
  format=$1 to=$2
  shift 2
  "$build/tamis" check --format "$format" "$@" >"$to" || [ $? = 1 ]
}

scripts=0 all=
for script in corpus/*.* examples/*/episode.* tests/cases/*/input.*; do
  case $script in
    *.tsv | *.answers | *'*'*) continue ;;
  esac
  scripts=$((scripts + 1))
  all="$all $script"
  for format in json sarif; do
    report "$format" "$out/$(echo "$script" | tr / -).$format" "$script"
  done
done
[ "$scripts" -gt 0 ] || { echo "reports: there is no script" >&2; exit 1; }
for format in json sarif; do
  report "$format" "$out/all.$format" $all
done
"$build/tamis" check --format sarif no-such-file >"$out/unread.sarif" 2>/dev/null ||
  [ $? = 2 ]
"$python" tests/conformance/reports.py "$out"/*
echo "reports: $scripts scripts, as json and sarif, are as their schemas say"
