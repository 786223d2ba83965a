/* SPDX-License-Identifier: ISC */
/*
 * What a step lacks: a setting for its heat, a time or a sign to stop at, a
 * hot oven to go into.
 */
#include "check/facts.h"
#include "check/food.h"
#include "check/say.h"

#define WITH_SETTING "oven air-fryer grill fryer deep-fryer smoker water-bath slow-cooker"

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

/* Degrees were said in the dish before the step's end, whatever they became. */
static bool
said_loosely(const struct check *k, const struct cursor *c)
{
	for (size_t i = 0; i < k->draft->measures; i++) {
		const struct measure *m = &k->draft->measure[i];

		if (m->kind == MEASURE_TEMPERATURE && !m->aside &&
		    (m->role == ROLE_APPLIANCE || m->role == ROLE_OIL) &&
		    m->place.span.beg < c->step->place.span.end &&
		    finding_spot(k, m->place).dish == c->at.dish)
			return true;
	}
	return false;
}

static bool
needs_setting(const struct step *s)
{
	return s->heats && !s->preheats && !s->temperature.present && s->appliance &&
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
	       step_is_in(s, "stove");
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
	if (s->preheats || facts_has_action(k, "own_cues", s->action) ||
	    str_is_z(s->action, "leave"))
		return false;
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
		if (!s->time_vague && (ends_later(&c) || runs_beside_next(&c)))
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
		    t->inherited ||
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

/* ---- missing-doneness --------------------------------------------------- */

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

/* "Then it goes in": the first step after it that heats and names no food. */
static const struct step *
step_without_food(const struct cursor *c, struct place from)
{
	const struct step *first = NULL;

	for (size_t p = 0; p < c->dish->parts; p++)
		for (size_t i = 0; i < c->dish->part[p].steps; i++) {
			const struct step *s = &c->dish->part[p].step[i];

			if (s->heats && !s->preheats && s->uses == 0 &&
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
		if (c.step->heats && !c.step->preheats)
			check_cooking(k, &c);
}
