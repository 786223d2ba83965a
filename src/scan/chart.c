/* SPDX-License-Identifier: ISC */
/*
 * Builds the chart, pass by pass, and answers questions about its nodes.
 */
#include "scan/chart.h"

#include "scan/measure.h"

static uint8_t
tag_of(const struct chart *c, const struct pass *p, const struct node *n)
{
	if (n->made == RAW)
		return p->tag_of_entry[c->tokens.token.v[n->beg].entry->id];
	return p->tag_of_class[c->made.v[n->made].rule->output];
}

static uint8_t *
make_tags(const struct chart *c, const struct pass *p, const struct level *l)
{
	uint8_t *tag = arena_array(c->arena, l->node.n + 1, uint8_t);

	for (size_t i = 0; i < l->node.n; i++)
		tag[i] = tag_of(c, p, &l->node.v[i]);
	return tag;
}

/* The level above is no longer than the one below, for which it has room. */
static void
copy_nodes(struct level *to, const struct level *from, struct span s)
{
	size_t n = s.beg < s.end ? s.end - s.beg : 0;

	if (n)
		memcpy(
		    to->node.v + to->node.n, from->node.v + s.beg, n * sizeof *to->node.v);
	to->node.n += n;
}

/* The pass at work: what it reads and what it makes. */
struct running {
	struct chart *c;
	const struct level *from;
	struct level *to;
	uint32_t level; /* number of `from` */
};

static struct node
push_made(const struct running *r, const struct rule_match *m)
{
	struct made made = {m->rule, r->level, m->span, m->field, m->fields, 0};
	struct node n = {r->from->node.v[m->span.beg].beg,
	    r->from->node.v[m->span.end - 1].end, (int32_t)r->c->made.n};

	vec_push(r->c->arena, &r->c->made, made);
	return n;
}

/* Makes the node for a moment, to see whether the rule's attributes hold. */
static bool
accepts(void *state, const struct rule_match *m)
{
	const struct running *r = state;
	struct node n = push_made(r, m);
	bool holds = value_holds(r->c, &n) && measure_holds(r->c, &n);

	r->c->made.n--;
	return holds;
}

static void
take_match(const struct running *r, const struct rule_match *m)
{
	if (m->rule->skips)
		copy_nodes(r->to, r->from, m->span);
	else
		r->to->node.v[r->to->node.n++] = push_made(r, m);
}

uint32_t
chart_read_by(const struct chart *c, size_t pass)
{
	const struct pass *p = c->g->pass;
	size_t i = pass;

	while (i > 0 && (p[pass].from.n ? !str_is(p[i - 1].name, p[pass].from)
					: p[i - 1].from.n > 0))
		i--;
	return (uint32_t)i;
}

static void
run_pass(struct chart *c, size_t pass, struct matcher *m)
{
	const struct pass *p = &c->g->pass[pass];
	uint32_t level = chart_read_by(c, pass);
	const struct level *from = &c->level[level];
	struct level *to = &c->level[c->levels];
	struct running r = {c, from, to, level};
	struct subject s = {make_tags(c, p, from), from->node.n, 0, {accepts, &r}};
	struct rule_match match;

	while (s.from < s.n && pass_match(p, m, s, c->arena, &match)) {
		if (s.from == 0)
			vec_reserve(c->arena, &to->node, s.n);
		copy_nodes(to, from, (struct span){(uint32_t)s.from, match.span.beg});
		take_match(&r, &match);
		s.from = match.span.end;
	}
	if (s.from == 0)
		*to = *from; /* nothing matched, and levels are not written to again */
	else
		copy_nodes(to, from, (struct span){(uint32_t)s.from, (uint32_t)s.n});
	if (p->from.n == 0)
		c->top = c->levels;
	c->levels++;
}

void
chart_make(
    struct chart *c, const struct grammar *g, const struct script *s, struct arena *a)
{
	struct matcher *m = matcher_new();

	*c = (struct chart){.g = g, .script = s, .arena = a, .levels = 1};
	tokens_lex(&c->tokens, g, s, a);
	vec_reserve(a, &c->level[0].node, c->tokens.token.n);
	for (uint32_t i = 0; i < c->tokens.token.n; i++)
		vec_push(a, &c->level[0].node, (struct node){i, i + 1, RAW});
	for (size_t i = 0; i < g->passes; i++)
		run_pass(c, i, m);
	matcher_free(m);
}

void
chart_follow(struct chart *c, size_t pass, const struct pass *alone, struct follower *f)
{
	uint32_t level = chart_read_by(c, pass);
	struct running r = {c, &c->level[level], NULL, level};
	const uint8_t *tags = make_tags(c, alone, r.from);

	for (size_t i = 0; i < f->n; i++) {
		const struct node *n = level_at(r.from, f->token[i]);
		struct subject s = {
		    tags, r.from->node.n, (size_t)(n - r.from->node.v), {accepts, &r}};

		f->begins[i] = n->beg == f->token[i];
		if (f->begins[i])
			pass_follow(alone, f->matcher, s, c->arena, &f->reach[i]);
	}
}

const struct level *
chart_top(const struct chart *c)
{
	return &c->level[c->top];
}

const struct level *
chart_level(const struct chart *c, const char *pass)
{
	for (size_t i = 0; i < c->g->passes; i++)
		if (str_is_z(c->g->pass[i].name, pass))
			return &c->level[i + 1];
	return NULL;
}

const struct node *
level_at(const struct level *l, uint32_t token)
{
	size_t lo = 0, hi = l->node.n;

	while (lo < hi) {
		size_t mid = (lo + hi) / 2;

		if (l->node.v[mid].end <= token)
			lo = mid + 1;
		else
			hi = mid;
	}
	return lo < l->node.n ? &l->node.v[lo] : NULL;
}

struct str
node_attribute(const struct chart *c, const struct node *n, const char *key)
{
	const struct rule *r = n->made == RAW ? NULL : c->made.v[n->made].rule;

	for (size_t i = 0; r && i < r->attributes; i++)
		if (str_is_z(r->attribute[i].key, key))
			return r->attribute[i].value;
	return (struct str){NULL, 0};
}

bool
node_field(
    const struct chart *c, const struct node *n, const char *field, struct field_nodes *out)
{
	const struct made *m = n->made == RAW ? NULL : &c->made.v[n->made];

	*out = (struct field_nodes){NULL, 0};
	for (size_t i = 0; m && i < m->fields; i++)
		if (str_is_z(c->g->book.field.v[m->field[i].field], field)) {
			out->v = &c->level[m->level].node.v[m->field[i].span.beg];
			out->n = m->field[i].span.end - m->field[i].span.beg;
			return out->n > 0;
		}
	return false;
}

const struct token *
node_token(const struct chart *c, const struct node *n)
{
	return &c->tokens.token.v[n->beg];
}

struct span
node_text(const struct chart *c, const struct node *n)
{
	return (struct span){
	    c->tokens.token.v[n->beg].text.beg, c->tokens.token.v[n->end - 1].text.end};
}

const struct reading *
node_reading(const struct chart *c, const struct node *n, const char *class_name)
{
	unsigned id = grammar_class(c->g, class_name);

	for (uint32_t i = n->beg; i < n->end; i++) {
		const struct reading *r = entry_reading(c->tokens.token.v[i].entry, id);

		if (r)
			return r;
	}
	return NULL;
}
