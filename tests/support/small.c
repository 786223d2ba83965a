/* SPDX-License-Identifier: ISC */
/*
 * Writes a small grammar into BUILD/small and opens it.
 */
#include "small.h"

#include "program.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <sys/stat.h>

#include <cmocka.h>

static void
write_file(struct arena *a, struct str folder, const char *name, const char *text)
{
	struct str path = arena_fmt(a, "%.*s/%s", (int)folder.n, folder.p, name);
	FILE *f;

	remove(path.p);
	if (!text)
		return;
	f = fopen(path.p, "wb");
	if (!f || fputs(text, f) < 0 || fclose(f) != 0)
		fail_msg("%s cannot be written", path.p);
}

struct grammar *
small_open(struct arena *a, const struct small *s, struct err *e)
{
	struct str top = build_folder(a);
	struct str folder = arena_fmt(a, "%.*s/small", (int)top.n, top.p);

	mkdir(folder.p, 0777);
	mkdir(arena_fmt(a, "%s/en", folder.p).p, 0777);
	mkdir(arena_fmt(a, "%s/tables", folder.p).p, 0777);
	write_file(a, folder, "en/small.lex", s->lex);
	write_file(a, folder, "en/small.gram", s->gram);
	write_file(a, folder, "tables/units.tsv", s->units);
	return tamis_grammar_open(folder.p, "en", e);
}
