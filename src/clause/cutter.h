/* SPDX-License-Identifier: ISC */
/*
 * What the files that cut clauses share: clauses.c, which cuts at verbs and at the
 * ends of sentences, spell.c, which cuts at settings and times, and
 * subordinate.c, which tells what is not cut.
 */
#ifndef TAMIS_CUTTER_H
#define TAMIS_CUTTER_H

#include "clause/maker.h"

struct cutter {
	struct maker *m;
	const struct level *top;
	struct clause now;
	bool open;      /* `now` holds something */
	bool absorbing; /* a subordinate clause is under way */
	bool absorbed;  /* it has had its verb */
	bool until;     /* it is an "until" */
	bool sentence;  /* the next clause begins a sentence */
};

static inline bool
is_raw(const struct cutter *k, const struct node *n, const char *class_name)
{
	return n->made == RAW && node_has(&k->m->c, n, class_name);
}

static inline bool
is_food(const struct cutter *k, uint32_t at)
{
	return at < k->top->node.n && (node_is(&k->m->c, &k->top->node.v[at], "ING") ||
					  node_is(&k->m->c, &k->top->node.v[at], "INGS"));
}

/* clauses.c: is the node a verb, and of what kind of clause? */
bool clause_verb_kind(const struct chart *c, const struct node *n, enum clause_kind *kind);
/* subordinate.c: does a clause that is no instruction of its own begin with the node,
 * and does the one under way end there? */
bool subordinate_starts(const struct cutter *k, const struct node *n);
bool subordinate_ends(const struct cutter *k, uint32_t at);
/* spell.c: does a spell of heat or of time begin within the open clause with the setting
 * or the time at node `at`, said by itself: "brush it over the fish, twelve
 * minutes"? Then *from is its first node, which may stand before `at`. */
bool spell_starts(const struct cutter *k, uint32_t at, uint32_t *from);
/* Does a list of measured foods begin at node `at`, after a verb that has all it
 * wants: "don't froth it, a little oil in the square pan"? */
bool spell_lists(const struct cutter *k, uint32_t at, uint32_t *from);

#endif
