/* SPDX-License-Identifier: ISC */
/*
 * What can make people ill: readings below the published minimum, advice that
 * goes against published guidance, raw food without a caution. Each figure is
 * a row of doneness.tsv, lethality.tsv or cautions.tsv and names its source.
 */
#include "check/facts.h"
#include "check/food.h"
#include "check/say.h"

/* ---- below-safe-temperature ---------------------------------------------- */

/* A thermometer is read to the degree: 71 °C is the published 160 °F. A reading
 * right at the minimum of a cut that has to rest is below minimum + at_minimum.
 * Colder than no_cooking is implausible-temperature. */
static const struct ratio reading_slack = {3, 5}, at_minimum = {5, 2}, no_cooking = {35, 1};

/* A temperature of the food, in degrees Celsius. */
struct inside {
	struct amount said;
	struct ratio min, max;
	int64_t held_s; /* 0 not said */
	struct place place;
};

/* The food that a reading is of, and what is published for it. */
struct judged {
	struct str class, item;
	struct minimum least;
};

static bool is_egg_class(struct str class)
{
	return word_in(class, "egg egg-dish egg-sauce");
}

/* Keeps the stricter minimum, or the milder. Meat goes before the egg that
 * binds or coats it. */
static void
weigh(const struct check *k, const struct ingredient *in, bool stricter, struct judged *j)
{
	struct judged this = {.class = food_class(k, in), .item = in->item};
	bool egg = is_egg_class(this.class), had_egg = is_egg_class(j->class);
	int order;

	if (!this.class.n || food_is_ready(k, in) ||
	    !facts_minimum(k, this.class, &this.least))
		return;
	if (j->class.n && egg != had_egg) {
		*j = egg ? *j : this;
		return;
	}
	order = j->class.n ? ratio_order(this.least.c, j->least.c) : 0;
	if (!j->class.n || (stricter ? order > 0 : order < 0))
		*j = this;
}

static void
weigh_part(const struct check *k, const struct part *p, struct judged *j)
{
	for (size_t i = 0; i < p->ingredients; i++)
		weigh(k, &p->ingredient[i], false, j);
}

/* The step names another dish: "off come the koftas". */
static void
weigh_named(const struct check *k, const struct cursor *c, struct judged *j)
{
	for (size_t i = 0; i < k->draft->dishes && !j->class.n; i++) {
		const struct dish *d = &k->draft->dish[i];

		if (d == c->dish || !words_have(c->step->text, food_head(d->name)))
			continue;
		for (size_t p = 0; p < d->parts && !j->class.n; p++)
			weigh_part(k, &d->part[p], j);
	}
}

/* The step names no food, or only what others are cooked in or with. */
static bool
uses_little(const struct cursor *c)
{
	for (size_t i = 0; i < c->step->uses; i++)
		if (c->step->use[i] < c->part->ingredients &&
		    !food_is_little(&c->part->ingredient[c->step->use[i]]))
			return false;
	return true;
}

/* What the step cooks; where it names nothing, what the part has, then the
 * dish: of several, the one with the mildest minimum. */
static struct judged
judge(const struct check *k, const struct cursor *c)
{
	struct judged j = {.class = {NULL, 0}};

	for (size_t i = 0; i < c->step->uses; i++)
		if (c->step->use[i] < c->part->ingredients)
			weigh(k, &c->part->ingredient[c->step->use[i]], true, &j);
	if (j.class.n || !uses_little(c))
		return j;
	weigh_part(k, c->part, &j);
	for (size_t p = 0; p < c->dish->parts && !j.class.n; p++)
		weigh_part(k, &c->dish->part[p], &j);
	if (j.class.n)
		return j;
	weigh_named(k, c, &j);
	if (j.class.n)
		return j;
	j.class = food_class_of_name(k, c->dish->name);
	j.item = c->dish->name;
	if (!facts_minimum(k, j.class, &j.least))
		j.class = (struct str){NULL, 0};
	return j;
}

/* A reading inside, or a water bath, which heats the food to its own heat. */
static bool
reading_of(const struct check *k, const struct step *s, struct inside *r)
{
	const struct temperature *t = &s->temperature;

	if (s->doneness.known) {
		r->said = (struct amount){
		    true, true, s->doneness.min, s->doneness.max, s->doneness.unit};
		r->held_s = s->doneness.hold_ms / 1000;
		r->place = s->doneness.place;
	} else if (step_is_in(s, "water-bath") && s->heats && t->present && t->unit) {
		r->said = (struct amount){true, true, t->min, t->max, t->unit};
		r->held_s = s->duration.known ? s->duration.min_ms / 1000 : 0;
		r->place = t->inherited ? s->place : t->place;
	} else {
		return false;
	}
	return facts_celsius(k, r->said.unit, r->said.min, &r->min) &&
	       facts_celsius(k, r->said.unit, r->said.max, &r->max);
}

static bool
rests_after(const struct cursor *c)
{
	for (size_t p = 0; p < c->dish->parts; p++)
		for (size_t i = 0; i < c->dish->part[p].steps; i++) {
			const struct step *s = &c->dish->part[p].step[i];

			if (word_in(s->kind, "rest") &&
			    !is_before(s->place, c->step->place))
				return true;
		}
	return false;
}

/* A minimum of a minute and more; shorter ones are over when a thermometer has
 * been read. */
static void
check_hold(
    struct check *k, const struct cursor *c, const struct inside *r, const struct judged *j)
{
	struct str said, hold, source;

	if (j->least.hold_s < 60 || r->held_s >= j->least.hold_s ||
	    ratio_order(r->min, ratio_add(j->least.c, at_minimum)) >= 0 ||
	    facts_held(k, j->class, r->min, r->held_s, &source))
		return;
	said = say_degrees(k, &r->said, true);
	hold = say_time(k, j->least.hold_s * 1000, j->least.hold_s * 1000);
	finding_raise(k, r->place, c->at,
	    "%.*s is the published minimum for %.*s only where it is held for %.*s "
	    "(%.*s), and that is not said. Add the time; local food codes and qualified "
	    "advice come first",
	    SAY(said), SAY(j->item), SAY(hold), SAY(j->least.source))
	    ->severity = SEVERITY_WARNING;
}

static void
check_rest(
    struct check *k, const struct cursor *c, const struct inside *r, const struct judged *j)
{
	struct str said, rest;

	if (j->least.rest_s == 0 || rests_after(c) ||
	    ratio_order(r->min, ratio_add(j->least.c, at_minimum)) >= 0)
		return;
	said = say_degrees(k, &r->said, true);
	rest = say_time(k, j->least.rest_s * 1000, j->least.rest_s * 1000);
	finding_raise(k, r->place, c->at,
	    "%.*s is the published minimum for %.*s only with a rest of %.*s after it "
	    "(%.*s), and "
	    "none is said. Add the rest; local food codes and qualified advice come first",
	    SAY(said), SAY(j->item), SAY(rest), SAY(j->least.source))
	    ->severity = SEVERITY_WARNING;
}

static void
check_reading(struct check *k, const struct cursor *c, const struct inside *r)
{
	struct judged j = judge(k, c);
	struct str said, least, source;
	struct finding *f;

	if (!j.class.n || ratio_order(r->min, no_cooking) < 0)
		return;
	if (ratio_order(ratio_add(r->min, reading_slack), j.least.c) >= 0) {
		check_hold(k, c, r, &j);
		check_rest(k, c, r, &j);
		return;
	}
	if (facts_held(k, j.class, r->min, r->held_s, &source))
		return;
	said = say_degrees(k, &r->said, true);
	least = say_inside(k, j.least.c, r->said.unit);
	f = finding_raise(k, r->place, c->at,
	    "%.*s at %.*s: the published minimum is %.*s (%.*s). Below it the food can "
	    "make people "
	    "ill: give the minimum; local food codes and qualified advice come first",
	    SAY(j.item), SAY(said), SAY(least), SAY(j.least.source));
	f->suggestion = least;
	if (ratio_order(ratio_add(r->max, reading_slack), j.least.c) >= 0)
		f->severity = SEVERITY_WARNING;
}

/* A reading inside that no step took: of what was cooked last before it. */
static bool
is_loose(const struct check *k, const struct measure *m)
{
	struct cursor c = walk(k->draft);

	if (m->kind != MEASURE_TEMPERATURE || m->role != ROLE_INTERNAL || m->aside ||
	    m->converted || !m->value.known)
		return false;
	while (walk_step(&c))
		if (c.step->doneness.known &&
		    c.step->doneness.place.span.beg == m->place.span.beg)
			return false;
	return true;
}

static bool
cooked_before(const struct check *k, struct place place, struct cursor *out)
{
	struct cursor c = walk(k->draft);
	int dish = finding_spot(k, place).dish;
	bool found = false;

	while (walk_step(&c))
		if (c.at.dish == dish && c.step->heats && is_before(c.step->place, place) &&
		    (!found || !is_before(c.step->place, out->step->place))) {
			*out = c;
			found = true;
		}
	return found;
}

/* What it is of is what the dish has; the step's foods may be its oil. */
static void
check_loose(struct check *k, struct cursor *c, const struct inside *r)
{
	struct step any = *c->step;

	any.uses = 0;
	c->step = &any;
	check_reading(k, c, r);
}

static void
check_loose_readings(struct check *k)
{
	for (size_t i = 0; i < k->draft->measures; i++) {
		const struct measure *m = &k->draft->measure[i];
		struct inside r = {.said = m->value, .place = m->place};
		struct cursor c;

		if (is_loose(k, m) && cooked_before(k, m->place, &c) &&
		    facts_celsius(k, m->value.unit, m->value.min, &r.min) &&
		    facts_celsius(k, m->value.unit, m->value.max, &r.max))
			check_loose(k, &c, &r);
	}
}

void
check_below_safe_temperature(struct check *k)
{
	struct cursor c = walk(k->draft);
	struct inside r;

	check_loose_readings(k);
	while (walk_step(&c))
		if (reading_of(k, c.step, &r))
			check_reading(k, &c, &r);
}

/* ---- unsafe-advice ------------------------------------------------------- */

/* The row of cautions.tsv for the topic, of the region where it has one. */
static size_t
caution_row(const struct check *k, const struct table *t, struct str topic)
{
	int of_topic = table_column(t, "topic"), profile = table_column(t, "profile");
	size_t any = t->rows;

	for (size_t i = table_find(t, 0, of_topic, topic); i < t->rows;
	     i = table_find(t, i + 1, of_topic, topic)) {
		if (str_is_z(table_cell(t, i, profile), facts_profile(k->draft)))
			return i;
		if (table_cell(t, i, profile).n == 0)
			any = i;
	}
	return any;
}

static void
raise_caution(
    struct check *k, struct place at, struct spot spot, struct str words, struct str topic)
{
	const struct table *t = grammar_table(k->grammar, "cautions");
	size_t row = t ? caution_row(k, t, topic) : 0;
	struct str text, source;

	if (!t || row == t->rows) {
		finding_raise(k, at, spot,
		    "\"%.*s\" goes against published food safety guidance; local food "
		    "codes and "
		    "qualified advice come first",
		    SAY(words));
		return;
	}
	text = table_cell(t, row, table_column(t, "text"));
	source = facts_source(table_cell(t, row, table_column(t, "source")));
	if (str_ends(text, STR(".")))
		text.n--;
	finding_raise(
	    k, at, spot, "\"%.*s\": %.*s (%.*s)", SAY(words), SAY(text), SAY(source));
}

static bool
remark_tells(const struct draft *d, struct str topic, int dish)
{
	for (size_t i = 0; i < d->remarks; i++)
		if (d->remark[i].kind == REMARK_UNSAFE_ADVICE &&
		    d->remark[i].dish == dish && str_is(d->remark[i].detail, topic))
			return true;
	return false;
}

/* A step that washes raw poultry. */
static void
check_washing(struct check *k, const struct cursor *c)
{
	struct str topic = STR("rinsing-poultry");

	if (!word_in(c->step->kind, "wash") || c->step->uses != 1 ||
	    remark_tells(k->draft, topic, c->at.dish))
		return;
	for (size_t i = 0; i < c->step->uses; i++) {
		uint32_t food = c->step->use[i];
		const struct ingredient *in;

		if (food >= c->part->ingredients)
			continue;
		in = &c->part->ingredient[food];
		if (word_in(food_class(k, in), "poultry poultry-whole game-bird giblets") &&
		    !food_is_ready(k, in)) {
			struct str words = arena_fmt(
			    k->arena, "%.*s %.*s", SAY(say_action(c->step)), SAY(in->item));

			raise_caution(k, c->step->place, c->at, words, topic);
			return;
		}
	}
}

void
check_unsafe_advice(struct check *k)
{
	struct cursor c = walk(k->draft);

	for (size_t i = 0; i < k->draft->remarks; i++) {
		const struct remark *r = &k->draft->remark[i];

		if (r->kind == REMARK_UNSAFE_ADVICE)
			raise_caution(k, r->place, (struct spot){r->dish, r->part, r->step},
			    r->text, r->detail);
	}
	while (walk_step(&c))
		check_washing(k, &c);
}
