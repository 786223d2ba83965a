/* SPDX-License-Identifier: ISC */
/*
 * The chart as text, for a person who wonders why a word was taken or missed.
 */
#ifndef TAMIS_SHOW_H
#define TAMIS_SHOW_H

#include "scan/chart.h"

/* One line per top node: its words, and the nested rules that made it. */
void chart_show(struct buf *out, const struct chart *c);
/* One line per token: its words and the classes it has. */
void chart_show_tokens(struct buf *out, const struct chart *c);

#endif
