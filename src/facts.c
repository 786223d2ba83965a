/* SPDX-License-Identifier: ISC */
/*
 * What the tables of the grammar say, for those who have no other business
 * with them: units, allergens, safe temperatures. The calls of tamis.h.
 */
#include "tamis.h"

#include "check/facts.h"
#include "check/food.h"
#include "grammar/grammar.h"

const struct unit *
tamis_unit(const struct grammar *g, size_t index, struct str *region)
{
	if (index >= g->units.row.n)
		return NULL;
	*region = g->units.row.v[index].region;
	return &g->units.row.v[index].unit;
}

bool
tamis_celsius(
    const struct grammar *g, const struct unit *u, struct ratio value, struct ratio *out)
{
	struct check k = {.grammar = g};

	return facts_celsius(&k, u, value, out);
}

bool
tamis_allergen(const struct grammar *g, size_t index, struct allergen *out)
{
	const struct table *t = grammar_table(g, "allergens");
	int kind = t ? table_column(t, "kind") : -1;
	size_t row = t ? table_find(t, 0, kind, STR("allergen")) : 0;

	for (; t && row < t->rows && index > 0; index--)
		row = table_find(t, row + 1, kind, STR("allergen"));
	if (!t || row >= t->rows)
		return false;
	out->code = table_cell(t, row, table_column(t, "allergen"));
	out->name = table_cell(t, row, table_column(t, "name"));
	return true;
}

bool
tamis_brings(const struct grammar *g, const struct ingredient *in, struct str allergen)
{
	const struct table *t = grammar_table(g, "allergens");

	return t && food_brings(t, in, allergen);
}

bool
tamis_safe_minimum(const struct grammar *g, const char *region, const struct ingredient *in,
    struct safe_minimum *out)
{
	struct draft d = {.region = region};
	struct check k = {.draft = &d, .grammar = g};
	struct minimum minimum;

	if (!facts_minimum(&k, food_class(&k, in), &minimum))
		return false;
	out->celsius = minimum.c;
	out->source = minimum.source;
	return true;
}
