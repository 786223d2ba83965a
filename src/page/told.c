/* SPDX-License-Identifier: ISC */
/*
 * "As told": a lane per dish, and one under it per part, along the clock of
 * the episode.
 */
#include "page/timeline.h"

#include "base/print.h"
#include "page/lane.h"
#include "write/escape.h"
#include "write/text.h"

enum { DISH = 12, PART = 16, SPACE = 12, UNDER = 3 };

/* Queries at their second, beside the label where there is room. */
static void
put_queries(struct lanes *l, const struct draft *d, int dish, struct str label)
{
	struct rows rows = {{0}, 0};

	rows_take(&rows, 0, label.n ? lane_text_width(label) : -LANE_PIN);
	for (size_t i = 0; i < d->findings; i++) {
		int64_t ms = d->finding[i].place.at_ms;
		int row;

		if (d->finding[i].dish != dish || ms < 0)
			continue;
		row = rows_take(&rows, lane_pixels(l, ms) - LANE_PIN / 2, LANE_PIN);
		lane_put_pin(
		    l, d, i, (struct pin){ms, 0, l->y + row * LANE_PIN + LANE_PIN / 2});
	}
	lane_put_label(l, "lane", label);
	l->y += (rows.used - 1) * LANE_PIN;
}

static void
open_told(struct lanes *l, uint32_t thing, struct str title)
{
	buf_fmt(l->out, "<a href=\"#r%u\" data-t=\"%u\" aria-label=\"", thing, thing);
	escape_html(l->out, title);
	buf_put_z(l->out, "\">");
}

static void
put_bar(
    struct lanes *l, const char *class, struct span height, int64_t beg_ms, int64_t end_ms)
{
	buf_fmt(l->out, "<rect class=\"%s\"", class);
	lane_put_from_to(l, beg_ms, end_ms);
	buf_fmt(l->out, " y=\"%u\" height=\"%u\"/>", height.beg, height.end - height.beg);
}

/* A part is told until the next part of its dish is. */
static int64_t
part_end(const struct dish *d, size_t part)
{
	int64_t beg = d->part[part].place.at_ms, end = d->end_ms;

	for (size_t i = 0; i < d->parts; i++)
		if (d->part[i].name.n && d->part[i].place.at_ms > beg &&
		    d->part[i].place.at_ms < end)
			end = d->part[i].place.at_ms;
	return end;
}

/* The name stands before the bar where it fits, else on it. */
static void
put_part(struct lanes *l, const struct ties *t, size_t dish, size_t part)
{
	const struct dish *d = &t->draft->dish[dish];
	int64_t beg = d->part[part].place.at_ms;
	struct span height = {(uint32_t)l->y, (uint32_t)(l->y + PART)};
	struct buf title = buf_in(l->out->arena);
	bool before;

	if (d->part[part].name.n == 0 || beg < 0)
		return;
	text_title(&title, d->part[part].name);
	before = lane_pixels(l, beg) > lane_text_width(buf_str(&title));
	open_told(l, t->part[dish][part], buf_str(&title));
	put_bar(l, "told part", height, beg, part_end(d, part));
	buf_put_z(l->out, "<text class=\"part\" x=\"");
	lane_put_x(l, beg);
	buf_fmt(l->out, "\"%s y=\"%d\">",
	    before ? " dx=\"-6\" text-anchor=\"end\"" : " dx=\"6\"", l->y + 12);
	escape_html(l->out, buf_str(&title));
	buf_put_z(l->out, "</text></a>\n");
	l->y += PART + UNDER;
}

static void
put_dish(struct lanes *l, const struct ties *t, size_t dish)
{
	const struct dish *d = &t->draft->dish[dish];
	struct span height;
	struct buf title = buf_in(l->out->arena);

	if (d->beg_ms < 0)
		return;
	text_dish_title(&title, d);
	put_queries(l, t->draft, (int)dish, buf_str(&title));
	height = (struct span){(uint32_t)l->y, (uint32_t)(l->y + DISH)};
	open_told(l, t->dish[dish], buf_str(&title));
	put_bar(l, "told", height, d->beg_ms, d->end_ms);
	buf_put_z(l->out, "</a>\n");
	l->y += DISH + UNDER;
	for (size_t i = 0; i < d->parts; i++)
		put_part(l, t, dish, i);
	l->y += SPACE;
}

static bool
has_loose_queries(const struct draft *d)
{
	for (size_t i = 0; i < d->findings; i++)
		if (d->finding[i].dish < 0 && d->finding[i].place.at_ms >= 0)
			return true;
	return false;
}

void
picture_put(struct buf *out, const struct lanes *l, struct str label)
{
	buf_put_z(
	    out, "<div class=\"picture\" role=\"group\" tabindex=\"0\" aria-label=\"");
	escape_html(out, label);
	buf_fmt(out, "\"><svg width=\"100%%\" height=\"%d\">\n", l->y);
	buf_put(out, buf_str(l->out));
	buf_put_z(out, "</svg></div>\n");
}

void
told_put(struct buf *out, const struct ties *t)
{
	const struct draft *d = t->draft;
	struct buf inside = buf_in(out->arena);
	struct lanes l = {.out = &inside, .span_ms = d->script->length_ms};

	if (!d->script->stamped || l.span_ms <= 0)
		return;
	if (has_loose_queries(d))
		put_queries(&l, d, -1, STR(""));
	for (size_t i = 0; i < d->dishes; i++)
		put_dish(&l, t, i);
	lane_put_axis(&l, true);
	buf_put_z(out, "<figure>\n<figcaption><b>As told</b> Where each dish and part is "
		       "spoken of, and the queries.</figcaption>\n");
	picture_put(out, &l, STR("As told, along the clock of the episode"));
	buf_put_z(out, "</figure>\n");
}
