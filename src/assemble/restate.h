/* SPDX-License-Identifier: ISC */
/*
 * Conversions that are said. Only measures.c includes this.
 */
#ifndef TAMIS_RESTATE_H
#define TAMIS_RESTATE_H

#include "clause/maker.h"

/* The second measure says the first once more, whether the two agree or not. */
bool restates(const struct maker *m, const struct said *a, const struct said *b);

#endif
