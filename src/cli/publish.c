/* SPDX-License-Identifier: ISC */
/*
 * tamis publish: all that goes out with an episode, into one folder, unless
 * an error is open.
 */
#include "base/print.h"
#include "cli/answers.h"
#include "folder/folder.h"

#include <errno.h>
#include <sys/stat.h>

static bool
is_open_error(const struct finding *f)
{
	return f->severity == SEVERITY_ERROR && f->status == STATUS_OPEN;
}

/* "soup.txt:3:21: error: nothing says how hot [missing-temperature]" */
static void
put_error(struct episode *e, const struct draft *d, const struct finding *f)
{
	struct err_place p = script_line(d->script, f->place.span.beg);

	buf_fmt(&e->out, "%s:%u:%u: error: ", e->path, p.line, p.column);
	look_put(&e->out, f->message);
	buf_fmt(&e->out, " [%s]\n", f->kind->code);
}

/* Prints the open errors; returns how many. */
static size_t
put_errors(struct episode *e, const struct draft *d)
{
	size_t n = 0;

	for (size_t i = 0; i < d->findings; i++) {
		if (!is_open_error(&d->finding[i]))
			continue;
		put_error(e, d, &d->finding[i]);
		n++;
	}
	return n;
}

static enum outcome
store_one(struct episode *e, const struct draft *d, size_t dish, const struct run *run)
{
	struct buf text = buf_in(&e->arena), name = buf_in(&e->arena);
	struct page page = {.extension = run->writer->extension, .owner = e->name};
	struct err err = {0};
	enum put put;

	tamis_package_name(&name, run->writer, d, dish);
	run->writer->write(d, run->grammar, &run->style, &text);
	page.stem = str_cut(buf_str(&name), 0, name.n - strlen(page.extension) - 1);
	page.text = buf_str(&text);
	page.linked = true;
	put = folder_put(run->context, &page, &err);
	if (put != PUT_DONE) {
		complain_of(&err);
		return put == PUT_FAILED ? OUTCOME_MACHINE : OUTCOME_UNUSABLE;
	}
	buf_fmt(&e->out, "%s/%.*s\n", run->request->output, (int)name.n, name.v);
	return OUTCOME_CLEAN;
}

/* A file for the episode, or one for each of its dishes. */
static enum outcome
store_format(struct episode *e, const struct draft *d, const struct run *run)
{
	enum outcome worst = OUTCOME_CLEAN, one;

	if (!run->writer->per_dish)
		return store_one(e, d, 0, run);
	for (size_t i = 0; i < d->dishes; i++) {
		struct draft alone = *d;

		alone.dish = &d->dish[i];
		alone.dishes = 1;
		alone.findings = 0; /* they speak of dishes by number */
		one = store_one(e, &alone, i, run);
		worst = one > worst ? one : worst;
	}
	return worst;
}

/* Makes the folder where there is none. */
static bool
open_folder(struct folder *f, struct episode *e, const struct request *r)
{
	struct err err = {0};

	if (mkdir(r->output, 0777) != 0 && errno != EEXIST) {
		complain("%s: can't be made: %s", r->output, strerror(errno));
		return false;
	}
	if (!folder_open(f, &e->arena, r->output, &err)) {
		complain_of(&err);
		return false;
	}
	f->force = r->force != NULL;
	folder_keep(f, e->path);
	if (e->answers_path)
		folder_keep(f, e->answers_path);
	return true;
}

static enum outcome
store_package(struct episode *e, const struct draft *d, const struct run *run)
{
	struct folder folder;
	struct run one = *run;
	enum outcome worst = OUTCOME_CLEAN, outcome;

	if (!open_folder(&folder, e, run->request))
		return OUTCOME_MACHINE;
	one.context = &folder;
	for (size_t i = 0; (one.writer = tamis_writer(i)); i++) {
		if (!one.writer->package)
			continue;
		outcome = store_format(e, d, &one);
		worst = outcome > worst ? outcome : worst;
	}
	return worst;
}

static enum outcome
render(struct episode *e, const struct draft *d, const struct run *run)
{
	enum outcome outcome;
	size_t errors = put_errors(e, d);

	answers_put_problems(&e->aside, e, d);
	if (errors && !run->request->anyway) {
		complain("%s: not published: %zu error%s open, listed on standard output; "
			 "mend or answer the script, or say --anyway",
		    e->path, errors, errors == 1 ? " is" : "s are");
		return OUTCOME_FINDINGS;
	}
	outcome = store_package(e, tamis_restyle(d, run->grammar, &run->style), run);
	return outcome == OUTCOME_CLEAN && errors ? OUTCOME_FINDINGS : outcome;
}

static enum outcome
run_publish(const struct request *r)
{
	struct run run = {.render = render, .request = r};

	if (r->operands != 1) {
		complain("publish: name one episode");
		return OUTCOME_UNUSABLE;
	}
	if (!r->output) {
		complain("publish: name the folder with --output");
		return OUTCOME_UNUSABLE;
	}
	return episodes_run(&run);
}

const struct command command_publish = {
    .name = "publish",
    .help = "write all that goes out with an episode into a folder",
    .usage =
	"tamis publish [OPTION...] --output FOLDER EPISODE\n\n"
	"Writes the proof, the recipes, a card per dish, structured data, chapters, the\n"
	"description, the shopping list and what of the video to record again or to\n"
	"caption, with a page that links them. The folder is made where there is none; a\n"
	"file that is there is replaced only where tamis wrote it for this episode and\n"
	"nobody changed it since. Refuses while an error is open, and lists which.\n"
	"- reads standard input.\n",
    .options = "output force units servings scale style anyway answers video-url region "
	       "profile grammar",
    .run = run_publish,
};
