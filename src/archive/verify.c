/* SPDX-License-Identifier: ISC */
/*
 * What the archive has, and whether it is sound: the file, the links between
 * its tables, the search index, the text of each episode.
 */
#include "archive/keep.h"

#include <stdlib.h>

bool
archive_known(struct archive *a, struct arena *arena, struct knowns *out, struct err *e)
{
	struct row r = row_open(a, SQL_KNOWN);
	VEC(struct known) list = {0};

	while (row_next(&r, e)) {
		struct known one = {row_copy(&r, 0, arena), (uint64_t)row_get_int(&r, 1)};

		vec_push(arena, &list, one);
	}
	*out = (struct knowns){list.v, list.n};
	return !e->set;
}

static int
order_known(const void *name, const void *known)
{
	return str_order(*(const struct str *)name, ((const struct known *)known)->name);
}

const struct known *
known_find(const struct knowns *k, struct str name)
{
	return k->n ? bsearch(&name, k->v, k->n, sizeof *k->v, order_known) : NULL;
}

bool
archive_episode(struct archive *a, struct arena *arena, struct str name,
    struct kept_episode *out, struct err *e)
{
	struct packed packed;
	int64_t id;

	if (!keep_unpack(a, arena, name, &id, &packed, e))
		return false;
	out->source = packed.source;
	out->json = packed.json;
	out->region = packed.region;
	out->profile = packed.profile;
	out->answers = packed.answers;
	return true;
}

/* ---- verifying ---------------------------------------------------------- */

struct telling {
	void (*told)(void *context, struct str what);
	void *context;
	bool sound;
};

static void
tell(struct telling *t, struct str what)
{
	t->sound = false;
	t->told(t->context, what);
}

/* The rows of a pragma that says "ok" or what is wrong. */
static void
tell_pragma(struct archive *a, const char *sql, struct telling *t, struct err *e)
{
	struct row r = row_prepare(a, sql);

	while (row_next(&r, e))
		if (!str_is_z(row_get_text(&r, 0), "ok"))
			tell(t, row_get_text(&r, 0));
	row_close(&r);
}

static void
tell_links(struct archive *a, struct telling *t, struct err *e)
{
	struct row r = row_prepare(a, "PRAGMA foreign_key_check");

	while (row_next(&r, e)) {
		struct str table = row_get_text(&r, 0);
		char what[128];
		int n = snprintf(what, sizeof what, "a row of %.*s belongs to nothing",
		    (int)table.n, table.p);

		tell(t, (struct str){what, (size_t)n});
	}
	row_close(&r);
}

static void
tell_index(struct archive *a, struct telling *t, struct err *e)
{
	struct row r = row_open(a, SQL_ENTRY_VERIFY);
	struct err found = {0};

	if (row_run(&r, &found))
		return;
	if (sqlite3_errcode(a->db) == SQLITE_CORRUPT)
		tell(t, STR("the search index is damaged"));
	else
		*e = found;
}

bool
archive_verify(struct archive *a, void (*told)(void *context, struct str what),
    void *context, struct err *e)
{
	struct telling t = {told, context, true};

	tell_pragma(a, "PRAGMA integrity_check", &t, e);
	tell_links(a, &t, e);
	tell_index(a, &t, e);
	return t.sound && !e->set;
}
