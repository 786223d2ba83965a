/* SPDX-License-Identifier: ISC */
/*
 * Whether a measure says the one before it once more, in another unit:
 *   "350, that's 180 Celsius", "half a cup of milk, so call it 120 mils"
 */
#include "assemble/restate.h"

enum link { LINK_NONE, LINK_WEAK, LINK_STRONG };

/* "a cup [of milk], that's", "gas mark six[.] That's": may stand before words
 * that restate a measure. */
static bool
is_before_restating(const struct maker *m, uint32_t token)
{
	static const char *const classes[] = {"OF", "FOOD", "FOODMOD", "PREPWORD", "STOP"};

	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++)
		if (token_has(m, token, classes[i]))
			return true;
	return false;
}

/* How the words between two measures join them: "that's", a slash and an
 * opening bracket strongly, a comma or nothing weakly, other words not. */
static enum link
link_between(const struct maker *m, uint32_t beg, uint32_t end)
{
	enum link link = LINK_WEAK;
	bool food = false;

	if (end < beg || end - beg > 9)
		return LINK_NONE;
	for (uint32_t i = beg; i < end; i++) {
		if (token_has(m, i, "RESTATES"))
			link = LINK_STRONG;
		else if (link == LINK_WEAK && is_before_restating(m, i))
			food = true;
		else if (!token_has(m, i, "COMMA") && !token_has(m, i, "APPROX") &&
			 !token_has(m, i, "FILLER") && !token_has(m, i, "DASH") &&
			 !token_has(m, i, "BE") && !token_has(m, i, "ADV"))
			return LINK_NONE;
	}
	return food && link == LINK_WEAK ? LINK_NONE : link;
}

/* "375 Fahrenheit, and for my cousin over the border, that's 190 Celsius" */
static bool
is_restated_late(const struct maker *m, uint32_t beg, uint32_t end)
{
	uint32_t last = end;

	while (last > beg &&
	       (token_has(m, last - 1, "APPROX") || token_has(m, last - 1, "BE") ||
		   token_has(m, last - 1, "FILLER")))
		last--;
	if (end < beg || end - beg > 20 || last == beg || last == end ||
	    !token_has(m, last - 1, "RESTATES"))
		return false;
	for (uint32_t i = beg; i < end; i++)
		if (token_has(m, i, "STOP") || token_has(m, i, "BREAK"))
			return false;
	return true;
}

/* Within a fifth of each other. */
static bool
agree(const struct amount *a, const struct amount *b)
{
	struct ratio x, y;

	if (!a->unit->has_base || !b->unit->has_base ||
	    a->unit->dimension != b->unit->dimension)
		return false;
	x = unit_to_base(a->unit, a->min);
	y = unit_to_base(b->unit, b->min);
	return ratio_order(ratio_mul(x, ratio_make(6, 5)), y) >= 0 &&
	       ratio_order(ratio_mul(y, ratio_make(6, 5)), x) >= 0;
}

static bool
is_mass_or_volume(const struct unit *u)
{
	return u->dimension == DIM_MASS || u->dimension == DIM_VOLUME;
}

/* "a cup, that's 240 mils"; "350 (180 C)" */
bool
restates(const struct maker *m, const struct said *a, const struct said *b)
{
	enum link link = link_between(m, a->tokens.end, b->tokens.beg);
	const struct unit *u = a->value.unit, *v = b->value.unit;

	if (link == LINK_NONE && a->kind == MEASURE_TEMPERATURE && a->unit_stated &&
	    is_restated_late(m, a->tokens.end, b->tokens.beg))
		link = LINK_STRONG;
	if (link == LINK_NONE || a->kind != b->kind || !v || !b->unit_stated)
		return false;
	/* Two scales side by side are one setting, whether they agree or not. */
	if (a->kind == MEASURE_TEMPERATURE)
		return u != v &&
		       (link == LINK_STRONG ||
			   (u && (a->unit_stated || agree(&a->value, &b->value))));
	if (!u || (a->kind != MEASURE_LENGTH && a->kind != MEASURE_AMOUNT))
		return false;
	if (u->dimension != v->dimension &&
	    (!is_mass_or_volume(u) || !is_mass_or_volume(v)))
		return false;
	if (u->metric == v->metric && u->dimension == v->dimension)
		return u != v && agree(&a->value, &b->value);
	return link == LINK_STRONG || agree(&a->value, &b->value);
}
