/* SPDX-License-Identifier: ISC */
/*
 * What a cue speaks of, how much it says, and cues that are told after a step.
 */
#include "remark/told.h"

/* Words of a cue that speak of a mixture, not of pieces of food. */
static bool
is_of_mixture(const struct maker *m, uint32_t token)
{
	static const char *const words[] = {"sauce", "syrup", "mixture", "dough", "batter",
	    "custard", "liquid", "jam", "glaze", "gravy", "oil", "water", "butter", "milk",
	    "cream", "cheese", "pan", "thicken", "thickens", "thickened", "thick",
	    "reduced", "reduces", "boils", "boiling", "bubbling", "bubbles", "simmering",
	    "smooth", "melted", "dissolved"};
	const struct reading *r = token_reading(m, token, "STATE");

	for (size_t i = 0; i < sizeof words / sizeof *words; i++)
		if (token_is(m, token, words[i]))
			return true;
	return r && lexeme_has(r->lexeme, "mixture");
}

static void
read_cue(const struct maker *m, struct doneness *d)
{
	uint32_t beg = token_from(m, d->place.span.beg),
		 end = token_from(m, d->place.span.end);
	uint32_t food = food_after(m, beg, end);
	bool weak = false, strong = false, meat = false, shells = false;

	for (uint32_t i = beg; i < end; i++) {
		const struct reading *r = token_reading(m, i, "STATE");

		d->mixture = d->mixture || is_of_mixture(m, i);
		shells = shells || str_starts(token_of(m, i)->norm, STR("shell"));
		meat = meat || (r && lexeme_has(r->lexeme, "meat"));
		weak = weak || (r && lexeme_has(r->lexeme, "weak"));
		strong = strong || (r && !lexeme_has(r->lexeme, "weak")) ||
			 token_has(m, i, "STATEVERB") || token_has(m, i, "STATENOUN");
	}
	d->mixture = d->mixture && !meat;
	d->weak = weak && !strong;
	if (food < end && !d->mixture && !shells)
		d->subject = food_key(m, food);
}

/* "and what you want is pink all over": a sign that meat is cooked, told after
 * a step that has none. */
static void
find_cue(const struct told *t, const struct stretch *x)
{
	const struct maker *m = t->m;
	struct doneness *d = &x->step->doneness;
	uint32_t end = x->end;

	if (!x->step->heats || d->known || d->text.n)
		return;
	for (const struct stretch *y = x + 1; y < t->stretch.v + t->stretch.n; y++) {
		if (y->step->heats || y->dish != x->dish || y > x + 2)
			break;
		end = y->end;
	}
	for (uint32_t i = token_from(m, x->step->place.span.beg); i < end; i++) {
		const struct reading *r = token_reading(m, i, "STATE");
		const struct node n = {i, i + 1, RAW};

		if (!r)
			r = token_reading(m, i, "STATEVERB");
		if (!r || !lexeme_has(r->lexeme, "meat") || token_has(m, i, "HEATLEVEL") ||
		    is_conditional(m, i) || is_taken_back(m, i, false))
			continue;
		d->text = token_of(m, i)->norm;
		d->place = place_of_node(m, &n);
		return;
	}
}

static void
drop_conditional(const struct maker *m, struct doneness *d)
{
	if (d->known && is_conditional(m, token_from(m, d->place.span.beg)))
		d->known = false;
}

void
fill_cue(const struct told *t, const struct stretch *x)
{
	struct doneness *d = &x->step->doneness;

	drop_conditional(t->m, d);
	find_cue(t, x);
	if (d->text.n)
		read_cue(t->m, d);
}
