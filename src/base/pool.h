/* SPDX-License-Identifier: ISC */
/*
 * Jobs done by a thread for each core and taken by the caller in their order,
 * with no more of them in hand than there are slots. Any layer may use this.
 */
#ifndef TAMIS_POOL_H
#define TAMIS_POOL_H

#include <stdbool.h>
#include <stddef.h>

enum { POOL_SLOTS = 64 };

struct pool {
	size_t jobs;
	/* On any thread. Job i may use slot i % POOL_SLOTS of what the context has:
	 * the job before it in the slot has been taken. */
	void (*work)(void *context, size_t job);
	/* On the calling thread, in order; false: no further job is begun. */
	bool (*take)(void *context, size_t job);
	void *context;
};

/* Returns when all jobs are taken, or those begun before the end was called. */
void pool_run(const struct pool *p);

#endif
