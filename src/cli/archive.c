/* SPDX-License-Identifier: ISC */
/*
 * tamis archive: whether the archive is sound and up to date, and all of it as
 * JSON Lines or as a page.
 */
#include "archive/archive.h"
#include "cli/episodes.h"
#include "cli/request.h"
#include "page/past.h"
#include "term/nearest.h"

#include <errno.h>
#include <stdio.h>

/* What a verb has in hand. */
struct task {
	const struct request *request;
	struct archive *archive;
	struct arena *arena;
	const char *path;
	FILE *out;
};

/* ---- check, renew ------------------------------------------------------- */

struct checking {
	struct archive *from; /* read by workers, one at a time */
	struct archive *to;   /* renewed; NULL: only compared */
	size_t differ;
	struct progress progress;
};

/* Made by read(), completed by render(). */
struct compared {
	struct kept_episode kept;
	struct parcel parcel;
	bool same;
};

static bool
read_kept(struct episode *e, const struct run *run, struct buf *source)
{
	const struct checking *k = run->context;
	struct compared *c = arena_new(&e->arena, struct compared);

	e->made = c;
	e->name = str_of(e->path);
	if (!archive_episode(k->from, &e->arena, e->name, &c->kept, &e->err))
		return false;
	if (c->kept.region.n)
		e->region = c->kept.region.p;
	if (c->kept.profile.n)
		e->profile = c->kept.profile.p;
	e->answers = c->kept.answers;
	buf_put(source, c->kept.source);
	return true;
}

static enum outcome
compare(struct episode *e, const struct draft *d, const struct run *run)
{
	struct compared *c = e->made;

	c->parcel.name = e->name;
	c->parcel.region = c->kept.region;
	c->parcel.profile = c->kept.profile;
	c->parcel.answers = c->kept.answers;
	c->parcel.draft = d;
	parcel_make(&e->arena, run->grammar, &c->parcel);
	c->same = str_is(c->parcel.json, c->kept.json);
	return OUTCOME_CLEAN;
}

static enum outcome
take_compared(const struct episode *e, const struct run *run, size_t before)
{
	struct checking *k = run->context;
	const struct compared *c = e->made;
	enum kept kept;
	struct err err = {0};

	(void)before;
	progress_step(&k->progress);
	if (c->same)
		return OUTCOME_CLEAN;
	k->differ++;
	if (k->to && archive_keep(k->to, run->grammar, &c->parcel, &kept, &err))
		return OUTCOME_CLEAN;
	progress_clear(&k->progress);
	if (err.set) {
		complain_of(&err);
		return OUTCOME_MACHINE;
	}
	printf("%s: another draft than this tamis makes of it\n", e->path);
	return OUTCOME_FINDINGS;
}

/* The drafts of all episodes, made again. */
static enum outcome
draft_again(struct task *t, struct checking *k)
{
	struct request all = *t->request;
	struct run run = {.read = read_kept,
	    .render = compare,
	    .take = take_compared,
	    .request = &all,
	    .context = k};
	struct knowns knowns;
	struct err e = {0};
	char **operand;
	enum outcome outcome = OUTCOME_CLEAN;

	if (!archive_known(t->archive, t->arena, &knowns, &e)) {
		complain_of(&e);
		return OUTCOME_MACHINE;
	}
	operand = arena_array(t->arena, knowns.n + 1, char *);
	for (size_t i = 0; i < knowns.n; i++)
		operand[i] = (char *)knowns.v[i].name.p;
	all.operand = operand;
	all.operands = knowns.n;
	progress_begin(&k->progress, "drafted", knowns.n);
	if (knowns.n)
		outcome = episodes_run(&run);
	progress_clear(&k->progress);
	printf("%zu episodes, %zu %s\n", knowns.n, k->differ,
	    k->to ? "renewed" : "with another draft");
	return outcome;
}

static void
print_unsound(void *context, struct str what)
{
	(void)context;
	printf("%.*s\n", (int)what.n, what.p);
}

static enum outcome
run_check(struct task *t)
{
	struct checking k = {.from = t->archive};
	struct err e = {0};
	bool sound = archive_verify(t->archive, print_unsound, NULL, &e);
	enum outcome outcome;

	if (e.set) {
		complain_of(&e);
		return OUTCOME_MACHINE;
	}
	puts(sound ? "the file is sound" : "the file is damaged");
	outcome = draft_again(t, &k);
	return !sound && outcome < OUTCOME_FINDINGS ? OUTCOME_FINDINGS : outcome;
}

static enum outcome
run_renew(struct task *t)
{
	struct checking k = {.from = t->archive};
	enum outcome outcome = OUTCOME_MACHINE;
	struct err e = {0};

	k.to = archive_open(t->path, ARCHIVE_CHANGE, &e);
	if (k.to)
		outcome = draft_again(t, &k);
	else
		complain_of(&e);
	archive_close(k.to);
	return outcome;
}

/* ---- export, report ----------------------------------------------------- */

static bool
put_line(void *context, struct str line)
{
	FILE *out = context;

	return fwrite(line.p, 1, line.n, out) == line.n && fputc('\n', out) != EOF;
}

static enum outcome
run_export(struct task *t)
{
	struct err e = {0};

	if (archive_export(t->archive, put_line, t->out, &e))
		return OUTCOME_CLEAN;
	if (e.set)
		complain_of(&e);
	return OUTCOME_MACHINE;
}

static enum outcome
run_report(struct task *t)
{
	struct err e = {0};
	struct survey survey;
	struct buf page = buf_in(t->arena);
	struct grammar *g = tamis_grammar_open(t->request->grammar, "en", &e);
	bool ok = g && archive_survey(t->archive, g, t->arena, &survey, &e);

	if (g)
		tamis_grammar_close(g);
	if (!ok) {
		complain_of(&e);
		return OUTCOME_MACHINE;
	}
	past_put(&page, &survey);
	return fwrite(page.v, 1, page.n, t->out) == page.n ? OUTCOME_CLEAN
							   : OUTCOME_MACHINE;
}

/* ---- the verbs ---------------------------------------------------------- */

struct verb {
	const char *name;
	enum archive_use use;
	enum outcome (*run)(struct task *t);
};

static const struct verb verbs[] = {
    {"check", ARCHIVE_READ, run_check},
    {"renew", ARCHIVE_CHANGE, run_renew},
    {"export", ARCHIVE_READ, run_export},
    {"report", ARCHIVE_READ, run_report},
};
enum { VERBS = sizeof verbs / sizeof *verbs };

static const struct verb *
verb_asked(const struct request *r)
{
	const char *typed = r->operands ? r->operand[0] : "";
	struct nearest near = nearest_to(typed);

	for (size_t i = 0; i < VERBS; i++) {
		if (strcmp(verbs[i].name, typed) == 0) {
			if (r->operands == 1)
				return &verbs[i];
			complain("archive %s takes no operand", typed);
			return NULL;
		}
		nearest_offer(&near, verbs[i].name);
	}
	if (near.best && typed[0])
		complain("archive: no %s; did you mean %s?", typed, near.best);
	else
		complain("archive: check, renew, export or report?");
	return NULL;
}

static enum outcome
run_with_output(struct task *t, const struct verb *v)
{
	const char *path = t->request->output;
	enum outcome outcome;

	t->out = stdout;
	if (!path || strcmp(path, "-") == 0)
		return v->run(t);
	t->out = fopen(path, "wb");
	if (!t->out) {
		complain("%s: can't be opened: %s", path, strerror(errno));
		return OUTCOME_MACHINE;
	}
	outcome = v->run(t);
	if (fclose(t->out) != 0 || outcome == OUTCOME_MACHINE) {
		complain("%s: can't be written: %s", path, strerror(errno));
		outcome = OUTCOME_MACHINE;
	}
	return outcome;
}

static enum outcome
run_archive(const struct request *r)
{
	const struct verb *v = verb_asked(r);
	enum outcome outcome = OUTCOME_UNUSABLE;
	struct err e = {0};
	struct arena a;
	struct task t = {.request = r, .arena = &a};

	if (!v)
		return OUTCOME_UNUSABLE;
	arena_init(&a);
	t.path = request_archive(r, &a);
	if (!t.path)
		complain("no data folder is known (HOME is not set); name an --archive");
	else
		t.archive = archive_open(t.path, v->use, &e);
	if (t.archive)
		outcome = run_with_output(&t, v);
	if (e.set)
		complain_of(&e);
	archive_close(t.archive);
	arena_release(&a);
	return outcome;
}

const struct command command_archive = {
    .name = "archive",
    .help = "check, renew, export or report on the archive",
    .usage =
	"tamis archive check|renew|export|report [OPTION...]\n\n"
	"check   is the file sound, and does each script still give the draft kept?\n"
	"renew   puts today's draft in the place of each that differs\n"
	"export  every dish as one line of JSON, for a search engine or a database\n"
	"report  one HTML page: what is cooked, when, how hot, how long, what is open\n",
    .options = "archive output grammar",
    .run = run_archive,
};
