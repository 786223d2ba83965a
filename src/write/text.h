/* SPDX-License-Identifier: ISC */
/*
 * Phrases of a written recipe that every format for people shares: titles,
 * the line under them, ingredient lines. Nothing is escaped here: a writer
 * escapes each phrase for its format (escape.h).
 */
#ifndef TAMIS_TEXT_H
#define TAMIS_TEXT_H

#include "house/house.h"

/* Sentence case: "leek and barley soup" becomes "Leek and barley soup". */
void text_title(struct buf *b, struct str name);
/* The dish's title; "Untitled dish" where it has no name. */
void text_dish_title(struct buf *b, const struct dish *d);
/* How many it serves is known, and not only what it makes. */
bool text_is_served(const struct dish *d);
/* "Serves 4", "Makes 12 cookies"; nothing where no yield is known. */
void text_yield(struct buf *b, const struct house *h, const struct dish *d);
/* "50 minutes, 40 of them unattended"; the host's own claim where the steps
 * give no total: "said to take 30 minutes"; nothing where neither is known. */
void text_time(struct buf *b, const struct house *h, const struct dish *d);
/* "2 (400 g/14 oz) cans", "1½ cups"; nothing where no amount is said. */
void text_quantity(struct buf *b, const struct house *h, const struct ingredient *in);
/* What stands behind it: "butter"; "eggs" for an egg doubled; "egg plus 1 tbsp
 * beaten egg" where the quantity was 1. */
void text_item(struct buf *b, const struct house *h, const struct ingredient *in);
/* And what goes in brackets: "about 3 tbsp"; or nothing. */
void text_other(struct buf *b, const struct house *h, const struct ingredient *in);
/* "½ tsp wasabi", an alternative of the ingredient. */
void text_alternative(struct buf *b, const struct house *h, const struct ingredient *in,
    const struct alternative *a);
/* The whole line: "40 g butter (about 3 tbsp), softened, divided". */
void text_ingredient(struct buf *b, const struct house *h, const struct ingredient *in);
/* The ingredient's note, with "divided" where its amount is used in parts. */
void text_note(struct buf *b, const struct ingredient *in);
/* Where a step is said, as a time code; nothing where the script has none. */
void text_cue(struct buf *b, const struct place *p);
/* Whether degrees are given, and not just a heat level. */
bool text_has_degrees(const struct temperature *t);

#endif
