/* SPDX-License-Identifier: ISC */
/*
 * What goes out with an episode, from the sample draft: chapters, the text
 * under the video, structured data; steps in short.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stdio.h>

#include <cmocka.h>
#include <jansson.h>

#include "../support/expect.h"
#include "../support/hold.h"
#include "publish/brief.h"
#include "publish/chapter.h"
#include "sample.h"

static struct str
written(struct arena *a, const struct draft *d, const char *format)
{
	struct buf out = buf_in(a);

	tamis_writer_find(format)->write(d, NULL, &(struct tamis_style){0}, &out);
	return buf_str(&out);
}

static struct draft *
stamped_draft(struct arena *a)
{
	struct draft *d = sample_draft(a);

	d->script->stamped = true;
	d->dish->part[1].place.at_ms = 60000;
	return d;
}

static void
test_chapters(void **state)
{
	struct draft *d = stamped_draft(*state);

	expect(written(*state, d, "chapters"),
	    "WEBVTT\n\n"
	    "00:00:00.000 --> 00:00:21.000\nIntroduction\n\n"
	    "00:00:21.000 --> 00:01:00.000\nCharred cabbage with caper mayonnaise\n\n"
	    "00:01:00.000 --> 00:01:58.250\nCaper mayonnaise\n");
	d->dish->name = STR("a --> b\n<i>&");
	assert_true(str_find(written(*state, d, "chapters"),
			STR("\nA --&gt; b &lt;i&gt;&amp;\n")) < 200);
	d->script->stamped = false;
	expect(written(*state, d, "chapters"),
	    "WEBVTT\n\nNOTE The script has no times to make chapters of.\n");
}

/* Steps fill in where dishes and parts make too few; none is too short, and
 * none begins in the last seconds. */
static void
test_few_chapters(void **state)
{
	static const int64_t want[] = {0, 40000, 96125};
	struct draft *d = stamped_draft(*state);
	struct chapter *c;
	size_t n;

	d->dish->beg_ms = 9999;
	d->dish->parts = 1;
	d->dish->part->step[0].place.at_ms = 5000;
	c = chapters_of(*state, d, &n);
	assert_int_equal(n, COUNT(want));
	for (size_t i = 0; i < COUNT(want); i++)
		assert_int_equal(c[i].beg_ms, want[i]);
	expect(c[1].title, "Fry the cabbage over medium heat for 8–10 minutes");
	d->script->length_ms = 100000;
	chapters_of(*state, d, &n);
	assert_int_equal(n, 2);
	d->script->length_ms = -1;
	c = chapters_of(*state, d, &n);
	assert_int_equal(c[n - 1].end_ms, 106125);
}

static const char description[] =
    "Chapters\n"
    "0:00 Introduction\n"
    "0:21 Charred cabbage with caper mayonnaise\n"
    "1:00 Caper mayonnaise\n"
    "\n"
    "== Charred cabbage with caper mayonnaise\n"
    "Serves 4–6\n"
    "Time: 50 minutes, 40 of them unattended\n"
    "\n"
    "Ingredients\n"
    "- 1 pointed cabbage, quartered\n"
    "- 2 (400 g/14 oz) cans white beans, drained\n"
    "- 40 g butter (1½ oz), divided\n"
    "- 500 ml vegetable stock (2 cups)\n"
    "- 110 g breadcrumbs (1 cup), optional\n"
    "- salt, to taste\n"
    "\n"
    "Ingredients for the caper mayonnaise\n"
    "- 1 egg yolk\n"
    "- 1–2 tsp mustard, or ½ tsp wasabi\n"
    "- capers\n"
    "\n"
    "Steps\n"
    "1. Heat the oven to 200 °C (400 °F).\n"
    "2. Fry the cabbage over medium heat for 8–10 minutes.\n"
    "3. Whisk the yolk with the mustard.\n"
    "4. Chill overnight.\n"
    "\n"
    "Notes\n"
    "- Contains egg.\n"
    "- It keeps for two days in the fridge.\n"
    "- 200 at 0:30 was said without a scale; it is read as Celsius.\n"
    "\n"
    "== Untitled dish\n"
    "\n";

static void
test_description(void **state)
{
	static const struct finding_kind allergen = {.code = "allergen"};
	struct draft *d = stamped_draft(*state);

	d->finding->kind = &allergen;
	d->finding->message = STR("contains egg");
	d->finding->dish = 0;
	expect(written(*state, d, "description"), description);
	d->findings = d->dishes = 0;
	expect(written(*state, d, "description"), "No recipe was found in this episode.\n");
}

static void
test_brief(void **state)
{
	static const struct {
		const char *text;
		size_t most;
		const char *sentence, *all;
	} rows[] = {
	    {"Bake. Cool.", 60, "Bake", "Bake. Cool."},
	    {"Bake at 1.5 bar. Cool.", 60, "Bake at 1.5 bar", "Bake at 1.5 bar. Cool."},
	    {"Bake it, then cool it.", 10, "Bake it…", "Bake it…"},
	    {"Bake. Then cool it.", 10, "Bake", "Bake. …"},
	    {"Really?", 60, "Really?", "Really?"},
	    {"Crème fraîche", 13, "Crème fraîche", "Crème fraîche"},
	    {"", 60, "", ""},
	};

	for (size_t i = 0; i < COUNT(rows); i++) {
		struct buf one = buf_in(*state), all = buf_in(*state);

		brief_sentence(&one, str_of(rows[i].text), rows[i].most);
		brief_text(&all, str_of(rows[i].text), rows[i].most);
		expect(buf_str(&one), rows[i].sentence);
		expect(buf_str(&all), rows[i].all);
	}
}

/* ---- structured data ---------------------------------------------------- */

static json_t *
read_back(struct arena *a, const struct draft *d)
{
	struct str text = written(a, d, "jsonld");
	json_error_t e;
	json_t *root = json_loadb(text.p, text.n, JSON_REJECT_DUPLICATES, &e);

	if (!root)
		print_error("line %d: %s\n", e.line, e.text);
	assert_non_null(root);
	return root;
}

static const char *
string_of(json_t *o, const char *key)
{
	const char *s = json_string_value(json_object_get(o, key));

	return s ? s : "";
}

static void
expect_steps(json_t *section, const char *name, const char *first, size_t steps)
{
	json_t *list = json_object_get(section, "itemListElement");

	assert_string_equal(string_of(section, "@type"), "HowToSection");
	assert_string_equal(string_of(section, "name"), name);
	assert_int_equal(json_array_size(list), steps);
	assert_string_equal(string_of(json_array_get(list, 0), "@type"), "HowToStep");
	assert_string_equal(string_of(json_array_get(list, 0), "text"), first);
}

static void
test_jsonld(void **state)
{
	struct draft *d = stamped_draft(*state);
	json_t *root = read_back(*state, d), *one = json_array_get(root, 0), *list;

	assert_int_equal(json_array_size(root), 2);
	assert_string_equal(string_of(one, "@context"), "https://schema.org");
	assert_string_equal(string_of(one, "@type"), "Recipe");
	assert_string_equal(
	    string_of(one, "name"), "Charred cabbage with caper mayonnaise");
	assert_string_equal(string_of(one, "inLanguage"), "en");
	assert_string_equal(string_of(one, "recipeYield"), "4–6 servings");
	assert_string_equal(string_of(one, "totalTime"), "PT50M");
	list = json_object_get(one, "tool");
	assert_string_equal(
	    string_of(json_array_get(list, 0), "name"), "9 in roasting tin");
	list = json_object_get(one, "recipeIngredient");
	assert_int_equal(json_array_size(list), 9);
	assert_string_equal(
	    json_string_value(json_array_get(list, 2)), "40 g butter (1½ oz), divided");
	list = json_object_get(one, "recipeInstructions");
	assert_int_equal(json_array_size(list), 3);
	expect_steps(json_array_get(list, 0), "Charred cabbage with caper mayonnaise",
	    "Heat the oven to 200 °C (400 °F).", 2);
	expect_steps(json_array_get(list, 1), "Caper mayonnaise",
	    "Whisk the yolk with the mustard.", 1);
	/* Nothing is made up for what is not known. */
	assert_int_equal(json_object_size(json_array_get(root, 1)), 4);
	json_decref(root);
}

static void
test_jsonld_values(void **state)
{
	static const struct {
		int64_t total_s;
		const char *want;
	} rows[] = {
	    {90, "PT1M30S"}, {3600, "PT1H"}, {5405, "PT1H30M5S"}, {129600, "PT36H"}};
	struct draft *d = stamped_draft(*state);
	json_t *root;

	d->dish->yield_unit = STR("roll");
	for (size_t i = 0; i < COUNT(rows); i++) {
		d->dish->total_ms = rows[i].total_s * 1000;
		root = read_back(*state, d);
		assert_string_equal(
		    string_of(json_array_get(root, 0), "totalTime"), rows[i].want);
		assert_string_equal(
		    string_of(json_array_get(root, 0), "recipeYield"), "4–6 rolls");
		json_decref(root);
	}
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_chapters),
	    cmocka_unit_test(test_few_chapters),
	    cmocka_unit_test(test_description),
	    cmocka_unit_test(test_brief),
	    cmocka_unit_test(test_jsonld),
	    cmocka_unit_test(test_jsonld_values),
	};

	return cmocka_run_group_tests(tests, hold_arena, drop_arena);
}
