/* SPDX-License-Identifier: ISC */
/*
 * Amounts in gram or millilitre: by the unit where it has a base, by the food's
 * density (grammars/tables/densities.tsv) where a volume or a piece is said.
 */
#include "clause/maker.h"

/* Does the row name this food, as its name or one of its aliases? */
static bool
row_names(const struct table *t, size_t row, struct str food)
{
	struct str aliases = table_cell(t, row, table_column(t, "aliases"));

	if (str_is(table_cell(t, row, table_column(t, "food")), food))
		return true;
	while (aliases.p && aliases.n)
		if (str_is(str_trim(str_next(&aliases, ';')), food))
			return true;
	return false;
}

/* Grams of one of the unit named by the column; false where none is known. */
static bool
grams_per(const struct grammar *g, struct str food, const char *column, struct ratio *out)
{
	const struct table *t = grammar_table(g, "densities");
	int col = t ? table_column(t, column) : -1;
	bool any = false;

	for (size_t i = 0; t && i < t->rows; i++) {
		struct ratio v;

		if (!row_names(t, i, food) || !table_number(t, i, col, &v))
			continue;
		if (!any || table_cell(t, i, table_column(t, "default_for")).n)
			*out = v;
		any = true;
		if (table_cell(t, i, table_column(t, "default_for")).n)
			break;
	}
	return any;
}

static bool
by_density(
    const struct grammar *g, struct str food, const struct unit *u, struct ratio *per)
{
	static const char *const column[][2] = {
	    {"cup", "g_per_cup"}, {"tablespoon", "g_per_tbsp"}, {"teaspoon", "g_per_tsp"}};
	struct ratio cup;
	const struct unit *cup_unit = grammar_unit(g, STR("cup"), "us");

	for (size_t i = 0; i < 3; i++)
		if (str_is_z(u->name, column[i][0]) &&
		    grams_per(g, food, column[i][1], per))
			return true;
	if (!cup_unit || !u->has_base || !grams_per(g, food, "g_per_cup", &cup))
		return false;
	*per = ratio_div(ratio_mul(cup, u->factor), cup_unit->factor);
	return true;
}

static struct amount
scaled(const struct grammar *g, const struct amount *a, struct ratio per, const char *unit)
{
	return (struct amount){true, true, ratio_mul(a->min, per), ratio_mul(a->max, per),
	    grammar_unit(g, str_of(unit), NULL)};
}

static struct str
lemma_of(struct str item, const struct lexeme *food)
{
	return food ? food->lemma : item;
}

struct amount
metric_of(const struct grammar *g, struct str item, const struct lexeme *food,
    const struct amount *a, const struct amount *size)
{
	struct amount none = {0};
	const struct unit *u = a->unit;
	struct ratio per;

	if (!a->known)
		return none;
	if (size->known && size->unit && size->unit->has_base &&
	    (size->unit->dimension == DIM_MASS || size->unit->dimension == DIM_VOLUME))
		return scaled(g, a, ratio_mul(size->min, size->unit->factor),
		    size->unit->dimension == DIM_MASS ? "gram" : "millilitre");
	if (u && u->dimension == DIM_MASS && u->has_base)
		return scaled(g, a, u->factor, "gram");
	if (u && u->dimension == DIM_VOLUME && u->has_base) {
		if (!lexeme_has(food, "liquid") &&
		    by_density(g, lemma_of(item, food), u, &per))
			return scaled(g, a, per, "gram");
		return lexeme_has(food, "liquid") ? scaled(g, a, u->factor, "millilitre")
						  : none;
	}
	return none;
}
