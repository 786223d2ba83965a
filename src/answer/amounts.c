/* SPDX-License-Identifier: ISC */
/*
 * Puts amounts, sizes, yields and notes into the lines of the recipe that the
 * finding is about.
 */
#include "answer/target.h"
#include "base/part.h"

/* ---- amounts ----------------------------------------------------------------------- */

static void
set_amount(const struct target *t, struct part *p, struct ingredient *in)
{
	struct amount to = t->v.amount;

	for (size_t i = 0; i < p->steps; i++) {
		struct edit e = edit_of(t, &p->step[i]);

		for (size_t u = 0; u < in->uses; u++)
			if (in->said[u].known && target_is_about(t, in->use[u]))
				edit_revalue(e, MEASURE_AMOUNT, &in->said[u], &to, in->key);
		edit_revalue(e, MEASURE_AMOUNT, &in->amount, &to, in->key);
	}
	for (size_t u = 0; u < in->uses; u++)
		if (target_is_about(t, in->use[u]))
			in->said[u] = to;
	in->amount = to;
	in->divided = false;
	in->metric = metric_of(t->w->m, in);
}

static bool
is_used_here(const struct target *t, const struct ingredient *in)
{
	for (size_t u = 0; u < in->uses; u++)
		if (target_is_about(t, in->use[u]))
			return true;
	return target_is_about(t, in->place);
}

/* An amount, or words that stand for one: "to taste". */
bool
apply_amount(struct target *t)
{
	bool any = false;

	for (size_t d = 0; d < t->w->d->dishes; d++)
		for (size_t p = 0; p < t->w->d->dish[d].parts; p++) {
			struct part *part = &t->w->d->dish[d].part[p];

			for (size_t i = 0; i < part->ingredients; i++) {
				if (!is_used_here(t, &part->ingredient[i]))
					continue;
				any = true;
				if (value_is_amount(&t->v))
					set_amount(t, part, &part->ingredient[i]);
				else
					part->ingredient[i].note = t->v.words;
			}
		}
	return any || target_missing(t, "ingredient");
}

/* ---- sizes and yields ------------------------------------------------------------------
 */

bool
apply_size(struct target *t)
{
	struct dish *d = target_dish(t);

	if (!t->v.measured || !t->v.amount.known || !t->v.amount.unit ||
	    (t->v.kind != MEASURE_AMOUNT && t->v.kind != MEASURE_LENGTH))
		return target_misfit(t, "a size, as 400 g or 20 cm");
	for (size_t i = 0; d && i < d->equipments; i++)
		if (target_is_about(t, d->equipment[i].place))
			d->equipment[i].size = t->v.amount;
	for (size_t p = 0; d && p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].ingredients; i++) {
			struct ingredient *in = &d->part[p].ingredient[i];

			if (!is_used_here(t, in) || t->v.kind != MEASURE_AMOUNT)
				continue;
			in->size = t->v.amount;
			in->metric = metric_of(t->w->m, in);
		}
	return true;
}

bool
apply_yield(struct target *t)
{
	struct dish *d = target_dish(t);

	/* "12 slices" reads as an amount of slices */
	if (!t->v.noun.n && t->v.amount.unit)
		t->v.noun = t->v.amount.unit->name;
	t->v.amount.unit = NULL;
	if (!value_is_amount(&t->v))
		return target_misfit(t, "how many it feeds or makes, as 4 servings");
	if (!d)
		return target_missing(t, "dish");
	d->yield = t->v.amount;
	d->yield_unit = t->v.noun.n ? t->v.noun : STR("serving");
	d->yield_place = t->f->place;
	d->yields_said = 0;
	return true;
}

/* ---- lists ----------------------------------------------------------------------------
 */

bool
apply_unused(struct target *t)
{
	if (value_is_amount(&t->v))
		return apply_amount(t);
	if (!str_is_z(t->v.words, "leave out"))
		return target_misfit(t, "leave out, or stet and a reason");
	for (size_t d = 0; d < t->w->d->dishes; d++)
		for (size_t p = 0; p < t->w->d->dish[d].parts; p++) {
			struct part *part = &t->w->d->dish[d].part[p];

			for (size_t i = part->ingredients; i-- > 0;)
				if (is_used_here(t, &part->ingredient[i]))
					part_drop_ingredient(part, i);
		}
	return true;
}

/* Words for the notes of the recipe. */
bool
apply_note(struct target *t)
{
	struct dish *d = target_dish(t);

	if (!d)
		return target_missing(t, "dish");
	d->note = arena_grow(t->w->a, d->note, d->notes, d->notes + 1, sizeof *d->note);
	d->note[d->notes++] = t->v.words;
	return true;
}
