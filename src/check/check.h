/* SPDX-License-Identifier: ISC */
/*
 * From a draft to the draft with its findings: what a recipe editor would ask.
 * The only header of this stage that others include.
 */
#ifndef TAMIS_CHECK_H
#define TAMIS_CHECK_H

#include "grammar/grammar.h"
#include "tamis.h"

/* Runs every check of findings.def; fills d->finding in script order, each
 * fact once. Allocates in the draft's arena. */
void check_draft(struct draft *d, const struct grammar *g);
/* Gives f the dish, part and step that its place belongs to. */
void check_spot(const struct draft *d, const struct grammar *g, struct finding *f);

#endif
