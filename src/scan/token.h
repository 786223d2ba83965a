/* SPDX-License-Identifier: ISC */
/*
 * Words and marks of a script, each with its lexicon entry. A token's words
 * are those of the longest lexicon entry that stands there.
 */
#ifndef TAMIS_TOKEN_H
#define TAMIS_TOKEN_H

#include "grammar/grammar.h"

enum token_flag {
	TOKEN_SPACE = 1,   /* a blank stands before it */
	TOKEN_HYPHEN = 2,  /* a hyphen joins it to the token before */
	TOKEN_CAPITAL = 4, /* begins with a capital letter */
	TOKEN_CUE = 8      /* the first of its cue */
};

struct token {
	struct span text;          /* into script.text */
	struct str norm;           /* folded words, one blank between */
	const struct entry *entry; /* never NULL */
	struct ratio number;       /* of digits and vulgar fractions */
	uint32_t cue;
	uint8_t flags;
};

struct tokens {
	VEC(struct token) token;
};

/* Cuts the text of all cues into tokens. Cues that are a unit of their own
 * (headings, list lines, finished paragraphs) are parted by a token of the
 * entry "<break>". */
void tokens_lex(
    struct tokens *t, const struct grammar *g, const struct script *s, struct arena *a);

#endif
