/* SPDX-License-Identifier: ISC */
/*
 * The line of the script that a finding is about, with a mark under the
 * words. For cli/ alone.
 */
#ifndef TAMIS_EXCERPT_H
#define TAMIS_EXCERPT_H

#include "tamis.h"
#include "term/look.h"

/* Two lines: the source line that holds the start of `source`, clipped to the
 * width around it, and the mark, followed by `after`. */
void excerpt_put(struct buf *b, const struct script *s, struct span source,
    const struct look *look, struct str after);

#endif
