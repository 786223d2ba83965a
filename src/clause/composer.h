/* SPDX-License-Identifier: ISC */
/*
 * A sentence while it is composed. Only sentence.c and verb.c include this.
 */
#ifndef TAMIS_COMPOSER_H
#define TAMIS_COMPOSER_H

#include "clause/sentence.h"

struct composer {
	struct writing *w;
	struct frame f;
	struct buf out;
};

static inline bool
is_kind(const struct composer *c, const char *kind)
{
	return str_is_z(c->w->deed->kind, kind);
}

static inline bool
has_object(const struct composer *c)
{
	return c->f.foods || c->f.object.n;
}

/* verb.c: the verb, base form; empty where the clause tells of no doing. */
struct str composer_verb(const struct composer *c);
/* The verb in place of one that is light: "put" for "pop"; may be empty. */
struct str composer_light_verb(const struct composer *c);
/* "reduce the heat" for "turn it down"; empty where no heat is turned. */
struct str composer_heat_verb(const struct composer *c);

#endif
