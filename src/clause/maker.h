/* SPDX-License-Identifier: ISC */
/*
 * What the files of this stage share while they make one draft: the chart, the
 * clauses it was cut into, the outline of dishes, the mentions of food.
 */
#ifndef TAMIS_MAKER_H
#define TAMIS_MAKER_H

#include "base/slot.h"
#include "scan/chart.h"
#include "scan/measure.h"
#include "tamis.h"

enum clause_kind {
	CLAUSE_DO,   /* an instruction, or the cook doing it */
	CLAUSE_GO,   /* "in goes", "that goes in": the food moves */
	CLAUSE_NOT,  /* what not to do */
	CLAUSE_HAVE, /* brings in food: "you'll need", "I've got" */
	CLAUSE_BE,   /* "this is", "that's" */
	CLAUSE_CHAT, /* talk */
	CLAUSE_BARE  /* no verb: "pinch of salt", "lid on, ten minutes" */
};

/* A run of top nodes with one verb at most. */
struct clause {
	enum clause_kind kind;
	uint32_t beg, end;           /* nodes of the top level */
	uint32_t verb;               /* its node; `end` without one */
	const struct lexeme *action; /* NULL without */
	bool other;                  /* of someone else's cooking, or denied */
	bool sentence;               /* a sentence begins with it */
	uint32_t cue;
	int dish, part; /* where it belongs; -1 nowhere */
};

/* A place where the cook turns to a dish or part. */
struct turn {
	uint32_t token;
	int dish, part;
};

/* One mention of a food. */
struct mention {
	struct str item, key, group, head;
	const struct lexeme *lexeme; /* of the head; NULL for an unlisted word */
	struct amount amount, size;
	struct amount first; /* corrected at once from this */
	struct str preparation, note;
	bool optional, definite, share, more, corrected;
	bool aside; /* said in talk: adds to no amount */
	bool same;  /* as much as was said last */
	struct alternative alternative;
	bool has_alternative;
	const struct node *node;
};

struct maker {
	struct arena *a;
	const struct grammar *g;
	const struct script *s;
	const char *region;
	struct draft *d;
	struct chart c;
	struct slots *slots; /* the values in step texts, until assemble is through */
	VEC(struct clause) clause;
	VEC(struct turn) turn;
	VEC(struct span) title; /* tokens that name a dish or part, and no food */
	VEC(struct measure) measure;
	VEC(uint32_t) past;       /* tokens that tell of another time: "last week" */
	VEC(struct span) counted; /* source bytes of mentions that are ingredients */
};

/* region.c: "us", "uk", "ca", "au", "in": what the script's units speak for. */
const char *region_of(const struct chart *c);

/* place.c: where a run of tokens stands. */
struct place place_of(const struct maker *m, uint32_t token_beg, uint32_t token_end);
struct place place_of_node(const struct maker *m, const struct node *n);
/* How many turns stand at the token or before it. */
size_t turns_up_to(const struct maker *m, uint32_t token);
/* Has the token, where there is one, a reading in the class? */
bool token_has(const struct maker *m, uint32_t token, const char *class_name);
/* The measure that is said in these source bytes; NULL where there is none. */
struct measure *measure_at(const struct maker *m, struct span source);
/* The words of a run of script text, single-spaced. */
struct str words_of(const struct maker *m, struct span text);

/* The words of a heat level as a recipe prints them: "medium-high". */
struct str fold_heat(const struct maker *m, const struct node *level);

/* measures.c: fills m->measure in script order. */
void measures_collect(struct maker *m);
/* Takes out what a dish yields, once yields_find has told: "makes eight rolls". */
void measures_drop_yields(struct maker *m);
/* "3 garlic cloves", "2 celery stalks", "10 mint leaves": what is counted is a
 * part that the food's words end with, or that stands right after them. */
struct portion {
	const struct unit *unit;
	struct span food;          /* tokens of the food without the part */
	uint32_t end;              /* token after the part */
	const struct lexeme *base; /* of a part inside a word of the lexicon: mint */
};
bool portion_find(const struct maker *m, struct span food, struct portion *out);
/* clauses.c: fills m->clause. */
void clauses_cut(struct maker *m);
/* outline.c: makes the dishes and parts, and gives clauses their place. */
void outline_make(struct maker *m);
/* name.c: the words of a token as said, in lower case. */
struct str token_said(const struct maker *m, const struct token *t);
/* How a recipe prints a food token, nicknames by their proper name; as said
 * where it has no reading as a food (NULL). */
struct str food_name(const struct maker *m, const struct token *t, const struct reading *r);
/* mention.c: what an ING node says; several for an INGS node. */
size_t mentions_of(
    const struct maker *m, const struct node *n, struct mention *out, size_t room);
/* ingredients.c: adds a mention to a part; its index there, or -1 where it is
 * no ingredient (a product of the recipe). */
int ingredient_add(
    struct maker *m, int dish, int part, const struct mention *x, bool introduces);
void ingredients_finish(struct maker *m);
/* steps.c: makes the steps of all dishes. */
void steps_make(struct maker *m);
/* schedule.c, yield.c, roles.c */
void schedule_make(struct maker *m);
void yields_find(struct maker *m);
void roles_give(struct maker *m);
/* metric.c: the amount in gram or millilitre, where it can be known. */
struct amount metric_of(const struct maker *m, const struct ingredient *in);

#endif
