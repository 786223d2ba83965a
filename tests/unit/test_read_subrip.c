/* SPDX-License-Identifier: ISC */
/*
 * src/read, SubRip: what editors write, tidy or not.
 */
#include "test_read.h"

#define CUE(words) "1\n00:00:01,000 --> 00:00:04,000\n" words "\n\n"
#define SAID(words) "S* 1000 4000 | " words "\n"

static void
cues_are_found_however_untidy(void **state)
{
	static const struct read_row rows[] = {
	    {"tidy", CUE("Melt it.\nSlowly.") "2\n00:00:04,500 --> 00:00:05,000\nStir.\n",
		SAID("Melt it. Slowly.") "S 4500 5000 | Stir.\n"},
	    {"a byte order mark and two-byte line ends",
		"\uFEFF1\r\n00:00:01,000 --> 00:00:04,000\r\nMelt it.\r\n\r\n",
		SAID("Melt it.")},
	    {"a point for the comma", "1\n00:00:01.000 --> 00:00:04.000\nMelt it.\n",
		SAID("Melt it.")},
	    {"no numbers", "00:00:01,000 --> 00:00:04,000\nMelt it.\n", SAID("Melt it.")},
	    {"a place on the screen",
		"1\n00:00:01,000 --> 00:00:04,000 X1:100 X2:200 Y1:1 Y2:2\nMelt.\n",
		SAID("Melt.")},
	    {"blank lines missing",
		"1\n00:00:01,000 --> 00:00:04,000\nMelt.\n2\n00:00:04,000 --> "
		"00:00:05,000\nStir.\n",
		SAID("Melt.") "S 4000 5000 | Stir.\n"},
	    {"blank lines doubled, and inside",
		"1\n\n00:00:01,000 --> 00:00:04,000\n\nMelt\n\nit.\n\n\n2\n"
		"00:00:04,000 --> 00:00:05,000\nStir.\n",
		SAID("Melt it.") "S 4000 5000 | Stir.\n"},
	    {"a number that is said",
		CUE("Set it to\n350") "2\n00:00:04,000 --> 00:00:05,000\nStir.\n",
		SAID("Set it to 350") "S 4000 5000 | Stir.\n"},
	    {"an empty cue", CUE("") CUE("Melt it."), SAID("Melt it.")},
	};

	(void)state;
	check_rows("subrip", rows, COUNT(rows));
}

static void
tags_and_codes_come_off(void **state)
{
	static const struct read_row rows[] = {
	    {"italics and fonts", CUE("<i>Melt</i> <font color=\"#ff0000\">it</font>."),
		SAID("Melt it.")},
	    {"places", CUE("{\\an8}Melt {\\i1}it{\\i0}."), SAID("Melt it.")},
	    {"references", CUE("salt &amp; oil"), SAID("salt & oil")},
	    {"not what is none", CUE("5 < 6 {so} 7 > 2"), SAID("5 < 6 {so} 7 > 2")},
	};

	(void)state;
	check_rows("subrip", rows, COUNT(rows));
}

static void
speakers_are_told_from_dashes_and_labels(void **state)
{
	static const struct read_row rows[] = {
	    {"dashes", CUE("- Melt it.\n-Slowly?"),
		"S* 1000 4000 | Melt it.\nS* 1000 4000 | Slowly?\n"},
	    {"labels", CUE("HOST: melt it.\nAnna: Slowly?"),
		"S* 1000 4000 HOST| melt it.\nS* 1000 4000 Anna| Slowly?\n"},
	    {"a dash and a label in italics", CUE("<i>- HOST: melt it.</i>"),
		"S* 1000 4000 HOST| melt it.\n"},
	    {"not a range", CUE("Bake for 10\n-12 minutes."),
		SAID("Bake for 10 -12 minutes.")},
	    {"not a note", CUE("Note: melt it."), SAID("Note: melt it.")},
	};

	(void)state;
	check_rows("subrip", rows, COUNT(rows));
}

static void
sounds_and_repeats_are_left_out(void **state)
{
	static const struct read_row rows[] = {
	    {"sounds", CUE("[SIZZLING]\n\u266A la la \u266A\nMelt it. (laughs)"),
		SAID("Melt it.")},
	    {"rolling",
		CUE("so we melt it") "2\n00:00:04,000 --> 00:00:05,000\nso we melt "
				     "it\nslowly\n\n"
				     "3\n00:00:05,000 --> 00:00:06,000\nslowly\nand stir\n",
		SAID("so we melt it") "S 4000 5000 | slowly\nS 5000 6000 | and stir\n"},
	};

	(void)state;
	check_rows("subrip", rows, COUNT(rows));
}

static void
what_is_malformed_is_noted_and_its_words_kept(void **state)
{
	static const struct read_row rows[] = {
	    {"a timing that can't be read",
		CUE("Melt.") "2\n00:00:04,000 --> later\nStir.\n",
		SAID("Melt.") "S 4000 -1 | Stir.\n"},
	};
	static const struct note_row notes[] = {
	    {CUE("Melt.") "2\nx --> y\nStir.\n", "x --> y", "malformed timing"},
	    {CUE("Melt.") "2\n00:00:05,000 --> 00:00:04,000\nStir.\n",
		"00:00:05,000 --> 00:00:04,000", "ends before it starts"},
	    {CUE("Melt.") "2\n00:00:00,500 --> 00:00:00,900\nStir.\n",
		"00:00:00,500 --> 00:00:00,900", "earlier than the one before"},
	    {"Leek soup\n\n" CUE("Melt."), "Leek soup", "before the first timing"},
	};

	(void)state;
	check_rows("subrip", rows, COUNT(rows));
	check_notes(notes, COUNT(notes));
}

int
main(void)
{
	static const struct CMUnitTest tests[] = {
	    cmocka_unit_test(cues_are_found_however_untidy),
	    cmocka_unit_test(tags_and_codes_come_off),
	    cmocka_unit_test(speakers_are_told_from_dashes_and_labels),
	    cmocka_unit_test(sounds_and_repeats_are_left_out),
	    cmocka_unit_test(what_is_malformed_is_noted_and_its_words_kept),
	};

	return cmocka_run_group_tests_name("read_subrip", tests, NULL, NULL);
}
