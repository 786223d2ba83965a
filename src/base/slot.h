/* SPDX-License-Identifier: ISC */
/*
 * Values inside a text that is still being put together from pieces. Each is
 * printed between marks that go with it through joining and cutting; in the
 * end the marks are taken out, and what they stood around becomes the text's
 * slots. Any layer may use this.
 */
#ifndef TAMIS_SLOT_H
#define TAMIS_SLOT_H

#include "tamis.h"

/* What has been put so far, in all texts of one draft. */
struct slots {
	VEC(struct slot) value;
};

/* As print_amount(); food is the key of what it is an amount of. */
void slot_put_amount(
    struct slots *s, struct buf *b, const struct amount *a, struct str food);
/* As print_temperature(). */
void slot_put_temperature(
    struct slots *s, struct buf *b, const struct amount *a, bool exact);
/* Puts the text without marks, and no control character that came in by
 * another way; returns its slots in order, *count of them. */
struct slot *slots_take(
    const struct slots *s, struct buf *b, struct str text, size_t *count);

#endif
