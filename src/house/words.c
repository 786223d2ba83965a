/* SPDX-License-Identifier: ISC */
/*
 * Respells a text word by word.
 */
#include "house/words.h"

#include "grammar/table.h"

/* ---- fractions ----------------------------------------------------------- */

static const struct {
	const char *glyph, *plain;
} fractions[] = {
    {"½", "1/2"},
    {"⅓", "1/3"},
    {"⅔", "2/3"},
    {"¼", "1/4"},
    {"¾", "3/4"},
    {"⅛", "1/8"},
    {"⅜", "3/8"},
    {"⅝", "5/8"},
    {"⅞", "7/8"},
};

/* The bytes of the glyph that s starts with, after putting it plainly; or 0. */
static size_t
put_fraction(struct buf *b, struct str s)
{
	for (size_t i = 0; i < sizeof fractions / sizeof *fractions; i++) {
		struct str glyph = str_of(fractions[i].glyph);

		if (!str_starts(s, glyph))
			continue;
		if (b->n && is_digit(b->v[b->n - 1]))
			buf_put_char(b, ' ');
		buf_put_z(b, fractions[i].plain);
		return glyph.n;
	}
	return 0;
}

/* ---- spelling ------------------------------------------------------------ */

/* The ending of the word behind the stem, if the row has it; "-" is none. */
static bool
has_ending(struct str endings, struct str ending)
{
	while (endings.p && endings.n) {
		struct str one = str_trim(str_next(&endings, ';'));

		if (str_is(one, ending) || (ending.n == 0 && str_is_z(one, "-")))
			return true;
	}
	return false;
}

/* Puts a stem with the capital that the word had. */
static void
put_stem(struct buf *b, struct str stem, char first)
{
	buf_put_char(b, is_upper(first) ? to_upper(stem.p[0]) : stem.p[0]);
	buf_put(b, str_cut(stem, 1, stem.n));
}

static bool
starts_with(struct str word, struct str stem)
{
	return stem.n && word.n >= stem.n && to_lower(word.p[0]) == stem.p[0] &&
	       str_starts(str_cut(word, 1, word.n), str_cut(stem, 1, stem.n));
}

static void
put_word(struct buf *b, const struct house *h, struct str word)
{
	const struct table *t = h->grammar ? grammar_table(h->grammar, "spelling") : NULL;
	bool us = h->style->spelling == SPELLING_US;
	int from = t ? table_column(t, us ? "uk" : "us") : -1;
	int to = t ? table_column(t, us ? "us" : "uk") : -1;
	int endings = t ? table_column(t, "endings") : -1;

	for (size_t i = 0; t && i < t->rows; i++) {
		struct str stem = table_cell(t, i, from);
		struct str ending = str_cut(word, stem.n, word.n);

		if (!starts_with(word, stem) ||
		    !has_ending(table_cell(t, i, endings), ending))
			continue;
		put_stem(b, table_cell(t, i, to), word.p[0]);
		buf_put(b, ending);
		return;
	}
	buf_put(b, word);
}

/* The bytes of the letters that s starts with. Those of other scripts count, so
 * that no part of a word is respelled; signs (U+00A0 and U+2000 on) do not. */
static size_t
letters(struct str s)
{
	size_t n = 0;

	while (n < s.n && (is_alpha(s.p[n]) || ((unsigned char)s.p[n] >= 0x80 &&
						   (unsigned char)s.p[n] != 0xc2 &&
						   (unsigned char)s.p[n] != 0xe2)))
		n++;
	return n;
}

/* The bytes of the sign that s starts with. */
static size_t
sign(struct str s)
{
	size_t n = (unsigned char)s.p[0] == 0xe2   ? 3
		   : (unsigned char)s.p[0] == 0xc2 ? 2
						   : 1;

	return n < s.n ? n : s.n;
}

void
words_put(struct buf *b, const struct house *h, struct str text)
{
	while (text.n) {
		size_t n = h->style->plain_fractions ? put_fraction(b, text) : 0;
		size_t word = n ? 0 : letters(text);

		if (word && h->style->spelling != SPELLING_SAID)
			put_word(b, h, str_cut(text, 0, word));
		else if (!n)
			buf_put(b, str_cut(text, 0, word ? word : sign(text)));
		text = str_cut(text, n + word + (n || word ? 0 : sign(text)), text.n);
	}
}

struct str
words_styled(struct arena *a, const struct house *h, struct str text)
{
	struct buf b = buf_in(a);

	if (h->style->spelling == SPELLING_SAID && !h->style->plain_fractions)
		return text;
	words_put(&b, h, text);
	return buf_str(&b);
}
