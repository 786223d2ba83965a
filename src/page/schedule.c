/* SPDX-License-Identifier: ISC */
/*
 * When each timed step of a dish runs, by the same rules as the dish's total.
 */
#include "page/schedule.h"

#include "write/method.h"

/* What an unknown night takes on the drawing, where nothing else has a time. */
enum { NIGHT_MS = 60 * 60 * 1000, NIGHT_PART = 4 };

static int64_t
night_of(const struct dish *d)
{
	return d->total_ms > 0 ? d->total_ms / NIGHT_PART + 1 : NIGHT_MS;
}

struct schedule
schedule_of(struct arena *a, const struct dish *d)
{
	struct schedule s = {0};
	VEC(struct bar) bars = {0};
	size_t n;
	const struct method_step *m = method_steps(a, d, &n);
	int64_t now = 0, before = 0;

	for (size_t i = 0; i < n; i++) {
		const struct duration *time = &m[i].step->duration;
		bool open = time->present && !time->known;
		int64_t takes = open ? night_of(d) : time->max_ms;
		int64_t from = m[i].step->beside ? before : now;

		if (!time->present || takes <= 0)
			continue;
		vec_push(a, &bars,
		    (struct bar){(size_t)(m[i].part - d->part),
			(size_t)(m[i].step - m[i].part->step), from, from + takes, open});
		before = from;
		if (from + takes > now)
			now = from + takes;
	}
	s.bar = bars.v;
	s.bars = bars.n;
	s.end_ms = now;
	return s;
}
