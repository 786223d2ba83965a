/* SPDX-License-Identifier: ISC */
/*
 * Reads ingredient nodes: what is bought, how much, how it is prepared.
 *
 *     "two large onions, finely chopped" -> large onion(s) | 2 | finely chopped
 */
#include "clause/maker.h"

static void
put_word(struct buf *b, struct str word)
{
	if (b->n && word.n)
		buf_put_char(b, ' ');
	buf_put(b, word);
}

static const struct reading *
food_reading(const struct maker *m, const struct token *t)
{
	return entry_reading(t->entry, grammar_class(m->g, "FOOD"));
}

static bool
token_reads(const struct maker *m, const struct token *t, const char *class_name)
{
	unsigned id = grammar_class(m->g, class_name);

	return id < CLASSES_MAX && classset_has(&t->entry->classes, id);
}

/* One word of a food's name that is not its head: kept, or preparation. */
static void
sort_word(const struct maker *m, const struct token *t, struct buf *item, struct buf *prep)
{
	const struct reading *r = entry_reading(t->entry, grammar_class(m->g, "FOODMOD"));

	if (token_reads(m, t, "COMMA") || token_reads(m, t, "ART") ||
	    token_reads(m, t, "DET"))
		return;
	if (token_reads(m, t, "AND")) {
		if (prep->n)
			put_word(prep, STR("and"));
		return;
	}
	if (r) {
		if (!lexeme_has(r->lexeme, "vague"))
			put_word(item, token_said(m, t));
		return;
	}
	if (token_reads(m, t, "PREPWORD") || token_reads(m, t, "PREPADV"))
		put_word(prep, token_said(m, t));
	else if (food_reading(m, t))
		put_word(item, food_name(m, t, food_reading(m, t)));
	else if (token_reads(m, t, "UNLISTED"))
		put_word(item, token_said(m, t));
}

static struct str
without_and(struct str s)
{
	if (str_ends(s, STR(" and")))
		s.n -= 4;
	return s;
}

/* The head: the last food token of the node. */
static void
read_food(const struct maker *m, const struct node *food, struct mention *x)
{
	struct buf item = buf_in(m->a), prep = buf_in(m->a);
	uint32_t head = food->end;

	for (uint32_t i = food->beg; i < food->end; i++)
		if (food_reading(m, &m->c.tokens.token.v[i]))
			head = i;
	for (uint32_t i = food->beg; i < food->end && i < head; i++)
		sort_word(m, &m->c.tokens.token.v[i], &item, &prep);
	if (head < food->end) {
		const struct token *t = &m->c.tokens.token.v[head];
		const struct reading *r = food_reading(m, t);
		struct str key = lexeme_get(r->lexeme, "key");

		x->lexeme = r->lexeme;
		x->head = r->lexeme->lemma;
		x->key = key.n ? key : r->lexeme->lemma;
		x->group = lexeme_get(r->lexeme, "group");
		put_word(&item, food_name(m, t, r));
	}
	x->item = buf_str(&item);
	x->preparation = without_and(buf_str(&prep));
}

/* The food of this name; false where the lexicon has none. */
static bool
take_food(const struct maker *m, struct str name, struct mention *x)
{
	const struct entry *e =
	    name.n ? lexicon_find(&m->g->lexicon, lexicon_key(m->a, name)) : NULL;
	const struct reading *food = entry_reading(e, grammar_class(m->g, "FOOD"));
	struct str key;

	if (!food)
		return false;
	key = lexeme_get(food->lexeme, "key");
	x->lexeme = food->lexeme;
	x->item = x->head = food->lexeme->lemma;
	x->key = key.n ? key : x->item;
	x->group = lexeme_get(food->lexeme, "group");
	return true;
}

/* "two cups of flower": the food that was probably said. */
static bool
read_misheard(const struct maker *m, const struct node *n, struct mention *x)
{
	const struct reading *r = node_reading(&m->c, n, "MISHEARD");

	return take_food(m, r ? lexeme_get(r->lexeme, "means") : STR(""), x);
}

static void
read_unlisted(const struct maker *m, struct field_nodes f, struct mention *x)
{
	struct buf item = buf_in(m->a);

	if (f.n == 1 && read_misheard(m, f.v, x))
		return;
	for (uint32_t i = f.v[0].beg; i < f.v[f.n - 1].end; i++)
		put_word(&item, token_said(m, &m->c.tokens.token.v[i]));
	x->item = x->key = x->head = buf_str(&item);
}

static bool
read_amount(
    const struct maker *m, const struct node *n, struct amount *out, struct mention *x)
{
	struct said s;
	struct quantity q;
	struct field_nodes unit;

	if (measure_of(&m->c, m->region, n, &s)) {
		*out = s.value;
		if (s.corrected && x) {
			x->corrected = true;
			x->first = s.first;
		}
		if (x && s.size && measure_of(&m->c, m->region, s.size, &s))
			x->size = s.value;
		return true;
	}
	if (node_is(&m->c, n, "NUM") && value_number(&m->c, n, &q)) {
		*out = (struct amount){true, true, q.min, q.max, NULL};
		return true;
	}
	if (!node_is(&m->c, n, "VAMT"))
		return false;
	*out = (struct amount){.present = true};
	if (node_field(&m->c, n, "unit", &unit))
		out->unit = measure_unit(&m->c, m->region, unit, "UNIT");
	return true;
}

/* "two tablespoons of the juice of a lemon": what is measured is lemon juice. */
static void
read_measured(const struct maker *m, const struct node *n, struct mention *x)
{
	struct field_nodes measured, use;
	struct str name;

	if (!node_field(&m->c, n, "measured", &measured) ||
	    !node_field(&m->c, n, "use", &use))
		return;
	name = arena_fmt(m->a, "%.*s %.*s", (int)x->head.n, x->head.p,
	    (int)node_token(&m->c, use.v)->norm.n, node_token(&m->c, use.v)->norm.p);
	if (!take_food(m, name, x))
		x->item = x->key = x->head = name;
	read_amount(m, measured.v, &x->amount, x);
}

/* The words of a preparation phrase, cleaned of commas at its ends. */
static struct str
phrase_words(const struct maker *m, const struct node *n)
{
	struct str s = words_of(m, node_text(&m->c, n));

	static const char *const openings[] = {"already ", "just ", "nice and ", "really ",
	    "kind of ", "sort of ", "all ", "like "};

	for (size_t i = 0; i < sizeof openings / sizeof *openings; i++)
		if (str_starts(s, str_of(openings[i])))
			s = str_cut(s, strlen(openings[i]), s.n);
	while (s.n && (s.p[0] == ',' || s.p[0] == ' '))
		s = str_cut(s, 1, s.n);
	while (s.n && (s.p[s.n - 1] == ',' || s.p[s.n - 1] == ' '))
		s.n--;
	return s;
}

static void
join_with_comma(const struct maker *m, struct str *to, struct str more)
{
	if (more.n == 0)
		return;
	*to = to->n ? arena_fmt(m->a, "%.*s, %.*s", (int)to->n, to->p, (int)more.n, more.p)
		    : more;
}

static void
read_tail(const struct maker *m, const struct node *n, struct mention *x)
{
	struct field_nodes f;

	if (node_field(&m->c, n, "prep", &f))
		join_with_comma(m, &x->preparation, phrase_words(m, f.v));
	if (node_field(&m->c, n, "note", &f)) {
		const struct token *t = node_token(&m->c, f.v);

		x->optional = token_reads(m, t, "OPTIONAL");
		x->note = x->optional ? STR("") : t->norm;
	}
	if (!node_field(&m->c, n, "measured", &f) && node_field(&m->c, n, "use", &f))
		join_with_comma(m, &x->preparation,
		    str_starts(node_token(&m->c, f.v)->norm, STR("juice")) ? STR("juiced")
									   : STR("zested"));
	if (node_field(&m->c, n, "size", &f))
		read_amount(m, f.v, &x->size, NULL);
}

static bool
token_at_is(const struct maker *m, uint32_t i, const char *word)
{
	return str_is_z(m->c.tokens.token.v[i].norm, word);
}

/* "some more", "another", "extra": an addition to what was said. */
static bool
says_more(const struct maker *m, const struct node *n)
{
	for (uint32_t i = n->beg ? n->beg - 1 : 0; i < n->end; i++)
		if (token_at_is(m, i, "more") || token_at_is(m, i, "another") ||
		    token_at_is(m, i, "extra") || token_at_is(m, i, "additional"))
			return true;
	return false;
}

/* "3 garlic cloves" are three cloves of garlic. */
static void
read_portion(const struct maker *m, const struct node *n, struct mention *x)
{
	struct field_nodes f;
	struct portion portion;

	if (!x->amount.known || x->amount.unit || !node_field(&m->c, n, "food", &f) ||
	    !portion_find(m, (struct span){f.v[0].beg, f.v[f.n - 1].end}, &portion))
		return;
	x->amount.unit = portion.unit;
	if (portion.base) {
		struct str key = lexeme_get(portion.base, "key");

		x->lexeme = portion.base;
		x->item = x->head = portion.base->lemma;
		x->key = key.n ? key : portion.base->lemma;
		x->group = lexeme_get(portion.base, "group");
	} else if (portion.food.end < f.v[f.n - 1].end) {
		struct node food = {portion.food.beg, portion.food.end, RAW};

		read_food(m, &food, x);
	}
}

/* "your celery seed": the reader's own, perhaps not named before. */
static bool
names_owner(const struct maker *m, const struct node *n)
{
	static const char *const words[] = {"your", "my", "our", "some"};

	for (uint32_t i = n->beg ? n->beg - 1 : 0; i <= n->beg; i++)
		for (size_t k = 0; k < sizeof words / sizeof *words; k++)
			if (token_at_is(m, i, words[k]))
				return true;
	return false;
}

static void
read_plain(const struct maker *m, const struct node *n, struct mention *x)
{
	struct field_nodes f;

	x->node = n;
	if (node_field(&m->c, n, "food", &f))
		read_food(m, f.v, x);
	else if (node_field(&m->c, n, "unknown", &f))
		read_unlisted(m, f, x);
	if (node_field(&m->c, n, "amount", &f))
		read_amount(m, f.v, &x->amount, x);
	else if (node_field(&m->c, n, "article", &f) ||
		 (node_field(&m->c, n, "use", &f) && !node_field(&m->c, n, "definite", &f)))
		x->amount = (struct amount){true, true, value_of_article(&m->c, n),
		    value_of_article(&m->c, n), NULL};
	if (node_field(&m->c, n, "unit", &f) && x->amount.known && !x->amount.unit)
		x->amount.unit = measure_unit(&m->c, m->region, f, "UNIT");
	else
		read_portion(m, n, x);
	read_measured(m, n, x);
	read_tail(m, n, x);
	x->definite =
	    node_field(&m->c, n, "definite", &f) ||
	    (n->beg > 0 && token_reads(m, &m->c.tokens.token.v[n->beg - 1], "DET"));
	if (x->definite && !x->amount.known && names_owner(m, n))
		x->definite = false;
	if (!x->amount.present && node_attribute(&m->c, n, "vague").n)
		x->amount.present = true;
	x->share = node_attribute(&m->c, n, "share").n > 0;
	x->same = node_attribute(&m->c, n, "same").n > 0;
	x->more = says_more(m, n);
}

/* "dripping or lard, two tablespoons": as much of either */
static bool
is_food_first(const struct maker *m, const struct node *n)
{
	struct field_nodes food, amount;

	return node_field(&m->c, n, "food", &food) &&
	       node_field(&m->c, n, "amount", &amount) && food.v[0].beg < amount.v[0].beg;
}

static void
amend(const struct maker *m, const struct node *n, struct mention *x)
{
	struct field_nodes f;
	struct mention other = {0};
	struct quantity q;

	x->node = n;
	x->optional = x->optional || node_attribute(&m->c, n, "optional").n;
	if (node_field(&m->c, n, "then", &f)) {
		x->corrected = true;
		x->first = x->amount;
		read_amount(m, f.v, &x->amount, NULL);
	} else if (node_field(&m->c, n, "thennumber", &f) && value_of_nodes(&m->c, f, &q)) {
		x->corrected = true;
		x->first = x->amount;
		x->amount.min = q.min;
		x->amount.max = q.max;
	}
	if (node_field(&m->c, n, "prep", &f))
		join_with_comma(m, &x->preparation, phrase_words(m, f.v));
	if (node_field(&m->c, n, "other", &f)) {
		read_plain(m, f.v, &other);
		/* "the rice, so that's a cup of rice" */
		if (str_is(other.key, x->key) && !x->amount.known) {
			x->amount = other.amount;
			return;
		}
		if (!x->amount.known && is_food_first(m, f.v))
			x->amount = other.amount;
		x->alternative = (struct alternative){other.item, other.amount};
		x->has_alternative = other.item.n > 0;
	}
}

/* The list of an INGS node: one mention a food, all with the same amount. */
static size_t
read_list(const struct maker *m, const struct node *n, struct mention *out, size_t room)
{
	struct field_nodes list, amount;
	size_t count = 0;

	if (!node_field(&m->c, n, "list", &list))
		return 0;
	for (size_t i = 0; i < list.n && count < room; i++) {
		if (!node_is(&m->c, &list.v[i], "FOODX") &&
		    !node_is(&m->c, &list.v[i], "FOODQ"))
			continue;
		out[count] = (struct mention){.node = n};
		read_food(m, &list.v[i], &out[count]);
		if (node_field(&m->c, n, "amount", &amount))
			read_amount(m, amount.v, &out[count].amount, NULL);
		count++;
	}
	return count;
}

/* "garlic and onion powder": the first takes the second's last word. */
static size_t
split_pair(const struct maker *m, const struct node *food, const struct mention *x,
    struct mention *out)
{
	struct field_nodes left, right;
	struct str last, powder;
	const struct entry *e;
	size_t cut;

	if (!node_field(&m->c, food, "left", &left) ||
	    !node_field(&m->c, food, "right", &right))
		return 0;
	out[0] = out[1] = *x;
	read_food(m, right.v, &out[1]);
	last = out[1].item;
	for (cut = last.n; cut > 0 && last.p[cut - 1] != ' '; cut--)
		;
	powder = arena_fmt(m->a, "%.*s %.*s", (int)node_token(&m->c, left.v)->norm.n,
	    node_token(&m->c, left.v)->norm.p, (int)(last.n - cut), last.p + cut);
	out[0].item = out[0].key = out[0].head = powder;
	e = lexicon_find(&m->g->lexicon, powder);
	if (e && entry_reading(e, grammar_class(m->g, "FOOD"))) {
		out[0].lexeme = entry_reading(e, grammar_class(m->g, "FOOD"))->lexeme;
		out[0].group = lexeme_get(out[0].lexeme, "group");
	}
	return 2;
}

/* the scones of "cheese scones" */
static bool
heads_dish(const struct maker *m, uint32_t i)
{
	const struct classset *classes;

	if (i >= m->c.tokens.token.n)
		return false;
	classes = &m->c.tokens.token.v[i].entry->classes;
	return classset_has(classes, grammar_class(m->g, "DISH")) &&
	       !classset_has(classes, grammar_class(m->g, "FOOD"));
}

/* "today it's a walnut rye bread": the name of the dish, not a food. */
static bool
is_title(const struct maker *m, const struct node *n, const struct amount *amount)
{
	if (amount->known && (amount->unit || ratio_order(amount->max, ratio_int(1)) > 0))
		return false;
	if (!amount->known && heads_dish(m, n->end))
		return true;
	for (size_t i = 0; i < m->title.n; i++)
		if (m->title.v[i].end == n->end && m->title.v[i].beg < n->end)
			return true;
	return false;
}

size_t
mentions_of(const struct maker *m, const struct node *n, struct mention *out, size_t room)
{
	struct field_nodes base, food;
	const struct node *plain = n;

	if (node_is(&m->c, n, "INGS"))
		return read_list(m, n, out, room);
	if (!node_is(&m->c, n, "ING") || room < 2)
		return 0;
	if (node_field(&m->c, n, "base", &base))
		plain = base.v;
	out[0] = (struct mention){0};
	read_plain(m, plain, &out[0]);
	if (node_field(&m->c, plain, "food", &food) && split_pair(m, food.v, &out[0], out))
		return 2;
	if (plain != n)
		amend(m, n, &out[0]);
	return out[0].item.n && !is_title(m, n, &out[0].amount) ? 1 : 0;
}
