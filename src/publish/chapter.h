/* SPDX-License-Identifier: ISC */
/*
 * The chapters of an episode: where it turns to a dish or a part, and, where
 * that makes too few for a player's chapter bar, the cooking steps.
 */
#ifndef TAMIS_CHAPTER_H
#define TAMIS_CHAPTER_H

#include "tamis.h"

/* What video players ask for, by common practice. */
enum { CHAPTERS_MIN = 3, CHAPTER_MS = 10 * 1000 };

struct chapter {
	int64_t beg_ms, end_ms;
	struct str title;
};

/* In rising order from 0:00, each CHAPTER_MS long or longer; *count is set, 0
 * where the script has no times. */
struct chapter *chapters_of(struct arena *a, const struct draft *d, size_t *count);

#endif
