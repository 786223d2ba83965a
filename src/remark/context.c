/* SPDX-License-Identifier: ISC */
/*
 * What stands around a word.
 */
#include "remark/context.h"

enum { SENTENCE_MAX = 60, NEGATION_REACH = 6 };

uint32_t
token_from(const struct maker *m, uint32_t source_at)
{
	uint32_t low = 0, high = (uint32_t)m->c.tokens.token.n;

	while (low < high) {
		uint32_t mid = low + (high - low) / 2;

		if (script_source(m->s, token_of(m, mid)->text).beg < source_at)
			low = mid + 1;
		else
			high = mid;
	}
	/* a break between cues stands where the next cue begins */
	while (low < m->c.tokens.token.n && token_has(m, low, "BREAK"))
		low++;
	return low;
}

size_t
measure_from(const struct maker *m, uint32_t source_at)
{
	size_t low = 0, high = m->d->measures;

	while (low < high) {
		size_t mid = low + (high - low) / 2;

		if (m->d->measure[mid].place.span.beg < source_at)
			low = mid + 1;
		else
			high = mid;
	}
	return low;
}

const struct clause *
clause_of(const struct maker *m, uint32_t token)
{
	const struct level *top = chart_top(&m->c);
	size_t low = 0, high = m->clause.n;

	while (low < high) {
		size_t mid = low + (high - low) / 2;

		if (top->node.v[m->clause.v[mid].beg].beg <= token)
			low = mid + 1;
		else
			high = mid;
	}
	return low ? &m->clause.v[low - 1] : NULL;
}

struct turn
turn_of(const struct maker *m, uint32_t token)
{
	struct turn found = {0, -1, -1};
	size_t turns = turns_up_to(m, token);

	if (turns)
		found = m->turn.v[turns - 1];
	if (found.dish < 0 && m->d->dishes == 1)
		found = (struct turn){0, 0, 0};
	return found;
}

bool
token_is(const struct maker *m, uint32_t token, const char *word)
{
	return token < m->c.tokens.token.n && str_is_z(token_of(m, token)->norm, word);
}

const struct reading *
token_reading(const struct maker *m, uint32_t token, const char *class_name)
{
	return token < m->c.tokens.token.n ? entry_reading(token_of(m, token)->entry,
						 grammar_class(m->g, class_name))
					   : NULL;
}

static bool
ends_sentence(const struct maker *m, uint32_t token)
{
	return token_has(m, token, "STOP") || token_has(m, token, "BREAK");
}

struct span
sentence_of(const struct maker *m, uint32_t token)
{
	struct span s = {token, token};

	while (s.beg > 0 && token - s.beg < SENTENCE_MAX && !ends_sentence(m, s.beg - 1))
		s.beg--;
	while (s.end < m->c.tokens.token.n && s.end - token < SENTENCE_MAX &&
	       !ends_sentence(m, s.end))
		s.end++;
	return s;
}

uint32_t
food_after(const struct maker *m, uint32_t from, uint32_t to)
{
	for (uint32_t i = from; i < to; i++)
		if (token_reading(m, i, "FOOD"))
			return i;
	return to;
}

uint32_t
food_before(const struct maker *m, uint32_t from, uint32_t to)
{
	for (uint32_t i = to; i-- > from;)
		if (token_reading(m, i, "FOOD"))
			return i;
	return to;
}

struct str
food_group(const struct maker *m, uint32_t token)
{
	const struct reading *r = token_reading(m, token, "FOOD");

	return r ? lexeme_get(r->lexeme, "group") : STR("");
}

struct str
food_key(const struct maker *m, uint32_t token)
{
	const struct reading *r = token_reading(m, token, "FOOD");
	struct str key = r ? lexeme_get(r->lexeme, "key") : STR("");

	return r && !key.n ? r->lexeme->lemma : key;
}

static bool
is_negated(const struct maker *m, uint32_t token)
{
	struct span s = sentence_of(m, token);
	uint32_t from = token - s.beg > NEGATION_REACH ? token - NEGATION_REACH : s.beg;

	for (uint32_t i = from; i < token; i++)
		if (token_has(m, i, "NEG"))
			return true;
	return false;
}

bool
is_conditional(const struct maker *m, uint32_t token)
{
	struct span s = sentence_of(m, token);
	uint32_t from = token - s.beg > NEGATION_REACH ? token - NEGATION_REACH : s.beg;

	for (uint32_t i = from; i < token; i++)
		if (token_is(m, i, "if"))
			return true;
	return false;
}

bool
is_taken_back(const struct maker *m, uint32_t token, bool own)
{
	const struct clause *q = clause_of(m, token);

	if (own)
		return false;
	return (q && (q->other || q->kind == CLAUSE_NOT)) || is_negated(m, token);
}
