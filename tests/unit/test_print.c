/* SPDX-License-Identifier: ISC */
/*
 * How values read in a recipe: every function of base/print.h, row by row.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stdio.h>

#include <cmocka.h>

#include "../support/expect.h"
#include "../support/hold.h"
#include "base/print.h"

static void
test_number(void **state)
{
	static const struct {
		struct ratio v;
		const char *want;
	} rows[] = {
	    {{0, 1}, "0"},
	    {{1, 1}, "1"},
	    {{150, 1}, "150"},
	    {{1, 2}, "½"},
	    {{1, 3}, "⅓"},
	    {{2, 3}, "⅔"},
	    {{1, 4}, "¼"},
	    {{3, 4}, "¾"},
	    {{1, 8}, "⅛"},
	    {{3, 8}, "⅜"},
	    {{5, 8}, "⅝"},
	    {{7, 8}, "⅞"},
	    {{3, 2}, "1½"},
	    {{5, 2}, "2½"},
	    {{8, 3}, "2⅔"},
	    {{49, 4}, "12¼"},
	    {{-1, 2}, "−½"},
	    {{-5, 4}, "−1¼"},
	    {{1, 5}, "0.2"},
	    {{1, 6}, "0.17"},
	    {{1, 16}, "0.06"},
	    {{11, 10}, "1.1"},
	    {{1999, 1000}, "2"},
	    {{INT64_MAX, 1}, "9223372036854775807"},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		print_number(&b, rows[i].v);
		expect_taken(&b, rows[i].want);
	}
}

static void
test_decimal(void **state)
{
	static const struct {
		struct ratio v;
		const char *want;
	} rows[] = {
	    {{3, 2}, "1.5"},
	    {{1, 3}, "0.33"},
	    {{2, 3}, "0.67"},
	    {{1, 8}, "0.13"},
	    {{5, 4}, "1.25"},
	    {{101, 100}, "1.01"},
	    {{1, 10}, "0.1"},
	    {{999, 1000}, "1"},
	    {{1, 1000}, "0.001"},
	    {{1, 300}, "0.003"},
	    {{1, 100000000}, "0"},
	    {{-3, 2}, "−1.5"},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		print_decimal(&b, rows[i].v);
		expect_taken(&b, rows[i].want);
	}
}

static void
test_range(void **state)
{
	static const struct {
		struct ratio min, max;
		const char *want, *decimals;
	} rows[] = {
	    {{2, 1}, {3, 1}, "2–3", "2–3"},
	    {{2, 1}, {2, 1}, "2", "2"},
	    {{1, 2}, {3, 4}, "½–¾", "0.5–0.75"},
	    {{1, 1}, {3, 2}, "1–1½", "1–1.5"},
	    {{3, 2}, {3, 2}, "1½", "1.5"},
	    {{-2, 1}, {4, 1}, "−2 to 4", "−2 to 4"},
	    {{-20, 1}, {-18, 1}, "−20 to −18", "−20 to −18"},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		print_range(&b, rows[i].min, rows[i].max);
		expect_taken(&b, rows[i].want);
		print_decimals(&b, rows[i].min, rows[i].max);
		expect_taken(&b, rows[i].decimals);
	}
}

#define UNIT(u, many, short_form, is_metric)                                               \
	static const struct unit u = {.name = STR_INIT(#u),                                \
	    .plural = STR_INIT(many),                                                      \
	    .brief = STR_INIT(short_form),                                                 \
	    .metric = is_metric}
#define STR_INIT(literal)                                                                  \
	{                                                                                  \
		(literal), sizeof(literal) - 1                                             \
	}

UNIT(teaspoon, "teaspoons", "tsp", false);
UNIT(cup, "cups", "", false);
UNIT(clove, "cloves", "clove", false);
UNIT(leaf, "leaves", "", false);
UNIT(slice, "slices", "", false);
UNIT(pinch, "pinches", "", false);
UNIT(gram, "grams", "g", true);
UNIT(kilogram, "kilograms", "kg", true);
UNIT(millilitre, "millilitres", "ml", true);
UNIT(litre, "litres", "l", true);
UNIT(quart, "quarts", "qt", false);
UNIT(fahrenheit, "fahrenheit", "", false);
UNIT(celsius, "celsius", "", true);
static const struct unit fluid_ounce = {
    .name = STR_INIT("fluid-ounce"), .plural = STR_INIT("fluid-ounces")};
static const struct unit gas_mark = {.name = STR_INIT("gas-mark")};
static const struct unit bare = {.name = STR_INIT("")};

static const struct {
	struct amount amount;
	const char *want;
} amount_rows[] = {
    {{true, true, {3, 2}, {3, 2}, &teaspoon}, "1½ tsp"},
    {{true, true, {1, 4}, {1, 4}, &teaspoon}, "¼ tsp"},
    {{true, true, {2, 1}, {2, 1}, &clove}, "2 cloves"},
    {{true, true, {1, 1}, {1, 1}, &clove}, "1 clove"},
    {{true, true, {1, 2}, {1, 2}, &cup}, "½ cup"},
    {{true, true, {1, 1}, {1, 1}, &cup}, "1 cup"},
    {{true, true, {1, 1}, {2, 1}, &cup}, "1–2 cups"},
    {{true, true, {5, 4}, {5, 4}, &cup}, "1¼ cups"},
    {{true, true, {6, 1}, {6, 1}, &leaf}, "6 leaves"},
    {{true, true, {3, 1}, {3, 1}, NULL}, "3"},
    {{true, true, {2, 1}, {3, 1}, NULL}, "2–3"},
    {{true, true, {1, 2}, {1, 2}, &bare}, "½"},
    {{true, true, {400, 1}, {400, 1}, &gram}, "400 g"},
    {{true, true, {3, 2}, {3, 2}, &kilogram}, "1.5 kg"},
    {{true, true, {1, 1}, {3, 2}, &kilogram}, "1–1.5 kg"},
    {{true, true, {250, 1}, {250, 1}, &millilitre}, "250 ml"},
    {{true, true, {3, 2}, {3, 2}, &litre}, "1.5 litres"},
    {{true, true, {1, 2}, {1, 2}, &litre}, "0.5 litre"},
    {{true, true, {1, 1}, {1, 1}, &litre}, "1 litre"},
    {{true, true, {2, 1}, {2, 1}, &quart}, "2 quarts"},
    {{true, true, {6, 1}, {6, 1}, &fluid_ounce}, "6 fluid ounces"},
    {{true, true, {1, 1}, {1, 1}, &fluid_ounce}, "1 fluid ounce"},
    {{true, true, {1, 1}, {1, 1}, &pinch}, "1 pinch"},
    {{true, false, {0, 0}, {0, 0}, &slice}, "some slices"},
    {{true, false, {0, 0}, {0, 0}, NULL}, ""},
    {{true, false, {0, 0}, {0, 0}, &bare}, ""},
    {{false, false, {0, 0}, {0, 0}, NULL}, ""},
};

static void
test_amount(void **state)
{
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(amount_rows); i++) {
		print_amount(&b, &amount_rows[i].amount);
		expect_taken(&b, amount_rows[i].want);
	}
}

/* Pairs of oven settings as printed by NIST, SI Units - Temperature, Oven
 * Temperature Equivalencies (200, 250, 300 to 400, 450, 500 °F); the rest and
 * the gas marks are common practice. */
static const struct {
	const struct unit *unit;
	struct ratio min, max;
	const char *want;
} setting_rows[] = {
    {&fahrenheit, {200, 1}, {200, 1}, "200 °F (90 °C)"},
    {&fahrenheit, {225, 1}, {225, 1}, "225 °F (110 °C)"},
    {&fahrenheit, {250, 1}, {250, 1}, "250 °F (120 °C)"},
    {&fahrenheit, {275, 1}, {275, 1}, "275 °F (140 °C)"},
    {&fahrenheit, {300, 1}, {300, 1}, "300 °F (150 °C)"},
    {&fahrenheit, {325, 1}, {325, 1}, "325 °F (160 °C)"},
    {&fahrenheit, {350, 1}, {350, 1}, "350 °F (180 °C)"},
    {&fahrenheit, {375, 1}, {375, 1}, "375 °F (190 °C)"},
    {&fahrenheit, {400, 1}, {400, 1}, "400 °F (200 °C)"},
    {&fahrenheit, {425, 1}, {425, 1}, "425 °F (220 °C)"},
    {&fahrenheit, {450, 1}, {450, 1}, "450 °F (230 °C)"},
    {&fahrenheit, {475, 1}, {475, 1}, "475 °F (240 °C)"},
    {&fahrenheit, {500, 1}, {500, 1}, "500 °F (260 °C)"},
    {&fahrenheit, {550, 1}, {550, 1}, "550 °F (290 °C)"},
    {&fahrenheit, {365, 1}, {365, 1}, "365 °F (185 °C)"},
    {&fahrenheit, {350, 1}, {375, 1}, "350–375 °F (180–190 °C)"},
    {&fahrenheit, {470, 1}, {475, 1}, "470–475 °F (245 °C)"},
    {&celsius, {110, 1}, {110, 1}, "110 °C (225 °F)"},
    {&celsius, {120, 1}, {120, 1}, "120 °C (250 °F)"},
    {&celsius, {140, 1}, {140, 1}, "140 °C (275 °F)"},
    {&celsius, {150, 1}, {150, 1}, "150 °C (300 °F)"},
    {&celsius, {160, 1}, {160, 1}, "160 °C (325 °F)"},
    {&celsius, {170, 1}, {170, 1}, "170 °C (325 °F)"},
    {&celsius, {175, 1}, {175, 1}, "175 °C (350 °F)"},
    {&celsius, {180, 1}, {180, 1}, "180 °C (350 °F)"},
    {&celsius, {190, 1}, {190, 1}, "190 °C (375 °F)"},
    {&celsius, {200, 1}, {200, 1}, "200 °C (400 °F)"},
    {&celsius, {210, 1}, {210, 1}, "210 °C (410 °F)"},
    {&celsius, {220, 1}, {220, 1}, "220 °C (425 °F)"},
    {&celsius, {230, 1}, {230, 1}, "230 °C (450 °F)"},
    {&celsius, {240, 1}, {240, 1}, "240 °C (475 °F)"},
    {&celsius, {250, 1}, {250, 1}, "250 °C (475 °F)"},
    {&celsius, {180, 1}, {200, 1}, "180–200 °C (350–400 °F)"},
    {&celsius, {160, 1}, {165, 1}, "160–165 °C (325 °F)"},
    {&gas_mark, {1, 4}, {1, 4}, "gas mark ¼ (110 °C/225 °F)"},
    {&gas_mark, {1, 2}, {1, 2}, "gas mark ½ (120 °C/250 °F)"},
    {&gas_mark, {1, 1}, {1, 1}, "gas mark 1 (140 °C/275 °F)"},
    {&gas_mark, {3, 1}, {3, 1}, "gas mark 3 (170 °C/325 °F)"},
    {&gas_mark, {4, 1}, {4, 1}, "gas mark 4 (180 °C/350 °F)"},
    {&gas_mark, {7, 1}, {7, 1}, "gas mark 7 (220 °C/425 °F)"},
    {&gas_mark, {9, 1}, {9, 1}, "gas mark 9 (240 °C/475 °F)"},
    {&gas_mark, {4, 1}, {5, 1}, "gas mark 4–5 (180–190 °C/350–375 °F)"},
    {&gas_mark, {14, 1}, {14, 1}, "gas mark 14"},
    {NULL, {200, 1}, {200, 1}, "200 degrees"},
    {&cup, {180, 1}, {200, 1}, "180–200 degrees"},
};

static void
test_setting(void **state)
{
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(setting_rows); i++) {
		print_temperature(&b, setting_rows[i].min, setting_rows[i].max,
		    setting_rows[i].unit, false);
		expect_taken(&b, setting_rows[i].want);
	}
}

/* t/°C = (t/°F - 32) / 1.8: NIST, SI Units - Temperature. */
static void
test_reading(void **state)
{
	static const struct {
		const struct unit *unit;
		struct ratio v;
		const char *want;
	} rows[] = {
	    {&fahrenheit, {32, 1}, "32 °F (0 °C)"},
	    {&fahrenheit, {40, 1}, "40 °F (4 °C)"},
	    {&fahrenheit, {115, 1}, "115 °F (46 °C)"},
	    {&fahrenheit, {140, 1}, "140 °F (60 °C)"},
	    {&fahrenheit, {145, 1}, "145 °F (63 °C)"},
	    {&fahrenheit, {160, 1}, "160 °F (71 °C)"},
	    {&fahrenheit, {165, 1}, "165 °F (74 °C)"},
	    {&fahrenheit, {212, 1}, "212 °F (100 °C)"},
	    {&fahrenheit, {350, 1}, "350 °F (177 °C)"},
	    {&fahrenheit, {-40, 1}, "−40 °F (−40 °C)"},
	    {&celsius, {55, 1}, "55 °C (131 °F)"},
	    {&celsius, {63, 1}, "63 °C (145 °F)"},
	    {&celsius, {70, 1}, "70 °C (158 °F)"},
	    {&celsius, {75, 1}, "75 °C (167 °F)"},
	    {&celsius, {-18, 1}, "−18 °C (0 °F)"},
	    {&celsius, {125, 2}, "62.5 °C (145 °F)"},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		print_temperature(&b, rows[i].v, rows[i].v, rows[i].unit, true);
		expect_taken(&b, rows[i].want);
	}
}

static const struct {
	int64_t min_s, max_s;
	const char *want;
} duration_rows[] = {
    {0, 0, "0 seconds"},
    {1, 1, "1 second"},
    {30, 30, "30 seconds"},
    {60, 60, "1 minute"},
    {90, 90, "90 seconds"},
    {150, 150, "2 minutes 30 seconds"},
    {600, 600, "10 minutes"},
    {2700, 2700, "45 minutes"},
    {3600, 3600, "1 hour"},
    {4500, 4500, "1 hour 15 minutes"},
    {5400, 5400, "1 hour 30 minutes"},
    {7200, 7200, "2 hours"},
    {3630, 3630, "1 hour 1 minute"},
    {86400, 86400, "24 hours"},
    {129600, 129600, "36 hours"},
    {172800, 172800, "2 days"},
    {20, 30, "20–30 seconds"},
    {45, 60, "45–60 seconds"},
    {30, 120, "30 seconds to 2 minutes"},
    {60, 120, "1–2 minutes"},
    {120, 150, "2–2½ minutes"},
    {1200, 1500, "20–25 minutes"},
    {1800, 3600, "30–60 minutes"},
    {2700, 3600, "45–60 minutes"},
    {3600, 5400, "1–1½ hours"},
    {4500, 5400, "75–90 minutes"},
    {7200, 10800, "2–3 hours"},
    {8100, 9900, "2 hours 15 minutes to 2 hours 45 minutes"},
    {43200, 86400, "12–24 hours"},
    {86400, 172800, "1–2 days"},
    {600, 300, "10 minutes"},
};

static void
test_duration(void **state)
{
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(duration_rows); i++) {
		print_duration(
		    &b, duration_rows[i].min_s * 1000, duration_rows[i].max_s * 1000);
		expect_taken(&b, duration_rows[i].want);
	}
	print_duration(&b, -1, -1);
	expect_taken(&b, "overnight");
	print_duration(&b, 59500, 59500);
	expect_taken(&b, "1 minute");
}

static void
test_clock(void **state)
{
	static const struct {
		int64_t ms;
		const char *want;
	} rows[] = {
	    {0, "0:00"},
	    {21999, "0:21"},
	    {60000, "1:00"},
	    {725000, "12:05"},
	    {3599999, "59:59"},
	    {3600000, "1:00:00"},
	    {3723000, "1:02:03"},
	    {360000000, "100:00:00"},
	    {-1, ""},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		print_clock(&b, rows[i].ms);
		expect_taken(&b, rows[i].want);
	}
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_number),
	    cmocka_unit_test(test_decimal),
	    cmocka_unit_test(test_range),
	    cmocka_unit_test(test_amount),
	    cmocka_unit_test(test_setting),
	    cmocka_unit_test(test_reading),
	    cmocka_unit_test(test_duration),
	    cmocka_unit_test(test_clock),
	};

	return cmocka_run_group_tests(tests, hold_arena, drop_arena);
}
