/* SPDX-License-Identifier: ISC */
/*
 * Temperatures without a scale: raised once, as a note where one reading only
 * can be meant.
 */
#include "../support/hold.h"
#include "checks.h"

static void
test_missing_scale(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish pie;temp 350F appliance bare"},
	    {1, "dish pie;temp 220C appliance bare"},
	    {1, "dish fries;temp 375F oil bare"},
	    {1, "dish chops;temp 145F internal bare"},
	    {1, "dish bread;temp 40C liquid bare"},
	    {3, "dish fries;temp 375F oil bare;temp 400F oil bare;temp 325F oil bare"},
	    {1, "dish pie;temp 350F appliance bare;dish tart;temp 350F appliance bare"},
	    {1, "dish chops;temp 145F internal bare;temp 130F internal bare"},
	    {2, "dish wings;temp 375F oil bare;temp 155F internal bare"},
	    {1, "dish rolls;temp 220C appliance bare;temp 200C appliance bare near"},
	    {0, "dish pie;temp 350F appliance"},
	    {0, "dish pie;temp 6G appliance bare"},
	    {0, "dish pie;temp 350F appliance bare;temp 180C appliance converted near"},
	    {0, "dish pie;temp 180C appliance;temp 160C appliance bare near"},
	    {0, "dish pie;temp 350F appliance;temp 425F appliance bare"},
	    {0, "dish wings;temp 96F ambient bare"},
	    {0, "dish pie;temp 350F appliance bare aside"},
	};

	expect_rows(*state, "missing-scale", rows, COUNT(rows));
}

static void
test_readings(void **state)
{
	static const struct finding_want rows[] = {
	    {"missing-scale", "dish pie;temp 350F appliance bare", SEVERITY_NOTE,
		"read as Fahrenheit, 350 °F (180 °C), since no cook would set 350 °C",
		NULL},
	    {"missing-scale", "dish pie;temp 220C appliance bare", SEVERITY_WARNING,
		"in Fahrenheit and in Celsius; read as Celsius", NULL},
	    {"missing-scale", "dish pie;temp 250F appliance bare", SEVERITY_WARNING,
		"read as Fahrenheit", NULL},
	    {"missing-scale", "dish pie;temp 180C appliance bare", SEVERITY_WARNING,
		"read as Celsius", NULL},
	    {"missing-scale", "dish pie;temp 170C appliance bare", SEVERITY_NOTE,
		"no cook would set 170 °F", NULL},
	    {"missing-scale",
		"dish pie;amount 200:gram;amount 100:millilitre;temp 220C appliance bare",
		SEVERITY_NOTE, "since the script is metric", NULL},
	    {"missing-scale",
		"dish pie;amount 2:cup;amount 1:pound;temp 225F appliance bare",
		SEVERITY_NOTE, "since the script has US measures", NULL},
	    {"missing-scale",
		"dish pie;temp 63C internal;dish tart;temp 220C appliance bare",
		SEVERITY_NOTE, "since the other temperatures are", NULL},
	    {"missing-scale",
		"dish pie;amount 2:cup;amount 100:gram;temp 220C appliance bare",
		SEVERITY_WARNING, "Say which is meant", NULL},
	    {"missing-scale", "dish fries;temp 375F oil bare", SEVERITY_NOTE,
		"no oil for frying is 375 °C", NULL},
	    {"missing-scale", "dish chops;temp 145F internal bare", SEVERITY_NOTE,
		"145 °F (63 °C), since no food is done at 145 °C", NULL},
	    {"missing-scale",
		"dish ribs;step smoke heat in=smoker heats t=225F d=5h;"
		"temp 225F appliance bare",
		SEVERITY_WARNING, "225", NULL},
	};

	expect_findings(*state, rows, COUNT(rows));
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_missing_scale),
	    cmocka_unit_test(test_readings),
	};

	return cmocka_run_group_tests(tests, hold_tables, drop_tables);
}
