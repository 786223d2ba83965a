/* SPDX-License-Identifier: ISC */
/*
 * An episode on its way into the archive. For src/archive/ only.
 */
#ifndef TAMIS_KEEP_H
#define TAMIS_KEEP_H

#include "archive/pack.h"
#include "archive/passage.h"
#include "archive/store.h"

struct keeper {
	struct archive *archive;
	const struct grammar *grammar;
	const struct parcel *parcel;
	struct arena *scratch;
	struct spots spots;
	int64_t episode; /* its row; 0 not yet known */
	int64_t *dish;   /* the rows of the entries: [0] around the dishes */
	struct {
		struct str date, video_url;
	} before; /* of the episode that this one replaces */
};

/* rows.c: the dish (-1: around the dishes) with all it is made of. */
bool keep_dish(struct keeper *k, int dish, struct err *e);
/* rows.c: measures, findings and practices. */
bool keep_flat(struct keeper *k, struct err *e);

/* The texts of the episode, and its row. */
bool keep_unpack(struct archive *a, struct arena *arena, struct str name, int64_t *id,
    struct packed *out, struct err *e);

#endif
