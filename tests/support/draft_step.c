/* SPDX-License-Identifier: ISC */
/*
 * Steps and measures of the text that draft_text.h describes.
 */
#include "../support/draft_maker.h"

static void
step_value(struct maker *m, struct step *s, const char *key, struct str v)
{
	struct amount a = value_of(m, v);

	if (strcmp(key, "t") == 0) {
		s->temperature.present = true;
		s->temperature.min = a.min;
		s->temperature.max = a.max;
		s->temperature.unit = a.unit;
		s->temperature.unit_stated = true;
		s->temperature.role = ROLE_APPLIANCE;
		s->temperature.place = s->place;
	} else if (strcmp(key, "d") == 0) {
		s->duration = (struct duration){
		    true, true, to_ms(&a, a.min), to_ms(&a, a.max), false};
	} else if (strcmp(key, "inside") == 0) {
		s->doneness.known = true;
		s->doneness.min = a.min;
		s->doneness.max = a.max;
		s->doneness.unit = a.unit;
		s->doneness.place = s->place;
	} else if (strcmp(key, "hold") == 0) {
		s->doneness.hold_ms = to_ms(&a, a.min);
	} else {
		s->again = arena_array(m->d->arena, 1, struct restated);
		s->again[s->agains++] = (struct restated){a, next_place(m)};
	}
}

static void
step_indexes(struct maker *m, struct str v, uint32_t **out, size_t *n)
{
	uint64_t index = 0;

	*out = arena_array(m->d->arena, MANY, uint32_t);
	while (v.p) {
		need(str_to_u64(str_next(&v, ','), &index), "no index", v);
		(*out)[(*n)++] = (uint32_t)index;
	}
}

static bool
step_flag(struct step *s, struct str word)
{
	const struct {
		const char *name;
		bool *flag;
	} rows[] = {{"heats", &s->heats}, {"preheats", &s->preheats},
	    {"passive", &s->passive}, {"beside", &s->beside},
	    {"inherited", &s->temperature.inherited}, {"change", &s->temperature.change},
	    {"weak", &s->doneness.weak}, {"mixture", &s->doneness.mixture},
	    {"while", &s->time_vague}};

	for (size_t i = 0; i < COUNT(rows); i++)
		if (str_is_z(word, rows[i].name))
			return *rows[i].flag = true;
	return false;
}

static void
step_option(struct maker *m, struct step *s, struct str word)
{
	static const char *const values[] = {"t", "d", "inside", "hold", "again"};
	struct str v;

	for (size_t i = 0; i < COUNT(values); i++)
		if (is_option(word, values[i], &v)) {
			step_value(m, s, values[i], v);
			return;
		}
	if (is_option(word, "in", &v)) {
		s->appliance = arena_str(m->d->arena, v).p;
	} else if (is_option(word, "use", &v)) {
		step_indexes(m, v, &s->use, &s->uses);
	} else if (is_option(word, "product", &v)) {
		step_indexes(m, v, &s->product, &s->products);
	} else if (is_option(word, "level", &v)) {
		s->temperature.present = true;
		s->temperature.heat = v;
	} else if (is_option(word, "cue", &v)) {
		s->doneness.text = words(m, v);
	} else if (is_option(word, "of", &v)) {
		s->doneness.subject = v;
	} else if (str_is_z(word, "night")) {
		s->duration = (struct duration){true, false, -1, -1, false};
	} else if (str_is_z(word, "oil") || str_is_z(word, "liquid")) {
		s->temperature.role = str_is_z(word, "oil") ? ROLE_OIL : ROLE_LIQUID;
	} else if (!step_flag(s, word)) {
		need(false, "step", word);
	}
}

void
make_step(struct maker *m, struct str *rest)
{
	struct step *s = &m->part->step[m->part->steps++];

	s->action = words(m, str_next(rest, ' '));
	s->kind = str_next(rest, ' ');
	s->place = next_place(m);
	while (rest->p)
		step_option(m, s, str_next(rest, ' '));
}

static void
measure_option(struct maker *m, struct measure *x, struct str word)
{
	static const char *const roles[] = {"", "appliance", "oil", "liquid", "internal",
	    "ambient", "step", "rest", "claim", "other"};
	struct str v;

	for (size_t i = 1; i < COUNT(roles); i++)
		if (str_is_z(word, roles[i])) {
			x->role = (enum measure_role)i;
			return;
		}
	if (is_option(word, "first", &v)) {
		x->first = value_of(m, v);
		x->corrected = true;
	} else if (is_option(word, "text", &v)) {
		x->text = words(m, v);
	} else if (str_is_z(word, "bare")) {
		x->unit_stated = false;
	} else if (str_is_z(word, "converted")) {
		x->converted = true;
	} else if (str_is_z(word, "reversed")) {
		x->reversed = true;
	} else if (str_is_z(word, "about")) {
		x->approximate = true;
	} else if (str_is_z(word, "aside")) {
		x->aside = true;
	} else if (str_is_z(word, "near")) {
		m->now -= STEP_BYTES - 2 * WORD_BYTES;
		x->place.span = (struct span){m->now, m->now + WORD_BYTES};
	} else {
		need(false, "measure", word);
	}
}

void
make_measure(struct maker *m, enum measure_kind kind, struct str *rest)
{
	struct measure *x = &m->d->measure[m->d->measures++];

	x->kind = kind;
	x->text = str_next(rest, ' ');
	x->value = value_of(m, x->text);
	x->unit_stated = true;
	x->place = next_place(m);
	while (rest->p)
		measure_option(m, x, str_next(rest, ' '));
}
