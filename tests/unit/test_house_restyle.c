/* SPDX-License-Identifier: ISC */
/*
 * Rescaling: what is printed after it, row by row, and what holds over every
 * script of the corpus.
 */
#include "../support/draft_text.h"
#include "../support/expect.h"
#include "../support/hold.h"
#include "../support/source.h"
#include "base/slot.h"
#include "house/portion.h"
#include "sample.h"
#include "write/text.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>

#include <cmocka.h>

static struct arena arena;

static const struct unit unit_tablespoon = {Z("tablespoon"), Z("tablespoons"), Z("tbsp"),
    DIM_VOLUME, false, true, {473176473, 32000000}, {0, 1}};
static const struct unit unit_ounce = {
    Z("ounce"), Z("ounces"), Z("oz"), DIM_MASS, false, true, {45359237, 1600000}, {0, 1}};
static const struct unit unit_pound = {
    Z("pound"), Z("pounds"), Z("lb"), DIM_MASS, false, true, {45359237, 100000}, {0, 1}};
static const struct unit unit_pint = {
    Z("pint"), Z("pints"), Z("pt"), DIM_VOLUME, false, true, {473176473, 1000000}, {0, 1}};
static const struct unit unit_pinch = {.name = Z("pinch"), .plural = Z("pinches")};
static const struct unit unit_clove = {.name = Z("clove"), .plural = Z("cloves")};
static const struct unit unit_stick = {.name = Z("stick"), .plural = Z("sticks")};

/* A draft with one dish of one part, for 4. */
static struct draft *
draft_of(const struct ingredient *in, size_t n)
{
	struct draft *d = arena_new(&arena, struct draft);

	d->arena = &arena;
	d->script = arena_new(&arena, struct script);
	d->dish = arena_new(&arena, struct dish);
	d->dishes = 1;
	d->dish->yield = amount_of(ratio_int(4), NULL);
	d->dish->yield_unit = STR("serving");
	d->dish->part = arena_new(&arena, struct part);
	d->dish->parts = 1;
	d->dish->part->ingredient = arena_grow(&arena, in, n, n, sizeof *in);
	d->dish->part->ingredients = n;
	return d;
}

struct row {
	struct ingredient in;
	struct ratio by;
	const char *want;
};

#define EGG(many, what, name)                                                              \
	{                                                                                  \
		.item = Z(what), .key = Z(name), .group = Z("egg"), .amount = {            \
			true,                                                              \
			true,                                                              \
			{many, 1},                                                         \
			{many, 1},                                                         \
			NULL                                                               \
		}                                                                          \
	}
#define FOOD(num, den, u, what)                                                            \
	{                                                                                  \
		.item = Z(what), .key = Z(what), .amount = {                               \
			true,                                                              \
			true,                                                              \
			{num, den},                                                        \
			{num, den},                                                        \
			u                                                                  \
		}                                                                          \
	}

/* One large egg weighs 50 g, a cup of egg 243 g, a yolk 17 g, a white 33 g: USDA
 * ARS, SR28, NDB 01123, 01124, 01125. */
static const struct row rows[] = {
    {EGG(1, "large egg", "egg"), {4, 3}, "1 large egg plus 1 tbsp beaten egg"},
    {EGG(1, "large egg", "egg"), {2, 1}, "2 large eggs"},
    {EGG(2, "eggs", "egg"), {1, 2}, "1 egg"},
    {EGG(1, "egg", "egg"), {1, 2}, "1 tbsp plus 2 tsp beaten egg"},
    {EGG(1, "egg", "egg"), {1, 4}, "2 tsp beaten egg"},
    {EGG(3, "eggs", "egg"), {3, 2}, "4 eggs plus 1 tbsp plus 2 tsp beaten egg"},
    {EGG(1, "egg", "egg"), {1, 100}, "1 tsp beaten egg"},
    {EGG(1, "egg", "egg"), {99, 100}, "1 egg"},
    {EGG(1, "egg yolk", "egg yolk"), {3, 2}, "1 egg yolk plus 2 tsp beaten egg yolk"},
    {EGG(3, "egg whites", "egg white"), {1, 2}, "1 egg white plus 1 tbsp beaten egg white"},
    {FOOD(3, 1, &unit_teaspoon, "sugar"), {1, 1}, "3 tsp sugar"},
    {FOOD(1, 1, &unit_teaspoon, "sugar"), {3, 1}, "1 tbsp sugar"},
    {FOOD(1, 1, &unit_tablespoon, "sugar"), {4, 1}, "¼ cup sugar"},
    {FOOD(1, 2, &unit_cup, "water"), {1, 2}, "¼ cup water"},
    {FOOD(1, 3, &unit_cup, "water"), {1, 2}, "2 tbsp plus 2 tsp water"},
    {FOOD(1, 4, &unit_teaspoon, "salt"), {1, 4}, "1 pinch salt"},
    {FOOD(3, 4, &unit_teaspoon, "salt"), {3, 2}, "1¼ tsp salt"},
    {FOOD(1, 1, &unit_pint, "cream"), {3, 2}, "1½ pints cream"},
    {FOOD(175, 1, &unit_gram, "rice"), {1, 2}, "90 g rice (about ½ cup)"},
    {FOOD(500, 1, &unit_gram, "beef"), {3, 1}, "1.5 kg beef (3 lb 5 oz)"},
    {FOOD(250, 1, &unit_ml, "stock"), {6, 1}, "1.5 litres stock (6⅓ cups)"},
    {FOOD(12, 1, &unit_ounce, "beef"), {2, 1}, "1½ lb beef (680 g)"},
    {FOOD(1, 1, &unit_pound, "beef"), {1, 2}, "8 oz beef (225 g)"},
    {FOOD(1, 1, NULL, "onion"), {2, 1}, "2 onions"},
    {FOOD(1, 1, NULL, "onion"), {4, 3}, "1⅓ onions"},
    {FOOD(1, 1, NULL, "onion"), {1, 20}, "¼ onion"},
    {FOOD(7, 1, NULL, "tomato"), {3, 2}, "11 tomatoes"},
    {FOOD(1, 1, NULL, "radish"), {3, 1}, "3 radishes"},
    {FOOD(3, 1, &unit_clove, "garlic"), {1, 2}, "1½ cloves garlic"},
    {FOOD(1, 1, &unit_pinch, "salt"), {2, 1}, "2 pinches salt"},
    {FOOD(1, 1, &unit_pinch, "salt"), {1, 4}, "1 pinch salt"},
    {FOOD(1, 1, &unit_stick, "butter"), {3, 2}, "1½ sticks butter"},
    {{.item = Z("capers"), .amount = {.present = true}}, {2, 1}, "capers"},
    {{.item = Z("white beans"),
	 .key = Z("white bean"),
	 .amount = {true, true, {2, 1}, {2, 1}, &unit_can},
	 .size = {true, true, {400, 1}, {400, 1}, &unit_gram}},
	{1, 2}, "1 (400 g/14 oz) can white beans"},
    {{.item = Z("steak"),
	 .key = Z("steak"),
	 .size = {true, true, {10, 1}, {10, 1}, &unit_ounce}},
	{2, 1}, "2 (10 oz/280 g) steaks"},
    {{.item = Z("mustard"),
	 .key = Z("mustard"),
	 .amount = {true, true, {1, 1}, {2, 1}, &unit_teaspoon}},
	{3, 1}, "1–2 tbsp mustard"},
};

static void
amounts_stay_measurable(void **state)
{
	for (size_t i = 0; i < COUNT(rows); i++) {
		struct tamis_style style = {.scale = rows[i].by};
		struct draft *d = tamis_restyle(draft_of(&rows[i].in, 1), *state, &style);
		struct house h = house_of(d, *state, &style);
		struct buf line = buf_in(&arena);

		text_ingredient(&line, &h, d->dish->part->ingredient);
		expect(buf_str(&line), rows[i].want);
	}
}

static void
alternatives_and_sums_are_rescaled(void **state)
{
	struct amount said[2] = {
	    amount_of(ratio_int(2), &unit_cup), amount_of(ratio_int(3), &unit_tablespoon)};
	struct alternative or = {STR("wasabi"), amount_of(ratio_int(2), &unit_teaspoon)};
	struct place use[2] = {{0, 0, {0, 0}}, {0, 0, {0, 0}}};
	struct ingredient in[2] = {
	    {.item = STR("flour"),
		.amount = amount_of(ratio_make(35, 16), &unit_cup),
		.divided = true,
		.said = said,
		.use = use,
		.uses = 2},
	    {.item = STR("mustard"),
		.amount = amount_of(ratio_int(1), &unit_teaspoon),
		.alternative = & or
		, .alternatives = 1},
	};
	struct draft *d = draft_of(in, 2), *twice;
	struct tamis_style style = {.scale = {3, 2}};
	struct house h = house_of(d, *state, &style);
	struct buf line = buf_in(&arena);

	text_ingredient(&line, &h, &d->dish->part->ingredient[0]);
	expect(buf_str(&line), "2 cups plus 3 tbsp flour, divided");
	twice = tamis_restyle(d, *state, &style);
	line.n = 0;
	text_ingredient(&line, &h, &twice->dish->part->ingredient[1]);
	expect(buf_str(&line), "1½ tsp mustard, or 1 tbsp wasabi");
	/* the draft that was given is as it was */
	assert_int_equal(or.amount.min.num, 2);
	assert_int_equal(d->dish->part->ingredient[1].amount.min.num, 1);
}

static struct draft *
with_step(struct ratio amount)
{
	struct ingredient butter = {.item = STR("butter"),
	    .key = STR("butter"),
	    .amount = amount_of(ratio_int(1), &unit_cup)};
	struct draft *d = draft_of(&butter, 1);
	struct buf text = buf_in(&arena), clean = buf_in(&arena);
	struct slots slots = {0};
	struct amount a = amount_of(amount, &unit_tablespoon);
	struct amount oven = amount_of(ratio_int(350), &unit_fahrenheit);
	struct step *s = arena_new(&arena, struct step);

	buf_put_z(&text, "Melt ");
	slot_put_amount(&slots, &text, &a, STR("butter"));
	buf_put_z(&text, " of the butter and bake at ");
	slot_put_temperature(&slots, &text, &oven, false);
	buf_put_z(&text, " for 20 minutes.");
	s->slot = slots_take(&slots, &clean, buf_str(&text), &s->slots);
	s->text = buf_str(&clean);
	d->dish->part->step = s;
	d->dish->part->steps = 1;
	return d;
}

static void
amounts_in_steps_are_rescaled(void **state)
{
	static const struct {
		struct ratio by;
		enum tamis_units units;
		const char *want;
	} rows[] = {
	    {{1, 1}, UNITS_SAID,
		"Melt 2 tbsp of the butter and bake at 350 °F (180 °C) for 20 minutes."},
	    {{2, 1}, UNITS_SAID,
		"Melt ¼ cup of the butter and bake at 350 °F (180 °C) for 20 minutes."},
	    {{1, 2}, UNITS_US,
		"Melt 1 tbsp of the butter and bake at 350 °F for 20 minutes."},
	    {{4, 1}, UNITS_METRIC,
		"Melt 110 g of the butter and bake at 180 °C for 20 minutes."},
	    {{4, 1}, UNITS_BOTH,
		"Melt 110 g (½ cup) of the butter and bake at 180 °C (350 °F) for 20 "
		"minutes."},
	};

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct tamis_style style = {.units = rows[i].units, .scale = rows[i].by};
		struct draft *d = with_step(ratio_int(2));
		struct step *s;

		d->dish->part->ingredient->metric = amount_of(ratio_int(227), &unit_gram);
		d = tamis_restyle(d, *state, &style);
		s = d->dish->part->step;
		expect(s->text, rows[i].want);
		/* and can be again */
		style.scale = ratio_div(ratio_int(1), rows[i].by);
		style.units = UNITS_SAID;
		expect(tamis_restyle(d, *state, &style)->dish->part->step->text,
		    "Melt 2 tbsp of the butter and bake at 350 °F (180 °C) for 20 "
		    "minutes.");
	}
}

static void
servings_ask_for_as_little_as_it_takes(void **state)
{
	static const struct {
		const char *unit;
		struct ratio min, max;
		unsigned servings;
		struct ratio by;
		const char *yield;
	} rows[] = {
	    {"serving", {4, 1}, {4, 1}, 8, {2, 1}, "Serves 8"},
	    {"serving", {4, 1}, {4, 1}, 4, {0, 0}, "Serves 4"},
	    {"serving", {4, 1}, {6, 1}, 5, {0, 0}, "Serves 5"},
	    {"serving", {4, 1}, {6, 1}, 12, {2, 1}, "Serves 12"},
	    {"serving", {4, 1}, {6, 1}, 2, {1, 2}, "Serves 2"},
	    {"portion", {4, 1}, {4, 1}, 6, {3, 2}, "Serves 6"},
	    {"cookie", {12, 1}, {12, 1}, 6, {0, 0}, "Makes 12 cookies"},
	};

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct tamis_style style = {.servings = rows[i].servings};
		struct draft *d = draft_of(NULL, 0);
		struct house h = house_of(d, *state, &style);
		struct buf b = buf_in(&arena);

		d->dish->yield =
		    (struct amount){true, true, rows[i].min, rows[i].max, NULL};
		d->dish->yield_unit = str_of(rows[i].unit);
		d = tamis_restyle(d, *state, &style);
		text_yield(&b, &h, d->dish);
		expect(buf_str(&b), rows[i].yield);
		assert_int_equal(d->dish->scale.num, rows[i].by.num);
		assert_int_equal(d->dish->scale.den, rows[i].by.den);
	}
}

static void
recipes_say_what_was_not_rescaled(void **state)
{
	static const struct {
		struct ratio by;
		unsigned servings;
		const char *says;
	} rows[] = {
	    {{2, 1}, 0,
		"- Amounts are twice the script's; times, temperatures and pan "
		"sizes are not rescaled: roasting tin (9 in/23 cm)."},
	    {{1, 2}, 0, "- Amounts are half the script's;"},
	    {{3, 4}, 0, "- Amounts are ¾ of the script's;"},
	    {{3, 2}, 0, "- Amounts are 1½ times the script's;"},
	    {{0, 0}, 8, "- How many this serves was not said"},
	};

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct tamis_style style = {
		    .scale = rows[i].by, .servings = rows[i].servings};
		struct draft *d = tamis_restyle(sample_draft(&arena), *state, &style);
		struct buf out = buf_in(&arena);

		tamis_writer(0)->write(d, *state, &style, &out);
		if (str_find(buf_str(&out), str_of(rows[i].says)) == out.n)
			fail_msg("%s\n%.*s", rows[i].says, (int)out.n, out.v);
	}
}

/* ---- what holds over the corpus ------------------------------------------ */

static const struct ratio factors[] = {{2, 1}, {1, 2}, {3, 2}, {4, 3}, {7, 1}, {1, 10}};

static void
over_corpus(void (*holds)(const struct draft *d, const struct grammar *g))
{
	struct paths gold = paths_find(&arena, "corpus/*.gold.tsv");
	struct tamis_options o = {.region = NULL};
	struct err e = {0};
	struct grammar *g = tamis_grammar_open(NULL, "en", &e);

	assert_non_null(g);
	assert_true(gold.n >= 20);
	for (size_t i = 0; i < gold.n; i++) {
		struct str path = script_of_gold(&arena, gold.v[i]), source;
		struct draft *d;

		assert_true(source_read(&arena, path.p, &source, &e));
		d = tamis_draft(g, &o, source, file_name(path), &e);
		assert_non_null(d);
		holds(d, g);
		tamis_draft_free(d);
	}
	tamis_grammar_close(g);
}

static struct str
written(const struct draft *d, const struct grammar *g, const char *format)
{
	struct tamis_style plain = {0};
	struct buf out = buf_in(d->arena);

	tamis_writer_find(format)->write(d, g, &plain, &out);
	return buf_str(&out);
}

static void
comes_back(const struct draft *d, const struct grammar *g)
{
	static const char *const formats[] = {"json", "markdown", "shopping"};

	for (size_t i = 0; i < COUNT(factors); i++) {
		struct tamis_style there = {.scale = factors[i]}, back = there;
		const struct draft *again;

		back.scale = ratio_div(ratio_int(1), factors[i]);
		again = tamis_restyle(tamis_restyle(d, g, &there), g, &back);
		for (size_t k = 0; k < COUNT(formats); k++)
			if (!str_is(
				written(d, g, formats[k]), written(again, g, formats[k])))
				fail_msg("%s: %s differs after times %g and back",
				    d->script->name.p, formats[k],
				    ratio_double(factors[i]));
	}
}

static void
scaling_there_and_back_gives_the_same_draft(void **state)
{
	(void)state;
	over_corpus(comes_back);
}

/* Grams or millilitres of a printed amount in metric; -1 for any other. */
static double
printed_metric(struct str s)
{
	char text[64];
	char *unit;
	double v;

	snprintf(text, sizeof text, "%.*s", (int)s.n, s.n ? s.p : "");
	v = strtod(text, &unit);
	if (strcmp(unit, " g") == 0 || strcmp(unit, " ml") == 0)
		return v;
	return strcmp(unit, " kg") == 0 || strncmp(unit, " litre", 6) == 0 ? v * 1000 : -1;
}

/* The most that rounding can take away or add; see kitchen.h. */
static double
rounding_of(double v)
{
	return v < 20 ? 0.5 : v < 100 ? 2.5 : v < 1000 ? 5 : v < 2500 ? 25 : 50;
}

struct total {
	double printed, exact, rounding;
	size_t lines;
};

static void
add_line(struct total *t, const struct ingredient *was, const struct ingredient *is,
    const struct house *h, struct ratio by)
{
	struct portion p = portion_of(is);
	struct buf b = buf_in(&arena);
	double exact, printed;

	if (!was->metric.known || was->metric.max.num <= 0 || is->size.present ||
	    ratio_order(was->metric.min, was->metric.max) != 0)
		return;
	/* in the model it is exact */
	assert_int_equal(ratio_order(is->metric.max, ratio_mul(was->metric.max, by)), 0);
	portion_put(&b, h, &p);
	printed = printed_metric(buf_str(&b));
	if (printed < 0)
		return;
	exact = ratio_double(was->metric.max) * ratio_double(by);
	t->printed += printed;
	t->exact += exact;
	t->rounding += rounding_of(exact) + 1e-6;
	t->lines++;
}

static void
grows_in_line(const struct draft *d, const struct grammar *g)
{
	for (size_t f = 0; f < COUNT(factors); f++) {
		struct tamis_style style = {.units = UNITS_METRIC, .scale = factors[f]};
		const struct draft *now = tamis_restyle(d, g, &style);
		struct house h = house_of(now, g, &style);
		struct total t = {0, 0, 0, 0};

		for (size_t i = 0; i < d->dishes; i++)
			for (size_t k = 0; k < d->dish[i].parts; k++)
				for (size_t j = 0; j < d->dish[i].part[k].ingredients; j++)
					add_line(&t, &d->dish[i].part[k].ingredient[j],
					    &now->dish[i].part[k].ingredient[j], &h,
					    factors[f]);
		if (t.printed - t.exact > t.rounding || t.exact - t.printed > t.rounding)
			fail_msg("%s times %g: %g printed, %g meant, %g for rounding",
			    d->script->name.p, ratio_double(factors[f]), t.printed, t.exact,
			    t.rounding);
	}
}

static void
total_mass_grows_in_line(void **state)
{
	(void)state;
	over_corpus(grows_in_line);
}

static int
open_tables(void **state)
{
	arena_init(&arena);
	return hold_tables(state);
}

static int
close_tables(void **state)
{
	arena_release(&arena);
	return drop_tables(state);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(amounts_stay_measurable),
	    cmocka_unit_test(alternatives_and_sums_are_rescaled),
	    cmocka_unit_test(amounts_in_steps_are_rescaled),
	    cmocka_unit_test(servings_ask_for_as_little_as_it_takes),
	    cmocka_unit_test(recipes_say_what_was_not_rescaled),
	    cmocka_unit_test(scaling_there_and_back_gives_the_same_draft),
	    cmocka_unit_test(total_mass_grows_in_line),
	};

	return cmocka_run_group_tests(tests, open_tables, close_tables);
}
