/* SPDX-License-Identifier: ISC */
/*
 * The JSON draft: read back key by key, against its schema, with text that
 * is no UTF-8, and the same bytes twice.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>

#include <cmocka.h>
#include <jansson.h>

#include "../support/hold.h"
#include "sample.h"

static struct str
written(struct arena *a, const struct draft *d)
{
	struct buf out = buf_in(a);

	tamis_writer_find("json")->write(d, NULL, &(struct tamis_style){0}, &out);
	return buf_str(&out);
}

static json_t *
read_back(struct arena *a, const struct draft *d)
{
	struct str text = written(a, d);
	json_error_t e;
	json_t *root = json_loadb(text.p, text.n, JSON_REJECT_DUPLICATES, &e);

	if (!root)
		print_error("line %d: %s\n", e.line, e.text);
	assert_non_null(root);
	return root;
}

/* The value at "dishes.0.name"; fails where there is none. */
static json_t *
at(json_t *v, const char *path)
{
	struct str rest = str_of(path);

	while (rest.p && v) {
		struct str key = str_next(&rest, '.');
		char name[64];
		uint64_t index;

		snprintf(name, sizeof name, "%.*s", (int)key.n, key.p);
		v = str_to_u64(key, &index) ? json_array_get(v, (size_t)index)
					    : json_object_get(v, name);
	}
	if (!v)
		print_error("nothing at %s\n", path);
	assert_non_null(v);
	return v;
}

struct row {
	const char *path, *want; /* want as compact JSON */
};

static const struct row rows[] = {
    {"tamis", "1"},
    {"episode.title", "null"},
    {"episode.source", "\"lock-keepers.vtt\""},
    {"episode.format", "\"webvtt\""},
    {"episode.language", "\"en\""},
    {"episode.region", "\"uk\""},
    {"episode.region_stated", "false"},
    {"episode.length_s", "118.25"},
    {"dishes.0.name", "\"charred cabbage with caper mayonnaise\""},
    {"dishes.0.start_s", "21"},
    {"dishes.0.end_s", "118"},
    {"dishes.0.yield", "{\"min\":4,\"max\":6,\"unit\":\"serving\"}"},
    {"dishes.0.time", "{\"active_s\":600,\"total_s\":3000,\"claimed_s\":1800}"},
    {"dishes.0.notes.0", "\"It keeps for two days in the fridge.\""},
    {"dishes.0.equipment.0.size", "{\"min\":9,\"max\":9,\"unit\":\"inch\"}"},
    {"dishes.0.equipment.0.at_s", "32"},
    {"dishes.0.parts.0.name", "\"\""},
    {"dishes.0.parts.0.ingredients.0.amount", "{\"min\":1,\"max\":1,\"unit\":\"\"}"},
    {"dishes.0.parts.0.ingredients.0.metric", "null"},
    {"dishes.0.parts.0.ingredients.0.note", "null"},
    {"dishes.0.parts.0.ingredients.0.at_s", "21.5"},
    {"dishes.0.parts.0.ingredients.0.cue_s", "21"},
    {"dishes.0.parts.0.ingredients.0.span", "[60,75]"},
    {"dishes.0.parts.0.ingredients.1.size", "{\"min\":400,\"max\":400,\"unit\":\"gram\"}"},
    {"dishes.0.parts.0.ingredients.2.note", "\"divided\""},
    {"dishes.0.parts.0.ingredients.4.optional", "true"},
    {"dishes.0.parts.0.ingredients.5.amount", "null"},
    {"dishes.0.parts.0.ingredients.5.uses.1", "{\"at_s\":95,\"span\":[300,304]}"},
    {"dishes.0.parts.0.steps.0.temperature",
	"{\"min\":200,\"max\":200,\"unit\":\"celsius\",\"unit_stated\":false}"},
    {"dishes.0.parts.0.steps.0.heat", "null"},
    {"dishes.0.parts.0.steps.0.duration", "null"},
    {"dishes.0.parts.0.steps.0.doneness", "null"},
    {"dishes.0.parts.0.steps.1.temperature", "null"},
    {"dishes.0.parts.0.steps.1.heat", "\"medium\""},
    {"dishes.0.parts.0.steps.1.recast", "false"},
    {"dishes.0.parts.0.steps.1.duration", "{\"min_s\":480,\"max_s\":600}"},
    {"dishes.0.parts.0.steps.1.uses", "[0,2]"},
    {"dishes.0.parts.0.steps.2.action", "null"},
    {"dishes.0.parts.0.steps.2.duration", "{\"min_s\":null,\"max_s\":null}"},
    {"dishes.0.parts.0.steps.2.doneness",
	"{\"text\":\"cold right through\",\"min\":40,\"max\":40,\"unit\":\"fahrenheit\"}"},
    {"dishes.0.parts.0.steps.2.passive", "true"},
    {"dishes.0.parts.0.steps.2.at_s", "96.125"},
    {"dishes.0.parts.1.name", "\"caper mayonnaise\""},
    {"dishes.0.parts.1.ingredients.1.alternatives.0",
	"{\"item\":\"wasabi\",\"amount\":{\"min\":0.5,\"max\":0.5,\"unit\":\"teaspoon\"}}"},
    {"dishes.0.parts.1.ingredients.2.amount", "{\"min\":null,\"max\":null,\"unit\":\"\"}"},
    {"dishes.1.name", "null"},
    {"dishes.1.start_s", "null"},
    {"dishes.1.yield", "null"},
    {"dishes.1.time", "{\"active_s\":null,\"total_s\":null,\"claimed_s\":null}"},
    {"measures.0.kind", "\"amount\""},
    {"measures.0.min", "0.3333333333"},
    {"measures.0.base", "{\"min\":78.8627455,\"max\":78.8627455,\"unit\":\"millilitre\"}"},
    {"measures.0.at_s", "12345.678"},
    {"measures.0.role", "null"},
    {"measures.0.bound", "null"},
    {"measures.1.base", "{\"min\":176.6666667,\"max\":176.6666667,\"unit\":\"celsius\"}"},
    {"measures.1.role", "\"appliance\""},
    {"measures.1.bound", "\"max\""},
    {"measures.1.approximate", "true"},
    {"measures.2.min", "null"},
    {"measures.2.unit", "null"},
    {"measures.2.base", "null"},
    {"measures.2.at_s", "null"},
    {"measures.2.role", "\"rest\""},
    {"measures.3.kind", "\"count\""},
    {"measures.3.unit", "\"\""},
    {"findings.0.code", "\"missing-scale\""},
    {"findings.0.severity", "\"warning\""},
    {"findings.0.suggestion", "null"},
    {"findings.0.dish", "0"},
    {"findings.0.step", "null"},
    {"findings.0.status", "\"open\""},
    {"findings.0.related.0",
	"{\"at_s\":0,\"span\":[0,0],\"message\":\"the other oven temperature\"}"},
};

static void
test_keys(void **state)
{
	struct arena *a = *state;
	json_t *root = read_back(a, sample_draft(a));
	size_t flags = JSON_COMPACT | JSON_ENCODE_ANY | JSON_REAL_PRECISION(10);

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		char *got = json_dumps(at(root, rows[i].path), flags);

		if (strcmp(got, rows[i].want))
			print_error("at %s\n", rows[i].path);
		assert_string_equal(got, rows[i].want);
		free(got);
	}
	json_decref(root);
}

/* Reading and dumping again in the same layout gives the same bytes. */
static void
test_round_trip(void **state)
{
	struct arena *a = *state;
	const struct draft *d = sample_draft(a);
	struct str text = written(a, d);
	json_t *root = read_back(a, d);
	char *again = json_dumps(root, JSON_INDENT(2) | JSON_REAL_PRECISION(10));

	assert_true(str_is_z(str_cut(text, 0, text.n - 1), again));
	assert_int_equal(text.p[text.n - 1], '\n');
	assert_true(str_is(text, written(a, d)));
	free(again);
	json_decref(root);
}

/* Runs the schema script over text; its exit status, -1 without Python. */
static int
schema_status(struct str text)
{
	FILE *p = popen("python=$(sh tests/conformance/python.sh) || exit 127; "
			"\"$python\" -W ignore tests/conformance/schema.py - 2>/dev/null",
	    "w");
	int status;

	assert_non_null(p);
	fwrite(text.p, 1, text.n, p);
	status = pclose(p);
	return status == 127 << 8 ? -1 : status >> 8;
}

static void
test_schema(void **state)
{
	struct arena *a = *state;
	struct draft *d = sample_draft(a);
	int status = schema_status(written(a, d));

	if (status < 0)
		skip();
	assert_int_equal(status, 0);
	/* The script finds what is wrong: an index, a range, a word. */
	d->dish->part->step[1].use[1] = 99;
	assert_int_equal(schema_status(written(a, d)), 1);
	d = sample_draft(a);
	d->measure[0].value.max = ratio_make(1, 4);
	assert_int_equal(schema_status(written(a, d)), 1);
	assert_int_equal(schema_status(STR("{\"tamis\": 1}")), 1);
	assert_int_equal(schema_status(STR("not json")), 1);
}

static void
test_hostile(void **state)
{
	struct arena *a = *state;
	struct draft *d = sample_draft(a);
	json_t *root;

	d->script->name = (struct str)Z("a\xff\"\\\n\x01.vtt");
	d->script->title = (struct str)Z("nul \0 and \xed\xa0\x80 surrogate");
	d->dish->name = (struct str)Z("\xe2\x82 cut short \xc3");
	root = read_back(a, d);
	assert_string_equal(
	    json_string_value(at(root, "episode.source")), "a\xef\xbf\xbd\"\\\n\x01.vtt");
	assert_string_equal(json_string_value(at(root, "episode.title")),
	    "nul \xef\xbf\xbd and \xef\xbf\xbd\xef\xbf\xbd\xef\xbf\xbd surrogate");
	assert_non_null(
	    strstr(json_string_value(at(root, "dishes.0.name")), " cut short "));
	json_decref(root);
}

static void
test_empty(void **state)
{
	struct arena *a = *state;
	struct draft *d = sample_draft(a);
	json_t *root;

	d->dishes = d->measures = d->findings = 0;
	d->region = NULL;
	root = read_back(a, d);
	assert_int_equal(json_array_size(at(root, "dishes")), 0);
	assert_int_equal(json_array_size(at(root, "measures")), 0);
	assert_int_equal(json_array_size(at(root, "findings")), 0);
	assert_true(json_is_null(at(root, "episode.region")));
	json_decref(root);
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_keys),
	    cmocka_unit_test(test_round_trip),
	    cmocka_unit_test(test_schema),
	    cmocka_unit_test(test_hostile),
	    cmocka_unit_test(test_empty),
	};

	return cmocka_run_group_tests(tests, hold_arena, drop_arena);
}
