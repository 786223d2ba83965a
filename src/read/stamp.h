/* SPDX-License-Identifier: ISC */
/*
 * Times as scripts write them, and the head of a script line: its stamp and
 * who speaks. For src/read only.
 */
#ifndef TAMIS_STAMP_H
#define TAMIS_STAMP_H

#include "base/str.h"

enum clock {
	CLOCK_NONE,
	CLOCK_READ,
	CLOCK_BEYOND /* a time, but past 99 hours */
};

/* "1:20", "01:02:03.500", "10:00:05:12" (frames are left out) at t[*at]; on
 * success moves *at past it. *ms is set for CLOCK_READ only. */
enum clock clock_read(struct str t, size_t *at, int64_t *ms);

struct stamp {
	int64_t beg_ms, end_ms; /* end_ms -1 where only a start is given */
	size_t end;             /* past the brackets, in bytes of the line */
	bool bracketed;
	bool beyond; /* past 99 hours: beg_ms does not hold */
};

/* "[0:21]", "(0:21 - 0:47)", "**00:00:10 --> 00:00:14**" at line[at]. */
bool stamp_read(struct str line, size_t at, struct stamp *out);

struct head {
	bool stamped;
	struct stamp stamp;
	bool turn;           /* ">>": someone else speaks */
	struct span speaker; /* in the line; empty none */
	size_t words;        /* where the words begin, in the line */
};

/* "HOST [1:20]: text", "0:21 - Anna: Text", "[Music] >> text", "text" */
struct head head_read(struct str line);

#endif
