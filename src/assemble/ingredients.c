/* SPDX-License-Identifier: ISC */
/*
 * Sums mentions of foods up to the ingredient lines of a part.
 */
#include "clause/maker.h"

static struct ingredient *
push(struct maker *m, struct part *p)
{
	size_t n = p->ingredients;

	if (n == 0 || (n >= 8 && (n & (n - 1)) == 0))
		p->ingredient = arena_grow(
		    m->a, p->ingredient, n, n ? n * 2 : 8, sizeof *p->ingredient);
	p->ingredients++;
	return &p->ingredient[n];
}

/* True where the words of `tail` end `whole` at a word's border. */
static bool
ends_with_words(struct str whole, struct str tail)
{
	return str_is(whole, tail) ||
	       (tail.n && whole.n > tail.n && str_ends(whole, tail) &&
		   whole.p[whole.n - tail.n - 1] == ' ');
}

static bool
is_bare(const struct mention *x)
{
	return !x->amount.known && !x->size.present;
}

static bool
has_word(struct str words, struct str word)
{
	while (words.p)
		if (str_is(str_next(&words, ' '), word))
			return true;
	return false;
}

/* What a plate is built on: told once with its amount, then by a shorter name. */
static bool
is_main(struct str group)
{
	static const char *const groups[] = {"poultry", "beef", "pork", "lamb", "veal",
	    "game", "fish", "shellfish", "rice", "pasta", "noodle", "ground-meat"};

	for (size_t i = 0; i < sizeof groups / sizeof *groups; i++)
		if (str_is_z(group, groups[i]))
			return true;
	return false;
}

/* "the chicken" for chicken thighs, "the rice" for basmati */
static bool
names_shortly(struct str group, struct str item, struct str shorter)
{
	return is_main(group) && shorter.n &&
	       (has_word(item, shorter) || str_is(group, shorter));
}

static int
find(const struct part *p, const struct mention *x)
{
	for (size_t i = 0; i < p->ingredients; i++)
		if (str_is(p->ingredient[i].key, x->key))
			return (int)i;
	for (size_t i = 0; (is_bare(x) || x->definite) && i < p->ingredients; i++)
		if (ends_with_words(p->ingredient[i].key, x->key) ||
		    ends_with_words(p->ingredient[i].item, x->item) ||
		    ends_with_words(x->key, p->ingredient[i].key) ||
		    names_shortly(p->ingredient[i].group, p->ingredient[i].item, x->head))
			return (int)i;
	return -1;
}

/* "so the chicken: four chicken thighs": the same, named in full with its amount. */
static int
find_shorter(const struct part *p, const struct mention *x)
{
	for (size_t i = 0; x->amount.known && i < p->ingredients; i++) {
		const struct ingredient *g = &p->ingredient[i];

		if (!g->amount.known && !g->size.present && str_is(g->group, x->group) &&
		    names_shortly(x->group, x->item, g->key))
			return (int)i;
	}
	return -1;
}

static bool
has_class(const struct maker *m, struct str word, const char *class_name)
{
	const struct entry *e = lexicon_find(&m->g->lexicon, lexicon_key(m->a, word));

	return e && entry_reading(e, grammar_class(m->g, class_name)) != NULL;
}

/* "the dough", "the sauce"; "the cream" may well be bought. */
static bool
is_part_word(const struct maker *m, struct str word)
{
	const struct entry *e = lexicon_find(&m->g->lexicon, lexicon_key(m->a, word));
	const struct reading *r =
	    e ? entry_reading(e, grammar_class(m->g, "PARTHEAD")) : NULL;

	return r && !lexeme_has(r->lexeme, "weak");
}

static int64_t
said_ms(const struct maker *m, const struct mention *x)
{
	return place_of_node(m, x->node).cue_ms;
}

/* "eight parathas" of a paratha dish, "a piece of dough": a count of what is made. */
static bool
is_portion(const struct maker *m, const struct dish *d, const struct mention *x)
{
	const struct unit *u = x->amount.unit;

	if (!x->amount.known || (u && u->dimension != DIM_COUNT))
		return false;
	for (size_t i = 1; i < d->parts; i++)
		if (ends_with_words(d->part[i].name, x->key))
			return true;
	if (u && (str_is_z(u->name, "piece") || str_is_z(u->name, "ball")))
		return is_part_word(m, x->key);
	return !u && has_class(m, x->key, "DISH") && ends_with_words(d->name, x->key);
}

/* "the dough", "the sauce", "the cake": made here, not bought. */
static bool
is_product(const struct maker *m, const struct dish *d, const struct mention *x)
{
	if (is_portion(m, d, x))
		return true;
	if (!is_bare(x))
		return false;
	if (x->definite && (is_part_word(m, x->key) || has_class(m, x->key, "DISH")))
		return true;
	for (size_t i = 1; i < d->parts; i++)
		if (ends_with_words(d->part[i].name, x->key))
			return true;
	/* "a heap of potatoes", beside the crushed potatoes of the same dinner */
	for (size_t i = 0; i < m->d->dishes; i++)
		if (&m->d->dish[i] != d && m->d->dish[i].beg_ms < said_ms(m, x) &&
		    ends_with_words(m->d->dish[i].name, x->item))
			return true;
	return ends_with_words(d->name, x->key) &&
	       (x->definite || has_class(m, x->key, "DISH"));
}

/* In another part of the dish, which has it listed: it is used here. */
static bool
is_elsewhere(struct dish *d, int part, const struct mention *x)
{
	for (size_t i = 0; i < d->parts; i++) {
		int at = (int)i != part ? find(&d->part[i], x) : -1;

		if (at < 0)
			continue;
		if (!x->aside)
			d->part[i].ingredient[at].used = true;
		return true;
	}
	return false;
}

static bool
same_amount(const struct amount *a, const struct amount *b)
{
	return a->unit == b->unit && a->known == b->known &&
	       (!a->known ||
		   (ratio_order(a->min, b->min) == 0 && ratio_order(a->max, b->max) == 0));
}

/* b added to a, in a's unit; false where the two have no common measure. */
static bool
sum(struct amount *a, const struct amount *b)
{
	struct ratio min = b->min, max = b->max;

	if (!b->known)
		return true;
	if (a->unit != b->unit) {
		if (!a->unit || !b->unit || !a->unit->has_base || !b->unit->has_base ||
		    a->unit->dimension != b->unit->dimension)
			return false;
		min = unit_from_base(a->unit, unit_to_base(b->unit, min));
		max = unit_from_base(a->unit, unit_to_base(b->unit, max));
	}
	a->min = ratio_add(a->min, min);
	a->max = ratio_add(a->max, max);
	return true;
}

static void
note_use(struct maker *m, struct ingredient *g, const struct mention *x)
{
	size_t n = g->uses;

	if (n == 0 || (n & (n - 1)) == 0) {
		g->use = arena_grow(m->a, g->use, n, n ? n * 2 : 1, sizeof *g->use);
		g->said = arena_grow(m->a, g->said, n, n ? n * 2 : 1, sizeof *g->said);
	}
	g->use[n] = place_of_node(m, x->node);
	g->said[n] = x->amount;
	g->uses++;
}

static void
take_words(struct maker *m, struct ingredient *g, const struct mention *x)
{
	if (!g->preparation.n)
		g->preparation = x->preparation;
	if (!g->note.n)
		g->note = x->note;
	if (!g->size.present)
		g->size = x->size;
	if (x->has_alternative && !g->alternatives) {
		g->alternative = arena_new(m->a, struct alternative);
		*g->alternative = x->alternative;
		g->alternatives = 1;
	}
}

/* A food named again: an addition, the same amount, a part of it, or at odds. */
static void
merge(struct maker *m, struct ingredient *g, const struct mention *x)
{
	note_use(m, g, x);
	take_words(m, g, x);
	if (!x->amount.present || x->share)
		return;
	if (!g->amount.known) {
		if (x->amount.known || !g->amount.present)
			g->amount = x->amount;
		return;
	}
	if (!x->amount.known || g->listed || x->definite || x->aside ||
	    (same_amount(&g->amount, &x->amount) && !x->more))
		return;
	if (sum(&g->amount, &x->amount))
		g->divided = true;
}

static int
add_new(struct maker *m, struct part *p, const struct mention *x)
{
	struct ingredient *g = push(m, p);

	*g = (struct ingredient){.item = x->item,
	    .key = x->key,
	    .group = x->group,
	    .amount = x->amount,
	    .optional = x->optional,
	    .place = place_of_node(m, x->node)};
	take_words(m, g, x);
	note_use(m, g, x);
	return (int)p->ingredients - 1;
}

int
ingredient_add(
    struct maker *m, int dish, int part, const struct mention *x, bool introduces)
{
	struct dish *d = &m->d->dish[dish];
	struct part *p = &d->part[part];
	int at = x->item.n ? find(p, x) : -1;

	bool listed = at >= 0 && str_is(p->ingredient[at].key, x->key);

	if (!x->item.n || (!listed && is_product(m, d, x)))
		return -1;
	if (at >= 0) {
		merge(m, &p->ingredient[at], x);
		return at;
	}
	if (is_bare(x) && (x->definite || is_main(x->group)) && is_elsewhere(d, part, x))
		return -1;
	at = find_shorter(p, x);
	if (at >= 0) {
		p->ingredient[at].item = x->item;
		p->ingredient[at].key = x->key;
		merge(m, &p->ingredient[at], x);
		return at;
	}
	if (!introduces || x->share)
		return -1;
	return add_new(m, p, x);
}

static void
finish(struct maker *m, struct ingredient *g)
{
	g->metric = metric_of(m, g);
	g->used = g->used || !g->listed;
}

void
ingredients_finish(struct maker *m)
{
	for (size_t i = 0; i < m->d->dishes; i++)
		for (size_t k = 0; k < m->d->dish[i].parts; k++)
			for (size_t j = 0; j < m->d->dish[i].part[k].ingredients; j++)
				finish(m, &m->d->dish[i].part[k].ingredient[j]);
}
