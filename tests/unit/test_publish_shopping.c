/* SPDX-License-Identifier: ISC */
/*
 * The shopping list: what is added up and in which unit, packages, sections,
 * and CSV that no spreadsheet takes for a formula.
 */
#include "../support/hold.h"
#include "checks.h"
#include "publish/basket.h"
#include "write/escape.h"

#define KEEP "food salt salt 1 teaspoon;"

static const struct writer *
shopping(void)
{
	return tamis_writer_find("shopping");
}

static bool
has_line(struct str text, const char *want)
{
	while (text.p)
		if (str_is_z(str_next(&text, '\n'), want))
			return true;
	return false;
}

static void
test_sums(void **state)
{
	static const struct {
		const char *text, *want;
	} rows[] = {
	    {"dish a;food olive-oil oil 2 tablespoon;dish b;food olive-oil oil 1/4 cup",
		"[ ] 6 tbsp olive oil"},
	    {"dish a;food milk dairy 1 cup;part b;food milk dairy 1/2 cup",
		"[ ] 1½ cups milk: 1 carton of 32 fl oz"},
	    {"dish a;food egg egg 2 -;dish b;food egg egg 3 - item=eggs",
		"[ ] 5 eggs: 1 carton of 12"},
	    {"dish a;food rice rice 300 gram;dish b;food rice rice 1/2 kilogram",
		"[ ] 800 g rice: 1 bag of 2 lb"},
	    {"dish a;food salt salt 1 teaspoon;dish b;food salt salt 1 pinch",
		"[ ] 1 tsp and 1 pinch salt"},
	    {"dish a;food bean legume 1 can size=400:gram;dish b;"
	     "food bean legume 2 can size=400:gram",
		"[ ] 3 (400 g/14 oz) cans bean"},
	    {"dish a;food bean legume 1 can size=400:gram;dish b;"
	     "food bean legume 1 can size=200:gram",
		"[ ] 1 (400 g/14 oz) can and 1 (200 g/7 oz) can bean"},
	    {"dish a;food oil oil 1 tablespoon;dish b;food oil oil none -",
		"[ ] 1 tbsp oil, and some more"},
	    {"dish a;food dill herb some bunch optional", "[ ] dill, optional"},
	    {"region uk;dish a;food butter butter 60 gram;dish b;"
	     "food butter butter 300 gram item=cold_butter",
		"[ ] 360 g butter: 2 blocks of 250 g"},
	    {"region uk;dish a;food wine wine 50 millilitre;part b;"
	     "food wine wine 2 tablespoon",
		"[ ] 80 ml wine: 1 bottle of 750 ml"},
	    {"dish a;food tomato vegetable 500 gram", "[ ] 500 g tomato"},
	};

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct arena a;
		struct buf out;

		arena_init(&a);
		out = buf_in(&a);
		shopping()->write(draft_of_text(&a, *state, rows[i].text), *state,
		    &(struct tamis_style){0}, &out);
		if (!has_line(buf_str(&out), rows[i].want))
			fail_msg("no \"%s\" in\n%.*s", rows[i].want, (int)out.n, out.v);
		arena_release(&a);
	}
}

/* Tap water is not bought, nor what another part of the dish makes. */
static void
test_left_out(void **state)
{
	struct arena a;
	struct basket b;

	arena_init(&a);
	b = basket_of(&a,
	    draft_of_text(&a, *state,
		"dish a;food water water 1 cup;" KEEP "food glaze sauce 1 cup;part glaze;"
		"food glaze sauce 1 cup"),
	    *state);
	assert_int_equal(b.items, 2);
	assert_true(str_is_z(b.item[0].name, "salt"));
	assert_int_equal(b.item[1].sums, 1);
	assert_int_equal(b.item[1].sum->total.min.num, 1);
	arena_release(&a);
}

static void
test_sections(void **state)
{
	static const char text[] =
	    "dish a;food ice-cream prepared 1 cup item=frozen_peas;food bean legume 1 can;"
	    "food flour flour 1 cup;food leek vegetable 2 -;food thing - 1 -;"
	    "food chickpea legume 1 cup item=canned_chickpeas";
	static const char *const want[] = {"Fruit and vegetables", "Flour and baking",
	    "Tins and jars", "Tins and jars", "Frozen food", "Other"};
	struct arena a;
	struct basket b;

	arena_init(&a);
	b = basket_of(&a, draft_of_text(&a, *state, text), *state);
	assert_int_equal(b.items, COUNT(want));
	for (size_t i = 0; i < COUNT(want); i++)
		assert_true(str_is_z(b.item[i].section, want[i]));
	arena_release(&a);
}

static void
test_csv(void **state)
{
	static const char want[] =
	    "section,item,min,max,unit,size,packages,dishes\r\n"
	    "\"Oils, vinegars and sauces\",'=oil,0.5,0.5,cup,,,\"'@pie, hot; "
	    "\"\"B\"\"\"\r\n"
	    "\"Oils, vinegars and sauces\",'=oil,,,,,,\"'@pie, hot; \"\"B\"\"\"\r\n";
	struct arena a;
	struct buf out;
	struct draft *d;

	arena_init(&a);
	out = buf_in(&a);
	d = draft_of_text(&a, *state,
	    "dish @pie,_hot;food =oil oil 1/2 cup;dish \"B\";food =oil oil none -");
	tamis_writer_find("shopping-csv")->write(d, *state, &(struct tamis_style){0}, &out);
	if (!str_is_z(buf_str(&out), want))
		fail_msg("%.*s", (int)out.n, out.v);
	arena_release(&a);
}

static void
test_csv_escape(void **state)
{
	static const struct {
		const char *text, *want;
	} rows[] = {
	    {"plain", "plain"},
	    {"a,b", "\"a,b\""},
	    {"say \"so\"", "\"say \"\"so\"\"\""},
	    {"=1+1", "'=1+1"},
	    {"+1", "'+1"},
	    {"-1", "'-1"},
	    {"@cmd", "'@cmd"},
	    {"\t=1", "'=1"},
	    {"=a,b", "\"'=a,b\""},
	    {"two\r\nlines", "two lines"},
	    {"\xef\xbc\x9d"
	     "1",
		"'\xef\xbc\x9d"
		"1"},
	    {"", ""},
	};
	struct arena a;

	(void)state;
	arena_init(&a);
	for (size_t i = 0; i < COUNT(rows); i++) {
		struct buf b = buf_in(&a);

		escape_csv(&b, str_of(rows[i].text));
		if (!str_is_z(buf_str(&b), rows[i].want))
			fail_msg("%s: %.*s", rows[i].text, (int)b.n, b.v);
	}
	arena_release(&a);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_sums),
	    cmocka_unit_test(test_left_out),
	    cmocka_unit_test(test_sections),
	    cmocka_unit_test(test_csv),
	    cmocka_unit_test(test_csv_escape),
	};

	return cmocka_run_group_tests(tests, hold_tables, drop_tables);
}
