/* SPDX-License-Identifier: ISC */
/*
 * Every word of the script that names a food, by food. For src/remark/ only.
 */
#ifndef TAMIS_NAMINGS_H
#define TAMIS_NAMINGS_H

#include "remark/remarks.h"

/* A food's key, and a token that names it. */
struct naming {
	struct str key;
	uint32_t token;
};

struct namings {
	VEC(struct naming) v; /* by key, then in script order */
};

void namings_find(const struct maker *m, struct namings *n);
/* The index of the first that does not come before this one. */
size_t namings_at(const struct namings *n, struct naming wanted);

#endif
