/* SPDX-License-Identifier: ISC */
/*
 * What a clause does, read from its nodes: the action, the heat, the time, the
 * cue, the foods. Included by deed.c, steps.c and roles.c.
 */
#ifndef TAMIS_DEED_H
#define TAMIS_DEED_H

#include "assemble/sentence.h"

struct deed {
	struct str action;           /* base form; empty where none is clear */
	const struct lexeme *lexeme; /* of the action; NULL for an implied one */
	struct str kind;             /* kind= of the lexeme */
	bool light, heats, passive;
	const char *appliance; /* NULL none named or implied */
	bool moves_into;       /* food is put into or onto the appliance */
	struct temperature temperature;
	struct duration duration;
	struct doneness doneness;
	bool more;                      /* "another five minutes" */
	bool time_cue;                  /* "a few minutes": said, though no measure */
	uint32_t foods;                 /* ING and INGS nodes in it */
	bool pronoun, equipment, thing; /* has an object of some kind */
	bool anything; /* something a recipe could print besides the verb */
};

void deed_read(const struct maker *m, const struct clause *q, struct deed *out);

/* Is the temperature node inside an "until", or next to a thermometer's verb? */
enum measure_role deed_role(const struct maker *m, const struct clause *q, uint32_t node);

#endif
