/* SPDX-License-Identifier: ISC */
/*
 * Where the first dish begins, and which it is: the last name that the cook
 * turns to before the work; else what the plan has first.
 *
 *     "... so tacos and beans. Okay, tacos first: ..." -> tacos, there
 */
#include "outline/outline.h"

enum { NEAR_MS = 12000, LEAD = 4, AGAIN_MAX = 200, WORDS_MAX = 80 };

/* Does the cook turn to it after the work has begun? */
static bool
opens_later(const struct outline *o, const struct planned *p)
{
	for (size_t i = 0; p && i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];

		if (x->token > o->content + LEAD && x->kind >= OPENING_TOPIC &&
		    plan_find(&o->plan, x) == p)
			return true;
	}
	return false;
}

static bool
is_better_first(
    const struct outline *o, const struct planned *p, const struct planned *than)
{
	if (!p->main || p->counted || (p->sort < NAME_FOOD && !opens_later(o, p)))
		return false;
	if (!than)
		return true;
	if (p->announced && than->announced && opens_later(o, than) != opens_later(o, p))
		return opens_later(o, than);
	if (p->weak != than->weak)
		return than->weak;
	if (p->announced != than->announced)
		return p->announced;
	return opens_later(o, than) && !opens_later(o, p);
}

static bool
is_said_again(const struct outline *o, const struct opening *x)
{
	size_t at = (size_t)(x - o->openings.said.v);

	for (size_t i = at > AGAIN_MAX ? at - AGAIN_MAX : 0; i < at; i++)
		if (str_is(o->openings.said.v[i].head, x->head))
			return true;
	return false;
}

static bool
heads_list(const struct outline *o, const struct opening *x)
{
	size_t cue = o->m->c.tokens.token.v[x->token].cue + 1;

	return cue < o->m->s->cues && o->m->s->cue[cue].kind != CUE_SPEECH;
}

/* Said in the cue where the work begins, or shortly before. */
static bool
is_near(const struct outline *o, const struct opening *x)
{
	const struct maker *m = o->m;
	int64_t at = place_of(m, o->content, o->content + 1).cue_ms;
	int64_t t = place_of(m, x->token, x->token + 1).cue_ms;

	return m->c.tokens.token.v[x->token].cue == m->c.tokens.token.v[o->content].cue ||
	       at - t <= NEAR_MS;
}

/* Is it the only announced dish that the section names where the work begins? */
static bool
leads_work(const struct outline *o, const struct opening *x)
{
	const struct planned *p = plan_find(&o->plan, x);
	uint32_t beg = section_of(o, o->content);

	if (beg == 0 || x->token < beg || !p || !p->main || !p->announced || p->counted ||
	    x->kind == OPENING_WITH || p->sort < NAME_FOOD || p->token >= beg)
		return false;
	for (size_t i = outline_opening(o, beg); i < o->openings.said.n; i++) {
		const struct opening *y = &o->openings.said.v[i];
		const struct planned *q = plan_find(&o->plan, y);

		if (y->token > o->content + LEAD)
			break;
		if (q && q != p && q->main && q->announced && q->sort > NAME_TOOL)
			return false;
	}
	return true;
}

static bool
opens_first(const struct outline *o, const struct opening *x)
{
	const struct planned *p = plan_find(&o->plan, x);

	if (x->kind == OPENING_FIRST)
		return p || x->sort >= NAME_MAYBE ||
		       (x->sort == NAME_FOOD && !plan_is_clear(&o->plan));
	if (x->kind == OPENING_BARE && p && p->main && p->announced && !p->weak)
		return is_said_again(o, x);
	if (x->kind < OPENING_TOPIC || x->sort == NAME_PART ||
	    (p && (!p->main || (p->counted && x->lone))))
		return false;
	if (x->kind == OPENING_HEADING && heads_list(o, x))
		return false;
	if (!p && x->sort < NAME_DISH && !x->numbered)
		return false;
	if (x->kind == OPENING_TURN && opens_later(o, p))
		return false;
	return is_near(o, x) || is_said_again(o, x);
}

/* Is x a better sign of where the first dish begins than y before it? */
static bool
is_better_opening(const struct outline *o, const struct opening *x, const struct opening *y)
{
	const struct planned *p = plan_find(&o->plan, x), *q = plan_find(&o->plan, y);

	if (q && q->main && (y->kind == OPENING_FIRST || x->sort == NAME_PART))
		return false;
	if (q && q->main && q->announced && !q->weak && p != q)
		return p && p->main && p->announced && !p->weak;
	return true;
}

const struct opening *
first_opening(const struct outline *o)
{
	const struct opening *best = NULL;

	for (size_t i = 0; i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];

		if (x->token <= o->content + LEAD && opens_first(o, x) &&
		    (!best || is_better_opening(o, x, best)))
			best = x;
	}
	for (size_t i = outline_opening(o, section_of(o, o->content));
	     i < o->openings.said.n && !best; i++) {
		if (o->openings.said.v[i].token > o->content + LEAD)
			break;
		if (leads_work(o, &o->openings.said.v[i]))
			best = &o->openings.said.v[i];
	}
	return best;
}

const struct planned *
first_planned(const struct outline *o)
{
	const struct planned *best = NULL;

	for (size_t i = 0; i < o->plan.item.n; i++) {
		const struct planned *p = &o->plan.item.v[i];

		if (!named_is_open(o, p) && is_better_first(o, p, best))
			best = p;
	}
	return best;
}

/* A dish that only the title names begins with the first words. */
uint32_t
first_spoken(const struct outline *o)
{
	const struct maker *m = o->m;

	for (uint32_t i = 0; i < m->c.tokens.token.n; i++)
		if (m->s->cue[m->c.tokens.token.v[i].cue].kind == CUE_SPEECH &&
		    !token_has(m, i, "BREAK"))
			return i;
	return 0;
}

/* Names that are announced after a token and before the work. */
static bool
is_overview(const struct outline *o, uint32_t beg)
{
	for (size_t i = outline_opening(o, beg); i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];
		const struct planned *p = plan_find(&o->plan, x);

		if (x->token >= o->content)
			break;
		if (p && p->main && p->announced && p->sort > NAME_TOOL)
			return true;
	}
	return false;
}

uint32_t
first_words(const struct outline *o)
{
	uint32_t beg = section_of(o, o->content);

	return beg > 0 && o->content - beg < WORDS_MAX && !is_overview(o, beg) ? beg
									       : o->content;
}

/* Where the work begins, or where the cook turns to a part just before it. */
uint32_t
first_part(const struct outline *o, const struct planned *p)
{
	for (size_t i = 0; i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];

		if (x->token > 0 && x->token <= o->content && x->kind >= OPENING_TOPIC &&
		    x->kind != OPENING_HEADING && x->sort == NAME_PART && is_near(o, x))
			return plan_find(&o->plan, x) == p ? x->token : x->token - 1;
	}
	return first_words(o);
}
