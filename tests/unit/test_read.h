/* SPDX-License-Identifier: ISC */
/*
 * What the tests of src/read share: a script shown as text, a line a cue, and
 * the checks that hold for every script.
 *
 *   S* 21000 47000 HOST| Add the butter.
 *
 * The kind (Speech, Title, Heading, List, Picture, On screen), * where a
 * paragraph begins, start and end in ms (-1 unknown), speaker, words.
 */
#ifndef TAMIS_TEST_READ_H
#define TAMIS_TEST_READ_H

#include "../support/expect.h"
#include "read/read.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

struct read_row {
	const char *behaviour;
	const char *source;
	const char *want;
};

/* The cues of a script, a line each; NUL-ended. */
static inline const char *
show_cues(struct arena *a, const struct script *s)
{
	static const char kinds[] = "STHLPO";
	struct buf out = buf_in(a);

	for (size_t i = 0; i < s->cues; i++) {
		const struct cue *c = &s->cue[i];

		buf_fmt(&out, "%c%s %lld %lld ", kinds[c->kind], c->paragraph ? "*" : "",
		    (long long)c->beg_ms, (long long)c->end_ms);
		buf_put(&out, c->speaker);
		buf_put_z(&out, "| ");
		buf_put(&out, str_cut(s->text, c->text.beg, c->text.end));
		buf_put_char(&out, '\n');
	}
	buf_put_char(&out, '\0');
	return out.v;
}

/* The pieces cover the text without gaps and lead into the source in order;
 * the cues cover it too, but for the line feed behind each. */
static inline void
check_script(const struct script *s)
{
	uint32_t text = 0, source = 0, cue = 0;

	for (size_t i = 0; i < s->pieces; i++) {
		const struct piece *p = &s->piece[i];

		assert_int_equal(p->text, text);
		assert_true(p->text_n > 0);
		assert_true(p->source >= source);
		assert_true((size_t)p->source + p->source_n <= s->source.n);
		text += p->text_n;
		source = p->source;
	}
	assert_int_equal(text, s->text.n);
	for (size_t i = 0; i < s->cues; i++) {
		const struct cue *c = &s->cue[i];

		assert_int_equal(c->text.beg, cue);
		assert_true(c->text.end > c->text.beg);
		assert_int_equal(s->text.p[c->text.end], '\n');
		assert_true(c->end_ms < 0 || c->end_ms >= c->beg_ms);
		cue = c->text.end + 1;
	}
	assert_int_equal(cue, s->text.n);
}

/* Reads n bytes, which must not be over a cap, and checks what always holds. */
static inline struct script *
read_bytes(struct arena *a, const char *p, size_t n)
{
	struct err e = {0};
	struct script *s = script_read(a, (struct str){p, n}, "folder/soup.txt", 0, &e);

	if (!s)
		fail_msg("%s", e.text);
	check_script(s);
	return s;
}

static inline void
check_rows(const char *format, const struct read_row *row, size_t rows)
{
	struct arena a;
	size_t wrong = 0;

	arena_init(&a);
	for (size_t i = 0; i < rows; i++) {
		const struct script *s =
		    read_bytes(&a, row[i].source, strlen(row[i].source));
		const char *got = show_cues(&a, s);

		if (strcmp(s->format, format) == 0 && strcmp(got, row[i].want) == 0)
			continue;
		print_error("%s (%s):\n%swanted (%s):\n%s", row[i].behaviour, s->format,
		    got, format, row[i].want);
		wrong++;
	}
	arena_release(&a);
	assert_int_equal(wrong, 0);
}

/* Source whose reading must note something, and in which words. */
struct note_row {
	const char *source;
	const char *place; /* the source bytes that the note points at */
	const char *note;  /* part of what it says */
};

static inline void
check_notes(const struct note_row *row, size_t rows)
{
	struct arena a;

	arena_init(&a);
	for (size_t i = 0; i < rows; i++) {
		const struct script *s =
		    read_bytes(&a, row[i].source, strlen(row[i].source));
		struct diagnostic d;

		assert_true(s->diagnostics > 0);
		d = s->diagnostic[0];
		if (str_find(d.text, str_of(row[i].note)) == d.text.n)
			fail_msg("row %zu: %.*s", i, (int)d.text.n, d.text.p);
		assert_int_equal(d.span.end - d.span.beg, strlen(row[i].place));
		assert_memory_equal(
		    s->source.p + d.span.beg, row[i].place, d.span.end - d.span.beg);
	}
	arena_release(&a);
}

#endif
