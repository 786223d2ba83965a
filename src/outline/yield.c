/* SPDX-License-Identifier: ISC */
/*
 * Finds what is said of servings, pieces and the whole time, and gives it to the
 * dish that it is said of.
 *
 *     "That's chicken for nine, and a salad for nine." -> 9 serving, twice
 */
#include "outline/plan.h"

#include "clause/maker.h"

enum { NEAR = 2 }; /* tokens before it that may name the dish */

/* ---- of which dish ------------------------------------------------------------ */

static struct str
last_word(struct str s)
{
	size_t at = s.n;

	while (at > 0 && s.p[at - 1] != ' ')
		at--;
	return str_cut(s, at, s.n);
}

/* Does the token, in any number, end the dish's name? */
static bool
names_dish(const struct maker *m, uint32_t token, const struct dish *d)
{
	const struct token *t = &m->c.tokens.token.v[token];
	struct str name = str_cut(d->name, 0, str_find(d->name, STR(" with ")));
	struct str head = last_word(name);
	struct str key = lexicon_key(m->a, head);
	const struct entry *e = lexicon_find(&m->g->lexicon, key);

	if (name_ends(t->norm, key))
		return true;
	for (size_t i = 0; e && i < e->reading.n; i++)
		for (size_t k = 0; k < t->entry->reading.n; k++)
			if (e->reading.v[i].lexeme == t->entry->reading.v[k].lexeme)
				return true;
	return false;
}

/* The dish that is under way at a token; else the first. */
static int
dish_at(const struct maker *m, uint32_t token)
{
	size_t lo = turns_up_to(m, token);

	while (lo > 0 && m->turn.v[lo - 1].dish < 0)
		lo--;
	return lo > 0 ? m->turn.v[lo - 1].dish : m->d->dishes ? 0 : -1;
}

/* The dish that the words, or those just before them, name; else the one that
 * is under way. */
static struct dish *
dish_of(struct maker *m, const struct node *n)
{
	int under_way = dish_at(m, n->beg), found = under_way;

	for (uint32_t i = n->beg > NEAR ? n->beg - NEAR : 0; i < n->end; i++) {
		struct str word = m->c.tokens.token.v[i].norm;

		if (i < n->beg && (str_is_z(word, ".") || str_is_z(word, "<break>")))
			found = under_way;
		for (size_t k = 0; k < m->d->dishes; k++)
			if (names_dish(m, i, &m->d->dish[k]))
				found = (int)k;
	}
	return found < 0 ? NULL : &m->d->dish[found];
}

/* ---- yields ------------------------------------------------------------------- */

/* The word of a piece, in the singular. */
static struct str
singular(const struct maker *m, const struct token *t)
{
	static const char *const classes[] = {
	    "PIECE", "DISH", "DISHFOOD", "PARTHEAD", "UNIT", "FOOD"};

	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++) {
		const struct reading *r =
		    entry_reading(t->entry, grammar_class(m->g, classes[i]));

		if (r)
			return last_word(r->lexeme->lemma);
	}
	return last_word(t->norm);
}

/* What a number alone counts: the dish itself where its name is a plural. */
static struct str
piece_of(const struct maker *m, const struct dish *d)
{
	struct str head = last_word(d->name);
	const struct entry *e = lexicon_find(&m->g->lexicon, lexicon_key(m->a, head));

	for (size_t i = 0; e && i < e->reading.n; i++)
		if (e->reading.v[i].form == FORM_PLURAL)
			return last_word(e->reading.v[i].lexeme->lemma);
	return STR("piece");
}

/* "that's twelve tacos", "that's eight slices"; "that's two eggs" is none. */
static bool
names_piece(const struct maker *m, const struct node *n)
{
	struct field_nodes f;
	uint32_t item;

	if (!node_field(&m->c, n, "item", &f))
		return false;
	item = f.v[f.n - 1].beg;
	for (size_t i = 0; i < m->d->dishes; i++)
		if (names_dish(m, item, &m->d->dish[i]))
			return true;
	return entry_reading(
		   m->c.tokens.token.v[item].entry, grammar_class(m->g, "PIECE")) != NULL;
}

/* The value and the unit that a node says; false where it says none. */
static bool
read_yield(const struct maker *m, const struct node *n, const struct dish *d,
    struct said_yield *out)
{
	struct field_nodes f;
	struct quantity q;
	struct said said;

	*out = (struct said_yield){.place = place_of_node(m, n)};
	if (node_field(&m->c, n, "pack", &f)) {
		if (!measure_of(&m->c, m->region, f.v, &said) || !said.value.known ||
		    !said.value.unit || said.value.unit->has_base)
			return false;
		out->value = said.value;
		out->value.unit = NULL;
		out->unit = said.value.unit->name;
		return true;
	}
	if (!node_field(&m->c, n, "value", &f) || !value_of_nodes(&m->c, f, &q))
		return false;
	out->value = (struct amount){true, true, q.min, q.max, NULL};
	out->unit = node_attribute(&m->c, n, "unit");
	if (node_attribute(&m->c, n, "named").p && !names_piece(m, n))
		return false;
	if (!out->unit.n && node_field(&m->c, n, "item", &f))
		out->unit = singular(m, node_token(&m->c, &f.v[f.n - 1]));
	if (!out->unit.n)
		out->unit = piece_of(m, d);
	return true;
}

static void
push_said(struct maker *m, struct dish *d, struct said_yield y)
{
	size_t n = d->yields_said;

	if ((n & (n - 1)) == 0)
		d->yield_said = arena_grow(
		    m->a, d->yield_said, n, n ? n * 2 : 1, sizeof *d->yield_said);
	d->yield_said[d->yields_said++] = y;
}

/* The first that is said counts. What cutting makes does where nothing else is
 * said, or where it counts the same. */
static void
settle_yield(struct dish *d, const bool *cut)
{
	size_t best = d->yields_said;

	for (size_t i = d->yields_said; i-- > 0;)
		if (best == d->yields_said || !cut[i] ||
		    (cut[best] || str_is(d->yield_said[i].unit, d->yield_said[best].unit)))
			best = i;
	if (best == d->yields_said)
		return;
	d->yield = d->yield_said[best].value;
	d->yield_unit = d->yield_said[best].unit;
	d->yield_place = d->yield_said[best].place;
}

/* The yields that are said of one dish, each with whether it was cut. */
struct sayings {
	VEC(bool) cut;
};

static void
take_yields(struct maker *m, const struct level *l)
{
	struct sayings *said = arena_array(m->a, m->d->dishes, struct sayings);
	struct said_yield y;

	for (size_t i = 0; i < l->node.n; i++) {
		const struct node *n = &l->node.v[i];
		struct dish *d = node_is(&m->c, n, "YIELD") ? dish_of(m, n) : NULL;

		if (!d || !read_yield(m, n, d, &y))
			continue;
		vec_push(m->a, &said[d - m->d->dish].cut,
		    node_attribute(&m->c, n, "cut").p != NULL);
		push_said(m, d, y);
	}
	for (size_t i = 0; i < m->d->dishes; i++)
		settle_yield(&m->d->dish[i], said[i].cut.v);
}

/* ---- claims ------------------------------------------------------------------- */

static void
take_claim(struct maker *m, const struct node *n)
{
	struct field_nodes value;
	struct said s;
	struct dish *d = node_is(&m->c, n, "CLAIM") ? dish_of(m, n) : NULL;

	if (!d || d->claimed_ms >= 0 || !node_field(&m->c, n, "value", &value) ||
	    !measure_of(&m->c, m->region, value.v, &s) || !s.value.known || !s.value.unit ||
	    !s.value.unit->has_base)
		return;
	d->claimed_ms = ratio_round(
	    ratio_mul(unit_to_base(s.value.unit, s.value.max), ratio_int(1000)));
	d->claim_place = place_of_node(m, value.v);
}

void
yields_find(struct maker *m)
{
	const struct level *yields = chart_level(&m->c, "yield");
	const struct level *claims = chart_level(&m->c, "claim");

	if (yields)
		take_yields(m, yields);
	for (size_t i = 0; claims && i < claims->node.n; i++)
		take_claim(m, &claims->node.v[i]);
}
