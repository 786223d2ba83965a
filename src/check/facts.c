/* SPDX-License-Identifier: ISC */
/*
 * Figures out of ovens.tsv, doneness.tsv, lethality.tsv, food_classes.tsv and
 * packs.tsv. A figure that a table has not is simply not known.
 */
#include "check/facts.h"

#include "check/food.h"

enum { WIDER_MAX = 4 };

/* Tables of holds go by whole degrees; 54.4 °C is the published 130 °F. */
static const struct ratio reading_slack = {1, 5};

static bool
cell_is(const struct table *t, size_t row, const char *column, const char *want)
{
	return str_is_z(table_cell(t, row, table_column(t, column)), want);
}

static struct ratio
cell_number(const struct table *t, size_t row, const char *column)
{
	struct ratio v = {0, 1};

	table_number(t, row, table_column(t, column), &v);
	return v;
}

static int64_t
cell_seconds(const struct table *t, size_t row, const char *column)
{
	return ratio_round(cell_number(t, row, column));
}

struct str
facts_source(struct str cell)
{
	return str_trim(str_cut(cell, 0, str_find_char(cell, ';')));
}

static struct str
row_source(const struct table *t, size_t row)
{
	return facts_source(table_cell(t, row, table_column(t, "source")));
}

bool
facts_range(const struct check *k, struct str appliance, const char *use, struct range *out)
{
	const struct table *t = grammar_table(k->grammar, "ovens");

	for (size_t i = 0; t && i < t->rows; i++) {
		if (!cell_is(t, i, "kind", "appliance") ||
		    !words_are(table_cell(t, i, table_column(t, "name")), appliance) ||
		    !cell_is(t, i, "use", use))
			continue;
		out->low_c = cell_number(t, i, "low_c");
		out->high_c = cell_number(t, i, "high_c");
		out->low_f = cell_number(t, i, "low_f");
		out->high_f = cell_number(t, i, "high_f");
		out->source = row_source(t, i);
		return true;
	}
	return false;
}

static const char *const profiles[] = {"us-home", "us-retail", "uk", "ca", "au"};
enum { PROFILES = sizeof profiles / sizeof *profiles };

const char *
tamis_profile(size_t index)
{
	return index < PROFILES ? profiles[index] : NULL;
}

/* A region that has a profile of its own goes by its name. */
const char *
facts_profile(const struct draft *d)
{
	if (d->profile)
		return d->profile;
	for (size_t i = 0; i < PROFILES; i++)
		if (d->region && strcmp(d->region, profiles[i]) == 0)
			return profiles[i];
	return profiles[0];
}

static bool
minimum_of(const struct check *k, struct str food_class, struct minimum *out)
{
	const struct table *t = grammar_table(k->grammar, "doneness");
	const char *profile = facts_profile(k->draft);

	for (size_t i = 0; t && i < t->rows; i++) {
		if (!str_is(table_cell(t, i, table_column(t, "food_class")), food_class) ||
		    !cell_is(t, i, "profile", profile) || !cell_is(t, i, "kind", "minimum"))
			continue;
		out->hold_s = cell_seconds(t, i, "hold_s");
		out->rest_s = cell_seconds(t, i, "rest_s");
		out->source = row_source(t, i);
		return table_number(t, i, table_column(t, "temp_c"), &out->c);
	}
	return false;
}

static bool
has_class(const struct check *k, struct str food_class)
{
	const struct table *t = grammar_table(k->grammar, "doneness");
	const char *profile = facts_profile(k->draft);

	for (size_t i = 0; t && i < t->rows; i++)
		if (str_is(table_cell(t, i, table_column(t, "food_class")), food_class) &&
		    cell_is(t, i, "profile", profile))
			return true;
	return false;
}

/* The class that stands in for this one; empty where none does. */
static struct str
wider_class(const struct check *k, struct str food_class)
{
	const struct table *t = grammar_table(k->grammar, "food_classes");
	int class = t ? table_column(t, "food_class") : -1;
	size_t i = t ? table_find(t, 0, class, food_class) : 0;

	if (!t || i == t->rows)
		return (struct str){NULL, 0};
	return table_cell(t, i, table_column(t, "wider"));
}

bool
facts_minimum(const struct check *k, struct str food_class, struct minimum *out)
{
	for (int i = 0; i < WIDER_MAX && food_class.n; i++) {
		if (has_class(k, food_class))
			return minimum_of(k, food_class, out);
		food_class = wider_class(k, food_class);
	}
	return false;
}

/* The row's temperature in the scale that is lower: 150 °F is printed as 66 °C,
 * which is more. */
static bool
row_celsius(const struct table *t, size_t i, struct ratio *out)
{
	struct ratio f;

	if (!table_number(t, i, table_column(t, "temp_c"), out))
		return false;
	if (table_number(t, i, table_column(t, "temp_f"), &f)) {
		f = ratio_mul(ratio_sub(f, ratio_int(32)), ratio_make(5, 9));
		*out = ratio_order(f, *out) < 0 ? f : *out;
	}
	return true;
}

/* At the reading or below it, and held for as long as the row asks. */
static bool
row_holds(const struct table *t, size_t i, struct ratio c, int64_t seconds)
{
	struct ratio row_c, hold;

	return row_celsius(t, i, &row_c) &&
	       table_number(t, i, table_column(t, "hold_s"), &hold) &&
	       ratio_order(row_c, ratio_add(c, reading_slack)) <= 0 &&
	       ratio_order(hold, ratio_int(seconds)) <= 0;
}

static bool
held_by_profile(const struct check *k, struct str food_class, struct ratio c,
    int64_t seconds, struct str *source)
{
	const struct table *t = grammar_table(k->grammar, "doneness");
	const char *profile = facts_profile(k->draft);
	bool us = strcmp(profile, "us-home") == 0;

	for (size_t i = 0; t && i < t->rows; i++) {
		if (!str_is(table_cell(t, i, table_column(t, "food_class")), food_class) ||
		    !cell_is(t, i, "kind", "equivalent") || !row_holds(t, i, c, seconds))
			continue;
		if (cell_is(t, i, "profile", profile) ||
		    (us && cell_is(t, i, "profile", "us-retail"))) {
			*source = row_source(t, i);
			return true;
		}
	}
	return false;
}

/* The table has the same for leaner or fatter food, which asks for longer. */
static bool
asks_longer(const struct table *t, size_t row, int64_t seconds)
{
	static const char *const same[] = {"food_class", "profile", "target", "temp_c"};

	for (size_t i = 0; i < t->rows; i++) {
		bool other = false;

		for (size_t c = 0; c < sizeof same / sizeof *same; c++) {
			int column = table_column(t, same[c]);

			other = other || !str_is(table_cell(t, i, column),
					     table_cell(t, row, column));
		}
		if (!other && cell_seconds(t, i, "hold_s") > seconds)
			return true;
	}
	return false;
}

static bool
held_by_lethality(const struct check *k, struct str food_class, struct ratio c,
    int64_t seconds, struct str *source)
{
	const struct table *t = grammar_table(k->grammar, "lethality");
	struct str profile = str_of(facts_profile(k->draft));
	bool roast = word_in(food_class, "pork lamb veal goat bison ham-fresh");

	for (size_t i = 0; t && i < t->rows; i++) {
		struct str classes = table_cell(t, i, table_column(t, "food_class"));
		struct str of = table_cell(t, i, table_column(t, "profile"));
		bool ours =
		    str_is(classes, food_class) || (roast && str_is_z(classes, "roast"));

		if (ours && str_starts(profile, of) && row_holds(t, i, c, seconds) &&
		    !asks_longer(t, i, seconds)) {
			*source = row_source(t, i);
			return true;
		}
	}
	return false;
}

bool
facts_held(const struct check *k, struct str food_class, struct ratio c, int64_t seconds,
    struct str *source)
{
	for (int i = 0; i < WIDER_MAX && food_class.n && seconds > 0; i++) {
		if (held_by_profile(k, food_class, c, seconds, source) ||
		    held_by_lethality(k, food_class, c, seconds, source))
			return true;
		food_class = wider_class(k, food_class);
	}
	return false;
}

static bool
gas_mark(const struct check *k, struct ratio mark, struct ratio *out)
{
	const struct table *t = grammar_table(k->grammar, "ovens");
	struct ratio name;

	for (size_t i = 0; t && i < t->rows; i++)
		if (cell_is(t, i, "kind", "gas-mark") &&
		    table_number(t, i, table_column(t, "name"), &name) &&
		    ratio_order(name, mark) == 0)
			return table_number(t, i, table_column(t, "low_c"), out);
	return false;
}

bool
facts_celsius(
    const struct check *k, const struct unit *u, struct ratio value, struct ratio *out)
{
	if (!u || u->dimension != DIM_TEMPERATURE)
		return false;
	if (!u->has_base)
		return gas_mark(k, value, out);
	*out = unit_to_base(u, value);
	return true;
}

/* The row is about this food in this container, where the draft is from. */
static bool
pack_fits(
    const struct check *k, const struct table *t, size_t i, const struct ingredient *in)
{
	return in->amount.unit && k->draft->region &&
	       cell_is(t, i, "region", k->draft->region) &&
	       str_is(
		   table_cell(t, i, table_column(t, "container")), in->amount.unit->name) &&
	       food_is_named(in, table_cell(t, i, table_column(t, "item")));
}

bool
facts_pack_has(const struct check *k, const struct ingredient *in, struct ratio size)
{
	const struct table *t = grammar_table(k->grammar, "packs");
	struct ratio sold;

	for (size_t i = 0; t && i < t->rows; i++)
		if (pack_fits(k, t, i, in) && in->size.unit &&
		    str_is(
			table_cell(t, i, table_column(t, "unit")), in->size.unit->name) &&
		    table_number(t, i, table_column(t, "size"), &sold) &&
		    ratio_order(sold, size) == 0)
			return true;
	return false;
}

bool
facts_has_action(const struct check *k, const char *table, struct str action)
{
	const struct table *t = grammar_table(k->grammar, table);

	for (size_t i = 0; t && i < t->rows; i++)
		if (words_are(table_cell(t, i, 0), action))
			return true;
	return false;
}

const struct unit *
facts_unit(const struct check *k, const char *name)
{
	return grammar_unit(k->grammar, str_of(name), k->draft->region);
}
