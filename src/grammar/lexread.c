/* SPDX-License-Identifier: ISC */
/*
 * Reads *.lex files into the lexicon: one entry a line, with the defaults of
 * the last line that began with '@'. grammars/README.md has the format.
 *
 *     @ FOOD noun group=herb
 *     bay leaf = bay : plural=leaves
 */
#include "grammar/inflect.h"
#include "grammar/lexicon.h"

enum { ATTRIBUTES_MAX = 24 };

/* What a line gives its entry: classes and attributes. */
struct marks {
	struct classset classes;
	struct attribute attribute[ATTRIBUTES_MAX];
	size_t attributes;
};

struct reader {
	struct lexicon *x;
	const char *name;
	uint32_t line;
	struct marks marks; /* of the last '@' */
	struct err *e;
};

static bool
fail(struct reader *r, const char *line, const char *at, const char *expected)
{
	struct err_place place = {r->line, (uint32_t)(at - line) + 1};

	return err_set_at(r->e, r->name, place, "expected %s", expected);
}

static void
set_attribute(struct marks *m, struct str key, struct str value)
{
	size_t i = 0;

	while (i < m->attributes && !str_is(m->attribute[i].key, key))
		i++;
	m->attribute[i] = (struct attribute){key, value};
	if (i == m->attributes)
		m->attributes++;
}

static bool
read_mark(struct reader *r, struct marks *m, struct str word)
{
	size_t eq = str_find_char(word, '=');
	unsigned id;

	if (is_upper(word.p[0])) {
		id = lexicon_class(r->x, word);
		if (id < CLASSES_MAX)
			classset_add(&m->classes, id);
		return id < CLASSES_MAX;
	}
	if (m->attributes == ATTRIBUTES_MAX)
		return false;
	set_attribute(m, arena_str(r->x->arena, str_cut(word, 0, eq)),
	    eq < word.n ? arena_str(r->x->arena, str_cut(word, eq + 1, word.n)) : STR(""));
	return true;
}

static bool
read_marks(struct reader *r, struct marks *m, struct str rest, const char *line)
{
	while (rest.p) {
		struct str word = str_next(&rest, ' ');

		if (word.n && !read_mark(r, m, word))
			return fail(
			    r, line, word.p, "no more classes or attributes than fit");
	}
	return true;
}

static const char *
value_of(const struct lexeme *l, const char *key, struct str *out)
{
	*out = lexeme_get(l, key);
	return out->n ? out->p : NULL;
}

/* Every class X of the lexeme as X_<suffix>; the others stay away. */
static struct classset
suffixed(struct lexicon *x, const struct classset *from, const char *suffix)
{
	struct classset to = {{0}};
	size_t known = x->class_name.n;

	for (unsigned i = 0; i < known; i++)
		if (classset_has(from, i)) {
			struct str c = x->class_name.v[i];
			struct str name =
			    arena_fmt(x->arena, "%.*s_%s", (int)c.n, c.p, suffix);
			unsigned id = lexicon_class(x, name);

			if (id < CLASSES_MAX)
				classset_add(&to, id);
		}
	return to;
}

/* key, with the word at [at, at + n) put in place of its own */
static struct str
with_word(struct arena *a, struct str key, struct span word, struct str form)
{
	return arena_fmt(a, "%.*s%.*s%.*s", (int)word.beg, key.p, (int)form.n, form.p,
	    (int)(key.n - word.end), key.p + word.end);
}

static void
add_plural(struct lexicon *x, struct str key, const struct lexeme *l)
{
	struct span word = {0, (uint32_t)key.n};
	struct str form;

	for (uint32_t i = 0; i < key.n; i++)
		if (key.p[i] == ' ')
			word.beg = i + 1;
	if (!value_of(l, "plural", &form))
		form = inflect_plural(x->arena, str_cut(key, word.beg, word.end));
	form = lexicon_key(x->arena, form);
	lexicon_add(x, with_word(x->arena, key, word, form),
	    (struct reading){l, FORM_PLURAL, l->classes});
}

/* The word of a phrase that is inflected: the last part of its first word
 * ("deep-fry", "bring to the boil"). The key has blanks for hyphens. */
static struct span
verb_word(struct str form, struct str key)
{
	struct str first = str_cut(form, 0, str_find_char(form, ' '));
	struct span word = {0, 0};

	for (size_t i = 0; i < first.n; i++)
		if (first.p[i] == '-')
			word.beg +=
			    1 + (uint32_t)str_find_char(str_cut(key, word.beg, key.n), ' ');
	word.end = word.beg + (uint32_t)str_find_char(str_cut(key, word.beg, key.n), ' ');
	return word;
}

static void
add_verb(struct lexicon *x, struct str form, struct str key, const struct lexeme *l)
{
	struct span word = verb_word(form, key);
	struct str base = str_cut(key, word.beg, word.end), ing, past, part, s;
	struct classset ings = suffixed(x, &l->classes, "ING");
	struct classset eds = suffixed(x, &l->classes, "ED");
	struct classset esses = suffixed(x, &l->classes, "S");

	if (!value_of(l, "ing", &ing))
		ing = inflect_ing(x->arena, base);
	if (!value_of(l, "past", &past))
		past = inflect_past(x->arena, base);
	if (!value_of(l, "part", &part))
		part = past;
	if (!value_of(l, "s", &s))
		s = inflect_s(x->arena, base);
	lexicon_add(
	    x, with_word(x->arena, key, word, s), (struct reading){l, FORM_S, esses});
	lexicon_add(
	    x, with_word(x->arena, key, word, ing), (struct reading){l, FORM_ING, ings});
	lexicon_add(
	    x, with_word(x->arena, key, word, past), (struct reading){l, FORM_PAST, eds});
	if (!str_is(past, part))
		lexicon_add(x, with_word(x->arena, key, word, part),
		    (struct reading){l, FORM_PAST, eds});
}

static void
add_forms(struct lexicon *x, struct str form, const struct lexeme *l)
{
	struct str key = lexicon_key(x->arena, form);

	if (key.n == 0)
		return;
	lexicon_add(x, key, (struct reading){l, FORM_BASE, l->classes});
	if (lexeme_has(l, "noun") && !lexeme_has(l, "mass"))
		add_plural(x, key, l);
	if (lexeme_has(l, "verb"))
		add_verb(x, form, key, l);
}

/* A ' = ' or ' : ' that parts the fields; line.n where there is none. */
static size_t
find_mark(struct str line, const char *mark)
{
	return str_find(line, str_of(mark));
}

static bool
read_entry(struct reader *r, struct str line)
{
	size_t colon = find_mark(line, " : ");
	struct str names = str_cut(line, 0, colon);
	size_t eq = find_mark(names, " = ");
	struct str lemma = str_trim(str_cut(names, 0, eq));
	struct str aliases =
	    eq < names.n ? str_cut(names, eq + 3, names.n) : (struct str){0};
	struct marks m = r->marks;
	struct lexeme *l = arena_new(r->x->arena, struct lexeme);

	if (colon < line.n && !read_marks(r, &m, str_cut(line, colon + 3, line.n), line.p))
		return false;
	if (str_starts(lemma, STR("= ")) || str_starts(lemma, STR(": ")))
		return fail(r, line.p, line.p, "a word before '=' or ':'");
	l->lemma = arena_str(r->x->arena, lemma);
	l->classes = m.classes;
	l->attribute = arena_grow(
	    r->x->arena, m.attribute, m.attributes, m.attributes, sizeof *m.attribute);
	l->attributes = m.attributes;
	add_forms(r->x, lemma, l);
	while (aliases.p)
		add_forms(r->x, str_trim(str_next(&aliases, ',')), l);
	return true;
}

static struct str
without_comment(struct str line)
{
	size_t at = str_find(line, STR("  #"));

	return str_trim(str_cut(line, 0, at));
}

static bool
read_line(struct reader *r, struct str line)
{
	line = without_comment(line);
	if (line.n == 0 || (line.p[0] == '#' && line.n > 1))
		return true;
	if (line.p[0] == '@' && line.n > 1) {
		r->marks = (struct marks){0};
		return read_marks(r, &r->marks, str_cut(line, 1, line.n), line.p);
	}
	return read_entry(r, line);
}

bool
lexicon_read(struct lexicon *x, struct str data, const char *name, struct err *e)
{
	struct reader r = {.x = x, .name = name, .e = e};

	while (data.p) {
		r.line++;
		if (!read_line(&r, str_next(&data, '\n')))
			return false;
	}
	return true;
}
