/* SPDX-License-Identifier: ISC */
/*
 * Amounts in the units that the house asks for, and whole ingredient lines.
 * Sizes of the US cup and ounce: NIST SP 430 and Handbook 44; weights of foods:
 * densities.tsv.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stdio.h>

#include <cmocka.h>

#include "../support/draft_text.h"
#include "../support/expect.h"
#include "../support/hold.h"
#include "house/portion.h"
#include "sample.h"
#include "write/text.h"

static const struct unit unit_litre = {
    Z("litre"), Z("litres"), Z("l"), DIM_VOLUME, true, true, {1000, 1}, {0, 1}};
static const struct unit unit_kilogram = {
    Z("kilogram"), Z("kilograms"), Z("kg"), DIM_MASS, true, true, {1000, 1}, {0, 1}};
static const struct unit unit_ounce = {
    Z("ounce"), Z("ounces"), Z("oz"), DIM_MASS, false, true, {45359237, 1600000}, {0, 1}};
static const struct unit unit_pound = {
    Z("pound"), Z("pounds"), Z("lb"), DIM_MASS, false, true, {45359237, 100000}, {0, 1}};
static const struct unit unit_cm = {
    Z("centimetre"), Z("centimetres"), Z("cm"), DIM_LENGTH, true, true, {10, 1}, {0, 1}};
static const struct unit unit_stick = {.name = Z("stick"), .plural = Z("sticks")};
static const struct unit unit_piece = {.name = Z("piece"), .plural = Z("pieces")};

struct row {
	struct ratio min, max;
	const struct unit *unit;
	struct ratio metric; /* den 0: not known */
	const struct unit *metric_unit;
	const char *want;
};

static const struct row rows[] = {
    {{3, 2}, {3, 2}, &unit_litre, {0, 0}, NULL, "6⅓ cups"},
    {{400, 1}, {400, 1}, &unit_ml, {0, 0}, NULL, "1⅔ cups"},
    {{250, 1}, {250, 1}, &unit_ml, {0, 0}, NULL, "1 cup"},
    {{200, 1}, {200, 1}, &unit_ml, {0, 0}, NULL, "¾ cup plus 1½ tbsp"},
    {{275, 1}, {275, 1}, &unit_ml, {0, 0}, NULL, "1 cup plus 2½ tbsp"},
    {{150, 1}, {150, 1}, &unit_ml, {0, 0}, NULL, "⅔ cup"},
    {{125, 1}, {125, 1}, &unit_ml, {0, 0}, NULL, "½ cup"},
    {{100, 1}, {100, 1}, &unit_ml, {0, 0}, NULL, "⅓ cup plus 1½ tbsp"},
    {{60, 1}, {60, 1}, &unit_ml, {0, 0}, NULL, "¼ cup"},
    {{50, 1}, {50, 1}, &unit_ml, {0, 0}, NULL, "3½ tbsp"},
    {{30, 1}, {30, 1}, &unit_ml, {0, 0}, NULL, "2 tbsp"},
    {{15, 1}, {15, 1}, &unit_ml, {0, 0}, NULL, "1 tbsp"},
    {{5, 1}, {5, 1}, &unit_ml, {0, 0}, NULL, "1 tsp"},
    {{4, 1}, {4, 1}, &unit_litre, {0, 0}, NULL, "4¼ quarts"},
    {{250, 1}, {500, 1}, &unit_ml, {0, 0}, NULL, "1–2 cups"},
    {{10, 1}, {20, 1}, &unit_ml, {0, 0}, NULL, "2 tsp to 1½ tbsp"},
    {{40, 1}, {40, 1}, &unit_gram, {0, 0}, NULL, "1½ oz"},
    {{5, 1}, {5, 1}, &unit_gram, {0, 0}, NULL, ""},
    {{150, 1}, {150, 1}, &unit_gram, {0, 0}, NULL, "5¼ oz"},
    {{225, 1}, {225, 1}, &unit_gram, {0, 0}, NULL, "8 oz"},
    {{450, 1}, {450, 1}, &unit_gram, {0, 0}, NULL, "1 lb"},
    {{500, 1}, {500, 1}, &unit_gram, {0, 0}, NULL, "1 lb 2 oz"},
    {{680, 1}, {680, 1}, &unit_gram, {0, 0}, NULL, "1½ lb"},
    {{1, 1}, {1, 1}, &unit_kilogram, {0, 0}, NULL, "2 lb 3 oz"},
    {{1, 1}, {3, 2}, &unit_kilogram, {0, 0}, NULL, "2¼–3¼ lb"},
    {{400, 1}, {500, 1}, &unit_gram, {0, 0}, NULL, "14 oz to 1 lb"},
    {{1, 1}, {1, 1}, &unit_cup, {125, 1}, &unit_gram, "125 g"},
    {{1, 1}, {1, 1}, &unit_cup, {227, 1}, &unit_gram, "225 g"},
    {{1, 1}, {1, 1}, &unit_cup, {244, 1}, &unit_gram, "240 g"},
    {{2, 1}, {2, 1}, &unit_cup, {473, 1}, &unit_ml, "475 ml"},
    {{5, 1}, {5, 1}, &unit_cup, {1183, 1}, &unit_ml, "1.2 litres"},
    {{1, 1}, {1, 1}, &unit_cup, {0, 0}, NULL, ""},
    {{2, 1}, {2, 1}, &unit_teaspoon, {12, 1}, &unit_gram, ""},
    {{8, 1}, {8, 1}, &unit_ounce, {0, 0}, NULL, "225 g"},
    {{1, 2}, {1, 2}, &unit_ounce, {0, 0}, NULL, "14 g"},
    {{2, 1}, {2, 1}, &unit_ounce, {0, 0}, NULL, "55 g"},
    {{1, 1}, {1, 1}, &unit_pound, {0, 0}, NULL, "450 g"},
    {{3, 1}, {3, 1}, &unit_pound, {0, 0}, NULL, "1.36 kg"},
    {{10, 1}, {10, 1}, &unit_pound, {0, 0}, NULL, "4.55 kg"},
    {{3, 1}, {3, 1}, NULL, {150, 1}, &unit_gram, ""},
    {{1, 1}, {1, 1}, &unit_stick, {1134, 10}, &unit_gram, "110 g"},
    {{1, 1}, {1, 1}, &unit_stick, {0, 0}, NULL, ""},
    {{2, 1}, {2, 1}, &unit_can, {800, 1}, &unit_gram, ""},
    {{200, 1}, {200, 1}, &unit_celsius, {0, 0}, NULL, ""},
    {{5, 1}, {5, 1}, &unit_minute, {0, 0}, NULL, ""},
    {{9, 1}, {9, 1}, &unit_inch, {0, 0}, NULL, ""},
    {{INT64_MAX, 1}, {INT64_MAX, 1}, &unit_litre, {0, 0}, NULL, ""},
    {{0, 1}, {0, 1}, &unit_ml, {0, 0}, NULL, ""},
};

static const struct tamis_style plain = {0};
static const struct house house = {.style = &plain};

static void
test_other_system(void **state)
{
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		const struct row *r = &rows[i];
		struct ingredient in = {.amount = {true, true, r->min, r->max, r->unit}};
		struct portion p = portion_of(&in);

		if (r->metric.den)
			in.metric = amount_of(r->metric, r->metric_unit);
		b.n = 0;
		portion_put_other(&b, &house, &p);
		expect(buf_str(&b), r->want);
	}
}

static void
test_size(void **state)
{
	static const struct {
		struct ratio v;
		const struct unit *unit;
		const char *want, *both, *us, *metric;
	} sizes[] = {
	    {{400, 1}, &unit_gram, "400 g/14 oz", "400 g/14 oz", "14 oz", "400 g"},
	    {{10, 1}, &unit_ounce, "10 oz/280 g", "280 g/10 oz", "10 oz", "280 g"},
	    {{2, 1}, &unit_inch, "2 in/5 cm", "5 cm/2 in", "2 in", "5 cm"},
	    {{1, 2}, &unit_inch, "½ in/1.3 cm", "1.3 cm/½ in", "½ in", "1.3 cm"},
	    {{9, 1}, &unit_inch, "9 in/23 cm", "23 cm/9 in", "9 in", "23 cm"},
	    {{1, 1}, &unit_cm, "1 cm/⅜ in", "1 cm/⅜ in", "⅜ in", "1 cm"},
	    {{5, 1}, &unit_cm, "5 cm/2 in", "5 cm/2 in", "2 in", "5 cm"},
	    {{23, 1}, &unit_cm, "23 cm/9 in", "23 cm/9 in", "9 in", "23 cm"},
	    {{3, 2}, &unit_litre, "1.5 litres/6⅓ cups", "1.5 litres/6⅓ cups", "6⅓ cups",
		"1.5 litres"},
	    {{3, 1}, &unit_piece, "3 pieces", "3 pieces", "3 pieces", "3 pieces"},
	};
	static const enum tamis_units units[] = {
	    UNITS_SAID, UNITS_BOTH, UNITS_US, UNITS_METRIC};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(sizes); i++) {
		struct amount size = amount_of(sizes[i].v, sizes[i].unit);
		const char *want[] = {
		    sizes[i].want, sizes[i].both, sizes[i].us, sizes[i].metric};

		for (size_t k = 0; k < COUNT(units); k++) {
			struct tamis_style style = {.units = units[k]};
			struct house h = {.style = &style};

			b.n = 0;
			portion_put_size(&b, &h, &size);
			expect(buf_str(&b), want[k]);
		}
	}
}

static void
test_line(void **state)
{
	static const struct {
		struct ingredient in;
		const char *want;
	} lines[] = {
	    {{.item = Z("ginger"),
		 .amount = {true, true, {1, 1}, {1, 1}, &unit_piece},
		 .size = {true, true, {2, 1}, {2, 1}, &unit_inch}},
		"1 (2 in/5 cm) piece ginger"},
	    {{.item = Z("steak"), .size = {true, true, {10, 1}, {10, 1}, &unit_ounce}},
		"10 oz/280 g steak"},
	    {{.item = Z("steaks"),
		 .amount = {true, true, {2, 1}, {2, 1}, NULL},
		 .size = {true, true, {10, 1}, {10, 1}, &unit_ounce}},
		"2 (10 oz/280 g) steaks"},
	    {{.item = Z("ham"), .amount = {true, false, {0, 0}, {0, 0}, &unit_piece}},
		"some pieces ham"},
	    {{.item = Z("oil"), .note = Z("for frying"), .divided = true},
		"oil, for frying, divided"},
	    {{.item = Z("oil"), .note = Z("divided"), .divided = true}, "oil, divided"},
	    {{.item = Z("flour"),
		 .amount = {true, true, {1, 1}, {1, 1}, &unit_cup},
		 .metric = {true, true, {125, 1}, {125, 1}, &unit_gram},
		 .preparation = Z("sifted")},
		"1 cup flour (125 g), sifted"},
	    {{.item = Z("")}, ""},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(lines); i++) {
		b.n = 0;
		text_ingredient(&b, &house, &lines[i].in);
		expect(buf_str(&b), lines[i].want);
	}
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_other_system),
	    cmocka_unit_test(test_size),
	    cmocka_unit_test(test_line),
	};

	return cmocka_run_group_tests(tests, hold_arena, drop_arena);
}
