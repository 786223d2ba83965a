/* SPDX-License-Identifier: ISC */
/*
 * Whether all places, ranges and indexes of a draft are sound.
 */
#ifndef TAMIS_TESTS_SPANS_H
#define TAMIS_TESTS_SPANS_H

#include "tamis.h"

/* What is wrong with the first that is; NULL when nothing is. */
const char *spans_wrong(const struct draft *d);

#endif
