/* SPDX-License-Identifier: ISC */
/*
 * Regular English inflection by spelling; what is irregular stands in the
 * lexicon's lines.
 */
#include "grammar/inflect.h"

static bool
is_vowel(char c)
{
	return c == 'a' || c == 'e' || c == 'i' || c == 'o' || c == 'u';
}

static char
at_end(struct str s, size_t back)
{
	return s.n >= back ? s.p[s.n - back] : '\0';
}

static bool
ends_in_consonant_y(struct str s)
{
	return s.n > 2 && at_end(s, 1) == 'y' && !is_vowel(at_end(s, 2));
}

static bool
hisses(struct str s)
{
	return at_end(s, 1) == 's' || at_end(s, 1) == 'x' || at_end(s, 1) == 'z' ||
	       str_ends(s, STR("ch")) || str_ends(s, STR("sh"));
}

/* stem without `cut` bytes at its end, plus tail */
static struct str
join(struct arena *a, struct str stem, size_t cut, const char *tail)
{
	return arena_fmt(a, "%.*s%s", (int)(stem.n - cut), stem.p, tail);
}

struct str
inflect_plural(struct arena *a, struct str noun)
{
	if (ends_in_consonant_y(noun))
		return join(a, noun, 1, "ies");
	if (hisses(noun) || str_ends(noun, STR("tomato")) ||
	    str_ends(noun, STR("potato")) || str_ends(noun, STR("mango")))
		return join(a, noun, 0, "es");
	return join(a, noun, 0, "s");
}

struct str
inflect_s(struct arena *a, struct str verb)
{
	if (ends_in_consonant_y(verb))
		return join(a, verb, 1, "ies");
	if (hisses(verb) || at_end(verb, 1) == 'o')
		return join(a, verb, 0, "es");
	return join(a, verb, 0, "s");
}

/* One syllable, consonant-vowel-consonant: chop, stir, whip; not mix, show. */
static bool
doubles(struct str v)
{
	size_t vowels = 0;
	char last = at_end(v, 1);

	for (size_t i = 0; i < v.n; i++)
		vowels += is_vowel(v.p[i]) || (i > 0 && v.p[i] == 'y');
	return v.n >= 3 && vowels == 1 && !is_vowel(last) && is_vowel(at_end(v, 2)) &&
	       last != 'w' && last != 'x' && last != 'y';
}

static struct str
doubled(struct arena *a, struct str v, const char *tail)
{
	return arena_fmt(a, "%.*s%c%s", (int)v.n, v.p, at_end(v, 1), tail);
}

struct str
inflect_ing(struct arena *a, struct str verb)
{
	if (doubles(verb))
		return doubled(a, verb, "ing");
	if (at_end(verb, 1) == 'e' && at_end(verb, 2) != 'e' && verb.n > 2)
		return join(a, verb, 1, "ing");
	return join(a, verb, 0, "ing");
}

struct str
inflect_past(struct arena *a, struct str verb)
{
	if (ends_in_consonant_y(verb))
		return join(a, verb, 1, "ied");
	if (doubles(verb))
		return doubled(a, verb, "ed");
	return join(a, verb, 0, at_end(verb, 1) == 'e' ? "d" : "ed");
}
