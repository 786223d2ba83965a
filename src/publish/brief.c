/* SPDX-License-Identifier: ISC */
/*
 * Steps in few words.
 */
#include "publish/brief.h"

#define ELLIPSIS "\xe2\x80\xa6"

/* "Heat the oven to 1.5 times. Then" ends at the full stop before the blank;
 * the index past it, or all of s. */
static size_t
sentence_end(struct str s)
{
	for (size_t i = 0; i < s.n; i++)
		if (strchr(".!?", s.p[i]) && (i + 1 == s.n || is_blank(s.p[i + 1])))
			return i + 1;
	return s.n;
}

static size_t
count_characters(struct str s)
{
	size_t n = 0;

	for (size_t i = 0; i < s.n; i++)
		n += ((unsigned char)s.p[i] & 0xc0) != 0x80;
	return n;
}

/* The words that fit, without a comma at their end. */
static struct str
words_in(struct str s, size_t most)
{
	struct str fits = str_cut(s, 0, 0), rest = s;

	while (rest.p) {
		struct str word = str_next(&rest, ' ');
		struct str longer = {s.p, (size_t)(word.p + word.n - s.p)};

		if (count_characters(longer) > most)
			break;
		fits = longer;
	}
	while (fits.n && strchr(",;:-", fits.p[fits.n - 1]))
		fits.n--;
	return fits;
}

void
brief_sentence(struct buf *b, struct str text, size_t most)
{
	struct str s = str_trim(text);

	s = str_cut(s, 0, sentence_end(s));
	if (s.n && s.p[s.n - 1] == '.')
		s.n--;
	if (count_characters(s) <= most) {
		buf_put(b, s);
		return;
	}
	buf_put(b, words_in(s, most - 1));
	buf_put_z(b, ELLIPSIS);
}

void
brief_text(struct buf *b, struct str text, size_t most)
{
	struct str s = str_trim(text);
	size_t end = 0, next;

	while (end < s.n) {
		next = end + sentence_end(str_cut(s, end, s.n));
		if (count_characters(str_cut(s, 0, next)) > most)
			break;
		end = next;
	}
	if (!end) {
		brief_sentence(b, s, most);
		return;
	}
	buf_put(b, str_cut(s, 0, end));
	if (end < s.n)
		buf_put_z(b, " " ELLIPSIS);
}
