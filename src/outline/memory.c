/* SPDX-License-Identifier: ISC */
/*
 * What is kept in mind along the way: the foods that each part has used, the
 * times that it has waited.
 */
#include "outline/outline.h"

enum { USED_MAX = 2000 }; /* foods kept in mind: more than any episode has */

/* The ING nodes of a clause, also those within its verb. */
size_t
memory_foods(
    const struct maker *m, const struct clause *q, struct mention *out, size_t room)
{
	size_t count = 0;

	for (uint32_t k = q->beg; k < q->end && count < room; k++) {
		const struct node *n = &chart_top(&m->c)->node.v[k];
		struct field_nodes f;

		if (node_field(&m->c, n, "thing", &f) || node_field(&m->c, n, "object", &f))
			n = f.v;
		count += mentions_of(m, n, out + count, room - count);
	}
	return count;
}

int64_t
memory_ms(const struct maker *m, const struct node *n)
{
	struct said s;

	if (!measure_of(&m->c, m->region, n, &s) || s.kind != MEASURE_DURATION ||
	    !s.value.known || !s.value.unit || !s.value.unit->has_base)
		return -1;
	return ratio_round(
	    ratio_mul(unit_to_base(s.value.unit, s.value.max), ratio_int(1000)));
}

bool
memory_has(const struct outline *o, struct str key)
{
	for (size_t i = 0; i < o->used.n; i++)
		if (name_ends(o->used.v[i].key, key))
			return true;
	return false;
}

/* "whole-milk" is milk. */
static bool
is_kind_of(struct str key, struct str wide)
{
	return str_is(key, wide) ||
	       (wide.n && key.n > wide.n && str_ends(key, wide) &&
		   (key.p[key.n - wide.n - 1] == ' ' || key.p[key.n - wide.n - 1] == '-'));
}

bool
memory_is_used(const struct outline *o, struct str key, int dish, int part)
{
	for (size_t i = 0; i < o->used.n; i++)
		if (o->used.v[i].dish == dish && (part < 0 || o->used.v[i].part == part) &&
		    (is_kind_of(o->used.v[i].key, key) ||
			is_kind_of(key, o->used.v[i].key)))
			return true;
	return false;
}

void
memory_note(struct outline *o, const struct clause *q)
{
	const struct maker *m = o->m;
	struct mention x[MENTIONS];
	size_t n = o->now_dish < 0 ? 0 : memory_foods(m, q, x, MENTIONS);

	for (size_t i = 0; i < n; i++)
		if (x[i].key.n && o->used.n < USED_MAX &&
		    !memory_is_used(o, x[i].key, o->now_dish, o->now_part))
			vec_push(m->a, &o->used,
			    (struct used){x[i].key, o->now_dish, o->now_part});
	for (uint32_t k = q->beg; k < q->end && o->now_dish >= 0; k++) {
		int64_t ms = memory_ms(m, &chart_top(&m->c)->node.v[k]);

		if (ms > 0)
			vec_push(m->a, &o->waited,
			    (struct waited){ms, o->now_dish, o->now_part});
	}
}

size_t
memory_measured(const struct outline *o, uint32_t beg, uint32_t end)
{
	uint32_t last = (uint32_t)o->m->c.tokens.token.n;

	end = end > last ? last : end;
	return beg < end ? o->measured[end] - o->measured[beg] : 0;
}

void
memory_count(struct outline *o)
{
	const struct level *top = chart_top(&o->m->c);
	size_t tokens = o->m->c.tokens.token.n;

	o->measured = arena_array(o->m->a, tokens + 1, uint32_t);
	for (size_t i = 0; i < top->node.n; i++) {
		struct mention x[MENTIONS];
		size_t n = mentions_of(o->m, &top->node.v[i], x, MENTIONS);

		for (size_t k = 0; k < n; k++)
			o->measured[top->node.v[i].end] += x[k].amount.known && x[k].lexeme;
	}
	for (size_t i = 0; i < tokens; i++)
		o->measured[i + 1] += o->measured[i];
}

/* How many foods the part has used. */
size_t
memory_used_by(const struct outline *o, int dish, int part)
{
	size_t count = 0;

	for (size_t i = 0; i < o->used.n; i++)
		count += o->used.v[i].dish == dish && o->used.v[i].part == part;
	return count;
}

bool
memory_mentions_food(const struct outline *o, const struct clause *q)
{
	struct mention x[MENTIONS];

	return memory_foods(o->m, q, x, MENTIONS) > 0;
}
