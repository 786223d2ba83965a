#!/bin/sh
# SPDX-License-Identifier: ISC
# Prints the C source that builds the grammar files named on the command line
# (grammars/en/foods.lex ...) into the program; see src/grammar/embedded.h.
set -eu

echo '#include "grammar/embedded.h"'
i=0
for f; do
  cat <<END
extern const char tamis_embedded_$i[];
__asm__(".pushsection .rodata\n.hidden tamis_embedded_$i\n.global tamis_embedded_$i\n"
        "tamis_embedded_$i: .incbin \"$f\"\n.byte 0\n.popsection\n");
END
  i=$((i + 1))
done
echo 'const struct embedded_file tamis_embedded[] = {'
i=0
for f; do
  printf '\t{"%s", {tamis_embedded_%d, %d}},\n' "${f#grammars/}" "$i" "$(wc -c < "$f")"
  i=$((i + 1))
done
printf '\t{0}\n};\n'
