/* SPDX-License-Identifier: ISC */
/*
 * The words of passages, as the archive lists them. For src/archive/ only.
 */
#ifndef TAMIS_PARCEL_H
#define TAMIS_PARCEL_H

#include "archive/archive.h"

struct word_list {
	struct str *v; /* folded, sorted, each once */
	size_t n;
};
struct word_list words_of_passages(struct arena *arena, struct str passages);
bool word_list_has(const struct word_list *w, struct str word);

#endif
