/* SPDX-License-Identifier: ISC */
/*
 * The archive as a whole: what is cooked in which season, how hot and how long,
 * what is open.
 */
#include "archive/store.h"

#include <stdlib.h>

enum {
	TALLIES = 20,   /* dishes, foods */
	HABITS = 12,    /* of each quantity */
	HABIT_DOTS = 2, /* fewer say nothing */
	DOTS_MAX = 400, /* of one habit: more can't be told apart */
	EPISODES = 60
};

struct surveying {
	struct archive *archive;
	const struct grammar *grammar;
	struct arena *arena;
	struct survey *out;
};

/* ---- tallies ------------------------------------------------------------ */

/* "03" in the north is spring, in Australia autumn; meteorological seasons. */
static enum season
season_of(struct str month, bool south)
{
	uint64_t m;

	if (!str_to_u64(month, &m) || m < 1 || m > 12)
		return NO_SEASON;
	return (enum season)(((m + 9) % 12 / 3 + (south ? 2 : 0)) % 4);
}

static int
order_tallies(const void *left, const void *right)
{
	const struct tally *a = left, *b = right;

	if (a->all != b->all)
		return a->all < b->all ? 1 : -1;
	return str_order(a->name, b->name);
}

/* Rows of name, month, south, number, by name. */
static struct tally *
read_tallies(struct surveying *k, enum statement statement, size_t *n, struct err *e)
{
	struct row r = row_open(k->archive, statement);
	VEC(struct tally) list = {0};

	while (row_next(&r, e)) {
		struct str name = row_get_text(&r, 0);
		size_t dishes = (size_t)row_get_int(&r, 3);
		struct tally *t;

		if (list.n == 0 || !str_is(list.v[list.n - 1].name, name))
			vec_push(k->arena, &list,
			    (struct tally){.name = arena_str(k->arena, name)});
		t = &list.v[list.n - 1];
		t->by[season_of(row_get_text(&r, 1), row_get_int(&r, 2))] += dishes;
		t->all += dishes;
	}
	if (list.n)
		qsort(list.v, list.n, sizeof *list.v, order_tallies);
	*n = list.n < TALLIES ? list.n : TALLIES;
	return list.v;
}

static bool
survey_head(struct surveying *k, struct err *e)
{
	struct row r = row_open(k->archive, SQL_SURVEY_HEAD);
	struct survey *s = k->out;

	if (!row_next(&r, e))
		return false;
	s->episodes = (size_t)row_get_int(&r, 0);
	s->dated = (size_t)row_get_int(&r, 1);
	s->first = row_copy(&r, 2, k->arena);
	s->last = row_copy(&r, 3, k->arena);
	s->dishes = (size_t)row_get_int(&r, 4);
	row_end(&r);
	s->dish = read_tallies(k, SQL_SURVEY_DISHES, &s->dish_n, e);
	s->food = read_tallies(k, SQL_SURVEY_FOODS, &s->food_n, e);
	return !e->set;
}

/* ---- habits ------------------------------------------------------------- */

/* What the tables know of the food by that key. */
static void
guard(struct surveying *k, struct habit *h, struct err *e)
{
	struct row r = row_open(k->archive, SQL_SURVEY_FOOD);
	struct safe_minimum minimum;
	struct ingredient in = {0};

	row_text(&r, h->subject);
	if (!row_next(&r, e))
		return;
	in.item = row_copy(&r, 0, k->arena);
	in.key = row_copy(&r, 1, k->arena);
	in.kind = row_copy(&r, 2, k->arena);
	in.group = row_copy(&r, 3, k->arena);
	row_end(&r);
	h->guarded = tamis_safe_minimum(k->grammar, NULL, &in, &minimum);
	if (!h->guarded)
		return;
	h->minimum_c = ratio_double(minimum.celsius);
	h->source = arena_str(k->arena, minimum.source);
}

static void
read_dots(
    struct surveying *k, struct habit *h, int64_t subject, int64_t action, struct err *e)
{
	struct row r = row_open(k->archive, SQL_SURVEY_DOTS);
	VEC(struct dot) list = {0};

	row_int(&r, subject);
	row_int(&r, action);
	row_int(&r, h->quantity);
	row_int(&r, DOTS_MAX);
	while (row_next(&r, e))
		vec_push(k->arena, &list,
		    (struct dot){row_get_real(&r, 0), row_get_real(&r, 1),
			row_copy(&r, 2, k->arena)});
	h->dot = list.v;
	h->dots = list.n;
}

static bool
survey_habits(struct surveying *k, enum quantity quantity, struct err *e)
{
	struct row r = row_open(k->archive, SQL_SURVEY_HABITS);
	struct survey *s = k->out;

	row_int(&r, quantity);
	row_int(&r, HABIT_DOTS);
	row_int(&r, HABITS);
	while (row_next(&r, e)) {
		struct habit h = {.quantity = quantity};

		h.subject = row_copy(&r, 1, k->arena);
		h.action = row_copy(&r, 3, k->arena);
		read_dots(k, &h, row_get_int(&r, 0), row_get_int(&r, 2), e);
		if (quantity == QUANTITY_INSIDE)
			guard(k, &h, e);
		s->habit = arena_grow(
		    k->arena, s->habit, s->habits, s->habits + 1, sizeof *s->habit);
		s->habit[s->habits++] = h;
	}
	return !e->set;
}

/* ---- episodes ----------------------------------------------------------- */

static struct str
dishes_of(struct surveying *k, int64_t episode, struct err *e)
{
	struct row r = row_open(k->archive, SQL_SURVEY_DISHES_OF);
	struct buf b = buf_in(k->arena);

	row_int(&r, episode);
	while (row_next(&r, e)) {
		buf_put_z(&b, b.n ? ", " : "");
		buf_put(&b, row_get_text(&r, 0));
	}
	return buf_str(&b);
}

static bool
survey_episodes(struct surveying *k, struct err *e)
{
	struct row r = row_open(k->archive, SQL_SURVEY_EPISODES);
	VEC(struct survey_episode) list = {0};

	row_int(&r, EPISODES);
	while (row_next(&r, e)) {
		struct survey_episode one = {.name = row_copy(&r, 1, k->arena),
		    .title = row_copy(&r, 2, k->arena),
		    .date = row_copy(&r, 3, k->arena),
		    .dishes = dishes_of(k, row_get_int(&r, 0), e)};

		for (int i = 0; i < 3; i++)
			one.open[i] = (size_t)row_get_int(&r, 4 + i);
		vec_push(k->arena, &list, one);
	}
	k->out->episode = list.v;
	k->out->episode_n = list.n;
	return !e->set;
}

static bool
survey_codes(struct surveying *k, struct err *e)
{
	struct row r = row_open(k->archive, SQL_SURVEY_CODES);
	VEC(struct open_code) list = {0};

	while (row_next(&r, e))
		vec_push(k->arena, &list,
		    (struct open_code){
			row_copy(&r, 0, k->arena), (size_t)row_get_int(&r, 1)});
	k->out->code = list.v;
	k->out->codes = list.n;
	return !e->set;
}

bool
archive_survey(struct archive *a, const struct grammar *g, struct arena *arena,
    struct survey *out, struct err *e)
{
	struct surveying k = {a, g, arena, out};

	*out = (struct survey){0};
	if (!store_script(a, "BEGIN", e))
		return false;
	if (survey_head(&k, e) && survey_habits(&k, QUANTITY_SETTING, e) &&
	    survey_habits(&k, QUANTITY_TIME, e) && survey_habits(&k, QUANTITY_INSIDE, e) &&
	    survey_episodes(&k, e))
		survey_codes(&k, e);
	store_undo(a);
	return !e->set;
}
