/* SPDX-License-Identifier: ISC */
/*
 * What stands in a list and what is used: a food that is named among the list's
 * words stands in it, and one that is named again behind it is used, whatever
 * became of those words.
 */
#include "remark/namings.h"

/* The food is named in [beg, end), and not only to say that there is none. */
static bool
is_named_in(
    const struct maker *m, const struct namings *n, struct str key, struct span tokens)
{
	for (size_t i = namings_at(n, (struct naming){key, tokens.beg});
	     i < n->v.n && str_is(n->v.v[i].key, key) && n->v.v[i].token < tokens.end; i++)
		if (!is_taken_back(m, n->v.v[i].token, false))
			return true;
	return false;
}

/* One of the words of a longer word: the butter of a list that runs "rice butter
 * chicken stock". */
static bool
is_within_word(const struct maker *m, struct str key, struct span tokens)
{
	for (uint32_t i = tokens.beg; i < tokens.end; i++) {
		struct str words = token_of(m, i)->norm;

		while (words.p)
			if (str_is(str_next(&words, ' '), key))
				return true;
	}
	return false;
}

/* "two drops of pink", of the pink food colouring */
static bool
is_named_by_colour(const struct maker *m, const struct ingredient *in, uint32_t from)
{
	struct str first = str_cut(in->item, 0, str_find_char(in->item, ' '));

	if (first.n == in->item.n || !first.n)
		return false;
	for (uint32_t i = from; i + 1 < m->c.tokens.token.n; i++)
		if (token_has(m, i, "OF") && str_is(token_of(m, i + 1)->norm, first) &&
		    !token_reading(m, i + 2, "FOOD"))
			return true;
	return false;
}

/* The tokens from the first food of the dish's list to the last. */
static struct span
list_of(const struct maker *m, const struct dish *d)
{
	struct span s = {UINT32_MAX, 0};

	for (size_t p = 0; p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].ingredients; i++) {
			const struct place *at = &d->part[p].ingredient[i].place;

			if (!d->part[p].ingredient[i].listed)
				continue;
			s.beg = at->span.beg < s.beg ? at->span.beg : s.beg;
			s.end = at->span.end > s.end ? at->span.end : s.end;
		}
	return s.end ? (struct span){token_from(m, s.beg), token_from(m, s.end)}
		     : (struct span){0, 0};
}

/* "the syrup", of golden syrup */
static struct str
head_of(struct str key)
{
	size_t beg = key.n;

	while (beg > 0 && key.p[beg - 1] != '-' && key.p[beg - 1] != ' ')
		beg--;
	return str_cut(key, beg, key.n);
}

static bool
ends_with(struct str words, struct str end)
{
	return words.n >= end.n && str_is(str_cut(words, words.n - end.n, words.n), end);
}

/* No other food of the draft, and no dish, is called so. */
static bool
is_only_one(const struct maker *m, struct str head, const struct ingredient *in)
{
	for (size_t i = 0; i < m->d->dishes; i++) {
		const struct dish *d = &m->d->dish[i];

		if (ends_with(d->name, head))
			return false;
		for (size_t p = 0; p < d->parts; p++)
			for (size_t k = 0; k < d->part[p].ingredients; k++)
				if (&d->part[p].ingredient[k] != in &&
				    ends_with(d->part[p].ingredient[k].key, head))
					return false;
	}
	return true;
}

static void
fill_ingredient(
    struct maker *m, const struct namings *n, struct span list, struct ingredient *in)
{
	struct span later = {list.end, (uint32_t)m->c.tokens.token.n};
	struct str head = head_of(in->key);

	if (!in->listed)
		in->listed =
		    is_named_in(m, n, in->key, list) || is_within_word(m, in->key, list);
	else if (!in->used)
		in->used = is_named_in(m, n, in->key, later) ||
			   (is_only_one(m, head, in) && is_named_in(m, n, head, later)) ||
			   is_named_by_colour(m, in, list.end);
}

void
listed_fill(struct maker *m, const struct namings *n)
{
	for (size_t i = 0; i < m->d->dishes; i++) {
		struct dish *d = &m->d->dish[i];
		struct span list = list_of(m, d);

		for (size_t p = 0; list.end && p < d->parts; p++)
			for (size_t k = 0; k < d->part[p].ingredients; k++)
				fill_ingredient(m, n, list, &d->part[p].ingredient[k]);
	}
}
