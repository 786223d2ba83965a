/* SPDX-License-Identifier: ISC */
/*
 * The arena: one owner for everything an episode (or a grammar) is made of.
 * Allocation never returns NULL; when memory is gone the process ends with
 * status 3 and a message. In sanitizer builds each allocation is its own block.
 */
#ifndef TAMIS_ARENA_H
#define TAMIS_ARENA_H

#include "base/str.h"

struct arena_block;
struct arena {
	struct arena_block *head;
	size_t used, room; /* in the head block, bytes */
};

void arena_init(struct arena *a);
/* Frees everything that was allocated; the arena can be used again. */
void arena_release(struct arena *a);

/* count * size zeroed bytes, aligned for any type. */
void *arena_alloc(struct arena *a, size_t count, size_t size);
/* A copy of old[0..old_count) with room for count; old may be NULL. */
void *arena_grow(
    struct arena *a, const void *old, size_t old_count, size_t count, size_t size);
/* A copy of s, NUL-ended one past its end for the C library's sake. */
struct str arena_str(struct arena *a, struct str s);
/* printf into the arena; the result is NUL-ended. */
__attribute__((format(printf, 2, 3))) struct str arena_fmt(
    struct arena *a, const char *fmt, ...);

#define arena_new(a, type) ((type *)arena_alloc((a), 1, sizeof(type)))
#define arena_array(a, count, type) ((type *)arena_alloc((a), (count), sizeof(type)))

/*
 * A growable array in an arena: declare with VEC(type) name; push with
 * vec_push(arena, &name, value). Items move when it grows, so keep indexes.
 */
#define VEC(type)                                                                          \
	struct {                                                                           \
		type *v;                                                                   \
		size_t n, room;                                                            \
	}

#define vec_reserve(a, vec, extra)                                                         \
	((vec)->n + (extra) <= (vec)->room                                                 \
		? (void)0                                                                  \
		: (void)((vec)->v = arena_grow((a), (vec)->v, (vec)->n,                    \
			     vec_room((vec)->room, (vec)->n + (extra)), sizeof *(vec)->v), \
		      (vec)->room = vec_room((vec)->room, (vec)->n + (extra))))

#define vec_push(a, vec, ...) (vec_reserve(a, vec, 1), (vec)->v[(vec)->n++] = __VA_ARGS__)

/* The next capacity that holds `need` items. */
static inline size_t
vec_room(size_t room, size_t need)
{
	size_t next = room ? room * 2 : 8;

	return next < need ? need : next;
}

#endif
