/* SPDX-License-Identifier: ISC */
/*
 * The arena: blocks chained newest first, bump allocation in the newest.
 */
#include "base/arena.h"

#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>

#if defined(__SANITIZE_ADDRESS__)
#define OWN_BLOCK_EACH 1
#elif defined(__has_feature)
#if __has_feature(address_sanitizer)
#define OWN_BLOCK_EACH 1
#endif
#endif
#ifndef OWN_BLOCK_EACH
#define OWN_BLOCK_EACH 0
#endif

enum { BLOCK = 64 * 1024, ALIGN = 16 };

struct arena_block {
	struct arena_block *next;
	_Alignas(ALIGN) char data[];
};

static _Noreturn void
out_of_memory(void)
{
	fputs("tamis: out of memory; nothing was written\n", stderr);
	_Exit(3);
}

void
arena_init(struct arena *a)
{
	*a = (struct arena){0};
}

void
arena_release(struct arena *a)
{
	struct arena_block *next;

	for (struct arena_block *b = a->head; b; b = next) {
		next = b->next;
		free(b);
	}
	arena_init(a);
}

static void
add_block(struct arena *a, size_t room)
{
	struct arena_block *b = calloc(1, sizeof *b + room);

	if (!b)
		out_of_memory();
	b->next = a->head;
	a->head = b;
	a->used = 0;
	a->room = room;
}

void *
arena_alloc(struct arena *a, size_t count, size_t size)
{
	size_t bytes;
	void *p;

	if (size && count > (SIZE_MAX / 2) / size)
		out_of_memory();
	bytes = (count * size + ALIGN - 1) / ALIGN * ALIGN;
	if (OWN_BLOCK_EACH) {
		add_block(a, count * size);
		return a->head->data;
	}
	if (!a->head || a->room - a->used < bytes)
		add_block(a, bytes > BLOCK ? bytes : BLOCK);
	p = a->head->data + a->used;
	a->used += bytes;
	return p;
}

void *
arena_grow(struct arena *a, const void *old, size_t old_count, size_t count, size_t size)
{
	void *p = arena_alloc(a, count, size);

	if (old && old_count)
		memcpy(p, old, old_count * size);
	return p;
}

struct str
arena_str(struct arena *a, struct str s)
{
	char *p = arena_alloc(a, s.n + 1, 1);

	if (s.n)
		memcpy(p, s.p, s.n);
	return (struct str){p, s.n};
}

struct str
arena_fmt(struct arena *a, const char *fmt, ...)
{
	va_list ap, again;
	int n;
	char *p;

	va_start(ap, fmt);
	va_copy(again, ap);
	n = vsnprintf(NULL, 0, fmt, ap);
	va_end(ap);
	p = arena_alloc(a, (size_t)n + 1, 1);
	vsnprintf(p, (size_t)n + 1, fmt, again);
	va_end(again);
	return (struct str){p, (size_t)n};
}
