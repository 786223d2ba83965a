/* SPDX-License-Identifier: ISC */
/*
 * "Crème fraîche, to serve" is two words, and its last is "fraiche".
 */
#include "words.h"

#include "base/buf.h"
#include "base/fold.h"

struct str
words_fold(struct arena *a, struct str s)
{
	struct str rest = str_cut(s, 0, str_find_char(s, ','));
	struct buf b = buf_in(a);

	rest = str_cut(rest, 0, str_find_char(rest, '('));
	while (rest.p) {
		struct str word = fold_word(a, str_next(&rest, ' '));

		if (word.n == 0)
			continue;
		if (b.n)
			buf_put_char(&b, ' ');
		buf_put(&b, word);
	}
	return buf_str(&b);
}

/* s without a plural ending; the same for both numbers, if no word always. */
static struct str
stem(struct str s)
{
	static const struct {
		const char *text;
		size_t kept;
	} endings[] = {{"ies", 0}, {"ie", 0}, {"y", 0}, {"ves", 0}, {"ve", 0}, {"fe", 0},
	    {"f", 0}, {"oes", 1}, {"ches", 2}, {"shes", 2}, {"sses", 2}, {"xes", 1},
	    {"ss", 2}, {"s", 0}};

	for (size_t i = 0; i < sizeof endings / sizeof *endings; i++) {
		struct str ending = str_of(endings[i].text);

		if (s.n > ending.n + 1 && str_ends(s, ending))
			return str_cut(s, 0, s.n - ending.n + endings[i].kept);
	}
	return s;
}

bool
words_same(struct str a, struct str b)
{
	return str_is(stem(a), stem(b));
}

struct str
words_first(struct str s)
{
	return str_cut(s, 0, str_find_char(s, ' '));
}

struct str
words_last(struct str s)
{
	size_t at = s.n;

	while (at > 0 && s.p[at - 1] != ' ')
		at--;
	return str_cut(s, at, s.n);
}

bool
words_have(struct str s, struct str word)
{
	while (s.p)
		if (words_same(str_next(&s, ' '), word))
			return true;
	return false;
}

size_t
words_shared(struct str a, struct str b)
{
	size_t n = 0;

	while (a.p)
		n += words_have(b, str_next(&a, ' '));
	return n;
}
