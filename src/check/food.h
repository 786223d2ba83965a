/* SPDX-License-Identifier: ISC */
/*
 * What checks ask about a food: its group, its class in the safety tables,
 * whether it is raw, whether two lines name one purchase. For src/check/ only.
 */
#ifndef TAMIS_FOOD_H
#define TAMIS_FOOD_H

#include "check/walk.h"

/* Its lexicon group is one of the words. */
static inline bool
food_is(const struct ingredient *in, const char *groups)
{
	return word_in(in->group, groups);
}

/* The head word of its key: "pepper" of "black-pepper". */
struct str food_head(struct str key);
/* The same purchase, or one a kind or a part of the other: "pepper",
 * "black-pepper"; "chicken", "chicken-thigh". */
bool food_matches(const struct ingredient *a, const struct ingredient *b);
/* Cooked, cured, canned or pasteurised before it goes in. */
bool food_is_ready(const struct check *k, const struct ingredient *in);
/* Its class in doneness.tsv; empty where it is no animal food. */
struct str food_class(const struct check *k, const struct ingredient *in);
/* The class that a dish's or part's name gives ("quiche"); empty for most. */
struct str food_class_of_name(const struct check *k, struct str name);
/* A row's food names this ingredient: its key, or the end of its key or item. */
bool food_is_named(const struct ingredient *in, struct str name);
/* By allergens.tsv, surely or as a rule. */
bool food_brings(
    const struct table *allergens, const struct ingredient *in, struct str allergen);
/* Salt, pepper, water, oil and other things that need no amount. */
bool food_is_free(const struct ingredient *in);
/* What others are cooked in or with: oil, salt, herbs. */
bool food_is_little(const struct ingredient *in);
/* What another part of the dish, or another dish, makes. */
bool food_is_product(const struct draft *d, const struct ingredient *in);

#endif
