#!/bin/sh
# SPDX-License-Identifier: ISC
# The unit tests named on the command line and the drafting of every script of
# corpus/ and examples/ under valgrind; fails at the first error or leak. B is
# the build folder. test_cases, test_cli and test_archive_search run the
# program, which is what the scripts are for; test_hostile is timed, and for the
# sanitizers.
set -eu

check() {
  valgrind --quiet --error-exitcode=9 --leak-check=full --errors-for-leak-kinds=all "$@"
}

for t; do
  case $t in
    */test_cases | */test_cli | */test_hostile | */test_archive_search) continue ;;
  esac
  echo "valgrind: $t"
  check "$t" >"$B/valgrind.log" 2>&1 || { cat "$B/valgrind.log"; exit 1; }
done
for script in corpus/*.* examples/*/episode.*; do
  case $script in
    *.tsv | *.answers) continue ;;
  esac
  echo "valgrind: $script"
  check "$B/tamis" write "$script" >/dev/null
  check "$B/tamis" write --format json "$script" >/dev/null
  check "$B/tamis" check "$script" >/dev/null || [ $? = 1 ]
done
echo "valgrind: clean"
