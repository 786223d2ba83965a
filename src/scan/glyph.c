/* SPDX-License-Identifier: ISC */
/*
 * What single characters mean to the lexer: letters, fractions, marks.
 */
#include "scan/glyph.h"

#include <utf8proc.h>

#include "base/fold.h"

struct vulgar {
	int32_t c;
	struct ratio value;
};

/* Unicode, blocks Latin-1 Supplement and Number Forms. */
static const struct vulgar vulgars[] = {{0xBC, {1, 4}}, {0xBD, {1, 2}}, {0xBE, {3, 4}},
    {0x2150, {1, 7}}, {0x2151, {1, 9}}, {0x2152, {1, 10}}, {0x2153, {1, 3}},
    {0x2154, {2, 3}}, {0x2155, {1, 5}}, {0x2156, {2, 5}}, {0x2157, {3, 5}},
    {0x2158, {4, 5}}, {0x2159, {1, 6}}, {0x215A, {5, 6}}, {0x215B, {1, 8}},
    {0x215C, {3, 8}}, {0x215D, {5, 8}}, {0x215E, {7, 8}}};

struct sign {
	int32_t c;
	const char *form;
};

/* Marks outside ASCII and the form that the lexicon knows. */
static const struct sign signs[] = {{0x2013, "-"}, {0x2014, "-"}, {0x2212, "-"},
    {0x2012, "-"}, {0x2044, "/"}, {0xD7, "x"}, {0xB0, "\xc2\xb0"}, {0xBA, "\xc2\xb0"},
    {0x2DA, "\xc2\xb0"}, {0x2103, "celsius"}, {0x2109, "fahrenheit"}, {0x2026, "..."},
    {0xA3, "$"}, {0x20AC, "$"}, {0x20B9, "$"}, {0xA2, "$"}};

bool
glyph_is_letter(struct str s, size_t *n)
{
	int32_t c = fold_decode(s, n);
	utf8proc_category_t k;

	if (c < 0x80)
		return c >= 0 && is_alpha((char)c);
	if (c == 0xBA || c == 0xAA)
		return false;
	k = utf8proc_category(c);
	return (k >= UTF8PROC_CATEGORY_LU && k <= UTF8PROC_CATEGORY_LO) ||
	       k == UTF8PROC_CATEGORY_MN || k == UTF8PROC_CATEGORY_MC;
}

bool
glyph_is_apostrophe(struct str s, size_t *n)
{
	int32_t c = fold_decode(s, n);

	return c == '\'' || c == 0x2019 || c == 0x2018 || c == 0x02BC;
}

bool
glyph_vulgar(struct str s, struct ratio *value, size_t *n)
{
	int32_t c = (unsigned char)s.p[0] < 0x80 ? 0 : fold_decode(s, n);

	for (size_t i = 0; c && i < sizeof vulgars / sizeof *vulgars; i++)
		if (vulgars[i].c == c) {
			*value = vulgars[i].value;
			return true;
		}
	return false;
}

static bool
is_inch_mark(int32_t c)
{
	return c == '"' || c == 0x201D || c == 0x2033;
}

static struct str
ascii_mark(struct str s, size_t *n)
{
	static const char kept[] = ",;:/()[]%$+=~@|";

	if (str_starts(s, STR("..."))) {
		*n = 3;
		return STR("...");
	}
	if (s.p[0] == '.' || s.p[0] == '!' || s.p[0] == '?')
		return STR(".");
	if (s.p[0] == '&')
		return STR("and");
	return strchr(kept, s.p[0]) ? str_cut(s, 0, 1) : STR("");
}

struct str
glyph_mark(struct str s, bool after_digits, size_t *n)
{
	int32_t c = fold_decode(s, n);

	if (after_digits && is_inch_mark(c))
		return STR("\"");
	if (c > 0 && c < 0x80)
		return ascii_mark(s, n);
	for (size_t i = 0; i < sizeof signs / sizeof *signs; i++)
		if (signs[i].c == c)
			return str_of(signs[i].form);
	return STR("");
}
