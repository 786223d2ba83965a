/* SPDX-License-Identifier: ISC */
/*
 * How text for a person goes to the terminal: colours, and text made safe to
 * print. For cli/ alone.
 */
#ifndef TAMIS_LOOK_H
#define TAMIS_LOOK_H

#include "base/buf.h"

struct look {
	bool colour;
	size_t width; /* columns */
};

/* That of standard output: colour on a terminal where NO_COLOR is unset; its
 * width, 100 where it has none. */
struct look look_stdout(void);

enum paint {
	PAINT_NONE,
	PAINT_STRONG,
	PAINT_ERROR,
	PAINT_WARNING,
	PAINT_NOTE,
	PAINT_DISH,
	PAINT_STEP,
	PAINT_EQUIPMENT,
	PAINT_INGREDIENT,
	PAINT_DONENESS,
	PAINT_MEASURE,
	PAINTS
};

/* Starts a colour; PAINT_NONE ends it. Nothing without colour. */
void look_paint(struct buf *b, const struct look *look, enum paint paint);

/* Puts the character at s.p[0..] so that no terminal acts on it: a control
 * becomes a space, a byte that is no UTF-8 a U+FFFD. Returns its bytes. */
size_t look_put_char(struct buf *b, struct str s);

/* The same for all of s. */
void look_put(struct buf *b, struct str s);

/* s in lines of at most `width` columns, each after `indent` spaces. */
void look_put_wrapped(struct buf *b, struct str s, size_t indent, size_t width);

/* How far a long run is: one line on standard error, where that is a terminal. */
struct progress {
	bool shown;
	const char *doing; /* "kept" */
	size_t done, all;
	double begun, drawn; /* seconds */
};

void progress_begin(struct progress *p, const char *doing, size_t all);
/* One more is done. */
void progress_step(struct progress *p);
/* Leaves the line blank for what is printed next. */
void progress_clear(struct progress *p);

#endif
