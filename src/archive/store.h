/* SPDX-License-Identifier: ISC */
/*
 * The database behind the archive: statements prepared once, parameters bound
 * in order, and errors in words. For src/archive/ only, the one place that
 * knows SQLite.
 */
#ifndef TAMIS_STORE_H
#define TAMIS_STORE_H

#include <sqlite3.h>
#include <stdio.h>

#include "archive/archive.h"

enum statement {
#define STATEMENT(name, sql) SQL_##name,
#include "archive/statements.def"
#undef STATEMENT
	STATEMENTS
};

enum { ALLERGENS_MAX = 48, SEEN_SLOTS = 1 << 16 };

/* A set of hashes; 0 is a free slot. Emptied when it is half full. */
struct seen {
	uint64_t *slot; /* SEEN_SLOTS; NULL until it is used */
	size_t n;
	int64_t data_version; /* of the file when it was filled */
};

struct archive {
	struct arena arena;
	const char *path;
	sqlite3 *db;
	sqlite3_stmt *prepared[STATEMENTS];
	fts5_tokenizer tokenizer;
	Fts5Tokenizer *stemmer; /* of the search index */
	struct seen seen;       /* hashes of words that `word` surely has */
	bool facts_ready;       /* unit and allergen hold the grammar's tables */
	struct code {
		int64_t bit;
		struct str code;
	} allergen[ALLERGENS_MAX];
	size_t allergens;
};

/* Sets *e to what SQLite says went wrong last; returns false. */
bool store_fail(struct archive *a, struct err *e);

/* ---- a statement in use ------------------------------------------------- */

/* A statement whose parameters and columns are taken one after the other. */
struct row {
	struct archive *archive;
	sqlite3_stmt *s; /* NULL: could not be prepared */
	int at;          /* the parameter bound last */
	int result;      /* the first that was not SQLITE_OK */
};

struct row row_open(struct archive *a, enum statement statement);
/* A statement made for the occasion; row_close() ends it. */
struct row row_prepare(struct archive *a, const char *sql);
void row_close(struct row *r);

void row_int(struct row *r, int64_t v);
void row_int_or_null(struct row *r, int64_t v, bool known);
void row_real(struct row *r, double v);
void row_real_or_null(struct row *r, double v, bool known);
/* Of a time in ms: NULL for a negative one. */
void row_time(struct row *r, int64_t ms);
/* s has to stay until the row was run. */
void row_text(struct row *r, struct str s);
void row_text_or_null(struct row *r, struct str s);
void row_blob(struct row *r, struct str s);

/* Leaves the rows that were not asked for. */
void row_end(struct row *r);
/* Runs a statement that gives no rows. */
bool row_run(struct row *r, struct err *e);
/* On to the next row; false at the end, or with *e set on failure. */
bool row_next(struct row *r, struct err *e);
int64_t row_get_int(const struct row *r, int column);
/* `otherwise` for NULL. */
int64_t row_get_int_or(const struct row *r, int column, int64_t otherwise);
double row_get_real(const struct row *r, int column);
bool row_is_null(const struct row *r, int column);
/* Borrowed until the next row_next(); empty for NULL. */
struct str row_get_text(const struct row *r, int column);
/* A copy in the arena. */
struct str row_copy(const struct row *r, int column, struct arena *arena);

/* ---- whole ones --------------------------------------------------------- */

/* Fixed SQL without parameters or results. */
bool store_script(struct archive *a, const char *sql, struct err *e);
bool store_number(struct archive *a, const char *sql, int64_t *out, struct err *e);
bool store_begin(struct archive *a, struct err *e);
bool store_commit(struct archive *a, struct err *e);
/* Ends the transaction, if there is one, as if it had not been. */
void store_undo(struct archive *a);

/* schema.c: makes or updates the tables. */
bool schema_ready(struct archive *a, bool may_write, struct err *e);
/* tokens.c: the functions that queries use, and the stemmer. */
bool rank_register(struct archive *a, struct err *e);
void rank_release(struct archive *a);

#endif
