/* SPDX-License-Identifier: ISC */
/*
 * Tries each rule alone where a word begins, and tells where it got stuck.
 */
#include "scan/miss.h"

enum { WANTED_MAX = 6 };

/* The rule of the pass that took the node; NULL without. */
static const struct rule *
taken_by(const struct chart *c, size_t pass, uint32_t node)
{
	const struct node *below = &c->level[chart_read_by(c, pass)].node.v[node];
	const struct node *above = level_at(&c->level[pass + 1], below->beg);

	return above->made == below->made ? NULL : c->made.v[above->made].rule;
}

static void
try_rule(struct chart *c, size_t pass, struct rule *rule, struct follower *f,
    struct misses *found)
{
	struct arena scratch;
	struct pass alone;

	arena_init(&scratch);
	pass_compile_rule(&alone, rule, &c->g->lexicon, &scratch);
	chart_follow(c, pass, &alone, f);
	for (size_t i = 0; i < f->n; i++) {
		const struct reach *r = &f->reach[i];

		if (f->begins[i] && r->span.end > r->span.beg &&
		    taken_by(c, pass, r->span.beg) != rule)
			vec_push(c->arena, &found[i].miss, (struct miss){pass, rule, *r});
	}
	pass_release(&alone);
	arena_release(&scratch);
}

struct misses *
misses_find(struct chart *c, const uint32_t *token, size_t tokens)
{
	struct misses *found = arena_array(c->arena, tokens, struct misses);
	struct follower f = {matcher_new(), token, tokens,
	    arena_array(c->arena, tokens, bool),
	    arena_array(c->arena, tokens, struct reach)};

	for (size_t i = 0; i < c->g->passes; i++) {
		const struct rulepass *p = &c->g->book.pass.v[i];

		for (size_t k = 0; k < p->rule.n; k++)
			try_rule(c, i, p->rule.v[k], &f, found);
	}
	matcher_free(f.matcher);
	return found;
}

static void
put_words(struct buf *out, const struct chart *c, const struct miss *m, struct span nodes)
{
	const struct node *n = c->level[chart_read_by(c, m->pass)].node.v;
	const char *blank = "";

	for (uint32_t i = n[nodes.beg].beg; i < n[nodes.end - 1].end; i++) {
		struct str word = c->tokens.token.v[i].norm;

		buf_fmt(out, "%s%.*s", blank, (int)word.n, word.p);
		blank = " ";
	}
}

/* True where an item of the same words was wanted before the i-th. */
static bool
is_repeated(const struct miss *m, size_t i, struct str item, struct arena *a)
{
	for (size_t k = 0; k < i; k++) {
		struct buf before = buf_in(a);

		rule_put_item(&before, m->rule, m->reach.wanted.v[k]);
		if (str_is(buf_str(&before), item))
			return true;
	}
	return false;
}

/* ", then wanted <OF> or <AMT>", each once, the first few. */
static void
put_items(struct buf *out, const struct miss *m)
{
	size_t put = 0, more = 0;

	for (size_t i = 0; i < m->reach.wanted.n; i++) {
		struct buf item = buf_in(out->arena);

		rule_put_item(&item, m->rule, m->reach.wanted.v[i]);
		if (is_repeated(m, i, buf_str(&item), out->arena))
			continue;
		if (put == WANTED_MAX) {
			more++;
			continue;
		}
		buf_put_z(out, put++ ? " or " : ", then wanted ");
		buf_put(out, buf_str(&item));
	}
	if (more)
		buf_fmt(out, " or %zu more", more);
}

/* What was wanted where the rule stuck, and what stood there: ", not to" */
static void
put_wanted(struct buf *out, const struct chart *c, const struct miss *m)
{
	const struct level *l = &c->level[chart_read_by(c, m->pass)];
	uint32_t at = m->reach.span.end;

	put_items(out, m);
	if (at == l->node.n) {
		buf_put_z(out, ", at the end");
		return;
	}
	buf_put_z(out, ", not ");
	put_words(out, c, m, (struct span){at, at + 1});
	if (l->node.v[at].made != RAW) {
		struct str class =
		    c->g->lexicon.class_name.v[c->made.v[l->node.v[at].made].rule->output];

		buf_fmt(out, " <%.*s>", (int)class.n, class.p);
	}
}

/* Who took the word, where the rule would have. */
static void
put_taker(struct buf *out, const struct chart *c, const struct miss *m)
{
	const struct rule *taker = taken_by(c, m->pass, m->reach.span.beg);

	if (m->rule->skips)
		buf_put_z(out, ", and passes over it");
	else if (taker)
		buf_fmt(out, ", but %.*s took it first", (int)taker->name.n, taker->name.p);
	else
		buf_put_z(out, ", but a rule that makes nothing passed over it first");
}

static void
put_refusal(struct buf *out, const struct rule *r)
{
	const char *joint = ", but not ";

	for (size_t i = 0; i < r->attributes; i++) {
		struct attribute a = r->attribute[i];

		if (!str_is_z(a.key, "check") && !str_is_z(a.key, "least") &&
		    !str_is_z(a.key, "carry"))
			continue;
		buf_fmt(out, "%s%.*s=%.*s", joint, (int)a.key.n, a.key.p, (int)a.value.n,
		    a.value.p);
		joint = " ";
	}
}

void
miss_put(struct buf *out, const struct chart *c, const struct miss *m)
{
	struct str class = c->g->lexicon.class_name.v[m->rule->output];

	buf_fmt(out, "%.*s -> %.*s: ", (int)m->rule->name.n, m->rule->name.p,
	    m->rule->skips ? 1 : (int)class.n, m->rule->skips ? "-" : class.p);
	buf_put_z(out, m->reach.fits || m->reach.refused ? "fits " : "took ");
	put_words(out, c, m, m->reach.span);
	if (m->reach.fits)
		put_taker(out, c, m);
	else if (m->reach.refused)
		put_refusal(out, m->rule);
	else
		put_wanted(out, c, m);
	buf_put_char(out, '\n');
}
