/* SPDX-License-Identifier: ISC */
/*
 * Reads *.tsv tables of facts and looks cells up.
 */
#include "grammar/table.h"

bool
table_load(
    struct table *t, struct arena *a, struct str data, const char *name, struct err *e)
{
	uint32_t line = 0;

	while (data.p) {
		struct str row = str_next(&data, '\n');
		size_t cells = 0;

		line++;
		if (row.n && row.p[row.n - 1] == '\r')
			row.n--;
		if (str_trim(row).n == 0 || row.p[0] == '#')
			continue;
		while (row.p) {
			struct str cell = str_trim(str_next(&row, '\t'));

			if (t->rows == 0)
				vec_push(a, &t->column, cell);
			else
				vec_push(a, &t->cell, cell);
			cells++;
		}
		if (cells != t->column.n)
			return err_set_at(e, name, (struct err_place){line, 1},
			    "expected %zu cells parted by tabs, found %zu", t->column.n,
			    cells);
		t->rows++;
	}
	if (t->rows == 0)
		return err_set(e, name, "expected a header row");
	t->rows--;
	return true;
}

int
table_column(const struct table *t, const char *name)
{
	for (size_t i = 0; i < t->column.n; i++)
		if (str_is_z(t->column.v[i], name))
			return (int)i;
	return -1;
}

bool
table_number(const struct table *t, size_t row, int column, struct ratio *out)
{
	return ratio_parse(table_cell(t, row, column), out);
}

size_t
table_find(const struct table *t, size_t from, int column, struct str cell)
{
	for (size_t i = from; i < t->rows; i++)
		if (str_is(table_cell(t, i, column), cell))
			return i;
	return t->rows;
}
