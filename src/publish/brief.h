/* SPDX-License-Identifier: ISC */
/*
 * Steps in few words, for chapter titles and descriptions.
 */
#ifndef TAMIS_BRIEF_H
#define TAMIS_BRIEF_H

#include "base/buf.h"

/* The first sentence without its full stop; where it takes more than `most`
 * characters, the words that fit and an ellipsis. */
void brief_sentence(struct buf *b, struct str text, size_t most);
/* As many whole sentences as fit, and an ellipsis for what is left out; at
 * least the first, cut as above. */
void brief_text(struct buf *b, struct str text, size_t most);

#endif
