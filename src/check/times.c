/* SPDX-License-Identifier: ISC */
/*
 * Times far outside what the action takes, by times.tsv.
 */
#include "check/food.h"
#include "check/say.h"

/* The widest range of the rows; what is half as long again or half as short as
 * it allows has a wrong unit or number. */
struct bounds {
	int64_t min_s, max_s; /* max_s 0: none found */
};

static bool
row_is_for(const struct table *t, size_t row, const struct step *s, const char *appliance)
{
	struct str where = table_cell(t, row, table_column(t, "appliance"));

	return words_are(table_cell(t, row, 0), s->action) &&
	       (where.n == 0 || !appliance || words_are(where, str_of(appliance)));
}

static void
widen(struct bounds *b, const struct table *t, size_t row)
{
	struct ratio min = {0, 1}, max = {0, 1};

	table_number(t, row, table_column(t, "min_s"), &min);
	table_number(t, row, table_column(t, "max_s"), &max);
	if (b->max_s == 0 || ratio_round(min) < b->min_s)
		b->min_s = ratio_round(min);
	if (ratio_round(max) > b->max_s)
		b->max_s = ratio_round(max);
}

/* The row names a food of the step, or the dish itself. */
static bool
row_names(const struct cursor *c, struct str food)
{
	for (size_t i = 0; i < c->step->uses; i++)
		if (c->step->use[i] < c->part->ingredients &&
		    food_is_named(&c->part->ingredient[c->step->use[i]], food))
			return true;
	return food_is_named(
		   &(struct ingredient){.key = c->dish->name, .item = c->dish->name},
		   food) ||
	       words_end(c->part->name, food);
}

/* The widest of the rows for the action and its foods, and for any food. */
static struct bounds
bounds_of(const struct check *k, const struct cursor *c)
{
	const struct table *t = grammar_table(k->grammar, "times");
	struct bounds named = {0, 0}, any = {0, 0};

	for (size_t i = 0; t && i < t->rows; i++) {
		struct str food = table_cell(t, i, table_column(t, "food"));

		if (!row_is_for(t, i, c->step, c->step->appliance))
			continue;
		if (food.n == 0)
			widen(&any, t, i);
		else if (row_names(c, food))
			widen(&named, t, i);
	}
	/* More goes in than the one food that is named: any time of it is right. */
	if (named.max_s && any.max_s && c->step->uses > 1) {
		named.min_s = named.min_s < any.min_s ? named.min_s : any.min_s;
		named.max_s = named.max_s > any.max_s ? named.max_s : any.max_s;
	}
	return named.max_s ? named : any;
}

/* Another step of the part does the same in the same heat, for as long as it
 * takes. */
static bool
goes_on(const struct cursor *c, int64_t min_s)
{
	for (size_t i = 0; i < c->part->steps; i++) {
		const struct step *s = &c->part->step[i];

		if (s != c->step && str_is(s->action, c->step->action) && s->appliance &&
		    step_is_in(c->step, s->appliance) && s->duration.known &&
		    s->duration.max_ms / 1000 >= min_s)
			return true;
	}
	return false;
}

static void
check_time(struct check *k, const struct cursor *c)
{
	const struct duration *d = &c->step->duration;
	struct bounds b = bounds_of(k, c);
	int64_t min_s = d->min_ms / 1000, max_s = d->max_ms / 1000;
	struct str said, action = say_action(c->step), range;

	/* A short rest harms nobody; short cooking is a slip, unless it goes on
	 * with other cooking or may be of one food among several. */
	if (!c->step->heats || word_in(c->step->action, "cook") || goes_on(c, b.min_s))
		b.min_s = 0;
	if (b.max_s == 0 || (min_s <= b.max_s + b.max_s / 2 && max_s >= b.min_s / 2))
		return;
	said = say_time(k, d->min_ms, d->max_ms);
	range = say_time(k, (b.min_s ? b.min_s : 1) * 1000, b.max_s * 1000);
	finding_raise(k, c->step->place, c->at,
	    "%.*s for %.*s cannot be right; %.*s is the widest that is believable (common "
	    "practice). Minutes or hours, or another number?",
	    SAY(action), SAY(said), SAY(range));
}

void
check_implausible_time(struct check *k)
{
	struct cursor c = walk(k->draft);

	while (walk_step(&c))
		if (c.step->duration.known && c.step->action.n && !c.step->preheats)
			check_time(k, &c);
}
