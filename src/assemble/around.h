/* SPDX-License-Identifier: ISC */
/*
 * The words around a measure. Included by measures.c.
 */
#ifndef TAMIS_AROUND_H
#define TAMIS_AROUND_H

#include "clause/maker.h"

/* "about", "up to", "or so" stand outside the words of a measure; "a good hour"
 * and "five or so minutes" inside. Sets approximate and bound. */
void around_look(const struct maker *m, const struct node *n, struct measure *x);
/* "a cup, that's 240 mils"; "350 (180 C)": b is a in another unit. */
bool around_converts(const struct maker *m, const struct said *a, const struct said *b);

#endif
