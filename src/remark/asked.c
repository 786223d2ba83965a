/* SPDX-License-Identifier: ISC */
/*
 * Food without an amount of which none is to be asked: its words show that it
 * is there already, or is a place, a name, a person; or an amount stands apart
 * from it that is surely its own.
 */
#include "remark/namings.h"

#include <stdlib.h>

/* How many words an amount may stand away from its food. */
enum { APART_AFTER = 7, APART_BEFORE = 3 };

struct asked {
	const struct maker *m;
	const struct namings *namings;
	VEC(struct span) taken; /* source bytes of all mentions with an amount */
};

static int
order_spans(const void *left, const void *right)
{
	const struct span *a = left, *b = right;

	return (a->beg > b->beg) - (a->beg < b->beg);
}

static void
find_taken(struct asked *q)
{
	struct draft *d = q->m->d;

	for (size_t i = 0; i < d->dishes; i++)
		for (size_t p = 0; p < d->dish[i].parts; p++)
			for (size_t n = 0; n < d->dish[i].part[p].ingredients; n++) {
				const struct ingredient *in =
				    &d->dish[i].part[p].ingredient[n];

				for (size_t u = 0; u < in->uses; u++)
					if (in->said && in->said[u].present)
						vec_push(
						    q->m->a, &q->taken, in->use[u].span);
			}
	if (q->taken.n)
		qsort(q->taken.v, q->taken.n, sizeof *q->taken.v, order_spans);
}

/* Some mention of a food has the amount that begins there. */
static bool
is_taken(const struct asked *q, uint32_t source)
{
	size_t low = 0, high = q->taken.n;

	while (low < high) {
		size_t mid = low + (high - low) / 2;

		if (q->taken.v[mid].beg <= source)
			low = mid + 1;
		else
			high = mid;
	}
	return low && source < q->taken.v[low - 1].end;
}

static bool
is_one_of(const struct maker *m, uint32_t token, const char *words)
{
	struct str rest = str_of(words);

	while (rest.p)
		if (str_is(str_next(&rest, ' '), token_of(m, token)->norm))
			return true;
	return false;
}

/* A measure or a number begins right there that another food has not got, or
 * that one after it has. */
static bool
starts_amount(const struct asked *q, uint32_t token)
{
	const struct maker *m = q->m;
	uint32_t beg;
	size_t i;

	if (token >= m->c.tokens.token.n)
		return false;
	beg = script_source(m->s, token_of(m, token)->text).beg;
	i = measure_from(m, beg);
	return i < m->d->measures && m->d->measure[i].place.span.beg == beg &&
	       m->d->measure[i].kind == MEASURE_AMOUNT;
}

/* "half a cup of it" */
static bool
is_of_it(const struct maker *m, const struct measure *x)
{
	uint32_t end = token_from(m, x->place.span.end);

	return token_has(m, end, "OF") && token_has(m, end + 1, "PRON");
}

/* "Cumin powder half a teaspoon", "2 racks of baby backs", "half a cup of it":
 * an amount of nothing else, close by, with no other food between. */
static bool
has_amount_apart(const struct asked *q, uint32_t beg, uint32_t end)
{
	const struct maker *m = q->m;
	struct span s = sentence_of(m, beg);
	uint32_t from = beg > s.beg + APART_BEFORE ? beg - APART_BEFORE : s.beg;
	uint32_t to = end + APART_AFTER < s.end ? end + APART_AFTER : s.end;
	uint32_t source = script_source(m->s, token_of(m, from)->text).beg;

	for (size_t i = measure_from(m, source); i < m->d->measures; i++) {
		const struct measure *x = &m->d->measure[i];
		uint32_t at = token_from(m, x->place.span.beg);

		if (at >= s.end)
			return false;
		if ((x->kind != MEASURE_AMOUNT && x->kind != MEASURE_COUNT) ||
		    is_taken(q, x->place.span.beg))
			continue;
		if (is_of_it(m, x) ||
		    (at < to && (at < beg || food_after(m, end, at) == at)))
			return true;
	}
	return false;
}

/* "baby backs 2 racks" */
static bool
is_numbered(const struct asked *q, uint32_t end)
{
	const struct maker *m = q->m;

	return (token_has(m, end, "DIGITS") || token_has(m, end, "CARDWORD")) &&
	       !is_taken(q, script_source(m->s, token_of(m, end)->text).beg);
}

/* The first word before the food that is no determiner, and no food that names
 * it closer ("the horseradish cream"); beg where none is. */
static uint32_t
word_before(const struct maker *m, uint32_t beg)
{
	uint32_t at = beg > 1 && token_reading(m, beg - 1, "FOOD") ? beg - 1 : beg;

	while (at > 0 && (token_has(m, at - 1, "DET") || token_has(m, at - 1, "ART")))
		at--;
	return at > 0 ? at - 1 : beg;
}

/* "stir in the honey": it belongs to the verb. */
static bool
is_particle(const struct maker *m, uint32_t at)
{
	return at > 0 && token_has(m, at, "PARTICLE") &&
	       (token_has(m, at - 1, "ACTION") || token_has(m, at - 1, "VERB") ||
		   token_has(m, at - 1, "ACTION_ING"));
}

/* "into the drippings", "over the toast": it is there already. "That bag of
 * berries", "those onions", "cup of ketchup", "no mustard". */
static bool
is_settled_before(const struct maker *m, uint32_t beg)
{
	uint32_t at = word_before(m, beg);

	if (at == beg)
		return false;
	if (beg > 0 && is_one_of(m, beg - 1, "that those these this any than"))
		return true;
	if (token_has(m, at, "OF") || is_one_of(m, at, "no without"))
		return true;
	/* "next to the dal and the rice" */
	if (at > 0 && token_has(m, at, "AND") && token_reading(m, at - 1, "FOOD")) {
		beg = at - 1;
		at = word_before(m, beg);
	}
	return at + 1 < beg &&
	       (token_has(m, at, "PLACEPREP") || token_is(m, at, "next to")) &&
	       !is_particle(m, at);
}

static uint32_t
after_break(const struct maker *m, uint32_t at)
{
	while (token_has(m, at, "BREAK"))
		at++;
	return at;
}

/* "cold cream on top", "rub is", "chocolate icing", "crema: half a cup" */
static bool
is_settled_after(const struct maker *m, uint32_t end)
{
	uint32_t next = after_break(m, end + 1);

	if (next + 1 >= m->c.tokens.token.n)
		return false;
	if (is_one_of(m, end, "on over"))
		return is_one_of(m, next, "top") || token_has(m, next, "PRON") ||
		       is_one_of(m, next + 1, "side top table");
	return is_one_of(m, end, "alongside ?") || token_is(m, end, "on top") ||
	       token_is(m, end, "on top of") || token_has(m, end, "COLON") ||
	       (token_has(m, end, "PARTHEAD") && !token_has(m, end - 1, "COMMA"));
}

/* "nan's cake": a person, whatever else the word may be. */
static bool
is_person(const struct maker *m, uint32_t beg, uint32_t end)
{
	for (uint32_t i = beg; i < end; i++)
		if (token_has(m, i, "PERSON") && is_one_of(m, i + 1, "'s '"))
			return true;
	return false;
}

/* A thing that recipes make ("meringue", "rub", "batter"), by its whole name. */
static bool
is_made(const struct maker *m, uint32_t beg, uint32_t end)
{
	uint32_t head = end - 1;

	for (uint32_t i = beg; i < head; i++)
		if (token_reading(m, i, "FOOD"))
			return false;
	return token_has(m, head, "MADEWORD") || token_has(m, head, "DISH") ||
	       (token_has(m, head, "PARTHEAD") && token_has(m, head, "FOOD.ambiguous") &&
		   !token_has(m, head, "PARTHEAD.weak"));
}

/* "cream half a cup of butter", "salt it": what is done, no food. */
static bool
is_verb(const struct asked *q, uint32_t beg, uint32_t end)
{
	const struct maker *m = q->m;

	return end == beg + 1 && token_has(m, beg, "ACTION") &&
	       (token_has(m, end, "PRON") || starts_amount(q, end));
}

/* "Carve the bird", "slice the loaf": it is cooked by then. */
static bool
is_of_done(const struct maker *m, uint32_t beg)
{
	const struct clause *c = clause_of(m, beg);

	return c && c->action &&
	       (str_is_z(c->action->lemma, "carve") ||
		   str_is_z(lexeme_get(c->action, "kind"), "serve"));
}

/* "The beans are only for the weight." */
static bool
is_told_of(const struct maker *m, uint32_t beg, uint32_t end)
{
	return beg > 0 && token_is(m, beg - 1, "the") && token_has(m, end, "BE");
}

/* "cumin seeds, same amount", "the same of sugar" */
static bool
is_said_same(const struct maker *m, uint32_t beg, uint32_t end)
{
	enum { NEAR = 3 };

	for (uint32_t i = beg > NEAR ? beg - NEAR : 0; i < end + NEAR; i++)
		if (token_is(m, i, "same") || token_is(m, i, "likewise"))
			return true;
	return false;
}

/* "my nan would put custard powder in" */
static bool
is_of_somebody(const struct maker *m, uint32_t beg)
{
	struct span s = sentence_of(m, beg);

	for (uint32_t i = s.beg; i + 1 < beg; i++)
		if (is_one_of(m, i, "my his her our their your") &&
		    token_has(m, i + 1, "PERSON"))
			return true;
	return false;
}

static bool
is_use_settled(const struct asked *q, struct place use)
{
	const struct maker *m = q->m;
	uint32_t beg = token_from(m, use.span.beg), end = token_from(m, use.span.end);

	if (end <= beg)
		return false;
	if (is_said_same(m, beg, end) || is_of_somebody(m, beg))
		return true;
	while (beg + 1 < end && (token_has(m, beg, "DET") || token_has(m, beg, "ART")))
		beg++;
	return is_settled_before(m, beg) || is_settled_after(m, end) ||
	       is_made(m, beg, end) || is_of_done(m, beg) || is_told_of(m, beg, end) ||
	       is_taken_back(m, beg, false);
}

/* A measure that no food has got stands right before the word or after it. */
static bool
is_measured_at(const struct asked *q, uint32_t token)
{
	enum { BEFORE = 3 };
	const struct maker *m = q->m;
	uint32_t from = token > BEFORE ? token - BEFORE : 0;
	uint32_t source = script_source(m->s, token_of(m, from)->text).beg;

	for (size_t i = measure_from(m, source); i < m->d->measures; i++) {
		const struct measure *x = &m->d->measure[i];
		uint32_t beg = token_from(m, x->place.span.beg);
		uint32_t end = token_from(m, x->place.span.end);

		if (beg > token + 1)
			return false;
		if (x->kind == MEASURE_AMOUNT && !is_taken(q, x->place.span.beg) &&
		    (beg == token + 1 || end == token ||
			(end + 1 == token && token_has(m, end, "OF"))))
			return true;
	}
	return false;
}

/* "garlic, four cloves": measured somewhere in the dish, though what is in its
 * list came from other words. */
static bool
is_measured_elsewhere(const struct asked *q, const struct ingredient *in)
{
	uint32_t at = token_from(q->m, in->place.span.beg);
	int dish = turn_of(q->m, at).dish;

	for (size_t i = namings_at(q->namings, (struct naming){in->key, 0});
	     i < q->namings->v.n && str_is(q->namings->v.v[i].key, in->key); i++) {
		uint32_t token = q->namings->v.v[i].token;

		if (turn_of(q->m, token).dish == dish && is_measured_at(q, token))
			return true;
	}
	return false;
}

/* "the pork" of another dish, which has it with an amount: it is back to that. */
static bool
is_of_other_dish(const struct asked *q, const struct ingredient *in)
{
	const struct draft *d = q->m->d;
	uint32_t at = token_from(q->m, in->place.span.beg);

	if (!token_is(q->m, at, "the") && !(at > 0 && token_is(q->m, at - 1, "the")))
		return false;
	for (size_t i = 0; i < d->dishes; i++)
		for (size_t p = 0; p < d->dish[i].parts; p++)
			for (size_t k = 0; k < d->dish[i].part[p].ingredients; k++) {
				const struct ingredient *o =
				    &d->dish[i].part[p].ingredient[k];

				if (o->amount.known &&
				    o->place.span.beg < in->place.span.beg &&
				    (str_is(o->key, in->key) ||
					str_starts(o->key, in->key) ||
					str_ends(o->key, in->key)))
					return true;
			}
	return false;
}

static bool
is_settled(const struct asked *q, const struct ingredient *in)
{
	bool settled = true;

	if (is_measured_elsewhere(q, in) || is_of_other_dish(q, in))
		return true;
	for (size_t u = 0; u < in->uses; u++) {
		uint32_t beg = token_from(q->m, in->use[u].span.beg);
		uint32_t end = token_from(q->m, in->use[u].span.end);

		if (has_amount_apart(q, beg, end) || is_verb(q, beg, end) ||
		    is_person(q->m, beg, end) || is_numbered(q, end))
			return true;
		settled = settled && is_use_settled(q, in->use[u]);
	}
	return settled;
}

void
asked_fill(struct maker *m, const struct namings *n)
{
	struct asked q = {.m = m, .namings = n};
	struct draft *d = m->d;

	find_taken(&q);
	for (size_t i = 0; i < d->dishes; i++)
		for (size_t p = 0; p < d->dish[i].parts; p++)
			for (size_t k = 0; k < d->dish[i].part[p].ingredients; k++) {
				struct ingredient *in = &d->dish[i].part[p].ingredient[k];

				in->unasked =
				    !in->amount.known && !in->listed && is_settled(&q, in);
			}
}
