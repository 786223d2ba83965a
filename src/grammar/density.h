/* SPDX-License-Identifier: ISC */
/*
 * What foods weigh, by grammars/tables/densities.tsv. A food has rows for its
 * forms (chopped, sifted); the words around it choose one.
 */
#ifndef TAMIS_DENSITY_H
#define TAMIS_DENSITY_H

#include "tamis.h"

struct density {
	struct ratio grams; /* of one of the unit that was asked for */
	struct str form;    /* of the food in that row; empty: as it is bought */
	bool named;         /* the words name the form */
};

/* Grams of one u, a unit of volume, of the food; words are what is said of it:
 * "softened", "sifted". False where the table has no such food. */
bool density_volume(const struct grammar *g, struct str food, struct str words,
    const struct unit *u, struct density *out);
/* Grams of one piece: "each", "clove", "stick". */
bool density_piece(const struct grammar *g, struct str food, struct str words,
    struct str piece, struct density *out);

#endif
