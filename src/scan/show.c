/* SPDX-License-Identifier: ISC */
/*
 * Prints the chart: nested rules around words, and the classes of each token.
 */
#include "scan/show.h"

/* Nodes that begin at a token, outermost first: every level that made one. */
static void
open_rules(struct buf *out, const struct chart *c, uint32_t token, size_t *open)
{
	const struct node *at[PASSES_MAX + 1];
	size_t n = 0;

	for (size_t l = c->levels; l-- > 1;)
		for (size_t i = 0; i < c->level[l].node.n; i++) {
			const struct node *nd = &c->level[l].node.v[i];

			if (nd->beg == token && nd->made != RAW &&
			    (n == 0 || at[n - 1]->made != nd->made))
				at[n++] = nd;
			if (nd->beg >= token)
				break;
		}
	for (size_t i = 0; i < n; i++) {
		const struct rule *r = c->made.v[at[i]->made].rule;

		buf_fmt(out, "[%.*s ", (int)r->name.n, r->name.p);
	}
	*open += n;
}

static size_t
ends_at(const struct chart *c, uint32_t token_end)
{
	size_t ends = 0;
	int32_t last = RAW;

	for (size_t l = c->levels; l-- > 1;)
		for (size_t i = 0; i < c->level[l].node.n; i++) {
			const struct node *nd = &c->level[l].node.v[i];

			if (nd->end == token_end && nd->made != RAW && nd->made != last) {
				last = nd->made;
				ends++;
			}
			if (nd->end >= token_end)
				break;
		}
	return ends;
}

void
chart_show(struct buf *out, const struct chart *c)
{
	size_t open = 0;

	for (uint32_t i = 0; i < c->tokens.token.n; i++) {
		const struct token *t = &c->tokens.token.v[i];
		size_t closing;

		open_rules(out, c, i, &open);
		buf_put(out, t->norm);
		closing = ends_at(c, i + 1);
		for (size_t k = 0; k < closing && open; k++, open--)
			buf_put_char(out, ']');
		buf_put_char(out, open ? ' ' : '\n');
	}
}

void
chart_show_tokens(struct buf *out, const struct chart *c)
{
	for (uint32_t i = 0; i < c->tokens.token.n; i++) {
		const struct token *t = &c->tokens.token.v[i];

		buf_fmt(out, "%.*s\t", (int)t->norm.n, t->norm.p);
		for (unsigned k = 0; k < c->g->lexicon.class_name.n; k++)
			if (classset_has(&t->entry->classes, k))
				buf_fmt(out, " %.*s", (int)c->g->lexicon.class_name.v[k].n,
				    c->g->lexicon.class_name.v[k].p);
		buf_put_char(out, '\n');
	}
}
