/* SPDX-License-Identifier: ISC */
/*
 * Which degrees are inside the food and which are a setting: "oven's at 120" and
 * "seventy five in the fattest bit", where the step took the one for the other.
 */
#include "remark/told.h"

/* "oven's at 120", "the fryer is set to 180": of the appliance, not the food. */
static bool
is_setting(const struct maker *m, const struct measure *x)
{
	enum { REACH = 6 };
	uint32_t at = token_from(m, x->place.span.beg);
	struct span s = sentence_of(m, at);
	bool said = false;

	for (uint32_t i = at; i-- > s.beg && i + REACH > at;) {
		if (appliance_named(m, i).n)
			return said && token_reading(m, i, "EQUIP");
		if (token_is(m, i, "inside") || token_is(m, i, "reads") ||
		    token_reading(m, i, "FOOD"))
			return false;
		said = said || token_has(m, i, "BE") || token_is(m, i, "at") ||
		       token_is(m, i, "to");
	}
	return false;
}

/* The first of these few steps that heats for a time, with no setting yet. */
static struct step *
step_for(const struct told *t, const struct stretch *x)
{
	enum { AHEAD = 3 };
	const struct stretch *end = t->stretch.v + t->stretch.n;

	for (const struct stretch *y = x; y < end && y < x + AHEAD; y++)
		if (y->dish == x->dish && y->step->heats && y->step->duration.present &&
		    !y->step->temperature.present)
			return y->step;
	return NULL;
}

/* A reading inside that is a setting goes to where it belongs. */
static void
mend_reading(const struct told *t, struct measure *x)
{
	const struct maker *m = t->m;
	struct stretch *y;

	if (x->kind != MEASURE_TEMPERATURE || x->role != ROLE_INTERNAL || !is_setting(m, x))
		return;
	x->role = ROLE_APPLIANCE;
	y = told_at(t, token_from(m, x->place.span.beg));
	for (size_t near = 0; y && y >= t->stretch.v && near < 2; y--, near++) {
		struct doneness *d = &y->step->doneness;
		struct step *s;

		if (!d->known || d->place.span.beg > x->place.span.beg ||
		    d->place.span.end < x->place.span.end)
			continue;
		d->known = false;
		s = step_for(t, y);
		if (s)
			s->temperature = (struct temperature){.present = true,
			    .min = x->value.min,
			    .max = x->value.max,
			    .unit = x->value.unit,
			    .unit_stated = x->unit_stated,
			    .role = ROLE_APPLIANCE,
			    .place = x->place};
		return;
	}
}

/* "95 Celsius in the thick of it", "145 in the middle": inside the food. */
static bool
is_inside(const struct maker *m, const struct measure *x)
{
	enum { REACH = 5 };
	uint32_t at = token_from(m, x->place.span.end);
	struct span s = sentence_of(m, at);
	bool in = false;

	for (uint32_t i = at; i < s.end && i < at + REACH; i++) {
		if (token_has(m, i, "INSIDEWORD"))
			return in || token_is(m, i, "inside");
		in = in || token_is(m, i, "in") || token_is(m, i, "at") ||
		     token_is(m, i, "near") || token_is(m, i, "through");
	}
	return false;
}

/* No hotter than food gets. */
static bool
may_be_inside(const struct measure *x)
{
	int64_t high = x->value.unit && x->value.unit->metric ? 100 : 212;

	return x->value.known && x->value.unit && x->value.unit->has_base &&
	       ratio_order(x->value.max, ratio_int(high)) <= 0;
}

/* Takes the setting from all steps that have it from here. */
static void
clear_setting(const struct told *t, const struct measure *x)
{
	for (size_t i = 0; i < t->stretch.n; i++) {
		struct temperature *set = &t->stretch.v[i].step->temperature;

		if (set->present && set->place.span.beg == x->place.span.beg)
			*set = (struct temperature){.present = set->heat.n > 0,
			    .heat = set->heat,
			    .role = set->role,
			    .place = set->place};
	}
}

/* A setting that is a reading inside: of what was cooked last before it. */
static void
mend_setting(const struct told *t, struct measure *x)
{
	enum { BACK = 4 };
	struct stretch *y;

	if (x->kind != MEASURE_TEMPERATURE || x->role != ROLE_APPLIANCE ||
	    !may_be_inside(x) || !is_inside(t->m, x))
		return;
	x->role = ROLE_INTERNAL;
	clear_setting(t, x);
	y = told_at(t, token_from(t->m, x->place.span.beg));
	for (size_t n = 0; y && y >= t->stretch.v && n < BACK; y--, n++) {
		struct doneness *d = &y->step->doneness;

		if (!y->step->heats || y->step->preheats || d->known)
			continue;
		d->known = true;
		d->min = x->value.min;
		d->max = x->value.max;
		d->unit = x->value.unit;
		d->unit_stated = x->unit_stated;
		d->place = x->place;
		return;
	}
}

void
readings_fill(const struct told *t)
{
	for (size_t i = 0; i < t->m->d->measures; i++) {
		mend_reading(t, &t->m->d->measure[i]);
		mend_setting(t, &t->m->d->measure[i]);
	}
}
