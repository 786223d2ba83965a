/* SPDX-License-Identifier: ISC */
/*
 * Reading the frame of a clause: the place in it, the questions that its
 * readers ask of nodes, and what they do for one another. Only frame.c,
 * phrase.c, preposition.c and until.c include this.
 */
#ifndef TAMIS_FRAMER_H
#define TAMIS_FRAMER_H

#include "clause/sentence.h"

struct framer {
	struct writing *w;
	struct frame *f;
	const struct maker *m;
	const struct level *top;
	uint32_t at, end;
	bool skipping; /* in a reason or an aside */
	bool about;    /* "about" before a measure */
	bool or_before;
};

static inline const struct node *
node_at(const struct framer *r, uint32_t at)
{
	return at < r->end ? &r->top->node.v[at] : NULL;
}

static inline bool
is(const struct framer *r, uint32_t at, const char *class_name)
{
	const struct node *n = node_at(r, at);

	return n && n->made == RAW && node_has(&r->m->c, n, class_name);
}

static inline bool
made(const struct framer *r, uint32_t at, const char *class_name)
{
	const struct node *n = node_at(r, at);

	return n && node_is(&r->m->c, n, class_name);
}

static inline bool
word(const struct framer *r, uint32_t at, const char *z)
{
	const struct node *n = node_at(r, at);

	return n && n->made == RAW && str_is_z(node_token(&r->m->c, n)->norm, z);
}

static inline bool
is_food(const struct framer *r, uint32_t at)
{
	return made(r, at, "ING") || made(r, at, "INGS");
}

static inline struct str
lower(const struct framer *r, struct str s)
{
	char *p = arena_alloc(r->m->a, s.n + 1, 1);

	for (size_t i = 0; i < s.n; i++)
		p[i] = to_lower(s.p[i]);
	return (struct str){p, s.n};
}

/* The words of a node; captions put full stops into them: "a twenty. three
 * centimetre dish". */
static inline struct str
said(const struct framer *r, uint32_t at)
{
	struct str s = lower(r, words_of(r->m, node_text(&r->m->c, node_at(r, at))));
	struct buf b = buf_in(r->m->a);

	for (size_t i = 0; i < s.n; i++)
		if (!((s.p[i] == '.' || s.p[i] == ',') && i + 1 < s.n && s.p[i + 1] == ' '))
			buf_put_char(&b, s.p[i]);
	return buf_str(&b);
}

static inline void
add(const struct framer *r, struct str *to, struct str more)
{
	if (more.n)
		*to = to->n ? arena_fmt(r->m->a, "%.*s %.*s", (int)to->n, to->p,
				  (int)more.n, more.p)
			    : more;
}

/* phrase.c: a noun phrase at r->at, in printed form, and past it; "" and nothing
 * taken where there is none. */
struct str phrase_take(struct framer *r);
/* A list of foods from r->at on; how many were put in out. */
size_t phrase_foods(struct framer *r, struct str *out, size_t room);
/* How a step names a mentioned food: "the flour", "half the sugar". */
struct str phrase_food(
    const struct framer *r, const struct node *n, const struct mention *x);
bool phrase_is_pronoun(const struct framer *r, uint32_t at);
bool phrase_is_plural(struct str pronoun);
bool phrase_holds(const struct str *list, size_t count, struct str words);
/* frame.c: a measure, a heat level, an object at r->at into the frame, and past it;
 * frame_measure: false and nothing read where there is none. */
bool frame_measure(struct framer *r);
void frame_heat(struct framer *r);
void frame_object(struct framer *r);
/* preposition.c: a preposition at r->at and what follows it; a particle where
 * nothing does. */
void preposition_take(struct framer *r);
/* Is the thing at `at` a lid? */
bool preposition_is_lid(const struct framer *r, uint32_t at);
/* until.c: reads "until ..." at r->at into the frame, and past it. */
void until_take(struct framer *r);

#endif
