/* SPDX-License-Identifier: ISC */
/*
 * Evaluates measure nodes: "two 400 gram tins", "an hour and a half",
 * "two tablespoons, sorry, teaspoons".
 */
#include "scan/measure.h"

struct measurer {
	const struct chart *c;
	const char *region;
};

static const struct unit *
unit_named(const struct measurer *m, const char *name)
{
	return grammar_unit(m->c->g, str_of(name), m->region);
}

const struct unit *
measure_unit(
    const struct chart *c, const char *region, struct field_nodes f, const char *class_name)
{
	struct str name = {NULL, 0};

	for (size_t i = 0; i < f.n && name.n == 0; i++) {
		const struct reading *r = node_reading(c, &f.v[i], class_name);

		if (!r)
			r = node_reading(c, &f.v[i], "INCHMARK");
		if (r)
			name = lexeme_get(r->lexeme, "unit");
	}
	return name.n ? grammar_unit(c->g, name, region) : NULL;
}

static bool
has_field(const struct measurer *m, const struct node *n, const char *field)
{
	struct field_nodes f;

	return node_field(m->c, n, field, &f);
}

static struct ratio
field_ratio(const struct measurer *m, const struct node *n, const char *field)
{
	struct field_nodes f;
	struct quantity q;

	return node_field(m->c, n, field, &f) && value_of_nodes(m->c, f, &q) ? q.min
									     : ratio_int(0);
}

/* value, or 1 for an article; plus whole, part and what is said in smaller
 * units after it. */
static bool
own_value(const struct measurer *m, const struct node *n, struct quantity *out)
{
	struct field_nodes f;
	struct ratio more = field_ratio(m, n, "part");

	*out = (struct quantity){{0, 1}, {0, 1}, false};
	if (node_field(m->c, n, "value", &f) || node_field(m->c, n, "whole", &f)) {
		if (!value_of_nodes(m->c, f, out))
			return false;
	} else {
		out->min = out->max = ratio_int(1);
	}
	more = ratio_add(more, ratio_div(field_ratio(m, n, "minutes"), ratio_int(60)));
	more = ratio_add(more, ratio_div(field_ratio(m, n, "part60"), ratio_int(60)));
	more = ratio_add(more, ratio_div(field_ratio(m, n, "ounces"), ratio_int(16)));
	out->min = ratio_add(out->min, more);
	out->max = ratio_add(out->max, more);
	if (has_field(m, n, "most"))
		out->max = field_ratio(m, n, "most");
	return true;
}

static const char *
unit_class(enum measure_kind kind)
{
	return kind == MEASURE_DURATION      ? "TIMEUNIT"
	       : kind == MEASURE_LENGTH      ? "LENGTHUNIT"
	       : kind == MEASURE_TEMPERATURE ? "SCALE"
					     : "UNIT";
}

static const struct unit *
own_unit(const struct measurer *m, const struct node *n, enum measure_kind kind)
{
	struct field_nodes f;

	if (node_field(m->c, n, "unit", &f) || node_field(m->c, n, "scale", &f))
		return measure_unit(m->c, m->region, f, unit_class(kind));
	if (node_attribute(m->c, n, "gas").n)
		return unit_named(m, "gas-mark");
	if (node_attribute(m->c, n, "minutes").n)
		return unit_named(m, "minute");
	return NULL;
}

static bool
kind_of(const struct measurer *m, const struct node *n, enum measure_kind *kind)
{
	*kind = node_is(m->c, n, "AMT")    ? MEASURE_AMOUNT
		: node_is(m->c, n, "LEN")  ? MEASURE_LENGTH
		: node_is(m->c, n, "DUR")  ? MEASURE_DURATION
		: node_is(m->c, n, "TEMP") ? MEASURE_TEMPERATURE
					   : MEASURE_COUNT;
	return *kind != MEASURE_COUNT;
}

/* A node with a value and a unit of its own. */
static bool
plain(const struct measurer *m, const struct node *n, struct said *out)
{
	struct quantity q;
	struct field_nodes f;

	if (!kind_of(m, n, &out->kind))
		return false;
	out->words = node_text(m->c, n);
	out->value.present = true;
	out->value.unit = own_unit(m, n, out->kind);
	out->unit_stated = has_field(m, n, "unit") || has_field(m, n, "scale") ||
			   node_attribute(m->c, n, "gas").n;
	out->value.known = !node_attribute(m->c, n, "overnight").n && own_value(m, n, &q);
	if (out->value.known) {
		out->value.min = q.min;
		out->value.max = q.max;
		out->reversed = q.reversed;
	}
	if (node_field(m->c, n, "size", &f))
		out->size = f.v;
	return true;
}

/* b's value in a's unit, where both have bases of one dimension. */
static bool
in_unit(const struct unit *a, const struct amount *b, struct ratio *out)
{
	*out = b->max;
	if (a == b->unit)
		return true;
	if (!a || !b->unit || !a->has_base || !b->unit->has_base ||
	    a->dimension != b->unit->dimension)
		return false;
	*out = unit_from_base(a, unit_to_base(b->unit, b->max));
	return true;
}

static bool
range(const struct measurer *m, const struct node *n, struct said *out)
{
	struct field_nodes lo, hi;
	struct said a = {0}, b = {0};
	struct ratio max;

	if (!node_field(m->c, n, "lo", &lo) || !node_field(m->c, n, "hi", &hi) ||
	    !plain(m, lo.v, &a) || !plain(m, hi.v, &b) ||
	    !in_unit(a.value.unit, &b.value, &max))
		return false;
	*out = a;
	out->words = node_text(m->c, n);
	out->value.max = max;
	out->reversed = ratio_order(a.value.min, max) > 0;
	if (out->reversed) {
		out->value.max = a.value.min;
		out->value.min = max;
	}
	return true;
}

/* A bare number of a correction takes the unit of the other side. */
static bool
number_side(const struct measurer *m, const struct node *n, const char *field,
    const struct amount *other, struct amount *out)
{
	struct field_nodes f;
	struct quantity q;

	if (!node_field(m->c, n, field, &f) || !value_of_nodes(m->c, f, &q))
		return false;
	*out = (struct amount){true, true, q.min, q.max, other->unit};
	return true;
}

/* "teaspoons" without a number. */
static bool
is_unit_alone(const struct measurer *m, const struct node *n)
{
	return !has_field(m, n, "value") && !has_field(m, n, "article") &&
	       !has_field(m, n, "whole");
}

static bool
repaired(const struct measurer *m, const struct node *n, struct said *out)
{
	struct field_nodes first, then;
	struct said a = {0}, b = {0};

	if (node_field(m->c, n, "then", &then) && plain(m, then.v, &b)) {
		if (node_field(m->c, n, "first", &first) && plain(m, first.v, &a))
			;
		else if (!number_side(m, n, "firstnumber", &b.value, &a.value))
			return false;
		*out = b;
		if (is_unit_alone(m, then.v)) {
			out->value.min = a.value.min;
			out->value.max = a.value.max;
		}
	} else if (node_field(m->c, n, "first", &first) && plain(m, first.v, &a)) {
		*out = a;
		if (node_field(m->c, n, "thenunit", &then))
			out->value.unit = measure_unit(m->c, m->region, then, "UNIT");
		else if (!number_side(m, n, "thennumber", &a.value, &out->value))
			return false;
	} else {
		return false;
	}
	if (!out->value.unit && a.value.unit)
		out->value.unit = a.value.unit;
	out->words = node_text(m->c, n);
	out->corrected = true;
	out->first = a.value;
	return true;
}

bool
measure_of(
    const struct chart *c, const char *region, const struct node *n, struct said *out)
{
	const struct measurer m = {c, region};
	enum measure_kind kind;

	*out = (struct said){0};
	if (!kind_of(&m, n, &kind))
		return false;
	return range(&m, n, out) || repaired(&m, n, out) || plain(&m, n, out);
}

size_t
measure_dims(const struct chart *c, const char *region, const struct node *n,
    struct said out[DIMS_MAX])
{
	static const char *const side[DIMS_MAX] = {"a", "b", "c"};
	const struct measurer m = {c, region};
	const struct unit *u = own_unit(&m, n, MEASURE_LENGTH);
	size_t count = 0;

	if (!node_is(c, n, "DIMS"))
		return 0;
	for (size_t i = 0; i < DIMS_MAX; i++) {
		struct field_nodes f;
		struct quantity q;

		if (!node_field(c, n, side[i], &f) || !value_of_nodes(c, f, &q))
			continue;
		out[count] = (struct said){.kind = MEASURE_LENGTH,
		    .value = {true, true, q.min, q.max, u},
		    .unit_stated = u != NULL,
		    .words = node_text(c, f.v)};
		if (!u)
			out[count].value.unit = unit_named(&m, "inch");
		count++;
	}
	return count;
}
