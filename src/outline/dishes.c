/* SPDX-License-Identifier: ISC */
/*
 * Makes the draft's dishes and parts of the outline's, but for those that hold
 * nothing.
 */
#include "outline/outline.h"

static bool
has_food(const struct outline *o, int dish)
{
	for (size_t k = 0; k < o->used.n; k++)
		if (o->used.v[k].dish == dish)
			return true;
	return o->dish.v[dish].written;
}

/* Gives what is at a dropped dish to the one before. */
static void
renumber(int *dish, int *part, const int *to)
{
	if (*dish < 0)
		return;
	if (to[*dish] < 0 || (*dish > 0 && to[*dish] == to[*dish - 1]))
		*part = to[*dish] < 0 ? -1 : 0;
	*dish = to[*dish];
}

/* A name that no food followed was no dish. */
static void
drop_empty(struct outline *o)
{
	struct maker *m = o->m;
	int *to = arena_array(m->a, o->dish.n, int);
	int kept = 0;

	for (size_t i = 0; i < o->dish.n; i++)
		to[i] = has_food(o, (int)i) ? kept++ : kept - 1;
	if (kept == 0 || (size_t)kept == o->dish.n)
		return;
	for (size_t i = 0; i < m->clause.n; i++)
		renumber(&m->clause.v[i].dish, &m->clause.v[i].part, to);
	for (size_t i = 0; i < m->turn.n; i++)
		renumber(&m->turn.v[i].dish, &m->turn.v[i].part, to);
	for (size_t i = 0; i < o->dish.n; i++)
		if (to[i] >= 0 && (i == 0 || to[i] > to[i - 1]))
			o->dish.v[to[i]] = o->dish.v[i];
	o->dish.n = (size_t)kept;
}

void
dishes_make(struct outline *o)
{
	struct draft *d = o->m->d;

	drop_empty(o);
	d->dish = arena_array(o->m->a, o->dish.n, struct dish);
	d->dishes = o->dish.n;
	for (size_t i = 0; i < o->dish.n; i++) {
		const struct named *x = &o->dish.v[i];
		struct dish *dish = &d->dish[i];

		dish->name = x->name;
		dish->place = place_of(o->m, x->token, x->token + 1);
		dish->beg_ms = dish->end_ms = dish->place.cue_ms;
		dish->active_ms = dish->total_ms = dish->claimed_ms = -1;
		dish->part = arena_array(o->m->a, x->part.n, struct part);
		dish->parts = x->part.n;
		for (size_t k = 0; k < x->part.n; k++) {
			dish->part[k].name = x->part.v[k].name;
			dish->part[k].place =
			    place_of(o->m, x->part.v[k].token, x->part.v[k].token + 1);
		}
	}
}
