/* SPDX-License-Identifier: ISC */
/*
 * Values that cannot be right: settings that no oven has, more cayenne than a
 * dish can take, biscuits that bake for twelve hours.
 */
#include "check/facts.h"
#include "check/food.h"
#include "check/say.h"

#include <inttypes.h>

/* ---- implausible-temperature --------------------------------------------- */

/* Beyond the table's widest range by so much, in degrees Celsius, before it is
 * worth a question. */
static const struct ratio room = {10, 1};
/* Inside a food: between blood warm and just above boiling. Sugar is no food
 * that a reading inside is taken of. */
static const struct ratio inside_low = {35, 1}, inside_high = {103, 1};
/* Below boiling water up to caramel; above, only oil. */
static const struct ratio liquid_high = {190, 1};

/* The table's appliance for a step; NULL where any heat may be right. */
static const char *
appliance_of(const struct step *s)
{
	if (s->temperature.role == ROLE_OIL)
		return "fryer";
	if (!s->appliance || s->temperature.role == ROLE_LIQUID)
		return NULL;
	return strcmp(s->appliance, "deep-fryer") == 0 ? "fryer" : s->appliance;
}

/* Low heats have their uses: proving, drying, smoking cold, blanching in oil. */
static bool
may_be_low(const struct step *s)
{
	return !s->heats || s->preheats || !step_is_in(s, "oven") ||
	       s->duration.min_ms >= 2 * 3600 * 1000;
}

static bool
is_within(
    const struct check *k, const struct amount *a, struct ratio low, struct ratio high)
{
	struct ratio min, max;

	return facts_celsius(k, a->unit, a->min, &min) &&
	       facts_celsius(k, a->unit, a->max, &max) && ratio_order(min, low) >= 0 &&
	       ratio_order(max, high) <= 0;
}

/* Something hotter or colder is named: a pizza oven, a dehydrator. */
static bool
suits_equipment(const struct check *k, const struct dish *d, const struct amount *a)
{
	struct range r;

	for (size_t i = 0; i < d->equipments; i++)
		if (facts_range(k, d->equipment[i].item, "plausible", &r) &&
		    is_within(k, a, ratio_sub(r.low_c, room), ratio_add(r.high_c, room)))
			return true;
	return false;
}

/* The same number in the other scale. */
static struct amount
other_scale(const struct check *k, const struct amount *a)
{
	struct amount other = *a;

	other.unit = facts_unit(k, a->unit->metric ? "fahrenheit" : "celsius");
	return other;
}

/* What the finding says of the other scale: offered where it fits. */
static void
offer_other(struct check *k, const struct amount *a, struct ratio low, struct ratio high,
    bool exact)
{
	struct finding *f = &k->finding.v[k->finding.n - 1];
	struct amount other;

	if (!a->unit->has_base)
		return;
	other = other_scale(k, a);
	if (!other.unit || !is_within(k, &other, low, high))
		return;
	f->suggestion = say_degrees(k, &other, exact);
	f->message = arena_fmt(
	    k->arena, "%.*s; %.*s is likely", SAY(f->message), SAY(f->suggestion));
}

static void
check_setting(struct check *k, const struct cursor *c)
{
	const struct temperature *t = &c->step->temperature;
	struct amount a = {true, true, t->min, t->max, t->unit};
	const char *appliance = appliance_of(c->step);
	struct range r;
	struct ratio low, high;
	struct str said = say_setting(k, &a), words;

	if (!appliance || suits_equipment(k, c->dish, &a) ||
	    !facts_range(k, str_of(appliance), "plausible", &r) || r.high_c.num == 0)
		return;
	low = may_be_low(c->step) ? ratio_int(-1000) : ratio_sub(r.low_c, room);
	high = ratio_add(r.high_c, room);
	if (is_within(k, &a, low, high))
		return;
	words = arena_str(k->arena, str_of(appliance));
	finding_raise(k, t->place, c->at,
	    "%.*s is no setting for the %.*s (%" PRId64 " to %" PRId64 " °C, %" PRId64
	    " to %" PRId64 " °F: %.*s)",
	    SAY(said), SAY(words), ratio_round(r.low_c), ratio_round(r.high_c),
	    ratio_round(r.low_f), ratio_round(r.high_f), SAY(r.source));
	offer_other(k, &a, ratio_sub(r.low_c, room), high, false);
}

static void
check_liquid(struct check *k, const struct cursor *c)
{
	const struct temperature *t = &c->step->temperature;
	struct amount a = {true, true, t->min, t->max, t->unit};
	struct str said = say_setting(k, &a);

	if (is_within(k, &a, ratio_int(-30), liquid_high))
		return;
	finding_raise(k, t->place, c->at,
	    "%.*s is hotter than caramel; water boils at 100 °C (212 °F)", SAY(said));
	offer_other(k, &a, ratio_int(0), liquid_high, true);
}

static bool
can_be_inside(const struct check *k, const struct step *s)
{
	struct ratio max;

	if (!facts_celsius(k, s->doneness.unit, s->doneness.max, &max))
		return true;
	return ratio_order(max, inside_high) <= 0 &&
	       !(s->heats && ratio_order(max, inside_low) < 0);
}

/* What is boiled to a stage of sugar is read hotter than food is. */
static bool
is_sugar_work(const struct cursor *c)
{
	static const char *const names[] = {"jam", "jelly", "marmalade", "caramel", "fudge",
	    "toffee", "honeycomb", "praline", "brittle", "syrup", "candy", "curd"};

	for (size_t i = 0; i < sizeof names / sizeof *names; i++)
		if (words_have(c->dish->name, str_of(names[i])) ||
		    words_have(c->part->name, str_of(names[i])))
			return true;
	return false;
}

static void
check_inside(struct check *k, const struct cursor *c)
{
	const struct doneness *d = &c->step->doneness;
	struct amount a = {true, true, d->min, d->max, d->unit};
	struct str said = say_setting(k, &a);

	if (can_be_inside(k, c->step) || is_sugar_work(c))
		return;
	finding_raise(k, d->place, c->at,
	    "no food is done at %.*s inside: water boils at 100 °C (212 °F), and below 35 "
	    "°C (95 "
	    "°F) nothing is cooked",
	    SAY(said));
	offer_other(k, &a, inside_low, inside_high, true);
}

void
check_implausible_temperature(struct check *k)
{
	struct cursor c = walk(k->draft);

	while (walk_step(&c)) {
		const struct temperature *t = &c.step->temperature;

		if (t->present && t->unit && !t->inherited &&
		    t->unit->dimension == DIM_TEMPERATURE) {
			if (t->role == ROLE_LIQUID)
				check_liquid(k, &c);
			else
				check_setting(k, &c);
		}
		if (c.step->doneness.known && c.step->doneness.unit)
			check_inside(k, &c);
	}
}

/* ---- implausible-amount --------------------------------------------------- */

/* A US cup of flour weighs 125 g (USDA ARS, Standard Reference 28). */
enum { FLOUR_CUP = 125, TEASPOON_ML = 5 };

/* What flour a part has, in grams. */
static struct ratio
flour_grams(const struct part *p)
{
	struct ratio sum = {0, 1};

	for (size_t i = 0; i < p->ingredients; i++) {
		const struct ingredient *in = &p->ingredient[i];

		if (food_is(in, "flour grain nut") && in->metric.known && in->metric.unit &&
		    in->metric.unit->dimension == DIM_MASS)
			sum = ratio_add(sum, in->metric.max);
	}
	return sum;
}

static bool
in_millilitres(const struct amount *a, struct ratio *out)
{
	if (!a->known || !a->unit || a->unit->dimension != DIM_VOLUME || !a->unit->has_base)
		return false;
	*out = unit_to_base(a->unit, a->min);
	return true;
}

/* The row of leavening.tsv for the food; rows when it is no leavening. */
static size_t
leaven_row(const struct table *t, const struct ingredient *in)
{
	size_t i = 0;

	while (i < t->rows && !(food_is(in, "leavening yeast") &&
				  (words_have(in->key, table_cell(t, i, 0)) ||
				      food_is_named(in, table_cell(t, i, 0)))))
		i++;
	return i;
}

static void
raise_leaven(struct check *k, const struct cursor *c, struct ratio flour, struct str usual)
{
	struct ratio about = ratio_round_to(flour, ratio_int(5));
	struct amount weight = {true, true, about, about, facts_unit(k, "gram")};
	struct str said = say_amount(k, &c->ingredient->amount),
		   grams = say_amount(k, &weight);

	finding_raise(k, c->ingredient->place, c->at,
	    "%.*s of %.*s to %.*s of flour is far too much: %.*s to 125 g (a cup) is usual "
	    "(common practice). A smaller spoon is likely meant",
	    SAY(said), SAY(c->ingredient->item), SAY(grams), SAY(usual));
}

/* True when the flour of the part settles it, either way. */
static bool
check_leaven(struct check *k, const struct cursor *c)
{
	const struct table *t = grammar_table(k->grammar, "leavening");
	struct ratio flour = flour_grams(c->part), much, most, cups;
	size_t row = t ? leaven_row(t, c->ingredient) : 0;

	if (!t || row == t->rows || flour.num == 0 ||
	    !in_millilitres(&c->ingredient->amount, &much) ||
	    !table_number(t, row, table_column(t, "most_tsp"), &most))
		return false;
	cups = ratio_div(flour, ratio_int(FLOUR_CUP));
	if (ratio_order(much, ratio_mul(ratio_mul(cups, most), ratio_int(TEASPOON_ML))) > 0)
		raise_leaven(k, c, flour, table_cell(t, row, table_column(t, "usual")));
	return true;
}

/* A brine, a pot of pasta water, a crust: salt by the cup is right there. */
static bool
is_brined(const struct part *p, const struct ingredient *in)
{
	struct ratio salt, water;

	if (!food_is(in, "salt sugar") || !in_millilitres(&in->amount, &salt))
		return false;
	for (size_t i = 0; i < p->ingredients; i++) {
		const struct ingredient *o = &p->ingredient[i];

		if (food_is(o, "water stock") &&
		    (!in_millilitres(&o->amount, &water) ||
			ratio_order(water, ratio_mul(salt, ratio_int(6))) >= 0))
			return true;
	}
	return in->note.n > 0;
}

/* The row of amounts.tsv for the food; rows when there is none. */
static size_t
amount_row(const struct table *t, const struct ingredient *in, const char *per)
{
	size_t best = t->rows, longest = 0;
	int of = table_column(t, "food"), for_one = table_column(t, "per");

	for (size_t i = 0; i < t->rows; i++) {
		struct str food = table_cell(t, i, of);

		if (food.n > longest && str_is_z(table_cell(t, i, for_one), per) &&
		    food_is_named(in, food)) {
			best = i;
			longest = food.n;
		}
	}
	return best;
}

/* More than the row allows. A tablespoon is too much already of a food of which
 * no more than one is believable: a teaspoon is meant. */
static bool
is_beyond(const struct check *k, const struct table *t, size_t row, const struct amount *a)
{
	struct str name = table_cell(t, row, table_column(t, "unit"));
	const struct unit *u =
	    name.n ? grammar_unit(k->grammar, name, k->draft->region) : NULL;
	struct ratio most, much = a->min;
	bool spoon = u && a->unit == u && str_is_z(name, "tablespoon") &&
		     amount_row(t, &(struct ingredient){.key = table_cell(t, row, 0)},
			 "serving") == t->rows;

	if (!table_number(t, row, table_column(t, "max"), &most))
		return false;
	spoon = spoon && ratio_order(most, ratio_int(1)) == 0;
	if (u != a->unit) {
		if (!u || !a->unit || !u->has_base || !a->unit->has_base ||
		    u->dimension != a->unit->dimension)
			return false;
		most = unit_to_base(u, most);
		much = unit_to_base(a->unit, much);
	}
	return ratio_order(much, most) > (spoon ? -1 : 0);
}

/* A recipe for a crowd takes more. */
static struct amount
for_household(const struct dish *d, const struct amount *a)
{
	struct amount each = *a;
	struct ratio household = {8, 1};

	if (a->known && d->yield.known && str_is_z(d->yield_unit, "serving") &&
	    ratio_order(d->yield.min, household) > 0) {
		struct ratio share = ratio_div(household, d->yield.min);

		each.min = ratio_mul(a->min, share);
		each.max = ratio_mul(a->max, share);
	}
	return each;
}

/* Little of it goes far. Of other foods twice the table's most is let pass:
 * some dishes are made of little else. */
#define STRONG "salt pepper spice leavening yeast extract setting-agent herb"

static struct str
row_amount(const struct check *k, const struct table *t, size_t row)
{
	struct str name = table_cell(t, row, table_column(t, "unit"));
	struct amount a = {.present = true};

	a.known = table_number(t, row, table_column(t, "max"), &a.min);
	a.max = a.min;
	a.unit = name.n ? grammar_unit(k->grammar, name, k->draft->region) : NULL;
	return say_amount(k, &a);
}

static void
check_amount(struct check *k, const struct cursor *c)
{
	const struct table *t = grammar_table(k->grammar, "amounts");
	const struct ingredient *in = c->ingredient;
	struct amount each = for_household(c->dish, &in->amount);
	size_t row;
	struct str said, most;

	if (!in->amount.known || !t || check_leaven(k, c) || is_brined(c->part, in))
		return;
	row = amount_row(t, in, "recipe");
	if (!food_is(in, STRONG)) {
		each.min = ratio_mul(each.min, ratio_make(1, 2));
		each.max = ratio_mul(each.max, ratio_make(1, 2));
	}
	if (row == t->rows || !is_beyond(k, t, row, &each))
		return;
	said = say_amount(k, &in->amount);
	most = row_amount(k, t, row);
	finding_raise(k, in->place, c->at,
	    "%.*s: %.*s is far more than a dish takes (%.*s at the very most: common "
	    "practice). "
	    "Was another unit or number meant?",
	    SAY(in->item), SAY(said), SAY(most));
}

void
check_implausible_amount(struct check *k)
{
	struct cursor c = walk(k->draft);

	while (walk_ingredient(&c))
		check_amount(k, &c);
}
