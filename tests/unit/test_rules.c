/* SPDX-License-Identifier: ISC */
/*
 * The examples that stand beside each rule of the grammar. "+ TEXT => VALUE":
 * the rule makes one node of the whole text, worth this. "- TEXT": the rule
 * makes nothing of it. [Brackets] mark the part that is meant in a longer text.
 */
#include "../support/amounts.h"
#include "../support/hold.h"
#include "scan/measure.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

/* One example, read by the grammar. */
struct trial {
	const struct grammar *g;
	const struct rule *rule;
	const struct example *example;
	size_t pass;
	struct arena arena;
	struct script script;
	struct cue cue;
	struct span meant; /* of the script's text */
	struct chart chart;
};

/* Takes the brackets out of the example's text. */
static void
set_text(struct trial *t)
{
	struct buf b = buf_in(&t->arena);
	struct str s = t->example->text;
	bool marked = false;

	for (size_t i = 0; i < s.n; i++) {
		if (s.p[i] == '[') {
			t->meant.beg = (uint32_t)b.n;
			marked = true;
		} else if (s.p[i] == ']') {
			t->meant.end = (uint32_t)b.n;
		} else {
			buf_put_char(&b, s.p[i]);
		}
	}
	if (!marked)
		t->meant = (struct span){0, (uint32_t)b.n};
	t->script.text = buf_str(&b);
	t->cue = (struct cue){.kind = CUE_SPEECH, .text = {0, (uint32_t)b.n}};
	t->script.cue = &t->cue;
	t->script.cues = 1;
}

static void
trial_init(struct trial *t, const struct rule *r, const struct example *x)
{
	t->rule = r;
	t->example = x;
	arena_init(&t->arena);
	t->script = (struct script){0};
	set_text(t);
	chart_make(&t->chart, t->g, &t->script, &t->arena);
}

/* The node that the rule made of the words meant, or for a "-" example of any
 * of them; NULL when there is none. */
static const struct node *
find_node(const struct trial *t)
{
	const struct level *l = &t->chart.level[t->pass + 1];

	for (size_t i = 0; i < l->node.n; i++) {
		const struct node *n = &l->node.v[i];
		struct span s = node_text(&t->chart, n);

		if (n->made == RAW || t->chart.made.v[n->made].rule != t->rule)
			continue;
		if (t->example->positive ? s.beg == t->meant.beg && s.end == t->meant.end
					 : s.beg < t->meant.end && t->meant.beg < s.end)
			return n;
	}
	return NULL;
}

static void
put_dims(struct buf *b, const struct said *side, size_t n)
{
	for (size_t i = 0; i < n; i++) {
		if (i)
			buf_put_z(b, " by ");
		amounts_put(b, &side[i].value);
	}
}

static struct str
value_of(struct trial *t, const struct node *n)
{
	struct buf b = buf_in(&t->arena);
	struct said said, side[DIMS_MAX];
	struct quantity q;
	size_t sides = measure_dims(&t->chart, "us", n, side);

	if (sides)
		put_dims(&b, side, sides);
	else if (measure_of(&t->chart, "us", n, &said))
		amounts_put(&b, &said.value);
	else if (value_number(&t->chart, n, &q))
		amounts_put_range(&b, q.min, q.max);
	return buf_str(&b);
}

/* The nodes of the pass, to see what came about in place of the rule's. */
static void
put_level(struct trial *t, struct buf *b)
{
	const struct level *l = &t->chart.level[t->pass + 1];

	for (size_t i = 0; i < l->node.n; i++) {
		const struct node *n = &l->node.v[i];
		struct span s = node_text(&t->chart, n);
		struct str words = str_cut(t->script.text, s.beg, s.end);

		buf_fmt(b, " %.*s", (int)words.n, words.p);
		if (n->made != RAW) {
			struct str name = t->chart.made.v[n->made].rule->name;

			buf_fmt(b, "<%.*s>", (int)name.n, name.p);
		}
	}
}

static bool
complain(struct trial *t, struct str got)
{
	struct buf b = buf_in(&t->arena);
	const struct example *x = t->example;

	put_level(t, &b);
	print_error("%s:%u: %.*s: %c %.*s => %.*s, not \"%.*s\":%.*s\n", t->rule->file,
	    x->line, (int)t->rule->name.n, t->rule->name.p, x->positive ? '+' : '-',
	    (int)x->text.n, x->text.p, (int)x->value.n, x->value.p, (int)got.n, got.p,
	    (int)b.n, b.v);
	return false;
}

static bool
example_holds(struct trial *t)
{
	const struct node *n = find_node(t);
	struct str got;

	if (!t->example->positive)
		return !n || complain(t, STR("a match"));
	if (!n)
		return complain(t, STR("no match"));
	got = value_of(t, n);
	return !t->example->value.n || str_is(got, t->example->value) || complain(t, got);
}

static size_t
rule_failures(struct trial *t, const struct rule *r)
{
	size_t failed = 0;

	for (size_t i = 0; i < r->example.n; i++) {
		trial_init(t, r, &r->example.v[i]);
		failed += !example_holds(t);
		arena_release(&t->arena);
	}
	return failed;
}

static void
every_example_holds(void **state)
{
	struct trial t = {.g = *state};
	size_t failed = 0;

	for (; t.pass < t.g->passes; t.pass++) {
		const struct rulepass *p = &t.g->book.pass.v[t.pass];

		for (size_t i = 0; i < p->rule.n; i++)
			failed += rule_failures(&t, p->rule.v[i]);
	}
	assert_int_equal(failed, 0);
}

static bool
has_both(const struct rule *r)
{
	bool plus = false, minus = false;

	for (size_t i = 0; i < r->example.n; i++)
		*(r->example.v[i].positive ? &plus : &minus) = true;
	return plus && minus;
}

static void
every_rule_has_examples_of_both_kinds(void **state)
{
	const struct grammar *g = *state;
	size_t bare = 0;

	for (size_t i = 0; i < g->book.pass.n; i++)
		for (size_t k = 0; k < g->book.pass.v[i].rule.n; k++) {
			const struct rule *r = g->book.pass.v[i].rule.v[k];

			if (r->skips || has_both(r))
				continue;
			print_error("%s:%u: %.*s lacks a + or a - example\n", r->file,
			    r->line, (int)r->name.n, r->name.p);
			bare++;
		}
	assert_int_equal(bare, 0);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(every_example_holds),
	    cmocka_unit_test(every_rule_has_examples_of_both_kinds),
	};

	return cmocka_run_group_tests_name("rules", tests, hold_grammar, drop_grammar);
}
