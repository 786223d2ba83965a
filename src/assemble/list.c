/* SPDX-License-Identifier: ISC */
/*
 * Lists of ingredients that are said aloud: "you'll need leeks, potatoes, butter
 * and stock, and that's everything". A run of clauses that name food and do
 * nothing to it, told to be a list by what closes or opens it.
 */
#include "assemble/stepper.h"

/* Foods that make a list, clauses that may close one. */
enum { FOODS_MIN = 4, CLOSER_TOKENS = 9 };

static uint32_t
foods_in(const struct maker *m, const struct clause *q)
{
	const struct level *top = chart_top(&m->c);
	uint32_t n = 0;

	for (uint32_t i = q->beg; i < q->end; i++)
		if (node_is(&m->c, &top->node.v[i], "ING") ||
		    node_is(&m->c, &top->node.v[i], "INGS"))
			n++;
	return n;
}

/* Tokens of the clause in the class. */
static uint32_t
words_in(const struct maker *m, const struct clause *q, const char *class_name)
{
	const struct level *top = chart_top(&m->c);
	uint32_t n = 0;

	for (uint32_t i = top->node.v[q->beg].beg; i < top->node.v[q->end - 1].end; i++)
		n += token_has(m, i, class_name);
	return n;
}

static uint32_t
tokens_in(const struct maker *m, const struct clause *q)
{
	const struct level *top = chart_top(&m->c);

	return top->node.v[q->end - 1].end - top->node.v[q->beg].beg;
}

/* "that's everything", "that's your lot" */
static bool
closes(const struct maker *m, const struct clause *q)
{
	return q->kind == CLAUSE_BE && tokens_in(m, q) <= CLOSER_TOKENS &&
	       foods_in(m, q) == 0 && words_in(m, q, "LISTEND") > 0;
}

/* "and that's it": closes only what was opened as a list. */
static bool
may_close(const struct maker *m, const struct clause *q)
{
	return q->kind == CLAUSE_BE && foods_in(m, q) == 0 &&
	       tokens_in(m, q) <= CLOSER_TOKENS;
}

/* "what you need is", "here are the ingredients" */
static bool
opens(const struct maker *m, const struct clause *q)
{
	return words_in(m, q, "LISTOPEN") > 0 ||
	       (q->kind == CLAUSE_HAVE && words_in(m, q, "NEEDWORD") > 0);
}

static bool
only_names(const struct clause *q)
{
	if (q->other || q->dish < 0 || (q->action && q->kind != CLAUSE_HAVE))
		return false;
	return q->kind == CLAUSE_BARE || q->kind == CLAUSE_HAVE;
}

/* The first clause of the run that ends before `end`. */
static size_t
run_before(const struct maker *m, size_t end)
{
	size_t at = end;

	while (at > 0 && only_names(&m->clause.v[at - 1]) &&
	       m->clause.v[at - 1].dish == m->clause.v[end - 1].dish)
		at--;
	return at;
}

static bool
is_long(const struct maker *m, size_t beg, size_t end)
{
	uint32_t foods = 0;

	for (size_t i = beg; i < end; i++)
		foods += foods_in(m, &m->clause.v[i]);
	return foods >= FOODS_MIN;
}

static bool
opened_within(const struct maker *m, size_t beg, size_t end)
{
	for (size_t i = beg > 2 ? beg - 2 : 0; i < end; i++)
		if (opens(m, &m->clause.v[i]))
			return true;
	return false;
}

/* The first clause that only names food, soon after this one; the number of
 * clauses where there is none. */
static size_t
run_after(const struct maker *m, size_t at)
{
	enum { SOON = 4 };

	for (size_t i = at + 1; i < m->clause.n && i < at + SOON; i++)
		if (only_names(&m->clause.v[i]) && foods_in(m, &m->clause.v[i]))
			return i;
	return m->clause.n;
}

static void
mark_list(bool *listed, size_t beg, size_t end)
{
	for (size_t i = beg; i < end; i++)
		listed[i] = true;
}

/* "Take a pen", "the shopping list": what follows is a list. */
static void
find_opened(const struct maker *m, bool *listed)
{
	for (size_t i = 0; i < m->clause.n; i++) {
		size_t beg, end;

		if (words_in(m, &m->clause.v[i], "LISTOPEN") == 0)
			continue;
		beg = end = run_after(m, i);
		while (end < m->clause.n && only_names(&m->clause.v[end]) &&
		       m->clause.v[end].dish == m->clause.v[beg].dish)
			end++;
		if (is_long(m, beg, end))
			mark_list(listed, beg, end);
	}
}

bool *
lists_spoken(const struct maker *m)
{
	bool *listed = arena_array(m->a, m->clause.n, bool);

	for (size_t i = 1; i < m->clause.n; i++) {
		const struct clause *q = &m->clause.v[i];
		size_t end = i, beg;

		if (!may_close(m, q))
			continue;
		while (end > 0 && may_close(m, &m->clause.v[end - 1]))
			end--;
		if (end == 0)
			continue;
		beg = run_before(m, end);
		if (!is_long(m, beg, end) || !(closes(m, q) || opened_within(m, beg, end)))
			continue;
		mark_list(listed, beg, end);
	}
	find_opened(m, listed);
	return listed;
}
