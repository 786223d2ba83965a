/* SPDX-License-Identifier: ISC */
/*
 * Values that cannot be right, by the ranges of ovens.tsv, amounts.tsv,
 * leavening.tsv and times.tsv.
 */
#include "../support/hold.h"
#include "checks.h"

static void
test_implausible_temperature(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish pie;step bake heat in=oven heats t=375C d=40m"},
	    {1, "dish pie;step bake heat in=oven heats t=40F d=40m"},
	    {1, "dish pie;step preheat preheat in=oven preheats t=400C"},
	    {1, "dish fries;step deep-fry heat in=fryer heats t=375C oil d=5m"},
	    {1, "dish wings;step air-fry heat in=air-fryer heats t=400C d=20m"},
	    {1, "dish hen;step roast heat in=oven heats t=400F inside=165C"},
	    {1, "dish hen;step roast heat in=oven heats t=400F inside=74F"},
	    {1, "dish salmon;step cook heat in=water-bath heats t=125C d=40m"},
	    {1, "dish toffee;step boil heat in=stove heats t=300C liquid"},
	    {0, "dish pie;step bake heat in=oven heats t=180C d=40m"},
	    {0, "dish pie;step bake heat in=oven heats t=500F d=10m"},
	    {0, "dish jerky;step bake heat in=oven heats t=160F d=5h"},
	    {0, "dish pizza;tool pizza_oven appliance;step bake heat in=oven heats t=800F "
		"d=2m"},
	    {0, "dish fries;step fry heat in=fryer heats t=275F oil d=5m"},
	    {0, "dish fries;step deep-fry heat in=fryer heats t=400F oil d=5m"},
	    {0, "dish hen;step roast heat in=oven heats t=400F inside=165F"},
	    {0, "dish loaf;step bake heat in=oven heats t=220C inside=98C"},
	    {0, "dish toffee;step boil heat in=stove heats t=150C liquid"},
	    {0, "dish cream;step chill chill in=fridge inside=4C"},
	    {0, "dish salmon;step cook heat in=water-bath heats t=50C d=40m"},
	    {0, "dish pie;step bake heat in=oven heats t=4G d=40m"},
	    {0, "dish salmon;step smoke heat in=smoker heats t=80F d=8h"},
	};

	expect_rows(*state, "implausible-temperature", rows, COUNT(rows));
}

static void
test_implausible_amount(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish bread;food flour flour 1.5 cup metric=188:gram;"
		"food baking-soda leavening 1 tablespoon"},
	    {1, "dish cakes;food flour flour 2 cup metric=250:gram;"
		"food baking-soda leavening 2 tablespoon"},
	    {1, "dish cakes;food flour flour 1 cup metric=125:gram;"
		"food baking-powder leavening 2 tablespoon"},
	    {1, "dish dal serves=4;food asafoetida spice 1 tablespoon"},
	    {1, "dish soup serves=4;food salt salt 1 cup"},
	    {1, "dish stew serves=4;food cayenne spice 3 tablespoon"},
	    {1, "dish stew;food nutmeg spice 2 tablespoon"},
	    {1, "dish stew;food cinnamon-stick spice 12 -"},
	    {0, "dish bread;food flour flour 1.5 cup metric=188:gram;"
		"food baking-soda leavening 1 teaspoon"},
	    {0, "dish bread;food flour flour 5 cup metric=625:gram;"
		"food baking-soda leavening 1 tablespoon"},
	    {0, "dish scones;food flour flour 350 gram metric=350:gram;"
		"food baking-powder leavening 1 tablespoon"},
	    {0, "dish dal serves=4;food asafoetida spice 1/4 teaspoon"},
	    {0, "dish chops;part brine;food water water 4 cup;food salt salt 1/4 cup"},
	    {0, "dish pasta;food salt salt 3 tablespoon note=for_the_water"},
	    {0, "dish stew;food cayenne spice 1 tablespoon"},
	    {0, "dish stew;food chilli-powder spice 2 tablespoon"},
	    {0, "dish stew serves=40;food cumin spice 12 tablespoon"},
	    {0, "dish stew;food beef beef 3 kilogram"},
	    {0, "dish wings;food hot-sauce sauce 3/4 cup"},
	};

	expect_rows(*state, "implausible-amount", rows, COUNT(rows));
}

static void
test_implausible_time(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish cookie;step bake heat in=oven heats t=180C d=12h"},
	    {1, "dish macaroni;step bake heat in=oven heats t=350F d=8h"},
	    {1, "dish eggs;food egg egg 4 -;step boil heat in=stove heats d=45s use=0"},
	    {1, "dish fries;step deep-fry heat in=fryer heats d=2h"},
	    {1, "dish pasta;food spaghetti pasta 1 pound;"
		"step boil heat in=stove heats d=2h use=0"},
	    {1, "dish cake;step microwave heat in=microwave heats d=3h"},
	    {0, "dish cookie;step bake heat in=oven heats t=180C d=12m"},
	    {0, "dish eggs;food egg egg 4 -;step boil heat in=stove heats d=7m use=0"},
	    {0, "dish stew;step simmer heat in=stove heats d=8h"},
	    {0, "dish beans;step soak soak night"},
	    {0, "dish beans;step slow-cook heat in=slow-cooker heats d=10h"},
	    {0, "dish pie;step crimp shape d=2h"},
	    {0, "dish beef;food beef beef 2 kilogram;"
		"step roast heat in=oven heats d=10h use=0"},
	    {0, "dish macaroni;step bake heat in=oven heats t=350F d=35m"},
	};

	expect_rows(*state, "implausible-time", rows, COUNT(rows));
}

static void
test_wording(void **state)
{
	static const struct finding_want rows[] = {
	    {"implausible-temperature",
		"dish pie;step bake heat in=oven heats t=375C d=40m", SEVERITY_ERROR,
		"375 °C is no setting for the oven (77 to 288 °C, 170 to 550 °F",
		"375 °F (190 °C)"},
	    {"implausible-temperature",
		"dish hen;step roast heat in=oven heats t=400F inside=165C", SEVERITY_ERROR,
		"165 °C inside", "165 °F (74 °C)"},
	    {"implausible-temperature", "dish pie;step bake heat in=oven heats t=40F d=40m",
		SEVERITY_ERROR, "40 °F is no setting", NULL},
	    {"implausible-amount",
		"dish bread;food flour flour 1.5 cup metric=188:gram;"
		"food baking-soda leavening 1 tablespoon",
		SEVERITY_WARNING, "1 tbsp of baking soda to 190 g of flour", NULL},
	    {"implausible-amount", "dish stew serves=4;food cayenne spice 3 tablespoon",
		SEVERITY_WARNING, "(1 tbsp at the very most", NULL},
	    {"implausible-time", "dish cookie;step bake heat in=oven heats t=180C d=12h",
		SEVERITY_WARNING, "bake for 12 hours cannot be right; 5–30 minutes", NULL},
	};

	expect_findings(*state, rows, COUNT(rows));
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_implausible_temperature),
	    cmocka_unit_test(test_implausible_amount),
	    cmocka_unit_test(test_implausible_time),
	    cmocka_unit_test(test_wording),
	};

	return cmocka_run_group_tests(tests, hold_tables, drop_tables);
}
