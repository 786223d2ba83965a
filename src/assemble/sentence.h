/* SPDX-License-Identifier: ISC */
/*
 * Writing the sentence of one clause. Included by sentence.c and steps.c.
 */
#ifndef TAMIS_SENTENCE_H
#define TAMIS_SENTENCE_H

#include "assemble/maker.h"

enum { MENTIONS_MAX = 16 };

/* A sentence under construction. Set maker, loose_talk, pending and divided;
 * the rest is sentence_write's own. */
struct writing {
	const struct maker *m;
	bool loose_talk;    /* a script without punctuation: cut what trails */
	struct str pending; /* foods just brought in, which "it" or "them" means */
	bool used_pending;
	/* True where the food is used in parts, so that its amount is printed. */
	bool (*divided)(const struct writing *w, const struct mention *x);
	const struct part *part;
	bool sets_heat; /* "turn the heat to medium" */
	const struct level *top;
	struct buf out;
	uint32_t end;
	size_t anchor; /* length of `out` at the last thing understood */
	struct str food[MENTIONS_MAX];
	size_t foods;
	bool comma, internal, bare_time;
};

/* The sentence without a full stop, capitalised; `verb` in its base form. */
struct str sentence_write(struct writing *w, const struct clause *q, struct str verb);
/* The verb that a recipe prints for an action: "put" for "pop". */
struct str written_verb(struct arena *a, const struct lexeme *action);

/* Milliseconds of a duration's min or max. */
int64_t ms_of(const struct amount *a, bool max);
/* The scale of a temperature, inferred where none was said. */
const struct unit *scale_of(const struct maker *m, const struct said *s, bool internal);

#endif
