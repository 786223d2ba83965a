/* SPDX-License-Identifier: ISC */
/*
 * Rounding to the measures of a kitchen, and how they print.
 */
#include "house/kitchen.h"

#include "base/print.h"

/* NIST SP 430: a US cup is 236.5882365 ml, a teaspoon a 48th of it. NIST
 * Handbook 44: the ounce and the inch. */
static const struct ratio teaspoon_ml = {157725491, 32000000};
static const struct ratio ounce_g = {45359237, 1600000};
static const struct ratio inch_mm = {127, 5};

struct spoons
kitchen_us_spoons(void)
{
	return (struct spoons){teaspoon_ml, {3, 1}, {48, 1}, true};
}

static bool
is_below(struct ratio v, int64_t limit)
{
	return ratio_order(v, ratio_int(limit)) < 0;
}

static struct ratio
distance(struct ratio a, struct ratio b)
{
	struct ratio d = ratio_sub(a, b);

	return d.num < 0 ? (struct ratio){-d.num, d.den} : d;
}

static struct ratio
part_of(struct ratio v, int64_t num, int64_t den)
{
	return ratio_mul(v, ratio_make(num, den));
}

static struct measured
one(struct ratio n, enum tool tool)
{
	struct measured m = {.terms = n.num > 0};

	m.term[0] = (struct term){n, tool};
	return m;
}

static struct measured
two(struct term a, struct term b)
{
	struct measured m = {.terms = 2};

	m.term[0] = a;
	m.term[1] = b;
	return m;
}

/* ---- spoons and cups ---------------------------------------------------- */

static int64_t
percent(enum closeness how)
{
	return how == CLOSE ? 2 : how == ABOUT ? 6 : 100;
}

static bool
is_close(struct ratio got, struct ratio v, enum closeness how)
{
	return ratio_order(distance(got, v), part_of(v, percent(how), 100)) <= 0;
}

/* To the nearest quarter or third, whichever is nearer. */
static struct ratio
round_cup(struct ratio v)
{
	struct ratio quarter = ratio_round_to(v, ratio_make(1, 4));
	struct ratio third = ratio_round_to(v, ratio_make(1, 3));

	return ratio_order(distance(third, v), distance(quarter, v)) < 0 ? third : quarter;
}

/* Below a quarter of a cup: "1½ tbsp", "1 tbsp plus 1 tsp", "¼ tsp". */
static struct measured
small_spoons(struct ratio tsp, const struct spoons *s, enum closeness how)
{
	bool eighth = ratio_order(tsp, ratio_make(3, 16)) < 0;
	struct ratio rest = ratio_round_to(tsp, ratio_make(1, eighth ? 8 : 4));
	struct ratio tbsp = ratio_div(tsp, s->tablespoon);
	int64_t whole = tbsp.num / tbsp.den;

	if (ratio_order(tsp, ratio_make(3, 32)) < 0)
		return one(ratio_int(1), TOOL_PINCH);
	if (ratio_order(rest, s->tablespoon) < 0)
		return one(rest, TOOL_TEASPOON);
	if (how != CLOSE || whole == 0)
		return one(ratio_round_to(tbsp, ratio_make(1, 2)), TOOL_TABLESPOON);
	rest = ratio_sub(rest, ratio_mul(ratio_int(whole), s->tablespoon));
	tbsp = ratio_add(ratio_int(whole), ratio_div(rest, s->tablespoon));
	if (ratio_mul(tbsp, ratio_int(2)).den == 1)
		return one(tbsp, TOOL_TABLESPOON);
	return two((struct term){ratio_int(whole), TOOL_TABLESPOON},
	    (struct term){rest, TOOL_TEASPOON});
}

/* A cup measure and what is spooned in after it. */
struct pair {
	struct ratio off; /* teaspoons that the pair is off */
	struct measured m;
};

/* Takes cup plus the rest in steps of a spoon, if it is nearer than the best. */
static void
offer_pair(struct pair *best, struct ratio tsp, const struct spoons *s, struct ratio cup,
    struct term step)
{
	struct ratio spoon = step.tool == TOOL_TABLESPOON ? s->tablespoon : ratio_int(1);
	struct ratio rest = ratio_sub(tsp, ratio_mul(cup, s->cup));
	struct ratio n = ratio_round_to(ratio_div(rest, spoon), step.n);
	struct ratio off = distance(ratio_mul(n, spoon), rest);

	if (cup.num <= 0 || n.num <= 0 || rest.num < 0 ||
	    ratio_order(rest, ratio_div(s->cup, ratio_int(4))) >= 0 ||
	    ratio_order(off, best->off) >= 0)
		return;
	best->off = off;
	best->m = two((struct term){cup, TOOL_CUP}, (struct term){n, step.tool});
}

enum { PARTS = 7, STEPS = 3 };

/* "¼ cup plus 3 tbsp". What was multiplied wants whole spoons first, to come out
 * even; what was converted the fuller cup first, to be scooped fast. */
static struct measured
cup_and_spoons(struct ratio tsp, const struct spoons *s, enum closeness how)
{
	static const struct ratio parts[PARTS] = {
	    {3, 4}, {2, 3}, {1, 2}, {1, 3}, {1, 4}, {0, 1}, {-1, 4}};
	static const struct term steps[STEPS] = {
	    {{1, 1}, TOOL_TABLESPOON}, {{1, 2}, TOOL_TABLESPOON}, {{1, 1}, TOOL_TEASPOON}};
	struct ratio cups = ratio_div(tsp, s->cup);
	struct ratio whole = ratio_int(cups.num / cups.den);
	struct ratio enough = part_of(tsp, 1, how == CLOSE ? 200 : 50);
	struct pair best = {.m = one(round_cup(cups), TOOL_CUP)};

	best.off = distance(ratio_mul(best.m.term[0].n, s->cup), tsp);
	for (size_t i = 0; i < PARTS * STEPS; i++) {
		size_t part = how == CLOSE ? i % PARTS : i / STEPS;
		size_t step = how == CLOSE ? i / PARTS : i % STEPS;

		if (ratio_order(best.off, enough) <= 0)
			break;
		offer_pair(&best, tsp, s, ratio_add(whole, parts[part]), steps[step]);
	}
	return best.m;
}

struct measured
kitchen_spoons(struct ratio tsp, const struct spoons *s, enum closeness how)
{
	struct ratio cups = ratio_div(tsp, s->cup), near = round_cup(cups);

	if (tsp.num <= 0)
		return (struct measured){.terms = 0};
	if (ratio_order(cups, ratio_make(100 - (how == ABOUT ? 6 : 2), 400)) < 0)
		return small_spoons(tsp, s, how);
	if (!s->cups)
		return one(ratio_round_to(ratio_div(tsp, s->tablespoon), ratio_make(1, 2)),
		    TOOL_TABLESPOON);
	if (!is_below(cups, 4) || is_close(near, cups, how))
		return one(near, TOOL_CUP);
	return cup_and_spoons(tsp, s, how);
}

struct measured
kitchen_us_volume(struct ratio ml, enum closeness how)
{
	struct spoons us = kitchen_us_spoons();
	struct ratio tsp = ratio_div(ml, us.teaspoon);

	if (is_below(ml, 3000))
		return kitchen_spoons(tsp, &us, how);
	return one(ratio_round_to(part_of(ratio_div(tsp, us.cup), 1, 4), ratio_make(1, 4)),
	    TOOL_QUART);
}

/* ---- the rest ------------------------------------------------------------ */

struct measured
kitchen_us_mass(struct ratio g, enum closeness how)
{
	struct ratio oz = ratio_div(g, ounce_g);
	int64_t whole = ratio_round(oz);

	if (whole < 16)
		return one(
		    ratio_round_to(oz, ratio_make(1, is_below(oz, 8) ? 4 : 2)), TOOL_OUNCE);
	if (how == ROUGH || whole >= 80)
		return one(
		    ratio_round_to(part_of(oz, 1, 16), ratio_make(1, 4)), TOOL_POUND);
	if (whole % 4 == 0)
		return one(ratio_make(whole, 16), TOOL_POUND);
	return two((struct term){ratio_int(whole / 16), TOOL_POUND},
	    (struct term){ratio_int(whole % 16), TOOL_OUNCE});
}

/* 1 below 20, 5 below 100; above, 10 or the 25 that recipes count in, whichever
 * is nearer. Small weights keep what a fine scale shows. */
static struct ratio
round_metric(struct ratio v)
{
	struct ratio tens = ratio_round_to(v, ratio_int(10));
	struct ratio quarters = ratio_round_to(v, ratio_int(25));

	if (is_below(v, 1))
		return ratio_round_to(v, ratio_make(1, 10));
	if (is_below(v, 5))
		return ratio_round_to(v, ratio_make(1, 2));
	if (is_below(v, 100))
		return ratio_round_to(v, ratio_int(is_below(v, 20) ? 1 : 5));
	return ratio_order(distance(quarters, v), distance(tens, v)) < 0 ? quarters : tens;
}

struct measured
kitchen_grams(struct ratio g)
{
	struct ratio v = round_metric(g);

	if (is_below(v, 1000))
		return one(v, TOOL_GRAM);
	v = ratio_round_to(g, ratio_int(is_below(g, 2500) ? 10 : 50));
	return one(part_of(v, 1, 1000), TOOL_KILOGRAM);
}

struct measured
kitchen_millilitres(struct ratio ml)
{
	struct ratio v = round_metric(ml);

	if (is_below(v, 1000))
		return one(v, TOOL_MILLILITRE);
	v = ratio_round_to(ml, ratio_int(is_below(ml, 2500) ? 50 : 100));
	return one(part_of(v, 1, 1000), TOOL_LITRE);
}

struct measured
kitchen_inches(struct ratio mm)
{
	struct ratio in = ratio_div(mm, inch_mm);
	int64_t part = is_below(in, 2) ? 8 : is_below(in, 6) ? 4 : 1;

	return one(ratio_round_to(in, ratio_make(1, part)), TOOL_INCH);
}

/* To the millimetre below 2 cm, to the half centimetre below 10. */
struct measured
kitchen_centimetres(struct ratio mm)
{
	struct ratio cm = part_of(mm, 1, 10);
	int64_t part = is_below(cm, 2) ? 10 : is_below(cm, 10) ? 2 : 1;

	return one(ratio_round_to(cm, ratio_make(1, part)), TOOL_CENTIMETRE);
}

/* ---- in print ------------------------------------------------------------ */

static const struct {
	const char *brief, *briefs, *word, *words;
	bool decimal;
} tools[] = {
    [TOOL_PINCH] = {"pinch", "pinches", "pinch", "pinches", false},
    [TOOL_TEASPOON] = {"tsp", "tsp", "teaspoon", "teaspoons", false},
    [TOOL_TABLESPOON] = {"tbsp", "tbsp", "tablespoon", "tablespoons", false},
    [TOOL_CUP] = {"cup", "cups", "cup", "cups", false},
    [TOOL_QUART] = {"quart", "quarts", "quart", "quarts", false},
    [TOOL_OUNCE] = {"oz", "oz", "ounce", "ounces", false},
    [TOOL_POUND] = {"lb", "lb", "pound", "pounds", false},
    [TOOL_GRAM] = {"g", "g", "gram", "grams", true},
    [TOOL_KILOGRAM] = {"kg", "kg", "kilogram", "kilograms", true},
    [TOOL_MILLILITRE] = {"ml", "ml", "millilitre", "millilitres", true},
    [TOOL_LITRE] = {"litre", "litres", "litre", "litres", true},
    [TOOL_INCH] = {"in", "in", "inch", "inches", false},
    [TOOL_CENTIMETRE] = {"cm", "cm", "centimetre", "centimetres", true},
};

static void
put_range(struct buf *b, const struct term *min, struct ratio max, bool words)
{
	bool many = ratio_order(max, ratio_int(1)) > 0;
	enum tool t = min->tool;

	if (tools[t].decimal)
		print_decimals(b, min->n, max);
	else
		print_range(b, min->n, max);
	buf_put_char(b, ' ');
	if (words)
		buf_put_z(b, many ? tools[t].words : tools[t].word);
	else
		buf_put_z(b, many ? tools[t].briefs : tools[t].brief);
}

static void
put_terms(struct buf *b, const struct measured *m, bool words)
{
	put_range(b, &m->term[0], m->term[0].n, words);
	if (m->terms < 2)
		return;
	buf_put_z(b, m->term[0].tool == TOOL_POUND ? " " : " plus ");
	put_range(b, &m->term[1], m->term[1].n, words);
}

static bool
is_same(const struct measured *a, const struct measured *b)
{
	for (size_t i = 0; i < a->terms; i++)
		if (a->term[i].tool != b->term[i].tool ||
		    ratio_order(a->term[i].n, b->term[i].n) != 0)
			return false;
	return a->terms == b->terms;
}

void
kitchen_put(
    struct buf *b, const struct measured *min, const struct measured *max, bool words)
{
	if (min->terms == 0 || max->terms == 0)
		return;
	if (min->terms == 1 && max->terms == 1 && min->term[0].tool == max->term[0].tool) {
		put_range(b, &min->term[0], max->term[0].n, words);
		return;
	}
	put_terms(b, min, words);
	if (is_same(min, max))
		return;
	buf_put_z(b, " to ");
	put_terms(b, max, words);
}
