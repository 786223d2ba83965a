/* SPDX-License-Identifier: ISC */
/*
 * Made-up episodes for the tests of size: what they are put together from.
 */
#ifndef TAMIS_MADE_H
#define TAMIS_MADE_H

#include <stddef.h>

/* A food with the amounts that it comes in: "2-4 tablespoons of". */
struct made_food {
	const char *amount, *food;
};

/* A kind of dish: a name, what is in it, how it is cooked. {h} is the setting,
 * {t} the time, {f} one of its foods. */
struct made_dish {
	const char *name;
	const char *base[4]; /* its own foods, with amounts; NULL past the last */
	const char *step[5]; /* in order; NULL past the last */
	int low_c, high_c;   /* 0: no setting */
	int low_min, high_min;
};

extern const struct made_dish made_dishes[];
extern const size_t made_dish_count;
extern const struct made_food made_foods[];
extern const size_t made_food_count;
/* What a dish can be besides: "smoky", "with lemon and capers". */
extern const char *const made_before[], *const made_after[];
extern const size_t made_before_count, made_after_count;
/* Sentences about the life of a cook; {n} is a thing, {p} a person, {w} a place. */
extern const char *const made_chatter[], *const made_things[], *const made_people[],
								   *const made_places[];
extern const size_t made_chatter_count, made_thing_count, made_people_count,
    made_place_count;

#endif
