/* SPDX-License-Identifier: ISC */
/*
 * An arena or the grammar for a group of tests.
 */
#include "hold.h"

#include "draft_text.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

int
hold_arena(void **state)
{
	struct arena *a = test_malloc(sizeof *a);

	arena_init(a);
	*state = a;
	return 0;
}

int
drop_arena(void **state)
{
	arena_release(*state);
	test_free(*state);
	return 0;
}

int
hold_grammar(void **state)
{
	struct err e = {0};

	*state = tamis_grammar_open(NULL, "en", &e);
	if (!*state)
		print_error("%s:%u:%u: %s\n", e.where, e.line, e.column, e.text);
	return *state ? 0 : -1;
}

int
drop_grammar(void **state)
{
	tamis_grammar_close(*state);
	return 0;
}

int
hold_tables(void **state)
{
	*state = test_calloc(1, sizeof(struct grammar));
	draft_text_tables(*state);
	return 0;
}

int
drop_tables(void **state)
{
	struct grammar *g = *state;

	arena_release(&g->arena);
	test_free(g);
	return 0;
}
