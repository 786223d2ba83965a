/* SPDX-License-Identifier: ISC */
/*
 * Regular English inflection by spelling. The caller passes one word.
 */
#ifndef TAMIS_INFLECT_H
#define TAMIS_INFLECT_H

#include "base/arena.h"

/* onion -> onions, radish -> radishes, berry -> berries, tomato -> tomatoes */
struct str inflect_plural(struct arena *a, struct str noun);
/* chop -> chops, mash -> mashes, fry -> fries */
struct str inflect_s(struct arena *a, struct str verb);
/* bake -> baking, chop -> chopping, fry -> frying */
struct str inflect_ing(struct arena *a, struct str verb);
/* bake -> baked, chop -> chopped, fry -> fried */
struct str inflect_past(struct arena *a, struct str verb);

#endif
