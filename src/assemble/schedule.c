/* SPDX-License-Identifier: ISC */
/*
 * The time a dish takes: its timed steps one after the other, those beside
 * another once; the unattended ones told from the rest.
 */
#include "clause/maker.h"

struct sums {
	int64_t total, passive, beside;
	bool any;
};

static void
add_step(struct sums *s, const struct step *step)
{
	int64_t ms = step->duration.max_ms;

	if (!step->duration.present || !step->duration.known || ms <= 0)
		return;
	s->any = true;
	if (step->beside) {
		s->beside += ms;
		return;
	}
	s->total += ms;
	if (step->passive)
		s->passive += ms;
}

static void
dish_times(struct dish *d)
{
	struct sums s = {0};

	for (size_t k = 0; k < d->parts; k++)
		for (size_t i = 0; i < d->part[k].steps; i++)
			add_step(&s, &d->part[k].step[i]);
	if (!s.any)
		return;
	d->total_ms = s.total > s.beside ? s.total : s.beside;
	d->active_ms = d->total_ms - s.passive;
}

static void
dish_stretch(struct maker *m, size_t dish)
{
	struct dish *d = &m->d->dish[dish];

	for (size_t i = 0; i < m->clause.n; i++) {
		const struct cue *c = &m->s->cue[m->clause.v[i].cue];

		if (m->clause.v[i].dish != (int)dish)
			continue;
		if (c->end_ms > d->end_ms)
			d->end_ms = c->end_ms;
		else if (c->beg_ms > d->end_ms)
			d->end_ms = c->beg_ms;
	}
}

void
schedule_make(struct maker *m)
{
	for (size_t i = 0; i < m->d->dishes; i++) {
		dish_times(&m->d->dish[i]);
		dish_stretch(m, i);
	}
}
