/* SPDX-License-Identifier: ISC */
/*
 * The catalogue of findings.def, and the run of all its checks over a draft:
 * raised, put in script order, each fact once.
 */
#include "check/check.h"

#include <stdlib.h>

#include "check/finding.h"

#define FINDING(name, code, severity, summary, explain) FINDING_##name,
enum finding_id {
#include "findings.def"
	CHECKS
};
#undef FINDING

#define FINDING(name, code, severity, summary, explain) {code, severity, summary, explain},
#define PAST_FINDING FINDING
static const struct finding_kind finding_kinds[] = {
#include "findings.def"
};
#undef FINDING
enum { FINDINGS = sizeof finding_kinds / sizeof *finding_kinds };

#define FINDING(name, code, severity, summary, explain) check_##name,
static void (*const checks[])(struct check *) = {
#include "findings.def"
};
#undef FINDING

static int
order_u32(uint32_t a, uint32_t b)
{
	return (a > b) - (a < b);
}

/* Script order; at one place, table order. */
static int
order_findings(const void *left, const void *right)
{
	const struct finding *a = left, *b = right;
	int by = order_u32(a->place.span.beg, b->place.span.beg);

	if (by == 0 && a->kind != b->kind)
		by = a->kind < b->kind ? -1 : 1;
	if (by == 0)
		by = order_u32(a->place.span.end, b->place.span.end);
	return by ? by : str_order(a->message, b->message);
}

/* Two findings of one kind at overlapping words speak of one fact: the first
 * stays. */
static size_t
drop_repeats(struct finding *f, size_t n)
{
	const struct finding *last[FINDINGS] = {NULL};
	size_t kept = 0;

	for (size_t i = 0; i < n; i++) {
		size_t kind = (size_t)(f[i].kind - finding_kinds);
		uint32_t beg = f[i].place.span.beg;

		if (last[kind] &&
		    (beg == last[kind]->place.span.beg || beg < last[kind]->place.span.end))
			continue;
		f[kept] = f[i];
		last[kind] = &f[kept++];
	}
	return kept;
}

const struct finding_kind *
tamis_finding_kind(size_t index)
{
	return index < FINDINGS ? &finding_kinds[index] : NULL;
}

static bool
code_in(const char *code, const char *codes)
{
	struct str rest = str_of(codes);

	while (rest.p)
		if (str_is_z(str_trim(str_next(&rest, ',')), code))
			return true;
	return false;
}

void
tamis_select(struct draft *d, const struct tamis_selection *s)
{
	size_t kept = 0;

	for (size_t i = 0; i < d->findings; i++) {
		const char *code = d->finding[i].kind->code;

		if (d->finding[i].severity < s->lowest ||
		    (s->only && !code_in(code, s->only)) ||
		    (s->except && code_in(code, s->except)))
			continue;
		d->finding[kept++] = d->finding[i];
	}
	d->findings = kept;
}

void
check_spot(const struct draft *d, const struct grammar *g, struct finding *f)
{
	struct check k = {.draft = d, .grammar = g, .arena = d->arena};
	struct spot spot;

	finding_index(&k);
	spot = finding_spot(&k, f->place);
	f->dish = spot.dish;
	f->part = spot.part;
	f->step = spot.step;
}

void
check_draft(struct draft *d, const struct grammar *g)
{
	struct check k = {.draft = d, .grammar = g, .arena = d->arena};

	finding_index(&k);
	for (size_t i = 0; i < CHECKS; i++) {
		k.kind = &finding_kinds[i];
		checks[i](&k);
	}
	if (k.finding.n)
		qsort(k.finding.v, k.finding.n, sizeof *k.finding.v, order_findings);
	d->finding = k.finding.v;
	d->findings = drop_repeats(k.finding.v, k.finding.n);
}
