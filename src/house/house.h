/* SPDX-License-Identifier: ISC */
/*
 * What writers ask of the house: the facts and the taste by which a recipe is
 * put on paper.
 */
#ifndef TAMIS_HOUSE_H
#define TAMIS_HOUSE_H

#include "tamis.h"

struct house {
	const struct grammar *grammar; /* NULL: no food's weight is known */
	const struct tamis_style *style;
	const char *region; /* of the script; NULL unknown */
};

static inline struct house
house_of(const struct draft *d, const struct grammar *g, const struct tamis_style *style)
{
	return (struct house){g, style, d->region};
}

#endif
