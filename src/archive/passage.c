/* SPDX-License-Identifier: ISC */
/*
 * From a draft to its passages, and reading them again.
 */
#include "archive/passage.h"

#include <inttypes.h>
#include <stdlib.h>

static const char letters[] = "dpigasctk";

/* ---- spots -------------------------------------------------------------- */

struct spot_mark {
	uint32_t beg;
	int dish;
};

struct marks {
	struct arena *arena;
	VEC(struct spot_mark) mark;
};

static void
add_mark(struct marks *m, const struct place *p, size_t dish)
{
	vec_push(m->arena, &m->mark, (struct spot_mark){p->span.beg, (int)dish});
}

static void
mark_part(struct marks *m, const struct part *p, size_t dish)
{
	for (size_t i = 0; i < p->ingredients; i++)
		for (size_t u = 0; u < p->ingredient[i].uses; u++)
			add_mark(m, &p->ingredient[i].use[u], dish);
	for (size_t i = 0; i < p->steps; i++)
		add_mark(m, &p->step[i].place, dish);
}

static int
order_marks(const void *left, const void *right)
{
	const struct spot_mark *a = left, *b = right;

	return a->beg != b->beg ? (a->beg > b->beg) - (a->beg < b->beg) : a->dish - b->dish;
}

struct spots
spots_of_draft(struct arena *arena, const struct draft *d)
{
	struct marks m = {.arena = arena};

	for (size_t i = 0; i < d->dishes; i++) {
		add_mark(&m, &d->dish[i].place, i);
		for (size_t p = 0; p < d->dish[i].parts; p++)
			mark_part(&m, &d->dish[i].part[p], i);
	}
	if (m.mark.n)
		qsort(m.mark.v, m.mark.n, sizeof *m.mark.v, order_marks);
	return (struct spots){m.mark.v, m.mark.n, d->dishes};
}

/* How many begin before the byte. */
static size_t
marks_before(const struct spots *s, uint32_t at)
{
	size_t low = 0, high = s->n;

	while (low < high) {
		size_t mid = low + (high - low) / 2;

		if (s->v[mid].beg < at)
			low = mid + 1;
		else
			high = mid;
	}
	return low;
}

int
spot_of(const struct spots *s, uint32_t at)
{
	size_t n = marks_before(s, at + 1);

	if (s->dishes == 1)
		return 0;
	return n ? s->v[n - 1].dish : -1;
}

/* The dish that most of what begins inside belongs to; where nothing does, the
 * one that went on. */
static int
spot_of_span(const struct spots *s, struct span source)
{
	size_t beg = marks_before(s, source.beg), end = marks_before(s, source.end);
	size_t most = 0;
	int best = spot_of(s, source.beg);

	for (size_t i = beg, run; i < end && s->dishes > 1; i += run) {
		for (run = 1; i + run < end && s->v[i + run].dish == s->v[i].dish; run++)
			continue;
		if (run > most) {
			most = run;
			best = s->v[i].dish;
		}
	}
	return best;
}

/* ---- writing ------------------------------------------------------------ */

/* A line of its own, whatever the text holds. */
static void
put_passage(struct buf *b, const struct passage *p)
{
	if (p->text.n == 0)
		return;
	buf_fmt(b, "%c\t%d\t%" PRId64 "\t%" PRId64 "\t", letters[p->kind], p->entry,
	    p->beg_ms, p->end_ms);
	for (size_t i = 0; i < p->text.n; i++) {
		unsigned char c = (unsigned char)p->text.p[i];

		buf_put_char(b, c < ' ' || c == 0x7f ? ' ' : (char)c);
	}
	buf_put_char(b, '\n');
}

static struct passage
passage_at(enum passage_kind kind, size_t entry, const struct place *p, struct str text)
{
	return (struct passage){kind, (int)entry, p->at_ms, p->at_ms, text};
}

static void
put_words(struct buf *b, size_t entry, const struct place *p, struct str text)
{
	struct passage more = passage_at(PASSAGE_MORE, entry, p, text);

	put_passage(b, &more);
}

static void
put_ingredient(struct buf *b, size_t entry, const struct ingredient *in)
{
	struct passage p = passage_at(PASSAGE_FOOD, entry, &in->place, in->item);

	put_passage(b, &p);
	if (str_find(in->item, in->key) == in->item.n)
		put_words(b, entry, &in->place, in->key);
	if (str_find(in->key, in->kind) == in->key.n)
		put_words(b, entry, &in->place, in->kind);
	put_words(b, entry, &in->place, in->group);
	for (size_t i = 0; i < in->alternatives; i++)
		put_words(b, entry, &in->place, in->alternative[i].item);
}

/* Each action of the part once. */
static void
put_steps(struct buf *b, size_t entry, const struct part *part)
{
	for (size_t i = 0; i < part->steps; i++) {
		const struct step *s = &part->step[i];
		struct passage p = passage_at(PASSAGE_STEP, entry, &s->place, s->text);
		bool before = false;

		put_passage(b, &p);
		for (size_t k = 0; k < i; k++)
			before = before || str_is(part->step[k].action, s->action);
		p = passage_at(PASSAGE_ACT, entry, &s->place, s->action);
		if (!before)
			put_passage(b, &p);
	}
}

static void
put_dish(struct buf *b, size_t entry, const struct dish *d)
{
	struct passage p = passage_at(PASSAGE_NAME, entry, &d->place, d->name);

	put_passage(b, &p);
	for (size_t i = 0; i < d->equipments; i++) {
		p = passage_at(
		    PASSAGE_GEAR, entry, &d->equipment[i].place, d->equipment[i].item);
		put_passage(b, &p);
	}
	for (size_t i = 0; i < d->parts; i++) {
		p = passage_at(PASSAGE_PART, entry, &d->part[i].place, d->part[i].name);
		put_passage(b, &p);
		for (size_t k = 0; k < d->part[i].ingredients; k++)
			put_ingredient(b, entry, &d->part[i].ingredient[k]);
		put_steps(b, entry, &d->part[i]);
	}
}

static void
put_cues(struct buf *b, const struct draft *d, const struct spots *spots)
{
	const struct script *s = d->script;

	for (size_t i = 0; i < s->cues; i++) {
		const struct cue *c = &s->cue[i];
		struct passage p = {PASSAGE_SAID, -1, c->beg_ms, c->end_ms,
		    str_trim(str_cut(s->text, c->text.beg, c->text.end))};

		p.entry = spot_of_span(spots, script_source(s, c->text));
		if (c->kind != CUE_TITLE)
			put_passage(b, &p);
	}
}

struct str
passages_of_draft(struct arena *arena, const struct draft *d)
{
	struct buf b = buf_in(arena);
	struct spots spots = spots_of_draft(arena, d);
	struct passage title = {PASSAGE_TITLE, -1, -1, -1, d->script->title};

	put_passage(&b, &title);
	for (size_t i = 0; i < d->dishes; i++) {
		title.entry = (int)i;
		put_passage(&b, &title);
		put_dish(&b, i, &d->dish[i]);
	}
	put_cues(&b, d, &spots);
	return buf_str(&b);
}

/* ---- reading ------------------------------------------------------------ */

static int64_t
number_of(struct str s)
{
	bool below = str_starts(s, STR("-"));
	uint64_t v = 0;

	str_to_u64(str_cut(s, below, s.n), &v);
	return below ? -(int64_t)v : (int64_t)v;
}

bool
passage_next(struct str *rest, struct passage *out)
{
	struct str line;
	const char *letter;

	if (!rest->p || rest->n == 0)
		return false;
	line = str_next(rest, '\n');
	letter = line.n ? strchr(letters, line.p[0]) : NULL;
	out->kind = letter ? (enum passage_kind)(letter - letters) : PASSAGE_MORE;
	str_next(&line, '\t');
	out->entry = (int)number_of(str_next(&line, '\t'));
	out->beg_ms = number_of(str_next(&line, '\t'));
	out->end_ms = number_of(str_next(&line, '\t'));
	out->text = line;
	return true;
}

void
passage_columns(
    struct arena *arena, struct str passages, int entry, struct str column[PASSAGE_COLUMNS])
{
	struct buf b[PASSAGE_COLUMNS];
	struct passage p;

	for (size_t i = 0; i < PASSAGE_COLUMNS; i++)
		b[i] = buf_in(arena);
	while (passage_next(&passages, &p)) {
		struct buf *to = &b[p.kind == PASSAGE_MORE ? PASSAGE_FOOD : p.kind];

		if (p.entry != entry)
			continue;
		buf_put(to, p.text);
		buf_put_char(to, '\n');
	}
	for (size_t i = 0; i < PASSAGE_COLUMNS; i++)
		column[i] = buf_str(&b[i]);
}
