/* SPDX-License-Identifier: ISC */
/*
 * "At the stove": a picture per dish along the cook's clock, a lane per part
 * in it, a bar for every timed step with its temperature on it.
 */
#include "page/timeline.h"

#include "base/print.h"
#include "page/lane.h"
#include "page/schedule.h"
#include "write/escape.h"
#include "write/text.h"

enum { BAR = 24, ROW = 17, SPACE = 12, INSET = 6 };

struct stove {
	struct lanes lanes;
	const struct ties *ties;
	size_t dish;
	struct rows rows; /* under the bars of the part at hand */
};

static void
put_degrees(struct buf *b, const struct temperature *t)
{
	if (text_has_degrees(t)) {
		print_decimals(b, t->min, t->max);
		buf_put_char(b, ' ');
		if (t->unit)
			print_unit(b, t->unit, true);
		else
			buf_put_z(b, "degrees");
	} else if (t->heat.n) {
		buf_put(b, t->heat);
		buf_put_z(b, " heat");
	}
}

/* "190 °C · 40 minutes" */
static struct str
bar_text(struct arena *a, const struct step *s)
{
	struct buf b = buf_in(a);

	put_degrees(&b, &s->temperature);
	if (b.n)
		buf_put_z(&b, " \xc2\xb7 ");
	if (s->duration.known)
		print_duration(&b, s->duration.min_ms, s->duration.max_ms);
	else
		print_duration(&b, -1, -1);
	return buf_str(&b);
}

static const char *
bar_class(const struct step *s, const struct bar *b)
{
	if (b->open)
		return "bar open";
	if (!s->heats)
		return s->passive ? "bar rest" : "bar work";
	return s->passive ? "bar heat alone" : "bar heat";
}

/* Queries about a step, on the end of its bar; returns the pixels they take. */
static int
put_pins(struct stove *s, const struct bar *b)
{
	const struct draft *d = s->ties->draft;
	struct pin at = {b->end_ms, LANE_PIN / 2 + 2, s->lanes.y + BAR / 2};

	for (size_t i = 0; i < d->findings; i++) {
		const struct finding *f = &d->finding[i];

		if (f->dish != (int)s->dish || f->part != (int)b->part ||
		    f->step != (int)b->step)
			continue;
		lane_put_pin(&s->lanes, d, i, at);
		at.back += LANE_PIN;
	}
	return at.back - LANE_PIN / 2;
}

/* On the bar where it fits, else under it in the first row with room. */
static void
put_text(struct stove *s, const struct bar *b, struct str text, int taken)
{
	struct lanes *l = &s->lanes;
	int width = lane_text_width(text), x = lane_pixels(l, b->beg_ms);
	bool fits = lane_pixels(l, b->end_ms - b->beg_ms) >= width + taken;
	bool late = !fits && x + width > LANE_WIDTH;
	int y = l->y + BAR / 2 + 4;

	if (late)
		x = lane_pixels(l, b->end_ms) - width;
	if (!fits)
		y = l->y + BAR + ROW - 4 + ROW * rows_take(&s->rows, x, width);
	buf_fmt(l->out, "<text class=\"%s\" x=\"", fits ? "on" : "under");
	lane_put_x(l, late ? b->end_ms : b->beg_ms);
	buf_fmt(l->out, "\" dx=\"%d\"%s y=\"%d\">", fits ? INSET : 0,
	    late ? " text-anchor=\"end\"" : "", y);
	escape_html(l->out, text);
	buf_put_z(l->out, "</text>");
}

static void
put_bar(struct stove *s, const struct bar *b)
{
	struct lanes *l = &s->lanes;
	const struct part *p = &s->ties->draft->dish[s->dish].part[b->part];
	const struct step *step = &p->step[b->step];
	uint32_t thing = thing_step(s->ties, s->dish, b->part, b->step);
	struct buf *page = l->out, pins = buf_in(page->arena);
	int taken;

	l->out = &pins;
	taken = put_pins(s, b);
	l->out = page;
	buf_fmt(page, "<a href=\"#r%u\" data-t=\"%u\"><title>", thing, thing);
	escape_html(page, step->text);
	buf_fmt(page, "</title><rect class=\"%s\"", bar_class(step, b));
	lane_put_from_to(l, b->beg_ms, b->end_ms);
	buf_fmt(page, " y=\"%d\" height=\"%d\"/>", l->y, BAR);
	put_text(s, b, bar_text(page->arena, step), taken);
	buf_put_z(page, "</a>\n");
	buf_put(page, buf_str(&pins));
}

static void
put_part(struct stove *s, size_t part, const struct schedule *when)
{
	const struct part *p = &s->ties->draft->dish[s->dish].part[part];
	struct buf title = buf_in(s->lanes.out->arena);
	bool any = false;

	for (size_t i = 0; i < when->bars; i++)
		any = any || when->bar[i].part == part;
	if (!any)
		return;
	s->rows = (struct rows){{0}, 0};
	text_title(&title, p->name);
	if (title.n)
		lane_put_label(&s->lanes, "part", buf_str(&title));
	for (size_t i = 0; i < when->bars; i++)
		if (when->bar[i].part == part)
			put_bar(s, &when->bar[i]);
	s->lanes.y += BAR + s->rows.used * ROW + SPACE;
}

static void
put_dish(struct buf *out, const struct ties *t, size_t dish)
{
	const struct dish *d = &t->draft->dish[dish];
	struct schedule when = schedule_of(out->arena, d);
	struct buf inside = buf_in(out->arena), title = buf_in(out->arena);
	struct stove s = {{&inside, when.end_ms, 4}, t, dish, {{0}, 0}};

	if (when.bars == 0)
		return;
	text_dish_title(&title, d);
	if (d->total_ms > 0) {
		buf_put_z(&title, ", ");
		print_duration(&title, d->total_ms, d->total_ms);
	}
	lane_put_label(&s.lanes, "lane", buf_str(&title));
	s.lanes.y += 2;
	for (size_t i = 0; i < d->parts; i++)
		put_part(&s, i, &when);
	lane_put_axis(&s.lanes, false);
	picture_put(out, &s.lanes, buf_str(&title));
}

void
stove_put(struct buf *out, const struct ties *t)
{
	struct buf inside = buf_in(out->arena);

	for (size_t i = 0; i < t->draft->dishes; i++)
		put_dish(&inside, t, i);
	if (inside.n == 0)
		return;
	buf_put_z(out,
	    "<figure>\n<figcaption><b>At the stove</b> The timed steps of each dish, from "
	    "its own start; hatched where the cook only waits.</figcaption>\n");
	buf_put(out, buf_str(&inside));
	buf_put_z(out, "</figure>\n");
}
