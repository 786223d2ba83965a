/* SPDX-License-Identifier: ISC */
/*
 * How a recipe prints the name of a food.
 *
 *     "spuds" -> potatoes, "worcestershire" -> Worcestershire sauce
 */
#include "clause/maker.h"
#include "grammar/inflect.h"

/* The last word of a lemma put in the plural. */
static struct str
plural_of(const struct maker *m, const struct lexeme *l)
{
	struct str given = lexeme_get(l, "plural");
	size_t cut = l->lemma.n;

	if (lexeme_has(l, "mass"))
		return l->lemma;
	while (cut > 0 && l->lemma.p[cut - 1] != ' ')
		cut--;
	if (!given.n)
		given = inflect_plural(m->a, str_cut(l->lemma, cut, l->lemma.n));
	return arena_fmt(m->a, "%.*s%.*s", (int)cut, l->lemma.p, (int)given.n, given.p);
}

struct str
token_said(const struct maker *m, const struct token *t)
{
	struct str s = words_of(m, t->text);
	char *p = arena_alloc(m->a, s.n + 1, 1);

	for (size_t i = 0; i < s.n; i++)
		p[i] = to_lower(s.p[i]);
	return (struct str){p, s.n};
}

/* "Worcestershire sauce": the first words of the lemma take a capital. */
static struct str
proper_words(const struct maker *m, const struct reading *r)
{
	struct str s = arena_str(
	    m->a, r->form == FORM_PLURAL ? plural_of(m, r->lexeme) : r->lexeme->lemma);
	uint64_t words = 0, seen = 0;

	str_to_u64(lexeme_get(r->lexeme, "proper"), &words);
	for (size_t i = 0; i < s.n && seen < words; i++)
		if (i == 0 || s.p[i - 1] == ' ') {
			((char *)s.p)[i] = to_upper(s.p[i]);
			seen++;
		}
	return s;
}

/* "yoghurt" for yogurt: another spelling of the lemma, and no nickname: near in
 * length, the same beginning, few letters apart. */
static bool
is_spelling(struct str said, struct str lemma)
{
	size_t same = 0, tail = 0, longer = said.n > lemma.n ? said.n : lemma.n;

	if (said.n + 2 < lemma.n || lemma.n + 2 < said.n || str_starts(lemma, said))
		return false;
	while (same < said.n && same < lemma.n && said.p[same] == lemma.p[same])
		same++;
	while (tail + same < said.n && tail + same < lemma.n &&
	       said.p[said.n - 1 - tail] == lemma.p[lemma.n - 1 - tail])
		tail++;
	return same >= 2 && same + tail < longer && longer - same - tail <= 2;
}

struct str
food_name(const struct maker *m, const struct token *t, const struct reading *r)
{
	struct str said = token_said(m, t), lemma;

	if (!r)
		return said;
	if (lexeme_get(r->lexeme, "proper").n)
		return proper_words(m, r);
	if (is_spelling(said, r->lexeme->lemma))
		return said;
	lemma = r->form == FORM_PLURAL ? plural_of(m, r->lexeme) : r->lexeme->lemma;
	return lemma;
}
