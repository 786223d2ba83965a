/* SPDX-License-Identifier: ISC */
/*
 * Comparing names as the score does: by their words, without case, accents
 * or plural endings. Every str here is folded first.
 */
#ifndef TAMIS_TESTS_WORDS_H
#define TAMIS_TESTS_WORDS_H

#include "base/arena.h"

/* Lower case, no accents, nothing from the first comma or bracket on. */
struct str words_fold(struct arena *a, struct str s);
/* "tortilla" and "tortillas", "leaf" and "leaves". */
bool words_same(struct str a, struct str b);
struct str words_first(struct str s);
struct str words_last(struct str s);
bool words_have(struct str s, struct str word);
/* How many words of a stand in b. */
size_t words_shared(struct str a, struct str b);

#endif
