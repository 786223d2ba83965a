/* SPDX-License-Identifier: ISC */
/*
 * What is counted of a food: its cloves, stalks, leaves.
 */
#include "clause/maker.h"

static const struct reading *
token_reading(const struct maker *m, uint32_t token, const char *class_name)
{
	return entry_reading(
	    m->c.tokens.token.v[token].entry, grammar_class(m->g, class_name));
}

static const struct reading *
word_reading(const struct maker *m, struct str word, const char *class_name)
{
	const struct entry *e = lexicon_find(&m->g->lexicon, word);

	return e ? entry_reading(e, grammar_class(m->g, class_name)) : NULL;
}

/* "mint leaves" as one word of the lexicon, where mint is a food as well. */
static bool
portion_within(const struct maker *m, uint32_t token, struct portion *out)
{
	struct str words = m->c.tokens.token.v[token].norm;
	const struct reading *food = token_reading(m, token, "FOOD"), *unit, *base;
	size_t cut = words.n;

	while (cut > 0 && words.p[cut - 1] != ' ')
		cut--;
	if (!food || cut == 0)
		return false;
	unit = word_reading(m, str_cut(words, cut, words.n), "UNIT");
	base = word_reading(m, str_cut(words, 0, cut - 1), "FOOD");
	/* a bay leaf is also called bay: that is no food without its leaf */
	if (!unit || !base || !lexeme_has(unit->lexeme, "within") ||
	    str_ends(lexeme_get(base->lexeme, "key"), unit->lexeme->lemma))
		return false;
	out->unit = grammar_unit(m->g, lexeme_get(unit->lexeme, "unit"), m->region);
	out->base = base->lexeme;
	return out->unit != NULL;
}

bool
portion_find(const struct maker *m, struct span food, struct portion *out)
{
	*out = (struct portion){NULL, food, food.end, NULL};
	for (uint32_t at = food.end; at + 1 >= food.end && at > food.beg; at--) {
		const struct reading *r =
		    at < m->c.tokens.token.n ? token_reading(m, at, "UNIT") : NULL;

		if (!(r && lexeme_has(r->lexeme, "part")) || token_has(m, at + 1, "OF") ||
		    !token_has(m, at - 1, "FOOD"))
			continue;
		out->unit = grammar_unit(m->g, lexeme_get(r->lexeme, "unit"), m->region);
		out->food.end = at;
		out->end = at + 1;
		return out->unit != NULL;
	}
	return food.end > food.beg && portion_within(m, food.end - 1, out);
}
