/* SPDX-License-Identifier: ISC */
/*
 * From talk to the findings about safety, and about values that do not agree.
 */
#include "../support/hold.h"
#include "talk.h"

#define SKEWERS                                                                            \
	"Today it's chicken skewers. A kilo of chicken thigh. Marinate the chicken in "    \
	"half a cup of yoghurt for two hours. Grill the skewers on high for eight "        \
	"minutes, until they're 75 celsius inside. "
#define DAL "Today it's dal. A cup of toor dal, three cups of water. Boil it for an hour. "
#define SALAD "Today it's a fennel salad. Two fennel bulbs. Toast half a cup of walnuts. "

static void
test_unsafe_advice(void **state)
{
	static const struct talk_row rows[] = {
	    {1, SKEWERS
		"Whatever marinade's still in the bowl, brush it on as they come off."},
	    {1, SKEWERS
		"You take what's left of the marinade and you splash it all over. No "
		"need to boil it."},
	    {1, SKEWERS "The rest of the marinade, don't waste it, pour it over the top."},
	    {1, SKEWERS "Drizzle the marinade over the lot."},
	    {1, DAL "If some is left, just keep it on the counter overnight."},
	    {1, "Today it's wings. Two pounds of wings. Rinse the wings in the sink."},
	    {0, SKEWERS
		"Whatever's left of the marinade, boil it for five minutes and brush it "
		"on."},
	    {0, SKEWERS "Throw away the rest of the marinade."},
	    {0, SKEWERS "Don't brush them with what's left of the marinade."},
	    {0, DAL "If some is left, keep it in the fridge overnight."},
	    {0, DAL "Soak the dal overnight on the counter next time."},
	};

	expect_talk(*state, "unsafe-advice", rows, COUNT(rows));
}

static void
test_raw_ingredient(void **state)
{
	static const struct talk_row rows[] = {
	    {1, SALAD
		"In a bowl, mash two anchovies. Add one egg yolk and half a cup of olive "
		"oil. Whisk it. Toss the fennel with it."},
	    {1, "Today it's mousse. 200 grams of chocolate, melted. Fold in three egg "
		"whites. "
		"Chill it for three hours."},
	    {1, "Today it's Caesar dressing. One egg yolk, two anchovies. Whisk in half a "
		"cup "
		"of oil."},
	    {1, "Today it's eggs. Four eggs. Boil them for six minutes, the yolks should "
		"still be runny."},
	    {1, "Today it's ceviche. A pound of sea bass. Cover it in lime juice for an "
		"hour."},
	    {0, SALAD
		"In a bowl, mash two anchovies. Add a spoon of mustard and half a cup of "
		"olive oil. Whisk it."},
	    {0, "Today it's custard. Four egg yolks and a pint of milk. Whisk it and cook "
		"it "
		"for ten minutes till it coats a spoon."},
	    {0, "Today it's a cake. Two eggs and a cup of flour. Bake it at 180 celsius "
		"for "
		"half an hour."},
	    {0, "Today it's Caesar dressing. One egg yolk. Whisk in half a cup of oil. "
		"Don't "
		"give it to anybody who's pregnant."},
	    {0, "Today it's mayonnaise. One pasteurised egg yolk. Whisk in a cup of oil."},
	};

	expect_talk(*state, "raw-ingredient", rows, COUNT(rows));
}

static void
test_unit_mismatch(void **state)
{
	static const struct talk_row rows[] = {
	    {1, "Today it's cake. A cup of flour. Oven on, 180 Celsius, or 160 if yours "
		"has got "
		"a fan, and for those of you on gas, that's gas mark 7. Bake it for an "
		"hour."},
	    {1, "Today it's cake. A cup of flour. The oven's at 200 celsius, gas mark 2. "
		"Bake "
		"it for an hour."},
	    {1, "Today it's pie. A cup of flour. The oven's at 350 Fahrenheit, that's 220 "
		"Celsius. Bake it for an hour."},
	    {1, "Today it's soup. Two cups of stock, that's 250 millilitres. Boil it."},
	    {1, "Today it's bread. Two inches of flour, and a cup of water."},
	    {0, "Today it's cake. A cup of flour. Oven on, 180 Celsius, or 160 if yours "
		"has got "
		"a fan, and for those of you on gas, that's gas mark 4. Bake it for an "
		"hour."},
	    {0, "Today it's cake. A cup of flour. The oven's at 180 Celsius, fan. That's "
		"gas "
		"six. Bake it for an hour."},
	    {0, "Today it's pie. A cup of flour. Gas mark 7 for ten minutes, then turn it "
		"down "
		"to 160 Celsius for an hour."},
	    {0, "Today it's soup. Two cups of stock, that's 475 millilitres. Boil it."},
	    {0, "Today it's pie. A cup of flour. The oven's at 350 Fahrenheit, that's 180 "
		"Celsius. Bake it for an hour."},
	};

	expect_talk(*state, "unit-mismatch", rows, COUNT(rows));
}

int
main(void)
{
	static const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_unsafe_advice),
	    cmocka_unit_test(test_raw_ingredient),
	    cmocka_unit_test(test_unit_mismatch),
	};

	return cmocka_run_group_tests(tests, hold_grammar, drop_grammar);
}
