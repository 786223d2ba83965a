/* SPDX-License-Identifier: ISC */
/*
 * Inputs that nobody would write, built here: each must come through all
 * stages and writers sound, within some seconds.
 */
#include "../support/expect.h"
#include "../support/hold.h"
#include "../support/spans.h"
#include "tamis.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <unistd.h>

#include <cmocka.h>

enum {
	SECONDS = 60, /* of a busy machine, under sanitizers; a hang takes longer */
	SIZE = 100000
};

struct hostile {
	const char *name;
	const char *head; /* comes first, once */
	const char *unit; /* repeated to the size */
};

static const struct hostile repeats[] = {
    {"nothing", "", ""},
    {"blank lines", "", "\n"},
    {"one word without end", "", "a"},
    {"digits without end", "[0:00] ", "9"},
    {"numbers", "[0:00] ", "1 "},
    {"number words", "[0:00] ", "one hundred and "},
    {"halves", "[0:00] ", "half a "},
    {"and a half", "[0:00] one ", "and a half "},
    {"ranges", "[0:00] ", "1 to "},
    {"alternatives", "[0:00] a cup of ", "flour or "},
    {"corrections", "[0:00] ", "two cups, sorry, "},
    {"whiles", "[0:00] bake it ", "while that bakes "},
    {"statements", "[0:00] Roast the squash for ten minutes. ",
	"The squash roasts for an hour. "},
    {"what points back", "[0:00] ", "Add the rest of the caramel. "},
    {"recaps", "[0:00] Bake it for an hour. ", "So to recap, bake it for an hour. "},
    {"raw meat", "[0:00] ", "Rinse the chicken. Leave it out overnight. "},
    {"readings", "[0:00] Roast a chicken. ", "It reads 150 degrees inside. "},
    {"steps without end", "[0:00] ", "Bake it for ten minutes at 200. "},
    {"foods without end", "[0:00] ", "a teaspoon of salt, "},
    {"foods without amounts", "[0:00] You need ", "onions, "},
    {"foods without commas", "[0:00] ", "two cups of flour and "},
    {"steps without stops", "[0:00] ", "bake it for ten minutes at 200 then "},
    {"breaths", "[0:00] ", "well, "},
    {"stamps alone", "", "[0:00]\n"},
    {"stamps backwards", "[9:00] Hello\n", "[0:01] there\n"},
    {"stamps too large", "", "[99999999999:59] a cup of flour\n"},
    {"dishes", "", "[0:01] First up, onion soup. Next, bread.\n"},
    {"headings", "", "# Soup\n"},
    {"tables", "", "| 0:01 | a | b |\n"},
    {"bars", "", "|"},
    {"brackets", "[0:00] ", "["},
    {"tags", "WEBVTT\n\n00:01.000 --> 00:02.000\n", "<b>"},
    {"open tags", "WEBVTT\n\n00:01.000 --> 00:02.000\n", "<"},
    {"entities", "WEBVTT\n\n00:01.000 --> 00:02.000\n", "&amp;&#x;&"},
    {"cues", "WEBVTT\n\n", "00:01.000 --> 00:02.000\na cup\n\n"},
    {"arrows", "WEBVTT\n\n", "-->"},
    {"subrip", "", "1\n00:00:01,000 --> 00:00:02,000\na cup\n\n"},
    {"combining marks", "[0:00] e", "\xcc\x81"},
    {"broken UTF-8", "[0:00] ", "\xf0\x9f\xff\xc3"},
    {"UTF-16", "\xff\xfe", "1 \n"},
    {"right to left", "[0:00] ",
	"\xe2\x80\xae"
	"123 "},
    {"vulgar fractions", "[0:00] ", "\xc2\xbd"},
};

static void
draft_and_write(
    struct arena *a, const struct grammar *g, const char *name, struct str source)
{
	static const struct tamis_style plain, other = {.units = UNITS_METRIC,
						   .spelling = SPELLING_US,
						   .plain_fractions = true,
						   .scale = {3, 2}};
	struct tamis_options o = {0};
	struct err e = {0};
	struct draft *d, *restyled;
	const struct writer *w;

	alarm(SECONDS);
	d = tamis_draft(g, &o, source, name, &e);
	/* Over a cap is an answer too, but it has to name the cap. */
	if (!d && !e.text[0])
		fail_msg("%s: neither a draft nor an error", name);
	if (d && spans_wrong(d))
		fail_msg("%s: %s", name, spans_wrong(d));
	restyled = d ? tamis_restyle(d, g, &other) : NULL;
	for (size_t i = 0; d && (w = tamis_writer(i)); i++) {
		struct buf out = buf_in(a);

		w->write(d, g, &plain, &out);
		w->write(restyled, g, &other, &out);
	}
	tamis_draft_free(d);
	alarm(0);
}

static void
repeats_come_through(void **state)
{
	for (size_t i = 0; i < COUNT(repeats); i++) {
		struct arena a;
		struct buf b;

		arena_init(&a);
		b = buf_in(&a);
		buf_put_z(&b, repeats[i].head);
		while (repeats[i].unit[0] && b.n < SIZE)
			buf_put_z(&b, repeats[i].unit);
		draft_and_write(&a, *state, repeats[i].name, buf_str(&b));
		arena_release(&a);
	}
}

static uint32_t
next_random(uint32_t *seed)
{
	*seed = *seed * 1664525u + 1013904223u;
	return *seed >> 16;
}

static void
noise_comes_through(void **state)
{
	uint32_t seed = 1;

	for (size_t i = 0; i < 40; i++) {
		struct arena a;
		struct buf b;

		arena_init(&a);
		b = buf_in(&a);
		if (i % 2)
			buf_put_z(&b, "WEBVTT\n\n00:01.000 --> 00:02.000\n");
		while (b.n < 2000)
			buf_put_char(
			    &b, (char)(next_random(&seed) & (i % 4 ? 0xff : 0x7f)));
		draft_and_write(&a, *state, "noise", buf_str(&b));
		arena_release(&a);
	}
}

/* Words that the grammar knows, in every order but a sensible one. */
static void
word_salad_comes_through(void **state)
{
	static const char *const words[] = {"half", "a", "cup", "of", "to", "ten",
	    "minutes", "bake", "flour", "sorry", "or", "and", "oven", "200", "degrees",
	    "until", "golden", "the", "per", "side", "another", "medium", "heat", "for",
	    "pan", "in", "with", ",", ".", "\n[0:10]", "inch", "1/2", "egg", "don't", "if",
	    "while", "sauce", "next"};
	uint32_t seed = 7;

	for (size_t i = 0; i < 60; i++) {
		struct arena a;
		struct buf b;

		arena_init(&a);
		b = buf_in(&a);
		buf_put_z(&b, "[0:00] ");
		for (size_t k = 0; k < 400; k++) {
			buf_put_z(&b, words[next_random(&seed) % COUNT(words)]);
			buf_put_char(&b, ' ');
		}
		draft_and_write(&a, *state, "word salad", buf_str(&b));
		arena_release(&a);
	}
}

static void
cap_is_an_error_that_names_it(void **state)
{
	struct tamis_options o = {.max_source = 100};
	struct err e = {0};
	struct arena a;
	struct buf b;

	arena_init(&a);
	b = buf_in(&a);
	while (b.n < 101)
		buf_put_char(&b, 'a');
	assert_null(tamis_draft(*state, &o, buf_str(&b), "long.txt", &e));
	assert_true(e.set);
	assert_non_null(strstr(e.text, "100"));
	arena_release(&a);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(repeats_come_through),
	    cmocka_unit_test(noise_comes_through),
	    cmocka_unit_test(word_salad_comes_through),
	    cmocka_unit_test(cap_is_an_error_that_names_it),
	};

	return cmocka_run_group_tests(tests, hold_grammar, drop_grammar);
}
