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

#endif
