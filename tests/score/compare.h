/* SPDX-License-Identifier: ISC */
/*
 * A draft against the gold of its script.
 */
#ifndef TAMIS_TESTS_COMPARE_H
#define TAMIS_TESTS_COMPARE_H

#include "gold.h"
#include "tally.h"
#include "tamis.h"

/* One comparison under way. */
struct match {
	struct arena *arena;
	const struct gold *gold;
	const struct draft *draft;
	struct tally *tally;
	int *dish; /* of each gold dish: the index of ours, -1 none */
};

/* Each pairs what it is named for one to one, and counts. */
void compare_dishes(struct match *m); /* first: fills m->dish */
void compare_measures(struct match *m);
void compare_ingredients(struct match *m);
void compare_heat(struct match *m);
void compare_findings(struct match *m);

/* Values within half a percent and the same unit; or both unknown. */
bool compare_value(const struct gold_value *v, const struct amount *ours);
struct gold_value measured_value(const struct amount *ours);
/* Printed for people: "2 cup", "6..7 minute", "-". */
struct str value_text(struct arena *a, const struct gold_value *v);
/* The index of ours that stands for a gold dish's number; -1 none. */
int compare_dish(const struct match *m, uint64_t number);

#endif
