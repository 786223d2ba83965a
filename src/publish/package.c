/* SPDX-License-Identifier: ISC */
/*
 * The names of files in a package: "recipes.md", "card-2-soda-bread.html".
 */
#include "tamis.h"

enum { SLUG_MOST = 40 };

/* Lower-case ASCII letters and digits, hyphens for what is between them. */
static void
put_slug(struct buf *b, struct str name)
{
	size_t start = b->n;
	bool gap = false;

	for (size_t i = 0; i < name.n && b->n - start < SLUG_MOST; i++) {
		char c = to_lower(name.p[i]);

		if (!is_lower(c) && !is_digit(c)) {
			gap = true;
			continue;
		}
		if (gap || b->n == start)
			buf_put_char(b, '-');
		buf_put_char(b, c);
		gap = false;
	}
}

void
tamis_package_name(
    struct buf *b, const struct writer *w, const struct draft *d, size_t dish)
{
	buf_put_z(b, w->package);
	if (w->per_dish) {
		buf_fmt(b, "-%zu", dish + 1);
		put_slug(b, d->dish->name);
	}
	buf_fmt(b, ".%s", w->extension);
}
