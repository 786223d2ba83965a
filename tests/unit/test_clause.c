/* SPDX-License-Identifier: ISC */
/*
 * src/clause: where talk is cut into clauses and of what kind each is, what a
 * mention of a food says, and what each measure is for.
 */
#include "../support/amounts.h"
#include "../support/expect.h"
#include "../support/hold.h"
#include "assemble/assemble.h"
#include "clause/maker.h"
#include "read/read.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

struct row {
	const char *talk, *want;
};

static struct maker *
made(struct arena *a, const struct grammar *g, const char *talk)
{
	struct tamis_options o = {.region = "us"};
	struct err e = {0};
	struct script *s =
	    script_read(a, arena_fmt(a, "[0:00] %s\n", talk), "talk.txt", 0, &e);

	assert_non_null(s);
	return assemble_draft(a, g, s, &o);
}

/* The rows whose description is not the one wanted are printed. */
static void
expect_described(const struct grammar *g, const struct row *row, size_t rows,
    void (*describe)(struct buf *b, const struct maker *m))
{
	size_t wrong = 0;

	for (size_t i = 0; i < rows; i++) {
		struct arena a;
		struct buf b;

		arena_init(&a);
		b = buf_in(&a);
		describe(&b, made(&a, g, row[i].talk));
		if (!str_is_z(buf_str(&b), row[i].want)) {
			print_error("%s\n  gave  %.*s\n  not   %s\n", row[i].talk, (int)b.n,
			    b.n ? b.v : "", row[i].want);
			wrong++;
		}
		arena_release(&a);
	}
	assert_int_equal(wrong, 0);
}

/* ---- where talk is cut ---------------------------------------------------- */

/* "do whisk: whisk the eggs | go: in goes the flour" */
static void
describe_clauses(struct buf *b, const struct maker *m)
{
	static const char *const kind[] = {
	    [CLAUSE_DO] = "do",
	    [CLAUSE_GO] = "go",
	    [CLAUSE_NOT] = "not",
	    [CLAUSE_HAVE] = "have",
	    [CLAUSE_BE] = "be",
	    [CLAUSE_CHAT] = "chat",
	    [CLAUSE_BARE] = "bare",
	};
	const struct level *top = chart_top(&m->c);

	for (size_t i = 0; i < m->clause.n; i++) {
		const struct clause *q = &m->clause.v[i];
		struct span text = {node_text(&m->c, &top->node.v[q->beg]).beg,
		    node_text(&m->c, &top->node.v[q->end - 1]).end};
		struct str words = words_of(m, text);

		buf_fmt(b, "%s%s", i ? " | " : "", kind[q->kind]);
		if (q->action)
			buf_fmt(b, " %.*s", (int)q->action->lemma.n, q->action->lemma.p);
		buf_fmt(b, ": %.*s", (int)words.n, words.p);
	}
}

static void
talk_is_cut_at_its_verbs(void **state)
{
	static const struct row rows[] = {
	    {"Whisk the eggs and fold in the flour.",
		"do whisk: Whisk the eggs | do fold in: and fold in the flour"},
	    {"You'll need two eggs. In goes the milk.",
		"have: You'll need two eggs | go: In goes the milk"},
	    {"Don't stir it, just let it sit.",
		"not stir: Don't stir it | do let: , just let it sit"},
	    {"Cook it until the onions are soft and add the stock.",
		"do cook: Cook it until the onions are soft | do add: and add the stock"},
	    {"My aunt adds sugar. I love that.",
		"chat add: My aunt adds sugar | chat: I love that"},
	    {"When it's golden, take it out.",
		"do take out: When it's golden, take it out"},
	    {"Lid on, ten minutes, then pour the water off.",
		"bare: Lid on, ten minutes | do pour off: , then pour the water off"},
	    {"Brush it over the fish, four hundred degrees, twelve minutes.",
		"do brush: Brush it over the fish, | bare: four hundred degrees, twelve "
		"minutes"},
	};

	expect_described(*state, rows, COUNT(rows), describe_clauses);
}

/* ---- what a mention says -------------------------------------------------- */

static void
put_mention(struct buf *b, const struct mention *x)
{
	if (b->n)
		buf_put_z(b, "; ");
	if (x->amount.present) {
		amounts_put(b, &x->amount);
		buf_put_char(b, ' ');
	}
	if (x->size.known) {
		buf_put_char(b, '[');
		amounts_put(b, &x->size);
		buf_put_z(b, "] ");
	}
	buf_fmt(b, "%s%.*s", x->share ? "of the " : "", (int)x->item.n, x->item.p);
	if (x->preparation.n)
		buf_fmt(b, " (%.*s)", (int)x->preparation.n, x->preparation.p);
	if (x->note.n)
		buf_fmt(b, ", %.*s", (int)x->note.n, x->note.p);
	if (x->has_alternative)
		buf_fmt(b, " or %.*s", (int)x->alternative.item.n, x->alternative.item.p);
	if (x->corrected) {
		buf_put_z(b, ", not ");
		amounts_put(b, &x->first);
	}
	buf_put_z(b, x->optional ? " if liked" : "");
	buf_put_z(b, x->more ? " more" : "");
}

static void
describe_mentions(struct buf *b, const struct maker *m)
{
	const struct level *top = chart_top(&m->c);
	struct mention x[8];

	for (size_t i = 0; i < top->node.n; i++) {
		const struct node *n = &top->node.v[i];
		size_t count = 0;

		if (node_is(&m->c, n, "ING") || node_is(&m->c, n, "INGS"))
			count = mentions_of(m, n, x, COUNT(x));
		for (size_t k = 0; k < count; k++)
			put_mention(b, &x[k]);
	}
}

static void
a_mention_says_what_is_bought_and_how_it_is_prepared(void **state)
{
	static const struct row rows[] = {
	    {"Two large onions, finely chopped.", "2 large onions (finely chopped)"},
	    {"Three cloves of garlic, crushed.", "3 clove garlic (crushed)"},
	    {"A 14 ounce can of tomatoes.", "1 can [14 ounce] tomatoes"},
	    {"Two 8 ounce steaks.", "2 [8 ounce] steaks"},
	    {"A teaspoon each of cumin and coriander.",
		"1 teaspoon cumin; 1 teaspoon coriander"},
	    {"The juice of two lemons.", "2 lemons (juiced)"},
	    {"Two tablespoons of the juice of a lemon.", "2 tablespoon lemon juice"},
	    {"A teaspoon of zest of an orange.", "1 teaspoon orange zest"},
	    {"Half the butter.", "of the butter"},
	    {"Some more stock.", "? stock more"},
	    {"Parsley for garnish.", "parsley, for garnish"},
	};

	expect_described(*state, rows, COUNT(rows), describe_mentions);
}

static void
a_mention_says_what_may_be_left_out_taken_instead_or_put_right(void **state)
{
	static const struct row rows[] = {
	    {"A handful of walnuts, optional.", "1 handful walnuts if liked"},
	    {"A handful of walnuts, which is optional.", "1 handful walnuts if liked"},
	    {"A pinch of chili flakes if you like it hot.",
		"1 pinch chili flakes if liked"},
	    {"Water if needed.", "water, if needed"},
	    {"Maybe a bay leaf.", "1 bay leaf if liked"},
	    {"Two tablespoons of butter or lard.", "2 tablespoon butter or lard"},
	    {"A hundred grams of barley, sorry, a hundred and fifty grams.",
		"150 gram barley, not 100 gram"},
	};

	expect_described(*state, rows, COUNT(rows), describe_mentions);
}

/* ---- what measures are for ------------------------------------------------ */

static void
describe_roles(struct buf *b, const struct maker *m)
{
	static const char *const role[] = {
	    [ROLE_NONE] = "none",
	    [ROLE_APPLIANCE] = "appliance",
	    [ROLE_OIL] = "oil",
	    [ROLE_LIQUID] = "liquid",
	    [ROLE_INTERNAL] = "inside",
	    [ROLE_AMBIENT] = "room",
	    [ROLE_STEP] = "step",
	    [ROLE_REST] = "rest",
	    [ROLE_CLAIM] = "claim",
	    [ROLE_OTHER] = "other",
	};

	for (size_t i = 0; i < m->measure.n; i++) {
		const struct measure *x = &m->measure.v[i];

		if (x->kind != MEASURE_TEMPERATURE && x->kind != MEASURE_DURATION)
			continue;
		buf_put_z(b, b->n ? "; " : "");
		amounts_put(b, &x->value);
		buf_fmt(b, " %s", role[x->role]);
	}
}

static void
temperatures_and_times_have_a_role(void **state)
{
	static const struct row rows[] = {
	    {"Heat the oven to 350 and bake it for twenty minutes.",
		"350 fahrenheit appliance; 20 minute step"},
	    {"Get the oil to 350 and fry the chicken.", "350 fahrenheit oil"},
	    {"Cook the chicken until it's 165 in the middle.", "165 fahrenheit inside"},
	    {"Let it rest for ten minutes.", "10 minute rest"},
	    {"Warm the milk to 110 degrees.", "110 fahrenheit liquid"},
	    {"It's done in forty minutes, start to finish.", "40 minute claim"},
	    {"Chill it for two hours.", "2 hour rest"},
	};

	expect_described(*state, rows, COUNT(rows), describe_roles);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(talk_is_cut_at_its_verbs),
	    cmocka_unit_test(a_mention_says_what_is_bought_and_how_it_is_prepared),
	    cmocka_unit_test(
		a_mention_says_what_may_be_left_out_taken_instead_or_put_right),
	    cmocka_unit_test(temperatures_and_times_have_a_role),
	};

	return cmocka_run_group_tests_name("clause", tests, hold_grammar, drop_grammar);
}
