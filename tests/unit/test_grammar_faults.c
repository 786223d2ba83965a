/* SPDX-License-Identifier: ISC */
/*
 * What the grammar engine says of each mistake in a .lex, .gram or .tsv file,
 * and where; its limits; and tables that are sound.
 */
#include "../support/expect.h"
#include "../support/hold.h"
#include "../support/small.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

static const char words[] = "@ FOOD noun\nsage\n@ UNIT noun\ncup\n";

struct fault_row {
	const char *text, *want; /* "line:column: text"; the start of it */
};

static bool
has_fault(struct arena *a, const struct small *files, const char *file, const char *want)
{
	struct err e = {0};
	struct grammar *g = small_open(a, files, &e);
	struct str got = arena_fmt(a, "%s:%u:%u: %s", e.where, e.line, e.column, e.text);
	struct str wanted = arena_fmt(a, "%s:%s", file, want);

	if (!g && str_starts(got, wanted))
		return true;
	print_error("%s, not %s\n", g ? "no error" : got.p, wanted.p);
	tamis_grammar_close(g);
	return false;
}

/* Rows of one kind of file, the others sound. */
static void
check_faults(struct arena *a, const char *file, const struct fault_row *row, size_t rows)
{
	size_t failed = 0;

	for (size_t i = 0; i < rows; i++) {
		bool table = strcmp(file, "tables/units.tsv") == 0;
		struct small files = {
		    words, table ? NULL : row[i].text, table ? row[i].text : NULL};

		failed += !has_fault(a, &files, file, row[i].want);
	}
	assert_int_equal(failed, 0);
}

static void
mistakes_in_rules_have_their_place(void **state)
{
	static const struct fault_row rows[] = {
	    {"pas p", "1:1: expected pass, let, rule, or an example"},
	    {"rule r -> X : <A>", "1:10: expected 'pass NAME' before the first rule"},
	    {"pass p\n+ two cups", "2:1: expected an example below a rule"},
	    {"pass p\nrule -> X : <A>", "2:6: expected a rule's name and '->'"},
	    {"pass p\nrule r : <A>", "2:8: expected a rule's name and '->'"},
	    {"pass p\nrule r -> x : <A>", "2:11: expected a class in capitals, or '-'"},
	    {"pass p\nrule r -> X kind : <A>", "2:17: expected key=value or ':'"},
	    {"pass p\nrule r -> X k=v", "2:16: expected ':' before the pattern"},
	    {"pass p\nrule r -> X :", "2:14: expected a pattern"},
	    {"pass p\nrule r -> X : <A", "2:15: expected '>' to close '<'"},
	    {"pass p\nrule r -> X : <a>", "2:16: expected a class name in capitals"},
	    {"pass p\nrule r -> X : <A|b>", "2:18: expected a class name in capitals"},
	    {"pass p\nrule r -> X : \"two", "2:15: expected a word and '\"' to close it"},
	    {"pass p\nrule r -> X : \"\"", "2:15: expected a word and '\"' to close it"},
	    {"pass p\nrule r -> X : (<A>", "2:19: expected ')' to close '('"},
	    {"pass p\nrule r -> X : <A>)", "2:18: expected no ')' without '('"},
	    {"pass p\nrule r -> X : <A>{2", "2:18: expected '}' to close '{'"},
	    {"pass p\nrule r -> X : &<A>", "2:17: expected '(' after '&' or '!'"},
	    {"pass p\nrule r -> X : ! (<A>)", "2:16: expected '(' after '&' or '!'"},
	    {"pass p\nrule r -> X : number", "2:15: expected the name of a let above"},
	    {"pass p\nrule r -> X : n: ?", "2:18: expected a class, a word, a let or '('"},
	    {"pass p\nrule r -> X : %", "2:15: expected a class, a word, a name, or one"},
	    {"pass p\nlet = <A>", "2:5: expected a name and '='"},
	    {"pass p\nlet n <A>", "2:7: expected a name and '='"},
	    {"pass p\nlet n =", "2:8: expected a pattern"},
	    {"pass p\nrule r -> X : <A>\n\t<B> number\n",
		"3:6: expected the name of a let above"},
	};

	check_faults(*state, "en/small.gram", rows, COUNT(rows));
}

static void
mistakes_of_patterns_name_their_pass(void **state)
{
	static const struct fault_row rows[] = {
	    {"pass p\nrule r -> X : ? <FOOD>", "0:0: pass p does not compile: "},
	    {"pass p\nrule r -> X : &<(<FOOD>+) <UNIT>", "0:0: pass p does not compile: "},
	};

	check_faults(*state, "grammar", rows, COUNT(rows));
}

/* "PREFIX1 ... PREFIXn", each with what stands behind it. */
static const char *
many(struct arena *a, const char *start, const char *each, int n)
{
	struct buf b = buf_in(a);

	buf_put_z(&b, start);
	for (int i = 1; i <= n; i++)
		for (const char *p = each; *p; p++)
			if (*p == '%')
				buf_fmt(&b, "%d", i);
			else
				buf_put_char(&b, *p);
	return arena_str(a, buf_str(&b)).p;
}

static void
mistakes_in_words_have_their_place(void **state)
{
	struct small colon = {"@ A\n\n: kind=x\n", NULL, NULL};
	struct small equals = {"@ A\n= leek\n", NULL, NULL};
	struct small classes = {many(*state, "@ ", "C% ", CLASSES_MAX + 1), NULL, NULL};
	struct small attributes = {many(*state, "@ A\nleek : ", "k%=v ", 25), NULL, NULL};

	assert_true(
	    has_fault(*state, &colon, "en/small.lex", "3:1: expected a word before"));
	assert_true(
	    has_fault(*state, &equals, "en/small.lex", "2:1: expected a word before"));
	assert_true(has_fault(
	    *state, &classes, "en/small.lex", "1:2455: expected no more classes"));
	assert_true(has_fault(
	    *state, &attributes, "en/small.lex", "2:143: expected no more classes"));
}

static void
limits_are_told(void **state)
{
	const char *lex = many(*state, "", "@ C%\nw%\n", 300);
	struct small looks = {
	    lex, many(*state, "pass p\nrule r -> X : <", "C% ", 300), NULL};
	struct small few = {lex, many(*state, "pass p\nrule r -> X : <", "C% ", 200), NULL};
	struct small passes = {words,
	    many(*state, "", "pass p%\nrule r -> X : <FOOD>\n", PASSES_MAX + 1), NULL};
	struct small classes = {
	    words, many(*state, "pass p\nrule r -> X : <", "C% ", CLASSES_MAX), NULL};
	struct small orphan = {words, "pass p from q\nrule r -> X : <FOOD>\n", NULL};
	struct err e = {0};
	struct grammar *g;

	looks.gram = arena_fmt(*state, "%s>\n", looks.gram).p;
	few.gram = arena_fmt(*state, "%s>\n", few.gram).p;
	classes.gram = arena_fmt(*state, "%s>\n", classes.gram).p;
	assert_true(
	    has_fault(*state, &looks, "grammar", "0:0: pass p tells more than 256 kinds"));
	assert_true(has_fault(*state, &passes, "grammar",
	    arena_fmt(*state, "0:0: has more than %d passes", PASSES_MAX).p));
	assert_true(has_fault(*state, &classes, "en/small.gram", "2:"));
	assert_true(has_fault(*state, &orphan, "grammar",
	    "0:0: pass p is from q, and no pass above is called so"));
	g = small_open(*state, &few, &e);
	assert_non_null(g);
	assert_int_equal(g->pass[0].tags, 201);
	tamis_grammar_close(g);
}

/* ---- tables ------------------------------------------------------------- */

static void
mistakes_in_tables_have_their_place(void **state)
{
	static const struct fault_row rows[] = {
	    {"name\tplural\n# a comment\ncup\n", "3:1: expected 2 cells parted by tabs, "
						 "found 1"},
	    {"name\tplural\ncup\tcups\tx\n",
		"2:1: expected 2 cells parted by tabs, found 3"},
	    {"# nothing\n", "0:0: expected a header row"},
	    {"name\tdimension\ncup\tsize\n",
		"0:0: unit cup: no dimension is called \"size\""},
	};

	check_faults(*state, "tables/units.tsv", rows, COUNT(rows));
}

static void
tables_are_read(void **state)
{
	struct table t = {0};
	struct err e = {0};
	struct ratio v;
	static const char text[] =
	    "# facts\n\nname\tvalue\r\n half \t1/2\r\nnone\t\n#\tx\nhalf\t-40\nno\tx1\n";

	assert_true(table_load(&t, *state, str_of(text), "t.tsv", &e));
	assert_int_equal(t.rows, 4);
	assert_int_equal(table_column(&t, "value"), 1);
	assert_int_equal(table_column(&t, "source"), -1);
	assert_true(str_is_z(table_cell(&t, 0, 0), "half"));
	assert_true(str_is_z(table_cell(&t, 1, 1), ""));
	assert_true(str_is_z(table_cell(&t, 9, 1), ""));
	assert_true(str_is_z(table_cell(&t, 0, -1), ""));
	assert_true(table_number(&t, 0, 1, &v) && v.num == 1 && v.den == 2);
	assert_true(table_number(&t, 2, 1, &v) && v.num == -40 && v.den == 1);
	assert_false(table_number(&t, 1, 1, &v));
	assert_false(table_number(&t, 3, 1, &v));
	assert_int_equal(table_find(&t, 0, 0, STR("half")), 0);
	assert_int_equal(table_find(&t, 1, 0, STR("half")), 2);
	assert_int_equal(table_find(&t, 3, 0, STR("half")), 4);
}

static void
units_go_by_region(void **state)
{
	struct small files = {words, NULL,
	    "name\tdimension\tregion\tfactor\toffset\n"
	    "cup\tvolume\tus\t240\t\ncup\tvolume\tau\t250\t\n"
	    "cup\tvolume\t\t200\t\nfahrenheit\ttemperature\t\t5/9\t-32\n"
	    "pinch\tvolume\tus\t\t\n"};
	struct err e = {0};
	struct grammar *g = small_open(*state, &files, &e);
	const struct unit *u;

	assert_non_null(g);
	u = grammar_unit(g, STR("cup"), "au");
	assert_int_equal(unit_to_base(u, ratio_int(2)).num, 500);
	u = grammar_unit(g, STR("cup"), "ca");
	assert_int_equal(unit_to_base(u, ratio_int(2)).num, 400);
	u = grammar_unit(g, STR("pinch"), NULL);
	assert_false(u->has_base);
	u = grammar_unit(g, STR("fahrenheit"), "us");
	assert_int_equal(unit_to_base(u, ratio_int(212)).num, 100);
	assert_int_equal(unit_from_base(u, ratio_int(-40)).num, -40);
	assert_null(grammar_unit(g, STR("furlong"), "us"));
	tamis_grammar_close(g);
}

static void
a_folder_without_a_grammar_is_told(void **state)
{
	struct small none = {NULL, NULL, NULL};
	struct err e = {0};

	assert_null(small_open(*state, &none, &e));
	assert_non_null(strstr(e.text, "has no grammar for \"en\""));
	e = (struct err){0};
	assert_null(tamis_grammar_open(NULL, "xx", &e));
	assert_non_null(strstr(e.text, "no grammar for \"xx\" is built in"));
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(mistakes_in_rules_have_their_place),
	    cmocka_unit_test(mistakes_of_patterns_name_their_pass),
	    cmocka_unit_test(mistakes_in_words_have_their_place),
	    cmocka_unit_test(limits_are_told),
	    cmocka_unit_test(mistakes_in_tables_have_their_place),
	    cmocka_unit_test(tables_are_read),
	    cmocka_unit_test(units_go_by_region),
	    cmocka_unit_test(a_folder_without_a_grammar_is_told),
	};

	return cmocka_run_group_tests(tests, hold_arena, drop_arena);
}
