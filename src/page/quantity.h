/* SPDX-License-Identifier: ISC */
/*
 * Amounts on a page, with what the page's switches need to print them anew in
 * other units and for other servings. proof.js reads what is put here.
 */
#ifndef TAMIS_QUANTITY_H
#define TAMIS_QUANTITY_H

#include "house/house.h"

/* "1½ cups" in an element; nothing where no amount is said. */
void quantity_put(struct buf *out, const struct house *h, const struct ingredient *in);
/* " (110 g)", the same in the other system; empty where there is none. */
void quantity_put_other(
    struct buf *out, const struct house *h, const struct ingredient *in);
/* "2 tbsp" of an alternative. */
void quantity_put_amount(struct buf *out, const struct amount *a);
/* A sentence; temperatures in both scales and the amounts of `known` in it get
 * elements of their own. */
void quantity_put_sentence(
    struct buf *out, struct str text, const struct part *p, const struct step *s);

#endif
