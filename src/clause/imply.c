/* SPDX-License-Identifier: ISC */
/*
 * What a stretch of time is for where no verb says it: "Lid on, ten minutes",
 * "that goes in for half an hour", "leave it an hour, until it's doubled".
 */
#include "clause/deed.h"

/* The cooking that putting food into an appliance stands for. */
static const char *
cooking_in(const char *appliance)
{
	static const char *const table[][2] = {{"oven", "bake"}, {"grill", "grill"},
	    {"air-fryer", "air-fry"}, {"fryer", "deep-fry"}, {"smoker", "smoke"},
	    {"microwave", "microwave"}, {"slow-cooker", "slow-cook"}, {"steamer", "steam"},
	    {"pressure-cooker", "pressure-cook"}, {"barbecue", "grill"},
	    {"water-bath", "cook"}, {"stove", "cook"}, {"toaster", "toast"}};

	for (size_t i = 0; appliance && i < sizeof table / sizeof *table; i++)
		if (str_is_z(str_of(appliance), table[i][0]))
			return table[i][1];
	return NULL;
}

static void
take(const struct maker *m, struct deed *d, const char *action)
{
	const struct entry *e =
	    lexicon_find(&m->g->lexicon, lexicon_key(m->a, str_of(action)));
	const struct reading *r = entry_reading(e, grammar_class(m->g, "ACTION"));

	d->action = str_of(action);
	d->lexeme = r ? r->lexeme : NULL;
	d->kind = lexeme_get(d->lexeme, "kind");
	d->heats = lexeme_has(d->lexeme, "heats");
	d->passive = true;
	d->light = false;
}

/* "out of the fridge for half an hour" */
static bool
is_left(const struct maker *m, uint32_t i)
{
	const struct token *t = m->c.tokens.token.v;

	if (i > 0 && str_is_z(t[i - 1].norm, "the"))
		i--;
	return (i > 0 && str_is_z(t[i - 1].norm, "out of")) ||
	       (i > 1 && str_is_z(t[i - 1].norm, "of") && str_is_z(t[i - 2].norm, "out"));
}

/* A word of the clause that tells: fridge, doubled, rest. The last one counts,
 * for the purpose follows ("in the marinade, in the fridge"). */
static const char *
told_by_words(const struct maker *m, const struct clause *q)
{
	const struct level *top = chart_top(&m->c);
	unsigned cue = grammar_class(m->g, "TIMECUE");
	const char *found = NULL;

	for (uint32_t i = top->node.v[q->verb < q->end ? q->verb : q->beg].beg;
	     i < top->node.v[q->end - 1].end; i++) {
		const struct reading *r = entry_reading(m->c.tokens.token.v[i].entry, cue);

		if (r)
			found = is_left(m, i) ? "rest" : lexeme_get(r->lexeme, "action").p;
	}
	return found;
}

static bool
says_word(const struct maker *m, const struct clause *q, const char *word)
{
	const struct level *top = chart_top(&m->c);

	for (uint32_t i = top->node.v[q->beg].beg; i < top->node.v[q->end - 1].end; i++)
		if (str_is_z(m->c.tokens.token.v[i].norm, word))
			return true;
	return false;
}

/* "six of them, in hot oil" */
static bool
is_in_oil(const struct maker *m, const struct clause *q)
{
	const struct level *top = chart_top(&m->c);
	uint32_t end = top->node.v[q->end - 1].end;

	for (uint32_t i = top->node.v[q->beg].beg; i + 1 < end; i++)
		if (str_is_z(m->c.tokens.token.v[i].norm, "hot") &&
		    str_is_z(m->c.tokens.token.v[i + 1].norm, "oil"))
			return true;
	return false;
}

static bool
says_nothing(const struct deed *d)
{
	return !d->action.n || d->light || str_is_z(d->kind, "move") ||
	       str_is_z(d->kind, "add") || str_is_z(d->kind, "cover") ||
	       (str_is_z(d->kind, "rest") && !d->passive) || str_is_z(d->kind, "shape") ||
	       str_is_z(d->kind, "serve");
}

/* "leave it ten minutes": off the heat, unless a heat or a cue is told. */
static bool
leaves_alone(const struct clause *q, const struct deed *d)
{
	struct str verb = q->action ? q->action->lemma : STR("");

	if (d->temperature.present || d->moves_into)
		return false;
	return (str_is_z(verb, "leave") || str_is_z(verb, "let")) && !d->doneness.text.n;
}

static bool
is_frying(const struct deed *d)
{
	static const char *const actions[] = {"fry", "cook", "brown", "crisp", "deep-fry"};

	for (size_t i = 0; i < sizeof actions / sizeof *actions; i++)
		if (str_is_z(d->action, actions[i]))
			return true;
	return false;
}

/* What is hot already serves where the clause names nothing. */
static void
use_hot(const struct maker *m, const char *hot, struct deed *d)
{
	/* "get it smoking": as hot as that */
	if (str_is_z(d->action, "smoke") && !d->duration.present && !d->temperature.unit) {
		take(m, d, "heat");
		d->appliance = hot;
	}
	if (d->heats && !d->appliance && hot && !str_is_z(str_of(hot), "stove"))
		d->appliance = hot;
	if (hot && str_is_z(str_of(hot), "fryer")) {
		if (d->appliance && str_is_z(str_of(d->appliance), "stove") && is_frying(d))
			d->appliance = hot;
		if (d->temperature.unit && d->temperature.role == ROLE_APPLIANCE &&
		    !d->appliance)
			d->temperature.role = ROLE_OIL;
	}
}

void
deed_imply(const struct maker *m, const struct clause *q, const char *hot, struct deed *d)
{
	bool timed = d->duration.present || d->doneness.text.n || d->doneness.known;
	const char *word = told_by_words(m, q),
		   *appliance = d->appliance ? d->appliance : hot;
	const char *cooking = cooking_in(appliance);
	if (d->temperature.unit && d->temperature.role == ROLE_APPLIANCE && !d->named &&
	    (!appliance || str_is_z(str_of(appliance), "stove"))) {
		appliance = "oven";
		cooking = cooking_in(appliance);
	}
	if (!cooking && d->temperature.heat.n) {
		appliance = "stove";
		cooking = cooking_in(appliance);
	}
	bool into = d->moves_into || q->kind == CLAUSE_GO || says_word(m, q, "in") ||
		    q->kind == CLAUSE_BARE || q->kind == CLAUSE_BE;

	use_hot(m, hot, d);
	if (!timed || !says_nothing(d) ||
	    (d->duration.present && d->duration.known && d->duration.max_ms <= 0))
		return;
	if (d->duration.present && !d->temperature.unit && is_in_oil(m, q) &&
	    !(hot && str_is_z(str_of(hot), "fryer"))) {
		take(m, d, "fry");
		d->appliance = "stove";
		return;
	}
	/* "berries from the freezer, ten minutes on medium" */
	if (word && d->temperature.heat.n &&
	    (str_is_z(str_of(word), "freeze") || str_is_z(str_of(word), "chill")))
		word = NULL;
	if (word && d->duration.present) {
		take(m, d, word);
		return;
	}
	if (!d->duration.present && !d->moves_into)
		return;
	if (leaves_alone(q, d)) {
		take(m, d, "rest");
		return;
	}
	if (cooking && (into || str_is_z(str_of(appliance), "stove"))) {
		take(m, d, cooking);
		d->appliance = appliance;
	} else if (d->duration.present) {
		take(m, d, cooking ? cooking : "rest");
		d->appliance = cooking ? appliance : NULL;
	}
}
