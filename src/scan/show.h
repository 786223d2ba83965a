/* SPDX-License-Identifier: ISC */
/*
 * The chart as text, for a person who wonders why a word was taken or missed.
 */
#ifndef TAMIS_SHOW_H
#define TAMIS_SHOW_H

#include "scan/chart.h"

/* One line per token, in columns: the time of its cue where it is the first of
 * it, the word, its classes, and what it became in each pass that took it:
 *
 *     0:21  butter    FOOD FOOD.dairy WORD    food.plain -> INGREDIENT
 */
void chart_show(struct buf *out, const struct chart *c);

/* Words of a script: those of one time, all that read so, or both. */
struct sought {
	int64_t at_ms;   /* of the cues at or last before it; -1: any */
	struct str word; /* any case; empty: every word */
};

/* Those words alone, and below each the rules that began there and made nothing,
 * with a word all, else those that took more than one:
 *
 *              - ingredient.of -> ING: took butter, then wanted <AMT>, not to
 *
 * False where there is no such word. The chart is as before afterwards. */
bool chart_show_spot(struct buf *out, struct chart *c, struct sought spot);

#endif
