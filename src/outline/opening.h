/* SPDX-License-Identifier: ISC */
/*
 * Names of dishes and parts as they are said, and how: in an overview, where
 * the cook turns to them, in passing. What they open, `assemble` decides.
 */
#ifndef TAMIS_OPENING_H
#define TAMIS_OPENING_H

#include "scan/chart.h"

enum opening_kind {
	OPENING_MENTION, /* in passing */
	OPENING_ALSO,    /* "and a batch of oat rolls" */
	OPENING_WITH,    /* "with a slaw" */
	OPENING_TODAY,   /* "tonight it's grilled mackerel" */
	OPENING_DONE,    /* "and that's the sauce" */
	OPENING_BARE,    /* "so that's going pancakes in the big bowl two cups" */
	OPENING_BACK,    /* "back to the soup", "the rolls have doubled" */
	OPENING_TOPIC,   /* "Gooseberry sauce.", "okay, the rolls" */
	OPENING_FOR,     /* "so for the sauce" */
	OPENING_TURN,    /* "let's make the sauce" */
	OPENING_NEXT,    /* "next up, the rolls" */
	OPENING_FIRST,   /* "the rolls go first", "let's start with the rolls" */
	OPENING_HEADING  /* written in the script */
};

/* What the last word of the name is. */
enum name_sort {
	NAME_UNLISTED, /* a word that no list has */
	NAME_TOOL,     /* "back to the pot" */
	NAME_FOOD,     /* a food */
	NAME_MAYBE,    /* a dish, or a food of that name: rice, wings */
	NAME_DISH,
	NAME_EITHER, /* a dish or a part: pickle, slaw */
	NAME_PART    /* sauce, dough */
};

struct opening {
	enum opening_kind kind;
	enum name_sort sort;
	uint32_t token, end; /* of the name */
	struct str name;     /* as a title has it */
	struct str head;     /* its last word, in the singular */
	struct str wide;     /* the wider word of its head: fish, pasta; or empty */
	bool lone;           /* of one word */
	bool counted;        /* "two dressings" */
	bool marked;         /* "the", "our", "okay" stand before it */
	bool bought;         /* the whole name is a food of the lists */
	bool definite;       /* "the" */
	bool on_top;         /* "a chimichurri to go on top": with another dish */
	bool faint;          /* a name before a comma: may be of a list */
	bool made;           /* "make": even of a food */
	bool numbered;       /* "number two is": a dish, whatever the word */
	bool pantry;         /* salt, oil, flour: never a dish */
	bool raw;            /* "pancake batter": said of the pancakes */
	bool day;            /* "pancake day" */
	bool with_for;       /* a heading "For the sauce" */
};

struct openings {
	size_t things; /* "three things today"; 0 not said */
	VEC(struct opening) said;
};

/* All of the chart's, in script order; with the headings that are names. */
void openings_find(struct openings *out, const struct chart *c);
/* A name of a run of tokens: its sort, head and title. */
void opening_name(const struct chart *c, struct opening *x);

#endif
