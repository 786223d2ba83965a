/* SPDX-License-Identifier: ISC */
/*
 * How numbers, amounts, durations and time codes read in a recipe. The
 * temperatures are in degrees.c.
 */
#include "base/print.h"

#include <inttypes.h>

#define EN_DASH "\xe2\x80\x93"
#define MINUS "\xe2\x88\x92"

struct glyph {
	int64_t num, den;
	const char *text;
};

/* The fractions that measuring cups and spoons come in. */
static const struct glyph glyphs[] = {
    {1, 2, "½"},
    {1, 3, "⅓"},
    {2, 3, "⅔"},
    {1, 4, "¼"},
    {3, 4, "¾"},
    {1, 8, "⅛"},
    {3, 8, "⅜"},
    {5, 8, "⅝"},
    {7, 8, "⅞"},
};

static const char *
glyph_find(int64_t num, int64_t den)
{
	for (size_t i = 0; i < sizeof glyphs / sizeof *glyphs; i++)
		if (glyphs[i].num == num && glyphs[i].den == den)
			return glyphs[i].text;
	return NULL;
}

/* Puts the sign and returns the value without it. */
static struct ratio
put_sign(struct buf *b, struct ratio v)
{
	if (v.num < 0) {
		buf_put_z(b, MINUS);
		v.num = -v.num;
	}
	return v;
}

void
print_decimal(struct buf *b, struct ratio v)
{
	int64_t scale = 100, whole, part;

	v = put_sign(b, v);
	whole = v.num / v.den;
	v.num %= v.den;
	/* A trace is not nothing: 0.004 keeps the digit that tells. */
	while (whole == 0 && v.num != 0 && scale < 1000000 &&
	       ratio_round(ratio_mul(v, ratio_int(scale))) == 0)
		scale *= 10;
	part = ratio_round(ratio_mul(v, ratio_int(scale)));
	whole += part / scale;
	part %= scale;
	buf_fmt(b, "%" PRId64, whole);
	if (part)
		buf_put_char(b, '.');
	for (; part; part %= scale) {
		scale /= 10;
		buf_put_char(b, (char)('0' + part / scale));
	}
}

void
print_number(struct buf *b, struct ratio v)
{
	struct ratio size = {v.num < 0 ? -v.num : v.num, v.den};
	const char *glyph = glyph_find(size.num % size.den, size.den);

	if (!glyph) {
		print_decimal(b, v);
		return;
	}
	size = put_sign(b, v);
	if (size.num / size.den)
		buf_fmt(b, "%" PRId64, size.num / size.den);
	buf_put_z(b, glyph);
}

static void
put_range(struct buf *b, struct ratio min, struct ratio max,
    void (*put)(struct buf *, struct ratio))
{
	put(b, min);
	if (ratio_order(min, max) == 0)
		return;
	buf_put_z(b, min.num < 0 || max.num < 0 ? " to " : EN_DASH);
	put(b, max);
}

void
print_range(struct buf *b, struct ratio min, struct ratio max)
{
	put_range(b, min, max, print_number);
}

void
print_decimals(struct buf *b, struct ratio min, struct ratio max)
{
	put_range(b, min, max, print_decimal);
}

/* "fluid-ounce" prints as "fluid ounce". */
static void
put_words(struct buf *b, struct str name)
{
	for (size_t i = 0; i < name.n; i++)
		buf_put_char(b, name.p[i] == '-' ? ' ' : name.p[i]);
}

/* Short forms that are misread (a lone "l" is a one) or little known. */
static const char *const spelled_out[] = {"l", "dsp", "pt", "qt", "gal"};

static bool
is_spelled_out(struct str brief)
{
	for (size_t i = 0; i < sizeof spelled_out / sizeof *spelled_out; i++)
		if (str_is_z(brief, spelled_out[i]))
			return true;
	return false;
}

void
print_unit(struct buf *b, const struct unit *u, bool many)
{
	if (!u)
		return;
	if (u->brief.n && !str_is(u->brief, u->name) && !is_spelled_out(u->brief))
		buf_put(b, u->brief);
	else
		put_words(b, many && u->plural.n ? u->plural : u->name);
}

void
print_amount(struct buf *b, const struct amount *a)
{
	bool named = a->unit && a->unit->name.n;

	if (!a->present || (!a->known && !named))
		return;
	if (!a->known) {
		buf_put_z(b, "some ");
		print_unit(b, a->unit, true);
		return;
	}
	put_range(
	    b, a->min, a->max, named && a->unit->metric ? print_decimal : print_number);
	if (!named)
		return;
	buf_put_char(b, ' ');
	print_unit(b, a->unit, ratio_order(a->max, ratio_int(1)) > 0);
}

/* ---- durations, in seconds --------------------------------------------- */

enum { MINUTE = 60, HOUR = 60 * MINUTE, DAY = 24 * HOUR };

static void
put_count(struct buf *b, int64_t n, const char *noun)
{
	buf_fmt(b, "%s%" PRId64 " %s%s", b->n && b->v[b->n - 1] != ' ' ? " " : "", n, noun,
	    n == 1 ? "" : "s");
}

/* One duration by its largest units: "1 hour 15 minutes". */
static void
put_duration(struct buf *b, int64_t s)
{
	struct buf one = buf_in(b->arena);

	if (s >= 2 * DAY && s % DAY == 0)
		put_count(&one, s / DAY, "day");
	else if (s >= HOUR) {
		s = (s + MINUTE / 2) / MINUTE;
		put_count(&one, s / 60, "hour");
		if (s % 60)
			put_count(&one, s % 60, "minute");
	} else if (s >= MINUTE && s != 90) {
		put_count(&one, s / MINUTE, "minute");
		if (s % MINUTE)
			put_count(&one, s % MINUTE, "second");
	} else
		put_count(&one, s, "second");
	buf_put(b, buf_str(&one));
}

struct scale {
	int64_t unit, step; /* seconds; both ends must be whole steps */
	int64_t least, most;
	const char *noun;
};

/* The unit in which both ends of a range can be said; the first that fits. */
static const struct scale scales[] = {
    {DAY, DAY, DAY, 365 * (int64_t)DAY, "day"},
    {HOUR, HOUR / 2, HOUR, 7 * DAY, "hour"},
    {MINUTE, MINUTE, MINUTE, 2 * HOUR, "minute"},
    {1, 1, 0, 90, "second"},
    {MINUTE, MINUTE / 2, MINUTE, 10 * MINUTE, "minute"},
};

static bool
put_short_range(struct buf *b, int64_t min, int64_t max)
{
	for (size_t i = 0; i < sizeof scales / sizeof *scales; i++) {
		const struct scale *s = &scales[i];

		if (min < s->least || max > s->most || min % s->step || max % s->step)
			continue;
		print_range(b, ratio_make(min, s->unit), ratio_make(max, s->unit));
		buf_fmt(b, " %ss", s->noun);
		return true;
	}
	return false;
}

void
print_duration(struct buf *b, int64_t min_ms, int64_t max_ms)
{
	int64_t min = min_ms / 1000 + (min_ms % 1000 >= 500);
	int64_t max = max_ms / 1000 + (max_ms % 1000 >= 500);

	if (min_ms < 0) {
		buf_put_z(b, "overnight");
	} else if (max <= min) {
		put_duration(b, min);
	} else if (!put_short_range(b, min, max)) {
		put_duration(b, min);
		buf_put_z(b, " to ");
		put_duration(b, max);
	}
}

void
print_clock(struct buf *b, int64_t ms)
{
	int64_t s = ms / 1000;

	if (ms < 0)
		return;
	if (s >= HOUR)
		buf_fmt(b, "%" PRId64 ":%02d:%02d", s / HOUR, (int)(s % HOUR / MINUTE),
		    (int)(s % MINUTE));
	else
		buf_fmt(b, "%d:%02d", (int)(s / MINUTE), (int)(s % MINUTE));
}
