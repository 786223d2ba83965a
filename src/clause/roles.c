/* SPDX-License-Identifier: ISC */
/*
 * Gives measures their role, by the clause that each stands in, and temperatures
 * the scale that was not said.
 */
#include "clause/deed.h"

static bool
is_restful(struct str kind)
{
	static const char *const kinds[] = {
	    "rest", "chill", "prove", "soak", "marinate", "store", "preserve"};

	for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++)
		if (str_is_z(kind, kinds[i]))
			return true;
	return false;
}

static enum measure_role
time_role(const struct clause *q, const struct deed *d)
{
	if (is_restful(d->kind))
		return ROLE_REST;
	if (q->kind == CLAUSE_CHAT && !d->action.n)
		return ROLE_OTHER;
	if (q->dish < 0)
		return ROLE_OTHER;
	return ROLE_STEP;
}

static void
scale(struct maker *m, struct measure *x, bool internal)
{
	struct said s = {.kind = x->kind, .value = x->value};

	if (!x->value.unit)
		x->value.unit = scale_of(m, &s, internal);
}

static void
give(struct maker *m, const struct clause *q, const struct deed *d, uint32_t at)
{
	const struct node *n = &chart_top(&m->c)->node.v[at];
	struct said s;
	struct measure *x;

	if (n->made == RAW || !measure_of(&m->c, m->region, n, &s))
		return;
	x = measure_at(m, script_source(m->s, node_text(&m->c, n)));
	if (!x)
		return;
	if (s.kind == MEASURE_TEMPERATURE) {
		x->role = deed_role(m, q, at);
		if (x->role == ROLE_APPLIANCE && d->temperature.role == ROLE_OIL)
			x->role = ROLE_OIL;
		scale(m, x, x->role == ROLE_INTERNAL);
	} else if (s.kind == MEASURE_DURATION) {
		x->role = time_role(q, d);
	}
}

void
roles_of_clause(struct maker *m, const struct clause *q, const struct deed *d)
{
	for (uint32_t k = q->beg; k < q->end; k++)
		give(m, q, d, k);
}

static void
claim(struct maker *m, const struct node *n)
{
	struct field_nodes f;
	struct measure *x;

	if (!node_is(&m->c, n, "CLAIM") || !node_field(&m->c, n, "value", &f))
		return;
	x = measure_at(m, script_source(m->s, node_text(&m->c, f.v)));
	if (x)
		x->role = ROLE_CLAIM;
}

void
roles_give(struct maker *m)
{
	const struct level *claims = chart_level(&m->c, "claim");

	for (size_t i = 0; i < m->clause.n; i++) {
		struct deed d;

		if (m->clause.v[i].dish >= 0)
			continue;
		deed_read(m, &m->clause.v[i], &d);
		roles_of_clause(m, &m->clause.v[i], &d);
	}
	for (size_t i = 0; claims && i < claims->node.n; i++)
		claim(m, &claims->node.v[i]);
	for (size_t i = 0; i < m->measure.n; i++) {
		struct measure *x = &m->measure.v[i];

		if (x->kind == MEASURE_TEMPERATURE && x->role == ROLE_NONE) {
			x->role = ROLE_APPLIANCE;
			scale(m, x, false);
		} else if (x->kind == MEASURE_DURATION && x->role == ROLE_NONE) {
			x->role = ROLE_OTHER;
		}
	}
}
