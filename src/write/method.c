/* SPDX-License-Identifier: ISC */
/*
 * The steps of a dish in one order over all its parts: a merge of the parts.
 */
#include "write/method.h"

/* The part whose next step is said first; d->parts when all are through. */
static size_t
next_part(const struct dish *d, const size_t *at)
{
	size_t best = d->parts;
	uint32_t first = UINT32_MAX;

	for (size_t i = 0; i < d->parts; i++) {
		if (at[i] == d->part[i].steps)
			continue;
		if (best < d->parts && d->part[i].step[at[i]].place.span.beg >= first)
			continue;
		best = i;
		first = d->part[i].step[at[i]].place.span.beg;
	}
	return best;
}

struct method_step *
method_steps(struct arena *a, const struct dish *d, size_t *count)
{
	size_t *at = arena_array(a, d->parts + 1, size_t);
	VEC(struct method_step) out = {0};
	size_t i;

	while ((i = next_part(d, at)) < d->parts) {
		const struct part *part = &d->part[i];
		const struct step *step = &part->step[at[i]++];
		bool opens = out.n == 0 || out.v[out.n - 1].part != part;

		if (str_trim(step->text).n)
			vec_push(a, &out, (struct method_step){part, step, opens});
	}
	*count = out.n;
	return out.v;
}
