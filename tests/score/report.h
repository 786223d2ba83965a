/* SPDX-License-Identifier: ISC */
/*
 * The score for people, and the figures that the tree holds it to.
 */
#ifndef TAMIS_TESTS_REPORT_H
#define TAMIS_TESTS_REPORT_H

#include "base/err.h"
#include "tally.h"

struct scores {
	VEC(struct tally) script;
	struct tally total;
};

/* Precision, recall and F1 of each figure, and F1 by script. */
void report_table(const struct scores *s);
/* Every miss and false alarm, by figure, script and time. */
void report_slips(struct tally *t);
/* The most frequent kinds of miss and of false alarm. */
void report_kinds(const struct tally *t);

/* Fails where a figure is below the one in the file: "name<TAB>F1" lines. */
bool report_floor(const struct tally *t, struct arena *a, const char *path, struct err *e);
/* Writes the file anew, each figure the higher of its own and today's. */
bool report_record(const struct tally *t, struct arena *a, const char *path, struct err *e);

#endif
