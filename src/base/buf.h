/* SPDX-License-Identifier: ISC */
/*
 * A text under construction, in an arena. Cannot fail. Any layer may use this.
 */
#ifndef TAMIS_BUF_H
#define TAMIS_BUF_H

#include "base/arena.h"

struct buf {
	struct arena *arena; /* set this first */
	char *v;
	size_t n, room;
};

static inline struct buf
buf_in(struct arena *a)
{
	return (struct buf){.arena = a};
}

void buf_put(struct buf *b, struct str s);
void buf_put_char(struct buf *b, char c);
void buf_put_z(struct buf *b, const char *z);
__attribute__((format(printf, 2, 3))) void buf_fmt(struct buf *b, const char *fmt, ...);

/* What was put so far; valid until the next put. */
static inline struct str
buf_str(const struct buf *b)
{
	return (struct str){b->v, b->n};
}

#endif
