/* SPDX-License-Identifier: ISC */
/*
 * Every dish as one line of JSON: the dish of the draft with what the episode,
 * the tables and the script add to it.
 */
#include "archive/json.h"
#include "archive/keep.h"

struct export
{
	struct archive *archive;
	struct arena *arena; /* of the episode */
	bool (*put)(void *context, struct str line);
	void *context;
	/* The episode. */
	struct str name, title, date, video_url, region;
	int64_t id;
	struct str passages;
	json_t *draft;
};

/* ---- what is added ------------------------------------------------------ */

static void
add_range(json_t *o, const char *key, const struct row *r, int column)
{
	json_t *pair = json_array();

	if (row_is_null(r, column)) {
		json_decref(pair);
		member_set(o, key, json_null());
		return;
	}
	member_add(pair, json_real(row_get_real(r, column)));
	member_add(pair, json_real(row_get_real(r, column + 1)));
	member_set(o, key, pair);
}

/* What the lexicon and the tables know of each ingredient, in their order. */
static void
add_foods(struct export *x, json_t *dish, int64_t id, struct err *e)
{
	struct row r = row_open(x->archive, SQL_EXPORT_FOODS);
	json_t *parts = json_object_get(dish, "parts"), *part, *ingredient;
	size_t p, i;

	row_int(&r, id);
	json_array_foreach(parts, p, part)
	{
		json_array_foreach(json_object_get(part, "ingredients"), i, ingredient)
		{
			if (!row_next(&r, e))
				return;
			member_text(ingredient, "key", row_get_text(&r, 0));
			member_text(ingredient, "kind", row_get_text(&r, 1));
			member_text(ingredient, "group", row_get_text(&r, 2));
			add_range(ingredient, "ml", &r, 3);
			add_range(ingredient, "gram", &r, 5);
		}
	}
	row_end(&r);
}

static void
add_measures(struct export *x, json_t *line, int64_t id, struct err *e)
{
	struct row r = row_open(x->archive, SQL_EXPORT_MEASURES);
	json_t *all = json_object_get(x->draft, "measures"), *list = json_array();

	row_int(&r, id);
	while (row_next(&r, e)) {
		json_t *one = json_array_get(all, (size_t)row_get_int(&r, 0));

		if (!one)
			continue;
		add_range(one, "range", &r, 1);
		member_add(list, json_incref(one));
	}
	member_set(line, "measures", list);
}

static void
add_findings(struct export *x, json_t *line, int ordinal)
{
	json_t *list = json_array(), *one;
	size_t i;

	json_array_foreach(json_object_get(x->draft, "findings"), i, one)
	{
		json_t *dish = json_object_get(one, "dish");

		if ((json_is_integer(dish) ? json_integer_value(dish) : -1) == ordinal)
			member_add(list, json_incref(one));
	}
	member_set(line, "findings", list);
}

static void
add_allergens(struct export *x, json_t *line, int64_t id, struct err *e)
{
	struct row r = row_open(x->archive, SQL_EXPORT_ALLERGENS);
	json_t *list = json_array();

	row_int(&r, id);
	while (row_next(&r, e)) {
		struct str code = row_get_text(&r, 0);

		member_add(list, json_stringn(code.p, code.n));
	}
	member_set(line, "allergens", list);
}

static void
add_said(struct export *x, json_t *line, int ordinal)
{
	struct str rest = x->passages;
	json_t *list = json_array();
	struct passage p;

	while (passage_next(&rest, &p)) {
		json_t *one;

		if (p.kind != PASSAGE_SAID || p.entry != ordinal)
			continue;
		one = json_object();
		member_time(one, "at_s", p.beg_ms);
		member_text(one, "text", p.text);
		member_add(list, one);
	}
	member_set(line, "said", list);
}

/* ---- lines -------------------------------------------------------------- */

static bool
put_dish(struct export *x, int64_t id, int ordinal, struct err *e)
{
	struct buf b = buf_in(x->arena);
	json_t *line = json_object(), *dish;

	member_text(line, "episode", x->name);
	member_text(line, "title", x->title);
	member_text(line, "date", x->date);
	member_text(line, "video_url", x->video_url);
	member_text(line, "region", x->region);
	member_set(line, "dish", ordinal < 0 ? json_null() : json_integer(ordinal));
	dish = json_array_get(json_object_get(x->draft, "dishes"), (size_t)ordinal);
	if (ordinal >= 0 && dish) {
		add_foods(x, dish, id, e);
		json_object_update(line, dish);
	}
	add_allergens(x, line, id, e);
	add_measures(x, line, id, e);
	add_findings(x, line, ordinal);
	add_said(x, line, ordinal);
	member_print(line, &b);
	return !e->set && x->put(x->context, buf_str(&b));
}

static bool
read_texts(struct export *x, struct err *e)
{
	struct packed packed;
	int64_t id;

	if (!keep_unpack(x->archive, x->arena, x->name, &id, &packed, e))
		return false;
	x->passages = packed.passages;
	x->draft = json_loadb(packed.json.p, packed.json.n, 0, NULL);
	return x->draft || err_set(e, x->archive->path, "is damaged: the draft of %.*s",
			       (int)x->name.n, x->name.p);
}

static bool
put_episode(struct export *x, struct err *e)
{
	struct row r = row_open(x->archive, SQL_DISHES_OF);
	bool more = true;

	if (!read_texts(x, e))
		return false;
	row_int(&r, x->id);
	while (more && row_next(&r, e))
		more = put_dish(x, row_get_int(&r, 0), (int)row_get_int(&r, 1), e);
	row_end(&r);
	json_decref(x->draft);
	return more && !e->set;
}

bool
archive_export(struct archive *a, bool (*put)(void *context, struct str line),
    void *context, struct err *e)
{
	struct row r = row_open(a, SQL_EXPORT_EPISODES);
	struct arena arena;
	bool more = true;

	while (more && row_next(&r, e)) {
		struct export x = {
		    .archive = a, .arena = &arena, .put = put, .context = context};

		arena_init(&arena);
		x.id = row_get_int(&r, 0);
		x.name = row_copy(&r, 1, &arena);
		x.title = row_copy(&r, 2, &arena);
		x.date = row_copy(&r, 3, &arena);
		x.video_url = row_copy(&r, 4, &arena);
		x.region = row_copy(&r, 5, &arena);
		more = put_episode(&x, e);
		arena_release(&arena);
	}
	row_end(&r);
	return more && !e->set;
}
