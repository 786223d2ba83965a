/* SPDX-License-Identifier: ISC */
/*
 * Rows of drafts written as text (support/draft_text.h), and how many findings
 * of one code each must raise. For the tests of the checks.
 */
#ifndef TAMIS_TEST_CHECKS_H
#define TAMIS_TEST_CHECKS_H

#include <setjmp.h>
#include <stdarg.h>
#include <stdio.h>

#include <cmocka.h>

#include "../support/draft_text.h"
#include "../support/expect.h"
#include "check/check.h"

enum { SILENT_MIN = 5, FIRING_MIN = 5 };

struct draft_row {
	size_t want; /* findings of the code */
	const char *text;
};

static inline void
print_findings(const struct draft *d)
{
	for (size_t i = 0; i < d->findings; i++)
		print_error("  %s: %.*s\n", d->finding[i].kind->code,
		    (int)d->finding[i].message.n, d->finding[i].message.p);
}

static inline struct draft *
checked(struct arena *a, const struct grammar *g, const char *text)
{
	struct draft *d = draft_of_text(a, g, text);

	check_draft(d, g);
	return d;
}

static inline size_t
count_of(const struct draft *d, const char *code)
{
	size_t n = 0;

	for (size_t i = 0; i < d->findings; i++)
		n += strcmp(d->finding[i].kind->code, code) == 0;
	return n;
}

/* Every row raises as many findings of the code as it wants; enough rows are
 * silent, and enough fire. */
static inline void
expect_rows(
    const struct grammar *g, const char *code, const struct draft_row *row, size_t rows)
{
	size_t silent = 0, wrong = 0;

	for (size_t i = 0; i < rows; i++) {
		struct arena a;
		const struct draft *d;

		arena_init(&a);
		d = checked(&a, g, row[i].text);
		if (count_of(d, code) != row[i].want) {
			print_error("%s, row %zu: %s\n", code, i, row[i].text);
			print_findings(d);
			wrong++;
		}
		silent += row[i].want == 0;
		arena_release(&a);
	}
	assert_int_equal(wrong, 0);
	assert_true(silent >= SILENT_MIN);
	assert_true(rows - silent >= FIRING_MIN);
}

/* What the first finding of a code must be. */
struct finding_want {
	const char *code, *text;
	enum severity severity;
	const char *message;    /* words in it */
	const char *suggestion; /* NULL none */
};

static inline const struct finding *
finding_of(const struct draft *d, const char *code)
{
	for (size_t i = 0; i < d->findings; i++)
		if (strcmp(d->finding[i].kind->code, code) == 0)
			return &d->finding[i];
	print_findings(d);
	fail_msg("no %s", code);
	return NULL;
}

static inline void
expect_findings(const struct grammar *g, const struct finding_want *want, size_t wants)
{
	for (size_t i = 0; i < wants; i++) {
		struct arena a;
		const struct finding *f;

		arena_init(&a);
		f = finding_of(checked(&a, g, want[i].text), want[i].code);
		if (str_find(f->message, str_of(want[i].message)) == f->message.n)
			fail_msg("\"%.*s\" has not \"%s\"", (int)f->message.n, f->message.p,
			    want[i].message);
		assert_int_equal(f->severity, want[i].severity);
		if (want[i].suggestion && !str_is_z(f->suggestion, want[i].suggestion))
			fail_msg("suggests \"%.*s\", not \"%s\"", (int)f->suggestion.n,
			    f->suggestion.p, want[i].suggestion);
		assert_true(want[i].suggestion || f->suggestion.n == 0);
		arena_release(&a);
	}
}

#endif
