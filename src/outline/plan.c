/* SPDX-License-Identifier: ISC */
/*
 * Makes the plan of names that are announced.
 *
 *     "Tonight it's fish stew with a garlic mayo, and oat rolls." -> fish stew,
 *     oat rolls; garlic mayo goes with one
 */
#include "outline/plan.h"

enum { PLAN_MAX = 60 };
enum { LEAD = 4 }; /* tokens: the first words of the work may hold the name */

bool
name_has_word(struct str name, struct str word)
{
	while (name.p)
		if (str_is(str_next(&name, ' '), word))
			return true;
	return false;
}

bool
name_is_part(const struct opening *x, enum name_sort sort)
{
	return x->sort == NAME_PART && sort < NAME_EITHER;
}

bool
name_is_half(struct str name, const struct opening *x)
{
	size_t and = str_find(name, STR(" and "));

	return x->lone && and < name.n &&
	       (str_is(str_cut(name, 0, and), x->name) ||
		   str_is(str_cut(name, and+5, name.n), x->name));
}

struct planned *
plan_find(const struct plan *p, const struct opening *x)
{
	for (size_t i = 0; i < p->item.n; i++)
		if (name_is_same(p->item.v[i].name, x->name) &&
		    !name_is_half(p->item.v[i].name, x) &&
		    (!p->item.v[i].counted || x->lone))
			return &p->item.v[i];
	for (size_t i = 0; i < p->item.n; i++) {
		struct planned *q = &p->item.v[i];

		if (name_is_part(x, q->sort) || name_is_half(q->name, x))
			continue;
		if (str_is(q->head, x->head) && (x->lone || q->counted))
			return q;
		if (x->lone && q->announced && q->wide.n && str_is(q->wide, x->head))
			return q;
		/* "the cucumber" may stand for a "cucumber salad". */
		if (x->lone && q->announced && name_has_word(name_own(q->name), x->head))
			return q;
	}
	return NULL;
}

bool
plan_is_clear(const struct plan *p)
{
	for (size_t i = 0; i < p->item.n; i++)
		if (p->item.v[i].main && p->item.v[i].announced && !p->item.v[i].weak &&
		    !p->item.v[i].counted)
			return true;
	return false;
}

static bool
announces(const struct opening *x)
{
	return !x->day && (x->kind == OPENING_TODAY || x->kind == OPENING_ALSO ||
			      x->kind >= OPENING_TOPIC);
}

static bool
is_made_today(const struct opening *x)
{
	return x->kind == OPENING_TODAY || x->kind == OPENING_TURN ||
	       x->kind == OPENING_FIRST;
}

static bool
is_weak(const struct opening *x)
{
	if (x->day)
		return true;
	if (x->kind >= OPENING_TURN)
		return x->sort < NAME_FOOD;
	return x->sort < NAME_MAYBE || (x->sort == NAME_MAYBE && x->lone);
}

static void
add(struct plan *p, const struct opening *x, bool main)
{
	struct planned *q = plan_find(p, x);

	if (p->item.n == PLAN_MAX && (!q || q->counted))
		return;
	if (!q || q->counted) {
		vec_push(p->arena, &p->item,
		    (struct planned){x->name, x->head, x->wide, x->sort, main || q,
			is_weak(x), announces(x), x->counted, is_made_today(x), x->token});
		return;
	}
	q->weak = q->weak && is_weak(x);
	q->announced = q->announced || announces(x);
	q->made_today = q->made_today || is_made_today(x);
	q->token = x->token < q->token ? x->token : q->token;
	if (x->name.n > q->name.n && name_ends(name_own(x->name), name_own(q->name)))
		q->name = x->name;
}

/* May the name stand for a dish of its own in an overview? */
static bool
is_main(const struct opening *x)
{
	switch (x->sort) {
	case NAME_TOOL:
		return false;
	case NAME_UNLISTED:
	case NAME_FOOD:
		return !x->pantry && !(x->definite && x->kind == OPENING_TURN) &&
		       (x->kind == OPENING_TODAY || x->kind == OPENING_TURN ||
			   x->kind == OPENING_ALSO);
	case NAME_MAYBE:
		return !x->lone || x->kind == OPENING_TODAY || x->kind == OPENING_TURN ||
		       x->kind == OPENING_ALSO;
	case NAME_PART:
		return x->counted || (x->kind == OPENING_TURN && !x->definite);
	default:
		return true;
	}
}

static bool
is_planning(const struct opening *x)
{
	switch (x->kind) {
	case OPENING_BACK:
	case OPENING_DONE:
	case OPENING_HEADING:
	case OPENING_FOR:
	case OPENING_FIRST:
	case OPENING_NEXT:
		return false;
	case OPENING_TOPIC:
	case OPENING_BARE:
		return x->sort >= NAME_MAYBE && x->sort != NAME_PART &&
		       (x->sort > NAME_MAYBE || !x->lone);
	default:
		return true;
	}
}

static void
add_said(struct plan *p, const struct openings *said, uint32_t work)
{
	for (size_t i = 0; i < said->said.n; i++) {
		const struct opening *x = &said->said.v[i];

		if (work != UINT32_MAX && x->token > work + LEAD)
			break;
		if (!is_planning(x) && !plan_find(p, x))
			continue;
		if (x->kind == OPENING_WITH ? x->sort > NAME_TOOL : is_main(x))
			add(p, x, x->kind != OPENING_WITH);
		else if (x->sort == NAME_PART)
			add(p, x, false);
	}
}

static void
add_title(struct plan *p, const struct openings *title)
{
	for (size_t i = 0; i < title->said.n; i++) {
		struct opening x = title->said.v[i];

		x.token = UINT32_MAX;
		if (x.kind != OPENING_WITH)
			x.kind = x.sort == NAME_PART ? OPENING_ALSO : OPENING_TURN;
		if (x.sort > NAME_TOOL)
			add(p, &x, x.kind != OPENING_WITH && is_main(&x));
	}
}

/* "Three things today: a stew, a bread, and a butter": all three are dishes. */
static void
promote(struct plan *p, size_t things)
{
	size_t mains = 0;

	for (size_t i = 0; i < p->item.n; i++)
		mains += p->item.v[i].main && p->item.v[i].sort > NAME_TOOL &&
			 !p->item.v[i].counted;
	for (size_t i = 0; i < p->item.n && mains < things; i++)
		if (!p->item.v[i].main && p->item.v[i].announced &&
		    p->item.v[i].sort >= NAME_EITHER)
			p->item.v[i].main = ++mains;
}

void
plan_make(struct plan *p, const struct openings *said, const struct openings *title,
    uint32_t work)
{
	bool any = false;

	add_title(p, title);
	add_said(p, said, work);
	for (size_t i = 0; i < p->item.n; i++)
		any = any || (p->item.v[i].main && p->item.v[i].sort > NAME_TOOL);
	promote(p, said->things);
	/* Where nothing else is announced, a sauce is the dish. */
	for (size_t i = 0; i < p->item.n && !any; i++)
		if (p->item.v[i].made_today && p->item.v[i].sort == NAME_PART)
			p->item.v[i].main = any = true;
}
