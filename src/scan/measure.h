/* SPDX-License-Identifier: ISC */
/*
 * What measure nodes of the chart say: amounts, lengths, times, temperatures,
 * with their units, corrections and nested sizes.
 */
#ifndef TAMIS_MEASURE_H
#define TAMIS_MEASURE_H

#include "scan/value.h"

struct said {
	enum measure_kind kind;
	struct amount value;
	bool unit_stated;
	bool reversed;
	bool corrected; /* `first` was said before and put right */
	struct amount first;
	struct span tokens;      /* its words; of a correction, those of the new value */
	const struct node *size; /* of "a 14 ounce can": the ounces; NULL without */
	struct str heard;        /* what a likely mishearing meant: "four"; or empty */
};

/* False where a rule's check= of measures speaks against the node it made:
 *   same      lo and hi can be told in one unit
 *   ascending so they can, both metric or neither, and hi is more
 *   near      so they can, and hi is more, by no more than 2.5
 *   clock     minutes after hours are a multiple of five from ten on
 *   replaces  then is of first's kind and system, so it puts first right
 *   addend    part is a fraction
 * or where carry=1 finds no unit before it. */
bool measure_holds(const struct chart *c, const struct node *n);

/* Evaluates an AMT, LEN, DUR or TEMP node; region picks among units that differ
 * (NULL: none known). False for any other node. */
bool measure_of(
    const struct chart *c, const char *region, const struct node *n, struct said *out);

enum { DIMS_MAX = 3 };
/* The lengths of a DIMS node ("20 by 30 centimetre"): how many there are. */
size_t measure_dims(const struct chart *c, const char *region, const struct node *n,
    struct said out[DIMS_MAX]);

/* The unit that a node's words name, in the word class; NULL without. */
const struct unit *measure_unit(const struct chart *c, const char *region,
    struct field_nodes f, const char *class_name);

#endif
