/* SPDX-License-Identifier: ISC */
/*
 * The dishes and parts that are begun: found again by their names, added with
 * the best name that was said.
 */
#include "outline/outline.h"

/* More than any episode has; what goes beyond joins the last. */
enum { DISHES_MAX = 100, PARTS_MAX = 40 };

int
named_dish(const struct outline *o, const struct opening *x)
{
	for (size_t i = 0; i < o->dish.n; i++)
		if (name_is_same(o->dish.v[i].name, x->name) &&
		    !(x->lone && name_is_part(x, o->dish.v[i].sort)) &&
		    !name_is_half(o->dish.v[i].name, x))
			return (int)i;
	for (size_t i = 0; i < o->dish.n; i++)
		if (x->lone && !name_is_half(o->dish.v[i].name, x) &&
		    !name_is_part(x, o->dish.v[i].sort) &&
		    (str_is(o->dish.v[i].head, x->head) ||
			str_is(o->dish.v[i].wide, x->head) ||
			name_has_word(name_own(o->dish.v[i].name), x->head)))
			return (int)i;
	return -1;
}

int
named_part(const struct outline *o, int dish, const struct opening *x)
{
	const struct named *d = dish < 0 ? NULL : &o->dish.v[dish];

	for (size_t i = 1; d && i < d->part.n; i++)
		if (name_is_same(d->part.v[i].name, x->name))
			return (int)i;
	for (size_t i = 1; d && i < d->part.n; i++)
		if (x->lone && str_is(d->part.v[i].head, x->head))
			return (int)i;
	return -1;
}

/* The longest name that was said of it. */
static struct str
better_name(const struct outline *o, const struct opening *x)
{
	const struct planned *p = plan_find(&o->plan, x);
	struct str name = p ? name_own(p->name) : STR("");

	return p && (name_ends(name, name_own(x->name)) || (x->lone && !p->counted))
		   ? name
		   : name_own(x->name);
}

/* "carne asada guacamole" in captions without commas: two dishes. */
static struct str
without_others(const struct outline *o, struct str name)
{
	for (size_t i = 0; i < o->dish.n; i++) {
		struct str other = o->dish.v[i].name;

		if (str_starts(name, other) && name.n > other.n && name.p[other.n] == ' ')
			return str_cut(name, other.n + 1, name.n);
	}
	return name;
}

static int
add_dish(struct outline *o, struct named x)
{
	if (o->dish.n == DISHES_MAX)
		return DISHES_MAX - 1;
	x.name = without_others(o, x.name);
	vec_push(o->m->a, &x.part, (struct part_name){STR(""), STR(""), x.token});
	vec_push(o->m->a, &o->dish, x);
	return (int)o->dish.n - 1;
}

int
named_add_planned(struct outline *o, const struct planned *p, uint32_t token)
{
	return add_dish(o, (struct named){.name = name_own(p->name),
			       .head = p->head,
			       .wide = p->wide,
			       .sort = p->sort,
			       .announced = p->announced,
			       .token = token});
}

int
named_add(struct outline *o, const struct opening *x)
{
	return add_dish(o, (struct named){.name = better_name(o, x),
			       .head = x->head,
			       .wide = x->wide,
			       .sort = x->sort,
			       .announced = x->kind >= OPENING_TODAY,
			       .token = x->token});
}

int
named_add_part(struct outline *o, int dish, const struct opening *x)
{
	struct named *d = &o->dish.v[dish];
	int known = named_part(o, dish, x);
	const struct planned *p = plan_find(&o->plan, x);

	if (known >= 0)
		return known;
	if (d->part.n == PARTS_MAX)
		return PARTS_MAX - 1;
	vec_push(o->m->a, &d->part,
	    (struct part_name){
		p && !p->main ? better_name(o, x) : name_own(x->name), x->head, x->token});
	return (int)d->part.n - 1;
}

bool
named_is_open(const struct outline *o, const struct planned *p)
{
	for (size_t i = 0; i < o->dish.n; i++)
		if (name_is_same(o->dish.v[i].name, p->name))
			return true;
	return false;
}

int
named_add_titled(struct outline *o, struct str name, struct str head, uint32_t token)
{
	return add_dish(o, (struct named){.name = name, .head = head, .token = token});
}

bool
named_is_awaited(const struct outline *o, const struct planned *p)
{
	return p && p->main && p->announced && !p->counted && p->sort > NAME_TOOL &&
	       !named_is_open(o, p);
}
