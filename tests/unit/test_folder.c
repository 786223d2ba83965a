/* SPDX-License-Identifier: ISC */
/*
 * Files of their own: names, whose they are, and disks that are full. The
 * program is run for what only a process can show.
 */
#include "../support/expect.h"
#include "../support/program.h"
#include "../support/source.h"
#include "base/slug.h"
#include "folder/file.h"
#include "folder/folder.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <unistd.h>

#include <cmocka.h>

#define EPISODE "examples/galley/episode.txt"

static struct arena arena;

static struct str
read_or_fail(const char *path)
{
	struct str text;
	struct err e = {0};

	if (!source_read(&arena, path, &text, &e))
		fail_msg("%s: %s", path, e.text);
	return text;
}

/* A new empty folder in the build folder. */
static const char *
folder_new(void)
{
	const char *path = arena_fmt(&arena, "%s/folder", build_folder(&arena).p).p;

	program_run(&arena, ".",
	    arena_fmt(&arena, "rm -rf '%s'; mkdir '%s'; ", path, path).p, "--version");
	return path;
}

static const char *
in(const char *folder, const char *name)
{
	return arena_fmt(&arena, "%s/%s", folder, name).p;
}

static void
put_file(const char *path, const char *text)
{
	FILE *f = fopen(path, "wb");

	assert_non_null(f);
	fputs(text, f);
	fclose(f);
}

/* Nothing but what is named is in the folder, hidden files too. */
static size_t
files_in(const char *folder)
{
	return paths_find(&arena, in(folder, "*")).n +
	       paths_find(&arena, in(folder, ".[!.]*")).n;
}

static void
slugs_are_safe(void **state)
{
	static const struct {
		const char *name;
		size_t most;
		const char *want;
	} rows[] = {
	    {"Leek & barley soup", 40, "leek-barley-soup"},
	    {"Crème brûlée, again!", 40, "creme-brulee-again"},
	    {"cook's \xe2\x80\x99n\xe2\x80\x99 pan", 40, "cooks-n-pan"},
	    {"../../etc/passwd", 40, "etc-passwd"},
	    {"..", 40, ""},
	    {"/", 40, ""},
	    {"a\nb\tc\x01"
	     "d",
		40, "a-b-c-d"},
	    {"--a--", 40, "a"},
	    {"ﬁsh ½", 40, "fish-1-2"},
	    {"CON", 40, "con"},
	    {"味噌汁", 40, ""},
	    {"\xff\xfe", 40, ""},
	    {"abcdef", 4, "abcd"},
	    {"abc def", 4, "abc"},
	    {"abc def", 5, "abc-d"},
	    {"", 4, ""},
	};

	(void)state;
	for (size_t i = 0; i < COUNT(rows); i++) {
		struct buf b = buf_in(&arena);

		slug_put(&b, str_of(rows[i].name), rows[i].most);
		if (!str_is_z(b.n ? buf_str(&b) : STR(""), rows[i].want))
			fail_msg("%s: %.*s", rows[i].name, (int)b.n, b.n ? b.v : "");
	}
}

static void
files_are_replaced_whole(void **state)
{
	const char *folder = folder_new(), *path = in(folder, "x"), *link = in(folder, "l");
	struct err e = {0};

	(void)state;
	assert_true(file_replace(path, STR("one"), &e));
	assert_true(file_replace(path, STR("two"), &e));
	assert_true(str_is_z(read_or_fail(path), "two"));
	assert_int_equal(symlink("x", link), 0);
	assert_true(file_replace(link, STR("three"), &e));
	assert_true(str_is_z(read_or_fail(path), "three"));
	assert_int_equal(files_in(folder), 2);
	assert_true(file_replace("/dev/null", STR("four"), &e));
	assert_false(file_replace(folder, STR("five"), &e));
	assert_true(has(str_of(e.text), "folder"));
	e = (struct err){0};
	assert_false(file_replace(in(folder, "no/such"), STR("six"), &e));
	assert_true(e.set);
}

static enum put
put(struct folder *f, const char *stem, const char *owner, const char *text, struct err *e)
{
	struct page p = {str_of(stem), "md", str_of(owner), str_of(text), false};

	*e = (struct err){0};
	return folder_put(f, &p, e);
}

static struct folder
opened(const char *folder)
{
	struct folder f;
	struct err e = {0};

	if (!folder_open(&f, &arena, folder, &e))
		fail_msg("%s: %s", e.where, e.text);
	return f;
}

static void
names_that_are_taken_get_a_number(void **state)
{
	const char *folder = folder_new();
	struct folder f = opened(folder);
	struct err e;

	(void)state;
	assert_int_equal(put(&f, "soup", "a.txt", "1", &e), PUT_DONE);
	assert_int_equal(put(&f, "soup", "a.txt", "2", &e), PUT_DONE);
	assert_int_equal(put(&f, "soup", "b.txt", "3", &e), PUT_DONE);
	f = opened(folder);
	/* b's soup stays b's, also where b comes first */
	assert_int_equal(put(&f, "soup", "b.txt", "4", &e), PUT_DONE);
	assert_int_equal(put(&f, "soup", "a.txt", "5", &e), PUT_DONE);
	assert_int_equal(put(&f, "soup", "a.txt", "6", &e), PUT_DONE);
	assert_true(str_is_z(read_or_fail(in(folder, "soup.md")), "5"));
	assert_true(str_is_z(read_or_fail(in(folder, "soup-2.md")), "6"));
	assert_true(str_is_z(read_or_fail(in(folder, "soup-3.md")), "4"));
	assert_int_equal(files_in(folder), 4);
}

static void
only_own_files_are_replaced(void **state)
{
	const char *folder = folder_new(), *soup = in(folder, "soup.md");
	struct folder f = opened(folder);
	struct err e;

	(void)state;
	put_file(soup, "mine");
	assert_int_equal(put(&f, "soup", "a.txt", "1", &e), PUT_REFUSED);
	assert_true(has(str_of(e.text), "not written by tamis"));
	assert_true(str_is_z(read_or_fail(soup), "mine"));
	f.force = true;
	assert_int_equal(put(&f, "soup", "a.txt", "1", &e), PUT_DONE);
	f = opened(folder);
	assert_int_equal(put(&f, "soup", "a.txt", "2", &e), PUT_DONE);
	put_file(soup, "2, and a word of mine");
	f = opened(folder);
	assert_int_equal(put(&f, "soup", "a.txt", "3", &e), PUT_REFUSED);
	assert_true(has(str_of(e.text), "changed since"));
	put_file(soup, "4");
	f = opened(folder);
	assert_int_equal(put(&f, "soup", "a.txt", "4", &e), PUT_DONE);
}

/* A link, a folder, the script itself. */
static void
odd_files_are_left_alone(void **state)
{
	const char *folder = folder_new(), *script = in(folder, "script.md");
	struct folder f = opened(folder);
	struct err e;

	(void)state;
	put_file(script, "the script");
	folder_keep(&f, script);
	assert_int_equal(symlink("script.md", in(folder, "link.md")), 0);
	assert_int_equal(put(&f, "link", "a.txt", "1", &e), PUT_REFUSED);
	f.force = true;
	assert_int_equal(put(&f, "script", "a.txt", "1", &e), PUT_REFUSED);
	assert_int_equal(put(&f, "link", "a.txt", "1", &e), PUT_DONE);
	assert_true(str_is_z(read_or_fail(script), "the script"));
	program_run(
	    &arena, ".", arena_fmt(&arena, "mkdir '%s/dir.md'; ", folder).p, "--version");
	assert_int_equal(put(&f, "dir", "a.txt", "1", &e), PUT_REFUSED);
}

/* Ended between the list and the file, and in the middle of a line. */
static void
a_run_cut_short_is_no_harm(void **state)
{
	const char *folder = folder_new(), *list = in(folder, ".tamis-files");
	struct folder f = opened(folder);
	struct err e;

	(void)state;
	assert_int_equal(put(&f, "soup", "a.txt", "1", &e), PUT_DONE);
	put_file(list, arena_fmt(&arena, "%s0123456789abcdef\ta.txt\tsoup.md\n0123",
			   read_or_fail(list).p)
			   .p);
	f = opened(folder);
	assert_int_equal(put(&f, "soup", "a.txt", "2", &e), PUT_DONE);
	assert_int_equal(put(&f, "bread", "a.txt", "3", &e), PUT_DONE);
	f = opened(folder);
	assert_int_equal(put(&f, "bread", "a.txt", "4", &e), PUT_DONE);
	assert_int_equal(files_in(folder), 3);
}

static void
each_dish_gets_a_file(void **state)
{
	const char *folder = folder_new();
	struct str want = program_run(&arena, ".", "", "write " EPISODE).out;
	struct buf all = buf_in(&arena);
	struct paths p;
	struct ran ran = program_run(
	    &arena, ".", "", arena_fmt(&arena, "write -o '%s' " EPISODE, folder).p);

	(void)state;
	assert_int_equal(ran.status, 0);
	p = paths_find(&arena, in(folder, "episode-*.md"));
	assert_true(p.n >= 2);
	for (size_t i = 0; i < p.n; i++) {
		struct str text = read_or_fail(p.v[i].p);

		assert_true(str_starts(text, STR("# ")));
		assert_true(str_find(want, text) < want.n);
		buf_put(&all, text);
	}
	/* what is missing are the rules between the dishes */
	assert_int_equal(all.n + (p.n - 1) * strlen("\n---\n\n"), want.n);
	/* once more changes nothing and asks nothing */
	ran = program_run(
	    &arena, ".", "", arena_fmt(&arena, "write -o '%s' " EPISODE, folder).p);
	assert_int_equal(ran.status, 0);
	assert_int_equal(paths_find(&arena, in(folder, "*")).n, p.n);
}

/* A file that may grow no more stands in for a disk that is full; /proc for a
 * folder that takes no file, whoever asks. */
static void
a_full_disk_loses_nothing(void **state)
{
	const char *folder = folder_new(), *one = in(folder, "one.md");
	struct str before;
	struct ran ran;
	size_t files;

	(void)state;
	program_run(&arena, ".", "", arena_fmt(&arena, "write -o '%s' " EPISODE, folder).p);
	put_file(one, "as it was");
	files = files_in(folder);
	before = read_or_fail(in(folder, ".tamis-files"));
	ran = program_run(&arena, ".", "ulimit -f 0; ",
	    arena_fmt(&arena, "write --scale 2 -o '%s' " EPISODE " 2>&1", folder).p);
	assert_int_equal(ran.status, 3);
	assert_true(has(ran.out, "can't be written"));
	ran = program_run(&arena, ".", "ulimit -f 0; ",
	    arena_fmt(&arena, "write -o '%s' " EPISODE " 2>&1", one).p);
	assert_int_equal(ran.status, 3);
	assert_true(str_is_z(read_or_fail(one), "as it was"));
	assert_int_equal(files_in(folder), files);
	assert_true(str_is(before, read_or_fail(in(folder, ".tamis-files"))));
	ran = program_run(&arena, ".", "", "write -o /proc " EPISODE " 2>&1");
	assert_int_equal(ran.status, 3);
	assert_true(has(ran.out, "/proc/episode"));
}

static void
scripts_are_not_written_over(void **state)
{
	const char *folder = folder_new(), *script = in(folder, "soup.txt");
	struct str text = read_or_fail(EPISODE);
	struct ran ran;

	(void)state;
	put_file(script, text.p);
	ran = program_run(&arena, ".", "",
	    arena_fmt(&arena, "write -o '%s' '%s' 2>&1", script, script).p);
	assert_int_equal(ran.status, 2);
	ran = program_run(&arena, ".", "",
	    arena_fmt(
		&arena, "write --force -f description -o '%s' '%s' 2>&1", folder, script)
		.p);
	assert_int_equal(ran.status, 2);
	assert_true(has(ran.out, "is an episode that is read"));
	assert_true(str_is(read_or_fail(script), text));
}

static int
open_arena(void **state)
{
	(void)state;
	arena_init(&arena);
	return 0;
}

static int
close_arena(void **state)
{
	(void)state;
	arena_release(&arena);
	return 0;
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(slugs_are_safe),
	    cmocka_unit_test(files_are_replaced_whole),
	    cmocka_unit_test(names_that_are_taken_get_a_number),
	    cmocka_unit_test(only_own_files_are_replaced),
	    cmocka_unit_test(odd_files_are_left_alone),
	    cmocka_unit_test(a_run_cut_short_is_no_harm),
	    cmocka_unit_test(each_dish_gets_a_file),
	    cmocka_unit_test(a_full_disk_loses_nothing),
	    cmocka_unit_test(scripts_are_not_written_over),
	};

	return cmocka_run_group_tests(tests, open_arena, close_arena);
}
