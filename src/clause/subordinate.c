/* SPDX-License-Identifier: ISC */
/*
 * Where a subordinate clause begins and ends: "when it's done", "because it
 * burns", "which I love".
 */
#include "clause/cutter.h"

/* "stirring it once, let it cool": a number of times. */
static bool
is_one_time(const struct cutter *k, const struct node *n)
{
	const struct node *next = n + 1;

	if (!str_is_z(node_token(&k->m->c, n)->norm, "once"))
		return false;
	return next == k->top->node.v + k->top->node.n || is_raw(k, next, "COMMA") ||
	       is_raw(k, next, "STOP") || is_raw(k, next, "BREAK") ||
	       is_raw(k, next, "OR") || is_raw(k, next, "AND") || is_raw(k, next, "MARK") ||
	       node_is(&k->m->c, next, "VDO");
}

/* "you melt that, and": the object of the verb before it; "make sure that it" is
 * none. */
static bool
is_that_object(const struct cutter *k, const struct node *n)
{
	const struct node *next = n + 1;

	return k->now.kind == CLAUSE_DO && k->now.verb != UINT32_MAX &&
	       n == k->top->node.v + k->now.verb + 1 && is_raw(k, n, "PRON") &&
	       !(next < k->top->node.v + k->top->node.n && is_raw(k, next, "SUBJ"));
}

/* "keep whisking while you pour in half a cup of oil": both are to be done. */
static bool
is_at_once(const struct cutter *k, const struct node *n)
{
	const struct node *end = k->top->node.v + k->top->node.n;
	struct field_nodes f;

	if (!str_is_z(node_token(&k->m->c, n)->norm, "while") || n + 1 == end ||
	    !node_is(&k->m->c, n + 1, "VDO"))
		return false;
	for (n += 2; n < end && (is_raw(k, n, "PREP") || is_raw(k, n, "PARTICLE")); n++)
		;
	return n < end && is_food(k, (uint32_t)(n - k->top->node.v)) &&
	       node_field(&k->m->c, n, "amount", &f);
}

bool
subordinate_starts(const struct cutter *k, const struct node *n)
{
	if (is_one_time(k, n) || is_that_object(k, n) || is_at_once(k, n))
		return false;
	return is_raw(k, n, "UNTIL") || is_raw(k, n, "WHEN") || is_raw(k, n, "COND") ||
	       is_raw(k, n, "BECAUSE") || is_raw(k, n, "REL");
}

/* A comma after its verb, a marker, or an "and" before an instruction. */
bool
subordinate_ends(const struct cutter *k, uint32_t at)
{
	const struct node *n = &k->top->node.v[at];
	const struct node *next = at + 1 < k->top->node.n ? n + 1 : NULL;

	if (is_raw(k, n, "MARK"))
		return true;
	if (is_raw(k, n, "COMMA"))
		return k->absorbed;
	return is_raw(k, n, "AND") && next &&
	       (node_is(&k->m->c, next, "VDO") || node_is(&k->m->c, next, "VNOT") ||
		   (node_is(&k->m->c, next, "VHAVE") &&
		       !(k->until && str_is_z(node_token(&k->m->c, next)->norm, "there"))));
}
