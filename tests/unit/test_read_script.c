/* SPDX-License-Identifier: ISC */
/*
 * src/read as a whole: encodings, the way back to the source, caps, formats,
 * hostile bytes.
 */
#include "test_read.h"

#include "read/decode.h"

static struct str
cue_text(const struct script *s, size_t i)
{
	assert_true(i < s->cues);
	return str_cut(s->text, s->cue[i].text.beg, s->cue[i].text.end);
}

static void
assert_words(struct str got, const char *want)
{
	if (!str_is_z(got, want))
		fail_msg("got \"%.*s\", wanted \"%s\"", (int)got.n, got.p, want);
}

/* The source bytes of `words`, which stand once in the script's text. */
static struct str
source_of(const struct script *s, const char *words)
{
	size_t at = str_find(s->text, str_of(words));
	struct span span = {(uint32_t)at, (uint32_t)(at + strlen(words))};

	assert_true(at < s->text.n);
	span = script_source(s, span);
	return str_cut(s->source, span.beg, span.end);
}

static void
each_encoding_reads_the_same(void **state)
{
	static const struct {
		const char *name, *bytes;
		size_t n;
	} rows[] = {
#define BYTES(literal) literal, sizeof(literal) - 1
	    {"UTF-8", BYTES("[0:05] \xC2\xBD cr\xC3\xA8me")},
	    {"UTF-8 with a mark", BYTES("\xEF\xBB\xBF[0:05] \xC2\xBD cr\xC3\xA8me")},
	    {"UTF-16, little end first",
		BYTES("\xFF\xFE[\0000\0:\0000\0005\0]\0 \0\xBD\0 \0c\0r\0"
		      "\xE8\0m\0e\0")},
	    {"UTF-16, big end first",
		BYTES("\xFE\xFF\0[\0000\0:\0000\0005\0]\0 \0\xBD\0 \0c\0r\0"
		      "\xE8\0m\0e")},
	    {"Windows-1252", BYTES("[0:05] \xBD cr\xE8me")},
#undef BYTES
	};
	struct arena a;

	(void)state;
	arena_init(&a);
	for (size_t i = 0; i < COUNT(rows); i++) {
		const struct script *s = read_bytes(&a, rows[i].bytes, rows[i].n);

		print_message("%s\n", rows[i].name);
		assert_words(cue_text(s, 0), "\u00BD cr\u00E8me");
		assert_int_equal(s->cue[0].beg_ms, 5000);
		assert_int_equal(s->source.n, rows[i].n);
		assert_memory_equal(s->source.p, rows[i].bytes, rows[i].n);
	}
	arena_release(&a);
}

static void
words_lead_back_to_their_source_bytes(void **state)
{
	static const struct {
		const char *source;
		size_t n;
		const char *words, *want;
		size_t want_n;
	} rows[] = {
#define ROW(source, words, want) {source, sizeof(source) - 1, words, want, sizeof(want) - 1}
	    ROW("[0:05] Melt the butter.", "the", "the"),
	    ROW("[0:05] Melt  \n the  butter.", "Melt the", "Melt  \n the"),
	    ROW("[0:05] Melt  \n the  butter.", " ", " "),
	    ROW("\xEF\xBB\xBF[0:05] cr\xC3\xA8me", "\u00E8", "\xC3\xA8"),
	    ROW("# S\n\n2 &frac12; cups of *hot* milk", "\u00BD cups", "&frac12; cups"),
	    ROW("# S\n\n2 &frac12; cups of *hot* milk", "hot milk", "hot* milk"),
	    ROW("# S\n\na [big pan](http://a.example) of it", "pan of",
		"pan](http://a.example) of"),
	    ROW("WEBVTT\n\n00:01.000 --> 00:02.000\n<b>sa</b>lt &amp; oil", "salt",
		"sa</b>lt"),
	    ROW("WEBVTT\n\n00:01.000 --> 00:02.000\n<b>sa</b>lt &amp; oil", "&", "&amp;"),
	    ROW("WEBVTT\n\n00:01.000 --> 00:02.000\n<b>sa</b>lt &amp; oil", "lt", "lt"),
	    ROW("1\n00:00:01,000 --> 00:00:02,000\nsalt {\\i1}and\noil", "and oil",
		"and\noil"),
	    ROW("\xFF\xFE[\0000\0:\0000\0005\0]\0 \0a\0 \0\xBD\0 \0c\0", "\u00BD c",
		"\xBD\0 \0c\0"),
	    ROW("\xFF\xFE[\0000\0:\0000\0005\0]\0 \0a\0 \0\x3D\xD8\x73\xDC", "\U0001F473",
		"\x3D\xD8\x73\xDC"),
	    ROW("\xFE\xFF\0[\0000\0:\0000\0005\0]\0 \0a\0 \x20\x14\0b", "\u2014b",
		"\x20\x14\0b"),
	    ROW("[0:05] \xBD cup cr\xE8me \x97 hot", "cr\u00E8me", "cr\xE8me"),
	    ROW("[0:05] \xBD cup cr\xE8me \x97 hot", "\u2014", "\x97"),
	    ROW("[0:05] \xBD cup cr\xE8me \x97 hot", "hot", "hot"),
#undef ROW
	};
	struct arena a;

	(void)state;
	arena_init(&a);
	for (size_t i = 0; i < COUNT(rows); i++) {
		const struct script *s = read_bytes(&a, rows[i].source, rows[i].n);
		struct str got = source_of(s, rows[i].words);

		if (!str_is(got, (struct str){rows[i].want, rows[i].want_n}))
			fail_msg("row %zu: %.*s", i, (int)got.n, got.p);
	}
	arena_release(&a);
}

static void
a_span_of_text_is_clipped(void **state)
{
	struct arena a;
	const struct script *s;

	(void)state;
	arena_init(&a);
	s = read_bytes(&a, "[0:05] Melt it.", 15);
	assert_int_equal(script_source(s, (struct span){0, 9999}).end, 15);
	assert_int_equal(script_source(s, (struct span){5000, 9999}).beg, 15);
	assert_int_equal(script_source(s, (struct span){5000, 9999}).end, 15);
	assert_int_equal(script_source(s, (struct span){3, 3}).beg, 10);
	assert_int_equal(script_source(s, (struct span){3, 3}).end, 10);
	s = read_bytes(&a, "", 0);
	assert_int_equal(script_source(s, (struct span){0, 1}).end, 0);
	arena_release(&a);
}

static void
offsets_have_lines_and_columns(void **state)
{
	static const struct {
		const char *source;
		size_t n;
		uint32_t at, line, column;
	} rows[] = {
#define ROW(source, at, line, column) {source, sizeof(source) - 1, at, line, column}
	    ROW("ab\ncd", 0, 1, 1),
	    ROW("ab\ncd", 2, 1, 3),
	    ROW("ab\ncd", 3, 2, 1),
	    ROW("ab\ncd", 99, 2, 3),
	    ROW("ab\r\ncd\re", 4, 2, 1),
	    ROW("ab\r\ncd\re", 7, 3, 1),
	    ROW("\n\n\nx", 3, 4, 1),
	    ROW("cr\xC3\xA8me", 5, 1, 6),
	    ROW("\xFF\xFE"
		"a\0\n\0b\0",
		6, 2, 1),
	    ROW("\xFE\xFF\0a\0\n\0b", 6, 2, 1),
	    ROW("\xFF\xFE\x0A\x01"
		"b\0",
		4, 1, 5), /* U+010A is no line feed */
	    ROW("", 0, 1, 1),
#undef ROW
	};
	struct arena a;

	(void)state;
	arena_init(&a);
	for (size_t i = 0; i < COUNT(rows); i++) {
		const struct script *s = read_bytes(&a, rows[i].source, rows[i].n);
		struct err_place at = script_line(s, rows[i].at);

		if (at.line != rows[i].line || at.column != rows[i].column)
			fail_msg(
			    "row %zu: %u:%u", i, (unsigned)at.line, (unsigned)at.column);
	}
	arena_release(&a);
}

static void
bytes_that_do_not_decode_are_noted(void **state)
{
	static const struct {
		const char *source;
		size_t n;
		uint32_t at;
		const char *note, *text;
	} rows[] = {
#define ROW(source, at, note, text) {source, sizeof(source) - 1, at, note, text}
	    ROW("[0:05] a \xE8 b", 9, "Windows-1252", "a \u00E8 b"),
	    ROW("[0:05] a \x81 b", 9, "Windows-1252", "a \uFFFD b"),
	    ROW("[0:05] \xC2\xBD a \xC2\xBD \x97 b", 15, "stray byte",
		"\u00BD a \u00BD \u2014 b"),
	    ROW("[0:05] \xED\xA0\x80 b", 7, "Windows-1252", "\u00ED\u00A0\u20AC b"),
	    ROW("\xFF\xFE"
		"a\0\0\xD8"
		"b\0",
		4, "lone surrogate", "a\uFFFDb"),
	    ROW("\xFF\xFE"
		"a\0b",
		4, "half a character", "a\uFFFD"),
#undef ROW
	};
	struct arena a;

	(void)state;
	arena_init(&a);
	for (size_t i = 0; i < COUNT(rows); i++) {
		const struct script *s = read_bytes(&a, rows[i].source, rows[i].n);

		assert_int_equal(s->diagnostics, 1);
		assert_int_equal(s->diagnostic[0].span.beg, rows[i].at);
		assert_true(str_find(s->diagnostic[0].text, str_of(rows[i].note)) <
			    s->diagnostic[0].text.n);
		if (i != 3) /* its second character is a blank, which collapses */
			assert_words(cue_text(s, 0), rows[i].text);
	}
	arena_release(&a);
}

static void
utf8_is_told_from_what_is_none(void **state)
{
	static const struct {
		const char *bytes;
		size_t n, want;
	} rows[] = {{"a", 1, 1}, {"\xC2\xBD", 2, 2}, {"\xE2\x80\x94", 3, 3},
	    {"\xF0\x9F\x91\xB3", 4, 4}, {"\xF4\x8F\xBF\xBF", 4, 4}, {"", 0, 0},
	    {"\x80", 1, 0}, {"\xC0\x80", 2, 0}, {"\xC1\xBF", 2, 0}, {"\xE0\x80\x80", 3, 0},
	    {"\xED\xA0\x80", 3, 0}, {"\xF0\x80\x80\x80", 4, 0}, {"\xF4\x90\x80\x80", 4, 0},
	    {"\xF5\x80\x80\x80", 4, 0}, {"\xC2", 1, 0}, {"\xE2\x80", 2, 0},
	    {"\xC2 ", 2, 0}};

	(void)state;
	for (size_t i = 0; i < COUNT(rows); i++)
		if (utf8_length((struct str){rows[i].bytes, rows[i].n}, 0) != rows[i].want)
			fail_msg("row %zu", i);
}

static void
formats_are_told_by_what_they_hold(void **state)
{
	static const struct {
		const char *source, *format;
	} rows[] = {
	    {"", "text"},
	    {"WEBVTT", "webvtt"},
	    {"WEBVTT - Leek soup\n", "webvtt"},
	    {"\uFEFFWEBVTT\n", "webvtt"},
	    {"WEBVTTs are captions.\n", "text"},
	    {"1\n00:00:01,000 --> 00:00:02,000\nHi.\n", "subrip"},
	    {"\n\n1\n00:00:01 --> 00:00:02\nHi.\n", "subrip"},
	    {"00:00:01 --> 00:00:02\nHi.\n", "text"},
	    {"# Soup\n", "markdown"},
	    {"[0:05] Hi.\n# not a heading\n", "text"},
	    {"[0:05] Hi.\n\n## Soup\n", "markdown"},
	    {"| Time | Sound |\n|---|---|\n", "markdown"},
	    {"---\ntitle: Soup\n---\n", "markdown"},
	    {"[0:05] A **hot** pan.\n", "markdown"},
	    {"**[0:05]** A hot pan.\n", "text"},
	    {"- 2 leeks\n- salt\n", "text"},
	};
	struct arena a;

	(void)state;
	arena_init(&a);
	for (size_t i = 0; i < COUNT(rows); i++)
		assert_string_equal(
		    read_bytes(&a, rows[i].source, strlen(rows[i].source))->format,
		    rows[i].format);
	arena_release(&a);
}

static void
a_script_knows_its_name_title_and_length(void **state)
{
	static const struct {
		const char *source, *title;
		int64_t length_ms;
		bool stamped;
	} rows[] = {
	    {"", "", -1, false},
	    {"2 leeks\nsalt\n", "", -1, false},
	    {"Leek soup\n\n2 leeks\n", "Leek soup", -1, false},
	    {"Leek soup\n\n[0:05] Hi.\n[0:21] Bye.\n", "Leek soup", 21000, true},
	    {"0:05-0:21 Hi.\n", "", 21000, true},
	    {"WEBVTT\n\n00:01.000 --> 00:04.000\nHi.\n", "", 4000, true},
	};
	struct arena a;

	(void)state;
	arena_init(&a);
	for (size_t i = 0; i < COUNT(rows); i++) {
		const struct script *s =
		    read_bytes(&a, rows[i].source, strlen(rows[i].source));

		assert_words(s->name, "soup.txt");
		assert_words(s->title, rows[i].title);
		assert_int_equal(s->length_ms, rows[i].length_ms);
		assert_int_equal(s->stamped, rows[i].stamped);
	}
	arena_release(&a);
}

static void
what_is_over_a_cap_is_refused(void **state)
{
	struct arena a;
	struct err e = {0};
	struct buf many;

	(void)state;
	arena_init(&a);
	assert_null(script_read(&a, STR("12345"), "x", 4, &e));
	assert_true(e.set);
	assert_non_null(strstr(e.text, "5 bytes"));
	assert_non_null(strstr(e.text, "source cap of 4 bytes"));
	e = (struct err){0};
	assert_non_null(script_read(&a, STR("1234"), "x", 4, &e));
	assert_false(e.set);
	many = buf_in(&a);
	for (int i = 0; i < 200001; i++)
		buf_put_z(&many, "a\n\n");
	assert_null(script_read(&a, buf_str(&many), "x", 0, &e));
	assert_non_null(strstr(e.text, "cap of 200000 cues"));
	e = (struct err){0};
	assert_non_null(script_read(&a, str_cut(buf_str(&many), 3, many.n), "x", 0, &e));
	arena_release(&a);
}

/* Each would take minutes if anything in the reading were quadratic. */
static void
hostile_bytes_are_read_in_linear_time(void **state)
{
	static const struct {
		const char *head, *again;
	} rows[] = {{"", "\n"}, {"", "x"}, {"", "\xFF"}, {"", "1:"}, {"", "[0:01] "},
	    {"", "[Music] "}, {"", "AA: "}, {"", "(("}, {"", "> "}, {"", "1) "},
	    {"[0:01] ", "- "}, {"# S\n\n", "["}, {"# S\n\n", "*"}, {"# S\n\na", "_"},
	    {"# S\n\n", "![ ]("}, {"# S\n\n", "<!--"}, {"# S\n\n", "<a"}, {"# S\n\n", "&"},
	    {"# S\n\n", "` "}, {"# S\n\n", "~~"},
	    {"| Time | Picture |\n|---|---|\n| 0:01 | ", "SUPER: "},
	    {"| Time | Picture |\n|---|---|\n", "|"},
	    {"WEBVTT\n\n00:01.000 --> 00:02.000\n", "<"},
	    {"WEBVTT\n\n00:01.000 --> 00:02.000\n", "<b>a"},
	    {"WEBVTT\n\n00:01.000 --> 00:02.000\n", "&amp;"},
	    {"WEBVTT\n\n00:01.000 --> 00:02.000\n", "\u266A a "}, {"WEBVTT\n\n", "NOTE\n"},
	    {"1\n00:00:01,000 --> 00:00:02,000\n", "12\n"},
	    {"1\n00:00:01,000 --> 00:00:02,000\n", "{\\"},
	    {"1\n00:00:01,000 --> 00:00:02,000\n", "- [a"}};
	struct arena a;

	(void)state;
	for (size_t i = 0; i < COUNT(rows); i++) {
		struct buf b;

		arena_init(&a);
		b = buf_in(&a);
		buf_put_z(&b, rows[i].head);
		while (b.n < 1000000)
			buf_put_z(&b, rows[i].again);
		read_bytes(&a, b.v, b.n);
		arena_release(&a);
	}
}

static void
any_bytes_are_read(void **state)
{
	static const char *const parts[] = {"\n", "\r\n", "[0:21] ", "WEBVTT\n\n",
	    "00:00:01.000 --> 00:00:04.000\n", "1\n00:00:01,000 --> 00:00:02,000\n",
	    "<v A>", "&#189;", "\xC2\xBD", "\u266A", "# ", "- ", "|", "|---|---|\n", "**",
	    "_", "[x](y)", "<!--", "-->", "2 cups flour", "HOST: ", "SUPER: ", "\xFF",
	    "\xED\xA0\x80", "[MUSIC]", "<00:00:02.000>", "---\n", "title: x\n",
	    "Ingredients:\n", ">> ", "so we melt it\n", "\xFF\xFE", "\\", "<rt>",
	    "99999999:00 ", "Step 1: ", "\u00A0", "\u201C", ".", "\t"};
	uint32_t seed = 1;
	struct arena a;

	(void)state;
	for (size_t i = 0; i < 3000; i++) {
		struct buf b;

		arena_init(&a);
		b = buf_in(&a);
		for (size_t k = 0; k < i % 50; k++) {
			seed = seed * 1664525u + 1013904223u;
			if (seed >> 28 == 0)
				buf_put_char(&b, (char)(seed >> 8));
			else
				buf_put_z(&b, parts[(seed >> 8) % COUNT(parts)]);
		}
		read_bytes(&a, b.v, b.n);
		arena_release(&a);
	}
}

int
main(void)
{
	static const struct CMUnitTest tests[] = {
	    cmocka_unit_test(each_encoding_reads_the_same),
	    cmocka_unit_test(words_lead_back_to_their_source_bytes),
	    cmocka_unit_test(a_span_of_text_is_clipped),
	    cmocka_unit_test(offsets_have_lines_and_columns),
	    cmocka_unit_test(bytes_that_do_not_decode_are_noted),
	    cmocka_unit_test(utf8_is_told_from_what_is_none),
	    cmocka_unit_test(formats_are_told_by_what_they_hold),
	    cmocka_unit_test(a_script_knows_its_name_title_and_length),
	    cmocka_unit_test(what_is_over_a_cap_is_refused),
	    cmocka_unit_test(hostile_bytes_are_read_in_linear_time),
	    cmocka_unit_test(any_bytes_are_read),
	};

	return cmocka_run_group_tests_name("read_script", tests, NULL, NULL);
}
