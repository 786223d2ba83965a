/* SPDX-License-Identifier: ISC */
/*
 * Quantities in kitchen measures. Sizes of US cups and spoons: NIST SP 430; of
 * the ounce and the inch: NIST Handbook 44; how far to round: common practice.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stdio.h>

#include <cmocka.h>

#include "../support/expect.h"
#include "../support/hold.h"
#include "house/kitchen.h"

/* Metric spoons with a cup of 250 ml, as in Canada; and with a tablespoon of
 * 20 ml, as in Australia. */
static const struct spoons metric = {{5, 1}, {3, 1}, {50, 1}, true};
static const struct spoons australian = {{5, 1}, {4, 1}, {50, 1}, true};
static const struct spoons british = {{5, 1}, {3, 1}, {50, 1}, false};

static void
put_one(struct buf *b, struct measured m)
{
	kitchen_put(b, &m, &m, false);
}

static void
spoons_are_added_up(void **state)
{
	static const struct {
		struct ratio tsp;
		enum closeness how;
		const char *want;
	} rows[] = {
	    {{0, 1}, CLOSE, ""},
	    {{1, 16}, CLOSE, "1 pinch"},
	    {{1, 8}, CLOSE, "⅛ tsp"},
	    {{1, 4}, CLOSE, "¼ tsp"},
	    {{1, 3}, CLOSE, "¼ tsp"},
	    {{3, 8}, CLOSE, "½ tsp"},
	    {{9, 8}, CLOSE, "1¼ tsp"},
	    {{5, 2}, CLOSE, "2½ tsp"},
	    {{3, 1}, CLOSE, "1 tbsp"},
	    {{4, 1}, CLOSE, "1 tbsp plus 1 tsp"},
	    {{9, 2}, CLOSE, "1½ tbsp"},
	    {{5, 1}, CLOSE, "1 tbsp plus 2 tsp"},
	    {{6, 1}, CLOSE, "2 tbsp"},
	    {{8, 1}, CLOSE, "2 tbsp plus 2 tsp"},
	    {{9, 1}, CLOSE, "3 tbsp"},
	    {{12, 1}, CLOSE, "¼ cup"},
	    {{15, 1}, CLOSE, "¼ cup plus 1 tbsp"},
	    {{16, 1}, CLOSE, "⅓ cup"},
	    {{18, 1}, CLOSE, "¼ cup plus 2 tbsp"},
	    {{20, 1}, CLOSE, "⅓ cup plus 4 tsp"},
	    {{21, 1}, CLOSE, "¼ cup plus 3 tbsp"},
	    {{24, 1}, CLOSE, "½ cup"},
	    {{32, 1}, CLOSE, "⅔ cup"},
	    {{36, 1}, CLOSE, "¾ cup"},
	    {{42, 1}, CLOSE, "¾ cup plus 2 tbsp"},
	    {{48, 1}, CLOSE, "1 cup"},
	    {{54, 1}, CLOSE, "1 cup plus 2 tbsp"},
	    {{64, 1}, CLOSE, "1⅓ cups"},
	    {{105, 1}, CLOSE, "2 cups plus 3 tbsp"},
	    {{1000, 1}, CLOSE, "20¾ cups"},
	    {{17, 2}, ABOUT, "3 tbsp"},
	    {{4, 1}, ABOUT, "1½ tbsp"},
	    {{13, 1}, ABOUT, "¼ cup plus 1 tsp"},
	    {{50, 1}, ABOUT, "1 cup"},
	    {{425, 10}, ABOUT, "¾ cup plus 2 tbsp"},
	};
	struct spoons us = kitchen_us_spoons();
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		put_one(&b, kitchen_spoons(rows[i].tsp, &us, rows[i].how));
		expect_taken(&b, rows[i].want);
	}
}

static void
spoons_are_those_of_the_region(void **state)
{
	static const struct {
		const struct spoons *set;
		struct ratio tsp;
		const char *want;
	} rows[] = {
	    {&metric, {3, 1}, "1 tbsp"},
	    {&metric, {25, 2}, "¼ cup"},
	    {&metric, {50, 1}, "1 cup"},
	    {&australian, {3, 1}, "3 tsp"},
	    {&australian, {4, 1}, "1 tbsp"},
	    {&australian, {6, 1}, "1½ tbsp"},
	    {&british, {12, 1}, "4 tbsp"},
	    {&british, {24, 1}, "8 tbsp"},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		put_one(&b, kitchen_spoons(rows[i].tsp, rows[i].set, CLOSE));
		expect_taken(&b, rows[i].want);
	}
}

static void
weights_are_rounded(void **state)
{
	static const struct {
		struct ratio g;
		const char *grams, *ounces;
	} rows[] = {
	    {{1, 4}, "0.3 g", ""},
	    {{7, 2}, "3.5 g", ""},
	    {{72, 10}, "7 g", "¼ oz"},
	    {{142, 10}, "14 g", "½ oz"},
	    {{22, 1}, "20 g", "¾ oz"},
	    {{28, 1}, "30 g", "1 oz"},
	    {{97, 1}, "95 g", "3½ oz"},
	    {{99, 1}, "100 g", "3½ oz"},
	    {{104, 1}, "100 g", "3¾ oz"},
	    {{113, 1}, "110 g", "4 oz"},
	    {{125, 1}, "125 g", "4½ oz"},
	    {{227, 1}, "225 g", "8 oz"},
	    {{340, 1}, "340 g", "12 oz"},
	    {{454, 1}, "450 g", "1 lb"},
	    {{567, 1}, "570 g", "1¼ lb"},
	    {{998, 1}, "1 kg", "2 lb 3 oz"},
	    {{1361, 1}, "1.36 kg", "3 lb"},
	    {{4536, 1}, "4.55 kg", "10 lb"},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		put_one(&b, kitchen_grams(rows[i].g));
		expect_taken(&b, rows[i].grams);
		put_one(&b, kitchen_us_mass(rows[i].g, ABOUT));
		expect_taken(&b, rows[i].ounces);
	}
}

static void
volumes_and_lengths_are_rounded(void **state)
{
	static const struct {
		struct measured (*measure)(struct ratio);
		struct ratio v;
		const char *want;
	} rows[] = {
	    {kitchen_millilitres, {237, 1}, "240 ml"},
	    {kitchen_millilitres, {473, 1}, "475 ml"},
	    {kitchen_millilitres, {568, 1}, "570 ml"},
	    {kitchen_millilitres, {946, 1}, "950 ml"},
	    {kitchen_millilitres, {1420, 1}, "1.4 litres"},
	    {kitchen_millilitres, {3785, 1}, "3.8 litres"},
	    {kitchen_millilitres, {1000, 1}, "1 litre"},
	    {kitchen_inches, {10, 1}, "⅜ in"},
	    {kitchen_inches, {230, 1}, "9 in"},
	    {kitchen_centimetres, {254, 10}, "2.5 cm"},
	    {kitchen_centimetres, {2286, 10}, "23 cm"},
	    {kitchen_centimetres, {3302, 10}, "33 cm"},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		put_one(&b, rows[i].measure(rows[i].v));
		expect_taken(&b, rows[i].want);
	}
}

static void
ranges_and_words_print(void **state)
{
	struct spoons us = kitchen_us_spoons();
	struct measured tsp = kitchen_spoons(ratio_int(2), &us, CLOSE);
	struct measured cup = kitchen_spoons(ratio_int(48), &us, CLOSE);
	struct measured more = kitchen_spoons(ratio_int(54), &us, CLOSE);
	struct measured lb = kitchen_us_mass(ratio_int(500), ABOUT);
	struct buf b = buf_in(*state);

	kitchen_put(&b, &tsp, &cup, false);
	expect_taken(&b, "2 tsp to 1 cup");
	kitchen_put(&b, &cup, &more, true);
	expect_taken(&b, "1 cup to 1 cup plus 2 tablespoons");
	kitchen_put(&b, &tsp, &tsp, true);
	expect_taken(&b, "2 teaspoons");
	kitchen_put(&b, &lb, &lb, true);
	expect_taken(&b, "1 pound 2 ounces");
}

/* Teaspoons of what was measured. */
static struct ratio
teaspoons(const struct measured *m)
{
	struct ratio sum = ratio_int(0);

	for (size_t i = 0; i < m->terms; i++) {
		int64_t per = m->term[i].tool == TOOL_CUP          ? 48
			      : m->term[i].tool == TOOL_TABLESPOON ? 3
								   : 1;

		sum = ratio_add(sum, ratio_mul(m->term[i].n, ratio_int(per)));
	}
	return sum;
}

/* From an eighth of a teaspoon to 20 cups: never off by more than its closeness,
 * or by half the smallest spoon where that is more; from 4 cups on, whole
 * quarters and thirds have to do. */
static void
what_is_measured_is_near(void **state)
{
	static const struct {
		enum closeness how;
		double share, least;
	} rows[] = {{CLOSE, 0.02, 0.51}, {ABOUT, 0.061, 0.76}};
	struct spoons us = kitchen_us_spoons();

	(void)state;
	for (int64_t i = 12; i < 96 * 960; i += i < 4800 ? 1 : 37)
		for (size_t k = 0; k < COUNT(rows); k++) {
			struct ratio v = ratio_make(i, 96);
			struct measured m = kitchen_spoons(v, &us, rows[k].how);
			double off = ratio_double(teaspoons(&m)) - i / 96.0;
			double share = i > 4 * 48 * 96 ? 0.031 : rows[k].share;
			double most =
			    (share > rows[k].share ? share : rows[k].share) * i / 96.0;

			if (off < 0)
				off = -off;
			if (m.terms == 0 || (off > most && off > rows[k].least))
				fail_msg("%g tsp is off by %g", i / 96.0, off);
		}
}

/* From 0.1 g to 10 kg. */
static void
what_is_weighed_is_near(void **state)
{
	(void)state;
	for (int64_t i = 1; i < 100000; i += i < 2000 ? 1 : 13) {
		struct measured m = kitchen_grams(ratio_make(i, 10));
		double v = i / 10.0, got = ratio_double(m.term[0].n);
		double most = v < 1      ? 0.051
			      : v < 5    ? 0.251
			      : v < 20   ? 0.51
			      : v < 100  ? 2.51
			      : v < 2500 ? 5.01
					 : 25.01;

		if (m.term[0].tool == TOOL_KILOGRAM)
			got *= 1000;
		if (got - v > most || v - got > most)
			fail_msg("%g g is weighed as %g g", v, got);
	}
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(spoons_are_added_up),
	    cmocka_unit_test(spoons_are_those_of_the_region),
	    cmocka_unit_test(weights_are_rounded),
	    cmocka_unit_test(volumes_and_lengths_are_rounded),
	    cmocka_unit_test(ranges_and_words_print),
	    cmocka_unit_test(what_is_measured_is_near),
	    cmocka_unit_test(what_is_weighed_is_near),
	};

	return cmocka_run_group_tests(tests, hold_arena, drop_arena);
}
