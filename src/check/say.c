/* SPDX-License-Identifier: ISC */
/*
 * How values read in messages: as in a recipe (base/print.h), but one scale at
 * a time where two are compared.
 */
#include "check/say.h"

#include "base/print.h"
#include "check/facts.h"

struct str
say_amount(const struct check *k, const struct amount *a)
{
	struct buf b = buf_in(k->arena);

	print_amount(&b, a);
	return buf_str(&b);
}

struct str
say_degrees(const struct check *k, const struct amount *a, bool exact)
{
	struct buf b = buf_in(k->arena);

	print_temperature(&b, a->min, a->max, a->unit, exact);
	return buf_str(&b);
}

struct str
say_setting(const struct check *k, const struct amount *a)
{
	struct buf b = buf_in(k->arena);
	bool gas = a->unit && !a->unit->has_base;

	if (gas)
		buf_put_z(&b, "gas mark ");
	print_range(&b, a->min, a->max);
	if (a->unit && !gas) {
		buf_put_char(&b, ' ');
		buf_put(&b, a->unit->brief);
	}
	return buf_str(&b);
}

struct str
say_inside(const struct check *k, struct ratio celsius, const struct unit *u)
{
	struct buf b = buf_in(k->arena);
	struct ratio v;

	if (!u || !u->has_base || u->dimension != DIM_TEMPERATURE)
		u = facts_unit(k, "celsius");
	v = ratio_int(ratio_round(unit_from_base(u, celsius)));
	print_temperature(&b, v, v, u, true);
	return buf_str(&b);
}

struct str
say_time(const struct check *k, int64_t min_ms, int64_t max_ms)
{
	struct buf b = buf_in(k->arena);

	print_duration(&b, min_ms, max_ms);
	return buf_str(&b);
}

/* To 1, 5, 10, 50 and so on: 118 to 120, 1.42 to 1.4. */
static struct ratio
round_about(struct ratio v)
{
	struct ratio step = {1, 10};

	for (int by = 5; ratio_order(ratio_mul(step, ratio_int(100)), v) < 0; by = 7 - by)
		step = ratio_mul(step, ratio_int(by));
	return ratio_round_to(v, step);
}

struct str
say_about(const struct check *k, struct ratio base, const struct unit *u)
{
	struct ratio v = round_about(unit_from_base(u, base));
	struct amount a = {true, true, v, v, u};

	return say_amount(k, &a);
}

struct str
say_list(const struct check *k, const struct str *item, size_t items)
{
	struct buf b = buf_in(k->arena);

	for (size_t i = 0; i < items; i++) {
		if (i > 0)
			buf_put_z(&b, i + 1 == items ? " and " : ", ");
		buf_put(&b, item[i]);
	}
	return buf_str(&b);
}

struct str
say_action(const struct step *s)
{
	return s->action.n ? s->action : STR("this step");
}

bool
say_is_time(const struct amount *a, int64_t *min_ms, int64_t *max_ms)
{
	struct ratio thousand = ratio_int(1000);

	if (!a->known || !a->unit || a->unit->dimension != DIM_TIME || !a->unit->has_base)
		return false;
	*min_ms = ratio_round(ratio_mul(unit_to_base(a->unit, a->min), thousand));
	*max_ms = ratio_round(ratio_mul(unit_to_base(a->unit, a->max), thousand));
	return true;
}
