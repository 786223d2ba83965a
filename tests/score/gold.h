/* SPDX-License-Identifier: ISC */
/*
 * What a careful recipe editor would take from a script: a NAME.gold.tsv
 * beside it, one row a line, columns by tabs, "-" where there is nothing.
 */
#ifndef TAMIS_TESTS_GOLD_H
#define TAMIS_TESTS_GOLD_H

#include "base/arena.h"
#include "base/err.h"

/* A value or a range; known is false for "-". unit "" for a bare count. */
struct gold_value {
	bool known;
	double min, max;
	struct str unit;
};

/* Names with their aliases stay one str with bars: "chili powder|chili". */
struct gold_dish {
	uint64_t number;
	struct str names;
	int64_t at_ms;
};
struct gold_measure {
	int64_t at_ms;
	struct str kind, role, text;
	struct gold_value value;
};
struct gold_ingredient {
	uint64_t dish;
	struct str part, items; /* part "" for the dish itself */
	struct gold_value value;
	int64_t at_ms;
};
struct gold_heat {
	uint64_t dish;
	struct str actions;
	struct gold_value temperature, seconds;
	int64_t at_ms;
};
struct gold_finding {
	struct str code, why;
	int64_t at_ms;
};

struct gold {
	VEC(struct gold_dish) dish;
	VEC(struct gold_measure) measure;
	VEC(struct gold_ingredient) ingredient;
	VEC(struct gold_heat) heat;
	VEC(struct gold_finding) finding;
};

/* False and *e with the line set where the file is not of that form. */
bool gold_read(struct arena *a, struct gold *g, const char *path, struct err *e);

/* Does `word` stand among the names with bars? */
bool gold_names(struct str names, struct str word);

#endif
