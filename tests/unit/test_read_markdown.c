/* SPDX-License-Identifier: ISC */
/*
 * src/read, Markdown: headings, lists, marks, front matter, A/V tables.
 */
#include "test_read.h"

static void
headings_are_title_and_headings(void **state)
{
	static const struct read_row rows[] = {
	    {"levels", "# Soup night\n\n## Leek soup\n\n### The bread ###\n\n[0:05] Hi.\n",
		"T* 0 0 | Soup night\nH* 0 0 | Leek soup\nH* 0 0 | The bread\nS* 5000 -1 | "
		"Hi.\n"},
	    {"a second one of the first level", "# Soup night\n\n# Soup\n",
		"T* -1 -1 | Soup night\nH* -1 -1 | Soup\n"},
	    {"underlined",
		"Soup night\n==========\n\nLeek soup\n---------\n\n[0:05] **Hi**.\n",
		"T* 0 0 | Soup night\nH* 0 0 | Leek soup\nS* 5000 -1 | Hi.\n"},
	    {"bold alone on a line", "# Soup night\n\n**For the bread**\n\n- flour\n",
		"T* -1 -1 | Soup night\nH* -1 -1 | For the bread\nL* -1 -1 | flour\n"},
	    {"with a stamp", "# Soup\n\n## 0:10 Leeks\n\nSlice them.\n\n## [0:20] Bread\n",
		"T* 0 0 | Soup\nH* 10000 20000 | Leeks\nS* 10000 20000 | Slice them.\n"
		"H* 20000 -1 | Bread\n"},
	    {"front matter",
		"---\ntitle: \"Soup: a night\"\ndate: 2020-02-02\n---\n## Leek soup\n",
		"T* -1 -1 | Soup: a night\nH* -1 -1 | Leek soup\n"},
	};

	(void)state;
	check_rows("markdown", rows, COUNT(rows));
}

static void
lists_are_ingredients_or_steps_by_their_heading(void **state)
{
	static const struct read_row rows[] = {
	    {"before the first stamp", "# Soup\n\n- 2 leeks\n- salt\n\n[0:05] Hi.\n",
		"T* 0 0 | Soup\nL* 0 0 | 2 leeks\nL* 0 0 | salt\nS* 5000 -1 | Hi.\n"},
	    {"after it", "# Soup\n\n[0:05] Hi.\n\n- Fry the leeks.\n- Stir.\n",
		"T* 0 0 | Soup\nS* 5000 -1 | Hi.\nS* 5000 -1 | Fry the leeks.\nS* 5000 -1 "
		"| "
		"Stir.\n"},
	    {"after it, under ingredients",
		"# Soup\n\n[0:05] Hi.\n\n## Ingredients\n\n- 2 leeks\n\n### Bread\n\n* "
		"flour\n",
		"T* 0 0 | Soup\nS* 5000 -1 | Hi.\nH* 5000 -1 | Ingredients\nL* 5000 -1 | 2 "
		"leeks\n"
		"H* 5000 -1 | Bread\nL* 5000 -1 | flour\n"},
	    {"under method",
		"## Ingredients\n\n- 2 leeks\n\n## Method\n\n- Fry them\n1. Eat them\n",
		"H* -1 -1 | Ingredients\nL* -1 -1 | 2 leeks\nH* -1 -1 | Method\n"
		"S* -1 -1 | Fry them\nS* -1 -1 | Eat them\n"},
	    {"an item of two lines", "## Ingredients\n\n- 2 leeks,\n  sliced\n- [x] salt\n",
		"H* -1 -1 | Ingredients\nL* -1 -1 | 2 leeks, sliced\nL* -1 -1 | salt\n"},
	    {"a table of amounts",
		"## Ingredients\n\n| How much | What |\n| --- | --- |\n| 2 | leeks |\n| | "
		"salt |\n",
		"H* -1 -1 | Ingredients\nL* -1 -1 | 2 leeks\nL* -1 -1 | salt\n"},
	};

	(void)state;
	check_rows("markdown", rows, COUNT(rows));
}

static void
marks_come_off(void **state)
{
	static const struct read_row rows[] = {
	    {"emphasis", "# S\n\nA **big** _pan_, ***hot*** and ~~not~~ cold.\n",
		"T* -1 -1 | S\nS* -1 -1 | A big pan, hot and not cold.\n"},
	    {"not where it is none", "# S\n\nSix is 2 * 3, a_b_c is a name \\*here\\*.\n",
		"T* -1 -1 | S\nS* -1 -1 | Six is 2 * 3, a_b_c is a name *here*.\n"},
	    {"links and pictures",
		"# S\n\nA [big pan](http://a.example/b) ![photo](p.png) of [it][1].\n",
		"T* -1 -1 | S\nS* -1 -1 | A big pan of it.\n"},
	    {"brackets that are no link", "# S\n\nA pan [the big one] of it.\n",
		"T* -1 -1 | S\nS* -1 -1 | A pan [the big one] of it.\n"},
	    {"ticks, tags, references",
		"# S\n\n`Fry` <b>it</b><br>at 180&deg;C &amp; rest.\n",
		"T* -1 -1 | S\nS* -1 -1 | Fry it at 180\u00B0C & rest.\n"},
	    {"fences, quotes and lines",
		"# S\n\n> Fry it\n> well.\n\n***\n\n```\nRest it.\n```\n",
		"T* -1 -1 | S\nS* -1 -1 | Fry it well.\nS* -1 -1 | Rest it.\n"},
	    {"comments",
		"# S\n\nFry <!-- loud --> it.\n\n<!-- two\n\nlines -->\n\nRest it.\n",
		"T* -1 -1 | S\nS* -1 -1 | Fry it.\nS* -1 -1 | Rest it.\n"},
	    {"a comment that never ends", "# S\n\nFry it <!-- and rest.\n",
		"T* -1 -1 | S\nS* -1 -1 | Fry it <!-- and rest.\n"},
	};

	(void)state;
	check_rows("markdown", rows, COUNT(rows));
}

static void
paragraphs_have_stamps_as_in_plain_text(void **state)
{
	static const struct read_row rows[] = {
	    {"bold, linked, wrapped",
		"# S\n\n**[0:05]** Fry\nit.\n\n[0:10](http://a.example/?t=10) **HOST:** "
		"Rest it.\n",
		"T* 0 0 | S\nS* 5000 10000 | Fry it.\nS* 10000 -1 HOST| Rest it.\n"},
	    {"one line behind the other", "# S\n\n[0:05] Fry it.\n[0:10] Rest it.\n",
		"T* 0 0 | S\nS* 5000 10000 | Fry it.\nS* 10000 -1 | Rest it.\n"},
	};

	(void)state;
	check_rows("markdown", rows, COUNT(rows));
}

static void
table_columns_are_time_picture_and_sound(void **state)
{
	static const struct read_row rows[] = {
	    {"three columns",
		"| Time | Picture | Sound |\n|------|:---:|---|\n"
		"| 0:05 | Wide shot | HOST: Fry it. |\n| [0:10] | Close | Rest it. |\n",
		"P* 5000 10000 | Wide shot\nS* 5000 10000 HOST| Fry it.\n"
		"P* 10000 -1 | Close\nS* 10000 -1 | Rest it.\n"},
	    {"other words over them, other order",
		"Dialogue | TC | Shots\n--- | --- | ---\nFry it. | 00:00:05:12 | A pan\n",
		"S* 5000 -1 | Fry it.\nP* 5000 -1 | A pan\n"},
	    {"an empty time",
		"| At | Script |\n|---|---|\n| 0:05 | Fry it. |\n| | Rest it. |\n",
		"S* 5000 -1 | Fry it.\nS* 5000 -1 | Rest it.\n"},
	    {"labelled words in the picture",
		"| Time | Video | Audio |\n|---|---|---|\n"
		"| 0:05 | A pan. SUPER: 40 g butter | Fry it. |\n"
		"| 0:10 | CAPTION: \"Rest\" and out | |\n| 0:15 | On screen: 2 leeks<br>A "
		"bowl | |\n",
		"P* 5000 10000 | A pan.\nO* 5000 10000 | 40 g butter\nS* 5000 10000 | Fry "
		"it.\n"
		"O* 10000 15000 | \"Rest\"\nP* 10000 15000 | and out\n"
		"O* 15000 -1 | 2 leeks\nP* 15000 -1 | A bowl\n"},
	    {"a column for the screen and one for the speaker",
		"| Time | Who | Words | Supers |\n|---|---|---|---|\n"
		"| 0:05 | Rosa | Fry it. | 40 g butter |\n",
		"S* 5000 -1 Rosa| Fry it.\nO* 5000 -1 | 40 g butter\n"},
	    {"two speakers in a cell",
		"| Time | Sound |\n|---|---|\n| 0:05 | ROSA: Fry it.<br>DEV: Now?<br>Right "
		"now? |\n",
		"S* 5000 -1 ROSA| Fry it.\nS* 5000 -1 DEV| Now? Right now?\n"},
	    {"a bar in a cell, missing cells",
		"| Time | Picture | Sound |\n|---|---|---|\n| 0:05 | A \\| B |\n| 0:06 |\n",
		"P* 5000 6000 | A | B\n"},
	    {"a time and nothing that is known",
		"| Time | What happens |\n|---|---|\n| 0:05 | Fry it. |\n\nRest it.\n",
		"S* 5000 -1 | Fry it.\nS* 5000 -1 | Rest it.\n"},
	};
	static const struct note_row notes[] = {
	    {"| Time | Sound |\n|---|---|\n| 0:05 | Fry. |\n| soon | Rest. |\n", "soon",
		"not a time"},
	};

	(void)state;
	check_rows("markdown", rows, COUNT(rows));
	check_notes(notes, COUNT(notes));
}

int
main(void)
{
	static const struct CMUnitTest tests[] = {
	    cmocka_unit_test(headings_are_title_and_headings),
	    cmocka_unit_test(lists_are_ingredients_or_steps_by_their_heading),
	    cmocka_unit_test(marks_come_off),
	    cmocka_unit_test(paragraphs_have_stamps_as_in_plain_text),
	    cmocka_unit_test(table_columns_are_time_picture_and_sound),
	};

	return cmocka_run_group_tests_name("read_markdown", tests, NULL, NULL);
}
