/* SPDX-License-Identifier: ISC */
/*
 * Values and their conversions, amounts of a kind that a food cannot have, and
 * units that mix systems or have two sizes.
 */
#include "check/facts.h"
#include "check/food.h"
#include "check/say.h"

/* How far two values of one thing may differ, in hundredths of the smaller.
 * Cooks round; 450 g for a pound is 1 off, 25 g for an ounce 13. */
enum { SLACK = 10, SLACK_ABOUT = 15, SLACK_OUNCE = 15, SLACK_WEIGHED = 30 };

/* The same in degrees Celsius: 400 °F with 200 °C is 4 off, 250 °F with 130 °C
 * 9; a fan oven is set some 20 lower (NSW Health, conversion chart). */
static const struct ratio setting_slack = {9, 1}, oil_slack = {6, 1}, inside_slack = {5, 2},
			  fan_low = {14, 1}, fan_high = {26, 1};

static struct ratio
distance(struct ratio a, struct ratio b)
{
	return ratio_order(a, b) < 0 ? ratio_sub(b, a) : ratio_sub(a, b);
}

/* ---- temperatures said twice -------------------------------------------- */

static struct ratio
slack_of(enum measure_role role)
{
	if (role == ROLE_INTERNAL || role == ROLE_LIQUID)
		return inside_slack;
	return role == ROLE_OIL ? oil_slack : setting_slack;
}

/* Both ends agree, or the second is a fan oven's setting for the first. */
static bool
degrees_agree(const struct check *k, const struct measure *a, const struct measure *b)
{
	struct ratio a_low, a_high, b_low, b_high, slack = slack_of(a->role), low, high;

	if (a->value.unit == b->value.unit ||
	    !facts_celsius(k, a->value.unit, a->value.min, &a_low) ||
	    !facts_celsius(k, a->value.unit, a->value.max, &a_high) ||
	    !facts_celsius(k, b->value.unit, b->value.min, &b_low) ||
	    !facts_celsius(k, b->value.unit, b->value.max, &b_high))
		return true;
	low = distance(a_low, b_low);
	high = distance(a_high, b_high);
	if (ratio_order(low, slack) <= 0 || ratio_order(high, slack) <= 0)
		return true;
	return a->role == ROLE_APPLIANCE && ratio_order(low, fan_low) >= 0 &&
	       ratio_order(low, fan_high) <= 0;
}

static void
check_degrees(struct check *k, const struct measure *a, const struct measure *b)
{
	struct str said = say_setting(k, &a->value), other = say_setting(k, &b->value);
	struct str agree = say_degrees(k, &a->value, a->role != ROLE_APPLIANCE);

	if (degrees_agree(k, a, b))
		return;
	finding_raise(k, a->place, finding_spot(k, a->place),
	    "%.*s and %.*s are not the same heat: %.*s would agree. Which one is meant?",
	    SAY(said), SAY(other), SAY(agree))
	    ->suggestion = agree;
	finding_relate(k, b->place, "the other value");
}

/* ---- amounts said twice -------------------------------------------------- */

static struct ratio
in_base(const struct amount *a, struct ratio value)
{
	return unit_to_base(a->unit, value);
}

/* b is no further from a than `slack` hundredths of the smaller. */
static bool
is_near(struct ratio a, struct ratio b, int64_t slack)
{
	struct ratio small = ratio_order(a, b) < 0 ? a : b;

	return ratio_order(distance(a, b), ratio_mul(small, ratio_make(slack, 100))) <= 0;
}

static bool
ranges_near(const struct amount *a, const struct amount *b, int64_t slack)
{
	return is_near(in_base(a, a->min), in_base(b, b->min), slack) ||
	       is_near(in_base(a, a->max), in_base(b, b->max), slack);
}

/* In the measures of another country: a pint said to be 568 ml. */
static bool
near_elsewhere(
    const struct check *k, const struct amount *a, const struct amount *b, int64_t slack)
{
	static const char *const region[] = {"us", "uk", "ca", "au", "in"};

	for (size_t i = 0; i < sizeof region / sizeof *region; i++) {
		struct amount x = *a, y = *b;

		x.unit = grammar_unit(k->grammar, a->unit->name, region[i]);
		y.unit = grammar_unit(k->grammar, b->unit->name, region[i]);
		if (x.unit && y.unit && x.unit->has_base && y.unit->has_base &&
		    (ranges_near(&x, b, slack) || ranges_near(a, &y, slack)))
			return true;
	}
	return false;
}

static bool
has_base(const struct amount *a)
{
	return a->known && a->unit && a->unit->has_base;
}

static bool
is_ounce(const struct amount *a)
{
	return word_in(a->unit->name, "ounce fluid-ounce");
}

static int64_t
slack_of_amounts(const struct measure *a, const struct measure *b)
{
	if (is_ounce(&a->value) || is_ounce(&b->value))
		return SLACK_OUNCE;
	return a->approximate || b->approximate ? SLACK_ABOUT : SLACK;
}

static void
check_amounts(struct check *k, const struct measure *a, const struct measure *b)
{
	struct str said, other, agree;
	int64_t slack = slack_of_amounts(a, b);

	if (a->value.unit == b->value.unit ||
	    a->value.unit->dimension != b->value.unit->dimension ||
	    ranges_near(&a->value, &b->value, slack) ||
	    near_elsewhere(k, &a->value, &b->value, slack))
		return;
	said = say_amount(k, &a->value);
	other = say_amount(k, &b->value);
	agree = say_about(k, in_base(&a->value, a->value.min), b->value.unit);
	finding_raise(k, a->place, finding_spot(k, a->place),
	    "%.*s is about %.*s, not %.*s. Which one is meant?", SAY(said), SAY(agree),
	    SAY(other))
	    ->suggestion = agree;
	finding_relate(k, b->place, "the other value");
}

/* ---- weight and volume of one food -------------------------------------- */

/* The ingredient that has the first value, and its weight or volume. */
static const struct ingredient *
weighed(const struct check *k, const struct measure *a, const struct measure *b)
{
	struct spot spot = finding_spot(k, b->place);
	const struct part *p;

	if (spot.dish < 0 || spot.part < 0)
		return NULL;
	p = &k->draft->dish[spot.dish].part[spot.part];
	for (size_t i = 0; i < p->ingredients; i++) {
		const struct ingredient *in = &p->ingredient[i];

		if (in->metric.known && in->metric.unit && in->amount.known &&
		    in->amount.unit == a->value.unit &&
		    ratio_order(in->amount.min, a->value.min) == 0 &&
		    in->metric.unit->dimension == b->value.unit->dimension)
			return in;
	}
	return NULL;
}

static void
check_weight(struct check *k, const struct measure *a, const struct measure *b)
{
	const struct ingredient *in = weighed(k, a, b);
	struct str said, other, agree;

	if (!in || ranges_near(&in->metric, &b->value, SLACK_WEIGHED))
		return;
	said = say_amount(k, &a->value);
	other = say_amount(k, &b->value);
	agree = say_about(k, in_base(&in->metric, in->metric.min), b->value.unit);
	finding_raise(k, a->place, finding_spot(k, a->place),
	    "%.*s of %.*s is about %.*s, not %.*s. Which one is meant?", SAY(said),
	    SAY(in->item), SAY(agree), SAY(other));
	finding_relate(k, b->place, "the other value");
}

/* ---- amounts that a food cannot have ------------------------------------- */

/* Poured and scooped: never said by the inch. */
#define SHAPELESS "flour starch sugar leavening yeast salt spice extract grain syrup"

static void
check_dimension(struct check *k, const struct cursor *c)
{
	const struct ingredient *in = c->ingredient;
	const struct amount *a = &in->amount;
	struct str said;

	if (!a->known || !a->unit)
		return;
	if (a->unit->dimension != DIM_TIME && a->unit->dimension != DIM_TEMPERATURE &&
	    !(a->unit->dimension == DIM_LENGTH && food_is(in, SHAPELESS)))
		return;
	said = say_amount(k, a);
	finding_raise(k, in->place, c->at,
	    "%.*s of %.*s is no amount that can be measured out. Which unit is meant?",
	    SAY(said), SAY(in->item));
}

static void
check_told(struct check *k, const struct remark *r)
{
	finding_raise(k, r->place, (struct spot){r->dish, r->part, r->step},
	    "\"%.*s\" is no amount of %.*s that can be measured out. Which unit is meant?",
	    SAY(r->text), SAY(r->detail));
}

/* ---- a gas mark at the end of a chain ------------------------------------- */

enum { CHAIN = 110 };

/* Something happens between the two: they are no two names of one heat. */
static bool
goes_on(const struct check *k, struct place a, struct place b)
{
	static const char *const words[] = {
	    "turn", " down", " up ", "minute", "hour", "then", "lower", "drop", "raise"};
	struct str between = finding_words(k, a.span.end, b.span.beg);

	for (size_t i = 0; i < sizeof words / sizeof *words; i++)
		if (str_find(between, str_of(words[i])) < between.n)
			return true;
	return false;
}

/* "180 Celsius, or 160 if yours has a fan, and on gas that's mark 7": the mark
 * fits none of the degrees before it. */
static void
check_mark(struct check *k, size_t at)
{
	const struct measure *mark = &k->draft->measure[at], *first = NULL;

	for (size_t i = at; i-- > 0;) {
		const struct measure *o = &k->draft->measure[i];

		if (o->place.span.end + CHAIN < mark->place.span.beg ||
		    goes_on(k, o->place, mark->place))
			break;
		if (o->kind != MEASURE_TEMPERATURE || o->aside || !o->value.known ||
		    !o->value.unit || !o->value.unit->has_base)
			continue;
		if (degrees_agree(k, o, mark))
			return;
		first = o;
	}
	if (first)
		check_degrees(k, first, mark);
}

static void
check_marks(struct check *k)
{
	for (size_t i = 1; i < k->draft->measures; i++) {
		const struct measure *m = &k->draft->measure[i];

		if (m->kind == MEASURE_TEMPERATURE && !m->aside && m->value.known &&
		    m->value.unit && !m->value.unit->has_base)
			check_mark(k, i);
	}
}

void
check_unit_mismatch(struct check *k)
{
	struct cursor c = walk(k->draft);

	check_marks(k);

	for (size_t i = 1; i < k->draft->measures; i++) {
		const struct measure *a = &k->draft->measure[i - 1], *b = a + 1;

		if (!b->converted || b->aside || !a->value.known || !b->value.known ||
		    !a->value.unit || !b->value.unit)
			continue;
		if (b->kind == MEASURE_TEMPERATURE && a->kind == MEASURE_TEMPERATURE)
			check_degrees(k, a, b);
		else if (has_base(&a->value) && has_base(&b->value)) {
			check_amounts(k, a, b);
			if (a->value.unit->dimension != b->value.unit->dimension)
				check_weight(k, a, b);
		}
	}
	for (size_t i = 0; i < k->draft->remarks; i++)
		if (k->draft->remark[i].kind == REMARK_NO_AMOUNT)
			check_told(k, &k->draft->remark[i]);
	while (walk_ingredient(&c))
		check_dimension(k, &c);
}

/* ---- mixed-units --------------------------------------------------------- */

enum { SYSTEM_NONE = 0, SYSTEM_METRIC = 1, SYSTEM_US = 2 };

/* Cups are as good as metric where the metric cup is used. */
static unsigned
system_of(const struct draft *d, const struct amount *a)
{
	const struct unit *u = a->unit;
	bool us = d->region && strcmp(d->region, "us") == 0;

	/* a handful is of no system */
	if (!a->known || !u || !u->has_base ||
	    (u->dimension != DIM_MASS && u->dimension != DIM_VOLUME))
		return SYSTEM_NONE;
	if (u->metric)
		return SYSTEM_METRIC;
	if (word_in(u->name, "teaspoon tablespoon dessertspoon pinch dash") ||
	    (!us && word_in(u->name, "cup pint")))
		return SYSTEM_NONE;
	return SYSTEM_US;
}

/* Some value of the dish is given in both systems: the show is bilingual. */
static bool
gives_both(const struct check *k, int dish)
{
	for (size_t i = 0; i < k->draft->measures; i++)
		if (k->draft->measure[i].converted &&
		    finding_spot(k, k->draft->measure[i].place).dish == dish)
			return true;
	return false;
}

static void
check_systems(struct check *k, const struct dish *d, int dish)
{
	const struct ingredient *first[3] = {NULL};
	struct str metric, us;

	for (size_t p = 0; p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].ingredients; i++) {
			const struct ingredient *in = &d->part[p].ingredient[i];
			unsigned system = system_of(k->draft, &in->amount);

			if (!first[system] || is_before(in->place, first[system]->place))
				first[system] = in;
		}
	if (!first[SYSTEM_METRIC] || !first[SYSTEM_US] || gives_both(k, dish))
		return;
	metric = say_amount(k, &first[SYSTEM_METRIC]->amount);
	us = say_amount(k, &first[SYSTEM_US]->amount);
	finding_raise(k, first[SYSTEM_US]->place, (struct spot){dish, -1, -1},
	    "one dish, two systems: %.*s of %.*s, but %.*s of %.*s. Readers own one kind "
	    "of "
	    "scale: keep to one, or give both",
	    SAY(us), SAY(first[SYSTEM_US]->item), SAY(metric),
	    SAY(first[SYSTEM_METRIC]->item));
}

/* Weighed in one place, measured by volume in another. */
static void
check_kinds(struct check *k, const struct cursor *c)
{
	const struct ingredient *in = c->ingredient;
	const struct amount *weight = NULL, *volume = NULL;
	struct str a, b;

	for (size_t i = 0; i < in->uses && in->said; i++) {
		const struct amount *s = &in->said[i];

		if (!s->known || !s->unit || word_in(s->unit->name, "teaspoon tablespoon"))
			continue;
		if (s->unit->dimension == DIM_MASS)
			weight = s;
		else if (s->unit->dimension == DIM_VOLUME && s->unit->has_base)
			volume = s;
	}
	if (!weight || !volume || gives_both(k, c->at.dish))
		return;
	a = say_amount(k, weight);
	b = say_amount(k, volume);
	finding_raise(k, in->place, c->at,
	    "%.*s is weighed in one place (%.*s) and measured by volume in another (%.*s). "
	    "Keep "
	    "to one",
	    SAY(in->item), SAY(a), SAY(b));
}

void
check_mixed_units(struct check *k)
{
	struct cursor c = walk(k->draft);

	for (size_t i = 0; i < k->draft->dishes; i++)
		check_systems(k, &k->draft->dish[i], (int)i);
	while (walk_ingredient(&c))
		check_kinds(k, &c);
}

/* ---- ambiguous-unit ------------------------------------------------------ */

static bool
is_liquid(const struct ingredient *in)
{
	return in->liquid || food_is(in, "stock water oil wine beer spirit beverage");
}

/* Where the region is a guess and the script has measures of both systems, the
 * first amount in the unit. */
static void
check_region_unit(struct check *k, const char *unit)
{
	struct cursor c = walk(k->draft);
	bool metric = false;
	const struct ingredient *first = NULL;
	struct spot spot = {-1, -1, -1};
	struct str said;

	while (walk_ingredient(&c)) {
		const struct amount *a = &c.ingredient->amount;

		metric = metric || system_of(k->draft, a) == SYSTEM_METRIC;
		if (!a->known || !a->unit || !str_is_z(a->unit->name, unit) ||
		    (first && !is_before(c.ingredient->place, first->place)))
			continue;
		first = c.ingredient;
		spot = c.at;
	}
	if (!first || !metric)
		return;
	said = say_amount(k, &first->amount);
	finding_raise(k, first->place, spot,
	    "%.*s of %.*s: a %s has another size in another country, and the script mixes "
	    "metric and other measures. Set the region, or give millilitres",
	    SAY(said), SAY(first->item), unit);
}

void
check_ambiguous_unit(struct check *k)
{
	static const char *const sized[] = {"pint", "cup"};
	struct cursor c = walk(k->draft);

	while (walk_ingredient(&c)) {
		const struct amount *a = &c.ingredient->amount;
		struct str said;

		if (!a->known || !a->unit || !str_is_z(a->unit->name, "ounce") ||
		    !is_liquid(c.ingredient))
			continue;
		said = say_amount(k, a);
		finding_raise(k, c.ingredient->place, c.at,
		    "%.*s of %.*s may be weight or volume. Say fluid ounces, or give "
		    "millilitres",
		    SAY(said), SAY(c.ingredient->item));
	}
	for (size_t i = 0; !k->draft->region_stated && i < 2; i++)
		check_region_unit(k, sized[i]);
}
