/* SPDX-License-Identifier: ISC */
/*
 * Names as parts of file names. Any layer may use this.
 */
#ifndef TAMIS_SLUG_H
#define TAMIS_SLUG_H

#include "base/buf.h"

/* Puts at most `most` lower-case ASCII letters, digits and hyphens: "Crème brûlée,
 * again!" as "creme-brulee-again". Nothing where the name has no such letters. No
 * hyphen at either end, no two in a row. */
void slug_put(struct buf *b, struct str name, size_t most);

#endif
