/* SPDX-License-Identifier: ISC */
/*
 * Finds what is said of servings, pieces and the whole time, and gives it to the
 * dish that it is said of.
 */
#include "clause/maker.h"

static struct dish *
dish_at(struct maker *m, uint32_t token)
{
	int found = -1;

	for (size_t i = 0; i < m->turn.n && m->turn.v[i].token <= token; i++)
		found = m->turn.v[i].dish;
	if (found < 0 && m->d->dishes == 1)
		found = 0;
	return found < 0 ? NULL : &m->d->dish[found];
}

static struct str
singular(const struct maker *m, const struct node *n)
{
	const struct token *t = node_token(&m->c, n);
	static const char *const classes[] = {"DISH", "UNIT", "FOOD"};

	for (size_t i = 0; i < 3; i++) {
		const struct reading *r =
		    entry_reading(t->entry, grammar_class(m->g, classes[i]));

		if (r)
			return r->lexeme->lemma;
	}
	return t->norm;
}

static void
take_yield(struct maker *m, const struct node *n)
{
	struct field_nodes value, item;
	struct quantity q;
	struct dish *d = dish_at(m, n->beg);

	if (!node_is(&m->c, n, "YIELD") || !d || d->yield.present ||
	    !node_field(&m->c, n, "value", &value) || !value_of_nodes(&m->c, value, &q))
		return;
	d->yield = (struct amount){true, true, q.min, q.max, NULL};
	d->yield_place = place_of_node(m, n);
	d->yield_unit = node_attribute(&m->c, n, "unit");
	if (!d->yield_unit.n && node_field(&m->c, n, "item", &item))
		d->yield_unit = singular(m, &item.v[item.n - 1]);
	if (!d->yield_unit.n)
		d->yield_unit = STR("piece");
}

static void
take_claim(struct maker *m, const struct node *n)
{
	struct field_nodes value;
	struct said s;
	struct dish *d = dish_at(m, n->beg);

	if (!node_is(&m->c, n, "CLAIM") || !d || d->claimed_ms >= 0 ||
	    !node_field(&m->c, n, "value", &value) ||
	    !measure_of(&m->c, m->region, value.v, &s) || !s.value.known || !s.value.unit ||
	    !s.value.unit->has_base)
		return;
	d->claimed_ms = ratio_round(
	    ratio_mul(unit_to_base(s.value.unit, s.value.max), ratio_int(1000)));
	d->claim_place = place_of_node(m, value.v);
}

void
yields_find(struct maker *m)
{
	const struct level *yields = chart_level(&m->c, "yield");
	const struct level *claims = chart_level(&m->c, "claim");

	for (size_t i = 0; yields && i < yields->node.n; i++)
		take_yield(m, &yields->node.v[i]);
	for (size_t i = 0; claims && i < claims->node.n; i++)
		take_claim(m, &claims->node.v[i]);
}
