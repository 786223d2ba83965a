/* SPDX-License-Identifier: ISC */
/*
 * Running script text to cues: stamped paragraphs, written lists, headings,
 * numbered steps. Plain text and Markdown both go through here, a block of
 * lines at a time. For src/read only.
 */
#ifndef TAMIS_PROSE_H
#define TAMIS_PROSE_H

#include "read/build.h"
#include "read/label.h"
#include "read/stamp.h"

struct prose {
	struct build *build;
	bool marked;           /* Markdown: marks come off, lines of a paragraph join */
	bool stamped;          /* the file has stamps somewhere */
	bool bare;             /* a time without brackets may be a stamp */
	bool started;          /* past the first stamp */
	bool begun;            /* past the first line */
	bool titled;           /* has a title */
	int64_t at_ms, end_ms; /* of the last stamp; end_ms -1 unknown */
	enum section section;  /* of the heading above */
	int level;             /* of that heading: 1 the highest */
	bool numbered;         /* most lines of the run at hand have a step's number */
	int step;              /* the last step's number; 0 none */
	size_t unended;        /* the first cue that the next stamp ends */
	struct str speaker;    /* of words that don't say it; empty unknown */
};

/* Looks through the whole text for stamps and their style. */
void prose_init(struct prose *p, struct build *b, bool marked);
/* n lines, none blank, that stand together; more is true when text follows. */
void prose_block(struct prose *p, const struct span *line, size_t n, bool more);
/* A heading without its marks; may start with a stamp. level: 1 the highest;
 * 0 where nothing but its words tells. */
void prose_heading(struct prose *p, struct span words, int level);
/* Moves the clock to a stamp at `where`, with a note where that is odd. */
void prose_stamp(struct prose *p, const struct stamp *s, struct span where);
/* Words said now, with a speaker or a label ("SUPER: ") in front or without;
 * in a cue of their own if anew or labelled, else behind the open cue's. */
void prose_speak(struct prose *p, struct span words, bool anew);
/* A cue of that kind now, without words yet. */
struct cue prose_cue(const struct prose *p, enum cue_kind kind);
/* Appends words to the open cue. */
void prose_put(struct prose *p, struct span words);

#endif
