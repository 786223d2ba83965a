/* SPDX-License-Identifier: ISC */
/*
 * The names of files in a package: "recipes.md", "card-2-soda-bread.html".
 */
#include "base/slug.h"
#include "tamis.h"

enum { SLUG_MOST = 40 };

void
tamis_package_name(
    struct buf *b, const struct writer *w, const struct draft *d, size_t dish)
{
	struct buf slug = buf_in(b->arena);

	buf_put_z(b, w->package);
	if (w->per_dish) {
		slug_put(&slug, d->dish->name, SLUG_MOST);
		buf_fmt(b, "-%zu%s", dish + 1, slug.n ? "-" : "");
		buf_put(b, buf_str(&slug));
	}
	buf_fmt(b, ".%s", w->extension);
}
