/* SPDX-License-Identifier: ISC */
/*
 * A recipe is told in a block: its name, then amounts of food, then what it
 * makes. Where a block is over, the next name that amounts follow begins another
 * dish, however it is said.
 *
 *     "... that'll do four of us. And for afters pears, four of them, ..."
 */
#include "outline/outline.h"

enum {
	CLOSE = 14,     /* tokens: from a bare name to the first amount */
	REACH = 30,     /* tokens: from the name to the first amount */
	LENGTH = 60,    /* tokens: within which the amounts count */
	BACK_MAX = 200, /* names looked back on */
	RECIPE = 3      /* amounts of food that a recipe has at least */
};

bool
block_yields(const struct outline *o, uint32_t beg, uint32_t end)
{
	size_t lo = 0, hi = o->yield.n;

	while (lo < hi) {
		size_t mid = lo + (hi - lo) / 2;

		if (o->yield.v[mid] < beg)
			lo = mid + 1;
		else
			hi = mid;
	}
	return lo < o->yield.n && o->yield.v[lo] < end &&
	       memory_measured(o, beg, o->yield.v[lo]) >= RECIPE;
}

/* "that's the soup", "there's your green goddess", "Shakshuka." */
static bool
is_said_done(const struct outline *o, uint32_t beg, uint32_t end)
{
	size_t last = outline_opening(o, end);
	size_t first = outline_opening(o, beg);

	for (size_t i = last - first > BACK_MAX ? last - BACK_MAX : first; i < last; i++) {
		const struct opening *x = &o->openings.said.v[i];

		if ((x->kind == OPENING_DONE || x->kind == OPENING_TODAY ||
			x->kind == OPENING_TOPIC) &&
		    x->token >= beg && x->end < end && named_dish(o, x) == o->now_dish &&
		    memory_measured(o, beg, x->token) >= RECIPE &&
		    (x->kind == OPENING_DONE ||
			memory_measured(o, x->end, x->end + REACH / 2) == 0))
			return true;
	}
	return false;
}

bool
block_is_told(const struct outline *o, int dish, uint32_t token)
{
	uint32_t beg = o->dish.v[dish].since;
	uint32_t end = o->dish.v[dish].until > beg ? o->dish.v[dish].until : token;

	return block_yields(o, beg, end) && memory_measured(o, token, token + CLOSE) == 0;
}

bool
block_is_over(const struct outline *o, uint32_t beg, uint32_t token)
{
	return block_yields(o, beg, token) || is_said_done(o, beg, token);
}

static bool
is_indefinite(const struct maker *m, uint32_t i)
{
	struct str word = m->c.tokens.token.v[i].norm;

	return str_is_z(word, "a") || str_is_z(word, "an");
}

bool
block_leads(const struct outline *o, const struct opening *x)
{
	static const char *const before[] = {"BREAK", "STOP", "COMMA", "COLON", "DASH",
	    "CALL", "MARK", "FILLER", "AND", "BUT", "DIGITS"};
	static const char *const between[] = {"DET", "ART", "ADV", "FOODMOD"};
	uint32_t i = x->token;

	while (i > 0) {
		bool passed = false;

		for (size_t k = 0; k < sizeof before / sizeof *before; k++)
			if (token_has(o->m, i - 1, before[k]))
				return true;
		if (x->sort == NAME_DISH && is_indefinite(o->m, i - 1))
			return true;
		for (size_t k = 0; k < sizeof between / sizeof *between; k++)
			passed = passed || token_has(o->m, i - 1, between[k]);
		if (!passed)
			return false;
		i--;
	}
	return true;
}

/* "it's a compote", "next up, a vinaigrette": no part of what is made. */
static bool
is_of_its_own(const struct opening *x)
{
	return !x->definite && (x->kind == OPENING_TODAY || x->kind == OPENING_NEXT);
}

bool
block_opens(const struct outline *o, const struct opening *x)
{
	uint32_t beg;
	size_t before, next;
	const struct planned *p = plan_find(&o->plan, x);
	bool awaited = named_is_awaited(o, p);

	if (o->now_dish < 0 || name_is_half(o->dish.v[o->now_dish].name, x) ||
	    named_dish(o, x) >= 0 || named_part(o, 0, x) >= 0 ||
	    named_part(o, o->now_dish, x) >= 0 || x->kind == OPENING_HEADING ||
	    x->kind == OPENING_WITH || x->counted || (p && !p->main) ||
	    (x->sort == NAME_PART && !awaited && !is_of_its_own(x)))
		return false;
	if (!awaited && ((x->sort <= NAME_FOOD && x->kind < OPENING_TOPIC) ||
			    (x->sort == NAME_MAYBE && x->lone && x->kind < OPENING_TURN)))
		return false;
	beg = o->dish.v[o->now_dish].since;
	beg = beg < o->dish.v[0].token ? o->dish.v[0].token : beg;
	before = memory_measured(o, beg, x->token);
	next = memory_measured(o, x->end, x->end + LENGTH);
	if (next < 2 || memory_measured(o, x->end, x->end + REACH) == 0)
		return false;
	if (block_is_over(o, beg, x->token))
		return true;
	if (!awaited && x->lone && (o->now_part > 0 || token_has(o->m, x->token, "FOOD")))
		return false;
	return before >= RECIPE &&
	       (block_leads(o, x) ||
		   (x->sort == NAME_DISH && !x->lone && x->kind >= OPENING_TODAY)) &&
	       (x->sort == NAME_DISH || (awaited && x->sort < NAME_DISH)) &&
	       memory_measured(o, x->end, x->end + CLOSE) > 0;
}
