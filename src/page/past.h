/* SPDX-License-Identifier: ISC */
/*
 * The archive as a page.
 */
#ifndef TAMIS_PAST_H
#define TAMIS_PAST_H

#include "archive/archive.h"

/* The whole document. */
void past_put(struct buf *out, const struct survey *s);

/* dots.c: the habits of a quantity as one picture, a line of dots each, and the
 * same as a table; nothing where there is none. */
void dots_put(struct buf *out, const struct survey *s, enum quantity quantity);

#endif
