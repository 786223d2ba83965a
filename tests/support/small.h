/* SPDX-License-Identifier: ISC */
/*
 * Small grammars for the tests, written as text.
 */
#ifndef TAMIS_TESTS_SMALL_H
#define TAMIS_TESTS_SMALL_H

#include "grammar/grammar.h"

/* What the files of a grammar hold; NULL: no such file. */
struct small {
	const char *lex;   /* en/small.lex */
	const char *gram;  /* en/small.gram */
	const char *units; /* tables/units.tsv */
};

/* Writes the files below the build folder and opens them there; NULL and *e set
 * where the grammar is wrong. Ends the test where they can't be written. */
struct grammar *small_open(struct arena *a, const struct small *s, struct err *e);

#endif
