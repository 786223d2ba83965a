/* SPDX-License-Identifier: ISC */
/*
 * "chekc" is near "check": the fewest letters to put in, take out, change, or
 * swap with their neighbour, for words of the size that commands have.
 */
#include "term/nearest.h"

#include <string.h>

enum { LONGEST = 63 };

static size_t
least(size_t a, size_t b)
{
	return a < b ? a : b;
}

/* The optimal string alignment distance; three rows of its table at a time. */
static size_t
distance(const char *a, const char *b)
{
	size_t row[3][LONGEST + 1], n = strlen(b);
	size_t *before = row[0], *last = row[1], *now = row[2], *spare;

	for (size_t j = 0; j <= n; j++)
		last[j] = j;
	for (size_t i = 1; a[i - 1]; i++) {
		now[0] = i;
		for (size_t j = 1; j <= n; j++) {
			now[j] = last[j - 1] + (a[i - 1] != b[j - 1]);
			now[j] = least(now[j], least(last[j], now[j - 1]) + 1);
			if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
				now[j] = least(now[j], before[j - 2] + 1);
		}
		spare = before;
		before = last;
		last = now;
		now = spare;
	}
	return last[n];
}

struct nearest
nearest_to(const char *typed)
{
	/* One slip for every three letters, and one more. */
	return (struct nearest){typed, NULL, strlen(typed) / 3 + 2};
}

void
nearest_offer(struct nearest *n, const char *known)
{
	size_t d;

	if (strlen(known) > LONGEST || strlen(n->typed) > LONGEST)
		return;
	d = distance(n->typed, known);
	if (d < n->distance) {
		n->best = known;
		n->distance = d;
	}
}
