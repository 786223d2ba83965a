/* SPDX-License-Identifier: ISC */
/*
 * The passages of an episode: every text that is searched or shown, a line each,
 * in the form that the archive keeps. For src/archive/ only.
 *
 *   d 0 25000 25000 plum jam
 *   c 0 25000 59000 Jam first, then. A kilo and a half of plums, halved ...
 *
 * with tabs between: kind, entry (the dish by its order; -1 around the dishes),
 * where it begins and ends in ms (-1 unknown), text.
 */
#ifndef TAMIS_PASSAGE_H
#define TAMIS_PASSAGE_H

#include "archive/archive.h"

/* In the order of the columns of entry_text. PASSAGE_MORE are words that belong
 * to the ingredients but are not shown. */
enum passage_kind {
	PASSAGE_NAME,
	PASSAGE_PART,
	PASSAGE_FOOD,
	PASSAGE_GEAR,
	PASSAGE_ACT,
	PASSAGE_STEP,
	PASSAGE_SAID,
	PASSAGE_TITLE,
	PASSAGE_COLUMNS,
	PASSAGE_MORE = PASSAGE_COLUMNS
};

struct passage {
	enum passage_kind kind;
	int entry;
	int64_t beg_ms, end_ms;
	struct str text;
};

struct str passages_of_draft(struct arena *arena, const struct draft *d);
/* Cuts the next line off *rest; false at the end. */
bool passage_next(struct str *rest, struct passage *out);
/* The texts of an entry's columns, lines joined by '\n'. */
void passage_columns(struct arena *arena, struct str passages, int entry,
    struct str column[PASSAGE_COLUMNS]);

/* What each place of the script belongs to. */
struct spots {
	struct spot_mark *v; /* sorted */
	size_t n;
	size_t dishes;
};
struct spots spots_of_draft(struct arena *arena, const struct draft *d);
/* The dish whose thing begins last at or before the source byte; -1 none. */
int spot_of(const struct spots *s, uint32_t at);

#endif
