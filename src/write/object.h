/* SPDX-License-Identifier: ISC */
/*
 * The objects that every JSON form of tamis has alike: where a thing is said,
 * the episode, its findings. draft.schema.json describes them.
 */
#ifndef TAMIS_OBJECT_H
#define TAMIS_OBJECT_H

#include "tamis.h"
#include "write/node.h"

/* "span": [beg, end] */
void object_span(struct node o, struct span s);
/* "at_s", "cue_s" and "span". */
void object_place(struct node o, const struct place *p);
/* "episode": {...} */
void object_episode(struct node o, const struct draft *d);
/* "findings": [...] */
void object_findings(struct node o, const struct draft *d);

/* "error", "warning", "note" */
struct str severity_word(enum severity severity);

#endif
