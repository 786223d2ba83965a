/* SPDX-License-Identifier: ISC */
/*
 * The words of a language: forms, the lexemes that they are forms of, and the
 * classes that phrase rules speak of. Made from *.lex; read-only afterwards.
 */
#ifndef TAMIS_LEXICON_H
#define TAMIS_LEXICON_H

#include "base/arena.h"
#include "base/err.h"

enum { CLASS_WORDS = 8, CLASSES_MAX = CLASS_WORDS * 64 };

/* A set of word classes, by number. */
struct classset {
	uint64_t w[CLASS_WORDS];
};

static inline void
classset_add(struct classset *s, unsigned id)
{
	s->w[id / 64] |= (uint64_t)1 << (id % 64);
}

static inline bool
classset_has(const struct classset *s, unsigned id)
{
	return s->w[id / 64] >> (id % 64) & 1;
}

struct attribute {
	struct str key, value; /* a flag has the value "" */
};

/* One line of a .lex file. */
struct lexeme {
	struct str lemma; /* as a recipe prints it */
	struct classset classes;
	struct attribute *attribute;
	size_t attributes;
};

enum form { FORM_BASE, FORM_PLURAL, FORM_S, FORM_ING, FORM_PAST };

struct reading {
	const struct lexeme *lexeme;
	enum form form;
	struct classset classes; /* of this form: ACTION_ING, not ACTION */
};

/* A surface form, folded, words parted by one blank. */
struct entry {
	struct str form;
	struct classset classes; /* of all readings */
	VEC(struct reading) reading;
	uint32_t id;
	uint8_t longest; /* words of the longest entry that starts with this word */
};

struct lexicon {
	struct arena *arena;
	VEC(struct str) class_name; /* by class number */
	/* Open addressing: the number of a class and one; 0 is free. */
	uint16_t class_slot[2 * CLASSES_MAX];
	VEC(struct entry *) entry; /* by id */
	/* Open addressing, a power of two of them; most of what a text asks for is
	 * not there, and the hash tells so without a look at the entry. */
	struct entry_slot {
		uint32_t hash;
		uint32_t entry; /* its id and one; 0 is free */
	} * slot;
	size_t slots;
};

void lexicon_init(struct lexicon *x, struct arena *a);
/* The number of a class, made if new; CLASSES_MAX when there are too many. */
unsigned lexicon_class(struct lexicon *x, struct str name);
/* Of a few letters only. It stands here, like what uses it, because the stages
 * ask for classes by name all the time: the compiler works it out for a name
 * that is written in the source. */
static inline size_t
lexicon_class_hash(struct str name)
{
	const unsigned char *p = (const unsigned char *)name.p;
	size_t n = name.n;

	return n ? n + p[0] * 33u + p[n / 4] * 1049u + p[n / 2] * 277u + p[n - 1] * 41u : 0;
}
/* The slot that holds the class, or the free one where it belongs. */
static inline size_t
lexicon_class_slot(const struct lexicon *x, struct str name)
{
	size_t mask = 2 * CLASSES_MAX - 1, i = lexicon_class_hash(name) & mask;

	while (x->class_slot[i] && !str_is(x->class_name.v[x->class_slot[i] - 1], name))
		i = (i + 1) & mask;
	return i;
}
/* The number of a class that there is: CLASSES_MAX where there is none. */
static inline unsigned
lexicon_class_find(const struct lexicon *x, struct str name)
{
	unsigned slot = x->class_slot[lexicon_class_slot(x, name)];

	return slot ? slot - 1 : CLASSES_MAX;
}
/* NULL when the form (folded) is unknown. */
struct entry *lexicon_find(const struct lexicon *x, struct str form);
/* Finds it or adds it without a reading. */
struct entry *lexicon_entry(struct lexicon *x, struct str form);
/* Adds a form of a lexeme; `classes` are those of the form. */
void lexicon_add(struct lexicon *x, struct str form, struct reading r);
/* Reads one .lex file; name is for messages. */
bool lexicon_read(struct lexicon *x, struct str data, const char *name, struct err *e);

/* Where a word's clitic begins ("don't": 2, "we're": 2); word.n without one.
 * Text and lexicon part words alike. */
size_t lexicon_clitic(struct str word);
/* Words as the lexicon joins them: folded, hyphens and runs of blanks one blank. */
struct str lexicon_key(struct arena *a, struct str words);

/* "" when the lexeme has no such key; a flag gives p != NULL and n 0. */
struct str lexeme_get(const struct lexeme *l, const char *key);
bool lexeme_has(const struct lexeme *l, const char *flag);
/* The first reading of e in a class; NULL where there is none. */
const struct reading *entry_reading(const struct entry *e, unsigned class_id);

#endif
