/* SPDX-License-Identifier: ISC */
/*
 * What of a script became what of a recipe: marks are collected from the
 * draft, measures are given to the ingredient or step that they stand in, and
 * overlapping marks are cut into stretches.
 */
#include "page/ties.h"

#include <stdlib.h>

#include "grammar/units.h"

/* How far from a step its time may be said, in source bytes. */
enum { NEAR = 1500 };

struct mark {
	struct span span;
	enum ink ink;
	uint32_t thing;
};

struct timed {
	uint32_t at, thing;
	int64_t min_ms, max_ms;
};

struct marks {
	struct ties *ties;
	VEC(struct mark) mark;
	VEC(struct timed) timed; /* steps with a time, in source order */
};

const char *
ink_name(enum ink ink)
{
	static const char *const name[INKS] = {
	    [INK_NONE] = "plain",
	    [INK_STEP] = "step",
	    [INK_DISH] = "dish",
	    [INK_INGREDIENT] = "ingredient",
	    [INK_EQUIPMENT] = "equipment",
	    [INK_DONENESS] = "doneness",
	    [INK_AMOUNT] = "amount",
	    [INK_TIME] = "time",
	    [INK_HEAT] = "heat",
	};

	return name[ink];
}

/* ---- numbers ------------------------------------------------------------ */

uint32_t
thing_yield(const struct ties *t, size_t dish)
{
	return t->dish[dish] + 1;
}

uint32_t
thing_time(const struct ties *t, size_t dish)
{
	return t->dish[dish] + 2;
}

uint32_t
thing_tool(const struct ties *t, size_t dish, size_t tool)
{
	return t->dish[dish] + 3 + (uint32_t)tool;
}

uint32_t
thing_ingredient(const struct ties *t, size_t dish, size_t part, size_t i)
{
	return t->part[dish][part] + 1 + (uint32_t)i;
}

uint32_t
thing_step(const struct ties *t, size_t dish, size_t part, size_t i)
{
	size_t before = t->draft->dish[dish].part[part].ingredients;

	return t->part[dish][part] + 1 + (uint32_t)(before + i);
}

static void
number_things(struct ties *t)
{
	const struct draft *d = t->draft;
	size_t n = 0;

	t->dish = arena_array(t->arena, d->dishes + 1, uint32_t);
	t->part = arena_array(t->arena, d->dishes + 1, uint32_t *);
	for (size_t i = 0; i < d->dishes; i++) {
		const struct dish *dish = &d->dish[i];

		t->dish[i] = (uint32_t)n;
		n += 3 + dish->equipments;
		t->part[i] = arena_array(t->arena, dish->parts + 1, uint32_t);
		for (size_t k = 0; k < dish->parts; k++) {
			t->part[i][k] = (uint32_t)n;
			n += 1 + dish->part[k].ingredients + dish->part[k].steps;
		}
	}
	t->things = (uint32_t)n;
	t->word = arena_array(t->arena, n + 1, uint32_t);
}

/* ---- marks -------------------------------------------------------------- */

static void
mark(struct marks *m, const struct place *p, enum ink ink, uint32_t thing)
{
	size_t end = m->ties->draft->script->source.n;
	struct mark one = {p->span, ink, thing};

	if (p->span.beg < p->span.end && p->span.end <= end)
		vec_push(m->ties->arena, &m->mark, one);
}

static void
mark_ingredient(struct marks *m, const struct ingredient *in, uint32_t thing)
{
	mark(m, &in->place, INK_INGREDIENT, thing);
	for (size_t i = 0; i < in->uses; i++)
		mark(m, &in->use[i], INK_INGREDIENT, thing);
}

static void
mark_step(struct marks *m, const struct step *s, uint32_t thing)
{
	struct timed timed = {
	    s->place.span.beg, thing, s->duration.min_ms, s->duration.max_ms};

	mark(m, &s->place, INK_STEP, thing);
	mark(m, &s->doneness.place, INK_DONENESS, thing);
	if (s->temperature.present)
		mark(m, &s->temperature.place, INK_HEAT, thing);
	if (s->duration.present && s->duration.known)
		vec_push(m->ties->arena, &m->timed, timed);
}

static void
mark_part(struct marks *m, size_t dish, size_t part)
{
	const struct ties *t = m->ties;
	const struct part *p = &t->draft->dish[dish].part[part];

	if (p->name.n)
		mark(m, &p->place, INK_DISH, t->part[dish][part]);
	for (size_t i = 0; i < p->ingredients; i++)
		mark_ingredient(m, &p->ingredient[i], thing_ingredient(t, dish, part, i));
	for (size_t i = 0; i < p->steps; i++)
		mark_step(m, &p->step[i], thing_step(t, dish, part, i));
}

static void
mark_dish(struct marks *m, size_t dish)
{
	const struct ties *t = m->ties;
	const struct dish *d = &t->draft->dish[dish];

	mark(m, &d->place, INK_DISH, t->dish[dish]);
	mark(m, &d->yield_place, INK_AMOUNT, thing_yield(t, dish));
	mark(m, &d->claim_place, INK_TIME, thing_time(t, dish));
	for (size_t i = 0; i < d->equipments; i++)
		mark(m, &d->equipment[i].place, INK_EQUIPMENT, thing_tool(t, dish, i));
	for (size_t i = 0; i < d->parts; i++)
		mark_part(m, dish, i);
}

/* ---- measures ----------------------------------------------------------- */

static enum ink
ink_of(enum measure_kind kind)
{
	if (kind == MEASURE_TEMPERATURE)
		return INK_HEAT;
	return kind == MEASURE_DURATION ? INK_TIME : INK_AMOUNT;
}

static int64_t
to_ms(const struct unit *u, struct ratio v)
{
	return ratio_round(ratio_mul(unit_to_base(u, v), ratio_int(1000)));
}

/* The first timed step that is said at or after an offset. */
static size_t
timed_from(const struct marks *m, uint32_t at)
{
	size_t low = 0, high = m->timed.n;

	while (low < high) {
		size_t middle = low + (high - low) / 2;

		if (m->timed.v[middle].at < at)
			low = middle + 1;
		else
			high = middle;
	}
	return low;
}

/* The step next to the words that takes just this time. */
static uint32_t
timed_step(const struct marks *m, const struct measure *measure)
{
	const struct amount *v = &measure->value;
	uint32_t best = THING_NONE, at = measure->place.span.beg, nearest = NEAR;
	size_t i = timed_from(m, at > NEAR ? at - NEAR : 0);

	if (!v->known || !v->unit || !v->unit->has_base)
		return THING_NONE;
	for (; i < m->timed.n && m->timed.v[i].at < at + NEAR; i++) {
		const struct timed *s = &m->timed.v[i];
		uint32_t away = s->at < at ? at - s->at : s->at - at;

		if (away > nearest || s->min_ms != to_ms(v->unit, v->min) ||
		    s->max_ms != to_ms(v->unit, v->max))
			continue;
		best = s->thing;
		nearest = away;
	}
	return best;
}

static int
timed_order(const void *a, const void *b)
{
	const struct timed *one = a, *two = b;

	if (one->at != two->at)
		return one->at < two->at ? -1 : 1;
	return one->thing < two->thing ? -1 : one->thing > two->thing;
}

/* Amounts and temperatures belong to the mark that they stand in, which the
 * stretches bring together. */
static void
mark_measures(struct marks *m)
{
	const struct draft *d = m->ties->draft;

	if (m->timed.n)
		qsort(m->timed.v, m->timed.n, sizeof *m->timed.v, timed_order);
	for (size_t i = 0; i < d->measures; i++) {
		const struct measure *one = &d->measure[i];
		uint32_t thing = THING_NONE;

		if (one->kind == MEASURE_DURATION && one->role != ROLE_CLAIM)
			thing = timed_step(m, one);
		mark(m, &one->place, ink_of(one->kind), thing);
	}
}

/* ---- stretches ---------------------------------------------------------- */

static int
mark_order(const void *a, const void *b)
{
	const struct mark *one = a, *two = b;

	if (one->span.beg != two->span.beg)
		return one->span.beg < two->span.beg ? -1 : 1;
	if (one->ink != two->ink)
		return one->ink < two->ink ? -1 : 1;
	return one->thing < two->thing ? -1 : one->thing > two->thing;
}

static int
offset_order(const void *a, const void *b)
{
	uint32_t one = *(const uint32_t *)a, two = *(const uint32_t *)b;

	return one < two ? -1 : one > two;
}

/* Every place where a mark begins or ends, once, in order. */
static uint32_t *
cuts_of(struct marks *m, size_t *count)
{
	uint32_t *cut = arena_array(m->ties->arena, 2 * m->mark.n + 1, uint32_t);
	size_t n = 0;

	for (size_t i = 0; i < m->mark.n; i++) {
		cut[2 * i] = m->mark.v[i].span.beg;
		cut[2 * i + 1] = m->mark.v[i].span.end;
	}
	qsort(cut, 2 * m->mark.n, sizeof *cut, offset_order);
	for (size_t i = 0; i < 2 * m->mark.n; i++)
		if (n == 0 || cut[n - 1] != cut[i])
			cut[n++] = cut[i];
	*count = n;
	return cut;
}

static void
stretch_add(struct stretch *s, const struct mark *m)
{
	if (m->ink > s->ink)
		s->ink = m->ink;
	if (m->thing == THING_NONE || s->things == TIES_MOST)
		return;
	for (size_t i = 0; i < s->things; i++)
		if (s->thing[i] == m->thing)
			return;
	s->thing[s->things++] = m->thing;
}

/* Marks that hold the words between two cuts; at most DEPTH_MOST at a time. */
enum { DEPTH_MOST = 32 };

struct open_marks {
	const struct mark *mark[DEPTH_MOST];
	size_t n;
};

static void
close_marks(struct open_marks *o, uint32_t at)
{
	size_t kept = 0;

	for (size_t i = 0; i < o->n; i++)
		if (o->mark[i]->span.end > at)
			o->mark[kept++] = o->mark[i];
	o->n = kept;
}

static void
cut_stretches(struct marks *m)
{
	struct ties *t = m->ties;
	struct open_marks open = {.n = 0};
	size_t cuts, next = 0;
	const uint32_t *cut = cuts_of(m, &cuts);

	qsort(m->mark.v, m->mark.n, sizeof *m->mark.v, mark_order);
	t->stretch = arena_array(t->arena, cuts + 1, struct stretch);
	for (size_t i = 0; i + 1 < cuts; i++) {
		struct stretch s = {.span = {cut[i], cut[i + 1]}};

		close_marks(&open, cut[i]);
		for (; next < m->mark.n && m->mark.v[next].span.beg == cut[i]; next++)
			if (open.n < DEPTH_MOST)
				open.mark[open.n++] = &m->mark.v[next];
		for (size_t k = 0; k < open.n; k++)
			stretch_add(&s, open.mark[k]);
		if (open.n)
			t->stretch[t->stretches++] = s;
	}
}

struct ties
ties_of(struct arena *a, const struct draft *d)
{
	struct ties t = {.arena = a, .draft = d};
	struct marks m = {.ties = &t};

	number_things(&t);
	for (size_t i = 0; i < d->dishes; i++)
		mark_dish(&m, i);
	mark_measures(&m);
	if (m.mark.n)
		cut_stretches(&m);
	return t;
}

const struct stretch *
stretch_at(const struct ties *t, size_t source_at)
{
	size_t low = 0, high = t->stretches;

	while (low < high) {
		size_t middle = low + (high - low) / 2;

		if (t->stretch[middle].span.end <= source_at)
			low = middle + 1;
		else
			high = middle;
	}
	if (low == t->stretches || t->stretch[low].span.beg > source_at)
		return NULL;
	return &t->stretch[low];
}
