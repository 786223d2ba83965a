/* SPDX-License-Identifier: ISC */
/*
 * Lines of decoded text and their looks. Knows typography, not cooking.
 */
#include "read/line.h"

/* U+0085 and U+00A0; U+2000 to U+200A, U+2028, U+2029, U+202F, U+205F; U+3000. */
size_t
blank_wide(struct str t, size_t at)
{
	const unsigned char *p = (const unsigned char *)t.p + at;
	size_t n = t.n - at;

	if (n >= 2 && p[0] == 0xC2)
		return p[1] == 0xA0 || p[1] == 0x85 ? 2 : 0;
	if (n < 3 || (p[0] != 0xE2 && p[0] != 0xE3))
		return 0;
	if (p[0] == 0xE3)
		return p[1] == 0x80 && p[2] == 0x80 ? 3 : 0;
	if (p[1] == 0x81)
		return p[2] == 0x9F ? 3 : 0;
	if (p[1] != 0x80)
		return 0;
	return p[2] <= 0x8A || p[2] == 0xA8 || p[2] == 0xA9 || p[2] == 0xAF ? 3 : 0;
}

size_t
blank_skip(struct str t, size_t at, size_t end)
{
	size_t n;

	while (at < end && (n = blank_length(t, at)) > 0)
		at += n;
	return at < end ? at : end;
}

/* Bytes of the white space character that ends at t[end]; 0 none. */
static size_t
blank_before(struct str t, size_t beg, size_t end)
{
	for (size_t n = 1; n <= 3 && end - beg >= n; n++)
		if (blank_length(t, end - n) == n)
			return n;
	return 0;
}

struct span
span_trim(struct str t, struct span s)
{
	size_t n;

	s.beg = (uint32_t)blank_skip(t, s.beg, s.end);
	while (s.end > s.beg && (n = blank_before(t, s.beg, s.end)) > 0)
		s.end -= (uint32_t)n;
	return s;
}

bool
lines_next(struct lines *l, struct span *line)
{
	size_t end = l->at;

	if (l->at >= l->text.n)
		return false;
	while (end < l->text.n && l->text.p[end] != '\n' && l->text.p[end] != '\r')
		end++;
	l->empty = end == l->at;
	*line = span_trim(l->text, (struct span){(uint32_t)l->at, (uint32_t)end});
	if (starts_at(l->text, end, "\r\n"))
		end++;
	l->at = end + 1;
	return true;
}

bool
line_is_number(struct str line)
{
	size_t n = 0;

	while (n < line.n && is_digit(line.p[n]))
		n++;
	return n > 0 && n == line.n && n < 10;
}

/* "- ", "* ", "+ " need the blank; drawn bullets don't. */
static size_t
bullet_length(struct str line)
{
	static const char *const drawn[] = {"\u2022", "\u00B7", "\u25AA", "\u25E6",
	    "\u2023", "\u2043", "\u25CF", "\u25A1", "\u2610", "\u2611", "\u25CB"};
	size_t n = 0;

	if (line.n > 1 && memchr("-*+", line.p[0], 3) && blank_length(line, 1))
		n = 1;
	else if (starts_at(line, 0, "\u2013 "))
		n = 3;
	for (size_t i = 0; n == 0 && i < sizeof drawn / sizeof drawn[0]; i++)
		if (starts_at(line, 0, drawn[i]))
			n = strlen(drawn[i]);
	n = n ? blank_skip(line, n, line.n) : 0;
	if (n && (starts_at(line, n, "[ ] ") || starts_at(line, n, "[x] ")))
		n = blank_skip(line, n + 3, line.n);
	return n;
}

/* "Step 3: ", "STEP TWO - " */
static size_t
step_length(struct str line)
{
	size_t at = 5, end;

	if (line.n < 6 || to_lower(line.p[0]) != 's' || to_lower(line.p[1]) != 't' ||
	    to_lower(line.p[2]) != 'e' || to_lower(line.p[3]) != 'p' || line.p[4] != ' ')
		return 0;
	while (at < line.n && (is_digit(line.p[at]) || is_alpha(line.p[at])))
		at++;
	if (at == 5 || at > 14)
		return 0;
	end = at = blank_skip(line, at, line.n);
	while (end < line.n && memchr(":.)-", line.p[end], 4))
		end++;
	return end > at ? blank_skip(line, end, line.n) : 0;
}

/* "12) ", "3. " */
static size_t
number_length(struct str line)
{
	size_t n = 0;

	while (n < line.n && n < 4 && is_digit(line.p[n]))
		n++;
	if (n == 0 || n > 3 || n + 1 >= line.n || !memchr(".)", line.p[n], 2) ||
	    !blank_length(line, n + 1))
		return step_length(line);
	return blank_skip(line, n + 1, line.n);
}

/* "2 cups", "~300 g", a fraction; but not "12:30 pm". */
static bool
starts_with_amount(struct str s)
{
	size_t n = 0;

	if (s.n && s.p[0] == '~')
		s = str_cut(s, 1, s.n);
	while (n < s.n && is_digit(s.p[n]))
		n++;
	if (n > 0)
		return n == s.n || s.p[n] != ':';
	/* the vulgar fractions of Latin-1, then U+2150 to U+215E and U+2189 */
	if (s.n >= 2 && s.p[0] == '\xC2')
		return s.p[1] >= '\xBC' && s.p[1] <= '\xBE';
	return (starts_at(s, 0, "\xE2\x85") && s.n > 2 && s.p[2] >= '\x90' &&
		   s.p[2] <= '\x9E') ||
	       starts_at(s, 0, "\u2189");
}

/* The last character that is no closing quote. */
static char
last_char(struct str s)
{
	while (s.n) {
		if (str_ends(s, STR("\u201D")) || str_ends(s, STR("\u2019")))
			s.n -= 3;
		else if (s.p[s.n - 1] == '"' || s.p[s.n - 1] == '\'' || s.p[s.n - 1] == '*')
			s.n--;
		else
			return s.p[s.n - 1];
	}
	return 0;
}

static void
count_words(struct str s, struct look *out)
{
	bool inside = false, listed = false;
	size_t n;

	out->rule = true;
	for (size_t i = 0; i < s.n; i += n ? n : 1) {
		unsigned char c = (unsigned char)s.p[i];

		n = blank_length(s, i);
		if (is_alpha(s.p[i]) || is_digit(s.p[i]) || (c >= 0xC3 && c != 0xE2))
			out->rule = false;
		listed = listed || c == ',' || c == '(' || c == ';';
		if (n == 0 && !inside && c != '(' && c != '-') {
			out->words++;
			out->head += !listed;
		}
		inside = n == 0;
	}
}

size_t
line_bullet(struct str line)
{
	size_t n = bullet_length(line);

	return n ? n + number_length(str_cut(line, n, line.n)) : 0;
}

struct look
line_look(struct str line)
{
	struct look look = {0};
	struct str words;
	char last = last_char(line);

	look.item = look.mark = bullet_length(line);
	look.bullet = look.mark > 0;
	words = str_cut(line, look.mark, line.n);
	look.mark += number_length(words);
	look.number = look.mark > look.item;
	for (size_t i = 0; look.number && i < words.n && is_digit(words.p[i]); i++)
		look.step = look.step * 10 + (words.p[i] - '0');
	words = str_cut(line, look.mark, line.n);
	look.amount = starts_with_amount(words);
	look.ends =
	    last == '.' || last == '!' || last == '?' || str_ends(line, STR("\u2026"));
	look.colon = last == ':';
	count_words(words, &look);
	return look;
}
