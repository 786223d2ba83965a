/* SPDX-License-Identifier: ISC */
/*
 * Accents fall away, apostrophes too; all else that is no letter parts words.
 */
#include "base/slug.h"

#include "base/fold.h"

void
slug_put(struct buf *b, struct str name, size_t most)
{
	struct str folded = fold_word(b->arena, name);
	size_t start = b->n;
	bool gap = false;

	for (size_t i = 0; i < folded.n; i++) {
		char c = folded.p[i];

		if (c == '\'')
			continue;
		if (!is_lower(c) && !is_digit(c)) {
			gap = true;
			continue;
		}
		if (b->n - start + 1 + (gap && b->n > start) > most)
			break;
		if (gap && b->n > start)
			buf_put_char(b, '-');
		buf_put_char(b, c);
		gap = false;
	}
}
