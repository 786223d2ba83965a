/* SPDX-License-Identifier: ISC */
/*
 * One dish as a card: title, facts, ingredients, method, notes. The proof page
 * and the printed card share it.
 */
#ifndef TAMIS_RECIPE_H
#define TAMIS_RECIPE_H

#include "page/variants.h"

struct recipe_page {
	const struct draft *draft;
	const struct grammar *grammar; /* may be NULL */
	const struct tamis_style *style;
	const struct ties *ties;         /* of the proof; NULL: no script beside it */
	const struct variants *variants; /* of the proof; NULL: no switches */
	const char *video;               /* times are links into it; NULL: they are not */
	int heading;                     /* level of the dish's title */
};

void recipe_put(struct buf *out, const struct recipe_page *page, size_t dish);

#endif
