/* SPDX-License-Identifier: ISC */
/*
 * Dishes, measures and findings against the gold. Each gold row takes the
 * first of ours that fits and isn't taken.
 */
#include "compare.h"

#include "words.h"

#include <math.h>
#include <stdlib.h>

enum { DISH_MS = 15000, MEASURE_MS = 1000, FINDING_MS = 20000 };

static bool
is_near(int64_t a, int64_t b, int64_t within)
{
	return llabs((a < 0 ? 0 : a) - b) <= within;
}

struct gold_value
measured_value(const struct amount *ours)
{
	struct gold_value v = {0};

	v.known = ours->known;
	if (!v.known)
		return v;
	v.min = ratio_double(ours->min);
	v.max = ratio_double(ours->max);
	v.unit = ours->unit ? ours->unit->name : STR("");
	return v;
}

static bool
is_close(double a, double b)
{
	return fabs(a - b) <= 0.005 * fabs(b) + 1e-9;
}

bool
compare_value(const struct gold_value *v, const struct amount *ours)
{
	struct gold_value o = measured_value(ours);

	if (!v->known || !o.known)
		return v->known == o.known;
	return is_close(o.min, v->min) && is_close(o.max, v->max) &&
	       str_is(o.unit, v->unit);
}

struct str
value_text(struct arena *a, const struct gold_value *v)
{
	if (!v->known)
		return STR("-");
	if (v->min == v->max)
		return arena_fmt(a, "%g %.*s", v->min, (int)v->unit.n, v->unit.p);
	return arena_fmt(a, "%g..%g %.*s", v->min, v->max, (int)v->unit.n, v->unit.p);
}

int
compare_dish(const struct match *m, uint64_t number)
{
	for (size_t i = 0; i < m->gold->dish.n; i++)
		if (m->gold->dish.v[i].number == number)
			return m->dish[i];
	return -1;
}

/* ---- dishes ------------------------------------------------------------- */

/* Shares the head word of a name or alias, either way. */
static bool
is_named(struct arena *a, struct str names, struct str ours)
{
	struct str o = words_fold(a, ours);

	while (names.p) {
		struct str name = words_fold(a, str_next(&names, '|'));

		if (words_have(o, words_last(name)) || words_have(name, words_last(o)))
			return true;
	}
	return false;
}

static bool
is_taken(const struct match *m, int ours)
{
	for (size_t i = 0; i < m->gold->dish.n; i++)
		if (m->dish[i] == ours)
			return true;
	return false;
}

static void
pair_dishes(struct match *m, bool by_name, bool by_time)
{
	for (size_t i = 0; i < m->gold->dish.n; i++) {
		const struct gold_dish *g = &m->gold->dish.v[i];

		for (size_t j = 0; j < m->draft->dishes && m->dish[i] < 0; j++) {
			const struct dish *d = &m->draft->dish[j];

			if (is_taken(m, (int)j) ||
			    (by_name && !is_named(m->arena, g->names, d->name)) ||
			    (by_time && !is_near(d->beg_ms, g->at_ms, DISH_MS)))
				continue;
			m->dish[i] = (int)j;
		}
	}
}

static void
slip_dish(struct match *m, bool miss, struct str name, int64_t at_ms)
{
	tally_slip(m->tally, (struct slip){.figure = FIGURE_DISHES,
				 .miss = miss,
				 .at_ms = at_ms,
				 .kind = STR("dish"),
				 .text = name});
}

void
compare_dishes(struct match *m)
{
	m->dish = arena_array(m->arena, m->gold->dish.n, int);
	for (size_t i = 0; i < m->gold->dish.n; i++)
		m->dish[i] = -1;
	pair_dishes(m, true, true);
	for (size_t i = 0; i < m->gold->dish.n; i++)
		if (m->dish[i] >= 0)
			tally_hit(m->tally, FIGURE_DISHES);
		else
			slip_dish(
			    m, true, m->gold->dish.v[i].names, m->gold->dish.v[i].at_ms);
	for (size_t j = 0; j < m->draft->dishes; j++)
		if (!is_taken(m, (int)j))
			slip_dish(
			    m, false, m->draft->dish[j].name, m->draft->dish[j].beg_ms);
	/* A dish of another name or start is a slip, but what is in it counts. */
	pair_dishes(m, true, false);
	pair_dishes(m, false, true);
}

/* ---- measures ----------------------------------------------------------- */

static const char *const kind_name[] = {
    "amount", "count", "temperature", "duration", "length"};
enum { KINDS = sizeof kind_name / sizeof *kind_name };

static struct str
role_name(enum measure_role role)
{
	static const char *const name[] = {"", "appliance", "oil", "liquid", "internal",
	    "ambient", "step", "rest", "claim", "other"};

	return str_of(name[role]);
}

static void
slip_measure(struct match *m, bool miss, struct str kind, struct gold_value v,
    struct str text, int64_t at_ms)
{
	struct arena *a = m->arena;
	struct str value = value_text(a, &v);

	for (size_t k = 0; k < KINDS; k++)
		if (str_is_z(kind, kind_name[k]))
			tally_count(m->tally, FIGURE_KIND + k, miss);
	tally_slip(m->tally,
	    (struct slip){FIGURE_MEASURES, miss, STR(""), at_ms,
		arena_fmt(a, "%.*s %.*s", (int)kind.n, kind.p, (int)v.unit.n, v.unit.p),
		arena_fmt(a, "%.*s %.*s: %.*s", (int)kind.n, kind.p, (int)value.n, value.p,
		    (int)text.n, text.p)});
}

static bool
fits_measure(const struct gold_measure *g, const struct measure *ours)
{
	return str_is_z(g->kind, kind_name[ours->kind]) &&
	       is_near(ours->place.cue_ms, g->at_ms, MEASURE_MS) &&
	       compare_value(&g->value, &ours->value);
}

void
compare_measures(struct match *m)
{
	const struct draft *d = m->draft;
	bool *taken = arena_array(m->arena, d->measures, bool);

	for (size_t i = 0; i < m->gold->measure.n; i++) {
		const struct gold_measure *g = &m->gold->measure.v[i];
		size_t j = 0;

		while (j < d->measures && (taken[j] || !fits_measure(g, &d->measure[j])))
			j++;
		if (j == d->measures) {
			slip_measure(m, true, g->kind, g->value, g->text, g->at_ms);
			continue;
		}
		taken[j] = true;
		tally_hit(m->tally, FIGURE_MEASURES);
		tally_hit(m->tally, FIGURE_KIND + d->measure[j].kind);
		tally_share(
		    &m->tally->roles, str_is(g->role, role_name(d->measure[j].role)));
	}
	for (size_t j = 0; j < d->measures; j++)
		if (!taken[j])
			slip_measure(m, false, str_of(kind_name[d->measure[j].kind]),
			    measured_value(&d->measure[j].value), d->measure[j].text,
			    d->measure[j].place.cue_ms);
}

/* ---- findings ----------------------------------------------------------- */

/* The gold lists errors, warnings, and these notes. */
static bool
is_counted(const struct finding *f)
{
	static const char *const notes[] = {"missing-scale", "self-correction",
	    "missing-size", "raw-ingredient", "possible-mishearing"};

	for (size_t i = 0; i < sizeof notes / sizeof *notes; i++)
		if (strcmp(f->kind->code, notes[i]) == 0)
			return true;
	return f->severity >= SEVERITY_WARNING;
}

static void
slip_finding(struct match *m, bool miss, struct str code, struct str why, int64_t at_ms)
{
	tally_slip(m->tally,
	    (struct slip){FIGURE_FINDINGS, miss, STR(""), at_ms, code,
		arena_fmt(m->arena, "%.*s: %.*s", (int)code.n, code.p, (int)why.n, why.p)});
}

static bool
fits_finding(const struct gold_finding *g, const struct finding *ours)
{
	return str_is_z(g->code, ours->kind->code) &&
	       (is_near(ours->place.cue_ms, g->at_ms, FINDING_MS) ||
		   is_near(ours->place.at_ms, g->at_ms, FINDING_MS));
}

void
compare_findings(struct match *m)
{
	const struct draft *d = m->draft;
	bool *taken = arena_array(m->arena, d->findings, bool);

	for (size_t i = 0; i < m->gold->finding.n; i++) {
		const struct gold_finding *g = &m->gold->finding.v[i];
		size_t j = 0;

		while (j < d->findings && (taken[j] || !fits_finding(g, &d->finding[j])))
			j++;
		if (j == d->findings) {
			slip_finding(m, true, g->code, g->why, g->at_ms);
			continue;
		}
		taken[j] = true;
		tally_hit(m->tally, FIGURE_FINDINGS);
	}
	for (size_t j = 0; j < d->findings; j++)
		if (!taken[j] && is_counted(&d->finding[j]))
			slip_finding(m, false, str_of(d->finding[j].kind->code),
			    d->finding[j].message, d->finding[j].place.cue_ms);
}
