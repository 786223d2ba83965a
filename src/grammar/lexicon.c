/* SPDX-License-Identifier: ISC */
/*
 * The lexicon's store: classes by name, entries by hashed form.
 */
#include "grammar/lexicon.h"

#include "base/buf.h"
#include "base/fold.h"

void
lexicon_init(struct lexicon *x, struct arena *a)
{
	*x = (struct lexicon){.arena = a, .slots = 1 << 12};
	x->slot = arena_array(a, x->slots, struct entry *);
}

/* The slot that holds the class, or the free one where it belongs. */
static size_t
class_slot_of(const struct lexicon *x, struct str name)
{
	size_t mask = 2 * CLASSES_MAX - 1, i = (size_t)str_hash(name) & mask;

	while (x->class_slot[i] && !str_is(x->class_name.v[x->class_slot[i] - 1], name))
		i = (i + 1) & mask;
	return i;
}

unsigned
lexicon_class_find(const struct lexicon *x, struct str name)
{
	unsigned slot = x->class_slot[class_slot_of(x, name)];

	return slot ? slot - 1 : CLASSES_MAX;
}

unsigned
lexicon_class(struct lexicon *x, struct str name)
{
	size_t slot = class_slot_of(x, name);

	if (x->class_slot[slot])
		return x->class_slot[slot] - 1u;
	if (x->class_name.n == CLASSES_MAX)
		return CLASSES_MAX;
	vec_push(x->arena, &x->class_name, arena_str(x->arena, name));
	x->class_slot[slot] = (uint16_t)x->class_name.n;
	return (unsigned)x->class_name.n - 1;
}

/* The slot that holds form, or the free one where it belongs. */
static size_t
slot_of(const struct lexicon *x, struct str form)
{
	size_t mask = x->slots - 1, i = (size_t)str_hash(form) & mask;

	while (x->slot[i] && !str_is(x->slot[i]->form, form))
		i = (i + 1) & mask;
	return i;
}

struct entry *
lexicon_find(const struct lexicon *x, struct str form)
{
	return x->slot[slot_of(x, form)];
}

static void
double_slots(struct lexicon *x)
{
	x->slots *= 2;
	x->slot = arena_array(x->arena, x->slots, struct entry *);
	for (size_t i = 0; i < x->entry.n; i++)
		x->slot[slot_of(x, x->entry.v[i]->form)] = x->entry.v[i];
}

static uint8_t
count_words(struct str form)
{
	uint8_t n = 1;

	for (size_t i = 0; i < form.n; i++)
		n += form.p[i] == ' ';
	return n;
}

static struct entry *
add_entry(struct lexicon *x, struct str form)
{
	struct entry *e = arena_new(x->arena, struct entry);

	if (x->entry.n * 2 >= x->slots)
		double_slots(x);
	e->form = arena_str(x->arena, form);
	e->id = (uint32_t)x->entry.n;
	x->slot[slot_of(x, form)] = e;
	vec_push(x->arena, &x->entry, e);
	return e;
}

struct entry *
lexicon_entry(struct lexicon *x, struct str form)
{
	struct entry *e = lexicon_find(x, form), *first;
	uint8_t words = count_words(form);

	if (!e)
		e = add_entry(x, form);
	first =
	    words > 1 ? lexicon_entry(x, str_cut(form, 0, str_find_char(form, ' '))) : e;
	if (first->longest < words)
		first->longest = words;
	return e;
}

void
lexicon_add(struct lexicon *x, struct str form, struct reading r)
{
	struct entry *e = lexicon_entry(x, form);

	for (size_t i = 0; i < CLASS_WORDS; i++)
		e->classes.w[i] |= r.classes.w[i];
	vec_push(x->arena, &e->reading, r);
}

size_t
lexicon_clitic(struct str word)
{
	size_t at = str_find_char(word, '\'');

	if (word.n > 3 && str_ends(word, STR("n't")))
		return word.n - 3;
	if (str_is(word, STR("n't")))
		return word.n;
	return at == 0 ? word.n : at;
}

/* One blank-separated word of a phrase: parted at its clitic. */
static void
put_word(struct buf *b, struct str word)
{
	size_t at = lexicon_clitic(word);

	if (b->n)
		buf_put_char(b, ' ');
	buf_put(b, str_cut(word, 0, at));
	if (at < word.n && word.n - at > 1) {
		buf_put_char(b, ' ');
		buf_put(b, str_cut(word, at, word.n));
	}
}

struct str
lexicon_key(struct arena *a, struct str words)
{
	struct str rest = arena_str(a, fold_word(a, str_trim(words)));
	struct buf b = buf_in(a);

	for (size_t i = 1; i + 1 < rest.n; i++)
		if (rest.p[i] == '-')
			((char *)rest.p)[i] = ' ';
	if (rest.n == 0)
		return rest;
	while (rest.p) {
		struct str word = str_next(&rest, ' ');

		if (word.n)
			put_word(&b, word);
	}
	return buf_str(&b);
}

struct str
lexeme_get(const struct lexeme *l, const char *key)
{
	for (size_t i = 0; l && i < l->attributes; i++)
		if (str_is_z(l->attribute[i].key, key))
			return l->attribute[i].value;
	return (struct str){NULL, 0};
}

bool
lexeme_has(const struct lexeme *l, const char *flag)
{
	return lexeme_get(l, flag).p != NULL;
}

const struct reading *
entry_reading(const struct entry *e, unsigned class_id)
{
	for (size_t i = 0; e && class_id < CLASSES_MAX && i < e->reading.n; i++)
		if (classset_has(&e->reading.v[i].classes, class_id))
			return &e->reading.v[i];
	return NULL;
}
