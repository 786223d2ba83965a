/* SPDX-License-Identifier: ISC */
/*
 * tamis write: the recipes of each episode, in one of the output formats.
 */
#include "cli/answers.h"
#include "cli/store.h"
#include "term/nearest.h"

#include <stdio.h>
#include <sys/stat.h>

static enum outcome
render(struct episode *e, const struct draft *d, const struct run *run)
{
	answers_put_problems(&e->aside, e, d);
	d = tamis_restyle(d, run->grammar, &run->style);
	run->writer->write(d, run->grammar, &run->style, &e->out);
	return OUTCOME_CLEAN;
}

/* "soup.vtt" becomes FOLDER/soup.md. */
static enum outcome
store_in_folder(const struct episode *e, const struct run *run, size_t before)
{
	struct str stem = e->name;
	struct arena a;
	struct str path;
	enum outcome outcome;

	(void)before;
	while (stem.n > 0 && stem.p[stem.n - 1] != '.')
		stem.n--;
	stem.n = stem.n > 1 ? stem.n - 1 : e->name.n;
	arena_init(&a);
	path = arena_fmt(&a, "%s/%.*s.%s", run->request->output, (int)stem.n, stem.p,
	    run->writer->extension);
	outcome = store(path.p, "wb", buf_str(&e->out));
	arena_release(&a);
	return outcome;
}

static enum outcome
store_after_others(const struct episode *e, const struct run *run, size_t before)
{
	return store(run->request->output, before ? "ab" : "wb", buf_str(&e->out));
}

static const struct writer *
writer_asked(const char *name)
{
	const struct writer *w = tamis_writer_find(name);
	struct nearest near = nearest_to(name);

	if (w)
		return w;
	for (size_t i = 0; tamis_writer(i); i++)
		nearest_offer(&near, tamis_writer(i)->name);
	if (near.best)
		complain("no format %s; did you mean %s?", name, near.best);
	else
		complain("no format %s; tamis write --help lists them", name);
	return NULL;
}

static enum outcome
run_write(const struct request *r)
{
	struct run run = {.render = render, .request = r};
	struct stat st;

	run.writer = r->format ? writer_asked(r->format) : tamis_writer(0);
	if (!run.writer)
		return OUTCOME_UNUSABLE;
	if (r->output && stat(r->output, &st) == 0 && S_ISDIR(st.st_mode))
		run.take = store_in_folder;
	else if (r->output && strcmp(r->output, "-") != 0)
		run.take = store_after_others;
	return episodes_run(&run);
}

static void
print_formats(void)
{
	for (size_t i = 0; tamis_writer(i); i++)
		printf("  %-12s %s\n", tamis_writer(i)->name, tamis_writer(i)->help);
}

const struct command command_write = {
    .name = "write",
    .help = "write the recipes of a script",
    .usage =
	"tamis write [OPTION...] EPISODE...\n\n"
	"Reads timestamped scripts or captions and writes the recipes in them, one\n"
	"per dish. The kind of script is told by its content. - reads standard input.\n",
    .options =
	"format output units servings scale style answers video-url region profile grammar",
    .run = run_write,
    .print_formats = print_formats,
};
