/* SPDX-License-Identifier: ISC */
/*
 * Opens a grammar: the files built in, or those of a folder, in name order;
 * *.lex first, then *.gram, then the passes are compiled, then *.tsv.
 */
#include "grammar/grammar.h"

#include <errno.h>
#include <glob.h>
#include <stdio.h>

#include "grammar/embedded.h"

struct file {
	struct str name, data;
};

struct files {
	struct arena *arena;
	VEC(struct file) file;
};

static bool
read_file(struct files *f, const char *path, struct str name, struct err *e)
{
	FILE *in = fopen(path, "rb");
	struct buf b = buf_in(f->arena);
	char chunk[16384];
	size_t n;
	bool ok;

	if (!in)
		return err_set(e, path, "cannot be opened: %s", strerror(errno));
	while ((n = fread(chunk, 1, sizeof chunk, in)) > 0)
		buf_put(&b, (struct str){chunk, n});
	ok = !ferror(in);
	fclose(in);
	if (!ok)
		return err_set(e, path, "cannot be read");
	vec_push(f->arena, &f->file, (struct file){name, buf_str(&b)});
	return true;
}

/* Adds dir/sub/ *.ending in name order; finding none is no error here. */
static bool
add_matching(struct files *f, struct str pattern, size_t dir_n, struct err *e)
{
	glob_t g;
	bool ok = true;

	if (glob(pattern.p, 0, NULL, &g) != 0)
		return true;
	for (size_t i = 0; ok && i < g.gl_pathc; i++) {
		struct str path = arena_str(f->arena, str_of(g.gl_pathv[i]));

		ok = read_file(f, path.p, str_cut(path, dir_n + 1, path.n), e);
	}
	globfree(&g);
	return ok;
}

static bool
files_of_folder(struct files *f, const char *dir, const char *language, struct err *e)
{
	static const char *const ending[] = {"lex", "gram"};

	for (size_t i = 0; i < 2; i++)
		if (!add_matching(f,
			arena_fmt(f->arena, "%s/%s/*.%s", dir, language, ending[i]),
			strlen(dir), e))
			return false;
	if (!add_matching(f, arena_fmt(f->arena, "%s/tables/*.tsv", dir), strlen(dir), e))
		return false;
	if (f->file.n == 0)
		return err_set(e, dir,
		    "has no grammar for \"%s\": expected %s/*.lex and *.gram", language,
		    language);
	return true;
}

static bool
files_built_in(struct files *f, const char *language, struct err *e)
{
	struct str folder = arena_fmt(f->arena, "%s/", language);
	bool any = false;

	for (const struct embedded_file *m = tamis_embedded; m->name; m++) {
		struct str name = str_of(m->name);
		bool ours = str_starts(name, folder);

		any = any || ours;
		if (ours || str_starts(name, STR("tables/")))
			vec_push(f->arena, &f->file, (struct file){name, m->data});
	}
	return any || err_set(e, "grammar", "no grammar for \"%s\" is built in", language);
}

static bool
load_words(struct grammar *g, const struct files *f, struct err *e)
{
	for (size_t i = 0; i < f->file.n; i++)
		if (str_ends(f->file.v[i].name, STR(".lex")) &&
		    !lexicon_read(&g->lexicon, f->file.v[i].data, f->file.v[i].name.p, e))
			return false;
	return true;
}

static bool
load_rules(struct grammar *g, const struct files *f, struct err *e)
{
	g->book.lexicon = &g->lexicon;
	for (size_t i = 0; i < f->file.n; i++)
		if (str_ends(f->file.v[i].name, STR(".gram")) &&
		    !rules_read(&g->book, f->file.v[i].data, f->file.v[i].name.p, e))
			return false;
	return true;
}

static bool
load_tables(struct grammar *g, const struct files *f, struct err *e)
{
	for (size_t i = 0; i < f->file.n; i++) {
		struct str name = f->file.v[i].name;
		struct table t = {0};

		if (!str_ends(name, STR(".tsv")))
			continue;
		t.name = str_cut(name, strlen("tables/"), name.n - strlen(".tsv"));
		if (!table_load(&t, &g->arena, f->file.v[i].data, name.p, e))
			return false;
		vec_push(&g->arena, &g->table, t);
	}
	return units_load(&g->units, grammar_table(g, "units"), &g->arena, e);
}

/* True where the lexeme has the flag, or the word as a value of some key. */
static bool
is_marked(const struct lexeme *l, struct str mark)
{
	for (size_t i = 0; i < l->attributes; i++)
		if (str_is(l->attribute[i].key, mark) ||
		    str_is(l->attribute[i].value, mark))
			return true;
	return false;
}

/* A class CLASS.mark that a rule speaks of: the forms of CLASS whose lexeme has
 * the flag `mark`, or `mark` as the value of some key. */
static void
derive_class(struct lexicon *x, unsigned id)
{
	struct str name = x->class_name.v[id];
	size_t dot = str_find_char(name, '.');
	struct str mark = str_cut(name, dot + 1, name.n);
	unsigned base = lexicon_class_find(x, str_cut(name, 0, dot));

	for (size_t i = 0; dot < name.n && base < CLASSES_MAX && i < x->entry.n; i++) {
		struct entry *e = x->entry.v[i];

		for (size_t j = 0; j < e->reading.n; j++)
			if (classset_has(&e->reading.v[j].classes, base) &&
			    is_marked(e->reading.v[j].lexeme, mark))
				classset_add(&e->classes, id);
	}
}

/* Every entry that is a word has the class WORD; two stand for the unlisted. */
static void
mark_words(struct grammar *g)
{
	unsigned word = lexicon_class(&g->lexicon, STR("WORD"));
	unsigned digits = lexicon_class(&g->lexicon, STR("DIGITS"));
	unsigned unlisted = lexicon_class(&g->lexicon, STR("UNLISTED"));
	struct entry *e;

	for (unsigned i = 0; i < g->lexicon.class_name.n; i++)
		derive_class(&g->lexicon, i);
	for (size_t i = 0; i < g->lexicon.entry.n; i++) {
		e = g->lexicon.entry.v[i];
		if (is_lower(e->form.p[0]) || (unsigned char)e->form.p[0] >= 0x80)
			classset_add(&e->classes, word);
		if (e->reading.n == 0)
			classset_add(&e->classes, unlisted);
	}
	e = lexicon_entry(&g->lexicon, STR("<digits>"));
	classset_add(&e->classes, digits);
	g->digits = e;
	e = lexicon_entry(&g->lexicon, STR("<word>"));
	classset_add(&e->classes, word);
	classset_add(&e->classes, unlisted);
	g->unknown = e;
}

/* True where the pass reads what a pass above it made. */
static bool
finds_its_source(const struct grammar *g, const struct rulepass *p, struct err *e)
{
	for (size_t i = 0; i < g->passes; i++)
		if (str_is(g->pass[i].name, p->from))
			return true;
	return p->from.n == 0 ||
	       err_set(e, "grammar",
		   "pass %.*s is from %.*s, and no pass above is called so", (int)p->name.n,
		   p->name.p, (int)p->from.n, p->from.p);
}

static bool
compile_passes(struct grammar *g, struct err *e)
{
	if (g->book.pass.n > PASSES_MAX)
		return err_set(e, "grammar", "has more than %d passes", PASSES_MAX);
	for (size_t i = 0; i < g->book.pass.n; i++, g->passes++)
		if (!finds_its_source(g, &g->book.pass.v[i], e) ||
		    !pass_compile(&g->pass[i], &g->book.pass.v[i], &g->lexicon, e))
			return false;
	return true;
}

struct grammar *
grammar_open(const char *dir, const char *language, struct err *e)
{
	struct arena a;
	struct grammar *g;
	struct files f;
	bool ok;

	arena_init(&a);
	g = arena_new(&a, struct grammar);
	g->arena = a;
	f = (struct files){.arena = &g->arena};
	g->language = arena_str(&g->arena, str_of(language)).p;
	lexicon_init(&g->lexicon, &g->arena);
	ok = dir ? files_of_folder(&f, dir, language, e) : files_built_in(&f, language, e);
	ok = ok && load_words(g, &f, e) && load_rules(g, &f, e);
	if (ok)
		mark_words(g);
	if (ok && compile_passes(g, e) && load_tables(g, &f, e))
		return g;
	grammar_close(g);
	return NULL;
}

void
grammar_close(struct grammar *g)
{
	struct arena a;

	if (!g)
		return;
	for (size_t i = 0; i < g->passes; i++)
		pass_release(&g->pass[i]);
	a = g->arena;
	arena_release(&a);
}

const struct table *
grammar_table(const struct grammar *g, const char *name)
{
	for (size_t i = 0; i < g->table.n; i++)
		if (str_is_z(g->table.v[i].name, name))
			return &g->table.v[i];
	return NULL;
}

unsigned
grammar_field(const struct grammar *g, const char *name)
{
	unsigned i = 0;

	while (i < g->book.field.n && !str_is_z(g->book.field.v[i], name))
		i++;
	return i;
}
