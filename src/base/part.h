/* SPDX-License-Identifier: ISC */
/*
 * Taking things out of a part of a dish. Any layer may use this.
 */
#ifndef TAMIS_PART_H
#define TAMIS_PART_H

#include "tamis.h"

/* Takes an ingredient out, and its index out of the uses of every step. */
void part_drop_ingredient(struct part *p, size_t at);
/* Takes a step out. */
void part_drop_step(struct part *p, size_t at);

#endif
