/* SPDX-License-Identifier: ISC */
/*
 * Reading files, drafting them on every core, and the order kept.
 */
#include "cli/episodes.h"

#include "base/pool.h"
#include "cli/answers.h"
#include "cli/style.h"

#include <errno.h>
#include <pthread.h>

enum { MAX_SOURCE = 16 << 20, PIECE = 64 << 10 };

/* Reads until the end, or until there is more than the cap lets through. */
bool
episodes_read(FILE *f, struct buf *b, const char *name, struct err *e)
{
	char piece[PIECE];
	size_t n;

	while (b->n <= MAX_SOURCE && (n = fread(piece, 1, sizeof piece, f)) > 0)
		buf_put(b, (struct str){piece, n});
	return !ferror(f) || err_set(e, name, "can't be read: %s", strerror(errno));
}

static bool
read_episode(const char *path, struct buf *b, struct err *e)
{
	FILE *f;
	bool ok;

	if (strcmp(path, "-") == 0)
		return episodes_read(stdin, b, "standard input", e);
	f = fopen(path, "rb");
	if (!f)
		return err_set(e, path, "can't be opened: %s", strerror(errno));
	ok = episodes_read(f, b, path, e);
	fclose(f);
	return ok;
}

struct line {
	const struct run *run;
	struct episode slot[POOL_SLOTS];
	pthread_mutex_t lock; /* of what workers do one at a time */
	size_t taken;
	enum outcome worst;
	struct episode *all; /* those taken, for run->finish; else NULL */
	size_t alls;
};

static bool
read_source(struct line *l, struct episode *e, struct buf *source)
{
	bool ok;

	if (!l->run->read)
		return read_episode(e->path, source, &e->err) &&
		       answers_load(e, l->run->request);
	pthread_mutex_lock(&l->lock);
	ok = l->run->read(e, l->run, source);
	pthread_mutex_unlock(&l->lock);
	return ok;
}

static void
amend(struct line *l, struct episode *e)
{
	if (!l->run->amend)
		return;
	pthread_mutex_lock(&l->lock);
	l->run->amend(e, e->draft, l->run);
	pthread_mutex_unlock(&l->lock);
}

static void
draft_episode(struct line *l, struct episode *e)
{
	const struct run *run = l->run;
	struct tamis_options o = {.region = run->request->region,
	    .max_source = MAX_SOURCE,
	    .profile = run->request->profile};
	struct buf source = buf_in(&e->arena);

	e->outcome = OUTCOME_UNUSABLE;
	e->out = e->aside = buf_in(&e->arena);
	if (!read_source(l, e, &source))
		return;
	if (e->region)
		o.region = e->region;
	if (e->profile)
		o.profile = e->profile;
	o.answers = e->answers;
	if (run->skip && run->skip(e, buf_str(&source), run))
		return;
	e->draft = tamis_draft(run->grammar, &o, buf_str(&source), e->name.p, &e->err);
	if (!e->draft)
		return;
	amend(l, e);
	if (e->err.set) {
		e->outcome = OUTCOME_MACHINE;
		return;
	}
	if (run->selection)
		tamis_select(e->draft, run->selection);
	e->outcome = run->render(e, e->draft, run);
}

static void
work(void *context, size_t job)
{
	struct line *l = context;
	struct episode *e = &l->slot[job % POOL_SLOTS];
	const char *path = l->run->request->operand[job];
	const char *slash = strrchr(path, '/');

	*e = (struct episode){
	    .path = path, .name = str_of(slash && slash[1] ? slash + 1 : path)};
	arena_init(&e->arena);
	draft_episode(l, e);
}

static enum outcome
print_episode(const struct episode *e)
{
	/* main() looks after what can't be written to standard output. */
	if (e->out.n)
		fwrite(e->out.v, 1, e->out.n, stdout);
	return OUTCOME_CLEAN;
}

static enum outcome
hand_on(const struct episode *e, const struct run *run, size_t *taken)
{
	enum outcome outcome;

	if (e->err.set) {
		if (run->fail)
			run->fail(e, run);
		else
			complain_of(&e->err);
		return e->outcome;
	}
	if (e->aside.n)
		fwrite(e->aside.v, 1, e->aside.n, stderr);
	outcome = run->take ? run->take(e, run, *taken) : print_episode(e);
	++*taken;
	return outcome > e->outcome ? outcome : e->outcome;
}

static void
drop(struct episode *e)
{
	tamis_draft_free(e->draft);
	e->draft = NULL;
	arena_release(&e->arena);
}

static bool
take(void *context, size_t job)
{
	struct line *l = context;
	struct episode *e = &l->slot[job % POOL_SLOTS];
	enum outcome one = hand_on(e, l->run, &l->taken);

	l->worst = one > l->worst ? one : l->worst;
	if (l->all) {
		l->all[l->alls++] = *e;
		*e = (struct episode){0};
	}
	drop(e);
	return one != OUTCOME_MACHINE;
}

/* Standard input can be one of the episodes, once. */
static bool
is_piped_twice(const struct request *r)
{
	size_t piped = 0;

	for (size_t i = 0; i < r->operands; i++)
		piped += strcmp(r->operand[i], "-") == 0;
	if (piped > 1)
		complain("- is given twice; standard input is read once");
	return piped > 1;
}

static enum outcome
run_all(struct run *run, struct arena *a)
{
	struct line *l = arena_new(a, struct line);
	struct pool pool = {run->request->operands, work, take, l};

	if (is_piped_twice(run->request))
		return OUTCOME_UNUSABLE;
	l->run = run;
	if (run->finish)
		l->all = arena_array(a, run->request->operands, struct episode);
	pthread_mutex_init(&l->lock, NULL);
	pool_run(&pool);
	pthread_mutex_destroy(&l->lock);
	if (run->finish)
		run->finish(l->all, l->alls, run);
	for (size_t i = 0; i < l->alls; i++)
		drop(&l->all[i]);
	/* What was drafted and not taken when the run was ended. */
	for (size_t i = 0; i < POOL_SLOTS; i++)
		drop(&l->slot[i]);
	return l->worst;
}

static bool
is_profile(const char *name)
{
	for (size_t i = 0; tamis_profile(i); i++)
		if (strcmp(tamis_profile(i), name) == 0)
			return true;
	complain("no profile %s; there are us-home, us-retail, uk, ca and au", name);
	return false;
}

static bool
is_region(const char *name)
{
	static const char *const regions[] = {"us", "uk", "ca", "au", "in"};

	for (size_t i = 0; i < sizeof regions / sizeof *regions; i++)
		if (strcmp(regions[i], name) == 0)
			return true;
	complain("no region %s; there are us, uk, ca, au and in", name);
	return false;
}

enum outcome
episodes_run(struct run *run)
{
	struct err e = {0};
	struct arena a;
	struct grammar *g;
	enum outcome outcome;

	if (run->request->operands == 0) {
		complain("no episode is named; - reads standard input");
		return OUTCOME_UNUSABLE;
	}
	if (run->request->answers && run->request->operands > 1) {
		complain("--answers is of one episode; name one at a time");
		return OUTCOME_UNUSABLE;
	}
	if (run->request->region && !is_region(run->request->region))
		return OUTCOME_UNUSABLE;
	if (run->request->profile && !is_profile(run->request->profile))
		return OUTCOME_UNUSABLE;
	g = tamis_grammar_open(run->request->grammar, "en", &e);
	if (!g) {
		complain_of(&e);
		return OUTCOME_UNUSABLE;
	}
	arena_init(&a);
	run->grammar = g;
	outcome = style_asked(run->request, g, &a, &run->style) ? run_all(run, &a)
								: OUTCOME_UNUSABLE;
	arena_release(&a);
	tamis_grammar_close(g);
	return outcome;
}
