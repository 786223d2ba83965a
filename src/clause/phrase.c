/* SPDX-License-Identifier: ISC */
/*
 * Noun phrases of a clause in printed form: foods, tools, pronouns, things.
 *
 *     "your big old pan of cold water" -> "the pan of cold water"
 */
#include "clause/framer.h"

static bool
is_divided(const struct framer *r, const struct mention *x)
{
	const struct part *p = r->w->part;

	for (size_t i = 0; p && i < p->ingredients; i++)
		if (str_is(p->ingredient[i].key, x->key))
			return p->ingredient[i].divided;
	return false;
}

/* "half the sugar", "the rest of the butter": the words before the food. */
static struct str
share_words(const struct framer *r, const struct node *n, const struct mention *x)
{
	struct field_nodes f;
	struct node before = *n;
	struct str share;
	static const char *const tails[] = {
	    " the", " your", " our", " my", " that", " this", " those", " these", " of"};

	if (!node_field(&r->m->c, n, "food", &f) || f.v[0].beg == n->beg)
		return x->item;
	before.end = f.v[0].beg;
	share = lower(r, words_of(r->m, node_text(&r->m->c, &before)));
	for (size_t i = 0; i < sizeof tails / sizeof *tails; i++)
		while (str_ends(share, str_of(tails[i])))
			share.n -= strlen(tails[i]);
	return arena_fmt(r->m->a, "%.*s%s the %.*s", (int)share.n, share.p,
	    str_ends(share, STR("half")) ? "" : " of", (int)x->item.n, x->item.p);
}

struct str
phrase_food(const struct framer *r, const struct node *n, const struct mention *x)
{
	struct buf b = buf_in(r->m->a);

	if (x->share)
		return share_words(r, n, x);
	if (x->amount.known && is_divided(r, x)) {
		slot_put_amount(r->m->slots, &b, &x->amount, x->key);
		buf_put_z(&b, x->amount.unit ? " of the " : " of the ");
	} else {
		buf_put_z(&b, "the ");
	}
	buf_put(&b, x->item);
	return buf_str(&b);
}

bool
phrase_holds(const struct str *list, size_t count, struct str words)
{
	for (size_t i = 0; i < count; i++)
		if (str_is(list[i], words))
			return true;
	return false;
}

/* A list of foods from r->at on: commas and "and" between them go. */
size_t
phrase_foods(struct framer *r, struct str *out, size_t room)
{
	size_t count = 0;

	while (is_food(r, r->at)) {
		struct mention x[MENTIONS_MAX];
		const struct node *n = node_at(r, r->at);
		size_t found = mentions_of(r->m, n, x, MENTIONS_MAX);
		uint32_t next = r->at + 1;

		for (size_t i = 0; i < found && count < room; i++) {
			out[count] = phrase_food(r, n, &x[i]);
			count += !phrase_holds(out, count, out[count]);
		}
		while (is(r, next, "COMMA") || is(r, next, "AND") ||
		       is(r, next, "FILLER") || is(r, next, "MARK") || is(r, next, "PLUS"))
			next++;
		if (!is_food(r, next)) {
			r->at++;
			break;
		}
		r->at = next;
	}
	return count;
}

bool
phrase_is_pronoun(const struct framer *r, uint32_t at)
{
	if (!is(r, at, "PRON"))
		return false;
	return !is(r, at, "DET") || !node_at(r, at + 1) || is(r, at + 1, "PREP") ||
	       is(r, at + 1, "COMMA") || is(r, at + 1, "AND") ||
	       is(r, at + 1, "PARTICLE") || is(r, at + 1, "UNTIL") ||
	       is(r, at + 1, "ADV") || is(r, at + 1, "FILLER") || is(r, at + 1, "MARK") ||
	       node_at(r, at + 1)->made != RAW || is(r, at + 1, "STATE") ||
	       is(r, at + 1, "SUBJ");
}

bool
phrase_is_plural(struct str s)
{
	return str_is_z(s, "them") || str_is_z(s, "those") || str_is_z(s, "these") ||
	       str_is_z(s, "em") || str_is_z(s, "'em") || str_is_z(s, "they") ||
	       str_is_z(s, "guys");
}

/* A word that may stand in a noun phrase of things that no list has. */
static bool
is_noun_word(const struct framer *r, uint32_t at)
{
	return is(r, at, "WORD") && !is(r, at, "PREP") && !is(r, at, "AND") &&
	       !is(r, at, "SUBJ") && !is(r, at, "AUX") && !is(r, at, "PRON") &&
	       !is(r, at, "FILLER") && !is(r, at, "MARK") && !is(r, at, "UNTIL") &&
	       !is(r, at, "WHEN") && !is(r, at, "REL") && !is(r, at, "BECAUSE") &&
	       !is(r, at, "COND") && !is(r, at, "BUT") && !is(r, at, "OR") &&
	       !is(r, at, "WH") && !is(r, at, "NEG") && !is(r, at, "DET") &&
	       !is(r, at, "ART");
}

/* "a pan of cold water", "the back of a fork" */
static struct str
with_of(struct framer *r, struct str words)
{
	uint32_t at = r->at;
	struct str more;

	if (!word(r, at, "of"))
		return words;
	r->at++;
	more = phrase_take(r);
	if (!more.n)
		r->at = at;
	if (str_starts(more, STR("the ")) && is_food(r, at + 1))
		more = str_cut(more, 4, more.n);
	return more.n ? arena_fmt(r->m->a, "%.*s of %.*s", (int)words.n, words.p,
			    (int)more.n, more.p)
		      : words;
}

static bool
is_thing(const struct framer *r, uint32_t at)
{
	static const char *const classes[] = {
	    "THING", "EQUIP", "GENERICFOOD", "DISH", "PARTHEAD", "FOOD", "FOODQ"};

	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++)
		if (is(r, at, classes[i]) || made(r, at, classes[i]))
			return true;
	return false;
}

/* "the top", "a deep cross", "its skin": the words, or "" and nothing taken. */
static struct str
take_noun(struct framer *r)
{
	struct str out = {NULL, 0};
	uint32_t at = r->at, last = 0;
	bool article = is(r, at, "ART"), definite = is(r, at, "DET");

	if (!article && !definite)
		return STR("");
	for (uint32_t i = at + 1;
	     i <= at + 4 && (is_noun_word(r, i) || made(r, i, "FOODQ")); i++)
		if (is_thing(r, i))
			last = i;
	if (last == 0)
		return STR("");
	add(r, &out, article ? said(r, at) : STR("the"));
	for (at++; at <= last; at++)
		add(r, &out, said(r, at));
	r->at = at;
	return with_of(r, out);
}

static struct str
equipment_words(struct framer *r, uint32_t det)
{
	struct str words = said(r, r->at);
	bool the = det != UINT32_MAX && !is(r, det, "ART");

	r->at++;
	if (det != UINT32_MAX)
		words = arena_fmt(r->m->a, "%.*s %.*s", the ? 3 : (int)said(r, det).n,
		    the ? "the" : said(r, det).p, (int)words.n, words.p);
	return with_of(r, words);
}

/* A noun phrase at r->at: a thing, foods, a pronoun, other words. */
struct str
phrase_take(struct framer *r)
{
	struct str food[FRAME_FOODS_MAX];
	uint32_t at = r->at;

	while (is(r, at, "ADV") || is(r, at, "FILLER") || is(r, at, "APPROX") ||
	       made(r, at, "VAMT"))
		at++;
	if (made(r, at, "EQ")) {
		r->at = at;
		return equipment_words(r, UINT32_MAX);
	}
	if ((is(r, at, "ART") || is(r, at, "DET") || is(r, at, "QUANT")) &&
	    made(r, at + 1, "EQ")) {
		r->at = at + 1;
		return equipment_words(r, at);
	}
	if (is_food(r, at)) {
		r->at = at;
		return list_join(r->m->a, food, phrase_foods(r, food, FRAME_FOODS_MAX));
	}
	if (phrase_is_pronoun(r, at) &&
	    (word(r, at, "nothing") || word(r, at, "everything"))) {
		r->at = at + 1;
		return said(r, at);
	}
	if (phrase_is_pronoun(r, at)) {
		r->at = at + 1;
		return phrase_is_plural(node_token(&r->m->c, node_at(r, at))->norm)
			   ? STR("them")
			   : STR("it");
	}
	r->at = at;
	return take_noun(r);
}
