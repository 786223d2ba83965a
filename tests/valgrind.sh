#!/bin/sh
# SPDX-License-Identifier: ISC
# The unit tests named on the command line and the drafting of the whole
# corpus under valgrind; fails at the first error or leak. B is the build
# folder.
set -eu

# PCRE2's compiled patterns read whole blocks past the end of a subject, which
# valgrind takes for a fault; its interpreter does not.
check() {
  valgrind --quiet --error-exitcode=9 --leak-check=full --errors-for-leak-kinds=all \
    --suppressions=tests/valgrind.supp "$@"
}

set -- "$@"
for t; do
  case $t in
    */test_cases | */test_cli) continue ;; # these run the program; see below
  esac
  echo "valgrind: $t"
  check "$t" 2>&1 | tail -n 2
done
for script in corpus/*.* examples/*/episode.*; do
  case $script in
    *.tsv) continue ;;
  esac
  echo "valgrind: $script"
  check "$B/tamis" write "$script" >/dev/null
  check "$B/tamis" check "$script" >/dev/null || [ $? = 1 ]
done
echo "valgrind: clean"
