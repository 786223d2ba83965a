/* SPDX-License-Identifier: ISC */
/*
 * Words that point back: "the rest of the caramel", "another five minutes".
 * They are clear where something before can be meant.
 */
#include "remark/told.h"

/* FAR: words of an hour and more of talk. */
enum { CLOSE = 12, FAR = 12000 };

/* The two words name one food or one thing. */
static bool
is_same(const struct maker *m, uint32_t a, uint32_t b)
{
	struct str x = food_key(m, a), y = food_key(m, b);

	if (x.n && y.n && (str_is(x, y) || str_find(y, x) < y.n || str_find(x, y) < x.n))
		return true;
	return str_is(token_of(m, a)->norm, token_of(m, b)->norm);
}

static const struct lexeme *
action_of(const struct maker *m, uint32_t token)
{
	static const char *const classes[] = {
	    "ACTION_ED", "ACTION", "ACTION_ING", "ACTION_S"};

	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++) {
		const struct reading *r = token_reading(m, token, classes[i]);

		if (r)
			return r->lexeme;
	}
	return NULL;
}

/* The action was told, or is the food's name ("fried onions"), close to it. */
static bool
was_done(const struct maker *m, uint32_t food, const struct lexeme *action)
{
	uint32_t beg = food > CLOSE ? food - CLOSE : 0;

	for (uint32_t i = beg; i < food + CLOSE && i < m->c.tokens.token.n; i++) {
		const struct lexeme *told = action_of(m, i);

		if (told && str_is(told->lemma, action->lemma))
			return true;
	}
	return false;
}

/* "fried onions" as one word of the lexicon: the action of its first word. */
static const struct lexeme *
action_within(const struct maker *m, uint32_t token)
{
	struct str words = token_of(m, token)->norm;
	size_t cut = str_find_char(words, ' ');
	const struct entry *e =
	    cut < words.n ? lexicon_find(&m->g->lexicon, str_cut(words, 0, cut)) : NULL;
	const struct reading *r =
	    e ? entry_reading(e, grammar_class(m->g, "ACTION_ED")) : NULL;

	return r ? r->lexeme : NULL;
}

/* Something before the words is what they mean; `done`: it was done to it. */
static bool
was_named(const struct maker *m, uint32_t before, uint32_t head, const struct lexeme *done)
{
	for (uint32_t i = before > FAR ? before - FAR : 0; i < before; i++)
		if (is_same(m, head, i) && (!done || was_done(m, i, done)))
			return true;
	return false;
}

/* Something was mixed or cooked together: it may be what is called so. */
static bool
has_made(const struct maker *m, uint32_t token)
{
	static const char *const kinds[] = {"mix", "add", "season", "coat", "shape"};
	struct turn turn = turn_of(m, token);
	uint32_t at = script_source(m->s, token_of(m, token)->text).beg;
	const struct dish *d = turn.dish >= 0 ? &m->d->dish[turn.dish] : NULL;

	for (size_t p = 0; d && p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].steps; i++) {
			const struct step *s = &d->part[p].step[i];

			for (size_t k = 0; k < sizeof kinds / sizeof *kinds; k++)
				if (s->place.span.beg < at && s->uses > 1 &&
				    str_is_z(s->kind, kinds[k]))
					return true;
		}
	return !d;
}

static bool
has_worked(const struct maker *m, uint32_t token)
{
	struct turn turn = turn_of(m, token);
	uint32_t at = script_source(m->s, token_of(m, token)->text).beg;
	const struct dish *d = turn.dish >= 0 ? &m->d->dish[turn.dish] : NULL;

	for (size_t p = 0; d && p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].steps; i++)
			if (d->part[p].step[i].place.span.beg < at)
				return true;
	return !d;
}

/* A word for whatever was made: "mixture", "sauce", "dough". */
static bool
is_general(const struct maker *m, uint32_t token)
{
	return token_has(m, token, "GENERICFOOD") || token_has(m, token, "MADEWORD") ||
	       (token_has(m, token, "THING") && !token_has(m, token, "PARTHEAD"));
}

static void
add_rest(struct remarks *r, const struct node *n, const struct field_nodes *name)
{
	const struct maker *m = r->m;
	uint32_t beg = name->v[0].beg, head = name->v[name->n - 1].end - 1;
	const struct lexeme *done = NULL;

	for (uint32_t i = beg; i < head; i++)
		if (token_has(m, i, "ACTION_ED"))
			done = action_of(m, i);
	if (!done)
		done = action_within(m, head);
	if (was_named(m, n->beg, head, done) ||
	    (is_general(m, head) && has_made(m, n->beg)))
		return;
	remark_add(r, REMARK_UNCLEAR_REFERENCE, (struct span){n->beg, n->end}, STR(""));
}

void
remark_unclear(struct remarks *r, const struct node *n)
{
	struct field_nodes name;

	if (is_taken_back(r->m, n->beg, false))
		return;
	if (node_field(&r->m->c, n, "name", &name))
		add_rest(r, n, &name);
	else if (!has_worked(r->m, told_clause(r->m, n->beg)))
		remark_add(
		    r, REMARK_UNCLEAR_REFERENCE, (struct span){n->beg, n->end}, STR(""));
}
