/* SPDX-License-Identifier: ISC */
/*
 * What number nodes of the chart are worth: exact values and ranges.
 */
#ifndef TAMIS_VALUE_H
#define TAMIS_VALUE_H

#include "scan/chart.h"

/* A value or a range; reversed where it was said high to low. */
struct quantity {
	struct ratio min, max;
	bool reversed;
};

/* The value of a node that a number rule made, of digits, or of number words.
 * False where it has none. The fields that number rules may have:
 *   whole part  added up: "two [and] a half"
 *   num den     a fraction: "three" "quarters"; num alone is 1
 *   decimal     digits after the point: "one" point "two five"
 *   times       a factor: "half a" "dozen"
 *   hundreds rest  "three" "fifty"
 *   min max     a range */
bool value_number(const struct chart *c, const struct node *n, struct quantity *out);
/* The same for a run of nodes, such as a field's. */
bool value_of_nodes(const struct chart *c, struct field_nodes f, struct quantity *out);

/* What an article counts: "an onion" is 1, "an onion and a half" with the half as
 * field part 3/2. */
struct ratio value_of_article(const struct chart *c, const struct node *n);

/* False where a rule's attributes speak against the node it made: least=N, the
 * value is N or more; check=NAME, one of
 *   rising   the range of min and max rises, by no more than 2.5
 *   heard    so it does, and what stands between is 2: "eight two ten"
 *   part     less than 1
 *   dial     a multiple of five that a cooker is set to
 *   inside   what a thermometer in food or oil may read
 *   warm     either
 * Other names are none of this file's. */
bool value_holds(const struct chart *c, const struct node *n);

#endif
