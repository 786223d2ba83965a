/* SPDX-License-Identifier: ISC */
/*
 * An answer on its way into the draft, and the small steps there. For
 * src/answer/ only.
 */
#ifndef TAMIS_TARGET_H
#define TAMIS_TARGET_H

#include "answer/answers.h"
#include "clause/maker.h"

struct target {
	struct answers *w;
	struct answer *x;
	const struct finding *f;
	struct value v;
};

/* Complains that the value is no answer, and says what is wanted; false. */
bool target_misfit(struct target *t, const char *wanted);
/* Complains that there is nothing to put it in; false. */
bool target_missing(struct target *t, const char *what);
/* The place is the finding's, or one that it names beside it. */
bool target_is_about(const struct target *t, struct place p);
/* What the finding belongs to; NULL where it belongs to none. */
struct dish *target_dish(const struct target *t);
struct part *target_part(const struct target *t);
struct step *target_step(const struct target *t);
static inline struct edit
edit_of(const struct target *t, struct step *s)
{
	return (struct edit){t->w->a, s};
}

/* The number of an amount or a count. */
bool value_is_amount(const struct value *v);

/* Each puts the value where codes of its kind have it; false with a problem
 * where it is none that they can have. */
bool apply_degrees(struct target *t);
bool apply_setting(struct target *t);
bool apply_preheat(struct target *t);
bool apply_doneness(struct target *t);
bool apply_time(struct target *t);
bool apply_claim(struct target *t);
bool apply_amount(struct target *t);
bool apply_size(struct target *t);
bool apply_yield(struct target *t);
bool apply_unused(struct target *t);
bool apply_note(struct target *t);

#endif
