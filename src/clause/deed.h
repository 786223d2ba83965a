/* SPDX-License-Identifier: ISC */
/*
 * What a clause does, read from its nodes: the action, the heat, the time, the
 * cue, the foods. Included by deed.c, steps.c and roles.c.
 */
#ifndef TAMIS_DEED_H
#define TAMIS_DEED_H

#include "clause/maker.h"

struct deed {
	struct str action;           /* base form; empty where none is clear */
	const struct lexeme *lexeme; /* of the action; NULL for an implied one */
	struct str kind;             /* kind= of the lexeme */
	bool light, heats, passive;
	uint32_t at; /* node of the verb that says it: the second of "let it rest" */
	const char *appliance; /* NULL none named or implied */
	bool named;            /* the appliance itself is named */
	bool moves_into;       /* food is put into or onto the appliance */
	struct temperature temperature;
	struct duration duration;
	struct doneness doneness;
	bool restates;                  /* "that's 180 Celsius": may say a setting again */
	bool keeping;                   /* tells how long it keeps: no step */
	bool more;                      /* "another five minutes" */
	bool time_cue;                  /* "a few minutes": said, though no measure */
	bool listing;                   /* a bare list of foods, some with amounts */
	bool oil;                       /* speaks of oil, without an amount */
	uint32_t foods;                 /* ING and INGS nodes in it */
	bool pronoun, equipment, thing; /* has an object of some kind */
	bool anything; /* something a recipe could print besides the verb */
};

/* Milliseconds of a duration's min or max. */
int64_t ms_of(const struct amount *a, bool max);
/* The scale of a temperature, inferred where none was said. */
const struct unit *scale_of(const struct maker *m, const struct said *s, bool internal);

void deed_read(const struct maker *m, const struct clause *q, struct deed *out);

/* What is known of the food before a clause. */
struct standing {
	const char *hot;  /* the appliance that the dish was last in or on, or NULL */
	const char *last; /* the appliance whose degrees were set last, or NULL */
	const char *told; /* what the words just before say a time is for, or NULL */
	bool set;         /* the words just before set a heat: "make the flame low" */
};

/* Fills in what the time of a clause is for where its verb does not say. */
void deed_imply(const struct maker *m, const struct clause *q, const struct standing *now,
    struct deed *d);
/* The action that words of the clause tell a time to be for: "chill" of a fridge,
 * "fry" of hot oil; NULL where none does. */
const char *deed_told(const struct maker *m, const struct clause *q);

/* Is the word, in base spelling, among the tokens from beg to end? */
bool says_token(const struct maker *m, uint32_t beg, uint32_t end, const char *word);
/* roles.c: gives the measures of the clause their role. */
void roles_of_clause(struct maker *m, const struct clause *q, const struct deed *d);

/* Is the temperature node inside an "until", or next to a thermometer's verb? */
enum measure_role deed_role(const struct maker *m, const struct clause *q, uint32_t node);

#endif
