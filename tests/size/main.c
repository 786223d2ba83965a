/* SPDX-License-Identifier: ISC */
/*
 * size: how the archive does with many episodes.
 *   size BUILD_FOLDER [COUNT]
 * Keeps COUNT made-up episodes (50,000 unless said) in a new archive, then asks
 * questions of two words and two filters, each by a program of its own. Prints
 * episodes a second, bytes, and how long an answer takes.
 */
#include "../support/process.h"
#include "../support/source.h"

#include <stdio.h>
#include <stdlib.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

enum { QUESTIONS = 400, ARGUMENTS = 16 };

struct bench {
	struct arena arena;
	const char *build, *tamis, *folder, *scripts, *list, *archive;
	const char *count;
	uint64_t episodes;
	double bytes; /* of the scripts */
	uint32_t state;
};

static void
need(bool ok, const char *what)
{
	if (ok)
		return;
	fprintf(stderr, "size: failed: %s\n", what);
	exit(1);
}

static double
size_of(const char *path)
{
	struct stat st;

	return stat(path, &st) == 0 ? (double)st.st_size : 0;
}

/* Seconds that the programs run so far kept the processors busy. */
static double
work_of_children(void)
{
	struct rusage u;

	getrusage(RUSAGE_CHILDREN, &u);
	return (double)(u.ru_utime.tv_sec + u.ru_stime.tv_sec) +
	       (double)(u.ru_utime.tv_usec + u.ru_stime.tv_usec) / 1e6;
}

/* ---- keeping ------------------------------------------------------------ */

static void
make_scripts(struct bench *b)
{
	const char *made = arena_fmt(&b->arena, "%s/made", b->build).p;
	const char *const argv[] = {made, b->count, b->scripts, NULL};
	struct paths all;
	FILE *list = fopen(b->list, "w");

	mkdir(b->scripts, 0777);
	need(process_run(argv, NULL) == 0, "made-up episodes");
	all = paths_find(&b->arena, arena_fmt(&b->arena, "%s/*", b->scripts).p);
	need(list && all.n == b->episodes, "an empty folder for the episodes");
	for (size_t i = 0; i < all.n; i++) {
		fprintf(list, "%s\n", all.v[i].p);
		b->bytes += size_of(all.v[i].p);
	}
	fclose(list);
}

static void
keep(struct bench *b)
{
	const char *const argv[] = {
	    b->tamis, "keep", "--archive", b->archive, "--from", b->list, NULL};
	double begun = seconds_now(), worked = work_of_children(), spent, size;

	need(process_run(argv, arena_fmt(&b->arena, "%s/said", b->folder).p) == 0,
	    "keeping");
	spent = seconds_now() - begun;
	worked = work_of_children() - worked;
	size = size_of(b->archive);
	printf(
	    "kept %s episodes in %.1f s: %.0f a second (%ld cores, %.2f ms of work each)\n",
	    b->count, spent, (double)b->episodes / spent, sysconf(_SC_NPROCESSORS_ONLN),
	    worked * 1e3 / (double)b->episodes);
	printf("scripts %.1f MB, archive %.1f MB: %.2f times as much\n", b->bytes / 1e6,
	    size / 1e6, size / b->bytes);
}

/* ---- finding ------------------------------------------------------------ */

static const char *
pick(struct bench *b, const char *const *list, size_t n)
{
	b->state ^= b->state << 13;
	b->state ^= b->state >> 17;
	b->state ^= b->state << 5;
	return list[b->state % n];
}

#define PICK(b, list) pick(b, list, sizeof(list) / sizeof *(list))

static const char *const words[] = {"roast", "chicken", "capers", "walnuts", "lemon",
    "lamb", "soup", "smoky", "salmon", "harissa", "fennel", "curry", "oven", "golden",
    "bake", "lighthouse", "piano", "welcome", "ferry", "honey", "dough", "tomatoes", "stew",
    "mint"};
static const char *const foods[] = {"garlic", "butter", "flour:200-350g", "olive oil",
    "eggs", "honey:1-2 tablespoons", "cream", "sugar:100-150 g", "onion", "feta",
    "parsley"};
static const char *const filters[][2] = {
    {"--temperature", "170-180C"},
    {"--temperature", "350F"},
    {"--temperature", "200C-"},
    {"--time", "45min"},
    {"--time", "20-40 min"},
    {"--free-of", "milk"},
    {"--free-of", "fish"},
    {"--without", "bacon"},
    {"--without", "capers"},
    {"--since", "2018"},
    {"--until", "2014-06"},
    {"--action", "bake"},
    {"--finding", "missing-yield"},
};

static double
ask(struct bench *b, int *status)
{
	const char *const *filter = filters[(size_t)(PICK(b, words)[0] + b->state) %
					    (sizeof filters / sizeof *filters)];
	const char *const argv[ARGUMENTS] = {b->tamis, "find", "--archive", b->archive,
	    PICK(b, words), PICK(b, words), "--ingredient", PICK(b, foods), filter[0],
	    filter[1], NULL};
	double begun = seconds_now();

	*status = process_run(argv, arena_fmt(&b->arena, "%s/found", b->folder).p);
	return seconds_now() - begun;
}

static int
order(const void *left, const void *right)
{
	double a = *(const double *)left, c = *(const double *)right;

	return (a > c) - (a < c);
}

static void
find(struct bench *b)
{
	double spent[QUESTIONS];
	int hits = 0, status;

	for (size_t i = 0; i < QUESTIONS; i++) {
		spent[i] = ask(b, &status);
		need(status <= 1, "a question");
		hits += status == 0;
	}
	qsort(spent, QUESTIONS, sizeof *spent, order);
	printf(
	    "%d questions of two words and two filters, %d with hits: median %.1f ms, 95th "
	    "%.1f ms, longest %.1f ms\n",
	    QUESTIONS, hits, spent[QUESTIONS / 2] * 1e3, spent[QUESTIONS * 95 / 100] * 1e3,
	    spent[QUESTIONS - 1] * 1e3);
}

int
main(int argc, char **argv)
{
	struct bench b = {.state = 2463534242u, .count = argc > 2 ? argv[2] : "50000"};

	if (argc < 2 || !str_to_u64(str_of(b.count), &b.episodes)) {
		fputs("size BUILD_FOLDER [COUNT]\n", stderr);
		return 2;
	}
	setvbuf(stdout, NULL, _IOLBF, 0);
	arena_init(&b.arena);
	b.build = argv[1];
	b.tamis = arena_fmt(&b.arena, "%s/tamis", b.build).p;
	b.folder = arena_fmt(&b.arena, "%s/size.%ld", b.build, (long)getpid()).p;
	b.scripts = arena_fmt(&b.arena, "%s/scripts", b.folder).p;
	b.list = arena_fmt(&b.arena, "%s/list", b.folder).p;
	b.archive = arena_fmt(&b.arena, "%s/archive.db", b.folder).p;
	need(mkdir(b.folder, 0777) == 0, "a folder of its own");
	make_scripts(&b);
	keep(&b);
	find(&b);
	arena_release(&b.arena);
	return 0;
}
