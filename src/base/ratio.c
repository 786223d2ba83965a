/* SPDX-License-Identifier: ISC */
/*
 * Exact rationals over 64-bit integers, computed in 128 bits.
 */
#include "base/ratio.h"

#include <assert.h>

__extension__ typedef __int128 wide;

static wide
wide_abs(wide v)
{
	return v < 0 ? -v : v;
}

static wide
gcd(wide a, wide b)
{
	while (b) {
		wide t = a % b;

		a = b;
		b = t;
	}
	return a;
}

/* Lowest terms; halves both sides until they fit where they are too large. */
static struct ratio
fit(wide num, wide den)
{
	wide g;

	assert(den != 0);
	if (den < 0)
		num = -num, den = -den;
	g = gcd(wide_abs(num), den);
	num /= g, den /= g;
	while (wide_abs(num) > INT64_MAX || den > INT64_MAX)
		num /= 2, den = den > 1 ? den / 2 : 1;
	return (struct ratio){(int64_t)num, (int64_t)den};
}

struct ratio
ratio_make(int64_t num, int64_t den)
{
	return fit(num, den);
}

struct ratio
ratio_add(struct ratio a, struct ratio b)
{
	return fit((wide)a.num * b.den + (wide)b.num * a.den, (wide)a.den * b.den);
}

struct ratio
ratio_sub(struct ratio a, struct ratio b)
{
	return fit((wide)a.num * b.den - (wide)b.num * a.den, (wide)a.den * b.den);
}

struct ratio
ratio_mul(struct ratio a, struct ratio b)
{
	return fit((wide)a.num * b.num, (wide)a.den * b.den);
}

struct ratio
ratio_div(struct ratio a, struct ratio b)
{
	return fit((wide)a.num * b.den, (wide)a.den * b.num);
}

int
ratio_order(struct ratio a, struct ratio b)
{
	wide l = (wide)a.num * b.den, r = (wide)b.num * a.den;

	return (l > r) - (l < r);
}

double
ratio_double(struct ratio a)
{
	return (double)a.num / (double)a.den;
}

int64_t
ratio_round(struct ratio a)
{
	wide twice = (wide)wide_abs(a.num) * 2 + a.den;
	int64_t whole = (int64_t)(twice / ((wide)a.den * 2));

	return a.num < 0 ? -whole : whole;
}

struct ratio
ratio_round_to(struct ratio a, struct ratio step)
{
	return ratio_mul(ratio_int(ratio_round(ratio_div(a, step))), step);
}

static bool
parse_decimal(struct str s, struct ratio *out)
{
	size_t dot = str_find_char(s, '.');
	struct str frac = str_cut(s, dot + 1, s.n);
	uint64_t whole = 0, part = 0;
	int64_t den = 1;

	if (dot > 0 && !str_to_u64(str_cut(s, 0, dot), &whole))
		return false;
	if (dot == s.n) {
		*out = ratio_int((int64_t)whole);
		return s.n > 0;
	}
	if (frac.n > 12 || !str_to_u64(frac, &part) || whole > 1000000)
		return false;
	for (size_t i = 0; i < frac.n; i++)
		den *= 10;
	*out = ratio_make((int64_t)whole * den + (int64_t)part, den);
	return true;
}

bool
ratio_parse(struct str s, struct ratio *out)
{
	size_t slash, space;
	uint64_t num, den;
	struct ratio whole = {0, 1};

	if (s.n > 1 && s.p[0] == '-') {
		if (!ratio_parse(str_cut(s, 1, s.n), out) || out->num < 0)
			return false;
		out->num = -out->num;
		return true;
	}
	slash = str_find_char(s, '/');
	if (slash == s.n)
		return parse_decimal(s, out);
	space = str_find_char(s, ' ');
	if (space < slash) {
		if (!parse_decimal(str_cut(s, 0, space), &whole))
			return false;
		s = str_cut(s, space + 1, s.n);
		slash -= space + 1;
	}
	if (!str_to_u64(str_cut(s, 0, slash), &num) ||
	    !str_to_u64(str_cut(s, slash + 1, s.n), &den) || den == 0)
		return false;
	*out = ratio_add(whole, ratio_make((int64_t)num, (int64_t)den));
	return true;
}
