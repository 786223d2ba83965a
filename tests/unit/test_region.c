/* SPDX-License-Identifier: ISC */
/*
 * src/assemble/region.c: where a cook is at home, by words and units.
 */
#include "../support/hold.h"
#include "tamis.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

static const struct {
	const char *text, *region;
} rows[] = {
    {"Chop an onion.", "us"},
    {"Two cups of flour and a stick of butter.", "us"},
    {"Bake it at 350 for an hour.", "us"},
    {"Preheat the oven to 180 Celsius.", "uk"},
    {"Two hundred grams of flour, a hundred of butter.", "uk"},
    {"Gas mark four.", "uk"},
    {"My mum puts plain flour in and a splash of double cream.", "uk"},
    {"My mom puts cilantro in, and kosher salt.", "us"},
    {"Courgettes on the hob, the aubergine under the grill.", "uk"},
    {"One katori of dal, half a teaspoon of haldi.", "in"},
    {"Three whistles, then off. A pinch of hing and some jeera.", "in"},
    {"A chook on the barbie this arvo, a kilo and a half.", "au"},
    {"Fan forced, one sixty, chat potatoes around it.", "au"},
    {"Two cups of oats eh, it cost me a toonie.", "ca"},
    {"A little ghee and some paneer, 200 grams.", "uk"},
    {"Atta, two cups, and a cup of water, then roll the rotis on the chakla.", "in"},
};

static void
the_words_tell_the_region(void **state)
{
	const struct grammar *g = *state;
	size_t failed = 0;

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct tamis_options o = {.region = NULL};
		struct err e = {0};
		struct draft *d = tamis_draft(g, &o, str_of(rows[i].text), "case.txt", &e);

		if (!d)
			fail_msg("%s: %s", rows[i].text, e.text);
		if (strcmp(d->region, rows[i].region) != 0) {
			print_error(
			    "%s: %s, not %s\n", rows[i].text, d->region, rows[i].region);
			failed++;
		}
		assert_false(d->region_stated);
		tamis_draft_free(d);
	}
	assert_int_equal(failed, 0);
}

static void
an_option_overrides_them(void **state)
{
	const struct grammar *g = *state;
	struct tamis_options o = {.region = "au"};
	struct err e = {0};
	struct draft *d = tamis_draft(g, &o, STR("Gas mark four."), "case.txt", &e);

	assert_non_null(d);
	assert_string_equal(d->region, "au");
	assert_true(d->region_stated);
	tamis_draft_free(d);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(the_words_tell_the_region),
	    cmocka_unit_test(an_option_overrides_them),
	};

	return cmocka_run_group_tests_name("region", tests, hold_grammar, drop_grammar);
}
