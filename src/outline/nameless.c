/* SPDX-License-Identifier: ISC */
/*
 * The name of a dish that nobody announced: what it is called in the end, the
 * title, what was said in passing, its main food.
 *
 *     "Two pounds of chuck ... and there you have it, my grandmother's goulash"
 */
#include "outline/outline.h"
#include "outline/title.h"

enum {
	RECIPE = 3,      /* amounts of food that a recipe has at least */
	AFTER = 15,      /* tokens: from the name of what was told to the next amount */
	FEW = 5,         /* tokens: before a name that leads */
	NEXT = 15,       /* tokens: before the name of another dish */
	LAST = 12,       /* tokens: the last words of what was told */
	TOLD_MAX = 1500, /* tokens: of a dish whose name comes in the end */
	MAIN_MAX = 200   /* tokens: in which its main food is said */
};

/* "There's your green goddess", "that's spiced lentil soup": said of what was
 * told from beg on, and of nothing that follows. */
const struct opening *
nameless_told_in(const struct outline *o, uint32_t beg, uint32_t end)
{
	for (size_t i = outline_opening(o, beg); i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];

		if (x->token >= end)
			break;
		if ((x->kind == OPENING_DONE || x->kind == OPENING_TODAY) && !x->raw &&
		    (x->sort == NAME_DISH || (x->sort > NAME_FOOD && !x->lone)) &&
		    !x->bought && memory_measured(o, beg, x->token) >= RECIPE &&
		    memory_measured(
			o, x->end, x->end + AFTER < end ? x->end + AFTER : end) == 0)
			return x;
	}
	return NULL;
}

/* "... twenty-five minutes, that's our bread": the last words before the end. */
const struct opening *
nameless_called(const struct outline *o, uint32_t beg, uint32_t end)
{
	for (size_t i = outline_opening(o, end > beg + LAST ? end - LAST : beg);
	     i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];

		if (x->token >= end)
			break;
		if (x->kind == OPENING_DONE && x->sort >= NAME_MAYBE &&
		    (x->marked || !x->lone) &&
		    (x->sort == NAME_PART ? !x->lone : !x->bought) &&
		    memory_measured(o, beg, x->token) >= RECIPE)
			return x;
	}
	return NULL;
}

/* Does the name stand where the work begins? */
static bool
leads(const struct outline *o, const struct planned *p)
{
	return p->token != UINT32_MAX && p->sort >= NAME_MAYBE &&
	       p->token >= section_of(o, o->content);
}

/* Does another dish begin with the section? */
static bool
is_next(const struct outline *o, uint32_t beg)
{
	if (memory_measured(o, beg, section_end(o, beg)) < RECIPE)
		return false;
	for (size_t i = outline_opening(o, beg); i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];

		if (x->token > beg + NEXT || memory_measured(o, beg, x->token) > 0)
			break;
		if (x->sort == NAME_DISH && x->kind != OPENING_WITH)
			return true;
	}
	return false;
}

/* The end of what is told first. */
static uint32_t
told_end(const struct outline *o)
{
	uint32_t beg = section_of(o, o->content), end = section_end(o, beg);
	uint32_t last = (uint32_t)o->m->c.tokens.token.n;

	while (end < last && end < o->content + TOLD_MAX && !is_next(o, end) &&
	       !(memory_measured(o, o->content, end) >= RECIPE &&
		   section_closes(o, o->content, end)))
		end = section_end(o, end);
	return end;
}

const struct opening *
nameless_told(const struct outline *o, const struct planned *p)
{
	if (p && leads(o, p))
		return NULL;
	return nameless_told_in(o, o->content, told_end(o));
}

int
nameless_add(struct outline *o, const struct opening *x, uint32_t token)
{
	int dish = named_add(o, x);

	o->dish.v[dish].token = token;
	return dish;
}

/* How well a name that was only said in passing names the dish. */
static int
worth(const struct opening *x)
{
	static const int of_sort[] = {
	    [NAME_MAYBE] = 3, [NAME_DISH] = 6, [NAME_EITHER] = 2, [NAME_PART] = 1};

	if (x->sort < NAME_MAYBE || x->kind == OPENING_WITH)
		return 0;
	return of_sort[x->sort] * 2 +
	       (x->kind != OPENING_MENTION && x->kind != OPENING_ALSO);
}

/* How much a food makes the dish: meat and fish, then what fills. */
static int
fills(struct str group)
{
	static const char *const first[] = {"meat", "beef", "pork", "lamb", "veal",
	    "poultry", "game", "fish", "shellfish", "offal", "sausage", "ground-meat"};
	static const char *const second[] = {"vegetable", "root-vegetable",
	    "leaf-vegetable", "legume", "tofu", "egg", "pasta", "noodle", "rice", "grain",
	    "fruit", "berry"};

	for (size_t i = 0; i < sizeof first / sizeof *first; i++)
		if (str_is_z(group, first[i]))
			return 2;
	for (size_t i = 0; i < sizeof second / sizeof *second; i++)
		if (str_is_z(group, second[i]))
			return 1;
	return 0;
}

int
nameless_food(const struct outline *o, uint32_t beg, uint32_t end, struct str *name)
{
	const struct level *top = chart_top(&o->m->c);
	int best = 0;

	for (size_t i = 0; i < top->node.n; i++) {
		struct mention x[MENTIONS];
		size_t n;

		if (top->node.v[i].beg < beg)
			continue;
		if (top->node.v[i].beg > beg + MAIN_MAX || top->node.v[i].beg >= end)
			break;
		n = mentions_of(o->m, &top->node.v[i], x, MENTIONS);
		for (size_t k = 0; k < n; k++)
			if (x[k].amount.known && x[k].lexeme && fills(x[k].group) > best) {
				best = fills(x[k].group);
				*name = x[k].item;
			}
	}
	return best;
}

/* "Toad. Eight pork sausages ...", "besan goes first": the name that begins what
 * is told first, whatever it is made of. */
static const struct opening *
leading(const struct outline *o)
{
	const struct opening *best = NULL;
	uint32_t beg = section_of(o, o->content);

	for (size_t i = outline_opening(o, beg); beg > 0 && i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];
		bool turns = x->kind >= OPENING_TOPIC || x->kind == OPENING_BARE;

		if (x->token > o->content + FEW)
			break;
		if (!turns || x->pantry || x->sort == NAME_TOOL || x->sort == NAME_PART ||
		    x->kind == OPENING_HEADING)
			continue;
		if ((x->sort > NAME_FOOD || x->token <= beg + FEW) &&
		    (!best || x->sort > best->sort))
			best = x;
	}
	return best;
}

/* Said in passing, in what is told first or before it. */
static const struct opening *
in_passing(const struct outline *o, uint32_t end)
{
	const struct opening *best = NULL;

	for (size_t i = 0; i < o->openings.said.n; i++) {
		const struct opening *x = &o->openings.said.v[i];

		if (x->token >= end)
			break;
		if (worth(x) > (best ? worth(best) : 0))
			best = x;
	}
	return best;
}

/* No name was announced: one that leads, a dish that was said, the title, the
 * main food, any name. */
void
nameless_open(struct outline *o)
{
	bool works = o->content != UINT32_MAX;
	uint32_t at = works ? first_words(o) : 0;
	uint32_t end = works ? told_end(o) : UINT32_MAX;
	struct str name = o->m->s->title, food = STR("");
	const struct opening *x = works ? leading(o) : NULL;
	int fill = nameless_food(o, at, end, &food);

	if (!x) {
		x = in_passing(o, end);
		if (x && x->sort != NAME_DISH &&
		    (name.n || fill >= (x->sort == NAME_MAYBE && !x->bought ? 2 : 1)))
			x = NULL;
	}
	if (x) {
		outline_turn(o, 0, nameless_add(o, x, at), 0);
		return;
	}
	if (!name.n)
		name = food.n ? food : STR("recipe");
	outline_turn(
	    o, 0, named_add_titled(o, name, name.p == food.p ? food : STR(""), at), 0);
}
