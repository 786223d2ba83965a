/* SPDX-License-Identifier: ISC */
/*
 * Text as the search index sees it: cut with its own tokenizer, so that a word
 * found there is found here too. And what the searching statements call:
 * rank_entry(entry_text, WORDS), how well an entry fits the first WORDS phrases
 * of the question, and says(TEXT, PHRASE), whether the words of the phrase stand
 * in the text one after the other.
 */
#include "archive/tokens.h"

#include <math.h>

/* ---- words -------------------------------------------------------------- */

static int
add_token(void *context, int flags, const char *stem, int n, int beg, int end)
{
	struct tokens *t = context;
	struct token one;

	(void)flags;
	one.stem = arena_str(t->arena, (struct str){stem, (size_t)n});
	one.at = (struct span){(uint32_t)beg, (uint32_t)end};
	vec_push(t->arena, &t->token, one);
	return SQLITE_OK;
}

void
tokens_cut(struct archive *a, struct str text, struct tokens *out)
{
	if (text.n && text.n <= INT32_MAX)
		a->tokenizer.xTokenize(a->stemmer, out, FTS5_TOKENIZE_DOCUMENT, text.p,
		    (int)text.n, add_token);
}

struct phrase
phrase_cut(struct archive *a, struct arena *arena, struct str text)
{
	struct phrase p = {.tokens.arena = arena};

	p.open = str_ends(text, STR("*"));
	tokens_cut(a, text, &p.tokens);
	return p;
}

size_t
phrase_at(const struct phrase *p, const struct tokens *text, size_t i)
{
	size_t n = p->tokens.token.n;

	if (n == 0 || i + n > text->token.n)
		return 0;
	for (size_t k = 0; k < n; k++) {
		struct str want = p->tokens.token.v[k].stem,
			   have = text->token.v[i + k].stem;
		bool goes_on = p->open && k + 1 == n;

		if (goes_on ? !str_starts(have, want) : !str_is(have, want))
			return 0;
	}
	return n;
}

/* ---- rank_entry --------------------------------------------------------- */

enum { WORDS_MAX = 64, COLUMNS = 8, COLUMN_NAME = 0 };

/* How much a word counts by the column of entry_text: name, parts, food, gear,
 * acts, steps, said, title. A dish that is called so comes before one that has
 * it in it, and that one before one whose cook mentions it. */
static const double weights[COLUMNS] = {10, 7, 5, 3, 2, 2, 1, 1.5};

enum {
	COMMON_SHARE = 4 /* words in more entries than one of these are alike */
};

/* How little each phrase is to be expected, for one search. */
struct rarity {
	double of[WORDS_MAX];
};

struct count {
	sqlite3_int64 n, enough;
};

static int
count_entry(const Fts5ExtensionApi *api, Fts5Context *fts, void *context)
{
	struct count *c = context;

	(void)api;
	(void)fts;
	return ++c->n >= c->enough ? SQLITE_DONE : SQLITE_OK;
}

static int
phrases_of(const Fts5ExtensionApi *api, Fts5Context *fts, int wanted)
{
	int n = api->xPhraseCount(fts);

	n = n < wanted ? n : wanted;
	return n < WORDS_MAX ? n : WORDS_MAX;
}

/* Counted once for a search; NULL when memory is gone. */
static const struct rarity *
rarity_of(const Fts5ExtensionApi *api, Fts5Context *fts, int phrases)
{
	struct rarity *r = api->xGetAuxdata(fts, 0);
	sqlite3_int64 all = 0;

	if (r)
		return r;
	r = sqlite3_malloc64(sizeof *r);
	if (!r)
		return NULL;
	api->xRowCount(fts, &all);
	for (int i = 0; i < phrases; i++) {
		struct count c = {0, all / COMMON_SHARE + 1};

		api->xQueryPhrase(fts, i, &c, count_entry);
		r->of[i] = log(1 + (double)all / (double)(c.n + 1));
	}
	return api->xSetAuxdata(fts, r, sqlite3_free) == SQLITE_OK ? r : NULL;
}

/* Where a phrase stands in the entry. */
struct stand {
	double best; /* the weight of the best column */
	int times;   /* in all columns */
	int in_name; /* times in the dish's name */
};

static struct stand
stand_of(const Fts5ExtensionApi *api, Fts5Context *fts, int phrase)
{
	struct stand s = {0, 0, 0};
	Fts5PhraseIter at;
	int column, offset;

	if (api->xPhraseFirst(fts, phrase, &at, &column, &offset) != SQLITE_OK)
		return s;
	while (column >= 0) {
		if (column < COLUMNS && weights[column] > s.best)
			s.best = weights[column];
		s.in_name += column == COLUMN_NAME;
		s.times++;
		api->xPhraseNext(fts, &at, &column, &offset);
	}
	return s;
}

/* The best column where the phrase is followed at once by the next. */
static double
side_by_side(const Fts5ExtensionApi *api, Fts5Context *fts, int phrase)
{
	Fts5PhraseIter at, next;
	int column, offset, next_column, next_offset, size;
	double best = 0;

	size = api->xPhraseSize(fts, phrase);
	if (api->xPhraseFirst(fts, phrase, &at, &column, &offset) != SQLITE_OK ||
	    api->xPhraseFirst(fts, phrase + 1, &next, &next_column, &next_offset) !=
		SQLITE_OK)
		return 0;
	while (column >= 0 && next_column >= 0) {
		int want = offset + size;

		if (next_column == column && next_offset == want && column < COLUMNS &&
		    weights[column] > best)
			best = weights[column];
		if (next_column < column || (next_column == column && next_offset < want))
			api->xPhraseNext(fts, &next, &next_column, &next_offset);
		else
			api->xPhraseNext(fts, &at, &column, &offset);
	}
	return best;
}

/* "tacos" is more of "shrimp tacos" than of "tacos with beans and pico". */
static double
share_of_name(const Fts5ExtensionApi *api, Fts5Context *fts, int hits)
{
	int words = 0;

	if (hits == 0 || api->xColumnSize(fts, COLUMN_NAME, &words) != SQLITE_OK ||
	    words <= 0)
		return 0;
	return hits < words ? (double)hits / words : 1;
}

static void
rank_entry(const Fts5ExtensionApi *api, Fts5Context *fts, sqlite3_context *result, int n,
    sqlite3_value **argument)
{
	int phrases = phrases_of(api, fts, n > 0 ? sqlite3_value_int(argument[0]) : 0);
	const struct rarity *r = rarity_of(api, fts, phrases);
	double score = 0;
	int in_name = 0;

	if (!r) {
		sqlite3_result_error_nomem(result);
		return;
	}
	for (int i = 0; i < phrases; i++) {
		struct stand s = stand_of(api, fts, i);

		if (s.times == 0)
			continue;
		score += r->of[i] * (s.best + log(s.times));
		in_name += s.in_name > 0;
		if (i + 1 < phrases)
			score += r->of[i] * side_by_side(api, fts, i) / 2;
	}
	score *= 1 + share_of_name(api, fts, in_name) / 2;
	sqlite3_result_double(result, score);
}

/* ---- says --------------------------------------------------------------- */

static struct str
text_of(sqlite3_value *v)
{
	const void *p = sqlite3_value_text(v);

	return (struct str){p, p ? (size_t)sqlite3_value_bytes(v) : 0};
}

static void
says(sqlite3_context *result, int n, sqlite3_value **argument)
{
	struct archive *a = sqlite3_user_data(result);
	struct arena arena;
	struct tokens text;
	struct phrase p;
	bool found = false;

	(void)n;
	arena_init(&arena);
	text = (struct tokens){.arena = &arena};
	tokens_cut(a, text_of(argument[0]), &text);
	p = phrase_cut(a, &arena, text_of(argument[1]));
	for (size_t i = 0; i < text.token.n && !found; i++)
		found = phrase_at(&p, &text, i) > 0;
	arena_release(&arena);
	sqlite3_result_int(result, found);
}

/* ---- registering -------------------------------------------------------- */

static fts5_api *
api_of(sqlite3 *db)
{
	fts5_api *api = NULL;
	sqlite3_stmt *s = NULL;

	if (sqlite3_prepare_v2(db, "SELECT fts5(?1)", -1, &s, NULL) == SQLITE_OK &&
	    sqlite3_bind_pointer(s, 1, &api, "fts5_api_ptr", NULL) == SQLITE_OK)
		sqlite3_step(s);
	sqlite3_finalize(s);
	return api;
}

bool
rank_register(struct archive *a, struct err *e)
{
	const char *how[] = {"unicode61", "remove_diacritics", "2"};
	fts5_api *api = api_of(a->db);
	void *context;

	if (!api)
		return err_set(e, a->path, "the SQLite of this machine has no FTS5");
	if (api->xFindTokenizer(api, "porter", &context, &a->tokenizer) != SQLITE_OK ||
	    a->tokenizer.xCreate(context, how, 3, &a->stemmer) != SQLITE_OK ||
	    api->xCreateFunction(api, "rank_entry", NULL, rank_entry, NULL) != SQLITE_OK ||
	    sqlite3_create_function_v2(a->db, "says", 2, SQLITE_UTF8 | SQLITE_DETERMINISTIC,
		a, says, NULL, NULL, NULL) != SQLITE_OK)
		return store_fail(a, e);
	return true;
}

void
rank_release(struct archive *a)
{
	if (a->stemmer)
		a->tokenizer.xDelete(a->stemmer);
}
