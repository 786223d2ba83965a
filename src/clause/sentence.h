/* SPDX-License-Identifier: ISC */
/*
 * Writing the sentence of one clause: frame.c reads what belongs to the verb,
 * sentence.c puts it in a recipe's order. Included by those and steps.c.
 */
#ifndef TAMIS_SENTENCE_H
#define TAMIS_SENTENCE_H

#include "clause/deed.h"

enum { MENTIONS_MAX = 16, PLACES_MAX = 4, FRAME_FOODS_MAX = 32 };

/* What goes with a verb, each part in printed form; empty where there is none. */
struct frame {
	struct str food[FRAME_FOODS_MAX]; /* the object's foods, each with its article */
	size_t foods;
	struct str object;            /* another object: "it", "the dough" */
	bool plural;                  /* the object is "them" */
	bool tool;                    /* a tool or a pan stands where an object may */
	struct str before;            /* a place before the verb: "in a large bowl" */
	struct str place[PLACES_MAX]; /* "into a baking dish", "with the butter" */
	size_t places;
	struct str appliance; /* the place that is an appliance: "in the oven" */
	struct str particle;  /* "up", "together" */
	struct str manner;    /* "gently", "well" */
	struct str doing;     /* "stirring constantly" */
	struct str purpose;   /* "to combine" */
	struct str heat, temperature, duration, until;
	struct str reading; /* what a thermometer in the food shows */
	bool or_until;      /* "for ten minutes or until" */
	bool covered, uncovered;
};

/* How to write: what the clause's pronoun means, which amounts to print. */
struct writing {
	const struct maker *m;
	const struct clause *clause;
	const struct deed *deed;
	bool loose;         /* a script without punctuation */
	struct str pending; /* foods just brought in, which "it" or "them" means */
	bool used_pending;
	bool together;       /* the pronoun means several foods that become one */
	const char *hot;     /* the appliance that the food is in or on; NULL: not known */
	struct str it, them; /* what they mean where a step begins; empty: not known */
	const struct part *part;
};

void frame_read(struct writing *w, struct frame *f);
/* The sentence without a full stop, capitalised; empty where nothing is worth
 * writing. */
struct str sentence_write(struct writing *w);
/* "It should flake easily": the sign that a clause with "should" tells; empty where
 * it tells none. */
struct str sign_write(struct writing *w);
/* The verb that a recipe prints for an action: "put" for "pop". */
struct str written_verb(struct arena *a, const struct lexeme *action);
/* "the flour, the sugar and the salt" */
struct str list_join(struct arena *a, const struct str *item, size_t count);

#endif
