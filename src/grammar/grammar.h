/* SPDX-License-Identifier: ISC */
/*
 * A loaded grammar: words, passes, tables, units. Read-only once open, shared
 * by threads. The only stage that knows how grammar files look.
 */
#ifndef TAMIS_GRAMMAR_H
#define TAMIS_GRAMMAR_H

#include "grammar/pass.h"
#include "grammar/table.h"
#include "grammar/units.h"
#include "tamis.h"

enum { PASSES_MAX = 48 };

struct grammar {
	struct arena arena;
	const char *language;
	struct lexicon lexicon;
	struct rulebook book;
	struct pass pass[PASSES_MAX];
	size_t passes;
	VEC(struct table) table;
	struct units units;
	const struct entry *unknown; /* stands for a word that no list has */
	const struct entry *digits;  /* stands for a number in digits */
};

/* As tamis_grammar_open of tamis.h. */
struct grammar *grammar_open(const char *dir, const char *language, struct err *e);
void grammar_close(struct grammar *g);

/* The field's number, for comparing; the number of fields when unknown. */
unsigned grammar_field(const struct grammar *g, const char *name);
/* The class's number; CLASSES_MAX when no file mentions it. */
static inline unsigned
grammar_class(const struct grammar *g, const char *name)
{
	return lexicon_class_find(&g->lexicon, str_of(name));
}

#endif
