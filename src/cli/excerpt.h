/* SPDX-License-Identifier: ISC */
/*
 * The line of the script that a finding is about, with a mark under the
 * words. Only cli/ includes this.
 */
#ifndef TAMIS_EXCERPT_H
#define TAMIS_EXCERPT_H

#include "cli/look.h"
#include "tamis.h"

/* Two lines: the source line that holds the start of `source`, clipped to the
 * width around it, and the mark, followed by `after`. */
void excerpt_put(struct buf *b, const struct script *s, struct span source,
    const struct look *look, struct str after);

#endif
