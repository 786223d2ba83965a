/* SPDX-License-Identifier: ISC */
/*
 * A run of words as a title has it, and what its last word is.
 *
 *     "our quick Sunday cheese scone dough" -> "cheese scone", a dish
 */
#include "outline/title.h"

const struct token *
title_token(const struct chart *c, uint32_t i)
{
	return &c->tokens.token.v[i];
}

bool
title_token_is(const struct chart *c, uint32_t i, const char *class_name)
{
	unsigned id = grammar_class(c->g, class_name);

	return id < CLASSES_MAX && i < c->tokens.token.n &&
	       classset_has(&title_token(c, i)->entry->classes, id);
}

const struct lexeme *
title_lexeme(const struct chart *c, const struct entry *e, const char *class_name)
{
	const struct reading *r =
	    e ? entry_reading(e, grammar_class(c->g, class_name)) : NULL;

	return r ? r->lexeme : NULL;
}

static struct str
last_word(struct str s)
{
	size_t at = s.n;

	while (at > 0 && s.p[at - 1] != ' ')
		at--;
	return str_cut(s, at, s.n);
}

/* "it's raining, hot hot onion pakora": an unlisted verb or adverb, a doubled word. */
static bool
is_talk(const struct chart *c, uint32_t i)
{
	struct str word = title_token(c, i)->norm;

	if (i + 1 < c->tokens.token.n && str_is(word, title_token(c, i + 1)->norm))
		return true;
	return title_token_is(c, i, "UNLISTED") &&
	       (str_ends(word, STR("ing")) || str_ends(word, STR("ly")));
}

/* Words that a title does without: "our", "a quick", "regular old". */
bool
title_drops(const struct chart *c, uint32_t i)
{
	static const char *const classes[] = {"DET", "ART", "QUANT", "FILLER", "CALL",
	    "COMMA", "COLON", "BREAK", "FOR", "DAYWORD", "EATER"};
	const struct entry *e = title_token(c, i)->entry;

	for (size_t k = 0; k < sizeof classes / sizeof *classes; k++)
		if (title_token_is(c, i, classes[k]))
			return true;
	return is_talk(c, i) || lexeme_has(title_lexeme(c, e, "DISHMOD"), "praise") ||
	       title_token_is(c, i, "COURSE") ||
	       lexeme_has(title_lexeme(c, e, "FOODMOD"), "vague") ||
	       lexeme_has(title_lexeme(c, e, "FOODMOD"), "size");
}

static bool
is_proper(const struct token *t)
{
	for (size_t i = 0; i < t->entry->reading.n; i++)
		if (lexeme_has(t->entry->reading.v[i].lexeme, "proper"))
			return true;
	return false;
}

/* The words in small letters, single-spaced, but for "Caesar", "Yorkshire". */
static void
put_word(struct buf *b, const struct chart *c, const struct token *t)
{
	struct str s = str_cut(c->script->text, t->text.beg, t->text.end);
	bool proper = is_proper(t);

	if (b->n)
		buf_put_char(b, t->flags & TOKEN_HYPHEN ? '-' : ' ');
	for (size_t i = 0; i < s.n; i++)
		if (is_blank(s.p[i]))
			i + 1 < s.n &&is_blank(s.p[i + 1]) ? (void)0 : buf_put_char(b, ' ');
		else
			buf_put_char(
			    b, proper && i == 0 ? to_upper(s.p[i]) : to_lower(s.p[i]));
}

/* The classes of a word that tell a name's sort. */
struct marks {
	bool dish, maybe, meal, part, weak, food;
};

static struct marks
marks_of(const struct chart *c, const struct entry *e)
{
	const struct lexeme *part = title_lexeme(c, e, "PARTHEAD");
	const struct lexeme *maybe = title_lexeme(c, e, "DISHFOOD");

	return (struct marks){title_lexeme(c, e, "DISH") != NULL, maybe != NULL,
	    lexeme_has(maybe, "meal"), part != NULL, lexeme_has(part, "weak"),
	    title_lexeme(c, e, "FOOD") != NULL};
}

static enum name_sort
sort_of(struct marks m, bool lone)
{
	m.part = m.part && !(lone && m.weak);
	m.maybe = m.maybe && !(lone && m.meal);
	if (m.part && (m.dish || m.maybe))
		return NAME_EITHER;
	if (m.part)
		return NAME_PART;
	if (m.dish)
		return NAME_DISH;
	if (m.maybe)
		return NAME_MAYBE;
	return m.food ? NAME_FOOD : NAME_UNLISTED;
}

bool
title_names_food(const struct chart *c, uint32_t beg, uint32_t end)
{
	static const char *const classes[] = {"FOOD", "DISH", "DISHFOOD", "PARTHEAD"};

	for (uint32_t i = beg; i < end; i++)
		for (size_t k = 0; k < sizeof classes / sizeof *classes; k++)
			if (title_token_is(c, i, classes[k]))
				return true;
	return false;
}

static struct str
head_in(const struct chart *c, const struct entry *e)
{
	static const char *const classes[] = {"DISH", "DISHFOOD", "PARTHEAD", "FOOD"};

	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++) {
		const struct lexeme *l = title_lexeme(c, e, classes[i]);

		if (l)
			return l->lemma;
	}
	return STR("");
}

/* The last word in the singular: "bean" of "green beans", one entry. */
static struct str
head_of(const struct chart *c, const struct token *last)
{
	struct str head = head_in(c, last->entry), word = last_word(head), single;

	if (!head.n)
		return last_word(last->norm);
	if (word.n == head.n)
		return head;
	single = head_in(c, lexicon_find(&c->g->lexicon, lexicon_key(c->arena, word)));
	return single.n && str_find_char(single, ' ') == single.n ? single : word;
}

/* A food that is never made a dish of. */
static bool
is_pantry(const struct lexeme *food)
{
	static const char *const groups[] = {"salt", "pepper", "spice", "herb", "oil",
	    "fat", "sugar", "flour", "starch", "leavening", "yeast", "water", "vinegar",
	    "extract", "butter", "cream", "setting-agent"};
	struct str group = lexeme_get(food, "group");

	for (size_t i = 0; i < sizeof groups / sizeof *groups; i++)
		if (str_is_z(group, groups[i]))
			return true;
	return false;
}

static bool
is_raw(const struct chart *c, const struct entry *e)
{
	return lexeme_has(title_lexeme(c, e, "PARTHEAD"), "raw");
}

static bool
is_dish_word(const struct chart *c, const struct entry *e)
{
	return title_lexeme(c, e, "DISH") || title_lexeme(c, e, "DISHFOOD");
}

/* What the words of a name say of its sort. */
static struct marks
marks_of_name(const struct chart *c, struct opening *x)
{
	const struct entry *last = title_token(c, x->end - 1)->entry;
	struct marks m = marks_of(c, last);

	/* "garlic butter" is made, "cold butter" is bought. */
	if (m.weak && m.food &&
	    (x->end < x->token + 2 || !title_token_is(c, x->end - 2, "FOOD")))
		m.part = false;
	/* "tomato sauce" is one entry, a food: its last word tells the rest. */
	if (m.food && !m.dish && !m.maybe && !m.part && !x->lone) {
		m = marks_of(c, lexicon_find(&c->g->lexicon, last_word(last->form)));
		m.food = true;
		m.part = m.part && !m.weak;
		x->bought = x->end == x->token + 1;
	}
	if (m.meal && !title_names_food(c, x->token, x->end - 1))
		m.maybe = false;
	return m;
}

/* "cheese scone dough" is the scones. */
static void
drop_raw(const struct chart *c, struct opening *x)
{
	const struct lexicon *l = &c->g->lexicon;
	struct str stem = str_trim(str_cut(x->name, 0, x->name.n - last_word(x->name).n));
	struct str key = lexicon_key(c->arena, last_word(stem));

	if (x->lone || !is_raw(c, lexicon_find(l, last_word(x->name))) ||
	    !is_dish_word(c, lexicon_find(l, key)))
		return;
	x->raw = true;
	x->name = stem;
	x->lone = str_find_char(stem, ' ') == stem.n;
	x->bought = false;
	x->sort = sort_of(marks_of(c, lexicon_find(l, key)), x->lone);
	x->head = last_word(stem);
}

void
opening_name(const struct chart *c, struct opening *x)
{
	struct buf b = buf_in(c->arena);
	const struct token *last;

	while (x->token + 1 < x->end && title_drops(c, x->token))
		x->token++;
	for (uint32_t i = x->token; i < x->end; i++)
		put_word(&b, c, title_token(c, i));
	x->name = buf_str(&b);
	last = title_token(c, x->end - 1);
	x->lone = str_find_char(x->name, ' ') == x->name.n;
	x->sort = sort_of(marks_of_name(c, x), x->lone);
	if (title_token_is(c, x->end - 1, "EQUIP") && x->sort == NAME_UNLISTED)
		x->sort = NAME_TOOL;
	if (x->lone && x->sort == NAME_MAYBE && title_token_is(c, x->end - 1, "PIECE"))
		x->sort = NAME_UNLISTED;
	if (x->lone && x->sort == NAME_DISH && title_token_is(c, x->end - 1, "COURSE"))
		x->sort = NAME_MAYBE;
	x->head = head_of(c, last);
	x->wide = lexeme_get(title_lexeme(c, last->entry, "FOOD"), "kind");
	if (!x->wide.n)
		x->wide = lexeme_get(title_lexeme(c, last->entry, "DISH"), "kind");
	x->pantry = is_pantry(title_lexeme(c, last->entry, "FOOD"));
	drop_raw(c, x);
}
