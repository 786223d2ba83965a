/* SPDX-License-Identifier: ISC */
/*
 * The grammar files built into the program. The Makefile makes the table from
 * everything under grammars/ that ends in .lex, .gram or .tsv.
 */
#ifndef TAMIS_EMBEDDED_H
#define TAMIS_EMBEDDED_H

#include "base/str.h"

struct embedded_file {
	const char *name; /* relative to grammars/: "en/foods.lex" */
	struct str data;
};

extern const struct embedded_file tamis_embedded[]; /* ends with a NULL name */

#endif
