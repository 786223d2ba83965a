/* SPDX-License-Identifier: ISC */
/*
 * src/base: the arena, growing arrays, strings, texts under construction,
 * exact rationals, errors.
 */
#include "../support/expect.h"
#include "base/arena.h"
#include "base/buf.h"
#include "base/err.h"
#include "base/ratio.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#define assert_str(got, want)                                                              \
	do {                                                                               \
		struct str got_ = (got);                                                   \
		assert_int_equal(got_.n, strlen(want));                                    \
		assert_memory_equal(got_.n ? got_.p : "", want, got_.n);                   \
	} while (0)

/* ---- arena -------------------------------------------------------------- */

static void
arena_gives_zeroed_aligned_memory(void **state)
{
	static const size_t sizes[] = {0, 1, 7, 16, 4096, 200000};
	struct arena a;

	(void)state;
	arena_init(&a);
	for (size_t i = 0; i < COUNT(sizes); i++) {
		unsigned char *p = arena_alloc(&a, sizes[i], 1);

		assert_non_null(p);
		assert_int_equal((uintptr_t)p % _Alignof(max_align_t), 0);
		for (size_t k = 0; k < sizes[i]; k++) {
			assert_int_equal(p[k], 0);
			p[k] = 0xff;
		}
	}
	arena_release(&a);
	assert_null(a.head);
	assert_non_null(arena_alloc(&a, 1, 1));
	arena_release(&a);
}

static void
arena_keeps_what_it_gave(void **state)
{
	struct arena a;
	uint32_t *p[1000];

	(void)state;
	arena_init(&a);
	for (uint32_t i = 0; i < 1000; i++) {
		p[i] = arena_array(&a, 100, uint32_t);
		for (uint32_t k = 0; k < 100; k++)
			p[i][k] = i * 100 + k;
	}
	for (uint32_t i = 0; i < 1000; i++)
		for (uint32_t k = 0; k < 100; k++)
			assert_int_equal(p[i][k], i * 100 + k);
	arena_release(&a);
}

static void
arena_copies_strings_with_an_end(void **state)
{
	struct arena a;
	char word[] = "leeks";
	struct str copy;

	(void)state;
	arena_init(&a);
	copy = arena_str(&a, str_of(word));
	word[0] = 'p';
	assert_str(copy, "leeks");
	assert_int_equal(copy.p[copy.n], '\0');
	assert_str(arena_str(&a, (struct str){NULL, 0}), "");
	assert_str(arena_fmt(&a, "%d %s", 3, "leeks"), "3 leeks");
	arena_release(&a);
}

static void
vec_grows_and_keeps_order(void **state)
{
	struct arena a;
	VEC(struct span) v = {0};

	(void)state;
	arena_init(&a);
	for (uint32_t i = 0; i < 5000; i++)
		vec_push(&a, &v, (struct span){i, i + 1});
	assert_int_equal(v.n, 5000);
	assert_true(v.room >= v.n);
	for (uint32_t i = 0; i < 5000; i++)
		assert_int_equal(v.v[i].end, i + 1);
	arena_release(&a);
}

/* ---- str ---------------------------------------------------------------- */

static void
str_is_compared_by_bytes(void **state)
{
	(void)state;
	assert_true(str_is(STR("oat"), STR("oat")));
	assert_false(str_is(STR("oat"), STR("oats")));
	assert_true(str_is((struct str){NULL, 0}, STR("")));
	assert_true(str_is_z(STR("oat"), "oat"));
	assert_true(str_starts(STR("oatmeal"), STR("oat")));
	assert_false(str_starts(STR("oat"), STR("oatmeal")));
	assert_true(str_ends(STR("oatmeal"), STR("meal")));
	assert_true(str_ends(STR("oat"), STR("")));
	assert_true(str_order(STR("leek"), STR("leeks")) < 0);
	assert_true(str_order(STR("b"), STR("a")) > 0);
	assert_int_equal(str_order(STR("a"), STR("a")), 0);
}

static void
str_cuts_within_its_bounds(void **state)
{
	static const struct {
		size_t beg, end;
		const char *want;
	} rows[] = {{0, 4, "leek"}, {1, 3, "ee"}, {2, 99, "ek"}, {9, 12, ""}, {3, 1, ""}};

	(void)state;
	for (size_t i = 0; i < COUNT(rows); i++)
		assert_str(str_cut(STR("leek"), rows[i].beg, rows[i].end), rows[i].want);
	assert_str(str_trim(STR(" \t leek soup\r\n")), "leek soup");
	assert_str(str_trim(STR("  ")), "");
}

static void
str_finds_the_first(void **state)
{
	(void)state;
	assert_int_equal(str_find(STR("a pan, a pan"), STR("pan")), 2);
	assert_int_equal(str_find(STR("a pan"), STR("pot")), 5);
	assert_int_equal(str_find(STR("pa"), STR("pan")), 2);
	assert_true(str_is_any(STR("fry"), (const char *const[]){"bake", "fry"}, 2));
	assert_false(str_is_any(STR("fr"), (const char *const[]){"bake", "fry"}, 2));
	assert_int_equal(str_find_char(STR("1:15"), ':'), 1);
	assert_int_equal(str_find_char(STR("115"), ':'), 3);
	assert_int_equal(str_find_char((struct str){NULL, 0}, ':'), 0);
}

static void
str_next_gives_each_piece_once(void **state)
{
	static const char *const want[] = {"a", "", "b", ""};
	struct str rest = STR("a||b|");
	size_t n = 0;

	(void)state;
	while (rest.p) {
		assert_true(n < COUNT(want));
		assert_str(str_next(&rest, '|'), want[n]);
		n++;
	}
	assert_int_equal(n, COUNT(want));
}

static void
str_reads_whole_numbers_only(void **state)
{
	static const struct {
		const char *text;
		bool ok;
		uint64_t want;
	} rows[] = {{"0", true, 0}, {"0375", true, 375},
	    {"999999999999999999", true, 999999999999999999}, {"", false, 0},
	    {"-1", false, 0}, {"1 ", false, 0}, {"1.5", false, 0},
	    {"1000000000000000000", false, 0}};

	(void)state;
	for (size_t i = 0; i < COUNT(rows); i++) {
		uint64_t v = 0;

		assert_int_equal(str_to_u64(str_of(rows[i].text), &v), rows[i].ok);
		assert_int_equal(v, rows[i].want);
	}
}

/* The check values of 64-bit FNV-1a that its authors publish. */
static void
str_hash_is_fnv_1a(void **state)
{
	(void)state;
	assert_true(str_hash(STR("")) == 0xcbf29ce484222325u);
	assert_true(str_hash(STR("a")) == 0xaf63dc4c8601ec8cu);
	assert_true(str_hash(STR("foobar")) == 0x85944171f73967e8u);
}

/* ---- buf ---------------------------------------------------------------- */

static void
buf_puts_one_after_the_other(void **state)
{
	struct arena a;
	struct buf b;

	(void)state;
	arena_init(&a);
	b = buf_in(&a);
	assert_str(buf_str(&b), "");
	buf_put_z(&b, "3");
	buf_put_char(&b, ' ');
	buf_put(&b, STR("leeks"));
	buf_put(&b, (struct str){NULL, 0});
	buf_fmt(&b, ", %d cm", 1);
	assert_str(buf_str(&b), "3 leeks, 1 cm");
	for (int i = 0; i < 10000; i++)
		buf_fmt(&b, "%04d", i);
	assert_int_equal(b.n, 13 + 40000);
	assert_memory_equal(b.v + b.n - 8, "99989999", 8);
	arena_release(&a);
}

/* ---- ratio -------------------------------------------------------------- */

static void
assert_ratio(struct ratio got, int64_t num, int64_t den)
{
	assert_int_equal(got.num, num);
	assert_int_equal(got.den, den);
}

static void
ratio_is_in_lowest_terms(void **state)
{
	(void)state;
	assert_ratio(ratio_make(6, 4), 3, 2);
	assert_ratio(ratio_make(1, -2), -1, 2);
	assert_ratio(ratio_make(0, 7), 0, 1);
	assert_ratio(ratio_add(ratio_make(1, 2), ratio_make(1, 3)), 5, 6);
	assert_ratio(ratio_sub(ratio_make(1, 3), ratio_make(1, 2)), -1, 6);
	assert_ratio(ratio_mul(ratio_make(2, 3), ratio_make(3, 4)), 1, 2);
	assert_ratio(ratio_div(ratio_make(1, 2), ratio_make(-1, 4)), -2, 1);
}

static void
ratio_rounds_halves_away_from_zero(void **state)
{
	(void)state;
	assert_int_equal(ratio_round(ratio_make(5, 2)), 3);
	assert_int_equal(ratio_round(ratio_make(-5, 2)), -3);
	assert_int_equal(ratio_round(ratio_make(12, 5)), 2);
	assert_ratio(ratio_round_to(ratio_make(1773, 10), ratio_int(5)), 175, 1);
	assert_ratio(ratio_round_to(ratio_make(3, 8), ratio_make(1, 4)), 1, 2);
	assert_true(ratio_order(ratio_make(1, 3), ratio_make(3333, 10000)) > 0);
	assert_int_equal(ratio_order(ratio_make(2, 4), ratio_make(1, 2)), 0);
}

static void
ratio_stays_near_where_it_overflows(void **state)
{
	struct ratio big = ratio_make(INT64_MAX, 3);
	struct ratio square = ratio_mul(big, ratio_make(1, INT64_MAX));
	struct ratio vast = ratio_mul(ratio_int(INT64_MAX), ratio_int(INT64_MAX));

	(void)state;
	assert_ratio(square, 1, 3);
	assert_true(vast.den > 0 && vast.num > INT64_MAX / 4);
}

static void
ratio_parses_what_tables_write(void **state)
{
	static const struct {
		const char *text;
		bool ok;
		int64_t num, den;
	} rows[] = {{"3", true, 3, 1}, {"1/3", true, 1, 3}, {"2.5", true, 5, 2},
	    {"1 1/2", true, 3, 2}, {"-40", true, -40, 1}, {"-0.5", true, -1, 2},
	    {".25", true, 1, 4}, {"236.5882365", true, 473176473, 2000000},
	    {"", false, 0, 0}, {"-", false, 0, 0}, {"--1", false, 0, 0},
	    {"1/0", false, 0, 0}, {"1/", false, 0, 0}, {"one", false, 0, 0},
	    {"1.2.3", false, 0, 0}, {"1,5", false, 0, 0}};

	(void)state;
	for (size_t i = 0; i < COUNT(rows); i++) {
		struct ratio r = {0, 1};

		if (ratio_parse(str_of(rows[i].text), &r) != rows[i].ok)
			fail_msg("\"%s\"", rows[i].text);
		if (rows[i].ok)
			assert_ratio(r, rows[i].num, rows[i].den);
	}
}

/* ---- err ---------------------------------------------------------------- */

static void
err_keeps_the_first(void **state)
{
	struct err e = {0};

	(void)state;
	assert_false(
	    err_set_at(&e, "en/foods.lex", (struct err_place){3, 7}, "no %s", "x"));
	assert_false(err_set(&e, "other", "later"));
	assert_true(e.set);
	assert_string_equal(e.where, "en/foods.lex");
	assert_string_equal(e.text, "no x");
	assert_int_equal(e.line, 3);
	assert_int_equal(e.column, 7);
}

static void
err_cuts_what_is_too_long(void **state)
{
	struct err e = {0};
	char vast[2000];

	(void)state;
	memset(vast, 'x', sizeof vast - 1);
	vast[sizeof vast - 1] = '\0';
	err_set(&e, vast, "%s", vast);
	assert_int_equal(strlen(e.where), sizeof e.where - 1);
	assert_int_equal(strlen(e.text), sizeof e.text - 1);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(arena_gives_zeroed_aligned_memory),
	    cmocka_unit_test(arena_keeps_what_it_gave),
	    cmocka_unit_test(arena_copies_strings_with_an_end),
	    cmocka_unit_test(vec_grows_and_keeps_order),
	    cmocka_unit_test(str_is_compared_by_bytes),
	    cmocka_unit_test(str_cuts_within_its_bounds),
	    cmocka_unit_test(str_finds_the_first),
	    cmocka_unit_test(str_next_gives_each_piece_once),
	    cmocka_unit_test(str_reads_whole_numbers_only),
	    cmocka_unit_test(str_hash_is_fnv_1a),
	    cmocka_unit_test(buf_puts_one_after_the_other),
	    cmocka_unit_test(ratio_is_in_lowest_terms),
	    cmocka_unit_test(ratio_rounds_halves_away_from_zero),
	    cmocka_unit_test(ratio_stays_near_where_it_overflows),
	    cmocka_unit_test(ratio_parses_what_tables_write),
	    cmocka_unit_test(err_keeps_the_first),
	    cmocka_unit_test(err_cuts_what_is_too_long),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
