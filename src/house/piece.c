/* SPDX-License-Identifier: ISC */
/*
 * Counts after rescaling.
 */
#include "house/piece.h"

#include "grammar/density.h"
#include "grammar/grammar.h"
#include "grammar/inflect.h"
#include "house/convert.h"
#include "house/words.h"

/* Teaspoons in one egg, yolk or white: grams of one by grams of a cup. */
static bool
teaspoons_of(const struct house *h, const struct ingredient *in, struct ratio *out)
{
	struct density piece, cup;
	const struct unit *unit;

	if (!h->grammar || !str_is_z(in->group, "egg"))
		return false;
	unit = grammar_unit(h->grammar, STR("cup"), "us");
	if (!unit || !density_piece(h->grammar, in->key, in->item, STR("each"), &piece) ||
	    !density_volume(h->grammar, in->key, in->item, unit, &cup))
		return false;
	*out = ratio_mul(ratio_div(piece.grams, cup.grams), ratio_int(48));
	return true;
}

bool
piece_split(
    struct arena *a, const struct house *h, const struct ingredient *in, struct split *out)
{
	const struct amount *n = &in->amount;
	struct portion p = portion_of(in);
	struct buf rest = buf_in(a);
	struct spoons spoons;
	struct measured m;
	struct ratio tsp, all;

	if (!p.reckoned || !n->known || n->unit || n->max.den == 1 ||
	    ratio_order(n->min, n->max) != 0 || !teaspoons_of(h, in, &all))
		return false;
	out->whole = n->max.num / n->max.den;
	out->rest = STR("");
	tsp = ratio_mul(ratio_sub(n->max, ratio_int(out->whole)), all);
	tsp = ratio_int(ratio_round(tsp));
	if (ratio_order(ratio_add(tsp, ratio_make(1, 2)), all) >= 0) {
		out->whole++;
		return true;
	}
	if (tsp.num == 0 && out->whole == 0)
		tsp = ratio_int(1);
	spoons = convert_spoons(h, n);
	m = kitchen_spoons(tsp, &spoons, CLOSE);
	kitchen_put(&rest, &m, &m, h->style->unit_words);
	out->rest = words_styled(a, h, buf_str(&rest));
	return true;
}

/* The words with the last of them, `from`, made `to`; as they are where it is
 * not the last. */
static struct str
with_last(struct arena *a, struct str words, struct str from, struct str to)
{
	size_t before = words.n - (from.n < words.n ? from.n : words.n);

	if (from.n == 0 || !str_ends(words, from) || (before && words.p[before - 1] != ' '))
		return words;
	return arena_fmt(a, "%.*s%.*s", (int)before, words.p, (int)to.n, to.p);
}

static const struct reading *
reading_of(struct arena *a, const struct grammar *g, struct str key)
{
	const struct entry *e;

	/* a grammar of tables alone has no words */
	if (!g || g->lexicon.entry.n == 0)
		return NULL;
	e = lexicon_find(&g->lexicon, lexicon_key(a, key));
	return e ? entry_reading(e, grammar_class(g, "FOOD")) : NULL;
}

/* The plural of the food's last word; empty for what is never counted. */
static struct str
plural_of(struct arena *a, const struct house *h, struct str key, struct str noun)
{
	const struct reading *r = reading_of(a, h->grammar, key);
	struct str given = r ? lexeme_get(r->lexeme, "plural") : STR("");

	if (r && lexeme_has(r->lexeme, "mass"))
		return STR("");
	return given.n ? given : inflect_plural(a, noun);
}

struct str
piece_item(
    struct arena *a, const struct house *h, const struct ingredient *in, struct ratio count)
{
	struct portion p = portion_of(in);
	size_t last = in->key.n;
	struct str one, many;

	if (!p.reckoned || (in->amount.present && in->amount.unit))
		return in->item;
	while (last > 0 && in->key.p[last - 1] != ' ' && in->key.p[last - 1] != '-')
		last--;
	one = str_cut(in->key, last, in->key.n);
	many = plural_of(a, h, in->key, one);
	if (ratio_order(count, ratio_int(1)) > 0)
		return many.n ? with_last(a, in->item, one, many) : in->item;
	return with_last(a, in->item, many, one);
}
