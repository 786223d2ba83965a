#!/bin/sh
# SPDX-License-Identifier: ISC
# Shows each golden file that today's output differs from, asks, and takes the
# output where the answer is y. The outputs are from the last test_cases.
#   sh tests/bless.sh BUILD/cases
set -u

taken=0 left=0
for out in "$1"/*/*; do
  golden=tests/cases/${out#"$1"/}
  [ -e "$golden" ] || continue
  cmp -s "$golden" "$out" && continue
  diff -u "$golden" "$out"
  printf 'Take this as %s? [y/N] ' "$golden"
  read -r answer || answer=n
  case $answer in
    y* | Y*)
      cp "$out" "$golden"
      taken=$((taken + 1))
      ;;
    *) left=$((left + 1)) ;;
  esac
done
echo "bless: $taken taken, $left left as they were"
