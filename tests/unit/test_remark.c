/* SPDX-License-Identifier: ISC */
/*
 * What only the words show: for each kind of remark, talk that must raise it
 * and talk like it that must not. And what the words tell of steps besides.
 */
#include "../support/hold.h"
#include "talk.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

struct row {
	const char *talk;
	const char *detail; /* NULL: nothing may be remarked */
};

static bool
has_remark(const struct draft *d, enum remark_kind kind, const char *detail)
{
	for (size_t i = 0; i < d->remarks; i++)
		if (d->remark[i].kind == kind &&
		    (!detail || str_is_z(d->remark[i].detail, detail)))
			return true;
	return false;
}

static void
expect_rows(
    const struct grammar *g, enum remark_kind kind, const struct row *row, size_t rows)
{
	size_t wrong = 0;

	for (size_t i = 0; i < rows; i++) {
		struct draft *d = talk_draft(g, row[i].talk);

		if (has_remark(d, kind, row[i].detail) != (row[i].detail != NULL)) {
			print_error(
			    "%s: %s\n", row[i].detail ? "not seen" : "seen", row[i].talk);
			wrong++;
		}
		tamis_draft_free(d);
	}
	assert_int_equal(wrong, 0);
}

#define WINGS "Today it's chicken wings. We've got two pounds of wings. "
#define RICE "Today it's fried rice. Take three cups of cooked rice. "
#define JAM "Today it's plum jam. Take a kilo of plums and a kilo of sugar. "
#define BURGER "Today it's burgers. Shape a pound of ground beef into four. "

static void
advice_against_guidance(void **state)
{
	static const struct row rows[] = {
	    {WINGS "Rinse them in the sink.", "rinsing-poultry"},
	    {WINGS "I give the wings a good rinse first.", "rinsing-poultry"},
	    {WINGS "First wash the chicken under cold water.", "rinsing-poultry"},
	    {RICE "I leave it on the counter overnight.", "time-out"},
	    {RICE "It's been sitting out for six hours.", "time-out"},
	    {JAM "Don't bother sterilising the jars.", "home-canning"},
	    {JAM "There's no need to boil the jars, lids on and into the cupboard.",
		"home-canning"},
	    {WINGS "It says 150 degrees inside, near enough.", "thermometer"},
	    {WINGS "You don't need a thermometer for this.", "thermometer"},
	    {BURGER "A little pink in the middle is fine.", "thermometer"},
	    {WINGS "Thaw the wings on the counter.", "time-out"},
	    {WINGS "Marinate the wings in half a cup of soy sauce for an hour. Grill them, "
		   "and keep brushing on that same marinade.",
		"raw-marinade"},
	    {WINGS "Don't rinse the wings.", NULL},
	    {WINGS "Wash your hands.", NULL},
	    {"Today it's rice. Take a cup of basmati rice. Rinse it till the water's "
	     "clear.",
		NULL},
	    {"Today it's bean salad. Drain two cans of beans and rinse them.", NULL},
	    {"Today it's bread. Take a pound of flour. Leave the dough on the counter "
	     "overnight.",
		NULL},
	    {RICE "Leave it on the counter for ten minutes.", NULL},
	    {RICE "Keep it in the fridge overnight.", NULL},
	    {JAM "Sterilise the jars in a hot oven.", NULL},
	    {"Today it's scones. Makes eight scones, near enough.", NULL},
	    {WINGS "You need a thermometer for this.", NULL},
	    {WINGS "Thaw the wings in the fridge.", NULL},
	    {WINGS "Marinate the wings in half a cup of soy sauce. Boil the marinade for "
		   "five minutes and brush it on.",
		NULL},
	};

	expect_rows(*state, REMARK_UNSAFE_ADVICE, rows, COUNT(rows));
}

static void
food_served_raw(void **state)
{
	static const struct row rows[] = {
	    {"Today it's ceviche. Take a pound of sea bass.", ""},
	    {"Today it's tuna tartare. Dice half a pound of tuna.", ""},
	    {"Today it's eggs on toast. You want a runny yolk.", "egg"},
	    {"Today it's ramen. Take four soft-boiled eggs.", "egg"},
	    {"Today it's eggs. Fry two eggs, the yolks should still be runny.", "egg"},
	    {BURGER "I like mine as medium rare burgers.", ""},
	    {"Today it's salad. Top it with alfalfa sprouts.", "sprouts"},
	    {"Today it's fish. Serve it with tartare sauce.", NULL},
	    {"Today it's stew. The sauce is still runny.", NULL},
	    {"Today it's steak. I like a rare steak.", NULL},
	    {"Today it's sprouts. Boil a pound of brussels sprouts.", NULL},
	    {"Today it's slaw. Serve it with raw cabbage.", NULL},
	    {"Today it's pancakes. The batter should be runny.", NULL},
	};

	expect_rows(*state, REMARK_RAW_SERVED, rows, COUNT(rows));
}

static void
cautions(void **state)
{
	static const struct row rows[] = {
	    {"Today it's mayo. Take an egg yolk. Skip it if you're pregnant.", ""},
	    {"Today it's mayo. Use a pasteurised egg.", ""},
	    {"Today it's mayo. Don't serve it to the very young or the elderly.", ""},
	    {"Today it's mousse. If your immune system is weak, leave it.", ""},
	    {"Today it's mayo. It's raw egg, so at your own risk.", ""},
	    {"Today it's mayo. Take an egg yolk.", NULL},
	    {"Today it's young carrots. Take a pound of very small ones.", NULL},
	    {"Today it's elderflower cordial. Take twenty elder flowers.", NULL},
	    {"Today it's soup. Take four cups of stock.", NULL},
	    {"Today it's cake. My kids love it.", NULL},
	};

	expect_rows(*state, REMARK_CAUTION, rows, COUNT(rows));
}

static void
claims_of_being_free(void **state)
{
	static const struct row rows[] = {
	    {"Today it's brownies, and they're gluten free.", "gluten"},
	    {"Today it's a dairy free lemon cake.", "milk"},
	    {"Today it's flapjacks. There's no gluten in these.", "gluten"},
	    {"Today it's chilli, and it's vegan.", "milk"},
	    {"Today it's cookies. They're completely nut-free.", "peanut"},
	    {"Today it's pancakes, egg free and easy.", "egg"},
	    {"Today it's brownies. Take a cup of gluten free flour.", NULL},
	    {"Today it's cake. Use dairy free butter if you like.", NULL},
	    {"Today it's chilli. My sister's vegan friends love it.", NULL},
	    {"Today it's pasta. It isn't gluten free.", NULL},
	    {"Today it's cake. Feel free to swap the nuts.", NULL},
	    {"Today it's muesli. Take a cup of nut free muesli.", NULL},
	};

	expect_rows(*state, REMARK_CLAIM_FREE_OF, rows, COUNT(rows));
}

static void
numbers_misheard(void **state)
{
	static const struct row rows[] = {
	    {"Today it's soup. Add for cups of water.", "four cups"},
	    {"Today it's corn. Cook the corn for 8 2 10 minutes.", "8 to 10 minutes"},
	    {"Today it's soup. Add four cups of water.", NULL},
	    {"Today it's corn. Cook the corn for 8 to 10 minutes.", NULL},
	    {"Today it's soup. Fill it up for two cups of soup.", NULL},
	    {"Today it's bread. Add two cups of flower.", NULL},
	};

	expect_rows(*state, REMARK_MISHEARD, rows, COUNT(rows));
}

static void
words_that_point_at_nothing(void **state)
{
	static const struct row rows[] = {
	    {"Today it's ice cream. Pour over the rest of the caramel.", ""},
	    {"Today it's rice. Take a cup of rice and an onion. Top it with the rest of "
	     "the "
	     "fried onions.",
		""},
	    {"Today it's pork chops. Fry four pork chops. Spoon over the remaining "
	     "gremolata.",
		""},
	    {"Today it's noodles. Boil a pound of noodles. Add the rest of the marinade.",
		""},
	    {"Today it's soup. Cook it for another five minutes.", ""},
	    {"Today it's ice cream. Melt a cup of sugar to a caramel. Pour over the rest "
	     "of the "
	     "caramel.",
		NULL},
	    {"Today it's rice. Fry an onion. Top the rice with the rest of the fried "
	     "onions.",
		NULL},
	    {"Today it's soup. Add half the onions to a pan. Add the rest of the onions.",
		NULL},
	    {"Today it's salad. Whisk a cup of oil with a spoon of mustard. Use half, and "
	     "keep "
	     "the rest of the dressing.",
		NULL},
	    {"Today it's soup. Simmer a cup of beans for an hour. Cook it for another five "
	     "minutes.",
		NULL},
	    {"Today it's bread. Let it rest for five minutes.", NULL},
	};

	expect_rows(*state, REMARK_UNCLEAR_REFERENCE, rows, COUNT(rows));
}

/* ---- what is told of steps --------------------------------------------------- */

static const struct step *
step_doing(const struct draft *d, const char *action)
{
	for (size_t i = 0; i < d->dishes; i++)
		for (size_t p = 0; p < d->dish[i].parts; p++)
			for (size_t k = 0; k < d->dish[i].part[p].steps; k++)
				if (str_is_z(d->dish[i].part[p].step[k].action, action))
					return &d->dish[i].part[p].step[k];
	fail_msg("no step to %s", action);
	return NULL;
}

static void
steps_get_what_is_told(void **state)
{
	struct draft *d = talk_draft(*state,
	    "Today it's roast squash. Heat the oven to 400 degrees Fahrenheit. Roast the "
	    "squash for forty minutes. Turn it down to 350 Fahrenheit. The squash has had "
	    "its "
	    "thirty minutes.");
	const struct step *s = step_doing(d, "roast");

	assert_int_equal(s->agains, 1);
	assert_true(str_is_z(s->kind, "heat"));
	tamis_draft_free(d);
	d = talk_draft(*state,
	    "Today it's roast chicken. Put a three pound chicken in a 400 degree "
	    "Fahrenheit oven. Roast it until it reads 150 degrees Fahrenheit "
	    "inside, and hold it there for four minutes.");
	s = step_doing(d, "roast");
	assert_true(s->doneness.known);
	assert_int_equal(s->doneness.hold_ms, 4 * 60 * 1000);
	tamis_draft_free(d);
	d = talk_draft(*state,
	    "Today it's greens. Take a pound of greens. Steam the greens for a "
	    "little while.");
	assert_true(step_doing(d, "steam")->time_vague);
	tamis_draft_free(d);
}

static void
recaps_are_no_steps(void **state)
{
	struct draft *d =
	    talk_draft(*state, "Today it's salmon. Air fry four salmon fillets at 390 for "
			       "eight minutes. So, to "
			       "recap, that was the air fryer for twelve minutes.");

	assert_int_equal(step_doing(d, "air-fry")->agains, 1);
	assert_int_equal(d->dish[0].part[0].steps, 1);
	tamis_draft_free(d);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(advice_against_guidance),
	    cmocka_unit_test(food_served_raw),
	    cmocka_unit_test(cautions),
	    cmocka_unit_test(claims_of_being_free),
	    cmocka_unit_test(numbers_misheard),
	    cmocka_unit_test(words_that_point_at_nothing),
	    cmocka_unit_test(steps_get_what_is_told),
	    cmocka_unit_test(recaps_are_no_steps),
	};

	return cmocka_run_group_tests(tests, hold_grammar, drop_grammar);
}
