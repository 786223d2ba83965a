/* SPDX-License-Identifier: ISC */
/*
 * How a temperature reads in a recipe, in both scales. A thermometer reading
 * is converted to the degree; an oven setting to the setting that cooks use
 * for it, which is not the arithmetic value: 350 °F is 180 °C.
 */
#include "base/print.h"

#define CELSIUS " °C"
#define FAHRENHEIT " °F"

struct range {
	struct ratio min, max;
};

struct setting {
	int f, c; /* the pair as cooks print it; the first row of a value leads */
};

/* 200, 250, 300 to 400, 450 and 500 °F: NIST, SI Units - Temperature, Oven
 * Temperature Equivalencies. 225, 275, 425 and 475 °F, and the second Celsius
 * figures at the end: common practice. */
static const struct setting settings[] = {
    {200, 90},
    {225, 110},
    {250, 120},
    {275, 140},
    {300, 150},
    {325, 160},
    {350, 180},
    {375, 190},
    {400, 200},
    {425, 220},
    {450, 230},
    {475, 240},
    {500, 260},
    {200, 95},
    {225, 105},
    {275, 135},
    {325, 165},
    {325, 170},
    {350, 175},
    {400, 205},
    {475, 245},
    {475, 250},
};

struct mark {
	struct ratio mark;
	int f, c;
};

/* Gas marks: common practice in the United Kingdom; 25 °F to the mark. */
static const struct mark marks[] = {
    {{1, 4}, 225, 110},
    {{1, 2}, 250, 120},
    {{1, 1}, 275, 140},
    {{2, 1}, 300, 150},
    {{3, 1}, 325, 170},
    {{4, 1}, 350, 180},
    {{5, 1}, 375, 190},
    {{6, 1}, 400, 200},
    {{7, 1}, 425, 220},
    {{8, 1}, 450, 230},
    {{9, 1}, 475, 240},
    {{10, 1}, 500, 260},
};

/* NIST, SI Units - Temperature: t/°C = (t/°F - 32) / 1.8. */
static struct ratio
to_celsius(struct ratio f, bool exact)
{
	struct ratio c = ratio_mul(ratio_sub(f, ratio_int(32)), ratio_make(5, 9));

	for (size_t i = 0; !exact && i < sizeof settings / sizeof *settings; i++)
		if (ratio_order(f, ratio_int(settings[i].f)) == 0)
			return ratio_int(settings[i].c);
	return ratio_round_to(c, ratio_int(exact ? 1 : 5));
}

static struct ratio
to_fahrenheit(struct ratio c, bool exact)
{
	struct ratio f = ratio_add(ratio_mul(c, ratio_make(9, 5)), ratio_int(32));

	for (size_t i = 0; !exact && i < sizeof settings / sizeof *settings; i++)
		if (ratio_order(c, ratio_int(settings[i].c)) == 0)
			return ratio_int(settings[i].f);
	return ratio_round_to(f, ratio_int(exact ? 1 : 5));
}

static const struct mark *
mark_find(struct ratio mark)
{
	for (size_t i = 0; i < sizeof marks / sizeof *marks; i++)
		if (ratio_order(marks[i].mark, mark) == 0)
			return &marks[i];
	return NULL;
}

static void
put_degrees(struct buf *b, struct range r, const char *scale)
{
	/* Customary settings are no straight line: 470 and 475 °F would cross. */
	if (ratio_order(r.min, r.max) > 0)
		r.max = r.min;
	print_decimals(b, r.min, r.max);
	buf_put_z(b, scale);
}

/* A temperature in both scales, and the gas mark where one was said. */
struct heat {
	struct range c, f, mark;
	bool marked;
};

/* False for a scale that is not known, and for a mark that no oven has. */
static bool
heat_of(const struct amount *a, bool exact, struct heat *out)
{
	const struct mark *min = mark_find(a->min), *max = mark_find(a->max);
	struct range said = {a->min, a->max};

	*out =
	    (struct heat){said, said, said, a->unit && str_is_z(a->unit->name, "gas-mark")};
	if (out->marked) {
		if (!min || !max)
			return false;
		out->c = (struct range){ratio_int(min->c), ratio_int(max->c)};
		out->f = (struct range){ratio_int(min->f), ratio_int(max->f)};
		return true;
	}
	if (a->unit && str_is_z(a->unit->name, "fahrenheit"))
		out->c =
		    (struct range){to_celsius(a->min, exact), to_celsius(a->max, exact)};
	else if (a->unit && str_is_z(a->unit->name, "celsius"))
		out->f = (struct range){
		    to_fahrenheit(a->min, exact), to_fahrenheit(a->max, exact)};
	else
		return false;
	return true;
}

static void
put_mark(struct buf *b, const struct heat *h)
{
	buf_put_z(b, "gas mark ");
	print_range(b, h->mark.min, h->mark.max);
}

/* "190 °C (375 °F)", "375 °F (190 °C/gas mark 5)" */
static void
put_both(struct buf *b, const struct heat *h, bool celsius)
{
	if (celsius)
		put_degrees(b, h->c, CELSIUS " (");
	else
		put_degrees(b, h->f, FAHRENHEIT " (");
	if (celsius)
		put_degrees(b, h->f, FAHRENHEIT);
	else
		put_degrees(b, h->c, CELSIUS);
	if (h->marked) {
		buf_put_char(b, '/');
		put_mark(b, h);
	}
	buf_put_char(b, ')');
}

static void
put_said(struct buf *b, const struct heat *h, bool celsius)
{
	if (!h->marked) {
		put_both(b, h, celsius);
		return;
	}
	put_mark(b, h);
	buf_put_z(b, " (");
	put_degrees(b, h->c, CELSIUS);
	buf_put_char(b, '/');
	put_degrees(b, h->f, FAHRENHEIT);
	buf_put_char(b, ')');
}

void
print_degrees(
    struct buf *b, const struct amount *degrees, bool exact, enum tamis_degrees how)
{
	struct heat h;
	bool known = heat_of(degrees, exact, &h);

	if (!known && h.marked)
		put_mark(b, &h);
	else if (!known)
		put_degrees(b, h.c, " degrees");
	else if (how == DEGREES_CELSIUS_FIRST || how == DEGREES_FAHRENHEIT_FIRST)
		put_both(b, &h, how == DEGREES_CELSIUS_FIRST);
	else if (how == DEGREES_FAHRENHEIT)
		put_degrees(b, h.f, FAHRENHEIT);
	else if (how != DEGREES_CELSIUS)
		put_said(b, &h, degrees->unit && str_is_z(degrees->unit->name, "celsius"));
	else {
		put_degrees(b, h.c, CELSIUS);
		buf_put_z(b, h.marked ? " (" : "");
		if (h.marked)
			put_mark(b, &h);
		buf_put_z(b, h.marked ? ")" : "");
	}
}

void
print_temperature(
    struct buf *b, struct ratio min, struct ratio max, const struct unit *u, bool exact)
{
	struct amount degrees = {true, true, min, max, u};

	print_degrees(b, &degrees, exact, DEGREES_SAID);
}
