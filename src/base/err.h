/* SPDX-License-Identifier: ISC */
/*
 * What failed in the world: a file, a grammar, a database, usage. Passed as
 * the last argument; the call returns false if and only if it set it. The
 * first error is kept. What is odd in a script is never an err.
 */
#ifndef TAMIS_ERR_H
#define TAMIS_ERR_H

#include <stdbool.h>
#include <stdint.h>

struct err {
	bool set;
	char where[256];       /* file, or what was being done; may be empty */
	uint32_t line, column; /* from 1; 0 where there is none */
	char text[512];        /* what failed and what to do about it */
};

/* Sets *e unless it is set already; always returns false. */
__attribute__((format(printf, 3, 4))) bool err_set(
    struct err *e, const char *where, const char *fmt, ...);
/* The same, with the place inside the file; `at` is {line, column}. */
struct err_place {
	uint32_t line, column;
};
__attribute__((format(printf, 4, 5))) bool err_set_at(
    struct err *e, const char *where, struct err_place at, const char *fmt, ...);

#endif
