/* SPDX-License-Identifier: ISC */
/*
 * Text cut into the words that the search index has: folded, without accents,
 * stemmed. For src/archive/ only.
 */
#ifndef TAMIS_TOKENS_H
#define TAMIS_TOKENS_H

#include "archive/store.h"

struct token {
	struct str stem;
	struct span at; /* bytes of the text */
};
struct tokens {
	struct arena *arena; /* set this first */
	VEC(struct token) token;
};

/* Adds those of the text. */
void tokens_cut(struct archive *a, struct str text, struct tokens *out);

/* A word or phrase of a question. */
struct phrase {
	struct tokens tokens; /* none: nothing in it can be looked for */
	bool open;            /* "tac*": the last word goes on */
};
struct phrase phrase_cut(struct archive *a, struct arena *arena, struct str text);
/* How many tokens of the text, from the i-th on, are the phrase; 0 none. */
size_t phrase_at(const struct phrase *p, const struct tokens *text, size_t i);

#endif
