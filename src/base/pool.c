/* SPDX-License-Identifier: ISC */
/*
 * Workers that claim the next job while there is a free slot, and a taker that
 * waits for each job in turn.
 */
#include "base/pool.h"

#include <pthread.h>
#include <unistd.h>

enum { MAX_WORKERS = 64 };

struct crew {
	const struct pool *pool;
	pthread_mutex_t lock;
	pthread_cond_t done_one, taken_one;
	/* Under the lock. */
	size_t next, taken;
	bool done[POOL_SLOTS];
	bool over;
};

/* False when there is no more to do. */
static bool
claim(struct crew *c, size_t *job)
{
	bool ok;

	pthread_mutex_lock(&c->lock);
	while (!c->over && c->next < c->pool->jobs && c->next - c->taken >= POOL_SLOTS)
		pthread_cond_wait(&c->taken_one, &c->lock);
	ok = !c->over && c->next < c->pool->jobs;
	if (ok)
		*job = c->next++;
	pthread_mutex_unlock(&c->lock);
	return ok;
}

static void *
work(void *arg)
{
	struct crew *c = arg;
	size_t job;

	while (claim(c, &job)) {
		c->pool->work(c->pool->context, job);
		pthread_mutex_lock(&c->lock);
		c->done[job % POOL_SLOTS] = true;
		pthread_cond_signal(&c->done_one);
		pthread_mutex_unlock(&c->lock);
	}
	return NULL;
}

static void
await(struct crew *c, size_t job)
{
	pthread_mutex_lock(&c->lock);
	while (!c->done[job % POOL_SLOTS])
		pthread_cond_wait(&c->done_one, &c->lock);
	c->done[job % POOL_SLOTS] = false;
	pthread_mutex_unlock(&c->lock);
}

static void
free_slot(struct crew *c, bool over)
{
	pthread_mutex_lock(&c->lock);
	c->taken++;
	c->over = over;
	pthread_cond_broadcast(&c->taken_one);
	pthread_mutex_unlock(&c->lock);
}

static void
take_all(struct crew *c)
{
	const struct pool *p = c->pool;

	for (size_t job = 0; job < p->jobs && !c->over; job++) {
		await(c, job);
		free_slot(c, !p->take(p->context, job));
	}
}

static void
run_alone(const struct pool *p)
{
	for (size_t job = 0; job < p->jobs; job++) {
		p->work(p->context, job);
		if (!p->take(p->context, job))
			return;
	}
}

void
pool_run(const struct pool *p)
{
	struct crew c = {.pool = p};
	pthread_t worker[MAX_WORKERS];
	long cores = sysconf(_SC_NPROCESSORS_ONLN);
	size_t n = 0, wanted = cores > 1 ? (size_t)cores : 1;

	if (p->jobs < 2) {
		run_alone(p);
		return;
	}
	pthread_mutex_init(&c.lock, NULL);
	pthread_cond_init(&c.done_one, NULL);
	pthread_cond_init(&c.taken_one, NULL);
	/* A worker that can't be started is no harm: the others do its share. */
	while (n < MAX_WORKERS && n < wanted && n < p->jobs &&
	       pthread_create(&worker[n], NULL, work, &c) == 0)
		n++;
	if (n)
		take_all(&c);
	else
		run_alone(p);
	while (n > 0)
		pthread_join(worker[--n], NULL);
	pthread_cond_destroy(&c.taken_one);
	pthread_cond_destroy(&c.done_one);
	pthread_mutex_destroy(&c.lock);
}
