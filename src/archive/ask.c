/* SPDX-License-Identifier: ISC */
/*
 * From a question to the dishes that answer it, best first. The statement is put
 * together from fixed pieces; what was asked goes in as bound values, words as
 * quoted strings of the index's query language.
 */
#include "archive/ask.h"

#include <math.h>

enum { WORDS_MAX = 32, NAME_MAX = 200 };

struct value {
	bool is_text;
	struct str text;
	double number;
};

/* How closely the question is taken: as it was asked; what was asked of the
 * ingredients, the equipment and the steps found anywhere; and some of the words
 * only. */
enum ease { STRICT, ANYWHERE, SOME };

struct asking {
	struct archive *archive;
	struct arena *arena;
	const struct question *q;
	enum ease ease;
	struct buf match; /* in the index's query language; empty: no words */
	size_t filters;   /* phrases of options in it */
	size_t words;     /* the phrases of it that count, from the first on */
	struct buf where;
	VEC(struct value) value; /* of the '?' in `where`, in order */
	bool by_dish;            /* asks for what only dishes have */
	bool by_episode;
};

/* ---- words -------------------------------------------------------------- */

static bool
is_searchable(struct asking *k, struct str text)
{
	return phrase_cut(k->archive, k->arena, text).tokens.token.n > 0;
}

/* A string of the query language, where only '"' means anything. */
static void
put_quoted(struct buf *b, struct str text)
{
	bool open = str_ends(text, STR("*"));

	buf_put_char(b, '"');
	for (size_t i = 0; i < text.n; i++) {
		if (text.p[i] == '"')
			buf_put_char(b, '"');
		if (text.p[i] != '\0')
			buf_put_char(b, text.p[i]);
	}
	buf_put_z(b, open ? "\" *" : "\"");
}

/* All the words, or any of them; nothing where there is none. */
static void
put_words(struct asking *k)
{
	k->words = 0;
	for (size_t i = 0; i < k->q->words; i++) {
		if (!is_searchable(k, k->q->word[i]))
			continue;
		buf_put_z(&k->match, k->words == 0     ? "("
				     : k->ease == SOME ? " OR "
						       : " AND ");
		put_quoted(&k->match, k->q->word[i]);
		k->words++;
	}
	if (k->words)
		buf_put_char(&k->match, ')');
}

static bool
put_filter(struct asking *k, const char *columns, struct str text, struct err *e)
{
	if (text.n == 0)
		return true;
	if (text.n > NAME_MAX || !is_searchable(k, text))
		return err_set(
		    e, "", "there is nothing to look for in %.*s", (int)text.n, text.p);
	buf_put_z(&k->match, k->match.n ? " AND " : "");
	if (k->ease == STRICT)
		buf_fmt(&k->match, "%s : ", columns);
	put_quoted(&k->match, text);
	k->filters++;
	k->by_dish = k->by_dish || k->ease == STRICT;
	return true;
}

/* Each word of its own: "beans chili" is "chili with beans" too. */
static bool
put_dish_words(struct asking *k, struct err *e)
{
	struct str rest = k->q->dish;
	bool ok = true;

	while (rest.p && ok)
		ok = put_filter(k, "{name parts}", str_trim(str_next(&rest, ' ')), e);
	return ok;
}

static bool
put_match(struct asking *k, struct err *e)
{
	const struct question *q = k->q;

	if (q->words > WORDS_MAX)
		return err_set(e, "", "%zu words; at most %d", q->words, WORDS_MAX);
	put_words(k);
	for (size_t i = 0; i < q->withs; i++)
		if (!put_filter(k, "food", q->with[i].name, e))
			return false;
	if (!put_dish_words(k, e) || !put_filter(k, "gear", q->equipment, e) ||
	    !put_filter(k, "acts", q->action, e))
		return false;
	if (k->words == 0)
		k->words = k->filters;
	return true;
}

/* ---- other conditions --------------------------------------------------- */

static void
bind_number(struct asking *k, double v)
{
	vec_push(k->arena, &k->value, (struct value){.number = v});
}

static void
bind_text(struct asking *k, struct str v)
{
	vec_push(k->arena, &k->value, (struct value){.is_text = true, .text = v});
}

static bool
without(struct asking *k, struct err *e)
{
	for (size_t i = 0; i < k->q->withouts; i++) {
		struct str name = k->q->without[i];
		struct buf b = buf_in(k->arena);

		if (name.n > NAME_MAX || !is_searchable(k, name))
			return err_set(e, "", "there is nothing to look for in %.*s",
			    (int)name.n, name.p);
		buf_put_z(&b, "food : ");
		put_quoted(&b, name);
		buf_put_z(&k->where, " AND d.id NOT IN (SELECT rowid FROM entry_text WHERE "
				     "entry_text MATCH ?)");
		bind_text(k, buf_str(&b));
		k->by_dish = true;
	}
	return true;
}

/* Cups and spoons are rounded. */
static void
amount(struct asking *k, const struct with *w)
{
	static const double slack = 0.01;

	buf_put_z(&k->where,
	    " AND EXISTS (SELECT 1 FROM ingredient i JOIN food f ON f.id = i.food "
	    "WHERE i.dish = d.id AND ");
	if (w->figure.dimension == DIM_VOLUME)
		buf_put_z(&k->where, "i.ml_max >= ? AND i.ml_min <= ?");
	else if (w->figure.dimension == DIM_MASS)
		buf_put_z(&k->where, "i.gram_max >= ? AND i.gram_min <= ?");
	else
		buf_put_z(&k->where, "i.unit IS NULL AND i.max >= ? AND i.min <= ?");
	bind_number(k, w->figure.min * (1 - slack));
	bind_number(k, w->figure.max * (1 + slack));
	buf_put_z(&k->where,
	    " AND says(f.item || ' ' || f.key || ' ' || f.kind || ' ' || f.grp, ?))");
	bind_text(k, w->name);
	k->by_dish = true;
}

struct near
near_of(const struct figure *f)
{
	bool single = f->min == f->max;

	return (struct near){single ? 1 : 0.6, single ? 5 : 0.6};
}

static void
temperature(struct asking *k)
{
	const struct figure *f = &k->q->temperature;
	struct near near = near_of(f);

	if (!k->q->heated)
		return;
	buf_put_z(&k->where,
	    " AND EXISTS (SELECT 1 FROM measure m WHERE m.dish = d.id AND m.kind = 2 AND "
	    "m.base_max >= ? - iif(m.role = 4, ?, ?) AND m.base_min <= ? + iif(m.role = 4, "
	    "?, ?)");
	bind_number(k, f->min);
	bind_number(k, near.inside);
	bind_number(k, near.setting);
	bind_number(k, f->max);
	bind_number(k, near.inside);
	bind_number(k, near.setting);
	if (k->q->role == ROLE_NONE) {
		buf_put_z(&k->where, " AND m.role <> 5)");
	} else {
		buf_put_z(&k->where, " AND m.role = ?)");
		bind_number(k, k->q->role);
	}
	k->by_dish = true;
}

static bool
free_of(struct asking *k, struct err *e)
{
	struct str name = k->q->free_of, list = {NULL, 0};
	struct row r;

	if (name.n == 0)
		return true;
	r = row_open(k->archive, SQL_ALLERGEN_FIND);
	row_text(&r, name);
	if (row_next(&r, e)) {
		buf_put_z(&k->where,
		    " AND d.allergens & ? = 0 AND "
		    "EXISTS (SELECT 1 FROM ingredient i WHERE i.dish = d.id)");
		bind_number(k, ldexp(1, (int)row_get_int(&r, 0)));
		row_end(&r);
		k->by_dish = true;
		return true;
	}
	r = row_open(k->archive, SQL_ALLERGENS);
	while (row_next(&r, e)) {
		struct str one = row_get_text(&r, 0);

		list = arena_fmt(k->arena, "%.*s%s%.*s", (int)list.n, list.n ? list.p : "",
		    list.n ? ", " : "", (int)one.n, one.p);
	}
	return err_set(e, "", "no allergen %.*s; there are %.*s", (int)name.n, name.p,
	    (int)list.n, list.n ? list.p : "");
}

static void
of_episode(struct asking *k)
{
	const struct question *q = k->q;

	if (q->episode.n) {
		buf_put_z(&k->where, " AND (instr(lower(e.name), lower(?)) OR "
				     "instr(lower(e.title), lower(?)))");
		bind_text(k, q->episode);
		bind_text(k, q->episode);
	}
	if (q->since.n) {
		buf_put_z(&k->where, " AND e.date >= ?");
		bind_text(k, q->since);
	}
	/* "2026-03" is all of March: what begins with it comes after it. */
	if (q->until.n) {
		buf_put_z(&k->where, " AND e.date <= ? || '~'");
		bind_text(k, q->until);
	}
	k->by_episode = q->episode.n || q->since.n || q->until.n;
}

static bool
put_where(struct asking *k, struct err *e)
{
	const struct question *q = k->q;

	for (size_t i = 0; i < q->withs; i++)
		if (q->with[i].ranged)
			amount(k, &q->with[i]);
	temperature(k);
	if (q->timed) {
		buf_put_z(
		    &k->where, " AND coalesce(d.total_s, d.claimed_s) BETWEEN ? AND ?");
		bind_number(k, q->time.min);
		bind_number(k, q->time.max);
		k->by_dish = true;
	}
	if (q->finding.n) {
		buf_put_z(&k->where, " AND EXISTS (SELECT 1 FROM finding f WHERE f.dish = "
				     "d.id AND f.status = 0 "
				     "AND f.code = (SELECT id FROM term WHERE text = ?))");
		bind_text(k, q->finding);
	}
	of_episode(k);
	return free_of(k, e) && without(k, e);
}

/* ---- the statement ------------------------------------------------------ */

/* With words: by how well they fit; without: the newest episode first. */
static struct str
statement(struct asking *k)
{
	struct buf b = buf_in(k->arena);
	bool dish = k->where.n || k->by_dish || k->by_episode;

	if (k->match.n) {
		buf_put_z(&b,
		    "SELECT entry_text.rowid AS id, rank_entry(entry_text, ?) AS score "
		    "FROM entry_text");
		if (dish)
			buf_put_z(&b, " CROSS JOIN dish d ON d.id = entry_text.rowid");
		if (k->by_episode)
			buf_put_z(&b, " CROSS JOIN episode e ON e.id = d.episode");
		buf_put_z(&b, " WHERE entry_text MATCH ?");
	} else {
		buf_put_z(&b,
		    "SELECT d.id AS id, e.date AS score FROM dish d "
		    "CROSS JOIN episode e ON e.id = d.episode WHERE d.ordinal >= 0");
	}
	if (k->match.n && k->by_dish)
		buf_put_z(&b, " AND d.ordinal >= 0");
	buf_put(&b, buf_str(&k->where));
	buf_put_z(&b, " ORDER BY score DESC, id DESC LIMIT ?");
	buf_put_char(&b, '\0');
	return buf_str(&b);
}

static void
bind_all(struct asking *k, struct row *r)
{
	if (k->match.n) {
		row_int(r, (int64_t)k->words);
		row_text(r, buf_str(&k->match));
	}
	for (size_t i = 0; i < k->value.n; i++) {
		const struct value *v = &k->value.v[i];

		if (v->is_text)
			row_text(r, v->text);
		else if (v->number == floor(v->number) && fabs(v->number) < 1e15)
			row_int(r, (int64_t)v->number);
		else
			row_real(r, v->number);
	}
	row_int(r, (int64_t)k->q->limit + 1);
}

struct ids {
	int64_t *v;
	size_t n;
};

static bool
ask(struct asking *k, enum ease ease, struct ids *out, struct err *e)
{
	struct row r;

	k->ease = ease;
	k->match.n = k->where.n = k->value.n = k->filters = 0;
	k->by_dish = k->by_episode = false;
	if (!put_match(k, e) || !put_where(k, e))
		return false;
	if (k->match.n == 0 && k->where.n == 0)
		return err_set(e, "",
		    k->q->words ? "there is no word in what was asked"
				: "nothing was asked: name words or an option");
	r = row_prepare(k->archive, statement(k).p);
	bind_all(k, &r);
	out->n = 0;
	while (out->n <= k->q->limit && row_next(&r, e))
		out->v[out->n++] = row_get_int(&r, 0);
	row_close(&r);
	return !e->set;
}

/* ---- words that are nowhere --------------------------------------------- */

static bool
is_somewhere(struct asking *k, struct str word, struct err *e)
{
	struct buf b = buf_in(k->arena);
	struct row r = row_open(k->archive, SQL_ENTRY_HAS);
	bool found;

	put_quoted(&b, word);
	row_text(&r, buf_str(&b));
	found = row_next(&r, e);
	if (found)
		row_end(&r);
	return found;
}

static void
add_nowhere(struct asking *k, struct answer *out, struct str text, struct err *e)
{
	struct str rest = text;

	while (rest.p && !e->set) {
		struct str word = str_next(&rest, ' ');

		if (is_searchable(k, word) && !is_somewhere(k, word, e)) {
			out->nowhere = arena_grow(k->arena, out->nowhere, out->nowheres,
			    out->nowheres + 1, sizeof *out->nowhere);
			out->nowhere[out->nowheres++] = word;
		}
	}
}

static bool
find_nowhere(struct asking *k, struct answer *out, struct err *e)
{
	const struct question *q = k->q;

	for (size_t i = 0; i < q->words; i++)
		add_nowhere(k, out, q->word[i], e);
	for (size_t i = 0; i < q->withs; i++)
		add_nowhere(k, out, q->with[i].name, e);
	add_nowhere(k, out, q->dish, e);
	add_nowhere(k, out, q->equipment, e);
	add_nowhere(k, out, q->action, e);
	return !e->set;
}

/* As it was asked if that finds anything, else less strictly. */
static bool
ask_until_found(struct asking *k, struct ids *out, struct answer *answer, struct err *e)
{
	if (!ask(k, STRICT, out, e))
		return false;
	if (out->n)
		return true;
	if (!find_nowhere(k, answer, e))
		return false;
	answer->loose = true;
	if (k->filters && !ask(k, ANYWHERE, out, e))
		return false;
	return out->n || k->words < 2 || ask(k, SOME, out, e);
}

static bool
fill_hits(struct asking *k, const struct ids *ids, struct answer *out, struct err *e)
{
	out->more = ids->n > k->q->limit;
	out->hits = out->more ? k->q->limit : ids->n;
	out->hit = arena_array(k->arena, out->hits, struct hit);
	for (size_t i = 0; i < out->hits; i++)
		if (!hit_fill(k->archive, k->arena, k->q, ids->v[i], &out->hit[i], e))
			return false;
	return true;
}

/* In one transaction: what is found is still there when it is read. */
bool
archive_find(struct archive *a, struct arena *arena, const struct question *q,
    struct answer *out, struct err *e)
{
	struct asking k = {.archive = a, .arena = arena, .q = q};
	struct ids ids = {arena_array(arena, q->limit + 1, int64_t), 0};

	*out = (struct answer){0};
	k.match = k.where = buf_in(arena);
	if (store_script(a, "BEGIN", e) && ask_until_found(&k, &ids, out, e))
		fill_hits(&k, &ids, out, e);
	store_undo(a);
	return !e->set;
}

bool
archive_words(struct archive *a, void (*take)(void *context, struct str word),
    void *context, struct err *e)
{
	struct row r = row_open(a, SQL_WORDS);

	while (row_next(&r, e))
		take(context, row_get_text(&r, 0));
	return !e->set;
}
