#!/bin/sh
# SPDX-License-Identifier: ISC
# Everything about the sources that a machine can check; prints each breach
# and fails when there is one.
#   sh tests/lint.sh BUILD_FOLDER FILE.c|FILE.h...
set -u

build=$1
shift
breaches=0

# Layers are for src/; the rest is for every file.
c_files=$(for f; do case $f in src/*) echo "$f" ;; esac; done)

awk -f src/layers.awk $c_files || breaches=1
awk -f tests/lint.awk "$@" || breaches=1

# What the grammar says and nobody reads.
awk -f tests/unused.awk $c_files src/*.def grammars/*/*.gram grammars/*/*.lex \
  grammars/tables/*.tsv || breaches=1

# At most 16 .c files in a folder.
for folder in src src/*/; do
  n=$(find "$folder" -maxdepth 1 -name '*.c' | wc -l)
  if [ "$n" -gt 16 ]; then
    echo "$folder: $n .c files; at most 16"
    breaches=1
  fi
done

# Files that are no C need their licence line too.
for f in src/*.def src/*/*.def tests/*.sh tests/*/*.sh .ci/run Makefile; do
  [ -e "$f" ] || continue
  head -n 2 "$f" | grep -q 'SPDX-License-Identifier: ISC' && continue
  echo "$f:1: no SPDX-License-Identifier: ISC"
  breaches=1
done

# Mutable globals: any object in a writable section but relocated constants.
find "$build/obj/src" -name '*.o' | sort | while read -r o; do
  nm -f sysv "$o" | awk -F '|' -v o="$o" '
    { gsub(/ /, "", $7) }
    $7 ~ /^\.(data|bss|tdata|tbss)|^\*COM\*/ && $7 !~ /^\.data\.rel\.ro/ {
      print o ": mutable: " $1 " in " $7
    }'
done >"$build/mutable"
if [ -s "$build/mutable" ]; then
  cat "$build/mutable"
  breaches=1
fi

clang-format --dry-run -Werror "$@" 2>"$build/format" || {
  grep 'error:' "$build/format"
  breaches=1
}

[ "$breaches" = 0 ] && echo "lint: clean"
exit "$breaches"
