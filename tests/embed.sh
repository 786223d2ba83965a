#!/bin/sh
# SPDX-License-Identifier: ISC
# Prints the C source that builds files into the program as a table of them;
# see src/grammar/embedded.h and src/page/assets.h.
#   sh tests/embed.sh TABLE HEADER FOLDER/ FILE...
# FOLDER/ is taken off the files' names.
set -eu

table=$1 header=$2 folder=$3
shift 3
echo "#include \"$header\""
i=0
for f; do
  cat <<END
extern const char ${table}_$i[];
__asm__(".pushsection .rodata\n.hidden ${table}_$i\n.global ${table}_$i\n"
        "${table}_$i: .incbin \"$f\"\n.byte 0\n.popsection\n");
END
  i=$((i + 1))
done
echo "const struct embedded_file ${table}[] = {"
i=0
for f; do
  printf '\t{"%s", {%s_%d, %d}},\n' "${f#"$folder"}" "$table" "$i" "$(wc -c < "$f")"
  i=$((i + 1))
done
printf '\t{0}\n};\n'
