/* SPDX-License-Identifier: ISC */
/*
 * The script as a column of set type: cues are set as paragraphs, and each
 * stretch of marked words is an element that names the things it speaks of.
 */
#include "page/script.h"

#include "base/fold.h"
#include "base/print.h"
#include "page/queries.h"
#include "write/escape.h"

/* Captions run on in one paragraph up to a sentence end past the first, and up
 * to any end of a caption past the second. */
enum { PARAGRAPH_BYTES = 480, PARAGRAPH_MOST = 800 };

struct setting {
	struct buf *out;
	struct ties *ties;
	size_t piece;               /* the one that the last byte stood in */
	const struct stretch *open; /* the element that is open; NULL plain text */
	uint32_t elements;
	size_t query; /* the next finding that has no mark yet */
	size_t noted; /* the first whose note is not put */
	size_t row;   /* bytes of text in the row */
	struct str speaker;
};

/* The source offset of a byte of script text; offsets come in rising order. */
static size_t
source_of(struct setting *s, size_t at)
{
	const struct script *script = s->ties->draft->script;
	const struct piece *p;

	while (s->piece + 1 < script->pieces && script->piece[s->piece + 1].text <= at)
		s->piece++;
	p = &script->piece[s->piece];
	return p->source + (p->text_n == p->source_n ? at - p->text : 0);
}

/* Things that are said here for the first time get the element as theirs. */
static bool
claim_words(struct setting *s, const struct stretch *stretch)
{
	bool first = false;

	for (size_t i = 0; i < stretch->things; i++) {
		uint32_t *word = &s->ties->word[stretch->thing[i]];

		if (*word == 0) {
			*word = s->elements;
			first = true;
		}
	}
	return first;
}

static void
open_stretch(struct setting *s, const struct stretch *stretch)
{
	struct buf *out = s->out;

	s->open = stretch;
	if (!stretch)
		return;
	s->elements++;
	buf_put_z(out, stretch->things ? "<a" : "<span");
	if (claim_words(s, stretch))
		buf_fmt(out, " id=\"w%u\"", s->elements);
	buf_fmt(out, " class=\"%s\"", ink_name(stretch->ink));
	for (size_t i = 0; i < stretch->things; i++)
		buf_fmt(out, "%s%u", i ? " " : " data-t=\"", stretch->thing[i]);
	if (stretch->things)
		buf_fmt(out, "\" href=\"#r%u\"", stretch->thing[0]);
	buf_put_char(out, '>');
}

static void
close_stretch(struct setting *s)
{
	if (s->open)
		buf_put_z(s->out, s->open->things ? "</a>" : "</span>");
	s->open = NULL;
}

/* Marks of the queries whose words end at or before an offset. */
static void
put_query_marks(struct setting *s, size_t source_at)
{
	const struct draft *d = s->ties->draft;

	if (s->query < d->findings && d->finding[s->query].place.span.end <= source_at)
		close_stretch(s);
	while (s->query < d->findings && d->finding[s->query].place.span.end <= source_at)
		query_put_mark(s->out, d, s->query++);
}

static void
put_character(struct setting *s, size_t at, struct str c)
{
	size_t source = source_of(s, at);
	const struct stretch *now = stretch_at(s->ties, source);

	/* A mark does not begin with the blank before its word. */
	if (now != s->open && is_blank(c.p[0]))
		now = NULL;
	put_query_marks(s, source);
	if (now != s->open) {
		close_stretch(s);
		open_stretch(s, now);
	}
	escape_html(s->out, c);
}

static void
put_words(struct setting *s, struct span text)
{
	const struct script *script = s->ties->draft->script;

	for (size_t at = text.beg; at < text.end;) {
		struct str rest = str_cut(script->text, at, text.end);
		size_t n;

		fold_decode(rest, &n);
		put_character(s, at, str_cut(rest, 0, n));
		at += n;
	}
	s->row += text.end - text.beg;
}

/* ---- rows --------------------------------------------------------------- */

static const char *
row_class(enum cue_kind kind)
{
	static const char *const name[] = {
	    [CUE_SPEECH] = "speech",
	    [CUE_TITLE] = "title",
	    [CUE_HEADING] = "heading",
	    [CUE_LIST] = "list",
	    [CUE_PICTURE] = "picture",
	    [CUE_ONSCREEN] = "onscreen",
	};

	return name[kind];
}

static void
begin_row(struct setting *s, const struct cue *c)
{
	struct buf clock = buf_in(s->out->arena);

	print_clock(&clock, c->beg_ms);
	buf_fmt(s->out,
	    "<div class=\"row %s\"><p class=\"clock\">%.*s</p><p class=\"words\">",
	    row_class(c->kind), (int)clock.n, clock.n ? clock.v : "");
	if (c->speaker.n && !str_is(c->speaker, s->speaker)) {
		buf_put_z(s->out, "<b class=\"speaker\">");
		escape_html(s->out, c->speaker);
		buf_put_z(s->out, "</b> ");
	}
	s->speaker = c->speaker;
	s->row = 0;
}

static void
end_row(struct setting *s)
{
	close_stretch(s);
	buf_put_z(s->out, "</p>");
	if (s->noted < s->query)
		buf_put_z(s->out, "<div class=\"margin\">");
	for (size_t i = s->noted; i < s->query; i++)
		query_put_note(s->out, s->ties, i);
	if (s->noted < s->query)
		buf_put_z(s->out, "</div>");
	s->noted = s->query;
	buf_put_z(s->out, "</div>\n");
}

static bool
ends_sentence(const struct script *s, struct span text)
{
	return text.end > text.beg && strchr(".!?", s->text.p[text.end - 1]);
}

static bool
opens_row(const struct setting *s, const struct cue *before, const struct cue *c)
{
	return !before || c->paragraph || c->kind != before->kind ||
	       !str_is(c->speaker, before->speaker) || s->row > PARAGRAPH_MOST ||
	       (s->row > PARAGRAPH_BYTES &&
		   ends_sentence(s->ties->draft->script, before->text));
}

/* What a finding is about may end with the file. */
static void
put_last_queries(struct setting *s)
{
	close_stretch(s);
	put_query_marks(s, SIZE_MAX);
}

void
script_put(struct buf *out, struct ties *t)
{
	const struct script *script = t->draft->script;
	struct setting s = {.out = out, .ties = t};
	const struct cue *before = NULL;

	for (size_t i = 0; i < script->cues; i++) {
		const struct cue *c = &script->cue[i];

		if (opens_row(&s, before, c)) {
			if (before)
				end_row(&s);
			begin_row(&s, c);
		} else {
			buf_put_char(out, ' ');
		}
		put_words(&s, c->text);
		before = c;
	}
	put_last_queries(&s);
	if (before)
		end_row(&s);
}
