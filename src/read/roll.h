/* SPDX-License-Identifier: ISC */
/*
 * Rolling captions: each shows lines of the one before again and adds to
 * them. For src/read only.
 */
#ifndef TAMIS_ROLL_H
#define TAMIS_ROLL_H

#include "read/caption.h"

/* Moves `kept` of each caption past the words that the caption before it has
 * shown already. */
void roll_undo(struct captions *c);

#endif
