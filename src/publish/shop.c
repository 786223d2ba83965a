/* SPDX-License-Identifier: ISC */
/*
 * How a shop is laid out and what it sells.
 */
#include "publish/shop.h"

#include "base/print.h"
#include "grammar/inflect.h"
#include "grammar/table.h"
#include "grammar/units.h"

struct shop
shop_of(struct arena *a, const struct draft *d, const struct grammar *g)
{
	struct shop s = {.arena = a, .grammar = g, .region = d->region};

	if (g) {
		s.sections = grammar_table(g, "sections");
		s.packs = grammar_table(g, "packs");
	}
	return s;
}

/* ---- sections ----------------------------------------------------------- */

static bool
has_word(struct str text, struct str word)
{
	struct str rest = text;

	while (rest.p)
		if (str_is(str_next(&rest, ' '), word))
			return true;
	return false;
}

static bool
is_counted_in(const struct basket_item *item, struct str unit)
{
	for (size_t i = 0; i < item->sums; i++) {
		const struct unit *u = item->sum[i].total.unit;

		if (u && str_is(u->name, unit))
			return true;
	}
	return false;
}

static bool
row_fits(const struct basket_item *item, struct str group, struct str match, struct str v)
{
	if (str_is_z(match, "word"))
		return has_word(item->name, v);
	if (str_is_z(match, "unit"))
		return is_counted_in(item, v);
	return str_is(group, v);
}

struct str
shop_section(const struct shop *s, const struct basket_item *item, struct str group)
{
	static const char *const order[] = {"word", "unit", "group"};
	const struct table *t = s->sections;
	int match = t ? table_column(t, "match") : -1;
	int value = t ? table_column(t, "value") : -1;

	for (size_t k = 0; t && k < sizeof order / sizeof *order; k++) {
		struct str kind = str_of(order[k]);
		size_t row = table_find(t, 0, match, kind);

		for (; row < t->rows; row = table_find(t, row + 1, match, kind))
			if (row_fits(item, group, kind, table_cell(t, row, value)))
				return table_cell(t, row, table_column(t, "section"));
	}
	return STR("Other");
}

size_t
shop_rank(const struct shop *s, struct str section)
{
	const struct table *t = s->sections;

	return t ? table_find(t, 0, table_column(t, "section"), section) : 0;
}

/* ---- packages ----------------------------------------------------------- */

struct pack {
	struct ratio size;   /* grams, millilitres or pieces */
	struct amount label; /* as the package says */
	struct str container;
};

struct need {
	struct ratio most;
	const char *column; /* of packs: "grams", "ml"; "size" for pieces */
};

/* How much of the item is needed; false where its sums can't be told in one
 * measure, or are counted in packages already. */
static bool
need_of(const struct basket_item *item, struct need *out)
{
	const struct basket_sum *s = item->sum;

	if (item->sums != 1 || s->size.present)
		return false;
	if (s->weighed && s->base.present) {
		out->most = s->base.max;
		out->column = s->base.unit->dimension == DIM_MASS ? "grams" : "ml";
		return true;
	}
	out->most = s->total.max;
	out->column = "size";
	return !s->total.unit;
}

/* Fresh food is also sold in cans, but then it is another food. */
static bool
is_sold_fresh(struct str group)
{
	static const char *const fresh[] = {"vegetable", "root-vegetable", "leaf-vegetable",
	    "mushroom", "fruit", "citrus", "berry", "fish", "shellfish", "legume"};

	for (size_t i = 0; i < sizeof fresh / sizeof *fresh; i++)
		if (str_is_z(group, fresh[i]))
			return true;
	return false;
}

/* "plain-flour" is the row of "plain flour". */
static bool
is_name(struct str cell, struct str key)
{
	if (cell.n != key.n)
		return false;
	for (size_t i = 0; i < cell.n; i++)
		if (cell.p[i] != key.p[i] && !(cell.p[i] == ' ' && key.p[i] == '-'))
			return false;
	return true;
}

static bool
read_pack(const struct shop *s, size_t row, const struct need *need, struct pack *out)
{
	const struct table *t = s->packs;
	struct str unit = table_cell(t, row, table_column(t, "unit"));
	struct ratio said;

	*out = (struct pack){.container = table_cell(t, row, table_column(t, "container"))};
	/* A size of pieces has no unit, a weight has one. */
	if ((strcmp(need->column, "size") == 0) != (unit.n == 0))
		return false;
	if (!table_number(t, row, table_column(t, need->column), &out->size) ||
	    !table_number(t, row, table_column(t, "size"), &said) || out->size.num <= 0)
		return false;
	out->label = (struct amount){true, true, said, said,
	    unit.n ? grammar_unit(s->grammar, unit, s->region) : NULL};
	return true;
}

/* The smallest that holds all that is needed, else the largest. */
static bool
is_better(const struct pack *a, const struct pack *b, struct ratio most)
{
	bool fits = ratio_order(a->size, most) >= 0,
	     fitted = ratio_order(b->size, most) >= 0;

	if (fits != fitted)
		return fits;
	return fits ? ratio_order(a->size, b->size) < 0 : ratio_order(a->size, b->size) > 0;
}

static bool
find_pack(const struct shop *s, const struct basket_item *item, struct str group,
    const struct need *need, struct pack *best)
{
	const struct table *t = s->packs;
	bool fresh = is_sold_fresh(group), found = false;
	struct pack one;

	for (size_t i = 0; i < t->rows; i++) {
		if (!is_name(table_cell(t, i, table_column(t, "item")), item->key) ||
		    !str_is_z(table_cell(t, i, table_column(t, "region")), s->region) ||
		    !read_pack(s, i, need, &one))
			continue;
		if (fresh && str_is_z(one.container, "can"))
			continue;
		if (!found || is_better(&one, best, need->most))
			*best = one;
		found = true;
	}
	return found;
}

struct str
shop_pack(const struct shop *s, const struct basket_item *item, struct str group)
{
	struct buf b = buf_in(s->arena);
	struct need need;
	struct pack pack;
	struct ratio packs;
	int64_t count;

	if (!s->packs || !s->region || !need_of(item, &need) ||
	    !find_pack(s, item, group, &need, &pack))
		return STR("");
	packs = ratio_div(need.most, pack.size);
	count = packs.num / packs.den + (packs.num % packs.den != 0);
	buf_fmt(&b, "%lld ", (long long)count);
	buf_put(&b, count > 1 ? inflect_plural(s->arena, pack.container) : pack.container);
	buf_put_z(&b, " of ");
	/* "568 ml" for the 568.26 of a pint. */
	if (ratio_order(pack.label.min, ratio_int(100)) > 0)
		pack.label.min = pack.label.max = ratio_int(ratio_round(pack.label.min));
	print_amount(&b, &pack.label);
	return buf_str(&b);
}
