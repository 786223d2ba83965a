/* SPDX-License-Identifier: ISC */
/*
 * Loads units.tsv and converts to and from base units.
 */
#include "grammar/units.h"

#include "grammar/grammar.h"

static const char *const dimensions[] = {
    [DIM_COUNT] = "count",
    [DIM_VOLUME] = "volume",
    [DIM_MASS] = "mass",
    [DIM_LENGTH] = "length",
    [DIM_TIME] = "time",
    [DIM_TEMPERATURE] = "temperature",
};

static bool
find_dimension(struct str name, enum dimension *out)
{
	for (size_t i = 0; i < sizeof dimensions / sizeof *dimensions; i++)
		if (str_is_z(name, dimensions[i])) {
			*out = (enum dimension)i;
			return true;
		}
	return false;
}

static bool
load_row(struct unit_row *r, const struct table *t, size_t i, struct err *e)
{
	struct unit *u = &r->unit;
	struct str cell;

	u->name = table_cell(t, i, table_column(t, "name"));
	u->plural = table_cell(t, i, table_column(t, "plural"));
	u->brief = table_cell(t, i, table_column(t, "brief"));
	if (u->brief.n == 0)
		u->brief = u->name;
	if (u->plural.n == 0)
		u->plural = u->name;
	r->region = table_cell(t, i, table_column(t, "region"));
	cell = table_cell(t, i, table_column(t, "dimension"));
	if (!find_dimension(cell, &u->dimension))
		return err_set(e, "tables/units.tsv",
		    "unit %.*s: no dimension is called \"%.*s\"", (int)u->name.n, u->name.p,
		    (int)cell.n, cell.p);
	u->metric = str_is_z(table_cell(t, i, table_column(t, "metric")), "1");
	u->has_base = table_number(t, i, table_column(t, "factor"), &u->factor);
	u->offset = ratio_int(0);
	table_number(t, i, table_column(t, "offset"), &u->offset);
	return true;
}

bool
units_load(struct units *u, const struct table *t, struct arena *a, struct err *e)
{
	for (size_t i = 0; t && i < t->rows; i++) {
		struct unit_row r = {0};

		if (!load_row(&r, t, i, e))
			return false;
		vec_push(a, &u->row, r);
	}
	return true;
}

const struct unit *
grammar_unit(const struct grammar *g, struct str name, const char *region)
{
	const struct unit *any = NULL;

	for (size_t i = 0; i < g->units.row.n; i++) {
		const struct unit_row *r = &g->units.row.v[i];

		if (!str_is(r->unit.name, name))
			continue;
		if (region && str_is_z(r->region, region))
			return &r->unit;
		if (!any || r->region.n == 0)
			any = &r->unit;
	}
	return any;
}

struct ratio
unit_to_base(const struct unit *u, struct ratio value)
{
	return ratio_mul(ratio_add(value, u->offset), u->factor);
}

struct ratio
unit_from_base(const struct unit *u, struct ratio base)
{
	return ratio_sub(ratio_div(base, u->factor), u->offset);
}
