/* SPDX-License-Identifier: ISC */
/*
 * What the files share that make a draft of text. Only draft_text.c and
 * draft_step.c include this.
 */
#ifndef TAMIS_TEST_DRAFT_MAKER_H
#define TAMIS_TEST_DRAFT_MAKER_H

#include "../support/draft_text.h"

#define COUNT(array) (sizeof(array) / sizeof *(array))

enum { MANY = 24, STEP_BYTES = 200, WORD_BYTES = 20 };

struct maker {
	struct draft *d;
	const struct grammar *g;
	uint32_t now;
	struct dish *dish;
	struct part *part;
};

/* A test that is written wrong ends here. */
void need(bool ok, const char *what, struct str word);
struct place next_place(struct maker *m);
/* '_' to ' ', in the arena. */
struct str words(struct maker *m, struct str s);
const struct unit *unit_named(const struct maker *m, struct str name);
/* "350F", "180C", "6G", "40m", "10-12m", "2h", "30s", "1/2:cup", "2:" */
struct amount value_of(const struct maker *m, struct str s);
int64_t to_ms(const struct amount *a, struct ratio v);
/* key=value: the value; false when the word has another key. */
bool is_option(struct str word, const char *key, struct str *value);

/* step ACTION KIND ... */
void make_step(struct maker *m, struct str *rest);
/* temp 350F ..., amount 1:cup ..., time 10-8m ... */
void make_measure(struct maker *m, enum measure_kind kind, struct str *rest);

#endif
