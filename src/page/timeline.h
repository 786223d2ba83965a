/* SPDX-License-Identifier: ISC */
/*
 * The episode as two pictures, drawn with SVG: along its own clock, and along
 * the cook's.
 */
#ifndef TAMIS_TIMELINE_H
#define TAMIS_TIMELINE_H

#include "page/ties.h"

/* "As told": where each dish and part is spoken of, and the queries. Nothing
 * for a script without times. */
void told_put(struct buf *out, const struct ties *t);
/* "At the stove": a bar for every timed step of every dish, with its
 * temperature. Nothing where no step has a time. */
void stove_put(struct buf *out, const struct ties *t);

/* One picture around what was drawn; label is escaped. */
struct lanes;
void picture_put(struct buf *out, const struct lanes *l, struct str label);

#endif
