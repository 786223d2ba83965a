/* SPDX-License-Identifier: ISC */
/*
 * From talk to steps with heat or time: what is done, at what setting, for how
 * long. A row's steps are written "bake 180C 40m; rest 10m"; what heats nothing
 * and takes no time is left out.
 */
#include "../support/hold.h"
#include "talk.h"

struct heat_row {
	const char *talk, *want;
};

static void
put_minutes(struct buf *b, int64_t ms)
{
	if (ms % 60000 == 0)
		buf_fmt(b, "%lldm", (long long)(ms / 60000));
	else
		buf_fmt(b, "%llds", (long long)(ms / 1000));
}

static void
put_step(struct buf *b, const struct step *s)
{
	const struct temperature *t = &s->temperature;

	if (s->preheats || (!s->duration.known && !(t->present && t->unit)))
		return;
	if (b->n)
		buf_put_z(b, "; ");
	buf_put(b, s->action);
	if (t->present && t->unit)
		buf_fmt(b, " %lld%c", (long long)ratio_round(t->max),
		    str_is_z(t->unit->name, "fahrenheit") ? 'F' : 'C');
	if (s->duration.known) {
		buf_put_char(b, ' ');
		if (s->duration.min_ms != s->duration.max_ms) {
			put_minutes(b, s->duration.min_ms);
			buf_put_char(b, '-');
		}
		put_minutes(b, s->duration.max_ms);
	}
}

static struct str
heat_of(struct arena *a, const struct draft *d)
{
	struct buf b = buf_in(a);

	for (size_t i = 0; i < d->dishes; i++)
		for (size_t p = 0; p < d->dish[i].parts; p++)
			for (size_t s = 0; s < d->dish[i].part[p].steps; s++)
				put_step(&b, &d->dish[i].part[p].step[s]);
	return buf_str(&b);
}

static void
expect_heat(const struct grammar *g, const struct heat_row *row, size_t rows)
{
	size_t wrong = 0;

	for (size_t i = 0; i < rows; i++) {
		struct draft *d = talk_draft(g, row[i].talk);
		struct arena a;
		struct str got;

		arena_init(&a);
		got = heat_of(&a, d);
		if (!str_is_z(got, row[i].want)) {
			print_error("%s\n  got  %.*s\n  want %s\n", row[i].talk, (int)got.n,
			    got.p, row[i].want);
			wrong++;
		}
		arena_release(&a);
		tamis_draft_free(d);
	}
	assert_int_equal(wrong, 0);
}

#define COD "Today it's cod. Four cod fillets, two tablespoons of oil. "
#define LOAF "Today it's a date loaf. 200 grams of flour, 100 grams of dates. "
#define HAM "Today it's glazed ham. A 2 kilo ham, half a cup of honey. "

static void
test_that_a_time_alone_takes_the_heat_that_was_set(void **state)
{
	static const struct heat_row rows[] = {
	    {LOAF "Oven at 170 celsius. Tip it into a lined tin, fifty minutes.",
		"bake 170C 50m"},
	    {LOAF "First the oven, that's going to 350. Spoon it in the tin, forty minutes "
		  "and a skewer comes out clean.",
		"bake 350F 40m"},
	    {HAM "I've had the oven at 160 celsius for a while. Brush the honey over it "
		 "and in it goes, an hour and a half.",
		"bake 160C 90m"},
	    {HAM "Oven at 180 celsius. It needs forty minutes. Baste it, then give it "
		 "another twenty.",
		"bake 180C 60m"},
	    {HAM "Roast it at 200 celsius for thirty minutes. Lower it to 160 and give it "
		 "another hour.",
		"roast 200C 30m; bake 160C 60m"},
	    {COD "Get a skillet on medium heat. In go the fillets, three minutes a side.",
		"cook 6m"},
	};

	expect_heat(*state, rows, COUNT(rows));
}

static void
test_that_a_flame_is_no_oven(void **state)
{
	static const struct heat_row rows[] = {
	    {HAM "Bake it at 180 celsius for an hour. Now the honey in a small pan, five "
		 "minutes on medium.",
		"bake 180C 60m; cook 5m"},
	    {COD "Oven to 200 celsius. First the big skillet, the oil, and brown the "
		 "fillets "
		 "for two minutes.",
		"brown 2m"},
	};

	expect_heat(*state, rows, COUNT(rows));
}

static void
test_that_waiting_is_told_by_the_place(void **state)
{
	static const struct heat_row rows[] = {
	    {COD "Fry the fillets for six minutes. Leave them on a rack for five minutes.",
		"fry 6m; rest 5m"},
	    {LOAF "Wrap it up, and it's got to have an hour in the fridge.", "chill 60m"},
	    {LOAF "Stick it in the fridge, at least two hours.", "chill 120m"},
	    {LOAF "The dates sit in warm water for fifteen minutes.", "soak 15m"},
	    {LOAF "Drop the dates into cold water, ten minutes.", "soak 10m"},
	    {HAM "Bake it at 180 celsius for an hour. When it's out, leave it alone. "
		 "Fifteen "
		 "minutes.",
		"bake 180C 60m; rest 15m"},
	    {COD "Hot pan, the oil, lay the fillets in and leave them alone for three "
		 "minutes so they crisp.",
		"cook 3m"},
	};

	expect_heat(*state, rows, COUNT(rows));
}

static void
test_that_only_each_side_doubles_a_time(void **state)
{
	static const struct heat_row rows[] = {
	    {COD "Fry the fillets for three minutes on each side.", "fry 6m"},
	    {COD "Fry the fillets for three minutes a side.", "fry 6m"},
	    {COD "Fry the fillets for three minutes on the first side.", "fry 3m"},
	};

	expect_heat(*state, rows, COUNT(rows));
}

static void
test_that_a_time_of_others_or_a_summary_is_no_step(void **state)
{
	static const struct heat_row rows[] = {
	    {HAM "Bake it at 180 celsius for an hour. Ollie next door does his at 220 for "
		 "ten minutes.",
		"bake 180C 60m"},
	    {HAM "Bake it at 180 celsius for an hour. So that was an hour at 180.",
		"bake 180C 60m"},
	    {HAM "Bake it at 180 celsius for an hour, it should say sixty celsius inside.",
		"bake 180C 60m"},
	};

	expect_heat(*state, rows, COUNT(rows));
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_that_a_time_alone_takes_the_heat_that_was_set),
	    cmocka_unit_test(test_that_a_flame_is_no_oven),
	    cmocka_unit_test(test_that_waiting_is_told_by_the_place),
	    cmocka_unit_test(test_that_only_each_side_doubles_a_time),
	    cmocka_unit_test(test_that_a_time_of_others_or_a_summary_is_no_step),
	};

	return cmocka_run_group_tests(tests, hold_grammar, drop_grammar);
}
