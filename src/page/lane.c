/* SPDX-License-Identifier: ISC */
/*
 * Lanes of an SVG picture as wide as the page.
 */
#include "page/lane.h"

#include <inttypes.h>

#include "base/print.h"
#include "page/queries.h"
#include "write/escape.h"

enum { GAP = 4, TICKS_MOST = 9, LETTER = 7, LABEL = 20 };

void
lane_put_x(struct lanes *l, int64_t ms)
{
	int64_t part;

	if (ms < 0)
		ms = 0;
	if (ms > l->span_ms)
		ms = l->span_ms;
	part = l->span_ms > 0 ? ratio_round(ratio_make(ms * 10000, l->span_ms)) : 0;
	buf_fmt(l->out, "%d.%02d%%", (int)(part / 100), (int)(part % 100));
}

int
lane_pixels(const struct lanes *l, int64_t ms)
{
	return l->span_ms > 0 ? (int)(ms * LANE_WIDTH / l->span_ms) : 0;
}

int
lane_text_width(struct str text)
{
	int n = 0;

	for (size_t i = 0; i < text.n; i++)
		n += ((unsigned char)text.p[i] & 0xc0) != 0x80;
	return n * LETTER + LETTER;
}

void
lane_put_label(struct lanes *l, const char *class, struct str text)
{
	buf_fmt(l->out, "<text class=\"%s\" x=\"0\" y=\"%d\">", class, l->y + 14);
	escape_html(l->out, text);
	buf_put_z(l->out, "</text>\n");
	l->y += LABEL;
}

void
lane_put_from_to(struct lanes *l, int64_t beg_ms, int64_t end_ms)
{
	buf_put_z(l->out, " x=\"");
	lane_put_x(l, beg_ms);
	buf_put_z(l->out, "\" width=\"");
	lane_put_x(l, end_ms - beg_ms);
	buf_put_char(l->out, '"');
}

void
lane_put_pin(struct lanes *l, const struct draft *d, size_t finding, struct pin at)
{
	const char *severity = severity_name(d->finding[finding].severity);

	buf_put_z(l->out, "<svg overflow=\"visible\" x=\"");
	lane_put_x(l, at.ms);
	buf_fmt(l->out,
	    "\" y=\"%d\"><a class=\"pin %s\" href=\"#n%zu\" aria-label=\"Query %zu, %s\">"
	    "<circle cx=\"%d\" r=\"8\"/><text text-anchor=\"middle\" x=\"%d\" "
	    "y=\"4\">%zu</text></a></svg>\n",
	    at.y, severity, finding + 1, finding + 1, severity, -at.back, -at.back,
	    finding + 1);
}

int
rows_take(struct rows *r, int x, int width)
{
	int row = 0;

	while (row + 1 < LANE_ROWS && r->end[row] > x)
		row++;
	r->end[row] = x + width + GAP;
	if (row >= r->used)
		r->used = row + 1;
	return row;
}

/* The round step that gives few enough ticks. */
static int64_t
tick_of(int64_t span_ms)
{
	static const int64_t minutes[] = {
	    1, 2, 5, 10, 15, 30, 60, 120, 240, 480, 720, 1440};
	size_t i = 0;

	while (i + 1 < sizeof minutes / sizeof *minutes &&
	       span_ms / (minutes[i] * 60000) > TICKS_MOST)
		i++;
	return minutes[i] * 60000;
}

static void
put_tick(struct lanes *l, int64_t ms, bool is_clock)
{
	struct buf text = buf_in(l->out->arena);

	if (is_clock)
		print_clock(&text, ms);
	else if (ms == 0)
		buf_put_z(&text, "start");
	else
		print_duration(&text, ms, ms);
	buf_put_z(l->out, "<line class=\"grid\" x1=\"");
	lane_put_x(l, ms);
	buf_put_z(l->out, "\" x2=\"");
	lane_put_x(l, ms);
	buf_fmt(l->out, "\" y1=\"0\" y2=\"%d\"/><text class=\"tick\" x=\"", l->y + 4);
	lane_put_x(l, ms);
	buf_fmt(l->out, "\" dx=\"2\" y=\"%d\">%.*s</text>", l->y + 16, (int)text.n,
	    text.n ? text.v : "");
}

void
lane_put_axis(struct lanes *l, bool is_clock)
{
	int64_t tick = tick_of(l->span_ms);

	for (int64_t ms = 0; ms < l->span_ms - tick / 3; ms += tick)
		put_tick(l, ms, is_clock);
	l->y += 22;
}
