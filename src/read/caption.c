/* SPDX-License-Identifier: ISC */
/*
 * Taking captions in, and making cues of what is left of them. What repeats
 * the caption before is found in roll.c.
 */
#include "read/caption.h"

#include "read/label.h"
#include "read/line.h"
#include "read/roll.h"
#include "read/stamp.h"

enum { PAUSE_MS = 2000 };

void
captions_init(struct captions *c, struct build *b)
{
	*c = (struct captions){.build = b, .beg_ms = -1, .last_ms = -1};
	vec_push(b->arena, &c->voice, (struct str){NULL, 0});
}

static struct caption *
current(struct captions *c)
{
	return &c->caption.v[c->caption.n - 1];
}

/* Notes odd times of k and mends them. */
static void
mend_times(struct captions *c, struct span line, struct caption *k)
{
	if (k->beg_ms < 0 || k->end_ms < 0) {
		build_note(c->build, line,
		    "malformed timing; the words were kept at the time before");
		if (k->beg_ms < 0)
			k->beg_ms = c->last_ms;
		k->end_ms = -1;
	} else if (k->end_ms <= k->beg_ms) {
		build_note(c->build, line,
		    "a caption that ends before it starts; its end was left out");
		k->end_ms = -1;
	}
	if (k->beg_ms < c->beg_ms)
		build_note(c->build, line,
		    "a caption earlier than the one before; the order was kept");
}

void
caption_begin(struct captions *c, struct span line, int64_t beg_ms, int64_t end_ms)
{
	struct caption k = {.beg_ms = beg_ms, .end_ms = end_ms, .bit = c->bit.n};

	/* one past the cap, so that there is always one to put words into */
	if (c->caption.n > CUE_CAP) {
		c->build->over_cap = true;
		return;
	}
	mend_times(c, line, &k);
	c->beg_ms = k.beg_ms;
	c->last_ms = k.end_ms >= 0 ? k.end_ms : k.beg_ms;
	k.kept.bit = k.bit;
	vec_push(c->build->arena, &c->caption, k);
	c->ms = -1;
	c->now = 0;
	c->at_line_head = true;
}

void
caption_voice(struct captions *c, struct str name)
{
	c->now = (uint32_t)c->voice.n;
	vec_push(c->build->arena, &c->voice, name);
}

void
caption_stamp(struct captions *c, int64_t ms)
{
	c->ms = ms;
	current(c)->inlined = true;
}

static void
add_bit(struct captions *c, struct bit bit)
{
	if (bit.at.beg == bit.at.end)
		return;
	vec_push(c->build->arena, &c->bit, bit);
	current(c)->bits++;
}

/* Notes that a line begins `at` bytes into the next bit. */
static void
add_line(struct captions *c, size_t at)
{
	struct caption *k = current(c);

	k->line[k->lines++ % ROLL_LINES] = (struct cursor){c->bit.n, at};
	c->at_line_head = false;
}

void
caption_put_as(struct captions *c, struct span slice, struct str as)
{
	if (c->at_line_head && str_is(as, STR(">"))) { /* "&gt;&gt; " */
		caption_voice(c, (struct str){NULL, 0});
		return;
	}
	if (c->at_line_head && blank_skip(as, 0, as.n) < as.n)
		add_line(c, 0);
	as = arena_str(c->build->arena, as);
	add_bit(c, (struct bit){slice, as, c->ms, c->now});
}

/* "- ", "-", ">> " in front of someone else's words: its bytes, 0 none. */
static size_t
dash_length(struct str line)
{
	size_t n = 0;

	while (n < line.n && line.p[n] == '>')
		n++;
	if (n > 0)
		return blank_skip(line, n, line.n);
	n = starts_at(line, 0, "-") ? 1 : starts_at(line, 0, "\u2013") ? 3 : 0;
	if (n == 0 || n == line.n || is_digit(line.p[n]) || line.p[n] == '-')
		return 0;
	return blank_skip(line, n, line.n);
}

/* Takes a dash or "HOST: " off the head of a line and changes the voice: its
 * bytes, 0 where there is none. */
static size_t
take_turn(struct captions *c, struct str line)
{
	size_t n = dash_length(line);
	struct head h;

	if (n > 0) {
		caption_voice(c, (struct str){NULL, 0});
		return n;
	}
	h = head_read(line);
	if (h.stamped || h.speaker.end == 0)
		return 0;
	caption_voice(c, str_cut(line, h.speaker.beg, h.speaker.end));
	return h.words;
}

/* "♪ la la ♪" at t[at]: bytes up to the closing mark or the line's end. */
static size_t
song_length(struct str t, size_t at, size_t end)
{
	size_t i = at + 3;

	if (!starts_at(t, at, "\u266A") && !starts_at(t, at, "\u266B"))
		return 0;
	for (; i < end; i++)
		if (starts_at(t, i, "\u266A") || starts_at(t, i, "\u266B"))
			return i + 3 - at;
	for (i = at; i < end && t.p[i] != '\n' && t.p[i] != '\r'; i++)
		continue;
	return i - at;
}

/* Bytes at t[at] that are not said: a turn's mark, a sound note, a song. */
static size_t
unsaid_length(struct captions *c, size_t at, size_t end)
{
	struct str t = str_cut(c->build->text, 0, end);
	size_t n = 0;

	if (t.p[at] == '[' || t.p[at] == '(')
		n = label_sound(t, at);
	else if (t.p[at] == '\xE2')
		n = song_length(t, at, end);
	if (n == 0 && c->at_line_head)
		n = take_turn(c, str_cut(t, at, end));
	return n;
}

void
caption_put(struct captions *c, struct span words)
{
	struct str t = c->build->text;
	struct bit run = {.at = {words.beg, words.end}, .ms = c->ms, .voice = c->now};
	size_t n;

	for (uint32_t i = words.beg; i < words.end;) {
		n = blank_length(t, i);
		if (n > 0) {
			c->at_line_head =
			    c->at_line_head || t.p[i] == '\n' || t.p[i] == '\r';
			i += (uint32_t)n;
			continue;
		}
		n = unsaid_length(c, i, words.end);
		if (n > 0) {
			run.at.end = i;
			add_bit(c, run);
			i += (uint32_t)n;
			run.at = (struct span){i, words.end};
			run.voice = c->now;
			continue;
		}
		if (c->at_line_head)
			add_line(c, i - run.at.beg);
		i++;
	}
	add_bit(c, run);
}

/* What is known of the talk so far, from cue to cue. */
struct talk {
	int64_t end_ms;     /* of the caption before; -1 none */
	struct str speaker; /* the last one named */
	bool turn;          /* the next cue is a new paragraph */
};

static void
begin_cue(
    struct captions *c, const struct caption *k, const struct bit *bit, struct talk *talk)
{
	struct str name = c->voice.v[bit->voice];
	bool change = bit->voice > 0 && (name.n == 0 || !str_is(name, talk->speaker));
	struct cue cue = {.kind = CUE_SPEECH, .beg_ms = k->beg_ms, .end_ms = k->end_ms};

	if (bit->ms > k->beg_ms && (k->end_ms < 0 || bit->ms <= k->end_ms))
		cue.beg_ms = bit->ms;
	cue.speaker = name;
	cue.paragraph = talk->turn || change;
	if (change)
		talk->speaker = name;
	build_begin(c->build, cue);
}

static void
make_cues(struct captions *c, const struct caption *k, struct talk *talk)
{
	uint32_t voice = 0;

	if (talk->end_ms >= 0 && k->beg_ms - talk->end_ms > PAUSE_MS)
		talk->turn = true;
	for (size_t i = k->kept.bit; i < k->bit + k->bits; i++) {
		const struct bit *bit = &c->bit.v[i];
		struct span at = bit->at;

		if (i == k->kept.bit && !bit->as.p)
			at.beg += (uint32_t)k->kept.at;
		if (!c->build->is_open || bit->voice != voice) {
			talk->turn = !build_end(c->build) && talk->turn;
			begin_cue(c, k, bit, talk);
		}
		voice = bit->voice;
		if (bit->as.p)
			build_put_as(c->build, at, bit->as);
		else
			build_put(c->build, at);
	}
	talk->turn = !build_end(c->build) && talk->turn;
	if (k->end_ms > talk->end_ms)
		talk->end_ms = k->end_ms;
}

void
captions_finish(struct captions *c)
{
	struct talk talk = {.end_ms = -1, .turn = true};

	roll_undo(c);
	for (size_t i = 0; i < c->caption.n; i++)
		make_cues(c, &c->caption.v[i], &talk);
}
