/* SPDX-License-Identifier: ISC */
/*
 * Words and fractions as the house prints them.
 */
#ifndef TAMIS_WORDS_H
#define TAMIS_WORDS_H

#include "house/house.h"

/* Puts the text in the house's spelling, by spelling.tsv, and its fractions in
 * plain digits where the house has no glyphs: "1 1/2 liters". */
void words_put(struct buf *b, const struct house *h, struct str text);
/* The same as a text of its own. */
struct str words_styled(struct arena *a, const struct house *h, struct str text);

#endif
