#!/bin/sh
# SPDX-License-Identifier: ISC
# Runs every tamis command that README.md shows in a fenced block, from the
# top of the tree; each must end with status 0 or 1.
#   sh tests/readme.sh BUILD_FOLDER
set -u

PATH=$(cd "$1" && pwd):$PATH
list=$1/readme.commands
awk '/^```/ {inside = !inside; next}
  inside && /^(\$ )?tamis / {sub(/^\$ /, ""); print}' README.md >"$list"
[ -s "$list" ] || { echo "readme: README.md shows no tamis command" >&2; exit 1; }

failed=0
while read -r line; do
  sh -c "$line" </dev/null >"$1/readme.out" 2>&1
  status=$?
  [ "$status" -le 1 ] && continue
  echo "readme: status $status: $line" >&2
  cat "$1/readme.out" >&2
  failed=1
done <"$list"
[ "$failed" = 0 ] && echo "readme: $(wc -l <"$list") commands run"
exit "$failed"
