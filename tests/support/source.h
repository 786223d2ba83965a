/* SPDX-License-Identifier: ISC */
/*
 * Files and folders for the tests, the score and the bench.
 */
#ifndef TAMIS_TESTS_SOURCE_H
#define TAMIS_TESTS_SOURCE_H

#include "base/arena.h"
#include "base/err.h"

/* All bytes of a file, NUL-ended one past its end. */
bool source_read(struct arena *a, const char *path, struct str *out, struct err *e);

struct paths {
	struct str *v; /* NUL-ended */
	size_t n;
};

/* What the pattern stands for, sorted by name; none is no error. */
struct paths paths_find(struct arena *a, const char *pattern);
/* "corpus/soup.vtt" of "corpus/soup.gold.tsv"; empty where there is none. */
struct str script_of_gold(struct arena *a, struct str gold);
/* "soup.vtt" of "corpus/soup.vtt". */
const char *file_name(struct str path);

#endif
