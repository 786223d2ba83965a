/* SPDX-License-Identifier: ISC */
/*
 * Finds where the talk of an overview ends and the cooking begins.
 *
 *     "... so today it's stew. | Two pounds of beef, in a hot pan."
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

enum work { WORK_NONE, WORK_WEAK, WORK_SURE };

/* Food in a unit of weight, volume or number: no "pot of chili". */
static bool
is_measured(const struct mention *x)
{
	const struct unit *u = x->amount.unit;

	if (!u && ratio_order(x->amount.max, ratio_int(1)) <= 0 && !x->size.present)
		return false;
	return x->amount.known && x->lexeme &&
	       (!u || u->dimension != DIM_COUNT || x->size.present || u->brief.n == 0 ||
		   str_is_z(u->name, "clove") || str_is_z(u->name, "can"));
}

static bool
has_name(const struct outline *o, uint32_t beg, uint32_t end)
{
	size_t from = outline_opening(o, beg);

	/* A name may begin before the words, but not far. */
	for (size_t i = from > 2 ? from - 2 : 0; i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];

		if (x->token >= end)
			break;
		if (x->token < end && x->end > beg && x->kind >= OPENING_TODAY &&
		    x->kind != OPENING_BARE)
			return true;
	}
	return false;
}

/* Captions run on: in the midst of talk the cook may turn to a dish. */
static bool
has_turn(const struct outline *o, const struct clause *q)
{
	uint32_t beg = clause_beg(o->m, q), end = clause_end(o->m, q);

	for (size_t i = outline_opening(o, beg); i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];

		if (x->token >= end)
			break;
		if (x->kind >= OPENING_TOPIC && x->sort > NAME_FOOD)
			return true;
	}
	return false;
}

/* "a raita to cool it down": what a dish is for. */
static bool
is_purpose(const struct maker *m, uint32_t token)
{
	return str_is_z(m->c.tokens.token.v[token].norm, "to") ||
	       (token > 0 && str_is_z(m->c.tokens.token.v[token - 1].norm, "to"));
}

/* How surely a clause is cooking: a weight, a volume or a temperature is sure;
 * counts of food and actions on things are weak signs. *at: where it shows. */
static enum work
work_of(const struct outline *o, const struct clause *q, uint32_t *at)
{
	const struct maker *m = o->m;
	bool thing = false, amount = false, sure = false;
	uint32_t heater = 0; /* nodes since one was named */
	uint32_t end = q->end;
	struct str kind = lexeme_get(q->action, "kind");

	*at = clause_beg(m, q);
	if ((q->kind == CLAUSE_CHAT || q->kind == CLAUSE_NOT) && !has_turn(o, q))
		end = q->verb;
	for (uint32_t k = q->beg; k < end; k++) {
		const struct node *n = &chart_top(&m->c)->node.v[k];
		struct mention x[16];
		size_t count = mentions_of(m, n, x, 16);

		heater = node_is(&m->c, n, "EQ") ? 1 : heater ? heater + 1 : 0;
		thing = thing || count > 0 || node_is(&m->c, n, "EQ");
		if (!sure && ((node_is(&m->c, n, "HEAT") && !is_purpose(m, n->beg)) ||
				 (node_is(&m->c, n, "TEMP") && heater && heater < 8) ||
				 (count && is_measured(&x[0]) && x[0].amount.unit &&
				     x[0].amount.unit->dimension != DIM_COUNT))) {
			*at = n->beg;
			sure = true;
		}
		amount = amount ||
			 (count > 0 && is_measured(&x[0]) && !has_name(o, n->beg, n->end));
	}
	if (sure)
		return WORK_SURE;
	if (amount || (q->kind == CLAUSE_DO && thing && kind.n &&
			  !is_purpose(m, chart_top(&m->c)->node.v[q->verb].beg) &&
			  !str_is_z(kind, "prepare") && !str_is_z(kind, "serve") &&
			  !lexeme_has(q->action, "light") &&
			  !has_name(o, clause_beg(m, q), clause_end(m, q))))
		return WORK_WEAK;
	return WORK_NONE;
}

bool
work_is_done(const struct outline *o, const struct clause *q)
{
	uint32_t at;

	return work_of(o, q, &at) != WORK_NONE;
}

bool
work_is_written(const struct maker *m, const struct clause *q)
{
	return m->s->cue[q->cue].kind != CUE_SPEECH;
}

/* The end of the last name said before a token; 0 without. */
static uint32_t
last_name_before(const struct outline *o, uint32_t token)
{
	uint32_t last = 0;

	for (size_t i = 0; i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];

		if (x->token < token && x->kind >= OPENING_TODAY &&
		    x->kind != OPENING_BARE && x->sort >= NAME_FOOD)
			last = x->end;
	}
	return last;
}

/* The first token of real work: the first sign of it after the last name that
 * is said before anything sure. */
uint32_t
work_begins(const struct outline *o)
{
	const struct maker *m = o->m;
	uint32_t after = 0, at;
	size_t sure = 0;

	while (sure < m->clause.n && (work_is_written(m, &m->clause.v[sure]) ||
					 work_of(o, &m->clause.v[sure], &at) != WORK_SURE))
		sure++;
	if (sure < m->clause.n)
		after = last_name_before(o, at);
	for (size_t i = 0; i < m->clause.n; i++) {
		const struct clause *q = &m->clause.v[i];

		if (!work_is_written(m, q) && clause_end(m, q) > after &&
		    work_of(o, q, &at) != WORK_NONE && at >= after)
			return at;
	}
	return UINT32_MAX;
}
