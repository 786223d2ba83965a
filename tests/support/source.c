/* SPDX-License-Identifier: ISC */
/*
 * Whole files into an arena, and patterns into sorted paths.
 */
#include "source.h"

#include "base/buf.h"

#include <errno.h>
#include <glob.h>
#include <stdio.h>

bool
source_read(struct arena *a, const char *path, struct str *out, struct err *e)
{
	struct buf b = buf_in(a);
	char piece[8192];
	FILE *f = fopen(path, "rb");
	size_t n;
	bool failed;

	if (!f)
		return err_set(e, path, "can't be opened: %s", strerror(errno));
	while ((n = fread(piece, 1, sizeof piece, f)) > 0)
		buf_put(&b, (struct str){piece, n});
	failed = ferror(f);
	fclose(f);
	if (failed)
		return err_set(e, path, "can't be read");
	*out = arena_str(a, buf_str(&b));
	return true;
}

struct paths
paths_find(struct arena *a, const char *pattern)
{
	struct paths found = {NULL, 0};
	glob_t g;

	if (glob(pattern, 0, NULL, &g) != 0)
		return found;
	found.v = arena_array(a, g.gl_pathc, struct str);
	for (size_t i = 0; i < g.gl_pathc; i++)
		found.v[found.n++] = arena_str(a, str_of(g.gl_pathv[i]));
	globfree(&g);
	return found;
}

struct str
script_of_gold(struct arena *a, struct str gold)
{
	struct str stem = str_cut(gold, 0, gold.n - STR("gold.tsv").n);
	struct paths all = paths_find(a, arena_fmt(a, "%.*s*", (int)stem.n, stem.p).p);

	for (size_t i = 0; i < all.n; i++)
		if (!str_ends(all.v[i], STR(".tsv")))
			return all.v[i];
	return STR("");
}

const char *
file_name(struct str path)
{
	size_t at = path.n;

	while (at > 0 && path.p[at - 1] != '/')
		at--;
	return path.p + at;
}
