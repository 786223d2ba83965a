/* SPDX-License-Identifier: ISC */
/*
 * What to buy for all dishes of an episode.
 */
#include "publish/basket.h"

#include <stdlib.h>

#include "base/print.h"
#include "grammar/inflect.h"
#include "grammar/units.h"
#include "house/portion.h"
#include "publish/shop.h"

/* One sum under way. While all of it is said in one unit, total is in that
 * unit; from the second unit on in the base of both. */
struct adding {
	struct basket_sum sum;
	VEC(const struct unit *) said;
	bool in_base, mixed;
};

struct line {
	struct basket_item item;
	struct str group;
	VEC(struct adding) adding;
	VEC(size_t) dish;
	size_t order; /* in the script */
};

struct filling {
	struct arena *arena;
	const struct draft *draft;
	const struct grammar *grammar;
	VEC(struct line) line;
};

static bool
same_size(const struct amount *a, const struct amount *b)
{
	bool here = a->present && a->known, there = b->present && b->known;

	if (!here || !there)
		return here == there;
	return a->unit == b->unit && ratio_order(a->min, b->min) == 0 &&
	       ratio_order(a->max, b->max) == 0;
}

/* Whether amounts in a and b can be added up. */
static bool
same_kind(const struct unit *a, const struct unit *b)
{
	if (!a || !b)
		return a == b;
	if (a->has_base && b->has_base && a->dimension == b->dimension)
		return true;
	return str_is(a->name, b->name);
}

static struct amount
plus(struct amount a, const struct amount *b)
{
	a.min = ratio_add(a.min, b->min);
	a.max = ratio_add(a.max, b->max);
	return a;
}

static struct amount
times_base(struct amount a)
{
	if (a.unit && a.unit->has_base) {
		a.min = unit_to_base(a.unit, a.min);
		a.max = unit_to_base(a.unit, a.max);
	}
	return a;
}

/* Grams or millilitres of a use, in one unit of the base or not known. */
static bool
base_of(const struct ingredient *in, struct amount *out)
{
	const struct amount *a = in->metric.known ? &in->metric : &in->amount;

	if (!a->known || !a->unit || !a->unit->has_base)
		return false;
	if (a->unit->dimension != DIM_MASS && a->unit->dimension != DIM_VOLUME)
		return false;
	*out = times_base(*a);
	return true;
}

static void
weigh(struct basket_sum *s, const struct ingredient *in)
{
	struct amount base;

	if (!s->weighed)
		return;
	s->weighed = base_of(in, &base) &&
		     (!s->base.present || s->base.unit->dimension == base.unit->dimension);
	if (!s->weighed)
		return;
	s->base = s->base.present ? plus(s->base, &base) : base;
}

static void
add_to(struct filling *f, struct adding *to, const struct ingredient *in)
{
	struct amount more = in->amount;
	bool known = false;

	for (size_t i = 0; i < to->said.n; i++)
		known = known || to->said.v[i] == more.unit;
	if (!known) {
		to->mixed = to->mixed || to->said.v[0]->metric != more.unit->metric;
		vec_push(f->arena, &to->said, more.unit);
	}
	if (!known && !to->in_base) {
		to->sum.total = times_base(to->sum.total);
		to->in_base = true;
	}
	if (to->in_base)
		more = times_base(more);
	to->sum.total = plus(to->sum.total, &more);
	weigh(&to->sum, in);
}

static void
add_amount(struct filling *f, struct line *line, const struct ingredient *in)
{
	struct adding fresh = {.sum = {in->amount, in->size, true, {0}}};

	if (!in->amount.present || !in->amount.known) {
		line->item.more = true;
		return;
	}
	for (size_t i = 0; i < line->adding.n; i++) {
		struct adding *to = &line->adding.v[i];

		if (same_kind(to->said.v[0], in->amount.unit) &&
		    same_size(&to->sum.size, &in->size)) {
			add_to(f, to, in);
			return;
		}
	}
	vec_push(f->arena, &fresh.said, in->amount.unit);
	weigh(&fresh.sum, in);
	vec_push(f->arena, &line->adding, fresh);
}

/* "egg" and "eggs": the plural stands for both. */
static bool
is_plural_of(struct arena *a, struct str many, struct str one)
{
	return many.n > one.n && str_is(inflect_plural(a, one), many);
}

/* Of two names for one purchase the shorter: "cold butter" is butter. */
static void
choose_name(struct filling *f, struct basket_item *item, struct str name)
{
	if (is_plural_of(f->arena, item->name, name))
		return;
	if (is_plural_of(f->arena, name, item->name) || name.n < item->name.n)
		item->name = name;
}

static struct line *
line_of(struct filling *f, const struct ingredient *in)
{
	struct str key = in->key.n ? in->key : in->item;
	struct line fresh = {.item = {.name = in->item, .key = key, .optional = true}};

	for (size_t i = 0; i < f->line.n; i++)
		if (str_is(f->line.v[i].item.key, key))
			return &f->line.v[i];
	fresh.group = in->group;
	fresh.order = f->line.n;
	vec_push(f->arena, &f->line, fresh);
	return &f->line.v[f->line.n - 1];
}

static void
add_ingredient(struct filling *f, size_t dish, const struct ingredient *in)
{
	struct line *line = line_of(f, in);

	choose_name(f, &line->item, in->item);
	line->item.optional = line->item.optional && in->optional;
	if (line->dish.n == 0 || line->dish.v[line->dish.n - 1] != dish)
		vec_push(f->arena, &line->dish, dish);
	add_amount(f, line, in);
}

/* Made in another part of the dish: "the streusel". */
static bool
is_made(const struct dish *d, const struct part *here, struct str item)
{
	for (size_t i = 0; i < d->parts; i++)
		if (&d->part[i] != here && d->part[i].name.n &&
		    str_is(d->part[i].name, item))
			return true;
	return false;
}

static void
add_dish(struct filling *f, size_t dish)
{
	const struct dish *d = &f->draft->dish[dish];

	for (size_t i = 0; i < d->parts; i++) {
		const struct part *p = &d->part[i];

		for (size_t j = 0; j < p->ingredients; j++) {
			const struct ingredient *in = &p->ingredient[j];

			if (in->item.n && !str_is_z(in->group, "water") &&
			    !is_made(d, p, in->item))
				add_ingredient(f, dish, in);
		}
	}
}

/* ---- the unit of a sum -------------------------------------------------- */

static bool
is_clean(const struct unit *u, struct ratio v)
{
	if (u->metric)
		return ratio_order(v, ratio_int(1)) >= 0;
	return ratio_mul(v, ratio_int(4)).den == 1 || ratio_mul(v, ratio_int(3)).den == 1;
}

static bool
is_larger(const struct unit *a, const struct unit *b)
{
	return ratio_order(unit_to_base(a, ratio_int(1)), unit_to_base(b, ratio_int(1))) >
	       0;
}

/* The largest that prints well, of those said in the system that was said
 * first; the smallest where none does. */
static const struct unit *
choose_unit(const struct adding *a)
{
	const struct unit *best = NULL, *least = a->said.v[0];

	for (size_t i = 0; i < a->said.n; i++) {
		const struct unit *u = a->said.v[i];

		if (u->metric != a->said.v[0]->metric)
			continue;
		if (is_larger(least, u))
			least = u;
		if (is_clean(u, unit_from_base(u, a->sum.total.min)) &&
		    is_clean(u, unit_from_base(u, a->sum.total.max)) &&
		    (!best || is_larger(u, best)))
			best = u;
	}
	return best ? best : least;
}

static struct basket_sum
finish_sum(const struct adding *a)
{
	struct basket_sum s = a->sum;
	const struct unit *u;
	struct ratio step;

	if (!a->in_base)
		return s;
	u = choose_unit(a);
	s.total.unit = u;
	s.total.min = unit_from_base(u, s.total.min);
	s.total.max = unit_from_base(u, s.total.max);
	if (!a->mixed)
		return s;
	/* No scale shows the digits of a conversion. */
	step = u->metric ? ratio_int(1) : ratio_make(1, 4);
	s.total.min = ratio_round_to(s.total.min, step);
	s.total.max = ratio_round_to(s.total.max, step);
	return s;
}

/* ---- in order ----------------------------------------------------------- */

static void
finish_line(struct filling *f, const struct shop *shop, struct line *line)
{
	struct basket_item *item = &line->item;

	item->sums = line->adding.n;
	item->sum = arena_array(f->arena, line->adding.n + 1, struct basket_sum);
	for (size_t i = 0; i < line->adding.n; i++)
		item->sum[i] = finish_sum(&line->adding.v[i]);
	item->dish = line->dish.v;
	item->dishes = line->dish.n;
	item->section = shop_section(shop, item, line->group);
	item->pack = shop_pack(shop, item, line->group);
}

struct sorted {
	const struct line *line;
	size_t section;
};

static int
order(const void *a, const void *b)
{
	const struct sorted *one = a, *two = b;

	if (one->section != two->section)
		return one->section < two->section ? -1 : 1;
	return one->line->order < two->line->order ? -1 : 1;
}

struct basket
basket_of(struct arena *a, const struct draft *d, const struct grammar *g)
{
	struct filling f = {.arena = a, .draft = d, .grammar = g};
	struct shop shop = shop_of(a, d, g);
	struct sorted *sorted;
	struct basket b;

	for (size_t i = 0; i < d->dishes; i++)
		add_dish(&f, i);
	sorted = arena_array(a, f.line.n + 1, struct sorted);
	b.item = arena_array(a, f.line.n + 1, struct basket_item);
	b.items = f.line.n;
	for (size_t i = 0; i < f.line.n; i++) {
		finish_line(&f, &shop, &f.line.v[i]);
		sorted[i].line = &f.line.v[i];
		sorted[i].section = shop_rank(&shop, f.line.v[i].item.section);
	}
	qsort(sorted, f.line.n, sizeof *sorted, order);
	for (size_t i = 0; i < f.line.n; i++)
		b.item[i] = sorted[i].line->item;
	return b;
}

/* As it was added up, or in the units that the house asks for. */
static void
put_total(struct buf *b, const struct house *h, const struct basket_sum *s)
{
	struct ingredient food = {.amount = s->total};
	struct portion p = portion_of(&food);

	if (s->weighed)
		food.metric = s->base;
	if (h->style->units == UNITS_SAID && !h->style->unit_words)
		print_amount(b, &s->total);
	else
		portion_put(b, h, &p);
}

void
basket_put_sum(struct buf *b, const struct house *h, const struct basket_sum *s)
{
	bool many = ratio_order(s->total.max, ratio_int(1)) > 0;

	if (!s->size.present || !s->size.known) {
		put_total(b, h, s);
		return;
	}
	print_range(b, s->total.min, s->total.max);
	buf_put_z(b, " (");
	portion_put_size(b, h, &s->size);
	buf_put_char(b, ')');
	if (s->total.unit && s->total.unit->name.n) {
		buf_put_char(b, ' ');
		print_unit(b, s->total.unit, many);
	}
}
