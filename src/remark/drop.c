/* SPDX-License-Identifier: ISC */
/*
 * Takes out of the draft what only looks like an ingredient or a step: people
 * who are called a food, food that is said not to be there or that is only a
 * sign to look for, comments on what cooking does.
 */
#include "base/part.h"
#include "remark/remarks.h"

#include <stdlib.h>

enum { NO_REACH = 16 };

/* ---- ingredients without an amount ------------------------------------------ */

/* "Your nan rang everybody", "Honey, is that the timer?" */
static bool
is_person(const struct maker *m, uint32_t at)
{
	static const char *const owners[] = {"my", "your", "his", "her", "our", "their"};
	bool starts =
	    at == 0 || token_has(m, at - 1, "STOP") || token_has(m, at - 1, "BREAK");

	if (starts && token_has(m, at + 1, "COMMA") && token_has(m, at + 2, "AUX"))
		return true;
	for (size_t i = 0; at > 0 && i < sizeof owners / sizeof *owners; i++)
		if (token_is(m, at - 1, owners[i]) &&
		    (token_has(m, at, "PERSON") || token_has(m, at + 1, "SPEAKS")))
			return true;
	return false;
}

/* "did you put the ham in? There's no ham in this one" */
static bool
is_denied(const struct maker *m, uint32_t at)
{
	uint32_t end = at + NO_REACH;
	struct str key = food_key(m, at);

	for (uint32_t i = at + 1; i < end && i < m->c.tokens.token.n; i++)
		if (token_is(m, i - 1, "no") && key.n && str_is(food_key(m, i), key))
			return true;
	return false;
}

/* Where cues are told, in script order. */
struct cues {
	VEC(struct span) span;
};

static int
order_spans(const void *left, const void *right)
{
	const struct span *a = left, *b = right;

	return (a->beg > b->beg) - (a->beg < b->beg);
}

static void
cues_find(const struct maker *m, struct cues *c)
{
	for (size_t d = 0; d < m->d->dishes; d++)
		for (size_t p = 0; p < m->d->dish[d].parts; p++)
			for (size_t i = 0; i < m->d->dish[d].part[p].steps; i++) {
				const struct doneness *x =
				    &m->d->dish[d].part[p].step[i].doneness;

				if (x->place.span.end)
					vec_push(m->a, &c->span, x->place.span);
			}
	if (c->span.n)
		qsort(c->span.v, c->span.n, sizeof *c->span.v, order_spans);
}

/* "until the cabbage goes soft" */
static bool
is_sign(const struct cues *c, struct place use)
{
	size_t low = 0, high = c->span.n;

	while (low < high) {
		size_t mid = low + (high - low) / 2;

		if (c->span.v[mid].beg <= use.span.beg)
			low = mid + 1;
		else
			high = mid;
	}
	return low && use.span.end <= c->span.v[low - 1].end;
}

static bool
is_none(const struct maker *m, const struct cues *c, const struct ingredient *in)
{
	if (in->amount.present || in->size.present || in->listed || in->uses != 1)
		return false;
	for (uint32_t i = token_from(m, in->use[0].span.beg);
	     i < token_from(m, in->use[0].span.end); i++)
		if (token_reading(m, i, "FOOD") && (is_person(m, i) || is_denied(m, i)))
			return true;
	return is_sign(c, in->use[0]);
}

/* ---- steps that are comments -------------------------------------------------- */

/* "they freeze great", "if it's crowded they steam", "it's going to cook again" */
static bool
is_comment(const struct maker *m, const struct step *s)
{
	uint32_t at = token_from(m, s->place.span.beg);
	const struct clause *q = clause_of(m, at);
	const struct node *verb;

	if (!q || q->verb >= q->end || s->duration.present || s->doneness.text.n ||
	    s->doneness.known || s->temperature.present)
		return false;
	verb = &chart_top(&m->c)->node.v[q->verb];
	if ((token_has(m, verb->beg, "PRON") || token_is(m, verb->beg, "they")) &&
	    token_has(m, verb->end, "FINEWORD"))
		return true;
	if (node_attribute(&m->c, verb, "thing").n == 0)
		return false;
	/* "they'll cook in the pie" */
	for (uint32_t i = verb->beg; i < verb->end; i++)
		if (token_is(m, i, "'ll") || token_is(m, i, "will"))
			return true;
	return token_has(m, verb->end, "FINEWORD") || token_is(m, verb->end, "again") ||
	       is_conditional(m, verb->beg);
}

static void
drop_from_part(const struct maker *m, const struct cues *c, struct part *p)
{
	for (size_t i = p->steps; i-- > 0;)
		if (is_comment(m, &p->step[i]))
			part_drop_step(p, i);
	for (size_t i = p->ingredients; i-- > 0;)
		if (is_none(m, c, &p->ingredient[i]))
			part_drop_ingredient(p, i);
}

void
drop_lookalikes(struct maker *m)
{
	struct cues c = {.span = {NULL, 0, 0}};

	cues_find(m, &c);
	for (size_t d = 0; d < m->d->dishes; d++)
		for (size_t p = 0; p < m->d->dish[d].parts; p++)
			drop_from_part(m, &c, &m->d->dish[d].part[p]);
}
