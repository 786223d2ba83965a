/* SPDX-License-Identifier: ISC */
/*
 * Taking things out of a part of a dish.
 */
#include "base/part.h"

void
part_drop_ingredient(struct part *p, size_t at)
{
	for (size_t i = 0; i < p->steps; i++) {
		struct step *s = &p->step[i];
		size_t kept = 0;

		for (size_t u = 0; u < s->uses; u++)
			if (s->use[u] != at)
				s->use[kept++] = s->use[u] - (s->use[u] > at);
		s->uses = kept;
	}
	for (size_t i = at; i + 1 < p->ingredients; i++)
		p->ingredient[i] = p->ingredient[i + 1];
	p->ingredients--;
}

void
part_drop_step(struct part *p, size_t at)
{
	for (size_t i = at; i + 1 < p->steps; i++)
		p->step[i] = p->step[i + 1];
	p->steps--;
}
