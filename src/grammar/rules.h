/* SPDX-License-Identifier: ISC */
/*
 * Phrase rules as read from *.gram: passes in order, each with rules whose
 * patterns are flat lists of operations over word classes and quoted words.
 * grammars/README.md documents the language. Only grammar/ includes this.
 */
#ifndef TAMIS_RULES_H
#define TAMIS_RULES_H

#include "base/buf.h"
#include "grammar/lexicon.h"

enum op_kind {
	OP_OPEN,       /* ( */
	OP_CLOSE,      /* ) */
	OP_OR,         /* | */
	OP_REPEAT,     /* text: ? * + {m,n} and their lazy forms */
	OP_FIELD,      /* name:( */
	OP_AHEAD,      /* &( */
	OP_NOT_AHEAD,  /* !( */
	OP_BEHIND,     /* &<( */
	OP_NOT_BEHIND, /* !<( */
	OP_KEEP,       /* ^: what was matched before it is context */
	OP_ATOM        /* one node: classes or a word */
};

/* What one node must be: of any class in `any`, all in `all` and none in
 * `none`, or the word. `everything` is <ANY>. */
struct atom {
	bool everything;
	struct classset any, all, none;
	struct entry *word;
};

struct op {
	enum op_kind kind;
	struct str text; /* of a repeat, and of classes: "<FOOD -ACTION>" */
	unsigned field;  /* of OP_FIELD: number in grammar's field names */
	struct atom atom;
};

struct example {
	bool positive;
	struct str text, value; /* value empty: only the match matters */
	uint32_t line;
};

struct rule {
	struct str name;
	bool skips;      /* output "-": what it matches is passed over as it is */
	unsigned output; /* class of the node it makes */
	struct attribute *attribute;
	size_t attributes;
	VEC(struct op) op;
	VEC(struct example) example;
	const char *file;
	uint32_t line;
};

struct rulepass {
	struct str name;
	struct str from; /* the pass whose level it reads, aside of the others; or "" */
	VEC(struct rule *) rule;
};

struct rulebook {
	struct lexicon *lexicon;
	VEC(struct str) field; /* names by number */
	VEC(struct rulepass) pass;
};

/* Where the item that begins with operation i ends: the operation that closes a
 * look (&, !), else i itself. */
size_t rule_item_end(const struct rule *r, size_t i);
/* The item that begins with operation i, as a .gram file writes it. */
void rule_put_item(struct buf *b, const struct rule *r, size_t i);

/* Reads one .gram file; passes and rules are added in file order. */
bool rules_read(struct rulebook *b, struct str data, const char *name, struct err *e);

#endif
