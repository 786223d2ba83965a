/* SPDX-License-Identifier: ISC */
/*
 * From one system of measures into the other, by units and densities.
 */
#include "house/convert.h"

#include "grammar/density.h"
#include "grammar/units.h"

struct range {
	struct ratio min, max;
};

/* ---- what is given -------------------------------------------------------- */

static bool
is_unit(const struct amount *a, const char *name)
{
	return a->unit && str_is_z(a->unit->name, name);
}

static bool
is_spoon(const struct amount *a)
{
	return is_unit(a, "teaspoon") || is_unit(a, "tablespoon") ||
	       is_unit(a, "dessertspoon");
}

/* Counts, pinches and what is unknown belong to no system. */
enum system
convert_system(const struct amount *a)
{
	if (!a->present || !a->known || !a->unit)
		return SYSTEM_NONE;
	if (is_unit(a, "stick"))
		return SYSTEM_US;
	if (!a->unit->has_base || a->unit->dimension == DIM_TIME ||
	    a->unit->dimension == DIM_TEMPERATURE)
		return SYSTEM_NONE;
	return a->unit->metric ? SYSTEM_METRIC : SYSTEM_US;
}

/* In the base unit; false where there is none, or nothing sensible. */
static bool
base_of(const struct amount *a, struct range *out)
{
	if (!a->known || !a->unit || !a->unit->has_base)
		return false;
	out->min = unit_to_base(a->unit, a->min);
	out->max = unit_to_base(a->unit, a->max);
	return out->min.num > 0 && ratio_order(out->max, ratio_int(1000000)) < 0;
}

static bool
is_own(const struct portion *p)
{
	return p->food && p->amount == &p->food->amount;
}

static struct str
words_about(struct arena *a, const struct ingredient *in)
{
	return arena_fmt(a, "%.*s, %.*s", (int)in->item.n, in->item.p,
	    (int)in->preparation.n, in->preparation.p);
}

/* Grams of one of the unit of volume. */
static bool
weigh(struct arena *a, const struct house *h, const struct ingredient *in,
    const struct unit *u, struct density *out)
{
	struct str words;

	if (!h->grammar || !in)
		return false;
	words = words_about(a, in);
	return density_volume(h->grammar, in->item, words, u, out) ||
	       density_volume(h->grammar, in->key, words, u, out);
}

/* In grams or, *liquid, in millilitres, by what the food's own line says. */
static bool
weight_of(struct arena *a, const struct house *h, const struct portion *p, bool *liquid,
    struct range *out)
{
	const struct ingredient *in = p->food;
	struct density d;

	if (!in || !in->metric.known || !in->metric.unit)
		return false;
	*liquid = in->metric.unit->dimension == DIM_VOLUME;
	if (is_own(p))
		return base_of(&in->metric, out);
	if (*liquid)
		return base_of(p->amount, out);
	if (p->amount->unit && p->amount->unit->dimension == DIM_VOLUME &&
	    weigh(a, h, in, p->amount->unit, &d)) {
		out->min = ratio_mul(p->amount->min, d.grams);
		out->max = ratio_mul(p->amount->max, d.grams);
		return true;
	}
	return false;
}

/* ---- one system or the other --------------------------------------------- */

static struct extent
extent_by(struct range r, struct measured (*measure)(struct ratio))
{
	return (struct extent){.min = measure(r.min), .max = measure(r.max)};
}

static enum closeness
closeness_of(struct range r, enum closeness how)
{
	return ratio_order(r.min, r.max) == 0 ? how : ROUGH;
}

/* Pours: a spoon is a spoon everywhere, up to a quarter of a cup. */
static bool
is_spooned(const struct amount *a, struct range ml)
{
	return (is_spoon(a) || is_unit(a, "cup")) && ratio_order(ml.max, ratio_int(59)) < 0;
}

/* In metric, what was said in other units; sure: only where the food is known. */
bool
convert_metric(struct arena *a, const struct house *h, const struct portion *p, bool sure,
    struct extent *out)
{
	struct range base, weight;
	bool liquid = false, based = base_of(p->amount, &base);

	if (convert_system(p->amount) != SYSTEM_US)
		return false;
	if (based && p->amount->unit->dimension == DIM_LENGTH) {
		*out = extent_by(base, kitchen_centimetres);
	} else if (based && p->amount->unit->dimension == DIM_MASS) {
		*out = extent_by(base, kitchen_grams);
	} else if (based && is_spooned(p->amount, base)) {
		return false;
	} else if (weight_of(a, h, p, &liquid, &weight)) {
		*out = extent_by(weight, liquid ? kitchen_millilitres : kitchen_grams);
	} else if (based && !sure) {
		*out = extent_by(base, kitchen_millilitres);
	} else {
		return false;
	}
	return out->min.terms > 0;
}

/* Forms of a food that its name or its trade already says. */
static bool
goes_without_saying(struct str form)
{
	static const char *const forms[] = {"", "fluid", "not packed", "unsifted",
	    "unsifted, dipped", "unthawed", "chips", "miniature", "ground", "whole",
	    "halves and whole", "stirred", "drained", "drained, rinsed", "leaves", "packed",
	    "firmly packed"};

	for (size_t i = 0; i < sizeof forms / sizeof *forms; i++)
		if (str_is_z(form, forms[i]))
			return true;
	return false;
}

/* A weight in cups and spoons: of foods that are sold in the form that the
 * density is of; at most 8 cups, for nobody scoops more. */
static bool
spoon_extent(struct arena *a, const struct house *h, const struct portion *p,
    struct range g, struct extent *out)
{
	struct spoons us = kitchen_us_spoons();
	const struct unit *cup =
	    h->grammar ? grammar_unit(h->grammar, STR("cup"), "us") : NULL;
	enum closeness how = closeness_of(g, ABOUT);
	struct density d;
	struct range tsp;

	if (!cup || !weigh(a, h, p->food, cup, &d) ||
	    (!d.named && !goes_without_saying(d.form)))
		return false;
	tsp.min = ratio_mul(ratio_div(g.min, d.grams), us.cup);
	tsp.max = ratio_mul(ratio_div(g.max, d.grams), us.cup);
	if (ratio_order(tsp.min, ratio_make(1, 8)) < 0 ||
	    ratio_order(tsp.max, ratio_mul(us.cup, ratio_int(8))) > 0)
		return false;
	out->min = kitchen_spoons(tsp.min, &us, how);
	out->max = kitchen_spoons(tsp.max, &us, how);
	out->about = true;
	out->form =
	    str_ends(d.form, STR("packed")) && !str_starts(d.form, STR("not")) && !d.named
		? STR("packed")
		: STR("");
	return true;
}

static bool
us_mass_extent(struct range g, struct extent *out)
{
	enum closeness how = closeness_of(g, ABOUT);

	/* Below 20 g an ounce is no measure that a kitchen has. */
	if (ratio_order(g.min, ratio_int(20)) < 0)
		return false;
	out->min = kitchen_us_mass(g.min, how);
	out->max = kitchen_us_mass(g.max, how);
	return true;
}

/* A cup, a spoon, a pint of another country that holds what the US one does,
 * nearly: 6 in 100 is not tasted. */
static bool
is_us_size(const struct house *h, const struct unit *u)
{
	const struct unit *us = h->grammar ? grammar_unit(h->grammar, u->name, "us") : NULL;
	struct ratio times;

	if (!us || !us->has_base || u->dimension != DIM_VOLUME)
		return true;
	times = ratio_div(u->factor, us->factor);
	return ratio_order(times, ratio_make(94, 100)) > 0 &&
	       ratio_order(times, ratio_make(106, 100)) < 0;
}

/* In US measures, what was said in others. */
bool
convert_us(
    struct arena *a, const struct house *h, const struct portion *p, struct extent *out)
{
	enum system system = convert_system(p->amount);
	struct range base;

	*out = (struct extent){.about = false};
	if (system == SYSTEM_NONE || !base_of(p->amount, &base) ||
	    (system == SYSTEM_US && is_us_size(h, p->amount->unit)))
		return false;
	if (p->amount->unit->dimension == DIM_MASS)
		return spoon_extent(a, h, p, base, out) || us_mass_extent(base, out);
	if (p->amount->unit->dimension == DIM_LENGTH) {
		*out = extent_by(base, kitchen_inches);
	} else {
		out->min = kitchen_us_volume(base.min, closeness_of(base, ABOUT));
		out->max = kitchen_us_volume(base.max, closeness_of(base, ABOUT));
	}
	return out->min.terms > 0;
}

/* ---- as said, or reckoned ------------------------------------------------- */

struct spoons
convert_spoons(const struct house *h, const struct amount *a)
{
	struct spoons s = kitchen_us_spoons();
	const struct unit *tsp, *tbsp, *cup;

	if (!h->grammar || !h->region)
		return s;
	tsp = grammar_unit(h->grammar, STR("teaspoon"), h->region);
	tbsp = grammar_unit(h->grammar, STR("tablespoon"), h->region);
	cup = grammar_unit(h->grammar, STR("cup"), h->region);
	if (!tsp || !tbsp || !cup)
		return s;
	s.teaspoon = tsp->factor;
	s.tablespoon = ratio_div(tbsp->factor, tsp->factor);
	s.cup = ratio_div(cup->factor, tsp->factor);
	s.cups = is_unit(a, "cup") || !str_is_z(str_of(h->region), "uk");
	return s;
}

static struct extent
reckoned_spoons(const struct house *h, const struct amount *a, struct range ml)
{
	struct spoons s = convert_spoons(h, a);
	enum closeness how = closeness_of(ml, CLOSE);

	return (struct extent){
	    .min = kitchen_spoons(ratio_div(ml.min, s.teaspoon), &s, how),
	    .max = kitchen_spoons(ratio_div(ml.max, s.teaspoon), &s, how)};
}

bool
convert_reckoned(const struct house *h, const struct amount *a, struct extent *out)
{
	struct range base;

	if (!base_of(a, &base))
		return false;
	if (a->unit->dimension == DIM_LENGTH) {
		*out =
		    extent_by(base, a->unit->metric ? kitchen_centimetres : kitchen_inches);
	} else if (a->unit->dimension == DIM_MASS && !a->unit->metric) {
		out->min = kitchen_us_mass(base.min, closeness_of(base, CLOSE));
		out->max = kitchen_us_mass(base.max, closeness_of(base, CLOSE));
	} else if (a->unit->dimension == DIM_MASS) {
		*out = extent_by(base, kitchen_grams);
	} else if (a->unit->metric) {
		*out = extent_by(base, kitchen_millilitres);
	} else if (is_spoon(a) || is_unit(a, "cup")) {
		*out = reckoned_spoons(h, a, base);
	} else {
		return false;
	}
	return out->min.terms > 0;
}
