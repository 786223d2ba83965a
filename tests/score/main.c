/* SPDX-License-Identifier: ISC */
/*
 * score: how much of what an editor would take from the scripts is found.
 *   score [--verbose] [--floor FILE | --record FILE] FOLDER|FILE.gold.tsv...
 */
#include "../support/source.h"
#include "compare.h"
#include "report.h"

#include <getopt.h>
#include <stdio.h>
#include <stdlib.h>

static bool
score_script(struct arena *a, struct tally *t, const struct grammar *grammar,
    struct str gold_path, struct err *e)
{
	struct tamis_options o = {0};
	struct gold gold = {0};
	struct match m = {a, &gold, NULL, t, NULL};
	struct draft *draft;
	struct str source;

	*t = (struct tally){.arena = a, .script = script_of_gold(a, gold_path)};
	if (t->script.n == 0)
		return err_set(e, gold_path.p, "no script stands beside it");
	if (!gold_read(a, &gold, gold_path.p, e) ||
	    !source_read(a, t->script.p, &source, e))
		return false;
	draft = tamis_draft(grammar, &o, source, file_name(t->script), e);
	if (!draft)
		return false;
	m.draft = draft;
	compare_dishes(&m);
	compare_measures(&m);
	compare_ingredients(&m);
	compare_heat(&m);
	compare_findings(&m);
	/* What the slips say of the draft must outlive it. */
	for (size_t i = 0; i < t->slip.n; i++) {
		t->slip.v[i].kind = arena_str(a, t->slip.v[i].kind);
		t->slip.v[i].text = arena_str(a, t->slip.v[i].text);
	}
	tamis_draft_free(draft);
	return true;
}

/* A folder stands for all the gold in it. */
static struct paths
gold_paths(struct arena *a, const char *path)
{
	struct paths found = paths_find(a, arena_fmt(a, "%s/*.gold.tsv", path).p);

	return found.n ? found : paths_find(a, path);
}

static bool
score_path(struct arena *a, struct scores *s, const struct grammar *grammar,
    const char *path, struct err *e)
{
	struct paths gold = gold_paths(a, path);
	struct tally one;

	if (gold.n == 0)
		return err_set(e, path, "no *.gold.tsv is there");
	for (size_t i = 0; i < gold.n; i++) {
		if (!str_ends(gold.v[i], STR(".gold.tsv")))
			return err_set(e, gold.v[i].p, "not named *.gold.tsv");
		if (!score_script(a, &one, grammar, gold.v[i], e))
			return false;
		vec_push(a, &s->script, one);
		tally_add(&s->total, &one);
	}
	return true;
}

struct asked {
	const char *floor, *record;
	bool verbose;
};

static bool
score_all(const struct asked *asked, struct arena *a, char **paths, struct err *e)
{
	struct grammar *grammar = tamis_grammar_open(NULL, "en", e);
	struct scores s = {.total = {.arena = a}};
	bool ok = grammar != NULL;

	for (; ok && *paths; paths++)
		ok = score_path(a, &s, grammar, *paths, e);
	if (ok) {
		report_table(&s);
		if (asked->verbose)
			report_slips(&s.total);
		report_kinds(&s.total);
	}
	if (ok && asked->record)
		ok = report_record(&s.total, a, asked->record, e);
	if (ok && asked->floor)
		ok = report_floor(&s.total, a, asked->floor, e);
	if (grammar)
		tamis_grammar_close(grammar);
	return ok;
}

int
main(int argc, char **argv)
{
	static const struct option options[] = {{"floor", required_argument, NULL, 'f'},
	    {"record", required_argument, NULL, 'r'}, {"verbose", no_argument, NULL, 'v'},
	    {0}};
	struct asked asked = {0};
	struct arena a;
	struct err e = {0};
	int letter;

	while ((letter = getopt_long(argc, argv, "v", options, NULL)) != -1) {
		if (letter == '?')
			return 2;
		if (letter == 'f')
			asked.floor = optarg;
		if (letter == 'r')
			asked.record = optarg;
		asked.verbose |= letter == 'v';
	}
	arena_init(&a);
	if (!score_all(&asked, &a, argv + optind, &e))
		fprintf(stderr, "score: %s:%u:%u: %s\n", e.where, e.line, e.column, e.text);
	arena_release(&a);
	return e.set;
}
