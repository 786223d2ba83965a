/* SPDX-License-Identifier: ISC */
/*
 * Hits, misses and false alarms into precision, recall and F1.
 */
#include "tally.h"

const char *
figure_name(enum figure f)
{
	static const char *const name[FIGURES] = {
	    "measures",
	    "measures: amount",
	    "measures: count",
	    "measures: temperature",
	    "measures: duration",
	    "measures: length",
	    "ingredients",
	    "ingredients with amount",
	    "heat steps",
	    "dishes",
	    "findings",
	};

	return name[f];
}

void
tally_hit(struct tally *t, enum figure f)
{
	t->count[f].gold++;
	t->count[f].found++;
	t->count[f].hits++;
}

void
tally_share(struct share *s, bool right)
{
	s->all++;
	s->right += right;
}

void
tally_count(struct tally *t, enum figure f, bool miss)
{
	if (miss)
		t->count[f].gold++;
	else
		t->count[f].found++;
}

void
tally_slip(struct tally *t, struct slip s)
{
	tally_count(t, s.figure, s.miss);
	s.script = t->script;
	vec_push(t->arena, &t->slip, s);
}

void
tally_add(struct tally *to, const struct tally *from)
{
	for (size_t f = 0; f < FIGURES; f++) {
		to->count[f].gold += from->count[f].gold;
		to->count[f].found += from->count[f].found;
		to->count[f].hits += from->count[f].hits;
	}
	to->roles.right += from->roles.right;
	to->roles.all += from->roles.all;
	to->parts.right += from->parts.right;
	to->parts.all += from->parts.all;
	for (size_t i = 0; i < from->slip.n; i++)
		vec_push(to->arena, &to->slip, from->slip.v[i]);
}

static double
divide(size_t part, size_t all)
{
	return all ? (double)part / (double)all : 1;
}

double
count_precision(const struct count *c)
{
	return divide(c->hits, c->found);
}

double
count_recall(const struct count *c)
{
	return divide(c->hits, c->gold);
}

double
count_f1(const struct count *c)
{
	return divide(2 * c->hits, c->gold + c->found);
}
