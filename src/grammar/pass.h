/* SPDX-License-Identifier: ISC */
/*
 * A compiled pass: every rule of it in one PCRE2 pattern over tag bytes. A tag
 * stands for all nodes that look alike to this pass's rules.
 */
#ifndef TAMIS_PASS_H
#define TAMIS_PASS_H

#include "grammar/rules.h"

struct group {
	unsigned field;
};

struct compiled_rule {
	const struct rule *rule;
	uint32_t first_group; /* number of its first capture group */
	VEC(struct group) group;
};

struct pcre2_real_code_8;

struct pass {
	struct str name, from;
	struct pcre2_real_code_8 *code;
	VEC(struct compiled_rule) rule;
	uint8_t *tag_of_entry;             /* by entry id */
	uint8_t tag_of_class[CLASSES_MAX]; /* of a node that a rule made */
	size_t tags;                       /* distinct ones in use */
};

/* Compiles one pass; the entries of the lexicon are all in by now. */
bool pass_compile(
    struct pass *p, const struct rulepass *from, struct lexicon *x, struct err *e);
/* Compiles one rule of a grammar whose passes compiled, as a pass of its own that
 * pass_follow() can follow; allocated in the arena. */
void pass_compile_rule(
    struct pass *p, struct rule *r, const struct lexicon *x, struct arena *a);
void pass_release(struct pass *p);

struct field_span {
	unsigned field;
	struct span span; /* in tags */
};

/* What a rule matched. */
struct rule_match {
	const struct rule *rule;
	struct span span;
	struct field_span *field; /* only those that took part */
	size_t fields;
};

/* Scratch of one thread for matching. */
struct matcher;
struct matcher *matcher_new(void);
void matcher_free(struct matcher *m);

/* Asked of a match of a rule that has check=, least= or carry=: where it says
 * false, the next way to match is tried, and then the next rule. */
struct judge {
	bool (*accepts)(void *state, const struct rule_match *m);
	void *state;
};

/* The first match in tags[from..n); false when there is none. Fields are
 * allocated in the arena. A match that runs over PCRE2's limits is none. */
struct subject {
	const uint8_t *tag;
	size_t n, from;
	struct judge judge; /* accepts NULL: everything holds */
};
bool pass_match(const struct pass *p, struct matcher *m, struct subject s, struct arena *a,
    struct rule_match *out);

/* How far a rule gets from one tag on. */
struct reach {
	bool fits;            /* the pattern does, and the judge took it */
	bool refused;         /* the pattern did, and the judge did not take it */
	struct span span;     /* the tags it took; where it does not fit, until it stuck */
	VEC(uint32_t) wanted; /* the operations looked for where it stuck */
};

/* Follows the one rule of p, made by pass_compile_rule(), from tag[from] on. */
void pass_follow(const struct pass *p, struct matcher *m, struct subject s, struct arena *a,
    struct reach *out);

#endif
