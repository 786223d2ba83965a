/* SPDX-License-Identifier: ISC */
/*
 * Puts temperatures, heat levels, cues and times into the steps that the
 * finding is about.
 */
#include "answer/target.h"
#include "base/print.h"

/* Every step of the draft, one after the other; false past the last. */
struct walk {
	size_t dish, part, step;
	struct step *at;
	struct part *in;
};

static bool
next_step(struct draft *d, struct walk *k)
{
	if (k->at)
		k->step++;
	for (; k->dish < d->dishes; k->dish++, k->part = 0, k->step = 0)
		for (; k->part < d->dish[k->dish].parts; k->part++, k->step = 0) {
			k->in = &d->dish[k->dish].part[k->part];
			if (k->step < k->in->steps) {
				k->at = &k->in->step[k->step];
				return true;
			}
		}
	return false;
}

/* ---- temperatures ------------------------------------------------------------ */

static struct amount
degrees_of(const struct temperature *t)
{
	return (struct amount){true, t->unit != NULL, t->min, t->max, t->unit};
}

static void
set_degrees(struct temperature *t, const struct value *v)
{
	t->present = true;
	t->min = v->amount.min;
	t->max = v->amount.max;
	t->unit = v->amount.unit;
	t->unit_stated = true;
	t->heat = STR("");
}

static bool
is_scaled(const struct value *v)
{
	return v->measured && v->kind == MEASURE_TEMPERATURE && v->amount.known &&
	       v->amount.unit;
}

static void
set_reading(struct doneness *d, const struct value *v)
{
	d->known = d->unit_stated = true;
	d->min = v->amount.min;
	d->max = v->amount.max;
	d->unit = v->amount.unit;
	d->hold_ms = v->hold_ms ? v->hold_ms : d->hold_ms;
}

static void
set_step_degrees(const struct target *t, struct step *s)
{
	struct amount from = degrees_of(&s->temperature);
	struct amount reading = {
	    true, s->doneness.known, s->doneness.min, s->doneness.max, s->doneness.unit};

	if (s->temperature.present && s->temperature.unit &&
	    target_is_about(t, s->temperature.place)) {
		edit_revalue(
		    edit_of(t, s), MEASURE_TEMPERATURE, &from, &t->v.amount, STR(""));
		set_degrees(&s->temperature, &t->v);
	}
	if (s->doneness.known && target_is_about(t, s->doneness.place)) {
		edit_revalue(
		    edit_of(t, s), MEASURE_TEMPERATURE, &reading, &t->v.amount, STR(""));
		set_reading(&s->doneness, &t->v);
	}
	for (size_t i = 0; i < s->agains; i++)
		if (target_is_about(t, s->again[i].place))
			s->again[i].value = t->v.amount;
}

bool
apply_degrees(struct target *t)
{
	struct walk k = {0};

	if (!is_scaled(&t->v))
		return target_misfit(t, "degrees with their scale, as 190 °C");
	while (next_step(t->w->d, &k))
		set_step_degrees(t, k.at);
	return true;
}

/* "Heat the grill to high." */
static struct str
setting_words(const struct target *t, const struct step *s)
{
	struct buf b = buf_in(t->w->a);
	bool stove = s->appliance && strcmp(s->appliance, "stove") == 0;

	if (stove || !s->appliance)
		buf_put_z(&b, "Set the heat to ");
	else
		buf_fmt(&b, "Heat the %s to ", s->appliance);
	if (t->v.heat.n)
		buf_put(&b, t->v.heat);
	else
		print_temperature(
		    &b, t->v.amount.min, t->v.amount.max, t->v.amount.unit, false);
	buf_put_char(&b, '.');
	return buf_str(&b);
}

static void
set_setting(const struct target *t, struct step *s)
{
	if (t->v.heat.n)
		s->temperature.heat = t->v.heat;
	else
		set_degrees(&s->temperature, &t->v);
	s->temperature.present = true;
	s->temperature.role = ROLE_APPLIANCE;
	s->temperature.place = t->f->place;
}

bool
apply_setting(struct target *t)
{
	struct step *s = target_step(t);
	struct walk k = {0};

	if (!is_scaled(&t->v) && !t->v.heat.n)
		return target_misfit(
		    t, "degrees with their scale, or how high: low, medium, high");
	if (!s)
		return target_missing(t, "step");
	edit_before(edit_of(t, s), setting_words(t, s));
	set_setting(t, s);
	/* What cooks in it later in the dish takes the same setting. */
	while (next_step(t->w->d, &k))
		if ((int)k.dish == t->f->dish && k.at->heats &&
		    !k.at->temperature.present && k.at->appliance && s->appliance &&
		    strcmp(k.at->appliance, s->appliance) == 0) {
			k.at->temperature = s->temperature;
			k.at->temperature.inherited = true;
		}
	return true;
}

bool
apply_preheat(struct target *t)
{
	struct step *s = target_step(t),
		    *first = target_part(t) ? target_part(t)->step : NULL;

	if (!s || !first)
		return target_missing(t, "step");
	if (!is_scaled(&t->v)) {
		struct amount set = degrees_of(&s->temperature);

		t->v.amount = set;
		t->v.heat = s->temperature.heat;
		if (!set.known && !t->v.heat.n)
			return target_misfit(t, "degrees with their scale");
	}
	edit_before(
	    edit_of(t, first), setting_words(&(struct target){t->w, t->x, t->f, t->v}, s));
	return true;
}

/* ---- doneness ------------------------------------------------------------------ */

static struct str
until_words(const struct target *t)
{
	struct buf b = buf_in(t->w->a);
	struct str words = t->v.words;

	buf_put_z(&b, "Cook until ");
	if (is_scaled(&t->v)) {
		buf_put_z(&b, "it reads ");
		print_temperature(
		    &b, t->v.amount.min, t->v.amount.max, t->v.amount.unit, true);
		buf_put_z(&b, " inside");
	} else {
		if (str_starts(words, STR("until ")))
			words = str_cut(words, strlen("until "), words.n);
		buf_put(&b, words);
	}
	if (t->v.hold_ms) {
		buf_put_z(&b, ", and hold it there for ");
		print_duration(&b, t->v.hold_ms, t->v.hold_ms);
	}
	buf_put_char(&b, '.');
	return buf_str(&b);
}

bool
apply_doneness(struct target *t)
{
	struct step *s = target_step(t);

	if (!s || (s->doneness.known && is_scaled(&t->v) && !t->v.hold_ms))
		return apply_degrees(t);
	edit_after(edit_of(t, s), until_words(t));
	if (is_scaled(&t->v))
		set_reading(&s->doneness, &t->v);
	else
		s->doneness.text = t->v.words;
	s->doneness.weak = s->doneness.mixture = false;
	s->doneness.subject = STR("");
	s->doneness.place = t->f->place;
	return true;
}

/* ---- times ----------------------------------------------------------------------- */

static bool
read_time(const struct value *v, struct duration *out)
{
	const struct amount *a = &v->amount;
	struct ratio thousand = ratio_int(1000);

	if (!v->measured || v->kind != MEASURE_DURATION)
		return false;
	*out = (struct duration){.present = true, .known = a->known};
	if (a->known && a->unit && a->unit->has_base) {
		out->min_ms =
		    ratio_round(ratio_mul(unit_to_base(a->unit, a->min), thousand));
		out->max_ms =
		    ratio_round(ratio_mul(unit_to_base(a->unit, a->max), thousand));
	}
	return true;
}

bool
apply_time(struct target *t)
{
	struct step *s = target_step(t);
	struct duration d;

	if (!read_time(&t->v, &d)) {
		if (strcmp(t->f->kind->code, "missing-time") == 0)
			return apply_doneness(t);
		return target_misfit(t, "a time, as 10 minutes");
	}
	if (!s)
		return target_missing(t, "step");
	if (s->duration.present)
		edit_retime(edit_of(t, s), &s->duration, &d);
	else
		edit_time(edit_of(t, s), &d);
	s->duration = d;
	s->time_vague = false;
	for (size_t i = 0; i < s->agains; i++)
		if (target_is_about(t, s->again[i].place))
			s->again[i].value = t->v.amount;
	return true;
}

bool
apply_claim(struct target *t)
{
	struct dish *dish = target_dish(t);
	struct duration d;

	if (!read_time(&t->v, &d) || !d.known)
		return target_misfit(t, "how long the dish takes, as 1 hour");
	if (!dish)
		return target_missing(t, "dish");
	dish->claimed_ms = d.max_ms;
	return true;
}
