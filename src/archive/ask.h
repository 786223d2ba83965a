/* SPDX-License-Identifier: ISC */
/*
 * A question on its way through the archive. For src/archive/ only.
 */
#ifndef TAMIS_ASK_H
#define TAMIS_ASK_H

#include "archive/tokens.h"

/* How far from the figure a temperature may be: a setting is rounded to what
 * cooks use for it, a reading to the degree. */
struct near {
	double inside, setting;
};
struct near near_of(const struct figure *f);

/* hits.c: what is printed of the dish. */
bool hit_fill(struct archive *a, struct arena *arena, const struct question *q,
    int64_t dish, struct hit *out, struct err *e);

#endif
