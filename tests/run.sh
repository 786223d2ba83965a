#!/bin/sh
# SPDX-License-Identifier: ISC
# Runs the commands of README.md, the JSON Schema checks, and the unit tests
# named on the command line, test_cases last; fails when one of them failed. B
# is the build folder.
set -u

failed=
sh tests/readme.sh "$B" || failed="$failed readme"
sh tests/conformance/schema.sh "$B" || failed="$failed schema"
sh tests/conformance/reports.sh "$B" || failed="$failed reports"
last=
for t; do
  case $t in
    */test_cases) last=$t ;;
    *) "$t" || failed="$failed $(basename "$t")" ;;
  esac
done
[ -z "$failed" ] || echo "tests: failed:$failed" >&2
if [ -n "$last" ]; then
  "$last" || failed="$failed test_cases"
fi
[ -z "$failed" ]
