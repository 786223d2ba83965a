/* SPDX-License-Identifier: ISC */
/*
 * The verb of a written sentence: the cook's own in its printed form, another where
 * hers is light, what is turned where the heat is.
 */
#include "clause/composer.h"

static struct str
unhyphened(struct arena *a, struct str s)
{
	struct str out = arena_str(a, s);

	for (size_t i = 0; i < out.n; i++)
		if (out.p[i] == '-')
			((char *)out.p)[i] = ' ';
	return out;
}

struct str
written_verb(struct arena *a, const struct lexeme *action)
{
	struct str write = lexeme_get(action, "write");

	return write.n ? unhyphened(a, write) : action->lemma;
}

/* Light verbs that say where to: "take it off the heat". */
static bool
keeps_verb(const struct composer *c)
{
	static const char *const verbs[] = {"take", "keep", "leave", "bring", "turn"};
	struct str lemma = c->w->clause->action ? c->w->clause->action->lemma : STR("");

	for (size_t i = 0; i < sizeof verbs / sizeof *verbs; i++)
		if (str_is_z(lemma, verbs[i]))
			return true;
	return false;
}

/* The verb where the cook's is light: what is done to what it is done with. */
struct str
composer_light_verb(const struct composer *c)
{
	const struct deed *d = c->w->deed;

	if (has_object(c) && (c->f.places || c->f.appliance.n) && keeps_verb(c))
		return c->w->clause->action->lemma;
	if (c->f.foods && !c->f.places && !c->f.appliance.n)
		return STR("add");
	if (has_object(c) && (c->f.places || c->f.appliance.n))
		return STR("put");
	if (c->f.foods)
		return STR("add");
	/* "get the skillet on medium-high heat" */
	if (c->f.tool && c->f.heat.n)
		return STR("heat");
	return d->duration.present || d->doneness.text.n ? STR("cook") : STR("");
}

/* "turn it off", "turn it right down": what is turned is the heat, or the oven. */
struct str
composer_heat_verb(const struct composer *c)
{
	enum { OFF_VERBS = 3 };
	static const char *const table[][2] = {{"turn off", "turn off"},
	    {"switch off", "turn off"}, {"put off", "turn off"}, {"turn down", "reduce"},
	    {"turn up", "increase"}, {"dial down", "reduce"}, {"dial up", "increase"}};
	const struct lexeme *l = c->w->deed->lexeme;
	const struct level *top = chart_top(&c->w->m->c);
	bool oven = c->w->hot && str_is_z(str_of(c->w->hot), "oven");
	bool low = says_token(c->w->m, top->node.v[c->w->clause->beg].beg,
	    top->node.v[c->w->clause->end - 1].end, "low");

	if (!l || !is_kind(c, "set-heat") || c->f.foods ||
	    (c->f.object.n && !str_is_z(c->f.object, "it")))
		return STR("");
	for (size_t i = 0; i < sizeof table / sizeof *table; i++)
		if (str_is_z(l->lemma, table[i][0]))
			return arena_fmt(c->w->m->a, "%s the %s%s", table[i][1],
			    oven && i < OFF_VERBS ? "oven" : "heat",
			    low && i >= OFF_VERBS && !c->f.heat.n ? " to low" : "");
	return STR("");
}

struct str
composer_verb(const struct composer *c)
{
	const struct deed *d = c->w->deed;
	const struct clause *q = c->w->clause;
	struct arena *a = c->w->m->a;

	if (q->kind == CLAUSE_NOT)
		return arena_fmt(
		    a, "do not %.*s", (int)q->action->lemma.n, q->action->lemma.p);
	if (d->lexeme && !lexeme_has(d->lexeme, "light") && d->action.n)
		return written_verb(a, d->lexeme);
	if (d->action.n && !d->lexeme)
		return d->action;
	return composer_light_verb(c);
}
