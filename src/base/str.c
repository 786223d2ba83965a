/* SPDX-License-Identifier: ISC */
/*
 * Borrowed strings: cutting, finding, comparing, hashing.
 */
#include "base/str.h"

struct str
str_trim(struct str s)
{
	while (s.n > 0 && is_blank(s.p[0]))
		s.p++, s.n--;
	while (s.n > 0 && is_blank(s.p[s.n - 1]))
		s.n--;
	return s;
}

size_t
str_find(struct str s, struct str needle)
{
	const char *at = s.p, *end;

	if (needle.n == 0)
		return 0;
	if (needle.n > s.n)
		return s.n;
	end = s.p + s.n - needle.n + 1; /* it can't begin from here on */
	while (at < end && (at = memchr(at, needle.p[0], (size_t)(end - at)))) {
		if (memcmp(at, needle.p, needle.n) == 0)
			return (size_t)(at - s.p);
		at++;
	}
	return s.n;
}

size_t
str_find_char(struct str s, char c)
{
	const char *hit = s.n ? memchr(s.p, c, s.n) : NULL;

	return hit ? (size_t)(hit - s.p) : s.n;
}

struct str
str_next(struct str *rest, char sep)
{
	size_t at = str_find_char(*rest, sep);
	struct str piece = str_cut(*rest, 0, at);

	if (at < rest->n)
		*rest = str_cut(*rest, at + 1, rest->n);
	else
		*rest = (struct str){NULL, 0};
	return piece;
}

int
str_order(struct str a, struct str b)
{
	size_t n = a.n < b.n ? a.n : b.n;
	int order = n ? memcmp(a.p, b.p, n) : 0;

	return order ? order : (a.n > b.n) - (a.n < b.n);
}

uint64_t
str_hash(struct str s)
{
	uint64_t h = 14695981039346656037u;

	for (size_t i = 0; i < s.n; i++)
		h = (h ^ (unsigned char)s.p[i]) * 1099511628211u;
	return h;
}

bool
str_to_u64(struct str s, uint64_t *out)
{
	uint64_t v = 0;

	if (s.n == 0 || s.n > 18)
		return false;
	for (size_t i = 0; i < s.n; i++) {
		if (!is_digit(s.p[i]))
			return false;
		v = v * 10 + (uint64_t)(s.p[i] - '0');
	}
	*out = v;
	return true;
}

bool
str_is_any(struct str s, const char *const *words, size_t count)
{
	for (size_t i = 0; i < count; i++)
		if (str_is_z(s, words[i]))
			return true;
	return false;
}
