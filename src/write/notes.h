/* SPDX-License-Identifier: ISC */
/*
 * What stands under a written recipe: the host's tips, readings that tamis
 * had to infer, and cautions for the foods in it.
 */
#ifndef TAMIS_NOTES_H
#define TAMIS_NOTES_H

#include "house/house.h"

/* In the order they are printed; *count is set. Where the dish was rescaled, what
 * was not. Cautions are the rows of the table `cautions` whose topic is the group
 * of an ingredient, or what the house has in their place. */
struct str *notes_of(
    struct arena *a, const struct dish *d, const struct house *h, size_t *count);

#endif
