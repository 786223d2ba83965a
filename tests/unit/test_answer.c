/* SPDX-License-Identifier: ISC */
/*
 * Answers beside a script: what the recipe says with them, what status the
 * findings get, and what is said of lines that are wrong or fit nothing.
 */
#include "../support/expect.h"
#include "tamis.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

struct setup {
	struct grammar *grammar;
	struct arena arena;
};

static struct draft *
drafted(struct setup *s, const char *script, const char *answers)
{
	struct tamis_options o = {.answers = str_of(answers)};
	struct err e = {0};
	struct draft *d = tamis_draft(s->grammar, &o, str_of(script), "show.txt", &e);

	assert_non_null(d);
	return d;
}

static struct str
recipe_of(struct setup *s, const struct draft *d)
{
	struct tamis_style style = {0};
	struct buf b = buf_in(&s->arena);

	tamis_writer_find("markdown")->write(d, s->grammar, &style, &b);
	return buf_str(&b);
}

static const struct finding *
finding_of(const struct draft *d, const char *code)
{
	for (size_t i = 0; i < d->findings; i++)
		if (strcmp(d->finding[i].kind->code, code) == 0)
			return &d->finding[i];
	return NULL;
}

#define CAKE                                                                               \
	"[0:00] Today it's lemon cake.\n"                                                  \
	"[0:05] Heat the oven to 190. Put two cups of flour, some sugar and three eggs "   \
	"in a bowl.\n"                                                                     \
	"[0:20] Bake the cake for forty to thirty minutes, until golden.\n"
#define SOUP                                                                               \
	"[0:00] Today it's bean soup. It serves four.\n"                                   \
	"[0:05] Put two cans of beans and a litre of stock in a pan over medium heat.\n"   \
	"[0:20] Simmer the soup.\n"

static const struct {
	const char *script, *answers;
	const char *code;
	enum status status;
	const char *recipe; /* words in it */
} value_rows[] = {
    {CAKE,
	"0:07 missing-scale \"190\" 190 \xc2\xb0"
	"C",
	"missing-scale", STATUS_ANSWERED,
	"190 \xc2\xb0"
	"C"},
    {CAKE, "0:07 missing-scale \"190\" 375 Fahrenheit", "missing-scale", STATUS_ANSWERED,
	"375 \xc2\xb0"
	"F"},
    {CAKE, "0:07 missing-scale \"190\" stet everybody here bakes in Celsius",
	"missing-scale", STATUS_STET, "190"},
    {CAKE, "0:01 missing-yield \"lemon cake\" 8 servings", "missing-yield", STATUS_ANSWERED,
	"Serves 8"},
    {CAKE, "0:01 missing-yield \"lemon cake\" 12 slices", "missing-yield", STATUS_ANSWERED,
	"Makes 12 slices"},
    {CAKE, "0:12 vague-amount \"some sugar\" 200 g", "vague-amount", STATUS_ANSWERED,
	"200 g sugar"},
    {CAKE, "0:12 vague-amount \xe2\x80\x9csome sugar\xe2\x80\x9d half a cup",
	"vague-amount", STATUS_ANSWERED, "\xc2\xbd cup sugar"},
    {CAKE, "0:22 reversed-range \"forty to thirty minutes\" 35 minutes", "reversed-range",
	STATUS_ANSWERED, "35 minutes"},
    /* told at another time since, in other case, or not to its end */
    {CAKE, "7:07 missing-scale \"190\" 190 C", "missing-scale", STATUS_ANSWERED, ""},
    {CAKE, "- missing-scale \"190\" 190 C", "missing-scale", STATUS_ANSWERED, ""},
    {CAKE, "0:22 reversed-range \"FORTY to thirty\xe2\x80\xa6\" 35 minutes",
	"reversed-range", STATUS_ANSWERED, ""},
    {SOUP, "0:21 missing-time \"Simmer\" 20 minutes", "missing-time", STATUS_ANSWERED,
	"for 20 minutes"},
    {SOUP, "0:21 missing-time \"Simmer\" until the beans are tender", "missing-time",
	STATUS_ANSWERED, "until the beans are tender"},
    {SOUP, "0:07 missing-size \"cans\" 400 g", "missing-size", STATUS_ANSWERED, "400 g"},
};

static void
values_go_into_the_recipe(void **state)
{
	struct setup *s = *state;

	for (size_t i = 0; i < COUNT(value_rows); i++) {
		struct draft *d = drafted(s, value_rows[i].script, value_rows[i].answers);
		const struct finding *f = finding_of(d, value_rows[i].code);
		struct str recipe = recipe_of(s, d);

		if (!f || f->status != value_rows[i].status || d->answer_problems ||
		    !has(recipe, value_rows[i].recipe))
			fail_msg("%s: %s: %s\n%.*s", value_rows[i].answers,
			    !f               ? "no finding"
			    : f->status == 0 ? "open"
					     : "wrong",
			    d->answer_problems ? d->answer_problem->text.p : "",
			    (int)recipe.n, recipe.p);
		tamis_draft_free(d);
	}
}

/* The measures stay as they were said. */
static void
measures_stay_as_said(void **state)
{
	struct draft *d = drafted(*state, CAKE, "0:07 missing-scale \"190\" 375 F");
	bool found = false;

	for (size_t i = 0; i < d->measures; i++)
		if (d->measure[i].kind == MEASURE_TEMPERATURE)
			found = !d->measure[i].unit_stated &&
				ratio_order(d->measure[i].value.min, ratio_int(190)) == 0;
	assert_true(found);
	tamis_draft_free(d);
}

static void
names_are_changed(void **state)
{
	struct setup *s = *state;
	struct draft *d = drafted(s, CAKE,
	    "rename dish \"lemon cake\" to \"Lemon cake with \\\"zip\\\"\"\n"
	    "rename ingredient \"flour\" to \"plain flour\"\n");
	struct str recipe = recipe_of(s, d);

	assert_int_equal(d->answer_problems, 0);
	assert_true(has(recipe, "# Lemon cake with \"zip\""));
	assert_true(has(recipe, "2 cups plain flour"));
	tamis_draft_free(d);
}

static const struct {
	const char *answers;
	uint32_t line, column;
	enum severity severity;
	const char *says;
} problem_rows[] = {
    {"bla", 1, 1, SEVERITY_ERROR, "a time like 2:05"},
    {"\n\n0:99 missing-scale \"190\" 190 C", 3, 1, SEVERITY_ERROR, "a time"},
    {"0:07 missing-skale \"190\" 190 C", 1, 6, SEVERITY_ERROR, "a code"},
    {"0:07 missing-scale 190 C", 1, 20, SEVERITY_ERROR, "double quotes"},
    {"0:07 missing-scale \"190 190 C", 1, 20, SEVERITY_ERROR, "closes"},
    {"0:07 missing-scale \"\" 190 C", 1, 22, SEVERITY_ERROR, "between"},
    {"0:07 missing-scale \"190\"", 1, 25, SEVERITY_ERROR, "what is meant"},
    {"0:07 missing-scale \"190\" stet", 1, 25, SEVERITY_ERROR, "a reason"},
    {"0:07 missing-scale \"190\" soon", 1, 1, SEVERITY_ERROR, "degrees with their scale"},
    {"0:07 missing-scale \"190\" 190", 1, 1, SEVERITY_ERROR, "degrees with their scale"},
    {"0:01 missing-yield \"lemon cake\" many", 1, 1, SEVERITY_ERROR, "4 servings"},
    {"0:07 missing-scale \"210\" 210 C", 1, 1, SEVERITY_WARNING, "fits nothing"},
    {"0:07 missing-scale \"190\" 190 C\n0:07 missing-scale \"190\" 180 C", 2, 1,
	SEVERITY_WARNING, "line 1 answers this"},
    {"0:07 missing-doneness \"190\" stet none needed", 1, 1, SEVERITY_NOTE, "not asked"},
    {"rename soup \"a\" to \"b\"", 1, 12, SEVERITY_ERROR, "dish, part or ingredient"},
    {"rename dish \"lemon cake\" \"b\"", 1, 29, SEVERITY_ERROR, "between the old name"},
    {"rename dish \"rye bread\" to \"b\"", 1, 1, SEVERITY_WARNING, "no dish is called"},
};

static void
what_is_wrong_is_told_by_line(void **state)
{
	for (size_t i = 0; i < COUNT(problem_rows); i++) {
		struct draft *d = drafted(*state, CAKE, problem_rows[i].answers);
		const struct answer_problem *p = d->answer_problem;

		if (d->answer_problems != 1 || p->place.line != problem_rows[i].line ||
		    p->place.column != problem_rows[i].column ||
		    p->severity != problem_rows[i].severity ||
		    !has(p->text, problem_rows[i].says))
			fail_msg("%s: %zu: %u:%u %.*s", problem_rows[i].answers,
			    d->answer_problems, p ? p->place.line : 0,
			    p ? p->place.column : 0, p ? (int)p->text.n : 0,
			    p ? p->text.p : "");
		tamis_draft_free(d);
	}
}

/* An answer that is as unsafe as what was said leaves the finding open. */
static void
answers_are_judged(void **state)
{
	const char *script = "[0:00] Today it's roast chicken. It serves four.\n"
			     "[0:05] Put a three pound chicken in a 400 degree Fahrenheit "
			     "oven until it reads 150 Fahrenheit inside.\n";
	struct draft *d = drafted(*state, script,
	    "0:05 below-safe-temperature \"150 Fahrenheit\" 155 \xc2\xb0"
	    "F");
	const struct finding *f = finding_of(d, "below-safe-temperature");

	assert_non_null(f);
	assert_int_equal(f->status, STATUS_OPEN);
	assert_true(has(f->message, "155"));
	tamis_draft_free(d);
	d = drafted(*state, script,
	    "0:05 below-safe-temperature \"150 Fahrenheit\" 165 \xc2\xb0"
	    "F");
	f = finding_of(d, "below-safe-temperature");
	assert_non_null(f);
	assert_int_equal(f->status, STATUS_ANSWERED);
	tamis_draft_free(d);
}

/* What is asked can be asked again without a change, and completed. */
static void
asking_keeps_what_is_there(void **state)
{
	struct setup *s = *state;
	struct draft *d = drafted(s, CAKE, "");
	struct buf all = buf_in(&s->arena), more = buf_in(&s->arena);
	size_t asked = tamis_ask(d, STR(""), &all);

	assert_int_equal(asked, d->findings);
	assert_true(has(buf_str(&all), "\n#0:"));
	assert_int_equal(tamis_ask(d, buf_str(&all), &more), 0);
	assert_int_equal(more.n, 0);
	tamis_draft_free(d);
	d = drafted(s, CAKE, "0:07 missing-scale \"190\" 190 C");
	more = buf_in(&s->arena);
	assert_int_equal(
	    tamis_ask(d, STR("0:07 missing-scale \"190\" 190 C"), &more), asked - 1);
	tamis_draft_free(d);
}

static int
open_setup(void **state)
{
	static struct setup s;
	struct err e = {0};

	arena_init(&s.arena);
	s.grammar = tamis_grammar_open(NULL, "en", &e);
	*state = &s;
	return s.grammar ? 0 : -1;
}

static int
close_setup(void **state)
{
	struct setup *s = *state;

	tamis_grammar_close(s->grammar);
	arena_release(&s->arena);
	return 0;
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(values_go_into_the_recipe),
	    cmocka_unit_test(measures_stay_as_said),
	    cmocka_unit_test(names_are_changed),
	    cmocka_unit_test(what_is_wrong_is_told_by_line),
	    cmocka_unit_test(answers_are_judged),
	    cmocka_unit_test(asking_keeps_what_is_there),
	};

	return cmocka_run_group_tests(tests, open_setup, close_setup);
}
