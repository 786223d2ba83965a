/* SPDX-License-Identifier: ISC */
/*
 * Where a part, or another dish, is left without a word: its product is used,
 * the main food is taken up again, its time is up.
 *
 *     "Scatter the crumbs all over the top." -> back to the pie itself
 */
#include "outline/outline.h"

enum { WAITED_MAX = 200 }; /* times that are looked back on */

/* ---- what a clause says ------------------------------------------------------- */

static struct span
tokens_of(const struct maker *m, const struct clause *q)
{
	const struct level *top = chart_top(&m->c);

	return (struct span){top->node.v[q->beg].beg, top->node.v[q->end - 1].end};
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

/* A node of the class that the pass "ending" made among the clause's tokens. */
static const struct node *
ending(const struct outline *o, const struct clause *q, const char *class)
{
	struct span s = tokens_of(o->m, q);

	return outline_aside(o, "ending", class, s.beg, s.end);
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
		placed = placed || token_has(m, i, "OVERWORD");
		product = product || token_has(m, i, "PRON") ||
			  word_is_head(m, i, d->part.v[o->now_part].head);
		if (!placed)
			continue;
		target = target || token_has(m, i, "TOPWORD") ||
			 word_is_head(m, i, d->head) || word_is_head(m, i, d->wide);
		for (size_t k = 1; k < d->part.n; k++)
			target = target || ((int)k != o->now_part &&
					       word_is_head(m, i, d->part.v[k].head));
	}
	return placed && target && product;
}

/* "a little oil on the fish": more than its product goes on the main food. */
static bool
goes_on_main(const struct outline *o, const struct clause *q)
{
	const struct named *d = &o->dish.v[o->now_dish];
	struct span s = tokens_of(o->m, q);

	for (uint32_t i = s.beg; i + 2 < s.end; i++)
		if (token_has(o->m, i, "OVERWORD") && token_has(o->m, i + 1, "DET") &&
		    (word_is_head(o->m, i + 2, d->head) ||
			word_is_head(o->m, i + 2, d->wide)))
			return true;
	return false;
}

/* A sauce, a dressing, a slaw. */
static bool
now_is_wet(const struct outline *o)
{
	struct str head = o->dish.v[o->now_dish].part.v[o->now_part].head;
	const struct entry *e = lexicon_find(&o->m->g->lexicon, lexicon_key(o->m->a, head));
	const struct reading *r =
	    e ? entry_reading(e, grammar_class(o->m->g, "PARTHEAD")) : NULL;

	return r && lexeme_has(r->lexeme, "wet");
}

/* "four buns, toasted": what holds the dish, after a sauce. */
static bool
brings_carrier(const struct outline *o, const struct clause *q)
{
	struct mention x[MENTIONS];
	size_t n = memory_foods(o->m, q, x, MENTIONS);

	for (size_t i = 0; now_is_wet(o) && i < n; i++)
		if (str_is_z(x[i].group, "bread") && x[i].amount.known && x[i].lexeme &&
		    !str_is_z(lexeme_get(x[i].lexeme, "kind"), "crumbs"))
			return true;
	return false;
}

/* "And I've got four pork chops here": the dish's own food. */
static bool
brings_main(const struct outline *o, const struct clause *q)
{
	struct mention x[MENTIONS];
	size_t n = memory_foods(o->m, q, x, MENTIONS);
	const struct named *d = &o->dish.v[o->now_dish];

	for (size_t i = 0; i < n; i++)
		if (x[i].amount.known && x[i].head.n && str_is(x[i].head, d->head) &&
		    !memory_is_used(o, x[i].key, o->now_dish, o->now_part))
			return true;
	return false;
}

/* "okay, griddle", "same wok, same high heat", "get your oil going" */
static bool
heats_up(const struct outline *o, const struct clause *q)
{
	const struct maker *m = o->m;
	struct span s = tokens_of(m, q);
	bool call = s.beg > 0 && token_has(m, s.beg - 1, "HEATCALL");

	for (uint32_t i = s.beg; i < s.end && i < s.beg + 5; i++) {
		const struct reading *r = entry_reading(
		    m->c.tokens.token.v[i].entry, grammar_class(m->g, "EQUIP"));
		bool named = i > s.beg && token_has(m, i - 1, "HEATCALL");

		call = call || token_has(m, i, "HEATCALL");
		if (call && r && (lexeme_has(r->lexeme, "setting") || named))
			return true;
	}
	return false;
}

/* The dish whose main food the clause takes up again: "rice goes in". */
static int
takes_up_food(const struct outline *o, const struct clause *q)
{
	static const char *const pantry[] = {"salt", "spice", "oil", "water", "pepper",
	    "sugar", "fat", "butter", "herb", "flour", "leavening", NULL};
	struct mention x[MENTIONS];
	size_t n = memory_foods(o->m, q, x, MENTIONS);
	int d = o->now_dish;

	if (q->kind != CLAUSE_GO && q->kind != CLAUSE_DO && q->kind != CLAUSE_BARE)
		return -1;
	for (size_t i = 0; i < n; i++) {
		bool plain = false;

		for (const char *const *p = pantry; *p; p++)
			plain = plain || str_is_z(x[i].group, *p);
		if (plain || x[i].amount.known || !x[i].key.n ||
		    (!x[i].definite && q->kind != CLAUSE_GO))
			continue;
		if (o->now_part > 0 && !memory_is_used(o, x[i].key, d, o->now_part) &&
		    memory_is_used(o, x[i].key, d, 0))
			return d;
	}
	return -1;
}

/* "it's been four hours": the dish that waits so long. */
static int
time_is_up(const struct outline *o, const struct clause *q)
{
	const struct node *n = ending(o, q, "TIMEUP");
	struct field_nodes f;
	int64_t ms = -1;

	if (!n)
		return -1;
	if (node_field(&o->m->c, n, "value", &f))
		ms = memory_ms(o->m, f.v);
	for (size_t i = o->waited.n; ms > 0 && i-- > 0 && o->waited.n - i < WAITED_MAX;)
		if (o->waited.v[i].ms == ms)
			return o->waited.v[i].dish;
	return o->now_part > 0 ? o->now_dish : -1;
}

/* "twelve taco shells": they go with the tacos, wherever the cook is. */
static int
serves_dish(const struct outline *o, const struct clause *q)
{
	struct mention x[MENTIONS];
	size_t n = memory_foods(o->m, q, x, MENTIONS);

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
	size_t n = memory_foods(o->m, q, x, MENTIONS);

	for (size_t i = 0; i < n; i++)
		if (x[i].key.n && !memory_is_used(o, x[i].key, o->now_dish, o->now_part))
			return true;
	return false;
}

bool
returns_says_bye(const struct outline *o, const struct clause *q)
{
	return ending(o, q, "BYE") != NULL;
}

bool
returns_plugs(const struct outline *o, const struct clause *q)
{
	return ending(o, q, "PLUG") != NULL;
}

/* Signs that the part is left, which has been made by now. */
static bool
leaves_part(const struct outline *o, const struct clause *q)
{
	return ending(o, q, "MEANWHILE") || uses_product(o, q) || goes_on_main(o, q) ||
	       brings_main(o, q) || brings_carrier(o, q) || heats_up(o, q) ||
	       (o->finished && goes_on(o, q));
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
	if (ending(o, q, "ASSEMBLE"))
		return o->now_dish;
	if (memory_used_by(o, o->now_dish, o->now_part) == 0)
		return -1;
	if (leaves_part(o, q))
		return o->now_dish;
	if (ending(o, q, "DONE"))
		o->finished = true;
	return takes_up_food(o, q);
}
