/* SPDX-License-Identifier: ISC */
/*
 * What a video needs so that it says what the recipe says: one pickup for each
 * error and warning that is open or answered.
 */
#ifndef TAMIS_PICKUP_H
#define TAMIS_PICKUP_H

#include "tamis.h"

struct pickup {
	const struct finding *finding;
	bool record; /* the words are wrong; else something is missing */
	bool safety; /* somebody could be hurt, and the words don't defer to advice */
	int64_t in_ms, out_ms; /* of the sentence; -1 where the script has no times */
	struct str said;       /* the sentence */
	struct str line;       /* to be said in its place; empty where not known */
	struct str caption;    /* to be shown; empty where not known */
	struct str correction; /* as a reader of the comments needs it; or empty */
};

/* In script order; *count is set. */
struct pickup *pickups_of(struct arena *a, const struct draft *d, size_t *count);

#endif
