/* SPDX-License-Identifier: ISC */
/*
 * tamis forget: takes episodes out of the archive.
 */
#include "archive/archive.h"
#include "cli/request.h"
#include "term/nearest.h"

#include <stdio.h>

static void
complain_of_name(struct archive *a, const char *name, struct arena *arena)
{
	struct nearest near = nearest_to(name);
	struct knowns all = {NULL, 0};
	struct err ignored = {0};

	archive_known(a, arena, &all, &ignored);
	for (size_t i = 0; i < all.n; i++)
		nearest_offer(&near, all.v[i].name.p);
	if (near.best)
		complain("no episode %s in the archive; did you mean %s?", name, near.best);
	else
		complain("no episode %s in the archive", name);
}

static enum outcome
forget_all(struct archive *a, const struct request *r, struct arena *arena)
{
	enum outcome outcome = OUTCOME_CLEAN;
	struct err e = {0};
	size_t gone = 0;
	bool found;

	for (size_t i = 0; i < r->operands; i++) {
		if (!archive_forget(a, str_of(r->operand[i]), &found, &e)) {
			complain_of(&e);
			return OUTCOME_MACHINE;
		}
		gone += found;
		if (found)
			continue;
		complain_of_name(a, r->operand[i], arena);
		outcome = OUTCOME_UNUSABLE;
	}
	printf("forgot %zu\n", gone);
	return outcome;
}

static enum outcome
run_forget(const struct request *r)
{
	enum outcome outcome = OUTCOME_UNUSABLE;
	struct archive *a = NULL;
	struct err e = {0};
	struct arena arena;
	const char *path;

	if (r->operands == 0) {
		complain("no episode is named; they are known by their file names");
		return OUTCOME_UNUSABLE;
	}
	arena_init(&arena);
	path = request_archive(r, &arena);
	if (path)
		a = archive_open(path, ARCHIVE_CHANGE, &e);
	else
		complain("no data folder is known (HOME is not set); name an --archive");
	if (e.set)
		complain_of(&e);
	if (a)
		outcome = forget_all(a, r, &arena);
	archive_close(a);
	arena_release(&arena);
	return outcome;
}

const struct command command_forget = {
    .name = "forget",
    .help = "take episodes out of the archive",
    .usage = "tamis forget [OPTION...] NAME...\n\n"
	     "Takes out each episode with all that was made of it. NAME is the file name\n"
	     "that it was kept by, with NAME/ before it where that was given.\n",
    .options = "archive",
    .run = run_forget,
};
