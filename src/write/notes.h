/* SPDX-License-Identifier: ISC */
/*
 * What stands under a written recipe: the host's tips, readings that tamis
 * had to infer, and cautions for the foods in it.
 */
#ifndef TAMIS_NOTES_H
#define TAMIS_NOTES_H

#include "tamis.h"

/* In the order they are printed; *count is set. Cautions are the rows of the
 * table `cautions` whose topic is the group of an ingredient. g may be NULL. */
struct str *notes_of(struct arena *a, const struct draft *draft, const struct dish *d,
    const struct grammar *g, size_t *count);

#endif
