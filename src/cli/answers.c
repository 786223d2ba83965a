/* SPDX-License-Identifier: ISC */
/*
 * The answers file beside an episode.
 */
#include "cli/answers.h"

#include <errno.h>
#include <stdio.h>

/* "shows/soup.vtt" has its answers in "shows/soup.answers". */
static const char *
path_beside(struct arena *a, const char *episode)
{
	struct str stem = str_of(episode);
	const char *dot = strrchr(episode, '.'), *slash = strrchr(episode, '/');

	if (strcmp(episode, "-") == 0)
		return NULL;
	if (dot && (!slash || dot > slash + 1) && dot > episode)
		stem.n = (size_t)(dot - episode);
	return arena_fmt(a, "%.*s.answers", (int)stem.n, stem.p).p;
}

bool
answers_load(struct episode *e, const struct request *r)
{
	struct buf text = buf_in(&e->arena);
	FILE *f;
	bool ok;

	e->answers_path = r->answers ? r->answers : path_beside(&e->arena, e->path);
	if (!e->answers_path)
		return true;
	f = fopen(e->answers_path, "rb");
	if (!f && !r->answers && errno == ENOENT)
		return true;
	if (!f && r->ask && errno == ENOENT)
		return true;
	if (!f)
		return err_set(
		    &e->err, e->answers_path, "can't be opened: %s", strerror(errno));
	ok = episodes_read(f, &text, e->answers_path, &e->err);
	fclose(f);
	e->answers = buf_str(&text);
	return ok;
}

static bool
append(struct episode *e, struct str lines)
{
	FILE *f = fopen(e->answers_path, "ab");
	bool ok;

	if (!f)
		return err_set(
		    &e->err, e->answers_path, "can't be opened: %s", strerror(errno));
	ok = e->answers.n == 0 || e->answers.p[e->answers.n - 1] == '\n' ||
	     fputc('\n', f) != EOF;
	ok = ok && fwrite(lines.p, 1, lines.n, f) == lines.n;
	if (fclose(f) == 0 && ok)
		return true;
	return err_set(&e->err, e->answers_path, "can't be written: %s", strerror(errno));
}

enum outcome
answers_ask(struct episode *e, const struct draft *d)
{
	struct buf lines = buf_in(&e->arena);
	size_t asked = tamis_ask(d, e->answers, &lines);

	if (!e->answers_path) {
		err_set(&e->err, "standard input",
		    "has no answers beside it; name a file with --answers");
		return OUTCOME_UNUSABLE;
	}
	if (asked && !append(e, buf_str(&lines)))
		return OUTCOME_MACHINE;
	buf_fmt(&e->out, "%s: %zu asked in %s\n", e->path, asked, e->answers_path);
	return OUTCOME_CLEAN;
}

void
answers_put_problems(struct buf *b, const struct episode *e, const struct draft *d)
{
	static const char *const severity[] = {"note", "warning", "error"};

	for (size_t i = 0; i < d->answer_problems; i++) {
		const struct answer_problem *p = &d->answer_problem[i];

		buf_fmt(b, "%s:%u:%u: %s: ", e->answers_path, p->place.line,
		    p->place.column, severity[p->severity]);
		look_put(b, p->text);
		buf_put_z(b, " [answer]\n");
	}
}
