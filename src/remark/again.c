/* SPDX-License-Identifier: ISC */
/*
 * What is told once more: the time of a step named again, a recap, a statement
 * of what was an instruction before.
 */
#include "remark/told.h"

#include "base/part.h"

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
	struct str food;      /* key of one that is named beside it; or empty */
	struct str appliance; /* that it names; or empty */
};

static struct hint
hint_of(const struct told *t, const struct node *n, uint32_t clause)
{
	struct span s = sentence_of(t->m, n->beg);
	uint32_t to = n->end + FOOD_CLOSE < s.end ? n->end + FOOD_CLOSE : s.end;
	uint32_t food = food_after(t->m, n->end, to);
	struct hint h = {{NULL, 0}, {NULL, 0}};

	for (uint32_t i = clause; i < n->end; i++) {
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

static bool
fits_hint(const struct told *t, const struct stretch *x, const struct hint *h)
{
	if (h->appliance.n)
		return x->step->appliance && str_is_z(h->appliance, x->step->appliance);
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
		    x->step->duration.known && fits_hint(t, x, h))
			return x->step;
	}
	return NULL;
}

/* The step that the time is of. What the dish is named by need not be a food of
 * its steps. */
static struct step *
step_meant(const struct told *t, const struct node *n)
{
	uint32_t clause = told_clause(t->m, n->beg);
	struct hint h = hint_of(t, n, clause), none = {{NULL, 0}, {NULL, 0}};
	int dish = turn_of(t->m, n->beg).dish;
	struct step *s = step_hinted(t, &h, clause, dish);
	struct str name = dish >= 0 ? t->m->d->dish[dish].name : STR("");

	if (s || h.appliance.n || str_find(name, h.food) == name.n)
		return s;
	return step_hinted(t, &none, clause, dish);
}

static void
add_restated(struct maker *m, struct step *s, struct amount value, struct place place)
{
	s->again = arena_grow(m->a, s->again, s->agains, s->agains + 1, sizeof *s->again);
	s->again[s->agains++] = (struct restated){value, place};
}

void
add_again(struct told *t, const struct node *n)
{
	struct field_nodes f;
	struct step *s;
	struct said said;

	if (!node_field(&t->m->c, n, "value", &f) ||
	    !measure_of(&t->m->c, t->m->region, f.v, &said))
		return;
	s = step_meant(t, n);
	if (!s)
		return;
	add_restated(t->m, s, said.value, place_of_node(t->m, f.v));
}

/* "To recap, that was the air fryer for twelve minutes": no step of its own. */
static bool
drop_recap(struct maker *m, const struct node *n)
{
	struct span s = sentence_of(m, n->beg);
	bool any = false;

	for (size_t d = 0; d < m->d->dishes; d++)
		for (size_t p = 0; p < m->d->dish[d].parts; p++) {
			struct part *part = &m->d->dish[d].part[p];

			for (size_t i = part->steps; i-- > 0;) {
				uint32_t at = token_from(m, part->step[i].place.span.beg);

				if (at < s.beg || at >= s.end)
					continue;
				part_drop_step(part, i);
				any = true;
			}
		}
	return any;
}

void
drop_recaps(struct maker *m)
{
	const struct level *l = chart_level(&m->c, "told");
	bool any = false;

	for (size_t i = 0; l && i < l->node.n; i++)
		if (str_is_z(node_attribute(&m->c, &l->node.v[i], "kind"), "recap"))
			any = drop_recap(m, &l->node.v[i]) || any;
	if (any)
		schedule_make(m);
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

static const struct measure *
time_in(const struct maker *m, const struct stretch *x)
{
	for (size_t i = 0; i < m->d->measures; i++) {
		const struct measure *d = &m->d->measure[i];
		uint32_t at = token_from(m, d->place.span.beg);

		if (d->kind == MEASURE_DURATION && at >= x->beg && at < x->end)
			return d;
	}
	return NULL;
}

/* "Roast the squash for forty minutes. ... The squash roasts for an hour": one
 * step, its time named again. */
static bool
fold_statement(struct told *t, struct stretch *x)
{
	const struct measure *time = time_in(t->m, x);
	struct part *part;

	if (!x->step->heats || !x->step->duration.known || !time || !is_statement(t->m, x))
		return false;
	for (struct stretch *y = t->stretch.v; y < x; y++) {
		if (y->dish != x->dish || !y->step->duration.known ||
		    !str_is(y->step->action, x->step->action) || !shares_food(t, y, x))
			continue;
		add_restated(t->m, y->step, time->value, time->place);
		part = &t->m->d->dish[x->dish].part[x->part];
		part_drop_step(part, (size_t)(x->step - part->step));
		return true;
	}
	return false;
}

/* Steps move when one is dropped, so the stretches are found anew. */
void
fold_statements(struct told *t)
{
	bool any = false;

	for (size_t i = 0; i < t->stretch.n; i++)
		if (fold_statement(t, &t->stretch.v[i])) {
			any = true;
			t->stretch.n = 0;
			told_find(t);
			i = 0;
		}
	if (any)
		schedule_make(t->m);
}
