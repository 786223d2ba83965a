/* SPDX-License-Identifier: ISC */
/*
 * Allergens by the list of the region, and claims to be free of one.
 */
#include "../support/hold.h"
#include "checks.h"

static void
test_allergen(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish cake;food flour flour 2 cup;food butter butter 100 gram"},
	    {1, "dish satay;food peanut-butter nut 1 cup"},
	    {1, "dish prawns;food prawn shellfish 1 pound"},
	    {2, "dish cake;food egg egg 2 -;dish pie;food egg egg 1 -"},
	    {1, "region uk;dish soup;food celery vegetable 2 stalk"},
	    {1, "dish tofu;food tofu tofu 1 block"},
	    {0, "dish salad;food tomato vegetable 2 -"},
	    {0, "dish curry;food coconut-milk beverage 1 can"},
	    {0, "dish soup;food celery vegetable 2 stalk"},
	    {0, "dish soup;food butternut-squash vegetable 1 -"},
	    {0, "dish cake;food gluten-free-flour flour 2 cup"},
	    {0, "dish rice;food rice rice 1 cup"},
	};

	expect_rows(*state, "allergen", rows, COUNT(rows));
}

static void
test_allergen_claim(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish cake;food flour flour 2 cup;remark 5 gluten gluten-free"},
	    {1, "dish cake;food butter butter 2 tablespoon;remark 5 milk dairy-free"},
	    {1, "dish cake;food egg egg 2 -;remark 5 egg no_eggs"},
	    {1, "dish cake;food almond nut 2 cup;remark 5 tree-nut nut-free"},
	    {1, "dish cake;food soy-sauce sauce 1 cup;remark 5 gluten gluten-free"},
	    {0, "dish cake;food rice-flour flour 2 cup;remark 5 egg no_eggs"},
	    {0, "dish cake;food gluten-free-flour flour 2 cup;remark 5 gluten gluten-free"},
	    {0, "dish cake;food oat-milk beverage 1 cup;remark 5 milk dairy-free"},
	    {0, "dish cake;food butter butter 2 tablespoon"},
	    {0, "dish pie;food butter butter 1 cup;dish cake;food sugar sugar 1 cup;"
		"remark 5 milk dairy-free"},
	    {0, "dish curry;food coconut-cream cream 1 can;remark 5 milk dairy-free"},
	};

	expect_rows(*state, "allergen-claim", rows, COUNT(rows));
}

static void
test_wording(void **state)
{
	static const struct finding_want rows[] = {
	    {"allergen", "dish cake;food flour flour 2 cup;food butter butter 100 gram",
		SEVERITY_NOTE, "milk (butter), wheat (flour)", NULL},
	    {"allergen", "region uk;dish cake;food flour flour 2 cup", SEVERITY_NOTE,
		"cereals with gluten (flour)", NULL},
	    {"allergen-claim",
		"dish cake;food flour flour 2 cup;remark 5 gluten gluten-free",
		SEVERITY_WARNING, "\"gluten-free\", but flour brings gluten", NULL},
	};

	expect_findings(*state, rows, COUNT(rows));
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_allergen),
	    cmocka_unit_test(test_allergen_claim),
	    cmocka_unit_test(test_wording),
	};

	return cmocka_run_group_tests(tests, hold_tables, drop_tables);
}
