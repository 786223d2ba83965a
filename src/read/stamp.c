/* SPDX-License-Identifier: ISC */
/*
 * Reading stamps and speakers off the head of a line. Each call looks at the
 * head only, so a line costs the same however long it is.
 */
#include "read/stamp.h"

#include "read/label.h"
#include "read/line.h"

enum {
	NAME_WORDS = 3,
	NAME_BYTES = 24,
	FIRST_DIGITS = 9,
	CLOCK_CAP_MS = 100 * 3600 * 1000
};

/* Up to 9 digits at t[at]; how many, and their value. */
static size_t
read_digits(struct str t, size_t at, int64_t *value)
{
	size_t n = 0;

	for (*value = 0; n <= FIRST_DIGITS && at + n < t.n && is_digit(t.p[at + n]); n++)
		*value = *value * 10 + (t.p[at + n] - '0');
	return n;
}

/* ".5", ",500": milliseconds; a comma needs all three digits. */
static int64_t
read_fraction(struct str t, size_t *at)
{
	int64_t value;
	size_t n;

	if (*at + 1 >= t.n || (t.p[*at] != '.' && t.p[*at] != ','))
		return 0;
	n = read_digits(t, *at + 1, &value);
	if (n == 0 || n > 9 || (t.p[*at] == ',' && n != 3))
		return 0;
	*at += 1 + n;
	for (; n < 3; n++)
		value *= 10;
	for (; n > 3; n--)
		value /= 10;
	return value;
}

/* The colon-separated numbers of a time; how many, 0 where it is none. */
static size_t
read_parts(struct str t, size_t *at, int64_t part[4])
{
	size_t parts = 0, i = *at, n;

	for (;;) {
		n = read_digits(t, i, &part[parts]);
		if (n == 0 || n > FIRST_DIGITS || (parts > 0 && n != 2))
			return 0;
		i += n;
		parts++;
		if (parts == 4 || i + 1 >= t.n || !is_digit(t.p[i + 1]))
			break;
		if (t.p[i] != ':' && !(t.p[i] == ';' && parts == 3))
			break;
		i++;
	}
	*at = i;
	return parts;
}

enum clock
clock_read(struct str t, size_t *at, int64_t *ms)
{
	int64_t part[4], value = 0;
	size_t i = *at, parts = read_parts(t, &i, part);

	if (parts < 2)
		return CLOCK_NONE;
	if (parts == 4)
		parts = 3; /* frames: their rate is not known */
	for (size_t k = 0; k < parts; k++) {
		if (k > 0 && part[k] > 59)
			return CLOCK_NONE;
		value = value * 60 + part[k];
	}
	value = value * 1000 + read_fraction(t, &i);
	if (i < t.n && (is_alpha(t.p[i]) || is_digit(t.p[i])))
		return CLOCK_NONE;
	*at = i;
	if (value >= CLOCK_CAP_MS)
		return CLOCK_BEYOND;
	*ms = value;
	return CLOCK_READ;
}

static size_t
skip_marks(struct str t, size_t at)
{
	while (at < t.n && memchr("*_`~", t.p[at], 4))
		at++;
	return at;
}

/* Past the mark of a range at t[at] and the blanks around it; 0 none. */
static size_t
skip_range_mark(struct str t, size_t at)
{
	static const char *const marks[] = {
	    "-->", "->", "-", "\u2013", "\u2014", "\u2192", "to "};

	at = blank_skip(t, at, t.n);
	for (size_t i = 0; i < sizeof marks / sizeof marks[0]; i++)
		if (starts_at(t, at, marks[i]))
			return blank_skip(t, at + strlen(marks[i]), t.n);
	return 0;
}

/* "(https://...)" behind a stamp that is a link. */
static size_t
skip_target(struct str t, size_t at)
{
	size_t end = at + 1;

	if (at >= t.n || t.p[at] != '(')
		return at;
	while (end < t.n && end - at < 512 && t.p[end] != ')' && !blank_length(t, end))
		end++;
	return end < t.n && t.p[end] == ')' ? end + 1 : at;
}

bool
stamp_read(struct str line, size_t at, struct stamp *out)
{
	static const char open[] = "[({<", close[] = "])}>";
	const char *bracket;
	size_t range;
	enum clock first, second;

	*out = (struct stamp){.end_ms = -1};
	at = skip_marks(line, at);
	bracket = at < line.n ? memchr(open, line.p[at], 4) : NULL;
	if (bracket)
		at = skip_marks(line, blank_skip(line, at + 1, line.n));
	first = clock_read(line, &at, &out->beg_ms);
	if (first == CLOCK_NONE)
		return false;
	range = skip_range_mark(line, at);
	second = range ? clock_read(line, &range, &out->end_ms) : CLOCK_NONE;
	if (second != CLOCK_NONE)
		at = range;
	if (second == CLOCK_BEYOND || out->end_ms < out->beg_ms)
		out->end_ms = -1;
	if (bracket) {
		at = blank_skip(line, skip_marks(line, at), line.n);
		if (at >= line.n || line.p[at] != close[bracket - open])
			return false;
		at = skip_target(line, at + 1);
	}
	out->end = skip_marks(line, at);
	out->bracketed = bracket != NULL;
	out->beyond = first == CLOCK_BEYOND;
	return true;
}

/* Past one "-", ":" or "|" between a stamp and the words, and blanks. */
static size_t
skip_separator(struct str t, size_t at)
{
	static const char *const marks[] = {"-", ":", "|", "\u2013", "\u2014"};
	size_t end;

	at = blank_skip(t, at, t.n);
	for (size_t i = 0; i < sizeof marks / sizeof marks[0]; i++) {
		if (!starts_at(t, at, marks[i]))
			continue;
		end = at + strlen(marks[i]);
		if (end == t.n || blank_length(t, end))
			return blank_skip(t, end, t.n);
	}
	return at;
}

/* Bytes of one word of a name at t[at]: "Anna", "O'Dea", "MARY-LOU", "Dr.". */
static size_t
name_word(struct str t, size_t at, bool first)
{
	size_t n = 0;

	if (at >= t.n || !(is_upper(t.p[at]) || (unsigned char)t.p[at] >= 0xC3 ||
			     (!first && is_digit(t.p[at]))))
		return 0;
	while (at + n < t.n && n <= NAME_BYTES) {
		char c = t.p[at + n];

		if (blank_length(t, at + n) ||
		    (!is_alpha(c) && !is_digit(c) && c != '\'' && c != '-' && c != '.' &&
			(unsigned char)c < 0x80))
			break;
		n++;
	}
	return n > NAME_BYTES || label_is_no_name(str_cut(t, at, at + n)) ? 0 : n;
}

/* The end of a name of up to three words at t[at]; at where there is none. */
static size_t
name_end(struct str t, size_t at)
{
	size_t end = at, next = at, n;

	for (size_t words = 0; words < NAME_WORDS; words++) {
		n = name_word(t, next, words == 0);
		if (n == 0)
			break;
		end = next + n;
		next = blank_skip(t, end, t.n);
		if (next == end)
			break;
	}
	return end;
}

/* "(V.O.)", "(off)" behind a name. */
static size_t
skip_aside(struct str t, size_t at)
{
	size_t open = blank_skip(t, at, t.n), end = open + 1;

	if (open >= t.n || t.p[open] != '(')
		return at;
	while (
	    end < t.n && end - open < NAME_BYTES && t.p[end] != ')' && !is_digit(t.p[end]))
		end++;
	return end < t.n && t.p[end] == ')' ? end + 1 : at;
}

/* A name in capitals is one by itself; "Anna:" only before a new sentence,
 * for "Rice: two cups" is no one speaking. */
static bool
is_spoken_by(struct str name, struct str after)
{
	size_t upper = 0;
	bool small = false;

	for (size_t i = 0; i < name.n; i++) {
		upper += is_upper(name.p[i]);
		small = small || is_lower(name.p[i]);
	}
	if (!small && upper >= 2)
		return true;
	return upper > 0 && after.n > 0 &&
	       (is_upper(after.p[0]) || after.p[0] == '"' ||
		   (unsigned char)after.p[0] >= 0xC3);
}

/* "HOST: ", "**Anna Bell** (V.O.): " at line[at]: where the words after it
 * begin, and the name; at where there is none. */
static size_t
read_label(struct str line, size_t at, struct span *name)
{
	size_t beg = skip_marks(line, at), end = name_end(line, beg), next;

	if (end == beg || label_lane(line, beg).n)
		return at;
	next = skip_marks(line, skip_aside(line, skip_marks(line, end)));
	if (next >= line.n || line.p[next] != ':')
		return at;
	next = skip_marks(line, next + 1);
	if (next < line.n && !blank_length(line, next))
		return at;
	next = blank_skip(line, next, line.n);
	if (!is_spoken_by(str_cut(line, beg, end), str_cut(line, next, line.n)))
		return at;
	*name = (struct span){(uint32_t)beg, (uint32_t)end};
	return next;
}

/* "ANNA [1:20]: text": the stamp behind a name. */
static bool
read_name_first(struct str line, struct head *out)
{
	size_t beg = skip_marks(line, 0), end = name_end(line, beg), at;

	if (end == beg)
		return false;
	at = blank_skip(line, skip_marks(line, end), line.n);
	if (at < line.n && line.p[at] == ':')
		at = blank_skip(line, at + 1, line.n);
	if (!stamp_read(line, at, &out->stamp) || !out->stamp.bracketed)
		return false;
	out->speaker = (struct span){(uint32_t)beg, (uint32_t)end};
	return true;
}

/* "am", "p.m." after a time of day. */
static bool
is_half_day(struct str t, size_t at)
{
	if (at + 1 >= t.n || (to_lower(t.p[at]) != 'a' && to_lower(t.p[at]) != 'p'))
		return false;
	at += t.p[at + 1] == '.' ? 2 : 1;
	return at < t.n && to_lower(t.p[at]) == 'm' &&
	       (at + 1 == t.n || !is_alpha(t.p[at + 1]));
}

/* "0:21 text" but not "1:20 pm" and "1:20, then". */
static bool
ends_bare(struct str line, size_t end)
{
	size_t next = blank_skip(line, end, line.n);

	if (next == line.n)
		return true;
	if (next == end)
		return skip_separator(line, end) > end;
	return !is_half_day(line, next);
}

/* Past what is not said at t[at]: "[Music]", "(laughs)", ">>"; a link in
 * square brackets stays. */
static size_t
skip_unsaid(struct str t, size_t at, bool *turn)
{
	size_t n = 1;

	while (n > 0) {
		for (n = 0; starts_at(t, at + n, ">"); n++)
			continue;
		*turn = *turn || n > 1;
		if (n == 1)
			n = 0;
		if (n == 0)
			n = label_sound(t, at);
		if (at + n < t.n && n > 2 && memchr("(:[", t.p[at + n], 3))
			n = 0;
		at = n ? blank_skip(t, at + n, t.n) : at;
	}
	return at;
}

struct head
head_read(struct str line)
{
	struct head head = {0};
	size_t at = 0;

	if (line.n && !is_alpha(line.p[0]))
		at = line_bullet(str_cut(line, 0, 64));
	head.stamped = stamp_read(line, at, &head.stamp) &&
		       (head.stamp.bracketed || ends_bare(line, head.stamp.end));
	if (!head.stamped)
		head.stamped = read_name_first(line, &head);
	if (head.stamped)
		head.words = skip_separator(line, head.stamp.end);
	head.words = skip_unsaid(line, head.words, &head.turn);
	if (head.speaker.end == 0)
		head.words = read_label(line, head.words, &head.speaker);
	return head;
}
