/* SPDX-License-Identifier: ISC */
/*
 * A quantity in the measures that a kitchen has, rounded to what it can
 * measure: cups in quarters and thirds, spoons in quarters, grams in fives and
 * tens. How far to round is common practice.
 */
#ifndef TAMIS_KITCHEN_H
#define TAMIS_KITCHEN_H

#include "tamis.h"

enum tool {
	TOOL_PINCH,
	TOOL_TEASPOON,
	TOOL_TABLESPOON,
	TOOL_CUP,
	TOOL_QUART,
	TOOL_OUNCE,
	TOOL_POUND,
	TOOL_GRAM,
	TOOL_KILOGRAM,
	TOOL_MILLILITRE,
	TOOL_LITRE,
	TOOL_INCH,
	TOOL_CENTIMETRE
};

/* "¼ cup plus 1 tbsp"; no terms where there is nothing to measure. */
struct measured {
	struct term {
		struct ratio n;
		enum tool tool;
	} term[2];
	size_t terms;
};

/* A set of spoons and cups. */
struct spoons {
	struct ratio teaspoon;        /* millilitres */
	struct ratio tablespoon, cup; /* teaspoons */
	bool cups;                    /* the cooks there use cups */
};

/* Those of the United States, by NIST SP 430. */
struct spoons kitchen_us_spoons(void);

enum closeness {
	CLOSE, /* within 2 in 100: what was said, multiplied */
	ABOUT, /* within 6 in 100: a cook would not taste it; for conversions */
	ROUGH  /* one measure, come what may: an end of a range */
};

struct measured kitchen_spoons(
    struct ratio tsp, const struct spoons *s, enum closeness how);
/* US cups and spoons, quarts from 3 litres on. */
struct measured kitchen_us_volume(struct ratio ml, enum closeness how);
/* Ounces, from a pound on pounds and ounces. */
struct measured kitchen_us_mass(struct ratio g, enum closeness how);
struct measured kitchen_grams(struct ratio g);
struct measured kitchen_millilitres(struct ratio ml);
struct measured kitchen_inches(struct ratio mm);
struct measured kitchen_centimetres(struct ratio mm);

/* "2–3 cups", "1 lb 2 oz", "2 tsp to 1 tbsp"; words: "cups", "pound", never
 * "tbsp". */
void kitchen_put(
    struct buf *b, const struct measured *min, const struct measured *max, bool words);

#endif
