/* SPDX-License-Identifier: ISC */
/*
 * Figures of the tables in the form that checks compare: settings in degrees
 * Celsius, minimum temperatures, holds, package sizes. For src/check/ only.
 */
#ifndef TAMIS_FACTS_H
#define TAMIS_FACTS_H

#include "check/finding.h"

/* A range of settings of an appliance. A side that has no figure is 0. */
struct range {
	struct ratio low_c, high_c, low_f, high_f;
	struct str source;
};
/* The row of ovens.tsv for the appliance and use; false when there is none. */
bool facts_range(
    const struct check *k, struct str appliance, const char *use, struct range *out);

/* A published minimum inside a food. */
struct minimum {
	struct ratio c;
	int64_t hold_s, rest_s; /* 0 none */
	struct str source;      /* its first name */
};
/* The profile of doneness.tsv that was asked for, else that of the region. */
const char *facts_profile(const struct draft *d);
/* The minimum of the class, or of the wider class; false where the profile
 * publishes no figure. */
bool facts_minimum(const struct check *k, struct str food_class, struct minimum *out);
/* An authority publishes that this temperature, held so long, is as safe; its
 * name goes to *source. */
bool facts_held(const struct check *k, struct str food_class, struct ratio c,
    int64_t seconds, struct str *source);

/* In degrees Celsius, gas marks by the table; false where u is no temperature. */
bool facts_celsius(
    const struct check *k, const struct unit *u, struct ratio value, struct ratio *out);

/* Shops of the draft's region sell the food in this container in this size, in
 * the unit of in->size. */
bool facts_pack_has(const struct check *k, const struct ingredient *in, struct ratio size);
/* The table has the action in its first column. */
bool facts_has_action(const struct check *k, const char *table, struct str action);

/* The unit of that name in the draft's region; NULL when unknown. */
const struct unit *facts_unit(const struct check *k, const char *name);
/* Up to the first ';' of a source cell. */
struct str facts_source(struct str cell);

#endif
