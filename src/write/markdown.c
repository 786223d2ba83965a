/* SPDX-License-Identifier: ISC */
/*
 * Markdown for people, the default: one document per dish with its title,
 * ingredients, method and notes, rules between dishes. CommonMark.
 */
#include "write/writers.h"

#include "base/print.h"
#include "write/escape.h"
#include "write/method.h"
#include "write/notes.h"
#include "write/text.h"

#define MIDDLE_DOT " \xc2\xb7 "

struct page {
	struct buf *out;
	const struct draft *draft;
	struct house house;
};

/* Puts one escaped line after a mark: "- ". */
static void
put_line(struct buf *out, const char *mark, struct str text)
{
	buf_put_z(out, mark);
	escape_markdown(out, text);
	buf_put_char(out, '\n');
}

/* A heading of the dish (0), of a section (1), of a part (2). */
static void
put_heading(const struct page *p, unsigned depth, struct str text)
{
	unsigned level = depth + (p->house.style->heading ? p->house.style->heading : 1);

	while (level-- > 1)
		buf_put_char(p->out, '#');
	put_line(p->out, "# ", text);
}

static void
put_section(const struct page *p, struct str name)
{
	buf_put_char(p->out, '\n');
	put_heading(p, 1, name);
}

/* "Serves 4 · 50 minutes, 40 of them unattended · from 0:21" */
static void
put_summary(const struct page *p, const struct dish *d)
{
	struct arena *a = p->out->arena;
	struct buf fact[3] = {buf_in(a), buf_in(a), buf_in(a)}, line = buf_in(a);

	text_yield(&fact[0], &p->house, d);
	text_time(&fact[1], &p->house, d);
	if (d->beg_ms >= 0 && !p->house.style->no_time_codes) {
		buf_put_z(&fact[2], "from ");
		print_clock(&fact[2], d->beg_ms);
	}
	for (size_t i = 0; i < 3; i++) {
		if (line.n && fact[i].n)
			buf_put_z(&line, MIDDLE_DOT);
		buf_put(&line, buf_str(&fact[i]));
	}
	if (line.n)
		put_line(p->out, "\n", buf_str(&line));
}

static void
put_ingredient(const struct page *p, const struct ingredient *in)
{
	struct buf line = buf_in(p->out->arena);

	text_ingredient(&line, &p->house, in);
	put_line(p->out, "- ", buf_str(&line));
}

static void
put_part(const struct page *page, const struct part *p)
{
	struct buf heading = buf_in(page->out->arena);

	if (p->ingredients == 0)
		return;
	buf_put_char(page->out, '\n');
	if (p->name.n) {
		buf_put_z(&heading, "For the ");
		buf_put(&heading, p->name);
		put_heading(page, 2, buf_str(&heading));
		buf_put_char(page->out, '\n');
	}
	for (size_t i = 0; i < p->ingredients; i++)
		put_ingredient(page, &p->ingredient[i]);
}

static void
put_ingredients(const struct page *p, const struct dish *d)
{
	size_t n = 0;

	for (size_t i = 0; i < d->parts; i++)
		n += d->part[i].ingredients;
	if (n)
		put_section(p, STR("Ingredients"));
	for (size_t i = 0; i < d->parts; i++)
		put_part(p, &d->part[i]);
}

/* "2. Bake for 35 minutes. (1:20)" */
static void
put_step(const struct page *p, const struct step *s, size_t number)
{
	const struct tamis_style *style = p->house.style;
	struct buf cue = buf_in(p->out->arena);

	if (style->numbers == NUMBERS_NONE)
		buf_put_z(p->out, "- ");
	else
		buf_fmt(p->out, "%zu%c ", number,
		    style->numbers == NUMBERS_BRACKET ? ')' : '.');
	escape_markdown(p->out, s->text);
	text_cue(&cue, &s->place);
	if (cue.n && !style->no_time_codes)
		buf_fmt(p->out, " (%.*s)", (int)cue.n, cue.v);
	buf_put_char(p->out, '\n');
}

/* Steps of a part of its own stand under its name; where the dish itself goes
 * on after such a part, under the dish's. */
static void
put_steps(const struct page *p, const struct dish *d)
{
	size_t n;
	const struct method_step *m = method_steps(p->out->arena, d, &n);

	if (n)
		put_section(p, STR("Method"));
	for (size_t i = 0; i < n; i++) {
		struct buf title = buf_in(p->out->arena);

		if (m[i].part->name.n)
			text_title(&title, m[i].part->name);
		else
			text_dish_title(&title, d);
		if (m[i].opens)
			buf_put_char(p->out, '\n');
		if (m[i].opens && (i > 0 || m[i].part->name.n)) {
			put_heading(p, 2, buf_str(&title));
			buf_put_char(p->out, '\n');
		}
		put_step(p, m[i].step, i + 1);
	}
}

static void
put_notes(const struct page *p, const struct dish *d)
{
	size_t n;
	const struct str *note = notes_of(p->out->arena, d, &p->house, &n);

	if (n) {
		put_section(p, STR("Notes"));
		buf_put_char(p->out, '\n');
	}
	for (size_t i = 0; i < n; i++)
		put_line(p->out, "- ", note[i]);
}

static void
put_dish(const struct page *p, const struct dish *d)
{
	struct buf title = buf_in(p->out->arena);

	text_dish_title(&title, d);
	put_heading(p, 0, buf_str(&title));
	put_summary(p, d);
	put_ingredients(p, d);
	put_steps(p, d);
	put_notes(p, d);
}

static void
write_markdown(const struct draft *d, const struct grammar *g,
    const struct tamis_style *style, struct buf *out)
{
	struct page page = {out, d, house_of(d, g, style)};

	if (d->dishes == 0)
		buf_put_z(out, "No recipe was found in this episode.\n");
	for (size_t i = 0; i < d->dishes; i++) {
		if (i > 0)
			buf_put_z(out, "\n---\n\n");
		put_dish(&page, &d->dish[i]);
	}
}

const struct writer writer_markdown = {
    .name = "markdown",
    .extension = "md",
    .help = "one written recipe per dish, for people",
    .package = "recipes",
    .apart = true,
    .write = write_markdown,
};
