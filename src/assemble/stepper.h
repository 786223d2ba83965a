/* SPDX-License-Identifier: ISC */
/*
 * The step being written and what hangs over it. Included by steps.c and by
 * the files that help it: gather.c, heat.c, story.c.
 */
#ifndef TAMIS_STEPPER_H
#define TAMIS_STEPPER_H

#include "clause/sentence.h"

enum {
	SENTENCES_MAX = 3,
	PENDING_MAX = 24,
	SETTINGS_MAX = 8,
	LEFTS_MAX = 8,
	STEP_USES_MAX = 64
};

struct setting {
	const char *appliance;
	struct temperature temperature;
	bool used; /* a step of the dish was heated at it */
};

/* A food that the cook has brought in and done nothing with. */
struct pending {
	struct str item;
	bool plural;   /* "them" may mean it */
	bool fat;      /* what others are cooked in */
	bool prepared; /* it was cut, washed: named, but not in with the rest yet */
};

/* How things stood when the cook turned from a dish to another. */
struct left {
	int dish;
	struct standing now;
	struct setting setting[SETTINGS_MAX];
	size_t settings;
};

/* The step being written and what hangs over it. */
struct stepper {
	struct maker *m;
	int dish, part;
	struct step step;
	struct buf text;
	unsigned sentences;
	bool open, full; /* full: its time or cue is told */
	uint32_t use[STEP_USES_MAX];
	size_t uses;
	struct pending pending[PENDING_MAX]; /* foods brought in, not yet used */
	size_t pendings;
	bool fragment; /* the clause is a food and next to nothing else */
	bool bringing; /* the clause does no more than name foods that go in */
	const struct node *pending_node;
	struct setting setting[SETTINGS_MAX]; /* of this dish's appliances */
	size_t settings;
	struct standing now;
	struct left left[LEFTS_MAX];
	size_t lefts;
	const bool *listed;  /* of each clause: it stands in a spoken list */
	bool oil;            /* a pot of oil was heated to degrees in this episode */
	size_t heated;       /* the part's last step with heat and a time; SIZE_MAX none */
	bool told_apart;     /* since then food was added or another heat told */
	bool loose;          /* the script has next to no punctuation */
	uint32_t cue;        /* of the last sentence */
	bool past;           /* a story of what happened once goes on */
	struct mention last; /* a food just said without an amount */
	struct amount said;  /* the amount of food that was said last */
};

static inline struct part *
part_now(const struct stepper *k)
{
	return &k->m->d->dish[k->dish].part[k->part];
}

/* gather.c: the foods and tools of a clause go to the lists of its dish. */
void gather_things(struct stepper *k, const struct clause *q, const struct deed *d);
/* Is the node part of a dish's name, said where the cook turns to it? */
bool gather_is_name(const struct maker *m, const struct node *n);

/* list.c: for each clause, whether it stands in a list that is said aloud. */
bool *lists_spoken(const struct maker *m);

/* steps.c: adds a sentence to the step under way, or to a new one. */
void step_add(struct stepper *k, struct str s, const struct node *at);

/* pending.c: writes "Add the flour" of what was brought in and has no verb yet. */
void pending_flush(struct stepper *k);
/* What "it" and "them" of the clause mean, put into w; what they cannot mean is
 * flushed before the clause is written. */
void pending_offer(
    struct stepper *k, const struct clause *q, const struct deed *d, struct writing *w);
/* After the clause is written: what it used is no longer pending. */
void pending_settle(struct stepper *k, const struct deed *d, const struct writing *w);
bool pending_has(const struct stepper *k, struct str item);
void pending_push(struct stepper *k, const struct mention *x, const struct node *n);

/* heat.c: the step takes its heat, or that which was set for it before. */
void heat_take(struct stepper *k, const struct deed *d);
/* heat.c: "take the lid off and give it another thirty minutes": the heat of a step that
 * is closed goes on; its time is told there in all. */
void heat_prolong(struct stepper *k, struct deed *d);
/* heat.c: the setting of a clause that makes no sentence of its own: "and up goes
 * the oven to two-twenty". */
void heat_turn(struct stepper *k, const struct deed *d);
/* heat.c: the cook turns to the dish: what was set and not used is for it, or how
 * it stood when it was left. */
void heat_turn_to_dish(struct stepper *k, int dish);
/* Has the appliance a temperature to set? */
bool heat_has_setting(const char *appliance);
void heat_follow(struct stepper *k, const struct deed *d);
void heat_set_before(struct stepper *k, const struct clause *q);

/* story.c: what is told of other times is no instruction. */
bool story_is_told(const struct maker *m, const struct clause *q, const struct deed *d);
/* story.c: "so that was an hour and a half at 350": sums up what was told. */
bool story_is_summary(const struct maker *m, const struct clause *q);
/* story.c: "those are baking": tells how things stand, unless with a time. */
bool story_is_state(const struct maker *m, const struct clause *q, const struct deed *d);
/* Fills m->past. */
void story_find(struct maker *m);
/* "last week", "one time" in the tokens [beg, end). */
bool story_is_past(const struct maker *m, uint32_t beg, uint32_t end);
void story_follow(struct stepper *k, const struct clause *q);

#endif
