/* SPDX-License-Identifier: ISC */
/*
 * Takes out of the draft what only looks like an ingredient or a step: people
 * who are called a food, food that is said not to be there or that is only a
 * sign to look for, comments on what cooking does.
 */
#include "base/part.h"
#include "remark/remarks.h"

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

/* "until the cabbage goes soft" */
static bool
is_sign(const struct maker *m, struct place use)
{
	for (size_t d = 0; d < m->d->dishes; d++)
		for (size_t p = 0; p < m->d->dish[d].parts; p++) {
			const struct part *part = &m->d->dish[d].part[p];

			for (size_t i = 0; i < part->steps; i++) {
				struct span cue = part->step[i].doneness.place.span;

				if (cue.end && cue.beg <= use.span.beg &&
				    use.span.end <= cue.end)
					return true;
			}
		}
	return false;
}

static bool
is_none(const struct maker *m, const struct ingredient *in)
{
	if (in->amount.present || in->size.present || in->listed || in->uses != 1)
		return false;
	for (uint32_t i = token_from(m, in->use[0].span.beg);
	     i < token_from(m, in->use[0].span.end); i++)
		if (token_reading(m, i, "FOOD") && (is_person(m, i) || is_denied(m, i)))
			return true;
	return is_sign(m, in->use[0]);
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
	return token_has(m, verb->end, "FINEWORD") || token_is(m, verb->end, "again") ||
	       is_conditional(m, verb->beg);
}

static void
drop_from_part(const struct maker *m, struct part *p)
{
	for (size_t i = p->steps; i-- > 0;)
		if (is_comment(m, &p->step[i]))
			part_drop_step(p, i);
	for (size_t i = p->ingredients; i-- > 0;)
		if (is_none(m, &p->ingredient[i]))
			part_drop_ingredient(p, i);
}

void
drop_lookalikes(struct maker *m)
{
	for (size_t d = 0; d < m->d->dishes; d++)
		for (size_t p = 0; p < m->d->dish[d].parts; p++)
			drop_from_part(m, &m->d->dish[d].part[p]);
}
