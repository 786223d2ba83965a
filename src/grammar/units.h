/* SPDX-License-Identifier: ISC */
/*
 * Units of grammars/tables/units.tsv, as struct unit of tamis.h.
 */
#ifndef TAMIS_UNITS_H
#define TAMIS_UNITS_H

#include "grammar/table.h"
#include "tamis.h"

struct unit_row {
	struct unit unit;
	struct str region; /* "" for everywhere */
};

struct units {
	VEC(struct unit_row) row;
};

bool units_load(struct units *u, const struct table *t, struct arena *a, struct err *e);

/* The unit of that name as the region has it, else as everywhere, else the
 * first; NULL when no row has the name. */
const struct unit *grammar_unit(
    const struct grammar *g, struct str name, const char *region);

/* value in the base unit of u: (value + offset) * factor. u->has_base holds. */
struct ratio unit_to_base(const struct unit *u, struct ratio value);
/* The other way. */
struct ratio unit_from_base(const struct unit *u, struct ratio base);

#endif
