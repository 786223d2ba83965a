/* SPDX-License-Identifier: ISC */
/*
 * Values that are found again in a text put together from pieces.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stdio.h>

#include <cmocka.h>

#include "../support/expect.h"
#include "../support/hold.h"
#include "base/slot.h"
#include "sample.h"

static struct str
amount_text(struct arena *a, struct slots *s, struct ratio v, const struct unit *u)
{
	struct buf b = buf_in(a);
	struct amount amount = amount_of(v, u);

	slot_put_amount(s, &b, &amount, STR("butter"));
	return buf_str(&b);
}

static void
values_are_found_again(void **state)
{
	struct arena *a = *state;
	struct slots s = {0};
	struct str tsp = amount_text(a, &s, ratio_int(2), &unit_teaspoon), joined;
	struct buf heat = buf_in(a), text = buf_in(a);
	struct amount oven = amount_of(ratio_int(350), &unit_fahrenheit);
	struct slot *slot;
	size_t n;

	slot_put_temperature(&s, &heat, &oven, false);
	joined = arena_fmt(a, "Add %.*s of the butter and bake at %.*s\x01.", (int)tsp.n,
	    tsp.p, (int)heat.n, heat.v);
	slot = slots_take(&s, &text, joined, &n);
	expect(buf_str(&text), "Add 2 tsp of the butter and bake at 350 °F (180 °C).");
	assert_int_equal(n, 2);
	expect(str_cut(buf_str(&text), slot[0].text.beg, slot[0].text.end), "2 tsp");
	expect(
	    str_cut(buf_str(&text), slot[1].text.beg, slot[1].text.end), "350 °F (180 °C)");
	assert_int_equal(slot[0].kind, MEASURE_AMOUNT);
	assert_true(str_is_z(slot[0].food, "butter"));
	assert_int_equal(slot[1].kind, MEASURE_TEMPERATURE);
	assert_int_equal(slot[1].value.max.num, 350);
}

static void
equal_values_read_equal(void **state)
{
	struct slots s = {0};
	struct str one = amount_text(*state, &s, ratio_make(1, 3), &unit_cup);
	struct str other = amount_text(*state, &s, ratio_make(2, 3), &unit_cup);
	struct str same = amount_text(*state, &s, ratio_make(1, 3), &unit_cup);

	assert_true(str_is(one, same));
	assert_false(str_is(one, other));
}

/* A text that was cut, or brought such bytes along from a script. */
static void
broken_marks_fall_away(void **state)
{
	static const struct {
		const char *text, *want;
		size_t slots;
	} rows[] = {
	    {"", "", 0},
	    {"plain", "plain", 0},
	    {"\x02", "", 0},
	    {"\x02"
	     "0\x03",
		"", 0},
	    {"\x02"
	     "0\x03"
	     "1 tsp",
		"1 tsp", 0},
	    {"1 tsp\x04 more", "1 tsp more", 0},
	    {"\x02"
	     "7\x03"
	     "x\x04",
		"7x", 0},
	    {"\x02"
	     "a\x03"
	     "x\x04",
		"ax", 0},
	    {"\x02"
	     "0\x03"
	     "1\x02"
	     "0\x03"
	     "2\x04",
		"102", 1},
	    {"\x1b[2J", "[2J", 0},
	};
	struct slots s = {0};

	amount_text(*state, &s, ratio_int(1), &unit_teaspoon);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct buf text = buf_in(*state);
		size_t n;

		slots_take(&s, &text, str_of(rows[i].text), &n);
		expect(text.n ? buf_str(&text) : STR(""), rows[i].want);
		assert_int_equal(n, rows[i].slots);
	}
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(values_are_found_again),
	    cmocka_unit_test(equal_values_read_equal),
	    cmocka_unit_test(broken_marks_fall_away),
	};

	return cmocka_run_group_tests(tests, hold_arena, drop_arena);
}
