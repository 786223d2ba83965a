/* SPDX-License-Identifier: ISC */
/*
 * What the words around a step tell of it besides what was assembled: a vague
 * time, a time named again, a setting that is turned up or down, what its cue
 * speaks of, what goes into it that another part made.
 */
#include "remark/remarks.h"

#include <stdlib.h>

/* A step and the tokens from its clause to the next step's. */
struct stretch {
	uint32_t beg, end;
	int dish, part;
	struct step *step;
};

struct told {
	struct maker *m;
	VEC(struct stretch) stretch; /* in script order */
};

/* ---- stretches -------------------------------------------------------------- */

static int
order_stretches(const void *left, const void *right)
{
	const struct stretch *a = left, *b = right;

	if (a->beg != b->beg)
		return a->beg < b->beg ? -1 : 1;
	if (a->dish != b->dish)
		return a->dish - b->dish;
	if (a->part != b->part)
		return a->part - b->part;
	return a->step < b->step ? -1 : a->step > b->step;
}

static uint32_t
clause_begin(const struct maker *m, uint32_t token)
{
	const struct clause *q = clause_of(m, token);

	return q ? chart_top(&m->c)->node.v[q->beg].beg : token;
}

static void
find_stretches(struct told *t)
{
	struct maker *m = t->m;

	for (size_t d = 0; d < m->d->dishes; d++)
		for (size_t p = 0; p < m->d->dish[d].parts; p++)
			for (size_t i = 0; i < m->d->dish[d].part[p].steps; i++) {
				struct step *s = &m->d->dish[d].part[p].step[i];
				uint32_t at = token_from(m, s->place.span.beg);

				vec_push(m->a, &t->stretch,
				    (struct stretch){
					clause_begin(m, at), 0, (int)d, (int)p, s});
			}
	if (t->stretch.n)
		qsort(t->stretch.v, t->stretch.n, sizeof *t->stretch.v, order_stretches);
	for (size_t i = 0; i < t->stretch.n; i++)
		t->stretch.v[i].end = i + 1 < t->stretch.n ? t->stretch.v[i + 1].beg
							   : (uint32_t)m->c.tokens.token.n;
}

/* The last one that begins at or before the token; NULL where none does. */
static struct stretch *
stretch_at(const struct told *t, uint32_t token)
{
	size_t low = 0, high = t->stretch.n;

	while (low < high) {
		size_t mid = low + (high - low) / 2;

		if (t->stretch.v[mid].beg <= token)
			low = mid + 1;
		else
			high = mid;
	}
	return low ? &t->stretch.v[low - 1] : NULL;
}

/* ---- a time or a setting named again ------------------------------------------ */

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

/* The step that the time is of: the last one before that has a time and is
 * told of the same. */
static struct step *
step_meant(const struct told *t, const struct node *n)
{
	uint32_t clause = clause_begin(t->m, n->beg);
	struct hint h = hint_of(t, n, clause);
	int dish = turn_of(t->m, n->beg).dish;
	const struct stretch *last = stretch_at(t, n->beg);

	for (size_t i = last ? (size_t)(last - t->stretch.v) + 1 : 0, seen = 0;
	     i-- > 0 && seen < LOOK_BACK; seen++) {
		const struct stretch *x = &t->stretch.v[i];

		if ((x->dish == dish || h.food.n || h.appliance.n) && x->beg < clause &&
		    x->step->duration.known && fits_hint(t, x, &h))
			return x->step;
	}
	return NULL;
}

static void
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
	s->again =
	    arena_grow(t->m->a, s->again, s->agains, s->agains + 1, sizeof *s->again);
	s->again[s->agains++] = (struct restated){said.value, place_of_node(t->m, f.v)};
}

/* ---- other things that rules of the pass tell ----------------------------------- */

static void
add_vague(const struct told *t, const struct node *n)
{
	struct stretch *x = stretch_at(t, n->beg);

	if (x && !x->step->duration.present)
		x->step->time_vague = true;
}

static bool
holds_place(const struct maker *m, const struct node *n, const struct place *p)
{
	struct span s = script_source(m->s, node_text(&m->c, n));

	return p->span.end > 0 && s.beg <= p->span.beg && p->span.beg < s.end;
}

/* The step whose setting is that of the node. */
static void
add_change(const struct told *t, const struct node *n)
{
	for (size_t i = 0; i < t->stretch.n; i++) {
		struct temperature *x = &t->stretch.v[i].step->temperature;

		if (x->present && !x->inherited && holds_place(t->m, n, &x->place))
			x->change = true;
	}
}

static void
add_hold(const struct told *t, const struct node *n)
{
	struct field_nodes reading, value;
	struct said said;

	if (!node_field(&t->m->c, n, "reading", &reading) ||
	    !node_field(&t->m->c, n, "value", &value) ||
	    !measure_of(&t->m->c, t->m->region, value.v, &said) || !said.value.known ||
	    !said.value.unit || !said.value.unit->has_base)
		return;
	for (size_t i = 0; i < t->stretch.n; i++) {
		struct doneness *d = &t->stretch.v[i].step->doneness;

		if (d->known && holds_place(t->m, reading.v, &d->place))
			d->hold_ms = 1000 * ratio_round(unit_to_base(
						said.value.unit, said.value.min));
	}
}

static void
drop_step(struct part *p, const struct step *s)
{
	size_t at = (size_t)(s - p->step);

	for (size_t i = at; i + 1 < p->steps; i++)
		p->step[i] = p->step[i + 1];
	p->steps--;
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
				drop_step(part, &part->step[i]);
				any = true;
			}
		}
	return any;
}

static void
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

static void
read_nodes(struct told *t)
{
	const struct level *l = chart_level(&t->m->c, "told");

	for (size_t i = 0; l && i < l->node.n; i++) {
		const struct node *n = &l->node.v[i];
		struct str kind = node_attribute(&t->m->c, n, "kind");

		if (str_is_z(kind, "again"))
			add_again(t, n);
		else if (str_is_z(kind, "vague"))
			add_vague(t, n);
		else if (str_is_z(kind, "change"))
			add_change(t, n);
		else if (str_is_z(kind, "hold"))
			add_hold(t, n);
	}
}

/* ---- each step ----------------------------------------------------------------- */

static void
fill_kind(const struct maker *m, struct step *s)
{
	const struct entry *e = lexicon_find(&m->g->lexicon, lexicon_key(m->a, s->action));
	const struct reading *r =
	    e ? entry_reading(e, grammar_class(m->g, "ACTION")) : NULL;

	if (r)
		s->kind = lexeme_get(r->lexeme, "kind");
}

/* A word of the name, in whatever form. */
static bool
names_it(const struct maker *m, uint32_t token, struct str word)
{
	static const char *const classes[] = {"FOOD", "PARTHEAD", "DISH"};

	if (str_is(token_of(m, token)->norm, word))
		return true;
	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++) {
		const struct reading *r = token_reading(m, token, classes[i]);

		if (r && (str_is(r->lexeme->lemma, word) ||
			     str_is(lexeme_get(r->lexeme, "key"), word)))
			return true;
	}
	return false;
}

static struct str
last_word(struct str name)
{
	size_t beg = name.n;

	while (beg > 0 && name.p[beg - 1] != ' ')
		beg--;
	return str_cut(name, beg, name.n);
}

/* What another part of the dish made goes in: "spread the filling over". */
static void
fill_products(const struct told *t, const struct stretch *x)
{
	const struct maker *m = t->m;
	const struct dish *d = &m->d->dish[x->dish];
	struct step *s = x->step;

	for (size_t p = 1; p < d->parts; p++) {
		struct str word = last_word(d->part[p].name);
		bool named = false;

		if ((int)p == x->part || !word.n ||
		    d->part[p].place.span.beg > s->place.span.beg)
			continue;
		for (uint32_t i = x->beg; i < x->end; i++)
			named = named || names_it(m, i, word);
		if (!named)
			continue;
		s->product = arena_grow(
		    m->a, s->product, s->products, s->products + 1, sizeof *s->product);
		s->product[s->products++] = (uint32_t)p;
	}
}

/* ---- cues ------------------------------------------------------------------------ */

/* Words of a cue that speak of a mixture, not of pieces of food. */
static bool
is_of_mixture(const struct maker *m, uint32_t token)
{
	static const char *const words[] = {"sauce", "syrup", "mixture", "dough", "batter",
	    "custard", "liquid", "jam", "glaze", "gravy", "oil", "water", "butter", "milk",
	    "cream", "cheese", "pan", "thicken", "thickens", "thickened", "thick",
	    "reduced", "reduces", "boils", "boiling", "bubbling", "bubbles", "simmering",
	    "smooth", "melted", "dissolved"};
	const struct reading *r = token_reading(m, token, "STATE");

	for (size_t i = 0; i < sizeof words / sizeof *words; i++)
		if (token_is(m, token, words[i]))
			return true;
	return r && lexeme_has(r->lexeme, "mixture");
}

static void
fill_cue(const struct maker *m, struct doneness *d)
{
	uint32_t beg = token_from(m, d->place.span.beg),
		 end = token_from(m, d->place.span.end);
	uint32_t food = food_after(m, beg, end);
	bool weak = false, strong = false, meat = false, shells = false;

	for (uint32_t i = beg; i < end; i++) {
		const struct reading *r = token_reading(m, i, "STATE");

		d->mixture = d->mixture || is_of_mixture(m, i);
		shells = shells || str_starts(token_of(m, i)->norm, STR("shell"));
		meat = meat || (r && lexeme_has(r->lexeme, "meat"));
		weak = weak || (r && lexeme_has(r->lexeme, "weak"));
		strong = strong || (r && !lexeme_has(r->lexeme, "weak")) ||
			 token_has(m, i, "STATEVERB") || token_has(m, i, "STATENOUN");
	}
	d->mixture = d->mixture && !meat;
	d->weak = weak && !strong;
	if (food < end && !d->mixture && !shells)
		d->subject = food_key(m, food);
}

/* "and what you want is pink all over": a sign that meat is cooked, told after
 * a step that has none. */
static void
find_cue(const struct told *t, const struct stretch *x)
{
	const struct maker *m = t->m;
	struct doneness *d = &x->step->doneness;
	uint32_t end = x->end;

	if (!x->step->heats || d->known || d->text.n)
		return;
	for (const struct stretch *y = x + 1; y < t->stretch.v + t->stretch.n; y++) {
		if (y->step->heats || y->dish != x->dish || y > x + 2)
			break;
		end = y->end;
	}
	for (uint32_t i = token_from(m, x->step->place.span.beg); i < end; i++) {
		const struct reading *r = token_reading(m, i, "STATE");
		const struct node n = {i, i + 1, RAW};

		if (!r)
			r = token_reading(m, i, "STATEVERB");
		if (!r || !lexeme_has(r->lexeme, "meat") || token_has(m, i, "HEATLEVEL") ||
		    is_conditional(m, i) || is_taken_back(m, i, false))
			continue;
		d->text = token_of(m, i)->norm;
		d->place = place_of_node(m, &n);
		return;
	}
}

static void
drop_conditional(const struct maker *m, struct doneness *d)
{
	if (d->known && is_conditional(m, token_from(m, d->place.span.beg)))
		d->known = false;
}

void
told_fill(struct maker *m)
{
	struct told t = {.m = m};

	drop_recaps(m);
	find_stretches(&t);
	for (size_t i = 0; i < t.stretch.n; i++) {
		fill_kind(m, t.stretch.v[i].step);
		fill_products(&t, &t.stretch.v[i]);
		drop_conditional(m, &t.stretch.v[i].step->doneness);
		find_cue(&t, &t.stretch.v[i]);
		if (t.stretch.v[i].step->doneness.text.n)
			fill_cue(m, &t.stretch.v[i].step->doneness);
	}
	read_nodes(&t);
}
