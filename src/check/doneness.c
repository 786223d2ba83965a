/* SPDX-License-Identifier: ISC */
/*
 * Meat, fish and egg dishes that are cooked with nothing to tell when they are
 * cooked through, and what is served raw with no caution.
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

/* ---- raw-ingredient ------------------------------------------------------ */

static bool
has_remark(const struct draft *d, enum remark_kind kind, int dish)
{
	for (size_t i = 0; i < d->remarks; i++)
		if (d->remark[i].kind == kind && d->remark[i].dish == dish)
			return true;
	return false;
}

static void
raise_raw(struct check *k, struct place at, struct spot spot, struct str food)
{
	finding_raise(k, at, spot,
	    "%.*s is served raw and nobody is warned: the very young, the old, the "
	    "pregnant and "
	    "people with weak immunity should not have it. Say so, or use what is "
	    "pasteurised or "
	    "cooked; qualified advice comes first",
	    SAY(food));
}

static bool
is_heated_from(const struct part *p, struct place from)
{
	for (size_t i = 0; i < p->steps; i++)
		if ((p->step[i].heats || word_in(p->step[i].kind, "heat")) &&
		    !is_before(p->step[i].place, from))
			return true;
	return false;
}

/* What the part made goes into a step: *heated where that is cooked then. */
static bool
goes_into(const struct cursor *c, bool *heated)
{
	bool used = false;

	for (size_t p = 0; p < c->dish->parts; p++)
		for (size_t i = 0; i < c->dish->part[p].steps; i++) {
			const struct step *s = &c->dish->part[p].step[i];

			for (size_t u = 0; u < s->products; u++) {
				if ((int)s->product[u] != c->at.part)
					continue;
				used = true;
				*heated =
				    *heated || is_heated_from(&c->dish->part[p], s->place);
			}
		}
	return used;
}

/* Its name says that nothing in it is cooked. */
static bool
is_cold_sauce(const struct part *p)
{
	static const char *const names[] = {"mayonnaise", "mayo", "aioli", "icing",
	    "dressing", "mousse", "eggnog", "tiramisu", "remoulade"};

	for (size_t i = 0; i < sizeof names / sizeof *names; i++)
		if (words_end(p->name, str_of(names[i])))
			return true;
	return false;
}

/* Surely not cooked: nothing is heated after it, or only what it does not go
 * into; a dish that is not made in parts is never heated at all. */
static bool
stays_raw(const struct cursor *c)
{
	/* a yolk is told where it goes in; a whole egg may be told of after the oven */
	bool told = c->at.part > 0 || words_have(c->ingredient->key, STR("yolk"));
	struct place from = told ? c->ingredient->place : (struct place){.span = {0, 0}};
	bool heated = false;

	if (c->part->steps == 0 || is_heated_from(c->part, from))
		return false;
	if (c->at.part > 0 && (is_cold_sauce(c->part) || goes_into(c, &heated)))
		return !heated;
	for (size_t p = 0; p < c->dish->parts; p++)
		if (is_heated_from(&c->dish->part[p], from))
			return false;
	return true;
}

/* Egg that nothing cooks, in a dish of which nothing is remarked. */
static bool
is_raw_egg(const struct check *k, const struct cursor *c)
{
	return food_is(c->ingredient, "egg") && c->ingredient->used &&
	       !c->ingredient->optional && !food_is_ready(k, c->ingredient) &&
	       !has_remark(k->draft, REMARK_RAW_SERVED, c->at.dish) &&
	       !has_remark(k->draft, REMARK_CAUTION, c->at.dish) && stays_raw(c);
}

/* The same words are asked about as advice already: "eat the dough raw". */
static bool
is_advised(const struct draft *d, const struct remark *r)
{
	for (size_t i = 0; i < d->remarks; i++)
		if (d->remark[i].kind == REMARK_UNSAFE_ADVICE &&
		    d->remark[i].place.span.beg < r->place.span.end &&
		    r->place.span.beg < d->remark[i].place.span.end)
			return true;
	return false;
}

void
check_raw_ingredient(struct check *k)
{
	struct cursor c = walk(k->draft);
	int last = -1; /* dish that was asked about: once is enough */

	for (size_t i = 0; i < k->draft->remarks; i++) {
		const struct remark *r = &k->draft->remark[i];

		if (r->kind == REMARK_RAW_SERVED && !is_advised(k->draft, r) &&
		    !has_remark(k->draft, REMARK_CAUTION, r->dish))
			raise_raw(k, r->place, (struct spot){r->dish, r->part, r->step},
			    r->detail.n ? r->detail : r->text);
	}
	while (walk_ingredient(&c))
		if (c.at.dish != last && is_raw_egg(k, &c)) {
			raise_raw(k, c.ingredient->place, c.at, c.ingredient->item);
			last = c.at.dish;
		}
}
