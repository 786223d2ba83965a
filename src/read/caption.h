/* SPDX-License-Identifier: ISC */
/*
 * Captions of any timed format on their way to cues: sound notes go, speakers
 * are found, words that rolling captions show again are said once. For
 * src/read only.
 */
#ifndef TAMIS_CAPTION_H
#define TAMIS_CAPTION_H

#include "read/build.h"

/* A run of displayed words. */
struct bit {
	struct span at; /* decoded slice */
	struct str as;  /* what stands for it; as.p NULL: the slice itself */
	int64_t ms;     /* the inline stamp in force; -1 none */
	uint32_t voice; /* index into captions.voice; 0 unknown */
};

/* A place in the displayed words. */
struct cursor {
	size_t bit, at;
};

enum { ROLL_LINES = 4 };

struct caption {
	int64_t beg_ms, end_ms;
	size_t bit, bits;
	struct cursor line[ROLL_LINES]; /* starts of its last lines, line i in i % 4 */
	size_t lines;
	struct cursor kept; /* where its new words begin, once rolling is undone */
	size_t again;       /* words before that */
	bool inlined;       /* has inline stamps */
};

struct captions {
	struct build *build;
	VEC(struct caption) caption;
	VEC(struct bit) bit;
	VEC(struct str) voice;
	int64_t beg_ms;    /* of the last caption; -1 unknown */
	int64_t last_ms;   /* its end, or its start where it has none */
	int64_t ms;        /* inline stamp in force */
	uint32_t now;      /* voice in force */
	bool at_line_head; /* nothing but blanks since the line began */
};

void captions_init(struct captions *c, struct build *b);
/* Starts a caption. line: its timing line, noted where the times are odd:
 * unread (-1), end before start, earlier than the caption before. */
void caption_begin(struct captions *c, struct span line, int64_t beg_ms, int64_t end_ms);
/* Words as written, with the line breaks that are displayed. */
void caption_put(struct captions *c, struct span words);
/* `as` in the place of a slice; copied. */
void caption_put_as(struct captions *c, struct span slice, struct str as);
/* Who says what follows in this caption; an empty name is someone else. */
void caption_voice(struct captions *c, struct str name);
/* When what follows is said. */
void caption_stamp(struct captions *c, int64_t ms);
/* Undoes rolling and makes the cues. */
void captions_finish(struct captions *c);

#endif
