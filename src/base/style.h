/* SPDX-License-Identifier: ISC */
/*
 * How a recipe is to be written: what a house style file and the reader ask
 * for. A part of tamis.h. In each enum the first is what tamis does by itself.
 */
#ifndef TAMIS_BASE_STYLE_H
#define TAMIS_BASE_STYLE_H

#include "base/ratio.h"

enum tamis_units {
	UNITS_SAID, /* as said, the other system in brackets where it helps */
	UNITS_BOTH, /* metric, US in brackets */
	UNITS_US,
	UNITS_METRIC
};

enum tamis_degrees {
	DEGREES_UNITS, /* as the units ask: the scale of US, of metric, or as said */
	DEGREES_SAID,  /* the scale that was said first, the other in brackets */
	DEGREES_CELSIUS_FIRST,
	DEGREES_FAHRENHEIT_FIRST,
	DEGREES_CELSIUS,
	DEGREES_FAHRENHEIT
};
enum tamis_spelling { SPELLING_SAID, SPELLING_UK, SPELLING_US };
enum tamis_numbers { NUMBERS_DOT, NUMBERS_BRACKET, NUMBERS_NONE };

/* What a house prints in place of a caution of cautions.tsv. */
struct tamis_caution {
	struct str topic, text; /* text empty: nothing */
};

/* How a recipe is written. All zero is the style of tamis itself. */
struct tamis_style {
	enum tamis_units units;
	enum tamis_degrees degrees;
	enum tamis_spelling spelling;
	enum tamis_numbers numbers; /* of steps */
	bool unit_words;            /* "tablespoons" for "tbsp" */
	bool plain_fractions;       /* "1 1/2" for "1½" */
	bool no_time_codes, no_cautions;
	unsigned heading; /* level of a dish's title, from 1; 0 is 1 */
	const struct tamis_caution *caution;
	size_t cautions;
	struct ratio scale; /* times the amounts; den 0: as said */
	unsigned servings;  /* or as many as are served; 0: as said */
	/* Where the episode can be watched, http or https, for links and for
	 * structured data; NULL unknown. */
	const char *video;
};

#endif
