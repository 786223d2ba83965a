/* SPDX-License-Identifier: ISC */
/*
 * What the title and the overview say will be made: dishes, and what goes with
 * them. A plan opens nothing; it tells what a later turn to a name means.
 */
#ifndef TAMIS_PLAN_H
#define TAMIS_PLAN_H

#include "outline/opening.h"

struct planned {
	struct str name, head, wide;
	enum name_sort sort;
	bool main;       /* a dish; else goes with one */
	bool weak;       /* so only where the cook turns to it: salmon, beans */
	bool announced;  /* as what is made today */
	bool counted;    /* "two dressings": each of them is a dish */
	bool made_today; /* in so many words */
	uint32_t token;  /* where it was said first; UINT32_MAX: in the title only */
};

struct plan {
	struct arena *arena;
	VEC(struct planned) item;
};

/* Names said before the token of the first work, and those of the title. */
void plan_make(struct plan *p, const struct openings *said, const struct openings *title,
    uint32_t work);
/* The item that x names: by its whole name, else by its head; NULL none. */
struct planned *plan_find(const struct plan *p, const struct opening *x);
/* True where a dish was announced that is not weak. */
bool plan_is_clear(const struct plan *p);

/* The name without what comes with it. */
static inline struct str
name_own(struct str name)
{
	return str_cut(name, 0, str_find(name, STR(" with ")));
}

/* True where `tail` ends `whole` at a word. */
static inline bool
name_ends(struct str whole, struct str tail)
{
	return str_is(whole, tail) ||
	       (tail.n && whole.n > tail.n && str_ends(whole, tail) &&
		   whole.p[whole.n - tail.n - 1] == ' ');
}

/* "chili" and "beef chili" are one dish; "ranch dressing" and "Caesar
 * dressing" are two. */
static inline bool
name_is_same(struct str a, struct str b)
{
	a = name_own(a);
	b = name_own(b);
	return name_ends(a, b) || name_ends(b, a);
}

/* "chips" of "fish and chips" */
bool name_is_half(struct str name, const struct opening *x);
bool name_has_word(struct str name, struct str word);
/* "the tadka" is no short name of "dal tadka". */
bool name_is_part(const struct opening *x, enum name_sort sort);

#endif
