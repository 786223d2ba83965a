/* SPDX-License-Identifier: ISC */
/*
 * Amounts of a kind that no food is measured in: "two inches of flour", "three
 * minutes of butter".
 */
#include "remark/remarks.h"

/* Scooped, never said by the inch. */
static bool
is_shapeless(struct str group)
{
	static const char *const groups[] = {"flour", "starch", "sugar", "leavening",
	    "yeast", "salt", "spice", "extract", "grain", "syrup", "rice"};

	for (size_t i = 0; i < sizeof groups / sizeof *groups; i++)
		if (str_is_z(group, groups[i]))
			return true;
	return false;
}

/* The food that the measure is said to be of; the number of tokens where none. */
static uint32_t
food_of(const struct maker *m, const struct measure *x)
{
	uint32_t none = (uint32_t)m->c.tokens.token.n;
	uint32_t at = token_from(m, x->place.span.end);

	if (!token_has(m, at, "OF"))
		return none;
	at++;
	while (token_has(m, at, "FOODMOD") && !token_reading(m, at, "FOOD"))
		at++;
	return token_reading(m, at, "FOOD") ? at : none;
}

void
remark_dimensions(struct remarks *r)
{
	const struct maker *m = r->m;

	for (size_t i = 0; i < m->d->measures; i++) {
		const struct measure *x = &m->d->measure[i];
		uint32_t food;

		if ((x->kind != MEASURE_LENGTH && x->kind != MEASURE_DURATION &&
			x->kind != MEASURE_TEMPERATURE) ||
		    x->aside || !x->value.known || !x->unit_stated)
			continue;
		food = food_of(m, x);
		if (food == m->c.tokens.token.n ||
		    (x->kind == MEASURE_LENGTH && !is_shapeless(food_group(m, food))))
			continue;
		remark_add(r, REMARK_NO_AMOUNT,
		    (struct span){token_from(m, x->place.span.beg), food + 1},
		    token_of(m, food)->norm);
	}
}
