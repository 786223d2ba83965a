/* SPDX-License-Identifier: ISC */
/*
 * From a checked draft and what its author says to the findings, beside the
 * script, to the draft with the answers in it: values, names, the status of
 * findings. The only header of this stage that others include.
 *
 * An answers file has one answer a line; blank lines and lines that begin with
 * '#' say nothing:
 *
 *   0:44 missing-scale "a hundred and ninety" 190 °C
 *   2:00 self-correction "eighty grams" stet the second is meant
 *   rename dish "crumble" to "blackberry and apple crumble"
 *
 * The time as m:ss or h:mm:ss, '-' where the script has none; the code; the
 * words of the script in double quotes, with \" for a quote among them, and an
 * ellipsis at the end where they go on; then what is meant, or `stet` and the
 * reason to let it stand. rename takes a dish, a part or an ingredient.
 */
#ifndef TAMIS_ANSWER_H
#define TAMIS_ANSWER_H

#include "grammar/grammar.h"
#include "tamis.h"

struct maker;

/* Puts the answers into m->d, checks it again, and gives the findings
 * their status. What is wrong with a line, or fits nothing, goes to
 * its answer_problem. Everything is allocated in the draft's arena. */
void answer_draft(const struct maker *m, struct str answers);

#endif
