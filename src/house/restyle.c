/* SPDX-License-Identifier: ISC */
/*
 * A copy of the draft as the house wants it: amounts multiplied, steps printed
 * anew from their slots, words respelled. What was said (measures, findings,
 * places) stays as it is.
 */
#include "house/restyle.h"

#include "base/print.h"
#include "house/portion.h"
#include "house/words.h"

struct restyling {
	struct arena *a;
	struct house house;
	const struct dish *dish; /* the copy */
	struct ratio by;         /* of that dish */
};

static void *
copied(struct arena *a, const void *v, size_t n, size_t size)
{
	return n ? arena_grow(a, v, n, n, size) : NULL;
}

/* ---- amounts -------------------------------------------------------------- */

static bool
is_one(struct ratio r)
{
	return r.num == r.den;
}

static void
scale(const struct restyling *r, struct amount *a)
{
	if (!a->known)
		return;
	a->min = ratio_mul(a->min, r->by);
	a->max = ratio_mul(a->max, r->by);
}

/* Twice and then half is as said. */
static struct ratio
scaled_by(const struct restyling *r, struct ratio before)
{
	struct ratio now = before.den ? ratio_mul(before, r->by) : r->by;

	return is_one(now) ? (struct ratio){0, 0} : now;
}

/* A pinch is a pinch: what has no number is not multiplied, nor is the size of
 * a package. */
static void
restyle_ingredient(const struct restyling *r, struct ingredient *in)
{
	in->item = words_styled(r->a, &r->house, in->item);
	in->preparation = words_styled(r->a, &r->house, in->preparation);
	in->note = words_styled(r->a, &r->house, in->note);
	in->alternative =
	    copied(r->a, in->alternative, in->alternatives, sizeof *in->alternative);
	in->said = copied(r->a, in->said, in->said ? in->uses : 0, sizeof *in->said);
	scale(r, &in->amount);
	scale(r, &in->metric);
	for (size_t i = 0; i < in->alternatives; i++) {
		in->alternative[i].item =
		    words_styled(r->a, &r->house, in->alternative[i].item);
		scale(r, &in->alternative[i].amount);
	}
	for (size_t i = 0; in->said && i < in->uses; i++)
		scale(r, &in->said[i]);
	in->scale = scaled_by(r, in->scale);
}

/* ---- steps ---------------------------------------------------------------- */

static const struct ingredient *
food_of(const struct dish *d, const struct part *p, struct str key)
{
	for (size_t i = 0; key.n && i < p->ingredients; i++)
		if (str_is(p->ingredient[i].key, key))
			return &p->ingredient[i];
	for (size_t k = 0; key.n && k < d->parts; k++)
		for (size_t i = 0; i < d->part[k].ingredients; i++)
			if (str_is(d->part[k].ingredient[i].key, key))
				return &d->part[k].ingredient[i];
	return NULL;
}

static enum tamis_degrees
degrees_of(const struct tamis_style *s)
{
	static const enum tamis_degrees of_units[] = {
	    [UNITS_SAID] = DEGREES_SAID,
	    [UNITS_BOTH] = DEGREES_CELSIUS_FIRST,
	    [UNITS_US] = DEGREES_FAHRENHEIT,
	    [UNITS_METRIC] = DEGREES_CELSIUS,
	};

	return s->degrees == DEGREES_UNITS ? of_units[s->units] : s->degrees;
}

/* "65 g (½ cup)": brackets only where both systems are asked for, for a
 * sentence is no list. */
static void
put_amount(
    struct buf *b, const struct restyling *r, const struct part *p, const struct slot *s)
{
	struct portion portion = {
	    &s->value, food_of(r->dish, p, s->food), r->dish->scale.den != 0};
	struct buf other = buf_in(b->arena);

	portion_put(b, &r->house, &portion);
	if (r->house.style->units == UNITS_BOTH)
		portion_put_other(&other, &r->house, &portion);
	if (other.n)
		buf_fmt(b, " (%.*s)", (int)other.n, other.v);
}

static void
put_slot(struct buf *b, const struct restyling *r, const struct part *p,
    const struct slot *s, struct str text)
{
	struct buf value = buf_in(b->arena);

	if (s->kind == MEASURE_TEMPERATURE)
		print_degrees(&value, &s->value, s->exact, degrees_of(r->house.style));
	else
		put_amount(&value, r, p, s);
	buf_put(b, value.n ? buf_str(&value) : text);
}

static void
restyle_step(const struct restyling *r, const struct part *p, struct step *s)
{
	struct buf text = buf_in(r->a);
	uint32_t at = 0;

	s->slot = copied(r->a, s->slot, s->slots, sizeof *s->slot);
	for (size_t i = 0; i < s->slots; i++) {
		struct slot *v = &s->slot[i];
		struct str old = str_cut(s->text, v->text.beg, v->text.end);

		words_put(&text, &r->house, str_cut(s->text, at, v->text.beg));
		at = v->text.end;
		if (v->kind == MEASURE_AMOUNT)
			scale(r, &v->value);
		v->text.beg = (uint32_t)text.n;
		put_slot(&text, r, p, v, old);
		v->text.end = (uint32_t)text.n;
	}
	words_put(&text, &r->house, str_cut(s->text, at, s->text.n));
	s->text = buf_str(&text);
	s->doneness.text = words_styled(r->a, &r->house, s->doneness.text);
}

/* ---- dishes --------------------------------------------------------------- */

static bool
is_served(const struct dish *d)
{
	return d->yield.present && d->yield.known && d->yield.min.num > 0 &&
	       (d->yield_unit.n == 0 || str_is_z(d->yield_unit, "serving") ||
		   str_is_z(d->yield_unit, "portion") || str_is_z(d->yield_unit, "person"));
}

/* As little as brings the number asked for into the range: 4 to 6 feeds 5. */
static struct ratio
factor_of(const struct tamis_style *s, const struct dish *d)
{
	struct ratio wanted = ratio_int(s->servings);

	if (s->scale.den)
		return s->scale;
	if (!s->servings || !is_served(d))
		return ratio_int(1);
	if (ratio_order(wanted, d->yield.min) < 0)
		return ratio_div(wanted, d->yield.min);
	if (ratio_order(wanted, d->yield.max) > 0)
		return ratio_div(wanted, d->yield.max);
	return ratio_int(1);
}

static void
restyle_yield(const struct restyling *r, struct dish *d)
{
	const struct tamis_style *s = r->house.style;
	struct ratio wanted = ratio_int(s->servings);

	if (s->servings && !s->scale.den && is_served(d))
		d->yield.min = d->yield.max = wanted;
	else
		scale(r, &d->yield);
}

static void
restyle_dish(struct restyling *r, struct dish *d)
{
	r->dish = d;
	r->by = factor_of(r->house.style, d);
	restyle_yield(r, d);
	d->scale = scaled_by(r, d->scale);
	d->name = words_styled(r->a, &r->house, d->name);
	d->part = copied(r->a, d->part, d->parts, sizeof *d->part);
	d->equipment = copied(r->a, d->equipment, d->equipments, sizeof *d->equipment);
	d->note = copied(r->a, d->note, d->notes, sizeof *d->note);
	for (size_t i = 0; i < d->equipments; i++)
		d->equipment[i].item = words_styled(r->a, &r->house, d->equipment[i].item);
	for (size_t i = 0; i < d->notes; i++)
		d->note[i] = words_styled(r->a, &r->house, d->note[i]);
	for (size_t k = 0; k < d->parts; k++) {
		struct part *p = &d->part[k];

		p->name = words_styled(r->a, &r->house, p->name);
		p->ingredient =
		    copied(r->a, p->ingredient, p->ingredients, sizeof *p->ingredient);
		for (size_t i = 0; i < p->ingredients; i++)
			restyle_ingredient(r, &p->ingredient[i]);
	}
	for (size_t k = 0; k < d->parts; k++) {
		struct part *p = &d->part[k];

		p->step = copied(r->a, p->step, p->steps, sizeof *p->step);
		for (size_t i = 0; i < p->steps; i++)
			restyle_step(r, p, &p->step[i]);
	}
}

struct draft *
restyle_draft(
    const struct draft *d, const struct grammar *g, const struct tamis_style *style)
{
	struct restyling r = {.a = d->arena, .house = house_of(d, g, style)};
	struct draft *out = arena_new(d->arena, struct draft);

	*out = *d;
	out->dish = copied(d->arena, d->dish, d->dishes, sizeof *d->dish);
	for (size_t i = 0; i < d->dishes; i++)
		restyle_dish(&r, &out->dish[i]);
	return out;
}
