/* SPDX-License-Identifier: ISC */
/*
 * What can make people ill. The figures are published ones: USDA FSIS, Safe
 * Minimum Internal Temperature Chart; USDA FSIS, Appendix A and the poultry
 * time-temperature tables; FDA Food Code 2022, 3-401.11; UK Food Standards
 * Agency, cooking advice; Health Canada and healthdirect charts.
 */
#include "../support/hold.h"
#include "checks.h"

#define HEN "dish hen;food chicken-thigh poultry 3 pound;"
#define BEEF "dish beef;food rump beef 2 pound;"
#define CHOP "dish chops;food pork-chop pork 4 -;"
#define LOAF "dish meatloaf;food ground-beef ground-meat 1 pound;food egg egg 2 -;"

static void
test_below_safe_temperature(void **state)
{
	static const struct draft_row rows[] = {
	    {1, HEN "step grill heat in=grill heats d=25m use=0 inside=150F"},
	    {1, HEN
		"step grill heat in=grill heats d=25m use=0;step pull move inside=150F"},
	    {1, LOAF "step bake heat in=oven heats d=55m inside=150F"},
	    {1, "dish quiche;food egg egg 4 -;step bake heat in=oven heats use=0 "
		"inside=155F"},
	    {1, "dish burger;food ground-beef ground-meat 1 pound;"
		"step fry heat in=stove heats use=0 inside=145F"},
	    {1, CHOP "step fry heat in=stove heats use=0 inside=145F"},
	    {1, "region ca;" CHOP "step fry heat in=stove heats use=0 inside=145F;"
		"step rest rest d=5m"},
	    {1, "region ca;dish bird;food whole-turkey poultry 1 -;"
		"step roast heat in=oven heats use=0 inside=165F"},
	    {1, "region uk;" HEN "step roast heat in=oven heats use=0 inside=65C"},
	    {1, "region au;" HEN "step roast heat in=oven heats use=0 inside=72C"},
	    {1, "region uk;" HEN "step roast heat in=oven heats use=0 inside=70C"},
	    {1, "region uk;" HEN "step cook heat in=water-bath heats t=62C d=30m use=0"},
	    {1, "profile us-retail;" LOAF "step bake heat in=oven heats d=55m inside=67C"},
	    {1, HEN "step cook heat in=water-bath heats t=140F d=20m use=0"},
	    {1, BEEF "step cook heat in=water-bath heats t=128F d=6h use=0"},
	    {1, HEN "step grill heat in=grill heats use=0 inside=160-170F"},
	    {1, LOAF
		"food bacon cured-meat 4 slice;step bake heat in=oven heats inside=65C"},
	    {0, HEN "step grill heat in=grill heats d=25m use=0 inside=165F"},
	    {0, HEN "step grill heat in=grill heats d=25m use=0 inside=74C"},
	    {0, LOAF "step bake heat in=oven heats d=55m inside=160F"},
	    {0, LOAF "step bake heat in=oven heats d=55m inside=71C"},
	    {0, CHOP "step fry heat in=stove heats use=0 inside=145F;step rest rest d=5m"},
	    {0, CHOP "step fry heat in=stove heats use=0 inside=150F"},
	    {0, HEN "step grill heat in=grill heats use=0 inside=150F hold=4m"},
	    {0, HEN "step cook heat in=water-bath heats t=140F d=90m use=0"},
	    {0, BEEF "step cook heat in=water-bath heats t=130F d=2h use=0;step rest rest"},
	    {0, "region uk;" HEN "step roast heat in=oven heats use=0 inside=75C"},
	    {0, "region uk;" HEN "step roast heat in=oven heats use=0 inside=65C hold=10m"},
	    {0, "region uk;" HEN "step roast heat in=oven heats use=0 inside=70C hold=2m"},
	    {0, "region uk;profile us-home;" CHOP
		"step fry heat in=stove heats use=0 inside=63C;step rest rest d=5m"},
	    {0, "profile us-retail;" LOAF
		"step bake heat in=oven heats d=55m inside=68C hold=17s"},
	    {0, "region uk;dish cod;food cod fish 4 -;"
		"step bake heat in=oven heats use=0 inside=55C"},
	    {0, "dish bread;food flour flour 2 cup;step bake heat in=oven heats "
		"inside=98C"},
	    {0, "dish cake;food potato root-vegetable 2 -;food egg egg 2 -;"
		"step boil heat in=stove heats use=0 inside=90C"},
	    {0, "dish salad;food cooked-chicken poultry 1 cup;"
		"step warm heat in=stove heats use=0 inside=140F"},
	};

	expect_rows(*state, "below-safe-temperature", rows, COUNT(rows));
}

static void
test_unsafe_advice(void **state)
{
	static const struct draft_row rows[] = {
	    {1, HEN "step rinse wash use=0"},
	    {1, HEN "remark 0 raw-marinade brush_it_on"},
	    {1, "dish jam;remark 0 home-canning a_rinse_and_a_stern_look"},
	    {1, "dish rice;remark 0 time-out on_the_counter_overnight"},
	    {1, "dish rice;remark 0 - near_enough"},
	    {1, HEN "remark 0 rinsing-poultry a_good_rinse;step rinse wash use=0"},
	    {2, HEN "remark 0 raw-marinade brush_it_on;remark 0 time-out all_night"},
	    {1, "dish bird;food whole-chicken poultry 1 -;step rinse wash use=0"},
	    {0, HEN "step dry dry use=0"},
	    {0, "dish beans;food kidney-bean legume 1 can;step rinse wash use=0"},
	    {0, "dish fish;food cod fish 4 -;step rinse wash use=0"},
	    {0, HEN "step rinse wash"},
	    {0, HEN "remark 1 egg_yolk"},
	    {0, "dish salad;food cooked-chicken poultry 1 cup;step rinse wash use=0"},
	};

	expect_rows(*state, "unsafe-advice", rows, COUNT(rows));
}

#define MAYO "part mayo;food egg-yolk egg 1 -;step whisk mix use=0;"

static void
test_raw_ingredient(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish dressing;food egg-yolk egg 1 -;step whisk mix use=0"},
	    {1, "dish icing;food egg-white egg 1 -;step beat mix use=0"},
	    {1, "dish tacos;food shrimp shellfish 1 pound;step fry heat heats use=0;" MAYO},
	    {1, "dish tacos;food shrimp shellfish 1 pound;" MAYO
		"part rest;step warm heat heats;step serve serve product=1"},
	    {1, "dish ceviche;remark 1 sea_bass it_goes_in_raw"},
	    {1, "dish dressing;remark 1 egg_yolk a_raw_yolk;food egg-yolk egg 1 -;"
		"step whisk mix use=0"},
	    {0, "dish dressing;food egg-yolk egg 1 -;step whisk mix use=0;"
		"remark 2 - use_pasteurised"},
	    {0, "dish cake;food egg egg 2 -;step beat mix use=0;step bake heat heats"},
	    {0, "dish pie;part custard;food egg-yolk egg 2 -;step stir heat heats use=0"},
	    {0, "dish fish;food cod fish 4 -;part batter;food egg egg 1 -;step mix mix "
		"use=0;"
		"part frying;step dip coat product=1;step fry heat heats"},
	    {1, "dish tacos;" MAYO "part rest;step fry heat heats"},
	    {0, "dish icing;food egg-white-powder egg 1 tablespoon;step beat mix use=0"},
	    {0, "dish salad;food hard-boiled-egg egg 2 -;step chop cut use=0"},
	    {0, "dish salad;food pasteurised-egg egg 2 -;step beat mix use=0"},
	    {0, "dish ceviche;remark 1 sea_bass raw;remark 2 - not_if_pregnant"},
	    {0, "dish eggs;food egg egg 2 -"},
	};

	expect_rows(*state, "raw-ingredient", rows, COUNT(rows));
}

static void
test_wording(void **state)
{
	static const struct finding_want rows[] = {
	    {"below-safe-temperature",
		HEN "step grill heat in=grill heats d=25m use=0 inside=150F",
		SEVERITY_ERROR,
		"chicken thigh at 150 °F (66 °C): the published minimum is 165 °F (74 °C) "
		"(USDA FSIS, Safe Minimum Internal Temperature Chart",
		"165 °F (74 °C)"},
	    {"below-safe-temperature", LOAF "step bake heat in=oven heats d=55m inside=66C",
		SEVERITY_ERROR, "minimum is 71 °C (160 °F)", "71 °C (160 °F)"},
	    {"below-safe-temperature",
		HEN "step grill heat in=grill heats use=0 inside=160-170F",
		SEVERITY_WARNING, "local food codes and qualified advice come first",
		"165 °F (74 °C)"},
	    {"below-safe-temperature",
		CHOP "step fry heat in=stove heats use=0 inside=145F", SEVERITY_WARNING,
		"only with a rest of 3 minutes", NULL},
	    {"unsafe-advice", HEN "step rinse wash use=0", SEVERITY_WARNING,
		"\"rinse chicken thigh\": Rinsing raw poultry spreads bacteria", NULL},
	    {"unsafe-advice", "dish rice;remark 0 - near_enough", SEVERITY_WARNING,
		"\"near enough\" goes against published", NULL},
	    {"raw-ingredient", "dish icing;food egg-white egg 1 -;step beat mix use=0",
		SEVERITY_NOTE, "egg white is served raw", NULL},
	};

	expect_findings(*state, rows, COUNT(rows));
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_below_safe_temperature),
	    cmocka_unit_test(test_unsafe_advice),
	    cmocka_unit_test(test_raw_ingredient),
	    cmocka_unit_test(test_wording),
	};

	return cmocka_run_group_tests(tests, hold_tables, drop_tables);
}
