/* SPDX-License-Identifier: ISC */
/*
 * Tells stories and yields from instructions.
 */
#include "assemble/stepper.h"

static bool
tells_yield(const struct maker *m, uint32_t beg, uint32_t end)
{
	const struct level *l = chart_level(&m->c, "yield");
	const struct node *at = l ? level_at(l, beg) : NULL;

	for (; at && at < l->node.v + l->node.n && at->beg < end; at++)
		/* "cut it into eight" is to be done */
		if (at->beg >= beg && node_is(&m->c, at, "YIELD") &&
		    !node_attribute(&m->c, at, "cut").n)
			return true;
	return false;
}

void
story_find(struct maker *m)
{
	unsigned past = grammar_class(m->g, "PASTTIME");

	for (uint32_t i = 0; i < m->c.tokens.token.n && past < CLASSES_MAX; i++)
		if (classset_has(&m->c.tokens.token.v[i].entry->classes, past))
			vec_push(m->a, &m->past, i);
}

/* "last week", "one time": what is said after it happened once. */
bool
story_is_past(const struct maker *m, uint32_t beg, uint32_t end)
{
	size_t lo = 0, hi = m->past.n;

	while (lo < hi) {
		size_t mid = (lo + hi) / 2;

		if (m->past.v[mid] < beg)
			lo = mid + 1;
		else
			hi = mid;
	}
	return lo < m->past.n && m->past.v[lo] < end;
}

/* A yield, or a story of what happened once: no instruction. */
bool
story_is_told(const struct maker *m, const struct clause *q, const struct deed *d)
{
	const struct level *top = chart_top(&m->c);
	uint32_t beg = top->node.v[q->beg].beg, end = top->node.v[q->end - 1].end;

	/* "leave it for an hour to set, and cut it into fifteen squares" */
	if (q->verb < q->end)
		return (tells_yield(m, beg, end) &&
			   !((d->heats || d->passive) && d->duration.known)) ||
		       story_is_past(m, beg, top->node.v[q->verb].end);
	return tells_yield(m, beg, end) || story_is_past(m, beg, end);
}

bool
story_is_state(const struct maker *m, const struct clause *q, const struct deed *d)
{
	const struct node *verb =
	    q->verb < q->end ? &chart_top(&m->c)->node.v[q->verb] : NULL;
	struct field_nodes f;

	return verb && node_attribute(&m->c, verb, "thing").n &&
	       node_field(&m->c, verb, "verb", &f) && !node_has(&m->c, f.v, "ACTION_ED") &&
	       !d->duration.present && !d->temperature.present && !d->doneness.text.n &&
	       !d->doneness.known;
}

bool
story_is_summary(const struct maker *m, const struct clause *q)
{
	const struct node *verb =
	    q->verb < q->end ? &chart_top(&m->c)->node.v[q->verb] : NULL;

	return q->kind == CLAUSE_BE && verb && verb->end - verb->beg >= 2 &&
	       str_is_z(m->c.tokens.token.v[verb->end - 2].norm, "that") &&
	       str_is_z(m->c.tokens.token.v[verb->end - 1].norm, "was");
}

/* A verb without a subject before it. */
static bool
is_imperative(const struct maker *m, const struct clause *q)
{
	struct field_nodes f;
	const struct node *verb =
	    q->verb < q->end ? &chart_top(&m->c)->node.v[q->verb] : NULL;

	return q->kind == CLAUSE_DO && verb && node_field(&m->c, verb, "verb", &f) &&
	       f.v[0].beg == verb->beg;
}

/* A story goes on to the end of its sentence, or to "so", "okay", "today". */
void
story_follow(struct stepper *k, const struct clause *q)
{
	const struct level *top = chart_top(&k->m->c);
	const struct node *first = &top->node.v[q->beg];
	uint32_t end = top->node.v[q->end - 1].end;

	if (q->sentence || node_has(&k->m->c, first, "BOUNDARY") || is_imperative(k->m, q))
		k->past = false;
	for (uint32_t i = first->beg; i < end; i++)
		if (str_is_z(k->m->c.tokens.token.v[i].norm, "today"))
			k->past = false;
}
