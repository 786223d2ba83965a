/* SPDX-License-Identifier: ISC */
/*
 * Makes a draft of the text that draft_text.h describes, and a grammar that has
 * nothing but tables.
 */
#include "../support/draft_maker.h"
#include "grammar/embedded.h"

#include <stdio.h>
#include <stdlib.h>

void
need(bool ok, const char *what, struct str word)
{
	if (ok)
		return;
	fprintf(stderr, "draft_text: %s: \"%.*s\"\n", what, (int)word.n, word.p);
	exit(1);
}

struct place
next_place(struct maker *m)
{
	m->now += STEP_BYTES;
	return (struct place){m->now, m->now, {m->now, m->now + WORD_BYTES}};
}

struct str
words(struct maker *m, struct str s)
{
	struct str out = arena_str(m->d->arena, s);
	char *p = (char *)(uintptr_t)out.p;

	for (size_t i = 0; i < out.n; i++)
		if (p[i] == '_')
			p[i] = ' ';
	return out;
}

const struct unit *
unit_named(const struct maker *m, struct str name)
{
	const struct unit *u = name.n ? grammar_unit(m->g, name, m->d->region) : NULL;

	need(u || !name.n, "no such unit", name);
	return u;
}

struct amount
value_of(const struct maker *m, struct str s)
{
	static const struct {
		char letter;
		const char *unit;
	} rows[] = {{'F', "fahrenheit"}, {'C', "celsius"}, {'G', "gas-mark"},
	    {'m', "minute"}, {'h', "hour"}, {'s', "second"}};
	struct amount a = {.present = true, .known = true};
	size_t colon = str_find_char(s, ':'), dash;
	struct str number = str_cut(s, 0, colon);

	if (colon < s.n)
		a.unit = unit_named(m, str_cut(s, colon + 1, s.n));
	for (size_t i = 0; colon == s.n && i < COUNT(rows); i++)
		if (s.n && s.p[s.n - 1] == rows[i].letter) {
			a.unit = unit_named(m, str_of(rows[i].unit));
			number = str_cut(s, 0, s.n - 1);
		}
	dash = str_find_char(number, '-');
	need(ratio_parse(str_cut(number, 0, dash), &a.min), "no number", s);
	a.max = a.min;
	if (dash < number.n)
		need(ratio_parse(str_cut(number, dash + 1, number.n), &a.max), "no range",
		    s);
	return a;
}

int64_t
to_ms(const struct amount *a, struct ratio v)
{
	return ratio_round(ratio_mul(unit_to_base(a->unit, v), ratio_int(1000)));
}

bool
is_option(struct str word, const char *key, struct str *value)
{
	size_t n = strlen(key);

	if (!str_starts(word, str_of(key)) || word.n <= n || word.p[n] != '=')
		return false;
	*value = str_cut(word, n + 1, word.n);
	return true;
}

static void
dish_option(struct maker *m, struct dish *d, struct str word)
{
	struct str v = {NULL, 0};
	struct amount a;

	need(is_option(word, "serves", &v) || is_option(word, "total", &v) ||
		 is_option(word, "claim", &v),
	    "dish", word);
	a = value_of(m, v);
	if (str_starts(word, STR("serves"))) {
		d->yield = a;
		d->yield_unit = str_of("serving");
	} else if (str_starts(word, STR("total"))) {
		d->total_ms = to_ms(&a, a.min);
	} else {
		d->claimed_ms = to_ms(&a, a.min);
		d->claim_place = next_place(m);
	}
}

static void
new_part(struct maker *m)
{
	m->part = &m->dish->part[m->dish->parts++];
	m->part->ingredient = arena_array(m->d->arena, MANY, struct ingredient);
	m->part->step = arena_array(m->d->arena, MANY, struct step);
}

static void
make_dish(struct maker *m, struct str *rest)
{
	struct dish *d = &m->d->dish[m->d->dishes++];

	m->dish = d;
	d->name = words(m, str_next(rest, ' '));
	d->place = next_place(m);
	d->claimed_ms = d->total_ms = d->active_ms = -1;
	d->part = arena_array(m->d->arena, MANY, struct part);
	d->equipment = arena_array(m->d->arena, MANY, struct equipment);
	d->yield_said = arena_array(m->d->arena, MANY, struct said_yield);
	new_part(m);
	while (rest->p)
		dish_option(m, d, str_next(rest, ' '));
}

static void
make_part(struct maker *m, struct str *rest)
{
	new_part(m);
	m->part->name = words(m, str_next(rest, ' '));
}

static void
food_said(struct maker *m, struct ingredient *in, struct str v)
{
	in->uses = 0;
	while (v.p) {
		in->said[in->uses] = value_of(m, str_next(&v, ','));
		in->use[in->uses++] = next_place(m);
	}
	in->amount = in->said[0];
	in->place = in->use[0];
}

static bool
food_flag(struct ingredient *in, struct str word)
{
	const struct {
		const char *name;
		bool *flag;
	} rows[] = {{"optional", &in->optional}, {"listed", &in->listed},
	    {"free", &in->free}, {"liquid", &in->liquid}, {"divided", &in->divided}};

	for (size_t i = 0; i < COUNT(rows); i++)
		if (str_is_z(word, rows[i].name))
			return *rows[i].flag = true;
	in->used = in->used && !str_is_z(word, "unused");
	return !in->used;
}

static void
food_option(struct maker *m, struct ingredient *in, struct str word)
{
	struct str v;

	if (is_option(word, "item", &v))
		in->item = words(m, v);
	else if (is_option(word, "note", &v))
		in->note = words(m, v);
	else if (is_option(word, "prep", &v))
		in->preparation = words(m, v);
	else if (is_option(word, "kind", &v))
		in->kind = v;
	else if (is_option(word, "size", &v))
		in->size = value_of(m, v);
	else if (is_option(word, "metric", &v))
		in->metric = value_of(m, v);
	else if (is_option(word, "said", &v))
		food_said(m, in, v);
	else if (is_option(word, "again", &v))
		in->uses += (size_t)(v.p[0] - '0');
	else
		need(food_flag(in, word), "food", word);
}

/* food KEY GROUP NUMBER|some|none UNIT|- ... */
static void
make_food(struct maker *m, struct str *rest)
{
	struct ingredient *in = &m->part->ingredient[m->part->ingredients++];
	struct str number, unit;

	in->key = str_next(rest, ' ');
	in->item = words(m, in->key);
	for (size_t i = 0; i < in->item.n; i++)
		if (in->item.p[i] == '-')
			((char *)(uintptr_t)in->item.p)[i] = ' ';
	in->group = str_next(rest, ' ');
	number = str_next(rest, ' ');
	unit = str_next(rest, ' ');
	in->amount.present = !str_is_z(number, "none");
	in->amount.unit = str_is_z(unit, "-") ? NULL : unit_named(m, unit);
	in->amount.known = ratio_parse(number, &in->amount.min);
	in->amount.max = in->amount.min;
	in->place = next_place(m);
	in->use = arena_array(m->d->arena, MANY, struct place);
	in->said = arena_array(m->d->arena, MANY, struct amount);
	in->use[0] = in->place;
	in->said[0] = in->amount;
	in->uses = 1;
	in->used = true;
	while (rest->p)
		food_option(m, in, str_next(rest, ' '));
}

static void
make_tool(struct maker *m, struct str *rest)
{
	struct equipment *e = &m->dish->equipment[m->dish->equipments++];
	struct str v;

	e->item = words(m, str_next(rest, ' '));
	e->kind = str_next(rest, ' ');
	e->place = next_place(m);
	if (rest->p && is_option(str_next(rest, ' '), "size", &v))
		e->size = value_of(m, v);
}

static void
make_yield(struct maker *m, struct str *rest)
{
	struct said_yield *y = &m->dish->yield_said[m->dish->yields_said++];

	y->value = value_of(m, str_next(rest, ' '));
	y->unit = str_next(rest, ' ');
	y->place = next_place(m);
}

/* remark KIND DETAIL|- WORDS: of the dish so far */
static void
make_remark(struct maker *m, struct str *rest)
{
	struct remark *r = &m->d->remark[m->d->remarks++];
	uint64_t kind = 0;

	need(str_to_u64(str_next(rest, ' '), &kind), "no kind", *rest);
	r->kind = (enum remark_kind)kind;
	r->detail = words(m, str_next(rest, ' '));
	if (str_is_z(r->detail, "-"))
		r->detail.n = 0;
	r->text = rest->p ? words(m, str_next(rest, ' ')) : STR("words");
	r->dish = (int)m->d->dishes - 1;
	r->part = r->step = -1;
	r->place = next_place(m);
}

static bool
make_measure_of(struct maker *m, struct str what, struct str *rest)
{
	static const char *const kind[] = {"amount", "count", "temp", "time", "length"};

	for (size_t i = 0; i < COUNT(kind); i++)
		if (str_is_z(what, kind[i])) {
			make_measure(m, (enum measure_kind)i, rest);
			return true;
		}
	return false;
}

static void
make_thing(struct maker *m, struct str line)
{
	static const struct {
		const char *what;
		void (*make)(struct maker *m, struct str *rest);
	} rows[] = {{"dish", make_dish}, {"part", make_part}, {"food", make_food},
	    {"step", make_step}, {"tool", make_tool}, {"yield", make_yield},
	    {"remark", make_remark}};
	struct str what = str_next(&line, ' ');

	for (size_t i = 0; i < COUNT(rows); i++)
		if (str_is_z(what, rows[i].what)) {
			rows[i].make(m, &line);
			return;
		}
	if (str_is_z(what, "region"))
		m->d->region = arena_str(m->d->arena, str_next(&line, ' ')).p;
	else if (str_is_z(what, "profile"))
		m->d->profile = arena_str(m->d->arena, str_next(&line, ' ')).p;
	else if (str_is_z(what, "stated"))
		m->d->region_stated = true;
	else
		need(make_measure_of(m, what, &line), "statement", what);
}

struct draft *
draft_of_text(struct arena *a, const struct grammar *g, const char *text)
{
	struct maker m = {.d = arena_new(a, struct draft), .g = g};
	struct str rest = str_of(text);

	m.d->arena = a;
	m.d->region = "us";
	m.d->dish = arena_array(a, MANY, struct dish);
	m.d->measure = arena_array(a, MANY, struct measure);
	m.d->remark = arena_array(a, MANY, struct remark);
	while (rest.p) {
		struct str line = str_trim(str_next(&rest, ';'));

		if (line.n)
			make_thing(&m, line);
	}
	return m.d;
}

void
draft_text_tables(struct grammar *g)
{
	struct err e = {0};

	arena_init(&g->arena);
	g->language = "en";
	for (const struct embedded_file *m = tamis_embedded; m->name; m++) {
		struct str name = str_of(m->name);
		struct table t = {0};

		if (!str_starts(name, STR("tables/")))
			continue;
		t.name = str_cut(name, strlen("tables/"), name.n - strlen(".tsv"));
		need(table_load(&t, &g->arena, m->data, m->name, &e), e.text, name);
		vec_push(&g->arena, &g->table, t);
	}
	need(units_load(&g->units, grammar_table(g, "units"), &g->arena, &e), e.text,
	    STR("units"));
}
