/* SPDX-License-Identifier: ISC */
/*
 * Blocks of lines to cues. Before the first stamp a block may be a title, a
 * written list or prose; after it, it is what is said at the last stamp.
 */
#include "read/prose.h"

#include "read/inline.h"
#include "read/line.h"

/* Levels of headings that have no marks: a section of the script, a part. */
enum { LEVEL_SECTION = 2, LEVEL_PART = 3 };

void
prose_init(struct prose *p, struct build *b, bool marked)
{
	struct lines l = {.text = b->text};
	struct span line;
	size_t bracketed = 0, bare = 0;

	*p = (struct prose){.build = b, .marked = marked, .at_ms = -1, .end_ms = -1};
	while (lines_next(&l, &line)) {
		struct head h;

		while (
		    marked && line.beg < line.end && memchr("#>| ", b->text.p[line.beg], 4))
			line.beg++;
		h = head_read(build_str(b, line));
		bracketed += h.stamped && h.stamp.bracketed;
		bare += h.stamped && !h.stamp.bracketed;
	}
	p->stamped = bracketed + bare > 0;
	p->bare = bare > bracketed;
}

struct cue
prose_cue(const struct prose *p, enum cue_kind kind)
{
	int64_t before = p->stamped ? 0 : -1;

	return (struct cue){.kind = kind,
	    .beg_ms = p->started ? p->at_ms : before,
	    .end_ms = p->started ? p->end_ms : before,
	    .paragraph = true};
}

void
prose_put(struct prose *p, struct span words)
{
	if (p->marked)
		inline_put(p->build, words);
	else
		build_put(p->build, words);
}

/* Gives the cues since the stamp before, where they have no end, that of the
 * stamp now; a stamp out of order ends nothing. */
static void
end_cues(struct prose *p, int64_t now_ms)
{
	build_end(p->build);
	if (now_ms == p->at_ms)
		return;
	for (size_t i = p->unended; now_ms > p->at_ms && i < p->build->cue.n; i++)
		if (p->build->cue.v[i].end_ms < 0)
			p->build->cue.v[i].end_ms = now_ms;
	p->unended = p->build->cue.n;
}

void
prose_stamp(struct prose *p, const struct stamp *s, struct span where)
{
	p->begun = p->started = true;
	p->section = SECTION_OTHER;
	p->level = 0;
	if (s->beyond) {
		build_note(
		    p->build, where, "a time past 99 hours; the time before it was used");
		return;
	}
	if (s->beg_ms < p->at_ms)
		build_note(p->build, where,
		    "a time earlier than the one before; the order was kept");
	end_cues(p, s->beg_ms);
	p->at_ms = s->beg_ms;
	p->end_ms = s->end_ms;
}

/* The head of line[i]; a time that only happens to start a wrapped line is
 * no stamp. */
static struct head
line_head(const struct prose *p, const struct span *line, size_t i)
{
	struct str s = build_str(p->build, line[i]), before;
	struct head h = head_read(s);
	struct look look;

	if (!h.stamped || h.stamp.bracketed)
		return h;
	if (!p->bare)
		return (struct head){0};
	if (i == 0 || h.words == s.n || !is_lower(s.p[h.words]))
		return h;
	before = build_str(p->build, line[i - 1]);
	look = line_look(before);
	if (look.ends || look.colon || look.rule || head_read(before).stamped)
		return h;
	return (struct head){0};
}

/* The look of spoken words; a number in front is a step's only where it is the
 * first or the next one, and is said otherwise ("350. Then turn it"). */
static struct look
speech_look(const struct prose *p, struct str words)
{
	struct look look = line_look(words);

	if (!p->numbered && look.step > 1 && look.step != p->step + 1) {
		look.number = false;
		look.mark = look.item;
	}
	return look;
}

/* Starts a cue of speech with the words of a line behind its head. */
static void
begin_speech(struct prose *p, struct span line, const struct head *h, bool paragraph)
{
	static const enum cue_kind kinds[] = {
	    CUE_SPEECH, CUE_ONSCREEN, CUE_PICTURE, CUE_SPEECH};
	struct str s = build_str(p->build, line);
	struct look look = speech_look(p, str_cut(s, h->words, s.n));
	struct lane_label lane = label_lane(s, h->words + look.mark);
	struct cue cue = prose_cue(p, kinds[lane.lane]);
	size_t words = h->words + look.mark + lane.n;

	if (look.bullet && p->section == SECTION_INGREDIENTS)
		cue.kind = CUE_LIST;
	if (look.number && look.step > 0)
		p->step = look.step;
	cue.paragraph = paragraph;
	cue.speaker =
	    h->speaker.end ? str_cut(s, h->speaker.beg, h->speaker.end) : p->speaker;
	build_begin(p->build, cue);
	prose_put(p, (struct span){line.beg + (uint32_t)words, line.end});
}

static void
continue_speech(struct prose *p, struct span line, const struct head *h)
{
	build_gap(p->build, (struct span){line.beg > 0 ? line.beg - 1 : 0, line.beg});
	prose_put(p, (struct span){line.beg + (uint32_t)h->words, line.end});
}

/* Whether a line starts words of its own within a block. */
static bool
starts_anew(const struct prose *p, struct str s, const struct head *h)
{
	struct look look = speech_look(p, str_cut(s, h->words, s.n));

	return look.bullet || look.number || h->speaker.end > 0 || h->turn ||
	       label_lane(s, h->words).n > 0;
}

void
prose_speak(struct prose *p, struct span words, bool anew)
{
	struct str s = build_str(p->build, words);
	struct head h = head_read(s);

	if (h.stamped) /* the time of these words is known already */
		h = (struct head){0};
	if (anew || !p->build->is_open || starts_anew(p, s, &h))
		begin_speech(p, words, &h, true);
	else
		continue_speech(p, words, &h);
}

/* "For the sauce:", "Ingredients", "Method" */
static bool
is_heading(const struct prose *p, struct span line)
{
	struct str s = build_str(p->build, line);
	struct look look = line_look(s);

	if (look.bullet || look.number || look.amount || look.ends || look.rule)
		return false;
	if (look.colon)
		return look.words <= 8;
	return look.words <= 4 && label_section(s) != SECTION_OTHER;
}

void
prose_heading(struct prose *p, struct span words, int level)
{
	struct head h = head_read(build_str(p->build, words));
	enum section section = label_section(build_str(p->build, words));

	if (level == 0)
		level = section == SECTION_OTHER ? LEVEL_PART : LEVEL_SECTION;
	if (h.stamped) {
		prose_stamp(p, &h.stamp, words);
		words.beg += (uint32_t)(h.speaker.end ? h.speaker.beg : h.words);
	}
	if (section != SECTION_OTHER || level <= p->level) {
		p->section = section;
		p->level = level;
	}
	build_begin(
	    p->build, prose_cue(p, level == 1 && !p->titled ? CUE_TITLE : CUE_HEADING));
	prose_put(p, words);
	p->titled = (build_end(p->build) && level == 1) || p->titled;
	p->begun = true;
}

/* A heading in plain text; "On screen:" is one, but names nothing. */
static void
plain_heading(struct prose *p, struct span line)
{
	struct str s = build_str(p->build, line);

	if (label_lane(s, 0).n < s.n)
		prose_heading(p, line, 0);
}

/* A first line that stands for itself: short, no amount, no sentence. */
static bool
is_title(const struct prose *p, const struct span *line, size_t n, bool more)
{
	struct str s = build_str(p->build, line[0]);
	struct look look = line_look(s), next;

	if (s.n > 80 || look.words > 12 || look.amount || look.bullet || look.number ||
	    look.colon || look.rule || is_lower(s.p[0]) || str_ends(s, STR(".")) ||
	    is_heading(p, line[0]) || head_read(s).speaker.end || label_is_fact(s) ||
	    head_read(s).words == s.n || label_lane(s, 0).n)
		return false;
	if (n == 1)
		return more;
	next = line_look(build_str(p->build, line[1]));
	if (is_heading(p, line[1]) || next.rule)
		return true;
	return p->stamped && (next.amount || next.bullet);
}

/* What the lines of a run look like, counted. */
struct tally {
	size_t lines;
	size_t steps;   /* numbered, without an amount in front */
	size_t amounts; /* start with an amount or a bullet, and are short */
	size_t prose;   /* sentences */
	size_t loose;   /* short words: a food, maybe */
	size_t head;    /* words of the loose lines before any comma */
};

static struct tally
tally_lines(const struct prose *p, const struct span *line, size_t n)
{
	struct tally t = {0};

	for (size_t i = 0; i < n; i++) {
		struct look look = line_look(build_str(p->build, line[i]));

		t.lines += !look.rule;
		if (look.rule)
			continue;
		if (look.number && !look.amount)
			t.steps++;
		else if (look.amount && !(look.ends && look.words > 14))
			t.amounts++;
		else if (look.bullet && !look.ends && look.words <= 8)
			t.amounts++;
		else if ((look.ends && look.words > 6) || look.head > 8)
			t.prose++;
		else
			t.loose++, t.head += look.head;
	}
	return t;
}

static bool
is_list(const struct prose *p, const struct tally *t)
{
	if (t->lines == 0 || t->steps * 2 > t->lines || p->section == SECTION_METHOD)
		return false;
	if (p->section == SECTION_INGREDIENTS)
		return t->prose * 2 <= t->lines;
	if (t->amounts * 2 >= t->lines)
		return true;
	return !p->marked && t->prose == 0 && t->lines >= 2 && t->head <= 3 * t->loose;
}

/* Whether line[i] names the bulleted lines under it. */
static bool
names_bullets(const struct prose *p, const struct span *line, size_t n, size_t i)
{
	struct look look = line_look(build_str(p->build, line[i]));

	return i == 0 && n > 1 && look.mark == 0 && !look.amount && !look.ends &&
	       look.words <= 8 && line_look(build_str(p->build, line[1])).bullet;
}

static void
list_lines(struct prose *p, const struct span *line, size_t n)
{
	static const struct head none = {0};
	bool item = false;

	for (size_t i = 0; i < n; i++) {
		struct str s = build_str(p->build, line[i]);
		struct look look = line_look(s);
		bool sentence =
		    look.mark == 0 && !look.amount && look.ends && look.words > 8;
		enum cue_kind kind = sentence || label_is_fact(s) ? CUE_SPEECH : CUE_LIST;

		if (look.rule)
			continue;
		if (names_bullets(p, line, n, i)) {
			plain_heading(p, line[i]);
		} else if (p->marked && item && look.mark == 0) {
			continue_speech(p, line[i], &none);
		} else {
			item = look.mark > 0;
			build_begin(p->build, prose_cue(p, kind));
			prose_put(p,
			    (struct span){line[i].beg + (uint32_t)look.mark, line[i].end});
		}
	}
	build_end(p->build);
}

static size_t
first_word(struct str s)
{
	size_t n = 0;

	while (n < s.n && !blank_length(s, n))
		n++;
	return n;
}

/* Whether lines were broken to a width: the first word of each line would not
 * have fitted on the line before. */
static bool
is_wrapped(const struct prose *p, const struct span *line, size_t n)
{
	enum { NARROW = 50, WIDE = 120 };
	size_t width = 0, breaks = 0;

	for (size_t i = 0; i < n; i++)
		if (line[i].end - line[i].beg > width)
			width = line[i].end - line[i].beg;
	if (width < NARROW || width > WIDE)
		return false;
	for (size_t i = 0; i + 1 < n; i++)
		breaks += line[i].end - line[i].beg + 1 +
			      first_word(build_str(p->build, line[i + 1])) >
			  width;
	return breaks * 10 >= (n - 1) * 8;
}

static void
paragraph_lines(struct prose *p, const struct span *line, size_t n)
{
	bool joins = p->marked || is_wrapped(p, line, n), fresh = true;

	for (size_t i = 0; i < n; i++) {
		struct str s = build_str(p->build, line[i]);
		struct look look = line_look(s);
		struct head h = line_head(p, line, i);
		bool anew = starts_anew(p, s, &h);

		if (look.rule)
			continue;
		if (joins && !anew && p->build->is_open)
			continue_speech(p, line[i], &h);
		else
			begin_speech(p, line[i], &h, fresh || anew);
		fresh = look.ends || look.colon;
	}
	build_end(p->build);
}

/* Lines that no stamp covers, or that stand under "Ingredients". */
static void
free_lines(struct prose *p, const struct span *line, size_t n, bool more)
{
	size_t i = 0, end;
	struct tally t;

	if (n > 0 && !p->begun) {
		if (is_title(p, line, n, more)) {
			build_begin(p->build, prose_cue(p, CUE_TITLE));
			prose_put(p, line[i++]);
			p->titled = build_end(p->build);
		}
		p->begun = true;
	}
	for (; i < n; i = end) {
		end = i + 1;
		if (is_heading(p, line[i])) {
			plain_heading(p, line[i]);
			continue;
		}
		while (end < n && !is_heading(p, line[end]))
			end++;
		t = tally_lines(p, line + i, end - i);
		p->numbered = t.steps * 2 > t.lines;
		if (is_list(p, &t))
			list_lines(p, line + i, end - i);
		else
			paragraph_lines(p, line + i, end - i);
		p->numbered = false;
	}
}

static void
stamped_lines(struct prose *p, const struct span *line, size_t n)
{
	for (size_t i = 0; i < n; i++) {
		struct str s = build_str(p->build, line[i]);
		struct look look = line_look(s);
		struct head h = line_head(p, line, i);

		if (look.rule)
			continue;
		if (h.stamped)
			prose_stamp(p, &h.stamp, line[i]);
		if (i == 0 && !h.stamped && !h.speaker.end && is_heading(p, line[i]))
			plain_heading(p, line[i]);
		else if (h.stamped || !p->build->is_open || starts_anew(p, s, &h))
			begin_speech(p, line[i], &h, true);
		else
			continue_speech(p, line[i], &h);
	}
	build_end(p->build);
}

void
prose_block(struct prose *p, const struct span *line, size_t n, bool more)
{
	size_t first = 0;
	bool listed;

	while (first < n && !line_head(p, line, first).stamped)
		first++;
	listed = n > 0 && is_heading(p, line[0]) &&
		 label_section(build_str(p->build, line[0])) == SECTION_INGREDIENTS;
	if (!p->started || listed || (first == n && p->section == SECTION_INGREDIENTS)) {
		free_lines(p, line, first, more || first < n);
		stamped_lines(p, line + first, n - first);
	} else {
		stamped_lines(p, line, n);
	}
}
