/* SPDX-License-Identifier: ISC */
/*
 * Style files, and what they do to words, values and a whole recipe.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stdio.h>

#include <cmocka.h>

#include "../support/draft_text.h"
#include "../support/expect.h"
#include "../support/hold.h"
#include "../support/source.h"
#include "base/print.h"
#include "base/slot.h"
#include "house/words.h"
#include "sample.h"

static struct arena arena;

static void
files_are_read(void **state)
{
	static const char text[] = "\xef\xbb\xbf# ours\r\n"
				   "\r\n"
				   "  units = metric\r\n"
				   "unit-names=long\n"
				   "temperature = fahrenheit-first # no comment here? no\n";
	struct tamis_style s = {0};
	struct err e = {0};

	assert_false(tamis_style_read(&s, &arena, *state, str_of(text), "x", &e));
	assert_true(has(str_of(e.text), "fahrenheit-first # no comment"));
	e = (struct err){0};
	assert_true(tamis_style_read(&s, &arena, *state,
	    STR("units = both\nunit-names = long\ntemperature = celsius\n"
		"fractions = plain\nstep-numbers = none\ntime-codes = off\nheading = 3\n"
		"spelling = us\ncautions = off\ncaution.egg = Mind the egg.\n"
		"caution.poultry = off"),
	    "x", &e));
	assert_int_equal(s.units, UNITS_BOTH);
	assert_true(s.unit_words && s.plain_fractions && s.no_time_codes && s.no_cautions);
	assert_int_equal(s.degrees, DEGREES_CELSIUS);
	assert_int_equal(s.numbers, NUMBERS_NONE);
	assert_int_equal(s.heading, 3);
	assert_int_equal(s.spelling, SPELLING_US);
	assert_int_equal(s.cautions, 2);
	expect(s.caution[0].text, "Mind the egg.");
	expect(s.caution[1].topic, "poultry");
	assert_int_equal(s.caution[1].text.n, 0);
}

static void
errors_name_the_place_and_what_is_expected(void **state)
{
	static const struct {
		const char *text;
		uint32_t line, column;
		const char *says;
	} rows[] = {
	    {"unit = us", 1, 1, "expected units, unit-names"},
	    {"\n\n  colour = red", 3, 3, "or caution.TOPIC, found \"colour\""},
	    {"units", 1, 1, "expected a line \"key = value\", found \"units\""},
	    {"units =", 1, 1, "key = value"},
	    {"= us", 1, 1, "key = value"},
	    {"units = imperial", 1, 9,
		"units: expected as-said, both, us or metric, found \"imperial\""},
	    {"heading = 7", 1, 11, "heading: expected 1, 2, 3 or 4"},
	    {"spelling = uk\nspelling = us", 2, 1, "spelling is set already, on line 1"},
	    {"caution.eggs = off", 1, 1, "poultry, ground-meat"},
	    {"caution. = off", 1, 1, "found \"\""},
	    {"time-codes = yes", 1, 14, "expected on or off"},
	};

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct tamis_style s = {0};
		struct err e = {0};

		assert_false(tamis_style_read(
		    &s, &arena, *state, str_of(rows[i].text), "h.style", &e));
		assert_string_equal(e.where, "h.style");
		if (!has(str_of(e.text), rows[i].says) || e.line != rows[i].line ||
		    e.column != rows[i].column)
			fail_msg("%s: %u:%u: %s", rows[i].text, e.line, e.column, e.text);
	}
}

static void
the_example_is_a_style(void **state)
{
	struct tamis_style s = {0};
	struct err e = {0};
	struct str text;

	assert_true(source_read(&arena, "examples/house.style", &text, &e));
	if (!tamis_style_read(&s, &arena, *state, text, "house.style", &e))
		fail_msg("house.style:%u: %s", e.line, e.text);
}

static void
words_are_respelled(void **state)
{
	static const struct {
		enum tamis_spelling spelling;
		const char *text, *want;
	} rows[] = {
	    {SPELLING_US, "Caramelise until grey in colour.",
		"Caramelize until gray in color."},
	    {SPELLING_UK, "Caramelize until gray in color.",
		"Caramelise until grey in colour."},
	    {SPELLING_US, "1.5 litres, unpasteurised; Flavoured yoghurts",
		"1.5 liters, unpasteurized; Flavored yogurts"},
	    {SPELLING_UK, "2 chilies and a donut", "2 chillies and a doughnut"},
	    {SPELLING_US, "a centimetre—colour", "a centimeter—color"},
	    {SPELLING_US, "greyhound, premise, precise, raise, otherwise, advise, metres",
		"greyhound, premise, precise, raise, otherwise, advise, meters"},
	    {SPELLING_UK, "thermometer, size, prize, seize, capsize",
		"thermometer, size, prize, seize, capsize"},
	    {SPELLING_US,
		"d\xc3\xa9"
		"colour\xc3\xa9",
		"d\xc3\xa9"
		"colour\xc3\xa9"},
	    {SPELLING_SAID, "colour and color", "colour and color"},
	    {SPELLING_US, "", ""},
	};

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct tamis_style style = {.spelling = rows[i].spelling};
		struct house h = {.grammar = *state, .style = &style};
		struct buf b = buf_in(&arena);

		words_put(&b, &h, str_of(rows[i].text));
		expect(b.n ? buf_str(&b) : STR(""), rows[i].want);
	}
}

static void
fractions_are_plain(void **state)
{
	static const struct {
		const char *text, *want;
	} rows[] = {
	    {"½ cup", "1/2 cup"},
	    {"1½ cups", "1 1/2 cups"},
	    {"¼–½ tsp", "1/4–1/2 tsp"},
	    {"1⅓–1⅔", "1 1/3–1 2/3"},
	    {"½ in/1.3 cm", "1/2 in/1.3 cm"},
	    {"180 °C", "180 °C"},
	    {"1 1/2", "1 1/2"},
	};
	struct tamis_style style = {.plain_fractions = true};
	struct house h = {.style = &style};

	(void)state;
	for (size_t i = 0; i < COUNT(rows); i++) {
		struct buf b = buf_in(&arena);

		words_put(&b, &h, str_of(rows[i].text));
		expect(buf_str(&b), rows[i].want);
	}
}

static const struct unit gas_mark = {.name = Z("gas-mark")};

/* Pairs: NIST, SI Units - Temperature, Oven Temperature Equivalencies (250, 300,
 * 350, 400, 450 and 500 °F); 425 °F and gas marks: common practice. */
static void
degrees_take_the_order_that_is_asked_for(void **state)
{
	static const struct {
		struct ratio v;
		const struct unit *unit;
		bool exact;
		const char *said, *celsius_first, *fahrenheit_first, *celsius, *fahrenheit;
	} rows[] = {
	    {{250, 1}, &unit_fahrenheit, false, "250 °F (120 °C)", "120 °C (250 °F)",
		"250 °F (120 °C)", "120 °C", "250 °F"},
	    {{300, 1}, &unit_fahrenheit, false, "300 °F (150 °C)", "150 °C (300 °F)",
		"300 °F (150 °C)", "150 °C", "300 °F"},
	    {{350, 1}, &unit_fahrenheit, false, "350 °F (180 °C)", "180 °C (350 °F)",
		"350 °F (180 °C)", "180 °C", "350 °F"},
	    {{200, 1}, &unit_celsius, false, "200 °C (400 °F)", "200 °C (400 °F)",
		"400 °F (200 °C)", "200 °C", "400 °F"},
	    {{220, 1}, &unit_celsius, false, "220 °C (425 °F)", "220 °C (425 °F)",
		"425 °F (220 °C)", "220 °C", "425 °F"},
	    {{450, 1}, &unit_fahrenheit, false, "450 °F (230 °C)", "230 °C (450 °F)",
		"450 °F (230 °C)", "230 °C", "450 °F"},
	    {{500, 1}, &unit_fahrenheit, false, "500 °F (260 °C)", "260 °C (500 °F)",
		"500 °F (260 °C)", "260 °C", "500 °F"},
	    {{165, 1}, &unit_fahrenheit, true, "165 °F (74 °C)", "74 °C (165 °F)",
		"165 °F (74 °C)", "74 °C", "165 °F"},
	    {{4, 1}, &gas_mark, false, "gas mark 4 (180 °C/350 °F)",
		"180 °C (350 °F/gas mark 4)", "350 °F (180 °C/gas mark 4)",
		"180 °C (gas mark 4)", "350 °F"},
	    {{1, 2}, &gas_mark, false, "gas mark ½ (120 °C/250 °F)",
		"120 °C (250 °F/gas mark ½)", "250 °F (120 °C/gas mark ½)",
		"120 °C (gas mark ½)", "250 °F"},
	    {{7, 1}, &gas_mark, false, "gas mark 7 (220 °C/425 °F)",
		"220 °C (425 °F/gas mark 7)", "425 °F (220 °C/gas mark 7)",
		"220 °C (gas mark 7)", "425 °F"},
	    {{25, 1}, &gas_mark, false, "gas mark 25", "gas mark 25", "gas mark 25",
		"gas mark 25", "gas mark 25"},
	    {{200, 1}, NULL, false, "200 degrees", "200 degrees", "200 degrees",
		"200 degrees", "200 degrees"},
	};

	(void)state;
	for (size_t i = 0; i < COUNT(rows); i++) {
		const char *want[] = {rows[i].said, rows[i].said, rows[i].celsius_first,
		    rows[i].fahrenheit_first, rows[i].celsius, rows[i].fahrenheit};
		struct amount v = amount_of(rows[i].v, rows[i].unit);

		for (size_t how = DEGREES_UNITS; how <= DEGREES_FAHRENHEIT; how++) {
			struct buf b = buf_in(&arena);

			print_degrees(&b, &v, rows[i].exact, (enum tamis_degrees)how);
			expect(buf_str(&b), want[how]);
		}
	}
}

/* ---- a whole recipe ------------------------------------------------------- */

static struct str
written(const struct grammar *g, struct draft *d, const char *style)
{
	struct tamis_style s = {0};
	struct err e = {0};
	struct buf out = buf_in(&arena);

	if (!tamis_style_read(&s, &arena, g, str_of(style), "x", &e))
		fail_msg("%s", e.text);
	tamis_writer(0)->write(tamis_restyle(d, g, &s), g, &s, &out);
	return buf_str(&out);
}

/* The sample's first steps with their values in slots: "Heat the oven to 200 °C
 * (400 °F)." and "Add 1 tsp of the mustard." */
static struct draft *
slotted(void)
{
	struct draft *d = sample_draft(&arena);
	struct slots slots = {0};
	struct step *heat = d->dish->part[0].step, *add = d->dish->part[1].step;
	struct amount oven = amount_of(ratio_int(200), &unit_celsius);
	struct amount mustard = amount_of(ratio_make(3, 2), &unit_teaspoon);
	struct buf text = buf_in(&arena), clean = buf_in(&arena);

	d->dish->part[1].ingredient[1].key = STR("mustard");
	buf_put_z(&text, "Heat the grey oven to ");
	slot_put_temperature(&slots, &text, &oven, false);
	buf_put_char(&text, '.');
	heat->slot = slots_take(&slots, &clean, buf_str(&text), &heat->slots);
	heat->text = arena_str(&arena, buf_str(&clean));
	text.n = clean.n = 0;
	buf_put_z(&text, "Add ");
	slot_put_amount(&slots, &text, &mustard, STR("mustard"));
	buf_put_z(&text, " of the mustard.");
	add->slot = slots_take(&slots, &clean, buf_str(&text), &add->slots);
	add->text = arena_str(&arena, buf_str(&clean));
	return d;
}

static void
recipes_follow_the_style(void **state)
{
	static const struct {
		const char *style, *has, *lacks;
	} rows[] = {
	    {"", "1. Heat the grey oven to 200 °C (400 °F). (0:30)\n", "tablespoon"},
	    {"", "Add 1½ tsp of the mustard.", "1 1/2"},
	    {"temperature = fahrenheit-first", "oven to 400 °F (200 °C).", "200 °C (400"},
	    {"units = us", "oven to 400 °F. (0:30)", "200 °C"},
	    {"units = metric", "oven to 200 °C. (0:30)", "400 °F"},
	    {"units = us", "- 2 (14 oz) cans white beans, drained", "400 g"},
	    {"units = metric", "- 500 ml vegetable stock\n", "2 cups"},
	    {"units = us", "- 2 cups vegetable stock\n", "500 ml"},
	    {"units = metric", "- 110 g breadcrumbs, optional", "1 cup"},
	    {"units = both", "- 110 g breadcrumbs (1 cup), optional", "- 1 cup"},
	    {"unit-names = long", "- 1–2 teaspoons mustard, or ½ teaspoon wasabi", "tsp"},
	    {"unit-names = long", "Add 1½ teaspoons of the mustard.", " tsp"},
	    {"unit-names = long", "- 40 grams butter (about 3 tablespoons), divided",
		"tbsp"},
	    {"fractions = plain", "Add 1 1/2 tsp of the mustard.", "½"},
	    {"fractions = plain", "or 1/2 tsp wasabi", "½"},
	    {"step-numbers = bracket", "\n1) Heat", "1. Heat"},
	    {"step-numbers = none", "\n- Heat", "1. Heat"},
	    {"time-codes = off", "oven to 200 °C (400 °F).\n", "0:"},
	    {"heading = 2", "## Charred cabbage", "\n# "},
	    {"spelling = us", "Heat the gray oven", "grey"},
	    {"cautions = off", "## Notes", "Salmonella"},
	    {"cautions = on", "Salmonella", "zzz"},
	    {"caution.egg = Mind the *yolk*.", "- Mind the \\*yolk\\*.", "Salmonella"},
	    {"caution.egg = off", "## Notes", "Salmonella"},
	    {"spelling = us", "Salmonella", "pasteurise"},
	};

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct str text = written(*state, slotted(), rows[i].style);

		if (!has(text, rows[i].has) || has(text, rows[i].lacks))
			fail_msg("%s: wants %s, not %s\n%.*s", rows[i].style, rows[i].has,
			    rows[i].lacks, (int)text.n, text.p);
	}
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
	    cmocka_unit_test(files_are_read),
	    cmocka_unit_test(errors_name_the_place_and_what_is_expected),
	    cmocka_unit_test(the_example_is_a_style),
	    cmocka_unit_test(words_are_respelled),
	    cmocka_unit_test(fractions_are_plain),
	    cmocka_unit_test(degrees_take_the_order_that_is_asked_for),
	    cmocka_unit_test(recipes_follow_the_style),
	};

	return cmocka_run_group_tests(tests, open_tables, close_tables);
}
