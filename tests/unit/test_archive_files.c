/* SPDX-License-Identifier: ISC */
/*
 * The files that archives are, older ones and foreign ones; and figures as they
 * are typed.
 */
#include "shelf.h"

#include <math.h>
#include <stdio.h>

/* ---- files -------------------------------------------------------------- */

static void
older_tables_are_brought_up(void **state)
{
	struct shelf *s = *state;
	struct err e = {0};

	keep(s, "soup.txt", soup);
	assert_true(store_script(s->archive,
	    "ALTER TABLE episode DROP COLUMN answers; PRAGMA user_version = 1", &e));
	archive_close(s->archive);
	s->archive = archive_open(s->path, ARCHIVE_READ, &e);
	assert_null(s->archive);
	e = (struct err){0};
	s->archive = archive_open(s->path, ARCHIVE_CHANGE, &e);
	assert_non_null(s->archive);
	assert_int_equal(rows(s, "episode WHERE answers IS NULL"), 1);
}

static void
foreign_files_are_refused(void **state)
{
	static const struct {
		const char *sql, *says;
	} rows[] = {
	    {"PRAGMA user_version = 99", "newer"},
	    {"PRAGMA application_id = 7", "no archive of tamis"},
	};
	struct shelf *s = *state;

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct err e = {0};

		assert_true(store_script(s->archive, rows[i].sql, &e));
		assert_null(archive_open(s->path, ARCHIVE_READ, &e));
		assert_non_null(strstr(e.text, rows[i].says));
	}
}

static void
no_database_is_told(void **state)
{
	struct shelf *s = *state;
	const char *path = arena_fmt(&s->arena, "%s.text", s->path).p;
	FILE *f = fopen(path, "w");
	struct err e = {0}, none = {0};

	fputs("This is a letter to my sister, and it is long enough for a page.\n", f);
	fclose(f);
	assert_null(archive_open(path, ARCHIVE_CHANGE, &e));
	assert_non_null(strstr(e.text, "no archive"));
	unlink(path);
	assert_null(archive_open(path, ARCHIVE_READ, &none));
	assert_non_null(strstr(none.text, "there is no archive"));
}

/* ---- figures ------------------------------------------------------------ */

static void
figures_are_read(void **state)
{
	static const struct {
		const char *text;
		enum dimension wanted;
		double min, max;
	} rows[] = {
	    {"180C", DIM_TEMPERATURE, 180, 180},
	    {"170-180C", DIM_TEMPERATURE, 170, 180},
	    {"180-170 C", DIM_TEMPERATURE, 170, 180},
	    {"350F", DIM_TEMPERATURE, 176.667, 176.667},
	    {"350\xc2\xb0"
	     "F",
		DIM_TEMPERATURE, 176.667, 176.667},
	    {"gas mark 4", DIM_TEMPERATURE, 176.667, 176.667},
	    {"gas 1/2", DIM_TEMPERATURE, 121.111, 121.111},
	    {"200C-", DIM_TEMPERATURE, 200, INFINITY},
	    {"-100 C", DIM_TEMPERATURE, -INFINITY, 100},
	    {"45min", DIM_TIME, 2700, 2700},
	    {"1h30", DIM_TIME, 5400, 5400},
	    {"1 h 30 min", DIM_TIME, 5400, 5400},
	    {"1-2 hours", DIM_TIME, 3600, 7200},
	    {"200 g", DIM_COUNT, 200, 200},
	    {"1/2 kg", DIM_COUNT, 500, 500},
	    {"2-3 cups", DIM_COUNT, 473.176, 709.765},
	    {"1 1/2 cups", DIM_COUNT, 354.882, 354.882},
	    {"1-2tbsp", DIM_COUNT, 14.787, 29.574},
	    {"2-3", DIM_COUNT, 2, 3},
	};
	struct shelf *s = *state;

	keep(s, "soup.txt", soup);
	for (size_t i = 0; i < COUNT(rows); i++) {
		struct figure f = {0};
		struct err e = {0};

		if (!figure_read(s->archive, str_of(rows[i].text), rows[i].wanted, &f, &e))
			fail_msg("%s: %s", rows[i].text, e.text);
		if (!(fabs(f.min - rows[i].min) < 0.001 || f.min == rows[i].min) ||
		    !(fabs(f.max - rows[i].max) < 0.001 || f.max == rows[i].max))
			fail_msg("%s: %g to %g", rows[i].text, f.min, f.max);
	}
}

static void
no_figures_are_refused(void **state)
{
	static const struct {
		const char *text;
		enum dimension wanted;
	} rows[] = {
	    {"", DIM_TEMPERATURE},
	    {"hot", DIM_TEMPERATURE},
	    {"180", DIM_TEMPERATURE},
	    {"180K", DIM_TEMPERATURE},
	    {"gas mark", DIM_TEMPERATURE},
	    {"170-180C x", DIM_TEMPERATURE},
	    {"20", DIM_TIME},
	    {"soon", DIM_TIME},
	    {"3 furlongs", DIM_COUNT},
	    {"1/0 cup", DIM_COUNT},
	};
	struct shelf *s = *state;

	keep(s, "soup.txt", soup);
	for (size_t i = 0; i < COUNT(rows); i++) {
		struct figure f;
		struct err e = {0};

		if (figure_read(s->archive, str_of(rows[i].text), rows[i].wanted, &f, &e))
			fail_msg("\"%s\" is read", rows[i].text);
		assert_true(e.set && e.text[0]);
	}
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    TEST(older_tables_are_brought_up),
	    TEST(foreign_files_are_refused),
	    TEST(no_database_is_told),
	    TEST(figures_are_read),
	    TEST(no_figures_are_refused),
	};

	return cmocka_run_group_tests(tests, set_up, tear_down);
}
