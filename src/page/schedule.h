/* SPDX-License-Identifier: ISC */
/*
 * When each timed step of a dish runs, from the dish's own start: what the
 * timeline draws.
 */
#ifndef TAMIS_PAGE_SCHEDULE_H
#define TAMIS_PAGE_SCHEDULE_H

#include "tamis.h"

struct bar {
	size_t part, step; /* of the dish */
	int64_t beg_ms, end_ms;
	bool open; /* "overnight": how long is not known */
};

struct schedule {
	struct bar *bar; /* in order of beginning */
	size_t bars;
	int64_t end_ms; /* of the last bar; 0 none */
};

/* Timed steps follow one another, but that those beside another begin with
 * it; the longest end of a range counts. */
struct schedule schedule_of(struct arena *a, const struct dish *d);

#endif
