/* SPDX-License-Identifier: ISC */
/*
 * From talk to the findings about settings.
 */
#include "../support/hold.h"
#include "talk.h"

#define VEG "Today it's roast carrots. A pound of carrots, two tablespoons of oil. "
#define TOAST "Today it's cheese toast. Four slices of bread, a cup of cheddar. "
#define PAV "Today it's a pavlova. Six egg whites and 330 grams of sugar. Whisk it. "

static void
test_missing_temperature(void **state)
{
	static const struct talk_row rows[] = {
	    {1, VEG "Put them in the oven for forty minutes until they're brown."},
	    {1, VEG "The oven's on already. In they go, bake them for forty minutes."},
	    {1, VEG "Roast them for forty minutes until they're tender."},
	    {1, TOAST "Put it under the grill for three minutes until it bubbles."},
	    {1, "Today it's wings. Two pounds of wings. Put them in the air fryer for "
		"twenty minutes until the juices run clear."},
	    {0, VEG "Roast them at 200 celsius for forty minutes."},
	    {0, VEG "Get them in the oven, and then we can chat. Three hundred and fifty "
		    "degrees, forty minutes."},
	    {0, VEG "The oven's going to four hundred. Roast them for forty minutes."},
	    {0, TOAST "Put it under a hot grill for three minutes until it bubbles."},
	    {0, TOAST "Get the grill on high. Grill it for three minutes till golden."},
	    {0, "Today it's kebabs. A pound of lamb. Grill them over hot coals for ten "
		"minutes until there's no pink."},
	    {0, PAV "Shape it on a tray. The oven's at 120. It gets an hour and a half."},
	    {0, "Today it's slow stew. A pound of beef. Put it in the slow cooker on low "
		"for eight hours until it's tender."},
	};

	expect_talk(*state, "missing-temperature", rows, COUNT(rows));
}

static void
test_implausible_temperature(void **state)
{
	static const struct talk_row rows[] = {
	    {1, VEG "Roast them at 375 celsius for forty minutes."},
	    {1, VEG "Bake them at 40 fahrenheit for an hour."},
	    {1, "Today it's fries. Two pounds of potatoes. Heat the oil to 290 celsius and "
		"fry them for five minutes until golden."},
	    {1, "Today it's roast chicken. A whole chicken. Roast it at 200 celsius for an "
		"hour till it's 165 celsius inside. Rest it for ten minutes."},
	    {1, "Today it's salmon. Four salmon fillets. Air fry them at 800 fahrenheit "
		"for "
		"eight minutes until they flake."},
	    {0, PAV "Shape it on a tray. The oven's at 120. It gets an hour and a half."},
	    {0, "Today it's kebabs. 500 grams of ground beef. Grill them over hot coals "
		"for "
		"ten minutes, seventy one inside."},
	    {0, VEG "Roast them at 425 fahrenheit for forty minutes."},
	    {0, "It's 94 degrees out here. " VEG "Roast them at 425 for forty minutes."},
	    {0, "Today it's toffee. A cup of sugar. Boil the sugar to 150 celsius."},
	};

	expect_talk(*state, "implausible-temperature", rows, COUNT(rows));
}

static void
test_conflicting_temperature(void **state)
{
	static const struct talk_row rows[] = {
	    {1, VEG "Heat the oven to 200 celsius. Roast them at 160 celsius for forty "
		    "minutes."},
	    {1, VEG "Set the oven to 425 fahrenheit. Toss the carrots in the oil. They go "
		    "in at 350 fahrenheit for forty minutes."},
	    {1, TOAST "Heat the oven to 180 celsius. Bake it at 230 celsius for ten "
		      "minutes."},
	    {1, VEG "Preheat the oven to gas mark 4. Roast them at gas mark 7 for forty "
		    "minutes."},
	    {1, "Today it's meatloaf. A pound of ground beef. Preheat the oven to 350 "
		"fahrenheit. Bake it at 425 fahrenheit for an hour, until it's 160 "
		"fahrenheit inside."},
	    {0, VEG "The oven's at 180 celsius, fan. That's gas six. Roast them for forty "
		    "minutes."},
	    {0, VEG
		"Heat the oven to 200 celsius. Turn it down to 160 celsius and roast them "
		"for forty minutes."},
	    {0, "It's 94 degrees on the porch. " VEG
		"Then 275 fahrenheit for three hours."},
	    {0, VEG
		"Roast them at 200 celsius for forty minutes. Crank it up to 230 celsius "
		"for five."},
	    {0, VEG "Heat the oven to 200 celsius, 180 in a fan. Roast them for forty "
		    "minutes."},
	};

	expect_talk(*state, "conflicting-temperature", rows, COUNT(rows));
}

int
main(void)
{
	static const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_missing_temperature),
	    cmocka_unit_test(test_implausible_temperature),
	    cmocka_unit_test(test_conflicting_temperature),
	};

	return cmocka_run_group_tests(tests, hold_grammar, drop_grammar);
}
