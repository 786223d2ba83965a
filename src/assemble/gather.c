/* SPDX-License-Identifier: ISC */
/*
 * Gathers the foods and tools of clauses: which mentions begin a line of the
 * ingredient list, which only use one.
 */
#include "assemble/stepper.h"

/* Tokens between a food and a weight, and a count, that is told of it. */
#define APART_MAX 12
#define COUNT_APART_MAX 8

static void
use_ingredient(struct stepper *k, int at)
{
	if (at < 0)
		return;
	part_now(k)->ingredient[at].used = true;
	for (size_t i = 0; i < k->uses; i++)
		if (k->use[i] == (uint32_t)at)
			return;
	if (k->uses < STEP_USES_MAX)
		k->use[k->uses++] = (uint32_t)at;
}

/* Light verbs that bring in nothing: "keep the yolks". */
static bool
keeps(const struct deed *d)
{
	static const char *const verbs[] = {"keep", "leave", "let", "have", "make", "give"};

	for (size_t i = 0; d->lexeme && i < sizeof verbs / sizeof *verbs; i++)
		if (str_is_z(d->lexeme->lemma, verbs[i]))
			return true;
	return false;
}

/* Kinds of action whose bare object is an ingredient: "season with pepper". */
static bool
takes_food(const struct deed *d)
{
	static const char *const kinds[] = {"add", "mix", "season", "garnish", "coat",
	    "heat", "finish", "marinate", "cut", "serve"};

	for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++)
		if (str_is_z(d->kind, kinds[i]))
			return true;
	return (d->light && !keeps(d)) || str_is_z(d->kind, "move");
}

static bool
wets(const struct deed *d)
{
	return str_is_z(d->kind, "wash") || str_is_z(d->kind, "soak");
}

/* "rinse the lentils": right behind the verb. */
static bool
is_object(const struct maker *m, const struct clause *q, const struct node *food)
{
	return q->verb < q->end && chart_top(&m->c)->node.v[q->verb].end == food->beg;
}

static bool
is_water(const struct mention *x)
{
	return str_is_z(x->group, "water");
}

static bool
is_generic(const struct maker *m, const struct mention *x)
{
	const struct entry *e = lexicon_find(&m->g->lexicon, lexicon_key(m->a, x->key));

	return is_water(x) || (e && entry_reading(e, grammar_class(m->g, "GENERICFOOD")));
}

/* Seldom measured, so that a bare mention brings it in. */
static bool
is_seasoning(const struct mention *x)
{
	static const char *const groups[] = {"salt", "pepper", "herb", "spice"};

	for (size_t i = 0; i < sizeof groups / sizeof *groups; i++)
		if (str_is_z(x->group, groups[i]))
			return true;
	return false;
}

/* The cook turns to a dish or part within these tokens. */
static bool
turns_within(const struct maker *m, uint32_t beg, uint32_t end)
{
	size_t first = beg ? turns_up_to(m, beg - 1) : 0;

	return first < m->turn.n && m->turn.v[first].token < end;
}

/* Is the node part of a dish's name, said where the cook turns to it? */
bool
gather_is_name(const struct maker *m, const struct node *n)
{
	const struct level *l = chart_level(&m->c, "outline");
	const struct node *at = l ? level_at(l, n->beg) : NULL;
	struct field_nodes f;

	return at && node_is(&m->c, at, "OPEN") && turns_within(m, at->beg, at->end) &&
	       node_field(&m->c, at, "name", &f) && f.v[0].beg <= n->beg &&
	       f.v[f.n - 1].end >= n->end;
}

/* "and then green onions": a food and next to nothing else. */
static bool
is_fragment(const struct maker *m, const struct clause *q)
{
	const struct level *top = chart_top(&m->c);
	size_t others = 0;

	for (uint32_t i = q->beg; i < q->end && others <= 1; i++) {
		const struct node *n = &top->node.v[i];

		others += !node_is(&m->c, n, "ING") && !node_has(&m->c, n, "MARK") &&
			  !node_has(&m->c, n, "BOUNDARY") &&
			  !node_has(&m->c, n, "FILLER") && !node_has(&m->c, n, "AND") &&
			  !node_has(&m->c, n, "COMMA") && !node_has(&m->c, n, "DET");
	}
	return q->kind == CLAUSE_BARE && others <= 1;
}

static bool
are_alike(struct str a, struct str b)
{
	return str_is(a, b) || (str_is_z(a, "noodle") && str_is_z(b, "pasta"));
}

/* "the noodles go in", where the dish has macaroni: a wide word, for those. */
static bool
is_wide_word_for(const struct dish *d, const struct mention *x)
{
	if (!x->lexeme || !x->group.n || !str_is(lexeme_get(x->lexeme, "kind"), x->key))
		return false;
	for (size_t p = 0; p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].ingredients; i++)
			if (are_alike(x->group, d->part[p].ingredient[i].group))
				return true;
	return false;
}

static bool
has_verb_of(const struct maker *m, const struct clause *q, const char *rule)
{
	const struct node *verb =
	    q->verb < q->end ? &chart_top(&m->c)->node.v[q->verb] : NULL;

	return verb && str_is_z(m->c.made.v[verb->made].rule->name, rule);
}

/* "you'll need rice, onions and stock"; "you need your dough" is made before */
static bool
asks_for(const struct maker *m, const struct clause *q, const struct mention *x)
{
	return q->kind == CLAUSE_HAVE && has_verb_of(m, q, "have.ask") &&
	       x->node->beg >= chart_top(&m->c)->node.v[q->verb].end &&
	       !token_has(m, x->node->beg, "DET") && !token_has(m, x->node->beg - 1, "DET");
}

/* "hanging out over the nettles": what the cook did there, not what it is made of. */
static bool
is_beside(const struct stepper *k, const struct clause *q, const struct node *food)
{
	const struct chart *c = &k->m->c;
	const struct node *top = chart_top(c)->node.v;
	static const char *const kinds[] = {
	    "add", "coat", "season", "garnish", "mix", "heat"};

	for (uint32_t i = q->beg; i < q->end && top[i].end <= food->beg; i++) {
		const struct reading *r = node_reading(c, &top[i], "ACTION_ING");

		if (node_is(c, &top[i], "VING") &&
		    !(r && str_is_any(lexeme_get(r->lexeme, "kind"), kinds,
			       sizeof kinds / sizeof *kinds)))
			return true;
	}
	return false;
}

/* May this mention begin a line of the ingredient list? */
static bool
introduces(const struct stepper *k, const struct clause *q, const struct deed *d,
    const struct mention *x)
{
	bool measured = x->amount.known || x->size.known;

	if (q->kind == CLAUSE_NOT || q->other || k->past ||
	    story_is_past(k->m, chart_top(&k->m->c)->node.v[q->beg].beg, x->node->beg))
		return false;
	if (q->kind == CLAUSE_CHAT)
		return (x->amount.known && x->amount.unit) ||
		       (x->amount.present && is_seasoning(x));
	if (measured)
		return true;
	if (x->amount.present && is_water(x))
		return !wets(d);
	if (is_generic(k->m, x) || gather_is_name(k->m, x->node))
		return false;
	if (x->amount.present || k->fragment)
		return true;
	/* "in goes the stock"; "the pie goes in the oven" is of what is there */
	if (q->kind == CLAUSE_GO && d->action.n == 0)
		return !is_wide_word_for(&k->m->d->dish[k->dish], x) && !d->appliance &&
		       !d->duration.present;
	if (q->kind == CLAUSE_HAVE && q->action && str_is_z(q->action->lemma, "take"))
		return !is_wide_word_for(&k->m->d->dish[k->dish], x);
	if (q->kind == CLAUSE_DO || q->kind == CLAUSE_GO)
		return (takes_food(d) || (wets(d) && is_object(k->m, q, x->node))) &&
		       !is_beside(k, q, x->node);
	return !x->definite && (asks_for(k->m, q, x) || d->listing || is_seasoning(x));
}

/* "that's four cups of milk", "there's four cups in it": tells, adds nothing. */
static bool
states_again(const struct maker *m, const struct clause *q)
{
	return q->kind == CLAUSE_BE ||
	       (q->kind == CLAUSE_HAVE && has_verb_of(m, q, "have.there"));
}

static bool
is_in_use(const struct stepper *k, int at)
{
	return k->m->d->dish[k->dish].part[k->part].ingredient[at].used;
}

/* The blackberries of a "blackberry and apple crumble". */
static bool
is_in_name(const struct stepper *k, const struct mention *x)
{
	struct str name = k->m->d->dish[k->dish].name;

	return x->key.n && str_find(name, x->key) < name.n;
}

/* "and the same again of the ghee" */
static void
take_same(struct stepper *k, struct mention *x)
{
	if (x->same && k->said.known) {
		x->amount = k->said;
		x->definite = false;
		x->more = true;
	}
	if (x->amount.known)
		k->said = x->amount;
}

/* The flatbreads of "Four flatbreads.", the balls of "roll it into twenty balls". */
static bool
is_yield(const struct stepper *k, const struct mention *x, const struct node *n)
{
	const struct maker *m = k->m;
	const struct level *l = chart_level(&m->c, "yield");
	const struct node *at = l ? level_at(l, n->beg) : NULL;

	if (!at || !node_is(&m->c, at, "YIELD") || at->end < n->end)
		return false;
	/* "Four buns.", "it's four buns" may go in, unless the dish is buns */
	return node_attribute(&m->c, at, "cut").n || is_in_name(k, x) ||
	       str_is_z(node_token(&m->c, at)->norm, "that");
}

static void
add_foods(
    struct stepper *k, const struct clause *q, const struct deed *d, const struct node *n)
{
	struct mention x[MENTIONS_MAX];
	size_t count = mentions_of(k->m, n, x, MENTIONS_MAX);
	bool acts = q->kind != CLAUSE_NOT && q->kind != CLAUSE_CHAT;

	if (count != 1 || x[0].amount.known)
		k->last = (struct mention){0};
	else if (!is_in_name(k, &k->last) || is_in_name(k, &x[0]))
		k->last = x[0];
	if ((!acts && q->other) || (count && is_yield(k, &x[0], n)))
		return;
	for (size_t i = 0; i < count; i++) {
		take_same(k, &x[i]);
		x[i].aside = !acts || (!x[i].more && states_again(k->m, q));
		int at = ingredient_add(
		    k->m, k->dish, k->part, &x[i], introduces(k, q, d, &x[i]));

		bool again = at >= 0 && !x[i].amount.known && is_in_use(k, at);

		if (acts)
			use_ingredient(k, at);
		if (acts && at >= 0)
			vec_push(k->m->a, &k->m->counted, place_of_node(k->m, n).span);
		if (acts && !again && (q->kind != CLAUSE_DO || k->bringing) && at >= 0 &&
		    !x[i].definite && !gather_is_name(k->m, n))
			pending_push(k, &x[i], n);
	}
}

static void
add_equipment(struct stepper *k, const struct node *n)
{
	struct dish *d = &k->m->d->dish[k->dish];
	const struct reading *r = node_reading(&k->m->c, n, "EQUIP");
	size_t count = d->equipments;

	if (!r || lexeme_has(r->lexeme, "part"))
		return;
	for (size_t i = 0; i < count; i++)
		if (str_is(d->equipment[i].item, r->lexeme->lemma))
			return;
	if (count == 0 || (count >= 4 && (count & (count - 1)) == 0))
		d->equipment = arena_grow(k->m->a, d->equipment, count,
		    count ? count * 2 : 4, sizeof *d->equipment);
	d->equipment[count] =
	    (struct equipment){.item = r->lexeme->lemma, .place = place_of_node(k->m, n)};
	d->equipments++;
	struct field_nodes size;
	struct said dims[DIMS_MAX];

	if (node_field(&k->m->c, n, "size", &size)) {
		if (measure_dims(&k->m->c, k->m->region, size.v, dims))
			d->equipment[count].size = dims[0].value;
		else if (measure_of(&k->m->c, k->m->region, size.v, &dims[0]))
			d->equipment[count].size = dims[0].value;
	}
}

static bool
raw_is(const struct maker *m, const struct clause *q, uint32_t at, const char *class_name)
{
	const struct level *top = chart_top(&m->c);

	return at >= q->beg && at < q->end && top->node.v[at].made == RAW &&
	       node_has(&m->c, &top->node.v[at], class_name);
}

/* "a tablespoon at a time", "into a cup", "a 500 ml jar", "makes two cups": no
 * amount of what goes in. */
static bool
is_no_amount(const struct maker *m, const struct clause *q, uint32_t at)
{
	const struct level *top = chart_top(&m->c), *yields = chart_level(&m->c, "yield");
	const struct node *n = &top->node.v[at];
	const struct node *yield = yields ? level_at(yields, n->beg) : NULL;

	if (yield && node_is(&m->c, yield, "YIELD"))
		return true;
	if (at > q->beg && raw_is(m, q, at - 1, "PREP") && !raw_is(m, q, at - 1, "APPROX"))
		return true;
	return raw_is(m, q, at + 1, "UNIT") || raw_is(m, q, at + 1, "EQUIP") ||
	       (at + 1 < q->end && node_is(&m->c, n + 1, "EQ")) ||
	       (raw_is(m, q, at + 1, "PREP") &&
		   str_is_z(node_token(&m->c, n + 1)->norm, "at"));
}

/* "four medium ones", "four of them" */
static bool
counts_them(const struct maker *m, const struct clause *q, uint32_t at)
{
	uint32_t next = at + 1;

	while (raw_is(m, q, next, "FOODMOD") || raw_is(m, q, next, "AMOUNTADJ") ||
	       raw_is(m, q, next, "OF"))
		next++;
	return next > at + 1 && raw_is(m, q, next, "PRON");
}

static bool
amount_alone(const struct maker *m, const struct clause *q, uint32_t at, struct amount *out)
{
	const struct node *n = &chart_top(&m->c)->node.v[at];
	struct quantity number;
	struct said s;

	if (node_is(&m->c, n, "NUM") && counts_them(m, q, at) &&
	    value_number(&m->c, n, &number) && ratio_order(number.min, ratio_int(1)) >= 0) {
		*out = (struct amount){true, true, number.min, number.max, NULL};
		return true;
	}
	if (!node_is(&m->c, n, "AMT") || is_no_amount(m, q, at) ||
	    !measure_of(&m->c, m->region, n, &s) || s.kind != MEASURE_AMOUNT)
		return false;
	*out = s.value;
	return s.value.known && s.value.unit;
}

/* "The blackberries were free. You want two hundred grams": an amount alone
 * belongs to the food just said. */
static void
add_amount_alone(struct stepper *k, const struct clause *q, uint32_t at)
{
	struct mention x = k->last;
	uint32_t token = chart_top(&k->m->c)->node.v[at].beg;
	uint32_t apart;
	bool counted;

	if (!x.item.n || q->kind == CLAUSE_CHAT || q->kind == CLAUSE_NOT || q->other ||
	    !amount_alone(k->m, q, at, &x.amount))
		return;
	apart = token - x.node->end;
	counted = !x.amount.unit || x.amount.unit->dimension == DIM_COUNT;
	/* "you want two hundred and fifty grams": of what was spoken of, however long */
	if (counted ? apart > COUNT_APART_MAX : apart > APART_MAX && q->kind != CLAUSE_HAVE)
		return;
	k->said = x.amount;
	x.node = &chart_top(&k->m->c)->node.v[at];
	ingredient_add(k->m, k->dish, k->part, &x, !counted || !x.amount.unit);
	k->last = (struct mention){0};
}

void
gather_things(struct stepper *k, const struct clause *q, const struct deed *d)
{
	const struct level *top = chart_top(&k->m->c);

	k->fragment = is_fragment(k->m, q);
	for (uint32_t i = q->beg; i < q->end; i++) {
		const struct node *n = &top->node.v[i];
		struct field_nodes f;

		if (node_is(&k->m->c, n, "ING") || node_is(&k->m->c, n, "INGS"))
			add_foods(k, q, d, n);
		if (node_field(&k->m->c, n, "thing", &f) ||
		    node_field(&k->m->c, n, "object", &f))
			if (node_is(&k->m->c, f.v, "ING") || node_is(&k->m->c, f.v, "INGS"))
				add_foods(k, q, d, f.v);
		add_amount_alone(k, q, i);
		if (q->kind != CLAUSE_NOT && q->kind != CLAUSE_CHAT &&
		    node_is(&k->m->c, n, "EQ"))
			add_equipment(k, n);
	}
}
