/* SPDX-License-Identifier: ISC */
/*
 * measure	1:07	duration	6	7	minute	step	6 to 7 minutes
 */
#include "gold.h"

#include "../support/source.h"
#include "base/ratio.h"

enum { COLUMNS = 9 };

/* One line in columns, and where to complain of it. */
struct line {
	struct str column[COLUMNS];
	size_t columns;
	bool ok;
};

static struct str
text_of(struct str column)
{
	return str_is_z(column, "-") ? STR("") : column;
}

static double
number_of(struct line *l, struct str column)
{
	struct ratio r = {0, 1};

	if (!ratio_parse(column, &r))
		l->ok = false;
	return ratio_double(r);
}

/* Columns i, i + 1 and, where it has one, the unit. */
static struct gold_value
measured_value(struct line *l, size_t i, struct str unit)
{
	struct gold_value v = {0};

	v.known = !str_is_z(l->column[i], "-");
	v.unit = text_of(unit);
	if (!v.known)
		return v;
	v.min = number_of(l, l->column[i]);
	v.max = number_of(l, l->column[i + 1]);
	return v;
}

/* "1:07", "1:02:03"; "-" is the start. */
static int64_t
time_of(struct line *l, struct str column)
{
	struct str rest = column;
	int64_t s = 0;
	uint64_t n;

	if (str_is_z(column, "-"))
		return 0;
	while (rest.p) {
		if (!str_to_u64(str_next(&rest, ':'), &n))
			l->ok = false;
		else
			s = s * 60 + (int64_t)n;
	}
	return s * 1000;
}

static uint64_t
dish_of(struct line *l)
{
	uint64_t n = 0;

	l->ok &= str_to_u64(l->column[1], &n);
	return n;
}

static void
read_dish(struct arena *a, struct gold *g, struct line *l)
{
	vec_push(a, &g->dish,
	    (struct gold_dish){dish_of(l), l->column[2], time_of(l, l->column[3])});
}

static void
read_measure(struct arena *a, struct gold *g, struct line *l)
{
	const struct str *c = l->column;

	vec_push(a, &g->measure,
	    (struct gold_measure){
		time_of(l, c[1]), c[2], text_of(c[6]), c[7], measured_value(l, 3, c[5])});
}

static void
read_ingredient(struct arena *a, struct gold *g, struct line *l)
{
	const struct str *c = l->column;

	vec_push(a, &g->ingredient,
	    (struct gold_ingredient){dish_of(l), text_of(c[2]), c[3],
		measured_value(l, 4, c[6]), time_of(l, c[7])});
}

static void
read_heat(struct arena *a, struct gold *g, struct line *l)
{
	const struct str *c = l->column;

	vec_push(a, &g->heat,
	    (struct gold_heat){dish_of(l), c[2], measured_value(l, 3, c[5]),
		measured_value(l, 6, STR("second")), time_of(l, c[8])});
}

static void
read_finding(struct arena *a, struct gold *g, struct line *l)
{
	const struct str *c = l->column;

	vec_push(a, &g->finding, (struct gold_finding){c[1], c[3], time_of(l, c[2])});
}

static const struct reader {
	const char *row;
	size_t columns;
	void (*read)(struct arena *a, struct gold *g, struct line *l);
} readers[] = {
    {"dish", 5, read_dish},
    {"measure", 8, read_measure},
    {"ingredient", 8, read_ingredient},
    {"heat", 9, read_heat},
    {"finding", 4, read_finding},
};

static bool
read_line(struct arena *a, struct gold *g, struct line *l)
{
	for (size_t i = 0; i < sizeof readers / sizeof *readers; i++) {
		if (!str_is_z(l->column[0], readers[i].row))
			continue;
		if (l->columns != readers[i].columns)
			return false;
		readers[i].read(a, g, l);
		return l->ok;
	}
	return false;
}

bool
gold_read(struct arena *a, struct gold *g, const char *path, struct err *e)
{
	struct err_place at = {0, 1};
	struct str rest;

	if (!source_read(a, path, &rest, e))
		return false;
	while (rest.p) {
		struct str text = str_next(&rest, '\n');
		struct line l = {.ok = true};

		at.line++;
		if (str_trim(text).n == 0 || text.p[0] == '#')
			continue;
		while (text.p && l.columns < COLUMNS)
			l.column[l.columns++] = str_trim(str_next(&text, '\t'));
		if (text.p || !read_line(a, g, &l))
			return err_set_at(e, path, at, "no row of the gold's form");
	}
	return true;
}

bool
gold_names(struct str names, struct str word)
{
	while (names.p)
		if (str_is(str_next(&names, '|'), word))
			return true;
	return false;
}
