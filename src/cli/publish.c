/* SPDX-License-Identifier: ISC */
/*
 * tamis publish: all that goes out with an episode, into one folder, unless
 * an error is open.
 */
#include "base/print.h"
#include "cli/answers.h"
#include "folder/file.h"

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
	struct buf text = buf_in(&e->arena), path = buf_in(&e->arena);
	struct err err = {0};

	buf_fmt(&path, "%s/", run->request->output);
	tamis_package_name(&path, run->writer, d, dish);
	buf_put(&e->out, buf_str(&path));
	buf_put_char(&e->out, '\n');
	buf_put_char(&path, '\0');
	run->writer->write(d, run->grammar, &run->style, &text);
	if (file_replace(path.v, buf_str(&text), &err))
		return OUTCOME_CLEAN;
	complain_of(&err);
	return OUTCOME_MACHINE;
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

static enum outcome
render(struct episode *e, const struct draft *d, const struct run *run)
{
	struct run one = *run;
	enum outcome worst = OUTCOME_CLEAN, outcome;
	size_t errors = put_errors(e, d);

	answers_put_problems(&e->aside, e, d);
	if (errors && !run->request->anyway) {
		complain("%s: not published: %zu error%s open, listed on standard output; "
			 "mend or answer the script, or say --anyway",
		    e->path, errors, errors == 1 ? " is" : "s are");
		return OUTCOME_FINDINGS;
	}
	d = tamis_restyle(d, run->grammar, &run->style);
	for (size_t i = 0; (one.writer = tamis_writer(i)); i++) {
		if (!one.writer->package)
			continue;
		outcome = store_format(e, d, &one);
		worst = outcome > worst ? outcome : worst;
	}
	if (worst == OUTCOME_CLEAN && errors)
		worst = OUTCOME_FINDINGS;
	return worst;
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
	if (mkdir(r->output, 0777) != 0 && errno != EEXIST) {
		complain("%s: can't be made: %s", r->output, strerror(errno));
		return OUTCOME_MACHINE;
	}
	return episodes_run(&run);
}

const struct command command_publish = {
    .name = "publish",
    .help = "write all that goes out with an episode into a folder",
    .usage =
	"tamis publish [OPTION...] --output FOLDER EPISODE\n\n"
	"Writes the proof, the recipes, a card per dish, structured data, chapters, the\n"
	"description and the shopping list, with a page that links them. Refuses while\n"
	"an error is open, and lists which. - reads standard input.\n",
    .options =
	"output units servings scale style anyway answers video-url region profile grammar",
    .run = run_publish,
};
