/* SPDX-License-Identifier: ISC */
/*
 * What checks ask about a food, from its key and group and from the tables
 * food_classes.tsv and ready.tsv.
 */
#include "check/food.h"

struct str
food_head(struct str key)
{
	size_t beg = key.n;

	while (beg > 0 && word_fold(key.p[beg - 1]) != ' ')
		beg--;
	return str_cut(key, beg, key.n);
}

bool
food_matches(const struct ingredient *a, const struct ingredient *b)
{
	if (words_have(a->key, b->key) || words_have(b->key, a->key) ||
	    words_end(a->key, b->key) || words_end(b->key, a->key))
		return true;
	if (a->kind.n && (words_are(a->kind, b->kind) || words_are(a->kind, b->key)))
		return true;
	return b->kind.n && words_are(b->kind, a->key);
}

bool
food_is_named(const struct ingredient *in, struct str name)
{
	return words_end(in->key, name) || words_end(in->item, name) ||
	       (in->item.n > 1 && in->item.p[in->item.n - 1] == 's' &&
		   words_end(str_cut(in->item, 0, in->item.n - 1), name));
}

bool
food_is_ready(const struct check *k, const struct ingredient *in)
{
	const struct table *t = grammar_table(k->grammar, "ready");
	int column = t ? table_column(t, "word") : -1;

	if (in->amount.unit && word_in(in->amount.unit->name, "can jar"))
		return true;
	for (size_t i = 0; t && i < t->rows; i++) {
		struct str word = table_cell(t, i, column);

		if (words_have(in->key, word) || words_have(in->item, word) ||
		    words_have(in->preparation, word) || words_are(in->key, word))
			return true;
	}
	return false;
}

/* The row of food_classes.tsv whose value ends the name and is longest. */
static struct str
class_by_word(const struct table *t, struct str name)
{
	int match = table_column(t, "match"), value = table_column(t, "value");
	int class = table_column(t, "food_class");
	struct str best = {NULL, 0};
	size_t longest = 0;

	for (size_t i = 0; i < t->rows; i++) {
		struct str word = table_cell(t, i, value);

		if (!str_is_z(table_cell(t, i, match), "word") || word.n <= longest ||
		    !words_end(name, word))
			continue;
		longest = word.n;
		best = table_cell(t, i, class);
	}
	return best;
}

struct str
food_class(const struct check *k, const struct ingredient *in)
{
	const struct table *t = grammar_table(k->grammar, "food_classes");
	struct str none = {NULL, 0}, group = none, word;
	int match = t ? table_column(t, "match") : -1;
	int value = t ? table_column(t, "value") : -1;

	if (!t || in->group.n == 0)
		return none;
	for (size_t i = 0; i < t->rows && !group.n; i++)
		if (str_is_z(table_cell(t, i, match), "group") &&
		    str_is(table_cell(t, i, value), in->group))
			group = table_cell(t, i, table_column(t, "food_class"));
	if (group.n == 0)
		return none;
	word = class_by_word(t, in->key);
	return word.n ? word : group;
}

struct str
food_class_of_name(const struct check *k, struct str name)
{
	const struct table *t = grammar_table(k->grammar, "food_classes");

	return t ? class_by_word(t, name) : (struct str){NULL, 0};
}

bool
food_is_free(const struct ingredient *in)
{
	return in->free || food_is(in, "salt pepper water oil fat butter herb");
}

bool
food_is_little(const struct ingredient *in)
{
	return food_is(in, "oil fat butter salt pepper spice herb water condiment");
}

bool
food_is_product(const struct draft *d, const struct ingredient *in)
{
	for (size_t i = 0; i < d->dishes; i++) {
		const struct dish *dish = &d->dish[i];

		if (words_end(in->item, dish->name) || words_end(dish->name, in->key) ||
		    words_end(dish->name, in->item))
			return true;
		for (size_t p = 0; p < dish->parts; p++)
			if (words_end(dish->part[p].name, in->key) ||
			    words_end(in->item, dish->part[p].name))
				return true;
	}
	return false;
}
