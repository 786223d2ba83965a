/* SPDX-License-Identifier: ISC */
/*
 * Two values where there can be one: an amount, a setting, a time that is said
 * again and differs.
 */
#include "check/facts.h"
#include "check/food.h"
#include "check/say.h"

#include <stdlib.h>

/* How far two of them may differ: settings in degrees Celsius, the rest in
 * hundredths of the smaller. */
static const struct ratio setting_slack = {9, 1}, slack = {8, 100};

static struct ratio
distance(struct ratio a, struct ratio b)
{
	return ratio_order(a, b) < 0 ? ratio_sub(b, a) : ratio_sub(a, b);
}

/* Steps between heating an oven and using it. */
enum { LOOK_BACK = 100 };

/* ---- conflicting-amount -------------------------------------------------- */

static bool
comparable(const struct amount *a, const struct amount *b)
{
	if (!a->known || !b->known)
		return false;
	if (a->unit == b->unit)
		return true;
	return a->unit && b->unit && a->unit->has_base && b->unit->has_base &&
	       a->unit->dimension == b->unit->dimension;
}

static struct ratio
size_of(const struct amount *a, struct ratio v)
{
	return a->unit && a->unit->has_base ? unit_to_base(a->unit, v) : v;
}

/* The ranges overlap, or nearly. */
static bool
amounts_agree(const struct amount *a, const struct amount *b)
{
	struct ratio a_min = size_of(a, a->min), a_max = size_of(a, a->max);
	struct ratio b_min = size_of(b, b->min), b_max = size_of(b, b->max);
	struct ratio gap = {0, 1}, room;

	if (ratio_order(a_max, b_min) < 0)
		gap = ratio_sub(b_min, a_max);
	else if (ratio_order(b_max, a_min) < 0)
		gap = ratio_sub(a_min, b_max);
	room = ratio_mul(ratio_order(a_min, b_min) < 0 ? a_min : b_min, slack);
	return ratio_order(gap, room) <= 0;
}

/* All mentions but the first add up to it: a list, then the method. */
static bool
adds_up(const struct ingredient *in, size_t first)
{
	struct ratio sum = {0, 1};
	struct amount all = in->said[first];

	for (size_t i = first + 1; i < in->uses; i++)
		if (comparable(&in->said[first], &in->said[i]))
			sum = ratio_add(sum, size_of(&in->said[i], in->said[i].min));
	all.min = all.max = sum;
	if (all.unit && all.unit->has_base)
		all.min = all.max = unit_from_base(all.unit, sum);
	return amounts_agree(&in->said[first], &all);
}

/* Some of what is there already: "a tablespoon of the oil". A list is whole. */
static bool
is_share(const struct ingredient *in, const struct amount *first, const struct amount *then)
{
	return !in->listed && first->unit != then->unit &&
	       ratio_order(size_of(then, then->max), size_of(first, first->min)) < 0;
}

static void
check_said(struct check *k, const struct cursor *c)
{
	const struct ingredient *in = c->ingredient;
	size_t first = 0;
	struct str before, now;

	while (first < in->uses && !in->said[first].known)
		first++;
	if (first == in->uses || adds_up(in, first))
		return;
	for (size_t i = first + 1; i < in->uses; i++) {
		if (!comparable(&in->said[first], &in->said[i]) ||
		    amounts_agree(&in->said[first], &in->said[i]) ||
		    is_share(in, &in->said[first], &in->said[i]))
			continue;
		before = say_amount(k, &in->said[first]);
		now = say_amount(k, &in->said[i]);
		finding_raise(k, in->use[i], c->at,
		    "%.*s: %.*s here, but %.*s before; %.*s is kept. Which one is right?",
		    SAY(in->item), SAY(now), SAY(before), SAY(before));
		finding_relate(k, in->use[first], "first said as %.*s", SAY(before));
		return;
	}
}

void
check_conflicting_amount(struct check *k)
{
	struct cursor c = walk(k->draft);

	while (walk_ingredient(&c))
		if (c.ingredient->said && !c.ingredient->divided)
			check_said(k, &c);
}

/* ---- conflicting-temperature --------------------------------------------- */

static struct amount
setting_amount(const struct temperature *t)
{
	return (struct amount){
	    t->present && t->unit, t->present && t->unit, t->min, t->max, t->unit};
}

static bool
settings_agree(const struct check *k, const struct amount *a, const struct amount *b)
{
	struct ratio a_min, a_max, b_min, b_max;

	if (!facts_celsius(k, a->unit, a->min, &a_min) ||
	    !facts_celsius(k, a->unit, a->max, &a_max) ||
	    !facts_celsius(k, b->unit, b->min, &b_min) ||
	    !facts_celsius(k, b->unit, b->max, &b_max))
		return true;
	return (ratio_order(a_min, b_max) <= 0 && ratio_order(b_min, a_max) <= 0) ||
	       ratio_order(distance(a_min, b_min), setting_slack) <= 0 ||
	       ratio_order(distance(a_max, b_max), setting_slack) <= 0;
}

/* "180 Celsius, fan. That's gas six": whether the two agree is another check's. */
static bool
is_conversion(const struct amount *first, struct place at, const struct amount *then,
    struct place then_at)
{
	enum { ONE_BREATH = 60 };

	return first->unit != then->unit && at.span.end <= then_at.span.beg &&
	       then_at.span.beg - at.span.end < ONE_BREATH;
}

/* Colder than any oven: the weather, a cellar. */
static bool
is_of_oven(const struct check *k, const struct measure *m)
{
	static const struct ratio coldest = {45, 1};
	struct ratio c;

	return facts_celsius(k, m->value.unit, m->value.max, &c) &&
	       ratio_order(c, coldest) > 0;
}

static void
raise_setting(struct check *k, const struct cursor *c, const struct amount *first,
    const struct amount *then, struct place place)
{
	struct str before = say_setting(k, first), now = say_setting(k, then);

	finding_raise(k, place, c->at,
	    "%.*s here, but %.*s was said before for the same cooking, and no word "
	    "of turning it up or down. Which one is right?",
	    SAY(now), SAY(before));
}

/* Food goes in at another setting than the appliance was last heated to. */
static void
check_heated(struct check *k, const struct cursor *c, const struct step *last)
{
	const struct temperature *t = &c->step->temperature;
	struct amount then = setting_amount(t), first;

	if (!last || !last->preheats || !c->step->heats || c->step->preheats ||
	    !then.known || t->inherited || t->change)
		return;
	first = setting_amount(&last->temperature);
	if (!first.known || settings_agree(k, &first, &then) ||
	    is_conversion(&first, last->temperature.place, &then, t->place))
		return;
	raise_setting(k, c, &first, &then, t->place);
	finding_relate(k, last->temperature.place, "set here first");
}

/* What a script says of its oven, each in script order: source bytes. */
struct oven {
	VEC(const struct measure *) setting;
	VEC(uint32_t) taken; /* where steps took a setting of their own */
	VEC(uint32_t) cooks; /* steps that cook in it */
	size_t at;           /* settings before the step asked about last */
};

static int
order_places(const void *left, const void *right)
{
	uint32_t a = *(const uint32_t *)left, b = *(const uint32_t *)right;

	return (a > b) - (a < b);
}

/* How many of the places in order stand before `at`. */
static size_t
count_before(const uint32_t *v, size_t n, uint32_t at)
{
	size_t lo = 0;

	while (lo < n) {
		size_t mid = (lo + n) / 2;

		if (v[mid] < at)
			lo = mid + 1;
		else
			n = mid;
	}
	return lo;
}

static struct oven
oven_of(const struct check *k)
{
	struct oven o = {0};
	struct cursor c = walk(k->draft);

	for (size_t i = 0; i < k->draft->measures; i++) {
		const struct measure *m = &k->draft->measure[i];

		if (m->kind == MEASURE_TEMPERATURE && m->role == ROLE_APPLIANCE &&
		    !m->aside && !m->converted && m->value.known && is_of_oven(k, m))
			vec_push(k->arena, &o.setting, m);
	}
	while (o.setting.n && walk_step(&c)) {
		const struct temperature *t = &c.step->temperature;

		if (t->present && t->unit && !t->inherited)
			vec_push(k->arena, &o.taken, t->place.span.beg);
		if (c.step->heats && step_is_in(c.step, "oven"))
			vec_push(k->arena, &o.cooks, c.step->place.span.beg);
	}
	if (o.taken.n)
		qsort(o.taken.v, o.taken.n, sizeof *o.taken.v, order_places);
	if (o.cooks.n)
		qsort(o.cooks.v, o.cooks.n, sizeof *o.cooks.v, order_places);
	return o;
}

/* A setting that was said and that no step took, the last one between another
 * step in the oven and this one: "and the oven goes down to 180". */
static const struct measure *
loose_setting(struct oven *o, const struct step *s)
{
	uint32_t here = s->place.span.beg, set = s->temperature.place.span.beg, said;

	while (o->at < o->setting.n && o->setting.v[o->at]->place.span.beg < set)
		o->at++;
	while (o->at > 0 && o->setting.v[o->at - 1]->place.span.beg >= set)
		o->at--;
	if (o->at == 0)
		return NULL;
	said = o->setting.v[o->at - 1]->place.span.beg;
	if (count_before(o->taken.v, o->taken.n, set) >
		count_before(o->taken.v, o->taken.n, said) ||
	    count_before(o->cooks.v, o->cooks.n, here) >
		count_before(o->cooks.v, o->cooks.n, said + 1))
		return NULL;
	return o->setting.v[o->at - 1];
}

static void
check_loose_setting(struct check *k, struct oven *o, const struct cursor *c)
{
	const struct temperature *t = &c->step->temperature;
	struct amount then = setting_amount(t);
	const struct measure *m;

	if (!c->step->heats || !step_is_in(c->step, "oven") || !then.known ||
	    t->inherited || t->change)
		return;
	m = loose_setting(o, c->step);
	if (!m || settings_agree(k, &m->value, &then) ||
	    is_conversion(&m->value, m->place, &then, t->place))
		return;
	raise_setting(k, c, &m->value, &then, t->place);
	finding_relate(k, m->place, "set here first");
}

static int
order_cursors(const void *left, const void *right)
{
	const struct cursor *a = left, *b = right;
	int by = a->at.dish - b->at.dish;

	if (by == 0)
		by = is_before(b->step->place, a->step->place) -
		     is_before(a->step->place, b->step->place);
	if (by == 0)
		by = a->at.part - b->at.part;
	return by ? by : a->at.step - b->at.step;
}

/* Every step in an appliance, dish by dish, in script order. */
static size_t
steps_in_order(const struct check *k, struct cursor **out)
{
	VEC(struct cursor) v = {NULL, 0, 0};
	struct cursor c = walk(k->draft);

	while (walk_step(&c))
		if (c.step->appliance)
			vec_push(k->arena, &v, c);
	if (v.n)
		qsort(v.v, v.n, sizeof *v.v, order_cursors);
	*out = v.v;
	return v.n;
}

/* The last step in the same appliance and dish before this one. */
static const struct step *
step_before(const struct cursor *c, size_t i)
{
	for (size_t j = i, n = 0; j-- > 0 && n < LOOK_BACK; n++) {
		if (c[j].at.dish != c[i].at.dish)
			return NULL;
		/* a tin makes an oven of a step that only fills it */
		if (step_is_in(c[j].step, c[i].step->appliance) &&
		    (c[j].step->heats || c[j].step->preheats ||
			c[j].step->temperature.present))
			return c[j].step;
	}
	return NULL;
}

static void
check_restated_settings(struct check *k, const struct cursor *c)
{
	struct amount first = setting_amount(&c->step->temperature);

	for (size_t i = 0; first.known && i < c->step->agains; i++) {
		const struct restated *r = &c->step->again[i];

		if (!r->value.known || !r->value.unit ||
		    r->value.unit->dimension != DIM_TEMPERATURE ||
		    settings_agree(k, &first, &r->value))
			continue;
		raise_setting(k, c, &first, &r->value, r->place);
		finding_relate(k, c->step->temperature.place, "said here first");
	}
}

void
check_conflicting_temperature(struct check *k)
{
	struct cursor *c;
	size_t n = steps_in_order(k, &c);
	struct oven o = oven_of(k);

	for (size_t i = 0; i < n; i++) {
		check_heated(k, &c[i], step_before(c, i));
		check_loose_setting(k, &o, &c[i]);
		check_restated_settings(k, &c[i]);
	}
}

/* ---- conflicting-time ---------------------------------------------------- */

static bool
times_agree(int64_t a_min, int64_t a_max, int64_t b_min, int64_t b_max)
{
	int64_t gap = a_max < b_min ? b_min - a_max : b_max < a_min ? a_min - b_max : 0;
	int64_t small = a_min < b_min ? a_min : b_min;

	return gap <= small / 10;
}

/* The time named again is the sum of neighbouring steps that do the same. */
static bool
is_sum(const struct cursor *c, int64_t min, int64_t max)
{
	for (int from = c->at.step; from >= 0 && from > c->at.step - 4; from--) {
		int64_t sum_min = 0, sum_max = 0;

		for (size_t i = (size_t)from; i < c->part->steps && i < (size_t)from + 6;
		     i++) {
			if (!str_is(c->part->step[i].action, c->step->action))
				continue;
			sum_min += c->part->step[i].duration.min_ms;
			sum_max += c->part->step[i].duration.max_ms;
			if ((int)i > from && times_agree(sum_min, sum_max, min, max))
				return true;
		}
	}
	return false;
}

static void
check_restated_times(struct check *k, const struct cursor *c)
{
	const struct step *s = c->step;

	for (size_t i = 0; s->duration.known && i < s->agains; i++) {
		const struct restated *r = &s->again[i];
		int64_t min, max;
		struct str before, now, action = say_action(s);

		if (!say_is_time(&r->value, &min, &max) ||
		    times_agree(s->duration.min_ms, s->duration.max_ms, min, max) ||
		    is_sum(c, min, max))
			continue;
		before = say_time(k, s->duration.min_ms, s->duration.max_ms);
		now = say_time(k, min, max);
		finding_raise(k, r->place, c->at,
		    "%.*s here, but %.*s was said before (%.*s); %.*s is kept. Which one "
		    "is right?",
		    SAY(now), SAY(before), SAY(action), SAY(before));
		finding_relate(k, s->place, "said here first");
	}
}

void
check_conflicting_time(struct check *k)
{
	struct cursor c = walk(k->draft);

	while (walk_step(&c))
		check_restated_times(k, &c);
}
