/* SPDX-License-Identifier: ISC */
/*
 * Rows of talk, and how many findings of one code each must raise, through the
 * whole pipeline. A row stands for one episode of one paragraph at 0:00, or, with
 * a line break in it, for a script of stamped lines.
 */
#ifndef TAMIS_TEST_TALK_H
#define TAMIS_TEST_TALK_H

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "../support/expect.h"
#include "tamis.h"

enum { SILENT_MIN = 5, FIRING_MIN = 5 };

struct talk_row {
	size_t want; /* findings of the code */
	const char *talk;
};

static inline struct draft *
talk_draft(const struct grammar *g, const char *talk)
{
	struct tamis_options o = {0};
	struct err e = {0};
	struct arena a;
	struct str script;
	struct draft *d;

	arena_init(&a);
	script = arena_fmt(&a, "[0:00] %s\n", talk);
	d = tamis_draft(g, &o, script, "show.txt", &e);
	assert_non_null(d);
	arena_release(&a);
	return d;
}

static inline size_t
talk_count(const struct draft *d, const char *code)
{
	size_t n = 0;

	for (size_t i = 0; i < d->findings; i++)
		n += str_is_z(str_of(d->finding[i].kind->code), code);
	return n;
}

/* Every row raises as many findings of the code as it wants; enough rows are
 * silent, and enough fire. */
static inline void
expect_talk(
    const struct grammar *g, const char *code, const struct talk_row *row, size_t rows)
{
	size_t silent = 0, wrong = 0;

	for (size_t i = 0; i < rows; i++) {
		struct draft *d = talk_draft(g, row[i].talk);
		size_t n = talk_count(d, code);

		if (n != row[i].want) {
			print_error(
			    "%s %zu, not %zu: %s\n", code, n, row[i].want, row[i].talk);
			wrong++;
		}
		silent += row[i].want == 0;
		tamis_draft_free(d);
	}
	assert_int_equal(wrong, 0);
	assert_true(silent >= SILENT_MIN);
	assert_true(rows - silent >= FIRING_MIN);
}

#endif
