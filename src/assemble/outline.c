/* SPDX-License-Identifier: ISC */
/*
 * Makes the dishes and parts: names from an overview and from where the cook
 * turns to them, and which clause belongs where.
 */
#include "assemble/outline.h"

enum { NEAR_MS = 12000 };

static struct str
text_of_tokens(const struct maker *m, uint32_t beg, uint32_t end)
{
	struct buf b = buf_in(m->a);

	for (uint32_t i = beg; i < end; i++) {
		struct str w = words_of(m, m->c.tokens.token.v[i].text);

		if (b.n && m->c.tokens.token.v[i].flags & TOKEN_HYPHEN)
			buf_put_char(&b, '-');
		else if (b.n && m->c.tokens.token.v[i].flags & TOKEN_SPACE)
			buf_put_char(&b, ' ');
		for (size_t k = 0; k < w.n; k++)
			buf_put_char(&b, to_lower(w.p[k]));
	}
	return buf_str(&b);
}

static bool
token_is(const struct maker *m, uint32_t i, const char *class_name)
{
	unsigned id = grammar_class(m->g, class_name);

	return id < CLASSES_MAX && i < m->c.tokens.token.n &&
	       classset_has(&m->c.tokens.token.v[i].entry->classes, id);
}

/* The lemma of a name's last word: what two names of one dish share. */
static struct str
head_of(const struct maker *m, uint32_t beg, uint32_t end)
{
	static const char *const classes[] = {"DISH", "PARTHEAD", "FOOD"};
	uint32_t last = end;

	for (uint32_t i = beg; i < end; i++)
		if (i > beg && token_is(m, i, "WITH"))
			break;
		else
			last = i;
	for (size_t k = 0; last < end && k < 3; k++) {
		const struct reading *r = entry_reading(
		    m->c.tokens.token.v[last].entry, grammar_class(m->g, classes[k]));

		if (r)
			return r->lexeme->lemma;
	}
	return last < end ? m->c.tokens.token.v[last].norm : STR("");
}

static enum opening_kind
kind_of(const struct maker *m, const struct node *n)
{
	struct str kind = node_attribute(&m->c, n, "kind");

	return str_is_z(kind, "back")   ? OPENING_BACK
	       : str_is_z(kind, "part") ? OPENING_PART
	       : str_is_z(kind, "turn") ? OPENING_TURN
					: OPENING_MENTION;
}

/* A mention right after a marker or at the start of a sentence. */
static bool
leads(const struct maker *m, uint32_t token)
{
	uint32_t i = token;

	while (i > 0 && (token_is(m, i - 1, "DET") || token_is(m, i - 1, "ART")))
		i--;
	return i == 0 || token_is(m, i - 1, "MARK") || token_is(m, i - 1, "FILLER") ||
	       token_is(m, i - 1, "BREAK") || token_is(m, i - 1, "STOP");
}

static void
collect(struct outline *o, const struct node *n)
{
	const struct maker *m = o->m;
	struct field_nodes f;
	struct opening x = {.kind = kind_of(m, n)};

	if ((!node_is(&m->c, n, "OPEN") && !node_is(&m->c, n, "NAME")) ||
	    !node_field(&m->c, n, "name", &f))
		return;
	x.token = f.v[0].beg;
	x.end = f.v[f.n - 1].end;
	x.name = text_of_tokens(m, x.token, x.end);
	x.head = head_of(m, x.token, x.end);
	x.is_part = token_is(m, x.end - 1, "PARTHEAD") && !token_is(m, x.end - 1, "DISH");
	x.is_dish = token_is(m, x.end - 1, "DISH");
	x.leads = x.kind != OPENING_MENTION || leads(m, x.token);
	vec_push(m->a, &o->opening, x);
}

/* A heading is a name, but for the usual ones of a recipe's sections. */
static bool
is_section(struct str s)
{
	static const char *const plain[] = {"ingredients", "method", "instructions",
	    "directions", "steps", "you will need", "you'll need", "shopping list", "notes",
	    "what you need", "script", "intro", "outro", "introduction", "preparation",
	    "ingredient list", "transcript"};

	for (size_t i = 0; i < sizeof plain / sizeof *plain; i++)
		if (str_is_z(s, plain[i]))
			return true;
	return false;
}

static void
collect_headings(struct outline *o)
{
	const struct maker *m = o->m;

	for (uint32_t i = 0; i < m->c.tokens.token.n;) {
		uint32_t cue = m->c.tokens.token.v[i].cue, end = i;
		struct opening x = {.kind = OPENING_HEADING, .leads = true};

		while (end < m->c.tokens.token.n && m->c.tokens.token.v[end].cue == cue)
			end++;
		if (m->s->cue[cue].kind == CUE_HEADING) {
			uint32_t beg = i;

			while (beg < end &&
			       (token_is(m, beg, "FOR") || token_is(m, beg, "DET") ||
				   token_is(m, beg, "BREAK")))
				beg++;
			while (end > beg && (token_is(m, end - 1, "COLON") ||
						token_is(m, end - 1, "STOP") ||
						token_is(m, end - 1, "BREAK")))
				end--;
			x.token = beg;
			x.end = end;
			x.name = text_of_tokens(m, beg, end);
			x.head = head_of(m, beg, end);
			x.is_part =
			    beg < end && (token_is(m, end - 1, "PARTHEAD") || beg > i + 1);
			x.is_dish = !x.is_part;
			if (x.name.n && !is_section(x.name))
				vec_push(m->a, &o->opening, x);
		}
		for (i = end; i < m->c.tokens.token.n && m->c.tokens.token.v[i].cue == cue;
		     i++)
			;
	}
}

static int
by_token(const void *a, const void *b)
{
	const struct opening *x = a, *y = b;

	if (x->token != y->token)
		return x->token < y->token ? -1 : 1;
	return (int)y->kind - (int)x->kind;
}

/* The first token of real work: food with an amount, or an action on things. */
static uint32_t
content_start(const struct maker *m)
{
	const struct level *top = chart_top(&m->c);

	for (size_t i = 0; i < m->clause.n; i++) {
		const struct clause *q = &m->clause.v[i];
		bool food = false, amount = false;
		struct str kind = lexeme_get(q->action, "kind");

		for (uint32_t k = q->beg; k < q->end; k++) {
			const struct node *n = &top->node.v[k];
			struct mention x[16];
			size_t count = mentions_of(m, n, x, 16);

			food = food || count > 0 || node_is(&m->c, n, "EQ");
			amount = amount || (count > 0 && x[0].amount.known);
		}
		if (q->kind == CLAUSE_CHAT || q->kind == CLAUSE_NOT)
			continue;
		if (amount ||
		    (q->kind == CLAUSE_DO && food && kind.n && !str_is_z(kind, "prepare") &&
			!str_is_z(kind, "serve") && !lexeme_has(q->action, "light")))
			return top->node.v[q->beg].beg;
	}
	return UINT32_MAX;
}

static int
find_dish(const struct outline *o, const struct opening *x)
{
	for (size_t i = 0; i < o->dish.n; i++)
		if (str_is(o->dish.v[i].head, x->head) ||
		    str_is(o->dish.v[i].name, x->name))
			return (int)i;
	for (size_t i = 0; i < o->dish.n; i++)
		if (str_find(o->dish.v[i].name, x->head) < o->dish.v[i].name.n &&
		    x->head.n > 3)
			return (int)i;
	return -1;
}

static const struct opening *
find_overview(const struct outline *o, const struct opening *x)
{
	for (size_t i = 0; i < o->opening.n && o->opening.v[i].token < o->content; i++) {
		const struct opening *p = &o->opening.v[i];

		if (str_is(p->head, x->head) ||
		    (x->head.n > 3 && str_find(p->name, x->head) < p->name.n))
			return p;
	}
	return NULL;
}

static void
turn_to(struct outline *o, uint32_t token, int dish, int part)
{
	vec_push(o->m->a, &o->m->turn, (struct turn){token, dish, part});
	o->now_dish = dish;
	o->now_part = part;
}

static int
add_dish(struct outline *o, struct str name, struct str head, uint32_t token)
{
	struct named x = {name, head, (int)o->dish.n, token, {0}};

	vec_push(o->m->a, &o->dish, x);
	vec_push(o->m->a, &o->dish.v[o->dish.n - 1].part,
	    (struct part_name){STR(""), STR(""), token});
	return (int)o->dish.n - 1;
}

static int
part_of(struct outline *o, int dish, const struct opening *x)
{
	struct named *d = &o->dish.v[dish];

	for (size_t i = 1; i < d->part.n; i++)
		if (str_is(d->part.v[i].head, x->head))
			return (int)i;
	vec_push(o->m->a, &d->part, (struct part_name){x->name, x->head, x->token});
	return (int)d->part.n - 1;
}

/* The longer of two names of one dish, as the overview may tell more. */
static struct str
better_name(const struct outline *o, const struct opening *x)
{
	const struct opening *p = find_overview(o, x);

	return p && p->name.n > x->name.n && (p->is_dish || !x->is_dish) ? p->name
									 : x->name;
}

static bool
opens_dish(const struct outline *o, const struct opening *x)
{
	if (x->kind == OPENING_HEADING)
		return !x->is_part;
	if (x->kind == OPENING_BACK || x->kind == OPENING_PART)
		return false;
	if (find_overview(o, x))
		return x->leads;
	return x->kind == OPENING_TURN && x->is_dish && !x->is_part;
}

static void
take(struct outline *o, const struct opening *x)
{
	int known = find_dish(o, x);

	if (known >= 0) {
		if (x->kind != OPENING_MENTION && known != o->now_dish)
			turn_to(o, x->token, known, 0);
		else if (x->kind != OPENING_MENTION && o->now_part > 0)
			turn_to(o, x->token, known, 0);
		return;
	}
	if (opens_dish(o, x) && !(x->is_part && o->dish.n && !find_overview(o, x))) {
		turn_to(o, x->token, add_dish(o, better_name(o, x), x->head, x->token), 0);
		return;
	}
	if ((x->kind == OPENING_TURN || x->kind == OPENING_PART ||
		x->kind == OPENING_HEADING) &&
	    x->is_part && o->now_dish >= 0)
		turn_to(o, x->token, o->now_dish, part_of(o, o->now_dish, x));
}

/* The opening of the first dish: the last name said shortly before the work
 * begins, else the first name of the overview, from where the work begins. */
static void
open_first(struct outline *o)
{
	const struct maker *m = o->m;
	const struct opening *best = NULL, *any = NULL;
	int64_t at = place_of(m, o->content, o->content + 1).cue_ms;
	uint32_t cue = m->c.tokens.token.v[o->content].cue;

	for (size_t i = 0; i < o->opening.n && o->opening.v[i].token <= o->content; i++) {
		const struct opening *x = &o->opening.v[i];
		int64_t t = place_of(m, x->token, x->token + 1).cue_ms;

		if (x->kind == OPENING_BACK || (x->is_part && x->kind != OPENING_HEADING))
			continue;
		if (!any || (x->is_dish && !any->is_dish))
			any = x;
		if (x->leads && (m->c.tokens.token.v[x->token].cue == cue ||
				    at - t <= NEAR_MS || x->kind == OPENING_HEADING))
			best = x;
	}
	if (best)
		turn_to(o, best->token,
		    add_dish(o, better_name(o, best), best->head, best->token), 0);
	else if (any)
		turn_to(o, o->content, add_dish(o, any->name, any->head, o->content), 0);
}

/* No name was said before the work: the title, else the first name after it. */
static void
name_unnamed(struct outline *o)
{
	const struct maker *m = o->m;
	struct str name = m->s->title, head = STR("");

	for (size_t i = 0; !name.n && i < o->opening.n; i++)
		if (o->opening.v[i].is_dish) {
			name = o->opening.v[i].name;
			head = o->opening.v[i].head;
		}
	if (!name.n)
		name = STR("recipe");
	turn_to(
	    o, 0, add_dish(o, name, head, o->content == UINT32_MAX ? 0 : o->content), 0);
}

/* Turns and clauses are both in token order. */
static void
place_clauses(struct outline *o)
{
	struct maker *m = o->m;
	const struct level *top = chart_top(&m->c);
	size_t t = 0;

	for (size_t i = 0; i < m->clause.n; i++) {
		struct clause *q = &m->clause.v[i];
		uint32_t end = top->node.v[q->end - 1].end;

		while (t < m->turn.n && m->turn.v[t].token < end)
			t++;
		if (t > 0) {
			q->dish = m->turn.v[t - 1].dish;
			q->part = m->turn.v[t - 1].part;
		}
	}
}

static void
make_dishes(struct outline *o)
{
	struct draft *d = o->m->d;

	d->dish = arena_array(o->m->a, o->dish.n, struct dish);
	d->dishes = o->dish.n;
	for (size_t i = 0; i < o->dish.n; i++) {
		const struct named *x = &o->dish.v[i];
		struct dish *dish = &d->dish[i];

		dish->name = x->name;
		dish->place = place_of(o->m, x->token, x->token + 1);
		dish->beg_ms = dish->end_ms = dish->place.cue_ms;
		dish->active_ms = dish->total_ms = dish->claimed_ms = -1;
		dish->part = arena_array(o->m->a, x->part.n, struct part);
		dish->parts = x->part.n;
		for (size_t k = 0; k < x->part.n; k++) {
			dish->part[k].name = x->part.v[k].name;
			dish->part[k].place =
			    place_of(o->m, x->part.v[k].token, x->part.v[k].token + 1);
		}
	}
}

void
outline_make(struct maker *m)
{
	struct outline o = {.m = m, .now_dish = -1};
	const struct level *l = chart_level(&m->c, "outline");

	if (m->c.tokens.token.n == 0)
		return;
	for (size_t i = 0; l && i < l->node.n; i++)
		collect(&o, &l->node.v[i]);
	collect_headings(&o);
	if (o.opening.n)
		qsort(o.opening.v, o.opening.n, sizeof *o.opening.v, by_token);
	o.content = content_start(m);
	if (o.content != UINT32_MAX)
		open_first(&o);
	if (o.dish.n == 0)
		name_unnamed(&o);
	for (size_t i = 0; i < o.opening.n; i++)
		if (o.opening.v[i].token > m->turn.v[0].token)
			take(&o, &o.opening.v[i]);
	place_clauses(&o);
	make_dishes(&o);
}
