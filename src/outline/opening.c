/* SPDX-License-Identifier: ISC */
/*
 * Reads the nodes of the passes "name" and "turn", and the headings.
 *
 *     "So, a quick gooseberry sauce." -> topic, part, "gooseberry sauce"
 */
#include "outline/opening.h"

#include "scan/value.h"

#include <stdlib.h>

/* A longer run of words is a list without commas. */
enum { WORDS_MAX = 4, WORDS_MAX_AND = 7 };

static const struct token *
token_at(const struct chart *c, uint32_t i)
{
	return &c->tokens.token.v[i];
}

static bool
token_is(const struct chart *c, uint32_t i, const char *class_name)
{
	unsigned id = grammar_class(c->g, class_name);

	return id < CLASSES_MAX && i < c->tokens.token.n &&
	       classset_has(&token_at(c, i)->entry->classes, id);
}

static const struct lexeme *
lexeme_of(const struct chart *c, const struct entry *e, const char *class_name)
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

/* ---- the name ------------------------------------------------------------- */

/* Words that a title does without: "our", "a quick", "regular old". */
static bool
is_dropped(const struct chart *c, uint32_t i)
{
	static const char *const classes[] = {"DET", "ART", "QUANT", "FILLER", "CALL",
	    "COMMA", "COLON", "BREAK", "FOR", "DAYWORD", "EATER"};
	const struct entry *e = token_at(c, i)->entry;

	for (size_t k = 0; k < sizeof classes / sizeof *classes; k++)
		if (token_is(c, i, classes[k]))
			return true;
	return lexeme_has(lexeme_of(c, e, "DISHMOD"), "praise") ||
	       token_is(c, i, "COURSE") ||
	       lexeme_has(lexeme_of(c, e, "FOODMOD"), "vague") ||
	       lexeme_has(lexeme_of(c, e, "FOODMOD"), "size");
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
	const struct lexeme *part = lexeme_of(c, e, "PARTHEAD");
	const struct lexeme *maybe = lexeme_of(c, e, "DISHFOOD");

	return (struct marks){lexeme_of(c, e, "DISH") != NULL, maybe != NULL,
	    lexeme_has(maybe, "meal"), part != NULL, lexeme_has(part, "weak"),
	    lexeme_of(c, e, "FOOD") != NULL};
}

static enum name_sort
sort_of(struct marks m, bool lone)
{
	if (lone && (m.weak || m.meal))
		m.part = m.maybe = false;
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

static bool
names_food(const struct chart *c, uint32_t beg, uint32_t end)
{
	static const char *const classes[] = {"FOOD", "DISH", "DISHFOOD", "PARTHEAD"};

	for (uint32_t i = beg; i < end; i++)
		for (size_t k = 0; k < sizeof classes / sizeof *classes; k++)
			if (token_is(c, i, classes[k]))
				return true;
	return false;
}

static struct str
head_of(const struct chart *c, const struct token *last)
{
	static const char *const classes[] = {"DISH", "DISHFOOD", "PARTHEAD", "FOOD"};

	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++) {
		const struct lexeme *l = lexeme_of(c, last->entry, classes[i]);

		if (l)
			return last_word(l->lemma);
	}
	return last_word(last->norm);
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

void
opening_name(const struct chart *c, struct opening *x)
{
	struct buf b = buf_in(c->arena);
	const struct token *last;
	struct marks m;

	while (x->token + 1 < x->end && is_dropped(c, x->token))
		x->token++;
	/* "cheese scone dough" is the scones. */
	if (x->end > x->token + 1 && token_is(c, x->end - 2, "DISH") &&
	    lexeme_has(lexeme_of(c, token_at(c, x->end - 1)->entry, "PARTHEAD"), "raw"))
		x->end--;
	for (uint32_t i = x->token; i < x->end; i++)
		put_word(&b, c, token_at(c, i));
	x->name = buf_str(&b);
	last = token_at(c, x->end - 1);
	x->lone = str_find_char(x->name, ' ') == x->name.n;
	m = marks_of(c, last->entry);
	/* "garlic butter" is made, "cold butter" is bought. */
	if (m.weak && m.food && (x->end < x->token + 2 || !token_is(c, x->end - 2, "FOOD")))
		m.part = false;
	/* "tomato sauce" is one entry, a food: its last word tells the rest. */
	if (m.food && !m.dish && !m.maybe && !m.part && !x->lone) {
		m = marks_of(c, lexicon_find(&c->g->lexicon, last_word(last->entry->form)));
		m.food = true;
		m.part = m.part && !m.weak;
		x->bought = x->end == x->token + 1;
	}
	if (m.meal && !names_food(c, x->token, x->end - 1))
		m.maybe = false;
	x->sort = sort_of(m, x->lone);
	if (token_is(c, x->end - 1, "EQUIP") && x->sort == NAME_UNLISTED)
		x->sort = NAME_TOOL;
	if (x->lone && x->sort == NAME_DISH && token_is(c, x->end - 1, "COURSE"))
		x->sort = NAME_MAYBE;
	x->head = head_of(c, last);
	x->wide = lexeme_get(lexeme_of(c, last->entry, "FOOD"), "kind");
	if (!x->wide.n)
		x->wide = lexeme_get(lexeme_of(c, last->entry, "DISH"), "kind");
	x->pantry = is_pantry(lexeme_of(c, last->entry, "FOOD"));
}

/* ---- from the passes -------------------------------------------------------- */

static enum opening_kind
kind_of(const struct chart *c, const struct node *n)
{
	static const struct {
		const char *name;
		enum opening_kind kind;
	} kinds[] = {{"also", OPENING_ALSO}, {"with", OPENING_WITH}, {"done", OPENING_DONE},
	    {"bare", OPENING_BARE}, {"back", OPENING_BACK}, {"today", OPENING_TODAY},
	    {"topic", OPENING_TOPIC}, {"for", OPENING_FOR}, {"turn", OPENING_TURN},
	    {"next", OPENING_NEXT}, {"first", OPENING_FIRST}};
	struct str kind = node_attribute(c, n, "kind");

	for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++)
		if (str_is_z(kind, kinds[i].name))
			return kinds[i].kind;
	return OPENING_MENTION;
}

static bool
is_marked(const struct chart *c, uint32_t token)
{
	static const char *const classes[] = {"DET", "ART", "CALL"};
	uint32_t i = token;

	while (i > 0 && (is_dropped(c, i - 1) || token_is(c, i - 1, "COMMA"))) {
		i--;
		for (size_t k = 0; k < 3; k++)
			if (token_is(c, i, classes[k]))
				return true;
	}
	return false;
}

/* "for the base" */
static bool
is_weak_part(const struct chart *c, uint32_t token)
{
	const struct entry *e = token_at(c, token)->entry;

	return lexeme_has(lexeme_of(c, e, "PARTHEAD"), "weak") && !lexeme_of(c, e, "FOOD");
}

/* "two dressings", "3 dips"; one is no count. */
static bool
is_counted(const struct chart *c, uint32_t token)
{
	const struct token *t = token ? token_at(c, token - 1) : NULL;

	if (!t || str_is_z(t->norm, "one") || str_is_z(t->norm, "1"))
		return false;
	return t->entry == c->g->digits || token_is(c, token - 1, "CARDWORD");
}

static bool
is_too_long(const struct opening *x)
{
	bool and = str_find(x->name, STR(" and ")) < x->name.n;

	return x->end - x->token > (and? WORDS_MAX_AND : WORDS_MAX);
}

static void
collect(struct openings *out, const struct chart *c, const struct node *n)
{
	struct field_nodes f;
	struct opening x = {.kind = kind_of(c, n)};
	const struct node *name = n;

	if (n->made == RAW || c->script->cue[token_at(c, n->beg)->cue].kind != CUE_SPEECH)
		return;
	if (node_is(c, n, "OPEN") && node_field(c, n, "name", &f))
		name = f.v;
	x.token = name->beg;
	x.end = name->end;
	if (node_field(c, name, "name", &f)) {
		x.token = f.v[0].beg;
		x.end = f.v[f.n - 1].end;
	} else if (!node_is(c, n, "OPEN")) {
		return;
	}
	opening_name(c, &x);
	x.counted = is_counted(c, x.token);
	x.definite = x.token > 0 && str_is_z(token_at(c, x.token - 1)->norm, "the");
	if (x.lone && is_weak_part(c, x.end - 1) &&
	    (x.kind == OPENING_FOR || (x.definite && x.kind == OPENING_TOPIC)))
		x.sort = NAME_PART;
	x.made = node_attribute(c, n, "made").p != NULL;
	x.numbered = node_attribute(c, n, "dish").p != NULL;
	x.day = node_attribute(c, name, "day").p != NULL;
	x.marked = is_marked(c, x.token);
	x.on_top = node_attribute(c, n, "top").p != NULL;
	x.faint = node_attribute(c, n, "long").p != NULL;
	if (x.lone && x.faint)
		x.kind = OPENING_MENTION;
	if (is_too_long(&x))
		return;
	if (node_attribute(c, n, "part").p && x.sort != NAME_PART && x.sort != NAME_EITHER)
		return;
	if (node_is(c, name, "NAMEA") &&
	    (x.kind == OPENING_MENTION || x.sort < NAME_MAYBE || x.lone))
		return;
	vec_push(c->arena, &out->said, x);
}

/* ---- headings --------------------------------------------------------------- */

/* The usual ones of a recipe's sections name nothing. */
static bool
is_section(struct str s)
{
	static const char *const plain[] = {"ingredients", "method", "instructions",
	    "directions", "steps", "you will need", "you'll need", "shopping list", "notes",
	    "what you need", "you need", "script", "intro", "outro", "introduction",
	    "preparation", "ingredient list", "transcript", "equipment", "what she says",
	    "what he says", "on screen", "the recipe", "recipe", "serving", "to serve",
	    "to finish", "tips", "what you'll need"};

	for (size_t i = 0; i < sizeof plain / sizeof *plain; i++)
		if (str_is_z(s, plain[i]))
			return true;
	return false;
}

static void
collect_heading(struct openings *out, const struct chart *c, uint32_t beg, uint32_t end)
{
	struct opening x = {.kind = OPENING_HEADING};

	while (beg < end && token_is(c, beg, "BREAK"))
		beg++;
	while (
	    end > beg && (token_is(c, end - 1, "COLON") || token_is(c, end - 1, "STOP") ||
			     token_is(c, end - 1, "BREAK")))
		end--;
	if (beg == end)
		return;
	x.with_for = token_is(c, beg, "FOR");
	x.token = beg;
	x.end = end;
	for (uint32_t i = beg + 1; i < end; i++)
		if (token_is(c, i, "WITH"))
			x.end = i;
	opening_name(c, &x);
	if (!is_section(x.name) && names_food(c, x.token, x.end))
		vec_push(c->arena, &out->said, x);
}

static void
collect_headings(struct openings *out, const struct chart *c)
{
	for (uint32_t i = 0, end; i < c->tokens.token.n; i = end) {
		uint32_t cue = token_at(c, i)->cue;

		for (end = i; end < c->tokens.token.n && token_at(c, end)->cue == cue;)
			end++;
		if (c->script->cue[cue].kind == CUE_HEADING)
			collect_heading(out, c, i, end);
	}
}

/* A name before a comma weighs less than one of an overview. */
static int
rank(const struct opening *x)
{
	if (x->on_top)
		return 2 * (int)OPENING_TURN + 1;
	return 2 * (x->faint ? (int)OPENING_MENTION : (int)x->kind) + x->faint;
}

static int
by_token(const void *a, const void *b)
{
	const struct opening *x = a, *y = b;

	if (x->token != y->token)
		return x->token < y->token ? -1 : 1;
	return rank(y) - rank(x);
}

/* "with a slaw and a mayo": the second goes with the dish as well. */
static void
spread_with(struct openings *s, const struct chart *c)
{
	for (size_t i = 1; i < s->said.n; i++) {
		const struct opening *p = &s->said.v[i - 1];
		struct opening *x = &s->said.v[i];

		if (p->kind == OPENING_WITH && x->kind == OPENING_ALSO &&
		    x->token <= p->end + 3 && !token_is(c, p->end, "COLON") &&
		    !token_is(c, x->token - 1, "ADV"))
			x->kind = OPENING_WITH;
	}
}

static void
collect_level(struct openings *out, const struct chart *c, const char *pass)
{
	const struct level *l = chart_level(c, pass);

	for (size_t i = 0; l && i < l->node.n; i++)
		collect(out, c, &l->node.v[i]);
}

/* Of what both passes made of a name, the stronger. */
static void
keep_strongest(struct openings *s)
{
	size_t kept = 0;

	for (size_t i = 0; i < s->said.n; i++)
		if (kept == 0 || s->said.v[i].token != s->said.v[kept - 1].token)
			s->said.v[kept++] = s->said.v[i];
	s->said.n = kept;
}

/* The first count of the things to be made. */
static size_t
count_things(const struct chart *c)
{
	const struct level *l = chart_level(c, "overview");
	struct field_nodes f;
	struct quantity q;

	for (size_t i = 0; l && i < l->node.n; i++)
		if (node_is(c, &l->node.v[i], "THINGS") &&
		    node_field(c, &l->node.v[i], "value", &f) && value_of_nodes(c, f, &q))
			return (size_t)ratio_round(q.max);
	return 0;
}

/* "I've promised a lasagne and garlic bread": the first is of the list too. */
static void
spread_also(struct openings *s)
{
	for (size_t i = s->said.n; i-- > 1;) {
		const struct opening *x = &s->said.v[i];
		struct opening *p = &s->said.v[i - 1];

		if (x->kind == OPENING_ALSO && p->kind == OPENING_MENTION &&
		    p->sort >= NAME_DISH && p->sort <= NAME_EITHER &&
		    x->token <= p->end + 3)
			p->kind = OPENING_ALSO;
	}
}

void
openings_find(struct openings *out, const struct chart *c)
{

	*out = (struct openings){.things = count_things(c)};
	collect_level(out, c, "overview");
	collect_level(out, c, "turn");
	collect_level(out, c, "bare");
	collect_headings(out, c);
	if (out->said.n)
		qsort(out->said.v, out->said.n, sizeof *out->said.v, by_token);
	keep_strongest(out);
	spread_with(out, c);
	spread_also(out);
}
