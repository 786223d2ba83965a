/* SPDX-License-Identifier: ISC */
/*
 * Raising a finding, and finding out which dish, part and step a place of the
 * script belongs to.
 */
#include "check/finding.h"

#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>

static struct str
text_of(struct arena *a, const char *fmt, va_list args)
{
	char line[1024];
	int n = vsnprintf(line, sizeof line, fmt, args);

	if (n < 0)
		n = 0;
	if ((size_t)n >= sizeof line)
		n = (int)sizeof line - 1;
	return arena_str(a, (struct str){line, (size_t)n});
}

struct finding *
finding_raise(struct check *k, struct place at, struct spot spot, const char *fmt, ...)
{
	struct finding f = {.kind = k->kind,
	    .severity = k->kind->severity,
	    .dish = spot.dish,
	    .part = spot.part,
	    .step = spot.step,
	    .place = at};
	va_list args;

	va_start(args, fmt);
	f.message = text_of(k->arena, fmt, args);
	va_end(args);
	vec_push(k->arena, &k->finding, f);
	return &k->finding.v[k->finding.n - 1];
}

void
finding_relate(struct check *k, struct place at, const char *fmt, ...)
{
	struct finding *f = &k->finding.v[k->finding.n - 1];
	va_list args;

	f->related = arena_grow(
	    k->arena, f->related, f->relateds, f->relateds + 1, sizeof *f->related);
	va_start(args, fmt);
	f->related[f->relateds].message = text_of(k->arena, fmt, args);
	va_end(args);
	f->related[f->relateds++].place = at;
}

static void
add_mark(struct check *k, struct place thing, int dish, int part, int step)
{
	vec_push(k->arena, &k->mark, (struct mark){thing.span.beg, {dish, part, step}});
}

static void
mark_part(struct check *k, const struct part *p, int dish, int part)
{
	for (size_t i = 0; i < p->ingredients; i++)
		for (size_t u = 0; u < p->ingredient[i].uses; u++)
			add_mark(k, p->ingredient[i].use[u], dish, part, -1);
	for (size_t i = 0; i < p->steps; i++)
		add_mark(k, p->step[i].place, dish, part, (int)i);
}

static int
order_marks(const void *left, const void *right)
{
	const struct mark *a = left, *b = right;
	int by = (a->beg > b->beg) - (a->beg < b->beg);

	if (by == 0)
		by = a->spot.dish - b->spot.dish;
	if (by == 0)
		by = a->spot.part - b->spot.part;
	return by ? by : a->spot.step - b->spot.step;
}

void
finding_index(struct check *k)
{
	const struct draft *d = k->draft;

	for (size_t i = 0; i < d->dishes; i++) {
		add_mark(k, d->dish[i].place, (int)i, -1, -1);
		for (size_t p = 0; p < d->dish[i].parts; p++)
			mark_part(k, &d->dish[i].part[p], (int)i, (int)p);
	}
	if (k->mark.n)
		qsort(k->mark.v, k->mark.n, sizeof *k->mark.v, order_marks);
}

struct spot
finding_spot(const struct check *k, struct place at)
{
	size_t low = 0, high = k->mark.n;

	while (low < high) {
		size_t mid = low + (high - low) / 2;

		if (k->mark.v[mid].beg <= at.span.beg)
			low = mid + 1;
		else
			high = mid;
	}
	return low ? k->mark.v[low - 1].spot : (struct spot){-1, -1, -1};
}

struct str
finding_words(const struct check *k, uint32_t beg, uint32_t end)
{
	if (!k->draft->script || end <= beg || end > k->draft->script->source.n)
		return STR("");
	return str_cut(k->draft->script->source, beg, end);
}
