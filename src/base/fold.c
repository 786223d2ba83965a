/* SPDX-License-Identifier: ISC */
/*
 * Folding words with utf8proc; ASCII takes a short way.
 */
#include "base/fold.h"

#include <utf8proc.h>

static bool
is_folded_ascii(struct str s)
{
	for (size_t i = 0; i < s.n; i++)
		if ((unsigned char)s.p[i] >= 0x80 || is_upper(s.p[i]))
			return false;
	return true;
}

static bool
is_ascii(struct str s)
{
	for (size_t i = 0; i < s.n; i++)
		if ((unsigned char)s.p[i] >= 0x80)
			return false;
	return true;
}

static struct str
fold_ascii(struct arena *a, struct str s)
{
	char *p = arena_alloc(a, s.n + 1, 1);

	for (size_t i = 0; i < s.n; i++)
		p[i] = to_lower(s.p[i]);
	return (struct str){p, s.n};
}

int32_t
fold_decode(struct str s, size_t *n)
{
	utf8proc_int32_t c;
	utf8proc_ssize_t len =
	    utf8proc_iterate((const utf8proc_uint8_t *)s.p, (utf8proc_ssize_t)s.n, &c);

	*n = len > 0 ? (size_t)len : 1;
	return len > 0 ? c : -1;
}

/* U+2019 and its like become an apostrophe; others stay. */
static int32_t
straight(int32_t c)
{
	return c == 0x2018 || c == 0x2019 || c == 0x02BC || c == 0x00B4 || c == 0x0060
		   ? '\''
		   : c;
}

static size_t
put_folded(int32_t c, char *out)
{
	utf8proc_int32_t part[32];
	utf8proc_ssize_t parts;
	int last = 0;
	size_t n = 0;

	parts = utf8proc_decompose_char(straight(c), part, 32,
	    UTF8PROC_COMPAT | UTF8PROC_DECOMPOSE | UTF8PROC_CASEFOLD | UTF8PROC_STRIPMARK,
	    &last);
	for (utf8proc_ssize_t i = 0; i < parts && i < 32; i++)
		n += (size_t)utf8proc_encode_char(
		    straight(part[i]), (utf8proc_uint8_t *)out + n);
	return n;
}

struct str
fold_word(struct arena *a, struct str s)
{
	char *out;
	size_t n = 0, len;

	if (is_folded_ascii(s))
		return s;
	if (is_ascii(s))
		return fold_ascii(a, s);
	out = arena_alloc(a, s.n * 36 + 1, 1);
	for (size_t i = 0; i < s.n; i += len) {
		int32_t c = fold_decode(str_cut(s, i, s.n), &len);

		if (c < 0)
			out[n++] = s.p[i];
		else
			n += put_folded(c, out + n);
	}
	return (struct str){out, n};
}
