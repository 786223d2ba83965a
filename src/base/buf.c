/* SPDX-License-Identifier: ISC */
/*
 * A text under construction: amortised appending in an arena.
 */
#include "base/buf.h"

#include <stdarg.h>
#include <stdio.h>

static void
reserve(struct buf *b, size_t extra)
{
	size_t room;

	if (b->n + extra <= b->room)
		return;
	room = vec_room(b->room < 64 ? 64 : b->room, b->n + extra);
	b->v = arena_grow(b->arena, b->v, b->n, room, 1);
	b->room = room;
}

void
buf_put(struct buf *b, struct str s)
{
	if (s.n == 0)
		return;
	reserve(b, s.n);
	memcpy(b->v + b->n, s.p, s.n);
	b->n += s.n;
}

void
buf_put_char(struct buf *b, char c)
{
	reserve(b, 1);
	b->v[b->n++] = c;
}

void
buf_put_z(struct buf *b, const char *z)
{
	buf_put(b, str_of(z));
}

void
buf_fmt(struct buf *b, const char *fmt, ...)
{
	va_list ap, again;
	int n;

	va_start(ap, fmt);
	va_copy(again, ap);
	n = vsnprintf(NULL, 0, fmt, ap);
	va_end(ap);
	reserve(b, (size_t)n + 1);
	vsnprintf(b->v + b->n, (size_t)n + 1, fmt, again);
	va_end(again);
	b->n += (size_t)n;
}
