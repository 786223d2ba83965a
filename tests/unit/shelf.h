/* SPDX-License-Identifier: ISC */
/*
 * A new archive for each test, and an episode to put in. For the tests of the
 * archive alone.
 */
#ifndef TAMIS_TEST_SHELF_H
#define TAMIS_TEST_SHELF_H

#include "../support/expect.h"
#include "archive/archive.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <unistd.h>

#include <cmocka.h>

#include "../support/program.h"
#include "archive/store.h"

struct shelf {
	struct arena arena;
	struct grammar *grammar;
	const char *path;
	struct archive *archive;
};

/* A new archive for each test. */
static inline int
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

static inline int
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

static inline enum kept
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

static inline int64_t
rows(struct shelf *s, const char *table)
{
	struct err e = {0};
	int64_t n;

	assert_true(store_number(
	    s->archive, arena_fmt(&s->arena, "SELECT count(*) FROM %s", table).p, &n, &e));
	return n;
}

static inline int
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

static inline int
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

#define TEST(name) cmocka_unit_test_setup_teardown(name, open_shelf, close_shelf)

#endif
