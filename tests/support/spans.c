/* SPDX-License-Identifier: ISC */
/*
 * Walks a draft: each span inside the source, each range the right way round,
 * each index inside what it points into.
 */
#include "spans.h"

static bool
is_inside(const struct draft *d, const struct place *p)
{
	return p->span.beg <= p->span.end && p->span.end <= d->script->source.n;
}

static bool
is_range(const struct amount *v)
{
	return !v->known ||
	       (v->min.den > 0 && v->max.den > 0 && ratio_order(v->min, v->max) <= 0);
}

static const char *
script_wrong(const struct script *s)
{
	uint32_t text = 0;

	for (size_t i = 0; i < s->pieces; i++) {
		const struct piece *p = &s->piece[i];

		if (p->text != text)
			return "a gap in the pieces of the text";
		if (p->source + p->source_n > s->source.n)
			return "a piece outside the source";
		text += p->text_n;
	}
	if (text != s->text.n)
		return "text without a piece";
	for (size_t i = 0; i < s->cues; i++)
		if (s->cue[i].text.beg > s->cue[i].text.end ||
		    s->cue[i].text.end > s->text.n)
			return "a cue outside the text";
	for (size_t i = 0; i < s->diagnostics; i++)
		if (s->diagnostic[i].span.end > s->source.n)
			return "a diagnostic outside the source";
	return NULL;
}

static const char *
measures_wrong(const struct draft *d)
{
	uint32_t before = 0;

	for (size_t i = 0; i < d->measures; i++) {
		const struct measure *m = &d->measure[i];

		if (!is_inside(d, &m->place) || m->place.span.beg == m->place.span.end)
			return "a measure outside the source";
		if (!is_range(&m->value))
			return "a measure whose range is reversed";
		if (m->place.span.beg < before)
			return "measures out of script order";
		before = m->place.span.beg;
	}
	return NULL;
}

static const char *
ingredient_wrong(const struct draft *d, const struct ingredient *food)
{
	if (food->item.n == 0)
		return "an ingredient without a name";
	if (!is_inside(d, &food->place))
		return "an ingredient outside the source";
	if (!is_range(&food->amount) || !is_range(&food->metric) || !is_range(&food->size))
		return "an amount whose range is reversed";
	for (size_t i = 0; i < food->uses; i++)
		if (!is_inside(d, &food->use[i]))
			return "a use outside the source";
	return NULL;
}

static const char *
step_wrong(const struct draft *d, const struct part *part, const struct step *s)
{
	if (s->text.n == 0)
		return "a step without words";
	if (!is_inside(d, &s->place) || !is_inside(d, &s->temperature.place) ||
	    !is_inside(d, &s->doneness.place))
		return "a step outside the source";
	if (s->duration.known && s->duration.min_ms > s->duration.max_ms)
		return "a duration whose range is reversed";
	for (size_t i = 0; i < s->uses; i++)
		if (s->use[i] >= part->ingredients)
			return "a step that uses what its part has not";
	return NULL;
}

static const char *
part_wrong(const struct draft *d, const struct part *part)
{
	const char *wrong = NULL;

	for (size_t i = 0; !wrong && i < part->ingredients; i++)
		wrong = ingredient_wrong(d, &part->ingredient[i]);
	for (size_t i = 0; !wrong && i < part->steps; i++)
		wrong = step_wrong(d, part, &part->step[i]);
	return wrong;
}

static const char *
dish_wrong(const struct draft *d, const struct dish *dish)
{
	const char *wrong = NULL;

	if (dish->name.n == 0 || dish->parts == 0)
		return "a dish without a name or a part";
	if (!is_inside(d, &dish->place))
		return "a dish outside the source";
	for (size_t i = 0; i < dish->equipments; i++)
		if (!is_inside(d, &dish->equipment[i].place))
			return "equipment outside the source";
	for (size_t i = 0; !wrong && i < dish->parts; i++)
		wrong = part_wrong(d, &dish->part[i]);
	return wrong;
}

static const char *
finding_wrong(const struct draft *d, const struct finding *f)
{
	if (!is_inside(d, &f->place) || f->message.n == 0)
		return "a finding outside the source, or without words";
	if (f->dish >= (int)d->dishes)
		return "a finding about no dish";
	for (size_t i = 0; i < f->relateds; i++)
		if (!is_inside(d, &f->related[i].place))
			return "something related outside the source";
	return NULL;
}

const char *
spans_wrong(const struct draft *d)
{
	const char *wrong = script_wrong(d->script);

	if (!wrong)
		wrong = measures_wrong(d);
	for (size_t i = 0; !wrong && i < d->dishes; i++)
		wrong = dish_wrong(d, &d->dish[i]);
	for (size_t i = 0; !wrong && i < d->findings; i++)
		wrong = finding_wrong(d, &d->finding[i]);
	return wrong;
}
