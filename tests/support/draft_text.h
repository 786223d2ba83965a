/* SPDX-License-Identifier: ISC */
/*
 * Drafts for the tests of the checks, written as text: one thing to a
 * statement, statements parted by ';', words by blanks, '_' for a blank inside
 * a word. Every thing stands 200 bytes behind the one before it.
 *
 *   region uk
 *   profile us-retail
 *   dish roast_chicken serves=4 total=90m claim=60m
 *   part gravy
 *   food chicken-thigh poultry 3 pound said=3:pound,2:pound listed note=to_taste
 *   step bake heat in=oven heats t=350F d=40-45m use=0,1 cue=golden inside=165F
 *   temp 350F appliance bare        (a measure: also amount, time)
 *   tool loaf_tin tin size=9:inch
 *   yield 6 serving
 *   remark 0 raw-marinade the_words
 */
#ifndef TAMIS_TEST_DRAFT_TEXT_H
#define TAMIS_TEST_DRAFT_TEXT_H

#include "grammar/grammar.h"
#include "tamis.h"

/* The draft, without findings. Ends the test where the text is wrong. */
struct draft *draft_of_text(struct arena *a, const struct grammar *g, const char *text);

/* A grammar with the tables that are built in and no words: all that checks
 * read. Released with its arena. */
void draft_text_tables(struct grammar *g);

#endif
