/* SPDX-License-Identifier: ISC */
/*
 * Taking marks off, in one pass that never looks ahead further than a fixed
 * distance.
 */
#include "read/inline.h"

#include "read/line.h"

enum { LOOK_AHEAD = 512 };

struct entity {
	const char *name;
	uint32_t cp;
};

/* The names that captions and recipes use, from the HTML Standard. */
static const struct entity entities[] = {{"amp", '&'}, {"lt", '<'}, {"gt", '>'},
    {"quot", '"'}, {"apos", '\''}, {"nbsp", 0xA0}, {"lrm", 0x200E}, {"rlm", 0x200F},
    {"frac12", 0xBD}, {"frac14", 0xBC}, {"frac34", 0xBE}, {"frac13", 0x2153},
    {"frac23", 0x2154}, {"frac18", 0x215B}, {"frac38", 0x215C}, {"frac58", 0x215D},
    {"frac78", 0x215E}, {"frasl", 0x2044}, {"deg", 0xB0}, {"ordm", 0xBA}, {"times", 0xD7},
    {"hellip", 0x2026}, {"mdash", 0x2014}, {"ndash", 0x2013}, {"minus", 0x2212},
    {"lsquo", 0x2018}, {"rsquo", 0x2019}, {"ldquo", 0x201C}, {"rdquo", 0x201D},
    {"bull", 0x2022}, {"middot", 0xB7}, {"euro", 0x20AC}, {"pound", 0xA3}, {"cent", 0xA2},
    {"agrave", 0xE0}, {"aacute", 0xE1}, {"acirc", 0xE2}, {"auml", 0xE4}, {"aring", 0xE5},
    {"aelig", 0xE6}, {"ccedil", 0xE7}, {"egrave", 0xE8}, {"eacute", 0xE9}, {"ecirc", 0xEA},
    {"euml", 0xEB}, {"igrave", 0xEC}, {"iacute", 0xED}, {"icirc", 0xEE}, {"iuml", 0xEF},
    {"ntilde", 0xF1}, {"ograve", 0xF2}, {"oacute", 0xF3}, {"ocirc", 0xF4}, {"ouml", 0xF6},
    {"oslash", 0xF8}, {"oelig", 0x153}, {"ugrave", 0xF9}, {"uacute", 0xFA}, {"ucirc", 0xFB},
    {"uuml", 0xFC}, {"szlig", 0xDF}, {"Eacute", 0xC9}, {"Ccedil", 0xC7}};

static int
digit_value(char c, bool hex)
{
	if (is_digit(c))
		return c - '0';
	if (hex && to_lower(c) >= 'a' && to_lower(c) <= 'f')
		return to_lower(c) - 'a' + 10;
	return -1;
}

/* The number in "#189" or "#xBD"; false where it is none. Too large, and 0,
 * become U+FFFD; 80 to 9F are Windows-1252, as the HTML Standard has it. */
static bool
read_number(struct str body, uint32_t *cp)
{
	bool hex = body.n > 1 && to_lower(body.p[1]) == 'x';
	size_t i = hex ? 2 : 1;

	*cp = 0;
	if (body.n <= i)
		return false;
	for (; i < body.n; i++) {
		int d = digit_value(body.p[i], hex);

		if (d < 0)
			return false;
		if (*cp <= 0x10FFFF)
			*cp = *cp * (hex ? 16 : 10) + (uint32_t)d;
	}
	if (*cp >= 0x80 && *cp < 0xA0)
		*cp = windows_1252((unsigned char)*cp);
	if (*cp == 0)
		*cp = 0xFFFD;
	return true;
}

size_t
entity_read(struct str t, size_t at, char out[4], size_t *n)
{
	enum { LONGEST = 12 };
	struct str body = str_cut(t, at + 1, at + LONGEST);
	uint32_t cp = 0;

	if (at >= t.n || t.p[at] != '&')
		return 0;
	body.n = str_find_char(body, ';');
	if (body.n == 0 || at + 1 + body.n >= t.n || t.p[at + 1 + body.n] != ';')
		return 0;
	if (body.p[0] == '#' && !read_number(body, &cp))
		return 0;
	for (size_t i = 0; cp == 0 && i < sizeof entities / sizeof entities[0]; i++)
		if (str_is_z(body, entities[i].name))
			cp = entities[i].cp;
	if (cp == 0)
		return 0;
	*n = utf8_encode(cp, out);
	return body.n + 2;
}

/* Where `end` stands in t from at on, within reach; 0 where it doesn't. */
static size_t
find_near(struct str t, size_t at, size_t limit, const char *end)
{
	if (limit > at + LOOK_AHEAD)
		limit = at + LOOK_AHEAD;
	while (at < limit) {
		at += str_find_char(str_cut(t, at, limit), end[0]);
		if (at < limit && starts_at(t, at, end))
			return at;
		at++;
	}
	return 0;
}

static bool
is_word(char c)
{
	return is_alpha(c) || is_digit(c) || (unsigned char)c >= 0x80;
}

/* Emphasis at t[at], a run of one mark: how long, 0 where it is meant as
 * written ("2 * 3", "snake_case"). */
static size_t
emphasis_length(struct str t, size_t at, struct span in)
{
	size_t end = at;
	bool before, after;

	if (at > in.beg && t.p[at - 1] == t.p[at])
		return 0; /* inside a run that is meant as written */
	while (end < in.end && t.p[end] == t.p[at])
		end++;
	before = at > in.beg && !blank_length(t, at - 1);
	after = end < in.end && !blank_length(t, end);
	if (t.p[at] == '~')
		return end - at >= 2 ? end - at : 0;
	if (t.p[at] == '`')
		return end - at;
	if (!before && !after)
		return 0;
	if (t.p[at] == '_' && before && after && is_word(t.p[at - 1]) && is_word(t.p[end]))
		return 0;
	return end - at;
}

/* "<br>", "</b>", "<https://...>": bytes of the tag, 0 where it is none. */
static size_t
tag_length(struct str t, size_t at, struct span in)
{
	size_t end;

	if (at + 1 >= in.end || !(is_alpha(t.p[at + 1]) || t.p[at + 1] == '/'))
		return 0;
	end = find_near(t, at, in.end, ">");
	return end ? end + 1 - at : 0;
}

/* The "](url)" or "][ref]" that closes a link at t[at]; 0 where it is none. */
static size_t
link_tail(struct str t, size_t at, struct span in)
{
	size_t end;

	if (at + 1 >= in.end || (t.p[at + 1] != '(' && t.p[at + 1] != '['))
		return 0;
	end = find_near(t, at + 1, in.end, t.p[at + 1] == '(' ? ")" : "]");
	return end ? end + 1 - at : 0;
}

/* "[^2]" and the whole of "![alt](url)"; 0 where t[at] starts neither. */
static size_t
dropped_length(struct str t, size_t at, struct span in)
{
	size_t end, tail;

	if (starts_at(t, at, "[^")) {
		end = find_near(t, at, in.end, "]");
		return end ? end + 1 - at : 0;
	}
	if (!starts_at(t, at, "!["))
		return 0;
	end = find_near(t, at, in.end, "](");
	tail = end ? link_tail(t, end, in) : 0;
	return tail ? end + tail - at : 0;
}

/* The opening "[" of a link at t[at]: its "](" comes before another "[". */
static bool
opens_link(struct str t, size_t at, struct span in)
{
	size_t close = find_near(t, at + 1, in.end, "]");

	return close && link_tail(t, close, in) && find_near(t, at + 1, close, "[") == 0;
}

struct taken {
	size_t n; /* bytes that go; 0: t[at] stays as it is */
	char as[4];
	size_t as_n; /* what stands for them */
};

/* What the byte at t[at] starts. */
static struct taken
take_mark(struct str t, size_t at, struct span in, bool *linked)
{
	struct taken k = {0};
	bool was = *linked;

	switch (t.p[at]) {
	case '\\':
		if (at + 1 < in.end && !is_alpha(t.p[at + 1]) && !is_digit(t.p[at + 1]) &&
		    (unsigned char)t.p[at + 1] < 0x80)
			k = (struct taken){2, {t.p[at + 1]}, 1};
		break;
	case '*':
	case '_':
	case '~':
	case '`':
		k.n = emphasis_length(t, at, in);
		break;
	case '&':
		k.n = entity_read(t, at, k.as, &k.as_n);
		break;
	case '<':
		k.n = tag_length(t, at, in);
		if (k.n && starts_at(t, at, "<br"))
			k.as[0] = ' ', k.as_n = 1;
		break;
	case '!':
		k.n = dropped_length(t, at, in);
		break;
	case '[':
		k.n = dropped_length(t, at, in);
		if (k.n == 0 && opens_link(t, at, in))
			*linked = true, k.n = 1;
		break;
	case ']':
		*linked = false;
		k.n = was ? link_tail(t, at, in) : 0;
		break;
	default:
		break;
	}
	return k;
}

void
inline_put(struct build *b, struct span words)
{
	uint32_t run = words.beg;
	bool linked = false;

	for (uint32_t i = words.beg; i < words.end;) {
		struct taken k = take_mark(b->text, i, words, &linked);
		struct span gone = {i, i + (uint32_t)k.n};

		if (k.n == 0) {
			i++;
			continue;
		}
		build_put(b, (struct span){run, i});
		build_put_as(b, gone, (struct str){k.as, k.as_n});
		i = run = gone.end;
	}
	build_put(b, (struct span){run, words.end});
}
