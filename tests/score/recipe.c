/* SPDX-License-Identifier: ISC */
/*
 * Ingredients and heat steps against the gold. Of all pairs that fit, the one
 * that agrees in most is made first.
 */
#include "compare.h"
#include "words.h"

#include <stdlib.h>

/* One of ours, with where it stands. */
struct ours {
	int dish;
	const struct part *part;
	const struct ingredient *food;
	const struct step *step;
	struct str name; /* folded item or action */
	bool taken;
};

struct all {
	VEC(struct ours) ours;
};

/* The ingredients, or the steps, of all dishes. */
static struct all
collect(struct match *m, bool steps)
{
	struct all all = {{NULL, 0, 0}};

	for (size_t d = 0; d < m->draft->dishes; d++)
		for (size_t p = 0; p < m->draft->dish[d].parts; p++) {
			const struct part *part = &m->draft->dish[d].part[p];
			struct ours o = {(int)d, part, NULL, NULL, STR(""), false};
			size_t n = steps ? part->steps : part->ingredients;

			for (size_t i = 0; i < n; i++) {
				o.food = steps ? NULL : &part->ingredient[i];
				o.step = steps ? &part->step[i] : NULL;
				o.name = words_fold(
				    m->arena, steps ? o.step->action : o.food->item);
				vec_push(m->arena, &all.ours, o);
			}
		}
	return all;
}

/* How well a pair agrees; 0: it doesn't fit. */
typedef int fit(const struct match *m, size_t gold, const struct ours *o);

/* Index of ours for each gold row, -1 for none. */
static int *
pair(struct match *m, size_t golds, struct all *all, fit *fits)
{
	int *of = arena_array(m->arena, golds, int);

	for (size_t i = 0; i < golds; i++)
		of[i] = -1;
	for (;;) {
		size_t best_gold = 0, best_ours = 0;
		int best = 0, now;

		for (size_t i = 0; i < golds; i++)
			for (size_t j = 0; of[i] < 0 && j < all->ours.n; j++) {
				if (all->ours.v[j].taken)
					continue;
				now = fits(m, i, &all->ours.v[j]);
				if (now > best)
					best = now, best_gold = i, best_ours = j;
			}
		if (!best)
			return of;
		of[best_gold] = (int)best_ours;
		all->ours.v[best_ours].taken = true;
	}
}

/* ---- ingredients -------------------------------------------------------- */

static bool
is_same_part(struct arena *a, struct str gold, struct str ours)
{
	struct str g = words_fold(a, gold), o = words_fold(a, ours);

	if (g.n == 0 || o.n == 0)
		return g.n == o.n;
	return words_have(o, words_last(g)) || words_have(g, words_last(o));
}

/* Words in common with the best name of the same head word; -1 none. */
static int
name_fit(struct arena *a, struct str names, struct str item)
{
	int best = -1, now;

	while (names.p) {
		struct str name = words_fold(a, str_next(&names, '|'));

		if (!words_same(words_last(name), words_last(item)))
			continue;
		now = (int)words_shared(name, item);
		best = now > best ? now : best;
	}
	return best;
}

static int
fit_ingredient(const struct match *m, size_t gold, const struct ours *o)
{
	const struct gold_ingredient *g = &m->gold->ingredient.v[gold];
	int names;

	if (compare_dish(m, g->dish) != o->dish)
		return 0;
	names = name_fit(m->arena, g->items, o->name);
	if (names < 0)
		return 0;
	return 1 + names + 10 * is_same_part(m->arena, g->part, o->part->name) +
	       100 * compare_value(&g->value, &o->food->amount);
}

static void
slip_ingredient(struct match *m, enum figure figure, bool miss, struct str item,
    struct gold_value v, int64_t at_ms)
{
	struct str value = value_text(m->arena, &v);
	struct str head = str_cut(item, 0, str_find_char(item, '|'));

	tally_slip(m->tally, (struct slip){figure, miss, STR(""), at_ms, head,
				 arena_fmt(m->arena, "%.*s: %.*s", (int)item.n, item.p,
				     (int)value.n, value.p)});
}

static void
count_pair(struct match *m, const struct gold_ingredient *g, const struct ours *o)
{
	const struct ingredient *food = o->food;

	tally_hit(m->tally, FIGURE_INGREDIENTS);
	tally_share(&m->tally->parts, is_same_part(m->arena, g->part, o->part->name));
	if (compare_value(&g->value, &food->amount)) {
		tally_hit(m->tally, FIGURE_AMOUNTS);
		return;
	}
	slip_ingredient(m, FIGURE_AMOUNTS, true, g->items, g->value, g->at_ms);
	slip_ingredient(m, FIGURE_AMOUNTS, false, food->item, measured_value(&food->amount),
	    food->place.cue_ms);
}

void
compare_ingredients(struct match *m)
{
	struct all all = collect(m, false);
	int *of = pair(m, m->gold->ingredient.n, &all, fit_ingredient);

	for (size_t i = 0; i < m->gold->ingredient.n; i++) {
		const struct gold_ingredient *g = &m->gold->ingredient.v[i];

		if (of[i] >= 0) {
			count_pair(m, g, &all.ours.v[of[i]]);
			continue;
		}
		slip_ingredient(m, FIGURE_INGREDIENTS, true, g->items, g->value, g->at_ms);
		tally_count(m->tally, FIGURE_AMOUNTS, true);
	}
	for (size_t j = 0; j < all.ours.n; j++) {
		const struct ingredient *food = all.ours.v[j].food;

		if (all.ours.v[j].taken)
			continue;
		slip_ingredient(m, FIGURE_INGREDIENTS, false, food->item,
		    measured_value(&food->amount), food->place.cue_ms);
		tally_count(m->tally, FIGURE_AMOUNTS, false);
	}
}

/* ---- heat --------------------------------------------------------------- */

/* Degrees only: "medium heat" is no temperature here. */
static struct amount
degrees(const struct step *s)
{
	const struct temperature *t = &s->temperature;

	return (struct amount){.known = t->present && (t->unit || t->heat.n == 0),
	    .min = t->min,
	    .max = t->max,
	    .unit = t->unit};
}

static struct gold_value
seconds(const struct step *s)
{
	const struct duration *t = &s->duration;

	return (struct gold_value){t->present && t->known, (double)t->min_ms / 1000,
	    (double)t->max_ms / 1000, STR("second")};
}

static bool
is_action(struct arena *a, struct str actions, struct str ours)
{
	while (actions.p) {
		struct str name = words_fold(a, str_next(&actions, '|'));

		if (str_is(words_first(name), words_first(ours)) ||
		    str_is(words_last(name), words_last(ours)))
			return true;
	}
	return false;
}

static int
fit_heat(const struct match *m, size_t gold, const struct ours *o)
{
	const struct gold_heat *g = &m->gold->heat.v[gold];
	struct gold_value time = seconds(o->step);
	struct amount heat = degrees(o->step);
	int64_t apart = llabs(g->at_ms - o->step->place.cue_ms) / 1000;

	if (compare_dish(m, g->dish) != o->dish ||
	    !is_action(m->arena, g->actions, o->name) ||
	    !compare_value(&g->temperature, &heat) || g->seconds.known != time.known ||
	    (time.known && (time.min != g->seconds.min || time.max != g->seconds.max)))
		return 0;
	return apart < 3600 ? 3601 - (int)apart : 1;
}

static void
slip_heat(struct match *m, bool miss, struct str action, struct gold_value heat,
    struct gold_value time, int64_t at_ms)
{
	struct str t = value_text(m->arena, &heat), s = value_text(m->arena, &time);
	struct str head = str_cut(action, 0, str_find_char(action, '|'));

	tally_slip(m->tally, (struct slip){FIGURE_HEAT, miss, STR(""), at_ms, head,
				 arena_fmt(m->arena, "%.*s: %.*s, %.*s", (int)action.n,
				     action.p, (int)t.n, t.p, (int)s.n, s.p)});
}

/* Cooking or waiting with a temperature or a time. */
static bool
is_heat_step(const struct step *s)
{
	return !s->preheats && (s->heats || s->passive) &&
	       (s->duration.present || degrees(s).known);
}

void
compare_heat(struct match *m)
{
	struct all all = collect(m, true);
	int *of = pair(m, m->gold->heat.n, &all, fit_heat);

	for (size_t i = 0; i < m->gold->heat.n; i++) {
		const struct gold_heat *g = &m->gold->heat.v[i];

		if (of[i] >= 0)
			tally_hit(m->tally, FIGURE_HEAT);
		else
			slip_heat(
			    m, true, g->actions, g->temperature, g->seconds, g->at_ms);
	}
	for (size_t j = 0; j < all.ours.n; j++) {
		const struct step *s = all.ours.v[j].step;
		struct amount heat = degrees(s);

		if (!all.ours.v[j].taken && is_heat_step(s))
			slip_heat(m, false, s->action, measured_value(&heat), seconds(s),
			    s->place.cue_ms);
	}
}
