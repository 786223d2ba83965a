/* SPDX-License-Identifier: ISC */
/*
 * The program from outside: exit statuses, what it says to wrong usage, where
 * its output goes. What it finds in scripts is for test_cases.
 */
#include "../support/expect.h"
#include "../support/hold.h"
#include "../support/program.h"
#include "../support/source.h"
#include "tamis.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#define EPISODE "examples/galley/episode.txt"
/* as it was before its author answered */
#define ASKED "--answers /dev/null " EPISODE

/* Standard error is looked at together with standard output. */
static const struct {
	const char *arguments;
	int status;
	const char *says;
} statuses[] = {
    {"2>&1", 2, "tamis COMMAND"},
    {"--help", 0, "write the recipes"},
    {"-h", 0, "tamis COMMAND"},
    {"--version", 0, "tamis 0."},
    {"wirte 2>&1", 2, "did you mean write?"},
    {"zzzzzzzzzz 2>&1", 2, "see tamis --help"},
    {"check --regoin uk x 2>&1", 2, "did you mean --region?"},
    {"check --zzzzzzzzzz 2>&1", 2, "see tamis check --help"},
    {"check -q 2>&1", 2, "no option"},
    {"check --region 2>&1", 2, "needs a value"},
    {"check --region mars " ASKED " 2>&1", 2, "no region mars"},
    {"check --grammar nowhere " ASKED " 2>&1", 2, "nowhere"},
    {"check 2>&1", 2, "no episode is named"},
    {"check no-such-file 2>&1", 2, "no-such-file"},
    {"check src 2>&1", 2, "src"},
    {"check - - </dev/null 2>&1", 2, "read once"},
    {"check - </dev/null 2>&1", 0, ""},
    {"check " ASKED, 1, EPISODE ":"},
    {"check " EPISODE, 0, "answered in examples/galley/episode.answers"},
    {"check --help", 0, "--grammar"},
    {"check --format sraif " ASKED " 2>&1", 2, "did you mean sarif?"},
    {"check --format zzzzzz " ASKED " 2>&1", 2, "tamis check --help"},
    {"check --format sarif " ASKED, 1, "\"2.1.0\""},
    {"check --format json " ASKED, 1, "\"missing-scale\""},
    {"check --format text " ASKED, 1, "[time-claim]"},
    {"check --format sarif no-such-file 2>/dev/null", 2, "\"error\""},
    {"check --severity dire " ASKED " 2>&1", 2, "no severity dire"},
    {"check --severity error " ASKED, 1, " error: "},
    {"check --only self-correction " ASKED, 0, "[self-correction]"},
    {"check --severity note --only self-correction " ASKED, 1, " note: "},
    {"check --severity note --only missing-scale,allergen " ASKED, 1, "[allergen]"},
    {"check --only mising-scale " ASKED " 2>&1", 2, "did you mean missing-scale?"},
    {"check --except allergen,zzzz " ASKED " 2>&1", 2, "no code zzzz"},
    {"check --only script " ASKED, 0, ""},
    {"check --profile mars " ASKED " 2>&1", 2, "no profile mars"},
    {"check --profile us-retail " ASKED, 1, ""},
    {"explain below-safe-temperature", 0, "us-retail"},
    {"write --help", 0, "markdown"},
    {"write --format marcdown - </dev/null 2>&1", 2, "did you mean markdown?"},
    {"write --output no/such/folder/x " EPISODE " 2>&1", 3, "no/such/folder/x"},
    {"write " EPISODE, 0, "# "},
    {"write -f json " EPISODE, 0, "{"},
    {"show " EPISODE, 0, "|measure]"},
    {"show --tags " EPISODE, 0, "-> AMT"},
    {"show --at 0:20 " EPISODE, 0, ", then wanted "},
    {"show --word butter --at 9:99:99 " EPISODE " 2>&1", 2, "9:99:99: is no time"},
    {"show --word xylophone " EPISODE " 2>&1", 2, "xylophone: stands nowhere"},
    {"show --tags=no " EPISODE " 2>&1", 2, "no option --tags=no"},
    {"explain", 0, "missing-temperature"},
    {"explain mising-temperature 2>&1", 2, "did you mean missing-temperature?"},
    {"--help >/dev/full 2>/dev/null", 3, ""},
    {"write " EPISODE " 2>&1 >/dev/full", 3, "standard output"},
};

static void
arguments_have_their_status(void **state)
{
	for (size_t i = 0; i < COUNT(statuses); i++) {
		struct ran ran = program_run(*state, ".", "", statuses[i].arguments);

		if (ran.status != statuses[i].status || !has(ran.out, statuses[i].says))
			fail_msg("tamis %s: %d\n%s", statuses[i].arguments, ran.status,
			    ran.out.p);
	}
}

static void
every_command_has_help(void **state)
{
	static const char *const commands[] = {
	    "write", "check", "show", "explain", "keep", "find", "forget", "archive"};

	for (size_t i = 0; i < COUNT(commands); i++) {
		struct str line = arena_fmt(*state, "%s --help", commands[i]);
		struct ran ran = program_run(*state, ".", "", line.p);

		assert_int_equal(ran.status, 0);
		assert_true(has(ran.out, arena_fmt(*state, "tamis %s", commands[i]).p));
	}
}

static void
every_code_is_explained(void **state)
{
	const struct finding_kind *k;

	for (size_t i = 0; (k = tamis_finding_kind(i)); i++) {
		struct str line = arena_fmt(*state, "explain %s", k->code);
		struct ran ran = program_run(*state, ".", "", line.p);

		assert_int_equal(ran.status, 0);
		assert_true(str_starts(ran.out, str_of(k->code)));
		assert_true(ran.out.n > strlen(k->summary) + 40);
	}
}

static void
episodes_keep_their_order(void **state)
{
	struct paths gold = paths_find(*state, "corpus/*.gold.tsv");
	struct buf names = buf_in(*state), one_by_one = buf_in(*state);
	struct ran all;

	for (size_t i = gold.n; i-- > 0;) {
		struct str script = script_of_gold(*state, gold.v[i]);
		struct str line = arena_fmt(*state, "write '%s'", script.p);

		buf_fmt(&names, " '%s'", script.p);
		buf_put(&one_by_one, program_run(*state, ".", "", line.p).out);
	}
	buf_put_char(&names, '\0');
	all = program_run(*state, ".", "", arena_fmt(*state, "write %s", names.v).p);
	assert_int_equal(all.status, 0);
	assert_true(str_is(all.out, buf_str(&one_by_one)));
}

static void
one_bad_episode_stops_no_other(void **state)
{
	struct ran ran =
	    program_run(*state, ".", "", "write no-such-file " EPISODE " 2>/dev/null");

	assert_int_equal(ran.status, 2);
	assert_true(has(ran.out, "# "));
}

static void
output_goes_to_files_and_folders(void **state)
{
	struct str folder = arena_fmt(*state, "%s/cli", build_folder(*state).p);
	struct str want = program_run(*state, ".", "", "write " EPISODE).out, got;
	struct err e = {0};

	program_run(*state, ".",
	    arena_fmt(*state, "rm -rf '%s'; mkdir '%s'; ", folder.p, folder.p).p,
	    arena_fmt(*state, "write -f json -o '%s' " EPISODE, folder.p).p);
	assert_true(source_read(
	    *state, arena_fmt(*state, "%s/episode.json", folder.p).p, &got, &e));
	assert_true(str_starts(got, STR("{")));
	program_run(*state, ".", "",
	    arena_fmt(*state, "write -o '%s/both' " EPISODE " " EPISODE, folder.p).p);
	assert_true(
	    source_read(*state, arena_fmt(*state, "%s/both", folder.p).p, &got, &e));
	assert_int_equal(got.n, 2 * want.n);
}

/* A pipe is no terminal: no colour, lines of at most 100 columns. */
static void
pipes_get_plain_text(void **state)
{
	struct str rest = program_run(*state, ".", "", "check " ASKED).out;
	struct ran shown = program_run(*state, ".", "", "show " EPISODE);

	assert_false(has(shown.out, "\033"));
	assert_false(has(rest, "\033"));
	while (rest.p) {
		struct str line = str_next(&rest, '\n');
		size_t columns = 0;

		for (size_t i = 0; i < line.n; i++)
			columns += ((unsigned char)line.p[i] & 0xc0) != 0x80;
		if (str_starts(line, STR("  ")) && !str_starts(line, STR("  try:")) &&
		    !str_starts(line, STR("  see ")) && !has(line, "^"))
			assert_true(columns <= 100);
	}
}

/* The script's own bytes can't drive a terminal. */
static void
controls_are_not_passed_on(void **state)
{
	struct ran ran = program_run(*state, ".",
	    "printf '[0:00] Bake the \\033[31mbread\\a at 200 for ten to eight "
	    "minutes.\\n' |",
	    "check -");
	struct ran shown = program_run(*state, ".",
	    "printf '[0:00] Bake the \\033[31mbread\\a for ten minutes.\\n' |", "show -");

	assert_true(ran.out.n > 0);
	assert_false(has(ran.out, "\033"));
	assert_false(has(ran.out, "\a"));
	assert_false(has(shown.out, "\033"));
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(arguments_have_their_status),
	    cmocka_unit_test(every_command_has_help),
	    cmocka_unit_test(every_code_is_explained),
	    cmocka_unit_test(episodes_keep_their_order),
	    cmocka_unit_test(one_bad_episode_stops_no_other),
	    cmocka_unit_test(output_goes_to_files_and_folders),
	    cmocka_unit_test(pipes_get_plain_text),
	    cmocka_unit_test(controls_are_not_passed_on),
	};

	return cmocka_run_group_tests(tests, hold_arena, drop_arena);
}
