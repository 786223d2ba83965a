/* SPDX-License-Identifier: ISC */
/*
 * Prints values exactly, for comparing with what a test expects.
 */
#include "amounts.h"

#include <inttypes.h>

static void
put_ratio(struct buf *b, struct ratio r)
{
	buf_fmt(b, "%" PRId64, r.num);
	if (r.den != 1)
		buf_fmt(b, "/%" PRId64, r.den);
}

void
amounts_put_range(struct buf *b, struct ratio min, struct ratio max)
{
	put_ratio(b, min);
	if (ratio_order(min, max) == 0)
		return;
	buf_put_z(b, "..");
	put_ratio(b, max);
}

void
amounts_put(struct buf *b, const struct amount *a)
{
	if (a->known)
		amounts_put_range(b, a->min, a->max);
	else
		buf_put_char(b, '?');
	if (a->unit && a->unit->name.n)
		buf_fmt(b, " %.*s", (int)a->unit->name.n, a->unit->name.p);
}
