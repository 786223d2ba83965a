/* SPDX-License-Identifier: ISC */
/*
 * Which things of the draft the value of an answer goes into, by the code that
 * it answers: the table at the end.
 */
#include "answer/target.h"

bool
target_misfit(struct target *t, const char *wanted)
{
	t->x->misfit = true;
	answers_complain(t->w, t->x->place, SEVERITY_ERROR,
	    "\"%.*s\" is no answer to %s: give %s", (int)t->x->value.n, t->x->value.p,
	    t->f->kind->code, wanted);
	return false;
}

static bool
overlap(struct place a, struct place b)
{
	return a.span.end > 0 && a.span.beg < b.span.end && b.span.beg < a.span.end;
}

/* The finding's place, or one that it names beside it. */
bool
target_is_about(const struct target *t, struct place p)
{
	bool any = overlap(t->f->place, p);

	for (size_t i = 0; i < t->f->relateds; i++)
		any = any || overlap(t->f->related[i].place, p);
	return any;
}

bool
target_missing(struct target *t, const char *what)
{
	answers_complain(t->w, t->x->place, SEVERITY_WARNING,
	    "there is no %s at these words that the answer could go into", what);
	t->x->misfit = true;
	return false;
}

struct dish *
target_dish(const struct target *t)
{
	return t->f->dish >= 0 && (size_t)t->f->dish < t->w->d->dishes
		   ? &t->w->d->dish[t->f->dish]
		   : NULL;
}

struct part *
target_part(const struct target *t)
{
	struct dish *d = target_dish(t);

	return d && t->f->part >= 0 && (size_t)t->f->part < d->parts ? &d->part[t->f->part]
								     : NULL;
}

/* The step that begins last before the end of the words. */
static struct step *
step_before(struct part *p, struct place place)
{
	struct step *found = NULL;

	for (size_t i = 0; i < p->steps; i++)
		if (p->step[i].place.span.beg < place.span.end)
			found = &p->step[i];
	return found;
}

struct step *
target_step(const struct target *t)
{
	struct part *p = target_part(t);

	if (p && t->f->step < 0)
		return step_before(p, t->f->place);
	return p && (size_t)t->f->step < p->steps ? &p->step[t->f->step] : NULL;
}

bool
value_is_amount(const struct value *v)
{
	return v->measured && (v->kind == MEASURE_AMOUNT || v->kind == MEASURE_COUNT) &&
	       v->amount.known;
}

/* What is said at the place is a temperature, a time or an amount. */
static bool
apply_by_kind(struct target *t)
{
	if (t->v.measured && t->v.kind == MEASURE_TEMPERATURE)
		return apply_degrees(t);
	if (t->v.measured && t->v.kind == MEASURE_DURATION)
		return apply_time(t);
	if (!value_is_amount(&t->v))
		return target_misfit(t, "the value that is meant, with its unit");
	return apply_amount(t);
}

bool
answer_apply(struct answers *w, struct answer *x, const struct finding *f)
{
	static const struct {
		const char *code;
		bool (*apply)(struct target *);
		bool judged; /* the new value is checked like one that is said */
	} rows[] = {
	    {"missing-temperature", apply_setting, true},
	    {"missing-scale", apply_degrees, false},
	    {"missing-preheat", apply_preheat, false},
	    {"missing-time", apply_time, false},
	    {"missing-doneness", apply_doneness, false},
	    {"missing-amount", apply_amount, false},
	    {"missing-size", apply_size, false},
	    {"missing-yield", apply_yield, false},
	    {"vague-amount", apply_amount, false},
	    {"unlisted-ingredient", apply_amount, false},
	    {"unused-ingredient", apply_unused, false},
	    {"conflicting-amount", apply_amount, false},
	    {"conflicting-temperature", apply_degrees, false},
	    {"conflicting-time", apply_time, false},
	    {"conflicting-yield", apply_yield, false},
	    {"implausible-amount", apply_amount, true},
	    {"implausible-temperature", apply_degrees, true},
	    {"implausible-time", apply_time, true},
	    {"below-safe-temperature", apply_doneness, true},
	    {"time-claim", apply_claim, true},
	    {"unit-mismatch", apply_by_kind, false},
	    {"ambiguous-unit", apply_by_kind, false},
	    {"self-correction", apply_by_kind, false},
	    {"reversed-range", apply_by_kind, false},
	    {"possible-mishearing", apply_by_kind, false},
	};
	struct target t = {w, x, f, value_read(w, x->value)};

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
		if (strcmp(rows[i].code, f->kind->code) == 0) {
			x->judged = rows[i].judged;
			return rows[i].apply(&t);
		}
	return apply_note(&t);
}
