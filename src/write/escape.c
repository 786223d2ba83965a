/* SPDX-License-Identifier: ISC */
/*
 * Escaping for every output format.
 */
#include "write/escape.h"

#include "base/fold.h"

#define REPLACEMENT "\xef\xbf\xbd"

void
escape_utf8(struct buf *b, struct str s)
{
	size_t n;

	for (size_t i = 0; i < s.n; i += n) {
		struct str rest = str_cut(s, i, s.n);

		if (fold_decode(rest, &n) <= 0)
			buf_put_z(b, REPLACEMENT);
		else
			buf_put(b, str_cut(rest, 0, n));
	}
}

/* Whether c marks something up wherever it stands in a line: emphasis, code,
 * links, tags, entities, strike-through, formulas. */
static bool
marks_anywhere(char c)
{
	return c && strchr("\\`*_[]<>&~$#|", c);
}

/* Index of the character that would make a line a list item or a rule when
 * it starts with s: "- x", "+ x", "12. x", "3) x", "---"; s.n for none. */
static size_t
line_mark(struct str s)
{
	size_t i = 0;

	if (s.n && (s.p[0] == '-' || s.p[0] == '+' || s.p[0] == '='))
		return 0;
	while (i < s.n && is_digit(s.p[i]))
		i++;
	if (i == 0 || i == s.n || (s.p[i] != '.' && s.p[i] != ')'))
		return s.n;
	return i + 1 == s.n || (unsigned char)s.p[i + 1] <= ' ' ? i : s.n;
}

/* "salt & pepper" needs no backslash; "&lt;" and "&#60;" do. */
static bool
is_plain_ampersand(struct str s, size_t at)
{
	return s.p[at] == '&' &&
	       (at + 1 == s.n || (!is_alpha(s.p[at + 1]) && s.p[at + 1] != '#'));
}

/* Valid UTF-8 in one line: runs of blanks and controls become one space. */
static struct str
one_line(struct arena *a, struct str s)
{
	struct buf line = buf_in(a), clean = buf_in(a);
	bool gap = false;

	for (size_t i = 0; i < s.n; i++) {
		bool blank = (unsigned char)s.p[i] <= ' ' || s.p[i] == 0x7f;

		if (!blank && gap && line.n)
			buf_put_char(&line, ' ');
		if (!blank)
			buf_put_char(&line, s.p[i]);
		gap = blank;
	}
	escape_utf8(&clean, buf_str(&line));
	return buf_str(&clean);
}

void
escape_markdown(struct buf *b, struct str s)
{
	struct str line = one_line(b->arena, s);
	size_t mark = line_mark(line);

	for (size_t i = 0; i < line.n; i++) {
		bool marks = marks_anywhere(line.p[i]) && !is_plain_ampersand(line, i);

		if (marks || i == mark)
			buf_put_char(b, '\\');
		buf_put_char(b, line.p[i]);
	}
}

void
escape_uri_path(struct buf *b, struct str s)
{
	if (str_starts(s, STR("/")))
		buf_put_z(b, "file://");
	for (size_t i = 0; i < s.n; i++) {
		char c = s.p[i];

		if (is_alpha(c) || is_digit(c) || (c && strchr("/-._~", c)))
			buf_put_char(b, c);
		else
			buf_fmt(b, "%%%02X", (unsigned char)c);
	}
}

void
escape_line(struct buf *b, struct str s)
{
	buf_put(b, one_line(b->arena, s));
}

/* What stands for c in HTML and in WebVTT; NULL: itself. */
static const char *
entity_of(char c)
{
	switch (c) {
	case '&':
		return "&amp;";
	case '<':
		return "&lt;";
	case '>':
		return "&gt;";
	case '"':
		return "&quot;";
	case '\'':
		return "&#39;";
	default:
		return NULL;
	}
}

/* Controls and the code points that are no characters; -1 is no UTF-8. */
static bool
is_forbidden(int32_t c)
{
	if (c == '\t' || c == '\n')
		return false;
	return c < 0x20 || (c >= 0x7f && c < 0xa0) || (c >= 0xfdd0 && c <= 0xfdef) ||
	       (c & 0xfffe) == 0xfffe;
}

void
escape_html(struct buf *b, struct str s)
{
	size_t n;

	for (size_t i = 0; i < s.n; i += n) {
		struct str rest = str_cut(s, i, s.n);
		const char *entity = entity_of(s.p[i]);

		if (is_forbidden(fold_decode(rest, &n)))
			buf_put_z(b, REPLACEMENT);
		else if (entity)
			buf_put_z(b, entity);
		else
			buf_put(b, str_cut(rest, 0, n));
	}
}

void
escape_webvtt(struct buf *b, struct str s)
{
	struct str line = one_line(b->arena, s);

	for (size_t i = 0; i < line.n; i++) {
		if (strchr("&<>", line.p[i]))
			buf_put_z(b, entity_of(line.p[i]));
		else
			buf_put_char(b, line.p[i]);
	}
}

/* Spreadsheets read a formula after any of these, full-width ones too. */
static bool
is_formula(struct str s)
{
	static const int32_t first[] = {
	    '=', '+', '-', '@', '|', 0xff1d, 0xff0b, 0xff0d, 0xff20};
	size_t n;
	int32_t c = s.n ? fold_decode(s, &n) : 0;

	for (size_t i = 0; i < sizeof first / sizeof *first; i++)
		if (c == first[i])
			return true;
	return false;
}

void
escape_csv(struct buf *b, struct str s)
{
	struct str line = one_line(b->arena, s);
	bool quoted =
	    str_find_char(line, '"') < line.n || str_find_char(line, ',') < line.n;

	if (quoted)
		buf_put_char(b, '"');
	if (is_formula(line))
		buf_put_char(b, '\'');
	for (size_t i = 0; i < line.n; i++) {
		if (line.p[i] == '"')
			buf_put_char(b, '"');
		buf_put_char(b, line.p[i]);
	}
	if (quoted)
		buf_put_char(b, '"');
}

void
escape_json_in_html(struct buf *b, struct str json)
{
	for (size_t i = 0; i < json.n; i++) {
		if (json.p[i] == '<')
			buf_put_z(b, "\\u003c");
		else
			buf_put_char(b, json.p[i]);
	}
}
