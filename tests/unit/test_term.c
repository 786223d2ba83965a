/* SPDX-License-Identifier: ISC */
/*
 * src/term: what of a script a terminal may see, the line that a finding is about,
 * and the word that was probably meant.
 */
#include "../support/expect.h"
#include "../support/hold.h"
#include "term/excerpt.h"
#include "term/nearest.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

static void
no_byte_of_a_script_acts_on_the_terminal(void **state)
{
	static const struct {
		const char *text, *want;
	} rows[] = {
	    {"two cups", "two cups"},
	    {"cr\u00E8me", "cr\u00E8me"},
	    {"\x1B[31mred", " [31mred"},
	    {"a\tb\rc\x07", "a b c "},
	    {"\x7F", " "},
	    {"\xC2\x9B"
	     "31m",
		" 31m"},
	    {"a\xFFz", "a\uFFFDz"},
	    {"cut \xC3", "cut \uFFFD"},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		look_put(&b, str_of(rows[i].text));
		expect_taken(&b, rows[i].want);
	}
}

static void
colours_are_put_only_where_they_are_wanted(void **state)
{
	struct look plain = {false, 80}, colour = {true, 80};
	struct buf b = buf_in(*state);

	look_paint(&b, &plain, PAINT_ERROR);
	look_paint(&b, &plain, PAINT_NONE);
	expect_taken(&b, "");
	look_paint(&b, &colour, PAINT_ERROR);
	assert_true(str_starts(buf_str(&b), STR("\x1B[")));
	b.n = 0;
	look_paint(&b, &colour, PAINT_NONE);
	expect_taken(&b, "\x1B[0m");
}

static void
long_text_is_broken_between_words(void **state)
{
	struct buf b = buf_in(*state);

	look_put_wrapped(&b, STR("Chill it within two hours."), 2, 14);
	expect_taken(&b, "  Chill it\n  within two\n  hours.\n");
	look_put_wrapped(&b, STR("Unbelievablylongword it is"), 0, 10);
	expect_taken(&b, "Unbelievablylongword\nit is\n");
}

static struct script *
script_of(struct arena *a, const char *source)
{
	struct script *s = arena_new(a, struct script);

	s->source = str_of(source);
	return s;
}

static void
an_excerpt_marks_the_words_in_their_line(void **state)
{
	static const struct {
		const char *source;
		struct span words;
		size_t width;
		const char *want;
	} rows[] = {
	    {"Stir it.\nBake it at 350.\nEat.", {20, 23}, 80,
		"  Bake it at 350.\n             ^~~ !\n"},
	    {"Bake it.", {0, 8}, 80, "  Bake it.\n  ^~~~~~~~ !\n"},
	    {"A line that is much longer than the terminal has columns for.", {49, 56}, 30,
		" …terminal has columns for.\n               ^~~~~~~ !\n"},
	    {"Melt\tit.", {5, 7}, 80, "  Melt it.\n       ^~ !\n"},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct look look = {false, rows[i].width};

		excerpt_put(
		    &b, script_of(*state, rows[i].source), rows[i].words, &look, STR("!"));
		expect_taken(&b, rows[i].want);
	}
}

static void
the_nearest_word_is_offered_where_it_is_near(void **state)
{
	static const char *const known[] = {"markdown", "json", "chapters", "card"};
	static const struct {
		const char *typed, *best;
	} rows[] = {
	    {"marcdown", "markdown"},
	    {"markdwon", "markdown"},
	    {"jsn", "json"},
	    {"jsonn", "json"},
	    {"cards", "card"},
	    {"chapter", "chapters"},
	    {"zzzz", NULL},
	    {"spreadsheet", NULL},
	    {"", NULL},
	};

	(void)state;
	for (size_t i = 0; i < COUNT(rows); i++) {
		struct nearest near = nearest_to(rows[i].typed);

		for (size_t k = 0; k < COUNT(known); k++)
			nearest_offer(&near, known[k]);
		expect(str_of(near.best), rows[i].best);
	}
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(no_byte_of_a_script_acts_on_the_terminal),
	    cmocka_unit_test(colours_are_put_only_where_they_are_wanted),
	    cmocka_unit_test(long_text_is_broken_between_words),
	    cmocka_unit_test(an_excerpt_marks_the_words_in_their_line),
	    cmocka_unit_test(the_nearest_word_is_offered_where_it_is_near),
	};

	return cmocka_run_group_tests_name("term", tests, hold_arena, drop_arena);
}
