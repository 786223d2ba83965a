/* SPDX-License-Identifier: ISC */
/*
 * Compares texts for the tests, and shows both where they differ.
 */
#include "expect.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

void
expect_at(struct str got, const char *want, const char *file, int line)
{
	if (str_is(got, str_of(want)))
		return;
	print_error("got  \"%.*s\"\nwant \"%s\"\n", (int)got.n, got.n ? got.p : "",
	    want ? want : "");
	_fail(file, line);
}

void
expect_taken_at(struct buf *b, const char *want, const char *file, int line)
{
	expect_at(buf_str(b), want, file, line);
	b->n = 0;
}

bool
has(struct str text, const char *words)
{
	return words[0] == '\0' || str_find(text, str_of(words)) < text.n;
}
