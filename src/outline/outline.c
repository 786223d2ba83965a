/* SPDX-License-Identifier: ISC */
/*
 * Makes the dishes and parts: names from an overview and from where the cook
 * turns to them, and which clause belongs where.
 */
#include "outline/outline.h"
#include "outline/title.h"

enum { WITH_MAX = 12 }; /* tokens from a part to the dish that it is said of */

static uint32_t
clause_beg(const struct maker *m, const struct clause *q)
{
	return chart_top(&m->c)->node.v[q->beg].beg;
}

static uint32_t
clause_end(const struct maker *m, const struct clause *q)
{
	return chart_top(&m->c)->node.v[q->end - 1].end;
}

size_t
outline_opening(const struct outline *o, uint32_t token)
{
	size_t lo = 0, hi = o->openings.said.n;

	while (lo < hi) {
		size_t mid = lo + (hi - lo) / 2;

		if (o->openings.said.v[mid].token < token)
			lo = mid + 1;
		else
			hi = mid;
	}
	return lo;
}

const struct node *
outline_aside(const struct outline *o, const char *pass, const char *class, uint32_t beg,
    uint32_t end)
{
	const struct level *l = chart_level(&o->m->c, pass);
	size_t lo = 0, hi = l ? l->node.n : 0;

	while (lo < hi) {
		size_t mid = lo + (hi - lo) / 2;

		if (l->node.v[mid].beg < beg)
			lo = mid + 1;
		else
			hi = mid;
	}
	for (; l && lo < l->node.n && l->node.v[lo].beg < end; lo++)
		if (node_is(&o->m->c, &l->node.v[lo], class))
			return &l->node.v[lo];
	return NULL;
}

void
outline_turn(struct outline *o, uint32_t token, int dish, int part)
{
	vec_push(o->m->a, &o->m->turn, (struct turn){token, dish, part});
	if (dish != o->now_dish && o->now_dish >= 0)
		o->dish.v[o->now_dish].until = token;
	if (dish != o->now_dish && dish >= 0)
		o->dish.v[dish].since = token;
	o->now_dish = dish;
	o->now_part = part;
	o->finished = false;
}

/* The token where the cook turns to another name than x after it. Parts: also
 * to what may be a part of x. */
static uint32_t
next_turn(const struct outline *o, const struct opening *x, bool parts)
{
	for (size_t i = outline_opening(o, x->token); i < o->openings.said.n; i++) {
		const struct opening *y = &o->openings.said.v[i];

		if (y->token > x->token && y->kind >= OPENING_TOPIC &&
		    y->sort > NAME_FOOD && (parts || y->sort < NAME_EITHER) &&
		    !name_is_same(x->name, y->name))
			return y->token;
	}
	return (uint32_t)o->m->c.tokens.token.n;
}

/* "the meatballs" of spaghetti and meatballs; another soup is another dish. */
static bool
is_within(const struct outline *o, const struct opening *x)
{
	const struct named *d = o->now_dish < 0 ? NULL : &o->dish.v[o->now_dish];

	return d && name_has_word(d->name, x->head) &&
	       (x->lone || !str_is(d->head, x->head));
}

/* A dish that no overview named, said in so many words. */
static bool
opens_unplanned(const struct outline *o, const struct opening *x)
{
	size_t foods = memory_measured(o, x->end, next_turn(o, x, false));

	if (foods == 0 || (x->kind == OPENING_FIRST && plan_is_clear(&o->plan)))
		return false;
	if (is_within(o, x))
		return false;
	if (x->kind == OPENING_HEADING && !x->with_for && x->sort != NAME_PART)
		return true;
	if (x->numbered)
		return true;
	if (x->bought && x->kind < OPENING_NEXT)
		return false;
	if (x->sort == NAME_DISH)
		return x->marked || !x->lone || x->kind >= OPENING_TURN;
	if (x->kind < OPENING_TURN || x->sort == NAME_PART || x->lone)
		return o->now_dish < 0 && x->sort != NAME_PART;
	return foods > 1;
}

/* "the chips" of fish and chips */
static bool
is_half(const struct outline *o, const struct opening *x)
{
	return o->now_dish >= 0 && x->sort >= NAME_MAYBE &&
	       name_is_half(o->dish.v[o->now_dish].name, x);
}

static bool
opens_part(const struct outline *o, const struct opening *x)
{
	if (x->numbered)
		return false;
	if (x->sort == NAME_PART || x->sort == NAME_EITHER || is_half(o, x))
		return true;
	if (!x->made && (x->kind < OPENING_NEXT || x->sort < NAME_MAYBE))
		return false;
	if (x->sort == NAME_DISH && x->kind != OPENING_FIRST)
		return false;
	return plan_is_clear(&o->plan) && (x->lone || x->made) &&
	       memory_measured(o, x->end, next_turn(o, x, true)) > 1;
}

static void
open_planned(struct outline *o, uint32_t token)
{
	const struct planned *p = first_planned(o);

	if (p)
		outline_turn(o, token, named_add_planned(o, p, token), 0);
}

static void
go_back(struct outline *o, const struct opening *x)
{
	int dish = named_dish(o, x);

	if (dish < 0 && named_part(o, o->now_dish, x) >= 0)
		dish = o->now_dish;
	if (dish >= 0 && dish != o->now_dish && block_is_told(o, dish, x->token))
		return;
	if (dish >= 0 && (dish != o->now_dish || o->now_part > 0))
		outline_turn(o, x->token, dish, 0);
}

/* "let's do our vegetables", after the marinade */
static bool
takes_up_main(const struct outline *o, const struct opening *x)
{
	return o->now_part > 0 && !x->pantry && !x->bought &&
	       ((x->sort == NAME_FOOD && x->kind == OPENING_TURN && !x->made) ||
		   (x->sort == NAME_MAYBE && x->lone && x->kind >= OPENING_TOPIC));
}

/* "now the tadka, which is the point of dal": the dish that is named with it. */
static int
dish_of_part(const struct outline *o, const struct opening *x)
{
	for (size_t i = outline_opening(o, x->end); i < o->openings.said.n; i++) {
		const struct opening *y = &o->openings.said.v[i];
		int dish = named_dish(o, y);

		if (y->token >= x->end + WITH_MAX)
			break;

		if (dish >= 0 && y->kind < OPENING_BARE &&
		    str_is_z(o->m->c.tokens.token.v[y->token - 1].norm, "of"))
			return dish;
	}
	return o->now_dish;
}

/* "let me introduce you to ajvar, it's a relish": no dish of its own. */
static bool
describes(const struct outline *o, const struct opening *x, const struct planned *p)
{
	uint32_t i = x->token;

	if (p->announced || o->now_dish < 0 || !o->dish.v[o->now_dish].announced ||
	    memory_measured(o, o->dish.v[o->now_dish].since, x->token) > 0)
		return false;
	while (i > 0 && title_drops(&o->m->c, i - 1))
		i--;
	return i > 1 && token_has(o->m, i - 1, "BE") && token_has(o->m, i - 2, "PRON");
}

static void
take_strong(struct outline *o, const struct opening *x)
{
	int dish = named_dish(o, x), part = named_part(o, o->now_dish, x);
	const struct planned *p = plan_find(&o->plan, x);

	if (x->kind == OPENING_BARE &&
	    (!p || !p->main || named_is_open(o, p) || describes(o, x, p) ||
		(x->sort < NAME_DISH && memory_has(o, x->head))))
		return;
	if (part >= 0)
		outline_turn(o, x->token, o->now_dish, part);
	else if (dish >= 0 && dish != o->now_dish && block_is_told(o, dish, x->token))
		return;
	else if (dish >= 0 && (dish != o->now_dish || o->now_part > 0)) {
		if (o->dish.v[dish].written)
			o->dish.v[dish].token = x->token;
		o->dish.v[dish].written = false;
		outline_turn(o, x->token, dish, 0);
	} else if (dish >= 0)
		return;
	else if (p && p->counted && x->lone)
		outline_turn(o, x->token, -1, -1);
	else if (p && p->main && (!named_is_open(o, p) || p->counted))
		outline_turn(o, x->token, named_add(o, x), 0);
	else if (p && !p->main && o->now_dish >= 0)
		outline_turn(o, x->token, o->now_dish, named_add_part(o, o->now_dish, x));
	else if (takes_up_main(o, x))
		outline_turn(o, x->token, o->now_dish, 0);
	else if (opens_part(o, x)) {
		if (o->now_dish < 0)
			open_planned(o, x->token);
		if (o->now_dish >= 0)
			outline_turn(o, x->token, dish_of_part(o, x),
			    named_add_part(o, dish_of_part(o, x), x));
		else
			outline_turn(o, x->token, named_add(o, x), 0);
	} else if (opens_unplanned(o, x))
		outline_turn(o, x->token, named_add(o, x), 0);
}

static void
take(struct outline *o, const struct opening *x)
{
	if (block_opens(o, x))
		outline_turn(o, x->token, named_add(o, x), 0);
	else if (x->kind == OPENING_DONE)
		o->finished =
		    o->now_part > 0 && named_part(o, o->now_dish, x) == o->now_part;
	else if (x->kind == OPENING_BACK)
		go_back(o, x);
	else if (x->kind == OPENING_BARE ||
		 (x->kind >= OPENING_TOPIC && x->sort > NAME_TOOL))
		take_strong(o, x);
	else if (x->kind >= OPENING_TOPIC && x->sort == NAME_UNLISTED &&
		 plan_find(&o->plan, x))
		take_strong(o, x);
}

/* ---- the first dish ---------------------------------------------------------- */

static const struct opening *
open_first(struct outline *o)
{
	const struct opening *best = first_opening(o);
	const struct planned *p;

	if (best)
		take_strong(o, best);
	if (o->dish.n)
		return best;
	p = first_planned(o);
	best = !p || p->weak || !p->announced ? nameless_told(o, p) : NULL;
	if (best)
		outline_turn(o, first_words(o), nameless_add(o, best, first_words(o)), 0);
	else if (p && p->token < UINT32_MAX)
		outline_turn(
		    o, first_part(o, p), named_add_planned(o, p, first_part(o, p)), 0);
	else if (p)
		outline_turn(o, 0, named_add_planned(o, p, first_spoken(o)), 0);
	return NULL;
}

/* ---- the walk --------------------------------------------------------------- */

/* "Today we're making turkey burgers": says what, and does nothing. */
static bool
only_names(const struct outline *o, const struct clause *q, const struct opening *x)
{
	return x && x->token >= clause_beg(o->m, q) && x->sort >= NAME_MAYBE &&
	       clause_end(o->m, q) <= x->end + 2;
}

/* Takes the names up to a token; the last that turned to something. */
static const struct opening *
take_names(struct outline *o, size_t *next, uint32_t end)
{
	const struct opening *turned = NULL;

	for (; *next < o->openings.said.n; (*next)++) {
		const struct opening *x = &o->openings.said.v[*next];
		size_t turns = o->m->turn.n;

		if (x->token >= end)
			break;
		if (x->token > o->dish.v[0].token)
			take(o, x);
		if (o->m->turn.n > turns || x->token == o->dish.v[0].token)
			turned = x;
	}
	return turned;
}

static void
walk(struct outline *o)
{
	struct maker *m = o->m;
	size_t next = 0;

	for (size_t i = 0; i < m->clause.n; i++) {
		struct clause *q = &m->clause.v[i];
		size_t turns = m->turn.n;
		const struct opening *turned;
		int dish;

		if (clause_beg(m, q) > o->dish.v[0].token &&
		    section_begins(o, clause_beg(m, q)))
			section_opens(o, clause_beg(m, q));
		turned = take_names(o, &next, clause_end(m, q));

		if (clause_end(m, q) <= o->dish.v[0].token)
			continue;
		dish = m->turn.n == turns ? returns_to(o, q) : -1;
		if (dish >= 0 && (dish != o->now_dish || o->now_part > 0))
			outline_turn(o, clause_beg(m, q), dish, 0);
		if (only_names(o, q, turned))
			continue;
		q->dish = o->now_dish;
		q->part = o->now_part;
		memory_note(o, q);
	}
}

/* Takes the talk to the audience out of the dishes: asides, and all from where
 * the host says goodbye. */
static void
close_off(struct outline *o)
{
	struct maker *m = o->m;
	size_t last = m->clause.n;
	bool bye = false;

	while (last > 0 && !work_is_done(o, &m->clause.v[last - 1]))
		last--;
	for (size_t i = 0; i < m->clause.n; i++) {
		struct clause *q = &m->clause.v[i];
		bool plug = returns_plugs(o, q) && !memory_mentions_food(o, q);

		bye = bye || (i >= last && (plug || returns_says_bye(o, q)));
		if (bye || plug)
			q->dish = q->part = -1;
	}
}

/* Is it said as the name of something that is made? A lone food may be both. */
static bool
is_named(const struct outline *o, int dish, const struct opening *x)
{
	if (x->kind < OPENING_TODAY || x->sort < NAME_MAYBE ||
	    (x->sort == NAME_MAYBE && x->lone))
		return false;
	return named_dish(o, x) >= 0 || named_part(o, dish, x) >= 0;
}

static void
note_titles(struct outline *o)
{
	struct maker *m = o->m;
	size_t t = 0;

	for (size_t i = 0; i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];

		while (t + 1 < m->turn.n && m->turn.v[t + 1].token <= x->token)
			t++;
		if (is_named(o, m->turn.v[t].dish, x))
			vec_push(m->a, &m->title, (struct span){x->token, x->end});
	}
}

/* Where "serves four", "makes a dozen" is said. */
static void
note_yields(struct outline *o)
{
	const struct chart *c = &o->m->c;
	const struct level *l = chart_level(c, "yield");

	for (size_t i = 0; l && i < l->node.n; i++)
		if (node_is(c, &l->node.v[i], "YIELD") &&
		    !node_attribute(c, &l->node.v[i], "cut").p)
			vec_push(o->m->a, &o->yield, l->node.v[i].beg);
}

/* The names in the episode's title, which the chart leaves out. */
static void
read_title(struct outline *o)
{
	struct maker *m = o->m;
	struct script *s = arena_new(m->a, struct script);
	struct cue *q = arena_new(m->a, struct cue);
	struct chart *c = arena_new(m->a, struct chart);

	if (!m->s->title.n)
		return;
	*q = (struct cue){.kind = CUE_SPEECH, .text = {0, (uint32_t)m->s->title.n}};
	*s = (struct script){.text = m->s->title, .cue = q, .cues = 1};
	chart_make(c, m->g, s, m->a);
	openings_find(&o->title, c);
}

void
outline_make(struct maker *m)
{
	struct outline o = {.m = m, .now_dish = -1};
	const struct opening *first = NULL;

	if (m->c.tokens.token.n == 0)
		return;
	openings_find(&o.openings, &m->c);
	read_title(&o);
	memory_count(&o);
	note_yields(&o);
	o.content = work_begins(&o);
	o.plan.arena = m->a;
	plan_make(&o.plan, &o.openings, &o.title, o.content);
	if (o.content != UINT32_MAX)
		first = open_first(&o);
	if (o.dish.n == 0)
		nameless_open(&o);
	written_read(&o, first);
	walk(&o);
	close_off(&o);
	dishes_make(&o);
	note_titles(&o);
}
