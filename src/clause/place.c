/* SPDX-License-Identifier: ISC */
/*
 * Where words stand: source bytes, the second they are said at, the cue.
 */
#include "clause/maker.h"

/* The time of a byte of the cue's text, by its share of the text. */
static int64_t
time_at(const struct cue *c, uint32_t at)
{
	int64_t length = c->end_ms - c->beg_ms;
	int64_t bytes = (int64_t)c->text.end - c->text.beg;

	if (c->beg_ms < 0 || c->end_ms <= c->beg_ms || bytes <= 0)
		return c->beg_ms;
	return c->beg_ms + length * ((int64_t)at - c->text.beg) / bytes;
}

struct place
place_of(const struct maker *m, uint32_t token_beg, uint32_t token_end)
{
	const struct token *t = &m->c.tokens.token.v[token_beg];
	const struct token *last = &m->c.tokens.token.v[token_end - 1];
	const struct cue *c = &m->s->cue[t->cue];
	struct span text = {t->text.beg, last->text.end};

	return (struct place){
	    time_at(c, t->text.beg), c->beg_ms, script_source(m->s, text)};
}

struct place
place_of_node(const struct maker *m, const struct node *n)
{
	return place_of(m, n->beg, n->end);
}

struct str
words_of(const struct maker *m, struct span text)
{
	struct str s = str_cut(m->s->text, text.beg, text.end);
	struct buf b = buf_in(m->a);

	for (size_t i = 0; i < s.n; i++) {
		bool blank = is_blank(s.p[i]);

		if (!blank || (b.n && b.v[b.n - 1] != ' '))
			buf_put_char(&b, blank ? ' ' : s.p[i]);
	}
	return str_trim(buf_str(&b));
}

struct str
fold_heat(const struct maker *m, const struct node *level)
{
	struct buf b = buf_in(m->a);

	for (uint32_t i = level->beg; i < level->end; i++) {
		const struct token *t = &m->c.tokens.token.v[i];
		const struct reading *r =
		    entry_reading(t->entry, grammar_class(m->g, "HEATLEVEL"));
		struct str write = r ? lexeme_get(r->lexeme, "write") : STR("");

		if (b.n)
			buf_put_char(&b, t->flags & TOKEN_HYPHEN ? '-' : ' ');
		buf_put(&b, write.n ? write : r ? r->lexeme->lemma : t->norm);
	}
	return buf_str(&b);
}

struct measure *
measure_at(const struct maker *m, struct span source)
{
	size_t lo = 0, hi = m->measure.n;

	while (lo < hi) {
		size_t mid = (lo + hi) / 2;

		if (m->measure.v[mid].place.span.beg < source.beg)
			lo = mid + 1;
		else
			hi = mid;
	}
	return lo < m->measure.n && m->measure.v[lo].place.span.beg < source.end
		   ? &m->measure.v[lo]
		   : NULL;
}

bool
token_has(const struct maker *m, uint32_t token, const char *class_name)
{
	unsigned id = grammar_class(m->g, class_name);

	return id < CLASSES_MAX && token < m->c.tokens.token.n &&
	       classset_has(&m->c.tokens.token.v[token].entry->classes, id);
}

size_t
turns_up_to(const struct maker *m, uint32_t token)
{
	size_t low = 0, high = m->turn.n;

	while (low < high) {
		size_t mid = low + (high - low) / 2;

		if (m->turn.v[mid].token <= token)
			low = mid + 1;
		else
			high = mid;
	}
	return low;
}
