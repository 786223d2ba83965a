/* SPDX-License-Identifier: ISC */
/*
 * Which dishes and parts a script tells, and how many they serve. The scripts
 * and what they hold stand in tests/outline/: expected.tsv has a script's name
 * and its outline, "0:10 beef stew; 1:00 pie [crust, filling]" a line;
 * yields.tsv a sentence and what is then known of two dishes.
 */
#include "../support/amounts.h"
#include "../support/hold.h"
#include "../support/source.h"
#include "tamis.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#define FOLDER "tests/outline/"

static const char dishes_told[] =
    "0:00 Today it's tomato soup and oat rolls.\n"
    "0:10 The soup first. A kilo of tomatoes and 500 ml of stock. Simmer it.\n"
    "0:30 Now the rolls. 500 grams of flour, 300 ml of water. Bake them.\n"
    "0:50 ";

/* A line of a table, in columns. */
struct line {
	struct str column[4];
	size_t columns;
};

struct checker {
	const struct grammar *g;
	struct arena arena;
	size_t cases, failed;
};

static void
check(struct checker *k, struct str what, struct str got, struct str want)
{
	k->cases++;
	if (str_is(got, want))
		return;
	k->failed++;
	print_error("%.*s: %.*s, not %.*s\n", (int)what.n, what.p, (int)got.n, got.p,
	    (int)want.n, want.p);
}

static struct draft *
draft_of(struct checker *k, struct str source, const char *name)
{
	struct tamis_options o = {0};
	struct err e = {0};
	struct draft *d = tamis_draft(k->g, &o, source, name, &e);

	if (!d)
		fail_msg("%s: %s", name, e.text);
	return d;
}

static bool
next_line(struct str *text, struct line *out)
{
	while (text->n) {
		struct str line = str_next(text, '\n');

		if (line.n == 0 || line.p[0] == '#')
			continue;
		out->columns = 0;
		while (line.p && out->columns < 4)
			out->column[out->columns++] = str_next(&line, '\t');
		return true;
	}
	return false;
}

static struct str
read_table(struct checker *k, const char *path)
{
	struct str text;
	struct err e = {0};

	if (!source_read(&k->arena, path, &text, &e))
		fail_msg("%s: %s", path, e.text);
	return text;
}

static struct str
outline_of(struct checker *k, const struct draft *d)
{
	struct buf b = buf_in(&k->arena);

	for (size_t i = 0; i < d->dishes; i++) {
		const struct dish *x = &d->dish[i];
		int64_t s = x->beg_ms / 1000;

		buf_fmt(&b, "%s%d:%02d %.*s", i ? "; " : "", (int)(s / 60), (int)(s % 60),
		    (int)x->name.n, x->name.p);
		for (size_t p = 1; p < x->parts; p++)
			buf_fmt(&b, "%s%.*s%s", p == 1 ? " [" : ", ",
			    (int)x->part[p].name.n, x->part[p].name.p,
			    p + 1 == x->parts ? "]" : "");
	}
	return buf_str(&b);
}

static void
scripts_have_their_dishes(void **state)
{
	struct checker k = {.g = *state};
	struct str table, source;
	struct line line;

	arena_init(&k.arena);
	table = read_table(&k, FOLDER "expected.tsv");
	while (next_line(&table, &line)) {
		struct draft *d;
		const char *path = arena_fmt(
		    &k.arena, FOLDER "%.*s", (int)line.column[0].n, line.column[0].p)
				       .p;

		assert_int_equal(line.columns, 2);
		source = read_table(&k, path);
		d = draft_of(&k, source, file_name(str_of(path)));
		check(&k, line.column[0], outline_of(&k, d), line.column[1]);
		tamis_draft_free(d);
	}
	arena_release(&k.arena);
	print_message("%zu scripts\n", k.cases);
	assert_true(k.cases >= 80);
	assert_int_equal(k.failed, 0);
}

static struct str
yield_of(struct checker *k, const struct dish *d)
{
	struct buf b = buf_in(&k->arena);

	if (!d->yield.present)
		return STR("-");
	amounts_put_range(&b, d->yield.min, d->yield.max);
	buf_fmt(&b, " %.*s", (int)d->yield_unit.n, d->yield_unit.p);
	return buf_str(&b);
}

static struct str
claim_of(struct checker *k, const struct draft *d)
{
	for (size_t i = 0; i < d->dishes; i++)
		if (d->dish[i].claimed_ms >= 0)
			return arena_fmt(
			    &k->arena, "%d", (int)(d->dish[i].claimed_ms / 1000));
	return STR("-");
}

static void
sentences_have_their_yields(void **state)
{
	struct checker k = {.g = *state};
	struct str table;
	struct line line;

	arena_init(&k.arena);
	table = read_table(&k, FOLDER "yields.tsv");
	while (next_line(&table, &line)) {
		struct str words = line.column[0];
		struct str source =
		    arena_fmt(&k.arena, "%s%.*s\n", dishes_told, (int)words.n, words.p);
		struct draft *d = draft_of(&k, source, "case.txt");

		assert_int_equal(line.columns, 4);
		assert_int_equal(d->dishes, 2);
		check(&k, words, yield_of(&k, &d->dish[0]), line.column[1]);
		check(&k, words, yield_of(&k, &d->dish[1]), line.column[2]);
		check(&k, words, claim_of(&k, d), line.column[3]);
		tamis_draft_free(d);
	}
	arena_release(&k.arena);
	assert_true(k.cases >= 90);
	assert_int_equal(k.failed, 0);
}

/* Talk before and after the cooking, and to the subscribers, is of no dish. */
static void
goodbyes_are_outside(void **state)
{
	struct checker k = {.g = *state};
	struct draft *d = draft_of(&k,
	    STR("0:00 Hello, welcome back. Today it's tomato soup.\n"
		"0:10 A kilo of tomatoes and 500 ml of stock. Simmer it for ten minutes.\n"
		"0:40 It serves four. Thanks for watching, and see you next week.\n"
		"1:30 Bye.\n"),
	    "case.txt");

	assert_int_equal(d->dishes, 1);
	assert_true(d->dish[0].end_ms <= 90000);
	tamis_draft_free(d);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(scripts_have_their_dishes),
	    cmocka_unit_test(sentences_have_their_yields),
	    cmocka_unit_test(goodbyes_are_outside),
	};

	return cmocka_run_group_tests_name("outline", tests, hold_grammar, drop_grammar);
}
