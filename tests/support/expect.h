/* SPDX-License-Identifier: ISC */
/*
 * Texts that the tests compare, and rows that they walk.
 */
#ifndef TAMIS_TESTS_EXPECT_H
#define TAMIS_TESTS_EXPECT_H

#include "base/buf.h"

#define COUNT(rows) (sizeof(rows) / sizeof *(rows))

/* Fails with both texts where they differ; want NULL: the empty text. */
#define expect(got, want) expect_at((got), (want), __FILE__, __LINE__)
/* The same of what a buffer holds, which is empty afterwards. */
#define expect_taken(b, want) expect_taken_at((b), (want), __FILE__, __LINE__)

void expect_at(struct str got, const char *want, const char *file, int line);
void expect_taken_at(struct buf *b, const char *want, const char *file, int line);

/* True where the words stand in the text; no words stand in any. */
bool has(struct str text, const char *words);

#endif
