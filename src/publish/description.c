/* SPDX-License-Identifier: ISC */
/*
 * The text that stands under a video: chapters, and for each dish the
 * ingredients in both systems of measures, the steps in short, allergens and
 * cautions; then what has to be put right.
 */
#include "write/writers.h"

#include "base/print.h"
#include "publish/brief.h"
#include "publish/chapter.h"
#include "publish/pickup.h"
#include "write/escape.h"
#include "write/method.h"
#include "write/notes.h"
#include "write/text.h"

enum { STEP_MOST = 200 };

static void
put_line(struct buf *out, const char *mark, struct str text)
{
	buf_put_z(out, mark);
	escape_line(out, text);
	buf_put_char(out, '\n');
}

/* "0:33 Blackberry and apple crumble"; players make chapters of such a list
 * only where it is long enough. */
static void
put_chapters(struct buf *out, const struct draft *d)
{
	size_t n;
	const struct chapter *c = chapters_of(out->arena, d, &n);

	if (n < CHAPTERS_MIN)
		return;
	buf_put_z(out, "Chapters\n");
	for (size_t i = 0; i < n; i++) {
		print_clock(out, c[i].beg_ms);
		put_line(out, " ", c[i].title);
	}
	buf_put_char(out, '\n');
}

static void
put_facts(struct buf *out, const struct house *h, const struct dish *d)
{
	struct buf yield = buf_in(out->arena), time = buf_in(out->arena);

	text_yield(&yield, h, d);
	text_time(&time, h, d);
	if (yield.n)
		put_line(out, "", buf_str(&yield));
	if (time.n)
		put_line(out, "Time: ", buf_str(&time));
}

static void
put_ingredients(struct buf *out, const struct house *h, const struct dish *d)
{
	for (size_t i = 0; i < d->parts; i++) {
		const struct part *p = &d->part[i];

		if (p->ingredients == 0)
			continue;
		buf_put_char(out, '\n');
		if (p->name.n)
			put_line(out, "Ingredients for the ", p->name);
		else
			buf_put_z(out, "Ingredients\n");
		for (size_t j = 0; j < p->ingredients; j++) {
			struct buf line = buf_in(out->arena);

			text_ingredient(&line, h, &p->ingredient[j]);
			put_line(out, "- ", buf_str(&line));
		}
	}
}

static void
put_steps(struct buf *out, const struct dish *d)
{
	size_t n;
	const struct method_step *m = method_steps(out->arena, d, &n);

	if (n)
		buf_put_z(out, "\nSteps\n");
	for (size_t i = 0; i < n; i++) {
		struct buf text = buf_in(out->arena);

		brief_text(&text, m[i].step->text, STEP_MOST);
		buf_fmt(out, "%zu. ", i + 1);
		put_line(out, "", buf_str(&text));
	}
}

/* Allergens as the check has them, by the list of the region. */
static void
put_findings(struct buf *out, const struct draft *d, int dish, const char *code)
{
	for (size_t i = 0; i < d->findings; i++) {
		const struct finding *f = &d->finding[i];
		struct buf text = buf_in(out->arena);

		if (f->dish != dish || strcmp(f->kind->code, code) != 0)
			continue;
		text_title(&text, f->message);
		if (text.n && !strchr(".!?", text.v[text.n - 1]))
			buf_put_char(&text, '.');
		put_line(out, "- ", buf_str(&text));
	}
}

static void
put_notes(struct buf *out, const struct draft *d, size_t dish, const struct house *h)
{
	struct buf allergens = buf_in(out->arena);
	size_t n;
	const struct str *note = notes_of(out->arena, &d->dish[dish], h, &n);

	put_findings(&allergens, d, (int)dish, "allergen");
	if (n == 0 && allergens.n == 0)
		return;
	buf_put_z(out, "\nNotes\n");
	buf_put(out, buf_str(&allergens));
	for (size_t i = 0; i < n; i++)
		put_line(out, "- ", note[i]);
}

static void
put_dish(struct buf *out, const struct draft *d, size_t dish, const struct house *h)
{
	struct buf title = buf_in(out->arena);

	text_dish_title(&title, &d->dish[dish]);
	put_line(out, "== ", buf_str(&title));
	put_facts(out, h, &d->dish[dish]);
	put_ingredients(out, h, &d->dish[dish]);
	put_steps(out, &d->dish[dish]);
	put_notes(out, d, dish, h);
	buf_put_char(out, '\n');
}

/* What is heard in the video and is not so, by the author's answers:
 *   - 4:36 "four tablespoons" should be: 2 tablespoons. */
static void
put_corrections(struct buf *out, const struct draft *d)
{
	struct buf list = buf_in(out->arena);
	size_t n;
	const struct pickup *p = pickups_of(out->arena, d, &n);

	for (size_t i = 0; i < n; i++) {
		if (p[i].correction.n == 0)
			continue;
		buf_put_z(&list, "- ");
		print_clock(&list, p[i].finding->place.at_ms);
		put_line(&list, p[i].finding->place.at_ms >= 0 ? " " : "", p[i].correction);
	}
	if (list.n == 0)
		return;
	buf_put_z(out, "Corrections\n");
	buf_put(out, buf_str(&list));
}

static void
write_description(const struct draft *d, const struct grammar *g,
    const struct tamis_style *style, struct buf *out)
{
	struct tamis_style both = *style;
	struct house house = house_of(d, g, &both);

	/* Viewers are everywhere. */
	if (both.units == UNITS_SAID)
		both.units = UNITS_BOTH;
	if (str_trim(d->script->title).n) {
		put_line(out, "", d->script->title);
		buf_put_char(out, '\n');
	}
	put_chapters(out, d);
	for (size_t i = 0; i < d->dishes; i++)
		put_dish(out, d, i, &house);
	put_corrections(out, d);
	if (out->n == 0)
		buf_put_z(out, "No recipe was found in this episode.\n");
}

const struct writer writer_description = {
    .name = "description",
    .extension = "txt",
    .help = "the text under a video: chapters, ingredients, steps in short",
    .package = "description",
    .write = write_description,
};
