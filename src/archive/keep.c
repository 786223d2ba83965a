/* SPDX-License-Identifier: ISC */
/*
 * Putting an episode in and taking one out, each as one transaction.
 */
#include "archive/keep.h"

#include "archive/pack.h"
#include "archive/parcel.h"
#include "archive/passage.h"

/* ---- the tables of the grammar ------------------------------------------ */

static bool
keep_units(struct archive *a, const struct grammar *g, struct err *e)
{
	const struct unit *u;
	struct str region;

	for (size_t i = 0; (u = tamis_unit(g, i, &region)); i++) {
		struct row r = row_open(a, SQL_UNIT_ADD);

		row_text(&r, u->name);
		row_text(&r, region);
		row_text(&r, u->plural);
		row_text(&r, u->brief);
		row_int(&r, u->dimension);
		row_real_or_null(
		    &r, u->has_base ? ratio_double(u->factor) : 0, u->has_base);
		row_real(&r, ratio_double(u->offset));
		if (!row_run(&r, e))
			return false;
	}
	return true;
}

static bool
keep_allergens(struct archive *a, const struct grammar *g, struct err *e)
{
	struct allergen one;
	struct row r;

	for (size_t i = 0; tamis_allergen(g, i, &one); i++) {
		r = row_open(a, SQL_ALLERGEN_ADD);
		row_text(&r, one.code);
		row_text(&r, one.name);
		if (!row_run(&r, e))
			return false;
	}
	a->allergens = 0;
	r = row_open(a, SQL_ALLERGEN_CODES);
	while (row_next(&r, e))
		if (a->allergens < ALLERGENS_MAX)
			a->allergen[a->allergens++] =
			    (struct code){row_get_int(&r, 0), row_copy(&r, 1, &a->arena)};
	return !e->set;
}

static bool
keep_facts(struct archive *a, const struct grammar *g, struct err *e)
{
	if (a->facts_ready)
		return true;
	a->facts_ready = keep_units(a, g, e) && keep_allergens(a, g, e);
	return a->facts_ready;
}

/* ---- words -------------------------------------------------------------- */

/* True when the word has been seen; else it is now. */
static bool
see(struct archive *a, struct str word)
{
	uint64_t hash = str_hash(word) | 1;
	size_t at = hash % SEEN_SLOTS;

	for (; a->seen.slot[at]; at = (at + 1) % SEEN_SLOTS)
		if (a->seen.slot[at] == hash)
			return true;
	a->seen.slot[at] = hash;
	a->seen.n++;
	return false;
}

static void
forget_seen(struct archive *a)
{
	if (a->seen.slot)
		memset(a->seen.slot, 0, SEEN_SLOTS * sizeof *a->seen.slot);
	a->seen.n = 0;
}

/* Another program may have taken words out since. */
static bool
trust_seen(struct archive *a, struct err *e)
{
	int64_t version;

	if (!a->seen.slot)
		a->seen.slot = arena_array(&a->arena, SEEN_SLOTS, uint64_t);
	if (!store_number(a, "PRAGMA data_version", &version, e))
		return false;
	if (version != a->seen.data_version || a->seen.n > SEEN_SLOTS / 2)
		forget_seen(a);
	a->seen.data_version = version;
	return true;
}

static bool
keep_words(struct archive *a, const struct parcel *p, struct err *e)
{
	if (!trust_seen(a, e))
		return false;
	for (size_t i = 0; i < p->words; i++) {
		struct row r;

		if (see(a, p->word[i]))
			continue;
		r = row_open(a, SQL_WORD_ADD);
		row_text(&r, p->word[i]);
		if (!row_run(&r, e))
			return false;
	}
	return true;
}

/* Those of an episode that is gone, unless another entry has them still. */
static bool
drop_words(struct archive *a, struct arena *scratch, struct str passages,
    const struct word_list *stay, struct err *e)
{
	struct word_list gone = words_of_passages(scratch, passages);

	forget_seen(a);
	for (size_t i = 0; i < gone.n; i++) {
		struct row r = row_open(a, SQL_ENTRY_HAS);
		struct str quoted =
		    arena_fmt(scratch, "\"%.*s\"", (int)gone.v[i].n, gone.v[i].p);

		if (word_list_has(stay, gone.v[i]))
			continue;
		row_text(&r, quoted);
		if (row_next(&r, e)) {
			row_end(&r);
			continue;
		}
		if (e->set)
			break;
		r = row_open(a, SQL_WORD_REMOVE);
		row_text(&r, gone.v[i]);
		row_run(&r, e);
	}
	return !e->set;
}

/* ---- entries of the search index ---------------------------------------- */

static bool
index_entry(struct archive *a, enum statement how, int64_t id, int ordinal,
    struct str passages, struct err *e)
{
	struct str column[PASSAGE_COLUMNS];
	struct arena scratch;
	struct row r;
	size_t n = 0;

	arena_init(&scratch);
	passage_columns(&scratch, passages, ordinal, column);
	r = row_open(a, how);
	row_int(&r, id);
	for (size_t i = 0; i < PASSAGE_COLUMNS; i++) {
		row_text(&r, column[i]);
		n += column[i].n;
	}
	if (n)
		row_run(&r, e);
	arena_release(&scratch);
	return !e->set;
}

/* ---- taking out --------------------------------------------------------- */

static bool
remove_entries(struct archive *a, int64_t episode, struct str passages, struct err *e)
{
	struct row dishes = row_open(a, SQL_DISHES_OF);

	row_int(&dishes, episode);
	while (row_next(&dishes, e))
		if (!index_entry(a, SQL_ENTRY_REMOVE, row_get_int(&dishes, 0),
			(int)row_get_int(&dishes, 1), passages, e))
			return false;
	return !e->set;
}

/* The passages of the episode stay in scratch. */
static bool
remove_episode(struct archive *a, struct arena *scratch, struct str name,
    struct str *passages, struct err *e)
{
	struct packed packed;
	int64_t id;
	struct row r;

	if (!keep_unpack(a, scratch, name, &id, &packed, e) ||
	    !remove_entries(a, id, packed.passages, e))
		return false;
	*passages = packed.passages;
	r = row_open(a, SQL_EPISODE_REMOVE);
	row_int(&r, id);
	return row_run(&r, e);
}

bool
keep_unpack(struct archive *a, struct arena *arena, struct str name, int64_t *id,
    struct packed *out, struct err *e)
{
	struct row r = row_open(a, SQL_EPISODE_PACK);
	bool ok;

	row_text(&r, name);
	if (!row_next(&r, e))
		return err_set(e, a->path, "has no episode %.*s", (int)name.n, name.p);
	*id = row_get_int(&r, 0);
	out->region = row_copy(&r, 1, arena);
	out->profile = row_copy(&r, 2, arena);
	out->answers = row_copy(&r, 3, arena);
	out->source.n = (size_t)row_get_int(&r, 4);
	out->passages.n = (size_t)row_get_int(&r, 5);
	out->json.n = (size_t)row_get_int(&r, 6);
	ok = pack_inflate(arena, row_get_text(&r, 7), out);
	row_end(&r);
	return ok || err_set(e, a->path, "is damaged: the text of %.*s can't be read",
			 (int)name.n, name.p);
}

bool
archive_forget(struct archive *a, struct str name, bool *found, struct err *e)
{
	const struct word_list none = {NULL, 0};
	struct arena scratch;
	struct str passages;
	struct row r;

	if (!store_begin(a, e))
		return false;
	arena_init(&scratch);
	r = row_open(a, SQL_EPISODE_FIND);
	row_text(&r, name);
	*found = row_next(&r, e);
	if (!e->set && *found && remove_episode(a, &scratch, name, &passages, e))
		drop_words(a, &scratch, passages, &none, e);
	arena_release(&scratch);
	if (!e->set && store_commit(a, e))
		return true;
	store_undo(a);
	return false;
}

/* ---- putting in --------------------------------------------------------- */

static bool
keep_episode(struct keeper *k, struct err *e)
{
	const struct parcel *p = k->parcel;
	const struct script *s = p->draft->script;
	struct row r = row_open(k->archive, SQL_EPISODE_ADD);

	row_int_or_null(&r, k->episode, k->episode > 0);
	row_text(&r, p->name);
	row_int(&r, (int64_t)p->hash);
	row_text(&r, p->region);
	row_text(&r, p->profile);
	row_text_or_null(&r, s->title);
	row_text(&r, str_of(s->format));
	row_text(&r, str_of(p->draft->language));
	row_text_or_null(&r, str_of(p->draft->region));
	row_time(&r, s->length_ms);
	row_text_or_null(&r, p->date.n ? p->date : k->before.date);
	row_text_or_null(&r, p->video_url.n ? p->video_url : k->before.video_url);
	row_text_or_null(&r, p->answers);
	if (!row_run(&r, e))
		return false;
	k->episode = sqlite3_last_insert_rowid(k->archive->db);
	return true;
}

static bool
keep_pack(struct keeper *k, struct err *e)
{
	const struct parcel *p = k->parcel;
	struct row r = row_open(k->archive, SQL_PACK_ADD);

	row_int(&r, k->episode);
	row_int(&r, (int64_t)p->draft->script->source.n);
	row_int(&r, (int64_t)p->passages.n);
	row_int(&r, (int64_t)p->json.n);
	row_blob(&r, p->pack);
	return row_run(&r, e);
}

static bool
keep_entries(struct keeper *k, struct err *e)
{
	const struct draft *d = k->parcel->draft;

	for (int i = -1; i < (int)d->dishes; i++)
		if (!keep_dish(k, i, e) || !index_entry(k->archive, SQL_ENTRY_ADD,
					       k->dish[i + 1], i, k->parcel->passages, e))
			return false;
	return true;
}

/* What there is of an episode of that name; its id, date and URL go
 * over to the new one. */
static bool
find_before(struct keeper *k, bool *found, struct err *e)
{
	struct row r = row_open(k->archive, SQL_EPISODE_FIND);

	row_text(&r, k->parcel->name);
	*found = row_next(&r, e);
	if (*found) {
		k->episode = row_get_int(&r, 0);
		k->before.date = row_copy(&r, 1, k->scratch);
		k->before.video_url = row_copy(&r, 2, k->scratch);
		row_end(&r);
	}
	return !e->set;
}

static bool
keep_all(struct keeper *k, enum kept *out, struct err *e)
{
	struct archive *a = k->archive;
	const struct parcel *p = k->parcel;
	const struct word_list stay = {p->word, p->words};
	struct str passages;
	bool before;

	if (!keep_facts(a, k->grammar, e) || !find_before(k, &before, e))
		return false;
	*out = before ? KEPT_AGAIN : KEPT_NEW;
	if (before && !remove_episode(a, k->scratch, p->name, &passages, e))
		return false;
	k->dish = arena_array(k->scratch, p->draft->dishes + 1, int64_t);
	k->spots = spots_of_draft(k->scratch, p->draft);
	if (!keep_episode(k, e) || !keep_pack(k, e) || !keep_entries(k, e) ||
	    !keep_flat(k, e))
		return false;
	if (before && !drop_words(a, k->scratch, passages, &stay, e))
		return false;
	return keep_words(a, p, e);
}

bool
archive_keep(struct archive *a, const struct grammar *g, const struct parcel *p,
    enum kept *out, struct err *e)
{
	struct arena scratch;
	struct keeper k = {.archive = a, .grammar = g, .parcel = p, .scratch = &scratch};

	if (!store_begin(a, e))
		return false;
	arena_init(&scratch);
	if (keep_all(&k, out, e))
		store_commit(a, e);
	arena_release(&scratch);
	if (!e->set)
		return true;
	store_undo(a);
	forget_seen(a);
	a->facts_ready = false;
	return false;
}

bool
archive_redate(struct archive *a, const struct parcel *p, struct err *e)
{
	struct row r = row_open(a, SQL_EPISODE_REDATE);

	row_text_or_null(&r, p->date);
	row_text_or_null(&r, p->video_url);
	row_text(&r, p->name);
	return row_run(&r, e);
}
