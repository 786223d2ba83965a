/* SPDX-License-Identifier: ISC */
/*
 * A host pauses between two dishes. Where a paragraph or a pause begins after a
 * dish that is through, the name before the first amount is the next dish,
 * whatever it is made of; an announced one needs no end of the one before it.
 *
 *     "... makes twelve puds. | Carrots, for a bit of colour: five hundred grams"
 */
#include "outline/outline.h"

enum {
	FEW = 4,           /* tokens: before a name that leads */
	TAIL = 30,         /* tokens: the last words of a dish */
	LEAD = 30,         /* tokens: in which the name is looked for */
	LENGTH = 90,       /* tokens: within which the amounts count */
	SECTION_MAX = 600, /* tokens */
	AHEAD_MAX = 400,   /* names looked ahead at */
	SURE = 10,         /* strength of a name that no other replaces */
	RECIPE = 3         /* amounts of food that a recipe has at least */
};

bool
section_begins(const struct outline *o, uint32_t token)
{
	const struct tokens *t = &o->m->c.tokens;
	const struct cue *cue = &o->m->s->cue[t->token.v[token].cue];
	uint32_t before = token;

	while (before > 0 && token_has(o->m, before - 1, "BREAK"))
		before--;
	return before > 0 && !token_has(o->m, token, "BREAK") &&
	       t->token.v[token].cue != t->token.v[before - 1].cue &&
	       cue->kind == CUE_SPEECH && cue->paragraph;
}

uint32_t
section_of(const struct outline *o, uint32_t token)
{
	while (token > 0 && !section_begins(o, token))
		token--;
	return token;
}

/* Before a pause less is needed: "that's it", "about six cups", "serve it hot". */
bool
section_closes(const struct outline *o, uint32_t since, uint32_t end)
{
	uint32_t tail = end > since + TAIL ? end - TAIL : since;

	return outline_aside(o, "close", "CLOSED", tail, end) ||
	       block_yields(o, since, end);
}

uint32_t
section_end(const struct outline *o, uint32_t beg)
{
	uint32_t last = (uint32_t)o->m->c.tokens.token.n, i = beg + 1;

	while (i < last && i < beg + SECTION_MAX && !section_begins(o, i))
		i++;
	return i;
}

/* The token after the first food with an amount, or the end of the section; at
 * most LEAD on. */
static uint32_t
lead_end(const struct outline *o, uint32_t beg)
{
	uint32_t last = (uint32_t)o->m->c.tokens.token.n, end = beg;

	last = last > beg + LEAD ? beg + LEAD : last;
	while (end < last && memory_measured(o, beg, end) == 0 &&
	       (end == beg || !section_begins(o, end)))
		end++;
	return end;
}

/* A dish that was said to go with another, or a word that no list has but the
 * overview, that begins a section with amounts: a dish of its own. */
static bool
leads_alone(
    const struct outline *o, const struct opening *x, const struct planned *p, uint32_t beg)
{
	if (!p || !p->announced || x->token > beg + FEW || !block_leads(o, x) ||
	    memory_measured(o, x->end, x->end + LEAD) < 2)
		return false;
	return p->main ? p->sort == NAME_UNLISTED : p->sort == NAME_DISH;
}

/* "My mother's kheer takes a litre of milk ...": a dish by its name alone, in a
 * section that is a recipe. */
static bool
leads_recipe(const struct outline *o, const struct opening *x, uint32_t beg)
{
	return x->sort == NAME_DISH && x->kind != OPENING_WITH && !x->raw && !x->bought &&
	       !token_has(o->m, x->token, "ACTION") &&
	       memory_measured(o, beg, section_end(o, beg)) >= RECIPE;
}

/* How well the name begins a dish; 0 not at all. */
static int
strength(const struct outline *o, const struct opening *x, uint32_t beg, bool closed)
{
	const struct planned *p = plan_find(&o->plan, x);
	bool awaited = named_is_awaited(o, p);
	const struct named *now = &o->dish.v[o->now_dish];

	if (x->kind == OPENING_BACK || x->kind == OPENING_HEADING || x->counted ||
	    x->sort == NAME_TOOL || named_dish(o, x) >= 0 ||
	    named_part(o, o->now_dish, x) >= 0 || name_is_half(now->name, x))
		return 0;
	if (awaited && (x->sort > NAME_FOOD || !p->weak || closed))
		return 20 + (int)x->sort;
	if (leads_alone(o, x, p, beg))
		return 15;
	if (!closed && (!p || p->main) && leads_recipe(o, x, beg))
		return 12;
	if (!closed || (p && !p->main) || x->pantry || x->kind == OPENING_WITH ||
	    (x->kind < OPENING_TODAY && !block_leads(o, x)))
		return 0;
	switch (x->sort) {
	case NAME_DISH:
	case NAME_EITHER:
		return 10 + (int)x->sort;
	case NAME_MAYBE:
	case NAME_FOOD:
		return memory_has(o, x->head) ? 0 : (int)x->sort + (int)!x->bought;
	case NAME_PART:
		return now->sort == NAME_PART && x->kind >= OPENING_TOPIC ? 1 : 0;
	default:
		return 0;
	}
}

/* The name that leads the section. *part: one of a part does. */
static const struct opening *
leading(const struct outline *o, uint32_t beg, bool closed, bool *part)
{
	uint32_t end = lead_end(o, beg);
	const struct opening *best = NULL;

	for (size_t i = outline_opening(o, beg); i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];

		if (x->token > end)
			break;
		*part = *part || (x->kind >= OPENING_TOPIC &&
				     (x->sort == NAME_PART || x->sort == NAME_EITHER));
		*part = *part || (x->kind >= OPENING_BARE && named_dish(o, x) >= 0);
		if (strength(o, x, beg, closed) >
		    (best ? strength(o, best, beg, closed) : 0))
			best = x;
	}
	return best && memory_measured(o, best->token, best->token + LENGTH) > 0 ? best
										 : NULL;
}

/* Does the cook turn to it in so many words, later on? */
static bool
is_turned_to(const struct outline *o, const struct planned *p, uint32_t after)
{
	size_t from = outline_opening(o, after);

	for (size_t i = from; i < o->openings.said.n && i < from + AHEAD_MAX; i++)
		if (o->openings.said.v[i].kind >= OPENING_TOPIC &&
		    plan_find(&o->plan, &o->openings.said.v[i]) == p)
			return true;
	return false;
}

/* The announced dish that the section names further on, "let your rasam simmer";
 * else the first that waits. */
static const struct planned *
awaited(const struct outline *o, uint32_t beg)
{
	const struct planned *first = first_planned(o);

	for (size_t i = outline_opening(o, beg); i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];
		const struct planned *p = plan_find(&o->plan, x);

		if (x->token > beg + LENGTH || (i && section_of(o, x->token) != beg))
			break;
		if (named_is_awaited(o, p) && p->sort > NAME_FOOD)
			return p;
	}
	return named_is_awaited(o, first) && !is_turned_to(o, first, beg + LEAD) ? first
										 : NULL;
}

/* The dish that a section begins without its name: the one that waits, or the
 * one that it is called in the end. */
static int
add_nameless(struct outline *o, uint32_t beg)
{
	const struct planned *p = awaited(o, beg);
	uint32_t end = section_end(o, beg);
	const struct opening *x = nameless_told_in(o, beg, end);

	if (memory_measured(o, beg, end) < 2)
		return -1;
	if (!x)
		x = nameless_called(o, beg, end);
	if (x && named_dish(o, x) < 0 && (!p || p->weak))
		return nameless_add(o, x, beg);
	if (p && !p->weak)
		return named_add_planned(o, p, beg);
	return -1;
}

/* "Now six chicken thighs ...", with no name at all: its main food. */
static int
add_food(struct outline *o, uint32_t beg)
{
	uint32_t end = section_end(o, beg);
	struct str food = STR("");

	if (memory_measured(o, beg, end) < RECIPE || nameless_food(o, beg, end, &food) < 2)
		return -1;
	return named_add_titled(o, food, food, beg);
}

/* "Third pot. Eight chicken thighs": where no dish is told in several of them. */
static bool
is_numbered(const struct outline *o, uint32_t beg)
{
	return !plan_is_clear(&o->plan) &&
	       outline_aside(o, "close", "NUMBERED", beg, beg + 5);
}

static bool
is_closed(const struct outline *o, uint32_t since, uint32_t beg)
{
	return is_numbered(o, beg) ||
	       outline_aside(o, "close", "COURSED", beg, beg + FEW) ||
	       block_is_over(o, since, beg) || section_closes(o, since, beg);
}

bool
section_opens(struct outline *o, uint32_t beg)
{
	const struct named *now = o->now_dish < 0 ? NULL : &o->dish.v[o->now_dish];
	const struct opening *x;
	bool closed, part = false;
	int dish = -1;

	if (!now || memory_measured(o, now->since, beg) < RECIPE ||
	    memory_measured(o, beg, beg + LENGTH) < 2)
		return false;
	closed = is_closed(o, now->since, beg);
	x = leading(o, beg, closed, &part);
	if (closed && !part && (!x || strength(o, x, beg, true) < SURE))
		dish = add_nameless(o, beg);
	if (closed && !part && !x && dish < 0)
		dish = add_food(o, beg);
	if (dish < 0 && !x)
		return false;
	if (dish < 0)
		outline_turn(o, x->token, named_add(o, x), 0);
	else
		outline_turn(o, beg, dish, 0);
	return true;
}
