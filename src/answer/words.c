/* SPDX-License-Identifier: ISC */
/*
 * The words of a script that an answer or a finding speaks of, compared without
 * regard to case, blanks and line ends.
 */
#include "answer/answers.h"

#define ELLIPSIS "\xe2\x80\xa6"

static bool
is_space(char c)
{
	return is_blank(c) || c == '\n' || c == '\r';
}

/* How many bytes of `text` the words take from its front; 0 where they do not
 * stand there. */
static size_t
match_front(struct str words, struct str text)
{
	size_t t = 0;

	for (size_t i = 0; i < words.n; i++) {
		if (is_space(words.p[i])) {
			size_t from = t;

			while (t < text.n && is_space(text.p[t]))
				t++;
			if (t == from)
				return 0;
			while (i + 1 < words.n && is_space(words.p[i + 1]))
				i++;
		} else if (t == text.n || to_lower(words.p[i]) != to_lower(text.p[t++])) {
			return 0;
		}
	}
	return t;
}

static struct str
without_ellipsis(struct str words, bool *open)
{
	*open = str_ends(words, STR(ELLIPSIS)) || str_ends(words, STR("..."));
	return *open ? str_trim(str_cut(words, 0, words.n - 3)) : words;
}

bool
words_fit(struct str given, struct str words)
{
	bool open;
	size_t n;

	given = without_ellipsis(given, &open);
	n = given.n ? match_front(given, words) : 0;
	if (n == words.n || (open && n > 0))
		return true;
	for (size_t i = 0; !open && i < words.n; i++)
		if (match_front(given, str_cut(words, i, words.n)))
			return true;
	return false;
}

static struct place
place_of_text(const struct script *s, size_t beg, size_t end)
{
	struct span text = {(uint32_t)beg, (uint32_t)end};
	struct place p = {-1, -1, script_source(s, text)};

	for (size_t i = 0; i < s->cues; i++)
		if (s->cue[i].text.beg <= beg && beg <= s->cue[i].text.end)
			p.at_ms = p.cue_ms = s->cue[i].beg_ms;
	return p;
}

bool
words_find(const struct script *s, struct str given, int64_t at_ms, struct place *out)
{
	bool open, found = false;
	int64_t best = INT64_MAX;

	given = without_ellipsis(given, &open);
	for (size_t i = 0; given.n && i < s->text.n; i++) {
		size_t n = match_front(given, str_cut(s->text, i, s->text.n));
		struct place p;
		int64_t far;

		if (n == 0)
			continue;
		p = place_of_text(s, i, i + n);
		far = p.cue_ms > at_ms ? p.cue_ms - at_ms : at_ms - p.cue_ms;
		if (found && far >= best)
			continue;
		best = far;
		found = true;
		*out = p;
	}
	return found;
}
