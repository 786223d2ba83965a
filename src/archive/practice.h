/* SPDX-License-Identifier: ISC */
/*
 * How a show cooks: each setting, time and reading with the food (or the dish)
 * and the action that it is for. For src/archive/ only.
 */
#ifndef TAMIS_PRACTICE_H
#define TAMIS_PRACTICE_H

#include "archive/archive.h"

struct practice {
	struct str subject;   /* "chicken-thigh", "banana bread" */
	struct str action;    /* "roast" */
	struct str appliance; /* "oven"; empty where none is known */
	enum quantity quantity;
	double min, max;
	int dish, part, step;
	struct place place;
};

struct practices {
	struct practice *v;
	size_t n;
};
struct practices practices_of_draft(
    struct arena *arena, const struct grammar *g, const struct draft *d);

#endif
