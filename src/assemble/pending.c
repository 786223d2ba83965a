/* SPDX-License-Identifier: ISC */
/*
 * Foods that are brought in and wait for their verb: "two leeks, washed. You fry
 * them"; and what "it" and "them" mean.
 */
#include "assemble/stepper.h"

/* So many foods in a row are mixed with one another, not with what is there. */
#define BOWL 3

bool
pending_has(const struct stepper *k, struct str item)
{
	for (size_t i = 0; i < k->pendings; i++)
		if (str_is(k->pending[i].item, item))
			return true;
	return false;
}

/* Is the food, as a recipe prints it, in the plural: the longest end of its words
 * that the lexicon has is another form of its entry? */
static bool
is_plural(const struct maker *m, struct str item)
{
	while (item.n) {
		const struct entry *e =
		    lexicon_find(&m->g->lexicon, lexicon_key(m->a, item));
		const struct reading *r =
		    e ? entry_reading(e, grammar_class(m->g, "FOOD")) : NULL;

		if (r)
			return r->form == FORM_PLURAL;
		item = str_cut(item, str_find_char(item, ' ') + 1, item.n);
	}
	return false;
}

void
pending_push(struct stepper *k, const struct mention *x, const struct node *n)
{
	if (k->pendings == PENDING_MAX || pending_has(k, x->item))
		return;
	if (k->pendings == 0)
		k->pending_node = n;
	k->pending[k->pendings++] = (struct pending){.item = x->item,
	    .plural = is_plural(k->m, x->item),
	    .fat = str_is_z(x->group, "oil") || str_is_z(x->group, "fat")};
}

/* "the flour, sugar and salt", from the pending food `first` on */
static struct str
list_of(const struct stepper *k, size_t first)
{
	struct buf b = buf_in(k->m->a);

	for (size_t i = first; i < k->pendings; i++) {
		buf_put_z(&b, i == first ? "the " : i + 1 == k->pendings ? " and " : ", ");
		buf_put(&b, k->pending[i].item);
	}
	return buf_str(&b);
}

static bool
are_prepared(const struct stepper *k, size_t first)
{
	for (size_t i = first; i < k->pendings; i++)
		if (!k->pending[i].prepared)
			return false;
	return true;
}

/* Is there something in the part before what is pending? */
static bool
has_before(const struct stepper *k)
{
	return part_now(k)->steps > 0 || (k->open && k->text.n);
}

void
pending_flush(struct stepper *k)
{
	struct str list = list_of(k, 0);
	bool first = !has_before(k) && k->pendings > 1;

	if (!are_prepared(k, 0)) {
		step_add(k,
		    arena_fmt(
			k->m->a, "%s %.*s", first ? "Combine" : "Add", (int)list.n, list.p),
		    k->pending_node);
		if (!k->step.action.n)
			k->step.action = first ? STR("combine") : STR("add");
	}
	k->pendings = 0;
}

/* What is done to a food before it goes in with the rest: "peel it". */
static bool
prepares(const struct deed *d)
{
	static const char *const kinds[] = {"cut", "wash", "drain"};

	return str_is_any(d->kind, kinds, sizeof kinds / sizeof *kinds);
}

/* What is done to foods as they come in; the oven is not turned off to them. */
static bool
takes_in(const struct deed *d)
{
	static const char *const kinds[] = {
	    "move", "add", "season", "coat", "soak", "marinate", "garnish", "finish"};

	return !d->kind.n || lexeme_has(d->lexeme, "warms") ||
	       str_is_any(d->kind, kinds, sizeof kinds / sizeof *kinds) ||
	       str_ends(d->action, STR(" in")) || str_ends(d->action, STR(" through"));
}

/* What is done to all that is there: "let it simmer". */
static bool
takes_all(const struct deed *d)
{
	static const char *const kinds[] = {
	    "mix", "heat", "shape", "rest", "chill", "prove"};

	return str_is_any(d->kind, kinds, sizeof kinds / sizeof *kinds);
}

/* Does the clause say "them", "those"? */
static bool
says_them(const struct stepper *k, const struct clause *q)
{
	static const char *const words[] = {"them", "em", "'em", "those", "these", "they"};
	const struct level *top = chart_top(&k->m->c);

	for (size_t i = 0; i < sizeof words / sizeof *words; i++)
		if (says_token(k->m, top->node.v[q->beg].beg, top->node.v[q->end - 1].end,
			words[i]))
			return true;
	return false;
}

static bool
says_together(const struct stepper *k, const struct clause *q)
{
	const struct level *top = chart_top(&k->m->c);

	return says_token(
	    k->m, top->node.v[q->beg].beg, top->node.v[q->end - 1].end, "together");
}

/* "A bit of oil, and they go on for four minutes": what goes on is not the oil. */
static bool
is_fat_only(const struct stepper *k)
{
	for (size_t i = 0; i < k->pendings; i++)
		if (!k->pending[i].fat)
			return false;
	return true;
}

/* The first pending food that the clause's pronoun means; k->pendings where it
 * means what is in the pot, or nothing that is known. */
static size_t
meant_from(const struct stepper *k, const struct clause *q, const struct deed *d)
{
	size_t last = k->pendings - 1;
	bool them = says_them(k, q);

	if (k->pendings == 0 || !(d->pronoun || d->thing))
		return k->pendings;
	/* "mash that together" */
	if (prepares(d) && k->pendings > 1 && says_together(k, q))
		return 0;
	/* "drain those": the last that was named; of several, in its number */
	if (prepares(d) && (k->pendings == 1 || k->pending[last].plural == them))
		return last;
	/* "a cup of cream, let it simmer": the sauce, not the cream */
	if (takes_in(d) || (takes_all(d) && !is_fat_only(k) && (them || !has_before(k))))
		return 0;
	/* a bowl of its own: "oil, vinegar, a pinch of salt, and you shake that" */
	if (str_is_z(d->kind, "mix") && k->pendings >= BOWL)
		return 0;
	return k->pendings;
}

/* The only food of the part, apart from what seasons it: its place, or -1. */
static int
only_food(const struct part *p)
{
	static const char *const groups[] = {"salt", "pepper", "spice", "herb"};
	static const char *const fats[] = {"oil", "fat", "water"};
	int only = -1;

	for (size_t i = 0; i < p->ingredients; i++) {
		const struct ingredient *in = &p->ingredient[i];

		if (!in->used ||
		    str_is_any(in->group, groups, sizeof groups / sizeof *groups))
			continue;
		if (only >= 0 || str_is_any(in->group, fats, sizeof fats / sizeof *fats))
			return -1;
		only = (int)i;
	}
	return only;
}

/* "the tacos" of "air fryer shrimp tacos", where the dish is named in the plural */
static struct str
pieces_of(const struct stepper *k)
{
	struct str name = k->m->d->dish[k->dish].name;
	const struct entry *e;
	const struct reading *r;
	size_t cut = name.n;

	while (cut > 0 && name.p[cut - 1] != ' ')
		cut--;
	name = str_cut(name, cut, name.n);
	e = lexicon_find(&k->m->g->lexicon, lexicon_key(k->m->a, name));
	r = e ? entry_reading(e, grammar_class(k->m->g, "DISH")) : NULL;
	return r && r->form == FORM_PLURAL ? name : STR("");
}

/* What "it" and "them" name where a step begins with them. */
static void
name_antecedent(const struct stepper *k, const struct deed *d, struct writing *w)
{
	const struct part *p = part_now(k);
	struct str name = p->name;
	bool whole = name.n || k->m->d->dish[k->dish].parts == 1;
	int only = whole ? only_food(p) : -1;

	/* "cut it into squares": the cake, though the icing was spoken of last */
	if (only < 0 && (str_is_z(d->kind, "cut") || str_is_z(d->kind, "serve")))
		return;
	if (only >= 0)
		name = p->ingredient[only].item;
	else if (!name.n && takes_all(d) && !str_is_z(d->kind, "mix"))
		name = pieces_of(k);
	if (!name.n || !has_before(k) || str_is_z(d->kind, "set-heat") ||
	    str_is_z(d->kind, "preheat"))
		return;
	name = arena_fmt(k->m->a, "the %.*s", (int)name.n, name.p);
	if (is_plural(k->m, str_cut(name, 4, name.n)) ||
	    (only < 0 && str_ends(name, STR("s"))))
		w->them = name;
	else
		w->it = name;
}

void
pending_offer(
    struct stepper *k, const struct clause *q, const struct deed *d, struct writing *w)
{
	size_t from = meant_from(k, q, d), count = k->pendings;

	if (from < count) {
		if (from > 0 && !prepares(d)) {
			k->pendings = from;
			pending_flush(k);
		}
		w->together = from == 0 && count > 1;
		if (!are_prepared(k, from))
			w->pending = list_of(k, from);
		k->pendings = count;
	} else if (d->foods == 0 || k->pendings > 1) {
		pending_flush(k);
	}
	if (!k->open || k->full || k->sentences >= SENTENCES_MAX)
		name_antecedent(k, d, w);
}

void
pending_settle(struct stepper *k, const struct deed *d, const struct writing *w)
{
	bool more = k->pendings && k->pending[k->pendings - 1].prepared && d->pronoun;

	/* "drain those and rinse those" */
	if (prepares(d) && (w->used_pending || more) && !w->together) {
		k->pending[k->pendings - 1].prepared = true;
		return;
	}
	if (w->used_pending)
		k->pendings = 0;
	else
		pending_flush(k);
}
