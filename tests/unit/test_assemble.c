/* SPDX-License-Identifier: ISC */
/*
 * src/assemble: the heat of steps, what is said twice, amounts in grams, how long a
 * dish takes, and what is only told. Steps in words are in test_steps.c, lists of
 * food in test_foods.c, regions in test_region.c.
 */
#include "../support/amounts.h"
#include "../support/expect.h"
#include "../support/hold.h"
#include "talk.h"

#include "base/print.h"

struct row {
	const char *talk, *want;
};

static void
expect_described(const struct grammar *g, const struct row *row, size_t rows,
    void (*describe)(struct buf *b, const struct draft *d))
{
	size_t wrong = 0;

	for (size_t i = 0; i < rows; i++) {
		struct draft *d = talk_draft(g, row[i].talk);
		struct buf b = buf_in(d->arena);

		describe(&b, d);
		if (!str_is_z(buf_str(&b), row[i].want)) {
			print_error("%s\n  gave  %.*s\n  not   %s\n", row[i].talk, (int)b.n,
			    b.n ? b.v : "", row[i].want);
			wrong++;
		}
		tamis_draft_free(d);
	}
	assert_int_equal(wrong, 0);
}

/* ---- heat ----------------------------------------------------------------- */

/* "bake in oven at 350 fahrenheit, as before" */
static void
put_heat(struct buf *b, const struct step *s)
{
	const struct temperature *t = &s->temperature;
	struct amount a = {true, true, t->min, t->max, t->unit};

	if (!s->heats && !t->present)
		return;
	buf_fmt(b, "%s%.*s", b->n ? "; " : "", (int)s->action.n, s->action.p);
	if (s->appliance)
		buf_fmt(b, " in %s", s->appliance);
	if (t->present && t->unit) {
		buf_put_z(b, " at ");
		amounts_put(b, &a);
	}
	if (t->heat.n)
		buf_fmt(b, " on %.*s", (int)t->heat.n, t->heat.p);
	buf_put_z(b, t->inherited ? ", as before" : "");
	buf_put_z(b, t->role == ROLE_OIL ? " of oil" : "");
}

static void
describe_heat(struct buf *b, const struct draft *d)
{
	for (size_t i = 0; d->dishes && i < d->dish->parts; i++)
		for (size_t k = 0; k < d->dish->part[i].steps; k++)
			put_heat(b, &d->dish->part[i].step[k]);
}

static void
a_setting_stays_until_it_is_changed(void **state)
{
	static const struct row rows[] = {
	    {"Heat the oven to 375. Mix the batter. Bake the cake for twenty minutes.",
		"heat in oven at 375 fahrenheit; bake in oven at 375 fahrenheit, as "
		"before"},
	    {"Heat the oven to 425. Roast the carrots for ten minutes. Turn the oven down "
	     "to 350 and roast them for twenty minutes more.",
		"heat in oven at 425 fahrenheit; roast in oven at 425 fahrenheit, as "
		"before; turn the oven down in oven at 350 fahrenheit; roast in oven at "
		"350 "
		"fahrenheit, as before"},
	    {"Heat the oil to 350. Fry the chicken for eight minutes.",
		"fry in fryer at 350 fahrenheit of oil"},
	    {"Put a pan on medium heat. Fry the onions for five minutes.",
		"fry in stove on medium"},
	    {"Air fry the potatoes at 400 for fifteen minutes.",
		"air-fry in air-fryer at 400 fahrenheit"},
	    {"Chop an onion. Toss the salad.", ""},
	};

	expect_described(*state, rows, COUNT(rows), describe_heat);
}

/* ---- what is said twice --------------------------------------------------- */

static void
describe_measures(struct buf *b, const struct draft *d)
{
	for (size_t i = 0; i < d->measures; i++) {
		const struct measure *m = &d->measure[i];

		buf_put_z(b, i ? "; " : "");
		amounts_put(b, &m->value);
		buf_put_z(b, m->converted ? " again" : "");
		buf_put_z(b, m->corrected ? " corrected" : "");
		buf_put_z(b, m->aside ? " aside" : "");
	}
}

static void
a_second_unit_says_a_measure_again(void **state)
{
	static const struct row rows[] = {
	    {"Bake it at 350, that's 180 Celsius.", "350 fahrenheit; 180 celsius again"},
	    {"Add half a cup of milk, so call it 120 mils.",
		"1/2 cup; 120 millilitre again"},
	    {"Add a cup of milk and 100 grams of sugar.", "1 cup; 100 gram"},
	    {"Bake it at 350 for 20 minutes, then at 180 Celsius.",
		"350 fahrenheit; 20 minute; 180 celsius"},
	};

	expect_described(*state, rows, COUNT(rows), describe_measures);
}

/* ---- amounts in grams ----------------------------------------------------- */

static void
describe_metric(struct buf *b, const struct draft *d)
{
	const struct part *p = d->dishes ? d->dish->part : NULL;

	for (size_t i = 0; p && i < p->ingredients; i++) {
		buf_put_z(b, i ? "; " : "");
		if (p->ingredient[i].metric.known)
			print_decimal(b, p->ingredient[i].metric.min);
		else
			buf_put_z(b, "?");
		if (p->ingredient[i].metric.unit)
			buf_put(b, p->ingredient[i].metric.unit->brief);
	}
}

static void
amounts_are_known_in_grams_or_millilitres(void **state)
{
	static const struct row rows[] = {
	    {"Add a pound of beef.", "453.59g"},
	    {"Add a cup of milk.", "236.59ml"},
	    {"Add a cup of flour.", "125g"},
	    {"Add a stick of butter.", "113g"},
	    {"Add a pinch of salt.", "?"},
	};

	expect_described(*state, rows, COUNT(rows), describe_metric);
}

/* ---- how long a dish takes ------------------------------------------------ */

static void
put_minutes(struct buf *b, const char *what, int64_t ms)
{
	if (ms < 0)
		buf_fmt(b, "%s ?", what);
	else
		buf_fmt(b, "%s %d", what, (int)(ms / 60000));
}

static void
describe_times(struct buf *b, const struct draft *d)
{
	if (!d->dishes)
		return;
	put_minutes(b, "total", d->dish->total_ms);
	put_minutes(b, ", active", d->dish->active_ms);
	put_minutes(b, ", claimed", d->dish->claimed_ms);
}

static void
the_times_of_steps_add_up(void **state)
{
	static const struct row rows[] = {
	    {"Fry the onions for ten minutes. Add the stock and simmer for half an hour.",
		"total 40, active 10, claimed ?"},
	    {"Fry the onions for ten minutes, stirring. Let it rest for an hour.",
		"total 70, active 10, claimed ?"},
	    {"Simmer the sauce for thirty minutes. Meanwhile boil the pasta for ten "
	     "minutes.",
		"total 30, active 0, claimed ?"},
	    {"Chop an onion.", "total ?, active ?, claimed ?"},
	    {"Fry the onions for ten minutes. It's on the table in fifteen minutes.",
		"total 10, active 10, claimed 15"},
	};

	expect_described(*state, rows, COUNT(rows), describe_times);
}

/* ---- what is only told ---------------------------------------------------- */

static void
describe_steps(struct buf *b, const struct draft *d)
{
	for (size_t i = 0; d->dishes && i < d->dish->parts; i++)
		for (size_t k = 0; k < d->dish->part[i].steps; k++) {
			buf_put_z(b, b->n ? " " : "");
			buf_put(b, d->dish->part[i].step[k].text);
		}
}

static void
stories_and_other_cooks_are_no_steps(void **state)
{
	static const struct row rows[] = {
	    {"Chop the onions. My grandmother fried hers in lard. Add the stock.",
		"Chop the onions. Add the stock."},
	    {"Chop the onions. Last year I roasted a goose. Add the stock.",
		"Chop the onions. Add the stock."},
	    {"Chop the onions. Some people add sugar. Simmer it.",
		"Chop the onions. Simmer it."},
	    {"Chop the onions. Don't salt them. Simmer it.", "Chop the onions. Simmer it."},
	    {"Chop the onions. You could grate them. Simmer it.",
		"Chop the onions. Simmer it."},
	};

	expect_described(*state, rows, COUNT(rows), describe_steps);
}

static void
what_is_done_beside_another_step_says_so(void **state)
{
	static const struct row rows[] = {
	    {"Simmer the sauce for thirty minutes. Meanwhile boil the pasta for ten "
	     "minutes.",
		"Simmer the sauce for 30 minutes. Meanwhile, boil the pasta for 10 "
		"minutes."},
	    {"Roast the carrots for an hour. While they roast, whisk the eggs.",
		"Roast the carrots for 1 hour. Meanwhile, whisk the eggs."},
	    {"Brown the beef for five minutes. While you're at it, add some salt.",
		"Brown the beef for 5 minutes. Add the salt."},
	    {"Brown the beef for five minutes. Stir it while it browns.",
		"Brown the beef for 5 minutes. Stir the beef."},
	    {"Meanwhile boil the pasta for ten minutes.", "Boil the pasta for 10 minutes."},
	};

	expect_described(*state, rows, COUNT(rows), describe_steps);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(a_setting_stays_until_it_is_changed),
	    cmocka_unit_test(a_second_unit_says_a_measure_again),
	    cmocka_unit_test(amounts_are_known_in_grams_or_millilitres),
	    cmocka_unit_test(the_times_of_steps_add_up),
	    cmocka_unit_test(what_is_done_beside_another_step_says_so),
	    cmocka_unit_test(stories_and_other_cooks_are_no_steps),
	};

	return cmocka_run_group_tests_name("assemble", tests, hold_grammar, drop_grammar);
}
