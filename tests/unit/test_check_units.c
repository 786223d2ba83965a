/* SPDX-License-Identifier: ISC */
/*
 * Conversions, mixed systems, units of two sizes. The pairs that agree are the
 * customary ones of NIST, SI Units - Temperature, and of the gas-mark scale.
 */
#include "../support/hold.h"
#include "checks.h"

static void
test_unit_mismatch(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish pie;temp 350F appliance;temp 220C appliance converted"},
	    {1, "dish pie;temp 375F appliance;temp 140C appliance converted"},
	    {1, "dish pie;temp 220C appliance;temp 4G appliance converted"},
	    {1, "dish pie;temp 6G appliance;temp 250C appliance converted"},
	    {1, "dish pie;temp 180C appliance;temp 7G appliance converted"},
	    {1, "dish pie;temp 350F appliance;temp 350C appliance converted"},
	    {1, "dish meat;temp 165F internal;temp 65C internal converted"},
	    {1, "dish pie;amount 1:cup;amount 500:millilitre converted"},
	    {1, "dish pie;amount 1/2:cup;amount 400:millilitre converted"},
	    {1, "dish pie;amount 1:pound;amount 500:gram converted"},
	    {1, "dish pie;food flour flour 1 cup metric=125:gram;amount 1:cup;"
		"amount 200:gram converted"},
	    {1, "dish cake;food flour flour 2 inch"},
	    {1, "dish cake;food butter butter 3 minute"},
	    {0, "dish pie;temp 350F appliance;temp 180C appliance converted"},
	    {0, "dish pie;temp 375F appliance;temp 190C appliance converted"},
	    {0, "dish pie;temp 400F appliance;temp 200C appliance converted"},
	    {0, "dish pie;temp 425F appliance;temp 220C appliance converted"},
	    {0, "dish pie;temp 450F appliance;temp 230C appliance converted"},
	    {0, "dish pie;temp 325F appliance;temp 170C appliance converted"},
	    {0, "dish pie;temp 250F appliance;temp 130C appliance converted"},
	    {0, "dish pie;temp 180C appliance;temp 160C appliance converted;"
		"temp 4G appliance converted"},
	    {0, "dish pie;temp 7G appliance;temp 220C appliance converted"},
	    {0, "dish meat;temp 165F internal;temp 74C internal converted"},
	    {0, "dish pie;amount 1:cup;amount 240:millilitre converted"},
	    {0, "dish pie;amount 1:cup;amount 250:millilitre converted"},
	    {0, "dish pie;amount 1:pint;amount 568:millilitre converted"},
	    {0, "dish pie;amount 1:pound;amount 450:gram converted"},
	    {0, "dish pie;amount 14:ounce;amount 400:gram converted"},
	    {0, "dish pie;amount 1:ounce;amount 25:gram converted"},
	    {0, "dish pie;amount 1:kilogram;amount 2:pound converted about"},
	    {0, "dish pie;food butter butter 1 cup metric=227:gram;amount 1:cup;"
		"amount 240:gram converted"},
	    {0, "dish pie;temp 350F appliance;temp 220C appliance"},
	    {0, "dish chips;food oil oil 1 inch"},
	};

	expect_rows(*state, "unit-mismatch", rows, COUNT(rows));
}

static void
test_mixed_units(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish pie;food flour flour 200 gram;food milk dairy 1 cup"},
	    {1, "dish pie;food beef beef 1 pound;food stock stock 500 millilitre"},
	    {1, "dish pie;food beef beef 8 ounce;part sauce;food cream cream 100 "
		"millilitre"},
	    {1, "region uk;dish pie;food beef beef 1 pound;food flour flour 100 gram"},
	    {1, "dish pie;food sugar sugar 100 gram said=100:gram,1:cup"},
	    {0, "dish pie;food flour flour 200 gram;food salt salt 1 teaspoon"},
	    {0, "dish pie;food flour flour 2 cup;food milk dairy 1 cup"},
	    {0, "region uk;dish pie;food flour flour 200 gram;food milk dairy 1 cup"},
	    {0, "dish pie;food flour flour 200 gram;dish tart;food milk dairy 1 cup"},
	    {0, "dish pie;food flour flour 200 gram;food milk dairy 1 cup;amount 1:cup;"
		"amount 240:millilitre converted"},
	    {0, "dish pie;food sugar sugar 100 gram said=100:gram,1:tablespoon"},
	    {0, "dish pie;food egg egg 2 -;food flour flour 200 gram"},
	};

	expect_rows(*state, "mixed-units", rows, COUNT(rows));
}

static void
test_ambiguous_unit(void **state)
{
	static const struct draft_row rows[] = {
	    {1, "dish soup;food milk dairy 8 ounce liquid"},
	    {1, "dish soup;food chicken-stock stock 12 ounce"},
	    {1, "dish soup;food wine wine 4 ounce"},
	    {1, "dish soup;food flour flour 100 gram;food milk dairy 1 pint"},
	    {1, "dish soup;food flour flour 100 gram;food milk dairy 1 cup;"
		"food sugar sugar 2 cup"},
	    {2, "dish soup;food flour flour 100 gram;food milk dairy 1 cup;"
		"food cream cream 1 pint"},
	    {0, "dish soup;food beef beef 8 ounce"},
	    {0, "dish soup;food milk dairy 8 fluid-ounce liquid"},
	    {0, "stated;dish soup;food flour flour 100 gram;food milk dairy 1 pint"},
	    {0, "dish soup;food flour flour 2 cup;food milk dairy 1 pint"},
	    {0, "dish soup;food flour flour 100 gram;food salt salt 1 tablespoon"},
	    {0, "dish soup;food milk dairy 1 cup"},
	};

	expect_rows(*state, "ambiguous-unit", rows, COUNT(rows));
}

static void
test_wording(void **state)
{
	static const struct finding_want rows[] = {
	    {"unit-mismatch", "dish pie;temp 375F appliance;temp 140C appliance converted",
		SEVERITY_ERROR, "375 °F and 140 °C are not the same heat",
		"375 °F (190 °C)"},
	    {"unit-mismatch", "dish pie;temp 7G appliance;temp 180C appliance converted",
		SEVERITY_ERROR, "gas mark 7 and 180 °C", "gas mark 7 (220 °C/425 °F)"},
	    {"unit-mismatch", "dish pie;amount 1/2:cup;amount 400:millilitre converted",
		SEVERITY_ERROR, "½ cup is about 120 ml, not 400 ml", "120 ml"},
	    {"unit-mismatch",
		"dish pie;food flour flour 1 cup metric=125:gram;amount 1:cup;"
		"amount 200:gram converted",
		SEVERITY_ERROR, "1 cup of flour is about 125 g, not 200 g", NULL},
	    {"unit-mismatch", "dish cake;food flour flour 2 inch", SEVERITY_ERROR,
		"of flour is no amount", NULL},
	    {"mixed-units", "dish pie;food flour flour 200 gram;food milk dairy 1 cup",
		SEVERITY_NOTE, "1 cup of milk, but 200 g of flour", NULL},
	    {"ambiguous-unit", "dish soup;food milk dairy 8 ounce liquid", SEVERITY_NOTE,
		"8 oz of milk may be weight or volume", NULL},
	};

	expect_findings(*state, rows, COUNT(rows));
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_unit_mismatch),
	    cmocka_unit_test(test_mixed_units),
	    cmocka_unit_test(test_ambiguous_unit),
	    cmocka_unit_test(test_wording),
	};

	return cmocka_run_group_tests(tests, hold_tables, drop_tables);
}
