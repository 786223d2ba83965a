/* SPDX-License-Identifier: ISC */
/*
 * Evaluates number nodes. Nodes nest no deeper than the grammar has passes.
 */
#include "scan/value.h"

static bool
word_value(const struct token *t, struct ratio *v)
{
	for (size_t i = 0; i < t->entry->reading.n; i++)
		if (ratio_parse(lexeme_get(t->entry->reading.v[i].lexeme, "value"), v))
			return true;
	return false;
}

static bool
is_numeral(const struct chart *c, const struct token *t)
{
	return t->entry == c->g->digits || t->number.num != 0;
}

/* "a hundred and fifty", "two thousand", "3": words and digits in a row. */
static bool
cardinal(const struct chart *c, uint32_t beg, uint32_t end, struct ratio *out)
{
	struct ratio total = {0, 1}, run = {0, 1}, v;
	bool any = false;

	for (uint32_t i = beg; i < end; i++) {
		const struct token *t = &c->tokens.token.v[i];

		if (is_numeral(c, t))
			v = t->number;
		else if (!word_value(t, &v))
			continue;
		if (ratio_order(v, ratio_int(1000)) == 0 && !is_numeral(c, t)) {
			total = ratio_add(total, ratio_mul(any ? run : ratio_int(1), v));
			run = ratio_int(0);
		} else if (lexeme_has(
			       t->entry->reading.n ? t->entry->reading.v[0].lexeme : NULL,
			       "scales")) {
			run = ratio_mul(any ? run : ratio_int(1), v);
		} else {
			run = ratio_add(run, v);
		}
		any = true;
	}
	*out = ratio_add(total, run);
	return any;
}

static bool
field_value(
    const struct chart *c, const struct node *n, const char *field, struct quantity *out)
{
	struct field_nodes f;

	return node_field(c, n, field, &f) && value_of_nodes(c, f, out);
}

static struct quantity
exactly(struct ratio v)
{
	return (struct quantity){v, v, false};
}

static bool
range_value(const struct chart *c, const struct node *n, struct quantity *out)
{
	struct quantity min, max;

	if (!field_value(c, n, "min", &min) || !field_value(c, n, "max", &max))
		return false;
	out->reversed = ratio_order(min.min, max.max) > 0;
	out->min = out->reversed ? max.min : min.min;
	out->max = out->reversed ? min.max : max.max;
	return true;
}

static struct quantity
add(struct quantity a, struct quantity b)
{
	return (struct quantity){
	    ratio_add(a.min, b.min), ratio_add(a.max, b.max), a.reversed || b.reversed};
}

static struct quantity
multiply(struct quantity a, struct quantity b)
{
	return (struct quantity){
	    ratio_mul(a.min, b.min), ratio_mul(a.max, b.max), a.reversed || b.reversed};
}

/* The fraction of num and den; den is a word worth 1/4 or plain digits. */
static bool
fraction_value(const struct chart *c, const struct node *n, struct quantity *out)
{
	struct quantity num = exactly(ratio_int(1)), den;

	if (!field_value(c, n, "den", &den) || den.min.num == 0)
		return false;
	field_value(c, n, "num", &num);
	if (ratio_order(den.min, ratio_int(1)) >= 0)
		den.min = ratio_div(ratio_int(1), den.min);
	*out = exactly(ratio_mul(num.min, den.min));
	return true;
}

static bool
made_value(const struct chart *c, const struct node *n, struct quantity *out)
{
	struct quantity v = exactly(ratio_int(0)), q;
	bool any = false;

	if (ratio_parse(node_attribute(c, n, "value"), &v.min)) {
		*out = exactly(v.min);
		return true;
	}
	if (range_value(c, n, out))
		return true;
	if (field_value(c, n, "hundreds", &q)) {
		v = multiply(q, exactly(ratio_int(100)));
		any = true;
	}
	static const char *const added[] = {"rest", "whole", "part"};
	for (size_t i = 0; i < 3; i++)
		if (field_value(c, n, added[i], &q)) {
			v = add(v, q);
			any = true;
		}
	if (fraction_value(c, n, &q)) {
		v = add(v, q);
		any = true;
	}
	if (any && field_value(c, n, "times", &q))
		v = multiply(v, q);
	*out = v;
	return any;
}

bool
value_number(const struct chart *c, const struct node *n, struct quantity *out)
{
	struct ratio v;

	if (n->made != RAW && made_value(c, n, out))
		return true;
	if (!cardinal(c, n->beg, n->end, &v))
		return false;
	*out = exactly(v);
	return true;
}

bool
value_of_nodes(const struct chart *c, struct field_nodes f, struct quantity *out)
{
	struct ratio v;

	if (f.n == 0)
		return false;
	if (f.n == 1)
		return value_number(c, f.v, out);
	if (!cardinal(c, f.v[0].beg, f.v[f.n - 1].end, &v))
		return false;
	*out = exactly(v);
	return true;
}

static bool
is_rising(struct quantity q)
{
	return !q.reversed && ratio_order(q.min, q.max) < 0 &&
	       ratio_order(ratio_mul(q.min, ratio_make(5, 2)), q.max) >= 0;
}

bool
value_holds(const struct chart *c, const struct node *n)
{
	struct str check = node_attribute(c, n, "check");
	struct str least = node_attribute(c, n, "least");
	struct quantity q;
	struct ratio bound;

	if (!check.n && !least.n)
		return true;
	if (!value_number(c, n, &q) && !field_value(c, n, "value", &q))
		return false;
	if (check.n && !is_rising(q))
		return false;
	return !ratio_parse(least, &bound) || ratio_order(q.min, bound) >= 0;
}
