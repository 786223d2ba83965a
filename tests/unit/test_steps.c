/* SPDX-License-Identifier: ISC */
/*
 * From talk to the written steps.
 */
#include "../support/hold.h"
#include "talk.h"

#include "base/buf.h"

struct step_row {
	const char *talk;
	const char *steps; /* of the first dish, one blank between them */
};

static struct str
steps_of(const struct draft *d)
{
	struct buf b = buf_in(d->arena);

	for (size_t i = 0; d->dishes && i < d->dish->parts; i++)
		for (size_t k = 0; k < d->dish->part[i].steps; k++) {
			buf_put_z(&b, b.n ? " " : "");
			buf_put(&b, d->dish->part[i].step[k].text);
		}
	return buf_str(&b);
}

static void
expect_steps(const struct grammar *g, const struct step_row *row, size_t rows)
{
	size_t wrong = 0;

	for (size_t i = 0; i < rows; i++) {
		struct draft *d = talk_draft(g, row[i].talk);
		struct str steps = steps_of(d);

		if (!str_is_z(steps, row[i].steps)) {
			print_error("%s\n  gave  %.*s\n  not   %s\n", row[i].talk,
			    (int)steps.n, steps.p, row[i].steps);
			wrong++;
		}
		tamis_draft_free(d);
	}
	assert_int_equal(wrong, 0);
}

#define STEW "Today it's beef stew. Brown two pounds of beef. "

static void
test_pronouns_mean_what_was_brought_in_or_what_is_there(void **state)
{
	static const struct step_row rows[] = {
	    {STEW "A cup of cream. Let it simmer for ten minutes.",
		"Brown the beef. Add the cream. Simmer for 10 minutes."},
	    {STEW "A can of tomatoes and two cans of beans, drain those and rinse those, "
		  "and a quart of stock.",
		"Brown the beef. Drain the beans. Rinse them. Add the tomatoes, beans and "
		"stock."},
	    {STEW "A pinch of sugar. Turn it off.",
		"Brown the beef. Add the sugar. Turn off the heat."},
	    {STEW "Half a cup of peas, stir that in.", "Brown the beef. Stir in the peas."},
	    {"Today it's a slaw. Half a cabbage, two carrots, the juice of a lime. Toss "
	     "it.",
		"Toss the cabbage, carrots and lime."},
	};

	expect_steps(*state, rows, COUNT(rows));
}

static void
test_that_behind_a_verb_is_its_object(void **state)
{
	static const struct step_row rows[] = {
	    {"Today it's meatloaf. A pound of ground beef. Shape that into a loaf.",
		"Shape the ground beef into a loaf."},
	    {STEW "Four ounces of butter, you melt that, and then a cup of flour.",
		"Brown the beef. Melt the butter. Add the flour."},
	};

	expect_steps(*state, rows, COUNT(rows));
}

static void
test_sizes_and_pieces_stay_in_the_step(void **state)
{
	static const struct step_row rows[] = {
	    {"Today it's cinnamon rolls. Two cups of flour and a cup of milk, mix that. "
	     "Roll "
	     "it out to about thirty by forty centimetres, roll it up and cut it into "
	     "twelve.",
		"Mix the flour and milk. Roll it out to about thirty by forty centimetres. "
		"Roll it up. Cut it into twelve."},
	    {STEW "Put it back in the pan with the lid still on and leave it to rest.",
		"Brown the beef. Put it back in the pan, covered. Rest it."},
	    {STEW
		"A pound of carrots. Lid on for ten minutes, lid off till they're glossy.",
		"Brown the beef. Add the carrots. Cook, covered, for 10 minutes, then "
		"uncovered until glossy."},
	    {STEW "Into the tin, level it off.",
		"Brown the beef. Put it into the tin and level it."},
	    {"Today it's roast chicken. Four ounces of soft butter and a tablespoon of "
	     "thyme, mash that together.",
		"Mash together the soft butter and thyme."},
	    {STEW "Get your big skillet on medium high heat. Get the grill on high.",
		"Brown the beef. Heat the big skillet over medium-high heat. Heat the "
		"grill "
		"to high."},
	};

	expect_steps(*state, rows, COUNT(rows));
}

static void
test_what_happens_by_itself_or_else_is_no_step(void **state)
{
	static const struct step_row rows[] = {
	    {STEW "Take it off the heat, or you'll scramble your eggs.",
		"Brown the beef. Remove from the heat."},
	    {STEW "It'll puff up like a cloud.", "Brown the beef."},
	    {STEW "You could stand a spoon up in it.", "Brown the beef."},
	};

	expect_steps(*state, rows, COUNT(rows));
}

static void
test_places_cues_and_heat_are_told_in_full(void **state)
{
	static const struct step_row rows[] = {
	    {STEW
		"Spoon the rest of the sauce on top. Scatter it all over the top, right up "
		"to the edges.",
		"Brown the beef. Spoon the rest of the sauce on top. Scatter it all over "
		"the "
		"top up to the edges."},
	    {STEW "Turn it down low. Take the pan off the heat.",
		"Brown the beef. Reduce the heat to low. Remove the pan from the heat."},
	    {"Today it's biscuits. Put it in the oven. Thirteen minutes, tops golden.",
		"Put it in the oven. Bake for 13 minutes, until the tops are golden."},
	    {"Today it's dressing. Whisk the egg yolk. Keep whisking while you pour in "
	     "half "
	     "a cup of oil.",
		"Whisk the egg yolk. Pour in the oil."},
	};

	expect_steps(*state, rows, COUNT(rows));
}

static void
test_an_until_is_told_to_its_end(void **state)
{
	static const struct step_row rows[] = {
	    {STEW "Simmer it till it's thick enough that your spoon leaves a track.",
		"Brown the beef. Simmer until thick enough that the spoon leaves a track."},
	    {STEW "Cook it till the whole street can smell it.",
		"Brown the beef. Cook until the whole street can smell it."},
	    {STEW "Bake it for ten minutes until it's golden and it sounds hollow.",
		"Brown the beef. Bake for 10 minutes, until golden and it sounds hollow."},
	    {STEW "Cook it until it's soft and I love that.",
		"Brown the beef. Cook until soft."},
	    {STEW "Fry it till it's golden maybe two minutes.",
		"Brown the beef. Fry for about 2 minutes, until golden."},
	    {STEW "A teaspoon of cumin seeds, let them crackle.",
		"Brown the beef. Cook the cumin seeds until they crackle."},
	};

	expect_steps(*state, rows, COUNT(rows));
}

static void
test_a_sign_that_is_told_apart_ends_the_cooking(void **state)
{
	static const struct step_row rows[] = {
	    {STEW "Bake it for an hour and it should flake when you poke it.",
		"Brown the beef. Bake for 1 hour. It should flake when you poke it."},
	    {STEW "Bake it for an hour and a skewer should come out clean.",
		"Brown the beef. Bake for 1 hour. A skewer should come out clean."},
	    {STEW "Fry it for five minutes. It should be crisp by now, my dog loves it.",
		"Brown the beef. Fry for 5 minutes. It should be crisp."},
	    {STEW "Fry it for five minutes. It should still fight you. It'd serve six.",
		"Brown the beef. Fry for 5 minutes."},
	};

	expect_steps(*state, rows, COUNT(rows));
}

static void
test_questions_are_talk(void **state)
{
	static const struct step_row rows[] = {
	    {STEW "Honey, is that the timer?", "Brown the beef."},
	    {STEW "See how there's plenty of broth?", "Brown the beef."},
	    {STEW "Cook it with a pound of carrots for an hour, okay?",
		"Brown the beef. Cook with the carrots for 1 hour."},
	};

	expect_steps(*state, rows, COUNT(rows));
}

int
main(void)
{
	static const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_pronouns_mean_what_was_brought_in_or_what_is_there),
	    cmocka_unit_test(test_that_behind_a_verb_is_its_object),
	    cmocka_unit_test(test_sizes_and_pieces_stay_in_the_step),
	    cmocka_unit_test(test_what_happens_by_itself_or_else_is_no_step),
	    cmocka_unit_test(test_places_cues_and_heat_are_told_in_full),
	    cmocka_unit_test(test_an_until_is_told_to_its_end),
	    cmocka_unit_test(test_a_sign_that_is_told_apart_ends_the_cooking),
	    cmocka_unit_test(test_questions_are_talk),
	};

	return cmocka_run_group_tests(tests, hold_grammar, drop_grammar);
}
