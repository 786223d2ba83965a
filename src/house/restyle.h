/* SPDX-License-Identifier: ISC */
/*
 * The draft as the house wants it; tamis_restyle() of tamis.h.
 */
#ifndef TAMIS_RESTYLE_H
#define TAMIS_RESTYLE_H

#include "house/house.h"

struct draft *restyle_draft(
    const struct draft *d, const struct grammar *g, const struct tamis_style *style);

#endif
