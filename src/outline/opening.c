/* SPDX-License-Identifier: ISC */
/*
 * Reads the nodes of the passes "name" and "turn", and the headings.
 *
 *     "So, a quick gooseberry sauce." -> topic, part, "gooseberry sauce"
 */
#include "outline/title.h"

#include "scan/value.h"

#include <stdlib.h>

/* A longer run of words is a list without commas. */
enum { WORDS_MAX = 4, WORDS_MAX_AND = 7 };

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

	while (i > 0 && (title_drops(c, i - 1) || title_token_is(c, i - 1, "COMMA"))) {
		i--;
		for (size_t k = 0; k < 3; k++)
			if (title_token_is(c, i, classes[k]))
				return true;
	}
	return false;
}

/* "for the base" */
static bool
is_weak_part(const struct chart *c, uint32_t token)
{
	const struct entry *e = title_token(c, token)->entry;

	return lexeme_has(title_lexeme(c, e, "PARTHEAD"), "weak") &&
	       !title_lexeme(c, e, "FOOD");
}

/* "two dressings", "3 dips"; one is no count. */
static bool
is_counted(const struct chart *c, uint32_t token)
{
	const struct token *t = token ? title_token(c, token - 1) : NULL;

	if (!t || str_is_z(t->norm, "one") || str_is_z(t->norm, "1"))
		return false;
	return t->entry == c->g->digits || title_token_is(c, token - 1, "CARDWORD");
}

/* "Bowl one's the slaw": bowls of one dish. */
static bool
counts_vessels(const struct chart *c, const struct node *n)
{
	for (uint32_t i = n->beg; i < n->beg + 4 && i < n->end; i++)
		if (title_token_is(c, i, "EQUIP"))
			return true;
	return false;
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
	struct opening x = {0};
	const struct node *name = n;

	if (n->made == RAW ||
	    c->script->cue[title_token(c, n->beg)->cue].kind != CUE_SPEECH)
		return;
	x.kind = kind_of(c, n);
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
	if (node_is(c, name, "NAMEX")) {
		x.sort = NAME_MAYBE;
		x.bought = false;
	}
	x.counted = is_counted(c, x.token);
	x.definite = x.token > 0 && str_is_z(title_token(c, x.token - 1)->norm, "the");
	if (x.lone && is_weak_part(c, x.end - 1) &&
	    (x.kind == OPENING_FOR ||
		(x.definite && x.kind == OPENING_TOPIC && x.sort == NAME_UNLISTED)))
		x.sort = NAME_PART;
	x.made = node_attribute(c, n, "made").p != NULL;
	x.numbered = node_attribute(c, n, "dish").p != NULL && !counts_vessels(c, n);
	x.day = node_attribute(c, name, "day").p != NULL;
	x.marked = is_marked(c, x.token);
	x.on_top = node_attribute(c, n, "top").p != NULL;
	x.faint = node_attribute(c, n, "long").p != NULL;
	if (x.lone && x.faint)
		x.kind = OPENING_MENTION;
	if (is_too_long(&x) || (node_is(c, name, "NAMEX") && str_ends(x.name, STR("ly"))))
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

	while (beg < end && title_token_is(c, beg, "BREAK"))
		beg++;
	while (end > beg &&
	       (title_token_is(c, end - 1, "COLON") || title_token_is(c, end - 1, "STOP") ||
		   title_token_is(c, end - 1, "BREAK")))
		end--;
	if (beg == end)
		return;
	x.with_for = title_token_is(c, beg, "FOR");
	x.token = beg;
	x.end = end;
	for (uint32_t i = beg + 1; i < end; i++)
		if (title_token_is(c, i, "WITH"))
			x.end = i;
	opening_name(c, &x);
	if (!is_section(x.name) && title_names_food(c, x.token, x.end))
		vec_push(c->arena, &out->said, x);
}

static void
collect_headings(struct openings *out, const struct chart *c)
{
	for (uint32_t i = 0, end; i < c->tokens.token.n; i = end) {
		uint32_t cue = title_token(c, i)->cue;

		for (end = i; end < c->tokens.token.n && title_token(c, end)->cue == cue;)
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

/* "... with rice, and with that a salad" */
static bool
begins_anew(const struct chart *c, const struct opening *p, const struct opening *x)
{
	for (uint32_t i = p->end; i < x->token; i++)
		if (title_token_is(c, i, "WITH"))
			return true;
	return false;
}

/* "with a gravy, Yorkshires, and carrots": after a comma, a dish is one more of
 * the list; "with chips and a salad": it goes with the first. */
static bool
is_of_list(const struct openings *s, const struct chart *c, size_t i)
{
	const struct opening *x = &s->said.v[i], *p = &s->said.v[i - 1];

	return title_token_is(c, p->end, "COMMA") &&
	       (x->sort == NAME_DISH || (x->sort == NAME_MAYBE && !x->lone)) &&
	       (p->sort == NAME_PART || p->sort == NAME_FOOD);
}

/* "with a slaw and a mayo": the second goes with the dish as well. */
static void
spread_with(struct openings *s, const struct chart *c)
{
	for (size_t i = 1; i < s->said.n; i++) {
		const struct opening *p = &s->said.v[i - 1];
		struct opening *x = &s->said.v[i];

		if (p->kind == OPENING_WITH && x->kind == OPENING_ALSO &&
		    x->token <= p->end + 3 && !title_token_is(c, p->end, "COLON") &&
		    !title_token_is(c, x->token - 1, "ADV") && !is_of_list(s, c, i) &&
		    !begins_anew(c, p, x))
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

		if (x->kind == OPENING_ALSO && x->token <= p->end + 3 &&
		    (p->faint || (p->kind == OPENING_MENTION && p->sort >= NAME_DISH &&
				     p->sort <= NAME_EITHER)))
			p->kind = OPENING_ALSO;
	}
	for (size_t i = 1; i < s->said.n; i++) {
		const struct opening *x = &s->said.v[i];
		struct opening *p = &s->said.v[i - 1];

		/* "So, cod, and a treacle sponge for after." */
		if (x->kind == OPENING_ALSO && p->kind == OPENING_TOPIC &&
		    p->sort >= NAME_FOOD && p->sort <= NAME_MAYBE && !p->pantry &&
		    x->token <= p->end + 3)
			p->kind = OPENING_TODAY;
	}
	for (size_t i = 1; i < s->said.n; i++) {
		const struct opening *p = &s->said.v[i - 1];
		struct opening *x = &s->said.v[i];

		/* Captions without commas: "hash browns sausage patties and" */
		if (x->kind == OPENING_MENTION && x->token == p->end &&
		    (p->kind == OPENING_TODAY || p->kind == OPENING_ALSO))
			x->kind = OPENING_ALSO;
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
