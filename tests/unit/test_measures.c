/* SPDX-License-Identifier: ISC */
/*
 * What measures the program takes from a few words: tests/measures/ *.tsv, one
 * case a line, the words and what they are worth, through the whole reading.
 *
 *     two and a half cups of stock <TAB> amount 5/2 cup
 *
 * Several measures are parted by "; ", none is "-". A '|' among the words is
 * the border of a caption. "@ uk" sets the region of the cases below it, "@ us"
 * where none is set. After "= " the words of the measures are wanted, not their
 * values. '#' begins a comment.
 */
#include "../support/amounts.h"
#include "../support/hold.h"
#include "../support/source.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

struct reader {
	const struct grammar *g;
	struct arena arena; /* of one file */
	const char *path;
	uint32_t line;
	const char *region;
	size_t cases, failed;
};

/* The words as captions of a second each. */
static struct str
make_captions(struct reader *r, struct str words)
{
	struct buf b = buf_in(&r->arena);
	unsigned second = 0;

	buf_put_z(&b, "WEBVTT\n");
	while (words.p) {
		struct str cue = str_trim(str_next(&words, '|'));

		buf_fmt(&b, "\n00:00:%02u.000 --> 00:00:%02u.000\n%.*s\n", second,
		    second + 1, (int)cue.n, cue.p);
		second++;
	}
	return buf_str(&b);
}

static void
put_flags(struct buf *b, const struct measure *m)
{
	if (m->kind == MEASURE_TEMPERATURE && !m->unit_stated)
		buf_put_z(b, " unstated");
	if (m->approximate)
		buf_put_z(b, " about");
	if (m->bound != BOUND_NONE)
		buf_put_z(b, m->bound == BOUND_MIN ? " min" : " max");
	if (m->corrected)
		buf_put_z(b, " corrected");
	if (m->reversed)
		buf_put_z(b, " reversed");
	if (m->converted)
		buf_put_z(b, " converted");
}

static void
put_value(struct buf *b, const struct measure *m)
{
	static const char *const kind[] = {
	    "amount", "count", "temperature", "duration", "length"};

	buf_fmt(b, "%s ", kind[m->kind]);
	amounts_put(b, &m->value);
	put_flags(b, m);
}

static void
put_words(struct buf *b, const struct measure *m)
{
	buf_put(b, m->text);
}

static struct str
read_measures(
    struct reader *r, struct str words, void (*put)(struct buf *b, const struct measure *m))
{
	struct tamis_options o = {.region = r->region};
	struct buf b = buf_in(&r->arena);
	struct err e = {0};
	struct draft *d = tamis_draft(r->g, &o, make_captions(r, words), "case.vtt", &e);

	if (!d)
		fail_msg("%s:%u: %s", r->path, r->line, e.text);
	for (size_t i = 0; i < d->measures; i++) {
		buf_put_z(&b, i ? "; " : "");
		put(&b, &d->measure[i]);
	}
	tamis_draft_free(d);
	return b.n ? buf_str(&b) : STR("-");
}

static void
check_case(struct reader *r, struct str words, struct str want)
{
	bool texts = str_starts(words, STR("= "));
	struct str got = texts ? read_measures(r, str_cut(words, 2, words.n), put_words)
			       : read_measures(r, words, put_value);

	r->cases++;
	if (str_is(got, want))
		return;
	r->failed++;
	print_error("%s:%u: %.*s: %.*s, not %.*s\n", r->path, r->line, (int)words.n,
	    words.p, (int)got.n, got.p, (int)want.n, want.p);
}

static void
read_line(struct reader *r, struct str line)
{
	size_t tab = str_find_char(line, '\t');

	r->line++;
	if (line.n == 0 || line.p[0] == '#')
		return;
	if (line.p[0] == '@') {
		r->region = arena_str(&r->arena, str_trim(str_cut(line, 1, line.n))).p;
		return;
	}
	if (tab == line.n)
		fail_msg("%s:%u: no tab", r->path, r->line);
	check_case(r, str_cut(line, 0, tab), str_cut(line, tab + 1, line.n));
}

static void
every_case_is_read_right(void **state)
{
	struct reader r = {.g = *state};
	struct arena paths;
	struct paths p;

	arena_init(&paths);
	p = paths_find(&paths, "tests/measures/*.tsv");
	for (size_t i = 0; i < p.n; i++) {
		struct str text;
		struct err e = {0};

		arena_init(&r.arena);
		r.path = p.v[i].p;
		r.line = 0;
		r.region = "us";
		if (!source_read(&r.arena, r.path, &text, &e))
			fail_msg("%s: %s", r.path, e.text);
		while (text.n)
			read_line(&r, str_next(&text, '\n'));
		arena_release(&r.arena);
	}
	arena_release(&paths);
	print_message("%zu cases\n", r.cases);
	assert_true(r.cases >= 400);
	assert_int_equal(r.failed, 0);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(every_case_is_read_right),
	};

	return cmocka_run_group_tests_name("measures", tests, hold_grammar, drop_grammar);
}
