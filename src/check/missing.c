/* SPDX-License-Identifier: ISC */
/*
 * What a step lacks: a setting for its heat, a time or a sign to stop at, a
 * hot oven to go into.
 */
#include "check/facts.h"
#include "check/food.h"
#include "check/say.h"

#define WITH_SETTING                                                                       \
	"oven air-fryer grill barbecue fryer deep-fryer smoker water-bath slow-cooker"

/* ---- missing-temperature ------------------------------------------------ */

static bool
same_appliance(const struct step *a, const struct step *b)
{
	return a->appliance && b->appliance && strcmp(a->appliance, b->appliance) == 0;
}

/* The setting of this appliance that was said before the step, or for heating
 * it up at any time; in dishes from..to. NULL when none was. */
static const struct step *
setting_of(const struct check *k, const struct cursor *c, int from, int to)
{
	struct cursor o = walk(k->draft);

	o.at.dish = from;
	while (walk_step(&o) && o.at.dish <= to)
		if (o.step->temperature.present && same_appliance(o.step, c->step) &&
		    (o.step->preheats || o.at.dish < c->at.dish ||
			!is_before(c->step->place, o.step->place)))
			return o.step;
	return NULL;
}

/* How far behind the step its setting may be said, in bytes: "in the oven, and
 * then we can chat. Three hundred and twenty five". */
enum { SAID_AFTER = 160 };

/* Degrees were said in the dish, or before the first one, by the end of the step
 * or soon after it, whatever they became. */
static bool
said_loosely(const struct check *k, const struct cursor *c)
{
	for (size_t i = 0; i < k->draft->measures; i++) {
		const struct measure *m = &k->draft->measure[i];
		int dish = finding_spot(k, m->place).dish;

		if (m->kind == MEASURE_TEMPERATURE && !m->aside &&
		    (m->role == ROLE_APPLIANCE || m->role == ROLE_OIL) &&
		    m->place.span.beg < c->step->place.span.end + SAID_AFTER &&
		    (dish == c->at.dish || dish < 0))
			return true;
	}
	return false;
}

static bool
needs_setting(const struct step *s)
{
	return s->heats && !s->preheats && !s->temperature.present && s->appliance &&
	       !s->guessed && !s->heat_told && !step_is_ban(s) &&
	       word_in(str_of(s->appliance), WITH_SETTING);
}

/* An earlier step of the dish asks for the same setting already. */
static bool
asked_before(const struct cursor *c, bool (*asks)(const struct step *))
{
	for (size_t p = 0; p < c->dish->parts; p++)
		for (size_t i = 0; i < c->dish->part[p].steps; i++) {
			const struct step *s = &c->dish->part[p].step[i];

			if (asks(s) && same_appliance(s, c->step) &&
			    is_before(s->place, c->step->place))
				return true;
		}
	return false;
}

static void
check_setting(struct check *k, const struct cursor *c)
{
	const struct step *other;

	if (asked_before(c, needs_setting) || setting_of(k, c, c->at.dish, c->at.dish) ||
	    said_loosely(k, c))
		return;
	other = c->at.dish > 0 ? setting_of(k, c, 0, c->at.dish - 1) : NULL;
	finding_raise(k, c->step->place, c->at,
	    "nothing says how hot the %s is for this dish; a reader cannot set it. Say the "
	    "degrees, or how high",
	    c->step->appliance);
	if (!other)
		return;
	k->finding.v[k->finding.n - 1].severity = SEVERITY_WARNING;
	finding_relate(k, other->temperature.place, "set here for another dish");
}

/* Fried, not boiled: how high the flame is decides. */
static bool
needs_flame(const struct step *s)
{
	return s->heats && !s->preheats && !s->passive && !s->temperature.present &&
	       !s->heat_told && !step_is_ban(s) && step_is_in(s, "stove");
}

static bool
flame_is_said(const struct cursor *c)
{
	for (size_t p = 0; p < c->dish->parts; p++)
		for (size_t i = 0; i < c->dish->part[p].steps; i++)
			if (c->dish->part[p].step[i].temperature.heat.n ||
			    (c->dish->part[p].step[i].temperature.present &&
				step_is_in(&c->dish->part[p].step[i], "stove")))
				return true;
	return false;
}

void
check_missing_temperature(struct check *k)
{
	struct cursor c = walk(k->draft);

	while (walk_step(&c)) {
		if (needs_setting(c.step))
			check_setting(k, &c);
		if (!needs_flame(c.step) || asked_before(&c, needs_flame) ||
		    flame_is_said(&c) || facts_has_action(k, "own_cues", c.step->action))
			continue;
		finding_raise(k, c.step->place, c.at,
		    "nothing says how high the heat under the pan is in this dish; low, "
		    "medium "
		    "or high is enough")
		    ->severity = SEVERITY_WARNING;
	}
}

/* ---- missing-time ------------------------------------------------------- */

/* One stretch of cooking is told in fewer steps. */
enum { LOOK_AHEAD = 30 };

static bool
only_waits(const struct step *s)
{
	return word_in(s->kind, "chill rest prove marinate soak");
}

static bool
needs_end(const struct check *k, const struct step *s)
{
	/* to leave something where it is takes no time */
	if ((s->preheats && !only_waits(s)) || facts_has_action(k, "own_cues", s->action) ||
	    str_is_z(s->action, "leave") || step_is_ban(s))
		return false;
	if (s->time_vague && str_find(s->text, STR("Cover")) < s->text.n)
		return true;
	return only_waits(s) || (s->heats && facts_has_action(k, "times", s->action));
}

/* A later step of the part goes on with the same cooking or waiting, and says
 * when it is over. */
static bool
ends_later(const struct cursor *c)
{
	size_t from = (size_t)c->at.step + 1;

	for (size_t i = from; i < c->part->steps && i < from + LOOK_AHEAD; i++) {
		const struct step *s = &c->part->step[i];
		bool same = only_waits(c->step) ? str_is(s->kind, c->step->kind)
						: (same_appliance(s, c->step) ||
						      (s->heats && !s->appliance));

		if (same && (step_has_time(s) || step_has_cue(s)))
			return true;
		if (only_waits(c->step) && s->heats)
			return false;
	}
	return false;
}

/* Another part of the dish says how long it waits, before anything is cooked. */
static bool
waits_elsewhere(const struct cursor *c)
{
	const struct step *time = NULL, *cooking = NULL;

	for (size_t p = 0; p < c->dish->parts; p++)
		for (size_t i = 0; i < c->dish->part[p].steps; i++) {
			const struct step *s = &c->dish->part[p].step[i];

			if ((int)p == c->at.part || !is_before(c->step->place, s->place))
				continue;
			if (only_waits(s) && step_has_time(s) &&
			    (!time || is_before(s->place, time->place)))
				time = s;
			if (s->heats && (!cooking || is_before(s->place, cooking->place)))
				cooking = s;
		}
	return time && (!cooking || is_before(time->place, cooking->place));
}

static bool
runs_beside_next(const struct cursor *c)
{
	size_t next = (size_t)c->at.step + 1;

	return next < c->part->steps && c->part->step[next].beside;
}

void
check_missing_time(struct check *k)
{
	struct cursor c = walk(k->draft);

	while (walk_step(&c)) {
		const struct step *s = c.step;
		struct str action = say_action(s);

		if (!needs_end(k, s) || step_has_time(s) || step_has_cue(s) || s->agains)
			continue;
		if (!s->time_vague && (ends_later(&c) || runs_beside_next(&c) ||
					  (only_waits(s) && waits_elsewhere(&c))))
			continue;
		if (s->time_vague)
			finding_raise(k, s->place, c.at,
			    "%.*s: \"a little while\" is no time. Say how long, or what it "
			    "looks "
			    "like when it is ready",
			    SAY(action));
		else
			finding_raise(k, s->place, c.at,
			    "%.*s: neither a time nor a sign to stop at is said. Say how "
			    "long, or "
			    "what it looks like when it is ready",
			    SAY(action));
	}
}

/* ---- missing-preheat ---------------------------------------------------- */

/* The appliance is on already: heated, or used, in this dish or before. */
static bool
is_on(const struct check *k, const struct cursor *c)
{
	struct cursor o = walk(k->draft);

	while (walk_step(&o)) {
		if (!same_appliance(o.step, c->step) || o.step == c->step)
			continue;
		if ((o.step->preheats && o.at.dish == c->at.dish) ||
		    is_before(o.step->place, c->step->place))
			return true;
	}
	return false;
}

void
check_missing_preheat(struct check *k)
{
	struct cursor c = walk(k->draft);

	while (walk_step(&c)) {
		const struct temperature *t = &c.step->temperature;
		struct amount a = {true, true, t->min, t->max, t->unit};
		struct str setting;

		if (!c.step->heats || c.step->preheats || !t->present || !t->unit ||
		    t->inherited || c.step->guessed ||
		    !(step_is_in(c.step, "oven") || step_is_in(c.step, "air-fryer")) ||
		    is_on(k, &c))
			continue;
		setting = say_degrees(k, &a, false);
		finding_raise(k, c.step->place, c.at,
		    "food goes in at %.*s and nothing heats the %s first. Times count from "
		    "a hot "
		    "one: set it at the start",
		    SAY(setting), c.step->appliance);
	}
}

/* ---- missing-yield ------------------------------------------------------- */

void
check_missing_yield(struct check *k)
{
	for (size_t i = 0; i < k->draft->dishes; i++) {
		const struct dish *d = &k->draft->dish[i];
		size_t steps = 0, ingredients = 0;

		for (size_t p = 0; p < d->parts; p++) {
			steps += d->part[p].steps;
			ingredients += d->part[p].ingredients;
		}
		if (d->yield.present || d->yields_said || steps == 0 || ingredients == 0)
			continue;
		finding_raise(k, d->place, (struct spot){(int)i, -1, -1},
		    "%.*s: nobody says how many it feeds or makes. Readers shop and scale "
		    "by that",
		    SAY(d->name));
	}
}
