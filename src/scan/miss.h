/* SPDX-License-Identifier: ISC */
/*
 * Why rules did not take a word: each rule tried where the word begins, and how
 * far it got.
 */
#ifndef TAMIS_MISS_H
#define TAMIS_MISS_H

#include "scan/chart.h"

/* A rule that took at least one node from the token on, and made nothing there. */
struct miss {
	size_t pass;
	const struct rule *rule;
	struct reach reach; /* in nodes of the level that the pass reads */
};

struct misses {
	VEC(struct miss) miss; /* in the order in which rules are tried */
};

/* Those of each token, parallel to them, in the chart's arena. Compiles every rule
 * of the grammar by itself: for a person who waits, not for the pipeline. */
struct misses *misses_find(struct chart *c, const uint32_t *token, size_t tokens);

/* "ingredient.of -> ING: took butter, then wanted <AMT>, not to" and a line feed. */
void miss_put(struct buf *out, const struct chart *c, const struct miss *m);

#endif
