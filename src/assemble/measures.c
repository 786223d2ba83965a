/* SPDX-License-Identifier: ISC */
/*
 * The flat list of measures in script order: what the compound pass made, the
 * sizes nested in it, and the counts of foods.
 */
#include "assemble/restate.h"

#include <stdlib.h>

/* True where the token has a reading in the class that has the flag. */
static bool
token_has_flag(
    const struct maker *m, uint32_t token, const char *class_name, const char *flag)
{
	const struct reading *r;

	if (token >= m->c.tokens.token.n)
		return false;
	r = entry_reading(
	    m->c.tokens.token.v[token].entry, grammar_class(m->g, class_name));
	return r && lexeme_has(r->lexeme, flag);
}

/* What one word before a measure says of it. */
static void
look_at_word(const struct maker *m, uint32_t token, struct measure *x)
{
	bool loose = token_has_flag(m, token, "ATLEAST", "loose") ||
		     token_has_flag(m, token, "UPTO", "loose");

	if (token_has(m, token, "APPROX"))
		x->approximate = true;
	if (token_has_flag(m, token, "ATLEAST", "article") &&
	    (token == 0 || !token_has(m, token - 1, "ART")))
		return;
	if (loose && x->kind != MEASURE_DURATION)
		return;
	if (token_has(m, token, "UPTO") && x->kind != MEASURE_TEMPERATURE)
		x->bound = BOUND_MAX;
	else if (token_has(m, token, "ATLEAST"))
		x->bound = BOUND_MIN;
}

/* True where the word may stand between "at least" and the measure. */
static bool
is_passed(const struct maker *m, uint32_t token)
{
	static const char *const classes[] = {
	    "APPROX", "UPTO", "ATLEAST", "OF", "FILLER", "ART"};

	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++)
		if (token_has(m, token, classes[i]))
			return true;
	return token_has(m, token, "COMMA") && token > 0 &&
	       (token_has(m, token - 1, "FILLER") || token_has(m, token - 1, "UPTO") ||
		   token_has_flag(m, token - 1, "ATLEAST", "after"));
}

/* "about", "up to", "or so" stand outside the words of a measure; "a good hour"
 * and "five or so minutes" inside. */
static void
look_around(const struct maker *m, const struct node *n, struct measure *x)
{
	uint32_t end = n->end;

	for (uint32_t i = n->beg; i > 0 && n->beg - i < 4 && is_passed(m, i - 1); i--)
		look_at_word(m, i - 1, x);
	for (uint32_t i = n->beg; i < n->end; i++)
		if (token_has(m, i, "ISH"))
			x->approximate = true;
		else if (x->kind == MEASURE_DURATION &&
			 token_has_flag(m, i, "ATLEAST", "article"))
			x->bound = BOUND_MIN;
	if (token_has(m, end, "COMMA"))
		end++;
	if (token_has(m, end, "ORSO"))
		x->approximate = true;
	if (token_has_flag(m, end, "UPTO", "after"))
		x->bound = BOUND_MAX;
	else if (token_has_flag(m, end, "ATLEAST", "after"))
		x->bound = BOUND_MIN;
	if (x->bound != BOUND_NONE)
		x->approximate = false;
}

static struct node
node_of(struct span tokens)
{
	return (struct node){tokens.beg, tokens.end, RAW};
}

static struct measure *
push(struct maker *m, const struct said *s)
{
	const struct node n = node_of(s->tokens);
	struct measure x = {.kind = s->kind,
	    .value = s->value,
	    .unit_stated = s->unit_stated,
	    .corrected = s->corrected,
	    .first = s->first,
	    .reversed = s->reversed,
	    .text = words_of(m, node_text(&m->c, &n)),
	    .place = place_of_node(m, &n)};

	look_around(m, &n, &x);
	vec_push(m->a, &m->measure, x);
	return &m->measure.v[m->measure.n - 1];
}

/* What was collected last, to see whether the next says it once more. */
struct collector {
	struct maker *m;
	struct said last;
};

static void
collect(struct collector *k, const struct said *s)
{
	struct measure *x = push(k->m, s);

	x->converted = k->last.value.present && restates(k->m, &k->last, s);
	k->last = *s;
}

static void
collect_node(struct collector *k, const struct node *n)
{
	const struct maker *m = k->m;
	struct said s, dims[DIMS_MAX];
	size_t count = measure_dims(&m->c, m->region, n, dims);

	for (size_t i = 0; i < count; i++)
		collect(k, &dims[i]);
	if (count || !measure_of(&m->c, m->region, n, &s))
		return;
	collect(k, &s);
	if (s.size && measure_of(&m->c, m->region, s.size, &s))
		push(k->m, &s);
}

/* "one of the eggs" takes of what is there; "a fish stew" is no fish, and "an
 * onion stain" no onion. */
static bool
is_counted(const struct maker *m, struct span words)
{
	for (uint32_t i = words.beg; i + 1 < words.end; i++)
		if (token_has(m, i, "OF") && token_has(m, i + 1, "DET"))
			return false;
	if (token_has(m, words.end, "DISH") && !token_has(m, words.end, "ACTION"))
		return false;
	if (token_has(m, words.beg, "ART") && token_has(m, words.end, "UNLISTED"))
		return false;
	return true;
}

/* Three eggs: the number and the food; an article is one. The value and the
 * words; false where the node counts nothing. */
static bool
count_of(const struct maker *m, const struct node *n, struct said *s)
{
	struct field_nodes amount, food, part;
	struct quantity q = {{1, 1}, {1, 1}, false};
	bool article = node_field(&m->c, n, "article", &amount);

	if (!article &&
	    (!node_field(&m->c, n, "amount", &amount) || !node_is(&m->c, amount.v, "NUM") ||
		!value_of_nodes(&m->c, amount, &q) || q.max.num == 0))
		return false;
	s->tokens = (struct span){amount.v->beg, amount.v->end};
	if (token_has(m, s->tokens.beg, "ANOTHER"))
		s->tokens.beg = s->tokens.end;
	if (node_field(&m->c, n, "food", &food))
		s->tokens.end = food.v[food.n - 1].end;
	else if (node_field(&m->c, n, "list", &food))
		s->tokens.end = food.v[0].end;
	if (article && node_field(&m->c, n, "part", &part))
		s->tokens.end = part.v[part.n - 1].end;
	if (article)
		q.min = q.max = value_of_article(&m->c, n);
	s->value = (struct amount){true, true, q.min, q.max, NULL};
	s->reversed = q.reversed;
	return true;
}

/* The unit of what is counted, where it is a part of a food. */
static void
take_portion(const struct maker *m, const struct node *n, struct said *s)
{
	struct field_nodes food, unit;
	struct portion portion;

	if (node_field(&m->c, n, "unit", &unit)) {
		s->kind = MEASURE_AMOUNT;
		s->value.unit = measure_unit(&m->c, m->region, unit, "UNIT");
		s->tokens.end = unit.v[0].end;
	} else if (node_field(&m->c, n, "food", &food) &&
		   portion_find(m, (struct span){food.v[0].beg, s->tokens.end}, &portion)) {
		s->kind = MEASURE_AMOUNT;
		s->value.unit = portion.unit;
		s->tokens.end = portion.end;
	}
}

static void
collect_count(struct maker *m, const struct node *n)
{
	struct said s = {.kind = MEASURE_COUNT, .unit_stated = true};

	if (!count_of(m, n, &s))
		return;
	take_portion(m, n, &s);
	if (is_counted(m, s.tokens))
		push(m, &s);
}

/* By place; a wide measure ("two 400 g tins") before the size inside it. */
static int
in_order(const void *a, const void *b)
{
	const struct measure *x = a, *y = b;
	struct span p = x->place.span, q = y->place.span;

	if (p.beg != q.beg)
		return p.beg < q.beg ? -1 : 1;
	return (p.end < q.end) - (p.end > q.end);
}

/* ---- corrections after the food ------------------------------------------ */

/* The first measure at or after a source offset; their number without one. */
static size_t
measure_from(const struct maker *m, uint32_t beg)
{
	size_t lo = 0, hi = m->measure.n;

	while (lo < hi) {
		size_t mid = (lo + hi) / 2;

		if (m->measure.v[mid].place.span.beg < beg)
			lo = mid + 1;
		else
			hi = mid;
	}
	return lo;
}

/* The first amount or count that begins in the node's words; NULL without. */
static struct measure *
measure_in(struct maker *m, const struct node *n)
{
	struct span s = script_source(m->s, node_text(&m->c, n));

	for (size_t i = measure_from(m, s.beg); i < m->measure.n; i++) {
		struct measure *x = &m->measure.v[i];

		if (x->place.span.beg >= s.end)
			break;
		if (x->kind == MEASURE_AMOUNT || x->kind == MEASURE_COUNT)
			return x;
	}
	return NULL;
}

/* "the juice of two lemons, no, one lemon": the first is taken out. */
static void
note_whole(struct maker *m, const struct node *first, const struct node *base)
{
	struct measure *wrong = measure_in(m, first), *right = measure_in(m, base);

	if (!wrong || !right || wrong == right)
		return;
	right->corrected = true;
	right->first = wrong->value;
	wrong->text.n = 0;
}

/* "60 g of butter, no, 80 g": the second value of the same food. */
static void
note_amend(struct maker *m, const struct node *n)
{
	struct field_nodes first, base, then;
	struct measure *x, *y;
	struct quantity q;

	if (!node_field(&m->c, n, "base", &base))
		return;
	if (node_field(&m->c, n, "first", &first)) {
		note_whole(m, first.v, base.v);
		return;
	}
	x = measure_in(m, base.v);
	if (!x || x->kind != MEASURE_AMOUNT)
		return;
	if (node_field(&m->c, n, "then", &then)) {
		y = measure_in(m, then.v);
		if (!y)
			return;
		y->corrected = true;
		y->first = x->value;
		x->text.n = 0;
	} else if (node_field(&m->c, n, "thennumber", &then) &&
		   value_of_nodes(&m->c, then, &q)) {
		x->corrected = true;
		x->first = x->value;
		x->value.min = q.min;
		x->value.max = q.max;
		x->text = words_of(m, node_text(&m->c, then.v));
		x->place = place_of_node(m, then.v);
	}
}

static void
drop_empty(struct maker *m)
{
	size_t kept = 0;

	for (size_t i = 0; i < m->measure.n; i++)
		if (m->measure.v[i].text.n)
			m->measure.v[kept++] = m->measure.v[i];
	m->measure.n = kept;
}

void
measures_collect(struct maker *m)
{
	const struct level *l = chart_level(&m->c, "compound");
	const struct level *ing = chart_level(&m->c, "ingredient");
	const struct level *amend = chart_level(&m->c, "amend");
	struct collector k = {.m = m};

	for (size_t i = 0; l && i < l->node.n; i++)
		collect_node(&k, &l->node.v[i]);
	for (size_t i = 0; ing && i < ing->node.n; i++)
		if (node_is(&m->c, &ing->node.v[i], "ING") ||
		    node_is(&m->c, &ing->node.v[i], "INGS"))
			collect_count(m, &ing->node.v[i]);
	if (m->measure.n)
		qsort(m->measure.v, m->measure.n, sizeof *m->measure.v, in_order);
	for (size_t i = 0; amend && i < amend->node.n; i++)
		note_amend(m, &amend->node.v[i]);
	drop_empty(m);
}

/* True where a paragraph holds the node's words alone: a line of a list. */
static bool
is_list_line(const struct maker *m, const struct node *n)
{
	const struct cue *c = &m->s->cue[m->c.tokens.token.v[n->beg].cue];
	struct span said = node_text(&m->c, n);

	return c->paragraph && said.beg == c->text.beg && said.end == c->text.end;
}

static bool
is_said_yield(const struct maker *m, struct span source)
{
	for (size_t i = 0; i < m->d->dishes; i++)
		for (size_t k = 0; k < m->d->dish[i].yields_said; k++)
			if (m->d->dish[i].yield_said[k].place.span.beg == source.beg)
				return true;
	return false;
}

void
measures_drop_yields(struct maker *m)
{
	const struct level *l = chart_level(&m->c, "yield");

	for (size_t i = 0; l && i < l->node.n; i++) {
		const struct node *n = &l->node.v[i];
		struct measure *x;

		if (!node_is(&m->c, n, "YIELD") || is_list_line(m, n) ||
		    !is_said_yield(m, script_source(m->s, node_text(&m->c, n))))
			continue;
		x = measure_in(m, n);
		if (x && (!x->value.unit || !x->value.unit->has_base))
			x->text.n = 0;
	}
	drop_empty(m);
}
