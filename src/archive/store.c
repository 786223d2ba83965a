/* SPDX-License-Identifier: ISC */
/*
 * SQLite, wrapped: opening, statements, parameters, and what its errors mean to
 * the person at the keyboard.
 */
#include "archive/store.h"

#include <errno.h>
#include <sys/stat.h>
#include <time.h>
#include <unistd.h>

enum {
	WAIT_STEP_MS = 2,
	WAIT_MAX_MS = 60 * 1000,
	APART_MS = 7,
};

static const char *const sql_text[] = {
#define STATEMENT(name, sql) sql,
#include "archive/statements.def"
#undef STATEMENT
};

bool
store_fail(struct archive *a, struct err *e)
{
	switch (sqlite3_errcode(a->db)) {
	case SQLITE_FULL:
		return err_set(
		    e, a->path, "the disk is full; what was kept before is safe");
	case SQLITE_READONLY:
	case SQLITE_PERM:
		return err_set(
		    e, a->path, "can't be written: the file or its folder is read-only");
	case SQLITE_CANTOPEN:
		return err_set(e, a->path, "can't be opened: %s",
		    errno ? strerror(errno) : "no such file, or no right to it");
	case SQLITE_BUSY:
		return err_set(e, a->path,
		    "another program has held it for %d s; try again", WAIT_MAX_MS / 1000);
	case SQLITE_IOERR:
		return err_set(e, a->path,
		    "can't be read or written (%s); what was kept before is safe",
		    errno ? strerror(errno) : sqlite3_errmsg(a->db));
	case SQLITE_NOTADB:
		return err_set(e, a->path, "is no archive of tamis");
	case SQLITE_CORRUPT:
		return err_set(e, a->path, "is damaged: %s; see tamis archive check",
		    sqlite3_errmsg(a->db));
	default:
		return err_set(e, a->path, "%s", sqlite3_errmsg(a->db));
	}
}

/* ---- statements --------------------------------------------------------- */

struct row
row_open(struct archive *a, enum statement statement)
{
	struct row r = {.archive = a};
	sqlite3_stmt **s = &a->prepared[statement];

	if (!*s)
		r.result = sqlite3_prepare_v3(
		    a->db, sql_text[statement], -1, SQLITE_PREPARE_PERSISTENT, s, NULL);
	else
		sqlite3_reset(*s);
	r.s = *s;
	return r;
}

struct row
row_prepare(struct archive *a, const char *sql)
{
	struct row r = {.archive = a};

	r.result = sqlite3_prepare_v2(a->db, sql, -1, &r.s, NULL);
	return r;
}

void
row_close(struct row *r)
{
	sqlite3_finalize(r->s);
	r->s = NULL;
}

static void
bound(struct row *r, int result)
{
	if (r->result == SQLITE_OK)
		r->result = result;
}

void
row_int(struct row *r, int64_t v)
{
	bound(r, sqlite3_bind_int64(r->s, ++r->at, v));
}

void
row_int_or_null(struct row *r, int64_t v, bool known)
{
	bound(r, known ? sqlite3_bind_int64(r->s, ++r->at, v)
		       : sqlite3_bind_null(r->s, ++r->at));
}

void
row_real(struct row *r, double v)
{
	bound(r, sqlite3_bind_double(r->s, ++r->at, v));
}

void
row_real_or_null(struct row *r, double v, bool known)
{
	bound(r, known ? sqlite3_bind_double(r->s, ++r->at, v)
		       : sqlite3_bind_null(r->s, ++r->at));
}

void
row_time(struct row *r, int64_t ms)
{
	row_int_or_null(r, ms, ms >= 0);
}

void
row_text(struct row *r, struct str s)
{
	bound(r, sqlite3_bind_text64(
		     r->s, ++r->at, s.n ? s.p : "", s.n, SQLITE_STATIC, SQLITE_UTF8));
}

void
row_text_or_null(struct row *r, struct str s)
{
	if (s.n)
		row_text(r, s);
	else
		bound(r, sqlite3_bind_null(r->s, ++r->at));
}

void
row_blob(struct row *r, struct str s)
{
	bound(r, sqlite3_bind_blob64(r->s, ++r->at, s.n ? s.p : "", s.n, SQLITE_STATIC));
}

bool
row_next(struct row *r, struct err *e)
{
	int result;

	if (r->result != SQLITE_OK || !r->s)
		return store_fail(r->archive, e);
	errno = 0;
	result = sqlite3_step(r->s);
	if (result == SQLITE_ROW)
		return true;
	if (result != SQLITE_DONE)
		store_fail(r->archive, e);
	sqlite3_reset(r->s);
	return false;
}

void
row_end(struct row *r)
{
	sqlite3_reset(r->s);
}

bool
row_run(struct row *r, struct err *e)
{
	while (row_next(r, e))
		continue;
	return !e->set;
}

int64_t
row_get_int(const struct row *r, int column)
{
	return sqlite3_column_int64(r->s, column);
}

int64_t
row_get_int_or(const struct row *r, int column, int64_t otherwise)
{
	return row_is_null(r, column) ? otherwise : row_get_int(r, column);
}

double
row_get_real(const struct row *r, int column)
{
	return sqlite3_column_double(r->s, column);
}

bool
row_is_null(const struct row *r, int column)
{
	return sqlite3_column_type(r->s, column) == SQLITE_NULL;
}

/* Of a text or a blob alike. */
struct str
row_get_text(const struct row *r, int column)
{
	const void *p = sqlite3_column_blob(r->s, column);

	return (struct str){p, p ? (size_t)sqlite3_column_bytes(r->s, column) : 0};
}

struct str
row_copy(const struct row *r, int column, struct arena *arena)
{
	return arena_str(arena, row_get_text(r, column));
}

bool
store_script(struct archive *a, const char *sql, struct err *e)
{
	errno = 0;
	return sqlite3_exec(a->db, sql, NULL, NULL, NULL) == SQLITE_OK || store_fail(a, e);
}

bool
store_number(struct archive *a, const char *sql, int64_t *out, struct err *e)
{
	struct row r = row_prepare(a, sql);
	bool ok = row_next(&r, e);

	*out = ok ? row_get_int(&r, 0) : 0;
	row_close(&r);
	return ok;
}

bool
store_begin(struct archive *a, struct err *e)
{
	struct row r = row_open(a, SQL_BEGIN);

	return row_run(&r, e);
}

bool
store_commit(struct archive *a, struct err *e)
{
	struct row r = row_open(a, SQL_COMMIT);

	return row_run(&r, e);
}

void
store_undo(struct archive *a)
{
	struct err ignored = {0};

	for (size_t i = 0; i < STATEMENTS; i++)
		if (a->prepared[i])
			sqlite3_reset(a->prepared[i]);
	if (!sqlite3_get_autocommit(a->db))
		store_script(a, "ROLLBACK", &ignored);
}

/* ---- opening ------------------------------------------------------------ */

/* Another program writes: looks again after a while that differs from one to
 * the next, so that two writers take turns. */
static int
wait_for_others(void *unused, int tries)
{
	int ms = WAIT_STEP_MS + tries % APART_MS;
	struct timespec pause = {0, ms * 1000000L};

	(void)unused;
	if (tries * (WAIT_STEP_MS + APART_MS / 2) > WAIT_MAX_MS)
		return 0;
	nanosleep(&pause, NULL);
	return 1;
}

static bool
make_folders(const char *path, struct err *e)
{
	char folder[1024];

	for (size_t i = 1; path[i]; i++) {
		if (path[i] != '/')
			continue;
		if (i >= sizeof folder)
			return err_set(e, path, "the path is too long");
		memcpy(folder, path, i);
		folder[i] = '\0';
		if (mkdir(folder, 0777) != 0 && errno != EEXIST &&
		    access(folder, F_OK) != 0)
			return err_set(e, folder, "can't be made: %s", strerror(errno));
	}
	return true;
}

static struct str
folder_of(struct arena *arena, const char *path)
{
	const char *slash = strrchr(path, '/');

	if (!slash)
		return STR(".");
	return arena_str(
	    arena, (struct str){path, slash == path ? 1 : (size_t)(slash - path)});
}

/* SQLite writes beside the file too. */
static bool
is_writable(struct archive *a, struct err *e)
{
	const char *folder = folder_of(&a->arena, a->path).p;

	if (access(folder, W_OK) == 0 &&
	    (access(a->path, F_OK) != 0 || access(a->path, W_OK) == 0))
		return true;
	return err_set(e, a->path,
	    "can't be written: the file or its folder is read-only (%s)", strerror(errno));
}

/* A file in a folder that nothing can be written in, and that nobody writes. */
static bool
is_frozen(struct archive *a)
{
	struct str wal = arena_fmt(&a->arena, "%s-wal", a->path);
	struct stat st;

	return access(folder_of(&a->arena, a->path).p, W_OK) != 0 &&
	       (stat(wal.p, &st) != 0 || st.st_size == 0);
}

/* "file:" and the path, with what a URI gives another meaning put in hex. */
static struct str
frozen_uri(struct arena *arena, const char *path)
{
	struct buf b = buf_in(arena);

	buf_put_z(&b, "file:");
	for (; *path; path++)
		if (strchr("?#%", *path))
			buf_fmt(&b, "%%%02X", (unsigned)(unsigned char)*path);
		else
			buf_put_char(&b, *path);
	buf_put_z(&b, "?immutable=1");
	return arena_str(arena, buf_str(&b));
}

static bool
open_file(struct archive *a, enum archive_use use, struct err *e)
{
	int flags = SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_READWRITE;
	const char *name = a->path;
	struct stat st;

	errno = 0;
	if (use == ARCHIVE_MAKE) {
		flags |= SQLITE_OPEN_CREATE;
		if (!make_folders(a->path, e) || !is_writable(a, e))
			return false;
	} else if (stat(a->path, &st) != 0) {
		return err_set(e, a->path, "%s",
		    errno == ENOENT ? "there is no archive; tamis keep makes one"
				    : strerror(errno));
	} else if (use == ARCHIVE_CHANGE) {
		if (!is_writable(a, e))
			return false;
	} else if (is_frozen(a)) {
		flags = SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_READONLY | SQLITE_OPEN_URI;
		name = frozen_uri(&a->arena, a->path).p;
	}
	if (sqlite3_open_v2(name, &a->db, flags, NULL) != SQLITE_OK)
		return store_fail(a, e);
	sqlite3_extended_result_codes(a->db, 0);
	sqlite3_busy_handler(a->db, wait_for_others, NULL);
	return true;
}

/* A crash of the program or the machine loses no whole episode but, at most,
 * the last ones of a machine that lost its power. */
static const char for_all[] = "PRAGMA foreign_keys = ON; PRAGMA trusted_schema = OFF;"
			      "PRAGMA cache_size = -65536; PRAGMA mmap_size = 4294967296;"
			      "PRAGMA temp_store = MEMORY;";
static const char for_writers[] = "PRAGMA journal_mode = WAL; PRAGMA synchronous = NORMAL; "
				  "PRAGMA wal_autocheckpoint = 4000;";

struct archive *
archive_open(const char *path, enum archive_use use, struct err *e)
{
	struct arena first;
	struct archive *a;

	arena_init(&first);
	a = arena_new(&first, struct archive);
	a->arena = first;
	a->path = arena_str(&a->arena, str_of(path)).p;
	if (open_file(a, use, e) && store_script(a, for_all, e) &&
	    (use == ARCHIVE_READ || store_script(a, for_writers, e)) &&
	    rank_register(a, e) && schema_ready(a, use != ARCHIVE_READ, e))
		return a;
	archive_close(a);
	return NULL;
}

void
archive_close(struct archive *a)
{
	struct arena arena;

	if (!a)
		return;
	for (size_t i = 0; i < STATEMENTS; i++)
		sqlite3_finalize(a->prepared[i]);
	rank_release(a);
	sqlite3_close(a->db);
	arena = a->arena;
	arena_release(&arena);
}
