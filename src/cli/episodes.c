/* SPDX-License-Identifier: ISC */
/*
 * Reading files, drafting them on every core, and the order kept.
 */
#include "cli/episodes.h"

#include "cli/answers.h"

#include <errno.h>
#include <pthread.h>
#include <stdatomic.h>
#include <unistd.h>

enum { MAX_SOURCE = 16 << 20, MAX_WORKERS = 64, PIECE = 64 << 10 };

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

static void
draft_episode(struct episode *e, const struct run *run)
{
	struct tamis_options o = {.region = run->request->region,
	    .max_source = MAX_SOURCE,
	    .profile = run->request->profile};
	struct buf source = buf_in(&e->arena);
	struct draft *d;

	e->outcome = OUTCOME_UNUSABLE;
	e->out = e->aside = buf_in(&e->arena);
	if (!read_episode(e->path, &source, &e->err) || !answers_load(e, run->request))
		return;
	o.answers = e->answers;
	d = tamis_draft(run->grammar, &o, buf_str(&source), e->name.p, &e->err);
	if (!d)
		return;
	if (run->selection)
		tamis_select(d, run->selection);
	e->outcome = run->render(e, d, run);
	if (run->finish)
		e->draft = d;
	else
		tamis_draft_free(d);
}

struct pool {
	struct episode *episode;
	size_t episodes;
	const struct run *run;
	atomic_size_t next;
};

static void *
work(void *arg)
{
	struct pool *pool = arg;
	size_t i;

	while ((i = atomic_fetch_add(&pool->next, 1)) < pool->episodes)
		draft_episode(&pool->episode[i], pool->run);
	return NULL;
}

/* A worker that can't be started is no harm: the others do its share. */
static void
draft_all(struct pool *pool)
{
	pthread_t worker[MAX_WORKERS];
	long cores = sysconf(_SC_NPROCESSORS_ONLN);
	size_t n = 0, wanted = cores > 1 ? (size_t)cores : 1;

	if (wanted > pool->episodes)
		wanted = pool->episodes;
	/* This thread is a worker too. */
	while (n < MAX_WORKERS && n + 1 < wanted &&
	       pthread_create(&worker[n], NULL, work, pool) == 0)
		n++;
	work(pool);
	while (n > 0)
		pthread_join(worker[--n], NULL);
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
		complain_of(&e->err);
		return e->outcome;
	}
	if (e->aside.n)
		fwrite(e->aside.v, 1, e->aside.n, stderr);
	outcome = run->take ? run->take(e, run, *taken) : print_episode(e);
	++*taken;
	return outcome > e->outcome ? outcome : e->outcome;
}

/* Names the episodes; standard input can be one of them, once. */
static bool
name_episodes(struct episode *e, const struct request *r)
{
	bool piped = false;

	for (size_t i = 0; i < r->operands; i++) {
		const char *slash = strrchr(r->operand[i], '/');

		e[i].path = r->operand[i];
		e[i].name = str_of(slash ? slash + 1 : e[i].path);
		if (strcmp(e[i].path, "-") != 0)
			continue;
		if (piped) {
			complain("- is given twice; standard input is read once");
			return false;
		}
		piped = true;
	}
	return true;
}

static enum outcome
run_all(struct run *run, struct arena *a)
{
	const struct request *r = run->request;
	struct pool pool = {
	    arena_array(a, r->operands, struct episode), r->operands, run, 0};
	enum outcome worst = OUTCOME_CLEAN, one;
	size_t taken = 0;

	if (!name_episodes(pool.episode, r))
		return OUTCOME_UNUSABLE;
	draft_all(&pool);
	for (size_t i = 0; i < pool.episodes; i++) {
		one = hand_on(&pool.episode[i], run, &taken);
		worst = one > worst ? one : worst;
	}
	if (run->finish)
		run->finish(pool.episode, pool.episodes, run);
	for (size_t i = 0; i < pool.episodes; i++) {
		tamis_draft_free(pool.episode[i].draft);
		arena_release(&pool.episode[i].arena);
	}
	return worst;
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
	outcome = run_all(run, &a);
	arena_release(&a);
	tamis_grammar_close(g);
	return outcome;
}
