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

/* How many digits of a decimal the token gives; 0 for "five" of "seventy five". */
static uint32_t
decimal_digits(const struct chart *c, const struct token *t, struct ratio v, bool tens)
{
	if (is_numeral(c, t))
		return t->text.end - t->text.beg;
	if (ratio_order(v, ratio_int(10)) >= 0)
		return 2;
	return tens ? 0 : 1;
}

/* What follows a point: "two five" and "25" are 1/4. */
static bool
decimal_value(const struct chart *c, struct field_nodes f, struct ratio *out)
{
	struct ratio sum = {0, 1}, v;
	int64_t scale = 1;
	bool tens = false;

	for (uint32_t i = f.v[0].beg; i < f.v[f.n - 1].end; i++) {
		const struct token *t = &c->tokens.token.v[i];
		uint32_t digits;

		if (is_numeral(c, t))
			v = t->number;
		else if (!word_value(t, &v))
			return false;
		digits = decimal_digits(c, t, v, tens);
		for (; digits > 0 && scale < 1000000; digits--)
			scale *= 10;
		sum = ratio_add(sum, ratio_div(v, ratio_int(scale)));
		tens = v.num >= 20;
	}
	*out = sum;
	return ratio_order(sum, ratio_int(1)) < 0;
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
	struct field_nodes f;
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
	if (node_field(c, n, "decimal", &f) && decimal_value(c, f, &q.min)) {
		v = add(v, exactly(q.min));
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

struct ratio
value_of_article(const struct chart *c, const struct node *n)
{
	struct quantity part;

	return field_value(c, n, "part", &part) ? ratio_add(ratio_int(1), part.min)
						: ratio_int(1);
}

static bool
is_between(struct quantity q, int64_t least, int64_t most)
{
	return ratio_order(q.min, ratio_int(least)) >= 0 &&
	       ratio_order(q.max, ratio_int(most)) <= 0;
}

static bool
is_rising(struct quantity q)
{
	return !q.reversed && ratio_order(q.min, q.max) < 0 &&
	       ratio_order(ratio_mul(q.min, ratio_make(5, 2)), q.max) >= 0;
}

/* "8 2 10": the 2 was "to". */
static bool
is_heard_to(const struct chart *c, const struct node *n)
{
	struct quantity heard;

	return field_value(c, n, "heard", &heard) &&
	       ratio_order(heard.min, ratio_int(2)) == 0;
}

static bool
is_part(struct quantity q)
{
	return ratio_order(q.max, ratio_int(1)) < 0;
}

static bool
is_on_dial(struct quantity q)
{
	return q.min.den == 1 && q.min.num % 5 == 0 && is_between(q, 70, 1000);
}

static bool
is_inside(struct quantity q)
{
	return is_between(q, 40, 400);
}

static bool
is_warm(struct quantity q)
{
	return q.min.den == 1 && is_between(q, 40, 1000);
}

static const struct {
	const char *name;
	bool (*holds)(struct quantity q);
} checks[] = {{"rising", is_rising}, {"heard", is_rising}, {"part", is_part},
    {"dial", is_on_dial}, {"inside", is_inside}, {"warm", is_warm}};

/* The check by its name; NULL where it is none of this file's. */
static bool (*find_check(struct str name))(struct quantity q)
{
	for (size_t i = 0; i < sizeof checks / sizeof *checks; i++)
		if (str_is_z(name, checks[i].name))
			return checks[i].holds;
	return NULL;
}

bool
value_holds(const struct chart *c, const struct node *n)
{
	struct str check = node_attribute(c, n, "check");
	struct str least = node_attribute(c, n, "least");
	bool (*holds)(struct quantity) = find_check(check);
	struct quantity q;
	struct ratio bound;

	if (!holds && !least.n)
		return true;
	if (!field_value(c, n, "value", &q) && !value_number(c, n, &q))
		return false;
	if (holds && !holds(q))
		return false;
	if (str_is_z(check, "heard") && !is_heard_to(c, n))
		return false;
	return !ratio_parse(least, &bound) || ratio_order(q.min, bound) >= 0;
}
