/* SPDX-License-Identifier: ISC */
/*
 * The archive from inside: what goes in comes out, is found, is taken out again
 * without a trace; older files and foreign ones; figures; house consistency.
 */
#include "archive/archive.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <unistd.h>

#include <cmocka.h>

#include "../support/program.h"
#include "archive/pack.h"
#include "archive/passage.h"
#include "archive/practice.h"
#include "archive/store.h"

#define COUNT(rows) (sizeof(rows) / sizeof *(rows))

struct shelf {
	struct arena arena;
	struct grammar *grammar;
	const char *path;
	struct archive *archive;
};

/* A new archive for each test. */
static int
open_shelf(void **state)
{
	struct shelf *s = *state;
	struct err e = {0};

	unlink(s->path);
	s->archive = archive_open(s->path, ARCHIVE_MAKE, &e);
	if (!s->archive)
		print_error("%s: %s\n", e.where, e.text);
	return s->archive ? 0 : -1;
}

static int
close_shelf(void **state)
{
	struct shelf *s = *state;

	archive_close(s->archive);
	s->archive = NULL;
	return 0;
}

static const char soup[] =
    "[0:02] Hello. Today it's a leek soup for 4 people.\n"
    "[0:10] You need 3 leeks, 30 grams of butter and 2 cups of milk.\n"
    "[0:20] Soften the leeks in the butter for 10 minutes.\n"
    "[0:30] Pour in the milk and simmer the soup for 20 minutes.\n";

static enum kept
keep(struct shelf *s, const char *name, const char *script)
{
	struct parcel p = {.name = str_of(name)};
	struct tamis_options o = {0};
	struct err e = {0};
	enum kept kept = KEPT_AS_IT_WAS;
	struct draft *d = tamis_draft(s->grammar, &o, str_of(script), name, &e);

	assert_non_null(d);
	p.draft = d;
	p.date = STR("2026-03-14");
	p.video_url = STR("https://video.example/leeks");
	parcel_make(&s->arena, s->grammar, &p);
	if (!archive_keep(s->archive, s->grammar, &p, &kept, &e))
		fail_msg("%s: %s", e.where, e.text);
	tamis_draft_free(d);
	return kept;
}

static struct answer
find(struct shelf *s, struct question q)
{
	struct answer a;
	struct err e = {0};

	q.limit = 10;
	if (!archive_find(s->archive, &s->arena, &q, &a, &e))
		fail_msg("%s: %s", e.where, e.text);
	return a;
}

static struct answer
find_word(struct shelf *s, const char *word)
{
	struct str w = str_of(word);

	return find(s, (struct question){.word = &w, .words = 1});
}

static int64_t
rows(struct shelf *s, const char *table)
{
	struct err e = {0};
	int64_t n;

	assert_true(store_number(
	    s->archive, arena_fmt(&s->arena, "SELECT count(*) FROM %s", table).p, &n, &e));
	return n;
}

/* ---- in and out --------------------------------------------------------- */

static void
what_goes_in_comes_out(void **state)
{
	struct shelf *s = *state;
	struct kept_episode k;
	struct err e = {0};

	assert_int_equal(keep(s, "soup.txt", soup), KEPT_NEW);
	assert_true(archive_episode(s->archive, &s->arena, STR("soup.txt"), &k, &e));
	assert_true(str_is_z(k.source, soup));
	assert_true(str_find(k.json, STR("\"leek soup\"")) < k.json.n);
	assert_false(archive_episode(s->archive, &s->arena, STR("stew.txt"), &k, &e));
	assert_true(e.set);
}

static void
once_more_takes_its_place(void **state)
{
	struct shelf *s = *state;
	struct answer a;

	keep(s, "soup.txt", soup);
	assert_int_equal(keep(s, "soup.txt",
			     "[0:01] Today it's a turnip pie.\n"
			     "[0:05] Bake 2 turnips for 40 minutes.\n"),
	    KEPT_AGAIN);
	assert_int_equal(rows(s, "episode"), 1);
	assert_int_equal(find_word(s, "leek").hits, 0);
	a = find_word(s, "turnips");
	assert_int_equal(a.hits, 1);
	assert_true(str_is_z(a.hit[0].date, "2026-03-14"));
}

static void
forgetting_leaves_nothing(void **state)
{
	static const char *const tables[] = {"episode", "pack", "dish", "ingredient",
	    "step", "gear", "measure", "finding", "practice", "word"};
	struct shelf *s = *state;
	struct err e = {0};
	bool found;

	keep(s, "soup.txt", soup);
	assert_true(rows(s, "ingredient") >= 3 && rows(s, "word") > 10);
	assert_true(archive_forget(s->archive, STR("soup.txt"), &found, &e) && found);
	for (size_t i = 0; i < COUNT(tables); i++)
		assert_int_equal(rows(s, tables[i]), 0);
	assert_int_equal(find_word(s, "leek").hits, 0);
	assert_true(archive_forget(s->archive, STR("soup.txt"), &found, &e) && !found);
}

static void
told(void *context, struct str what)
{
	(void)context;
	print_error("%.*s\n", (int)what.n, what.p);
}

static void
it_is_sound(void **state)
{
	struct shelf *s = *state;
	struct err e = {0};

	keep(s, "soup.txt", soup);
	keep(s, "soup.txt", soup);
	assert_true(archive_verify(s->archive, told, NULL, &e));
}

static void
a_damaged_text_is_told(void **state)
{
	struct shelf *s = *state;
	struct kept_episode k;
	struct err e = {0};

	keep(s, "soup.txt", soup);
	assert_true(store_script(s->archive, "UPDATE pack SET block = x'0102'", &e));
	assert_false(archive_episode(s->archive, &s->arena, STR("soup.txt"), &k, &e));
	assert_true(strstr(e.text, "damaged") != NULL);
}

/* ---- files -------------------------------------------------------------- */

static void
older_tables_are_brought_up(void **state)
{
	struct shelf *s = *state;
	struct err e = {0};

	keep(s, "soup.txt", soup);
	assert_true(store_script(s->archive,
	    "ALTER TABLE episode DROP COLUMN answers; PRAGMA user_version = 1", &e));
	archive_close(s->archive);
	s->archive = archive_open(s->path, ARCHIVE_READ, &e);
	assert_null(s->archive);
	e = (struct err){0};
	s->archive = archive_open(s->path, ARCHIVE_CHANGE, &e);
	assert_non_null(s->archive);
	assert_int_equal(rows(s, "episode WHERE answers IS NULL"), 1);
	assert_int_equal(find_word(s, "leek").hits, 1);
}

static void
foreign_files_are_refused(void **state)
{
	static const struct {
		const char *sql, *says;
	} rows[] = {
	    {"PRAGMA user_version = 99", "newer"},
	    {"PRAGMA application_id = 7", "no archive of tamis"},
	};
	struct shelf *s = *state;

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct err e = {0};

		assert_true(store_script(s->archive, rows[i].sql, &e));
		assert_null(archive_open(s->path, ARCHIVE_READ, &e));
		assert_non_null(strstr(e.text, rows[i].says));
	}
}

static void
no_database_is_told(void **state)
{
	struct shelf *s = *state;
	const char *path = arena_fmt(&s->arena, "%s.text", s->path).p;
	FILE *f = fopen(path, "w");
	struct err e = {0}, none = {0};

	fputs("This is a letter to my sister, and it is long enough for a page.\n", f);
	fclose(f);
	assert_null(archive_open(path, ARCHIVE_CHANGE, &e));
	assert_non_null(strstr(e.text, "no archive"));
	unlink(path);
	assert_null(archive_open(path, ARCHIVE_READ, &none));
	assert_non_null(strstr(none.text, "there is no archive"));
}

/* ---- texts -------------------------------------------------------------- */

static void
packed_texts_come_back(void **state)
{
	struct shelf *s = *state;
	struct packed in = {STR("a script"), STR("passages of it"), STR("{\"a\":1}"),
	    STR(""), STR(""), STR("")};
	struct packed out = in;
	struct str block = pack_deflate(&s->arena, &in);

	assert_true(pack_inflate(&s->arena, block, &out));
	assert_true(str_is(in.source, out.source) && str_is(in.passages, out.passages) &&
		    str_is(in.json, out.json));
	block.n--;
	assert_false(pack_inflate(&s->arena, block, &out));
}

static void
json_loses_its_blanks(void **state)
{
	struct shelf *s = *state;
	struct str packed = pack_json(
	    &s->arena, STR("{\n  \"a b\": [1, \"c \\\" d\\\\\"],\n  \"e\": 2\n}\n"));

	assert_true(str_is_z(packed, "{\"a b\":[1,\"c \\\" d\\\\\"],\"e\":2}"));
}

/* ---- figures ------------------------------------------------------------ */

static void
figures_are_read(void **state)
{
	static const struct {
		const char *text;
		enum dimension wanted;
		double min, max;
	} rows[] = {
	    {"180C", DIM_TEMPERATURE, 180, 180},
	    {"170-180C", DIM_TEMPERATURE, 170, 180},
	    {"180-170 C", DIM_TEMPERATURE, 170, 180},
	    {"350F", DIM_TEMPERATURE, 176.667, 176.667},
	    {"350\xc2\xb0"
	     "F",
		DIM_TEMPERATURE, 176.667, 176.667},
	    {"gas mark 4", DIM_TEMPERATURE, 176.667, 176.667},
	    {"gas 1/2", DIM_TEMPERATURE, 121.111, 121.111},
	    {"200C-", DIM_TEMPERATURE, 200, INFINITY},
	    {"-100 C", DIM_TEMPERATURE, -INFINITY, 100},
	    {"45min", DIM_TIME, 2700, 2700},
	    {"1h30", DIM_TIME, 5400, 5400},
	    {"1 h 30 min", DIM_TIME, 5400, 5400},
	    {"1-2 hours", DIM_TIME, 3600, 7200},
	    {"200 g", DIM_COUNT, 200, 200},
	    {"1/2 kg", DIM_COUNT, 500, 500},
	    {"2-3 cups", DIM_COUNT, 473.176, 709.765},
	    {"1 1/2 cups", DIM_COUNT, 354.882, 354.882},
	    {"1-2tbsp", DIM_COUNT, 14.787, 29.574},
	    {"2-3", DIM_COUNT, 2, 3},
	};
	struct shelf *s = *state;

	keep(s, "soup.txt", soup);
	for (size_t i = 0; i < COUNT(rows); i++) {
		struct figure f = {0};
		struct err e = {0};

		if (!figure_read(s->archive, str_of(rows[i].text), rows[i].wanted, &f, &e))
			fail_msg("%s: %s", rows[i].text, e.text);
		if (!(fabs(f.min - rows[i].min) < 0.001 || f.min == rows[i].min) ||
		    !(fabs(f.max - rows[i].max) < 0.001 || f.max == rows[i].max))
			fail_msg("%s: %g to %g", rows[i].text, f.min, f.max);
	}
}

static void
no_figures_are_refused(void **state)
{
	static const struct {
		const char *text;
		enum dimension wanted;
	} rows[] = {
	    {"", DIM_TEMPERATURE},
	    {"hot", DIM_TEMPERATURE},
	    {"180", DIM_TEMPERATURE},
	    {"180K", DIM_TEMPERATURE},
	    {"gas mark", DIM_TEMPERATURE},
	    {"170-180C x", DIM_TEMPERATURE},
	    {"20", DIM_TIME},
	    {"soon", DIM_TIME},
	    {"3 furlongs", DIM_COUNT},
	    {"1/0 cup", DIM_COUNT},
	};
	struct shelf *s = *state;

	keep(s, "soup.txt", soup);
	for (size_t i = 0; i < COUNT(rows); i++) {
		struct figure f;
		struct err e = {0};

		if (figure_read(s->archive, str_of(rows[i].text), rows[i].wanted, &f, &e))
			fail_msg("\"%s\" is read", rows[i].text);
		assert_true(e.set && e.text[0]);
	}
}

/* ---- hits --------------------------------------------------------------- */

static void
hits_have_all_they_need(void **state)
{
	struct shelf *s = *state;
	struct answer a;
	const struct hit *h;

	keep(s, "soup.txt", soup);
	a = find_word(s, "softens");
	assert_int_equal(a.hits, 1);
	h = &a.hit[0];
	assert_true(str_is_z(h->dish, "leek soup"));
	assert_true(str_is_z(h->episode, "soup.txt"));
	assert_int_equal(h->at_ms, 20000);
	assert_true(str_is_z(h->link, "https://video.example/leeks#t=20"));
	assert_int_equal(h->marks, 1);
	assert_true(
	    str_is_z(str_cut(h->sentence, h->mark[0].beg, h->mark[0].end), "Soften"));
}

static void
filters_hold(void **state)
{
	struct shelf *s = *state;
	struct with milk = {STR("milk"), true, {400, 500, DIM_VOLUME}};
	struct with more = {STR("milk"), true, {900, 1000, DIM_VOLUME}};
	struct str leek = STR("leek"), egg = STR("egg");

	keep(s, "soup.txt", soup);
	assert_int_equal(find(s, (struct question){.with = &milk, .withs = 1}).hits, 1);
	assert_int_equal(find(s, (struct question){.with = &more, .withs = 1}).hits, 0);
	assert_int_equal(
	    find(s, (struct question){.without = &leek, .withouts = 1}).hits, 0);
	assert_int_equal(
	    find(s, (struct question){.without = &egg, .withouts = 1}).hits, 1);
	assert_int_equal(find(s, (struct question){.free_of = STR("milk")}).hits, 0);
	assert_int_equal(find(s, (struct question){.free_of = STR("fish")}).hits, 1);
	assert_int_equal(find(s, (struct question){.action = STR("simmer")}).hits, 1);
	assert_int_equal(find(s, (struct question){.episode = STR("SOUP")}).hits, 1);
	assert_int_equal(find(s, (struct question){.since = STR("2026-03")}).hits, 1);
	assert_int_equal(find(s, (struct question){.until = STR("2026-03")}).hits, 1);
	assert_int_equal(find(s, (struct question){.until = STR("2026-02")}).hits, 0);
}

static void
near_answers_say_so(void **state)
{
	struct shelf *s = *state;
	struct str words[] = {STR("leek"), STR("marzipan")};
	struct answer a;

	keep(s, "soup.txt", soup);
	a = find(s, (struct question){.word = words, .words = 2});
	assert_int_equal(a.hits, 1);
	assert_true(a.loose);
	assert_int_equal(a.nowheres, 1);
	assert_true(str_is_z(a.nowhere[0], "marzipan"));
}

/* ---- the past ----------------------------------------------------------- */

static const char roast[] = "[0:02] Today it's roast chicken.\n"
			    "[0:10] Heat the oven to %d Celsius.\n"
			    "[0:20] Roast the chicken at %d Celsius for %d minutes.\n";

static size_t
unlike(struct shelf *s, const char *name, int c, int minutes, struct str *message)
{
	struct tamis_options o = {0};
	struct err e = {0};
	struct str script = arena_fmt(&s->arena, roast, c, c, minutes);
	struct draft *d = tamis_draft(s->grammar, &o, script, name, &e);
	size_t n = 0;

	assert_non_null(d);
	assert_true(archive_compare(s->archive, s->grammar, d, &e));
	for (size_t i = 0; i < d->findings; i++)
		if (strcmp(d->finding[i].kind->code, "unlike-before") == 0) {
			*message = arena_str(&s->arena, d->finding[i].message);
			n++;
		}
	tamis_draft_free(d);
	return n;
}

static void
what_differs_from_the_past_is_asked(void **state)
{
	static const char *const names[] = {"one.txt", "two.txt", "three.txt"};
	struct shelf *s = *state;
	struct str message = {"", 0};

	for (size_t i = 0; i < COUNT(names); i++) {
		assert_int_equal(unlike(s, "new.txt", 120, 80, &message), 0);
		keep(s, names[i], arena_fmt(&s->arena, roast, 200, 200, 75 + 5 * (int)i).p);
	}
	assert_int_equal(unlike(s, "new.txt", 210, 80, &message), 0);
	assert_int_equal(unlike(s, "new.txt", 120, 80, &message), 1);
	for (size_t i = 0; i < COUNT(names); i++)
		assert_true(str_find(message, str_of(names[i])) < message.n);
	assert_int_equal(unlike(s, "new.txt", 200, 20, &message), 1);
	assert_int_equal(unlike(s, "one.txt", 120, 80, &message), 0);
}

/* ---- running ------------------------------------------------------------ */

static int
set_up(void **state)
{
	struct shelf *s = test_calloc(1, sizeof *s);
	struct err e = {0};

	arena_init(&s->arena);
	s->path = arena_fmt(
	    &s->arena, "%s/test_archive.%ld.db", build_folder(&s->arena).p, (long)getpid())
		      .p;
	s->grammar = tamis_grammar_open(NULL, "en", &e);
	*state = s;
	return s->grammar ? 0 : -1;
}

static int
tear_down(void **state)
{
	struct shelf *s = *state;

	unlink(s->path);
	tamis_grammar_close(s->grammar);
	arena_release(&s->arena);
	test_free(s);
	return 0;
}

#define TEST(name) cmocka_unit_test_setup_teardown(name, open_shelf, close_shelf)

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    TEST(what_goes_in_comes_out),
	    TEST(once_more_takes_its_place),
	    TEST(forgetting_leaves_nothing),
	    TEST(it_is_sound),
	    TEST(a_damaged_text_is_told),
	    TEST(older_tables_are_brought_up),
	    TEST(foreign_files_are_refused),
	    TEST(no_database_is_told),
	    TEST(packed_texts_come_back),
	    TEST(json_loses_its_blanks),
	    TEST(figures_are_read),
	    TEST(no_figures_are_refused),
	    TEST(hits_have_all_they_need),
	    TEST(filters_hold),
	    TEST(near_answers_say_so),
	    TEST(what_differs_from_the_past_is_asked),
	};

	return cmocka_run_group_tests(tests, set_up, tear_down);
}
