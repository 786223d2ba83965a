/* SPDX-License-Identifier: ISC */
/*
 * How a shop is laid out and what it sells: the tables sections and packs.
 */
#ifndef TAMIS_SHOP_H
#define TAMIS_SHOP_H

#include "publish/basket.h"

struct table;

struct shop {
	struct arena *arena;
	const struct grammar *grammar;        /* may be NULL */
	const struct table *sections, *packs; /* NULL where the grammar has none */
	const char *region;
};

struct shop shop_of(struct arena *a, const struct draft *d, const struct grammar *g);
/* "Dairy and eggs"; "Other" where nothing is known of the food. */
struct str shop_section(
    const struct shop *s, const struct basket_item *item, struct str group);
/* Where the section stands on the way through the shop. */
size_t shop_rank(const struct shop *s, struct str section);
/* The packages to buy: "2 blocks of 250 g"; empty where no size is known. */
struct str shop_pack(
    const struct shop *s, const struct basket_item *item, struct str group);

#endif
