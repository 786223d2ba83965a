/* SPDX-License-Identifier: ISC */
/*
 * The script as a column of set type: paragraphs with their time, every
 * recognised word marked, queries in the margin.
 */
#ifndef TAMIS_SCRIPT_H
#define TAMIS_SCRIPT_H

#include "page/ties.h"

/* Fills t->word as it goes. */
void script_put(struct buf *out, struct ties *t);

#endif
