/* SPDX-License-Identifier: ISC */
/*
 * Remarks under construction. For src/remark/ only.
 */
#ifndef TAMIS_REMARKS_H
#define TAMIS_REMARKS_H

#include "remark/context.h"

struct namings;

struct remarks {
	struct maker *m;
	VEC(struct remark) remark;
};

/* Adds one about a run of tokens. */
void remark_add(
    struct remarks *r, enum remark_kind kind, struct span tokens, struct str detail);

/* unclear.c: a node "the rest of the sauce", where no sauce came before. */
void remark_unclear(struct remarks *r, const struct node *n);
/* dimension.c: amounts of a kind that no food is measured in. */
void remark_dimensions(struct remarks *r);
/* misheard.c: numbers that captions misheard. */
void remark_mishearings(struct remarks *r);
/* details.c: what the words tell of the things of the draft. */
void details_fill(struct maker *m);
/* drop.c: takes out what only looks like an ingredient or a step. */
void drop_lookalikes(struct maker *m);
/* asked.c: food of which no amount is to be asked. */
void asked_fill(struct maker *m, const struct namings *n);
/* listed.c: what stands in a list, and what of it is used. */
void listed_fill(struct maker *m, const struct namings *n);
/* told.c: what they tell of its steps. */
void told_fill(struct maker *m);

#endif
