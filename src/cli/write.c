/* SPDX-License-Identifier: ISC */
/*
 * tamis write: the recipes of each episode, in one of the output formats.
 */
#include "base/slug.h"
#include "cli/answers.h"
#include "folder/file.h"
#include "folder/folder.h"
#include "term/nearest.h"

#include <stdio.h>
#include <sys/stat.h>

enum { EPISODE_MOST = 60, DISH_MOST = 60 };

/* Where everything goes that is not printed. */
struct output {
	struct arena arena;
	struct folder folder;
	struct buf text; /* of all episodes, for one file */
};

/* What render() makes of an episode for a folder. */
struct pages {
	struct page *v;
	size_t n;
};

static enum outcome
render(struct episode *e, const struct draft *d, const struct run *run)
{
	answers_put_problems(&e->aside, e, d);
	d = tamis_restyle(d, run->grammar, &run->style);
	run->writer->write(d, run->grammar, &run->style, &e->out);
	return OUTCOME_CLEAN;
}

/* ---- a folder -------------------------------------------------------------- */

/* "soup.vtt" and "Leek & barley soup" as "soup-leek-barley-soup"; the dish has its
 * number where its name has no letters that a file name can be sure of. */
static struct str
stem_of(struct episode *e, const struct dish *dish, size_t number)
{
	struct buf b = buf_in(&e->arena), name = buf_in(&e->arena);
	struct str stem = e->name;

	while (stem.n > 0 && stem.p[stem.n - 1] != '.')
		stem.n--;
	slug_put(&b, stem.n > 1 ? str_cut(stem, 0, stem.n - 1) : e->name, EPISODE_MOST);
	if (b.n == 0)
		buf_put_z(&b, "episode");
	if (!dish)
		return buf_str(&b);
	slug_put(&name, dish->name, DISH_MOST);
	if (name.n)
		buf_fmt(&b, "-%.*s", (int)name.n, name.v);
	else
		buf_fmt(&b, "-dish-%zu", number);
	return buf_str(&b);
}

static struct page
page_of(struct episode *e, const struct draft *d, struct str stem, const struct run *run)
{
	struct buf text = buf_in(&e->arena);

	run->writer->write(d, run->grammar, &run->style, &text);
	return (struct page){stem, run->writer->extension, e->name, buf_str(&text), false};
}

/* A page for each dish, or one where the format is of a whole episode. */
static enum outcome
render_pages(struct episode *e, const struct draft *d, const struct run *run)
{
	struct pages *pages = arena_new(&e->arena, struct pages);

	answers_put_problems(&e->aside, e, d);
	d = tamis_restyle(d, run->grammar, &run->style);
	pages->n = run->writer->apart && d->dishes ? d->dishes : 1;
	pages->v = arena_array(&e->arena, pages->n, struct page);
	e->made = pages;
	for (size_t i = 0; i < pages->n; i++) {
		struct draft alone = *d;

		if (!run->writer->apart || d->dishes == 0) {
			pages->v[i] = page_of(e, d, stem_of(e, NULL, 0), run);
			break;
		}
		alone.dish = &d->dish[i];
		alone.dishes = 1;
		alone.findings = 0; /* they speak of dishes by number */
		pages->v[i] = page_of(e, &alone, stem_of(e, alone.dish, i + 1), run);
	}
	return OUTCOME_CLEAN;
}

static enum outcome
put_pages(const struct episode *e, const struct run *run, size_t before)
{
	struct output *o = run->context;
	const struct pages *pages = e->made;
	enum outcome worst = OUTCOME_CLEAN;

	(void)before;
	for (size_t i = 0; i < pages->n && worst != OUTCOME_MACHINE; i++) {
		struct err err = {0};
		enum put put = folder_put(&o->folder, &pages->v[i], &err);

		if (put == PUT_DONE)
			continue;
		complain_of(&err);
		worst = put == PUT_FAILED ? OUTCOME_MACHINE : OUTCOME_UNUSABLE;
	}
	return worst;
}

static enum outcome
write_into_folder(struct run *run, struct output *o)
{
	const struct request *r = run->request;
	struct err e = {0};

	if (!folder_open(&o->folder, &o->arena, r->output, &e)) {
		complain_of(&e);
		return OUTCOME_MACHINE;
	}
	o->folder.force = r->force != NULL;
	for (size_t i = 0; i < r->operands; i++)
		folder_keep(&o->folder, r->operand[i]);
	run->render = render_pages;
	run->take = put_pages;
	return episodes_run(run);
}

/* ---- one file -------------------------------------------------------------- */

static enum outcome
gather(const struct episode *e, const struct run *run, size_t before)
{
	struct output *o = run->context;

	(void)before;
	buf_put(&o->text, buf_str(&e->out));
	return OUTCOME_CLEAN;
}

static bool
is_read(const struct request *r)
{
	struct stat out, in;

	for (size_t i = 0; i < r->operands; i++)
		if (stat(r->output, &out) == 0 && stat(r->operand[i], &in) == 0 &&
		    out.st_dev == in.st_dev && out.st_ino == in.st_ino) {
			complain(
			    "%s: is an episode that is read; nothing is written over it",
			    r->output);
			return true;
		}
	return false;
}

/* Where no episode could be read, the file stays as it is. */
static enum outcome
write_into_file(struct run *run, struct output *o)
{
	enum outcome outcome;
	struct err e = {0};

	if (is_read(run->request))
		return OUTCOME_UNUSABLE;
	run->take = gather;
	outcome = episodes_run(run);
	if (o->text.n == 0 || file_replace(run->request->output, buf_str(&o->text), &e))
		return outcome;
	complain_of(&e);
	return OUTCOME_MACHINE;
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

/* A name that ends with a slash is a folder's, and one is made. */
static bool
is_folder(const char *path)
{
	struct stat st;

	if (str_ends(str_of(path), STR("/")))
		mkdir(path, 0777);
	return stat(path, &st) == 0 && S_ISDIR(st.st_mode);
}

static enum outcome
run_write(const struct request *r)
{
	struct output o;
	struct run run = {.render = render, .request = r, .context = &o};
	enum outcome outcome;

	run.writer = r->format ? writer_asked(r->format) : tamis_writer(0);
	if (!run.writer)
		return OUTCOME_UNUSABLE;
	if (!r->output || strcmp(r->output, "-") == 0)
		return episodes_run(&run);
	o = (struct output){.folder = {0}};
	arena_init(&o.arena);
	o.text = buf_in(&o.arena);
	outcome =
	    is_folder(r->output) ? write_into_folder(&run, &o) : write_into_file(&run, &o);
	arena_release(&o.arena);
	return outcome;
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
	"per dish. The kind of script is told by its content. - reads standard input.\n"
	"With a folder as --output, each dish gets a file of its own, and a file that\n"
	"is there is replaced only where tamis wrote it and nobody changed it since. A\n"
	"name that ends in / is a folder's, which is made where there is none.\n",
    .options = "format output force units servings scale style answers video-url region "
	       "profile grammar",
    .run = run_write,
    .print_formats = print_formats,
};
