/* SPDX-License-Identifier: ISC */
/*
 * Dot plots of what the show does: a line for each food and action, a dot for
 * each time it was done, and the published minimum as a bar across the line.
 */
#include "page/past.h"

#include <math.h>

#include "base/fold.h"
#include "base/print.h"
#include "write/escape.h"

/* Of the picture, in its own units. */
enum { WIDTH = 780, LEFT = 240, RIGHT = 44, ROW = 30, TOP = 34, DOT = 4, TICKS_MAX = 16 };
enum { NAME_MAX = 34 }; /* letters that fit before the line */

struct axis {
	double low, high;
	bool steps; /* of time: each tick some times the one before */
	double tick[TICKS_MAX];
	size_t ticks;
};

static const char *const names[] = {
    [QUANTITY_SETTING] = "settings",
    [QUANTITY_TIME] = "times",
    [QUANTITY_INSIDE] = "readings",
};

/* ---- values ------------------------------------------------------------- */

static void
put_value(struct buf *b, enum quantity q, double v)
{
	if (q == QUANTITY_TIME)
		print_duration(b, llround(v) * 1000, llround(v) * 1000);
	else
		buf_fmt(b,
		    "%lld \xc2\xb0"
		    "C",
		    llround(v));
}

static void
put_range(struct buf *b, enum quantity q, double min, double max)
{
	if (q == QUANTITY_TIME)
		print_duration(b, llround(min) * 1000, llround(max) * 1000);
	else if (min == max)
		put_value(b, q, min);
	else
		buf_fmt(b,
		    "%lld\xe2\x80\x93%lld \xc2\xb0"
		    "C",
		    llround(min), llround(max));
}

static void
put_words(struct buf *b, struct str key)
{
	for (size_t i = 0; i < key.n; i++)
		buf_put_char(b, key.p[i] == '-' ? ' ' : key.p[i]);
}

/* "roast: chicken thigh", of so many letters at most. */
static void
put_name(struct buf *b, const struct habit *h, size_t most)
{
	struct buf name = buf_in(b->arena);
	size_t at = 0, n;

	put_words(&name, h->action);
	buf_put_z(&name, ": ");
	put_words(&name, h->subject);
	for (size_t letters = 0; at < name.n && letters < most; letters++, at += n)
		fold_decode(str_cut(buf_str(&name), at, name.n), &n);
	escape_html(b, str_cut(buf_str(&name), 0, at));
	if (at < name.n)
		buf_put_z(b, "\xe2\x80\xa6");
}

static double
middle_of(const struct habit *h)
{
	const struct dot *d = &h->dot[h->dots / 2];

	return (d->min + d->max) / 2;
}

/* ---- the axis ----------------------------------------------------------- */

static void
stretch(struct axis *a, double v)
{
	a->low = v < a->low ? v : a->low;
	a->high = v > a->high ? v : a->high;
}

static void
add_tick(struct axis *a, double v)
{
	if (v >= a->low && v <= a->high && a->ticks < TICKS_MAX)
		a->tick[a->ticks++] = v;
}

static void
set_ticks(struct axis *a)
{
	static const double times[] = {10, 30, 60, 120, 300, 900, 1800, 3600, 7200, 14400,
	    28800, 86400, 259200, 864000};
	double step = a->high - a->low > 160 ? 50 : a->high - a->low > 60 ? 20 : 10;

	if (a->steps) {
		for (size_t i = 0; i < sizeof times / sizeof *times; i++)
			add_tick(a, times[i]);
		return;
	}
	a->low = floor(a->low / step) * step;
	a->high = ceil(a->high / step) * step;
	for (double v = a->low; v <= a->high; v += step)
		add_tick(a, v);
}

static struct axis
axis_of(const struct survey *s, enum quantity q)
{
	struct axis a = {INFINITY, -INFINITY, q == QUANTITY_TIME, {0}, 0};

	for (size_t i = 0; i < s->habits; i++) {
		const struct habit *h = &s->habit[i];

		if (h->quantity != q)
			continue;
		for (size_t d = 0; d < h->dots; d++) {
			stretch(&a, h->dot[d].min);
			stretch(&a, h->dot[d].max);
		}
		if (h->guarded)
			stretch(&a, h->minimum_c);
	}
	if (a.steps) {
		a.low = fmax(a.low, 1) / 1.2;
		a.high *= 1.2;
	}
	set_ticks(&a);
	return a;
}

static double
x_of(const struct axis *a, double v)
{
	double part = a->steps ? log(fmax(v, a->low) / a->low) / log(a->high / a->low)
			       : (v - a->low) / fmax(a->high - a->low, 1);

	return LEFT + part * (WIDTH - LEFT - RIGHT);
}

/* ---- the picture -------------------------------------------------------- */

static void
put_ticks(struct buf *out, const struct axis *a, enum quantity q, int bottom)
{
	for (size_t i = 0; i < a->ticks; i++) {
		double x = x_of(a, a->tick[i]);

		buf_fmt(out,
		    "<line class=\"tick\" x1=\"%.1f\" y1=\"%d\" x2=\"%.1f\" y2=\"%d\"/>"
		    "<text class=\"scale\" x=\"%.1f\" y=\"%d\">",
		    x, TOP - 8, x, bottom, x, TOP - 14);
		if (q == QUANTITY_TIME && a->tick[i] >= 3600)
			buf_fmt(out, "%lld h", llround(a->tick[i] / 3600));
		else if (q == QUANTITY_TIME && a->tick[i] >= 60)
			buf_fmt(out, "%lld min", llround(a->tick[i] / 60));
		else if (q == QUANTITY_TIME)
			buf_fmt(out, "%lld s", llround(a->tick[i]));
		else
			buf_fmt(out, "%lld\xc2\xb0", llround(a->tick[i]));
		buf_put_z(out, "</text>\n");
	}
}

static void
put_dot(struct buf *out, const struct axis *a, enum quantity q, const struct dot *d, int y)
{
	double from = x_of(a, d->min), to = x_of(a, d->max);
	struct buf what = buf_in(out->arena);

	put_range(&what, q, d->min, d->max);
	if (to - from > 1)
		buf_fmt(out,
		    "<line class=\"reach\" x1=\"%.1f\" y1=\"%d\" x2=\"%.1f\" y2=\"%d\">",
		    from, y, to, y);
	else
		buf_fmt(out, "<circle class=\"dot\" cx=\"%.1f\" cy=\"%d\" r=\"%d\">", from,
		    y, DOT);
	buf_put_z(out, "<title>");
	escape_html(out, d->episode);
	buf_put_z(out, ": ");
	escape_html(out, buf_str(&what));
	buf_put_z(out, to - from > 1 ? "</title></line>" : "</title></circle>");
}

static void
put_line(struct buf *out, const struct axis *a, const struct habit *h, int y)
{
	double guard = h->guarded ? x_of(a, h->minimum_c) : 0;

	buf_fmt(out, "<text class=\"name\" x=\"%d\" y=\"%d\">", LEFT - 14, y + 5);
	put_name(out, h, NAME_MAX);
	buf_fmt(out,
	    "</text><line class=\"base\" x1=\"%d\" y1=\"%d\" x2=\"%d\" y2=\"%d\"/>\n", LEFT,
	    y, WIDTH - RIGHT, y);
	for (size_t i = 0; i < h->dots; i++)
		put_dot(out, a, h->quantity, &h->dot[i], y);
	if (h->guarded)
		buf_fmt(out,
		    "<line class=\"guard\" x1=\"%.1f\" y1=\"%d\" x2=\"%.1f\" y2=\"%d\">"
		    "<title>published minimum inside: %lld \xc2\xb0"
		    "C</title></line>",
		    guard, y - 11, guard, y + 11, llround(h->minimum_c));
	buf_fmt(out, "<text class=\"count\" x=\"%d\" y=\"%d\">\xc3\x97%zu</text>\n",
	    WIDTH - 4, y + 5, h->dots);
}

static void
put_picture(struct buf *out, const struct survey *s, enum quantity q, size_t lines)
{
	struct axis a = axis_of(s, q);
	int height = TOP + (int)lines * ROW, y = TOP + ROW / 2;

	buf_fmt(out,
	    "<svg viewBox=\"0 0 %d %d\" role=\"img\" aria-labelledby=\"%s-t %s-d\">\n"
	    "<title id=\"%s-t\">%zu lines of dots: %s by action and food</title>\n"
	    "<desc id=\"%s-d\">Each dot is one use in an episode; the table below has the "
	    "figures.</desc>\n",
	    WIDTH, height, names[q], names[q], names[q], lines, names[q], names[q]);
	put_ticks(out, &a, q, height);
	for (size_t i = 0; i < s->habits; i++) {
		if (s->habit[i].quantity != q)
			continue;
		put_line(out, &a, &s->habit[i], y);
		y += ROW;
	}
	buf_put_z(out, "</svg>\n");
}

/* ---- the table ---------------------------------------------------------- */

static void
put_cell(struct buf *out, enum quantity q, double v)
{
	struct buf b = buf_in(out->arena);

	put_value(&b, q, v);
	buf_put_z(out, "<td>");
	escape_html(out, buf_str(&b));
	buf_put_z(out, "</td>");
}

static void
put_row(struct buf *out, const struct habit *h)
{
	double high = h->dot[0].max;

	for (size_t i = 0; i < h->dots; i++)
		high = fmax(high, h->dot[i].max);
	buf_put_z(out, "<tr><th scope=\"row\">");
	put_name(out, h, SIZE_MAX);
	buf_fmt(out, "</th><td>%zu</td>", h->dots);
	put_cell(out, h->quantity, h->dot[0].min);
	put_cell(out, h->quantity, middle_of(h));
	put_cell(out, h->quantity, high);
	if (h->quantity == QUANTITY_INSIDE && h->guarded) {
		put_cell(out, h->quantity, h->minimum_c);
		buf_put_z(out, "<td>");
		escape_html(out, h->source);
		buf_put_z(out, "</td>");
	} else if (h->quantity == QUANTITY_INSIDE) {
		buf_put_z(out, "<td>not known here</td><td></td>");
	}
	buf_put_z(out, "</tr>\n");
}

static void
put_table(struct buf *out, const struct survey *s, enum quantity q)
{
	buf_fmt(out,
	    "<details><summary>The same as a table</summary>\n<table>\n<thead><tr>"
	    "<th scope=\"col\">action and food</th><th scope=\"col\">times</th>"
	    "<th scope=\"col\">lowest</th><th scope=\"col\">middle</th>"
	    "<th scope=\"col\">highest</th>%s</tr></thead>\n<tbody>\n",
	    q == QUANTITY_INSIDE ? "<th scope=\"col\">published minimum</th>"
				   "<th scope=\"col\">by</th>"
				 : "");
	for (size_t i = 0; i < s->habits; i++)
		if (s->habit[i].quantity == q)
			put_row(out, &s->habit[i]);
	buf_put_z(out, "</tbody>\n</table>\n</details>\n");
}

void
dots_put(struct buf *out, const struct survey *s, enum quantity quantity)
{
	size_t lines = 0;

	for (size_t i = 0; i < s->habits; i++)
		lines += s->habit[i].quantity == quantity;
	if (lines == 0) {
		buf_put_z(out, "<p>Nothing was done twice yet.</p>\n");
		return;
	}
	buf_put_z(out, "<figure>\n");
	put_picture(out, s, quantity, lines);
	put_table(out, s, quantity);
	buf_put_z(out, "</figure>\n");
}
