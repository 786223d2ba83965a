/* SPDX-License-Identifier: ISC */
/*
 * Source bytes in any of the encodings that scripts come in, to UTF-8, with
 * the way back to the bytes. For src/read only.
 */
#ifndef TAMIS_DECODE_H
#define TAMIS_DECODE_H

#include "base/arena.h"

struct decoded {
	struct str text;    /* UTF-8, without a byte order mark */
	const uint32_t *at; /* source offset of each text byte and of the end; or NULL */
	uint32_t base;      /* where at is NULL: the source offset of text[0] */
	const char *oddity; /* what did not decode and what was done; NULL nothing */
	struct span odd;    /* the first such source bytes */
};

/* UTF-8 with or without a byte order mark, UTF-16 with one; where the bytes
 * are no UTF-8, Windows-1252, or UTF-8 with strays if most of it is UTF-8. */
struct decoded decode(struct arena *a, struct str source);

/* Bytes of the UTF-8 character at s[at]; 0 where there is no valid one. */
size_t utf8_length(struct str s, size_t at);
/* Writes cp to out and returns its 1 to 4 bytes; what is no character becomes
 * U+FFFD. */
size_t utf8_encode(uint32_t cp, char out[4]);
/* The character of a Windows-1252 byte; U+FFFD for the five unassigned ones. */
uint32_t windows_1252(unsigned char byte);

#endif
