/* SPDX-License-Identifier: ISC */
/*
 * How much of a food, in the units that the house asks for.
 */
#ifndef TAMIS_PORTION_H
#define TAMIS_PORTION_H

#include "house/house.h"

/* An amount of a food: that of its line, or what a step takes of it. */
struct portion {
	const struct amount *amount;
	const struct ingredient *food; /* NULL where it is not known */
	bool reckoned;                 /* multiplied or added up, not as said */
};

/* The amount of an ingredient's own line. */
struct portion portion_of(const struct ingredient *in);

/* "1½ cups", "¼ cup plus 1 tbsp", "350 g"; as print_amount() has it where the
 * house asks for no other. Nothing where no amount is known. */
void portion_put(struct buf *b, const struct house *h, const struct portion *p);
/* What goes in brackets behind it: "125 g", "about 3 tbsp"; or nothing. */
void portion_put_other(struct buf *b, const struct house *h, const struct portion *p);
/* The size of a package or a piece: "400 g/14 oz". */
void portion_put_size(struct buf *b, const struct house *h, const struct amount *size);

#endif
