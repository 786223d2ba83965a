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
	x->slot = arena_array(a, x->slots, struct entry_slot);
}

unsigned
lexicon_class(struct lexicon *x, struct str name)
{
	size_t slot = lexicon_class_slot(x, name);

	if (x->class_slot[slot])
		return x->class_slot[slot] - 1u;
	if (x->class_name.n == CLASSES_MAX)
		return CLASSES_MAX;
	vec_push(x->arena, &x->class_name, arena_str(x->arena, name));
	x->class_slot[slot] = (uint16_t)x->class_name.n;
	return (unsigned)x->class_name.n - 1;
}

/* The slot that holds form, or the free one where it belongs. */
static struct entry_slot *
slot_of(const struct lexicon *x, struct str form, uint32_t hash)
{
	size_t mask = x->slots - 1, i = hash & mask;

	for (; x->slot[i].entry; i = (i + 1) & mask)
		if (x->slot[i].hash == hash &&
		    str_is(x->entry.v[x->slot[i].entry - 1]->form, form))
			break;
	return &x->slot[i];
}

struct entry *
lexicon_find(const struct lexicon *x, struct str form)
{
	const struct entry_slot *s = slot_of(x, form, (uint32_t)str_hash(form));

	return s->entry ? x->entry.v[s->entry - 1] : NULL;
}

static void
double_slots(struct lexicon *x)
{
	const struct entry_slot *old = x->slot;
	size_t slots = x->slots;

	x->slots *= 2;
	x->slot = arena_array(x->arena, x->slots, struct entry_slot);
	for (size_t i = 0; i < slots; i++)
		if (old[i].entry)
			*slot_of(x, x->entry.v[old[i].entry - 1]->form, old[i].hash) =
			    old[i];
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
	uint32_t hash = (uint32_t)str_hash(form);

	if (x->entry.n * 2 >= x->slots)
		double_slots(x);
	e->form = arena_str(x->arena, form);
	e->id = (uint32_t)x->entry.n;
	vec_push(x->arena, &x->entry, e);
	*slot_of(x, e->form, hash) = (struct entry_slot){hash, e->id + 1};
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
