/* SPDX-License-Identifier: ISC */
/*
 * The program killed while it keeps, at any moment; and a crowd of programs that
 * keep and search at once.
 */
#include "faults.h"

#include "../support/process.h"

#include <signal.h>
#include <stdio.h>

/* A generator that gives the same moments every time (Marsaglia 2003; the
 * published constants). */
static double
next(uint32_t *state)
{
	*state ^= *state << 13;
	*state ^= *state >> 17;
	*state ^= *state << 5;
	return (double)*state / UINT32_MAX;
}

/* The moment of the nth kill: every fifth while the program begins, the others
 * when it keeps; each run does some 60th of the work, so that the last kill still
 * finds some. */
static double
moment(const struct site *s, int nth, uint32_t *state)
{
	double part = next(state);

	return nth % 5 == 0 ? part * s->begin_s
			    : s->begin_s * 0.9 + part * 2 * s->whole_s / 60;
}

void
fault_kills(struct site *s)
{
	const char *archive = site_path(s, "killed.db");
	const char *const argv[] = {
	    s->tamis, "keep", "--archive", archive, "--from", s->list, NULL};
	uint32_t state = 2463534242u;
	int killed = 0, runs = 0;

	while (killed < KILLS && runs < 4 * KILLS) {
		pid_t pid = process_start(argv, site_path(s, "said"));
		int status;

		seconds_sleep(moment(s, runs++, &state));
		kill(pid, SIGKILL);
		status = process_wait(pid);
		killed += status == 256 + SIGKILL;
		site_need(
		    s, status == 0 || status == 256 + SIGKILL, "a run before it is killed");
	}
	site_need(s, killed == KILLS, "fifty runs killed");
	site_need(s, site_keep(s, archive, s->list) == 0, "the run after the kills");
	printf("kills: %d of %d runs killed; after them, ", killed, runs);
	site_repeat(s);
	site_verify(s, archive);
	puts("  sound, nothing lost, nothing doubled");
}

/* ---- a crowd ------------------------------------------------------------ */

enum { FINDERS = 10, LONGEST_S = 5 };

struct finder {
	pid_t pid;
	double begun;
	size_t runs;
};

static void
start(struct site *s, struct finder *f, const char *archive, size_t nth)
{
	static const char *const words[] = {"capers", "roast", "lamb", "walnuts", "honey",
	    "bake", "fennel", "soup", "mint"};
	const char *const argv[] = {s->tamis, "find", "--archive", archive,
	    words[(nth + f->runs) % 9], "--temperature", "150-220C", NULL};

	f->begun = seconds_now();
	f->pid = process_start(argv, site_path(s, "found"));
	f->runs++;
}

void
fault_crowd(struct site *s)
{
	const char *archive = site_path(s, "crowd.db");
	const char *const one[] = {
	    s->tamis, "keep", "--archive", archive, "--from", s->half[0], NULL};
	const char *const two[] = {
	    s->tamis, "keep", "--archive", archive, "--from", s->half[1], NULL};
	struct finder finder[FINDERS] = {{0}};
	double longest = 0, spent;
	size_t runs = 0;
	pid_t keeper[2];
	int left = 2, status;

	/* The first search needs something to search. */
	site_need(s, site_keep(s, archive, s->half[0]) == 0, "the first half");
	remove(archive);
	keeper[0] = process_start(one, site_path(s, "said"));
	keeper[1] = process_start(two, site_path(s, "said.2"));
	for (size_t i = 0; i < FINDERS; i++)
		start(s, &finder[i], archive, i);
	while (left > 0) {
		for (size_t i = 0; i < 2; i++) {
			status = keeper[i] ? process_over(keeper[i]) : -1;
			if (status < 0)
				continue;
			site_need(s, status == 0, "keeping beside another");
			keeper[i] = 0;
			left--;
		}
		for (size_t i = 0; i < FINDERS; i++) {
			status = process_over(finder[i].pid);
			spent = seconds_now() - finder[i].begun;
			site_need(s, spent < LONGEST_S, "no search of five seconds");
			if (status < 0)
				continue;
			longest = spent > longest ? spent : longest;
			/* 2: so early that there is no archive yet. */
			site_need(s, status <= 2, "a search beside others");
			start(s, &finder[i], archive, i);
		}
		seconds_sleep(0.002);
	}
	for (size_t i = 0; i < FINDERS; i++) {
		process_wait(finder[i].pid);
		runs += finder[i].runs;
	}
	printf(
	    "crowd: two keep, ten find, %zu searches, the longest %.2f s: ", runs, longest);
	fflush(stdout);
	site_verify(s, archive);
	puts("sound");
}
