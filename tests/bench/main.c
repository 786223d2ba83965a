/* SPDX-License-Identifier: ISC */
/*
 * bench: how fast scripts go through the whole pipeline, one thread.
 *   bench FOLDER
 * Drafts every script with gold beside it in rounds, for some seconds.
 */
#include "../support/source.h"
#include "tamis.h"

#include <stdio.h>
#include <time.h>

enum { SECONDS = 3 };

static double
now(void)
{
	struct timespec t;

	clock_gettime(CLOCK_MONOTONIC, &t);
	return (double)t.tv_sec + (double)t.tv_nsec / 1e9;
}

struct work {
	struct str *source;
	size_t sources, bytes;
};

static bool
read_work(struct arena *a, struct work *w, const char *folder, struct err *e)
{
	struct paths gold = paths_find(a, arena_fmt(a, "%s/*.gold.tsv", folder).p);

	w->source = arena_array(a, gold.n, struct str);
	for (size_t i = 0; i < gold.n; i++) {
		struct str path = script_of_gold(a, gold.v[i]);

		if (!source_read(a, path.p, &w->source[i], e))
			return false;
		w->bytes += w->source[i].n;
		w->sources++;
	}
	return w->sources > 0 || err_set(e, folder, "no script with gold is there");
}

static bool
draft_round(const struct grammar *g, const struct work *w, struct err *e)
{
	struct tamis_options o = {0};

	for (size_t i = 0; i < w->sources; i++) {
		struct draft *d = tamis_draft(g, &o, w->source[i], "bench", e);

		if (!d)
			return false;
		tamis_draft_free(d);
	}
	return true;
}

static bool
bench(struct arena *a, const char *folder, struct err *e)
{
	struct work w = {NULL, 0, 0};
	double begun = now(), spent = 0;
	struct grammar *g = tamis_grammar_open(NULL, "en", e);
	double opened = now() - begun;
	size_t rounds = 0;
	bool ok = g && read_work(a, &w, folder, e);

	begun = now();
	for (; ok && spent < SECONDS; rounds++) {
		ok = draft_round(g, &w, e);
		spent = now() - begun;
	}
	if (g)
		tamis_grammar_close(g);
	if (!ok)
		return false;
	printf("grammar opened in %.1f ms\n", opened * 1e3);
	printf(
	    "%zu scripts, %zu bytes, %zu rounds in %.2f s: %.2f MB/s, %.2f ms a script\n",
	    w.sources, w.bytes, rounds, spent, (double)(w.bytes * rounds) / spent / 1e6,
	    spent * 1e3 / (double)(rounds * w.sources));
	return true;
}

int
main(int argc, char **argv)
{
	struct arena a;
	struct err e = {0};

	arena_init(&a);
	if (!bench(&a, argc > 1 ? argv[1] : "corpus", &e))
		fprintf(stderr, "bench: %s: %s\n", e.where, e.text);
	arena_release(&a);
	return e.set;
}
