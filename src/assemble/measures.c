/* SPDX-License-Identifier: ISC */
/*
 * The flat list of measures in script order: what the compound pass made, the
 * sizes nested in it, and the counts of foods.
 */
#include "assemble/maker.h"

#include <stdlib.h>

static bool
token_has(const struct maker *m, uint32_t token, const char *class_name)
{
	unsigned id = grammar_class(m->g, class_name);

	return id < CLASSES_MAX && token < m->c.tokens.token.n &&
	       classset_has(&m->c.tokens.token.v[token].entry->classes, id);
}

/* "about", "up to", "or so" stand outside the words of a measure. */
static void
look_around(const struct maker *m, const struct node *n, struct measure *x)
{
	if (n->beg > 0) {
		x->approximate = token_has(m, n->beg - 1, "APPROX");
		if (token_has(m, n->beg - 1, "UPTO"))
			x->bound = BOUND_MAX;
		else if (token_has(m, n->beg - 1, "ATLEAST"))
			x->bound = BOUND_MIN;
	}
	if (token_has(m, n->end, "ORSO"))
		x->approximate = true;
	if (x->bound != BOUND_NONE)
		x->approximate = false;
}

static struct node
node_of(struct span tokens)
{
	return (struct node){tokens.beg, tokens.end, RAW};
}

static void
push(struct maker *m, const struct said *s)
{
	const struct node n = node_of(s->tokens);
	struct measure x = {.kind = s->kind,
	    .value = s->value,
	    .unit_stated = s->unit_stated,
	    .corrected = s->corrected,
	    .first = s->first,
	    .reversed = s->reversed,
	    .text = words_of(m, node_text(&m->c, &n)),
	    .place = place_of_node(m, &n)};

	look_around(m, &n, &x);
	vec_push(m->a, &m->measure, x);
}

static void
collect_node(struct maker *m, const struct node *n)
{
	struct said s, dims[DIMS_MAX];
	size_t count = measure_dims(&m->c, m->region, n, dims);

	for (size_t i = 0; i < count; i++)
		push(m, &dims[i]);
	if (count || !measure_of(&m->c, m->region, n, &s))
		return;
	push(m, &s);
	if (s.size && measure_of(&m->c, m->region, s.size, &s))
		push(m, &s);
}

/* Three eggs: the number and the food, as one count. */
static void
collect_count(struct maker *m, const struct node *n)
{
	struct field_nodes amount, food;
	struct quantity q;
	struct said s = {.kind = MEASURE_COUNT, .unit_stated = true};

	if (node_field(&m->c, n, "article", &amount)) {
		q = (struct quantity){{1, 1}, {1, 1}, false};
	} else if (!node_field(&m->c, n, "amount", &amount) ||
		   !node_is(&m->c, amount.v, "NUM") || !value_of_nodes(&m->c, amount, &q)) {
		return;
	}
	s.value = (struct amount){true, true, q.min, q.max, NULL};
	s.reversed = q.reversed;
	s.tokens = (struct span){amount.v->beg, amount.v->end};
	if (node_field(&m->c, n, "food", &food))
		s.tokens.end = food.v[food.n - 1].end;
	else if (node_field(&m->c, n, "list", &food))
		s.tokens.end = food.v[0].end;
	push(m, &s);
}

/* The correction of an amount after its food: "60 g of butter, no, 80 g". */
static void
note_amend(struct maker *m, const struct node *n)
{
	struct field_nodes base, then, amount;
	struct said first, second;

	if (!node_field(&m->c, n, "base", &base) ||
	    !node_field(&m->c, base.v, "amount", &amount) ||
	    !measure_of(&m->c, m->region, amount.v, &first))
		return;
	if (node_field(&m->c, n, "then", &then)) {
		if (!measure_of(&m->c, m->region, then.v, &second))
			return;
	} else {
		struct quantity q;

		if (!node_field(&m->c, n, "thennumber", &then) ||
		    !value_of_nodes(&m->c, then, &q))
			return;
		second = first;
		second.value.min = q.min;
		second.value.max = q.max;
		second.tokens = (struct span){then.v->beg, then.v->end};
	}
	const struct node from = node_of(first.tokens), to = node_of(second.tokens);
	struct span said = script_source(m->s, node_text(&m->c, &from));
	struct span put = script_source(m->s, node_text(&m->c, &to));

	for (size_t i = 0; i < m->measure.n; i++)
		if (m->measure.v[i].place.span.beg == said.beg) {
			struct measure *x = &m->measure.v[i];

			x->first = first.value;
			x->corrected = true;
			x->value = second.value;
			x->text = words_of(m, node_text(&m->c, &to));
			x->place = place_of_node(m, &to);
		} else if (m->measure.v[i].place.span.beg == put.beg) {
			m->measure.v[i].text.n = 0;
		}
}

/* By place; a wide measure ("two 400 g tins") before the size inside it. */
static int
in_order(const void *a, const void *b)
{
	const struct measure *x = a, *y = b;
	struct span p = x->place.span, q = y->place.span;

	if (p.beg != q.beg)
		return p.beg < q.beg ? -1 : 1;
	return (p.end < q.end) - (p.end > q.end);
}

static void
drop_empty(struct maker *m)
{
	size_t kept = 0;

	for (size_t i = 0; i < m->measure.n; i++)
		if (m->measure.v[i].text.n)
			m->measure.v[kept++] = m->measure.v[i];
	m->measure.n = kept;
}

void
measures_collect(struct maker *m)
{
	const struct level *l = chart_level(&m->c, "compound");
	const struct level *ing = chart_level(&m->c, "ingredient");
	const struct level *amend = chart_level(&m->c, "amend");

	for (size_t i = 0; l && i < l->node.n; i++)
		collect_node(m, &l->node.v[i]);
	for (size_t i = 0; ing && i < ing->node.n; i++)
		if (node_is(&m->c, &ing->node.v[i], "ING") ||
		    node_is(&m->c, &ing->node.v[i], "INGS"))
			collect_count(m, &ing->node.v[i]);
	for (size_t i = 0; amend && i < amend->node.n; i++)
		note_amend(m, &amend->node.v[i]);
	drop_empty(m);
	if (m->measure.n)
		qsort(m->measure.v, m->measure.n, sizeof *m->measure.v, in_order);
}
