/* SPDX-License-Identifier: ISC */
/*
 * What stands around a word: its clause, its sentence, the foods named before
 * and after it, whether it is meant. For src/remark/ only.
 */
#ifndef TAMIS_CONTEXT_H
#define TAMIS_CONTEXT_H

#include "clause/maker.h"

/* The token that begins at or after a source offset; the number of tokens when
 * none does. */
uint32_t token_from(const struct maker *m, uint32_t source_at);
/* The clause that the token stands in; NULL where none. */
const struct clause *clause_of(const struct maker *m, uint32_t token);
/* The dish and part that the cook is at, -1 before the first. */
struct turn turn_of(const struct maker *m, uint32_t token);

/* The first measure that begins at or after a source offset; their number when
 * none does. */
size_t measure_from(const struct maker *m, uint32_t source_at);

static inline const struct token *
token_of(const struct maker *m, uint32_t token)
{
	return &m->c.tokens.token.v[token];
}

bool token_is(const struct maker *m, uint32_t token, const char *word);
/* The reading as that class; NULL without. */
const struct reading *token_reading(
    const struct maker *m, uint32_t token, const char *class_name);

/* The tokens of the sentence around a token; no more than 60 each way. */
struct span sentence_of(const struct maker *m, uint32_t token);

/* The first food in [from, to), or the last before `to`; `to` where none is. */
uint32_t food_after(const struct maker *m, uint32_t from, uint32_t to);
uint32_t food_before(const struct maker *m, uint32_t from, uint32_t to);
struct str food_group(const struct maker *m, uint32_t token);
/* The lexicon's key of the food: "egg-yolk". */
struct str food_key(const struct maker *m, uint32_t token);

/* "if it says 130": the words depend on what may not be. */
bool is_conditional(const struct maker *m, uint32_t token);
/* Not meant as an instruction: of another cook, told of the past, or forbidden.
 * `own`: the negation right before the token is part of what was matched. */
bool is_taken_back(const struct maker *m, uint32_t token, bool own);

#endif
