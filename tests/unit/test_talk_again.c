/* SPDX-License-Identifier: ISC */
/*
 * From talk to the findings about what is told twice: times, yields, claims.
 */
#include "../support/hold.h"
#include "talk.h"

#define BEANS "Today it's baked beans. Two cups of navy beans and a litre of water. "
#define PORK "Today it's smoked pork. Three kilos of pork shoulder. "
#define ROAST "Today it's roast chicken. A five pound chicken. "
#define ROLLS "Today it's bread rolls. 500 grams of flour, 300 millilitres of water. "

static void
test_conflicting_time(void **state)
{
	static const struct talk_row rows[] = {
	    {1, BEANS "Simmer the beans for fifteen minutes. So the beans have had their "
		      "twenty-five minutes, drain them."},
	    {1, ROAST
		"Roast the chicken at 350 fahrenheit for an hour and 15 minutes. Make a "
		"salad. So that was an hour and a half at 350, and it's done."},
	    {1, PORK
		"Smoke it at 110 celsius for eight hours. That's your twelve hours, so "
		"wrap it."},
	    {1, ROLLS
		"Bake the rolls at 220 celsius for twenty minutes. They've been in for "
		"forty minutes, so out they come."},
	    {1, ROLLS
		"Prove the dough for an hour. It's had its two hours, and look at it."},
	    {0, BEANS "Simmer the beans for fifteen minutes. So the beans have had their "
		      "fifteen minutes, drain them."},
	    {0, ROAST "Roast the chicken at 350 fahrenheit for an hour and 15 minutes. So "
		      "that was an hour and a quarter at 350, and it's done."},
	    {1, "Today it's koftas. A pound of lamb mince. Fry the koftas for ten minutes. "
		"That's the six minutes on the koftas, so off they come."},
	    {0, PORK "Smoke it at 110 celsius for eight hours. That's your eight hours, so "
		     "wrap it."},
	    {0, ROLLS
		"Bake the rolls at 220 celsius for twenty minutes. My aunt bakes hers "
		"for an hour."},
	    {0, ROLLS "Bake the rolls at 220 celsius for ten minutes, turn them, and bake "
		      "them for another ten minutes. That's your twenty minutes."},
	};

	expect_talk(*state, "conflicting-time", rows, COUNT(rows));
}

static void
test_restated_setting(void **state)
{
	static const struct talk_row rows[] = {
	    {1, PORK "Smoke it at 110 celsius for eight hours. Make the slaw. That's your "
		     "eight hours, at 140 celsius the whole way."},
	    {1, "Today it's short ribs. Four pounds of beef short ribs. Set the oven to "
		"300 "
		"degrees Fahrenheit. Bake them for three hours until they're tender. The "
		"pot comes out of its 325 degree oven, and it smells great."},
	    {1, ROLLS
		"Set the oven to 220 celsius. Bake the rolls for twenty minutes. They "
		"come from that 180 celsius oven and go on a rack."},
	    {1, ROAST
		"Heat the oven to 350 fahrenheit. Roast the chicken for an hour. Take "
		"it out of the 425 degree oven and rest it."},
	    {1, PORK
		"Smoke it at 225 fahrenheit for ten hours. That's your ten hours at 275 "
		"fahrenheit, so wrap it."},
	    {0, PORK "Smoke it at 110 celsius for eight hours. That's your eight hours, at "
		     "110 celsius the whole way."},
	    {0, "Today it's short ribs. Four pounds of beef short ribs. Set the oven to "
		"300 "
		"degrees Fahrenheit. Bake them for three hours until they're tender. The "
		"pot comes out of its 300 degree oven."},
	    {0, ROLLS
		"Set the oven to 220 celsius. Bake the rolls for twenty minutes. They "
		"come out of the oven and go on a rack."},
	    {0, ROAST
		"Roast the chicken at 425 fahrenheit for twenty minutes. Turn it down "
		"to 350 fahrenheit for an hour. It's 165 fahrenheit inside."},
	    {0, PORK "Smoke it at 110 celsius for eight hours. My mate runs his at 180 "
		     "celsius for three hours."},
	};

	expect_talk(*state, "conflicting-temperature", rows, COUNT(rows));
}

static void
test_conflicting_yield(void **state)
{
	static const struct talk_row rows[] = {
	    {1, ROLLS "This serves four. Bake them for twenty minutes. Serves six."},
	    {1, ROLLS "That makes eight rolls. Bake them. There's your twelve rolls."},
	    {1, ROAST "This feeds four people. Roast it. So that's dinner for six."},
	    {1, ROLLS "You'll get ten rolls. Bake them. That makes twelve rolls."},
	    {1, "Today it's burgers. A pound of ground beef. Divide it into four. Fry them "
		"for four minutes a side. And there's your six burgers."},
	    {1, "Today it's meatballs. A pound of ground beef. Roll it into twenty little "
		"balls. "
		"Fry them till there's no pink. That's twenty four meatballs."},
	    {0, ROLLS "That makes eight rolls. Bake them. And there's your eight rolls."},
	    {0, ROAST "Roast it for an hour. Put it into cold water for five, and dry it. "
		      "That'll feed six."},
	    {0, ROLLS "Feeds eight. I've seen it feed three."},
	    {0, ROAST "This feeds four people, or two if my brother's here."},
	    {0, ROLLS "That makes eight rolls, and it serves four."},
	};

	expect_talk(*state, "conflicting-yield", rows, COUNT(rows));
}

static void
test_implausible_time(void **state)
{
	static const struct talk_row rows[] = {
	    {1, ROLLS "Bake the rolls at 220 celsius for twelve hours."},
	    {1, "Today it's boiled eggs. Four eggs. Boil the eggs for 45 seconds."},
	    {1, ROAST "Roast it at 350 fahrenheit for two minutes."},
	    {1, "Today it's cookies. Two cups of flour. Bake the cookies at 350 fahrenheit "
		"for ten hours."},
	    {1, "Today it's steak. One steak. Grill it on high for six hours."},
	    {0, ROAST
		"Put it in the fridge with no cover overnight, so at least eight hours. "
		"Roast it at 425 fahrenheit for an hour."},
	    {0, ROLLS "Bake the rolls at 220 celsius for twenty minutes, turn them round, "
		      "another five."},
	    {0, ROLLS "Bake the rolls at 220 celsius for twenty-five minutes."},
	    {0, "Today it's steak. One steak. Rest it in the fridge for a day."},
	    {0, BEANS "Soak the beans for twelve hours."},
	};

	expect_talk(*state, "implausible-time", rows, COUNT(rows));
}

int
main(void)
{
	static const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_conflicting_time),
	    cmocka_unit_test(test_restated_setting),
	    cmocka_unit_test(test_conflicting_yield),
	    cmocka_unit_test(test_implausible_time),
	};

	return cmocka_run_group_tests(tests, hold_grammar, drop_grammar);
}
