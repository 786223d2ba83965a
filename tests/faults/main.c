/* SPDX-License-Identifier: ISC */
/*
 * faults: what can happen to an archive must not harm it.
 *   faults BUILD_FOLDER
 * Made-up episodes are kept while the program is killed, the disk is full, the
 * folder is read-only, and others keep and search at the same time.
 */
#include "faults.h"

#include "../support/process.h"
#include "../support/source.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

const char *
site_path(struct site *s, const char *name)
{
	return arena_fmt(&s->arena, "%s/%s", s->folder, name).p;
}

int
site_keep(struct site *s, const char *archive, const char *list)
{
	const char *const argv[] = {
	    s->tamis, "keep", "--archive", archive, "--from", list, NULL};

	return process_run(argv, site_path(s, "said"));
}

static struct str
read_file(struct site *s, const char *path)
{
	struct err e = {0};
	struct str text = {"", 0};

	source_read(&s->arena, path, &text, &e);
	return text;
}

void
site_need(struct site *s, bool ok, const char *what)
{
	struct str said;

	if (ok)
		return;
	said = read_file(s, site_path(s, "said"));
	fprintf(stderr, "faults: failed: %s\n%.*s", what, (int)said.n, said.p);
	exit(1);
}

bool
site_said(struct site *s, const char *words)
{
	struct str said = read_file(s, site_path(s, "said"));

	return str_find(said, str_of(words)) < said.n;
}

void
site_repeat(struct site *s)
{
	struct str said = read_file(s, site_path(s, "said"));

	fwrite(said.p, 1, said.n, stdout);
}

static bool
has_expected(struct site *s, const char *path)
{
	struct str a = read_file(s, path), b = read_file(s, s->expected);

	return a.n > 0 && str_is(a, b);
}

void
site_verify(struct site *s, const char *archive)
{
	const char *exported = site_path(s, "exported");
	const char *const check[] = {
	    s->tamis, "archive", "check", "--archive", archive, NULL};
	const char *const export[] = {s->tamis, "archive", "export", "--archive", archive,
	    "--output", exported, NULL};

	site_need(s, process_run(check, site_path(s, "said")) == 0, "archive check");
	site_need(s, process_run(export, site_path(s, "said")) == 0, "archive export");
	site_need(s, has_expected(s, exported), "the same content as an undisturbed run");
}

/* ---- setting up --------------------------------------------------------- */

static void
write_lists(struct site *s, const char *scripts)
{
	struct paths all = paths_find(&s->arena, arena_fmt(&s->arena, "%s/*", scripts).p);
	FILE *list = fopen(s->list, "w");
	FILE *half[2] = {fopen(s->half[0], "w"), fopen(s->half[1], "w")};

	site_need(s, list && half[0] && half[1] && all.n == EPISODES, "lists of episodes");
	for (size_t i = 0; i < all.n; i++) {
		fprintf(list, "%s\n", all.v[i].p);
		fprintf(half[i % 2], "%s\n", all.v[i].p);
	}
	fclose(list);
	fclose(half[0]);
	fclose(half[1]);
}

static void
make_episodes(struct site *s)
{
	const char *scripts = site_path(s, "scripts");
	const char *count = arena_fmt(&s->arena, "%d", EPISODES).p;
	const char *const argv[] = {s->made, count, scripts, NULL};

	site_need(s, mkdir(scripts, 0777) == 0, "an empty folder");
	site_need(s, process_run(argv, NULL) == 0, "made-up episodes");
	s->list = site_path(s, "list");
	s->half[0] = site_path(s, "list.0");
	s->half[1] = site_path(s, "list.1");
	write_lists(s, scripts);
}

/* The run that nothing happens to, and how long it takes. */
static void
keep_undisturbed(struct site *s)
{
	const char *archive = site_path(s, "undisturbed.db");
	const char *const export[] = {s->tamis, "archive", "export", "--archive", archive,
	    "--output", site_path(s, "expected"), NULL};
	double begun = seconds_now();

	site_need(s, site_keep(s, archive, s->list) == 0, "keeping undisturbed");
	s->whole_s = seconds_now() - begun;
	begun = seconds_now();
	site_need(s, site_keep(s, archive, s->list) == 0, "keeping once more");
	s->begin_s = seconds_now() - begun;
	site_need(s, site_said(s, "2000 as they were"), "nothing to do the second time");
	s->expected = site_path(s, "expected");
	site_need(s, process_run(export, site_path(s, "said")) == 0, "exporting");
	printf("undisturbed: %d episodes in %.1f s\n", EPISODES, s->whole_s);
}

int
main(int argc, char **argv)
{
	struct site s = {0};

	if (argc != 2) {
		fputs("faults BUILD_FOLDER\n", stderr);
		return 2;
	}
	setvbuf(stdout, NULL, _IOLBF, 0);
	arena_init(&s.arena);
	s.tamis = arena_fmt(&s.arena, "%s/tamis", argv[1]).p;
	s.made = arena_fmt(&s.arena, "%s/made", argv[1]).p;
	s.folder = arena_fmt(&s.arena, "%s/faults.%ld", argv[1], (long)getpid()).p;
	site_need(&s, mkdir(s.folder, 0777) == 0, "a folder of its own");
	make_episodes(&s);
	keep_undisturbed(&s);
	fault_kills(&s);
	fault_size_limit(&s);
	fault_full_disk(&s);
	fault_read_only(&s);
	fault_crowd(&s);
	puts("faults: all held");
	arena_release(&s.arena);
	return 0;
}
