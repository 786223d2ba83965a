/* SPDX-License-Identifier: ISC */
/*
 * Amounts in gram or millilitre: by the unit where it has a base, by the food's
 * density where a volume or a stick is said.
 */
#include "clause/maker.h"
#include "grammar/density.h"

static struct amount
times(const struct maker *m, const struct amount *a, struct ratio per, const char *unit)
{
	return (struct amount){true, true, ratio_mul(a->min, per), ratio_mul(a->max, per),
	    grammar_unit(m->g, str_of(unit), NULL)};
}

static bool
is_measure(const struct unit *u, enum dimension dimension)
{
	return u && u->has_base && u->dimension == dimension;
}

static const struct lexeme *
lexeme_of(const struct maker *m, const struct ingredient *in)
{
	const struct entry *e = lexicon_find(&m->g->lexicon, lexicon_key(m->a, in->key));
	const struct reading *r = entry_reading(e, grammar_class(m->g, "FOOD"));

	return r ? r->lexeme : NULL;
}

/* The food as it is named, else as the lexicon knows it; a form that is said
 * ("sifted") chooses among its rows. */
static bool
weigh(const struct maker *m, const struct ingredient *in, const struct lexeme *food,
    struct density *out)
{
	struct str words = arena_fmt(m->a, "%.*s, %.*s", (int)in->item.n, in->item.p,
	    (int)in->preparation.n, in->preparation.p);
	struct str name[2] = {in->item, food ? food->lemma : in->key};
	const struct unit *u = in->amount.unit;

	for (size_t i = 0; i < 2; i++) {
		if (is_measure(u, DIM_VOLUME) &&
		    density_volume(m->g, name[i], words, u, out))
			return true;
		if (str_is_z(u->name, "stick") &&
		    density_piece(m->g, name[i], words, u->name, out))
			return true;
	}
	return false;
}

static struct amount
by_size(const struct maker *m, const struct ingredient *in)
{
	static const struct amount one = {true, true, {1, 1}, {1, 1}, NULL};
	const struct unit *u = in->size.unit;

	return times(m, in->amount.known ? &in->amount : &one,
	    ratio_mul(in->size.min, u->factor),
	    u->dimension == DIM_MASS ? "gram" : "millilitre");
}

struct amount
metric_of(const struct maker *m, const struct ingredient *in)
{
	const struct unit *u = in->amount.unit;
	const struct lexeme *food = lexeme_of(m, in);
	struct density d;

	if (in->size.known && (in->amount.known || !in->amount.present) &&
	    (is_measure(in->size.unit, DIM_MASS) || is_measure(in->size.unit, DIM_VOLUME)))
		return by_size(m, in);
	if (!in->amount.known || !u)
		return (struct amount){0};
	if (is_measure(u, DIM_MASS))
		return times(m, &in->amount, u->factor, "gram");
	if (is_measure(u, DIM_VOLUME) && lexeme_has(food, "liquid"))
		return times(m, &in->amount, u->factor, "millilitre");
	if (weigh(m, in, food, &d))
		return times(m, &in->amount, d.grams, "gram");
	return (struct amount){0};
}
