/* SPDX-License-Identifier: ISC */
/*
 * What is told once more: the time of a step named again, a recap, a statement
 * of what was an instruction before.
 */
#include "remark/told.h"

enum { FOOD_CLOSE = 6, LOOK_BACK = 60 };

static bool
uses_food(const struct told *t, const struct stretch *x, struct str key)
{
	const struct part *p = &t->m->d->dish[x->dish].part[x->part];

	for (size_t i = 0; i < x->step->uses; i++)
		if (x->step->use[i] < p->ingredients &&
		    str_is(p->ingredient[x->step->use[i]].key, key))
			return true;
	return false;
}

/* What a time named again is told of. */
struct hint {
	struct str food;            /* key of one that is named beside it; or empty */
	struct str appliance;       /* that it names; or empty */
	const struct measure *heat; /* degrees that are named with it; or NULL */
	const struct amount *value; /* itself, where a step that has it is meant */
	const struct step *self;    /* that was made of these very words; or NULL */
};

/* "that was an hour and a half at 350": the degrees that follow. */
static const struct measure *
heat_after(const struct maker *m, const struct node *n)
{
	enum { REACH = 6 };
	struct span s = sentence_of(m, n->beg), words = node_text(&m->c, n);
	uint32_t end = script_source(m->s, words).end;

	for (size_t i = measure_from(m, end); i < m->d->measures; i++) {
		const struct measure *x = &m->d->measure[i];
		uint32_t at = token_from(m, x->place.span.beg);

		if (at >= s.end || at > n->end + REACH)
			return NULL;
		if (x->kind == MEASURE_TEMPERATURE && x->value.known && x->value.unit)
			return x;
	}
	return NULL;
}

/* The first food in [from, to) that is no verb there: "so wrap it". */
static uint32_t
noun_after(const struct maker *m, uint32_t from, uint32_t to)
{
	uint32_t at = food_after(m, from, to);

	while (at < to && token_has(m, at, "ACTION") && token_has(m, at, "FOOD.ambiguous"))
		at = food_after(m, at + 1, to);
	return at;
}

static struct hint
hint_of(const struct told *t, const struct node *n, uint32_t clause)
{
	struct span s = sentence_of(t->m, n->beg);
	uint32_t to = n->end + FOOD_CLOSE < s.end ? n->end + FOOD_CLOSE : s.end;
	uint32_t food = noun_after(t->m, n->end, to);
	struct hint h = {.heat = heat_after(t->m, n)};

	for (uint32_t i = clause; i <= n->end; i++) {
		const struct reading *r = token_reading(t->m, i, "EQUIP");

		if (r && !h.appliance.n)
			h.appliance = lexeme_get(r->lexeme, "appliance");
	}
	if (food == to)
		food = food_before(t->m, s.beg > clause ? s.beg : clause, n->beg);
	if (food != n->beg && food != to)
		h.food = food_key(t->m, food);
	return h;
}

/* The step takes just so long. */
static bool
lasts(const struct step *s, const struct amount *time)
{
	int64_t ms;

	if (!s->duration.known || !time->known || !time->unit || !time->unit->has_base)
		return false;
	ms = 1000 * ratio_round(unit_to_base(time->unit, time->min));
	return s->duration.min_ms == ms;
}

static bool
is_at(const struct step *s, const struct measure *heat)
{
	const struct temperature *t = &s->temperature;

	return t->present && t->unit == heat->value.unit &&
	       ratio_order(t->min, heat->value.min) == 0;
}

static bool
fits_hint(const struct told *t, const struct stretch *x, const struct hint *h)
{
	if (h->value && !lasts(x->step, h->value))
		return false;
	if (h->heat && !h->value && !is_at(x->step, h->heat))
		return false;
	if (h->appliance.n)
		return x->step->heats && x->step->appliance &&
		       str_is_z(h->appliance, x->step->appliance);
	return !h->food.n || uses_food(t, x, h->food);
}

/* The last step before the clause that has a time and fits the hint. */
static struct step *
step_hinted(const struct told *t, const struct hint *h, uint32_t clause, int dish)
{
	const struct stretch *last = told_at(t, clause);

	for (size_t i = last ? (size_t)(last - t->stretch.v) + 1 : 0, seen = 0;
	     i-- > 0 && seen < LOOK_BACK; seen++) {
		const struct stretch *x = &t->stretch.v[i];

		if ((x->dish == dish || h->food.n || h->appliance.n) && x->beg < clause &&
		    x->step->duration.known && x->step != h->self && fits_hint(t, x, h))
			return x->step;
	}
	return NULL;
}

/* The step that the time is of. What the dish is named by need not be a food of
 * its steps. */
static struct step *
step_meant(const struct told *t, const struct node *n, const struct amount *value)
{
	uint32_t clause = told_clause(t->m, n->beg);
	const struct stretch *own = told_at(t, n->end);
	bool made = own && own->beg >= sentence_of(t->m, n->beg).beg;
	const struct step *self = made && lasts(own->step, value) ? own->step : NULL;
	struct hint h = hint_of(t, n, clause);
	const struct hint none = {.self = self};
	const struct hint heat = {.heat = h.heat, .self = self};
	const struct hint same = {.value = h.heat ? value : NULL, .self = self};
	int dish = turn_of(t->m, n->beg).dish;
	struct str name = dish >= 0 ? t->m->d->dish[dish].name : STR("");
	struct step *s = h.heat ? step_hinted(t, &heat, clause, dish) : NULL;

	if (!s && h.heat)
		s = step_hinted(t, &same, clause, dish);
	h.heat = NULL;
	h.self = self;
	if (!s)
		s = step_hinted(t, &h, clause, dish);

	if (s || h.appliance.n || str_find(name, h.food) == name.n)
		return s;
	return step_hinted(t, &none, clause, dish);
}

static void
add_restated(struct maker *m, struct step *s, struct amount value, struct place place)
{
	size_t n = s->agains;

	if ((n & (n - 1)) == 0)
		s->again = arena_grow(m->a, s->again, n, n ? n * 2 : 1, sizeof *s->again);
	s->again[s->agains++] = (struct restated){value, place};
}

/* Degrees have the scale that their measure was given. */
static struct amount
in_scale(const struct maker *m, struct amount value, const struct node *n)
{
	uint32_t beg = script_source(m->s, node_text(&m->c, n)).beg;
	size_t i = measure_from(m, beg);

	if (!value.unit && i < m->d->measures && m->d->measure[i].place.span.beg == beg)
		value.unit = m->d->measure[i].value.unit;
	return value;
}

void
add_again(struct told *t, const struct node *n)
{
	struct field_nodes f;
	const struct measure *heat = heat_after(t->m, n);
	struct step *s;
	struct said said;

	if (!node_field(&t->m->c, n, "value", &f) ||
	    !measure_of(&t->m->c, t->m->region, f.v, &said))
		return;
	s = step_meant(t, n, &said.value);
	if (!s)
		return;
	add_restated(t->m, s, in_scale(t->m, said.value, f.v), place_of_node(t->m, f.v));
	if (heat)
		add_restated(t->m, s, heat->value, heat->place);
}

/* ---- steps that go ---------------------------------------------------------------- */

/* A step that goes has no place any more until settle() takes it out. */
static void
let_go(struct step *s)
{
	s->place.span = (struct span){0, 0};
}

static bool
is_gone(const struct step *s)
{
	return s->place.span.end == 0;
}

static bool
keep_steps(struct part *p)
{
	size_t kept = 0, all = p->steps;

	for (size_t i = 0; i < all; i++)
		if (!is_gone(&p->step[i]))
			p->step[kept++] = p->step[i];
	p->steps = kept;
	return kept < all;
}

/* Takes out what went; the stretches are found anew. */
static void
settle(struct told *t)
{
	struct draft *d = t->m->d;
	bool any = false;

	for (size_t i = 0; i < d->dishes; i++)
		for (size_t p = 0; p < d->dish[i].parts; p++)
			any = keep_steps(&d->dish[i].part[p]) || any;
	if (!any)
		return;
	t->stretch.n = 0;
	told_find(t);
	schedule_make(t->m);
}

/* "To recap, that was the air fryer for twelve minutes": no step of its own. */
static void
drop_recap(struct told *t, const struct node *n)
{
	struct span s = sentence_of(t->m, n->beg);
	struct stretch *x = told_at(t, s.end);

	for (; x && x >= t->stretch.v && x->beg >= s.beg; x--)
		if (x->beg < s.end)
			let_go(x->step);
}

static void
drop_recaps(struct told *t)
{
	const struct level *l = chart_level(&t->m->c, "told");

	for (size_t i = 0; l && i < l->node.n; i++)
		if (str_is_z(node_attribute(&t->m->c, &l->node.v[i], "kind"), "recap"))
			drop_recap(t, &l->node.v[i]);
}

/* ---- a step told once more, as a statement --------------------------------------- */

static bool
is_statement(const struct maker *m, const struct stretch *x)
{
	const struct clause *q = clause_of(m, token_from(m, x->step->place.span.beg));
	const struct node *verb;

	if (!q || q->verb >= q->end)
		return false;
	verb = &chart_top(&m->c)->node.v[q->verb];
	for (uint32_t i = x->beg; i < x->end && i < verb->end + FOOD_CLOSE; i++)
		if (token_has(m, i, "ANOTHER") || token_is(m, i, "more"))
			return false;
	return node_attribute(&m->c, verb, "thing").n > 0;
}

static bool
shares_food(const struct told *t, const struct stretch *a, const struct stretch *b)
{
	const struct part *p = &t->m->d->dish[b->dish].part[b->part];

	for (size_t i = 0; i < b->step->uses; i++)
		if (b->step->use[i] < p->ingredients &&
		    uses_food(t, a, p->ingredient[b->step->use[i]].key))
			return true;
	return false;
}

/* The first time that is said in the stretch; measures are in script order. */
static const struct measure *
time_in(const struct maker *m, const struct stretch *x)
{
	uint32_t beg = script_source(m->s, token_of(m, x->beg)->text).beg;

	for (size_t i = measure_from(m, beg); i < m->d->measures; i++) {
		const struct measure *d = &m->d->measure[i];

		if (token_from(m, d->place.span.beg) >= x->end)
			break;
		if (d->kind == MEASURE_DURATION)
			return d;
	}
	return NULL;
}

/* The time named again was added to the step's own: it is taken off again. */
static void
take_off(const struct maker *m, const struct stretch *x, const struct amount *value)
{
	const struct measure *first = time_in(m, x);
	struct duration *d = &x->step->duration;
	int64_t own, again;

	if (!first || !first->value.known || !d->known || !first->value.unit ||
	    !first->value.unit->has_base || !value->unit->has_base)
		return;
	own = 1000 * ratio_round(unit_to_base(first->value.unit, first->value.min));
	again = 1000 * ratio_round(unit_to_base(value->unit, value->min));
	if (d->min_ms != own + again)
		return;
	d->min_ms -= again;
	d->max_ms -= again;
}

/* "Roast the squash for forty minutes. ... The squash roasts for an hour": one
 * step, its time named again. */
static void
fold_statement(struct told *t, struct stretch *x)
{
	const struct measure *time;
	struct stretch *y = x;

	if (is_gone(x->step) || !x->step->heats || !x->step->duration.known ||
	    !is_statement(t->m, x))
		return;
	time = time_in(t->m, x);
	for (size_t seen = 0; time && y-- > t->stretch.v && seen < LOOK_BACK; seen++) {
		if (y->dish != x->dish || is_gone(y->step) || !y->step->duration.known ||
		    !str_is(y->step->action, x->step->action) || !shares_food(t, y, x))
			continue;
		add_restated(t->m, y->step, time->value, time->place);
		let_go(x->step);
		return;
	}
}

/* "That's your eight hours", "that was an hour and a half at 350": the step that
 * was made of it goes, where another one is meant. */
static void
drop_restated(struct told *t, const struct node *n)
{
	struct field_nodes f;
	struct said said;
	struct stretch *x = told_at(t, n->end);
	const struct step *meant;

	if (!node_field(&t->m->c, n, "value", &f) ||
	    !measure_of(&t->m->c, t->m->region, f.v, &said) ||
	    said.kind != MEASURE_DURATION || !x)
		return;
	if (x->beg < sentence_of(t->m, n->beg).beg) {
		take_off(t->m, x, &said.value);
		return;
	}
	meant = step_meant(t, n, &said.value);
	if (meant && meant != x->step && x->step->heats && lasts(x->step, &said.value))
		let_go(x->step);
}

static void
drop_all_restated(struct told *t)
{
	const struct level *l = chart_level(&t->m->c, "told");

	for (size_t i = 0; l && i < l->node.n; i++)
		if (str_is_z(node_attribute(&t->m->c, &l->node.v[i], "kind"), "again"))
			drop_restated(t, &l->node.v[i]);
}

void
drop_repeats(struct told *t)
{
	drop_recaps(t);
	drop_all_restated(t);
	for (size_t i = 0; i < t->stretch.n; i++)
		fold_statement(t, &t->stretch.v[i]);
	settle(t);
}
