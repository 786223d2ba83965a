/* SPDX-License-Identifier: ISC */
/*
 * Reads a style file: a key and a value a line, '#' for comments.
 *     step-numbers = dot
 */
#include "house/style.h"

#include "grammar/table.h"

static void
set_units(struct tamis_style *s, int v)
{
	s->units = (enum tamis_units)v;
}

static void
set_unit_names(struct tamis_style *s, int v)
{
	s->unit_words = v;
}

static void
set_temperature(struct tamis_style *s, int v)
{
	s->degrees = (enum tamis_degrees)v;
}

static void
set_fractions(struct tamis_style *s, int v)
{
	s->plain_fractions = v;
}

static void
set_step_numbers(struct tamis_style *s, int v)
{
	s->numbers = (enum tamis_numbers)v;
}

static void
set_time_codes(struct tamis_style *s, int v)
{
	s->no_time_codes = v;
}

static void
set_heading(struct tamis_style *s, int v)
{
	s->heading = (unsigned)v;
}

static void
set_spelling(struct tamis_style *s, int v)
{
	s->spelling = (enum tamis_spelling)v;
}

static void
set_cautions(struct tamis_style *s, int v)
{
	s->no_cautions = v;
}

enum { VALUES = 6 };

struct key {
	const char *name;
	void (*set)(struct tamis_style *s, int v);
	struct {
		const char *name;
		int v;
	} value[VALUES];
};

static const struct key keys[] = {
    {"units", set_units,
	{{"as-said", UNITS_SAID}, {"both", UNITS_BOTH}, {"us", UNITS_US},
	    {"metric", UNITS_METRIC}}},
    {"unit-names", set_unit_names, {{"short", 0}, {"long", 1}}},
    {"temperature", set_temperature,
	{{"as-units", DEGREES_UNITS}, {"as-said", DEGREES_SAID},
	    {"celsius-first", DEGREES_CELSIUS_FIRST},
	    {"fahrenheit-first", DEGREES_FAHRENHEIT_FIRST}, {"celsius", DEGREES_CELSIUS},
	    {"fahrenheit", DEGREES_FAHRENHEIT}}},
    {"fractions", set_fractions, {{"glyphs", 0}, {"plain", 1}}},
    {"step-numbers", set_step_numbers,
	{{"dot", NUMBERS_DOT}, {"bracket", NUMBERS_BRACKET}, {"none", NUMBERS_NONE}}},
    {"time-codes", set_time_codes, {{"on", 0}, {"off", 1}}},
    {"heading", set_heading, {{"1", 1}, {"2", 2}, {"3", 3}, {"4", 4}}},
    {"spelling", set_spelling,
	{{"as-said", SPELLING_SAID}, {"uk", SPELLING_UK}, {"us", SPELLING_US}}},
    {"cautions", set_cautions, {{"on", 0}, {"off", 1}}},
};
enum { KEYS = sizeof keys / sizeof *keys };

struct reader {
	struct tamis_style *s;
	struct arena *a;
	const struct table *cautions; /* may be NULL */
	const char *name;
	struct err *e;
	struct err_place at;
	VEC(struct tamis_caution) caution;
	uint32_t seen[KEYS]; /* the line that set a key */
};

/* ---- what was expected ---------------------------------------------------- */

static void
put_one_of(struct buf *b, const char *one, bool first, bool last)
{
	buf_put_z(b, first ? "" : last ? " or " : ", ");
	buf_put_z(b, one);
}

static bool
expected_key(struct reader *r, struct str found)
{
	struct buf b = buf_in(r->a);

	for (size_t i = 0; i < KEYS; i++)
		put_one_of(&b, keys[i].name, i == 0, false);
	return err_set_at(r->e, r->name, r->at,
	    "expected %.*s or caution.TOPIC, found \"%.*s\"", (int)b.n, b.v, (int)found.n,
	    found.p);
}

static bool
expected_value(struct reader *r, const struct key *k, struct str found)
{
	struct buf b = buf_in(r->a);

	for (size_t i = 0; i < VALUES && k->value[i].name; i++)
		put_one_of(
		    &b, k->value[i].name, i == 0, i + 1 == VALUES || !k->value[i + 1].name);
	return err_set_at(r->e, r->name, r->at, "%s: expected %.*s, found \"%.*s\"",
	    k->name, (int)b.n, b.v, (int)found.n, found.p);
}

static bool
expected_topic(struct reader *r, struct str found)
{
	struct buf b = buf_in(r->a);
	int topic = r->cautions ? table_column(r->cautions, "topic") : -1;
	struct str before = STR("");

	for (size_t i = 0; r->cautions && i < r->cautions->rows; i++) {
		struct str cell = table_cell(r->cautions, i, topic);

		if (!str_is(cell, before))
			buf_fmt(&b, "%s%.*s", b.n ? ", " : "", (int)cell.n, cell.p);
		before = cell;
	}
	return err_set_at(r->e, r->name, r->at,
	    "expected a topic of the cautions (%.*s), found \"%.*s\"", (int)b.n, b.v,
	    (int)found.n, found.p);
}

/* ---- a line ---------------------------------------------------------------- */

static bool
read_caution(struct reader *r, struct str topic, struct str value)
{
	int column = r->cautions ? table_column(r->cautions, "topic") : -1;

	if (!r->cautions || table_find(r->cautions, 0, column, topic) == r->cautions->rows)
		return expected_topic(r, topic);
	if (str_is_z(value, "off"))
		value = STR("");
	vec_push(r->a, &r->caution,
	    (struct tamis_caution){arena_str(r->a, topic), arena_str(r->a, value)});
	return true;
}

static bool
read_pair(struct reader *r, struct str key, struct str value, uint32_t value_column)
{
	for (size_t i = 0; i < KEYS; i++) {
		const struct key *k = &keys[i];

		if (!str_is_z(key, k->name))
			continue;
		if (r->seen[i])
			return err_set_at(r->e, r->name, r->at,
			    "%s is set already, on line %u", k->name, r->seen[i]);
		r->seen[i] = r->at.line;
		r->at.column = value_column;
		for (size_t v = 0; v < VALUES && k->value[v].name; v++)
			if (str_is_z(value, k->value[v].name)) {
				k->set(r->s, k->value[v].v);
				return true;
			}
		return expected_value(r, k, value);
	}
	if (str_starts(key, STR("caution.")))
		return read_caution(r, str_cut(key, STR("caution.").n, key.n), value);
	return expected_key(r, key);
}

static bool
read_line(struct reader *r, struct str line)
{
	size_t equals = str_find_char(line, '=');
	struct str key = str_trim(str_cut(line, 0, equals));
	struct str value = str_trim(str_cut(line, equals + 1, line.n));

	r->at.column = 1;
	if (str_trim(line).n == 0 || str_trim(line).p[0] == '#')
		return true;
	if (equals == line.n || key.n == 0 || value.n == 0)
		return err_set_at(r->e, r->name, r->at,
		    "expected a line \"key = value\", found \"%.*s\"",
		    (int)str_trim(line).n, str_trim(line).p);
	r->at.column = (uint32_t)(key.p - line.p) + 1;
	return read_pair(r, key, value, (uint32_t)(value.p - line.p) + 1);
}

bool
style_read(struct tamis_style *s, struct arena *a, const struct grammar *g, struct str text,
    const char *name, struct err *e)
{
	struct reader r = {.s = s, .a = a, .name = name, .e = e};

	r.cautions = g ? grammar_table(g, "cautions") : NULL;
	if (str_starts(text, STR("\xef\xbb\xbf")))
		text = str_cut(text, 3, text.n);
	while (text.p) {
		r.at.line++;
		if (!read_line(&r, str_next(&text, '\n')))
			return false;
	}
	if (r.caution.n) {
		s->caution = r.caution.v;
		s->cautions = r.caution.n;
	}
	return true;
}
