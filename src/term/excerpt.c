/* SPDX-License-Identifier: ISC */
/*
 * Four hundred and fifty grams of wholemeal flour, a teaspoon ...
 *                                                  ^~~~~~~~~~
 * Columns are code points. A script that is no UTF-8 shows its decoded words.
 */
#include "term/excerpt.h"

#include "base/fold.h"

#define ELLIPSIS "\xe2\x80\xa6"

enum { INDENT = 2 };

static bool
is_plain(struct str line)
{
	size_t n;

	for (size_t at = 0; at < line.n; at += n)
		if (fold_decode(str_cut(line, at, line.n), &n) <= 0)
			return false;
	return true;
}

/* The bytes of `all` from the line start before `at` to the line end. */
static struct span
line_around(struct str all, size_t at)
{
	size_t beg = at < all.n ? at : all.n;

	while (beg > 0 && all.p[beg - 1] != '\n')
		beg--;
	return (struct span){
	    (uint32_t)beg, (uint32_t)(beg + str_find_char(str_cut(all, beg, all.n), '\n'))};
}

/* Where source byte `at` stands in script.text; the end of the last piece
 * before it when it is no word. */
static uint32_t
text_of_source(const struct script *s, uint32_t at)
{
	uint32_t text = 0;

	for (size_t i = 0; i < s->pieces && s->piece[i].source <= at; i++) {
		const struct piece *p = &s->piece[i];
		uint32_t into = at - p->source;

		if (p->text_n != p->source_n)
			into = into < p->source_n ? 0 : p->text_n;
		text = p->text + (into < p->text_n ? into : p->text_n);
	}
	return text;
}

/* A line and the marked part of it. */
struct excerpt {
	struct str line;
	struct span mark; /* bytes of the line */
};

static struct excerpt
cut_line(struct str all, struct span mark)
{
	struct span line = line_around(all, mark.beg);
	struct excerpt e = {str_cut(all, line.beg, line.end), {0, 0}};

	if (mark.end > line.end)
		mark.end = line.end;
	e.mark.beg = mark.beg - line.beg;
	e.mark.end = mark.end > mark.beg ? mark.end - line.beg : e.mark.beg;
	return e;
}

static size_t
count_columns(struct str s)
{
	size_t n, columns = 0;

	for (size_t at = 0; at < s.n; at += n, columns++)
		fold_decode(str_cut(s, at, s.n), &n);
	return columns;
}

/* The byte that starts the column `columns` after `at`, or the line's end. */
static size_t
skip_columns(struct str line, size_t at, size_t columns)
{
	size_t n;

	for (; columns > 0 && at < line.n; columns--, at += n)
		fold_decode(str_cut(line, at, line.n), &n);
	return at;
}

/* Whole words only, as far as that leaves the mark its neighbours. */
static struct span
trim_to_words(const struct excerpt *e, struct span shown)
{
	size_t blank = str_find_char(str_cut(e->line, shown.beg, e->mark.beg), ' ');

	if (shown.beg > 0 && shown.beg + blank < e->mark.beg)
		shown.beg += (uint32_t)blank + 1;
	for (uint32_t end = shown.end; end < e->line.n && end > e->mark.end; end--)
		if (e->line.p[end] == ' ')
			return (struct span){shown.beg, end};
	return shown;
}

/* The part of the line that is shown: all of it, or `width` columns of it with
 * the mark a third of the way in. */
static struct span
window(const struct excerpt *e, size_t width)
{
	size_t all = count_columns(e->line);
	size_t before = count_columns(str_cut(e->line, 0, e->mark.beg));
	size_t skip = before > width / 3 ? before - width / 3 : 0;
	size_t beg;

	if (all <= width)
		return (struct span){0, (uint32_t)e->line.n};
	if (skip > all - width)
		skip = all - width;
	beg = skip_columns(e->line, 0, skip);
	return trim_to_words(
	    e, (struct span){(uint32_t)beg, (uint32_t)skip_columns(e->line, beg, width)});
}

static void
put_line(struct buf *b, const struct excerpt *e, struct span shown)
{
	size_t at = shown.beg;

	buf_put_z(b, shown.beg > 0 ? " " ELLIPSIS : "  ");
	while (at < shown.end)
		at += look_put_char(b, str_cut(e->line, at, shown.end));
	if (shown.end < e->line.n)
		buf_put_z(b, ELLIPSIS);
	buf_put_char(b, '\n');
}

static void
put_mark(struct buf *b, const struct excerpt *e, struct span shown)
{
	size_t end = e->mark.end < shown.end ? e->mark.end : shown.end;
	size_t before = count_columns(str_cut(e->line, shown.beg, e->mark.beg));
	size_t marked = count_columns(str_cut(e->line, e->mark.beg, end));

	buf_fmt(b, "%*s^", (int)(INDENT + before), "");
	for (size_t i = 1; i < marked; i++)
		buf_put_char(b, '~');
}

void
excerpt_put(struct buf *b, const struct script *s, struct span source,
    const struct look *look, struct str after)
{
	struct excerpt e = cut_line(s->source, source);
	struct span shown;

	if (!is_plain(e.line)) {
		source.beg = text_of_source(s, source.beg);
		source.end = text_of_source(s, source.end);
		e = cut_line(s->text, source);
	}
	/* A column each side for the ellipses. */
	shown = window(&e, look->width - INDENT - 2);
	put_line(b, &e, shown);
	look_paint(b, look, PAINT_STRONG);
	put_mark(b, &e, shown);
	look_paint(b, look, PAINT_NONE);
	if (after.n) {
		buf_put_char(b, ' ');
		buf_put(b, after);
	}
	buf_put_char(b, '\n');
}
