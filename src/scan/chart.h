/* SPDX-License-Identifier: ISC */
/*
 * The chart: a script's tokens, and above them one level of nodes per pass of
 * the grammar. Where a rule matched, the level above has one node in place of
 * the nodes that it matched. The top level is what `assemble` reads.
 */
#ifndef TAMIS_CHART_H
#define TAMIS_CHART_H

#include "scan/token.h"

enum { RAW = -1 };

/* One token (made RAW), or what a rule made of a run of nodes below. */
struct node {
	uint32_t beg, end; /* tokens */
	int32_t made;      /* index into chart.made, or RAW */
};

struct level {
	VEC(struct node) node;
};

/* A rule that matched: its fields are ranges of nodes at `level`. */
struct made {
	const struct rule *rule;
	uint32_t level;
	struct span nodes; /* at `level` */
	struct field_span *field;
	size_t fields;
	uint8_t slot; /* of the node class, see marks */
};

struct chart {
	const struct grammar *g;
	const struct script *script;
	struct arena *arena;
	struct tokens tokens;
	struct level level[PASSES_MAX + 1]; /* 0: the tokens */
	size_t levels;
	size_t top; /* the level of the last pass that is not aside */
	VEC(struct made) made;
};

/* Runs all passes. Everything is allocated in the arena. */
void chart_make(
    struct chart *c, const struct grammar *g, const struct script *s, struct arena *a);

/* The number of the level that a pass reads. */
uint32_t chart_read_by(const struct chart *c, size_t pass);

/* Tokens to follow a rule from. */
struct follower {
	struct matcher *matcher;
	const uint32_t *token;
	size_t n;
	bool *begins;        /* for each: a node of the level that is read begins there */
	struct reach *reach; /* for each that does: in nodes of that level */
};

/* Follows a rule of the pass, compiled alone, from each token; fills `begins` and
 * `reach`. The chart is as before afterwards. */
void chart_follow(
    struct chart *c, size_t pass, const struct pass *alone, struct follower *f);

/* The level that all passes are done on. */
const struct level *chart_top(const struct chart *c);
/* The level that a pass made; NULL when there is no such pass. */
const struct level *chart_level(const struct chart *c, const char *pass);

/* The node of the level that holds a token; NULL past the last. Logarithmic. */
const struct node *level_at(const struct level *l, uint32_t token);

/* True where the node was made with this output class. */
static inline bool
node_is(const struct chart *c, const struct node *n, const char *class_name)
{
	const struct made *m = n->made == RAW ? NULL : &c->made.v[n->made];

	return m && str_is_z(c->g->lexicon.class_name.v[m->rule->output], class_name);
}
/* True where the node is a single token that has the class (RAW), or was made
 * with it. */
static inline bool
node_has(const struct chart *c, const struct node *n, const char *class_name)
{
	unsigned id;

	if (n->made != RAW)
		return node_is(c, n, class_name);
	id = grammar_class(c->g, class_name);
	return id < CLASSES_MAX &&
	       classset_has(&c->tokens.token.v[n->beg].entry->classes, id);
}
/* The rule's attribute; "" (p NULL) without. */
struct str node_attribute(const struct chart *c, const struct node *n, const char *key);
/* The first range of the field, in nodes of *level; false when it took no part. */
struct field_nodes {
	const struct node *v;
	size_t n;
};
bool node_field(const struct chart *c, const struct node *n, const char *field,
    struct field_nodes *out);
/* The single token of a raw node. */
const struct token *node_token(const struct chart *c, const struct node *n);
/* Bytes of script.text from the first token to the last. */
struct span node_text(const struct chart *c, const struct node *n);
/* The first reading in the class among the node's tokens; NULL without. */
const struct reading *node_reading(
    const struct chart *c, const struct node *n, const char *class_name);

#endif
