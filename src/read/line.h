/* SPDX-License-Identifier: ISC */
/*
 * Cutting decoded text into lines, and what a written line looks like from
 * the outside: a bullet, a step number, a leading amount. For src/read only.
 */
#ifndef TAMIS_LINE_H
#define TAMIS_LINE_H

#include "base/str.h"

/* Bytes of the white space character outside ASCII at t[at]; 0 none. */
size_t blank_wide(struct str t, size_t at);
/* Bytes of the white space character at t[at], Unicode or control; 0 none. */
static inline size_t
blank_length(struct str t, size_t at)
{
	unsigned char c;

	if (at >= t.n)
		return 0;
	c = (unsigned char)t.p[at];
	return c < 0x80 ? c <= ' ' || c == 0x7F : blank_wide(t, at);
}
/* The first place from at on, before end, that is not blank; or end. */
size_t blank_skip(struct str t, size_t at, size_t end);
/* span without blanks at either end. */
struct span span_trim(struct str t, struct span s);
static inline struct str
span_str(struct str t, struct span s)
{
	return str_cut(t, s.beg, s.end);
}

/* Whether t[at..] starts with the bytes of z. */
static inline bool
starts_at(struct str t, size_t at, const char *z)
{
	if (at >= t.n || t.p[at] != z[0])
		return at <= t.n && !z[0];
	return str_starts(str_cut(t, at, t.n), str_of(z));
}

/* Lines end with LF, CR LF or CR; set text first. */
struct lines {
	struct str text;
	size_t at;
	bool empty; /* the last line had not even blanks */
};
/* The next line, trimmed, which may be empty; false at the end. */
bool lines_next(struct lines *l, struct span *line);

/* Whether a line is a whole number of up to 9 digits and nothing else. */
bool line_is_number(struct str line);

struct look {
	size_t item;  /* bytes of the bullet alone */
	int step;     /* the number of a step written in digits; 0 none */
	size_t mark;  /* bytes of bullet or step number in front of the words */
	bool bullet;  /* "- ", "* ", a round or square bullet, a tick box */
	bool number;  /* "1) ", "2. ", "Step 3: " */
	bool amount;  /* the words start with a digit or a fraction */
	bool ends;    /* with a full stop, an exclamation or a question mark */
	bool colon;   /* ends with a colon */
	bool rule;    /* no letter and no digit: a drawn line */
	size_t words; /* after the mark */
	size_t head;  /* of these, those before the first comma or bracket */
};
/* line is trimmed. */
struct look line_look(struct str line);
/* Its mark alone, which begins with a bullet; 0 where none does. */
size_t line_bullet(struct str line);

#endif
