/* SPDX-License-Identifier: ISC */
/*
 * Every word of the script that names a food, by food.
 */
#include "remark/namings.h"

#include <stdlib.h>

static int
order_namings(const void *left, const void *right)
{
	const struct naming *a = left, *b = right;
	int by = str_order(a->key, b->key);

	return by ? by : (a->token > b->token) - (a->token < b->token);
}

void
namings_find(const struct maker *m, struct namings *n)
{
	for (uint32_t i = 0; i < m->c.tokens.token.n; i++) {
		struct str key = food_key(m, i);

		if (key.n)
			vec_push(m->a, &n->v, (struct naming){key, i});
	}
	if (n->v.n)
		qsort(n->v.v, n->v.n, sizeof *n->v.v, order_namings);
}

size_t
namings_at(const struct namings *n, struct naming wanted)
{
	size_t low = 0, high = n->v.n;

	while (low < high) {
		size_t mid = low + (high - low) / 2;

		if (order_namings(&n->v.v[mid], &wanted) < 0)
			low = mid + 1;
		else
			high = mid;
	}
	return low;
}
