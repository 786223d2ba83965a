/* SPDX-License-Identifier: ISC */
/*
 * Gives measures their role, by the clause that each stands in, and temperatures
 * the scale that was not said.
 */
#include "clause/deed.h"

/* ---- roles of temperatures --------------------------------------------- */

static bool
reads_before(const struct maker *m, uint32_t token)
{
	static const char *const words[] = {"reads", "read", "reaches", "reach", "hits",
	    "hit", "registers", "register", "internal", "inside", "thermometer", "says",
	    "reached"};
	uint32_t beg = token > 7 ? token - 7 : 0;

	for (size_t i = 0; i < sizeof words / sizeof *words; i++)
		if (says_token(m, beg, token, words[i]))
			return true;
	return false;
}

/* "you want 155 inside, right up near the bone" */
static bool
reads_after(const struct maker *m, uint32_t token)
{
	static const char *const words[] = {"inside", "internal", "internally", "bone",
	    "thickest", "thickest part", "middle", "centre", "center", "thermometer"};
	uint32_t end = token + 9;

	if (end > m->c.tokens.token.n)
		end = (uint32_t)m->c.tokens.token.n;
	for (size_t i = 0; i < sizeof words / sizeof *words; i++)
		if (says_token(m, token, end, words[i]))
			return true;
	return false;
}

static bool
has_food_group(const struct maker *m, const struct node *n, const char *group)
{
	for (uint32_t i = n->beg; i < n->end; i++) {
		const struct reading *f = entry_reading(
		    m->c.tokens.token.v[i].entry, grammar_class(m->g, "FOOD"));

		if (f && str_is_z(lexeme_get(f->lexeme, "group"), group))
			return true;
	}
	return false;
}

static bool
is_until(const struct maker *m, const struct node *n)
{
	return n->made == RAW && node_has(&m->c, n, "UNTIL");
}

/* "warm the milk to about 110 degrees": the food before "to" is one that pours. */
static bool
warms_liquid(const struct maker *m, const struct clause *q, uint32_t node)
{
	const struct level *top = chart_top(&m->c);
	const struct reading *food;

	while (node > q->beg && top->node.v[node - 1].made == RAW &&
	       node_has(&m->c, &top->node.v[node - 1], "APPROX"))
		node--;
	if (node < q->beg + 2 ||
	    !says_token(m, top->node.v[node - 1].beg, top->node.v[node].beg, "to"))
		return false;
	food = node_reading(&m->c, &top->node.v[node - 2], "FOOD");
	return food && lexeme_has(food->lexeme, "liquid");
}

enum measure_role
deed_role(const struct maker *m, const struct clause *q, uint32_t node)
{
	const struct level *top = chart_top(&m->c);
	uint32_t token = top->node.v[node].beg;
	bool until = false, oil = false, liquid = false, oven = false;

	for (uint32_t i = q->beg; i < q->end; i++) {
		const struct node *n = &top->node.v[i];
		const struct reading *e = node_reading(&m->c, n, "EQUIP");
		struct str appliance = e ? lexeme_get(e->lexeme, "appliance") : STR("");

		until = until || (i < node && is_until(m, &top->node.v[i]));
		oil = oil || has_food_group(m, n, "oil") ||
		      says_token(m, n->beg, n->end, "oil") || str_is_z(appliance, "fryer");
		liquid = liquid || has_food_group(m, n, "water") ||
			 has_food_group(m, n, "syrup") || has_food_group(m, n, "sugar") ||
			 says_token(m, n->beg, n->end, "jam") ||
			 says_token(m, n->beg, n->end, "custard");
		oven = oven || (appliance.n && !str_is_z(appliance, "stove"));
	}
	if (says_token(m, token > 6 ? token - 6 : 0,
		token + 5 < m->c.tokens.token.n ? token + 5 : (uint32_t)m->c.tokens.token.n,
		"outside"))
		return ROLE_AMBIENT;
	if (oil && !oven)
		return ROLE_OIL;
	if (liquid && !oven && (until || reads_before(m, token)))
		return ROLE_LIQUID;
	if (until || reads_before(m, token) || reads_after(m, token))
		return ROLE_INTERNAL;
	if (!oven && ((liquid && !q->action) || warms_liquid(m, q, node)))
		return ROLE_LIQUID;
	return ROLE_APPLIANCE;
}

/* ---- roles of times ------------------------------------------------------ */

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
