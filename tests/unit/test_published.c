/* SPDX-License-Identifier: ISC */
/*
 * Published minimum temperatures and holds, each as a row of its own: a reading
 * right at the figure is let pass, one a few degrees or a few minutes short of
 * it is not. The sources are named at the rows; local food codes and qualified
 * advice come first.
 */
#include "../support/hold.h"
#include "checks.h"

struct published {
	const char *profile, *food; /* key and group */
	const char *enough, *short_of;
	const char *source; /* begins the one that the message names */
};

#define HOLD(value, hold) "inside=" value " hold=" hold
#define FSIS "USDA FSIS"
#define FDA "FDA Food Code 2022, 3-401.11"
#define FSA "UK Food Standards Agency"
#define CANADA "Health Canada"
#define AUSTRALIA "healthdirect"

static const struct published rows[] = {
    /* USDA FSIS, Safe Minimum Internal Temperature Chart; FoodSafety.gov */
    {"us-home", "chicken-thigh poultry", "inside=165F", "inside=160F", FSIS},
    {"us-home", "whole-turkey poultry", "inside=165F", "inside=161F", FSIS},
    {"us-home", "ground-beef ground-meat", "inside=160F", "inside=155F", FSIS},
    {"us-home", "pork-chop pork", "inside=145F", "inside=140F", FSIS},
    {"us-home", "rump beef", "inside=145F", "inside=135F", FSIS},
    {"us-home", "leg lamb", "inside=145F", "inside=130F", FSIS},
    {"us-home", "cod fish", "inside=145F", "inside=130F", FSIS},
    {"us-home", "octopus shellfish", "inside=145F", "inside=120F", FSIS},
    {"us-home", "egg egg", "inside=160F", "inside=150F", FSIS},
    /* USDA FSIS, Appendix A and the tables for poultry */
    {"us-home", "rump beef", HOLD("130F", "112m"), HOLD("130F", "110m"), FSIS},
    {"us-home", "rump beef", HOLD("135F", "36m"), HOLD("135F", "30m"), FSIS},
    {"us-home", "rump beef", HOLD("140F", "12m"), HOLD("140F", "10m"), FSIS},
    {"us-home", "chicken-thigh poultry", HOLD("150F", "4m"), HOLD("150F", "2m"), FSIS},
    {"us-home", "chicken-thigh poultry", HOLD("155F", "72s"), HOLD("155F", "20s"), FSIS},
    /* FDA Food Code 2022, 3-401.11 */
    {"us-retail", "chicken-thigh poultry", "inside=165F", "inside=160F", FDA},
    {"us-retail", "ground-beef ground-meat", HOLD("155F", "17s"), HOLD("150F", "17s"), FDA},
    {"us-retail", "ground-beef ground-meat", HOLD("150F", "60s"), HOLD("148F", "60s"), FDA},
    {"us-retail", "ground-beef ground-meat", HOLD("145F", "180s"), HOLD("145F", "120s"),
	FDA},
    {"us-retail", "pork-chop pork", HOLD("145F", "15s"), HOLD("140F", "15s"), FDA},
    {"us-retail", "cod fish", HOLD("145F", "15s"), HOLD("130F", "15s"), FDA},
    {"us-retail", "venison game", "inside=165F", "inside=160F", FDA},
    /* UK Food Standards Agency: 70 C for 2 minutes and its equivalents */
    {"uk", "chicken-thigh poultry", HOLD("70C", "2m"), HOLD("69C", "2m"), FSA},
    {"uk", "chicken-thigh poultry", HOLD("65C", "10m"), HOLD("65C", "9m"), FSA},
    {"uk", "pork-chop pork", HOLD("60C", "45m"), HOLD("60C", "30m"), FSA},
    {"uk", "pork-chop pork", HOLD("75C", "30s"), HOLD("62C", "30s"), FSA},
    {"uk", "mince ground-meat", HOLD("70C", "2m"), HOLD("66C", "2m"), FSA},
    {"uk", "banger sausage", HOLD("80C", "6s"), HOLD("65C", "6s"), FSA},
    /* Health Canada, safe internal temperature chart */
    {"ca", "chicken-thigh poultry", "inside=74C", "inside=70C", CANADA},
    {"ca", "whole-turkey poultry", "inside=82C", "inside=78C", CANADA},
    {"ca", "ground-beef ground-meat", "inside=71C", "inside=68C", CANADA},
    {"ca", "pork-chop pork", "inside=71C", "inside=68C", CANADA},
    {"ca", "rump beef", "inside=63C", "inside=60C", CANADA},
    {"ca", "cod fish", "inside=70C", "inside=66C", CANADA},
    {"ca", "egg egg", "inside=74C", "inside=70C", CANADA},
    /* healthdirect (Australian Government), Food safety guide */
    {"au", "chicken-thigh poultry", "inside=75C", "inside=72C", AUSTRALIA},
    {"au", "pork-chop pork", "inside=70C", "inside=66C", AUSTRALIA},
    {"au", "rump beef", "inside=63C", "inside=58C", AUSTRALIA},
    {"au", "egg egg", "inside=72C", "inside=69C", AUSTRALIA},
};

static struct str
draft_text_of(struct arena *a, const struct published *row, const char *reading)
{
	return arena_fmt(a,
	    "profile %s;dish dinner;food %s 2 pound;"
	    "step cook heat in=pot heats use=0 %s;step rest rest d=5m",
	    row->profile, row->food, reading);
}

static void
published_figures_are_kept(void **state)
{
	size_t wrong = 0;

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct arena a;
		struct str enough, short_of;

		arena_init(&a);
		enough = draft_text_of(&a, &rows[i], rows[i].enough);
		short_of = draft_text_of(&a, &rows[i], rows[i].short_of);
		if (count_of(checked(&a, *state, enough.p), "below-safe-temperature")) {
			print_error("raised: %s\n", enough.p);
			wrong++;
		}
		if (!count_of(checked(&a, *state, short_of.p), "below-safe-temperature")) {
			print_error("not raised: %s\n", short_of.p);
			wrong++;
		}
		arena_release(&a);
	}
	assert_int_equal(wrong, 0);
	assert_true(COUNT(rows) >= 30);
}

static void
published_sources_are_named(void **state)
{
	for (size_t i = 0; i < COUNT(rows); i++) {
		struct arena a;
		const struct finding *f;
		struct str text;

		arena_init(&a);
		text = draft_text_of(&a, &rows[i], rows[i].short_of);
		f = finding_of(checked(&a, *state, text.p), "below-safe-temperature");
		if (str_find(f->message, str_of(rows[i].source)) == f->message.n ||
		    str_find(f->message, STR("local food codes")) == f->message.n)
			fail_msg("%s: \"%.*s\"", text.p, (int)f->message.n, f->message.p);
		arena_release(&a);
	}
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(published_figures_are_kept),
	    cmocka_unit_test(published_sources_are_named),
	};

	return cmocka_run_group_tests(tests, hold_tables, drop_tables);
}
