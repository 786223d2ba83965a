/* SPDX-License-Identifier: ISC */
/*
 * Markdown: front matter, headings, tables; paragraphs and list items go to
 * prose a block at a time, and the marks inside them to inline.
 */
#include "read/line.h"
#include "read/prose.h"
#include "read/reader.h"
#include "read/table.h"

enum { FRONT_LINES = 500 };

struct page {
	struct prose prose;
	struct lines lines;
	VEC(struct span) block;
};

/* "## Words ##": the level, 0 where it is no heading; *words inside it. */
static int
heading_level(struct str text, struct span line, struct span *words)
{
	uint32_t n = line.beg, end = line.end;

	while (n < end && text.p[n] == '#')
		n++;
	if (n == line.beg || n - line.beg > 6 || n == end || !blank_length(text, n))
		return 0;
	while (end > n && text.p[end - 1] == '#')
		end--;
	if (end < line.end && !is_blank(text.p[end - 1]))
		end = line.end;
	*words = span_trim(text, (struct span){n, end});
	return (int)(n - line.beg);
}

/* Whether a line is n or more of one of the marks and nothing else. */
static bool
is_drawn(struct str line, const char *marks, size_t n)
{
	size_t count = 0;

	if (line.n == 0 || !strchr(marks, line.p[0]))
		return false;
	for (size_t i = 0; i < line.n; i++) {
		if (line.p[i] != line.p[0] && !is_blank(line.p[i]))
			return false;
		count += line.p[i] == line.p[0];
	}
	return count >= n;
}

static bool
is_fence(struct str line)
{
	return starts_at(line, 0, "```") || starts_at(line, 0, "~~~");
}

/* Whether the words of a line hold "**" in pairs or a link, behind a stamp. */
static bool
has_inline_marks(struct str line)
{
	struct head h = head_read(line);
	struct str words = str_cut(line, h.words, line.n);
	size_t first = str_find(words, STR("**"));
	struct str rest = str_cut(words, first + 2, words.n);

	return str_find(rest, STR("**")) < rest.n || str_find(words, STR("](")) < words.n;
}

static int
sniff(struct str start)
{
	struct lines l = {.text = start};
	struct span line, words;
	bool first = true;
	int score = 0, level;

	while (score < 80 && lines_next(&l, &line)) {
		struct str s = span_str(start, line);

		if (s.n == 0)
			continue;
		level = heading_level(start, line, &words);
		if (table_is_rule(s) || (first && str_is_z(s, "---")))
			score = 80;
		else if (level > 1 || (level == 1 && first))
			score = 70;
		else if (score < 50 &&
			 (is_fence(s) || starts_at(s, 0, "<!--") || has_inline_marks(s)))
			score = 50;
		first = false;
	}
	return score;
}

/* A copy of the text in which comments are blanks; line breaks stay. */
static struct str
blank_comments(struct arena *a, struct str text)
{
	size_t at = str_find(text, STR("<!--")), end;
	char *copy;

	if (at == text.n)
		return text;
	copy = arena_array(a, text.n, char);
	memcpy(copy, text.p, text.n);
	while (at < text.n) {
		end = at + str_find(str_cut(text, at, text.n), STR("-->")) + 3;
		if (end > text.n)
			break; /* never closed: it stays as text */
		for (; at < end; at++)
			if (copy[at] != '\n' && copy[at] != '\r')
				copy[at] = ' ';
		at += str_find(str_cut(text, at, text.n), STR("<!--"));
	}
	return (struct str){copy, text.n};
}

/* `title: "Leek soup"` inside front matter. */
static void
front_line(struct page *m, struct span line)
{
	struct str t = m->prose.build->text;
	struct span value = line;
	char quote;

	if (!starts_at(t, line.beg, "title:") || m->prose.titled)
		return;
	value.beg += 6;
	value = span_trim(t, value);
	quote = value.end - value.beg > 1 ? t.p[value.beg] : 0;
	if ((quote == '"' || quote == '\'') && t.p[value.end - 1] == quote)
		value.beg++, value.end--;
	build_begin(m->prose.build, prose_cue(&m->prose, CUE_TITLE));
	build_put(m->prose.build, value);
	m->prose.titled = m->prose.begun = build_end(m->prose.build);
}

/* Front matter between two lines of dashes at the very start. */
static void
read_front(struct page *m)
{
	struct lines probe = m->lines, front;
	struct span line;
	size_t n = 0;

	if (!lines_next(&probe, &line) || !str_is_z(build_str(m->prose.build, line), "---"))
		return;
	front = probe;
	for (; n < FRONT_LINES && lines_next(&probe, &line); n++)
		if (str_is_z(build_str(m->prose.build, line), "---"))
			break;
	if (n == FRONT_LINES || !str_is_z(build_str(m->prose.build, line), "---") ||
	    front.at == probe.at)
		return;
	for (size_t i = 0; i < n && lines_next(&front, &line); i++)
		front_line(m, line);
	m->lines = probe;
}

static void
end_block(struct page *m)
{
	if (m->block.n > 0)
		prose_block(&m->prose, m->block.v, m->block.n, true);
	m->block.n = 0;
}

/* The level that the line after a one-line paragraph gives it: 0 none. */
static int
underline_level(const struct page *m, struct span line, struct str next)
{
	struct str s = build_str(m->prose.build, line);

	if (m->block.n > 0 || line_look(s).mark > 0 || head_read(s).stamped)
		return 0;
	return is_drawn(next, "=", 2) ? 1 : is_drawn(next, "-", 3) ? 2 : 0;
}

/* "**For the sauce**" alone above a blank line or a list. */
static bool
is_bold_heading(const struct page *m, struct str line, struct str next)
{
	struct head h = head_read(line);
	struct str inside = str_cut(line, 2, line.n > 4 ? line.n - 2 : 2);

	return m->block.n == 0 && line.n > 4 && starts_at(line, 0, "**") &&
	       str_ends(line, STR("**")) && str_find(inside, STR("**")) == inside.n &&
	       !h.stamped && h.words < line.n && (next.n == 0 || line_look(next).bullet);
}

static void
take_line(struct page *m, struct span line)
{
	struct build *b = m->prose.build;
	struct lines after = m->lines;
	struct span words, next_line = {0, 0};
	struct str s = build_str(b, line), next;
	int level = heading_level(b->text, line, &words), under;

	next =
	    lines_next(&after, &next_line) ? build_str(b, next_line) : (struct str){s.p, 0};
	if (level > 0) {
		end_block(m);
		prose_heading(&m->prose, words, level);
	} else if (s.n == 0 || is_fence(s) || is_drawn(s, "-*_", 3)) {
		end_block(m);
	} else if (table_is_rule(next) && str_find_char(s, '|') < s.n) {
		end_block(m);
		table_read(&m->prose, line, &m->lines);
	} else if ((under = underline_level(m, line, next)) > 0) {
		prose_heading(&m->prose, line, under);
		m->lines = after;
	} else if (is_bold_heading(m, s, next)) {
		prose_heading(&m->prose, line, 0);
	} else {
		vec_push(b->arena, &m->block, line);
	}
}

static void
read_markdown(struct build *b)
{
	struct page m = {0};
	struct span line;

	b->text = blank_comments(b->arena, b->text);
	prose_init(&m.prose, b, true);
	m.lines = (struct lines){.text = b->text};
	read_front(&m);
	while (lines_next(&m.lines, &line)) {
		while (line.beg < line.end && b->text.p[line.beg] == '>')
			line.beg = (uint32_t)blank_skip(b->text, line.beg + 1, line.end);
		take_line(&m, line);
	}
	end_block(&m);
}

const struct reader reader_markdown = {"markdown", sniff, read_markdown};
