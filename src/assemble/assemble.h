/* SPDX-License-Identifier: ISC */
/*
 * From a read script to the draft: scans it and puts dishes, parts,
 * ingredients and steps together. The only header of this stage that others
 * include.
 */
#ifndef TAMIS_ASSEMBLE_H
#define TAMIS_ASSEMBLE_H

#include "grammar/grammar.h"
#include "tamis.h"

struct maker;

/* What was made, with its draft (maker.h). Cannot fail; whatever is odd in the
 * script is in the draft. Everything is allocated in the arena. */
struct maker *assemble_draft(struct arena *a, const struct grammar *g, struct script *s,
    const struct tamis_options *o);

#endif
