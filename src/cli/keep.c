/* SPDX-License-Identifier: ISC */
/*
 * tamis keep: episodes into the archive, each with its drafts and its words.
 */
#include "archive/archive.h"
#include "cli/episodes.h"
#include "cli/request.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>

struct failure {
	struct failure *next;
	struct str text;
};

struct keeping {
	struct archive *archive;
	struct knowns knowns;
	const char *date, *url, *under;
	bool again;
	struct arena *arena;
	struct progress progress;
	size_t kept[3]; /* by enum kept */
	size_t failures;
	struct failure *first, **last;
};

/* ---- names and dates ---------------------------------------------------- */

static struct str
kept_name(const struct keeping *k, struct arena *a, struct str file)
{
	if (!k->under)
		return file;
	return arena_fmt(a, "%s/%.*s", k->under, (int)file.n, file.p);
}

static bool
is_date(struct str s)
{
	static const char shape[] = "dddd-dd-dd";
	uint64_t month, day;

	if (s.n != sizeof shape - 1)
		return false;
	for (size_t i = 0; i < s.n; i++)
		if (shape[i] == 'd' ? !is_digit(s.p[i]) : s.p[i] != shape[i])
			return false;
	return str_to_u64(str_cut(s, 5, 7), &month) &&
	       str_to_u64(str_cut(s, 8, 10), &day) && month >= 1 && month <= 12 &&
	       day >= 1 && day <= 31;
}

/* --date, or the date that the file's name has in it. */
static struct str
date_of(const struct keeping *k, struct str file)
{
	if (k->date)
		return str_of(k->date);
	for (size_t i = 0; i + 10 <= file.n; i++)
		if (is_date(str_cut(file, i, i + 10)))
			return str_cut(file, i, i + 10);
	return (struct str){NULL, 0};
}

/* The URL with the file's name, without its ending, for {name}. */
static struct str
url_of(const struct keeping *k, struct arena *a, struct str file)
{
	struct str url = str_of(k->url), stem = file, tail;
	size_t at = str_find(url, STR("{name}"));

	if (at >= url.n)
		return url;
	while (stem.n > 1 && stem.p[stem.n - 1] != '.')
		stem.n--;
	stem.n = stem.n > 1 ? stem.n - 1 : file.n;
	tail = str_cut(url, at + 6, url.n);
	return arena_fmt(a, "%.*s%.*s%.*s", (int)at, url.p, (int)stem.n, stem.p,
	    (int)tail.n, tail.n ? tail.p : "");
}

/* ---- the run ------------------------------------------------------------ */

static struct parcel *
parcel_of(struct episode *e, const struct run *run)
{
	const struct keeping *k = run->context;
	struct parcel *p = arena_new(&e->arena, struct parcel);

	p->name = kept_name(k, &e->arena, e->name);
	p->region = str_of(run->request->region);
	p->profile = str_of(run->request->profile);
	p->answers = e->answers;
	p->date = date_of(k, e->name);
	p->video_url = url_of(k, &e->arena, e->name);
	return p;
}

static bool
skip(struct episode *e, struct str source, const struct run *run)
{
	const struct keeping *k = run->context;
	struct parcel *p = parcel_of(e, run);
	const struct known *known = known_find(&k->knowns, p->name);

	e->made = p;
	if (k->again || !known || known->hash != parcel_hash(p, source))
		return false;
	e->outcome = OUTCOME_CLEAN;
	return true;
}

static enum outcome
render(struct episode *e, const struct draft *d, const struct run *run)
{
	struct parcel *p = e->made;

	p->draft = d;
	parcel_make(&e->arena, run->grammar, p);
	return OUTCOME_CLEAN;
}

static enum outcome
take(const struct episode *e, const struct run *run, size_t before)
{
	struct keeping *k = run->context;
	const struct parcel *p = e->made;
	enum kept kept = KEPT_AS_IT_WAS;
	struct err err = {0};

	(void)before;
	if (p->draft)
		archive_keep(k->archive, run->grammar, p, &kept, &err);
	else if (p->date.n || p->video_url.n)
		archive_redate(k->archive, p, &err);
	if (err.set) {
		progress_clear(&k->progress);
		complain_of(&err);
		return OUTCOME_MACHINE;
	}
	k->kept[kept]++;
	progress_step(&k->progress);
	return OUTCOME_CLEAN;
}

static void
fail(const struct episode *e, const struct run *run)
{
	struct keeping *k = run->context;
	struct failure *f = arena_new(k->arena, struct failure);

	f->text = arena_fmt(k->arena, "%s: %s", e->path, e->err.text);
	*k->last = f;
	k->last = &f->next;
	k->failures++;
	progress_step(&k->progress);
}

static void
print_summary(const struct keeping *k)
{
	printf("kept %zu: %zu new, %zu again; %zu as they were\n",
	    k->kept[KEPT_NEW] + k->kept[KEPT_AGAIN], k->kept[KEPT_NEW], k->kept[KEPT_AGAIN],
	    k->kept[KEPT_AS_IT_WAS]);
	if (k->failures == 0)
		return;
	complain("%zu failed:", k->failures);
	for (const struct failure *f = k->first; f; f = f->next)
		fprintf(stderr, "  %s\n", f->text.p);
}

/* ---- what was asked ----------------------------------------------------- */

/* A path a line. */
static bool
read_list(struct arena *a, const char *path, struct str *out)
{
	bool piped = strcmp(path, "-") == 0;
	FILE *f = piped ? stdin : fopen(path, "rb");
	struct buf b = buf_in(a);
	char piece[8192];
	size_t n;
	bool ok = f != NULL;

	while (ok && (n = fread(piece, 1, sizeof piece, f)) > 0)
		buf_put(&b, (struct str){piece, n});
	ok = ok && !ferror(f);
	if (!ok)
		complain("%s: can't be read: %s", path, strerror(errno));
	if (f && !piped)
		fclose(f);
	*out = buf_str(&b);
	return ok;
}

static bool
add_listed(struct request *r, struct arena *a)
{
	const char *path = request_given(r, "from");
	VEC(char *) operand = {0};
	struct str rest, line;

	if (!path)
		return true;
	if (!read_list(a, path, &rest))
		return false;
	for (size_t i = 0; i < r->operands; i++)
		vec_push(a, &operand, r->operand[i]);
	while (rest.p) {
		line = str_trim(str_next(&rest, '\n'));
		if (line.n)
			vec_push(a, &operand, (char *)arena_str(a, line).p);
	}
	r->operand = operand.v;
	r->operands = operand.n;
	return true;
}

static int
order_names(const void *left, const void *right)
{
	return str_order(*(const struct str *)left, *(const struct str *)right);
}

/* The archive knows episodes by their file names. */
static bool
are_apart(const struct request *r, struct arena *a)
{
	struct str *name = arena_array(a, r->operands + 1, struct str);

	for (size_t i = 0; i < r->operands; i++) {
		const char *slash = strrchr(r->operand[i], '/');

		name[i] = str_of(slash && slash[1] ? slash + 1 : r->operand[i]);
		if (str_is_z(name[i], "-")) {
			complain("keep needs files, which have names, and no -");
			return false;
		}
	}
	if (r->operands)
		qsort(name, r->operands, sizeof *name, order_names);
	for (size_t i = 1; i < r->operands; i++)
		if (str_is(name[i - 1], name[i])) {
			complain("%.*s is named twice; keep one after the other, each with "
				 "a name for --under",
			    (int)name[i].n, name[i].p);
			return false;
		}
	return true;
}

static bool
options_are_sound(const struct keeping *k, const struct request *r)
{
	if (k->date && !is_date(str_of(k->date)))
		complain("%s is no date; write it like 2026-03-14", k->date);
	else if (k->url && r->operands > 1 && !strstr(k->url, "{name}"))
		complain("one URL for %zu episodes; put {name} in it, which stands for the "
			 "file's name without its ending",
		    r->operands);
	else if (k->under && (!k->under[0] || strchr(k->under, '\n')))
		complain("--under needs a name");
	else
		return are_apart(r, k->arena);
	return false;
}

static enum outcome
keep_in(struct keeping *k, const char *path, const struct request *r)
{
	struct run run = {.skip = skip,
	    .render = render,
	    .take = take,
	    .fail = fail,
	    .request = r,
	    .context = k};
	enum outcome outcome = OUTCOME_MACHINE;
	struct err e = {0};

	k->archive = archive_open(path, ARCHIVE_MAKE, &e);
	if (k->archive && archive_known(k->archive, k->arena, &k->knowns, &e)) {
		progress_begin(&k->progress, "kept", r->operands);
		outcome = episodes_run(&run);
		progress_clear(&k->progress);
		if (r->operands)
			print_summary(k);
	}
	archive_close(k->archive);
	if (e.set)
		complain_of(&e);
	return outcome;
}

static enum outcome
run_keep(const struct request *r)
{
	struct request all = *r;
	struct arena a;
	struct keeping k = {.arena = &a,
	    .date = request_given(r, "date"),
	    .url = r->video,
	    .under = request_given(r, "under"),
	    .again = request_given(r, "again")};
	enum outcome outcome = OUTCOME_UNUSABLE;
	const char *path;

	arena_init(&a);
	k.last = &k.first;
	path = request_archive(r, &a);
	if (!path)
		complain("no data folder is known (HOME is not set); name an --archive");
	else if (add_listed(&all, &a) && options_are_sound(&k, &all))
		outcome = keep_in(&k, path, &all);
	arena_release(&a);
	return outcome;
}

static const struct choice own[] = {
    {"date", "DATE", "the day it went out, 2026-03-14; else the one in the file's name"},
    {"under", "NAME", "known as NAME/FILE: a season, a show"},
    {"from", "FILE", "more episodes, a path a line; - is standard input"},
    {"again", NULL, "also those that are as they were"},
    {NULL, NULL, NULL},
};

const struct command command_keep = {
    .name = "keep",
    .help = "put episodes into the archive",
    .usage =
	"tamis keep [OPTION...] EPISODE...\n\n"
	"Puts each script with its recipes and findings into the archive, one file that\n"
	"tamis find searches. An episode is known by its file name; kept once more, it\n"
	"takes the place of the one before, unless the script is the same. A run that is\n"
	"cut off has kept every episode before, whole. In --video-url, {name} is the\n"
	"file's name without its ending, and {s} the second; without {s}, #t= goes "
	"behind.\n",
    .options = "archive video-url region profile grammar",
    .own = own,
    .run = run_keep,
};
