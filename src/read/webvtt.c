/* SPDX-License-Identifier: ISC */
/*
 * WebVTT, after the W3C's "WebVTT: The Web Video Text Tracks Format", sections
 * 4 (syntax) and 6 (parsing). Kinder than that in two things: a cue whose
 * timing can't be read keeps its words, and so does a "<" that nothing closes.
 */
#include "read/caption.h"
#include "read/inline.h"
#include "read/line.h"
#include "read/reader.h"
#include "read/stamp.h"

/* What the lines read so far belong to. */
enum block {
	BLOCK_NONE,   /* between blocks */
	BLOCK_HEADER, /* behind WEBVTT, up to a blank line */
	BLOCK_NAME,   /* one line that may turn out to be a cue's identifier */
	BLOCK_CUE,    /* a cue's words */
	BLOCK_OTHER   /* NOTE, STYLE, REGION and what can't be placed */
};

struct vtt {
	struct build *build;
	struct captions captions;
	enum block block;
	struct span words; /* of the open cue */
	struct span last;  /* the last line of these */
	bool blanks;       /* the line before this one was of blanks */
	bool spaced;       /* so was the one before `last` */
	struct span name;  /* the lines of BLOCK_NAME */
};

static int
sniff(struct str start)
{
	if (!starts_at(start, 0, "WEBVTT"))
		return 0;
	return start.n == 6 || blank_length(start, 6) ? 100 : 0;
}

/* "00:01.000" or "100:00:01.000" at t[*at]: exactly three decimals and a dot,
 * two digits in all groups but the hours. */
static bool
is_strict(struct str time)
{
	size_t colon = str_find_char(time, ':');

	if (time.n < 9 || time.p[time.n - 4] != '.' || colon < 2)
		return false;
	return time.n == 9 ? colon == 2 : time.p[time.n - 7] == ':' && time.n - colon == 10;
}

struct timing {
	int64_t beg_ms, end_ms; /* -1 unread */
	bool strict;
};

/* "00:01.000 --> 00:04.000 line:0" */
static struct timing
read_timing(struct str line)
{
	struct timing t = {-1, -1, false};
	size_t beg, end = 0;

	if (clock_read(line, &end, &t.beg_ms) != CLOCK_READ)
		return t;
	t.strict = is_strict(str_cut(line, 0, end));
	beg = blank_skip(line, end, line.n);
	if (!starts_at(line, beg, "-->"))
		return t;
	beg = end = blank_skip(line, beg + 3, line.n);
	if (clock_read(line, &end, &t.end_ms) != CLOCK_READ)
		return t;
	t.strict = t.strict && is_strict(str_cut(line, beg, end));
	return t;
}

static void
begin_cue(struct vtt *v, struct span line)
{
	struct timing t = read_timing(build_str(v->build, line));

	if (t.end_ms >= 0 && !t.strict)
		build_note(
		    v->build, line, "a time not written as WebVTT asks; it was read");
	caption_begin(&v->captions, line, t.beg_ms, t.end_ms);
	v->words = (struct span){line.end, line.end};
	v->blanks = v->spaced = false;
	v->block = BLOCK_CUE;
}

/* The annotation of "<v.loud Anna Bell>", with references decoded. */
static struct str
annotation(struct vtt *v, struct str tag)
{
	struct buf name = buf_in(v->build->arena);
	struct str t;
	char as[4];
	size_t at = 0, n, as_n;

	while (at < tag.n && !blank_length(tag, at))
		at++;
	t = str_trim(str_cut(tag, at, tag.n));
	for (size_t i = 0; i < t.n; i += n) {
		n = entity_read(t, i, as, &as_n);
		if (n == 0) {
			n = 1;
			buf_put_char(&name, t.p[i]);
		} else {
			buf_put(&name, (struct str){as, as_n});
		}
	}
	return buf_str(&name);
}

/* Whether a tag's name is z: "v", "v.loud", "v Anna". */
static bool
is_tag(struct str tag, const char *z)
{
	size_t n = strlen(z);

	return starts_at(tag, 0, z) &&
	       (tag.n == n || tag.p[n] == '.' || blank_length(tag, n));
}

/* What a tag between < and > does; *ruby is set inside an <rt>. */
static void
take_tag(struct vtt *v, struct str tag, bool *ruby)
{
	size_t at = 0;
	int64_t ms;

	if (is_tag(tag, "v"))
		caption_voice(&v->captions, annotation(v, tag));
	else if (is_tag(tag, "rt"))
		*ruby = true;
	else if (is_tag(tag, "/rt") || is_tag(tag, "/ruby"))
		*ruby = false;
	else if (clock_read(tag, &at, &ms) == CLOCK_READ && at == tag.n)
		caption_stamp(&v->captions, ms);
}

/* The words of one cue: tags and references, over all its lines. */
static void
take_words(struct vtt *v, struct span words)
{
	struct str t = v->build->text;
	uint32_t run = words.beg, i = words.beg, last_close = words.end;
	bool ruby = false;
	char as[4];
	size_t n, as_n = 0;

	while (last_close > words.beg && t.p[last_close - 1] != '>')
		last_close--;
	while (i < words.end) {
		bool tag = t.p[i] == '<' && i < last_close;

		n = tag ? str_find_char(str_cut(t, i, words.end), '>') + 1
			: entity_read(t, i, as, &as_n);
		if (n == 0) {
			i++;
			continue;
		}
		if (!ruby)
			caption_put(&v->captions, (struct span){run, i});
		if (tag)
			take_tag(v, str_cut(t, i + 1, i + n - 1), &ruby);
		else if (!ruby)
			caption_put_as(&v->captions, (struct span){i, i + (uint32_t)n},
			    (struct str){as, as_n});
		i = run = i + (uint32_t)n;
	}
	if (!ruby)
		caption_put(&v->captions, (struct span){run, words.end});
}

static void
end_block(struct vtt *v)
{
	if (v->block == BLOCK_CUE)
		take_words(v, v->words);
	if (v->block == BLOCK_NAME)
		build_note(v->build, v->name, "text without a cue timing; it was left out");
	v->block = BLOCK_NONE;
}

static bool
is_aside(struct str line)
{
	static const char *const names[] = {"NOTE", "STYLE", "REGION"};

	for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
		size_t n = strlen(names[i]);

		if (starts_at(line, 0, names[i]) && (line.n == n || blank_length(line, n)))
			return true;
	}
	return false;
}

/* Another line of a cue's words; one of nothing but blanks ends no cue. */
static void
add_words(struct vtt *v, struct span line)
{
	if (line.beg == line.end) {
		v->blanks = true;
		return;
	}
	v->spaced = v->blanks;
	v->blanks = false;
	v->last = line;
	v->words.end = line.end;
}

/* Takes back a number that a line of blanks parts from the words: it is the
 * identifier of the cue to come, in a file edited by hand. */
static void
drop_number(struct vtt *v)
{
	if (v->block == BLOCK_CUE && v->spaced &&
	    line_is_number(build_str(v->build, v->last)))
		v->words.end = v->last.beg;
}

static void
take_line(struct vtt *v, struct span line, bool empty)
{
	struct str s = build_str(v->build, line);

	if (empty) {
		end_block(v);
	} else if (str_find(s, STR("-->")) < s.n) {
		if (v->block == BLOCK_NAME)
			v->block = BLOCK_NONE;
		drop_number(v);
		end_block(v);
		begin_cue(v, line);
	} else if (v->block == BLOCK_CUE) {
		add_words(v, line);
	} else if (s.n > 0 && v->block == BLOCK_NONE) {
		v->block = is_aside(s) ? BLOCK_OTHER : BLOCK_NAME;
		v->name = line;
	} else if (s.n > 0 && v->block == BLOCK_NAME) {
		v->name.end = line.end;
		end_block(v);
		v->block = BLOCK_OTHER;
	}
}

static void
read_webvtt(struct build *b)
{
	struct vtt v = {.build = b, .block = BLOCK_HEADER};
	struct lines l = {.text = b->text};
	struct span line;

	captions_init(&v.captions, b);
	lines_next(&l, &line); /* the signature */
	while (lines_next(&l, &line))
		take_line(&v, line, l.empty);
	end_block(&v);
	captions_finish(&v.captions);
}

const struct reader reader_webvtt = {"webvtt", sniff, read_webvtt};
