/* SPDX-License-Identifier: ISC */
/*
 * Meat, fish and egg dishes that are cooked with nothing to tell when they are
 * cooked through.
 */
#include "check/facts.h"
#include "check/food.h"
#include "check/say.h"

#define RISKY                                                                              \
	"poultry poultry-whole ground-poultry poultry-sausage giblets game-bird "          \
	"ground-meat "                                                                     \
	"ground-game sausage rolled-joint stuffing pork ham-fresh fish ground-fish "       \
	"shellfish crustacean bivalve"

enum { STEWED_MS = 30 * 60 * 1000, NAMES_MAX = 4 };

/* Its class where it has to be cooked through; empty where it has not. */
static struct str
risk_of(const struct check *k, const struct cursor *c, const struct ingredient *in)
{
	struct str class = food_class(k, in),
		   of_dish = food_class_of_name(k, c->dish->name);

	if (str_is_z(class, "egg") && word_in(of_dish, "egg-dish"))
		class = of_dish;
	else if (!word_in(class, RISKY))
		class = (struct str){NULL, 0};
	return class.n && !food_is_ready(k, in) ? class : (struct str)
	{
		NULL, 0
	};
}

static bool
has_risky(const struct check *k, const struct part *p, const struct step *s)
{
	for (size_t i = 0; i < s->uses; i++)
		if (s->use[i] < p->ingredients &&
		    word_in(food_class(k, &p->ingredient[s->use[i]]), RISKY))
			return true;
	return false;
}

/* Words that are only said of meat and fish. */
static bool
is_sign_of_meat(struct str text)
{
	static const char *const words[] = {
	    "pink", "juices", "flakes", "opaque", "cooked through", "raw"};

	for (size_t i = 0; i < sizeof words / sizeof *words; i++)
		if (str_find(text, str_of(words[i])) < text.n)
			return true;
	return false;
}

/* What the step says of doneness speaks of this food. */
static bool
tells_of(const struct check *k, const struct cursor *c, const struct part *p,
    const struct step *s, size_t food)
{
	const struct ingredient *in = &c->part->ingredient[food];
	struct ingredient subject = {.key = s->doneness.subject};
	bool ours = p == c->part && step_uses(s, food);

	for (size_t i = 0; i < s->products; i++)
		ours = ours || (int)s->product[i] == c->at.part;
	if (s->doneness.known && (ours || !has_risky(k, p, s)))
		return true;
	if (!s->doneness.text.n || s->doneness.weak || s->doneness.mixture)
		return false;
	if (subject.key.n)
		return food_matches(&subject, in);
	return ours || s->uses == 0 ||
	       (p == c->part && is_sign_of_meat(s->doneness.text) && !has_risky(k, p, s));
}

static bool
is_stewed(const struct cursor *c, size_t from)
{
	int64_t wet = 0;

	for (size_t i = from; i < c->part->steps; i++) {
		const struct step *s = &c->part->step[i];

		if (step_is_in(s, "pressure-cooker") || step_is_in(s, "slow-cooker"))
			return true;
		if (s->heats && s->passive && step_is_in(s, "stove") && s->duration.known)
			wet += s->duration.min_ms;
	}
	return wet >= STEWED_MS;
}

/* A reading inside is said later in the dish, whichever step it became part of. */
static bool
reading_is_said(const struct check *k, const struct cursor *c)
{
	for (size_t i = 0; i < k->draft->measures; i++) {
		const struct measure *m = &k->draft->measure[i];

		if (m->kind == MEASURE_TEMPERATURE && m->role == ROLE_INTERNAL &&
		    !m->aside && is_before(c->step->place, m->place) &&
		    finding_spot(k, m->place).dish == c->at.dish)
			return true;
	}
	return false;
}

/* Some step from this one on tells when the food is done. */
static bool
is_told(const struct check *k, const struct cursor *c, size_t food)
{
	for (size_t p = 0; p < c->dish->parts; p++) {
		const struct part *part = &c->dish->part[p];

		for (size_t i = 0; i < part->steps; i++)
			if (!is_before(part->step[i].place, c->step->place) &&
			    tells_of(k, c, part, &part->step[i], food))
				return true;
	}
	return reading_is_said(k, c) || is_stewed(c, (size_t)c->at.step);
}

static bool
cooked_before(const struct cursor *c, size_t food)
{
	for (int i = 0; i < c->at.step; i++)
		if (c->part->step[i].heats && step_uses(&c->part->step[i], food))
			return true;
	return false;
}

static void
check_cooking(struct check *k, const struct cursor *c)
{
	struct str name[NAMES_MAX], class = {NULL, 0}, names, action = say_action(c->step);
	struct minimum least;
	size_t n = 0;

	for (size_t u = 0; u < c->step->uses && n < NAMES_MAX; u++) {
		uint32_t food = c->step->use[u];
		struct str risk;

		if (food >= c->part->ingredients || cooked_before(c, food))
			continue;
		risk = risk_of(k, c, &c->part->ingredient[food]);
		if (!risk.n || is_told(k, c, food) ||
		    (word_in(risk, "ground-meat ground-poultry") &&
			facts_has_action(k, "own_cues", c->step->action)))
			continue;
		class = risk;
		name[n++] = c->part->ingredient[food].item;
	}
	if (n == 0)
		return;
	names = say_list(k, name, n);
	if (facts_minimum(k, class, &least)) {
		struct str inside = say_inside(k, least.c, c->step->temperature.unit);

		finding_raise(k, c->step->place, c->at,
		    "%.*s %.*s: nothing tells when it is cooked through, and a time alone "
		    "does not. "
		    "Give the temperature inside (minimum %.*s, %.*s) or a sure sign; "
		    "local food "
		    "codes and qualified advice come first",
		    SAY(action), SAY(names), SAY(inside), SAY(least.source));
	} else {
		finding_raise(k, c->step->place, c->at,
		    "%.*s %.*s: nothing tells when it is cooked through, and a time alone "
		    "does not. "
		    "Give a sure sign; local food codes and qualified advice come first",
		    SAY(action), SAY(names));
	}
}

/* The food is in none of the steps that heat something. */
static bool
is_heated_nowhere(const struct cursor *c, size_t food)
{
	for (size_t p = 0; p < c->dish->parts; p++)
		for (size_t i = 0; i < c->dish->part[p].steps; i++) {
			const struct step *s = &c->dish->part[p].step[i];

			if (!s->heats)
				continue;
			if ((int)p == c->at.part && step_uses(s, food))
				return false;
			for (size_t u = 0; u < s->products; u++)
				if ((int)s->product[u] == c->at.part)
					return false;
		}
	return true;
}

static bool
names_little(const struct part *p, const struct step *s)
{
	for (size_t i = 0; i < s->uses; i++)
		if (s->use[i] < p->ingredients &&
		    !food_is_little(&p->ingredient[s->use[i]]))
			return false;
	return true;
}

/* "Then it goes in": the first step after it that heats and names no food. */
static const struct step *
step_without_food(const struct cursor *c, struct place from)
{
	const struct step *first = NULL;

	for (size_t p = 0; p < c->dish->parts; p++)
		for (size_t i = 0; i < c->dish->part[p].steps; i++) {
			const struct step *s = &c->dish->part[p].step[i];

			if (s->heats && !s->preheats &&
			    names_little(&c->dish->part[p], s) &&
			    is_before(from, s->place) &&
			    (!first || is_before(s->place, first->place)))
				first = s;
		}
	return first;
}

/* Raw food whose cooking does not name it. */
static void
check_unnamed(struct check *k, const struct cursor *c)
{
	size_t food = (size_t)c->nth;
	struct cursor at = *c;
	struct str action;

	if (c->ingredient->optional || !risk_of(k, c, c->ingredient).n ||
	    !is_heated_nowhere(c, food))
		return;
	at.step = step_without_food(c, c->ingredient->place);
	at.at.step = 0;
	if (!at.step || is_told(k, &at, food))
		return;
	action = say_action(at.step);
	finding_raise(k, at.step->place, finding_spot(k, at.step->place),
	    "%.*s: nothing tells when the %.*s is cooked through, and a time alone does "
	    "not. "
	    "Give the temperature inside or a sure sign; local food codes and qualified "
	    "advice come first",
	    SAY(action), SAY(c->ingredient->item));
}

void
check_missing_doneness(struct check *k)
{
	struct cursor c = walk(k->draft), in = c;

	while (walk_ingredient(&in))
		check_unnamed(k, &in);

	while (walk_step(&c))
		if (c.step->heats && !c.step->preheats && !step_is_ban(c.step))
			check_cooking(k, &c);
}
