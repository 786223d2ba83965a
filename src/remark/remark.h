/* SPDX-License-Identifier: ISC */
/*
 * From a draft just assembled, and the words that it was made of, to the draft
 * with its remarks: what only the words show and checks ask about. The only
 * header of this stage that others include.
 */
#ifndef TAMIS_REMARK_H
#define TAMIS_REMARK_H

struct maker;

/* Fills in m->d: the remarks, and what the words tell of its steps, cues,
 * foods, tools and yields besides what was assembled. */
void remark_draft(struct maker *m);

#endif
