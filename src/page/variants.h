/* SPDX-License-Identifier: ISC */
/*
 * What a recipe reads like in other units and for other numbers, so that a
 * page can switch between them: every line is written in each way by the
 * program, and the page only chooses.
 */
#ifndef TAMIS_VARIANTS_H
#define TAMIS_VARIANTS_H

#include "house/house.h"
#include "page/ties.h"

/* As said (or both), metric, US; from half the amounts to four times. */
enum { VARIANT_UNITS = 3, VARIANT_TIMES = 6, VARIANTS = VARIANT_UNITS * VARIANT_TIMES };

/* The pieces of a line that may differ. */
enum piece_of_line {
	LINE_QUANTITY, /* "2 tbsp"; of a step its sentence, of a yield all of it */
	LINE_ITEM,     /* "eggs" */
	LINE_OTHER,    /* " (30 ml)" */
	LINE_REST,     /* ", beaten, or 1 tsp wasabi, optional" */
	LINE_PIECES
};

struct line {
	struct str piece[LINE_PIECES];
};

/* Of text_ingredient(), in its pieces. */
struct line line_of(struct arena *a, const struct house *h, const struct ingredient *in);

struct variants;

/* Of all things that ties knows. */
struct variants *variants_of(
    const struct ties *t, const struct grammar *g, const struct tamis_style *style);
/* The element of a piece, as it reads now, with its other texts in attributes:
 * data-v="2 cups\n4 cups" each text once, data-i="010101" which one for each
 * variant. v may be NULL. Nothing where no variant has a text. */
void variants_put(struct buf *out, const struct variants *v, uint32_t thing,
    enum piece_of_line piece, struct str now);
/* The switch of a dish: "Serves 4", "Serves 8"; or "as written", "twice". */
void variants_put_times(struct buf *out, const struct variants *v, size_t dish);
/* Which units the page opens with. */
size_t variants_units(const struct tamis_style *style);

#endif
