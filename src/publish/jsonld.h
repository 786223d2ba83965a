/* SPDX-License-Identifier: ISC */
/*
 * One dish as structured data, for pages that carry it along.
 */
#ifndef TAMIS_JSONLD_H
#define TAMIS_JSONLD_H

#include "tamis.h"

/* One JSON object and a line feed. */
void jsonld_put_dish(struct buf *out, const struct draft *d, const struct grammar *g,
    const struct tamis_style *style, size_t dish);

#endif
