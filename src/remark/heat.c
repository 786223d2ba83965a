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

struct str
appliance_named(const struct maker *m, uint32_t token)
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
	struct str of = appliance_named(h->m, token);

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
		struct str of = appliance_named(h->m, i);

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
		struct str of = appliance_named(h->m, i);

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

	readings_fill(t);
	for (uint32_t i = 0; i < t->m->c.tokens.token.n; i++) {
		add_named(&h, i);
		add_hot(&h, i);
		add_level(&h, i);
	}
	h.degrees = first_degrees(t->m);
	for (size_t i = 0; i < t->stretch.n; i++)
		fill_step(&h, &t->stretch.v[i]);
}
