/* SPDX-License-Identifier: ISC */
/*
 * src/read, plain text: stamps in all their dress, lists, steps, headings.
 */
#include "test_read.h"

static void
a_stamp_may_be_written_in_many_ways(void **state)
{
	static const struct read_row rows[] = {
	    {"minutes and seconds in brackets", "[0:21] Melt it.\n",
		"S* 21000 -1 | Melt it.\n"},
	    {"hours", "[1:02:03] Melt it.\n", "S* 3723000 -1 | Melt it.\n"},
	    {"bare", "0:21 Melt it.\n", "S* 21000 -1 | Melt it.\n"},
	    {"bare with hours", "1:00:21 Melt it.\n", "S* 3621000 -1 | Melt it.\n"},
	    {"round brackets", "(01:20) Melt it.\n", "S* 80000 -1 | Melt it.\n"},
	    {"milliseconds", "[00:01:22.500] Melt it.\n", "S* 82500 -1 | Melt it.\n"},
	    {"a dash behind it", "0:21 - Melt it.\n", "S* 21000 -1 | Melt it.\n"},
	    {"a colon behind it", "[0:21]: Melt it.\n", "S* 21000 -1 | Melt it.\n"},
	    {"bold", "**[00:00:22]** Melt it.\n", "S* 22000 -1 | Melt it.\n"},
	    {"a range", "0:10-0:14 Melt it.\n", "S* 10000 14000 | Melt it.\n"},
	    {"a range in brackets", "[0:10 \u2013 0:14] Melt it.\n",
		"S* 10000 14000 | Melt it.\n"},
	    {"an arrow", "00:00:10 --> 00:00:14\nMelt it.\n",
		"S* 10000 14000 | Melt it.\n"},
	    {"frames, which are left out", "10:00:05:12 Melt it.\n",
		"S* 36005000 -1 | Melt it.\n"},
	    {"more than an hour in minutes", "[75:20] Melt it.\n",
		"S* 4520000 -1 | Melt it.\n"},
	    {"behind a bullet", "- 0:21 Melt it.\n", "S* 21000 -1 | Melt it.\n"},
	    {"a no-break space behind it", "[0:21]\u00A0Melt it.\n",
		"S* 21000 -1 | Melt it.\n"},
	    {"alone above its words", "0:21\nMelt it\nslowly.\n\n0:40\nStop.\n",
		"S* 21000 40000 | Melt it slowly.\nS* 40000 -1 | Stop.\n"},
	    {"the day's time is none", "12:30 pm is when we eat lunch here.\n",
		"S* -1 -1 | 12:30 pm is when we eat lunch here.\n"},
	    {"a ratio is none", "1:1 sugar and water, that is all there is to a syrup.\n",
		"S* -1 -1 | 1:1 sugar and water, that is all there is to a syrup.\n"},
	};

	(void)state;
	check_rows("text", rows, COUNT(rows));
}

static void
a_time_inside_a_sentence_is_no_stamp(void **state)
{
	static const struct read_row rows[] = {
	    {"in the middle of a line", "[0:05] Bake for 1:20 or so.\n",
		"S* 5000 -1 | Bake for 1:20 or so.\n"},
	    {"where brackets are the style", "[0:05] Bake it for\n1:20 or so.\n",
		"S* 5000 -1 | Bake it for 1:20 or so.\n"},
	    {"where a line was broken",
		"0:05 Hello.\n0:09 Bye.\n\nNow bake it for\n1:20 or so.\n",
		"S* 5000 9000 | Hello.\nS* 9000 -1 | Bye.\nS* 9000 -1 | Now bake it for "
		"1:20 or "
		"so.\n"},
	};

	(void)state;
	check_rows("text", rows, COUNT(rows));
}

static void
lines_belong_to_the_stamp_above_them(void **state)
{
	static const struct read_row rows[] = {
	    {"up to the next stamp", "[0:00] Morning all,\nit's soup.\n[0:21] Leeks.\n",
		"S* 0 21000 | Morning all, it's soup.\nS* 21000 -1 | Leeks.\n"},
	    {"a blank line starts a paragraph", "[0:05] One.\n\nTwo.\n[0:21] Three.\n",
		"S* 5000 21000 | One.\nS* 5000 21000 | Two.\nS* 21000 -1 | Three.\n"},
	    {"white space collapses", "[0:05] One \t two\u00A0\u2003three\n  four\n",
		"S* 5000 -1 | One two three four\n"},
	    {"a drawn line says nothing", "[0:05] One.\n-----\n[0:06] Two.\n",
		"S* 5000 6000 | One.\nS* 6000 -1 | Two.\n"},
	    {"a number is said, not a step's",
		"[0:05] 350. That's hot.\n[0:09] Bake at\n180. Now.\n",
		"S* 5000 9000 | 350. That's hot.\nS* 9000 -1 | Bake at 180. Now.\n"},
	    {"a hash is no mark", "[0:05] One.\n# two\n", "S* 5000 -1 | One. # two\n"},
	    {"old line ends", "[0:05] One.\r[0:06] Two.\r",
		"S* 5000 6000 | One.\nS* 6000 -1 | "
		"Two.\n"},
	    {"line ends of two bytes", "[0:05] One\r\nmore.\r\n\r\nTwo.\r\n",
		"S* 5000 -1 | One more.\nS* 5000 -1 | Two.\n"},
	    {"words on the screen", "[0:05] SUPER: 40 g butter\n[0:06] LOWER THIRD: Rosa\n",
		"O* 5000 6000 | 40 g butter\nO* 6000 -1 | Rosa\n"},
	    {"a list at the end", "[0:05] Hello.\n\nIngredients:\n2 leeks\nsalt\n",
		"S* 5000 -1 | Hello.\nH* 5000 -1 | Ingredients:\nL* 5000 -1 | 2 leeks\n"
		"L* 5000 -1 | salt\n"},
	};

	(void)state;
	check_rows("text", rows, COUNT(rows));
}

static void
speakers_are_told_from_labels(void **state)
{
	static const struct read_row rows[] = {
	    {"in front of the stamp", "HOST [1:20]: add it.\n",
		"S* 80000 -1 HOST| add it.\n"},
	    {"behind the stamp", "[1:20] HOST: add it.\n", "S* 80000 -1 HOST| add it.\n"},
	    {"a name in small letters", "[1:20] Anna Bell: Add it.\n",
		"S* 80000 -1 Anna Bell| Add it.\n"},
	    {"with a number", "[1:20] Speaker 2: Add it.\n",
		"S* 80000 -1 Speaker 2| Add it.\n"},
	    {"off camera", "[1:20] ANNA (V.O.): add it.\n", "S* 80000 -1 ANNA| add it.\n"},
	    {"in the middle of a paragraph", "[1:20] HOST: Add it.\nANNA: All of it?\n",
		"S* 80000 -1 HOST| Add it.\nS* 80000 -1 ANNA| All of it?\n"},
	    {"a turn without a name", "[1:20] >> is it hot\n", "S* 80000 -1 | is it hot\n"},
	    {"a note", "[1:20] Note: Add it.\n", "S* 80000 -1 | Note: Add it.\n"},
	    {"a heading", "[1:20] For the sauce: Add it.\n",
		"S* 80000 -1 | For the sauce: Add it.\n"},
	    {"a food before an amount", "[1:20] Rice: two cups.\n",
		"S* 80000 -1 | Rice: two cups.\n"},
	    {"a list of foods", "[1:20] Ingredients: Rice.\n",
		"S* 80000 -1 | Ingredients: Rice.\n"},
	    {"a sentence", "[1:20] This Is What We Do: Add it.\n",
		"S* 80000 -1 | This Is What We Do: Add it.\n"},
	};

	(void)state;
	check_rows("text", rows, COUNT(rows));
}

static void
sound_notes_are_left_out(void **state)
{
	static const struct read_row rows[] = {
	    {"alone behind a stamp", "[0:01] [Music]\n[0:05] Hello.\n",
		"S* 5000 -1 | Hello.\n"},
	    {"alone on a line", "[0:01] Hello.\n[upbeat music]\n(laughs)\nBye.\n",
		"S* 1000 -1 | Hello. Bye.\n"},
	    {"in front of words", "[0:01] (SFX: laughter.) ROSA: He did.\n",
		"S* 1000 -1 ROSA| He did.\n"},
	    {"not an aside", "[0:01] (about two cups) of rice.\n",
		"S* 1000 -1 | (about two cups) of rice.\n"},
	};

	(void)state;
	check_rows("text", rows, COUNT(rows));
}

static void
what_stands_before_the_first_stamp_is_at_zero(void **state)
{
	static const struct read_row rows[] = {
	    {"a title", "Leek soup and bread\n\n[0:05] Hello.\n",
		"T* 0 0 | Leek soup and bread\nS* 5000 -1 | Hello.\n"},
	    {"a title right above the stamp", "Leek soup and bread\n0:05 Hello.\n",
		"T* 0 0 | Leek soup and bread\nS* 5000 -1 | Hello.\n"},
	    {"no title with an amount", "3 leeks\n\n[0:05] Hello.\n",
		"L* 0 0 | 3 leeks\nS* 5000 -1 | Hello.\n"},
	    {"a list under its heading",
		"Soup night\n\nYou will need:\n3 leeks\nsalt\n\n[0:05] Hi.\n",
		"T* 0 0 | Soup night\nH* 0 0 | You will need:\nL* 0 0 | 3 leeks\nL* 0 0 | "
		"salt\n"
		"S* 5000 -1 | Hi.\n"},
	    {"a list of two parts",
		"Ingredients\n- 3 leeks\n\nFor the bread:\n\u2022 flour\n\u00BD tsp "
		"salt\n[0:05] Hi.\n",
		"H* 0 0 | Ingredients\nL* 0 0 | 3 leeks\nH* 0 0 | For the bread:\nL* 0 0 | "
		"flour\n"
		"L* 0 0 | \u00BD tsp salt\nS* 5000 -1 | Hi.\n"},
	    {"a bulleted list under a name", "Soup\n- 3 leeks\n- salt\n\n[0:05] Hi.\n",
		"T* 0 0 | Soup\nL* 0 0 | 3 leeks\nL* 0 0 | salt\nS* 5000 -1 | Hi.\n"},
	    {"a list on the screen", "Soup\n\nOn screen:\n- 3 leeks\n\n[0:05] Hi.\n",
		"T* 0 0 | Soup\nL* 0 0 | 3 leeks\nS* 5000 -1 | Hi.\n"},
	    {"servings are no ingredient", "You need:\n3 leeks\nServes 4\n\n[0:05] Hi.\n",
		"H* 0 0 | You need:\nL* 0 0 | 3 leeks\nS* 0 0 | Serves 4\nS* 5000 -1 | "
		"Hi.\n"},
	    {"a foreword",
		"Soup\n\nRecorded in the shed, as always on a Sunday.\n\n[0:05] Hi.\n",
		"T* 0 0 | Soup\nS* 0 0 | Recorded in the shed, as always on a Sunday.\n"
		"S* 5000 -1 | Hi.\n"},
	};

	(void)state;
	check_rows("text", rows, COUNT(rows));
}

static void
a_list_without_stamps_is_a_list(void **state)
{
	static const struct read_row rows[] = {
	    {"every line with an amount",
		"2 leeks, sliced\n1\u20442 cup barley\n\u00BE litre stock\n",
		"L* -1 -1 | 2 leeks, sliced\nL* -1 -1 | 1\u20442 cup barley\n"
		"L* -1 -1 | \u00BE litre stock\n"},
	    {"a food alone first", "leeks\n2 cups barley\nfresh parsley, chopped\n",
		"L* -1 -1 | leeks\nL* -1 -1 | 2 cups barley\nL* -1 -1 | fresh parsley, "
		"chopped\n"},
	    {"no amounts at all",
		"red cabbage, cored and cut (do NOT wash!)\njuniper\nsour apple\n",
		"L* -1 -1 | red cabbage, cored and cut (do NOT wash!)\nL* -1 -1 | juniper\n"
		"L* -1 -1 | sour apple\n"},
	    {"spelled amounts", "Two eggs\nOne cup flour\n",
		"L* -1 -1 | Two eggs\nL* -1 -1 | One cup flour\n"},
	    {"one line", "2 cups flour\n", "L* -1 -1 | 2 cups flour\n"},
	    {"numbered", "1. 2 leeks\n2. 1 litre stock\n",
		"L* -1 -1 | 2 leeks\nL* -1 -1 | 1 litre stock\n"},
	    {"bullets", "* leeks\n* salt\n", "L* -1 -1 | leeks\nL* -1 -1 | salt\n"},
	    {"boxes to tick", "- [ ] 2 leeks\n\u2610 salt\n",
		"L* -1 -1 | 2 leeks\nL* -1 -1 | salt\n"},
	    {"under a title, with a method",
		"Leek soup\n\nIngredients\n2 leeks\n\nMethod\nFry the leeks.\nAdd the "
		"stock.\n",
		"T* -1 -1 | Leek soup\nH* -1 -1 | Ingredients\nL* -1 -1 | 2 leeks\n"
		"H* -1 -1 | Method\nS* -1 -1 | Fry the leeks.\nS* -1 -1 | Add the "
		"stock.\n"},
	    {"with a sentence behind it",
		"2 leeks\n1 litre stock\nPut all of it in a pan and simmer it for an "
		"hour.\n",
		"L* -1 -1 | 2 leeks\nL* -1 -1 | 1 litre stock\n"
		"S* -1 -1 | Put all of it in a pan and simmer it for an hour.\n"},
	};

	(void)state;
	check_rows("text", rows, COUNT(rows));
}

static void
steps_and_prose_without_stamps_are_speech(void **state)
{
	static const struct read_row rows[] = {
	    {"numbers with a bracket", "1) Bring a pot to the boil.\n2) Add 2 leeks.\n",
		"S* -1 -1 | Bring a pot to the boil.\nS* -1 -1 | Add 2 leeks.\n"},
	    {"numbers with a dot", "1. Bring a pot to the boil.\n10. Add it\n",
		"S* -1 -1 | Bring a pot to the boil.\nS* -1 -1 | Add it\n"},
	    {"steps by name",
		"Step 1: Bring a pot to the boil.\nStep two - Add the leeks.\n3. Stir.\n",
		"S* -1 -1 | Bring a pot to the boil.\nS* -1 -1 | Add the leeks.\n"
		"S* -1 -1 | Stir.\n"},
	    {"a number that is said",
		"Set the oven to\n350. Then put the whole tray in it and leave it there.\n",
		"S* -1 -1 | Set the oven to\n"
		"S -1 -1 | 350. Then put the whole tray in it and leave it there.\n"},
	    {"a paragraph a line", "We start with the leeks.\nThen we add the stock.\n",
		"S* -1 -1 | We start with the leeks.\nS* -1 -1 | Then we add the stock.\n"},
	    {"words without full stops",
		"so today we are going to make a soup\n"
		"with three leeks in it and some barley\n",
		"S* -1 -1 | so today we are going to make a soup\n"
		"S -1 -1 | with three leeks in it and some barley\n"},
	    {"wrapped lines",
		"Today we make a soup that my grandmother made, with leeks and\n"
		"barley and a litre of stock. Bring it to the boil and let it tick\n"
		"over.\n\nThen eat it, slowly.\n",
		"S* -1 -1 | Today we make a soup that my grandmother made, with leeks and "
		"barley "
		"and a litre of stock. Bring it to the boil and let it tick over.\n"
		"S* -1 -1 | Then eat it, slowly.\n"},
	};

	(void)state;
	check_rows("text", rows, COUNT(rows));
}

static void
odd_stamps_are_noted_and_kept(void **state)
{
	static const struct read_row rows[] = {
	    {"out of order", "[0:30] One.\n[0:10] Two.\n[0:40] Three.\n",
		"S* 30000 -1 | One.\nS* 10000 40000 | Two.\nS* 40000 -1 | Three.\n"},
	    {"past 99 hours", "[0:30] One.\n[100:00:00] Two.\n",
		"S* 30000 -1 | One.\nS* 30000 -1 | Two.\n"},
	};
	static const struct note_row notes[] = {
	    {"[0:30] One.\n[0:10] Two.\n", "[0:10] Two.", "earlier than the one before"},
	    {"[0:30] One.\n[100:00:00] Two.\n", "[100:00:00] Two.", "past 99 hours"},
	};

	(void)state;
	check_rows("text", rows, COUNT(rows));
	check_notes(notes, COUNT(notes));
}

int
main(void)
{
	static const struct CMUnitTest tests[] = {
	    cmocka_unit_test(a_stamp_may_be_written_in_many_ways),
	    cmocka_unit_test(a_time_inside_a_sentence_is_no_stamp),
	    cmocka_unit_test(lines_belong_to_the_stamp_above_them),
	    cmocka_unit_test(speakers_are_told_from_labels),
	    cmocka_unit_test(sound_notes_are_left_out),
	    cmocka_unit_test(what_stands_before_the_first_stamp_is_at_zero),
	    cmocka_unit_test(a_list_without_stamps_is_a_list),
	    cmocka_unit_test(steps_and_prose_without_stamps_are_speech),
	    cmocka_unit_test(odd_stamps_are_noted_and_kept),
	};

	return cmocka_run_group_tests_name("read_plain", tests, NULL, NULL);
}
