/* SPDX-License-Identifier: ISC */
/*
 * Markdown inside a line, and character references: what is left when the
 * marks are taken off. For src/read only.
 */
#ifndef TAMIS_INLINE_H
#define TAMIS_INLINE_H

#include "read/build.h"

/* Appends words to the open cue without emphasis, links, ticks and tags. */
void inline_put(struct build *b, struct span words);

/* "&amp;", "&#189;", "&#xBD;" at t[at]: bytes it takes, 0 where it is none;
 * its UTF-8 in out, *n bytes. */
size_t entity_read(struct str t, size_t at, char out[4], size_t *n);

#endif
