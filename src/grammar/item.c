/* SPDX-License-Identifier: ISC */
/*
 * Items of a pattern: where one ends, and how it was written.
 *
 *     <FOOD -ACTION>    "of"    !("of" <PERSON>)
 */
#include "grammar/rules.h"

static bool
is_look(enum op_kind kind)
{
	return kind == OP_AHEAD || kind == OP_NOT_AHEAD || kind == OP_BEHIND ||
	       kind == OP_NOT_BEHIND;
}

size_t
rule_item_end(const struct rule *r, size_t i)
{
	int depth = is_look(r->op.v[i].kind);

	while (depth > 0) {
		enum op_kind kind = r->op.v[++i].kind;

		depth += is_look(kind) || kind == OP_OPEN || kind == OP_FIELD;
		depth -= kind == OP_CLOSE;
	}
	return i;
}

static void
put_op(struct buf *b, const struct op *op)
{
	static const char *const sign[] = {
	    [OP_OPEN] = "(",
	    [OP_FIELD] = "(",
	    [OP_CLOSE] = ")",
	    [OP_OR] = "|",
	    [OP_KEEP] = "^",
	    [OP_AHEAD] = "&(",
	    [OP_NOT_AHEAD] = "!(",
	    [OP_BEHIND] = "&<(",
	    [OP_NOT_BEHIND] = "!<(",
	};

	if (op->kind == OP_REPEAT || (op->kind == OP_ATOM && !op->atom.word))
		buf_put(b, op->text);
	else if (op->kind == OP_ATOM)
		buf_fmt(b, "\"%.*s\"", (int)op->atom.word->form.n, op->atom.word->form.p);
	else
		buf_put_z(b, sign[op->kind]);
}

void
rule_put_item(struct buf *b, const struct rule *r, size_t i)
{
	size_t end = rule_item_end(r, i);

	for (enum op_kind last = OP_OPEN; i <= end; last = r->op.v[i++].kind) {
		enum op_kind kind = r->op.v[i].kind;

		/* No blank behind what opens, before what closes or repeats. */
		if (last != OP_OPEN && last != OP_FIELD && !is_look(last) &&
		    kind != OP_CLOSE && kind != OP_REPEAT)
			buf_put_char(b, ' ');
		put_op(b, &r->op.v[i]);
	}
}
