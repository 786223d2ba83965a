/* SPDX-License-Identifier: ISC */
/*
 * Makes the dishes and parts: names from an overview and from where the cook
 * turns to them, and which clause belongs where.
 */
#include "assemble/outline.h"

#include "clause/deed.h"
#include <stdio.h> /*DBG*/

enum { NEAR_MS = 12000 };

static struct str
text_of_tokens(const struct maker *m, uint32_t beg, uint32_t end)
{
	struct buf b = buf_in(m->a);

	for (uint32_t i = beg; i < end; i++) {
		struct str w = words_of(m, m->c.tokens.token.v[i].text);

		if (b.n && m->c.tokens.token.v[i].flags & TOKEN_HYPHEN)
			buf_put_char(&b, '-');
		else if (b.n && m->c.tokens.token.v[i].flags & TOKEN_SPACE)
			buf_put_char(&b, ' ');
		for (size_t k = 0; k < w.n; k++)
			buf_put_char(&b, to_lower(w.p[k]));
	}
	return buf_str(&b);
}

static bool
token_is(const struct maker *m, uint32_t i, const char *class_name)
{
	unsigned id = grammar_class(m->g, class_name);

	return id < CLASSES_MAX && i < m->c.tokens.token.n &&
	       classset_has(&m->c.tokens.token.v[i].entry->classes, id);
}

static struct str
last_word(struct str s)
{
	size_t at = s.n;

	while (at > 0 && s.p[at - 1] != ' ')
		at--;
	return str_cut(s, at, s.n);
}

/* The last token of a name, without what comes with it. */
static uint32_t
last_of(const struct maker *m, uint32_t beg, uint32_t end)
{
	uint32_t last = beg;

	for (uint32_t i = beg; i < end && (i == beg || !token_is(m, i, "WITH")); i++)
		last = i;
	return last;
}

/* The lemma of a name's last word: what two names of one dish share. */
static struct str
head_of(const struct maker *m, uint32_t beg, uint32_t end)
{
	static const char *const classes[] = {"DISH", "PARTHEAD", "FOOD"};
	uint32_t last = last_of(m, beg, end);

	for (size_t k = 0; beg < end && k < 3; k++) {
		const struct reading *r = entry_reading(
		    m->c.tokens.token.v[last].entry, grammar_class(m->g, classes[k]));

		if (r)
			return k < 2 ? r->lexeme->lemma : last_word(r->lexeme->lemma);
	}
	return beg < end ? m->c.tokens.token.v[last].norm : STR("");
}

static enum opening_kind
kind_of(const struct maker *m, const struct node *n)
{
	static const struct {
		const char *name;
		enum opening_kind kind;
	} kinds[] = {{"also", OPENING_ALSO}, {"with", OPENING_WITH}, {"back", OPENING_BACK},
	    {"today", OPENING_TODAY}, {"part", OPENING_PART}, {"lead", OPENING_LEAD},
	    {"turn", OPENING_TURN}};
	struct str kind = node_attribute(&m->c, n, "kind");

	for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++)
		if (str_is_z(kind, kinds[i].name))
			return kinds[i].kind;
	return OPENING_MENTION;
}

/* A mention right after a marker or at the start of a sentence. */
static bool
leads(const struct maker *m, uint32_t token)
{
	uint32_t i = token;

	while (i > 0 && (token_is(m, i - 1, "DET") || token_is(m, i - 1, "ART")))
		i--;
	return i == 0 || token_is(m, i - 1, "MARK") || token_is(m, i - 1, "FILLER") ||
	       token_is(m, i - 1, "BREAK") || token_is(m, i - 1, "STOP");
}

static void
collect(struct outline *o, const struct node *n)
{
	const struct maker *m = o->m;
	struct field_nodes f;
	struct opening x = {.kind = kind_of(m, n)};
	uint32_t last;

	if ((!node_is(&m->c, n, "OPEN") && !node_is(&m->c, n, "NAME")) ||
	    !node_field(&m->c, n, "name", &f))
		return;
	x.token = f.v[0].beg;
	x.end = f.v[f.n - 1].end;
	x.name = text_of_tokens(m, x.token, x.end);
	x.head = head_of(m, x.token, x.end);
	last = last_of(m, x.token, x.end);
	x.is_dish = token_is(m, last, "DISH");
	x.is_part = token_is(m, last, "PARTHEAD") && !x.is_dish;
	x.may_be_part = x.is_dish && token_is(m, last, "PARTHEAD");
	if ((x.kind == OPENING_TODAY || x.kind == OPENING_ALSO) && x.is_part)
		x.kind = OPENING_WITH;
	x.leads = x.kind >= OPENING_LEAD || leads(m, x.token);
	vec_push(m->a, &o->opening, x);
}

/* A heading is a name, but for the usual ones of a recipe's sections. */
static bool
is_section(struct str s)
{
	static const char *const plain[] = {"ingredients", "method", "instructions",
	    "directions", "steps", "you will need", "you'll need", "shopping list", "notes",
	    "what you need", "script", "intro", "outro", "introduction", "preparation",
	    "ingredient list", "transcript"};

	for (size_t i = 0; i < sizeof plain / sizeof *plain; i++)
		if (str_is_z(s, plain[i]))
			return true;
	return false;
}

static bool
names_food(const struct maker *m, uint32_t beg, uint32_t end)
{
	for (uint32_t i = beg; i < end; i++)
		if (token_is(m, i, "FOOD") || token_is(m, i, "DISH") ||
		    token_is(m, i, "PARTHEAD"))
			return true;
	return false;
}

static void
collect_headings(struct outline *o)
{
	const struct maker *m = o->m;

	for (uint32_t i = 0; i < m->c.tokens.token.n;) {
		uint32_t cue = m->c.tokens.token.v[i].cue, end = i;
		struct opening x = {.kind = OPENING_HEADING, .leads = true};

		while (end < m->c.tokens.token.n && m->c.tokens.token.v[end].cue == cue)
			end++;
		if (m->s->cue[cue].kind == CUE_HEADING) {
			uint32_t beg = i;

			while (beg < end &&
			       (token_is(m, beg, "FOR") || token_is(m, beg, "DET") ||
				   token_is(m, beg, "BREAK")))
				beg++;
			while (end > beg && (token_is(m, end - 1, "COLON") ||
						token_is(m, end - 1, "STOP") ||
						token_is(m, end - 1, "BREAK")))
				end--;
			x.token = beg;
			x.end = end;
			x.name = text_of_tokens(m, beg, end);
			x.head = head_of(m, beg, end);
			x.is_part =
			    beg < end && (token_is(m, end - 1, "PARTHEAD") || beg > i + 1);
			x.is_dish = !x.is_part;
			if (x.name.n && !is_section(x.name) && names_food(m, beg, end))
				vec_push(m->a, &o->opening, x);
		}
		for (i = end; i < m->c.tokens.token.n && m->c.tokens.token.v[i].cue == cue;
		     i++)
			;
	}
}

/* "with a slaw and a mayo": the second goes with the dish as well. */
static void
spread_with(struct outline *o)
{
	for (size_t i = 1; i < o->opening.n; i++) {
		const struct opening *p = &o->opening.v[i - 1];
		struct opening *x = &o->opening.v[i];
		bool with =
		    p->kind == OPENING_WITH || str_find(p->name, STR(" with ")) < p->name.n;

		if (with && x->token <= p->end + 3 &&
		    (x->kind == OPENING_ALSO || x->kind == OPENING_MENTION) &&
		    token_is(o->m, p->end, "AND"))
			x->kind = OPENING_WITH;
	}
}

static int
by_token(const void *a, const void *b)
{
	const struct opening *x = a, *y = b;

	if (x->token != y->token)
		return x->token < y->token ? -1 : 1;
	return (int)y->kind - (int)x->kind;
}

static bool
overlaps_opening(const struct outline *o, uint32_t beg, uint32_t end)
{
	for (size_t i = 0; i < o->opening.n; i++)
		if (o->opening.v[i].token < end && o->opening.v[i].end > beg &&
		    o->opening.v[i].kind >= OPENING_TODAY)
			return true;
	return false;
}

/* Food in a unit of weight, volume or number: no "pot of chili". */
static bool
is_measured(const struct mention *x)
{
	return x->amount.known && x->lexeme &&
	       (!x->amount.unit || x->amount.unit->dimension != DIM_COUNT ||
		   x->size.present || x->amount.unit->brief.n == 0 ||
		   str_is_z(x->amount.unit->name, "clove") ||
		   str_is_z(x->amount.unit->name, "can"));
}

enum work { WORK_NONE, WORK_WEAK, WORK_SURE };

/* How surely a clause is cooking: a weight, a volume or a temperature is sure;
 * counts of food and actions on things are weak signs. */
static enum work
work_of(const struct outline *o, const struct clause *q)
{
	const struct maker *m = o->m;
	const struct level *top = chart_top(&m->c);
	bool thing = false, amount = false, sure = false, heater = false;
	struct str kind = lexeme_get(q->action, "kind");
	uint32_t beg = top->node.v[q->beg].beg, end = top->node.v[q->end - 1].end;

	if (q->kind == CLAUSE_CHAT || q->kind == CLAUSE_NOT)
		return WORK_NONE;
	for (uint32_t k = q->beg; k < q->end; k++) {
		const struct node *n = &top->node.v[k];
		struct mention x[16];
		size_t count = mentions_of(m, n, x, 16);

		heater = heater || node_is(&m->c, n, "EQ");
		sure = sure || node_is(&m->c, n, "HEAT") ||
		       (node_is(&m->c, n, "TEMP") && heater) ||
		       (count && x[0].amount.known && x[0].amount.unit && x[0].lexeme &&
			   x[0].amount.unit->dimension != DIM_COUNT);
		thing = thing || count > 0 || node_is(&m->c, n, "EQ");
		amount = amount || (count > 0 && is_measured(&x[0]));
	}
	if (sure)
		return WORK_SURE;
	if (amount ||
	    (q->kind == CLAUSE_DO && thing && kind.n && !str_is_z(kind, "prepare") &&
		!str_is_z(kind, "serve") && !lexeme_has(q->action, "light") &&
		!overlaps_opening(o, beg, end)))
		return WORK_WEAK;
	return WORK_NONE;
}

/* A list or a caption on the screen: not yet the work itself. */
static bool
is_written(const struct maker *m, const struct clause *q)
{
	enum cue_kind kind = m->s->cue[q->cue].kind;

	return kind == CUE_LIST || kind == CUE_ONSCREEN || kind == CUE_HEADING;
}

/* The last name said before a token; 0 without. */
static uint32_t
last_name_before(const struct outline *o, uint32_t token)
{
	uint32_t last = 0;

	for (size_t i = 0; i < o->opening.n && o->opening.v[i].token < token; i++)
		if (o->opening.v[i].kind >= OPENING_TODAY || o->opening.v[i].is_dish)
			last = o->opening.v[i].end;
	return last;
}

/* The first token of real work: the first sign of it after the last name that
 * is said before anything sure. */
static uint32_t
content_start(const struct outline *o)
{
	const struct maker *m = o->m;
	const struct level *top = chart_top(&m->c);
	uint32_t after = 0;
	size_t sure = 0;

	while (sure < m->clause.n && (is_written(m, &m->clause.v[sure]) ||
					 work_of(o, &m->clause.v[sure]) != WORK_SURE))
		sure++;
	if (sure < m->clause.n)
		after = last_name_before(o, top->node.v[m->clause.v[sure].beg].beg);
	for (size_t i = 0; i < m->clause.n; i++) {
		const struct clause *q = &m->clause.v[i];

		if (!is_written(m, q) && top->node.v[q->end - 1].end > after &&
		    work_of(o, q) != WORK_NONE)
			return top->node.v[q->beg].beg;
	}
	return UINT32_MAX;
}

static bool
is_known_opening(const struct outline *o, uint32_t token)
{
	for (size_t i = 0; i < o->opening.n; i++)
		if (o->opening.v[i].token <= token && o->opening.v[i].end > token)
			return true;
	return false;
}

static bool
token_is_head(const struct maker *m, uint32_t i, struct str head)
{
	const struct entry *e = m->c.tokens.token.v[i].entry;

	if (str_is(m->c.tokens.token.v[i].norm, head))
		return true;
	for (size_t k = 0; k < e->reading.n; k++)
		if (str_is(e->reading.v[k].lexeme->lemma, head) ||
		    (head.n > 3 && str_ends(e->reading.v[k].lexeme->lemma, head)))
			return true;
	return false;
}

/* Mentions, after a marker, of the heads that the overview named: "so chili
 * first", "okay so salmon". */
static void
collect_heads(struct outline *o)
{
	const struct maker *m = o->m;
	size_t known = o->opening.n;

	for (size_t k = 0; k < known && o->opening.v[k].token < o->content; k++) {
		struct opening from = o->opening.v[k];

		if (from.kind == OPENING_BACK || from.kind == OPENING_PART || !from.head.n)
			continue;
		for (uint32_t i = from.end; i < m->c.tokens.token.n; i++)
			if (token_is_head(m, i, from.head) && leads(m, i) &&
			    !is_known_opening(o, i)) {
				from.kind = OPENING_MENTION;
				from.token = i;
				from.end = i + 1;
				from.leads = true;
				vec_push(m->a, &o->opening, from);
			}
	}
}

static bool
ends_with_word(struct str whole, struct str tail)
{
	return str_is(whole, tail) || (whole.n > tail.n && str_ends(whole, tail) &&
					  whole.p[whole.n - tail.n - 1] == ' ');
}

/* "chili" and "beef chili" are one dish; "ranch dressing" and "caesar
 * dressing" are two. */
static bool
is_same_dish(struct str a, struct str b)
{
	a = str_cut(a, 0, str_find(a, STR(" with ")));
	b = str_cut(b, 0, str_find(b, STR(" with ")));
	return ends_with_word(a, b) || ends_with_word(b, a);
}

static int
find_dish(const struct outline *o, const struct opening *x)
{
	for (size_t i = 0; i < o->dish.n; i++)
		if (is_same_dish(o->dish.v[i].name, x->name))
			return (int)i;
	for (size_t i = 0; i < o->dish.n; i++)
		if (str_is(o->dish.v[i].head, x->head) && str_is(x->name, x->head))
			return (int)i;
	return -1;
}

/* The name without what comes with it. */
static struct str
own_name(struct str name)
{
	return str_cut(name, 0, str_find(name, STR(" with ")));
}

static const struct opening *
find_overview(const struct outline *o, const struct opening *x)
{
	for (size_t i = 0; i < o->opening.n && o->opening.v[i].token < o->content; i++) {
		const struct opening *p = &o->opening.v[i];

		if (p->kind == OPENING_WITH || p->kind == OPENING_BACK)
			continue;
		if (str_is(p->head, x->head) ||
		    (x->head.n > 3 &&
			str_find(own_name(p->name), x->head) < own_name(p->name).n))
			return p;
	}
	return NULL;
}

static void
turn_to(struct outline *o, uint32_t token, int dish, int part)
{
	vec_push(o->m->a, &o->m->turn, (struct turn){token, dish, part});
	o->now_dish = dish;
	o->now_part = part;
}

static int
add_dish(struct outline *o, struct str name, struct str head, uint32_t token)
{
	struct named x = {name, head, (int)o->dish.n, token, {0}};

	vec_push(o->m->a, &o->dish, x);
	vec_push(o->m->a, &o->dish.v[o->dish.n - 1].part,
	    (struct part_name){STR(""), STR(""), token});
	return (int)o->dish.n - 1;
}

static int
part_of(struct outline *o, int dish, const struct opening *x)
{
	struct named *d = &o->dish.v[dish];

	for (size_t i = 1; i < d->part.n; i++)
		if (str_is(d->part.v[i].head, x->head))
			return (int)i;
	vec_push(o->m->a, &d->part, (struct part_name){x->name, x->head, x->token});
	return (int)d->part.n - 1;
}

/* The longest name that was said of the dish before the work began. */
static struct str
better_name(const struct outline *o, const struct opening *x)
{
	struct str best = x->name;

	for (size_t i = 0; i < o->opening.n && o->opening.v[i].token < o->content; i++) {
		const struct opening *p = &o->opening.v[i];

		if (p->kind != OPENING_BACK && p->name.n > best.n &&
		    str_is(p->head, x->head) &&
		    ends_with_word(own_name(p->name), own_name(x->name)))
			best = p->name;
	}
	return best;
}

static bool
opens_dish(const struct outline *o, const struct opening *x)
{
	if (x->kind == OPENING_HEADING)
		return !x->is_part;
	if (x->kind == OPENING_BACK || x->kind == OPENING_PART || x->kind == OPENING_WITH ||
	    x->kind == OPENING_ALSO)
		return false;
	if (find_overview(o, x))
		return x->leads && (!x->is_part || x->kind >= OPENING_LEAD);
	return x->kind == OPENING_TURN && x->is_dish && !x->is_part && !x->may_be_part;
}

static bool
opens_part(const struct outline *o, const struct opening *x)
{
	return o->now_dish >= 0 && (x->is_part || x->may_be_part) &&
	       (x->kind == OPENING_TURN || x->kind == OPENING_LEAD ||
		   x->kind == OPENING_PART || x->kind == OPENING_HEADING);
}

static void
take(struct outline *o, const struct opening *x)
{
	int known = find_dish(o, x);

	if (known >= 0 && x->kind != OPENING_PART) {
		if (x->kind != OPENING_MENTION && x->kind != OPENING_WITH &&
		    x->kind != OPENING_TODAY && (known != o->now_dish || o->now_part > 0))
			turn_to(o, x->token, known, 0);
		return;
	}
	if (opens_dish(o, x))
		turn_to(o, x->token, add_dish(o, better_name(o, x), x->head, x->token), 0);
	else if (opens_part(o, x))
		turn_to(o, x->token, o->now_dish, part_of(o, o->now_dish, x));
}

/* Was the name said before, so that this is the cook turning to it? */
static bool
is_said_again(const struct outline *o, const struct opening *x)
{
	for (size_t i = 0; i < o->opening.n && &o->opening.v[i] < x; i++)
		if (str_is(o->opening.v[i].head, x->head))
			return true;
	return false;
}

static bool
opens_later(const struct outline *o, const struct opening *x)
{
	for (size_t i = 0; i < o->opening.n; i++)
		if (o->opening.v[i].token > o->content + 4 && o->opening.v[i].leads &&
		    str_is(o->opening.v[i].head, x->head))
			return true;
	return false;
}

/* The opening of the first dish: the last name that the cook turns to before
 * the work begins; else the first name of the overview, from where it begins. */
static void
open_first(struct outline *o)
{
	const struct maker *m = o->m;
	const struct opening *best = NULL, *any = NULL;
	int64_t at = place_of(m, o->content, o->content + 1).cue_ms;
	uint32_t cue = m->c.tokens.token.v[o->content].cue, token;

	for (size_t i = 0; i < o->opening.n && o->opening.v[i].token <= o->content + 4;
	     i++) {
		const struct opening *x = &o->opening.v[i];
		int64_t t = place_of(m, x->token, x->token + 1).cue_ms;

		if (x->kind == OPENING_BACK || x->kind == OPENING_WITH ||
		    x->kind == OPENING_PART || (x->is_part && x->kind < OPENING_TURN))
			continue;
		if (!any || (opens_later(o, any) && !opens_later(o, x)) ||
		    (any->kind < OPENING_TODAY && x->kind >= OPENING_TODAY))
			any = x;
		if (x->leads &&
		    (m->c.tokens.token.v[x->token].cue == cue || at - t <= NEAR_MS ||
			x->kind == OPENING_HEADING || is_said_again(o, x)))
			best = x;
	}
	if (!best && !any)
		return;
	token = best ? best->token : o->content;
	if (best && m->s->cue[m->c.tokens.token.v[token].cue].kind != CUE_SPEECH)
		token = o->content;
	if (!best)
		best = any;
	turn_to(o, token, add_dish(o, better_name(o, best), best->head, token), 0);
	if (m->s->cue[m->c.tokens.token.v[0].cue].kind == CUE_LIST ||
	    m->s->cue[m->c.tokens.token.v[0].cue].kind == CUE_HEADING)
		m->turn.v[0].token = 0;
}

/* No name was said before the work: the title, else the first name after it. */
static void
name_unnamed(struct outline *o)
{
	const struct maker *m = o->m;
	struct str name = m->s->title, head = STR("");

	for (size_t i = 0; !name.n && i < o->opening.n; i++)
		if (o->opening.v[i].is_dish) {
			name = o->opening.v[i].name;
			head = o->opening.v[i].head;
		}
	if (!name.n)
		name = STR("recipe");
	turn_to(
	    o, 0, add_dish(o, name, head, o->content == UINT32_MAX ? 0 : o->content), 0);
}

/* Turns and clauses are both in token order. */
static void
place_clauses(struct outline *o)
{
	struct maker *m = o->m;
	const struct level *top = chart_top(&m->c);
	size_t t = 0;

	for (size_t i = 0; i < m->clause.n; i++) {
		struct clause *q = &m->clause.v[i];
		uint32_t end = top->node.v[q->end - 1].end;

		while (t < m->turn.n && m->turn.v[t].token < end)
			t++;
		if (t > 0) {
			q->dish = m->turn.v[t - 1].dish;
			q->part = m->turn.v[t - 1].part;
		}
	}
}

static void
make_dishes(struct outline *o)
{
	struct draft *d = o->m->d;

	d->dish = arena_array(o->m->a, o->dish.n, struct dish);
	d->dishes = o->dish.n;
	for (size_t i = 0; i < o->dish.n; i++) {
		const struct named *x = &o->dish.v[i];
		struct dish *dish = &d->dish[i];

		dish->name = x->name;
		dish->place = place_of(o->m, x->token, x->token + 1);
		dish->beg_ms = dish->end_ms = dish->place.cue_ms;
		dish->active_ms = dish->total_ms = dish->claimed_ms = -1;
		dish->part = arena_array(o->m->a, x->part.n, struct part);
		dish->parts = x->part.n;
		for (size_t k = 0; k < x->part.n; k++) {
			dish->part[k].name = x->part.v[k].name;
			dish->part[k].place =
			    place_of(o->m, x->part.v[k].token, x->part.v[k].token + 1);
		}
	}
}

void
outline_make(struct maker *m)
{
	struct outline o = {.m = m, .now_dish = -1};
	const struct level *l = chart_level(&m->c, "outline");

	if (m->c.tokens.token.n == 0)
		return;
	for (size_t i = 0; l && i < l->node.n; i++)
		collect(&o, &l->node.v[i]);
	collect_headings(&o);
	if (o.opening.n)
		qsort(o.opening.v, o.opening.n, sizeof *o.opening.v, by_token);
	spread_with(&o);
	o.content = content_start(&o);
	collect_heads(&o);
	if (o.opening.n)
		qsort(o.opening.v, o.opening.n, sizeof *o.opening.v, by_token);
	/*TAMIS_DBG*/ if (getenv("TAMIS_DBG")) {
		fprintf(stderr, "content %u '%.*s'\n", o.content, 60,
		    o.content == UINT32_MAX
			? ""
			: m->s->text.p + m->c.tokens.token.v[o.content].text.beg);
		for (size_t i = 0; i < o.opening.n; i++)
			fprintf(stderr, "  %u k%d %s%s%s '%.*s' head %.*s\n",
			    o.opening.v[i].token, o.opening.v[i].kind,
			    o.opening.v[i].is_dish ? "D" : "",
			    o.opening.v[i].is_part ? "P" : "",
			    o.opening.v[i].leads ? "L" : "", (int)o.opening.v[i].name.n,
			    o.opening.v[i].name.p, (int)o.opening.v[i].head.n,
			    o.opening.v[i].head.p);
	} /*DBG_END*/
	if (o.content != UINT32_MAX)
		open_first(&o);
	if (o.dish.n == 0)
		name_unnamed(&o);
	for (size_t i = 0; i < o.opening.n; i++)
		if (o.opening.v[i].token > o.dish.v[0].token)
			take(&o, &o.opening.v[i]);
	place_clauses(&o);
	make_dishes(&o);
}
