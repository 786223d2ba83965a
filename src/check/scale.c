/* SPDX-License-Identifier: ISC */
/*
 * missing-scale: temperatures said without Fahrenheit, Celsius or gas mark, and
 * whether one reading or both can be meant.
 */
#include "check/food.h"
#include "check/say.h"

/* From here to there a number is an oven setting in both scales: 180 °F keeps
 * food warm and roasts slowly, 260 °C (500 °F, gas mark 10) is as hot as home
 * ovens go. Common practice. */
enum { BOTH_LOW = 180, BOTH_HIGH = 260, WEATHER_C = 45, WEATHER_F = 120 };

/* Two settings in one breath: "220, that's 200 in a fan". */
enum { ONE_BREATH = 60 };

/* What the rest of the script says of its scale. */
struct evidence {
	bool celsius, fahrenheit; /* said with a scale somewhere */
	size_t metric, us;        /* weights and volumes; spoons are both */
};

static struct evidence
evidence_of(const struct draft *d)
{
	struct evidence e = {false, false, 0, 0};

	for (size_t i = 0; i < d->measures; i++) {
		const struct measure *m = &d->measure[i];
		const struct unit *u = m->value.unit;

		if (!u || m->aside)
			continue;
		if (m->kind == MEASURE_TEMPERATURE && m->unit_stated &&
		    m->role != ROLE_AMBIENT) {
			e.celsius = e.celsius || u->metric || !u->has_base;
			e.fahrenheit = e.fahrenheit || (u->has_base && !u->metric);
		}
		if (m->kind != MEASURE_AMOUNT ||
		    (u->dimension != DIM_MASS && u->dimension != DIM_VOLUME))
			continue;
		e.metric += u->metric;
		e.us += !u->metric && !word_in(u->name, "teaspoon tablespoon dessertspoon");
	}
	return e;
}

static bool
same_setting(const struct measure *a, const struct measure *b)
{
	return a->role == b->role && ratio_order(a->value.min, b->value.min) == 0 &&
	       ratio_order(a->value.max, b->value.max) == 0;
}

static bool
is_degrees(const struct measure *m)
{
	return m->kind == MEASURE_TEMPERATURE && !m->aside && m->value.known &&
	       m->value.unit && m->role >= ROLE_APPLIANCE && m->role <= ROLE_INTERNAL;
}

/* An earlier temperature makes the scale of this one plain: the same setting,
 * one just before it, one for the same thing with its scale, or an earlier
 * reading of the same thermometer. */
static bool
is_plain(const struct check *k, size_t i)
{
	const struct measure *m = &k->draft->measure[i];
	int dish = finding_spot(k, m->place).dish;

	for (size_t j = 0; j < i; j++) {
		const struct measure *o = &k->draft->measure[j];

		if (!is_degrees(o) || o->value.unit != m->value.unit)
			continue;
		if (same_setting(o, m) ||
		    m->place.span.beg < o->place.span.end + ONE_BREATH)
			return true;
		if (o->role == m->role && (o->unit_stated || m->role == ROLE_INTERNAL) &&
		    finding_spot(k, o->place).dish == dish)
			return true;
	}
	return false;
}

/* The next value restates it with a scale: "350, that's 180 Celsius". */
static bool
is_told_after(const struct draft *d, size_t i)
{
	return i + 1 < d->measures && d->measure[i + 1].converted &&
	       d->measure[i + 1].kind == MEASURE_TEMPERATURE &&
	       d->measure[i + 1].unit_stated;
}

/* The appliance that is set to this temperature; NULL when no step takes it. */
static const char *
appliance_of(const struct check *k, const struct measure *m)
{
	struct cursor c = walk(k->draft);

	while (walk_step(&c))
		if (c.step->temperature.present && !c.step->temperature.inherited &&
		    c.step->temperature.place.span.beg == m->place.span.beg)
			return c.step->appliance;
	return NULL;
}

/* Too cold for any appliance: the weather. */
static bool
is_weather(const struct measure *m)
{
	int64_t high = m->value.unit->metric ? WEATHER_C : WEATHER_F;

	return m->role == ROLE_APPLIANCE && ratio_order(m->value.max, ratio_int(high)) < 0;
}

static bool
can_be_both(const struct check *k, const struct measure *m)
{
	const char *appliance;

	if (m->role != ROLE_APPLIANCE ||
	    ratio_order(m->value.max, ratio_int(BOTH_LOW)) < 0 ||
	    ratio_order(m->value.min, ratio_int(BOTH_HIGH)) > 0)
		return false;
	appliance = appliance_of(k, m);
	return !appliance || strcmp(appliance, "oven") == 0;
}

/* Why the reading was taken, where the rest of the script tells; else NULL. */
static const char *
reason_of(const struct evidence *e, bool celsius)
{
	if (celsius && e->celsius && !e->fahrenheit)
		return "since the other temperatures are";
	if (!celsius && e->fahrenheit && !e->celsius)
		return "since the other temperatures are";
	if (celsius && !e->fahrenheit && e->metric > 1 && e->metric > 3 * e->us)
		return "since the script is metric";
	if (!celsius && !e->celsius && e->us > 1 && e->us > 3 * e->metric)
		return "since the script has US measures";
	return NULL;
}

static const char *
place_name(enum measure_role role)
{
	switch (role) {
	case ROLE_OIL:
		return "no oil for frying is";
	case ROLE_INTERNAL:
		return "no food is done at";
	case ROLE_LIQUID:
		return "no cook would want";
	default:
		return "no cook would set";
	}
}

static void
check_scale(struct check *k, const struct measure *m, const struct evidence *e)
{
	bool celsius = m->value.unit->metric;
	const char *scale = celsius ? "Celsius" : "Fahrenheit";
	const char *reason = reason_of(e, celsius);
	struct amount bare = m->value;
	struct str number, value = say_degrees(k, &m->value, m->role != ROLE_APPLIANCE);

	bare.unit = NULL;
	number = say_amount(k, &bare);
	if (!can_be_both(k, m))
		finding_raise(k, m->place, finding_spot(k, m->place),
		    "%.*s has no scale; read as %s, %.*s, since %s %.*s %s. Say the scale "
		    "once",
		    SAY(number), scale, SAY(value), place_name(m->role), SAY(number),
		    celsius ? "°F" : "°C")
		    ->severity = SEVERITY_NOTE;
	else if (reason)
		finding_raise(k, m->place, finding_spot(k, m->place),
		    "%.*s has no scale; read as %s, %.*s, %s. Say the scale once",
		    SAY(number), scale, SAY(value), reason)
		    ->severity = SEVERITY_NOTE;
	else
		finding_raise(k, m->place, finding_spot(k, m->place),
		    "%.*s has no scale, and an oven can be set to it in Fahrenheit and in "
		    "Celsius; "
		    "read as %s. Say which is meant",
		    SAY(number), scale);
}

void
check_missing_scale(struct check *k)
{
	struct evidence e = evidence_of(k->draft);

	for (size_t i = 0; i < k->draft->measures; i++) {
		const struct measure *m = &k->draft->measure[i];

		if (!is_degrees(m) || m->unit_stated || m->converted ||
		    !m->value.unit->has_base || is_told_after(k->draft, i) ||
		    is_weather(m) || is_plain(k, i))
			continue;
		check_scale(k, m, &e);
	}
}
