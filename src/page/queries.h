/* SPDX-License-Identifier: ISC */
/*
 * Findings as an editor's queries: numbered in script order, noted in the
 * margin where the words stand, and listed.
 */
#ifndef TAMIS_QUERIES_H
#define TAMIS_QUERIES_H

#include "page/ties.h"

/* "error", "warning", "note". */
const char *severity_name(enum severity severity);

/* The number behind the words that a query is about: a link to its note. */
void query_put_mark(struct buf *out, const struct draft *d, size_t finding);
/* The note in the margin, tied to what its words are tied to. */
void query_put_note(struct buf *out, const struct ties *t, size_t finding);
/* All of them, with links to their notes, and what was odd in the file. */
void queries_put_list(struct buf *out, const struct draft *d);
/* Links to the queries about a step (-1: about the dish as such). */
void queries_put_marks_of(
    struct buf *out, const struct draft *d, int dish, int part, int step);
/* "1 error, 2 warnings, 5 notes" */
void queries_put_count(struct buf *out, const struct draft *d);

#endif
