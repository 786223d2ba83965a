/* SPDX-License-Identifier: ISC */
/*
 * What cups, spoons and pieces of food weigh, against a handbook: USDA ARS,
 * National Nutrient Database for Standard Reference, release 28 (SR28), by the
 * NDB number beside each row. The weights are worked out here from the weight
 * of one measure that SR28 publishes for the food.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stdio.h>

#include <cmocka.h>

#include "../support/draft_text.h"
#include "../support/expect.h"
#include "../support/hold.h"
#include "base/print.h"
#include "grammar/density.h"

struct row {
	struct ratio many;
	const char *unit, *food, *words;
	struct ratio grams;
	const char *ndb;
};

static const struct row volumes[] = {
    {{1, 1}, "cup", "all-purpose flour", "", {125, 1}, "20081"},
    {{9, 4}, "cup", "all-purpose flour", "", {1125, 4}, "20081"},
    {{3, 1}, "cup", "bread flour", "", {411, 1}, "20083"},
    {{1, 1}, "cup", "whole wheat flour", "", {120, 1}, "20080"},
    {{3, 4}, "cup", "granulated sugar", "", {150, 1}, "19335"},
    {{1, 1}, "cup", "brown sugar", "packed", {220, 1}, "19334"},
    {{1, 1}, "cup", "powdered sugar", "", {120, 1}, "19336"},
    {{1, 1}, "cup", "powdered sugar", "sifted", {100, 1}, "19336"},
    {{1, 1}, "cup", "unsalted butter", "", {227, 1}, "01145"},
    {{2, 1}, "tablespoon", "unsalted butter", "melted", {142, 5}, "01145"},
    {{1, 1}, "cup", "whole milk", "", {244, 1}, "01077"},
    {{1, 2}, "cup", "heavy cream", "", {119, 1}, "01053"},
    {{1, 1}, "cup", "heavy cream", "whipped", {120, 1}, "01053"},
    {{1, 1}, "tablespoon", "honey", "", {21, 1}, "19296"},
    {{1, 3}, "cup", "honey", "", {113, 1}, "19296"},
    {{3, 1}, "tablespoon", "olive oil", "", {81, 2}, "04053"},
    {{1, 1}, "teaspoon", "table salt", "", {6, 1}, "02047"},
    {{1, 1}, "tablespoon", "table salt", "", {18, 1}, "02047"},
    {{1, 1}, "teaspoon", "baking soda", "", {23, 5}, "18372"},
    {{2, 1}, "teaspoon", "baking powder", "", {46, 5}, "18369"},
    {{2, 1}, "teaspoon", "garlic powder", "", {31, 5}, "02020"},
    {{1, 2}, "teaspoon", "ground cinnamon", "", {13, 10}, "02010"},
    {{1, 1}, "teaspoon", "vanilla extract", "", {21, 5}, "02050"},
    {{1, 2}, "cup", "cocoa powder", "", {43, 1}, "19165"},
    {{1, 1}, "cup", "rolled oats", "", {81, 1}, "08120"},
    {{1, 1}, "cup", "long-grain white rice", "", {185, 1}, "20044"},
    {{1, 1}, "cup", "cooked white rice", "", {158, 1}, "20045"},
    {{1, 4}, "cup", "cornstarch", "", {32, 1}, "20027"},
    {{1, 1}, "cup", "breadcrumb", "dry", {108, 1}, "18079"},
    {{2, 1}, "cup", "cheddar", "shredded", {226, 1}, "01009"},
    {{2, 1}, "cup", "cheddar", "grated", {226, 1}, "01009"},
    {{1, 2}, "cup", "parmesan", "grated", {50, 1}, "01032"},
    {{1, 1}, "cup", "cream cheese", "", {232, 1}, "01017"},
    {{1, 1}, "cup", "onion", "chopped", {160, 1}, "11282"},
    {{1, 1}, "cup", "onion", "thinly sliced", {115, 1}, "11282"},
    {{1, 1}, "cup", "walnut", "chopped", {117, 1}, "12155"},
    {{1, 1}, "cup", "chocolate chip", "", {168, 1}, "19080"},
    {{1, 4}, "cup", "maple syrup", "", {315, 4}, "19353"},
    {{2, 1}, "tablespoon", "soy sauce", "", {32, 1}, "16123"},
    {{2, 1}, "tablespoon", "tomato paste", "", {32, 1}, "11546"},
    {{1, 2}, "cup", "smooth peanut butter", "", {129, 1}, "16098"},
    {{1, 1}, "cup", "water", "", {237, 1}, "14411"},
    {{1, 1}, "cup", "egg", "beaten", {243, 1}, "01123"},
    {{1, 1}, "cup", "sour cream", "", {230, 1}, "01056"},
    {{1, 1}, "cup", "buttermilk", "", {245, 1}, "01088"},
    {{1, 1}, "cup", "yogurt", "", {245, 1}, "01116"},
    {{1, 1}, "cup", "ricotta", "", {246, 1}, "01036"},
    {{1, 1}, "cup", "mayonnaise", "", {220, 1}, "04025"},
    {{1, 1}, "cup", "molasses", "", {337, 1}, "19304"},
    {{1, 1}, "cup", "pecan", "chopped", {109, 1}, "12142"},
    {{1, 1}, "cup", "pecan", "halves", {99, 1}, "12142"},
    {{1, 1}, "cup", "almond", "sliced", {92, 1}, "12061"},
    {{1, 1}, "cup", "ground almond", "ground", {95, 1}, "12061"},
    {{1, 1}, "cup", "raisin", "", {145, 1}, "09298"},
    {{1, 1}, "cup", "raisin", "packed", {165, 1}, "09298"},
    {{1, 1}, "cup", "lentil", "", {192, 1}, "16069"},
    {{1, 1}, "cup", "strawberry", "sliced", {166, 1}, "09316"},
    {{1, 1}, "cup", "mushroom", "", {70, 1}, "11260"},
    {{1, 1}, "cup", "cabbage", "shredded", {70, 1}, "11109"},
    {{1, 1}, "cup", "carrot", "grated", {110, 1}, "11124"},
    {{1, 1}, "cup", "celery", "chopped", {101, 1}, "11143"},
};

static const struct row pieces[] = {
    {{3, 1}, "each", "egg", "large", {150, 1}, "01123"},
    {{1, 1}, "each", "egg", "extra-large", {56, 1}, "01123"},
    {{1, 1}, "each", "egg", "", {50, 1}, "01123"},
    {{2, 1}, "each", "egg yolk", "large", {34, 1}, "01125"},
    {{4, 1}, "each", "egg white", "", {132, 1}, "01124"},
    {{4, 1}, "clove", "garlic", "", {12, 1}, "11215"},
    {{1, 1}, "each", "onion", "medium", {110, 1}, "11282"},
    {{2, 1}, "each", "onion", "large", {300, 1}, "11282"},
    {{3, 1}, "each", "carrot", "medium", {183, 1}, "11124"},
    {{2, 1}, "stalk", "celery", "medium", {80, 1}, "11143"},
    {{3, 1}, "each", "banana", "medium", {354, 1}, "09040"},
    {{4, 1}, "each", "apple", "", {728, 1}, "09003"},
    {{6, 1}, "slice", "bacon", "raw", {168, 1}, "10123"},
    {{2, 1}, "each", "chicken breast", "", {544, 1}, "05062"},
    {{1, 1}, "stick", "butter", "", {113, 1}, "01145"},
};

/* Within half a gram in a hundred: SR28 rounds what it prints. */
static void
expect_grams(const struct row *r, bool found, struct ratio per)
{
	double got = ratio_double(ratio_mul(r->many, per)), want = ratio_double(r->grams);

	if (!found || got < want * 0.995 || got > want * 1.005)
		fail_msg("%s, %s (SR28, NDB %s): %g g, not %g g", r->food, r->words, r->ndb,
		    found ? got : 0.0, want);
}

static void
cups_and_spoons_weigh_what_the_handbook_says(void **state)
{
	const struct grammar *g = *state;

	for (size_t i = 0; i < COUNT(volumes); i++) {
		const struct row *r = &volumes[i];
		struct density d = {0};
		bool found = density_volume(g, str_of(r->food), str_of(r->words),
		    grammar_unit(g, str_of(r->unit), "us"), &d);

		expect_grams(r, found, d.grams);
	}
}

static void
pieces_weigh_what_the_handbook_says(void **state)
{
	for (size_t i = 0; i < COUNT(pieces); i++) {
		const struct row *r = &pieces[i];
		struct density d = {0};
		bool found = density_piece(
		    *state, str_of(r->food), str_of(r->words), str_of(r->unit), &d);

		expect_grams(r, found, d.grams);
	}
}

/* The one amount in grams of a spoken script; false where there is none. */
static bool
spoken_grams(struct arena *a, const struct grammar *g, const struct row *r, double *out)
{
	struct tamis_options o = {.region = "us"};
	struct buf text = buf_in(a);
	struct err e = {0};
	struct draft *d;
	bool found = false;

	buf_put_z(&text, "[0:00] A cake.\n[0:05] Add ");
	print_decimal(&text, r->many);
	buf_fmt(
	    &text, " %ss of %s%s%s.\n", r->unit, r->words, r->words[0] ? " " : "", r->food);
	d = tamis_draft(g, &o, buf_str(&text), "x", &e);
	for (size_t i = 0; i < d->dishes; i++)
		for (size_t k = 0; k < d->dish[i].parts; k++)
			for (size_t j = 0; j < d->dish[i].part[k].ingredients; j++) {
				const struct amount *m =
				    &d->dish[i].part[k].ingredient[j].metric;

				found = found || (m->known && m->unit &&
						     m->unit->dimension == DIM_MASS);
				if (m->known)
					*out = ratio_double(m->max);
			}
	tamis_draft_free(d);
	return found;
}

/* From the words of a script to grams; what is poured is given in millilitres. */
static void
spoken_cups_weigh_what_the_handbook_says(void **state)
{
	struct err e = {0};
	struct grammar *g = tamis_grammar_open(NULL, "en", &e);
	struct arena a;
	size_t weighed = 0;

	(void)state;
	arena_init(&a);
	for (size_t i = 0; i < COUNT(volumes); i++) {
		const struct row *r = &volumes[i];
		double got, want = ratio_double(r->grams);

		if (!spoken_grams(&a, g, r, &got))
			continue;
		weighed++;
		if (got < want * 0.985 || got > want * 1.015)
			fail_msg("%s %s (SR28, NDB %s): %g g, not %g g", r->words, r->food,
			    r->ndb, got, want);
	}
	assert_true(weighed >= 40);
	arena_release(&a);
	tamis_grammar_close(g);
}

/* NSW Health, Healthy Kids conversion tables: a cup of 250 ml, a tablespoon
 * of 20 ml. */
static void
cups_hold_what_they_hold_where_they_are_said(void **state)
{
	const struct grammar *g = *state;
	struct density d;

	assert_true(density_volume(
	    g, STR("sugar"), STR(""), grammar_unit(g, STR("cup"), "au"), &d));
	assert_int_equal(ratio_round(d.grams), 211); /* 200 g in 236.6 ml */
	assert_true(density_volume(
	    g, STR("butter"), STR(""), grammar_unit(g, STR("tablespoon"), "au"), &d));
	assert_int_equal(ratio_round(d.grams), 19); /* 14.2 g in 14.8 ml */
	assert_true(density_volume(
	    g, STR("sugar"), STR(""), grammar_unit(g, STR("millilitre"), NULL), &d));
	assert_int_equal(ratio_round(ratio_mul(d.grams, ratio_int(1000))), 845);
}

static void
unknown_foods_weigh_nothing(void **state)
{
	const struct grammar *g = *state;
	struct density d;

	assert_false(density_volume(
	    g, STR("moon dust"), STR(""), grammar_unit(g, STR("cup"), "us"), &d));
	assert_false(density_volume(
	    g, STR("sugar"), STR(""), grammar_unit(g, STR("pinch"), NULL), &d));
	assert_false(density_piece(g, STR("flour"), STR(""), STR("each"), &d));
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(cups_and_spoons_weigh_what_the_handbook_says),
	    cmocka_unit_test(spoken_cups_weigh_what_the_handbook_says),
	    cmocka_unit_test(pieces_weigh_what_the_handbook_says),
	    cmocka_unit_test(cups_hold_what_they_hold_where_they_are_said),
	    cmocka_unit_test(unknown_foods_weigh_nothing),
	};

	return cmocka_run_group_tests(tests, hold_tables, drop_tables);
}
