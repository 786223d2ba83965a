/* SPDX-License-Identifier: ISC */
/*
 * The outline under construction: names that were said, dishes made of them.
 * Only outline.c includes this.
 */
#ifndef TAMIS_OUTLINE_H
#define TAMIS_OUTLINE_H

#include <stdlib.h>

#include "clause/maker.h"

enum opening_kind {
	OPENING_MENTION, /* a name said in passing */
	OPENING_ALSO,    /* "and a batch of oat rolls": in an overview */
	OPENING_WITH,    /* "with a slaw": goes with another dish */
	OPENING_BACK,    /* "back to the soup" */
	OPENING_TODAY,   /* "today there's grilled mackerel": of an overview */
	OPENING_PART,    /* "to make the sauce" */
	OPENING_LEAD,    /* "Gooseberry sauce.", "now the rolls" */
	OPENING_TURN,    /* "let's move on to the" */
	OPENING_HEADING  /* written in the script */
};

struct opening {
	enum opening_kind kind;
	uint32_t token, end; /* of the name */
	struct str name, head;
	bool is_part, is_dish, may_be_part; /* by the name's head word */
	bool leads;                         /* begins a sentence or follows a marker */
};

struct part_name {
	struct str name, head;
	uint32_t token;
};

struct named {
	struct str name, head;
	int index;
	uint32_t token;
	VEC(struct part_name) part; /* the first is the dish itself */
};

struct outline {
	struct maker *m;
	VEC(struct opening) opening;
	VEC(struct named) dish;
	uint32_t content; /* token where the work begins; UINT32_MAX never */
	int now_dish, now_part;
};

#endif
