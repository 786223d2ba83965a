/* SPDX-License-Identifier: ISC */
/*
 * What title.c and opening.c ask of single words of a name.
 */
#ifndef TAMIS_TITLE_H
#define TAMIS_TITLE_H

#include "outline/opening.h"

const struct token *title_token(const struct chart *c, uint32_t i);
bool title_token_is(const struct chart *c, uint32_t i, const char *class_name);
/* The entry's lexeme in a class; NULL without. */
const struct lexeme *title_lexeme(
    const struct chart *c, const struct entry *e, const char *class_name);
/* Words that a title does without: "our", "a quick", "regular old". */
bool title_drops(const struct chart *c, uint32_t i);
bool title_names_food(const struct chart *c, uint32_t beg, uint32_t end);

#endif
