/* SPDX-License-Identifier: ISC */
/*
 * tamis show: the script with what was recognised marked in it, by colour on
 * a terminal, else as [forty grams|measure] of [butter|ingredient]; or, with
 * --tags, as a table of its words.
 */
#include "base/fold.h"
#include "base/print.h"
#include "cli/episodes.h"

#include <stdio.h>

/* What each source byte was taken for. */
struct marks {
	unsigned char *of; /* enum paint; parallel to script.source */
	size_t n;
};

static const char *
mark_name(unsigned paint)
{
	static const char *const name[PAINTS] = {
	    [PAINT_DISH] = "dish",
	    [PAINT_STEP] = "step",
	    [PAINT_EQUIPMENT] = "equipment",
	    [PAINT_INGREDIENT] = "ingredient",
	    [PAINT_DONENESS] = "doneness",
	    [PAINT_MEASURE] = "measure",
	};

	return name[paint];
}

/* What is painted later lies on top. */
static void
mark(struct marks *m, const struct place *p, enum paint paint)
{
	for (size_t i = p->span.beg; i < p->span.end && i < m->n; i++)
		m->of[i] = (unsigned char)paint;
}

static void
mark_steps(struct marks *m, const struct dish *dish)
{
	for (size_t p = 0; p < dish->parts; p++)
		for (size_t i = 0; i < dish->part[p].steps; i++)
			mark(m, &dish->part[p].step[i].place, PAINT_STEP);
}

static void
mark_part(struct marks *m, const struct part *part)
{
	for (size_t i = 0; i < part->ingredients; i++) {
		const struct ingredient *food = &part->ingredient[i];

		mark(m, &food->place, PAINT_INGREDIENT);
		for (size_t u = 0; u < food->uses; u++)
			mark(m, &food->use[u], PAINT_INGREDIENT);
	}
	for (size_t i = 0; i < part->steps; i++)
		mark(m, &part->step[i].doneness.place, PAINT_DONENESS);
	if (part->name.n)
		mark(m, &part->place, PAINT_DISH);
}

static void
mark_dish(struct marks *m, const struct dish *dish)
{
	for (size_t i = 0; i < dish->equipments; i++)
		mark(m, &dish->equipment[i].place, PAINT_EQUIPMENT);
	for (size_t p = 0; p < dish->parts; p++)
		mark_part(m, &dish->part[p]);
	mark(m, &dish->place, PAINT_DISH);
}

static void
mark_draft(struct marks *m, const struct draft *d)
{
	for (size_t i = 0; i < d->dishes; i++)
		mark_steps(m, &d->dish[i]);
	for (size_t i = 0; i < d->dishes; i++)
		mark_dish(m, &d->dish[i]);
	for (size_t i = 0; i < d->measures; i++)
		mark(m, &d->measure[i].place, PAINT_MEASURE);
}

static void
put_switch(struct buf *b, const struct look *look, unsigned from, unsigned to)
{
	if (from == to)
		return;
	if (from && !look->colour)
		buf_fmt(b, "|%s]", mark_name(from));
	if (from)
		look_paint(b, look, PAINT_NONE);
	if (to && !look->colour)
		buf_put_char(b, '[');
	if (to)
		look_paint(b, look, to);
}

/* The words of one cue; *piece is the first that may reach into it. */
static void
put_words(struct buf *b, const struct script *s, struct span text, const struct marks *m,
    const struct look *look, size_t *piece)
{
	unsigned now = PAINT_NONE, next;

	for (size_t at = text.beg; at < text.end;) {
		const struct piece *p;
		size_t source;

		while (*piece + 1 < s->pieces && s->piece[*piece + 1].text <= at)
			++*piece;
		p = &s->piece[*piece];
		source = p->source + (p->text_n == p->source_n ? at - p->text : 0);
		next = source < m->n ? m->of[source] : PAINT_NONE;
		/* A mark does not begin with the blank before its word. */
		if (next != now && is_blank(s->text.p[at]))
			next = PAINT_NONE;
		put_switch(b, look, now, next);
		now = next;
		at += look_put_char(b, str_cut(s->text, at, text.end));
	}
	put_switch(b, look, now, PAINT_NONE);
}

static void
put_clock(struct buf *b, int64_t ms)
{
	struct buf clock = buf_in(b->arena);

	print_clock(&clock, ms);
	buf_fmt(b, "%7.*s  ", (int)clock.n, clock.n ? clock.v : "");
}

static void
put_legend(struct buf *b, const struct look *look)
{
	for (unsigned paint = PAINT_DISH; look->colour && paint < PAINTS; paint++) {
		look_paint(b, look, paint);
		buf_put_z(b, mark_name(paint));
		look_paint(b, look, PAINT_NONE);
		buf_put_char(b, paint + 1 < PAINTS ? ' ' : '\n');
	}
}

static enum outcome
render(struct episode *e, const struct draft *d, const struct run *run)
{
	const struct script *s = d->script;
	struct marks m = {arena_alloc(&e->arena, s->source.n + 1, 1), s->source.n};
	size_t piece = 0;

	mark_draft(&m, d);
	put_legend(&e->out, &run->look);
	for (size_t i = 0; i < s->cues; i++) {
		put_clock(&e->out, s->cue[i].beg_ms);
		put_words(&e->out, s, s->cue[i].text, &m, &run->look, &piece);
		buf_put_char(&e->out, '\n');
	}
	return OUTCOME_CLEAN;
}

static enum outcome
render_tags(struct episode *e, const struct draft *d, const struct run *run)
{
	const char *at = request_given(run->request, "at");
	const char *word = request_given(run->request, "word");

	if (tamis_tags(run->grammar, d->script, at, word, &e->out, &e->err))
		return OUTCOME_CLEAN;
	return OUTCOME_UNUSABLE;
}

static enum outcome
run_show(const struct request *r)
{
	struct run run = {.look = look_stdout(), .render = render, .request = r};

	if (r->tags || request_given(r, "at") || request_given(r, "word"))
		run.render = render_tags;
	return episodes_run(&run);
}

static const struct choice own[] = {
    {"at", "TIME", "the words of the line at 1:20, and the rules that failed there"},
    {"word", "WORD", "where this word stands, and all rules that failed there"},
    {0},
};

const struct command command_show = {
    .name = "show",
    .help = "print a script with what was recognised marked in it",
    .usage =
	"tamis show [OPTION...] EPISODE...\n\n"
	"For the person who wonders why a word was taken or missed: each line with its\n"
	"time, and the words that became a measure, an ingredient, a step and so on in\n"
	"colour, or in brackets where there is no terminal. With --tags a line for each\n"
	"word: the word, the classes that the lexicon gives it, and the rules that took\n"
	"it, pass by pass, the innermost first. With --at or --word those lines for some\n"
	"words, and below each the rules that began there and failed: what each took,\n"
	"what it wanted next, and what stood there. --at alone names those that took\n"
	"more than one word. - reads standard input.\n",
    .options = "region tags grammar",
    .own = own,
    .run = run_show,
};
