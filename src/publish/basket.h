/* SPDX-License-Identifier: ISC */
/*
 * What to buy for all dishes of an episode: each food once, its amounts added
 * up by kind of unit, in the order of a walk through a shop.
 */
#ifndef TAMIS_BASKET_H
#define TAMIS_BASKET_H

#include "house/house.h"

/* What was added up: volumes with volumes, 400 g cans with 400 g cans. */
struct basket_sum {
	struct amount total; /* in the largest unit said that it prints well in */
	struct amount size;  /* of each package or piece; not present when none */
	bool weighed;        /* base holds */
	struct amount base;  /* the same in grams or millilitres */
};

struct basket_item {
	struct str name, key, section;
	struct basket_sum *sum;
	size_t sums;
	bool more;       /* some of it is asked for without an amount */
	bool optional;   /* no dish needs it */
	struct str pack; /* "1 block of 250 g"; empty where none is known */
	size_t *dish;    /* indexes of the dishes that it is for */
	size_t dishes;
};

struct basket {
	struct basket_item *item;
	size_t items;
};

/* Water and what the dishes make themselves are left out. g may be NULL. */
struct basket basket_of(struct arena *a, const struct draft *d, const struct grammar *g);
/* "6 tbsp", "2 (400 g/14 oz) cans"; nothing where no amount is known. */
void basket_put_sum(struct buf *b, const struct house *h, const struct basket_sum *s);

#endif
