/* SPDX-License-Identifier: ISC */
/*
 * Cue text and its piece table, kept in step byte by byte.
 */
#include "read/build.h"

#include "read/line.h"

#include <stdarg.h>
#include <stdio.h>

enum { NOTE_CAP = 1000 };

void
build_init(struct build *b, struct arena *a, struct decoded words)
{
	*b = (struct build){.arena = a, .decoded = words, .text = words.text};
	b->words = buf_in(a);
}

static uint32_t
source_at(const struct build *b, size_t at)
{
	return b->decoded.at ? b->decoded.at[at] : b->decoded.base + (uint32_t)at;
}

/* Adds n text bytes to the table; runs that go on one to one become one. */
static void
add_piece(struct build *b, size_t n, uint32_t source, size_t source_n)
{
	struct piece *last = b->piece.n ? &b->piece.v[b->piece.n - 1] : NULL;
	uint32_t at = last ? last->text + last->text_n : 0;

	if (last && n == source_n && last->text_n == last->source_n &&
	    last->source + last->source_n == source) {
		last->text_n += (uint32_t)n;
		last->source_n += (uint32_t)n;
		return;
	}
	vec_push(b->arena, &b->piece,
	    (struct piece){at, (uint32_t)n, source, (uint32_t)source_n});
}

static void
add_gap(struct build *b)
{
	if (b->gap.end > b->gap.beg) {
		buf_put_char(&b->words, ' ');
		add_piece(b, 1, b->gap.beg, b->gap.end - b->gap.beg);
	}
	b->gap = (struct span){0, 0};
}

void
build_gap(struct build *b, struct span slice)
{
	uint32_t beg = source_at(b, slice.beg), end = source_at(b, slice.end);

	if (!b->is_open || b->words.n == b->open.text.beg)
		return;
	if (b->gap.end > b->gap.beg)
		b->gap.end = end > b->gap.end ? end : b->gap.end;
	else
		b->gap = (struct span){beg, end};
}

/* [beg, end) holds no white space. */
static void
add_run(struct build *b, size_t beg, size_t end)
{
	const uint32_t *at = b->decoded.at;
	size_t next;

	add_gap(b);
	buf_put(&b->words, str_cut(b->text, beg, end));
	if (!at) {
		add_piece(b, end - beg, source_at(b, beg), end - beg);
		return;
	}
	for (size_t i = beg; i < end; i = next) {
		next = i + 1;
		while (next < end && at[next] == at[i])
			next++;
		add_piece(b, next - i, at[i], at[next] - at[i]);
	}
}

void
build_begin(struct build *b, struct cue cue)
{
	build_end(b);
	b->open = cue;
	b->open.text.beg = (uint32_t)b->words.n;
	b->is_open = !b->over_cap;
}

void
build_put(struct build *b, struct span words)
{
	size_t end, n;

	for (size_t i = words.beg; b->is_open && i < words.end; i = end) {
		end = blank_skip(b->text, i, words.end);
		if (end > i) {
			build_gap(b, (struct span){(uint32_t)i, (uint32_t)end});
			continue;
		}
		for (n = 0; end < words.end && n == 0; end += n == 0)
			n = blank_length(b->text, end);
		add_run(b, i, end);
	}
}

void
build_put_as(struct build *b, struct span slice, struct str as)
{
	uint32_t beg = source_at(b, slice.beg);

	if (!b->is_open || as.n == 0)
		return;
	if (blank_skip(as, 0, as.n) == as.n) {
		build_gap(b, slice);
		return;
	}
	add_gap(b);
	buf_put(&b->words, as);
	add_piece(b, as.n, beg, source_at(b, slice.end) - beg);
}

bool
build_end(struct build *b)
{
	const struct piece *last;

	if (!b->is_open)
		return false;
	b->is_open = false;
	b->gap = (struct span){0, 0};
	if (b->words.n == b->open.text.beg)
		return false;
	if (b->cue.n == CUE_CAP) {
		b->over_cap = true;
		return false;
	}
	b->open.text.end = (uint32_t)b->words.n;
	vec_push(b->arena, &b->cue, b->open);
	last = &b->piece.v[b->piece.n - 1];
	buf_put_char(&b->words, '\n');
	add_piece(b, 1, last->source + last->source_n, 0);
	return true;
}

void
build_note_source(struct build *b, struct span source, const char *text)
{
	struct diagnostic d = {.span = source};

	if (b->diagnostic.n >= NOTE_CAP)
		return;
	if (b->diagnostic.n == NOTE_CAP - 1)
		text = "more of the file is odd; only this much is listed";
	d.text = arena_str(b->arena, str_of(text));
	vec_push(b->arena, &b->diagnostic, d);
}

void
build_note(struct build *b, struct span slice, const char *fmt, ...)
{
	struct span source = {source_at(b, slice.beg), source_at(b, slice.end)};
	char text[256];
	va_list ap;

	va_start(ap, fmt);
	vsnprintf(text, sizeof text, fmt, ap);
	va_end(ap);
	build_note_source(b, source, text);
}

static void
take_stock(struct script *s)
{
	s->length_ms = -1;
	for (size_t i = 0; i < s->cues; i++) {
		const struct cue *c = &s->cue[i];
		int64_t end = c->end_ms > c->beg_ms ? c->end_ms : c->beg_ms;

		if (end > s->length_ms)
			s->length_ms = end;
		if (c->kind == CUE_TITLE && s->title.n == 0)
			s->title = str_cut(s->text, c->text.beg, c->text.end);
	}
	s->stamped = s->length_ms >= 0;
}

void
build_finish(struct build *b, struct script *s)
{
	build_end(b);
	s->text = buf_str(&b->words);
	s->cue = b->cue.v;
	s->cues = b->cue.n;
	s->piece = b->piece.v;
	s->pieces = b->piece.n;
	s->diagnostic = b->diagnostic.v;
	s->diagnostics = b->diagnostic.n;
	take_stock(s);
}
