/* SPDX-License-Identifier: ISC */
/*
 * From talk to the findings about lists of ingredients, spoken and written.
 */
#include "../support/hold.h"
#include "talk.h"

#define LIST                                                                               \
	"Today it's leek soup. For the soup you'll need two leeks, two potatoes, a litre " \
	"of vegetable stock, a sprig of thyme, and half a cup of cream, and that's "       \
	"everything. "
#define COOK                                                                               \
	"Chop the leeks and the potatoes. Simmer them in the stock with the thyme for "    \
	"twenty minutes. "
#define BENCH                                                                              \
	"Today it's flapjack. On the bench: two hundred grams of butter, two hundred "     \
	"grams of sugar, three hundred grams of oats. And a tablespoon of golden syrup. "  \
	"That's your lot. "
#define ROUGH "Today it's pancakes. A cup of flour, two eggs, and a cup of milk. Whisk it. "

static void
test_unlisted_ingredient(void **state)
{
	static const struct talk_row rows[] = {
	    {1, LIST COOK "Stir in the cream. Squeeze in half a lemon."},
	    {1, LIST COOK "Stir in the cream and a teaspoon of mustard."},
	    {1, BENCH "Melt the butter with the sugar and the syrup. Stir in the oats and "
		      "fifty grams of raisins."},
	    {1, BENCH "Melt the butter, the sugar, the syrup and a handful of dates. Stir "
		      "in the oats."},
	    {2, LIST COOK "Stir in the cream, a teaspoon of mustard and an egg."},
	    {0, LIST COOK "Stir in the cream."},
	    {0, LIST COOK "Stir in the cream, salt and pepper."},
	    {0, LIST COOK "Stir in the cream. No mustard in mine."},
	    {0, BENCH "Melt the butter with the sugar and the syrup. Stir in the oats."},
	    {0, ROUGH "Stir in a teaspoon of vanilla."},
	    {0, ROUGH "That's it. Leave it for ten minutes, then add a pinch of nutmeg."},
	};

	expect_talk(*state, "unlisted-ingredient", rows, COUNT(rows));
}

static void
test_unused_ingredient(void **state)
{
	static const struct talk_row rows[] = {
	    {1, LIST COOK "Taste it, and that's your soup."},
	    {1, LIST "Chop the leeks and the potatoes. Simmer them in the stock for ten "
		     "minutes. Stir in the cream."},
	    {1, LIST "Chop the leeks. Simmer them in the stock with the thyme for ten "
		     "minutes. Stir in the cream."},
	    {1, BENCH "Melt the butter with the sugar. Stir in the oats."},
	    {1, BENCH "Melt the butter with the syrup. Stir in the oats."},
	    {0, LIST COOK "Stir in the cream."},
	    {0, LIST COOK "And now the cream, off the heat."},
	    {0, BENCH "Melt the butter with the sugar and the syrup. Stir in the oats."},
	    {0, BENCH "Put it all in a pan and melt it. Press it into a tin."},
	    {0, ROUGH "Fry it in a pan for two minutes a side."},
	};

	expect_talk(*state, "unused-ingredient", rows, COUNT(rows));
}

static void
test_conflicting_amount(void **state)
{
	static const struct talk_row rows[] = {
	    {1, LIST "Chop three leeks and the potatoes. Simmer them in the stock with the "
		     "thyme. Stir in the cream."},
	    {1, LIST COOK "Stir in a cup of cream."},
	    {1, LIST "Chop the leeks and five potatoes. Simmer them in the stock with the "
		     "thyme. Stir in the cream."},
	    {2, BENCH
		"Melt a hundred grams of butter with the sugar and the syrup. Stir in "
		"the oats, all three hundred grams, and two hundred and fifty grams "
		"of sugar."},
	    {1, BENCH
		"Melt the butter, the sugar and four tablespoons of golden syrup. Stir "
		"in the oats."},
	    {0, LIST
		"Chop the two leeks and the potatoes. Simmer them in the stock with the "
		"thyme. Stir in the cream."},
	    {0, LIST COOK "Stir in half the cream."},
	    {0, LIST COOK "Stir in the half cup of cream."},
	    {0, BENCH "Melt the butter with the sugar and the syrup. Stir in the oats."},
	    {0, ROUGH "Add another egg and whisk it again."},
	};

	expect_talk(*state, "conflicting-amount", rows, COUNT(rows));
}

int
main(void)
{
	static const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_unlisted_ingredient),
	    cmocka_unit_test(test_unused_ingredient),
	    cmocka_unit_test(test_conflicting_amount),
	};

	return cmocka_run_group_tests(tests, hold_grammar, drop_grammar);
}
