/* SPDX-License-Identifier: ISC */
/*
 * tamis keep, find and forget from outside: the thirty questions of
 * tests/search/questions.tsv over the corpus, and what people type that is no
 * question.
 */
#include <jansson.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <unistd.h>

#include <cmocka.h>

#include "../support/expect.h"
#include "../support/program.h"
#include "../support/source.h"
#include "base/buf.h"

enum { ASKED = 30, RIGHT_ENOUGH = 27, FIRST = 3 };

struct search {
	struct arena arena;
	const char *archive;
};

static struct ran
tamis(struct search *s, const char *command, const char *arguments)
{
	return program_run(&s->arena, ".", "",
	    arena_fmt(
		&s->arena, "%s --archive '%s' %s 2>&1", command, s->archive, arguments)
		.p);
}

/* ---- the questions ------------------------------------------------------ */

struct question {
	struct str asked, arguments, episode, dish;
	double from_s, to_s;
};

/* A line of the table; false for what is none. */
static bool
read_question(struct str line, struct question *q)
{
	uint64_t from = 0, to = 0;

	if (line.n == 0 || line.p[0] == '#' || str_starts(line, STR("question\t")))
		return false;
	q->asked = str_next(&line, '\t');
	q->arguments = str_next(&line, '\t');
	q->episode = str_next(&line, '\t');
	q->dish = str_next(&line, '\t');
	str_to_u64(str_next(&line, '\t'), &from);
	str_to_u64(line, &to);
	q->from_s = (double)from;
	q->to_s = (double)to;
	return to > from;
}

static struct str
member(const json_t *hit, const char *key)
{
	return str_of(json_string_value(json_object_get(hit, key)));
}

/* By its name, or where it is cooked. */
static bool
is_right(const struct question *q, const json_t *hit)
{
	struct str dish = member(hit, "dish");
	json_t *at = json_object_get(hit, "at_s");

	if (!str_is(member(hit, "episode"), q->episode))
		return false;
	return str_find(dish, q->dish) < dish.n ||
	       (json_is_number(at) && json_number_value(at) >= q->from_s &&
		   json_number_value(at) < q->to_s);
}

static bool
is_answered(struct search *s, const struct question *q)
{
	struct ran ran = program_run(&s->arena, ".", "",
	    arena_fmt(&s->arena,
		"find --archive '%s' --format json --limit %d %.*s 2>/dev/null", s->archive,
		FIRST, (int)q->arguments.n, q->arguments.p)
		.p);
	json_t *answer = json_loadb(ran.out.p, ran.out.n, 0, NULL), *hit;
	bool right = false;
	size_t i;

	json_array_foreach(json_object_get(answer, "hits"), i, hit) right =
	    right || is_right(q, hit);
	json_decref(answer);
	return right;
}

static void
questions_are_answered(void **state)
{
	struct search *s = *state;
	struct str rest, line;
	struct err e = {0};
	struct question q;
	int asked = 0, right = 0;

	assert_true(source_read(&s->arena, "tests/search/questions.tsv", &rest, &e));
	while (rest.p) {
		line = str_next(&rest, '\n');
		if (!read_question(line, &q))
			continue;
		asked++;
		if (is_answered(s, &q))
			right++;
		else
			print_message("not in the first %d: %.*s (%.*s)\n", FIRST,
			    (int)q.asked.n, q.asked.p, (int)q.arguments.n, q.arguments.p);
	}
	print_message("%d of %d questions answered\n", right, asked);
	assert_int_equal(asked, ASKED);
	assert_true(right >= RIGHT_ENOUGH);
}

/* ---- what is typed ------------------------------------------------------ */

static void
arguments_have_their_status(void **state)
{
	static const struct {
		const char *command, *arguments;
		int status;
		const char *says;
	} rows[] = {
	    {"find", "cornbread", 0, "garage-chili.vtt"},
	    {"find", "cornbread", 0, "[cornbread]"},
	    {"find", "corn*", 0, "[cornbread]"},
	    {"find", "cornbraed", 1, "near it: cornbread"},
	    {"find", "--format json cornbread", 0, "\"hits\":["},
	    {"find", "--temperature 350F", 0, "at "},
	    {"find", "--temperature 350F --kind oven banana", 0, "banana bread"},
	    {"find", "--temperature 177C", 0, "at "},
	    {"find", "--temperature hot", 2, "is no figure"},
	    {"find", "--kind stove x", 2, "no kind stove"},
	    {"find", "--time 20min", 0, "at "},
	    {"find", "--free-of peanuts tacos", 0, "proves nothing"},
	    {"find", "--free-of sand", 2, "no allergen sand"},
	    {"find", "--finding missing-yeild", 2, "did you mean missing-yield?"},
	    {"find", "--since yesterday", 2, "is no date"},
	    {"find", "--limit 0 x", 2, "a limit from 1"},
	    {"find", "--limit 1 salt", 0, "there are more"},
	    {"find", "--format xml x", 2, "no format xml"},
	    {"find", "", 2, "nothing was asked"},
	    {"find", "--ingredint x", 2, "did you mean --ingredient?"},
	    {"forget", "", 2, "no episode is named"},
	    {"forget", "garage-chilli.vtt", 2, "did you mean garage-chili.vtt?"},
	    {"archive", "check", 0, "the file is sound"},
	    {"archive", "chek", 2, "did you mean check?"},
	    {"archive", "export", 0, "{\"episode\":"},
	    {"archive", "report", 0, "<svg viewBox"},
	    {"archive", "report", 0, "garage-chili.vtt"},
	    {"archive", "", 2, "check, renew"},
	    {"keep", "corpus/*.vtt", 0, "kept 0"},
	    {"keep", "corpus/garage-chili.vtt corpus/garage-chili.vtt", 2, "named twice"},
	    {"keep", "-", 2, "which have names"},
	    {"keep", "--date 14.3.2026 corpus/garage-chili.vtt", 2, "is no date"},
	    {"keep", "no-such-file.txt", 2, "1 failed"},
	    {"keep", "", 2, "no episode is named"},
	    {"keep", "--video-url https://v.example/x corpus/*.vtt", 2, "put {name} in it"},
	};
	struct search *s = *state;

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct ran ran = tamis(s, rows[i].command, rows[i].arguments);

		if (ran.status != rows[i].status || !has(ran.out, rows[i].says))
			fail_msg("tamis %s %s: %d\n%s", rows[i].command, rows[i].arguments,
			    ran.status, ran.out.p);
	}
}

/* In quotes of the shell. */
static struct str
quoted(struct search *s, const char *text)
{
	struct buf b = buf_in(&s->arena);

	buf_put_char(&b, '\'');
	for (; *text; text++)
		buf_put_z(&b, *text == '\'' ? "'\\''" : (char[]){*text, '\0'});
	buf_put_char(&b, '\'');
	return arena_str(&s->arena, buf_str(&b));
}

static void
nothing_typed_reaches_the_database(void **state)
{
	static const char *const typed[] = {"\"", "\"\"", "'", "''", "\"unbalanced", "(",
	    ")", "()", "*", "**", "a*", "^salt", "AND", "OR", "NOT", "NEAR",
	    "NEAR(salt butter, 2)", "salt AND", "NOT salt", "salt OR (", "name:salt",
	    "name : salt", "{name}: salt", "salt + butter", "-salt", "salt;",
	    "'); DROP TABLE episode; --", "%", "_", "\\", "?1", ":x", "@x", "$x", "--",
	    "/*", "\xf0\x9f\x8d\x8b", "\xf0\x9f\x8d\x8b salt",
	    "\xe2\x80\x9csalt\xe2\x80\x9d", "jalape\xc3\xb1o", "\xff\xfe", "\xc3",
	    "\x01\x02", "salt\nbutter", "\t", " ", "", "NULL", "rowid", "entry_text", "0",
	    "-1", "1e999"};
	static const char *const where[] = {"--", "--ingredient", "--without", "--dish",
	    "--equipment", "--action", "--episode", "--free-of", "--temperature", "--time",
	    "--since", "--ingredient=salt:"};
	struct search *s = *state;

	for (size_t i = 0; i < COUNT(typed); i++)
		for (size_t k = 0; k < COUNT(where); k++) {
			const char *gap = str_ends(str_of(where[k]), STR(":")) ? "" : " ";
			struct str line = arena_fmt(
			    &s->arena, "%s%s%s", where[k], gap, quoted(s, typed[i]).p);
			struct ran ran = tamis(s, "find", line.p);

			if (ran.status < 0 || ran.status > 2 || has(ran.out, "syntax") ||
			    has(ran.out, "fts5") || has(ran.out, "SQL") ||
			    has(ran.out, "no such") || has(ran.out, "malformed"))
				fail_msg("find %s: %d\n%s", line.p, ran.status, ran.out.p);
		}
}

static void
many_words_are_no_harm(void **state)
{
	struct search *s = *state;
	struct buf words = buf_in(&s->arena);
	struct ran ran;

	for (int i = 0; i < 33; i++)
		buf_put_z(&words, "salt ");
	ran = tamis(s, "find", arena_str(&s->arena, buf_str(&words)).p);
	assert_int_equal(ran.status, 2);
	assert_true(has(ran.out, "at most 32"));
	words.n = 0;
	for (int i = 0; i < 20000; i++)
		buf_put_z(&words, "salty");
	ran = tamis(s, "find", arena_str(&s->arena, buf_str(&words)).p);
	assert_int_equal(ran.status, 1);
}

/* ---- running ------------------------------------------------------------ */

static int
set_up(void **state)
{
	struct search *s = test_calloc(1, sizeof *s);
	struct ran ran;

	arena_init(&s->arena);
	s->archive = arena_fmt(&s->arena, "%s/test_archive_search.%ld.db",
	    build_folder(&s->arena).p, (long)getpid())
			 .p;
	unlink(s->archive);
	ran = tamis(s, "keep",
	    "corpus/*.vtt corpus/*.srt corpus/*.txt corpus/*.md corpus/unseen/*.vtt "
	    "corpus/unseen/*.srt corpus/unseen/*.txt corpus/unseen/*.md");
	*state = s;
	return ran.status;
}

static int
tear_down(void **state)
{
	struct search *s = *state;

	unlink(s->archive);
	arena_release(&s->arena);
	test_free(s);
	return 0;
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(questions_are_answered),
	    cmocka_unit_test(arguments_have_their_status),
	    cmocka_unit_test(nothing_typed_reaches_the_database),
	    cmocka_unit_test(many_words_are_no_harm),
	};

	return cmocka_run_group_tests(tests, set_up, tear_down);
}
