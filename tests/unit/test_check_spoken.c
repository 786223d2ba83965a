/* SPDX-License-Identifier: ISC */
/*
 * Slips of the tongue and of the captions; the catalogue, the order of findings
 * and that each fact is raised once.
 */
#include "../support/hold.h"
#include "checks.h"

static void
test_reversed_range(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish soup;time 8-10m step reversed"},
	    {1, "dish soup;time 12-15m step reversed"},
	    {1, "dish soup;amount 2-3:cup reversed"},
	    {1, "dish pie;temp 180-200C appliance reversed"},
	    {2, "dish soup;time 8-10m step reversed;time 1-2h rest reversed"},
	    {0, "dish soup;time 8-10m step"},
	    {0, "dish soup;time 10m step"},
	    {0, "dish soup;time 8-10m step reversed aside"},
	    {0, "dish soup;amount 2-3:cup"},
	    {0, "dish pie;temp 180-200C appliance"},
	};

	expect_rows(*state, "reversed-range", rows, COUNT(rows));
}

static void
test_self_correction(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish soup;amount 2:teaspoon first=1:tablespoon"},
	    {1, "dish soup;amount 150:gram first=100:gram"},
	    {1, "dish pie;temp 350F appliance first=375F"},
	    {1, "dish pie;time 10m step first=20m"},
	    {2, "dish pie;time 10m step first=20m;amount 1: first=2:"},
	    {0, "dish soup;amount 2:teaspoon"},
	    {0, "dish soup;amount 2:teaspoon first=1:tablespoon aside"},
	    {0, "dish pie;temp 350F appliance"},
	    {0, "dish pie;time 10m step"},
	    {0, "dish pie;time 8-10m step reversed"},
	};

	expect_rows(*state, "self-correction", rows, COUNT(rows));
}

static void
test_possible_mishearing(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish chili;remark 3 four_cups for_cups"},
	    {1, "dish corn;remark 3 8_to_10_minutes 8_2_10_minutes"},
	    {1, "dish corn;remark 3 - ate_minutes"},
	    {1, "dish beans;food black-bean legume 1 can size=50:ounce"},
	    {1, "dish beans;food kidney-bean legume 1 can size=50:ounce"},
	    {0, "dish beans;food black-bean legume 1 can size=15:ounce"},
	    {0, "dish beans;food black-bean legume 1 can size=28:ounce"},
	    {0, "dish beans;food black-bean legume 1 can"},
	    {0, "dish beans;food black-bean legume 50 ounce"},
	    {0, "region uk;dish beans;food butter-bean legume 1 can size=400:gram"},
	    {0, "dish soup;food mystery sauce 1 can size=50:ounce"},
	};

	expect_rows(*state, "possible-mishearing", rows, COUNT(rows));
}

static void
test_unclear_reference(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish pie;remark 4 - the_rest_of_the_caramel"},
	    {1, "dish dal;remark 4 - the_fried_onions"},
	    {1, "dish chops;remark 4 - the_gremolata"},
	    {2, "dish pie;remark 4 - the_mixture;remark 4 - another_five_minutes"},
	    {1, "dish pie;dish tart;remark 4 - the_glaze"},
	    {0, "dish pie"},
	    {0, "dish pie;remark 0 - near_enough"},
	    {0, "dish pie;remark 1 egg raw"},
	    {0, "dish pie;remark 2 - mind"},
	    {0, "dish pie;remark 3 four_cups for_cups"},
	};

	expect_rows(*state, "unclear-reference", rows, COUNT(rows));
}

static void
test_wording(void **state)
{
	static const struct finding_want rows[] = {
	    {"reversed-range",
		"dish soup;time 8-10m step reversed text=ten_to_eight_minutes",
		SEVERITY_ERROR,
		"\"ten to eight minutes\" runs from high to low; 8 to 10 min", NULL},
	    {"self-correction", "dish soup;amount 150:gram first=100:gram", SEVERITY_NOTE,
		"corrected while speaking: 100 g, then 150 g; 150 g is used", NULL},
	    {"self-correction", "dish pie;temp 350F appliance first=375F", SEVERITY_NOTE,
		"375 °F, then 350 °F; 350 °F is used", NULL},
	    {"possible-mishearing", "dish chili;remark 3 four_cups for_cups", SEVERITY_NOTE,
		"\"for cups\" was probably misheard for \"four cups\"", "four cups"},
	    {"possible-mishearing", "dish beans;food black-bean legume 1 can size=50:ounce",
		SEVERITY_NOTE, "a 50 oz can of black bean", "15 oz"},
	    {"unclear-reference", "dish pie;remark 4 - the_glaze", SEVERITY_WARNING,
		"\"the glaze\" points back", NULL},
	};

	expect_findings(*state, rows, COUNT(rows));
}

/* Findings stand in script order, whichever check raised them. */
static void
test_order(void **state)
{
	struct arena a;
	const struct draft *d;

	arena_init(&a);
	d = checked(&a, *state,
	    "dish a;food honey syrup none -;time 8-10m step reversed;"
	    "step bake heat in=oven heats d=9m;remark 4 - the_glaze;"
	    "food egg egg 2 - said=2,3");
	assert_true(d->findings >= 5);
	for (size_t i = 1; i < d->findings; i++)
		assert_true(
		    d->finding[i - 1].place.span.beg <= d->finding[i].place.span.beg);
	arena_release(&a);
}

/* Two findings of one code at the same words are one. */
static void
test_once(void **state)
{
	struct arena a;
	struct draft *d;

	arena_init(&a);
	d = draft_of_text(&a, *state, "dish a;remark 4 - the_glaze;remark 4 - glaze");
	d->remark[1].place.span.beg = d->remark[0].place.span.beg + 4;
	check_draft(d, *state);
	assert_int_equal(count_of(d, "unclear-reference"), 1);
	arena_release(&a);
}

/* Codes are unique, and each has a summary of one line and an explanation. */
static void
test_catalogue(void **state)
{
	const struct finding_kind *k;
	size_t n = 0;

	(void)state;
	for (; (k = tamis_finding_kind(n)); n++) {
		assert_true(strlen(k->summary) > 0 && strlen(k->summary) < 90);
		assert_true(strlen(k->explain) > 120);
		for (size_t j = 0; j < n; j++)
			assert_string_not_equal(k->code, tamis_finding_kind(j)->code);
	}
	assert_int_equal(n, 32);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_reversed_range),
	    cmocka_unit_test(test_self_correction),
	    cmocka_unit_test(test_possible_mishearing),
	    cmocka_unit_test(test_unclear_reference),
	    cmocka_unit_test(test_wording),
	    cmocka_unit_test(test_order),
	    cmocka_unit_test(test_once),
	    cmocka_unit_test(test_catalogue),
	};

	return cmocka_run_group_tests(tests, hold_tables, drop_tables);
}
