/* SPDX-License-Identifier: ISC */
/*
 * Amounts of food in kitchen measures of another system, or multiplied in their
 * own. Only house/ includes this.
 */
#ifndef TAMIS_CONVERT_H
#define TAMIS_CONVERT_H

#include "house/kitchen.h"
#include "house/portion.h"

/* A range in kitchen measures. */
struct extent {
	struct measured min, max;
	bool about;      /* by the density of the food */
	struct str form; /* of the food, where it is not as it is bought: "packed" */
};

enum system { SYSTEM_NONE, SYSTEM_METRIC, SYSTEM_US };

/* Counts, pinches and what is unknown belong to no system; what is not metric
 * counts as US, also where it is imperial. */
enum system convert_system(const struct amount *a);
/* In metric, what was said in other units; sure: only where the food's weight is
 * known, else by the volume. False where there is nothing to convert. */
bool convert_metric(struct arena *a, const struct house *h, const struct portion *p,
    bool sure, struct extent *out);
/* In US measures, what was said in others. */
bool convert_us(
    struct arena *a, const struct house *h, const struct portion *p, struct extent *out);
/* The spoons and cups of the script's region. */
struct spoons convert_spoons(const struct house *h, const struct amount *a);
/* In its own system, rounded to what can be measured: for what was multiplied.
 * False for counts and for units that spoons and scales don't have. */
bool convert_reckoned(const struct house *h, const struct amount *a, struct extent *out);

#endif
