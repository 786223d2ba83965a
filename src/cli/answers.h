/* SPDX-License-Identifier: ISC */
/*
 * The answers file beside an episode: where it is, what is in it, what is asked
 * in it. Only cli/ includes this.
 */
#ifndef TAMIS_CLI_ANSWERS_H
#define TAMIS_CLI_ANSWERS_H

#include "cli/episodes.h"

/* Sets e->answers_path to the file that was asked for, else to EPISODE.answers
 * beside the episode, and e->answers to its text; that it is not there is no
 * failure unless it was asked for. NULL for standard input. */
bool answers_load(struct episode *e, const struct request *r);
/* Adds a line for each open finding to the end of the file. */
enum outcome answers_ask(struct episode *e, const struct draft *d);
/* "soup.answers:3:1: warning: fits nothing ... [answer]" */
void answers_put_problems(struct buf *b, const struct episode *e, const struct draft *d);

#endif
