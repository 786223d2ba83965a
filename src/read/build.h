/* SPDX-License-Identifier: ISC */
/*
 * Where readers put what they find: cues made of source slices, which are
 * kept as they are, and of replacements for source slices. White space
 * collapses to one space; every text byte stays tied to its source bytes.
 * Spans handed in are of the decoded text. For src/read only.
 */
#ifndef TAMIS_BUILD_H
#define TAMIS_BUILD_H

#include "read/decode.h"
#include "tamis.h"

enum { CUE_CAP = 200000 };

struct build {
	struct arena *arena;
	struct str text; /* decoded; what readers read */
	struct decoded decoded;
	struct buf words; /* becomes script.text */
	VEC(struct piece) piece;
	VEC(struct cue) cue;
	VEC(struct diagnostic) diagnostic;
	struct cue open; /* the cue being built */
	bool is_open, over_cap;
	struct span gap; /* source of the white space before the next word; empty none */
};

/* words: the decoded source; outlives b. */
void build_init(struct build *b, struct arena *a, struct decoded words);
/* Starts a cue; text is filled in by what follows. Ends the open one. */
void build_begin(struct build *b, struct cue cue);
/* Appends a slice as written. Nothing where no cue is open. */
void build_put(struct build *b, struct span words);
/* Appends `as` in the place of a slice; copied. */
void build_put_as(struct build *b, struct span slice, struct str as);
/* Separates what was put from what comes, as white space would. */
void build_gap(struct build *b, struct span slice);
/* Ends the open cue; false where none was open or it had no words: no cue. */
bool build_end(struct build *b);
/* Records what was odd about a slice and what was done; so many, then no more. */
__attribute__((format(printf, 3, 4))) void build_note(
    struct build *b, struct span slice, const char *fmt, ...);
/* The same about source bytes, whatever the decoded text. */
void build_note_source(struct build *b, struct span source, const char *text);
/* Hands everything over to the script: text, cues, pieces, length, title. */
void build_finish(struct build *b, struct script *s);

static inline struct str
build_str(const struct build *b, struct span s)
{
	return str_cut(b->text, s.beg, s.end);
}

#endif
