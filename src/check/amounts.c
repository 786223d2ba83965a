/* SPDX-License-Identifier: ISC */
/*
 * What an ingredient lacks: an amount, a close enough amount, the size of its
 * package; and lists that do not fit the method.
 */
#include "check/facts.h"
#include "check/food.h"
#include "check/say.h"

/* Groups whose amount decides the result. */
#define EXACT                                                                              \
	"flour starch sugar leavening yeast setting-agent dairy cream cheese stock syrup " \
	"rice pasta grain legume ground-meat poultry beef pork lamb fish shellfish sauce " \
	"paste spice chocolate"

enum { LIST_MIN = 2, AND_BYTES = 5 };

/* "Chill for 4 hours. Dust with cocoa.": the sentence that names it only puts
 * it on top. */
static bool
is_dusted(const struct step *s, struct str item)
{
	static const char *const verbs[] = {
	    "Dust", "Sprinkle", "Scatter", "Garnish", "Serve", "Top", "Finish", "Decorate"};
	size_t at = str_find(s->text, item), beg = at;

	if (at == s->text.n)
		return false;
	while (
	    beg > 0 && !(s->text.p[beg - 1] == ' ' && beg > 1 && s->text.p[beg - 2] == '.'))
		beg--;
	for (size_t i = 0; i < sizeof verbs / sizeof *verbs; i++)
		if (str_starts(str_cut(s->text, beg, at), str_of(verbs[i])))
			return true;
	return false;
}

/* Only ever put on top or beside the finished dish. */
static bool
only_served(const struct cursor *c)
{
	bool any = false;

	for (size_t i = 0; i < c->part->steps; i++) {
		const struct step *s = &c->part->step[i];

		if (!step_uses(s, (size_t)c->nth))
			continue;
		any = true;
		if (!word_in(s->kind, "serve garnish finish") &&
		    !is_dusted(s, c->ingredient->item))
			return false;
	}
	return any;
}

/* Another line of the dish, or a list, has an amount of the same food. */
static bool
has_amount_elsewhere(const struct draft *d, const struct cursor *c)
{
	struct cursor other = walk(d);

	while (walk_ingredient(&other)) {
		const struct ingredient *o = other.ingredient;

		if (o != c->ingredient && (o->listed || other.at.dish == c->at.dish) &&
		    o->amount.known && food_matches(o, c->ingredient))
			return true;
	}
	return false;
}

/* "a cup of peas and carrots": it has a share of the amount before it. */
static bool
shares_amount(const struct cursor *c)
{
	const struct ingredient *in = c->ingredient;

	for (size_t i = 0; i < c->part->ingredients; i++) {
		const struct ingredient *o = &c->part->ingredient[i];

		if (o != in && o->amount.known && o->amount.unit && !in->amount.present &&
		    o->place.span.end + AND_BYTES == in->place.span.beg)
			return true;
	}
	return false;
}

/* A list of names: the amounts come later, if they do. */
static bool
is_in_bare_list(const struct cursor *c)
{
	size_t listed = 0, bare = 0;

	for (size_t i = 0; c->ingredient->listed && i < c->part->ingredients; i++) {
		const struct ingredient *o = &c->part->ingredient[i];

		listed += o->listed;
		bare += o->listed && o->said && !o->said[0].present;
	}
	return bare * 2 > listed;
}

static bool
needs_no_amount(const struct check *k, const struct cursor *c)
{
	const struct ingredient *in = c->ingredient;

	return in->optional || in->unasked || in->note.n || in->size.present ||
	       food_is_free(in) || only_served(c) || has_amount_elsewhere(k->draft, c) ||
	       shares_amount(c) || food_is_product(k->draft, in) || is_in_bare_list(c);
}

void
check_missing_amount(struct check *k)
{
	struct cursor c = walk(k->draft);

	while (walk_ingredient(&c)) {
		struct str item = c.ingredient->item;

		if (c.ingredient->amount.present || c.ingredient->group.n == 0 ||
		    needs_no_amount(k, &c))
			continue;
		finding_raise(k, c.ingredient->place, c.at,
		    "no amount of %.*s is said, and the dish depends on it. Say one, even "
		    "a rough "
		    "one",
		    SAY(item));
	}
}

void
check_vague_amount(struct check *k)
{
	struct cursor c = walk(k->draft);

	while (walk_ingredient(&c)) {
		const struct amount *a = &c.ingredient->amount;
		struct str item = c.ingredient->item;

		if (!a->present || a->known || a->unit || !food_is(c.ingredient, EXACT) ||
		    needs_no_amount(k, &c))
			continue;
		finding_raise(k, c.ingredient->place, c.at,
		    "how much %.*s is left open, and the result depends on it. Give a "
		    "spoon, a cup "
		    "or a weight",
		    SAY(item));
	}
}

/* ---- missing-size ------------------------------------------------------- */

static bool
is_one_size(const struct check *k, const char *kind, struct str thing)
{
	const struct table *t = grammar_table(k->grammar, "one_size");

	for (size_t i = 0; t && i < t->rows; i++)
		if (str_is_z(table_cell(t, i, table_column(t, "kind")), kind) &&
		    words_end(thing, table_cell(t, i, table_column(t, "thing"))))
			return true;
	return false;
}

static bool
is_baked(const struct dish *d)
{
	for (size_t p = 0; p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].steps; i++)
			if (d->part[p].step[i].heats &&
			    step_is_in(&d->part[p].step[i], "oven"))
				return true;
	return false;
}

static bool
has_size(const struct dish *d, struct str item)
{
	for (size_t i = 0; i < d->equipments; i++)
		if (d->equipment[i].size.present && words_are(d->equipment[i].item, item))
			return true;
	return false;
}

/* "the tin", where the muffin tin was named by all its name. */
static bool
is_short_for_another(const struct dish *d, const struct equipment *e)
{
	for (size_t i = 0; i < d->equipments; i++)
		if (d->equipment[i].item.n > e->item.n &&
		    words_end(d->equipment[i].item, e->item))
			return true;
	return false;
}

static void
check_tins(struct check *k, const struct dish *d, int dish)
{
	for (size_t i = 0; i < d->equipments; i++) {
		const struct equipment *e = &d->equipment[i];

		if (!word_in(e->kind, "tin dish") || has_size(d, e->item) ||
		    is_one_size(k, "tin", e->item) || is_short_for_another(d, e))
			continue;
		finding_raise(k, e->place, (struct spot){dish, -1, -1},
		    "the size of the %.*s is never said. How deep the food lies in it "
		    "decides how "
		    "long it bakes",
		    SAY(e->item));
	}
}

void
check_missing_size(struct check *k)
{
	struct cursor c = walk(k->draft);

	while (walk_ingredient(&c)) {
		const struct ingredient *in = c.ingredient;
		const struct unit *u = in->amount.unit;

		if (!in->amount.present || !u ||
		    !word_in(u->name, "can packet jar sachet") || in->size.present ||
		    food_is(in, "beverage wine beer spirit") ||
		    is_one_size(k, "packet", in->key) || is_one_size(k, "packet", in->item))
			continue;
		finding_raise(k, in->place, c.at,
		    "the size of the %.*s of %.*s is never said; shops sell more than one",
		    SAY(u->name), SAY(in->item));
	}
	for (size_t i = 0; i < k->draft->dishes; i++)
		if (is_baked(&k->draft->dish[i]))
			check_tins(k, &k->draft->dish[i], (int)i);
}

/* ---- lists and what is used --------------------------------------------- */

static bool
dish_has_list(const struct dish *d)
{
	size_t n = 0;

	for (size_t p = 0; p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].ingredients; i++)
			n += d->part[p].ingredient[i].listed;
	return n >= LIST_MIN;
}

/* Named before the list began, as what it came with. */
static bool
is_before_list(const struct dish *d, const struct ingredient *in)
{
	for (size_t p = 0; p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].ingredients; i++)
			if (d->part[p].ingredient[i].listed &&
			    is_before(d->part[p].ingredient[i].place, in->place))
				return false;
	return true;
}

static bool
is_listed(const struct draft *d, const struct ingredient *in)
{
	struct cursor c = walk(d);

	while (walk_ingredient(&c)) {
		const struct ingredient *o = c.ingredient;

		if (o->listed && food_matches(o, in))
			return true;
		for (size_t i = 0; o->listed && i < o->alternatives; i++)
			if (words_end(o->alternative[i].item, food_head(in->key)))
				return true;
	}
	return false;
}

void
check_unlisted_ingredient(struct check *k)
{
	struct cursor c = walk(k->draft);

	while (walk_ingredient(&c)) {
		const struct ingredient *in = c.ingredient;

		if (in->listed || in->optional || in->free || in->unasked ||
		    in->group.n == 0 || food_is(in, "salt pepper water oil") ||
		    !dish_has_list(c.dish) || is_listed(k->draft, in) ||
		    food_is_product(k->draft, in) || is_before_list(c.dish, in))
			continue;
		finding_raise(k, in->place, c.at,
		    "%.*s goes in and is not on the list of ingredients. Who shops by the "
		    "list "
		    "comes home without it",
		    SAY(in->item));
	}
}

/* Most of what the part has listed goes in by name; else it may go in as one:
 * "and all that goes into the bowl". */
static bool
is_told_singly(const struct part *p)
{
	size_t listed = 0, used = 0;

	for (size_t i = 0; i < p->ingredients; i++) {
		listed += p->ingredient[i].listed;
		used += p->ingredient[i].listed && p->ingredient[i].used;
	}
	return listed < LIST_MIN || used * 2 >= listed;
}

/* Another line that is more than a list entry names the same food. */
static bool
is_used_elsewhere(const struct draft *d, const struct ingredient *in, int dish)
{
	struct cursor c = walk(d);

	while (walk_ingredient(&c)) {
		const struct ingredient *o = c.ingredient;

		if (o != in && (!o->listed || o->used || o->uses > 1) &&
		    (c.at.dish == dish
			    ? food_matches(o, in)
			    : words_end(o->key, in->key) || words_end(in->key, o->key)))
			return true;
	}
	return false;
}

void
check_unused_ingredient(struct check *k)
{
	struct cursor c = walk(k->draft);

	while (walk_ingredient(&c)) {
		const struct ingredient *in = c.ingredient;

		if (!in->listed || in->used || in->uses > 1 || in->optional ||
		    !is_told_singly(c.part) || is_used_elsewhere(k->draft, in, c.at.dish))
			continue;
		finding_raise(k, in->place, c.at,
		    "%.*s is on the list and goes into nothing. Was a step cut, or is the "
		    "list out "
		    "of date?",
		    SAY(in->item));
	}
}
