/* SPDX-License-Identifier: ISC */
/*
 * src/read, WebVTT, against the W3C's "WebVTT: The Web Video Text Tracks
 * Format"; the section that asks for a behaviour is named beside it. The
 * files are our own.
 */
#include "test_read.h"

#define HEAD "WEBVTT\n\n"
#define CUE(words) HEAD "00:01.000 --> 00:04.000\n" words "\n"
#define SAID(words) "S* 1000 4000 | " words "\n"

static void
blocks_are_told_apart(void **state)
{
	static const struct read_row rows[] = {
	    {"4.1: a header with text, and more lines of it",
		"WEBVTT Leek soup\nKind: captions\nLanguage: en\n\n00:01.000 --> "
		"00:04.000\nHi.\n",
		SAID("Hi.")},
	    {"4.1: nothing but the signature", "WEBVTT", ""},
	    {"4.1: hours may be left out, or have more than two digits",
		HEAD
		"00:01.000 --> 00:02.000\nHi.\n\n01:00:01.000 --> 01:00:02.000\nBye.\n",
		"S* 1000 2000 | Hi.\nS* 3601000 3602000 | Bye.\n"},
	    {"4.1: identifiers and settings are not said",
		HEAD
		"first\n00:01.000 --> 00:04.000 line:0 position:20% align:start\nHi.\n",
		SAID("Hi.")},
	    {"4.1: comments, of one line and of more",
		HEAD "NOTE Melt it.\n\n00:01.000 --> 00:04.000\nHi.\n\nNOTE\nA pound\nof "
		     "butter\n",
		SAID("Hi.")},
	    {"4.1: style and region blocks",
		HEAD "STYLE\n::cue { color: red }\n\nREGION\nid:low\nwidth:40%\n\n"
		     "00:01.000 --> 00:04.000\nHi.\n",
		SAID("Hi.")},
	    {"4.1: words that only start like a comment",
		HEAD "NOTES\n00:01.000 --> 00:04.000\nNOTE this.\n", SAID("NOTE this.")},
	    {"6.1: a timing line right behind the header",
		"WEBVTT\n00:01.000 --> 00:04.000\nHi.\n", SAID("Hi.")},
	    {"6.1: a timing line inside a cue starts the next",
		HEAD "00:01.000 --> 00:04.000\nHi.\n00:04.000 --> 00:05.000\nBye.\n",
		SAID("Hi.") "S 4000 5000 | Bye.\n"},
	    {"6.1: the three kinds of line ends",
		"WEBVTT\r\n\r\n00:01.000 --> 00:04.000\rHi\r\nall.\r\r00:04.000 --> "
		"00:05.000\nBye.",
		SAID("Hi all.") "S 4000 5000 | Bye.\n"},
	    {"6.1: a line of blanks ends no cue",
		HEAD
		"00:01.000 --> 00:04.000\nHi\n \nall.\n\n00:04.000 --> 00:05.000\nBye.\n",
		SAID("Hi all.") "S 4000 5000 | Bye.\n"},
	    {"but a number behind it is the next one's, in a file edited by hand",
		HEAD
		"1\n00:01.000 --> 00:04.000\nHi.\n \n2\n00:04.000 --> 00:05.000\nBye.\n",
		SAID("Hi.") "S 4000 5000 | Bye.\n"},
	    {"6.1: no blanks around the arrow", HEAD "00:01.000-->00:04.000\nHi.\n",
		SAID("Hi.")},
	};

	(void)state;
	check_rows("webvtt", rows, COUNT(rows));
}

static void
tags_and_references_are_read(void **state)
{
	static const struct read_row rows[] = {
	    {"4.2.2: class, italics, bold, underline, language",
		CUE("<c.loud.red>Melt</c> <i.x>the</i> <b>but</b>ter <u>now</u>, "
		    "<lang fr>mijoter</lang>."),
		SAID("Melt the butter now, mijoter.")},
	    {"4.2.2: ruby text is no part of the words",
		CUE("A <ruby>mandolin<rt>slicer</rt></ruby> will do."),
		SAID("A mandolin will do.")},
	    {"4.2.2: voices", CUE("<v Rosa>Melt it.</v>\n<v.loud Dev Bell>All of it?"),
		"S* 1000 4000 Rosa| Melt it.\nS* 1000 4000 Dev Bell| All of it?\n"},
	    {"4.2.2: a reference in a voice", CUE("<v Ro &amp; Dev>Hi."),
		"S* 1000 4000 Ro & Dev| Hi.\n"},
	    {"4.2.2: stamps inside a cue", CUE("Melt <00:00:02.000>the <00:03.000>butter."),
		SAID("Melt the butter.")},
	    {"4.2.2: the six references",
		CUE("salt &amp; oil, &lt;2&gt;&nbsp;cups &lrm;or&rlm;"),
		SAID("salt & oil, <2> cups \u200Eor\u200F")},
	    {"6.3: numeric references, and those of HTML",
		CUE("&#189; cup, &#xBC; cup, &frac34; cup at 180&deg;"),
		SAID("\u00BD cup, \u00BC cup, \u00BE cup at 180\u00B0")},
	    {"6.3: a reference that is none", CUE("salt & oil &nosuch; &#; &"),
		SAID("salt & oil &nosuch; &#; &")},
	    {"6.4: a tag that nothing closes is text", CUE("keep it < 40 degrees"),
		SAID("keep it < 40 degrees")},
	    {"6.4: end tags in any order", CUE("<i><b>Melt</i> it</b></c>."),
		SAID("Melt it.")},
	    {"6.4: tags without a name", CUE("<>Melt</> it."), SAID("Melt it.")},
	};

	(void)state;
	check_rows("webvtt", rows, COUNT(rows));
}

static void
a_new_speaker_or_a_pause_starts_a_paragraph(void **state)
{
	static const struct read_row rows[] = {
	    {"a pause of over two seconds",
		HEAD "00:01.000 --> 00:02.000\nOne.\n\n00:04.000 --> 00:05.000\nTwo.\n\n"
		     "00:07.001 --> 00:08.000\nThree.\n",
		"S* 1000 2000 | One.\nS 4000 5000 | Two.\nS* 7001 8000 | Three.\n"},
	    {"another voice",
		HEAD "00:01.000 --> 00:02.000\n<v Rosa>One.\n\n00:02.000 --> 00:03.000\n<v "
		     "Rosa>Two.\n\n"
		     "00:03.000 --> 00:04.000\n<v Dev>Three.\n\n00:04.000 --> "
		     "00:05.000\nFour.\n",
		"S* 1000 2000 Rosa| One.\nS 2000 3000 Rosa| Two.\nS* 3000 4000 Dev| "
		"Three.\n"
		"S 4000 5000 | Four.\n"},
	    {"turn marks", CUE("&gt;&gt; One.\n>> ROSA: Two."),
		"S* 1000 4000 | One.\n"
		"S* 1000 4000 ROSA| Two.\n"},
	};

	(void)state;
	check_rows("webvtt", rows, COUNT(rows));
}

static void
sounds_and_songs_are_left_out(void **state)
{
	static const struct read_row rows[] = {
	    {"in brackets", CUE("[MUSIC]\nMelt it. [oven door slams]"), SAID("Melt it.")},
	    {"in round ones", CUE("(applause) Melt it (about half). (DOOR SLAMS)"),
		SAID("Melt it (about half).")},
	    {"not numbers", CUE("Melt [half a pound, 225 g] of it."),
		SAID("Melt [half a pound, 225 g] of it.")},
	    {"a song", CUE("\u266A stirring all day \u266A\nMelt it."), SAID("Melt it.")},
	    {"a song that goes on", CUE("Melt it.\n\u266B stirring all day"),
		SAID("Melt it.")},
	    {"nothing left", CUE("[MUSIC]"), ""},
	};

	(void)state;
	check_rows("webvtt", rows, COUNT(rows));
}

static void
rolling_captions_are_said_once(void **state)
{
	static const struct read_row rows[] = {
	    {"each shows the line before",
		HEAD "00:01.000 --> 00:02.000\nso today we are making\n\n"
		     "00:02.000 --> 00:03.000\nso today we are making\nleek soup\n\n"
		     "00:03.000 --> 00:04.000\nleek soup\nwith barley\n",
		"S* 1000 2000 | so today we are making\nS 2000 3000 | leek soup\n"
		"S 3000 4000 | with barley\n"},
	    {"each shows the two lines before",
		HEAD
		"00:01.000 --> 00:02.000\nso today we\n\n"
		"00:02.000 --> 00:03.000\nso today we\nare making leek\n\n"
		"00:03.000 --> 00:04.000\nso today we\nare making leek\nand barley soup\n\n"
		"00:04.000 --> 00:05.000\nare making leek\nand barley soup\nfor tea\n",
		"S* 1000 2000 | so today we\nS 2000 3000 | are making leek\n"
		"S 3000 4000 | and barley soup\nS 4000 5000 | for tea\n"},
	    {"word by word",
		HEAD "00:01.000 --> 00:02.000\nso today\n\n00:02.000 --> 00:03.000\nso "
		     "today we\n\n"
		     "00:03.000 --> 00:04.000\nso today we are\nmaking\n\n"
		     "00:04.000 --> 00:05.000\nmaking soup\n",
		"S* 1000 2000 | so today\nS 2000 3000 | we\nS 3000 4000 | are making\n"
		"S 4000 5000 | soup\n"},
	    {"machine captions: stamped words, then the same without",
		HEAD "00:01.000 --> 00:02.500\n \nso<00:00:01.500><c> "
		     "today</c><00:00:02.000><c> we</c>\n\n"
		     "00:02.500 --> 00:02.510\nso today we\n \n\n"
		     "00:02.510 --> 00:05.000\nso today we\n<00:00:03.000><c>make</c>"
		     "<00:00:03.500><c> soup</c>\n\n"
		     "00:05.000 --> 00:05.010\nmake soup\n \n",
		"S* 1000 2500 | so today we\nS 3000 5000 | make soup\n"},
	    {"over a pause",
		HEAD "00:01.000 --> 00:02.000\nsalt it well now\n\n"
		     "00:06.000 --> 00:07.000\nsalt it well now\nand rest it\n",
		"S* 1000 2000 | salt it well now\nS* 6000 7000 | and rest it\n"},
	    {"words that are said twice",
		HEAD
		"00:01.000 --> 00:02.000\nYes.\n\n00:02.000 --> 00:03.000\nYes.\n\n"
		"00:03.000 --> 00:04.000\nOne cup\n\n00:04.000 --> 00:05.000\nof flour.\n\n"
		"00:05.000 --> 00:06.000\nMix it.\n",
		"S* 1000 2000 | Yes.\nS 2000 3000 | Yes.\nS 3000 4000 | One cup\n"
		"S 4000 5000 | of flour.\nS 5000 6000 | Mix it.\n"},
	    {"a word that only starts alike",
		HEAD "00:01.000 --> 00:02.000\nput it in the pot\n\n"
		     "00:02.000 --> 00:03.000\nput it in the potato water\n",
		"S* 1000 2000 | put it in the pot\nS 2000 3000 | put it in the potato "
		"water\n"},
	};

	(void)state;
	check_rows("webvtt", rows, COUNT(rows));
}

static void
what_is_malformed_is_noted_and_its_words_kept(void **state)
{
	static const struct read_row rows[] = {
	    {"a timing that can't be read",
		HEAD "00:01.000 --> 00:02.000\nOne.\n\nsoon --> later\nTwo.\n",
		"S* 1000 2000 | One.\nS 2000 -1 | Two.\n"},
	    {"a comma for a dot", HEAD "00:01,000 --> 00:04,000\nHi.\n", SAID("Hi.")},
	    {"an end before its start", HEAD "00:04.000 --> 00:01.000\nHi.\n",
		"S* 4000 -1 | Hi.\n"},
	    {"out of order",
		HEAD "00:04.000 --> 00:05.000\nTwo.\n\n00:01.000 --> 00:02.000\nOne.\n",
		"S* 4000 5000 | Two.\nS 1000 2000 | One.\n"},
	};
	static const struct note_row notes[] = {
	    {HEAD "soon --> later\nTwo.\n", "soon --> later", "malformed timing"},
	    {HEAD "00:01.000 --> 100:00:00.000\nTwo.\n", "00:01.000 --> 100:00:00.000",
		"malformed timing"},
	    {HEAD "00:01,000 --> 00:04,000\nHi.\n", "00:01,000 --> 00:04,000",
		"not written as WebVTT asks"},
	    {HEAD "0:01.000 --> 00:04.000\nHi.\n", "0:01.000 --> 00:04.000",
		"not written as WebVTT asks"},
	    {HEAD "00:04.000 --> 00:01.000\nHi.\n", "00:04.000 --> 00:01.000",
		"ends before it starts"},
	    {HEAD "00:04.000 --> 00:05.000\nTwo.\n\n00:01.000 --> 00:02.000\nOne.\n",
		"00:01.000 --> 00:02.000", "earlier than the one before"},
	    {HEAD "Some words\nand more.\n\n00:01.000 --> 00:02.000\nOne.\n",
		"Some words\nand more.", "without a cue timing"},
	};

	(void)state;
	check_rows("webvtt", rows, COUNT(rows));
	check_notes(notes, COUNT(notes));
}

int
main(void)
{
	static const struct CMUnitTest tests[] = {
	    cmocka_unit_test(blocks_are_told_apart),
	    cmocka_unit_test(tags_and_references_are_read),
	    cmocka_unit_test(a_new_speaker_or_a_pause_starts_a_paragraph),
	    cmocka_unit_test(sounds_and_songs_are_left_out),
	    cmocka_unit_test(rolling_captions_are_said_once),
	    cmocka_unit_test(what_is_malformed_is_noted_and_its_words_kept),
	};

	return cmocka_run_group_tests_name("read_webvtt", tests, NULL, NULL);
}
