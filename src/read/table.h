/* SPDX-License-Identifier: ISC */
/*
 * Markdown tables: the columns of an A/V script, or rows of anything else.
 * For src/read only.
 */
#ifndef TAMIS_TABLE_H
#define TAMIS_TABLE_H

#include "read/line.h"
#include "read/prose.h"

/* Whether a line is the row of dashes under a table's header. */
bool table_is_rule(struct str line);
/* Reads the table whose header is `header`; *l stands before its rule, and
 * after its last row when done. */
void table_read(struct prose *p, struct span header, struct lines *l);

#endif
