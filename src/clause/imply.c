/* SPDX-License-Identifier: ISC */
/*
 * What a stretch of time is for where no verb says it: "Lid on, ten minutes",
 * "that goes in for half an hour", "leave it an hour, until it's doubled".
 */
#include "clause/sentence.h"

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

		/* "save the rest of it" */
		if (r && !(i + 1 < m->c.tokens.token.n &&
			     str_is_z(m->c.tokens.token.v[i + 1].norm, "of")))
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

/* "sit in hot water", "drop them into ice water" */
static bool
is_in_liquid(const struct maker *m, const struct clause *q)
{
	const struct level *top = chart_top(&m->c);
	uint32_t end = top->node.v[q->end - 1].end;
	unsigned food = grammar_class(m->g, "FOOD");
	bool in = false;

	for (uint32_t i = top->node.v[q->beg].beg; i < end; i++) {
		const struct token *t = &m->c.tokens.token.v[i];
		const struct reading *f = entry_reading(t->entry, food);

		if (in && f && str_is_z(lexeme_get(f->lexeme, "group"), "water"))
			return true;
		in = str_is_z(t->norm, "in") || str_is_z(t->norm, "into") ||
		     (in && !f && !str_is_z(t->norm, ","));
	}
	return false;
}

static bool
says_nothing(const struct deed *d)
{
	return !d->action.n || d->light || str_is_z(d->kind, "move") ||
	       str_is_z(d->kind, "add") || str_is_z(d->kind, "cover") ||
	       (str_is_z(d->kind, "rest") && !d->passive) || str_is_z(d->kind, "shape") ||
	       str_is_z(d->kind, "serve") || str_is_z(d->kind, "set-heat") ||
	       (str_is_z(d->kind, "flip") && d->temperature.present);
}

/* "leave it ten minutes": off the heat, unless a heat or a cue is told; "leave
 * them alone in the hot pan" is not to stir. */
static bool
rests(const struct maker *m, const struct clause *q, const struct standing *now,
    const struct deed *d)
{
	struct str verb = q->action ? q->action->lemma : STR("");

	if (d->temperature.present || d->moves_into || now->set ||
	    (now->hot && (says_word(m, q, "alone") || says_word(m, q, "undisturbed"))))
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
use_hot(const struct maker *m, const struct standing *now, struct deed *d)
{
	const char *hot = now->hot;

	/* "get it smoking": as hot as that */
	if (str_is_z(d->action, "smoke") && !d->duration.present && !d->temperature.unit) {
		take(m, d, "heat");
		d->appliance = hot;
	}
	if (d->heats && !d->appliance && hot && !str_is_z(str_of(hot), "stove"))
		d->appliance = hot;
	/* "same oil, but bring it down to 325" */
	if (d->temperature.unit && d->temperature.role == ROLE_APPLIANCE && !d->appliance &&
	    d->pronoun && str_is_z(str_of(now->last), "fryer"))
		d->temperature.role = ROLE_OIL;
	if (hot && str_is_z(str_of(hot), "fryer")) {
		if (d->appliance && str_is_z(str_of(d->appliance), "stove") && is_frying(d))
			d->appliance = hot;
		if (d->temperature.unit && d->temperature.role == ROLE_APPLIANCE &&
		    !d->appliance)
			d->temperature.role = ROLE_OIL;
	}
}

const char *
deed_told(const struct maker *m, const struct clause *q)
{
	const char *word = is_in_oil(m, q) ? "fry" : told_by_words(m, q);
	struct str verb = q->action ? q->action->lemma : STR("");

	/* "when it's out, you leave it alone": the time comes after */
	if (!word && (str_is_z(verb, "leave") || str_is_z(verb, "let")) &&
	    (says_word(m, q, "out") || says_word(m, q, "off")))
		word = "rest";
	if (!word && is_in_liquid(m, q) && !lexeme_has(q->action, "heats"))
		word = says_word(m, q, "boiling") ? "boil" : "soak";
	return word;
}

/* "four buns, toasted, cut side down, a minute" */
static const struct lexeme *
participle(const struct maker *m, const struct clause *q)
{
	const struct level *top = chart_top(&m->c);

	for (uint32_t i = q->beg; i < q->end; i++) {
		const struct reading *r = node_reading(&m->c, &top->node.v[i], "ACTION_ED");

		if (r && top->node.v[i].made == RAW && lexeme_has(r->lexeme, "heats"))
			return r->lexeme;
	}
	return NULL;
}

/* "ten minutes on medium", after an oven or a grill: on the stove. */
static bool
has_degrees(const char *appliance)
{
	return str_is_z(str_of(appliance), "oven") ||
	       str_is_z(str_of(appliance), "grill") || str_is_z(str_of(appliance), "fryer");
}

/* The word that tells what the time is for, of this clause or of the one before. */
static const char *
word_for(const struct maker *m, const struct clause *q, const struct standing *now,
    const struct deed *d)
{
	const char *word = told_by_words(m, q);

	/* "berries from the freezer, ten minutes on medium" */
	if (word && d->temperature.heat.n &&
	    (str_is_z(str_of(word), "freeze") || str_is_z(str_of(word), "chill")))
		word = NULL;
	if (!word && q->kind != CLAUSE_DO && !d->named && !d->temperature.present &&
	    !says_word(m, q, "in"))
		word = now->told;
	/* "let it sit on the hot pan", "on a rack in the oven" */
	if (word && str_is_z(str_of(word), "rest") && d->appliance &&
	    (d->named ||
		(str_is_z(str_of(d->appliance), "stove") && says_word(m, q, "hot"))))
		word = NULL;
	return word;
}

/* The appliance that the clause is about, named or not. */
static const char *
place_for(const struct clause *q, const struct standing *now, const struct deed *d)
{
	const char *appliance = d->appliance ? d->appliance : now->hot;

	if (d->temperature.unit && d->temperature.role == ROLE_APPLIANCE && !d->named &&
	    (!appliance || str_is_z(str_of(appliance), "stove")))
		return now->last ? now->last : "oven";
	/* "the oven is at 425 already ... she goes for twenty-five minutes" */
	if (!appliance && !d->temperature.present && q->kind == CLAUSE_GO)
		return now->last;
	if (d->temperature.heat.n && !d->named &&
	    (!cooking_in(appliance) || has_degrees(appliance)))
		return "stove";
	return appliance;
}

/* Takes what the time is for, where the clause says no more than a time. */
static void
take_waiting(const struct maker *m, const struct clause *q, const struct standing *now,
    struct deed *d)
{
	const char *appliance = place_for(q, now, d), *cooking = cooking_in(appliance);
	const struct lexeme *done = q->kind == CLAUSE_BARE ? participle(m, q) : NULL;
	bool into = d->moves_into || q->kind == CLAUSE_GO || says_word(m, q, "in") ||
		    q->kind == CLAUSE_BARE || q->kind == CLAUSE_BE ||
		    str_is_z(str_of(appliance), "stove");

	if (done)
		take(m, d, written_verb(m->a, done).p);
	else if (rests(m, q, now, d))
		take(m, d, "rest");
	else if (cooking && (into || d->duration.present)) {
		take(m, d, cooking);
		d->appliance = appliance;
	} else if (d->duration.present) {
		take(m, d, "rest");
		d->appliance = NULL;
	}
}

void
deed_imply(const struct maker *m, const struct clause *q, const struct standing *now,
    struct deed *d)
{
	bool timed = d->duration.present || d->doneness.text.n || d->doneness.known;
	const char *word = word_for(m, q, now, d);

	use_hot(m, now, d);
	if (d->duration.present && is_in_liquid(m, q) &&
	    ((d->passive && str_is_z(d->kind, "rest")) ||
		(str_is_z(d->kind, "move") && !d->temperature.present)))
		take(m, d, says_word(m, q, "boiling") ? "boil" : "soak");
	if (!timed || !says_nothing(d) ||
	    (d->duration.present && d->duration.known && d->duration.max_ms <= 0))
		return;
	if (d->duration.present && !d->temperature.unit && is_in_oil(m, q) &&
	    !str_is_z(str_of(now->hot), "fryer")) {
		take(m, d, "fry");
		d->appliance = "stove";
	} else if (word && d->duration.present) {
		take(m, d, word);
	} else if (d->duration.present || d->moves_into) {
		take_waiting(m, q, now, d);
	}
}
