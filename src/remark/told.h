/* SPDX-License-Identifier: ISC */
/*
 * Steps and the words that tell of them. For told.c, again.c and cue.c.
 */
#ifndef TAMIS_TOLD_H
#define TAMIS_TOLD_H

#include "remark/remarks.h"

/* A step and the tokens from its clause to the next step's. */
struct stretch {
	uint32_t beg, end;
	int dish, part;
	struct step *step;
};

struct told {
	struct maker *m;
	VEC(struct stretch) stretch; /* in script order */
};

/* Fills t->stretch from the steps of the draft. */
void told_find(struct told *t);
/* The last one that begins at or before the token; NULL where none does. */
struct stretch *told_at(const struct told *t, uint32_t token);
/* The token that the clause around this one begins with. */
uint32_t told_clause(const struct maker *m, uint32_t token);

/* again.c: takes out steps that only sum up others, or say once more what was
 * an instruction; finds the stretches anew. */
void drop_repeats(struct told *t);
/* A node of kind `again`: the time of a step, named again. */
void add_again(struct told *t, const struct node *n);

/* heat.c: the appliance that the token names or implies; empty for none. */
struct str appliance_named(const struct maker *m, uint32_t token);
/* reading.c: readings inside and settings that were taken for each other. */
void readings_fill(const struct told *t);
/* heat.c: whether its appliance was named, and its heat told. */
void heat_fill(const struct told *t);

/* cue.c: what the words say of when the step is done. */
void fill_cue(const struct told *t, const struct stretch *x);

#endif
