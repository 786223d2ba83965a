/* SPDX-License-Identifier: ISC */
/*
 * What the words around a step tell of it besides what was assembled: a vague
 * time, a time named again, a setting that is turned up or down, what its cue
 * speaks of, what goes into it that another part made.
 */
#include "remark/told.h"

#include <stdlib.h>

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

uint32_t
told_clause(const struct maker *m, uint32_t token)
{
	const struct clause *q = clause_of(m, token);

	return q ? chart_top(&m->c)->node.v[q->beg].beg : token;
}

void
told_find(struct told *t)
{
	struct maker *m = t->m;

	for (size_t d = 0; d < m->d->dishes; d++)
		for (size_t p = 0; p < m->d->dish[d].parts; p++)
			for (size_t i = 0; i < m->d->dish[d].part[p].steps; i++) {
				struct step *s = &m->d->dish[d].part[p].step[i];
				uint32_t at = token_from(m, s->place.span.beg);

				vec_push(m->a, &t->stretch,
				    (struct stretch){
					told_clause(m, at), 0, (int)d, (int)p, s});
			}
	if (t->stretch.n)
		qsort(t->stretch.v, t->stretch.n, sizeof *t->stretch.v, order_stretches);
	for (size_t i = 0; i < t->stretch.n; i++)
		t->stretch.v[i].end = i + 1 < t->stretch.n ? t->stretch.v[i + 1].beg
							   : (uint32_t)m->c.tokens.token.n;
}

/* The last one that begins at or before the token; NULL where none does. */
struct stretch *
told_at(const struct told *t, uint32_t token)
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

/* ---- other things that rules of the pass tell ----------------------------------- */

enum { AROUND = 8 };

static bool
is_meanwhile(const struct maker *m, uint32_t token)
{
	struct span s = sentence_of(m, token);

	for (uint32_t i = s.beg; i < token; i++)
		if (token_is(m, i, "while") || token_is(m, i, "whilst"))
			return true;
	return false;
}

static void
add_vague(const struct told *t, const struct node *n)
{
	struct stretch *x = told_at(t, n->beg);

	/* "while that cools down a bit, the sauce" */
	if (x && !x->step->duration.present && !is_meanwhile(t->m, n->beg))
		x->step->time_vague = true;
}

static bool
holds_place(const struct maker *m, const struct node *n, const struct place *p)
{
	struct span s = script_source(m->s, node_text(&m->c, n));

	return p->span.end > 0 && s.beg < p->span.end && p->span.beg < s.end;
}

/* The steps around a node: its own and the few before and after. */
static struct span
steps_around(const struct told *t, const struct node *n)
{
	const struct stretch *x = told_at(t, n->end);
	size_t at = x ? (size_t)(x - t->stretch.v) : 0, end = at + AROUND;

	return (struct span){(uint32_t)(at > AROUND ? at - AROUND : 0),
	    (uint32_t)(end < t->stretch.n ? end : t->stretch.n)};
}

/* The step whose setting is that of the node. */
static void
add_change(const struct told *t, const struct node *n)
{
	struct span near = steps_around(t, n);

	for (size_t i = near.beg; i < near.end; i++) {
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
	struct span near;

	if (!node_field(&t->m->c, n, "reading", &reading) ||
	    !node_field(&t->m->c, n, "value", &value) ||
	    !measure_of(&t->m->c, t->m->region, value.v, &said) || !said.value.known ||
	    !said.value.unit || !said.value.unit->has_base)
		return;
	near = steps_around(t, n);
	for (size_t i = near.beg; i < near.end; i++) {
		struct doneness *d = &t->stretch.v[i].step->doneness;

		if (d->known && holds_place(t->m, reading.v, &d->place))
			d->hold_ms = 1000 * ratio_round(unit_to_base(
						said.value.unit, said.value.min));
	}
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

static bool
is_waiting(struct str kind)
{
	return str_is_z(kind, "prove") || str_is_z(kind, "chill") ||
	       str_is_z(kind, "marinate") || str_is_z(kind, "soak");
}

static const struct lexeme *
action_named(const struct maker *m, struct str word)
{
	struct str key = lexicon_key(m->a, word);
	const struct entry *e = lexicon_find(&m->g->lexicon, key);
	const struct reading *r =
	    e ? entry_reading(e, grammar_class(m->g, "ACTION")) : NULL;

	return r ? r->lexeme : NULL;
}

/* "Cover them over. Prove them.": what the step is about is the waiting. */
static void
find_waiting(const struct maker *m, struct step *s)
{
	struct str rest = s->text;

	while (rest.n && !s->duration.present && !s->doneness.text.n && !s->heats) {
		size_t stop = str_find(rest, STR(". "));
		const struct lexeme *l =
		    action_named(m, str_cut(rest, 0, str_find_char(rest, ' ')));

		if (l && is_waiting(lexeme_get(l, "kind"))) {
			s->action = l->lemma;
			s->kind = lexeme_get(l, "kind");
			return;
		}
		rest = stop < rest.n ? str_cut(rest, stop + 2, rest.n) : STR("");
	}
}

static bool
is_putting(const struct maker *m, uint32_t token)
{
	static const char *const words[] = {
	    "put", "pop", "stick", "place", "goes", "go", "stash", "slide"};

	for (size_t i = 0; i < sizeof words / sizeof *words; i++)
		if (token_is(m, token, words[i]))
			return true;
	return false;
}

/* A time is said in the words of the step. */
static bool
has_time(const struct maker *m, const struct stretch *x)
{
	size_t i = measure_from(m, script_source(m->s, token_of(m, x->beg)->text).beg);

	for (; i < m->d->measures; i++) {
		const struct measure *d = &m->d->measure[i];

		if (token_from(m, d->place.span.beg) >= x->end)
			return false;
		if (d->kind == MEASURE_DURATION)
			return true;
	}
	return false;
}

/* "Put it in the freezer", "the dip goes in the fridge to chill": so it is
 * cooled, for as long as is not said. */
static void
find_cold(const struct maker *m, const struct stretch *x)
{
	struct step *s = x->step;

	if (s->duration.present || s->doneness.text.n || s->heats || s->preheats ||
	    has_time(m, x))
		return;
	for (uint32_t i = x->beg + 4; i < x->end; i++) {
		bool cold =
		    token_is(m, i, "freezer") ||
		    (token_is(m, i, "fridge") && token_is(m, i + 1, "to") &&
			(token_is(m, i + 2, "chill") || token_is(m, i + 2, "set") ||
			    token_is(m, i + 2, "cool") || token_is(m, i + 2, "firm")));

		if (cold && token_has(m, i - 1, "DET") &&
		    token_has(m, i - 2, "PLACEPREP") &&
		    (is_putting(m, i - 4) || is_putting(m, i - 3))) {
			s->kind = STR("chill");
			return;
		}
	}
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

void
told_fill(struct maker *m)
{
	struct told t = {.m = m};

	told_find(&t);
	drop_repeats(&t);
	for (size_t i = 0; i < t.stretch.n; i++) {
		fill_kind(m, t.stretch.v[i].step);
		find_waiting(m, t.stretch.v[i].step);
		find_cold(m, &t.stretch.v[i]);
		fill_products(&t, &t.stretch.v[i]);
		fill_cue(&t, &t.stretch.v[i]);
	}
	read_nodes(&t);
	heat_fill(&t);
}
