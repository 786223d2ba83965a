/* SPDX-License-Identifier: ISC */
/*
 * Folding a word so that spellings of it compare equal: compatibility
 * composition, case folding, accents off, typographic quotes straight.
 */
#ifndef TAMIS_FOLD_H
#define TAMIS_FOLD_H

#include "base/arena.h"

/* The folded form of s in the arena, or s itself where it is folded already.
 * Bytes that are no UTF-8 are kept as they are. */
struct str fold_word(struct arena *a, struct str s);

/* Decodes one code point at s.p[0..]; *n is the bytes it takes (at least 1).
 * A byte that begins no character gives -1. s must not be empty. */
int32_t fold_decode(struct str s, size_t *n);

#endif
