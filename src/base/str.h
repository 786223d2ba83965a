/* SPDX-License-Identifier: ISC */
/*
 * Borrowed strings, spans and the ASCII tests that depend on no locale.
 * A str is never NUL-ended unless a function says so. Any layer may use this.
 */
#ifndef TAMIS_STR_H
#define TAMIS_STR_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

struct str {
	const char *p;
	size_t n;
};

/* [beg, end) in bytes. */
struct span {
	uint32_t beg, end;
};

#define STR(literal) ((struct str){(literal), sizeof(literal) - 1})

static inline struct str
str_of(const char *z)
{
	return (struct str){z, z ? strlen(z) : 0};
}

static inline bool
str_is(struct str a, struct str b)
{
	return a.n == b.n && (a.n == 0 || memcmp(a.p, b.p, a.n) == 0);
}

/* Most words differ in their first letter, which tells without a call. */
static inline bool
str_is_z(struct str a, const char *z)
{
	return (a.n == 0 || (z && a.p[0] == z[0])) && str_is(a, str_of(z));
}

static inline bool
is_digit(char c)
{
	return c >= '0' && c <= '9';
}

static inline bool
is_lower(char c)
{
	return c >= 'a' && c <= 'z';
}

static inline bool
is_upper(char c)
{
	return c >= 'A' && c <= 'Z';
}

static inline bool
is_alpha(char c)
{
	return is_lower(c) || is_upper(c);
}

static inline bool
is_blank(char c)
{
	return c == ' ' || c == '\t' || c == '\r' || c == '\n' || c == '\f';
}

static inline char
to_lower(char c)
{
	return is_upper(c) ? (char)(c + 32) : c;
}

static inline char
to_upper(char c)
{
	return is_lower(c) ? (char)(c - 32) : c;
}

/* Is s one of the words? */
bool str_is_any(struct str s, const char *const *words, size_t count);
/* The part [beg, end) of s, clipped to it. */
static inline struct str
str_cut(struct str s, size_t beg, size_t end)
{
	if (end > s.n)
		end = s.n;
	if (beg > end)
		beg = end;
	return (struct str){s.p + beg, end - beg};
}
/* s without ASCII blanks at either end. */
struct str str_trim(struct str s);
static inline bool
str_starts(struct str s, struct str prefix)
{
	return s.n >= prefix.n && str_is(str_cut(s, 0, prefix.n), prefix);
}
static inline bool
str_ends(struct str s, struct str suffix)
{
	return s.n >= suffix.n && str_is(str_cut(s, s.n - suffix.n, s.n), suffix);
}
/* Index of the first needle in s, or s.n. */
size_t str_find(struct str s, struct str needle);
size_t str_find_char(struct str s, char c);
/* Cuts the text up to sep from the front of *rest and returns it; the last
 * piece is what is left. Call while rest->p is not NULL. */
struct str str_next(struct str *rest, char sep);
/* Byte order; the shorter first where one starts the other. */
int str_order(struct str a, struct str b);
/* FNV-1a, 64 bits (Fowler, Noll, Vo; the published constants). */
uint64_t str_hash(struct str s);
/* A whole number without sign, all of s; false if s is anything else. */
bool str_to_u64(struct str s, uint64_t *out);

#endif
