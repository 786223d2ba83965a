/* SPDX-License-Identifier: ISC */
/*
 * What the lexicon tells of the foods and tools of the draft, and which of its
 * measures are no instruction.
 */
#include "remark/namings.h"

static const struct lexeme *
lexeme_of(const struct maker *m, struct str words, const char *class_name)
{
	const struct entry *e = lexicon_find(&m->g->lexicon, lexicon_key(m->a, words));
	const struct reading *r =
	    e ? entry_reading(e, grammar_class(m->g, class_name)) : NULL;

	return r ? r->lexeme : NULL;
}

/* "spices", "vegetables": a word for whatever was named before. */
static bool
is_generic(const struct maker *m, struct str key)
{
	return lexeme_of(m, key, "GENERICFOOD") || lexeme_of(m, key, "SUMWORD");
}

static bool
is_finishing(const struct lexeme *action)
{
	static const char *const verbs[] = {"dust", "sprinkle", "scatter", "decorate"};
	struct str kind = lexeme_get(action, "kind");

	for (size_t i = 0; i < sizeof verbs / sizeof *verbs; i++)
		if (str_is_z(action->lemma, verbs[i]))
			return true;
	return str_is_z(kind, "garnish") || str_is_z(kind, "finish");
}

/* "serve it over rice", "dust with cocoa": of food without an amount, what it
 * is for. */
static struct str
note_of(const struct maker *m, const struct ingredient *in)
{
	const struct clause *q = clause_of(m, token_from(m, in->place.span.beg));

	if (in->note.n || in->amount.present || in->uses != 1 || !q || !q->action)
		return in->note;
	if (str_is_z(lexeme_get(q->action, "kind"), "serve"))
		return STR("to serve");
	return is_finishing(q->action) ? STR("to finish") : in->note;
}

static void
fill_ingredient(const struct maker *m, struct ingredient *in)
{
	const struct lexeme *l = lexeme_of(m, in->key, "FOOD");

	if (!l)
		return;
	in->kind = lexeme_get(l, "kind");
	in->note = note_of(m, in);
	in->free = lexeme_has(l, "free") || is_generic(m, in->key);
	in->liquid = lexeme_has(l, "liquid");
}

enum { SIZE_REACH = 30 };

/* "a tin that's twenty by thirty centimetres" */
static struct amount
size_after(const struct maker *m, struct place tool)
{
	for (size_t i = measure_from(m, tool.span.end); i < m->d->measures; i++) {
		const struct measure *x = &m->d->measure[i];

		if (x->place.span.beg - tool.span.end > SIZE_REACH)
			break;
		if (x->kind == MEASURE_LENGTH)
			return x->value;
	}
	return (struct amount){0};
}

static void
fill_equipment(const struct maker *m, struct equipment *e)
{
	const struct lexeme *l = lexeme_of(m, e->item, "EQUIP");

	/* "a tin of tomatoes" is a package; a tray takes any size */
	if (l && lexeme_has(l, "sized") &&
	    !token_has(m, token_from(m, e->place.span.end), "OF"))
		e->kind = lexeme_get(l, "kind");
	if (!e->size.present)
		e->size = size_after(m, e->place);
}

/* "into cold water for five, and peel them": minutes. */
static bool
is_waiting_for(const struct maker *m, const struct said_yield *y)
{
	enum { REACH = 6 };
	uint32_t at = token_from(m, y->place.span.beg);
	uint32_t end = token_from(m, y->place.span.end);
	struct span s = sentence_of(m, at);

	while (at < end && !token_has(m, at, "FOR"))
		at++;
	if (end != at + 2)
		return false;
	for (uint32_t i = at > s.beg + REACH ? at - REACH : s.beg; i < at; i++)
		if (token_has(m, i, "PLACEPREP") || token_has(m, i, "TIMECUE"))
			return true;
	return false;
}

/* "It'd serve six if my brother wasn't one of them", "my dog thinks it serves
 * five": said, but not meant. */
static bool
is_meant(const struct maker *m, const struct said_yield *y)
{
	uint32_t at = token_from(m, y->place.span.beg);
	const struct clause *q = clause_of(m, at);
	struct span s = sentence_of(m, at);

	if (q && q->other)
		return false;
	for (uint32_t i = s.beg; i < s.end; i++)
		if (token_is(m, i, "if") || (i < at && token_has(m, i, "THINKS")))
			return false;
	return true;
}

/* The yield of the dish is one that stays, if it was said at all. */
static void
settle_yield(struct dish *d)
{
	for (size_t i = 0; i < d->yields_said; i++)
		if (d->yield_said[i].place.span.beg == d->yield_place.span.beg)
			return;
	d->yield = (struct amount){0};
	d->yield_unit = STR("");
	if (!d->yields_said)
		return;
	d->yield = d->yield_said[0].value;
	d->yield_unit = d->yield_said[0].unit;
	d->yield_place = d->yield_said[0].place;
}

/* What is no yield at all goes; what was said in jest stays the dish's yield but
 * contradicts nothing. */
static void
drop_yields(const struct maker *m, struct dish *d)
{
	size_t kept = 0, real = 0;

	for (size_t i = 0; i < d->yields_said; i++)
		if (!is_waiting_for(m, &d->yield_said[i]))
			d->yield_said[real++] = d->yield_said[i];
	if (real < d->yields_said) {
		d->yields_said = real;
		settle_yield(d);
	}
	for (size_t i = 0; i < real; i++)
		if (is_meant(m, &d->yield_said[i]))
			d->yield_said[kept++] = d->yield_said[i];
	d->yields_said = kept;
}

static void
fill_dish(const struct maker *m, struct dish *d)
{
	drop_yields(m, d);
	for (size_t i = 0; i < d->equipments; i++)
		fill_equipment(m, &d->equipment[i]);
	for (size_t p = 0; p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].ingredients; i++)
			fill_ingredient(m, &d->part[p].ingredient[i]);
}

/* Of another cook, of what not to do, of what may be. */
static bool
is_aside(const struct maker *m, const struct measure *x)
{
	uint32_t at = token_from(m, x->place.span.beg);
	const struct clause *q = clause_of(m, at);

	return (q && (q->other || q->kind == CLAUSE_NOT)) ||
	       (x->kind == MEASURE_TEMPERATURE && is_conditional(m, at));
}

enum { THERMOMETER_REACH = 14 };

/* "check it with a thermometer. You want one forty five": no setting. */
static bool
is_reading(const struct maker *m, const struct measure *x)
{
	uint32_t at = token_from(m, x->place.span.beg);
	uint32_t from = at > THERMOMETER_REACH ? at - THERMOMETER_REACH : 0;
	int64_t high = x->value.unit && x->value.unit->metric ? 100 : 212;

	if (x->kind != MEASURE_TEMPERATURE || x->role != ROLE_APPLIANCE ||
	    !x->value.known || ratio_order(x->value.max, ratio_int(high)) > 0)
		return false;
	for (uint32_t i = from; i < at; i++)
		if (token_is(m, i, "thermometer") || token_is(m, i, "probe"))
			return true;
	return false;
}

void
details_fill(struct maker *m)
{
	struct namings n = {.v = {NULL, 0, 0}};

	for (size_t i = 0; i < m->d->dishes; i++)
		fill_dish(m, &m->d->dish[i]);
	for (size_t i = 0; i < m->d->measures; i++) {
		struct measure *x = &m->d->measure[i];

		x->aside = is_aside(m, x);
		if (is_reading(m, x))
			x->role = ROLE_INTERNAL;
	}
	namings_find(m, &n);
	listed_fill(m, &n);
	asked_fill(m, &n);
	told_fill(m);
}
