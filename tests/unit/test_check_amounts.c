/* SPDX-License-Identifier: ISC */
/*
 * Amounts, sizes and lists.
 */
#include "../support/hold.h"
#include "checks.h"

static void
test_missing_amount(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish slaw;food honey syrup none -"},
	    {1, "dish salad;food parmesan cheese none -"},
	    {1, "dish pickle;food celery-seed spice none -"},
	    {1, "dish cake;food flour flour none -;food egg egg 2 -"},
	    {2, "dish cake;food flour flour none -;food sugar sugar none -"},
	    {1, "dish cake;food flour flour none -;part icing;food sugar sugar 100 gram"},
	    {0, "dish soup;food salt salt none -;food black-pepper pepper none -"},
	    {0, "dish soup;food olive-oil oil none -;food water water none -"},
	    {0, "dish soup;food cream cream none - optional"},
	    {0, "dish soup;food cream cream none - note=to_serve"},
	    {0, "dish soup;food parsley herb none -"},
	    {0, "dish soup;food cheese cheese some -"},
	    {0, "dish soup;food honey syrup 1 tablespoon"},
	    {0, "dish pie;food cream cream none -;step spoon serve use=0"},
	    {0, "dish pie;food caramel sauce none -;part caramel;food sugar sugar 100 "
		"gram"},
	    {0, "dish pie;food sugar sugar none -;part icing;food sugar sugar 100 gram"},
	    {0, "dish steak;food steak beef none - size=10:ounce"},
	};

	expect_rows(*state, "missing-amount", rows, COUNT(rows));
}

static void
test_vague_amount(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish dip;food milk dairy some -"},
	    {1, "dish cake;food flour flour some -"},
	    {1, "dish cake;food sugar sugar some -"},
	    {1, "dish soup;food chicken-stock stock some -"},
	    {1, "dish curry;food cumin spice some -"},
	    {0, "dish soup;food parsley herb some -"},
	    {0, "dish soup;food salt salt some -"},
	    {0, "dish soup;food olive-oil oil some -"},
	    {0, "dish toast;food cheese cheese some slice"},
	    {0, "dish soup;food milk dairy some - optional"},
	    {0, "dish soup;food milk dairy 1 cup"},
	    {0, "dish tacos;food cheese cheese some -;step scatter garnish use=0"},
	};

	expect_rows(*state, "vague-amount", rows, COUNT(rows));
}

static void
test_missing_size(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish chili;food kidney-bean legume 2 can"},
	    {1, "dish soup;food tomato vegetable 1 can"},
	    {1, "dish soup;food noodle noodle 1 packet"},
	    {1, "dish pasta;food pesto sauce 1 jar"},
	    {1, "dish cake;tool loaf_tin tin;step bake heat in=oven heats t=350F d=1h"},
	    {1, "dish gratin;tool baking_dish dish;step bake heat in=oven heats t=350F "
		"d=1h"},
	    {0, "dish chili;food kidney-bean legume 2 can size=15:ounce"},
	    {0, "dish bread;food dried-yeast yeast 1 packet"},
	    {0, "dish stew;food beer beer 1 can"},
	    {0, "dish cake;tool loaf_tin tin size=9:inch;"
		"step bake heat in=oven heats t=350F d=1h"},
	    {0, "dish muffins;tool muffin_tin tin;step bake heat in=oven heats t=350F "
		"d=20m"},
	    {0, "dish stew;tool frying_pan pan;step bake heat in=oven heats t=350F d=20m"},
	    {0, "dish salad;tool glass_dish dish;step mix mix"},
	    {0, "dish soup;food onion vegetable 2 -"},
	};

	expect_rows(*state, "missing-size", rows, COUNT(rows));
}

#define LIST "dish cake;food flour flour 200 gram listed;food egg egg 3 - listed again=1;"

static void
test_unlisted_ingredient(void **state)
{
	static const struct draft_row rows[] = {
	    {1, LIST "food vanilla extract 1 teaspoon"},
	    {1, LIST "food cinnamon spice 1 teaspoon"},
	    {1, LIST "part icing;food icing-sugar sugar 100 gram"},
	    {2, LIST "food vanilla extract 1 teaspoon;food milk dairy 1 tablespoon"},
	    {1, LIST "food feta cheese 50 gram"},
	    {0, LIST},
	    {0, LIST "food salt salt 1 pinch"},
	    {0, LIST "food olive-oil oil 1 tablespoon"},
	    {0, LIST "food vanilla extract 1 teaspoon optional"},
	    {0, LIST "part icing;food egg egg 1 -"},
	    {0, LIST "food plain-flour flour 1 tablespoon"},
	    {0, "dish cake;food flour flour 200 gram;food vanilla extract 1 teaspoon"},
	    {0, LIST "dish pie;food butter butter 50 gram"},
	    {0, LIST "food batter sauce 1 cup;part batter;food egg egg 1 -"},
	};

	expect_rows(*state, "unlisted-ingredient", rows, COUNT(rows));
}

static void
test_unused_ingredient(void **state)
{
	static const struct draft_row rows[] = {
	    {1, LIST "food poppy-seed seed 20 gram listed unused"},
	    {1, LIST "food sultana dried-fruit 50 gram listed unused"},
	    {2, LIST "food nut nut 50 gram listed unused;food date dried-fruit 5 - listed "
		     "unused"},
	    {1, LIST "food milk dairy 1 cup listed unused;dish pie;food cream cream 1 cup"},
	    {1, LIST "part icing;food lemon citrus 1 - listed unused"},
	    {0, LIST},
	    {0, LIST "food nut nut 50 gram listed"},
	    {0, LIST "food nut nut 50 gram listed unused again=1"},
	    {0, LIST "food nut nut 50 gram listed unused optional"},
	    {0, LIST "food onion vegetable 1 - listed unused;part sauce;"
		     "food red-onion vegetable 1 -"},
	    {0, "dish cake;food nut nut 50 gram unused"},
	};

	expect_rows(*state, "unused-ingredient", rows, COUNT(rows));
}

static void
test_wording(void **state)
{
	static const struct finding_want rows[] = {
	    {"missing-amount", "dish slaw;food honey syrup none -", SEVERITY_WARNING,
		"no amount of honey", NULL},
	    {"vague-amount", "dish dip;food milk dairy some -", SEVERITY_NOTE,
		"how much milk", NULL},
	    {"missing-size", "dish chili;food kidney-bean legume 2 can", SEVERITY_NOTE,
		"can of kidney bean", NULL},
	    {"unlisted-ingredient", LIST "food feta cheese 50 gram", SEVERITY_WARNING,
		"feta goes in", NULL},
	    {"unused-ingredient", LIST "food nut nut 50 gram listed unused",
		SEVERITY_WARNING, "nut is on the list", NULL},
	};

	expect_findings(*state, rows, COUNT(rows));
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_missing_amount),
	    cmocka_unit_test(test_vague_amount),
	    cmocka_unit_test(test_missing_size),
	    cmocka_unit_test(test_unlisted_ingredient),
	    cmocka_unit_test(test_unused_ingredient),
	    cmocka_unit_test(test_wording),
	};

	return cmocka_run_group_tests(tests, hold_tables, drop_tables);
}
