/* SPDX-License-Identifier: ISC */
/*
 * Amounts on a page. The attributes of the element:
 *   data-n="3/2 2"          the least and the most, as said
 *   data-w="cup|cups"       the unit as printed, for one and for many
 *   data-u="cup"            its name; data-m where it is metric
 *   data-b="volume 236.588" its kind, and one of it in millilitres or grams
 *   data-k="mass 108 108"   the whole amount where assembly knew better
 */
#include "page/quantity.h"

#include <inttypes.h>

#include "base/print.h"
#include "grammar/units.h"
#include "house/portion.h"
#include "write/escape.h"
#include "write/text.h"

static void
put_ratio(struct buf *out, struct ratio v)
{
	buf_fmt(out, "%" PRId64, v.num);
	if (v.den != 1)
		buf_fmt(out, "/%" PRId64, v.den);
}

static const char *
kind_of(const struct unit *u)
{
	if (!u || !u->has_base)
		return NULL;
	if (u->dimension == DIM_VOLUME)
		return "volume";
	return u->dimension == DIM_MASS ? "mass" : NULL;
}

static void
put_words(struct buf *out, const struct unit *u)
{
	struct buf words = buf_in(out->arena);

	print_unit(&words, u, false);
	buf_put_char(&words, '|');
	print_unit(&words, u, true);
	buf_put_z(out, " data-w=\"");
	escape_html(out, buf_str(&words));
	buf_put_z(out, "\" data-u=\"");
	escape_html(out, u->name);
	buf_put_char(out, '"');
	if (u->metric)
		buf_put_z(out, " data-m");
}

/* Six significant digits are more than any scale has. */
static void
put_base(struct buf *out, const struct unit *u)
{
	const char *kind = kind_of(u);

	if (kind)
		buf_fmt(out, " data-b=\"%s %.6g\"", kind, ratio_double(u->factor));
}

static void
put_known(struct buf *out, const struct amount *metric)
{
	const char *kind = kind_of(metric->unit);

	if (!metric->present || !metric->known || !kind)
		return;
	buf_fmt(out, " data-k=\"%s %.6g %.6g\"", kind,
	    ratio_double(unit_to_base(metric->unit, metric->min)),
	    ratio_double(unit_to_base(metric->unit, metric->max)));
}

static void
put_open(struct buf *out, const struct amount *a, const struct amount *metric)
{
	buf_put_z(out, "<span class=\"q\"");
	if (a->present && a->known) {
		buf_put_z(out, " data-n=\"");
		put_ratio(out, a->min);
		buf_put_char(out, ' ');
		put_ratio(out, a->max);
		buf_put_char(out, '"');
		if (a->unit && a->unit->name.n)
			put_words(out, a->unit);
		put_base(out, a->unit);
		if (metric)
			put_known(out, metric);
	}
	buf_put_char(out, '>');
}

/* "2 (400 g/14 oz) cans": only the count is for the switches. */
static void
put_sized(struct buf *out, const struct house *h, const struct ingredient *in)
{
	struct buf rest = buf_in(out->arena);
	struct amount count = in->amount;

	count.unit = NULL;
	put_open(out, &count, NULL);
	print_range(out, count.min, count.max);
	buf_put_z(out, "</span> (");
	portion_put_size(&rest, h, &in->size);
	escape_html(out, buf_str(&rest));
	buf_put_char(out, ')');
	if (in->amount.unit && in->amount.unit->name.n) {
		rest.n = 0;
		print_unit(
		    &rest, in->amount.unit, ratio_order(count.max, ratio_int(1)) > 0);
		buf_put_char(out, ' ');
		escape_html(out, buf_str(&rest));
	}
}

void
quantity_put(struct buf *out, const struct house *h, const struct ingredient *in)
{
	struct buf text = buf_in(out->arena);

	if (in->size.present && in->size.known && in->amount.present && in->amount.known) {
		put_sized(out, h, in);
		return;
	}
	text_quantity(&text, h, in);
	if (text.n == 0)
		return;
	put_open(out, &in->amount, &in->metric);
	escape_html(out, buf_str(&text));
	buf_put_z(out, "</span>");
}

void
quantity_put_other(struct buf *out, const struct house *h, const struct ingredient *in)
{
	struct buf other = buf_in(out->arena);

	if (in->size.present || !in->amount.known ||
	    (!kind_of(in->amount.unit) && !in->metric.known))
		return;
	text_other(&other, h, in);
	buf_put_z(out, "<span class=\"other\">");
	if (other.n) {
		buf_put_z(out, " (");
		escape_html(out, buf_str(&other));
		buf_put_char(out, ')');
	}
	buf_put_z(out, "</span>");
}

void
quantity_put_amount(struct buf *out, const struct amount *a)
{
	struct buf text = buf_in(out->arena);

	print_amount(&text, a);
	if (text.n == 0)
		return;
	put_open(out, a, NULL);
	escape_html(out, buf_str(&text));
	buf_put_z(out, "</span>");
}

/* ---- amounts and temperatures in a sentence ----------------------------- */

#define CELSIUS                                                                            \
	" \xc2\xb0"                                                                        \
	"C"
#define FAHRENHEIT                                                                         \
	" \xc2\xb0"                                                                        \
	"F"

/* The digits and dashes that end before `end`. */
static size_t
number_start(struct str s, size_t end)
{
	size_t at = end;

	while (at > 0 && (is_digit(s.p[at - 1]) || s.p[at - 1] == '.' ||
			     (unsigned char)s.p[at - 1] >= 0x80))
		at--;
	return at;
}

/* "190 °C (375 °F)" at its first scale mark: where it begins and ends. */
static bool
find_pair(struct str s, struct str first, struct str second, struct span *out)
{
	size_t at = str_find(s, first), open = at + first.n, number, close;

	if (at == s.n || !str_starts(str_cut(s, open, s.n), STR(" (")))
		return false;
	number = open + 2;
	close = number + str_find(str_cut(s, number, s.n), second);
	if (close == s.n || number_start(s, close) != number ||
	    !str_starts(str_cut(s, close + second.n, s.n), STR(")")))
		return false;
	out->beg = (uint32_t)number_start(s, at);
	out->end = (uint32_t)(close + second.n + 1);
	return out->beg < at;
}

/* "2 tbsp" of an ingredient of the step; not inside "12 tbsp". */
static bool
find_amount(struct str s, const struct amount *a, struct arena *arena, struct span *out)
{
	struct buf text = buf_in(arena);
	size_t at;
	char before, after;

	if (!a->present || !a->known)
		return false;
	print_amount(&text, a);
	at = str_find(s, buf_str(&text));
	if (text.n == 0 || at == s.n || !a->unit)
		return false;
	before = at ? s.p[at - 1] : ' ';
	after = at + text.n < s.n ? s.p[at + text.n] : ' ';
	out->beg = (uint32_t)at;
	out->end = (uint32_t)(at + text.n);
	return is_blank(before) && !is_alpha(after) && !is_digit(after);
}

struct found {
	struct span span;
	const struct amount *amount; /* NULL: a temperature */
};

static void
take(struct found *best, struct span span, const struct amount *a)
{
	if (best->span.beg < best->span.end && best->span.beg <= span.beg)
		return;
	best->span = span;
	best->amount = a;
}

/* The first in s; an empty span where there is none. */
static struct found
find_first(struct arena *arena, struct str s, const struct part *p, const struct step *step)
{
	struct found best = {{0, 0}, NULL};
	struct span span;

	if (find_pair(s, STR(CELSIUS), STR(FAHRENHEIT), &span))
		take(&best, span, NULL);
	if (find_pair(s, STR(FAHRENHEIT), STR(CELSIUS), &span))
		take(&best, span, NULL);
	for (size_t i = 0; i < step->uses; i++) {
		const struct ingredient *in = &p->ingredient[step->use[i]];

		if (find_amount(s, &in->amount, arena, &span))
			take(&best, span, &in->amount);
		for (size_t k = 0; in->said && k < in->uses; k++)
			if (find_amount(s, &in->said[k], arena, &span))
				take(&best, span, &in->said[k]);
	}
	return best;
}

/* One scale in each element, so that the page can show just one. */
static void
put_pair(struct buf *out, struct str s)
{
	size_t open = str_find(s, STR(" ("));
	struct str first = str_cut(s, 0, open), second = str_cut(s, open + 2, s.n - 1);
	bool celsius = str_ends(first, STR(CELSIUS));

	buf_fmt(out, "<span class=\"heat2\"><span class=\"%s\">", celsius ? "c" : "f");
	escape_html(out, first);
	buf_fmt(out, "</span><span class=\"%s\"><i> (</i>", celsius ? "f" : "c");
	escape_html(out, second);
	buf_put_z(out, "<i>)</i></span></span>");
}

void
quantity_put_sentence(
    struct buf *out, struct str text, const struct part *p, const struct step *s)
{
	struct str rest = text;

	for (;;) {
		struct found f = find_first(out->arena, rest, p, s);
		struct str words = str_cut(rest, f.span.beg, f.span.end);

		if (words.n == 0)
			break;
		escape_html(out, str_cut(rest, 0, f.span.beg));
		if (f.amount)
			put_open(out, f.amount, NULL);
		if (f.amount)
			escape_html(out, words);
		else
			put_pair(out, words);
		if (f.amount)
			buf_put_z(out, "</span>");
		rest = str_cut(rest, f.span.end, rest.n);
	}
	escape_html(out, rest);
}
