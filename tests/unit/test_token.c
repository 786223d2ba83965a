/* SPDX-License-Identifier: ISC */
/*
 * From the text of cues to tokens, with a few words of its own: where words
 * and numbers are cut, what marks become, and which words are joined.
 */
#include "../support/expect.h"
#include "../support/small.h"
#include "scan/token.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

enum { CUES = 8 };

static const char words[] =
    "@ UNIT ABBREVIATION\ntbsp\noz\n"
    "@ NOEND\nof\nthe\n"
    "@ JOINS\nthe\na\n"
    "@ FOOD noun\nolive oil\nextra virgin olive oil\nself-raising flour\nflour\n"
    "cr\u00E8me fra\u00EEche\nshepherd's pie\nhalf and half\n"
    "@ ADV\nin half : unless=UNIT|ART\n@ ART\na\n@ UNIT\ncup\n";

struct tokens_row {
	const char *text, *want;
};

struct reading_room {
	struct arena arena;
	struct grammar *grammar;
};

/* "one\ntwo": two cues; "P:" begins a paragraph, "H:" a heading, "L:" a line of
 * a list, "V:" a picture that is not said. */
static void
make_script(struct arena *a, struct script *s, const char *text)
{
	static const char letters[] = "SPHLV";
	static const enum cue_kind kinds[] = {
	    CUE_SPEECH, CUE_SPEECH, CUE_HEADING, CUE_LIST, CUE_PICTURE};
	struct str rest = str_of(text);
	struct buf b = buf_in(a);

	*s = (struct script){.cue = arena_array(a, CUES, struct cue)};
	while (rest.p) {
		struct str line = str_next(&rest, '\n');
		struct cue *q = &s->cue[s->cues++];
		const char *at =
		    line.n > 1 && line.p[1] == ':' ? strchr(letters, line.p[0]) : NULL;

		q->kind = at ? kinds[at - letters] : CUE_SPEECH;
		q->paragraph = at && *at == 'P';
		q->text.beg = (uint32_t)b.n;
		buf_put(&b, at ? str_cut(line, 2, line.n) : line);
		q->text.end = (uint32_t)b.n;
		buf_put_char(&b, '\n');
	}
	s->text = buf_str(&b);
}

static struct tokens
lex(struct reading_room *r, const char *text)
{
	struct script *s = arena_new(&r->arena, struct script);
	struct tokens t;

	make_script(&r->arena, s, text);
	tokens_lex(&t, r->grammar, s, &r->arena);
	return t;
}

/* "two|cups"; numbers as "=3/2". */
static struct str
describe(struct arena *a, const struct tokens *t, const struct grammar *g)
{
	struct buf b = buf_in(a);

	for (size_t i = 0; i < t->token.n; i++) {
		const struct token *k = &t->token.v[i];

		if (i)
			buf_put_char(&b, '|');
		if (k->entry == g->digits || str_is_z(k->norm, "<vulgar>")) {
			buf_fmt(&b, "=%lld", (long long)k->number.num);
			if (k->number.den != 1)
				buf_fmt(&b, "/%lld", (long long)k->number.den);
		} else {
			buf_put(&b, k->norm);
		}
	}
	return buf_str(&b);
}

static void
check_rows(struct reading_room *r, const struct tokens_row *row, size_t rows)
{
	size_t failed = 0;

	for (size_t i = 0; i < rows; i++) {
		struct tokens t = lex(r, row[i].text);
		struct str got = describe(&r->arena, &t, r->grammar);

		if (str_is_z(got, row[i].want))
			continue;
		print_error("%s: %.*s, not %s\n", row[i].text, (int)got.n,
		    got.n ? got.p : "", row[i].want);
		failed++;
	}
	assert_int_equal(failed, 0);
}

static void
numbers(void **state)
{
	static const struct tokens_row rows[] = {
	    {"350", "=350"},
	    {"2 cups", "=2|cups"},
	    {"2cups", "=2|cups"},
	    {"1.5 kg", "=3/2|kg"},
	    {".5 kg", "=1/2|kg"},
	    {"1,5 kg", "=3/2|kg"},
	    {"1,000 g", "=1000|g"},
	    {"1, 5", "=1|,|=5"},
	    {"2, 3", "=2|,|=3"},
	    {"10.", "=10|."},
	    {"1/2", "=1|/|=2"},
	    {"1 1/2", "=1|=1|/|=2"},
	    {"2.5.1", "=5/2|.|=1"},
	    {"0.250", "=1/4"},
	    {"1\u00BD cups", "=1|=1/2|cups"},
	    {"\u00BE", "=3/4"},
	    {"\u2153\u2158\u215E", "=1/3|=4/5|=7/8"},
	    {"1\u20442", "=1|/|=2"},
	    {"9x13", "=9|x|=13"},
	    {"9\u00D713", "=9|x|=13"},
	    {"99999999999999999999999", "99999999999999999999999"},
	};

	check_rows(*state, rows, COUNT(rows));
}

static void
hyphens(void **state)
{
	static const struct tokens_row rows[] = {
	    {"twenty-five", "twenty|five"},
	    {"10-12", "=10|-|=12"},
	    {"10 - 12", "=10|-|=12"},
	    {"10\u201312", "=10|-|=12"},
	    {"\u00BD-1 cup", "=1/2|-|=1|cup"},
	    {"15-ounce", "=15|ounce"},
	    {"mark-4", "mark|=4"},
	    {"-5", "-|=5"},
	    {"\u22125", "-|=5"},
	    {"well - no", "well|-|no"},
	    {"well \u2014 no", "well|-|no"},
	    {"saut\u00E9-pan", "saute|pan"},
	    {"end-", "end|-"},
	};

	check_rows(*state, rows, COUNT(rows));
}

static void
clitics(void **state)
{
	static const struct tokens_row rows[] = {
	    {"we're", "we|'re"},
	    {"we\u2019re", "we|'re"},
	    {"WE'RE", "we|'re"},
	    {"don't", "do|n't"},
	    {"n't", "n't"},
	    {"we 're", "we|'re"},
	    {"that 's it", "that|'s|it"},
	    {"get 'em", "get|'em"},
	    {"cook's", "cook|'s"},
	    {"cooks' knives", "cooks|knives"},
	    {"'cup'", "cup"},
	    {"'tis", "tis"},
	};

	check_rows(*state, rows, COUNT(rows));
}

static void
marks(void **state)
{
	static const struct tokens_row rows[] = {
	    {"salt, pepper; done.", "salt|,|pepper|;|done|."},
	    {"done! done? done.", "done|.|done|.|done|."},
	    {"so... stir", "so|...|stir"},
	    {"so\u2026 stir", "so|...|stir"},
	    {"salt & pepper", "salt|and|pepper"},
	    {"350\u00B0F", "=350|\u00B0|f"},
	    {"350\u00BAF", "=350|\u00B0|f"},
	    {"180\u2103", "=180|celsius"},
	    {"350 \u2109", "=350|fahrenheit"},
	    {"9\" tin", "=9|\"|tin"},
	    {"9\u201D tin", "=9|\"|tin"},
	    {"9\u2033 tin", "=9|\"|tin"},
	    {"2\u00BD\" tin", "=2|=1/2|\"|tin"},
	    {"\"nine\" tins", "nine|tins"},
	    {"9 \" tin", "=9|tin"},
	    {"\u00A33 \u20AC3 $3", "$|=3|$|=3|$|=3"},
	    {"5% (low)", "=5|%|(|low|)"},
	    {"\u00A0cup\u2003cup\u200B", "cup|cup"},
	    {"pur\u00E9e PUR\u00C9E pure\u0301e", "puree|puree|puree"},
	    {"\uFB01g \uFF11", "fig"},
	    {"\U0001F373 egg", "egg"},
	    {"", ""},
	};

	check_rows(*state, rows, COUNT(rows));
}

/* A full stop is none behind a short unit or a word that ends no sentence. */
static void
full_stops(void **state)
{
	static const struct tokens_row rows[] = {
	    {"2 tbsp. of", "=2|tbsp|of"},
	    {"2 tbsp. (30 ml)", "=2|tbsp|(|=30|ml|)"},
	    {"2 oz. 50 g", "=2|oz|=50|g"},
	    {"2 tbsp. Now", "=2|tbsp|.|now"},
	    {"2 tbsp.", "=2|tbsp|."},
	    {"2 tbsp .of", "=2|tbsp|.|of"},
	    {"2 cups. of", "=2|cups|.|of"},
	    {"a cup of. Flour", "a|cup|of|flour"},
	};

	check_rows(*state, rows, COUNT(rows));
}

static void
words_are_joined(void **state)
{
	static const struct tokens_row rows[] = {
	    {"olive oil", "olive oil"},
	    {"Olive  OIL", "olive oil"},
	    {"olive-oil", "olive oil"},
	    {"olive oils", "olive oils"},
	    {"extra virgin olive oil", "extra virgin olive oil"},
	    {"extra virgin oil", "extra|virgin|oil"},
	    {"olive, oil", "olive|,|oil"},
	    {"self raising flour", "self raising flour"},
	    {"self-raising flour", "self raising flour"},
	    {"creme fraiche", "creme fraiche"},
	    {"shepherd's pie", "shepherd 's pie"},
	    {"shepherds pie", "shepherds|pie"},
	    {"half and half", "half and half"},
	    {"half & half", "half and half"},
	    {"cut in half", "cut|in half"},
	    {"cut in half a cup", "cut|in|half|a|cup"},
	    {"cut in half cup", "cut|in|half|cup"},
	    {"olive\noil", "olive oil"},
	    {"olive\nP:oil", "olive|<break>|oil"},
	};

	check_rows(*state, rows, COUNT(rows));
}

static void
borders_of_cues(void **state)
{
	static const struct tokens_row rows[] = {
	    {"two\ncups", "two|cups"},
	    {"two\nP:cups", "two|<break>|cups"},
	    {"the\nP:cups", "the|cups"},
	    {"2\nP:cups", "=2|cups"},
	    {"soup\nH:stew\nsoup", "soup|<break>|stew|<break>|soup"},
	    {"L:leek\nL:kale", "leek|<break>|kale"},
	    {"leek\nV:kale\nsoup", "leek|<break>|soup"},
	    {"H:stew", "stew"},
	};

	check_rows(*state, rows, COUNT(rows));
}

static void
flags_are_set(void **state)
{
	struct tokens t = lex(*state, "Twenty-five\ncups, Max");
	static const uint8_t want[] = {
	    TOKEN_SPACE | TOKEN_CUE | TOKEN_CAPITAL,
	    TOKEN_HYPHEN,
	    TOKEN_SPACE | TOKEN_CUE,
	    0,
	    TOKEN_SPACE | TOKEN_CAPITAL,
	};

	assert_int_equal(t.token.n, COUNT(want));
	for (size_t i = 0; i < COUNT(want); i++)
		assert_int_equal(t.token.v[i].flags, want[i]);
	assert_int_equal(t.token.v[1].cue, 0);
	assert_int_equal(t.token.v[2].cue, 1);
}

static void
text_spans_hold_the_words(void **state)
{
	struct tokens t = lex(*state, "We\u2019re at 1\u00BD, Olive  oil");
	static const struct span want[] = {
	    {0, 2}, {2, 7}, {8, 10}, {11, 12}, {12, 14}, {14, 15}, {16, 26}};

	assert_int_equal(t.token.n, COUNT(want));
	for (size_t i = 0; i < COUNT(want); i++) {
		assert_int_equal(t.token.v[i].text.beg, want[i].beg);
		assert_int_equal(t.token.v[i].text.end, want[i].end);
	}
}

static int
set_up(void **state)
{
	static struct reading_room room;
	struct small files = {words, NULL, NULL};
	struct err e = {0};

	arena_init(&room.arena);
	room.grammar = small_open(&room.arena, &files, &e);
	if (!room.grammar)
		print_error("%s: %s\n", e.where, e.text);
	*state = &room;
	return room.grammar ? 0 : -1;
}

static int
tear_down(void **state)
{
	struct reading_room *r = *state;

	tamis_grammar_close(r->grammar);
	arena_release(&r->arena);
	return 0;
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(numbers),
	    cmocka_unit_test(hyphens),
	    cmocka_unit_test(clitics),
	    cmocka_unit_test(marks),
	    cmocka_unit_test(full_stops),
	    cmocka_unit_test(words_are_joined),
	    cmocka_unit_test(borders_of_cues),
	    cmocka_unit_test(flags_are_set),
	    cmocka_unit_test(text_spans_hold_the_words),
	};

	return cmocka_run_group_tests(tests, set_up, tear_down);
}
