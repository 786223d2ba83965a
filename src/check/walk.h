/* SPDX-License-Identifier: ISC */
/*
 * Walking the dishes of a draft, and the small questions that many checks ask
 * of a step or a word. For src/check/ only.
 */
#ifndef TAMIS_WALK_H
#define TAMIS_WALK_H

#include "check/finding.h"

/* Stands on one step or ingredient after another. */
struct cursor {
	const struct draft *draft;
	struct spot at;
	int nth; /* of the ingredient in its part */
	const struct dish *dish;
	const struct part *part;
	const struct step *step;
	const struct ingredient *ingredient;
};

static inline struct cursor
walk(const struct draft *d)
{
	return (struct cursor){.draft = d, .at = {0, 0, -1}, .nth = -1};
}

/* False when the cursor is past the last part. */
static inline bool
walk_part(struct cursor *c)
{
	while ((size_t)c->at.dish < c->draft->dishes) {
		c->dish = &c->draft->dish[c->at.dish];
		if ((size_t)c->at.part < c->dish->parts) {
			c->part = &c->dish->part[c->at.part];
			return true;
		}
		c->at.dish++;
		c->at.part = 0;
	}
	return false;
}

/* On to the next step of the draft: part by part, in order of doing. */
static inline bool
walk_step(struct cursor *c)
{
	c->at.step++;
	while (walk_part(c)) {
		if ((size_t)c->at.step < c->part->steps) {
			c->step = &c->part->step[c->at.step];
			return true;
		}
		c->at.part++;
		c->at.step = 0;
	}
	return false;
}

/* On to the next ingredient of the draft. */
static inline bool
walk_ingredient(struct cursor *c)
{
	c->nth++;
	while (walk_part(c)) {
		if ((size_t)c->nth < c->part->ingredients) {
			c->ingredient = &c->part->ingredient[c->nth];
			return true;
		}
		c->at.part++;
		c->nth = 0;
	}
	return false;
}

static inline char
word_fold(char c)
{
	return c == '-' ? ' ' : to_lower(c);
}

/* Equal, where a hyphen is a blank and case is nothing. */
static inline bool
words_are(struct str a, struct str b)
{
	if (a.n != b.n)
		return false;
	for (size_t i = 0; i < a.n; i++)
		if (word_fold(a.p[i]) != word_fold(b.p[i]))
			return false;
	return true;
}

/* The end of the words, from a word's beginning on. */
static inline bool
words_end(struct str words, struct str end)
{
	size_t at = words.n - end.n;

	if (end.n == 0 || end.n > words.n)
		return false;
	return (at == 0 || word_fold(words.p[at - 1]) == ' ') &&
	       words_are(str_cut(words, at, words.n), end);
}

/* One of the words is this one; or the whole is it. */
static inline bool
words_have(struct str words, struct str one)
{
	size_t beg = 0;

	for (size_t i = 0; i <= words.n; i++) {
		if (i < words.n && word_fold(words.p[i]) != ' ')
			continue;
		if (words_are(str_cut(words, beg, i), one))
			return true;
		beg = i + 1;
	}
	return words_are(words, one);
}

/* One of the words, which are parted by blanks. */
static inline bool
word_in(struct str word, const char *words)
{
	struct str rest = str_of(words);

	while (word.n && rest.p)
		if (str_is(str_next(&rest, ' '), word))
			return true;
	return false;
}

static inline bool
is_before(struct place a, struct place b)
{
	return a.span.beg < b.span.beg;
}

static inline bool
step_uses(const struct step *s, size_t ingredient)
{
	for (size_t i = 0; i < s->uses; i++)
		if (s->use[i] == ingredient)
			return true;
	return false;
}

static inline bool
step_is_in(const struct step *s, const char *appliance)
{
	return s->appliance && strcmp(s->appliance, appliance) == 0;
}

/* A word to look for that tells when to stop, or a reading. */
static inline bool
step_has_cue(const struct step *s)
{
	return s->doneness.known || (s->doneness.text.n && !s->doneness.weak);
}

/* "Do not boil the miso." */
static inline bool
step_is_ban(const struct step *s)
{
	return str_starts(s->text, STR("Do not ")) || str_starts(s->text, STR("Never "));
}

static inline bool
step_has_time(const struct step *s)
{
	return s->duration.present && !s->time_vague;
}

#endif
