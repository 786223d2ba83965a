/* SPDX-License-Identifier: ISC */
/*
 * Deflating with zlib. The passages and the draft repeat the script's words, so
 * the three together take little more room than the script alone.
 */
#include "archive/pack.h"

#define ZLIB_CONST
#include <zlib.h>

enum { LEVEL = 6, RAW = -15, MEMORY = 8 };

static void *
zlib_alloc(void *arena, unsigned count, unsigned size)
{
	return arena_alloc(arena, count, size);
}

static void
zlib_free(void *arena, void *p)
{
	(void)arena;
	(void)p;
}

/* zlib's own memory, for as long as one block takes. */
static z_stream
stream_in(struct arena *work)
{
	return (z_stream){.zalloc = zlib_alloc, .zfree = zlib_free, .opaque = work};
}

/* The texts as one; zlib takes no more than 4 GiB at a time, and a script has
 * at most some MiB. */
static struct str
join(struct arena *work, const struct packed *p)
{
	struct buf b = buf_in(work);

	vec_reserve(work, &b, p->source.n + p->passages.n + p->json.n);
	buf_put(&b, p->source);
	buf_put(&b, p->passages);
	buf_put(&b, p->json);
	return buf_str(&b);
}

struct str
pack_deflate(struct arena *arena, const struct packed *p)
{
	struct arena work;
	struct str all, block;
	z_stream z;

	arena_init(&work);
	all = join(&work, p);
	z = stream_in(&work);
	deflateInit2(&z, LEVEL, Z_DEFLATED, RAW, MEMORY, Z_DEFAULT_STRATEGY);
	block.n = deflateBound(&z, (uLong)all.n);
	z.next_in = (const Bytef *)all.p;
	z.avail_in = (uInt)all.n;
	z.next_out = arena_alloc(&work, block.n, 1);
	z.avail_out = (uInt)block.n;
	block.p = (const char *)z.next_out;
	deflate(&z, Z_FINISH);
	block.n = z.total_out;
	block = arena_str(arena, block);
	arena_release(&work);
	return block;
}

bool
pack_inflate(struct arena *arena, struct str block, struct packed *out)
{
	size_t n = out->source.n + out->passages.n + out->json.n;
	char *all = arena_alloc(arena, n + 1, 1);
	struct arena work;
	z_stream z;
	bool ok;

	arena_init(&work);
	z = stream_in(&work);
	z.next_in = (const Bytef *)block.p;
	z.avail_in = (uInt)block.n;
	z.next_out = (Bytef *)all;
	z.avail_out = (uInt)n + 1;
	ok = inflateInit2(&z, RAW) == Z_OK && inflate(&z, Z_FINISH) == Z_STREAM_END &&
	     z.total_out == n;
	arena_release(&work);
	all[n] = '\0';
	out->source.p = all;
	out->passages.p = all + out->source.n;
	out->json.p = out->passages.p + out->passages.n;
	return ok;
}

struct str
pack_json(struct arena *arena, struct str json)
{
	char *out = arena_alloc(arena, json.n + 1, 1);
	size_t n = 0;
	bool quoted = false;

	for (size_t i = 0; i < json.n; i++) {
		char c = json.p[i];

		if (!quoted && is_blank(c))
			continue;
		if (c == '"')
			quoted = !quoted;
		out[n++] = c;
		if (quoted && c == '\\' && i + 1 < json.n)
			out[n++] = json.p[++i];
	}
	return (struct str){out, n};
}
