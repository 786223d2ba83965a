/* SPDX-License-Identifier: ISC */
/*
 * Matches answers to findings, puts them in, and gives findings their status.
 */
#include "answer/answer.h"

#include <stdlib.h>

#include "answer/answers.h"
#include "check/check.h"
#include "clause/maker.h"

enum { NEAR_MS = 2000 };

/* ---- which finding an answer is to ---------------------------------------- */

static bool
is_taken(const struct answers *w, size_t finding, const struct answer *by)
{
	for (size_t i = 0; i < w->answer.n; i++)
		if (&w->answer.v[i] != by && !w->answer.v[i].asked &&
		    w->answer.v[i].finding == (int)finding)
			return true;
	return false;
}

/* The answer quotes the finding's words, or names its dish. */
static bool
speaks_of(const struct answers *w, const struct answer *x, const struct finding *f)
{
	return words_fit(x->words, said_words(w->a, w->d->script, f)) ||
	       (f->part < 0 && f->dish >= 0 &&
		   words_fit(x->words, w->d->dish[f->dish].name));
}

/* The finding of the code with the words; of several, the nearest in time. */
static int
find_finding(const struct answers *w, const struct answer *x)
{
	int64_t best = INT64_MAX;
	int found = -1;

	for (size_t i = 0; i < w->d->findings; i++) {
		const struct finding *f = &w->d->finding[i];
		int64_t far = f->place.at_ms > x->at_ms ? f->place.at_ms - x->at_ms
							: x->at_ms - f->place.at_ms;

		if (!str_is_z(x->code, f->kind->code) || far >= best || is_taken(w, i, x) ||
		    !speaks_of(w, x, f))
			continue;
		best = far;
		found = (int)i;
	}
	return found;
}

static const struct answer *
answered_before(const struct answers *w, const struct answer *x)
{
	for (const struct answer *y = w->answer.v; y < x; y++)
		if (!y->asked && !x->asked && str_is(y->code, x->code) &&
		    str_is(y->words, x->words) && y->at_ms - x->at_ms < NEAR_MS &&
		    x->at_ms - y->at_ms < NEAR_MS)
			return y;
	return NULL;
}

/* Nothing is asked there. Where the words still stand, the value holds all the
 * same; where they do not, somebody has to look. */
static void
take_unasked(struct answers *w, struct answer *x)
{
	struct finding f = {.dish = -1, .part = -1, .step = -1};
	const struct answer *before = answered_before(w, x);

	if (before) {
		answers_complain(w, x->place, SEVERITY_WARNING,
		    "line %u answers this already; the line is left out",
		    before->place.line);
		return;
	}
	if (!words_find(w->d->script, x->words, x->at_ms, &f.place)) {
		answers_complain(w, x->place, SEVERITY_WARNING,
		    "fits nothing: the script has no \"%.*s\" any more. Take the line out, "
		    "or say it of other words",
		    (int)x->words.n, x->words.p);
		return;
	}
	for (size_t i = 0; (f.kind = tamis_finding_kind(i)); i++)
		if (str_is_z(x->code, f.kind->code))
			break;
	f.place.at_ms = x->at_ms;
	check_spot(w->d, w->g, &f);
	if (x->stet) {
		answers_complain(w, x->place, SEVERITY_NOTE,
		    "%.*s is not asked of \"%.*s\" any more", (int)x->code.n, x->code.p,
		    (int)x->words.n, x->words.p);
		return;
	}
	if (answer_apply(w, x, &f))
		answers_complain(w, x->place, SEVERITY_NOTE,
		    "%.*s is not asked of \"%.*s\" any more; the answer is taken all the "
		    "same",
		    (int)x->code.n, x->code.p, (int)x->words.n, x->words.p);
}

static void
take_answers(struct answers *w)
{
	for (size_t i = 0; i < w->answer.n; i++)
		if (!w->answer.v[i].asked)
			w->answer.v[i].finding = find_finding(w, &w->answer.v[i]);
	for (size_t i = 0; i < w->answer.n; i++) {
		struct answer *x = &w->answer.v[i];

		if (x->asked)
			continue;
		if (x->finding < 0)
			take_unasked(w, x);
		else if (!x->stet)
			answer_apply(w, x, &w->d->finding[x->finding]);
	}
}

/* ---- status ------------------------------------------------------------------ */

static bool
is_same_fact(const struct finding *a, const struct finding *b)
{
	struct span p = a->place.span, q = b->place.span;

	return a->kind == b->kind && p.beg < q.end && q.beg < p.end;
}

static bool
is_raised_again(const struct draft *d, const struct finding *f)
{
	for (size_t i = 0; i < d->findings; i++)
		if (is_same_fact(&d->finding[i], f))
			return true;
	return false;
}

static void
take_out(struct draft *d, const struct finding *f)
{
	size_t kept = 0;

	for (size_t i = 0; i < d->findings; i++)
		if (!is_same_fact(&d->finding[i], f))
			d->finding[kept++] = d->finding[i];
	d->findings = kept;
}

static void
put_in(struct answers *w, const struct finding *f)
{
	struct draft *d = w->d;
	size_t at = 0;

	while (at < d->findings && d->finding[at].place.span.beg <= f->place.span.beg)
		at++;
	d->finding =
	    arena_grow(w->a, d->finding, d->findings, d->findings + 1, sizeof *d->finding);
	for (size_t i = d->findings; i > at; i--)
		d->finding[i] = d->finding[i - 1];
	d->finding[at] = *f;
	d->findings++;
}

/* Answered findings stand among those that the changed draft still raises. An
 * answer that raises the same again is no answer: it stays open. */
static void
settle(struct answers *w, const struct finding *first)
{
	for (size_t i = 0; i < w->answer.n; i++) {
		const struct answer *x = &w->answer.v[i];
		struct finding f;

		if (x->asked || x->finding < 0 || x->misfit)
			continue;
		f = first[x->finding];
		if (!x->stet && x->judged && is_raised_again(w->d, &f))
			continue;
		f.status = x->stet ? STATUS_STET : STATUS_ANSWERED;
		f.answer = x->value;
		take_out(w->d, &f);
		put_in(w, &f);
	}
}

static int
order_problems(const void *left, const void *right)
{
	const struct answer_problem *a = left, *b = right;

	if (a->place.line != b->place.line)
		return a->place.line < b->place.line ? -1 : 1;
	return (a->place.column > b->place.column) - (a->place.column < b->place.column);
}

void
answer_draft(const struct maker *m, struct str text)
{
	struct draft *d = m->d;
	struct answers w = {.m = m, .d = d, .g = m->g, .a = d->arena};
	const struct finding *first = d->finding;

	answers_read(&w, text);
	take_answers(&w);
	for (size_t i = 0; i < w.rename.n; i++)
		answer_rename(&w, &w.rename.v[i]);
	check_draft(d, m->g);
	settle(&w, first);
	if (w.problem.n)
		qsort(w.problem.v, w.problem.n, sizeof *w.problem.v, order_problems);
	d->answer_problem = w.problem.v;
	d->answer_problems = w.problem.n;
}
