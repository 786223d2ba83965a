/* SPDX-License-Identifier: ISC */
/*
 * Where a spell of heat or time begins that is said by itself, without a verb:
 * "brush it over the fish, four hundred degrees, twelve minutes".
 */
#include "clause/cutter.h"

static bool
is_node(const struct cutter *k, uint32_t at, const char *class_name)
{
	return node_is(&k->m->c, &k->top->node.v[at], class_name);
}

static bool
is_any_of(const struct cutter *k, uint32_t at, const char *const *classes, size_t count)
{
	for (size_t i = 0; i < count; i++)
		if (is_raw(k, &k->top->node.v[at], classes[i]))
			return true;
	return false;
}

static bool
is_letting(const struct lexeme *action)
{
	return action &&
	       (str_is_z(action->lemma, "let") || str_is_z(action->lemma, "leave"));
}

/* A verb that takes no time worth telling: "brush", "scrape", "sprinkle". */
static bool
is_inert(const struct cutter *k, uint32_t at)
{
	static const char *const kinds[] = {"coat", "season", "add", "move", "shape", "cut",
	    "mix", "garnish", "drain", "wash", "cover"};
	struct str kind = lexeme_get(k->now.action, "kind");

	if (lexeme_has(k->now.action, "passive"))
		return false;
	if (str_is_any(kind, kinds, sizeof kinds / sizeof *kinds))
		return true;
	/* "let it sit half an hour, then 275 degrees for three hours" */
	return is_node(k, at, "TEMP") &&
	       (str_is_z(kind, "rest") || str_is_z(kind, "cool") ||
		   is_letting(k->now.action));
}

static bool
is_appliance(const struct cutter *k, uint32_t at)
{
	const struct reading *e = node_reading(&k->m->c, &k->top->node.v[at], "EQUIP");

	return is_node(k, at, "EQ") && e &&
	       (lexeme_has(e->lexeme, "setting") || lexeme_get(e->lexeme, "implies").n > 0);
}

/* The first node of what is said with the setting or the time: "under a hot
 * grill about two minutes", "then another ten". */
static uint32_t
first_of(const struct cutter *k, uint32_t at, uint32_t from)
{
	static const char *const soft[] = {"APPROX", "FILLER", "ANOTHER", "ATLEAST"};
	static const char *const lead[] = {"MARK", "FILLER"};

	while (at > from && is_any_of(k, at - 1, soft, 4))
		at--;
	while (at > from && (is_node(k, at - 1, "HEAT") || is_node(k, at - 1, "TEMP")))
		at--;
	while (at > from && is_any_of(k, at - 1, lead, 2))
		at--;
	return at;
}

/* "under a hot grill", "in cold water": the place of a spell; its first node. */
static uint32_t
place_before(const struct cutter *k, uint32_t at, uint32_t from)
{
	uint32_t i = at;

	if (i <= from || (!is_food(k, i - 1) && !is_node(k, i - 1, "EQ")))
		return at;
	for (i--; i > from && i + 4 > at && !is_raw(k, &k->top->node.v[i], "PLACEPREP");
	     i--)
		;
	return is_raw(k, &k->top->node.v[i], "PLACEPREP") ? i : at;
}

static bool
is_governed(const struct cutter *k, uint32_t first)
{
	static const char *const words[] = {
	    "PREP", "PRON", "ANOTHER", "MANNER", "TOWORD", "OR", "UPTO", "SUBJ", "BE"};
	const struct node *before = first ? &k->top->node.v[first - 1] : NULL;
	enum clause_kind kind;

	return !before || is_any_of(k, first - 1, words, sizeof words / sizeof *words) ||
	       clause_verb_kind(&k->m->c, before, &kind);
}

static bool
has_food(const struct cutter *k, uint32_t beg, uint32_t end)
{
	for (uint32_t i = beg; i < end; i++)
		if (is_food(k, i))
			return true;
	return false;
}

static bool
has_time(const struct cutter *k, uint32_t beg, uint32_t end)
{
	for (uint32_t i = beg; i < end; i++)
		if (is_node(k, i, "DUR"))
			return true;
	return false;
}

bool
spell_starts(const struct cutter *k, uint32_t at, uint32_t *from)
{
	bool verb = k->now.verb != UINT32_MAX;
	uint32_t after = verb ? k->now.verb + 1 : k->now.beg, first;

	if (k->absorbing || (!is_node(k, at, "DUR") && !is_node(k, at, "TEMP")))
		return false;
	first = first_of(k, at, after);
	if (k->now.kind != CLAUSE_DO)
		first = place_before(k, first, after);
	if (first <= after || is_governed(k, first) ||
	    (is_node(k, at, "DUR") && has_time(k, after, first)))
		return false;
	*from = first;
	if (k->now.kind == CLAUSE_DO)
		return is_inert(k, at);
	return has_food(k, k->now.beg, first) && !is_appliance(k, first - 1);
}

/* "give it a whisk", "stir that": a verb that has all it wants by the node *past. */
static bool
has_all(const struct cutter *k, uint32_t *past)
{
	struct field_nodes f;

	*past = k->now.verb + 1;
	/* "switch off the flame" */
	if ((is_raw(k, &k->top->node.v[*past], "DET") ||
		is_raw(k, &k->top->node.v[*past], "ART")) &&
	    *past + 2 < k->top->node.n &&
	    (is_raw(k, &k->top->node.v[*past + 1], "THING") ||
		is_node(k, *past + 1, "EQ"))) {
		*past += 2;
		return true;
	}
	if (node_field(&k->m->c, &k->top->node.v[k->now.verb], "object", &f))
		return true;
	return is_raw(k, &k->top->node.v[(*past)++], "PRON") &&
	       !lexeme_has(k->now.action, "light");
}

bool
spell_lists(const struct cutter *k, uint32_t at, uint32_t *from)
{
	static const char *const joins[] = {"PREP", "AND", "OR", "COMMA", "COLON", "DASH"};
	static const char *const apart[] = {
	    "COMMA", "AND", "FILLER", "MARK", "CALL", "ADV"};
	uint32_t past, place;
	struct field_nodes f;

	if ((k->now.kind != CLAUSE_DO && k->now.kind != CLAUSE_NOT) || k->absorbing ||
	    k->now.verb == UINT32_MAX || k->now.verb + 1 >= at || !is_food(k, at) ||
	    !node_field(&k->m->c, &k->top->node.v[at], "amount", &f) || !has_all(k, &past))
		return false;
	*from = at;
	while (*from > past &&
	       is_any_of(k, *from - 1, (const char *const[]){"FILLER", "MARK"}, 2))
		--*from;
	/* "rinse those, and a quart of stock" */
	for (place = *from; place > past && is_any_of(k, place - 1, apart, 6);)
		place--;
	if (place == past && past < at) {
		*from = past;
		return true;
	}
	/* "in the jug one cup of milk": the place goes with the list */
	place = place_before(k, *from, past);
	if (place < *from && place >= past && is_node(k, *from - 1, "EQ")) {
		*from = place;
		return true;
	}
	return !is_any_of(k, *from - 1, joins, sizeof joins / sizeof *joins);
}
