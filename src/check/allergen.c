/* SPDX-License-Identifier: ISC */
/*
 * Allergens by the list of the region (allergens.tsv), and claims that a dish
 * is free of one.
 */
#include "check/food.h"
#include "check/say.h"

enum { NAMED_MAX = 6 };

static bool
is_sure(struct str certainty)
{
	return word_in(certainty, "always usually");
}

/* The rows of the table about one allergen. */
struct bringing {
	const struct table *table;
	int kind, name, of, certainty; /* columns */
	struct str allergen;
	size_t *row; /* of list_rows() */
	size_t rows;
};

static struct bringing
bringing_of(const struct table *t, struct str allergen)
{
	return (struct bringing){.table = t,
	    .kind = table_column(t, "kind"),
	    .name = table_column(t, "name"),
	    .of = table_column(t, "allergen"),
	    .certainty = table_column(t, "certainty"),
	    .allergen = allergen};
}

/* Lists the rows, for one that is asked about many foods. */
static void
list_rows(struct bringing *b, struct arena *a)
{
	const struct table *t = b->table;
	VEC(size_t) row = {0};

	for (size_t i = table_find(t, 0, b->of, b->allergen); i < t->rows;
	     i = table_find(t, i + 1, b->of, b->allergen))
		vec_push(a, &row, i);
	b->row = row.v;
	b->rows = row.n;
}

/* What is known after some rows. */
struct verdict {
	size_t longest; /* of the words that name the food; 0 none does */
	bool by_word, by_group;
};

static void
judge(const struct bringing *b, size_t row, const struct ingredient *in, struct verdict *v)
{
	struct str kind = table_cell(b->table, row, b->kind);
	struct str name = table_cell(b->table, row, b->name);
	bool sure;

	if (str_is_z(kind, "word")
		? name.n <= v->longest || !food_is_named(in, name)
		: !str_is_z(kind, "food-group") || !str_is(name, in->group))
		return;
	sure = is_sure(table_cell(b->table, row, b->certainty));
	if (str_is_z(kind, "food-group")) {
		v->by_group = sure;
	} else {
		v->longest = name.n;
		v->by_word = sure;
	}
}

/* The food brings the allergen, surely or as a rule: by the longest word of the
 * table that names it, else by its group. */
static bool
brings(const struct bringing *b, const struct ingredient *in)
{
	struct verdict v = {0, false, false};

	for (size_t i = 0; i < b->rows; i++)
		judge(b, b->row[i], in, &v);
	return v.longest ? v.by_word : v.by_group;
}

bool
food_brings(const struct table *t, const struct ingredient *in, struct str allergen)
{
	struct bringing b = bringing_of(t, allergen);
	struct verdict v = {0, false, false};

	for (size_t i = table_find(t, 0, b.of, allergen); i < t->rows;
	     i = table_find(t, i + 1, b.of, allergen))
		judge(&b, i, in, &v);
	return v.longest ? v.by_word : v.by_group;
}

static bool
is_named_already(const struct str *item, size_t items, struct str one)
{
	for (size_t i = 0; i < items; i++)
		if (words_are(item[i], one))
			return true;
	return false;
}

/* The first few ingredients of the dish that bring the allergen. */
static size_t
bringers(const struct check *k, const struct table *t, const struct dish *d,
    struct str allergen, struct str *item)
{
	struct bringing b = bringing_of(t, allergen);
	size_t n = 0;

	list_rows(&b, k->arena);
	for (size_t p = 0; p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].ingredients && n < NAMED_MAX; i++) {
			const struct ingredient *in = &d->part[p].ingredient[i];

			if (!is_named_already(item, n, in->item) && brings(&b, in))
				item[n++] = in->item;
		}
	return n;
}

/* An allergen's row is one of the region's list. Where cereals with gluten are
 * listed, wheat is one of them. */
static bool
is_of_region(const struct draft *d, const struct table *t, size_t row)
{
	bool us = !d->region || strcmp(d->region, "us") == 0;

	if (!str_is_z(table_cell(t, row, table_column(t, us ? "us" : "eu")), "1"))
		return false;
	return us || !str_is_z(table_cell(t, row, table_column(t, "allergen")), "wheat");
}

static struct str
allergens_of(const struct check *k, const struct table *t, const struct dish *d)
{
	struct buf b = buf_in(k->arena);
	int kind = table_column(t, "kind"), called = table_column(t, "name");

	for (size_t i = table_find(t, 0, kind, STR("allergen")); i < t->rows;
	     i = table_find(t, i + 1, kind, STR("allergen"))) {
		struct str item[NAMED_MAX], name = table_cell(t, i, called);
		struct str items;
		size_t n;

		if (!is_of_region(k->draft, t, i))
			continue;
		n = bringers(k, t, d, table_cell(t, i, table_column(t, "allergen")), item);
		items = say_list(k, item, n);
		if (n)
			buf_fmt(
			    &b, "%s%.*s (%.*s)", b.n ? ", " : "", SAY(name), SAY(items));
	}
	return buf_str(&b);
}

void
check_allergen(struct check *k)
{
	const struct table *t = grammar_table(k->grammar, "allergens");

	for (size_t i = 0; t && i < k->draft->dishes; i++) {
		const struct dish *d = &k->draft->dish[i];
		struct str found = allergens_of(k, t, d);

		if (found.n)
			finding_raise(k, d->place, (struct spot){(int)i, -1, -1},
			    "allergens by the names of the ingredients: %.*s. Read the "
			    "labels too; "
			    "the list is no proof that anything else is absent",
			    SAY(found));
	}
}

/* ---- allergen-claim ------------------------------------------------------ */

static void
check_claim(struct check *k, const struct table *t, const struct remark *r)
{
	struct str item[NAMED_MAX], items;
	int dish = r->dish >= 0 ? r->dish : finding_spot(k, r->place).dish;
	size_t n;

	if (dish < 0)
		return;
	n = bringers(k, t, &k->draft->dish[dish], r->detail, item);
	if (n == 0)
		return;
	items = say_list(k, item, n);
	finding_raise(k, r->place, (struct spot){dish, r->part, r->step},
	    "\"%.*s\", but %.*s %s %.*s. Somebody may rely on the claim: take it back, or "
	    "name "
	    "what replaces it",
	    SAY(r->text), SAY(items), n > 1 ? "bring" : "brings", SAY(r->detail));
}

void
check_allergen_claim(struct check *k)
{
	const struct table *t = grammar_table(k->grammar, "allergens");

	for (size_t i = 0; t && i < k->draft->remarks; i++)
		if (k->draft->remark[i].kind == REMARK_CLAIM_FREE_OF)
			check_claim(k, t, &k->draft->remark[i]);
}
