/* SPDX-License-Identifier: ISC */
/*
 * Foods that are counted: the noun for the number, and a part of an egg, which
 * nobody can count.
 */
#ifndef TAMIS_PIECE_H
#define TAMIS_PIECE_H

#include "house/portion.h"

/* 1⅓ eggs: one, and a tablespoon of beaten egg. */
struct split {
	int64_t whole;
	struct str rest; /* "1 tbsp"; empty where whole eggs are enough */
};

/* False for what is no egg, or no part of one. */
bool piece_split(
    struct arena *a, const struct house *h, const struct ingredient *in, struct split *out);
/* The item for so many: "eggs" for 2 where the script had "one egg". As it is
 * where the amounts are as said. */
struct str piece_item(struct arena *a, const struct house *h, const struct ingredient *in,
    struct ratio count);

#endif
