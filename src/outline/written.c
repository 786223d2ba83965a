/* SPDX-License-Identifier: ISC */
/*
 * Gives the lists that are written before the cooking their dishes and parts.
 *
 *     "Traybake", "For the drizzle:" above lines of foods
 */
#include "outline/outline.h"

static uint32_t
clause_beg(const struct maker *m, const struct clause *q)
{
	return chart_top(&m->c)->node.v[q->beg].beg;
}

static uint32_t
clause_end(const struct maker *m, const struct clause *q)
{
	return chart_top(&m->c)->node.v[q->end - 1].end;
}

/* A heading of a list: "Traybake", "For the drizzle". */
static void
take_written(struct outline *o, const struct opening *x)
{
	const struct planned *p = plan_find(&o->plan, x);
	int dish = named_dish(o, x);
	bool part = x->sort == NAME_PART || x->sort == NAME_EITHER || x->with_for;

	if (dish >= 0 && x->with_for &&
	    str_find(o->m->s->title, STR(" with ")) < o->m->s->title.n)
		dish = -1;
	if (dish >= 0)
		outline_turn(o, x->token, dish, 0);
	else if (p && p->main && !named_is_open(o, p)) {
		outline_turn(o, x->token, named_add(o, x), 0);
		o->dish.v[o->now_dish].written = true;
	} else if (part)
		outline_turn(o, x->token, 0, named_add_part(o, 0, x));
}

/* What is written before the first dish is begun belongs to the dishes, too. */
void
written_read(struct outline *o, const struct opening *first)
{
	struct maker *m = o->m;
	uint32_t begin = o->dish.v[0].token;
	int part = -1;

	m->turn.n = 0;
	outline_turn(
	    o, 0, m->s->cue[m->c.tokens.token.v[0].cue].kind == CUE_SPEECH ? -1 : 0, 0);
	for (size_t i = 0; i < o->openings.said.n; i++)
		if (o->openings.said.v[i].kind == OPENING_HEADING &&
		    o->openings.said.v[i].token < begin)
			take_written(o, &o->openings.said.v[i]);
	for (size_t i = 0; i < m->clause.n && clause_end(m, &m->clause.v[i]) <= begin;
	     i++) {
		struct clause *q = &m->clause.v[i];

		for (size_t t = 0; t < m->turn.n && work_is_written(m, q); t++)
			if (m->turn.v[t].token <= clause_beg(m, q)) {
				q->dish = m->turn.v[t].dish;
				q->part = m->turn.v[t].part;
			}
	}
	if (first)
		part = named_part(o, 0, first);
	outline_turn(o, begin, 0, part < 0 ? 0 : part);
}
