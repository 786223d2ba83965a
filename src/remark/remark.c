/* SPDX-License-Identifier: ISC */
/*
 * Turns what the grammar's rules of REMARK matched into remarks, where what
 * stands around it bears it out.
 */
#include "remark/remark.h"

#include <stdlib.h>

#include "remark/remarks.h"

/* ---- what a remark's attributes ask for ----------------------------------- */

#define MEAT "poultry ground-meat beef pork lamb veal game offal sausage fish shellfish"
#define PERISHABLE MEAT " egg rice cream dairy stock soup prepared"

enum { OBJECT_REACH = 8, FOOD_REACH = 60, NEAR = 40, FAR = 12000, TWO_HOURS_S = 7200 };

static bool
word_among(struct str word, const char *words, char sep)
{
	struct str rest = str_of(words);

	while (word.n && rest.p)
		if (str_is(str_next(&rest, sep), word))
			return true;
	return false;
}

/* The group is one of those that `needs` lists. */
static bool
is_needed(struct str needs, struct str group)
{
	while (needs.p) {
		struct str one = str_next(&needs, ',');

		if (str_is(one, group) ||
		    (str_is_z(one, "meat") && word_among(group, MEAT, ' ')) ||
		    (str_is_z(one, "perishable") && word_among(group, PERISHABLE, ' ')))
			return true;
	}
	return false;
}

/* What is rinsed, left out, thawed: the food after the words, or, for what was
 * "rinsed" or is "it", the one named last. */
static uint32_t
object_of(const struct maker *m, const struct node *n)
{
	struct span s = sentence_of(m, n->beg);
	uint32_t after = n->end + OBJECT_REACH < s.end ? n->end + OBJECT_REACH : s.end;
	uint32_t from = n->beg > FOOD_REACH ? n->beg - FOOD_REACH : 0, at;

	at = food_before(m, n->beg > s.beg + 5 ? n->beg - 5 : s.beg, n->beg);
	if (token_has(m, n->beg, "ACTION_ED") && at < n->beg)
		return at;
	for (uint32_t i = n->beg; i < after; i++) {
		if (token_reading(m, i, "FOOD"))
			return i;
		if (token_is(m, i, "hands") || token_has(m, i, "EQUIP") ||
		    token_has(m, i, "STOP"))
			break;
		if (token_has(m, i, "PRON"))
			return food_before(m, from, i);
	}
	for (uint32_t i = n->beg; i < after; i++)
		if (token_is(m, i, "hands"))
			return n->beg;
	return food_before(m, from, n->beg);
}

static bool
object_fits(const struct maker *m, const struct node *n, struct str needs)
{
	uint32_t at = object_of(m, n);

	return is_needed(needs, food_group(m, at)) || str_is(needs, food_key(m, at));
}

static bool
dish_has(const struct maker *m, int dish, struct str needs)
{
	const struct dish *d = dish >= 0 ? &m->d->dish[dish] : NULL;

	for (size_t p = 0; d && p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].ingredients; i++)
			if (is_needed(needs, d->part[p].ingredient[i].group) ||
			    str_is(needs, d->part[p].ingredient[i].key))
				return true;
	return false;
}

/* "leave it on the stove overnight": the whole dish, which spoils. */
static bool
is_left_over(const struct maker *m, const struct node *n)
{
	for (uint32_t i = n->beg; i < n->end; i++)
		if (token_has(m, i, "PRON"))
			return dish_has(
			    m, turn_of(m, n->beg).dish, STR("meat,rice,stock,soup,legume"));
	return false;
}

static bool
is_near(const struct maker *m, const struct node *n, struct str needs)
{
	uint32_t beg = n->beg > NEAR ? n->beg - NEAR : 0, end = n->end + NEAR;

	for (uint32_t i = beg; i < end && i < m->c.tokens.token.n; i++)
		if (is_needed(needs, food_group(m, i)))
			return true;
	return false;
}

/* A negation since the last comma: "don't waste it, pour it over" forbids no
 * pouring. */
static bool
is_forbidden(const struct maker *m, uint32_t token)
{
	for (uint32_t i = token; i-- > 0 && !token_has(m, i, "COMMA") &&
				 !token_has(m, i, "STOP") && !token_has(m, i, "BREAK");)
		if (token_has(m, i, "NEG"))
			return true;
	return false;
}

/* "whatever marinade's still in the bowl, ... brush it on" */
static bool
is_basted_after(const struct maker *m, const struct node *n)
{
	enum { REACH = 30 };

	for (uint32_t i = n->end; i < n->end + REACH && i < m->c.tokens.token.n; i++)
		if (token_has(m, i, "BASTING"))
			return !is_forbidden(m, i);
	return false;
}

/* Meat lay in it before, and it was neither boiled nor kept apart. */
static bool
held_raw_meat(const struct maker *m, const struct node *n)
{
	static const char *const safe[] = {"boil", "boiled", "boiling", "reserve",
	    "reserved", "aside", "kept", "simmer", "simmered", "fresh", "separate",
	    "unused"};
	uint32_t beg = n->beg > FOOD_REACH ? n->beg - FOOD_REACH : 0, end = n->end + NEAR;
	bool lay = false;

	for (uint32_t i = n->beg > FAR ? n->beg - FAR : 0; i < n->beg && !lay; i++)
		lay = lay || token_is(m, i, "marinade") || token_is(m, i, "marinate") ||
		      token_is(m, i, "marinating") || token_is(m, i, "marinated");
	for (uint32_t i = beg; i < end && i < m->c.tokens.token.n; i++)
		for (size_t w = 0; w < sizeof safe / sizeof *safe; w++)
			if (token_is(m, i, safe[w]) && !is_taken_back(m, i, false))
				return false;
	for (uint32_t i = beg; i < end && i < m->c.tokens.token.n; i++)
		if (token_is(m, i, "back") && i > 0 && token_has(m, i - 1, "HOLDING"))
			return false;
	return lay && (!node_attribute(&m->c, n, "then").n || is_basted_after(m, n)) &&
	       dish_has(m, turn_of(m, n->beg).dish, STR("meat"));
}

/* The time in its words is longer than perishable food may stay out. */
static bool
is_long(const struct maker *m, const struct node *n)
{
	const struct made *made = &m->c.made.v[n->made];
	const struct level *l = &m->c.level[made->level];

	for (uint32_t i = made->nodes.beg; i < made->nodes.end; i++) {
		struct said s;

		if (l->node.v[i].made == RAW ||
		    !measure_of(&m->c, m->region, &l->node.v[i], &s) ||
		    s.kind != MEASURE_DURATION)
			continue;
		return !s.value.known || !s.value.unit || !s.value.unit->has_base ||
		       ratio_order(unit_to_base(s.value.unit, s.value.max),
			   ratio_int(TWO_HOURS_S)) > 0;
	}
	return true;
}

static bool
is_borne_out(const struct maker *m, const struct node *n)
{
	struct str needs = node_attribute(&m->c, n, "needs");
	struct str topic = node_attribute(&m->c, n, "topic");
	bool of_object =
	    word_among(topic, "rinsing-poultry,time-out,slow-cooker,kidney-bean", ',');

	if (node_attribute(&m->c, n, "long").n && !is_long(m, n))
		return false;
	if (!needs.n)
		return true;
	if (str_is_z(needs, "marinade"))
		return held_raw_meat(m, n);
	if (of_object)
		return object_fits(m, n, needs) ||
		       (str_is_z(topic, "time-out") && is_left_over(m, n));
	return is_near(m, n, needs) || dish_has(m, turn_of(m, n->beg).dish, needs);
}

/* ---- making remarks -------------------------------------------------------- */

void
remark_add(struct remarks *r, enum remark_kind kind, struct span tokens, struct str detail)
{
	struct maker *m = r->m;
	const struct node n = {tokens.beg, tokens.end, RAW};
	struct turn turn = turn_of(m, tokens.end - 1);
	struct remark x = {.kind = kind,
	    .place = place_of_node(m, &n),
	    .text = words_of(m, node_text(&m->c, &n)),
	    .detail = detail,
	    .dish = turn.dish,
	    .part = turn.part,
	    .step = -1};

	vec_push(m->a, &r->remark, x);
}

/* The same was told in this sentence already. */
static bool
is_told(
    const struct remarks *r, enum remark_kind kind, struct span tokens, struct str detail)
{
	const struct remark *last = r->remark.n ? &r->remark.v[r->remark.n - 1] : NULL;
	struct span s = sentence_of(r->m, tokens.beg);

	return last && last->kind == kind && str_is(last->detail, detail) &&
	       token_from(r->m, last->place.span.beg) >= s.beg &&
	       kind != REMARK_CLAIM_FREE_OF;
}

/* A claim names each allergen that the dish must be free of. */
static void
add_claims(struct remarks *r, const struct node *n)
{
	struct str codes = node_attribute(&r->m->c, n, "of");

	while (codes.p)
		remark_add(r, REMARK_CLAIM_FREE_OF, (struct span){n->beg, n->end},
		    str_next(&codes, ','));
}

static void
add_matched(struct remarks *r, const struct node *n)
{
	static const struct {
		const char *kind;
		enum remark_kind remark;
		const char *detail; /* the attribute that has it */
	} rows[] = {{"unsafe", REMARK_UNSAFE_ADVICE, "topic"},
	    {"raw", REMARK_RAW_SERVED, "detail"}, {"caution", REMARK_CAUTION, "detail"}};
	struct str kind = node_attribute(&r->m->c, n, "kind");
	bool own = node_attribute(&r->m->c, n, "not").n > 0;

	if (str_is_z(kind, "unclear")) {
		remark_unclear(r, n);
		return;
	}
	/* "don't give it to the very young" is a caution all the same */
	own = own || str_is_z(kind, "caution");
	if (is_taken_back(r->m, n->beg, own) || !is_borne_out(r->m, n))
		return;
	/* "if anybody's vegan" claims nothing */
	if (str_is_z(kind, "free") && !is_conditional(r->m, n->beg))
		add_claims(r, n);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
		if (str_is_z(kind, rows[i].kind) &&
		    !is_told(r, rows[i].remark, (struct span){n->beg, n->end},
			node_attribute(&r->m->c, n, rows[i].detail)))
			remark_add(r, rows[i].remark, (struct span){n->beg, n->end},
			    node_attribute(&r->m->c, n, rows[i].detail));
}

static int
order_remarks(const void *left, const void *right)
{
	const struct remark *a = left, *b = right;
	struct span p = a->place.span, q = b->place.span;

	if (p.beg != q.beg)
		return p.beg < q.beg ? -1 : 1;
	if (p.end != q.end)
		return p.end < q.end ? -1 : 1;
	return (int)a->kind - (int)b->kind;
}

void
remark_draft(struct maker *m)
{
	static const char *const passes[] = {"unsafe", "served", "told"};
	struct remarks r = {.m = m};

	drop_lookalikes(m);
	details_fill(m);
	for (size_t p = 0; p < sizeof passes / sizeof *passes; p++) {
		const struct level *l = chart_level(&m->c, passes[p]);

		for (size_t i = 0; l && i < l->node.n; i++)
			if (node_is(&m->c, &l->node.v[i], "REMARK"))
				add_matched(&r, &l->node.v[i]);
	}
	remark_mishearings(&r);
	remark_dimensions(&r);
	if (r.remark.n)
		qsort(r.remark.v, r.remark.n, sizeof *r.remark.v, order_remarks);
	m->d->remark = r.remark.v;
	m->d->remarks = r.remark.n;
}
