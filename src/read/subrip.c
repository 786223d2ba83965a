/* SPDX-License-Identifier: ISC */
/*
 * SubRip: numbered cues, timings with a comma. There is no standard; this
 * reads what editors write, blank lines missing or doubled among it.
 */
#include "read/caption.h"
#include "read/inline.h"
#include "read/line.h"
#include "read/reader.h"
#include "read/stamp.h"

struct srt {
	struct build *build;
	struct captions captions;
	bool open;
	struct span words; /* of the open cue */
};

/* "00:00:01,000 --> 00:00:02,000 X1:10": a line of its own with both times. */
static bool
read_timing(struct str line, int64_t *beg_ms, int64_t *end_ms)
{
	size_t at = 0;

	if (clock_read(line, &at, beg_ms) != CLOCK_READ)
		return false;
	at = blank_skip(line, at, line.n);
	if (!starts_at(line, at, "-->"))
		return false;
	at = blank_skip(line, at + 3, line.n);
	return clock_read(line, &at, end_ms) == CLOCK_READ;
}

static bool
is_timing(struct str line)
{
	return line.n < 200 && str_find(line, STR("-->")) < line.n;
}

/* A timing with decimals, or under an index, makes it SubRip; else "0:10 -->
 * 0:14" over a paragraph is a stamp in plain text. */
static int
sniff(struct str start)
{
	struct lines l = {.text = start};
	struct span line;
	bool numbered = false;
	int64_t beg, end;

	for (size_t seen = 0; seen < 20 && lines_next(&l, &line);) {
		struct str s = span_str(start, line);

		if (s.n == 0)
			continue;
		if (read_timing(s, &beg, &end) &&
		    (numbered || str_find_char(s, ',') < s.n ||
			str_find_char(s, '.') < s.n))
			return 90;
		numbered = line_is_number(s);
		seen++;
	}
	return 0;
}

/* "<i>", "</font>", "{\an8}", "{y:i}" at t[at]: bytes, 0 where it is none. */
static size_t
tag_length(struct str t, size_t at, size_t end)
{
	enum { LONGEST = 200 };
	struct str s = str_cut(t, at, end < at + LONGEST ? end : at + LONGEST);
	bool angle = s.p[0] == '<', brace = s.p[0] == '{';
	size_t close;

	if (s.n < 3 || (!angle && !brace))
		return 0;
	if (angle && !is_alpha(s.p[1]) && !(s.p[1] == '/' && is_alpha(s.p[2])))
		return 0;
	if (brace && s.p[1] != '\\' && s.p[2] != ':')
		return 0;
	close = str_find_char(s, angle ? '>' : '}');
	return close < s.n ? close + 1 : 0;
}

static void
take_words(struct srt *r, struct span words)
{
	struct str t = r->build->text;
	uint32_t run = words.beg, i = words.beg;
	char as[4];
	size_t tag, n, as_n = 0;

	while (i < words.end) {
		tag = tag_length(t, i, words.end);
		n = tag ? tag : entity_read(t, i, as, &as_n);
		if (n == 0) {
			i++;
			continue;
		}
		caption_put(&r->captions, (struct span){run, i});
		if (!tag)
			caption_put_as(&r->captions, (struct span){i, i + (uint32_t)n},
			    (struct str){as, as_n});
		i = run = i + (uint32_t)n;
	}
	caption_put(&r->captions, (struct span){run, words.end});
}

static void
end_cue(struct srt *r)
{
	if (r->open)
		take_words(r, r->words);
	r->open = false;
}

static void
begin_cue(struct srt *r, struct span line)
{
	int64_t beg = -1, end = -1;

	end_cue(r);
	if (!read_timing(build_str(r->build, line), &beg, &end))
		end = -1;
	caption_begin(&r->captions, line, beg, end);
	r->words = (struct span){line.end, line.end};
	r->open = true;
}

/* Whether the next line that is not blank, at most two on, is a timing. */
static bool
before_timing(struct lines l)
{
	struct span line;

	for (int i = 0; i < 2 && lines_next(&l, &line); i++)
		if (line.end > line.beg)
			return is_timing(span_str(l.text, line));
	return false;
}

static void
read_subrip(struct build *b)
{
	struct srt r = {.build = b};
	struct lines l = {.text = b->text};
	struct span line;

	captions_init(&r.captions, b);
	while (lines_next(&l, &line)) {
		struct str s = build_str(b, line);

		if (s.n == 0 || (line_is_number(s) && before_timing(l)))
			continue;
		if (is_timing(s))
			begin_cue(&r, line);
		else if (r.open)
			r.words.end = line.end;
		else
			build_note(
			    b, line, "text before the first timing; it was left out");
	}
	end_cue(&r);
	captions_finish(&r.captions);
}

const struct reader reader_subrip = {"subrip", sniff, read_subrip};
