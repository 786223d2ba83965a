/* SPDX-License-Identifier: ISC */
/*
 * One dish as a card. On the proof page every line has the number of its
 * thing, and what was said is a link to the words.
 */
#include "page/recipe.h"

#include "base/print.h"
#include "house/portion.h"
#include "page/queries.h"
#include "publish/video.h"
#include "write/escape.h"
#include "write/method.h"
#include "write/notes.h"
#include "write/text.h"

struct card {
	struct buf *out;
	const struct recipe_page *page;
	size_t index; /* of the dish */
	const struct dish *dish;
	struct house house;
};

/* ---- ties to the script ------------------------------------------------- */

/* " id= data-t=" of a thing's own element. */
static void
put_thing(struct card *c, uint32_t thing)
{
	if (c->page->ties)
		buf_fmt(c->out, " id=\"r%u\" data-t=\"%u\"", thing, thing);
}

static uint32_t
word_of(const struct card *c, uint32_t thing)
{
	return c->page->ties ? c->page->ties->word[thing] : 0;
}

/* Opens a link to where the thing is said; false where there is none. */
static bool
open_words(struct card *c, uint32_t thing)
{
	uint32_t word = word_of(c, thing);

	if (word)
		buf_fmt(c->out, "<a class=\"said\" href=\"#w%u\">", word);
	return word != 0;
}

static void
close_words(struct card *c, bool open)
{
	if (open)
		buf_put_z(c->out, "</a>");
}

static void
put_said(struct card *c, uint32_t thing, struct str text)
{
	bool open = open_words(c, thing);

	escape_html(c->out, text);
	close_words(c, open);
}

/* "0:33": a link to the words on the proof, into the video on the card. */
static void
put_time(struct card *c, const struct place *p, uint32_t thing)
{
	struct buf clock = buf_in(c->out->arena);
	int64_t ms = p->cue_ms >= 0 ? p->cue_ms : p->at_ms;

	print_clock(&clock, ms);
	if (clock.n == 0)
		return;
	buf_put_z(c->out, " <span class=\"at\">");
	if (c->page->video) {
		struct buf url = buf_in(c->out->arena);

		video_put(&url, c->page->video, ms);
		buf_put_z(c->out, "<a href=\"");
		escape_html(c->out, buf_str(&url));
		buf_fmt(c->out, "\">%.*s</a>", (int)clock.n, clock.v);
	} else {
		put_said(c, thing, buf_str(&clock));
	}
	buf_put_z(c->out, "</span>");
}

/* ---- the head ----------------------------------------------------------- */

static void
put_fact(struct card *c, const char *class, uint32_t thing, struct str text)
{
	bool open;

	if (text.n == 0)
		return;
	buf_fmt(c->out, "<li class=\"%s\"", class);
	put_thing(c, thing);
	buf_put_char(c->out, '>');
	open = open_words(c, thing);
	variants_put(c->out, c->page->variants, thing, LINE_QUANTITY, text);
	close_words(c, open);
	buf_put_z(c->out, "</li>");
}

static uint32_t
fact_thing(const struct card *c, uint32_t (*of)(const struct ties *, size_t))
{
	return c->page->ties ? of(c->page->ties, c->index) : 0;
}

static void
put_facts(struct card *c)
{
	struct buf yield = buf_in(c->out->arena), time = buf_in(c->out->arena);

	text_yield(&yield, &c->house, c->dish);
	text_time(&time, &c->house, c->dish);
	if (!yield.n && !time.n)
		return;
	buf_put_z(c->out, "<ul class=\"facts\">");
	put_fact(c, "yield", fact_thing(c, thing_yield), buf_str(&yield));
	put_fact(c, "time", fact_thing(c, thing_time), buf_str(&time));
	buf_put_z(c->out, "</ul>\n");
}

static void
put_queries(struct card *c, int part, int step)
{
	if (c->page->ties)
		queries_put_marks_of(c->out, c->page->draft, (int)c->index, part, step);
}

static void
put_heading(struct card *c, int below, struct str text)
{
	int level = c->page->heading + below;

	buf_fmt(c->out, "<h%d>", level);
	escape_html(c->out, text);
	buf_fmt(c->out, "</h%d>\n", level);
}

static void
put_head(struct card *c)
{
	struct buf title = buf_in(c->out->arena);
	uint32_t thing = c->page->ties ? c->page->ties->dish[c->index] : 0;

	text_dish_title(&title, c->dish);
	buf_fmt(c->out, "<h%d", c->page->heading);
	put_thing(c, thing);
	buf_put_char(c->out, '>');
	put_said(c, thing, buf_str(&title));
	put_queries(c, -1, -1);
	buf_fmt(c->out, "</h%d>\n", c->page->heading);
	put_facts(c);
	if (c->page->variants)
		variants_put_times(c->out, c->page->variants, c->index);
}

/* ---- ingredients -------------------------------------------------------- */

static void
put_piece(struct card *c, uint32_t thing, enum piece_of_line piece, struct str text)
{
	variants_put(c->out, c->page->variants, thing, piece, text);
}

static void
put_ingredient(struct card *c, const struct ingredient *in, uint32_t thing)
{
	struct line line = line_of(c->out->arena, &c->house, in);
	bool open;

	buf_put_z(c->out, "<li");
	put_thing(c, thing);
	buf_put_char(c->out, '>');
	open = open_words(c, thing);
	put_piece(c, thing, LINE_QUANTITY, line.piece[LINE_QUANTITY]);
	if (line.piece[LINE_QUANTITY].n)
		buf_put_char(c->out, ' ');
	put_piece(c, thing, LINE_ITEM, line.piece[LINE_ITEM]);
	close_words(c, open);
	put_piece(c, thing, LINE_OTHER, line.piece[LINE_OTHER]);
	put_piece(c, thing, LINE_REST, line.piece[LINE_REST]);
	buf_put_z(c->out, "</li>\n");
}

static void
put_part_heading(struct card *c, size_t part)
{
	const struct part *p = &c->dish->part[part];
	uint32_t thing = c->page->ties ? c->page->ties->part[c->index][part] : 0;
	int level = c->page->heading + 2;

	if (p->name.n == 0)
		return;
	buf_fmt(c->out, "<h%d", level);
	put_thing(c, thing);
	buf_put_z(c->out, ">For the ");
	put_said(c, thing, p->name);
	buf_fmt(c->out, "</h%d>\n", level);
}

static void
put_ingredients(struct card *c)
{
	size_t n = 0;

	for (size_t i = 0; i < c->dish->parts; i++)
		n += c->dish->part[i].ingredients;
	if (n == 0)
		return;
	buf_put_z(c->out, "<div class=\"goods\">\n");
	put_heading(c, 1, STR("Ingredients"));
	for (size_t i = 0; i < c->dish->parts; i++) {
		const struct part *p = &c->dish->part[i];

		if (p->ingredients == 0)
			continue;
		put_part_heading(c, i);
		buf_put_z(c->out, "<ul class=\"ingredients\">\n");
		for (size_t k = 0; k < p->ingredients; k++)
			put_ingredient(c, &p->ingredient[k],
			    c->page->ties ? thing_ingredient(c->page->ties, c->index, i, k)
					  : 0);
		buf_put_z(c->out, "</ul>\n");
	}
	buf_put_z(c->out, "</div>\n");
}

/* ---- method ------------------------------------------------------------- */

static void
put_step(struct card *c, const struct method_step *m)
{
	size_t part = (size_t)(m->part - c->dish->part);
	size_t step = (size_t)(m->step - m->part->step);
	uint32_t thing =
	    c->page->ties ? thing_step(c->page->ties, c->index, part, step) : 0;

	buf_put_z(c->out, "<li");
	put_thing(c, thing);
	buf_put_char(c->out, '>');
	put_piece(c, thing, LINE_QUANTITY, m->step->text);
	put_time(c, &m->step->place, thing);
	put_queries(c, (int)part, (int)step);
	buf_put_z(c->out, "</li>\n");
}

static void
put_run_heading(struct card *c, const struct part *p, bool first)
{
	struct buf title = buf_in(c->out->arena);

	if (first && p->name.n == 0)
		return;
	if (p->name.n)
		text_title(&title, p->name);
	else
		text_dish_title(&title, c->dish);
	put_heading(c, 2, buf_str(&title));
}

static void
put_method(struct card *c)
{
	size_t n;
	const struct method_step *m = method_steps(c->out->arena, c->dish, &n);

	if (n == 0)
		return;
	buf_put_z(c->out, "<div class=\"work\">\n");
	put_heading(c, 1, STR("Method"));
	for (size_t i = 0; i < n; i++) {
		if (m[i].opens && i > 0)
			buf_put_z(c->out, "</ol>\n");
		if (m[i].opens) {
			put_run_heading(c, m[i].part, i == 0);
			buf_fmt(c->out, "<ol class=\"method\" start=\"%zu\">\n", i + 1);
		}
		put_step(c, &m[i]);
	}
	buf_put_z(c->out, "</ol>\n</div>\n");
}

/* ---- the rest ----------------------------------------------------------- */

static void
put_equipment(struct card *c)
{
	if (c->dish->equipments == 0)
		return;
	buf_put_z(c->out, "<p class=\"tools\"><b>Equipment</b> ");
	for (size_t i = 0; i < c->dish->equipments; i++) {
		const struct equipment *e = &c->dish->equipment[i];
		struct buf text = buf_in(c->out->arena);
		uint32_t thing = c->page->ties ? thing_tool(c->page->ties, c->index, i) : 0;

		portion_put_size(&text, &c->house, &e->size);
		if (text.n)
			buf_put_char(&text, ' ');
		buf_put(&text, e->item);
		buf_put_z(c->out, i ? ", <span" : "<span");
		put_thing(c, thing);
		buf_put_char(c->out, '>');
		put_said(c, thing, buf_str(&text));
		buf_put_z(c->out, "</span>");
	}
	buf_put_z(c->out, "</p>\n");
}

static void
put_notes(struct card *c)
{
	size_t n;
	const struct str *note = notes_of(c->out->arena, c->dish, &c->house, &n);

	if (n == 0)
		return;
	buf_put_z(c->out, "<div class=\"notes\">\n");
	put_heading(c, 1, STR("Notes"));
	buf_put_z(c->out, "<ul>\n");
	for (size_t i = 0; i < n; i++) {
		buf_put_z(c->out, "<li>");
		escape_html(c->out, note[i]);
		buf_put_z(c->out, "</li>\n");
	}
	buf_put_z(c->out, "</ul>\n</div>\n");
}

void
recipe_put(struct buf *out, const struct recipe_page *page, size_t dish)
{
	struct card c = {
	    .out = out, .page = page, .index = dish, .dish = &page->draft->dish[dish]};

	c.house = house_of(page->draft, page->grammar, page->style);

	buf_put_z(out, "<article class=\"recipe\">\n");
	put_head(&c);
	put_ingredients(&c);
	put_method(&c);
	put_equipment(&c);
	put_notes(&c);
	buf_put_z(out, "</article>\n");
}
