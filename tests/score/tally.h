/* SPDX-License-Identifier: ISC */
/*
 * Counting what was found, missed and falsely found, and the figures that
 * follow.
 */
#ifndef TAMIS_TESTS_TALLY_H
#define TAMIS_TESTS_TALLY_H

#include "base/arena.h"

enum figure {
	FIGURE_MEASURES, /* the five kinds follow in the order of measure_kind */
	FIGURE_KIND,
	FIGURE_INGREDIENTS = FIGURE_KIND + 5,
	FIGURE_AMOUNTS,
	FIGURE_HEAT,
	FIGURE_DISHES,
	FIGURE_FINDINGS,
	FIGURES
};

struct count {
	size_t gold, found, hits;
};

/* A miss or a false alarm. */
struct slip {
	enum figure figure;
	bool miss;
	struct str script;
	int64_t at_ms;
	struct str kind; /* what slips are grouped by: "amount cup" */
	struct str text;
};

/* How many of the matched agree in something besides. */
struct share {
	size_t right, all;
};

struct tally {
	struct arena *arena;
	struct str script; /* the one being counted */
	struct count count[FIGURES];
	struct share roles, parts;
	VEC(struct slip) slip;
};

void tally_hit(struct tally *t, enum figure f);
void tally_share(struct share *s, bool right);
/* Counts a miss, or a false alarm, without keeping it. */
void tally_count(struct tally *t, enum figure f, bool miss);
/* Counts and keeps a slip of the script being counted. */
void tally_slip(struct tally *t, struct slip s);
void tally_add(struct tally *to, const struct tally *from);

const char *figure_name(enum figure f);
double count_precision(const struct count *c);
double count_recall(const struct count *c);
/* 1 where there is nothing to find and nothing was found. */
double count_f1(const struct count *c);

#endif
