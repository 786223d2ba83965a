/* SPDX-License-Identifier: ISC */
/*
 * Numbers that captions misheard: where a rule of the grammar read a word as
 * another ("for cups" as four, "8 2 10" as 8 to 10).
 */
#include "remark/remarks.h"

static struct span
tokens_of(const struct maker *m, const struct made *made)
{
	const struct level *l = &m->c.level[made->level];

	return (struct span){
	    l->node.v[made->nodes.beg].beg, l->node.v[made->nodes.end - 1].end};
}

/* The words from a token on, in lower case as they were read. */
static void
put_tokens(struct buf *b, const struct maker *m, uint32_t from, uint32_t to)
{
	for (uint32_t i = from; i < to; i++) {
		if (b->n)
			buf_put_char(b, ' ');
		buf_put(b, words_of(m, token_of(m, i)->text));
	}
}

/* "for cups": the first word stands for a number. */
static void
add_word(struct remarks *r, struct span tokens, struct str heard)
{
	struct buf b = buf_in(r->m->a);

	buf_put(&b, heard);
	put_tokens(&b, r->m, tokens.beg + 1, tokens.end);
	remark_add(r, REMARK_MISHEARD, tokens, buf_str(&b));
}

/* "8 2 10", with the unit after it: the number between stands for "to". */
static void
add_range(struct remarks *r, struct span tokens, const struct field_nodes *heard)
{
	struct buf b = buf_in(r->m->a);

	if (tokens.end < r->m->c.tokens.token.n)
		tokens.end++;
	put_tokens(&b, r->m, tokens.beg, heard->v[0].beg);
	buf_put_z(&b, b.n ? " to" : "to");
	put_tokens(&b, r->m, heard->v[heard->n - 1].end, tokens.end);
	remark_add(r, REMARK_MISHEARD, tokens, buf_str(&b));
}

/* Every node that a rule made stands in the chart, also inside others. */
void
remark_mishearings(struct remarks *r)
{
	const struct chart *c = &r->m->c;

	for (size_t i = 0; i < c->made.n; i++) {
		const struct made *made = &c->made.v[i];
		const struct node n = {0, 1, (int32_t)i};
		struct str heard = node_attribute(c, &n, "heard");
		struct field_nodes f;

		if (heard.n)
			add_word(r, tokens_of(r->m, made), heard);
		else if (node_field(c, &n, "heard", &f))
			add_range(r, tokens_of(r->m, made), &f);
	}
}
