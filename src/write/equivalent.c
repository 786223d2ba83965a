/* SPDX-License-Identifier: ISC */
/*
 * The same amount in the other system of measures. Volumes of the US by NIST
 * SP 430 (a cup is 236.5882365 ml), the ounce and the inch by NIST Handbook
 * 44; how far to round is common practice.
 */
#include "write/equivalent.h"

#include "base/print.h"
#include "grammar/units.h"

static const struct ratio cup_ml = {473176473, 2000000};
static const struct ratio ounce_g = {45359237, 1600000};
static const struct ratio inch_mm = {127, 5};

struct range {
	struct ratio min, max;
};

static bool
is_below(struct ratio v, int64_t limit)
{
	return ratio_order(v, ratio_int(limit)) < 0;
}

static struct range
range_in(struct range r, struct ratio unit)
{
	return (struct range){ratio_div(r.min, unit), ratio_div(r.max, unit)};
}

static struct range
round_range(struct range r, struct ratio step)
{
	return (struct range){ratio_round_to(r.min, step), ratio_round_to(r.max, step)};
}

static struct ratio
distance(struct ratio a, struct ratio b)
{
	struct ratio d = ratio_sub(a, b);

	return d.num < 0 ? (struct ratio){-d.num, d.den} : d;
}

/* To the nearest quarter or third, whichever is nearer. */
static struct ratio
round_cup(struct ratio v)
{
	struct ratio quarter = ratio_round_to(v, ratio_make(1, 4));
	struct ratio third = ratio_round_to(v, ratio_make(1, 3));

	return ratio_order(distance(third, v), distance(quarter, v)) < 0 ? third : quarter;
}

/* More than 6 in 100 off: a cook would taste it. */
static bool
is_far(struct ratio got, struct ratio v)
{
	return ratio_order(ratio_mul(distance(got, v), ratio_int(50)),
		   ratio_mul(v, ratio_int(3))) > 0;
}

/* "2–3 cups"; nothing where it rounds to nothing. */
static void
put_in(struct buf *b, struct range r, const char *one, const char *many)
{
	if (r.min.num <= 0)
		return;
	print_range(b, r.min, r.max);
	buf_put_z(
	    b, is_below(r.max, 2) && ratio_order(r.max, ratio_int(1)) <= 0 ? one : many);
}

static void
put_spoons(struct buf *b, struct range cups)
{
	struct range tbsp = range_in(cups, ratio_make(1, 16));
	struct range tsp = range_in(cups, ratio_make(1, 48));

	if (is_below(tbsp.max, 1))
		put_in(b, round_range(tsp, ratio_make(1, 4)), " tsp", " tsp");
	else
		put_in(b, round_range(tbsp, ratio_make(1, 4)), " tbsp", " tbsp");
}

/* Where no measure comes near: "¾ cup plus 1½ tbsp". */
static void
put_cups_and_spoons(struct buf *b, struct ratio cups)
{
	struct ratio quarter = ratio_make(1, 4);
	struct ratio down = ratio_mul(ratio_int(cups.num * 4 / cups.den), quarter);
	struct ratio rest = ratio_mul(ratio_sub(cups, down), ratio_int(16));

	put_in(b, (struct range){down, down}, " cup", " cups");
	buf_put_z(b, " plus ");
	rest = ratio_round_to(rest, ratio_make(1, 2));
	put_in(b, (struct range){rest, rest}, " tbsp", " tbsp");
}

static void
put_us_volume(struct buf *b, struct range ml)
{
	struct range cups = range_in(ml, cup_ml);
	struct range near = {round_cup(cups.min), round_cup(cups.max)};
	bool single = ratio_order(cups.min, cups.max) == 0;

	if (!is_below(ml.max, 3000))
		put_in(b, round_range(range_in(cups, ratio_int(4)), ratio_make(1, 4)),
		    " quart", " quarts");
	else if (is_below(ml.max, 59) ||
		 (is_below(ml.max, 118) && is_far(near.max, cups.max)))
		put_spoons(b, cups);
	else if (single && is_far(near.max, cups.max))
		put_cups_and_spoons(b, cups.max);
	else
		put_in(b, near, " cup", " cups");
}

/* "1 lb 2 oz" */
static void
put_pounds(struct buf *b, struct range oz)
{
	int64_t whole = ratio_round(oz.max);

	if (ratio_order(oz.min, oz.max) != 0) {
		put_in(b, round_range(range_in(oz, ratio_int(16)), ratio_make(1, 4)), " lb",
		    " lb");
		return;
	}
	print_number(b, ratio_int(whole / 16));
	buf_put_z(b, " lb");
	if (whole % 16) {
		buf_put_char(b, ' ');
		print_number(b, ratio_int(whole % 16));
		buf_put_z(b, " oz");
	}
}

/* Below 20 g an ounce is no measure that a kitchen has. */
static void
put_us_mass(struct buf *b, struct range g)
{
	struct range oz = range_in(g, ounce_g);

	if (is_below(g.min, 20))
		return;
	if (ratio_round(oz.max) >= 16)
		put_pounds(b, oz);
	else
		put_in(b, round_range(oz, ratio_make(1, is_below(oz.max, 8) ? 4 : 2)),
		    " oz", " oz");
}

static void
put_inches(struct buf *b, struct range mm)
{
	struct range in = range_in(mm, inch_mm);
	int64_t part = is_below(in.max, 2) ? 8 : is_below(in.max, 6) ? 4 : 1;

	put_in(b, round_range(in, ratio_make(1, part)), " in", " in");
}

struct metric {
	const char *small, *large, *larges;
	int64_t fives; /* below this to the nearest 5, above to the nearest 10 */
};

static const struct metric masses = {" g", " kg", " kg", 250};
static const struct metric volumes = {" ml", " litre", " litres", 1000};

static struct ratio
round_metric(struct ratio v, int64_t fives)
{
	int64_t step = is_below(v, 20) ? 1 : is_below(v, fives) ? 5 : 10;

	return ratio_round_to(v, ratio_int(step));
}

/* "125 g", "1.36 kg" */
static void
put_metric(struct buf *b, struct range base, const struct metric *m)
{
	struct range r = {
	    round_metric(base.min, m->fives), round_metric(base.max, m->fives)};
	const char *unit = m->small;

	if (r.min.num <= 0)
		return;
	if (!is_below(r.min, 1000)) {
		r = range_in(r, ratio_int(1000));
		unit = ratio_order(r.max, ratio_int(1)) > 0 ? m->larges : m->large;
	}
	print_decimals(b, r.min, r.max);
	buf_put_z(b, unit);
}

/* Centimetres to the millimetre below 2, to the half below 10, else whole. */
static void
put_centimetres(struct buf *b, struct range mm)
{
	struct range cm = range_in(mm, ratio_int(10));
	int64_t part = is_below(cm.max, 2) ? 10 : is_below(cm.max, 10) ? 2 : 1;

	cm = round_range(cm, ratio_make(1, part));
	if (cm.min.num <= 0)
		return;
	print_decimals(b, cm.min, cm.max);
	buf_put_z(b, " cm");
}

/* min and max in the base unit; false where there is none. */
static bool
range_of(const struct amount *a, struct range *out)
{
	const struct unit *u = a->unit;

	if (!a->present || !a->known || !u || !u->has_base)
		return false;
	out->min = unit_to_base(u, a->min);
	out->max = unit_to_base(u, a->max);
	return out->min.num > 0 && is_below(out->max, 1000000);
}

static void
put_converted(struct buf *b, const struct unit *u, struct range base)
{
	switch (u->dimension) {
	case DIM_VOLUME:
		if (u->metric)
			put_us_volume(b, base);
		else
			put_metric(b, base, &volumes);
		break;
	case DIM_MASS:
		if (u->metric)
			put_us_mass(b, base);
		else
			put_metric(b, base, &masses);
		break;
	case DIM_LENGTH:
		if (u->metric)
			put_inches(b, base);
		else
			put_centimetres(b, base);
		break;
	case DIM_COUNT:
	case DIM_TIME:
	case DIM_TEMPERATURE:
		break;
	}
}

void
equivalent_put_size(struct buf *b, const struct amount *size)
{
	struct buf other = buf_in(b->arena);
	struct range base;

	if (!size->present || !size->known || !size->unit)
		return;
	if (size->unit->metric)
		print_decimals(b, size->min, size->max);
	else
		print_range(b, size->min, size->max);
	buf_put_char(b, ' ');
	print_unit(b, size->unit, false);
	if (range_of(size, &base))
		put_converted(&other, size->unit, base);
	if (other.n)
		buf_put_char(b, '/');
	buf_put(b, buf_str(&other));
}

/* In grams or millilitres, where assembly could tell them. */
static void
put_known_metric(struct buf *b, const struct amount *metric)
{
	struct range base;

	if (range_of(metric, &base))
		put_metric(
		    b, base, metric->unit->dimension == DIM_MASS ? &masses : &volumes);
}

/* A spoon is a spoon everywhere: nothing below a quarter of a cup. A stick of
 * butter is known by that name in one country only. */
void
equivalent_put(struct buf *b, const struct amount *said, const struct amount *metric)
{
	struct range base;

	if (said->present && said->unit && str_is_z(said->unit->name, "stick"))
		put_known_metric(b, metric);
	if (!range_of(said, &base) || said->unit->dimension == DIM_LENGTH)
		return;
	if (said->unit->metric || said->unit->dimension != DIM_VOLUME)
		put_converted(b, said->unit, base);
	else if (!is_below(base.max, 59))
		put_known_metric(b, metric);
}
