/* SPDX-License-Identifier: ISC */
/*
 * The steps of a dish in one order over all its parts, as a written method
 * has them.
 */
#ifndef TAMIS_METHOD_H
#define TAMIS_METHOD_H

#include "tamis.h"

struct method_step {
	const struct part *part;
	const struct step *step;
	bool opens; /* the first of a run of steps of the same part */
};

/* Each part keeps its own order; between parts, what is said first comes
 * first. Steps without words are left out. *count is set. */
struct method_step *method_steps(struct arena *a, const struct dish *d, size_t *count);

#endif
