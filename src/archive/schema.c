/* SPDX-License-Identifier: ISC */
/*
 * The tables of the archive, version by version. A new version is one more
 * entry at the end; an older file takes the steps it has not had, all or none.
 */
#include "archive/store.h"

/* "tami" */
enum { APPLICATION_ID = 0x74616d69 };

/* Rows hold these numbers, and statements name them: another order of the enums
 * is a new version of the tables. */
_Static_assert(MEASURE_TEMPERATURE == 2 && ROLE_INTERNAL == 4 && ROLE_AMBIENT == 5 &&
		   SEVERITY_ERROR == 2 && STATUS_OPEN == 0 && QUANTITY_INSIDE == 2,
    "numbers that an archive keeps");

/* Times of the script in milliseconds, of cooking in seconds; spans in bytes of
 * the source. A dish of ordinal -1 stands for what is said around the dishes.
 * kind, role, bound, severity and status count as the enums of tamis.h;
 * quantity as that of practice.h. The blocks of pack stand by themselves, so that
 * what is read of many episodes lies close together; see pack.h. */
static const char version_1[] =
    "CREATE TABLE episode (id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE,"
    "  hash INTEGER NOT NULL, asked_region TEXT NOT NULL, asked_profile TEXT NOT NULL, "
    "title TEXT, format TEXT NOT NULL,"
    "  language TEXT NOT NULL, region TEXT, length_ms INTEGER, date TEXT, video_url TEXT)"
    "  STRICT;"
    "CREATE TABLE pack (episode INTEGER PRIMARY KEY REFERENCES episode ON DELETE CASCADE,"
    "  source_n INTEGER NOT NULL, passages_n INTEGER NOT NULL, json_n INTEGER NOT NULL,"
    "  block BLOB NOT NULL) STRICT;"
    "CREATE TABLE dish (id INTEGER PRIMARY KEY, episode INTEGER NOT NULL"
    "  REFERENCES episode ON DELETE CASCADE, ordinal INTEGER NOT NULL, name TEXT NOT NULL,"
    "  beg_ms INTEGER, end_ms INTEGER, yield_min REAL, yield_max REAL, yield_unit TEXT,"
    "  active_s INTEGER, total_s INTEGER, claimed_s INTEGER,"
    "  allergens INTEGER NOT NULL, UNIQUE (episode, ordinal)) STRICT;"
    "CREATE TABLE food (id INTEGER PRIMARY KEY, item TEXT NOT NULL, key TEXT NOT NULL,"
    "  kind TEXT NOT NULL, grp TEXT NOT NULL, allergens INTEGER NOT NULL,"
    "  UNIQUE (item, key, kind, grp)) STRICT;"
    "CREATE TABLE term (id INTEGER PRIMARY KEY, text TEXT NOT NULL UNIQUE) STRICT;"
    "CREATE TABLE ingredient (dish INTEGER NOT NULL REFERENCES dish ON DELETE CASCADE,"
    "  ordinal INTEGER NOT NULL, part INTEGER NOT NULL,"
    "  food INTEGER NOT NULL REFERENCES food, min REAL, max REAL,"
    "  unit INTEGER REFERENCES term, ml_min REAL, ml_max REAL, gram_min REAL, gram_max "
    "REAL,"
    "  optional INTEGER NOT NULL, at_ms INTEGER, beg INTEGER NOT NULL, end INTEGER NOT "
    "NULL,"
    "  PRIMARY KEY (dish, ordinal)) STRICT, WITHOUT ROWID;"
    "CREATE TABLE step (dish INTEGER NOT NULL REFERENCES dish ON DELETE CASCADE,"
    "  ordinal INTEGER NOT NULL, part INTEGER NOT NULL, action INTEGER REFERENCES term,"
    "  appliance INTEGER REFERENCES term, celsius_min REAL, celsius_max REAL,"
    "  time_min_s INTEGER, time_max_s INTEGER, inside_min REAL, inside_max REAL,"
    "  passive INTEGER NOT NULL, at_ms INTEGER, beg INTEGER NOT NULL, end INTEGER NOT NULL,"
    "  PRIMARY KEY (dish, ordinal)) STRICT, WITHOUT ROWID;"
    "CREATE TABLE gear (dish INTEGER NOT NULL REFERENCES dish ON DELETE CASCADE,"
    "  ordinal INTEGER NOT NULL, item INTEGER NOT NULL REFERENCES term, at_ms INTEGER,"
    "  PRIMARY KEY (dish, ordinal)) STRICT, WITHOUT ROWID;"
    "CREATE TABLE measure (dish INTEGER NOT NULL REFERENCES dish ON DELETE CASCADE,"
    "  ordinal INTEGER NOT NULL, kind INTEGER NOT NULL, role INTEGER NOT NULL, min REAL,"
    "  max REAL, unit INTEGER REFERENCES term, base_min REAL, base_max REAL,"
    "  approximate INTEGER NOT NULL, bound INTEGER NOT NULL, at_ms INTEGER,"
    "  beg INTEGER NOT NULL, end INTEGER NOT NULL,"
    "  PRIMARY KEY (dish, kind, ordinal)) STRICT, WITHOUT ROWID;"
    "CREATE TABLE finding (dish INTEGER NOT NULL REFERENCES dish ON DELETE CASCADE,"
    "  ordinal INTEGER NOT NULL, code INTEGER NOT NULL REFERENCES term,"
    "  severity INTEGER NOT NULL, status INTEGER NOT NULL, part INTEGER, step INTEGER,"
    "  at_ms INTEGER, beg INTEGER NOT NULL, end INTEGER NOT NULL,"
    "  PRIMARY KEY (dish, ordinal)) STRICT, WITHOUT ROWID;"
    "CREATE TABLE practice (dish INTEGER NOT NULL REFERENCES dish ON DELETE CASCADE,"
    "  ordinal INTEGER NOT NULL, subject INTEGER NOT NULL REFERENCES term,"
    "  action INTEGER NOT NULL REFERENCES term, appliance INTEGER REFERENCES term,"
    "  quantity INTEGER NOT NULL, min REAL NOT NULL, max REAL NOT NULL,"
    "  PRIMARY KEY (dish, ordinal)) STRICT, WITHOUT ROWID;"
    "CREATE INDEX practice_of ON practice (subject, action, quantity);"
    "CREATE TABLE unit (name TEXT NOT NULL, region TEXT NOT NULL, plural TEXT NOT NULL,"
    "  brief TEXT NOT NULL, dimension INTEGER NOT NULL, factor REAL, shift REAL NOT NULL,"
    "  PRIMARY KEY (name, region)) STRICT, WITHOUT ROWID;"
    "CREATE TABLE allergen (id INTEGER PRIMARY KEY, code TEXT NOT NULL UNIQUE,"
    "  name TEXT NOT NULL) STRICT;"
    "CREATE TABLE word (text TEXT PRIMARY KEY) STRICT, WITHOUT ROWID;"
    "CREATE VIRTUAL TABLE entry_text USING fts5 (name, parts, food, gear, acts, steps, "
    "said,"
    "  title, content = '', tokenize = 'porter unicode61 remove_diacritics 2');";

/* What was answered to the findings of an episode, as its answers file has it. */
static const char version_2[] = "ALTER TABLE episode ADD COLUMN answers TEXT;";

static const char *const versions[] = {version_1, version_2};
enum { VERSIONS = sizeof versions / sizeof *versions };

static bool
take_steps(struct archive *a, int64_t from, struct err *e)
{
	char pragmas[96];

	for (int64_t i = from; i < VERSIONS; i++)
		if (!store_script(a, versions[i], e))
			return false;
	snprintf(pragmas, sizeof pragmas,
	    "PRAGMA application_id = %d; PRAGMA user_version = %d", APPLICATION_ID,
	    VERSIONS);
	return store_script(a, pragmas, e);
}

/* Another program may have made the step meanwhile: looked at again inside. */
static bool
bring_up(struct archive *a, struct err *e)
{
	int64_t version;

	if (!store_script(a, "BEGIN IMMEDIATE", e))
		return false;
	if (store_number(a, "PRAGMA user_version", &version, e) &&
	    (version >= VERSIONS || take_steps(a, version, e)) &&
	    store_script(a, "COMMIT", e))
		return true;
	store_undo(a);
	return false;
}

static bool
check_kind(struct archive *a, int64_t version, struct err *e)
{
	int64_t id, tables;

	if (!store_number(a, "PRAGMA application_id", &id, e) ||
	    !store_number(a, "SELECT count(*) FROM sqlite_schema", &tables, e))
		return false;
	if (id != APPLICATION_ID && (tables > 0 || version > 0))
		return err_set(e, a->path, "is a database, but no archive of tamis");
	return version <= VERSIONS || err_set(e, a->path,
					  "was made by a newer tamis (version %d of the "
					  "tables; this one knows %d)",
					  (int)version, VERSIONS);
}

bool
schema_ready(struct archive *a, bool may_write, struct err *e)
{
	int64_t version;

	if (!store_number(a, "PRAGMA user_version", &version, e) ||
	    !check_kind(a, version, e))
		return false;
	if (version == VERSIONS)
		return true;
	if (!may_write)
		return err_set(e, a->path,
		    version ? "is of an older version; keep an episode in it and try again"
			    : "holds no archive yet; tamis keep makes one");
	return bring_up(a, e);
}
