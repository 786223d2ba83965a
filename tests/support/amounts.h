/* SPDX-License-Identifier: ISC */
/*
 * Values as the tests write them: exact, a range with two points between.
 *
 *     5/2        10..15 minute        2 teaspoon        ? cup
 */
#ifndef TAMIS_TESTS_AMOUNTS_H
#define TAMIS_TESTS_AMOUNTS_H

#include "tamis.h"

void amounts_put_range(struct buf *b, struct ratio min, struct ratio max);
/* "?" for an amount without a number; the unit's name only where it has one. */
void amounts_put(struct buf *b, const struct amount *a);

#endif
