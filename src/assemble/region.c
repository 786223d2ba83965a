/* SPDX-License-Identifier: ISC */
/*
 * Which country's units a script speaks: by the words and units that it says,
 * weighed in grammars/en/regions.lex, and the numbers on its ovens.
 */
#include "clause/maker.h"

enum { US, UK, OTHERS, REGIONS = 5 };
static const char *const names[REGIONS] = {"us", "uk", "ca", "au", "in"};

/* From this on a country of its own outweighs the two systems. */
enum { ENOUGH = 6, HOT_WEIGHT = 3 };

static void
weigh(int score[REGIONS], const struct entry *e, unsigned class_id)
{
	for (size_t i = 0; e && i < e->reading.n; i++) {
		const struct reading *r = &e->reading.v[i];
		struct str weight = lexeme_get(r->lexeme, "weight");
		struct str region = lexeme_get(r->lexeme, "region");
		uint64_t n = 1;

		if (!classset_has(&r->classes, class_id))
			continue;
		str_to_u64(weight, &n);
		for (size_t k = 0; k < REGIONS; k++)
			if (str_is_z(region, names[k]))
				score[k] += (int)n;
	}
}

static bool
is_unit(const struct chart *c, const struct token *t)
{
	static const char *const classes[] = {"UNIT", "LENGTHUNIT", "SCALE", "GASMARK"};

	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++) {
		unsigned id = grammar_class(c->g, classes[i]);

		if (id < CLASSES_MAX && classset_has(&t->entry->classes, id))
			return true;
	}
	return false;
}

static void
weigh_words(const struct chart *c, unsigned class_id, int score[REGIONS])
{
	for (size_t i = 0; i < c->tokens.token.n; i++) {
		const struct token *t = &c->tokens.token.v[i];

		if (classset_has(&t->entry->classes, class_id) && !is_unit(c, t))
			weigh(score, t->entry, class_id);
	}
}

/* No oven is set to more than 275 degrees Celsius. */
static void
weigh_measure(
    const struct chart *c, unsigned class_id, const struct said *s, int score[REGIONS])
{
	struct arena *a = c->arena;

	if (s->value.unit)
		weigh(score,
		    lexicon_find(&c->g->lexicon, lexicon_key(a, s->value.unit->name)),
		    class_id);
	else if (s->kind == MEASURE_TEMPERATURE && s->value.known &&
		 ratio_order(s->value.max, ratio_int(275)) > 0)
		score[US] += HOT_WEIGHT;
}

const char *
region_of(const struct chart *c)
{
	const struct level *l = chart_level(c, "compound");
	const struct level *top = l ? l : chart_top(c);
	unsigned class_id = grammar_class(c->g, "REGIONAL");
	int score[REGIONS] = {[US] = 1};
	size_t best = US;

	if (class_id == CLASSES_MAX)
		return names[US];
	weigh_words(c, class_id, score);
	for (size_t i = 0; i < top->node.n; i++) {
		struct said said;

		if (measure_of(c, NULL, &top->node.v[i], &said))
			weigh_measure(c, class_id, &said, score);
	}
	if (score[UK] > score[US])
		best = UK;
	for (size_t k = OTHERS; k < REGIONS; k++)
		if (score[k] >= ENOUGH && (best < OTHERS || score[k] > score[best]))
			best = k;
	return names[best];
}
