/* SPDX-License-Identifier: ISC */
/*
 * Chooses the system of measures and prints the amount in it.
 */
#include "house/portion.h"

#include "base/print.h"
#include "house/convert.h"
#include "house/words.h"

static bool
is_unit(const struct amount *a, const char *name)
{
	return a->unit && str_is_z(a->unit->name, name);
}

static void
put_extent(struct buf *b, const struct house *h, const struct extent *e)
{
	kitchen_put(b, &e->min, &e->max, h->style->unit_words);
	if (e->form.n)
		buf_fmt(b, " %.*s", (int)e->form.n, e->form.p);
}

static struct ratio
round_count(struct ratio v, bool whole)
{
	struct ratio quarter = ratio_round_to(v, ratio_make(1, 4));
	struct ratio third = ratio_round_to(v, ratio_make(1, 3));
	struct ratio a = ratio_sub(v, quarter), b = ratio_sub(v, third);

	if (whole || ratio_order(v, ratio_int(10)) >= 0) {
		v = ratio_int(ratio_round(v));
		return v.num > 0 ? v : ratio_int(1);
	}
	if (ratio_order(v, ratio_int(4)) >= 0)
		return ratio_round_to(v, ratio_make(1, 2));
	if (quarter.num <= 0)
		return ratio_make(1, 4);
	a.num = a.num < 0 ? -a.num : a.num;
	b.num = b.num < 0 ? -b.num : b.num;
	return ratio_order(b, a) < 0 ? third : quarter;
}

/* Things that are not cut up to be measured. */
static bool
is_indivisible(const struct amount *a)
{
	return is_unit(a, "pinch") || is_unit(a, "dash") || is_unit(a, "drop") ||
	       is_unit(a, "sprig") || is_unit(a, "leaf") || is_unit(a, "strand");
}

static void
put_said(struct buf *b, const struct house *h, const struct amount *a)
{
	struct unit long_name;
	struct amount spelled = *a;

	if (h->style->unit_words && a->unit) {
		long_name = *a->unit;
		long_name.brief = long_name.name;
		spelled.unit = &long_name;
	}
	print_amount(b, &spelled);
}

static void
put_reckoned(struct buf *b, const struct house *h, const struct amount *a)
{
	struct amount rounded = *a;
	struct extent e = {.about = false};

	if (convert_reckoned(h, a, &e)) {
		put_extent(b, h, &e);
		return;
	}
	if (a->known) {
		rounded.min = round_count(a->min, is_indivisible(a));
		rounded.max = round_count(a->max, is_indivisible(a));
	}
	put_said(b, h, &rounded);
}

/* ---- what the house asks for ---------------------------------------------- */

struct portion
portion_of(const struct ingredient *in)
{
	struct portion p = {
	    &in->amount, in, in->scale.den && in->scale.num != in->scale.den};

	/* A sum of what was said in turn is nobody's measure. */
	if (in->divided && in->amount.known && in->uses > 1) {
		p.reckoned = true;
		for (size_t i = 0; !in->scale.den && i < in->uses; i++)
			if (in->said[i].known && in->said[i].unit == in->amount.unit &&
			    ratio_order(in->said[i].max, in->amount.max) == 0)
				p.reckoned = false;
	}
	return p;
}

static void
put_unconverted(struct buf *b, const struct house *h, const struct portion *p)
{
	if (p->reckoned)
		put_reckoned(b, h, p->amount);
	else
		put_said(b, h, p->amount);
}

static void
put_us(struct buf *b, const struct house *h, const struct portion *p)
{
	struct extent e;

	if (convert_us(b->arena, h, p, &e))
		put_extent(b, h, &e);
	else
		put_unconverted(b, h, p);
}

static void
put_main(struct buf *b, const struct house *h, const struct portion *p)
{
	enum tamis_units units = h->style->units;
	struct extent e;

	if ((units == UNITS_METRIC || units == UNITS_BOTH) &&
	    convert_metric(b->arena, h, p, false, &e))
		put_extent(b, h, &e);
	else if (units == UNITS_US)
		put_us(b, h, p);
	else
		put_unconverted(b, h, p);
}

void
portion_put(struct buf *b, const struct house *h, const struct portion *p)
{
	struct buf text = buf_in(b->arena);

	put_main(&text, h, p);
	words_put(b, h, buf_str(&text));
}

static void
put_other(struct buf *b, const struct house *h, const struct portion *p)
{
	enum system said = convert_system(p->amount);
	struct arena *a = b->arena;
	struct extent e;

	if (h->style->units == UNITS_US || h->style->units == UNITS_METRIC ||
	    (p->amount->unit && p->amount->unit->dimension == DIM_LENGTH))
		return;
	if (said == SYSTEM_METRIC) {
		if (!convert_us(a, h, p, &e))
			return;
		buf_put_z(b, e.about ? "about " : "");
		put_extent(b, h, &e);
	} else if (convert_metric(a, h, p, h->style->units == UNITS_SAID, &e)) {
		if (h->style->units == UNITS_SAID)
			put_extent(b, h, &e);
		else
			put_us(b, h, p);
	}
}

void
portion_put_other(struct buf *b, const struct house *h, const struct portion *p)
{
	struct buf text = buf_in(b->arena);

	put_other(&text, h, p);
	words_put(b, h, buf_str(&text));
}

void
portion_put_size(struct buf *b, const struct house *h, const struct amount *size)
{
	enum tamis_units units = h->style->units;
	struct portion p = {size, NULL, false};
	struct buf main = buf_in(b->arena), other = buf_in(b->arena);
	struct extent e;

	if (!size->present || !size->known || !size->unit)
		return;
	portion_put(&main, h, &p);
	if (units == UNITS_SAID && convert_us(b->arena, h, &p, &e))
		put_extent(&other, h, &e);
	else if (units == UNITS_SAID && convert_metric(b->arena, h, &p, false, &e))
		put_extent(&other, h, &e);
	else if (units == UNITS_BOTH && convert_us(b->arena, h, &p, &e))
		put_extent(&other, h, &e);
	else if (units == UNITS_BOTH && convert_system(size) == SYSTEM_US)
		put_said(&other, h, size);
	buf_put(b, buf_str(&main));
	if (other.n)
		buf_put_char(b, '/');
	words_put(b, h, buf_str(&other));
}
