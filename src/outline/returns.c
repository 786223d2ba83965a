/* SPDX-License-Identifier: ISC */
/*
 * Where a part, or another dish, is left without a word: its product is used,
 * the main food is taken up again, its time is up.
 *
 *     "Scatter the crumbs all over the top." -> back to the pie itself
 */
#include "outline/outline.h"

/* ---- what a clause says ------------------------------------------------------- */

/* The ING nodes of a clause, also those within its verb. */
static size_t
foods_of(const struct maker *m, const struct clause *q, struct mention *out, size_t room)
{
	size_t count = 0;

	for (uint32_t k = q->beg; k < q->end && count < room; k++) {
		const struct node *n = &chart_top(&m->c)->node.v[k];
		struct field_nodes f;

		if (node_field(&m->c, n, "thing", &f) || node_field(&m->c, n, "object", &f))
			n = f.v;
		count += mentions_of(m, n, out + count, room - count);
	}
	return count;
}

static struct span
tokens_of(const struct maker *m, const struct clause *q)
{
	const struct level *top = chart_top(&m->c);

	return (struct span){top->node.v[q->beg].beg, top->node.v[q->end - 1].end};
}

static bool
word_is(const struct maker *m, uint32_t i, const char *const *words)
{
	for (; *words; words++)
		if (str_is_z(m->c.tokens.token.v[i].norm, *words))
			return true;
	return false;
}

static bool
is_part_word(const struct maker *m, struct str word)
{
	const struct entry *e = lexicon_find(&m->g->lexicon, lexicon_key(m->a, word));

	return e && entry_reading(e, grammar_class(m->g, "PARTHEAD")) != NULL;
}

/* Is the word, in any number, the name's last? */
static bool
word_is_head(const struct maker *m, uint32_t i, struct str head)
{
	const struct token *t = &m->c.tokens.token.v[i];

	if (!head.n)
		return false;
	if (name_ends(t->norm, head))
		return true;
	for (size_t k = 0; k < t->entry->reading.n; k++)
		if (name_ends(t->entry->reading.v[k].lexeme->lemma, head))
			return true;
	return false;
}

/* A node of the class that an aside pass made among the clause's tokens. */
static const struct node *
aside(const struct maker *m, const struct clause *q, const char *pass, const char *class)
{
	const struct level *l = chart_level(&m->c, pass);
	struct span s = tokens_of(m, q);

	for (size_t i = 0; l && i < l->node.n && l->node.v[i].beg < s.end; i++)
		if (l->node.v[i].beg >= s.beg && node_is(&m->c, &l->node.v[i], class))
			return &l->node.v[i];
	return NULL;
}

/* ---- what is kept in mind ------------------------------------------------------ */

static int64_t
time_ms(const struct maker *m, const struct node *n)
{
	struct said s;

	if (!measure_of(&m->c, m->region, n, &s) || s.kind != MEASURE_DURATION ||
	    !s.value.known || !s.value.unit || !s.value.unit->has_base)
		return -1;
	return ratio_round(
	    ratio_mul(unit_to_base(s.value.unit, s.value.max), ratio_int(1000)));
}

bool
returns_is_used(const struct outline *o, struct str key)
{
	for (size_t i = 0; i < o->used.n; i++)
		if (name_ends(o->used.v[i].key, key))
			return true;
	return false;
}

static bool
is_used(const struct outline *o, struct str key, int dish, int part)
{
	for (size_t i = 0; i < o->used.n; i++)
		if (o->used.v[i].dish == dish && (part < 0 || o->used.v[i].part == part) &&
		    (name_ends(o->used.v[i].key, key) || name_ends(key, o->used.v[i].key)))
			return true;
	return false;
}

void
returns_note(struct outline *o, const struct clause *q)
{
	const struct maker *m = o->m;
	struct mention x[MENTIONS];
	size_t n = o->now_dish < 0 ? 0 : foods_of(m, q, x, MENTIONS);

	for (size_t i = 0; i < n; i++)
		if (x[i].key.n && !is_used(o, x[i].key, o->now_dish, o->now_part))
			vec_push(m->a, &o->used,
			    (struct used){x[i].key, o->now_dish, o->now_part});
	for (uint32_t k = q->beg; k < q->end && o->now_dish >= 0; k++) {
		int64_t ms = time_ms(m, &chart_top(&m->c)->node.v[k]);

		if (ms > 0)
			vec_push(m->a, &o->waited,
			    (struct waited){ms, o->now_dish, o->now_part});
	}
}

size_t
returns_measured(const struct outline *o, uint32_t beg, uint32_t end)
{
	const struct level *top = chart_top(&o->m->c);
	size_t count = 0;

	for (size_t i = 0; i < top->node.n && top->node.v[i].beg < end; i++) {
		struct mention x[MENTIONS];
		size_t n = top->node.v[i].end <= beg
			       ? 0
			       : mentions_of(o->m, &top->node.v[i], x, MENTIONS);

		for (size_t k = 0; k < n; k++)
			count += x[k].amount.known && x[k].lexeme;
	}
	return count;
}

/* ---- the signs ------------------------------------------------------------------ */

static bool
is_kind(const struct clause *q, const char *const *kinds)
{
	struct str kind = lexeme_get(q->action, "kind");

	for (; *kinds; kinds++)
		if (str_is_z(kind, *kinds))
			return true;
	return false;
}

/* "scatter it all over the top", "that goes over the chops", "brush the tops" */
static bool
uses_product(const struct outline *o, const struct clause *q)
{
	static const char *const over[] = {
	    "over", "on", "onto", "on top", "on top of", "all over", "top", NULL};
	static const char *const all[] = {
	    "top", "tops", "lot", "both", "each", "everything", "sides", "edges", NULL};
	static const char *const moves[] = {
	    "add", "move", "coat", "garnish", "serve", "season", "mix", "shape", NULL};
	const struct maker *m = o->m;
	const struct named *d = &o->dish.v[o->now_dish];
	struct span s = tokens_of(m, q);
	bool placed = false, product = false, target = false;

	if (q->kind != CLAUSE_GO && q->kind != CLAUSE_BARE &&
	    !(q->kind == CLAUSE_DO && is_kind(q, moves)))
		return false;
	for (uint32_t i = s.beg; i < s.end; i++) {
		placed = placed || word_is(m, i, over);
		product = product || token_has(m, i, "PRON") ||
			  word_is_head(m, i, d->part.v[o->now_part].head);
		if (!placed)
			continue;
		target = target || word_is(m, i, all) || word_is_head(m, i, d->head);
		for (size_t k = 1; k < d->part.n; k++)
			target = target || ((int)k != o->now_part &&
					       word_is_head(m, i, d->part.v[k].head));
	}
	return placed && target && product;
}

/* "four mackerel fillets", of the grilled mackerel, after its sauce */
static bool
is_main_food(const struct outline *o, const struct mention *x)
{
	const struct named *d = &o->dish.v[o->now_dish];

	return o->now_part > 0 && x->amount.known && d->sort == NAME_FOOD && d->head.n &&
	       str_is(x->key, d->head);
}

/* The dish whose main food the clause takes up again: "rice goes in". */
static int
takes_up_food(const struct outline *o, const struct clause *q)
{
	static const char *const pantry[] = {"salt", "spice", "oil", "water", "pepper",
	    "sugar", "fat", "butter", "herb", "flour", "leavening", NULL};
	struct mention x[MENTIONS];
	size_t n = foods_of(o->m, q, x, MENTIONS);
	int d = o->now_dish;

	if (q->kind != CLAUSE_GO && q->kind != CLAUSE_DO && q->kind != CLAUSE_BARE)
		return -1;
	for (size_t i = 0; i < n; i++) {
		bool plain = false;

		for (const char *const *p = pantry; *p; p++)
			plain = plain || str_is_z(x[i].group, *p);
		if (is_main_food(o, &x[i]))
			return d;
		if (plain || x[i].amount.known || !x[i].key.n ||
		    (!x[i].definite && q->kind != CLAUSE_GO))
			continue;
		if (o->now_part > 0 && !is_used(o, x[i].key, d, o->now_part) &&
		    is_used(o, x[i].key, d, 0))
			return d;
	}
	return -1;
}

/* "it's been four hours": the dish that waits so long. */
static int
time_is_up(const struct outline *o, const struct clause *q)
{
	const struct node *n = aside(o->m, q, "ending", "TIMEUP");
	struct field_nodes f;
	int64_t ms = -1;

	if (!n)
		return -1;
	if (node_field(&o->m->c, n, "value", &f))
		ms = time_ms(o->m, f.v);
	for (size_t i = o->waited.n; ms > 0 && i-- > 0;)
		if (o->waited.v[i].ms == ms)
			return o->waited.v[i].dish;
	return o->now_part > 0 ? o->now_dish : -1;
}

/* "twelve taco shells": they go with the tacos, wherever the cook is. */
static int
serves_dish(const struct outline *o, const struct clause *q)
{
	struct mention x[MENTIONS];
	size_t n = foods_of(o->m, q, x, MENTIONS);

	for (size_t i = 0; i < n; i++)
		for (size_t k = 0; k < o->dish.n; k++) {
			const struct named *d = &o->dish.v[k];
			struct str lemma = x[i].lexeme ? x[i].lexeme->lemma : STR("");

			if ((int)k != o->now_dish && lemma.n > d->head.n &&
			    str_starts(lemma, d->head) && lemma.p[d->head.n] == ' ' &&
			    is_part_word(o->m, str_cut(lemma, d->head.n + 1, lemma.n)))
				return (int)k;
		}
	return -1;
}

/* What is new after "that's the sauce" is none of the sauce. */
static bool
goes_on(const struct outline *o, const struct clause *q)
{
	struct mention x[MENTIONS];
	size_t n = foods_of(o->m, q, x, MENTIONS);

	for (size_t i = 0; i < n; i++)
		if (x[i].key.n && !is_used(o, x[i].key, o->now_dish, o->now_part))
			return true;
	return false;
}

int
returns_to(struct outline *o, const struct clause *q)
{
	int dish;

	if (o->now_dish < 0 || q->kind == CLAUSE_NOT)
		return -1;
	dish = time_is_up(o, q);
	if (dish < 0)
		dish = serves_dish(o, q);
	if (dish >= 0)
		return dish;
	if (o->now_part == 0)
		return -1;
	if (aside(o->m, q, "ending", "ASSEMBLE") || uses_product(o, q) ||
	    (o->finished && goes_on(o, q)))
		return o->now_dish;
	if (aside(o->m, q, "ending", "DONE"))
		o->finished = true;
	return takes_up_food(o, q);
}
