#!/bin/sh
# SPDX-License-Identifier: ISC
# Lines that a run of the tests reached, by file, the least covered first.
#   sh tests/cover.sh BUILD_FOLDER
set -eu

cd "$1"
find obj/src -name '*.gcda' | sort | while read -r data; do
  gcov --no-output --object-directory "$(dirname "$data")" "$data" 2>/dev/null
done | awk '
  /^File / {
    file = $2
    gsub(/\047/, "", file)
  }
  /^Lines executed:/ {
    if (file ~ /^src\/.*\.c$/ && !(file in seen)) {
      split($0, part, /[:%]| of /)
      printf "%6.1f %% of %5d  %s\n", part[2], part[4], file
      reached += part[2] * part[4] / 100
      all += part[4]
      seen[file] = 1
    }
  }
  END {
    if (all)
      printf "%6.1f %% of %5d  all\n", 100 * reached / all, all
  }' | sort -n
