/* SPDX-License-Identifier: ISC */
/*
 * What single characters mean to the lexer. Only scan/token.c includes this.
 */
#ifndef TAMIS_GLYPH_H
#define TAMIS_GLYPH_H

#include "base/ratio.h"

/* Each looks at the front of s (not empty) and sets *n to the bytes used. */
bool glyph_is_letter(struct str s, size_t *n);
bool glyph_is_apostrophe(struct str s, size_t *n);
/* ½ ⅔ ⅛ ... */
bool glyph_vulgar(struct str s, struct ratio *value, size_t *n);
/* The folded form of a punctuation mark or sign, "" for one without meaning.
 * A double quote or prime after digits is an inch mark. */
struct str glyph_mark(struct str s, bool after_digits, size_t *n);

#endif
