/* SPDX-License-Identifier: ISC */
/*
 * Evaluates measure nodes: "two 400 gram tins", "an hour and a half",
 * "two tablespoons, sorry, teaspoons".
 */
#include "scan/measure.h"

/* How far back the unit that goes without saying may stand, in tokens. */
enum { CARRY_TOKENS = 40 };

struct measurer {
	const struct chart *c;
	const char *region;
};

static const struct unit *
unit_named(const struct measurer *m, const char *name)
{
	return grammar_unit(m->c->g, str_of(name), m->region);
}

/* The unit's name in a node's words; capital= is that of a capital letter. */
static struct str
unit_name(const struct chart *c, const struct node *n, const char *class_name)
{
	const struct reading *r = node_reading(c, n, class_name);
	struct str capital;

	if (!r)
		r = node_reading(c, n, "INCHMARK");
	if (!r)
		return STR("");
	capital = lexeme_get(r->lexeme, "capital");
	if (capital.n && node_token(c, n)->flags & TOKEN_CAPITAL)
		return capital;
	return lexeme_get(r->lexeme, "unit");
}

const struct unit *
measure_unit(
    const struct chart *c, const char *region, struct field_nodes f, const char *class_name)
{
	struct str name = {NULL, 0};

	for (size_t i = 0; i < f.n && name.n == 0; i++)
		name = unit_name(c, &f.v[i], class_name);
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

/* What is said after the value: "and a half", "20 minutes", "4 ounces". In
 * part60 a half is one of the unit, and twenty are minutes. */
static struct ratio
added_value(const struct measurer *m, const struct node *n)
{
	static const struct {
		const char *field;
		int64_t per;
	} parts[] = {{"part", 1}, {"minutes", 60}, {"part60", 60}, {"ounces", 16}};
	struct ratio sum = {0, 1};

	for (size_t i = 0; i < sizeof parts / sizeof *parts; i++) {
		struct ratio v = field_ratio(m, n, parts[i].field);
		bool is_part = ratio_order(v, ratio_int(1)) < 0;

		sum = ratio_add(sum, is_part ? v : ratio_div(v, ratio_int(parts[i].per)));
	}
	return sum;
}

/* The value said, that of the rule, or 1 for an article or a unit alone. */
static bool
own_value(const struct measurer *m, const struct node *n, struct quantity *out)
{
	struct field_nodes f;
	struct ratio more = added_value(m, n), given;

	*out = (struct quantity){{1, 1}, {1, 1}, false};
	if (ratio_parse(node_attribute(m->c, n, "value"), &given))
		out->min = out->max = given;
	else if ((node_field(m->c, n, "value", &f) || node_field(m->c, n, "whole", &f)) &&
		 !value_of_nodes(m->c, f, out))
		return false;
	if (node_attribute(m->c, n, "sign").n)
		*out = (struct quantity){ratio_sub(ratio_int(0), out->max),
		    ratio_sub(ratio_int(0), out->min), out->reversed};
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
said_unit(const struct measurer *m, const struct node *n, enum measure_kind kind)
{
	struct field_nodes f;

	if (node_field(m->c, n, "unit", &f) || node_field(m->c, n, "scale", &f))
		return measure_unit(m->c, m->region, f, unit_class(kind));
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

/* The node of a made entry, as the level above has it. */
static struct node
node_of_made(const struct chart *c, int32_t i)
{
	const struct made *made = &c->made.v[i];
	const struct level *l = &c->level[made->level];

	return (struct node){
	    l->node.v[made->nodes.beg].beg, l->node.v[made->nodes.end - 1].end, i};
}

/* The unit that the node says, where it is of the kind. */
static const struct unit *
unit_of_kind(const struct measurer *m, const struct node *n, enum measure_kind kind)
{
	enum measure_kind other;

	return kind_of(m, n, &other) && other == kind ? said_unit(m, n, kind) : NULL;
}

/* The last of the kind that the pass at work has made. */
static const struct unit *
unit_of_pass(const struct measurer *m, const struct node *n, enum measure_kind kind)
{
	uint32_t level = m->c->made.v[n->made].level;

	for (int32_t i = n->made - 1; i >= 0 && m->c->made.v[i].level == level; i--) {
		struct node before = node_of_made(m->c, i);
		const struct unit *u = unit_of_kind(m, &before, kind);

		if (before.end + CARRY_TOKENS < n->beg)
			break;
		if (u)
			return u;
	}
	return NULL;
}

/* The unit of the measure of this kind that was said last before the node:
 * "225 grams of butter and two twenty-five of sugar". */
static const struct unit *
carried_unit(const struct measurer *m, const struct node *n, enum measure_kind kind)
{
	const struct made *made = &m->c->made.v[n->made];
	const struct level *l = &m->c->level[made->level];
	const struct unit *u = unit_of_pass(m, n, kind);

	for (uint32_t i = made->nodes.beg; !u && i > 0; i--) {
		const struct node *before = &l->node.v[i - 1];

		if (before->end + CARRY_TOKENS < n->beg)
			break;
		u = unit_of_kind(m, before, kind);
	}
	return u && u->has_base ? u : NULL;
}

static const struct unit *
own_unit(const struct measurer *m, const struct node *n, enum measure_kind kind)
{
	if (node_attribute(m->c, n, "gas").n)
		return unit_named(m, "gas-mark");
	if (node_attribute(m->c, n, "minutes").n)
		return unit_named(m, "minute");
	if (node_attribute(m->c, n, "carry").n)
		return carried_unit(m, n, kind);
	return said_unit(m, n, kind);
}

/* A node with a value and a unit of its own. */
static bool
plain(const struct measurer *m, const struct node *n, struct said *out)
{
	struct quantity q;
	struct field_nodes f;

	if (!kind_of(m, n, &out->kind))
		return false;
	out->tokens = (struct span){n->beg, n->end};
	out->heard = node_attribute(m->c, n, "heard");
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

/* The two sides of a range or a correction. */
static bool
two_sides(const struct measurer *m, const struct node *n, const char *const field[2],
    struct said out[2])
{
	struct field_nodes f[2];

	out[0] = out[1] = (struct said){0};
	return node_field(m->c, n, field[0], &f[0]) &&
	       node_field(m->c, n, field[1], &f[1]) && plain(m, f[0].v, &out[0]) &&
	       plain(m, f[1].v, &out[1]);
}

static bool
range(const struct measurer *m, const struct node *n, struct said *out)
{
	static const char *const field[2] = {"lo", "hi"};
	struct said side[2];
	struct ratio max;

	if (!two_sides(m, n, field, side) ||
	    !in_unit(side[0].value.unit, &side[1].value, &max))
		return false;
	*out = side[0];
	out->tokens = (struct span){n->beg, n->end};
	out->value.max = max;
	out->reversed = ratio_order(side[0].value.min, max) > 0;
	if (out->reversed) {
		out->value.max = side[0].value.min;
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

/* "ten, no, twelve minutes", "a tablespoon, sorry, a teaspoon" */
static bool
repaired_whole(const struct measurer *m, const struct node *n, struct said *out)
{
	struct field_nodes first, then;
	struct said a = {0}, b = {0};

	if (!node_field(m->c, n, "then", &then) || !plain(m, then.v, &b))
		return false;
	if ((!node_field(m->c, n, "first", &first) || !plain(m, first.v, &a)) &&
	    !number_side(m, n, "firstnumber", &b.value, &a.value))
		return false;
	*out = b;
	out->first = a.value;
	if (is_unit_alone(m, then.v)) {
		out->value.min = a.value.min;
		out->value.max = a.value.max;
		out->tokens = (struct span){n->beg, n->end};
	}
	return true;
}

/* "two tablespoons, sorry, teaspoons", "two cups, no, three" */
static bool
repaired_half(const struct measurer *m, const struct node *n, struct said *out)
{
	struct field_nodes first, then;

	if (!node_field(m->c, n, "first", &first) || !plain(m, first.v, out))
		return false;
	out->first = out->value;
	out->tokens = (struct span){n->beg, n->end};
	if (node_field(m->c, n, "thenunit", &then)) {
		out->value.unit = measure_unit(m->c, m->region, then, "UNIT");
		return true;
	}
	return number_side(m, n, "thennumber", &out->first, &out->value);
}

static bool
repaired(const struct measurer *m, const struct node *n, struct said *out)
{
	if (!repaired_whole(m, n, out) && !repaired_half(m, n, out))
		return false;
	if (!out->value.unit)
		out->value.unit = out->first.unit;
	out->corrected = true;
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

/* ---- checks ------------------------------------------------------------- */

/* Units of one system, and of sizes that one slips between: no "a cup, 240 ml"
 * and no "a cup and two tablespoons". */
static bool
replaces(const struct said *a, const struct said *b)
{
	const struct unit *u = a->value.unit, *v = b->value.unit;
	struct ratio per;

	if (!u || !v || u->dimension != v->dimension || u->metric != v->metric)
		return false;
	if (u == v)
		return ratio_order(a->value.min, b->value.min) != 0;
	if (!u->has_base || !v->has_base)
		return false;
	per = ratio_div(u->factor, v->factor);
	return ratio_order(per, ratio_int(4)) < 0 && ratio_order(per, ratio_make(1, 4)) > 0;
}

/* "an hour twenty" is read, "an hour two" not. */
static bool
is_on_clock(const struct measurer *m, const struct node *n)
{
	struct ratio v = field_ratio(m, n, "part60");

	return !has_field(m, n, "part60") || ratio_order(v, ratio_int(1)) < 0 ||
	       (v.den == 1 && v.num >= 10 && v.num < 60 && v.num % 5 == 0);
}

/* "375 350 degrees": both are settings of an oven. */
static bool
resets(const struct measurer *m, const struct node *n)
{
	struct said s;
	struct ratio first = field_ratio(m, n, "firstnumber");

	return repaired_whole(m, n, &s) && first.den == 1 && first.num % 5 == 0 &&
	       first.num >= 90 && ratio_order(first, s.value.min) != 0;
}

static bool
sides_hold(const struct measurer *m, const struct node *n, struct str check)
{
	static const char *const range_field[2] = {"lo", "hi"};
	static const char *const repair_field[2] = {"first", "then"};
	struct said side[2];
	struct ratio hi;

	if (str_is_z(check, "replaces"))
		return two_sides(m, n, repair_field, side) ? replaces(&side[0], &side[1])
							   : resets(m, n);
	if (!two_sides(m, n, range_field, side) ||
	    !in_unit(side[0].value.unit, &side[1].value, &hi))
		return false;
	if (str_is_z(check, "same"))
		return true;
	if (str_is_z(check, "near") &&
	    ratio_order(ratio_mul(side[0].value.min, ratio_make(5, 2)), hi) < 0)
		return false;
	return ratio_order(side[0].value.min, hi) < 0 &&
	       side[0].value.unit->metric == side[1].value.unit->metric;
}

bool
measure_holds(const struct chart *c, const struct node *n)
{
	const struct measurer m = {c, NULL};
	struct str check = node_attribute(c, n, "check");
	enum measure_kind kind;

	if (str_is_z(check, "addend"))
		return ratio_order(field_ratio(&m, n, "part"), ratio_int(1)) < 0;
	if (!kind_of(&m, n, &kind))
		return true;
	if (node_attribute(c, n, "carry").n && !carried_unit(&m, n, kind))
		return false;
	if (str_is_z(check, "clock"))
		return is_on_clock(&m, n);
	if (str_is_z(check, "same") || str_is_z(check, "ascending") ||
	    str_is_z(check, "near") || str_is_z(check, "replaces"))
		return sides_hold(&m, n, check);
	return true;
}

/* ---- lengths side by side ----------------------------------------------- */

/* Without a unit: inches, unless a side is too long for a tin in them. */
static const char *
side_unit(const struct said *side, size_t n)
{
	for (size_t i = 0; i < n; i++)
		if (ratio_order(side[i].value.max, ratio_int(18)) > 0)
			return "centimetre";
	return "inch";
}

size_t
measure_dims(const struct chart *c, const char *region, const struct node *n,
    struct said out[DIMS_MAX])
{
	static const char *const side[DIMS_MAX] = {"a", "b", "c"};
	const struct measurer m = {c, region};
	const struct unit *u = said_unit(&m, n, MEASURE_LENGTH);
	size_t count = 0;

	if (!node_is(c, n, "DIMS"))
		return 0;
	for (size_t i = 0; i < DIMS_MAX; i++) {
		struct field_nodes f;
		struct quantity q;

		if (!node_field(c, n, side[i], &f) || !value_of_nodes(c, f, &q))
			continue;
		out[count++] = (struct said){.kind = MEASURE_LENGTH,
		    .value = {true, true, q.min, q.max, u},
		    .unit_stated = u != NULL,
		    .tokens = {f.v[0].beg, f.v[f.n - 1].end}};
	}
	for (size_t i = 0; i < count && !u; i++)
		out[i].value.unit = unit_named(&m, side_unit(out, count));
	return count;
}
