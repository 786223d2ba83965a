/* SPDX-License-Identifier: ISC */
/*
 * Where the food is heated and at what setting: an oven's temperature stays
 * until it is changed, an oil's makes a fryer of a pot.
 */
#include "assemble/stepper.h"

/* NULL where the appliance was not set. */
static struct setting *
setting_find(struct stepper *k, const char *appliance)
{
	for (size_t i = 0; i < k->settings; i++)
		if (str_is(str_of(k->setting[i].appliance), str_of(appliance)))
			return &k->setting[i];
	return NULL;
}

static struct setting *
setting_of(struct stepper *k, const char *appliance)
{
	struct setting *found = setting_find(k, appliance);

	if (found)
		return found;
	if (k->settings == SETTINGS_MAX)
		return &k->setting[SETTINGS_MAX - 1];
	k->setting[k->settings] = (struct setting){.appliance = appliance};
	return &k->setting[k->settings++];
}

bool
heat_has_setting(const char *appliance)
{
	return appliance && !str_is(str_of(appliance), STR("stove")) &&
	       !str_is(str_of(appliance), STR("microwave"));
}

/* "350, that's 180 Celsius": the setting once more, in another scale. */
static bool
says_again(const struct deed *d, const struct temperature *set)
{
	return d->restates && !d->named && set->unit && d->temperature.unit != set->unit;
}

/* Are degrees told that an appliance or its oil is set to? */
static bool
sets_degrees(const struct deed *d)
{
	return d->temperature.unit &&
	       (d->temperature.role == ROLE_APPLIANCE || d->temperature.role == ROLE_OIL);
}

/* The appliance that the clause's setting is for. */
static const char *
target_of(const struct deed *d, const char *appliance)
{
	return d->temperature.role == ROLE_OIL ? "fryer"
	       : heat_has_setting(appliance)   ? appliance
					       : "oven";
}

static const char *
appliance_of(const struct stepper *k, const struct deed *d)
{
	return d->appliance                   ? d->appliance
	       : k->step.appliance            ? k->step.appliance
	       : heat_has_setting(k->now.hot) ? k->now.hot
					      : NULL;
}

void
heat_turn(struct stepper *k, const struct deed *d)
{
	const char *target = target_of(d, appliance_of(k, d));

	if (sets_degrees(d) && !says_again(d, &setting_of(k, target)->temperature)) {
		k->now.last = target;
		*setting_of(k, target) = (struct setting){target, d->temperature, d->heats};
	}
}

void
heat_take(struct stepper *k, const struct deed *d)
{
	struct step *s = &k->step;
	const char *appliance = appliance_of(k, d);

	if (!s->appliance || (d->heats && d->appliance))
		s->appliance = appliance;
	if (d->temperature.present) {
		heat_turn(k, d);
		if (!s->appliance && sets_degrees(d))
			s->appliance = target_of(d, appliance);
		if (!s->temperature.unit)
			s->temperature = d->temperature;
	} else if (d->heats && heat_has_setting(appliance) && !s->temperature.present) {
		s->temperature = setting_of(k, appliance)->temperature;
		s->temperature.inherited = s->temperature.present;
		setting_of(k, appliance)->used = true;
	}
}

void
heat_prolong(struct stepper *k, struct deed *d)
{
	struct part *p = part_now(k);
	struct step *s = p->steps && k->heated < p->steps ? &p->step[k->heated] : NULL;

	if (k->open && k->step.duration.known && k->step.heats)
		s = &k->step;
	if (!s || k->told_apart || !d->more || !d->duration.known || !d->heats ||
	    d->foods ||
	    (d->appliance && s->appliance &&
		!str_is(str_of(d->appliance), str_of(s->appliance))))
		return;
	s->duration.min_ms += d->duration.min_ms;
	s->duration.max_ms += d->duration.max_ms;
	d->duration.present = d->duration.known = d->heats = false;
}

/* Is the heat of the appliance told in degrees or by itself, not by a flame? */
static bool
has_no_flame(const char *appliance)
{
	return str_is_z(str_of(appliance), "oven") || str_is_z(str_of(appliance), "fryer");
}

/* Keeps in mind where the food is: an oil's temperature makes a fryer of a pot,
 * which stays one until a flame is set. */
void
heat_follow(struct stepper *k, const struct deed *d)
{
	bool stove = d->appliance && str_is_z(str_of(d->appliance), "stove");
	bool frying = k->now.hot && str_is_z(str_of(k->now.hot), "fryer");

	bool oil = d->temperature.unit && d->temperature.role == ROLE_OIL;

	k->oil = k->oil || oil;
	/* "same oil": the pot of the dish before */
	if (oil || (k->oil && d->oil))
		k->now.hot = k->now.last = "fryer";
	else if (d->temperature.heat.n && !d->named &&
		 (!k->now.hot || has_no_flame(k->now.hot)))
		k->now.hot = "stove";
	else if (d->appliance &&
		 (d->named || d->heats || d->temperature.present || stove) &&
		 !(frying && stove))
		k->now.hot = d->appliance;
	else if (d->temperature.unit && d->temperature.role == ROLE_APPLIANCE &&
		 !k->now.hot)
		k->now.hot = "oven";
}

/* What of the settings is for a dish that begins: those not yet used, "the oven
 * first". */
static void
begin_dish(struct stepper *k)
{
	size_t kept = 0;

	for (size_t i = 0; i < k->settings; i++)
		if (!k->setting[i].used)
			k->setting[kept++] = k->setting[i];
	k->settings = kept;
	k->now.last = kept ? k->setting[kept - 1].appliance : NULL;
	if (k->now.hot && !str_is_z(str_of(k->now.hot), "fryer"))
		k->now.hot = NULL;
}

static struct left *
left_of(struct stepper *k, int dish)
{
	for (size_t i = 0; i < k->lefts; i++)
		if (k->left[i].dish == dish)
			return &k->left[i];
	return NULL;
}

void
heat_turn_to_dish(struct stepper *k, int dish)
{
	const struct left *back = left_of(k, dish);
	struct left *now = left_of(k, k->dish);

	if (!now && k->lefts < LEFTS_MAX)
		now = &k->left[k->lefts++];
	if (now) {
		*now =
		    (struct left){.dish = k->dish, .now = k->now, .settings = k->settings};
		memcpy(now->setting, k->setting, sizeof now->setting);
	}
	if (!back || back == now) {
		begin_dish(k);
		return;
	}
	k->now = back->now;
	for (size_t i = 0; i < back->settings; i++)
		if (!setting_find(k, back->setting[i].appliance))
			*setting_of(k, back->setting[i].appliance) = back->setting[i];
}

/* An oven set before the first dish is opened is set for it. */
void
heat_set_before(struct stepper *k, const struct clause *q)
{
	struct deed d;

	if (k->dish >= 0 || q->kind == CLAUSE_CHAT || q->kind == CLAUSE_NOT)
		return;
	deed_read(k->m, q, &d);
	if (d.temperature.unit && d.named && d.temperature.role == ROLE_APPLIANCE)
		*setting_of(k, d.appliance) =
		    (struct setting){d.appliance, d.temperature, false};
	k->now.last = k->settings ? k->setting[k->settings - 1].appliance : NULL;
}
