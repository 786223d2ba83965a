/* SPDX-License-Identifier: ISC */
/*
 * The golden cases and what holds over every script there is. A case is a
 * folder tests/cases/NAME with an input.* and golden files that decide what
 * runs: `findings` is what `tamis check` prints, findings.NAME what it prints
 * with that format; NAME.EXT is what the writer
 * of that name, or else the first of that extension, writes; `show` is what
 * `tamis show` prints. An input.answers may stand beside the input, `options`
 * may hold options for all of them. In a folder that ends in .bug each must
 * still fail, until somebody mends it. All outputs are kept in the build folder
 * for `make bless`.
 */
#include "../support/program.h"
#include "../support/source.h"
#include "../support/spans.h"
#include "tamis.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/stat.h>

#include <cmocka.h>

struct golden {
	struct arena *arena;
	const struct grammar *grammar;
	struct str path; /* tests/cases/soup/findings; of a script in properties */
	struct str folder, file;
};

static struct str
read_or_fail(struct arena *a, const char *path)
{
	struct err e = {0};
	struct str s = STR("");

	if (!source_read(a, path, &s, &e))
		fail_msg("%s: %s", e.where, e.text);
	return s;
}

/* ---- golden cases ------------------------------------------------------- */

static const struct writer *
writer_of(struct str file)
{
	const struct writer *w;
	struct str stem = str_cut(file, 0, str_find_char(file, '.'));
	struct str extension = str_cut(file, stem.n + 1, file.n);

	for (size_t i = 0; (w = tamis_writer(i)); i++)
		if (str_is_z(stem, w->name))
			return w;
	for (size_t i = 0; (w = tamis_writer(i)); i++)
		if (str_is_z(extension, w->extension))
			return w;
	return NULL;
}

/* The command line that makes the golden file; NULL where there is none. */
static const char *
command_of(struct arena *a, struct str file)
{
	const struct writer *w;

	if (str_is_z(file, "findings"))
		return "check";
	if (str_starts(file, STR("findings.")))
		return arena_fmt(a, "check --format %s", file.p + strlen("findings.")).p;
	if (str_is_z(file, "show"))
		return "show";
	w = writer_of(file);
	return w ? arena_fmt(a, "write --format %s", w->name).p : NULL;
}

static const char *
options_of(struct arena *a, const char *folder)
{
	struct str path = arena_fmt(a, "%s/options", folder);
	struct str text;
	struct err none = {0};

	if (!source_read(a, path.p, &text, &none))
		return "";
	text = str_trim(text);
	return arena_str(a, text).p;
}

static struct str
input_of(struct arena *a, const char *folder)
{
	struct paths p = paths_find(a, arena_fmt(a, "%s/input.*", folder).p);
	size_t at = p.n && str_ends(p.v[0], STR(".answers"));

	if (p.n != at + 1 && p.n != 2)
		fail_msg("%s: there must be one input.*", folder);
	return str_of(file_name(p.v[at]));
}

static struct str
keep(const struct golden *g, struct str out)
{
	struct str home = arena_fmt(g->arena, "%s/cases", build_folder(g->arena).p);
	struct str folder, path;
	FILE *f;

	mkdir(home.p, 0777);
	folder = arena_fmt(g->arena, "%s/%s", home.p, file_name(g->folder));
	mkdir(folder.p, 0777);
	path = arena_fmt(g->arena, "%s/%s", folder.p, g->file.p);
	f = fopen(path.p, "wb");
	if (!f || fwrite(out.p, 1, out.n, f) != out.n || fclose(f) != 0)
		fail_msg("%s: can't be written", path.p);
	return path;
}

static void
print_difference(struct arena *a, const char *golden, const char *out)
{
	FILE *f = popen(arena_fmt(a, "diff -u '%s' '%s'", golden, out).p, "r");
	char line[1024];

	while (f && fgets(line, sizeof line, f))
		print_error("%s", line);
	if (f)
		pclose(f);
}

static void
golden_holds(void **state)
{
	struct golden *g = *state;
	const char *command = command_of(g->arena, g->file);
	bool bug = str_ends(g->folder, STR(".bug"));
	struct str want = read_or_fail(g->arena, g->path.p), path;
	struct ran ran;

	if (!command)
		fail_msg("%s: nothing writes such a file", g->path.p);
	ran = program_run(g->arena, g->folder.p, "",
	    arena_fmt(g->arena, "%s %s %s", command, options_of(g->arena, g->folder.p),
		input_of(g->arena, g->folder.p).p)
		.p);
	path = keep(g, ran.out);
	if (ran.status != 0 && ran.status != 1)
		fail_msg("%s: exit status %d", g->path.p, ran.status);
	if (bug && str_is(ran.out, want))
		fail_msg("%s: this is mended: take .bug off its name", g->folder.p);
	if (!bug && !str_is(ran.out, want)) {
		print_difference(g->arena, g->path.p, path.p);
		fail_msg("%s: not as the golden file; see make bless", g->path.p);
	}
}

/* What only an archive can raise is for test_archive. */
static bool
is_of_the_past(const struct finding_kind *k)
{
	return strcmp(k->code, "unlike-before") == 0;
}

static void
every_code_has_a_case(void **state)
{
	struct golden *g = *state;
	struct paths p = paths_find(g->arena, "tests/cases/*/findings");
	struct buf all = buf_in(g->arena);
	const struct finding_kind *k;
	size_t missing = 0;

	for (size_t i = 0; i < p.n; i++)
		buf_put(&all, read_or_fail(g->arena, p.v[i].p));
	for (size_t i = 0; (k = tamis_finding_kind(i)); i++) {
		struct str code = arena_fmt(g->arena, "[%s]", k->code);

		if (is_of_the_past(k) || str_find(buf_str(&all), code) < all.n)
			continue;
		print_error("no case in tests/cases has %s\n", code.p);
		missing++;
	}
	assert_int_equal(missing, 0);
}

/* ---- what holds over every script --------------------------------------- */

static struct draft *
draft_or_fail(const struct golden *g)
{
	struct tamis_options o = {0};
	struct err e = {0};
	struct str source = read_or_fail(g->arena, g->path.p);
	struct draft *d = tamis_draft(g->grammar, &o, source, file_name(g->path), &e);

	if (!d)
		fail_msg("%s: %s", g->path.p, e.text);
	return d;
}

static void
script_gives_the_same_bytes_twice(void **state)
{
	struct golden *g = *state;
	struct draft *one = draft_or_fail(g), *two = draft_or_fail(g);
	const struct writer *w;

	for (size_t i = 0; (w = tamis_writer(i)); i++) {
		struct buf a = buf_in(g->arena), b = buf_in(g->arena);
		struct tamis_style style = {0};

		w->write(one, g->grammar, &style, &a);
		w->write(two, g->grammar, &style, &b);
		assert_true(a.n > 0);
		if (!str_is(buf_str(&a), buf_str(&b)))
			fail_msg("%s: %s differs", g->path.p, w->name);
	}
	tamis_draft_free(one);
	tamis_draft_free(two);
}

static void
script_has_every_span_inside(void **state)
{
	struct golden *g = *state;
	struct draft *d = draft_or_fail(g);
	const char *wrong = spans_wrong(d);

	if (wrong)
		fail_msg("%s: %s", g->path.p, wrong);
	tamis_draft_free(d);
}

/* ---- the list of tests -------------------------------------------------- */

struct list {
	struct arena *arena;
	struct grammar *grammar;
	VEC(struct CMUnitTest) test;
};

static void
list_add(struct list *l, const char *name, CMUnitTestFunction run, struct str path)
{
	struct golden *g = arena_new(l->arena, struct golden);

	*g = (struct golden){.arena = l->arena, .grammar = l->grammar, .path = path};
	g->file = str_of(file_name(path));
	g->folder = arena_str(
	    l->arena, str_cut(path, 0, path.n - (g->file.n < path.n ? g->file.n + 1 : 0)));
	vec_push(l->arena, &l->test, (struct CMUnitTest){name, run, NULL, NULL, g});
}

static void
list_goldens(struct list *l)
{
	struct paths p = paths_find(l->arena, "tests/cases/*/*");

	for (size_t i = 0; i < p.n; i++) {
		const char *file = file_name(p.v[i]);

		if (strncmp(file, "input.", 6) == 0 || strcmp(file, "options") == 0)
			continue;
		list_add(l, p.v[i].p + strlen("tests/cases/"), golden_holds, p.v[i]);
	}
	list_add(l, "every code has a case", every_code_has_a_case, STR(""));
}

static void
list_scripts(struct list *l, const char *pattern)
{
	struct paths p = paths_find(l->arena, pattern);

	for (size_t i = 0; i < p.n; i++) {
		if (str_ends(p.v[i], STR(".tsv")) || str_ends(p.v[i], STR(".answers")))
			continue;
		list_add(l, arena_fmt(l->arena, "same bytes twice: %s", p.v[i].p).p,
		    script_gives_the_same_bytes_twice, p.v[i]);
		list_add(l, arena_fmt(l->arena, "spans inside: %s", p.v[i].p).p,
		    script_has_every_span_inside, p.v[i]);
	}
}

int
main(void)
{
	struct arena a;
	struct err e = {0};
	struct list l = {.arena = &a};
	int failed;

	arena_init(&a);
	l.grammar = tamis_grammar_open(NULL, "en", &e);
	if (!l.grammar) {
		print_error("%s:%u:%u: %s\n", e.where, e.line, e.column, e.text);
		return 1;
	}
	list_goldens(&l);
	list_scripts(&l, "corpus/*.*");
	list_scripts(&l, "examples/*/episode.*");
	list_scripts(&l, "tests/cases/*/input.*");
	failed = _cmocka_run_group_tests("cases", l.test.v, l.test.n, NULL, NULL);
	tamis_grammar_close(l.grammar);
	arena_release(&a);
	return failed != 0;
}
