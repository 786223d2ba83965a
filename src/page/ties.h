/* SPDX-License-Identifier: ISC */
/*
 * What of a script became what of a recipe, for pages that show both: every
 * thing of the draft has a number, every recognised run of words the things
 * that it speaks of.
 */
#ifndef TAMIS_TIES_H
#define TAMIS_TIES_H

#include "tamis.h"

/* What words were taken for; of those that overlap the last one shows. */
enum ink {
	INK_NONE,
	INK_STEP,
	INK_DISH,
	INK_INGREDIENT,
	INK_EQUIPMENT,
	INK_DONENESS,
	INK_AMOUNT,
	INK_TIME,
	INK_HEAT,
	INKS
};
/* "amount"; the legend's word and the class name on the page. */
const char *ink_name(enum ink ink);

enum { THING_NONE = UINT32_MAX, TIES_MOST = 6 };

/* Source bytes that all belong to the same things. */
struct stretch {
	struct span span;
	enum ink ink; /* that of the words on top */
	uint32_t thing[TIES_MOST];
	size_t things;
};

struct ties {
	struct arena *arena;
	const struct draft *draft;
	uint32_t *dish;  /* number of each dish; its yield, time, tools follow */
	uint32_t **part; /* [dish][part]; its ingredients and steps follow */
	uint32_t things;
	struct stretch *stretch; /* in source order; none overlap */
	size_t stretches;
	uint32_t *word; /* of each thing: the element of the script that says it
			 * first, from 1; 0 none. Filled while the script is put. */
};

struct ties ties_of(struct arena *a, const struct draft *d);

uint32_t thing_yield(const struct ties *t, size_t dish);
uint32_t thing_time(const struct ties *t, size_t dish);
uint32_t thing_tool(const struct ties *t, size_t dish, size_t tool);
uint32_t thing_ingredient(const struct ties *t, size_t dish, size_t part, size_t i);
uint32_t thing_step(const struct ties *t, size_t dish, size_t part, size_t i);

/* The stretch that holds a source byte; NULL none. */
const struct stretch *stretch_at(const struct ties *t, size_t source_at);

#endif
