/* SPDX-License-Identifier: ISC */
/*
 * From talk to the findings about amounts.
 */
#include "../support/hold.h"
#include "talk.h"

#define SOUP "Today it's leek soup. Two leeks, and a litre of vegetable stock. "
#define DRESSING "Today it's a salad dressing. Half a cup of olive oil. "

static void
test_missing_amount(void **state)
{
	static const struct talk_row rows[] = {
	    {1, SOUP "And then the cream goes in. Simmer it for ten minutes."},
	    {1, SOUP "Stir in the barley and simmer it for ten minutes."},
	    {1, SOUP "In goes the barley. Simmer it for ten minutes."},
	    {1, DRESSING "One clove of garlic, two anchovies, and the Parmesan. Whisk it."},
	    {1, DRESSING "Add honey and a teaspoon of mustard. Whisk it."},
	    {1, DRESSING "Whisk in your tahini, and a pinch of salt."},
	    {0, SOUP "Pour in a splash of cream."},
	    {0, SOUP "Cold cream on top, and you're done."},
	    {0, SOUP "Serve it with bread on the side."},
	    {0, SOUP "Into the cream go the leeks."},
	    {0, SOUP "Ladle it over the noodles."},
	    {0, SOUP "No barley in mine."},
	    {0, SOUP "Ground cumin half a teaspoon. Simmer it for ten minutes."},
	    {0, SOUP "Barley you soak for an hour, half a cup of it. Simmer it."},
	    {0, "Today it's lemon cake. Cream half a cup of butter with a cup of sugar."},
	    {0, "Today it's ribs. My rub is two tablespoons of paprika."},
	    {0, "Today it's cake. Now nan's cake topping. A cup of whipped cream."},
	    {0, "Today it's roast chicken. A five pound chicken. Roast it at 400 "
		"fahrenheit for an hour. Rest it, and carve the bird."},
	    {0, DRESSING "A tin of beans on top of the lid to weigh it down."},
	};

	expect_talk(*state, "missing-amount", rows, COUNT(rows));
}

int
main(void)
{
	static const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_missing_amount),
	};

	return cmocka_run_group_tests(tests, hold_grammar, drop_grammar);
}
