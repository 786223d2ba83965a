/* SPDX-License-Identifier: ISC */
/*
 * Tables of facts: tab-separated files with a header row; '#' lines and blank
 * lines are comments. Read-only once loaded.
 */
#ifndef TAMIS_TABLE_H
#define TAMIS_TABLE_H

#include "base/arena.h"
#include "base/err.h"
#include "base/ratio.h"

struct grammar;

struct table {
	struct str name; /* file name without folder and ending */
	VEC(struct str) column;
	VEC(struct str) cell; /* row by row, column.n each */
	size_t rows;
};

/* NULL when the grammar has no such table. */
const struct table *grammar_table(const struct grammar *g, const char *name);
/* -1 when the table has no such column. */
int table_column(const struct table *t, const char *name);
/* "" for a blank cell or for column -1. */
static inline struct str
table_cell(const struct table *t, size_t row, int column)
{
	if (column < 0 || row >= t->rows)
		return (struct str){"", 0};
	return t->cell.v[row * t->column.n + (size_t)column];
}
/* A cell as an exact number ("2.5", "1/3", "-40"); false when it is none. */
bool table_number(const struct table *t, size_t row, int column, struct ratio *out);
/* The first row at or after `from` whose cell in the column is this; rows
 * where there is none. */
size_t table_find(const struct table *t, size_t from, int column, struct str cell);

/* Reads one .tsv; a row with the wrong number of cells is an error. */
bool table_load(
    struct table *t, struct arena *a, struct str data, const char *name, struct err *e);

#endif
