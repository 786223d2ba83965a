/* SPDX-License-Identifier: ISC */
/*
 * The known word nearest to a mistyped one. For cli/ alone.
 */
#ifndef TAMIS_NEAREST_H
#define TAMIS_NEAREST_H

#include <stddef.h>

struct nearest {
	const char *typed;
	const char *best; /* NULL while nothing offered is near enough */
	size_t distance;
};

struct nearest nearest_to(const char *typed);
void nearest_offer(struct nearest *n, const char *known);

#endif
