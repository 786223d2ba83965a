/* SPDX-License-Identifier: ISC */
/*
 * Two values where there can be one; yields; claimed times.
 */
#include "../support/hold.h"
#include "checks.h"

static void
test_conflicting_amount(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish bread;food egg egg 2 - said=2,3"},
	    {1, "dish stew;food stock stock 600 millilitre "
		"said=600:millilitre,800:millilitre"},
	    {1, "dish mac;food milk dairy 3 cup said=3:cup,4:cup"},
	    {1, "dish cake;food egg egg 4 - said=4,3 listed"},
	    {1, "dish balls;food lamb ground-meat 500 gram said=500:gram,400:gram listed"},
	    {1, "dish stew;food stock stock 1 litre said=1:litre,3:pint"},
	    {1, "dish bread;food egg egg 2 - said=2,2,5"},
	    {0, "dish bread;food egg egg 2 - said=2,2"},
	    {0, "dish bread;food egg egg 4 - said=4,2,2 listed"},
	    {0, "dish bread;food butter butter 3 tablespoon said=2:tablespoon,1:tablespoon "
		"divided"},
	    {0, "dish bread;food egg egg 2 -;part glaze;food egg egg 1 -"},
	    {0, "dish stew;food oil oil 1/2 cup said=1/2:cup,1:tablespoon"},
	    {0, "dish stew;food milk dairy 1 litre said=1:litre,1000:millilitre"},
	    {0, "dish stew;food carrot vegetable 3 - said=3,200:gram"},
	    {0, "dish stew;food stock stock 1 litre said=1-2:litre,2:litre"},
	};

	expect_rows(*state, "conflicting-amount", rows, COUNT(rows));
}

static void
test_conflicting_temperature(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish bars;step preheat preheat in=oven preheats t=180C;"
		"step bake heat in=oven heats t=150C d=40m"},
	    {1, "dish pie;step preheat preheat in=oven preheats t=350F;part crust;"
		"step bake heat in=oven heats t=425F d=40m"},
	    {1, "dish pie;step preheat preheat in=oven preheats t=4G;"
		"step bake heat in=oven heats t=220C"},
	    {1, "dish pie;step bake heat in=oven heats t=180C d=40m again=200C"},
	    {1, "dish fries;step heat preheat in=fryer preheats t=350F oil;"
		"step fry heat in=fryer heats t=375F oil d=5m"},
	    {0, "dish pie;step preheat preheat in=oven preheats t=180C;"
		"step bake heat in=oven heats t=180C d=40m"},
	    {0, "dish pie;step preheat preheat in=oven preheats t=350F;"
		"step bake heat in=oven heats t=180C d=40m"},
	    {0, "dish loaf;step preheat preheat in=oven preheats t=240C;"
		"step bake heat in=oven heats t=200C change d=40m"},
	    {0, "dish pie;step preheat preheat in=oven preheats t=180C;"
		"step bake heat in=oven heats t=180C inherited;"
		"step bake heat in=oven heats t=220C d=5m"},
	    {0, "dish pie;step preheat preheat in=oven preheats t=180C;"
		"dish tart;step bake heat in=oven heats t=220C d=5m"},
	    {0, "dish pie;step preheat preheat in=oven preheats t=180C;"
		"step air-fry heat in=air-fryer heats t=200C d=5m"},
	    {0, "dish pie;step bake heat in=oven heats t=180C d=40m again=180C"},
	    {0, "dish pie;step bake heat in=oven heats t=180C d=40m again=40m"},
	};

	expect_rows(*state, "conflicting-temperature", rows, COUNT(rows));
}

static void
test_conflicting_time(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish beans;step simmer heat in=stove heats d=15m again=25m"},
	    {1, "dish jam;step simmer heat in=stove heats d=20m again=1/2:hour"},
	    {1, "dish salmon;step air-fry heat in=air-fryer heats d=8m again=12m"},
	    {1, "dish loaf;step prove prove d=1h again=2h"},
	    {1, "dish pie;step bake heat in=oven heats d=20-25m again=35m"},
	    {0, "dish beans;step simmer heat in=stove heats d=15m again=15m"},
	    {0, "dish beans;step simmer heat in=stove heats d=15-20m again=18m"},
	    {0, "dish beans;step simmer heat in=stove heats d=60m again=1h"},
	    {0, "dish beans;step simmer heat in=stove heats d=15m again=25m;"
		"step simmer heat in=stove heats d=10m"},
	    {0, "dish beans;step simmer heat in=stove heats d=10m;"
		"step simmer heat in=stove heats d=15m again=25m"},
	    {0, "dish beans;step simmer heat in=stove heats again=25m"},
	    {0, "dish beans;step soak soak night again=8h"},
	};

	expect_rows(*state, "conflicting-time", rows, COUNT(rows));
}

static void
test_conflicting_yield(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish wings;yield 8 serving;yield 6 serving"},
	    {1, "dish pie;yield 4 serving;yield 6-8 serving"},
	    {1, "dish buns;yield 12 bun;yield 10 bun"},
	    {1, "dish wings;yield 8 serving;yield 8 serving;yield 6 serving"},
	    {2, "dish wings;yield 8 serving;yield 6 serving;dish pie;yield 4 slice;"
		"yield 5 slice"},
	    {0, "dish wings;yield 8 serving"},
	    {0, "dish wings;yield 8 serving;yield 8 serving"},
	    {0, "dish wings;yield 4-6 serving;yield 6 serving"},
	    {0, "dish buns;yield 12 bun;yield 6 serving"},
	    {0, "dish wings;yield 8 serving;dish pie;yield 6 serving"},
	};

	expect_rows(*state, "conflicting-yield", rows, COUNT(rows));
}

static void
test_missing_yield(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish wings;food wing poultry 2 pound;step fry heat d=9m"},
	    {2, "dish a;food egg egg 2 -;step fry heat d=9m;dish b;food egg egg 2 -;"
		"step boil heat d=9m"},
	    {1, "dish a serves=4;food egg egg 2 -;step fry heat d=9m;dish b;food egg egg 2 "
		"-;"
		"step boil heat d=9m"},
	    {1, "dish a;part sauce;food egg egg 2 -;step whisk mix"},
	    {1, "dish a;step fry heat d=9m;part sauce;food egg egg 2 -"},
	    {0, "dish wings serves=4;food wing poultry 2 pound;step fry heat d=9m"},
	    {0, "dish wings;yield 4 serving;food wing poultry 2 pound;step fry heat d=9m"},
	    {0, "dish wings;step fry heat d=9m"},
	    {0, "dish wings;food wing poultry 2 pound"},
	    {0, "dish wings"},
	};

	expect_rows(*state, "missing-yield", rows, COUNT(rows));
}

static void
test_time_claim(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish soup total=50m claim=30m;step simmer heat d=40m;step fry heat d=10m"},
	    {1, "dish pie total=95m claim=60m;step chill chill d=20m;step bake heat d=75m"},
	    {1, "dish rolls total=2h claim=1h;step prove prove d=1h;step bake heat d=1h"},
	    {1, "dish eggs total=20m claim=1h;step boil heat d=20m"},
	    {1, "dish chili total=96m claim=60m;step simmer heat d=90m"},
	    {0, "dish soup total=50m claim=50m;step simmer heat d=40m"},
	    {0, "dish soup total=50m claim=45m;step simmer heat d=40m"},
	    {0, "dish soup total=50m;step simmer heat d=40m"},
	    {0, "dish soup claim=30m;step simmer heat"},
	    {0, "dish meat total=5h claim=1h;step marinate marinate d=4h;step roast heat "
		"d=1h"},
	    {0, "dish soup total=35m claim=1h;step simmer heat d=35m"},
	    {0, "dish toast total=2m claim=5m;step toast heat d=2m"},
	};

	expect_rows(*state, "time-claim", rows, COUNT(rows));
}

static void
test_wording(void **state)
{
	static const struct finding_want rows[] = {
	    {"conflicting-amount", "dish bread;food egg egg 2 - said=2,3", SEVERITY_ERROR,
		"egg: 3 here, but 2 before; 2 is kept", NULL},
	    {"conflicting-temperature",
		"dish bars;step preheat preheat in=oven preheats t=180C;"
		"step bake heat in=oven heats t=150C d=40m",
		SEVERITY_ERROR, "150 °C here, but 180 °C was said before", NULL},
	    {"conflicting-time",
		"dish beans;step simmer heat in=stove heats d=15m again=25m",
		SEVERITY_ERROR, "25 minutes here, but 15 minutes was said before (simmer)",
		NULL},
	    {"conflicting-yield", "dish wings;yield 8 serving;yield 6 serving",
		SEVERITY_WARNING, "make 6 here, but 8 before", NULL},
	    {"missing-yield", "dish wings;food wing poultry 2 pound;step fry heat d=9m",
		SEVERITY_NOTE, "wings: nobody says how many", NULL},
	    {"time-claim",
		"dish soup total=50m claim=30m;step fry heat d=10m;step simmer heat d=40m",
		SEVERITY_WARNING,
		"30 minutes; the steps add up to 50 minutes (longest: simmer 40 minutes, "
		"fry "
		"10 minutes)",
		NULL},
	};

	expect_findings(*state, rows, COUNT(rows));
}

/* The first statement of a conflict is named beside it. */
static void
test_related(void **state)
{
	static const char *const texts[][2] = {
	    {"conflicting-amount", "dish bread;food egg egg 2 - said=2,3"},
	    {"conflicting-yield", "dish wings;yield 8 serving;yield 6 serving"},
	    {"conflicting-time", "dish beans;step simmer heat d=15m again=25m"},
	    {"unit-mismatch", "dish pie;temp 350F appliance;temp 220C appliance converted"},
	};

	for (size_t i = 0; i < COUNT(texts); i++) {
		struct arena a;
		const struct finding *f;

		arena_init(&a);
		f = finding_of(checked(&a, *state, texts[i][1]), texts[i][0]);
		assert_int_equal(f->relateds, 1);
		assert_int_equal(f->dish, 0);
		assert_int_not_equal(f->related->place.span.beg, f->place.span.beg);
		arena_release(&a);
	}
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_conflicting_amount),
	    cmocka_unit_test(test_conflicting_temperature),
	    cmocka_unit_test(test_conflicting_time),
	    cmocka_unit_test(test_conflicting_yield),
	    cmocka_unit_test(test_missing_yield),
	    cmocka_unit_test(test_time_claim),
	    cmocka_unit_test(test_wording),
	    cmocka_unit_test(test_related),
	};

	return cmocka_run_group_tests(tests, hold_tables, drop_tables);
}
