/* SPDX-License-Identifier: ISC */
/*
 * The same amount in the other system of measures, rounded to what a kitchen
 * can weigh out or pour: what stands in brackets in an ingredient list.
 */
#ifndef TAMIS_EQUIVALENT_H
#define TAMIS_EQUIVALENT_H

#include "tamis.h"

/* "6⅓ cups" for 1.5 litres, "14 oz" for 400 g, "125 g" for a cup whose
 * `metric` is known. Nothing for spoons, counts, and what can't be told. */
void equivalent_put(struct buf *b, const struct amount *said, const struct amount *metric);
/* The size of a package or a piece, in both systems: "400 g/14 oz". */
void equivalent_put_size(struct buf *b, const struct amount *size);

#endif
