/* SPDX-License-Identifier: ISC */
/*
 * The chart as text: what each word became, and where the rules that failed on it
 * got stuck.
 */
#include "../support/hold.h"
#include "../support/small.h"
#include "scan/show.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

static const struct small english = {
    .lex = "@ NUMBER DIGIT\none : value=1\ntwo : value=2\nnine : value=9\n"
	   "@ UNIT\ncups\n@ FOOD noun\nolive oil\noil\nflour\n@ OF\nof\n@ COLD\ncold\n"
	   "@ STOP\n.\n",
    .gram =
	"pass number\n"
	"rule number.low -> NUM least=3 : value:<NUMBER>\n"
	"rule number.any -> LOW : value:<NUMBER>\n"
	"pass measure\n"
	"rule guard.of -> - : \"of\" <FOOD>\n"
	"rule measure.of -> AMT : value:<LOW|NUM> <UNIT> &(<OF>) <OF> !(<COLD>) <FOOD>\n"
	"rule measure.bare -> AMT : value:<LOW> <UNIT>? (\"cold\" | <FOOD -COLD>)\n"
	"rule food.plain -> THING : <FOOD>\n",
};

struct show_row {
	const char *said, *word, *want;
};

/* Script time of the line "N" is N seconds. */
static struct str
show(struct arena *a, const struct grammar *g, const char *said, const char *word,
    int64_t at_ms)
{
	struct sought spot = {at_ms, str_of(word)};
	struct str rest = str_of(said);
	struct cue cue[4] = {{0}};
	struct script s = {.text = str_of(said), .cue = cue};
	struct buf out = buf_in(a);
	struct chart c;

	while (rest.p) {
		struct str line = str_next(&rest, '\n');

		cue[s.cues].beg_ms = (int64_t)s.cues * 1000;
		cue[s.cues].text.beg = (uint32_t)(line.p - said);
		cue[s.cues++].text.end = (uint32_t)(line.p - said + (ptrdiff_t)line.n);
	}
	chart_make(&c, g, &s, a);
	return chart_show_spot(&out, &c, spot) ? buf_str(&out) : STR("nothing");
}

static struct grammar *
open_english(struct arena *a)
{
	struct err e = {0};
	struct grammar *g = small_open(a, &english, &e);

	if (!g)
		fail_msg("%s:%u: %s", e.where, e.line, e.text);
	return g;
}

static void
a_miss_says_where_the_rule_stuck(void **state)
{
	static const struct show_row rows[] = {
	    /* What the attribute refused, and what a rule above took first. */
	    {"two cups", "two", "- number.low -> NUM: fits two, but not least=3\n"},
	    {"nine cups", "nine",
		"- number.any -> LOW: fits nine, but number.low took it first\n"},
	    /* The place, what would have done there, and what stood there. */
	    {"two cups flour", "two",
		"- measure.of -> AMT: took two cups, then wanted &(<OF>), not flour\n"},
	    {"two cups of cold flour", "two",
		"- measure.of -> AMT: took two cups of, then wanted !(<COLD>), not cold\n"},
	    {"two cups of two", "two",
		"- measure.of -> AMT: took two cups of, then wanted <FOOD>, not two "
		"<LOW>\n"},
	    {"two of flour", "two",
		"- measure.bare -> AMT: took two, then wanted <UNIT> or \"cold\" or "
		"<FOOD -COLD>, not of\n"},
	    {"two cups", "two",
		"- measure.bare -> AMT: took two cups, then wanted \"cold\" or "
		"<FOOD -COLD>, at the end\n"},
	    /* Guards. */
	    {"of flour", "flour",
		"- food.plain -> THING: fits flour, but a rule that makes nothing passed "
		"over it first\n"},
	    {"of flour", "of", "- guard.of -> -: fits of flour, and passes over it\n"},
	    /* A word of an entry of several, in any case. */
	    {"of olive oil", "OLIVE", "food.plain -> THING: fits olive oil, but"},
	};
	struct grammar *g = open_english(*state);
	size_t failed = 0;

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct str got = show(*state, g, rows[i].said, rows[i].word, -1);

		if (str_find(got, str_of(rows[i].want)) < got.n)
			continue;
		print_error("%s: no \"%s\" in\n%.*s", rows[i].said, rows[i].want,
		    (int)got.n, got.p);
		failed++;
	}
	assert_int_equal(failed, 0);
	tamis_grammar_close(g);
}

static void
a_rule_that_took_the_word_is_no_miss(void **state)
{
	struct grammar *g = open_english(*state);
	struct str got = show(*state, g, "nine cups of flour", "nine", -1);

	assert_true(str_find(got, STR("number.low -> NUM, measure.of -> AMT")) < got.n);
	assert_int_equal(str_find(got, STR("- number.low")), got.n);
	assert_int_equal(str_find(got, STR("- measure.of")), got.n);
	tamis_grammar_close(g);
}

static void
a_time_alone_shows_its_line_and_what_took_more_than_a_word(void **state)
{
	struct grammar *g = open_english(*state);
	const char *said = "one flour\ntwo cups of cold\nnine";
	struct str got = show(*state, g, said, NULL, 1500);

	assert_int_equal(str_find(got, STR("flour")), got.n);
	assert_int_equal(str_find(got, STR("nine")), got.n);
	assert_true(str_find(got, STR("   0:01  two")) == 0);
	assert_true(str_find(got, STR("- measure.of -> AMT: took two cups of")) < got.n);
	assert_true(str_find(got, STR("- number.low -> NUM: fits two, but not")) < got.n);
	got = show(*state, g, "of cold", NULL, 0);
	assert_int_equal(str_find(got, STR(" - ")), got.n);
	assert_true(str_is_z(show(*state, g, said, "sugar", 1500), "nothing"));
	assert_true(str_is_z(show(*state, g, said, "flour", 1500), "nothing"));
	tamis_grammar_close(g);
}

/* Following a rule must leave the chart as it was. */
static void
the_table_is_the_same_after_misses_were_looked_for(void **state)
{
	struct grammar *g = open_english(*state);
	struct str said = STR("two cups of flour");
	struct cue cue = {.text = {0, (uint32_t)said.n}};
	struct script s = {.text = said, .cue = &cue, .cues = 1};
	struct sought all = {0, {NULL, 0}};
	struct buf before = buf_in(*state), misses = buf_in(*state), after = buf_in(*state);
	struct chart c;

	chart_make(&c, g, &s, *state);
	chart_show(&before, &c);
	assert_true(chart_show_spot(&misses, &c, all));
	chart_show(&after, &c);
	assert_true(str_is(buf_str(&before), buf_str(&after)));
	tamis_grammar_close(g);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(a_miss_says_where_the_rule_stuck),
	    cmocka_unit_test(a_rule_that_took_the_word_is_no_miss),
	    cmocka_unit_test(a_time_alone_shows_its_line_and_what_took_more_than_a_word),
	    cmocka_unit_test(the_table_is_the_same_after_misses_were_looked_for),
	};

	return cmocka_run_group_tests_name("show", tests, hold_arena, drop_arena);
}
