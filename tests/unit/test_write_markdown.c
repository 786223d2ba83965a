/* SPDX-License-Identifier: ISC */
/*
 * The written recipe: the whole text of a draft, cautions, the line under
 * the title, and text that tries to be markup.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stdio.h>

#include <cmocka.h>

#include "../support/expect.h"
#include "../support/hold.h"
#include "grammar/grammar.h"
#include "sample.h"
#include "write/escape.h"
#include "write/text.h"

static const struct tamis_style plain = {0};
static const struct house house = {.style = &plain};

static struct str
styled(struct arena *a, const struct draft *d, const struct grammar *g,
    const struct tamis_style *style)
{
	struct buf out = buf_in(a);

	tamis_writer(0)->write(d, g, style, &out);
	return buf_str(&out);
}

static struct str
written(struct arena *a, const struct draft *d, const struct grammar *g)
{
	return styled(a, d, g, &(struct tamis_style){0});
}

static const char sample_text[] =
    "# Charred cabbage with caper mayonnaise\n"
    "\n"
    "Serves 4–6 · 50 minutes, 40 of them unattended · from 0:21\n"
    "\n"
    "## Ingredients\n"
    "\n"
    "- 1 pointed cabbage, quartered\n"
    "- 2 (400 g/14 oz) cans white beans, drained\n"
    "- 40 g butter (1½ oz), divided\n"
    "- 500 ml vegetable stock (2 cups)\n"
    "- 1 cup breadcrumbs (110 g), optional\n"
    "- salt, to taste\n"
    "\n"
    "### For the caper mayonnaise\n"
    "\n"
    "- 1 egg yolk\n"
    "- 1–2 tsp mustard, or ½ tsp wasabi\n"
    "- capers\n"
    "\n"
    "## Method\n"
    "\n"
    "1. Heat the oven to 200 °C (400 °F). (0:30)\n"
    "2. Fry the cabbage over medium heat for 8–10 minutes. (0:40)\n"
    "\n"
    "### Caper mayonnaise\n"
    "\n"
    "3. Whisk the yolk with the mustard. (1:00)\n"
    "\n"
    "### Charred cabbage with caper mayonnaise\n"
    "\n"
    "4. Chill overnight. (1:35)\n"
    "\n"
    "## Notes\n"
    "\n"
    "- It keeps for two days in the fridge.\n"
    "- 200 at 0:30 was said without a scale; it is read as Celsius.\n"
    "\n"
    "---\n"
    "\n"
    "# Untitled dish\n";

static void
test_sample(void **state)
{
	struct draft *d = sample_draft(*state);

	expect(written(*state, d, NULL), sample_text);
	d->dishes = 0;
	expect(written(*state, d, NULL), "No recipe was found in this episode.\n");
}

/* One caution per topic that an ingredient's group names, in table order. */
static void
test_headings(void **state)
{
	const struct draft *d = sample_draft(*state);
	struct tamis_style style = {.heading = 3};
	struct str text = styled(*state, d, NULL, &style);

	assert_true(str_starts(text, STR("### Charred cabbage")));
	assert_true(str_find(text, STR("\n\n#### Ingredients\n\n")) < text.n);
	assert_true(str_find(text, STR("\n\n##### For the caper")) < text.n);
}

static void
test_cautions(void **state)
{
	struct arena *a = *state;
	struct draft *d = sample_draft(a);
	struct grammar g = {.language = "en"};
	struct table table = {.name = Z("cautions")};
	struct err e = {0};
	struct str text;

	assert_true(table_load(&table, a,
	    STR("topic\ttext\nfish\tAbout fish.\negg\tAbout eggs.\n"), "cautions", &e));
	vec_push(a, &g.table, table);
	text = written(a, d, &g);
	assert_true(str_find(text, STR("as Celsius.\n- About eggs.\n\n---")) < text.n);
	assert_true(str_find(text, STR("About fish.")) == text.n);
	d->dish->part[1].ingredient[0].group = STR("");
	text = written(a, d, &g);
	assert_true(str_find(text, STR("About")) == text.n);
}

static void
test_time(void **state)
{
	static const struct {
		int64_t total_s, active_s, claimed_s;
		const char *want;
	} rows[] = {
	    {3000, 600, -1, "50 minutes, 40 of them unattended"},
	    {2100, 0, -1, "35 minutes, all of them unattended"},
	    {60, 0, -1, "1 minute, all of it unattended"},
	    {3600, 0, -1, "1 hour, all of it unattended"},
	    {4500, 900, 1800, "1 hour 15 minutes, 1 hour of it unattended"},
	    {1200, 1200, -1, "20 minutes"},
	    {1200, -1, -1, "20 minutes"},
	    {-1, -1, 1800, "said to take 30 minutes"},
	    {0, 0, 1800, "said to take 30 minutes"},
	    {-1, -1, -1, ""},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct dish d = {.total_ms = rows[i].total_s * 1000,
		    .active_ms = rows[i].active_s * 1000,
		    .claimed_ms = rows[i].claimed_s * 1000};

		b.n = 0;
		text_time(&b, &house, &d);
		expect(buf_str(&b), rows[i].want);
	}
}

static void
test_yield(void **state)
{
	static const struct {
		struct ratio min, max;
		struct str unit;
		const char *want;
	} rows[] = {
	    {{4, 1}, {4, 1}, Z("serving"), "Serves 4"},
	    {{4, 1}, {6, 1}, Z("serving"), "Serves 4–6"},
	    {{2, 1}, {2, 1}, Z("person"), "Serves 2"},
	    {{12, 1}, {12, 1}, Z("cookie"), "Makes 12 cookies"},
	    {{6, 1}, {6, 1}, Z("crab patty"), "Makes 6 crab patties"},
	    {{1, 1}, {1, 1}, Z("loaf"), "Makes 1 loaf"},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct dish d = {.yield = {true, true, rows[i].min, rows[i].max, NULL},
		    .yield_unit = rows[i].unit};

		b.n = 0;
		text_yield(&b, &house, &d);
		expect(buf_str(&b), rows[i].want);
	}
}

static void
test_title(void **state)
{
	static const struct {
		const char *name, *want;
	} rows[] = {
	    {"leek and barley soup", "Leek and barley soup"},
	    {" soda bread ", "Soda bread"},
	    {"éclairs", "Éclairs"},
	    {"ørsted cake", "Ørsted cake"},
	    {"÷ and ×", "÷ and ×"},
	    {"ßoup", "ßoup"},
	    {"Aunt Wilma's plait", "Aunt Wilma's plait"},
	    {"7 greens", "7 greens"},
	    {"é", "É"},
	    {"", ""},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		b.n = 0;
		text_title(&b, str_of(rows[i].name));
		expect(buf_str(&b), rows[i].want);
	}
}

static void
test_escape(void **state)
{
	static const struct {
		const char *text, *want;
	} rows[] = {
	    {"salt & pepper", "salt & pepper"},
	    {"&lt;b&gt; &#60;", "\\&lt;b\\&gt; \\&\\#60;"},
	    {"<script>", "\\<script\\>"},
	    {"*so* _very_ `hot`", "\\*so\\* \\_very\\_ \\`hot\\`"},
	    {"[here](javascript:x)", "\\[here\\](javascript:x)"},
	    {"![x](y)", "!\\[x\\](y)"},
	    {"# not a title #", "\\# not a title \\#"},
	    {"- not a list", "\\- not a list"},
	    {"+ not a list", "\\+ not a list"},
	    {"---", "\\---"},
	    {"===", "\\==="},
	    {"1. not a list", "1\\. not a list"},
	    {"12) not a list", "12\\) not a list"},
	    {"1.5 litres", "1.5 litres"},
	    {"3", "3"},
	    {"7.", "7\\."},
	    {"a|b", "a\\|b"},
	    {"~~gone~~ $x$", "\\~\\~gone\\~\\~ \\$x\\$"},
	    {"back\\slash", "back\\\\slash"},
	    {"two\n\nlines\tand \x01 more", "two lines and more"},
	    {"    indented", "indented"},
	    {"bad \xff byte", "bad \xef\xbf\xbd byte"},
	    {"½ crème", "½ crème"},
	    {"", ""},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		b.n = 0;
		escape_markdown(&b, str_of(rows[i].text));
		expect(buf_str(&b), rows[i].want);
	}
}

/* Every text of a script comes out escaped, on its own line. */
static void
test_hostile(void **state)
{
	struct arena *a = *state;
	struct draft *d = sample_draft(a);
	struct str evil = STR("<b>\n# x\n\xff"), line, rest;

	d->dish->name = d->dish->part[1].name = d->dish->note[0] = d->dish->yield_unit =
	    evil;
	d->dish->part->ingredient[0].item = d->dish->part->ingredient[0].note = evil;
	d->dish->part->ingredient[0].preparation = evil;
	d->dish->part[1].ingredient[1].alternative->item = evil;
	d->dish->part->step[0].text = evil;
	rest = written(a, d, NULL);
	while (rest.p) {
		size_t at;

		line = str_next(&rest, '\n');
		at = str_find(line, STR("<b>"));
		assert_true(at == line.n);
		at = str_find(line, STR("\\<b\\> \\# x"));
		assert_true(str_find_char(line, 'x') == line.n || at < line.n ||
			    str_find(line, STR("mayonnaise")) < line.n);
		assert_true(str_find_char(line, '\xff') == line.n);
	}
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_sample),
	    cmocka_unit_test(test_headings),
	    cmocka_unit_test(test_cautions),
	    cmocka_unit_test(test_time),
	    cmocka_unit_test(test_yield),
	    cmocka_unit_test(test_title),
	    cmocka_unit_test(test_escape),
	    cmocka_unit_test(test_hostile),
	};

	return cmocka_run_group_tests(tests, hold_arena, drop_arena);
}
