/* SPDX-License-Identifier: ISC */
/*
 * Which foods with which amounts a sentence puts on the list: the rows of
 * tests/foods/told.tsv, a sentence and the list it gives ("-" for none). A
 * sentence that begins with "~" is captions: no marks, no capitals.
 *
 *     Onions, I use two.    2 onions
 */
#include "../support/amounts.h"
#include "../support/hold.h"
#include "../support/source.h"
#include "tamis.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#define TABLE "tests/foods/told.tsv"

static void
put_ingredient(struct buf *b, const struct ingredient *g)
{
	if (b->n)
		buf_put_z(b, "; ");
	if (g->amount.known) {
		amounts_put(b, &g->amount);
		buf_put_char(b, ' ');
	}
	buf_put(b, g->item);
	if (g->optional)
		buf_put_z(b, " if liked");
	for (size_t i = 0; i < g->alternatives; i++)
		buf_fmt(
		    b, " or %.*s", (int)g->alternative[i].item.n, g->alternative[i].item.p);
}

static struct str
list_of(struct arena *a, const struct draft *d)
{
	struct buf b = buf_in(a);

	for (size_t i = 0; i < d->dishes; i++)
		for (size_t k = 0; k < d->dish[i].parts; k++)
			for (size_t j = 0; j < d->dish[i].part[k].ingredients; j++)
				put_ingredient(&b, &d->dish[i].part[k].ingredient[j]);
	return b.n ? buf_str(&b) : STR("-");
}

/* One row; true where the list is what it should be. */
static bool
row_holds(const struct grammar *g, struct arena *a, struct str told, struct str want)
{
	struct tamis_options o = {0};
	struct err e = {0};
	bool captions = told.n && told.p[0] == '~';
	struct str script =
	    captions ? arena_fmt(a, "[0:00] okay today we are making a supper bake %.*s\n",
			   (int)told.n - 2, told.p + 2)
		     : arena_fmt(a, "[0:00] Today we're making a supper bake. %.*s\n",
			   (int)told.n, told.p);
	struct draft *d = tamis_draft(g, &o, script, "told.txt", &e);
	struct str got;

	if (!d)
		fail_msg("%.*s: %s", (int)told.n, told.p, e.text);
	got = list_of(a, d);
	tamis_draft_free(d);
	if (str_is(got, want))
		return true;
	print_error("%.*s: %.*s, not %.*s\n", (int)told.n, told.p, (int)got.n, got.p,
	    (int)want.n, want.p);
	return false;
}

static void
sentences_give_their_list(void **state)
{
	const struct grammar *g = *state;
	struct arena a;
	struct err e = {0};
	struct str text;
	size_t rows = 0, failed = 0;

	arena_init(&a);
	if (!source_read(&a, TABLE, &text, &e))
		fail_msg("%s: %s", TABLE, e.text);
	while (text.n) {
		struct str line = str_next(&text, '\n');
		struct str told = str_next(&line, '\t');

		if (told.n == 0 || told.p[0] == '#')
			continue;
		rows++;
		failed += !row_holds(g, &a, told, line);
	}
	arena_release(&a);
	assert_true(rows > 0);
	assert_int_equal(failed, 0);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(sentences_give_their_list),
	};

	return cmocka_run_group_tests_name("foods", tests, hold_grammar, drop_grammar);
}
