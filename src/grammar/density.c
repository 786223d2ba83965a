/* SPDX-License-Identifier: ISC */
/*
 * butter  unsalted butter;melted butter    227  14.2        USDA ...
 */
#include "grammar/density.h"

#include "grammar/grammar.h"

/* The columns of weights and how many of each make a US cup. */
static const struct {
	const char *column, *unit;
	int64_t per_cup;
} volumes[] = {
    {"g_per_cup", "cup", 1},
    {"g_per_tbsp", "tablespoon", 16},
    {"g_per_tsp", "teaspoon", 48},
};
enum { VOLUMES = sizeof volumes / sizeof *volumes, AKIN = 4 };

static struct str
singular(struct str s)
{
	s.n -= s.n > 0 && s.p[s.n - 1] == 's';
	return s;
}

/* Keys of the lexicon have hyphens for blanks; "breadcrumbs" are breadcrumb. */
static bool
is_same(struct str a, struct str b)
{
	a = singular(a);
	b = singular(b);
	if (a.n != b.n)
		return false;
	for (size_t i = 0; i < a.n; i++)
		if ((a.p[i] == '-' ? ' ' : a.p[i]) != (b.p[i] == '-' ? ' ' : b.p[i]))
			return false;
	return a.n > 0;
}

/* Where a row has the names of its food. */
struct naming {
	int food, aliases;
};

static struct naming
naming_of(const struct table *t)
{
	return (struct naming){table_column(t, "food"), table_column(t, "aliases")};
}

static bool
names(const struct table *t, size_t row, struct naming by, struct str food)
{
	struct str aliases = table_cell(t, row, by.aliases);

	if (is_same(table_cell(t, row, by.food), food))
		return true;
	while (aliases.p && aliases.n)
		if (is_same(str_trim(str_next(&aliases, ';')), food))
			return true;
	return false;
}

/* "sliced" and "slices": the first four letters at least, all but two. */
static bool
is_akin(struct str a, struct str b)
{
	size_t n = 0, least = a.n < b.n ? a.n : b.n;

	while (n < least && a.p[n] == b.p[n])
		n++;
	return n >= AKIN && n + 2 >= least;
}

static struct str
next_word(struct str *rest)
{
	size_t n = 0;
	struct str word;

	while (rest->n && !is_alpha(rest->p[0]))
		*rest = str_cut(*rest, 1, rest->n);
	while (n < rest->n && is_alpha(rest->p[n]))
		n++;
	word = str_cut(*rest, 0, n);
	*rest = str_cut(*rest, n, rest->n);
	return word;
}

static bool
holds_word(struct str words, struct str word)
{
	struct str said;

	while ((said = next_word(&words)).n)
		if (is_akin(word, said))
			return true;
	return false;
}

/* Do the words name all of "large chips", or one of "shredded or grated"? "not
 * packed" is named by no single word. */
static bool
is_named(struct str form, struct str words)
{
	bool all = true, any = false;
	struct str word;

	if (str_find(form, STR("not ")) < form.n)
		return str_find(words, form) < words.n;
	while ((word = next_word(&form)).n) {
		if (str_is_z(word, "or") || str_is_z(word, "and")) {
			if (all && any)
				return true;
			all = true;
			any = false;
			continue;
		}
		if (word.n < AKIN)
			continue;
		all = all && holds_word(words, word);
		any = true;
	}
	return all && any;
}

/* How well the row suits: its form or size is named, it is the food's default,
 * neither. */
static int
rank_of(const struct table *t, size_t row, struct str words, struct density *out)
{
	struct str size = table_cell(t, row, table_column(t, "size"));

	out->form = table_cell(t, row, table_column(t, "form"));
	out->named = is_named(out->form, words);
	/* "extra-large" says more than the "large" in it */
	if (size.n && str_find(words, size) < words.n)
		return 3 + (int)size.n;
	if (out->named)
		return 3;
	return table_cell(t, row, table_column(t, "default_for")).n ? 2 : 1;
}

/* Grams in a US cup, by the first column that the row has. */
static bool
cup_of(const struct table *t, size_t row, struct ratio *cup)
{
	for (size_t i = 0; i < VOLUMES; i++)
		if (table_number(t, row, table_column(t, volumes[i].column), cup)) {
			*cup = ratio_mul(*cup, ratio_int(volumes[i].per_cup));
			return true;
		}
	return false;
}

/* Grams in one u. A spoon has a column of its own, for the table rounds each by
 * itself; a spoon that is no US spoon holds so much more. */
static struct ratio
grams_of(const struct grammar *g, const struct table *t, size_t row, const struct unit *u,
    struct ratio cup)
{
	struct ratio own;

	for (size_t i = 0; i < VOLUMES; i++) {
		const struct unit *us = grammar_unit(g, str_of(volumes[i].unit), "us");

		if (us && str_is(u->name, us->name) &&
		    table_number(t, row, table_column(t, volumes[i].column), &own))
			return ratio_mul(own, ratio_div(u->factor, us->factor));
	}
	return ratio_mul(
	    cup, ratio_div(u->factor, grammar_unit(g, STR("cup"), "us")->factor));
}

bool
density_volume(const struct grammar *g, struct str food, struct str words,
    const struct unit *u, struct density *out)
{
	const struct table *t = grammar_table(g, "densities");
	struct naming by;
	int best = 0;

	if (!t || !u->has_base || !grammar_unit(g, STR("cup"), "us"))
		return false;
	by = naming_of(t);
	for (size_t i = 0; i < t->rows; i++) {
		struct density d;
		struct ratio cup;
		int rank;

		if (!names(t, i, by, food) || !cup_of(t, i, &cup))
			continue;
		rank = rank_of(t, i, words, &d);
		if (rank <= best)
			continue;
		best = rank;
		*out = d;
		out->grams = grams_of(g, t, i, u, cup);
	}
	return best > 0;
}

bool
density_piece(const struct grammar *g, struct str food, struct str words, struct str piece,
    struct density *out)
{
	const struct table *t = grammar_table(g, "densities");
	struct naming by;
	int best = 0;

	if (!t)
		return false;
	by = naming_of(t);
	for (size_t i = 0; i < t->rows; i++) {
		struct density d;
		int rank;

		if (!names(t, i, by, food) ||
		    !str_is(table_cell(t, i, table_column(t, "piece")), piece) ||
		    !table_number(t, i, table_column(t, "g_per_piece"), &d.grams))
			continue;
		rank = rank_of(t, i, words, &d);
		if (rank <= best)
			continue;
		best = rank;
		*out = d;
	}
	return best > 0;
}
