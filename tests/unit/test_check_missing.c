/* SPDX-License-Identifier: ISC */
/*
 * What a step lacks: setting, time, hot oven, a sign that meat is done.
 */
#include "../support/hold.h"
#include "checks.h"

static void
test_missing_temperature(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish pie;step bake heat in=oven heats d=40m"},
	    {1, "dish wings;step air-fry heat in=air-fryer heats d=20m cue=crisp"},
	    {1, "dish chips;step deep-fry heat in=fryer heats d=5m"},
	    {1, "dish stew;step slow-cook heat in=slow-cooker heats d=6h"},
	    {1, "dish ribs;step smoke heat in=smoker heats d=5h"},
	    {1, "dish pie;step bake heat in=oven heats d=9m;step bake heat in=oven heats "
		"d=9m"},
	    {1, "dish pie;step bake heat in=oven heats t=200C d=9m;"
		"dish tart;step bake heat in=oven heats d=9m"},
	    {1, "dish onions;step fry heat in=stove heats d=9m"},
	    {0, "dish pie;step bake heat in=oven heats t=180C d=40m"},
	    {0, "dish pie;step preheat preheat in=oven preheats t=350F;"
		"step bake heat in=oven heats d=40m"},
	    {0, "dish pie;step bake heat in=oven heats d=40m;"
		"step preheat preheat in=oven preheats t=350F"},
	    {0, "dish toast;step grill heat in=grill heats level=high d=4m"},
	    {0, "dish soup;step boil heat in=stove heats passive d=20m"},
	    {0, "dish onions;step fry heat in=stove heats level=low d=9m;"
		"step fry heat in=stove heats d=3m"},
	    {0, "dish rice;step microwave heat in=microwave heats d=4m"},
	    {0, "dish pie;temp 180C appliance;step bake heat in=oven heats d=40m"},
	    {0, "dish beef;step brown heat in=stove heats"},
	};

	expect_rows(*state, "missing-temperature", rows, COUNT(rows));
}

static void
test_missing_time(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish rice;step rest rest passive"},
	    {1, "dish buns;step prove prove passive"},
	    {1, "dish bars;step freeze chill in=freezer passive"},
	    {1, "dish wings;step marinate marinate passive"},
	    {1, "dish pie;step bake heat in=oven heats t=200C"},
	    {1, "dish greens;step steam heat in=steamer heats while;"
		"step steam heat in=steamer heats d=2m"},
	    {1, "dish pie;step bake heat in=oven heats t=200C cue=nice weak"},
	    {0, "dish pie;step bake heat in=oven heats t=200C d=40m"},
	    {0, "dish pie;step bake heat in=oven heats t=200C cue=golden"},
	    {0, "dish pie;step bake heat in=oven heats;step bake heat in=oven heats d=9m"},
	    {0, "dish beans;step soak soak passive night"},
	    {0, "dish pan;step melt heat in=stove heats"},
	    {0, "dish pan;step bring_to_the_boil heat in=stove heats passive"},
	    {0, "dish meat;step rest rest passive;step simmer heat in=stove heats d=5m "
		"beside"},
	    {0, "dish cake;step cool rest passive"},
	    {0, "dish pie;step preheat preheat in=oven preheats t=180C"},
	    {0, "dish salad;step chop cut"},
	    {0, "dish meat;step roast heat in=oven heats t=180C inside=165F"},
	    {0, "dish stew;step simmer heat in=stove heats passive again=20m"},
	};

	expect_rows(*state, "missing-time", rows, COUNT(rows));
}

static void
test_missing_preheat(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish pie;step bake heat in=oven heats t=180C d=40m"},
	    {1, "dish wings;step air-fry heat in=air-fryer heats t=400F d=20m"},
	    {1, "dish pie;step bake heat in=oven heats t=4G d=40m;"
		"step bake heat in=oven heats t=2G d=20m"},
	    {2, "dish pie;step bake heat in=oven heats t=180C d=40m;"
		"dish fries;step air-fry heat in=air-fryer heats t=400F d=15m"},
	    {1, "dish pie;step mix mix;step bake heat in=oven heats t=200C"},
	    {0, "dish pie;step preheat preheat in=oven preheats t=180C;"
		"step bake heat in=oven heats t=180C inherited d=40m"},
	    {0, "dish pie;step bake heat in=oven heats t=180C d=40m;"
		"step preheat preheat in=oven preheats t=180C"},
	    {0, "dish pie;step bake heat in=oven heats d=40m"},
	    {0, "dish toast;step grill heat in=grill heats t=250C d=4m"},
	    {0, "dish pie;step preheat preheat in=oven preheats t=180C;"
		"dish tart;step bake heat in=oven heats t=200C d=20m"},
	    {0, "dish pie;step bake heat in=oven heats level=hot d=40m"},
	};

	expect_rows(*state, "missing-preheat", rows, COUNT(rows));
}

#define WINGS "dish wings;food chicken-wing poultry 2 pound;"

static void
test_missing_doneness(void **state)
{
	static const struct draft_row rows[] = {
	    {1, WINGS "step grill heat in=grill heats t=400F d=12m use=0"},
	    {1, "dish chops;food pork-chop pork 4 -;step fry heat in=stove heats d=8m "
		"use=0"},
	    {1, "dish cod;food cod fish 4 fillet;step bake heat in=oven heats d=12m use=0"},
	    {1, "dish prawns;food prawn shellfish 1 pound;step fry heat in=stove heats "
		"d=3m use=0"},
	    {1, "dish stir_fry;food chicken-thigh poultry 1 pound;food soy-sauce sauce 1 "
		"cup;"
		"step simmer heat in=stove heats d=2m use=0,1 cue=thick mixture"},
	    {1, "dish frittata;food egg egg 6 -;step bake heat in=oven heats d=15m use=0"},
	    {1, WINGS
		"food carrot vegetable 3 -;step roast heat in=oven heats d=40m use=0,1 "
		"cue=soft of=carrot"},
	    {1, WINGS "food pork-chop pork 4 -;step fry heat in=stove heats d=8m use=0,1"},
	    {0, WINGS "step grill heat in=grill heats d=12m use=0 inside=165F"},
	    {0, WINGS "step grill heat in=grill heats d=12m use=0 cue=juices_run_clear"},
	    {0, WINGS "step grill heat in=grill heats d=12m use=0;"
		      "step check taste inside=165F"},
	    {0, WINGS "step fry heat in=stove heats d=2m use=0;"
		      "step simmer heat in=stove heats passive d=45m"},
	    {0, WINGS "step cook heat in=pressure-cooker heats d=12m use=0"},
	    {0, "dish steak;food sirloin beef 2 -;step fry heat in=stove heats d=8m use=0"},
	    {0, "dish cake;food egg egg 3 -;step bake heat in=oven heats d=40m use=0"},
	    {0, "dish pasta;food canned-tuna fish 1 can;step warm heat in=stove heats d=4m "
		"use=0"},
	    {0, "dish salad;food smoked-salmon fish 100 gram;"
		"step bake heat in=oven heats d=4m use=0"},
	    {0, "dish tacos;food ground-beef ground-meat 1 pound;"
		"step brown heat in=stove heats d=6m use=0"},
	    {0, WINGS "step marinate marinate passive d=4h use=0"},
	};

	expect_rows(*state, "missing-doneness", rows, COUNT(rows));
}

static void
test_wording(void **state)
{
	static const struct finding_want rows[] = {
	    {"missing-temperature", "dish pie;step bake heat in=oven heats d=40m",
		SEVERITY_ERROR, "how hot the oven is", NULL},
	    {"missing-temperature",
		"dish pie;step bake heat in=oven heats t=200C d=9m;"
		"dish tart;step bake heat in=oven heats d=9m",
		SEVERITY_WARNING, "for this dish", NULL},
	    {"missing-temperature", "dish onions;step fry heat in=stove heats d=9m",
		SEVERITY_WARNING, "low, medium or high", NULL},
	    {"missing-time", "dish rice;step rest rest passive", SEVERITY_WARNING,
		"rest: neither a time nor a sign", NULL},
	    {"missing-preheat", "dish pie;step bake heat in=oven heats t=350F d=40m",
		SEVERITY_NOTE, "350 °F (180 °C)", NULL},
	    {"missing-doneness",
		WINGS "food pork-chop pork 4 -;step fry heat in=stove heats d=8m use=0,1",
		SEVERITY_WARNING, "chicken wing and pork chop", NULL},
	    {"missing-doneness", WINGS "step grill heat in=grill heats t=400F d=12m use=0",
		SEVERITY_WARNING, "minimum 165 °F (74 °C), USDA FSIS", NULL},
	    {"missing-doneness",
		"region uk;" WINGS "step grill heat in=grill heats t=200C d=12m use=0",
		SEVERITY_WARNING, "minimum 70 °C (158 °F), UK Food Standards Agency", NULL},
	};

	expect_findings(*state, rows, COUNT(rows));
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_missing_temperature),
	    cmocka_unit_test(test_missing_time),
	    cmocka_unit_test(test_missing_preheat),
	    cmocka_unit_test(test_missing_doneness),
	    cmocka_unit_test(test_wording),
	};

	return cmocka_run_group_tests(tests, hold_tables, drop_tables);
}
