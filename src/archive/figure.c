/* SPDX-License-Identifier: ISC */
/*
 * A figure of a question, in base units:
 *
 *   170-180C   350F   gas mark 4   2-3 cups   200 g   1h30   -45 min   2 cups-
 *
 * A range with a dash; a dash before is "at most", behind "at least".
 */
#include "archive/store.h"

#include <math.h>

struct reader {
	struct archive *archive;
	struct str whole, rest;
	enum dimension dimension;
};

static bool
unclear(const struct reader *in, struct err *e)
{
	static const char *const like[] = {
	    [DIM_COUNT] = "2-3",
	    [DIM_VOLUME] = "2-3 cups",
	    [DIM_MASS] = "200-250 g",
	    [DIM_LENGTH] = "20-25 cm",
	    [DIM_TIME] = "20-30 min, 1h30 or -45 min",
	    [DIM_TEMPERATURE] = "170-180C, 350F or gas mark 4",
	};

	return err_set(e, "", "%.*s is no figure; write it like %s", (int)in->whole.n,
	    in->whole.p, like[in->dimension]);
}

/* Cuts the prefix off, and the blanks before and behind it. */
static bool
take(struct reader *in, const char *prefix)
{
	struct str p = str_of(prefix), s = str_trim(in->rest);

	for (size_t i = 0; i < p.n; i++)
		if (i >= s.n || to_lower(s.p[i]) != p.p[i])
			return false;
	in->rest = str_trim(str_cut(s, p.n, s.n));
	return true;
}

static bool
take_dash(struct reader *in)
{
	return take(in, "-") || take(in, "\xe2\x80\x93") || take(in, "to ");
}

static bool
is_number_char(char c)
{
	return is_digit(c) || c == '.' || c == '/';
}

/* "2", "2.5", "1/2", "1 1/2" */
static bool
take_number(struct reader *in, double *out)
{
	struct str s = str_trim(in->rest);
	struct ratio v;
	size_t n = 0, more;

	while (n < s.n && is_number_char(s.p[n]))
		n++;
	for (more = n + 1; more < s.n && is_number_char(s.p[more]); more++)
		continue;
	if (n < s.n && s.p[n] == ' ' && more > n + 1 &&
	    str_find_char(str_cut(s, n, more), '/') < more - n)
		n = more;
	if (!ratio_parse(str_cut(s, 0, n), &v))
		return false;
	*out = ratio_double(v);
	in->rest = str_cut(s, n, s.n);
	return true;
}

/* The letters that follow. */
static struct str
take_word(struct reader *in)
{
	struct str s = str_trim(in->rest), word;
	size_t n = 0;

	while (n < s.n && s.p[n] != '-' && !is_digit(s.p[n]))
		n++;
	word = str_trim(str_cut(s, 0, n));
	in->rest = str_cut(s, n, s.n);
	return word;
}

/* ---- units -------------------------------------------------------------- */

struct scale {
	double shift, factor; /* base = (value + shift) * factor */
};

static bool
is_any(struct str word, const char *names)
{
	struct str rest = str_of(names);

	while (rest.p)
		if (str_is(str_next(&rest, ' '), word))
			return true;
	return false;
}

/* NIST, SI Units - Temperature: t/°C = (t/°F - 32) / 1.8. */
static bool
scale_of_degrees(struct str word, struct scale *out)
{
	*out = (struct scale){0, 1};
	if (is_any(word, "f F fahrenheit Fahrenheit \xc2\xb0"
			 "F \xc2\xb0"
			 "f"))
		*out = (struct scale){-32, 1 / 1.8};
	else if (!is_any(word, "c C celsius Celsius \xc2\xb0"
			       "C \xc2\xb0"
			       "c"))
		return false;
	return true;
}

static bool
scale_of_time(struct str word, struct scale *out)
{
	*out = (struct scale){0, 1};
	if (is_any(word, "min m mins minute minutes"))
		out->factor = 60;
	else if (is_any(word, "h hr hrs hour hours"))
		out->factor = 3600;
	else if (is_any(word, "d day days"))
		out->factor = 86400;
	else
		return is_any(word, "s sec secs second seconds");
	return true;
}

/* The unit as units.tsv has it; everywhere's or the US one where there are
 * several of that name. */
static bool
scale_of_amount(struct reader *in, struct str word, struct scale *out, struct err *e)
{
	static const enum dimension both[] = {DIM_VOLUME, DIM_MASS};
	bool found = false;

	for (size_t i = 0; i < sizeof both / sizeof *both && !found && !e->set; i++) {
		struct row r = row_open(in->archive, SQL_UNIT_FIND);

		row_text(&r, word);
		row_int(&r, both[i]);
		found = row_next(&r, e);
		if (!found)
			continue;
		*out = (struct scale){row_get_real(&r, 1), row_get_real(&r, 0)};
		in->dimension = both[i];
		row_end(&r);
	}
	return found ||
	       err_set(e, "", "%.*s is no unit of weight or volume", (int)word.n, word.p);
}

static bool
scale_of(struct reader *in, struct str word, struct scale *out, struct err *e)
{
	if (in->dimension == DIM_TEMPERATURE)
		return scale_of_degrees(word, out) || unclear(in, e);
	if (in->dimension == DIM_TIME)
		return scale_of_time(word, out) || unclear(in, e);
	*out = (struct scale){0, 1};
	if (word.n == 0) {
		in->dimension = DIM_COUNT;
		return true;
	}
	return scale_of_amount(in, word, out, e);
}

static double
to_base(struct scale s, double v)
{
	return (v + s.shift) * s.factor;
}

/* ---- figures ------------------------------------------------------------ */

/* Common practice in the United Kingdom: 25 °F to the mark, and mark 1 is
 * 275 °F. */
static double
gas_mark(double mark)
{
	static const struct scale fahrenheit = {-32, 1 / 1.8};

	if (mark < 1)
		return to_base(fahrenheit, 200 + 100 * mark);
	return to_base(fahrenheit, 250 + 25 * mark);
}

static bool
read_gas(struct reader *in, struct figure *out, struct err *e)
{
	double low, high;

	if (!take(in, "gas"))
		return false;
	take(in, "mark");
	if (!take_number(in, &low))
		return unclear(in, e);
	high = low;
	if (take_dash(in) && !take_number(in, &high))
		return unclear(in, e);
	*out = (struct figure){gas_mark(low), gas_mark(high), DIM_TEMPERATURE};
	return true;
}

/* What follows "1h" in "1h30" and "1 h 30 min". */
static bool
read_minutes(struct reader *in, struct figure *out, struct err *e)
{
	struct scale minutes = {0, 60};
	struct str word;
	double more;

	if (in->dimension != DIM_TIME || !take_number(in, &more))
		return true;
	word = take_word(in);
	if (word.n && !scale_of_time(word, &minutes))
		return unclear(in, e);
	out->min += to_base(minutes, more);
	out->max += to_base(minutes, more);
	return true;
}

static bool
read_range(struct reader *in, struct figure *out, struct err *e)
{
	bool at_most = take_dash(in), at_least = false;
	double low, high;
	struct scale scale;

	if (!take_number(in, &low))
		return unclear(in, e);
	high = low;
	if (take_dash(in) && !take_number(in, &high))
		at_least = true;
	if (!scale_of(in, take_word(in), &scale, e))
		return false;
	*out = (struct figure){to_base(scale, fmin(low, high)),
	    to_base(scale, fmax(low, high)), in->dimension};
	if (!read_minutes(in, out, e))
		return false;
	at_least = take_dash(in) || at_least;
	if (at_least)
		out->max = INFINITY;
	if (at_most)
		out->min = -INFINITY;
	return true;
}

bool
figure_read(struct archive *a, struct str text, enum dimension wanted, struct figure *out,
    struct err *e)
{
	struct reader in = {a, str_trim(text), str_trim(text), wanted};
	bool ok = false;

	if (wanted == DIM_TEMPERATURE)
		ok = read_gas(&in, out, e);
	if (!ok && !e->set)
		ok = read_range(&in, out, e);
	if (!ok)
		return false;
	return str_trim(in.rest).n == 0 || unclear(&in, e);
}
