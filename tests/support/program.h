/* SPDX-License-Identifier: ISC */
/*
 * Running the built program from a test, as a shell would.
 */
#ifndef TAMIS_TESTS_PROGRAM_H
#define TAMIS_TESTS_PROGRAM_H

#include "base/arena.h"

struct ran {
	int status;     /* of the exit; -1 where it did not exit by itself */
	struct str out; /* standard output; NUL-ended */
};

/* The build folder: $B, or "build"; absolute. */
struct str build_folder(struct arena *a);
/* `cd folder && env tamis arguments`, by the shell; arguments may redirect. */
struct ran program_run(
    struct arena *a, const char *folder, const char *env, const char *arguments);

#endif
