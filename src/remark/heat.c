/* SPDX-License-Identifier: ISC */
/*
 * In what a step cooks, by what was said: an appliance that nobody has named is
 * a guess. And heat that is told without a setting: hot coals, a smoking pan.
 */
#include "remark/told.h"

/* An appliance, and the first token that names it. */
struct named {
	struct str appliance;
	uint32_t token;
};

/* Its heat is told in a dish. */
struct hot {
	struct str appliance;
	int dish;
};

struct heat {
	struct maker *m;
	VEC(struct named) named;
	VEC(struct hot) hot;
	uint32_t degrees; /* the token where some are first said */
};

static struct str
appliance_of(const struct maker *m, uint32_t token)
{
	static const char *const classes[] = {"EQUIP", "ACTION", "ACTION_ING", "ACTION_S"};

	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++) {
		const struct reading *r = token_reading(m, token, classes[i]);
		struct str of = r ? lexeme_get(r->lexeme, "appliance") : STR("");

		if (of.n)
			return of;
	}
	return STR("");
}

static void
add_named(struct heat *h, uint32_t token)
{
	struct str of = appliance_of(h->m, token);

	for (size_t i = 0; i < h->named.n; i++)
		if (str_is(h->named.v[i].appliance, of))
			return;
	if (of.n)
		vec_push(h->m->a, &h->named, (struct named){of, token});
}

/* "under a hot grill", "pan's hot", "the skillet should be smoking" */
static void
add_hot(struct heat *h, uint32_t token)
{
	enum { NEAR = 4 };
	struct span s = sentence_of(h->m, token);
	int dish = turn_of(h->m, token).dish;

	if (token_has(h->m, token, "COALWORD")) {
		vec_push(h->m->a, &h->hot, (struct hot){STR("grill"), dish});
		vec_push(h->m->a, &h->hot, (struct hot){STR("barbecue"), dish});
		return;
	}
	if (!token_has(h->m, token, "HOTWORD"))
		return;
	for (uint32_t i = token > s.beg + NEAR ? token - NEAR : s.beg;
	     i < s.end && i < token + NEAR; i++) {
		struct str of = appliance_of(h->m, i);

		if (of.n && !str_is_z(of, "oven"))
			vec_push(h->m->a, &h->hot, (struct hot){of, dish});
		else if (!of.n && token_reading(h->m, i, "EQUIP"))
			vec_push(h->m->a, &h->hot, (struct hot){STR("stove"), dish});
	}
}

/* "the grill on high", "slow cooker to low" */
static void
add_level(struct heat *h, uint32_t token)
{
	enum { NEAR = 6 };
	static const char *const before[] = {"on", "to", "at", "up to", "down to"};
	bool set = false;

	for (size_t i = 0; token > 0 && i < sizeof before / sizeof *before; i++)
		set = set || token_is(h->m, token - 1, before[i]);
	if (!set || !token_has(h->m, token, "HEATLEVEL"))
		return;
	for (uint32_t i = token; i-- > 0 && i + NEAR > token;) {
		struct str of = appliance_of(h->m, i);

		if (of.n) {
			vec_push(
			    h->m->a, &h->hot, (struct hot){of, turn_of(h->m, token).dish});
			return;
		}
	}
}

/* Where degrees are first said of what heats; past the end where nowhere. */
static uint32_t
first_degrees(const struct maker *m)
{
	for (size_t i = 0; i < m->d->measures; i++)
		if (m->d->measure[i].kind == MEASURE_TEMPERATURE &&
		    m->d->measure[i].role == ROLE_APPLIANCE)
			return token_from(m, m->d->measure[i].place.span.beg);
	return (uint32_t)m->c.tokens.token.n;
}

/* "oven's at 120", "the fryer is set to 180": of the appliance, not the food. */
static bool
is_setting(const struct maker *m, const struct measure *x)
{
	enum { REACH = 6 };
	uint32_t at = token_from(m, x->place.span.beg);
	struct span s = sentence_of(m, at);
	bool said = false;

	for (uint32_t i = at; i-- > s.beg && i + REACH > at;) {
		if (appliance_of(m, i).n)
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

static void
fill_step(const struct heat *h, const struct stretch *x)
{
	struct step *s = x->step;

	s->guessed = s->appliance && s->heats;
	for (size_t i = 0; i < h->named.n; i++)
		if (s->guessed && str_is_z(h->named.v[i].appliance, s->appliance) &&
		    h->named.v[i].token < x->end)
			s->guessed = false;
	s->guessed = s->guessed && h->degrees >= x->end;
	for (size_t i = 0; s->appliance && i < h->hot.n; i++)
		if (h->hot.v[i].dish == x->dish &&
		    str_is_z(h->hot.v[i].appliance, s->appliance))
			s->heat_told = true;
}

void
heat_fill(const struct told *t)
{
	struct heat h = {.m = t->m};

	for (size_t i = 0; i < t->m->d->measures; i++)
		mend_reading(t, &t->m->d->measure[i]);
	for (uint32_t i = 0; i < t->m->c.tokens.token.n; i++) {
		add_named(&h, i);
		add_hot(&h, i);
		add_level(&h, i);
	}
	h.degrees = first_degrees(t->m);
	for (size_t i = 0; i < t->stretch.n; i++)
		fill_step(&h, &t->stretch.v[i]);
}
