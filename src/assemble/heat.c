/* SPDX-License-Identifier: ISC */
/*
 * Where the food is heated and at what setting: an oven's temperature stays
 * until it is changed, an oil's makes a fryer of a pot.
 */
#include "assemble/stepper.h"

static struct setting *
setting_of(struct stepper *k, const char *appliance)
{
	for (size_t i = 0; i < k->settings; i++)
		if (str_is(str_of(k->setting[i].appliance), str_of(appliance)))
			return &k->setting[i];
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

void
heat_take(struct stepper *k, const struct deed *d)
{
	struct step *s = &k->step;
	const char *appliance = d->appliance               ? d->appliance
				: s->appliance             ? s->appliance
				: heat_has_setting(k->hot) ? k->hot
							   : NULL;

	if (!s->appliance || (d->heats && d->appliance))
		s->appliance = appliance;
	if (d->temperature.present) {
		if (d->temperature.unit && (d->temperature.role == ROLE_APPLIANCE ||
					       d->temperature.role == ROLE_OIL)) {
			const char *target = d->temperature.role == ROLE_OIL ? "fryer"
					     : heat_has_setting(appliance)   ? appliance
									     : "oven";

			if (!says_again(d, &setting_of(k, target)->temperature))
				setting_of(k, target)->temperature = d->temperature;
			if (!s->appliance)
				s->appliance = target;
		}
		if (!s->temperature.unit)
			s->temperature = d->temperature;
	} else if (d->heats && heat_has_setting(appliance) && !s->temperature.present) {
		s->temperature = setting_of(k, appliance)->temperature;
		s->temperature.inherited = s->temperature.present;
	}
}

/* Keeps in mind where the food is: an oil's temperature makes a fryer of a pot. */
void
heat_follow(struct stepper *k, const struct deed *d)
{
	if (d->temperature.unit && d->temperature.role == ROLE_OIL)
		k->hot = "fryer";
	else if (d->appliance &&
		 (d->named || d->heats || d->temperature.present ||
		     str_is_z(str_of(d->appliance), "stove")) &&
		 !(k->hot && str_is_z(str_of(k->hot), "fryer") &&
		     str_is_z(str_of(d->appliance), "stove")))
		k->hot = d->appliance;
	else if (d->temperature.heat.n && !k->hot)
		k->hot = "stove";
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
		setting_of(k, d.appliance)->temperature = d.temperature;
}
