/* SPDX-License-Identifier: ISC */
/*
 * tamis publish from outside: what it refuses, what lies in the folder, links
 * into the video.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stdio.h>
#include <sys/stat.h>

#include <cmocka.h>

#include "../support/expect.h"
#include "../support/hold.h"
#include "../support/program.h"
#include "../support/source.h"

/* A range from high to low is an error; the other script has none. */
#define WRONG "printf '# Onion soup\\n[0:05] Simmer it for ten to eight minutes.\\n' |"
#define RIGHT "printf '# Onion & leek soup\\n[0:05] Simmer it for ten minutes.\\n' |"

#define NOTHING "printf '# Cold plate\\n[0:05] Serves 4. Slice 200 grams of cucumber.\\n' |"

static struct str
folder(struct arena *a)
{
	return arena_fmt(a, "%s/publish", build_folder(a).p);
}

static struct ran
publish(struct arena *a, const char *script, const char *options)
{
	program_run(a, ".", arena_fmt(a, "rm -rf '%s'; ", folder(a).p).p, "--version");
	return program_run(a, ".", script,
	    arena_fmt(a, "publish --output '%s' %s - 2>&1", folder(a).p, options).p);
}

static bool
read_made(struct arena *a, const char *name, struct str *out)
{
	struct err e = {0};

	return source_read(a, arena_fmt(a, "%s/%s", folder(a).p, name).p, out, &e);
}

static void
wrong_usage_is_refused(void **state)
{
	static const struct {
		const char *arguments;
		int status;
		const char *says;
	} rows[] = {
	    {"publish 2>&1", 2, "name one episode"},
	    {"publish a b 2>&1", 2, "name one episode"},
	    {"publish - </dev/null 2>&1", 2, "--output"},
	    {"publish - -o x --video-url javascript:x </dev/null 2>&1", 2, "https://"},
	    {"publish - -o no/such/folder </dev/null 2>&1", 3, "no/such/folder"},
	    {"publish --help", 0, "--anyway"},
	    {"write --video-url ftp://x - </dev/null 2>&1", 2, "https://"},
	};

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct ran ran = program_run(*state, ".", "", rows[i].arguments);

		if (ran.status != rows[i].status || !has(ran.out, rows[i].says))
			fail_msg("%s: %d\n%s", rows[i].arguments, ran.status, ran.out.p);
	}
}

static void
open_errors_are_listed(void **state)
{
	struct ran ran = publish(*state, WRONG, "");
	struct str text;

	assert_int_equal(ran.status, 1);
	assert_true(has(ran.out, "not published: 1 error is open"));
	assert_true(has(ran.out, "-:2:"));
	assert_true(has(ran.out, "[reversed-range]"));
	assert_false(read_made(*state, "index.html", &text));
	ran = publish(*state, WRONG, "--anyway");
	assert_int_equal(ran.status, 1);
	assert_true(has(ran.out, "[reversed-range]"));
	assert_true(read_made(*state, "index.html", &text));
	assert_true(has(text, "Open queries: 1 error"));
}

/* Every file that the page links to is there, and is not empty. */
static void
the_index_links_what_is_made(void **state)
{
	struct ran ran = publish(*state, RIGHT, "");
	struct str rest, file;
	size_t links = 0, at;

	assert_int_equal(ran.status, 0);
	assert_true(read_made(*state, "index.html", &rest));
	while ((at = str_find(rest, STR("href=\""))) < rest.n) {
		struct str name;

		rest = str_cut(rest, at + 6, rest.n);
		name = str_cut(rest, 0, str_find_char(rest, '"'));
		if (!read_made(*state, arena_str(*state, name).p, &file) || file.n == 0)
			fail_msg("no %.*s", (int)name.n, name.p);
		links++;
	}
	assert_int_equal(links, 9);
	assert_true(has(ran.out, "/card-1-onion-leek-soup.html\n"));
}

/* What is to be recorded again is in the package, and linked where there is any. */
static void
pickups_are_linked_where_there_are_some(void **state)
{
	struct str text;

	publish(*state, WRONG, "--anyway");
	assert_true(read_made(*state, "pickups.md", &text));
	assert_true(has(text, "Record again"));
	assert_true(read_made(*state, "index.html", &text));
	assert_true(has(text, "href=\"pickups.md\""));
	publish(*state, NOTHING, "");
	assert_true(read_made(*state, "pickups.md", &text));
	assert_true(has(text, "Nothing has to be recorded again"));
	assert_true(read_made(*state, "index.html", &text));
	assert_false(has(text, "pickups.md"));
}

/* What it wrote itself is replaced; what somebody else wrote or changed is not, and
 * all other files are. */
static void
files_of_others_are_kept(void **state)
{
	const char *dir = folder(*state).p;
	const char *again = arena_fmt(*state, "publish --output '%s' - 2>&1", dir).p;
	const char *force = arena_fmt(*state, "publish --force -o '%s' - 2>&1", dir).p;
	const char *own = arena_fmt(*state, "printf mine >'%s/recipes.md'; " RIGHT, dir).p;
	struct ran ran = publish(*state, RIGHT, "");
	struct str text;

	assert_int_equal(ran.status, 0);
	ran = program_run(*state, ".", NOTHING, again);
	assert_int_equal(ran.status, 0);
	assert_true(read_made(*state, "recipes.md", &text));
	assert_true(has(text, "# Cold plate"));
	ran = program_run(*state, ".", own, again);
	assert_int_equal(ran.status, 2);
	assert_true(has(ran.out, "recipes.md: was changed since tamis wrote it"));
	assert_true(read_made(*state, "recipes.md", &text));
	assert_true(str_is_z(text, "mine"));
	assert_true(read_made(*state, "description.txt", &text));
	assert_true(has(text, "Onion & leek soup"));
	ran = program_run(*state, ".", own, force);
	assert_int_equal(ran.status, 0);
	assert_true(read_made(*state, "recipes.md", &text));
	assert_true(has(text, "# Onion"));
}

/* Its pages link each other by name: two episodes have no room in one folder. */
static void
the_folder_of_another_episode_is_refused(void **state)
{
	const char *dir = folder(*state).p;
	const char *other = "tests/cases/lists/input.md";
	struct str all = arena_fmt(*state, "publish --anyway -o '%s' %s 2>&1", dir, other);
	struct str text;
	struct ran ran;

	publish(*state, RIGHT, "");
	ran = program_run(*state, ".", "", all.p);
	assert_int_equal(ran.status, 2);
	assert_true(has(ran.out, "index.html: was written for another episode"));
	assert_true(read_made(*state, "index.html", &text));
	assert_true(has(text, "Onion"));
}

static void
a_refused_episode_makes_no_folder(void **state)
{
	struct stat st;

	assert_int_equal(publish(*state, WRONG, "").status, 1);
	assert_int_not_equal(stat(folder(*state).p, &st), 0);
}

/* An answered error is no reason to refuse; viewers are told what is meant. */
static void
answers_become_corrections(void **state)
{
	const char *file =
	    arena_fmt(*state, "%s/publish.answers", build_folder(*state).p).p;
	struct ran ran = publish(*state,
	    arena_fmt(*state,
		"printf '0:05 reversed-range \"ten to eight minutes\" 8 to 10 minutes\\n' "
		">'%s'; " WRONG,
		file)
		.p,
	    arena_fmt(*state, "--answers '%s'", file).p);
	struct str text;

	assert_int_equal(ran.status, 0);
	assert_true(read_made(*state, "description.txt", &text));
	assert_true(
	    has(text, "\nCorrections\n- 0:05 \"ten to eight minutes\" should be: 8 to "
		      "10 minutes.\n"));
	assert_true(read_made(*state, "proof.html", &text));
	assert_true(has(text, "answered: 8 to 10 minutes"));
}

static void
cards_link_into_the_video(void **state)
{
	struct str text;

	publish(*state, RIGHT, "--video-url 'https://example.org/watch?a=1&b=2'");
	assert_true(read_made(*state, "card-1-onion-leek-soup.html", &text));
	assert_true(
	    has(text, "href=\"https://example.org/watch?a=1&amp;b=2#t=5\">0:05</a>"));
	assert_true(has(text, "Onion &amp; leek soup</h1>"));
	assert_true(has(text, "\"name\": \"Onion & leek soup\""));
	assert_true(read_made(*state, "recipes.jsonld", &text));
	assert_true(has(text, "\"startOffset\": 5"));
	assert_true(has(text, "\"url\": \"https://example.org/watch?a=1&b=2#t=5\""));
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(wrong_usage_is_refused),
	    cmocka_unit_test(open_errors_are_listed),
	    cmocka_unit_test(the_index_links_what_is_made),
	    cmocka_unit_test(pickups_are_linked_where_there_are_some),
	    cmocka_unit_test(files_of_others_are_kept),
	    cmocka_unit_test(the_folder_of_another_episode_is_refused),
	    cmocka_unit_test(a_refused_episode_makes_no_folder),
	    cmocka_unit_test(answers_become_corrections),
	    cmocka_unit_test(cards_link_into_the_video),
	};

	return cmocka_run_group_tests(tests, hold_arena, drop_arena);
}
