/* SPDX-License-Identifier: ISC */
/*
 * The outline under construction: names that were said, dishes and parts made
 * of them. For src/outline alone.
 */
#ifndef TAMIS_OUTLINE_H
#define TAMIS_OUTLINE_H

#include "clause/maker.h"
#include "outline/plan.h"

enum { MENTIONS = 16 };

struct part_name {
	struct str name, head;
	uint32_t token;
};

struct named {
	struct str name, head, wide;
	enum name_sort sort;
	uint32_t token;
	bool written;               /* so far only in a list */
	bool announced;             /* its name was said as that of a dish */
	uint32_t since, until;      /* tokens: of its last stretch */
	VEC(struct part_name) part; /* the first is the dish itself */
};

/* A food that a part has used. */
struct used {
	struct str key;
	int dish, part;
};

/* A time that a part has waited. */
struct waited {
	int64_t ms;
	int dish, part;
};

struct outline {
	struct maker *m;
	struct openings title, openings;
	struct plan plan;
	VEC(struct named) dish;
	VEC(struct used) used;
	VEC(struct waited) waited;
	VEC(uint32_t) yield; /* tokens where a yield is said; not by cutting */
	uint32_t *measured;  /* by token: foods with an amount that end before it */
	uint32_t content;    /* token where the work begins; UINT32_MAX never */
	int now_dish, now_part;
	bool finished; /* "that's the sauce": what is new is none of it */
};

/* work.c: the token where the work begins; UINT32_MAX never. */
uint32_t work_begins(const struct outline *o);
/* Does the clause cook? */
bool work_is_done(const struct outline *o, const struct clause *q);
/* A list, a heading or a caption on the screen: not said. */
bool work_is_written(const struct maker *m, const struct clause *q);

/* named.c: the dish, or the part of a dish, that x names; -1 none. */
int named_dish(const struct outline *o, const struct opening *x);
int named_part(const struct outline *o, int dish, const struct opening *x);
bool named_is_open(const struct outline *o, const struct planned *p);
/* Announced as a dish of its own, and not begun. */
bool named_is_awaited(const struct outline *o, const struct planned *p);
/* Its index. A part that is known already is found again. */
int named_add(struct outline *o, const struct opening *x);
int named_add_planned(struct outline *o, const struct planned *p, uint32_t token);
int named_add_titled(struct outline *o, struct str name, struct str head, uint32_t token);
int named_add_part(struct outline *o, int dish, const struct opening *x);

/* first.c: the name that begins the first dish; NULL: it is not turned to. */
const struct opening *first_opening(const struct outline *o);
/* The dish that comes first of the plan's that aren't begun; NULL none. */
const struct planned *first_planned(const struct outline *o);
/* Where the work begins, or a part just before it; and the first words. */
uint32_t first_part(const struct outline *o, const struct planned *p);
/* Where what is said of the work begins: after a pause, else with the work. */
uint32_t first_words(const struct outline *o);
uint32_t first_spoken(const struct outline *o);

/* The first opening at a token or after it: index, or how many there are. */
size_t outline_opening(const struct outline *o, uint32_t token);

/* A node of the class in [beg, end) of the tokens that the pass made; NULL none. */
const struct node *outline_aside(const struct outline *o, const char *pass,
    const char *class, uint32_t beg, uint32_t end);

/* From the token on, the cook is at this part of this dish; -1 at none. */
void outline_turn(struct outline *o, uint32_t token, int dish, int part);

/* nameless.c: the name that what was told from beg on is given before the end, and
 * of the first dish, where p is what else it would be; NULL none. */
const struct opening *nameless_told_in(const struct outline *o, uint32_t beg, uint32_t end);
const struct opening *nameless_called(const struct outline *o, uint32_t beg, uint32_t end);
const struct opening *nameless_told(const struct outline *o, const struct planned *p);
/* Gives the food of [beg, end) that makes the dish: 2 meat or fish, 1 what fills,
 * 0 there is none. */
int nameless_food(const struct outline *o, uint32_t beg, uint32_t end, struct str *name);
/* Adds the dish, which begins with the token. */
int nameless_add(struct outline *o, const struct opening *x, uint32_t token);
/* Opens the first dish, of which no name was announced. */
void nameless_open(struct outline *o);

/* dishes.c: gives the draft the dishes in which food was used; clauses and turns
 * of the others go to the dish before. */
void dishes_make(struct outline *o);

/* written.c: what stands before the first dish's token, that `first` begins. */
void written_read(struct outline *o, const struct opening *first);

/* memory.c: what the clause adds to `used` and `waited`. */
void memory_note(struct outline *o, const struct clause *q);
/* The mentions of food in a clause, also those within its verb. */
size_t memory_foods(
    const struct maker *m, const struct clause *q, struct mention *out, size_t room);
bool memory_mentions_food(const struct outline *o, const struct clause *q);
/* Counts the foods with an amount, once for all. */
void memory_count(struct outline *o);
/* How many foods with an amount are mentioned in [beg, end) of the tokens. */
size_t memory_measured(const struct outline *o, uint32_t beg, uint32_t end);
/* Has a dish used the food? */
bool memory_has(const struct outline *o, struct str key);
/* Has the part (-1: any of the dish's) used the food, or one of its kind? */
bool memory_is_used(const struct outline *o, struct str key, int dish, int part);
/* How many foods the part has used. */
size_t memory_used_by(const struct outline *o, int dish, int part);
/* The milliseconds of a time; -1 where the node is none. */
int64_t memory_ms(const struct maker *m, const struct node *n);

/* returns.c: the dish that the clause goes back to, from a part or another dish;
 * -1 none. Sets finished. */
int returns_to(struct outline *o, const struct clause *q);
/* "see you next week", "give it a thumbs up" */
bool returns_says_bye(const struct outline *o, const struct clause *q);
bool returns_plugs(const struct outline *o, const struct clause *q);

/* block.c: does the name begin another dish by what is said around it? */
bool block_opens(const struct outline *o, const struct opening *x);
/* Was it told, before another, what the dish serves or makes? Then "there's the
 * crumble out" says no more of it, unless amounts follow the token. */
bool block_is_told(const struct outline *o, int dish, uint32_t token);
/* Between the tokens the dish is told to its end: whom it serves, "that's it". */
bool block_is_over(const struct outline *o, uint32_t beg, uint32_t token);
/* Do they say how many it serves or makes: "serves four", "makes a dozen"? */
bool block_yields(const struct outline *o, uint32_t beg, uint32_t end);
/* "But flatbreads ...", ", her chutney ...", "a frittata": not "over the rice". */
bool block_leads(const struct outline *o, const struct opening *x);

/* section.c: does a paragraph or a pause begin with the token? */
bool section_begins(const struct outline *o, uint32_t token);
/* The token that the section of a token begins with. */
uint32_t section_of(const struct outline *o, uint32_t token);
/* Where the section that begins with a token ends. */
uint32_t section_end(const struct outline *o, uint32_t beg);
/* Do the last words before a pause end what was told since a token? */
bool section_closes(const struct outline *o, uint32_t since, uint32_t end);
/* Opens the dish that the section from a token on begins with, if it does. */
bool section_opens(struct outline *o, uint32_t beg);

#endif
