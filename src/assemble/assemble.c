/* SPDX-License-Identifier: ISC */
/*
 * Runs the stage: chart, measures, clauses, outline, steps, roles, times.
 */
#include "assemble/assemble.h"

#include "clause/maker.h"

static bool
is_counted(const struct maker *m, const struct measure *x)
{
	for (size_t i = 0; i < m->counted.n; i++)
		if (m->counted.v[i].beg <= x->place.span.beg &&
		    x->place.span.beg < m->counted.v[i].end)
			return true;
	return false;
}

/* "A blackberry" is a count only where the food goes into the dish. */
static void
drop_counts(struct maker *m)
{
	size_t kept = 0;

	for (size_t i = 0; i < m->measure.n; i++) {
		const struct measure *x = &m->measure.v[i];
		bool article =
		    str_starts(x->text, STR("a ")) || str_starts(x->text, STR("A ")) ||
		    str_starts(x->text, STR("an ")) || str_starts(x->text, STR("An "));

		if (x->kind != MEASURE_COUNT || !article || is_counted(m, x))
			m->measure.v[kept++] = *x;
	}
	m->measure.n = kept;
}

static void
take_slots(struct maker *m, struct part *p)
{
	for (size_t i = 0; i < p->steps; i++) {
		struct step *s = &p->step[i];
		struct buf text = buf_in(m->a);

		s->slot = slots_take(m->slots, &text, s->text, &s->slots);
		s->text = buf_str(&text);
	}
}

struct maker *
assemble_draft(struct arena *a, const struct grammar *g, struct script *s,
    const struct tamis_options *o)
{
	struct maker *m = arena_new(a, struct maker);

	m->a = a;
	m->g = g;
	m->s = s;
	m->slots = arena_new(a, struct slots);
	m->d = arena_new(a, struct draft);
	m->d->arena = a;
	m->d->script = s;
	m->d->language = g->language;
	chart_make(&m->c, g, s, a);
	m->region = o->region ? o->region : region_of(&m->c);
	m->d->region = m->region;
	m->d->region_stated = o->region != NULL;
	measures_collect(m);
	clauses_cut(m);
	outline_make(m);
	steps_make(m);
	ingredients_finish(m);
	for (size_t i = 0; i < m->d->dishes; i++)
		for (size_t k = 0; k < m->d->dish[i].parts; k++)
			take_slots(m, &m->d->dish[i].part[k]);
	yields_find(m);
	roles_give(m);
	schedule_make(m);
	drop_counts(m);
	measures_drop_yields(m);
	m->d->measure = m->measure.v;
	m->d->measures = m->measure.n;
	return m;
}
