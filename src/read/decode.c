/* SPDX-License-Identifier: ISC */
/*
 * Decoding by code points: one step function per encoding, run twice, first
 * to size the text and then to write it with its source offsets.
 */
#include "read/decode.h"

enum { REPLACEMENT = 0xFFFD };

/* The code point at s[at] and how many bytes it takes (at least one). */
struct unit_read {
	uint32_t cp;
	size_t n;
	bool odd;
};
struct encoding {
	struct unit_read (*step)(struct str s, size_t at);
	size_t skip; /* bytes of byte order mark */
	const char *oddity;
};

/* 0x80 to 0x9F as published by the WHATWG Encoding Standard, save that its
 * five C1 controls are U+FFFD here: no script means them. */
static const uint16_t upper_controls[32] = {0x20AC, 0xFFFD, 0x201A, 0x0192, 0x201E, 0x2026,
    0x2020, 0x2021, 0x02C6, 0x2030, 0x0160, 0x2039, 0x0152, 0xFFFD, 0x017D, 0xFFFD, 0xFFFD,
    0x2018, 0x2019, 0x201C, 0x201D, 0x2022, 0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A,
    0x0153, 0xFFFD, 0x017E, 0x0178};

uint32_t
windows_1252(unsigned char byte)
{
	return byte >= 0x80 && byte < 0xA0 ? upper_controls[byte - 0x80] : byte;
}

size_t
utf8_encode(uint32_t cp, char out[4])
{
	if (cp > 0x10FFFF || (cp >= 0xD800 && cp < 0xE000))
		cp = REPLACEMENT;
	if (cp < 0x80) {
		out[0] = (char)cp;
		return 1;
	}
	if (cp < 0x800) {
		out[0] = (char)(0xC0 | cp >> 6);
		out[1] = (char)(0x80 | (cp & 0x3F));
		return 2;
	}
	if (cp < 0x10000) {
		out[0] = (char)(0xE0 | cp >> 12);
		out[1] = (char)(0x80 | (cp >> 6 & 0x3F));
		out[2] = (char)(0x80 | (cp & 0x3F));
		return 3;
	}
	out[0] = (char)(0xF0 | cp >> 18);
	out[1] = (char)(0x80 | (cp >> 12 & 0x3F));
	out[2] = (char)(0x80 | (cp >> 6 & 0x3F));
	out[3] = (char)(0x80 | (cp & 0x3F));
	return 4;
}

static unsigned char
byte_at(struct str s, size_t at)
{
	return at < s.n ? (unsigned char)s.p[at] : 0;
}

/* The lead bytes and the range of the second byte are those of the Unicode
 * Standard, table 3-7: no overlong forms, no surrogates. */
size_t
utf8_length(struct str s, size_t at)
{
	unsigned char lead = byte_at(s, at), low = 0x80, high = 0xBF;
	size_t n = lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;

	if (at >= s.n)
		return 0;
	if (lead < 0x80)
		return 1;
	if (lead < 0xC2 || lead > 0xF4)
		return 0;
	if (lead == 0xE0)
		low = 0xA0;
	else if (lead == 0xED)
		high = 0x9F;
	else if (lead == 0xF0)
		low = 0x90;
	else if (lead == 0xF4)
		high = 0x8F;
	for (size_t i = 1; i < n; i++, low = 0x80, high = 0xBF)
		if (byte_at(s, at + i) < low || byte_at(s, at + i) > high)
			return 0;
	return n;
}

static struct unit_read
step_1252(struct str s, size_t at)
{
	uint32_t cp = windows_1252(byte_at(s, at));

	return (struct unit_read){cp, 1, byte_at(s, at) >= 0x80};
}

static struct unit_read
step_mixed(struct str s, size_t at)
{
	static const unsigned char keep[5] = {0, 0x7F, 0x1F, 0x0F, 0x07};
	size_t n = utf8_length(s, at);
	uint32_t cp;

	if (n == 0)
		return step_1252(s, at);
	cp = byte_at(s, at) & keep[n];
	for (size_t i = 1; i < n; i++)
		cp = cp << 6 | (byte_at(s, at + i) & 0x3Fu);
	return (struct unit_read){cp, n, false};
}

static struct unit_read
step_16(struct str s, size_t at, size_t high_byte)
{
	uint32_t unit, next;

	if (s.n - at < 2)
		return (struct unit_read){REPLACEMENT, 1, true};
	unit = (uint32_t)byte_at(s, at + high_byte) << 8 | byte_at(s, at + 1 - high_byte);
	if (unit < 0xD800 || unit > 0xDFFF)
		return (struct unit_read){unit, 2, false};
	if (unit < 0xDC00 && s.n - at >= 4) {
		next = (uint32_t)byte_at(s, at + 2 + high_byte) << 8 |
		       byte_at(s, at + 3 - high_byte);
		if (next >= 0xDC00 && next < 0xE000)
			return (struct unit_read){
			    0x10000 + ((unit - 0xD800) << 10) + (next - 0xDC00), 4, false};
	}
	return (struct unit_read){REPLACEMENT, 2, true};
}

static struct unit_read
step_16_little(struct str s, size_t at)
{
	return step_16(s, at, 1);
}

static struct unit_read
step_16_big(struct str s, size_t at)
{
	return step_16(s, at, 0);
}

/* Where s stops being UTF-8, or s.n; and how many characters beyond ASCII and
 * how many stray bytes there are in all. */
static size_t
survey(struct str s, size_t *wide, size_t *stray)
{
	size_t first = s.n, n;

	*wide = *stray = 0;
	for (size_t i = 0; i < s.n; i += n ? n : 1) {
		n = utf8_length(s, i);
		if (n == 0 && (*stray)++ == 0)
			first = i;
		else if (n > 1)
			(*wide)++;
	}
	return first;
}

static struct decoded
recode(struct arena *a, struct str s, const struct encoding *how)
{
	struct decoded d = {0};
	struct unit_read u;
	size_t n = 0, put;
	char *text, c[4];
	uint32_t *at;

	for (size_t i = how->skip; i < s.n; i += u.n) {
		u = how->step(s, i);
		n += utf8_encode(u.cp, c);
	}
	text = arena_array(a, n + 1, char);
	at = arena_array(a, n + 1, uint32_t);
	n = 0;
	for (size_t i = how->skip; i < s.n; i += u.n) {
		u = how->step(s, i);
		put = utf8_encode(u.cp, c);
		memcpy(text + n, c, put);
		for (size_t k = 0; k < put; k++)
			at[n++] = (uint32_t)i;
		if (u.odd && !d.oddity) {
			d.oddity = how->oddity;
			d.odd = (struct span){(uint32_t)i, (uint32_t)(i + u.n)};
		}
	}
	at[n] = (uint32_t)s.n;
	d.text = (struct str){text, n};
	d.at = at;
	return d;
}

struct decoded
decode(struct arena *a, struct str source)
{
	static const struct encoding little = {step_16_little, 2,
	    "lone surrogate or half a character in UTF-16; read as U+FFFD"};
	static const struct encoding big = {
	    step_16_big, 2, "lone surrogate or half a character in UTF-16; read as U+FFFD"};
	static const struct encoding western = {
	    step_1252, 0, "not UTF-8; the file was read as Windows-1252"};
	static const struct encoding mixed = {
	    step_mixed, 0, "stray byte in UTF-8; read as Windows-1252"};
	size_t skip, wide, stray;

	if (str_starts(source, STR("\xFF\xFE")))
		return recode(a, source, &little);
	if (str_starts(source, STR("\xFE\xFF")))
		return recode(a, source, &big);
	skip = str_starts(source, STR("\xEF\xBB\xBF")) ? 3 : 0;
	if (survey(source, &wide, &stray) < source.n) {
		struct encoding how = stray > wide ? western : mixed;

		how.skip = skip;
		return recode(a, source, &how);
	}
	return (struct decoded){
	    .text = str_cut(source, skip, source.n), .base = (uint32_t)skip};
}
