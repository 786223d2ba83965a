/* SPDX-License-Identifier: ISC */
/*
 * The pages, from a script and from the sample draft: what is tied to what,
 * escapes, bars of the timeline, variants of a line.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stdio.h>

#include <cmocka.h>

#include "../support/expect.h"
#include "../support/hold.h"
#include "page/digest.h"
#include "page/lane.h"
#include "page/schedule.h"
#include "page/ties.h"
#include "page/variants.h"
#include "sample.h"
#include "write/escape.h"

/* The sample over a source text that its spans fit in. */
static struct draft *
set_draft(struct arena *a)
{
	struct draft *d = sample_draft(a);
	char *text = arena_alloc(a, 400, 1);

	memset(text, 'x', 400);
	d->script->source = d->script->text = (struct str){text, 400};
	d->script->stamped = true;
	d->script->pieces = d->script->cues = 1;
	d->script->piece = arena_new(a, struct piece);
	d->script->piece->text_n = d->script->piece->source_n = 400;
	d->script->cue = arena_new(a, struct cue);
	d->script->cue->beg_ms = 21000;
	d->script->cue->end_ms = 118250;
	d->script->cue->text = (struct span){0, 400};
	return d;
}

static struct str
written(struct arena *a, const struct draft *d, const char *format)
{
	struct tamis_style style = {0};
	struct buf out = buf_in(a);

	tamis_writer_find(format)->write(d, NULL, &style, &out);
	return buf_str(&out);
}

static void
test_ties(void **state)
{
	struct ties t = ties_of(*state, set_draft(*state));
	const struct stretch *s = stretch_at(&t, 60);

	/* The cabbage, and the amount inside its words. */
	assert_non_null(s);
	assert_int_equal(s->ink, INK_AMOUNT);
	assert_int_equal(s->things, 1);
	assert_int_equal(s->thing[0], thing_ingredient(&t, 0, 0, 0));
	/* Salt is used twice. */
	assert_int_equal(stretch_at(&t, 91)->thing[0], thing_ingredient(&t, 0, 0, 5));
	assert_int_equal(stretch_at(&t, 301)->thing[0], thing_ingredient(&t, 0, 0, 5));
	/* Degrees and the words of the step overlap. */
	s = stretch_at(&t, 105);
	assert_int_equal(s->ink, INK_HEAT);
	assert_int_equal(s->thing[0], thing_step(&t, 0, 0, 0));
	assert_null(stretch_at(&t, 399));
	for (size_t i = 1; i < t.stretches; i++)
		assert_true(t.stretch[i - 1].span.end <= t.stretch[i].span.beg);
}

static void
test_schedule(void **state)
{
	struct draft *d = set_draft(*state);
	struct step *fry = &d->dish->part[0].step[1], *chill = &d->dish->part[0].step[2];
	struct schedule s = schedule_of(*state, d->dish);

	assert_int_equal(s.bars, 2);
	assert_int_equal(s.bar[0].end_ms, 600000);
	assert_true(s.bar[1].open);
	assert_int_equal(s.bar[1].beg_ms, 600000);
	chill->duration.known = true;
	chill->duration.max_ms = 900000;
	chill->beside = true;
	s = schedule_of(*state, d->dish);
	assert_int_equal(s.bar[1].beg_ms, 0);
	assert_int_equal(s.end_ms, 900000);
	fry->duration.present = false;
	assert_int_equal(schedule_of(*state, d->dish).bars, 1);
}

static void
test_lanes(void **state)
{
	struct buf out = buf_in(*state);
	struct lanes l = {.out = &out, .span_ms = 3000};
	struct rows rows = {{0}, 0};

	lane_put_x(&l, 1000);
	expect(buf_str(&out), "33.33%");
	out.n = 0;
	lane_put_x(&l, 9999);
	expect(buf_str(&out), "100.00%");
	assert_int_equal(rows_take(&rows, 0, 20), 0);
	assert_int_equal(rows_take(&rows, 10, 20), 1);
	assert_int_equal(rows_take(&rows, 30, 20), 0);
	assert_int_equal(rows.used, 2);
}

static void
test_variants(void **state)
{
	struct draft *d = set_draft(*state);
	struct ties t = ties_of(*state, d);
	struct tamis_style style = {0};
	struct variants *v;
	struct buf out = buf_in(*state);

	d->arena = *state;
	v = variants_of(&t, NULL, &style);
	variants_put(&out, v, thing_ingredient(&t, 0, 1, 0), LINE_QUANTITY, STR("1"));
	assert_true(has(buf_str(&out), "<span class=\"q\" data-v=\""));
	assert_true(has(buf_str(&out), "&#10;2&#10;"));
	assert_true(has(buf_str(&out), ">1</span>"));
	out.n = 0;
	variants_put(&out, v, thing_ingredient(&t, 0, 0, 5), LINE_ITEM, STR("salt"));
	expect(buf_str(&out), "<span class=\"item\">salt</span>");
	out.n = 0;
	variants_put(&out, v, thing_ingredient(&t, 0, 0, 5), LINE_OTHER, STR(""));
	expect(buf_str(&out), "");
	out.n = 0;
	variants_put_times(&out, v, 0);
	assert_true(has(buf_str(&out), ">twice: Serves 8–12</option>"));
	out.n = 0;
	variants_put_times(&out, v, 1);
	assert_true(has(buf_str(&out), ">twice</option>"));
}

static void
test_proof(void **state)
{
	struct draft *d = set_draft(*state);
	struct str page = written(*state, d, "html");

	assert_true(str_starts(page, STR("<!DOCTYPE html>\n")));
	assert_true(str_ends(page, STR("</body>\n</html>\n")));
	assert_true(has(page, "<h1>Untitled episode</h1>"));
	assert_true(has(page, "<span>1 warning</span>"));
	assert_true(has(page, "id=\"n1\""));
	assert_true(has(page, "href=\"#m1\""));
	assert_true(has(page, "200 has no scale; read as Celsius."));
	assert_true(has(page, "rect class=\"bar"));
	d->dishes = d->findings = d->measures = 0;
	page = written(*state, d, "html");
	assert_true(has(page, "No recipe was found in this episode."));
	assert_true(has(page, "Nothing to ask."));
}

/* Every text of a script comes out escaped, in every page. */
static void
test_hostile(void **state)
{
	static const char *const formats[] = {"html", "card", "index"};
	struct draft *d = set_draft(*state);
	struct str evil = STR("<script>\"'&\xff</script>");

	d->dish->name = d->dish->part[1].name = d->dish->note[0] = evil;
	d->dish->equipment->item = d->dish->yield_unit = d->script->title = evil;
	d->dish->part->ingredient[0].item = d->dish->part->ingredient[0].note = evil;
	d->dish->part->ingredient[0].preparation = evil;
	d->dish->part[1].ingredient[1].alternative->item = evil;
	d->dish->part->step[0].text = d->dish->part->step[1].temperature.heat = evil;
	d->finding->message = d->finding->suggestion = evil;
	d->finding->related->message = d->script->name = evil;
	d->script->cue->speaker = d->script->text = evil;
	d->script->cue->text.end = (uint32_t)evil.n;
	for (size_t i = 0; i < d->findings; i++)
		d->finding[i].place.span = d->script->cue->text;
	for (size_t i = 0; i < COUNT(formats); i++) {
		struct str page = written(*state, d, formats[i]);

		assert_false(has(page, "<script>\""));
		assert_true(has(page, "&lt;script&gt;&quot;&#39;&amp;\xef\xbf\xbd"));
		assert_true(str_find_char(page, '\xff') == page.n);
	}
}

static void
test_escape(void **state)
{
	static const struct {
		const char *text, *want;
	} rows[] = {
	    {"salt & pepper", "salt &amp; pepper"},
	    {"<b a=\"1\" c='2'>", "&lt;b a=&quot;1&quot; c=&#39;2&#39;&gt;"},
	    {"tab\tand\nline", "tab\tand\nline"},
	    {"bell\a", "bell\xef\xbf\xbd"},
	    {"\xc2\x85", "\xef\xbf\xbd"},
	    {"\xef\xbf\xbf", "\xef\xbf\xbd"},
	    {"½ crème", "½ crème"},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		b.n = 0;
		escape_html(&b, str_of(rows[i].text));
		expect(buf_str(&b), rows[i].want);
	}
	b.n = 0;
	escape_json_in_html(&b, STR("{\"a\": \"</script><!--\"}"));
	expect(buf_str(&b), "{\"a\": \"\\u003c/script>\\u003c!--\"}");
	b.n = 0;
	escape_webvtt(&b, STR("a -->\n<b>&"));
	expect(buf_str(&b), "a --&gt; &lt;b&gt;&amp;");
}

/* The examples of NIST FIPS 180-2, appendix B, and the empty text. */
static void
test_digest(void **state)
{
	static const struct {
		const char *text, *want;
	} rows[] = {
	    {"", "sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU="},
	    {"abc", "sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0="},
	    {"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
		"sha256-JI1qYdIGOLjlwCaTDD5gOaM85Flk/yFn9uzt1BnbBsE="},
	};
	struct buf b = buf_in(*state);

	for (size_t i = 0; i < COUNT(rows); i++) {
		b.n = 0;
		digest_put(&b, str_of(rows[i].text));
		expect(buf_str(&b), rows[i].want);
	}
}

int
main(void)
{
	const struct CMUnitTest tests[] = {
	    cmocka_unit_test(test_ties),
	    cmocka_unit_test(test_schedule),
	    cmocka_unit_test(test_lanes),
	    cmocka_unit_test(test_variants),
	    cmocka_unit_test(test_proof),
	    cmocka_unit_test(test_hostile),
	    cmocka_unit_test(test_escape),
	    cmocka_unit_test(test_digest),
	};

	return cmocka_run_group_tests(tests, hold_arena, drop_arena);
}
