/* SPDX-License-Identifier: ISC */
/*
 * Filling JSON objects, and the answer to a question as one.
 */
#include "archive/json.h"

#include "archive/archive.h"
#include "base/fold.h"

static void
need(bool ok)
{
	struct arena none = {0};

	/* Only for want of memory; ends as the arena does. */
	if (!ok)
		arena_alloc(&none, SIZE_MAX, 2);
}

void
member_set(json_t *object, const char *key, json_t *v)
{
	need(json_object_set_new(object, key, v) == 0);
}

void
member_add(json_t *array, json_t *v)
{
	need(json_array_append_new(array, v) == 0);
}

static bool
is_utf8(struct str s)
{
	size_t n;

	for (size_t at = 0; at < s.n; at += n)
		if (fold_decode(str_cut(s, at, s.n), &n) < 0)
			return false;
	return true;
}

static json_t *
clean_text(struct str s)
{
	struct arena a;
	struct buf b;
	json_t *v;
	size_t n;

	if (is_utf8(s))
		return json_stringn(s.n ? s.p : "", s.n);
	arena_init(&a);
	b = buf_in(&a);
	for (size_t at = 0; at < s.n; at += n) {
		if (fold_decode(str_cut(s, at, s.n), &n) < 0)
			buf_put_z(&b, "\xef\xbf\xbd");
		else
			buf_put(&b, str_cut(s, at, at + n));
	}
	v = json_stringn(b.v, b.n);
	arena_release(&a);
	return v;
}

void
member_text(json_t *object, const char *key, struct str s)
{
	member_set(object, key, s.n ? clean_text(s) : json_null());
}

void
member_time(json_t *object, const char *key, int64_t ms)
{
	member_set(object, key,
	    ms < 0           ? json_null()
	    : ms % 1000 == 0 ? json_integer(ms / 1000)
			     : json_real((double)ms / 1000));
}

static int
append(const char *data, size_t n, void *out)
{
	buf_put(out, (struct str){data, n});
	return 0;
}

void
member_print(json_t *v, struct buf *out)
{
	need(json_dump_callback(v, append, out, JSON_COMPACT | JSON_REAL_PRECISION(10)) ==
	     0);
	json_decref(v);
}

/* ---- an answer ---------------------------------------------------------- */

static json_t *
hit_json(const struct hit *h)
{
	json_t *o = json_object(), *marks = json_array();

	member_text(o, "dish", h->dish);
	member_text(o, "episode", h->episode);
	member_text(o, "title", h->title);
	member_text(o, "date", h->date);
	member_time(o, "at_s", h->at_ms);
	member_text(o, "sentence", h->sentence);
	for (size_t i = 0; i < h->marks; i++) {
		json_t *pair = json_array();

		member_add(pair, json_integer(h->mark[i].beg));
		member_add(pair, json_integer(h->mark[i].end));
		member_add(marks, pair);
	}
	member_set(o, "marks", marks);
	member_text(o, "link", h->link);
	return o;
}

void
answer_json(const struct answer *a, struct buf *out)
{
	json_t *o = json_object(), *hits = json_array(), *nowhere = json_array();

	for (size_t i = 0; i < a->hits; i++)
		member_add(hits, hit_json(&a->hit[i]));
	for (size_t i = 0; i < a->nowheres; i++)
		member_add(nowhere, clean_text(a->nowhere[i]));
	member_set(o, "hits", hits);
	member_set(o, "more", json_boolean(a->more));
	member_set(o, "near_only", json_boolean(a->loose));
	member_set(o, "nowhere", nowhere);
	member_print(o, out);
	buf_put_char(out, '\n');
}
