/* SPDX-License-Identifier: ISC */
/*
 * Three texts that say much the same (a script, its passages, its draft) as one
 * deflated block (RFC 1951), and back. For src/archive/ only.
 */
#ifndef TAMIS_PACK_H
#define TAMIS_PACK_H

#include "archive/archive.h"

struct packed {
	struct str source, passages, json;
	struct str region, profile, answers; /* as they were given; not in the block */
};

struct str pack_deflate(struct arena *arena, const struct packed *p);
/* The lengths that *out has are those that went in; the texts are set. False
 * when the block is not what it should be. */
bool pack_inflate(struct arena *arena, struct str block, struct packed *out);

/* JSON without the blanks between its tokens. */
struct str pack_json(struct arena *arena, struct str json);

#endif
