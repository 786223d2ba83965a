/* SPDX-License-Identifier: ISC */
/*
 * What the lexicon tells of the foods and tools of the draft, and which of its
 * measures are no instruction.
 */
#include "remark/remarks.h"

static const struct lexeme *
lexeme_of(const struct maker *m, struct str words, const char *class_name)
{
	const struct entry *e = lexicon_find(&m->g->lexicon, lexicon_key(m->a, words));
	const struct reading *r =
	    e ? entry_reading(e, grammar_class(m->g, class_name)) : NULL;

	return r ? r->lexeme : NULL;
}

static void
fill_ingredient(const struct maker *m, struct ingredient *in)
{
	const struct lexeme *l = lexeme_of(m, in->key, "FOOD");

	if (!l)
		return;
	in->kind = lexeme_get(l, "kind");
	in->free = lexeme_has(l, "free");
	in->liquid = lexeme_has(l, "liquid");
}

static void
fill_equipment(const struct maker *m, struct equipment *e)
{
	const struct lexeme *l = lexeme_of(m, e->item, "EQUIP");

	if (l)
		e->kind = lexeme_get(l, "kind");
}

static void
fill_dish(const struct maker *m, struct dish *d)
{
	for (size_t i = 0; i < d->equipments; i++)
		fill_equipment(m, &d->equipment[i]);
	for (size_t p = 0; p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].ingredients; i++)
			fill_ingredient(m, &d->part[p].ingredient[i]);
}

/* Of another cook, of what not to do, of what happened once. */
static bool
is_aside(const struct maker *m, const struct measure *x)
{
	uint32_t at = token_from(m, x->place.span.beg);
	const struct clause *q = clause_of(m, at);

	return q && (q->other || q->kind == CLAUSE_NOT);
}

void
details_fill(struct maker *m)
{
	for (size_t i = 0; i < m->d->dishes; i++)
		fill_dish(m, &m->d->dish[i]);
	for (size_t i = 0; i < m->d->measures; i++)
		m->d->measure[i].aside = is_aside(m, &m->d->measure[i]);
	told_fill(m);
}
