/* SPDX-License-Identifier: ISC */
/*
 * The archive from inside: what goes in comes out, is found, is taken out again
 * without a trace; house consistency; the whole of it.
 */
#include "shelf.h"

#include <stdio.h>

#include "archive/pack.h"

static struct answer
find(struct shelf *s, struct question q)
{
	struct answer a;
	struct err e = {0};

	q.limit = 10;
	if (!archive_find(s->archive, &s->arena, &q, &a, &e))
		fail_msg("%s: %s", e.where, e.text);
	return a;
}

static struct answer
find_word(struct shelf *s, const char *word)
{
	struct str w = str_of(word);

	return find(s, (struct question){.word = &w, .words = 1});
}

/* ---- in and out --------------------------------------------------------- */

static void
what_goes_in_comes_out(void **state)
{
	struct shelf *s = *state;
	struct kept_episode k;
	struct err e = {0};

	assert_int_equal(keep(s, "soup.txt", soup), KEPT_NEW);
	assert_true(archive_episode(s->archive, &s->arena, STR("soup.txt"), &k, &e));
	assert_true(str_is_z(k.source, soup));
	assert_true(str_find(k.json, STR("\"leek soup\"")) < k.json.n);
	assert_false(archive_episode(s->archive, &s->arena, STR("stew.txt"), &k, &e));
	assert_true(e.set);
}

static void
once_more_takes_its_place(void **state)
{
	struct shelf *s = *state;
	struct answer a;

	keep(s, "soup.txt", soup);
	assert_int_equal(keep(s, "soup.txt",
			     "[0:01] Today it's a turnip pie.\n"
			     "[0:05] Bake 2 turnips for 40 minutes.\n"),
	    KEPT_AGAIN);
	assert_int_equal(rows(s, "episode"), 1);
	assert_int_equal(find_word(s, "leek").hits, 0);
	a = find_word(s, "turnips");
	assert_int_equal(a.hits, 1);
	assert_true(str_is_z(a.hit[0].date, "2026-03-14"));
}

static void
forgetting_leaves_nothing(void **state)
{
	static const char *const tables[] = {"episode", "pack", "dish", "ingredient",
	    "step", "gear", "measure", "finding", "practice", "word"};
	struct shelf *s = *state;
	struct err e = {0};
	bool found;

	keep(s, "soup.txt", soup);
	assert_true(rows(s, "ingredient") >= 3 && rows(s, "word") > 10);
	assert_true(archive_forget(s->archive, STR("soup.txt"), &found, &e) && found);
	for (size_t i = 0; i < COUNT(tables); i++)
		assert_int_equal(rows(s, tables[i]), 0);
	assert_int_equal(find_word(s, "leek").hits, 0);
	assert_true(archive_forget(s->archive, STR("soup.txt"), &found, &e) && !found);
}

static void
told(void *context, struct str what)
{
	(void)context;
	print_error("%.*s\n", (int)what.n, what.p);
}

static void
it_is_sound(void **state)
{
	struct shelf *s = *state;
	struct err e = {0};

	keep(s, "soup.txt", soup);
	keep(s, "soup.txt", soup);
	assert_true(archive_verify(s->archive, told, NULL, &e));
}

static void
a_damaged_text_is_told(void **state)
{
	struct shelf *s = *state;
	struct kept_episode k;
	struct err e = {0};

	keep(s, "soup.txt", soup);
	assert_true(store_script(s->archive, "UPDATE pack SET block = x'0102'", &e));
	assert_false(archive_episode(s->archive, &s->arena, STR("soup.txt"), &k, &e));
	assert_true(strstr(e.text, "damaged") != NULL);
}

/* ---- texts -------------------------------------------------------------- */

static void
packed_texts_come_back(void **state)
{
	struct shelf *s = *state;
	struct packed in = {STR("a script"), STR("passages of it"), STR("{\"a\":1}"),
	    STR(""), STR(""), STR("")};
	struct packed out = in;
	struct str block = pack_deflate(&s->arena, &in);

	assert_true(pack_inflate(&s->arena, block, &out));
	assert_true(str_is(in.source, out.source) && str_is(in.passages, out.passages) &&
		    str_is(in.json, out.json));
	block.n--;
	assert_false(pack_inflate(&s->arena, block, &out));
}

static void
json_loses_its_blanks(void **state)
{
	struct shelf *s = *state;
	struct str packed = pack_json(
	    &s->arena, STR("{\n  \"a b\": [1, \"c \\\" d\\\\\"],\n  \"e\": 2\n}\n"));

	assert_true(str_is_z(packed, "{\"a b\":[1,\"c \\\" d\\\\\"],\"e\":2}"));
}

/* ---- hits --------------------------------------------------------------- */

static void
hits_have_all_they_need(void **state)
{
	struct shelf *s = *state;
	struct answer a;
	const struct hit *h;

	keep(s, "soup.txt", soup);
	a = find_word(s, "softens");
	assert_int_equal(a.hits, 1);
	h = &a.hit[0];
	assert_true(str_is_z(h->dish, "leek soup"));
	assert_true(str_is_z(h->episode, "soup.txt"));
	assert_int_equal(h->at_ms, 20000);
	assert_true(str_is_z(h->link, "https://video.example/leeks#t=20"));
	assert_int_equal(h->marks, 1);
	assert_true(
	    str_is_z(str_cut(h->sentence, h->mark[0].beg, h->mark[0].end), "Soften"));
}

static void
filters_hold(void **state)
{
	struct shelf *s = *state;
	struct with milk = {STR("milk"), true, {400, 500, DIM_VOLUME}};
	struct with more = {STR("milk"), true, {900, 1000, DIM_VOLUME}};
	struct str leek = STR("leek"), egg = STR("egg");

	keep(s, "soup.txt", soup);
	assert_int_equal(find(s, (struct question){.with = &milk, .withs = 1}).hits, 1);
	assert_int_equal(find(s, (struct question){.with = &more, .withs = 1}).hits, 0);
	assert_int_equal(
	    find(s, (struct question){.without = &leek, .withouts = 1}).hits, 0);
	assert_int_equal(
	    find(s, (struct question){.without = &egg, .withouts = 1}).hits, 1);
	assert_int_equal(find(s, (struct question){.free_of = STR("milk")}).hits, 0);
	assert_int_equal(find(s, (struct question){.free_of = STR("fish")}).hits, 1);
	assert_int_equal(find(s, (struct question){.action = STR("simmer")}).hits, 1);
	assert_int_equal(find(s, (struct question){.episode = STR("SOUP")}).hits, 1);
	assert_int_equal(find(s, (struct question){.since = STR("2026-03")}).hits, 1);
	assert_int_equal(find(s, (struct question){.until = STR("2026-03")}).hits, 1);
	assert_int_equal(find(s, (struct question){.until = STR("2026-02")}).hits, 0);
}

/* A single figure takes in what cooks round it to; a reading is a reading. */
static void
temperatures_are_found_by_kind(void **state)
{
	static const struct {
		double c;
		enum measure_role role;
		size_t hits;
	} rows[] = {
	    {177, ROLE_NONE, 1},      /* 350 F, the oven */
	    {180, ROLE_APPLIANCE, 1}, /* what cooks set for it */
	    {190, ROLE_APPLIANCE, 0},
	    {74, ROLE_INTERNAL, 1},
	    {74, ROLE_APPLIANCE, 0},
	    {76, ROLE_INTERNAL, 0},
	    {76, ROLE_NONE, 0},
	};
	struct shelf *s = *state;

	keep(s, "hot.txt",
	    "[0:02] Today it's roast chicken.\n"
	    "[0:10] Heat the oven to 350 degrees Fahrenheit.\n"
	    "[0:20] Roast the chicken for 80 minutes, until it is 74 Celsius inside.\n");
	for (size_t i = 0; i < COUNT(rows); i++) {
		struct question q = {.heated = true,
		    .temperature = {rows[i].c, rows[i].c, DIM_TEMPERATURE},
		    .role = rows[i].role};

		if (find(s, q).hits != rows[i].hits)
			fail_msg("row %zu", i);
	}
}

static void
near_answers_say_so(void **state)
{
	struct shelf *s = *state;
	struct str words[] = {STR("leek"), STR("marzipan")};
	struct answer a;

	keep(s, "soup.txt", soup);
	a = find(s, (struct question){.word = words, .words = 2});
	assert_int_equal(a.hits, 1);
	assert_true(a.loose);
	assert_int_equal(a.nowheres, 1);
	assert_true(str_is_z(a.nowhere[0], "marzipan"));
}

/* ---- the past ----------------------------------------------------------- */

static const char roast[] = "[0:02] Today it's roast chicken.\n"
			    "[0:10] Heat the oven to %d Celsius.\n"
			    "[0:20] Roast the chicken at %d Celsius for %d minutes.\n";

static size_t
unlike(struct shelf *s, const char *name, int c, int minutes, struct str *message)
{
	struct tamis_options o = {0};
	struct err e = {0};
	struct str script = arena_fmt(&s->arena, roast, c, c, minutes);
	struct draft *d = tamis_draft(s->grammar, &o, script, name, &e);
	size_t n = 0;

	assert_non_null(d);
	assert_true(archive_compare(s->archive, s->grammar, d, &e));
	for (size_t i = 0; i < d->findings; i++)
		if (strcmp(d->finding[i].kind->code, "unlike-before") == 0) {
			*message = arena_str(&s->arena, d->finding[i].message);
			n++;
		}
	tamis_draft_free(d);
	return n;
}

static void
what_differs_from_the_past_is_asked(void **state)
{
	static const char *const names[] = {"one.txt", "two.txt", "three.txt"};
	struct shelf *s = *state;
	struct str message = {"", 0};

	for (size_t i = 0; i < COUNT(names); i++) {
		assert_int_equal(unlike(s, "new.txt", 120, 80, &message), 0);
		keep(s, names[i], arena_fmt(&s->arena, roast, 200, 200, 75 + 5 * (int)i).p);
	}
	assert_int_equal(unlike(s, "new.txt", 210, 80, &message), 0);
	assert_int_equal(unlike(s, "new.txt", 120, 80, &message), 1);
	for (size_t i = 0; i < COUNT(names); i++)
		assert_true(str_find(message, str_of(names[i])) < message.n);
	assert_int_equal(unlike(s, "new.txt", 200, 20, &message), 1);
	assert_int_equal(unlike(s, "one.txt", 120, 80, &message), 0);
	keep(s, "season 2/new.txt", arena_fmt(&s->arena, roast, 120, 120, 80).p);
	assert_int_equal(unlike(s, "new.txt", 120, 80, &message), 1);
}

/* ---- the whole ---------------------------------------------------------- */

static void
a_survey_counts(void **state)
{
	struct shelf *s = *state;
	struct survey survey;
	struct err e = {0};

	keep(s, "soup.txt", soup);
	for (int i = 0; i < 3; i++)
		keep(s, arena_fmt(&s->arena, "%d.txt", i).p,
		    arena_fmt(&s->arena, roast, 190 + 10 * i, 190 + 10 * i, 80).p);
	assert_true(archive_survey(s->archive, s->grammar, &s->arena, &survey, &e));
	assert_int_equal(survey.episodes, 4);
	assert_int_equal(survey.dish_n, 2);
	assert_true(str_is_z(survey.dish[0].name, "roast chicken"));
	assert_int_equal(survey.dish[0].by[SPRING], 3);
	assert_true(survey.habits >= 2);
	assert_int_equal(survey.habit[0].quantity, QUANTITY_SETTING);
	assert_int_equal(survey.habit[0].dots, 3);
	assert_true(survey.habit[0].dot[0].min == 190 && survey.habit[0].dot[2].max == 210);
	assert_true(survey.episode_n == 4 && survey.codes > 0);
}

static bool
count_line(void *lines, struct str line)
{
	assert_true(str_starts(line, STR("{\"episode\":")) && str_ends(line, STR("}")));
	assert_true(str_find_char(line, '\n') == line.n);
	++*(size_t *)lines;
	return true;
}

static void
an_export_has_a_line_for_each(void **state)
{
	struct shelf *s = *state;
	struct err e = {0};
	size_t lines = 0;

	keep(s, "soup.txt", soup);
	keep(s, "more.txt", soup);
	assert_true(archive_export(s->archive, count_line, &lines, &e));
	assert_int_equal(lines, 4); /* a dish, and what is said around it */
}

/* ---- running ------------------------------------------------------------ */

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    TEST(what_goes_in_comes_out),
	    TEST(once_more_takes_its_place),
	    TEST(forgetting_leaves_nothing),
	    TEST(it_is_sound),
	    TEST(a_damaged_text_is_told),
	    TEST(packed_texts_come_back),
	    TEST(json_loses_its_blanks),
	    TEST(hits_have_all_they_need),
	    TEST(filters_hold),
	    TEST(temperatures_are_found_by_kind),
	    TEST(near_answers_say_so),
	    TEST(what_differs_from_the_past_is_asked),
	    TEST(a_survey_counts),
	    TEST(an_export_has_a_line_for_each),
	};

	return cmocka_run_group_tests(tests, set_up, tear_down);
}
