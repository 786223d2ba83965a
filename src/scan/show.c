/* SPDX-License-Identifier: ISC */
/*
 * Prints the chart: each token, its classes, and the rules that took it.
 */
#include "scan/show.h"

#include "base/fold.h"
#include "base/print.h"
#include "scan/miss.h"

enum { TIME_COLUMNS = 7, WORD_COLUMNS = 20, CLASSES_COLUMNS = 40, MISS_COLUMNS = 13 };

/* Blanks up to the column where the next field begins; one at least. */
static void
pad(struct buf *out, size_t line, size_t column)
{
	do
		buf_put_char(out, ' ');
	while (out->n - line < column);
}

static void
put_time(struct buf *out, const struct chart *c, const struct token *t)
{
	struct buf clock = buf_in(c->arena);

	if (t->flags & TOKEN_CUE)
		print_clock(&clock, c->script->cue[t->cue].beg_ms);
	buf_fmt(out, "%*.*s", TIME_COLUMNS, (int)clock.n, clock.n ? clock.v : "");
}

static void
put_classes(struct buf *out, const struct lexicon *x, const struct classset *classes)
{
	const char *blank = "";

	for (unsigned k = 0; k < x->class_name.n; k++)
		if (classset_has(classes, k)) {
			struct str name = x->class_name.v[k];

			buf_fmt(out, "%s%.*s", blank, (int)name.n, name.p);
			blank = " ";
		}
}

/* True where a level below has the very node: nothing new is said of it. */
static bool
is_known(const struct chart *c, uint32_t token, size_t level, int32_t made)
{
	for (size_t l = 1; l < level; l++)
		if (level_at(&c->level[l], token)->made == made)
			return true;
	return false;
}

/* "number.plain -> NUM, amount.clear -> AMT" */
static void
put_rules(struct buf *out, const struct chart *c, uint32_t token)
{
	const char *comma = "";

	for (size_t l = 1; l < c->levels; l++) {
		const struct node *n = level_at(&c->level[l], token);
		const struct rule *r;
		struct str made;

		if (n->made == RAW || is_known(c, token, l, n->made))
			continue;
		r = c->made.v[n->made].rule;
		made = c->g->lexicon.class_name.v[r->output];
		buf_fmt(out, "%s%.*s -> %.*s", comma, (int)r->name.n, r->name.p,
		    (int)made.n, made.p);
		comma = ", ";
	}
}

static void
put_token(struct buf *out, const struct chart *c, uint32_t i)
{
	const struct token *t = &c->tokens.token.v[i];
	size_t line = out->n;

	put_time(out, c, t);
	buf_fmt(out, "  %.*s", (int)t->norm.n, t->norm.p);
	pad(out, line, TIME_COLUMNS + WORD_COLUMNS);
	put_classes(out, &c->g->lexicon, &t->entry->classes);
	pad(out, line, TIME_COLUMNS + WORD_COLUMNS + CLASSES_COLUMNS);
	put_rules(out, c, i);
	while (out->v[out->n - 1] == ' ')
		out->n--;
	buf_put_char(out, '\n');
}

void
chart_show(struct buf *out, const struct chart *c)
{
	for (uint32_t i = 0; i < c->tokens.token.n; i++)
		put_token(out, c, i);
}

/* The time of the last cue that begins no later. */
static int64_t
begin_of(const struct script *s, int64_t at_ms)
{
	int64_t begin = -1;

	for (size_t i = 0; i < s->cues; i++)
		if (s->cue[i].beg_ms <= at_ms && s->cue[i].beg_ms > begin)
			begin = s->cue[i].beg_ms;
	return begin;
}

/* True where the word is one of those of the token: "oil" of "olive oil". */
static bool
has_word(struct str norm, struct str word)
{
	while (norm.p)
		if (str_is(str_next(&norm, ' '), word))
			return true;
	return false;
}

static bool
is_near(const struct miss *m, const struct sought *spot)
{
	return spot->word.n || m->reach.fits || m->reach.refused ||
	       m->reach.span.end > m->reach.span.beg + 1;
}

static bool
is_at(const struct chart *c, uint32_t token, const struct sought *spot, int64_t begin)
{
	const struct token *t = &c->tokens.token.v[token];

	return (spot->at_ms < 0 || c->script->cue[t->cue].beg_ms == begin) &&
	       (!spot->word.n || str_is(t->norm, spot->word) ||
		   has_word(t->norm, spot->word));
}

bool
chart_show_spot(struct buf *out, struct chart *c, struct sought spot)
{
	int64_t begin = begin_of(c->script, spot.at_ms);
	VEC(uint32_t) token = {0};
	const struct misses *found;

	spot.word = fold_word(c->arena, spot.word);
	for (uint32_t i = 0; i < c->tokens.token.n; i++)
		if (is_at(c, i, &spot, begin))
			vec_push(c->arena, &token, i);
	if (token.n == 0)
		return false;
	found = misses_find(c, token.v, token.n);
	for (size_t i = 0; i < token.n; i++) {
		put_token(out, c, token.v[i]);
		for (size_t k = 0; k < found[i].miss.n; k++) {
			if (!is_near(&found[i].miss.v[k], &spot))
				continue;
			buf_fmt(out, "%*s", MISS_COLUMNS, "- ");
			miss_put(out, c, &found[i].miss.v[k]);
		}
	}
	return true;
}
