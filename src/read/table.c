/* SPDX-License-Identifier: ISC */
/*
 * Rows to cues: the time column moves the clock, the sound column is said,
 * the picture column is not, save what its labels put on the screen.
 *
 *   | 0:21 | Wide shot. SUPER: 40 g butter | HOST: Forty grams of butter |
 */
#include "read/table.h"

enum { COLUMNS = 32 };

struct table {
	struct prose *prose;
	enum column column[COLUMNS];
	size_t columns;
	bool has_lanes; /* a column of sound, pictures or screen words */
};

bool
table_is_rule(struct str line)
{
	size_t dashes = 0, bars = 0;

	for (size_t i = 0; i < line.n; i++) {
		dashes += line.p[i] == '-';
		bars += line.p[i] == '|';
		if (!memchr("|:- \t", line.p[i], 5))
			return false;
	}
	return dashes > 0 && bars > 0;
}

/* The cells of a row, trimmed; what is past the last column is left out. */
static size_t
split_row(struct str text, struct span row, struct span cell[COLUMNS])
{
	size_t n = 0;
	uint32_t beg = row.beg;

	if (beg < row.end && text.p[beg] == '|')
		beg++;
	for (uint32_t i = beg; i <= row.end && n < COLUMNS; i++) {
		if (i < row.end && (text.p[i] != '|' || (i > beg && text.p[i - 1] == '\\')))
			continue;
		if (i == row.end && i == beg)
			break;
		cell[n++] = span_trim(text, (struct span){beg, i});
		beg = i + 1;
	}
	return n;
}

/* Cuts the text before the next <br> off *rest; false when nothing is left. */
static bool
next_line(struct str text, struct span *rest, struct span *line)
{
	uint32_t i = rest->beg;
	size_t n;

	if (rest->beg >= rest->end)
		return false;
	while (i < rest->end && !starts_at(text, i, "<br"))
		i++;
	*line = span_trim(text, (struct span){rest->beg, i});
	n = str_find_char(str_cut(text, i, rest->end), '>');
	rest->beg = i + (uint32_t)n + (i + n < rest->end);
	return true;
}

static void
put_cue(struct prose *p, enum cue_kind kind, struct span words)
{
	build_begin(p->build, prose_cue(p, kind));
	prose_put(p, words);
	build_end(p->build);
}

/* The end of the words on screen that begin at t[at]: behind their closing
 * quote if they are quoted, else the limit. */
static uint32_t
screen_end(struct str t, struct span words)
{
	const char *close = starts_at(t, words.beg, "\u201C") ? "\u201D" : "\"";
	size_t at, open = strlen(close);

	if (!starts_at(t, words.beg, "\u201C") && !starts_at(t, words.beg, "\""))
		return words.end;
	at = words.beg + open +
	     str_find(str_cut(t, words.beg + open, words.end), str_of(close)) + open;
	return at < words.end ? (uint32_t)at : words.end;
}

/* "Wide shot of the pan. SUPER: 40 g butter" */
static void
picture_line(struct prose *p, struct span line)
{
	struct str t = str_cut(p->build->text, 0, line.end);
	uint32_t run = line.beg, end;

	for (uint32_t i = line.beg; i < line.end;) {
		bool word = i == line.beg || !is_alpha(t.p[i - 1]);
		struct lane_label label = {LANE_NONE, 0};

		if (word && is_alpha(t.p[i]))
			label = label_lane(t, i);
		if (label.lane != LANE_ONSCREEN) {
			i++;
			continue;
		}
		put_cue(p, CUE_PICTURE, (struct span){run, i});
		run = i + (uint32_t)label.n;
		end = screen_end(t, (struct span){run, line.end});
		for (i = run; i < end; i++)
			if (!is_alpha(t.p[i - 1]) && label_lane(t, i).lane == LANE_ONSCREEN)
				break;
		put_cue(p, CUE_ONSCREEN, (struct span){run, i});
		run = i;
	}
	put_cue(p, CUE_PICTURE, (struct span){run, line.end});
}

static void
screen_line(struct prose *p, struct span line)
{
	struct lane_label label = label_lane(build_str(p->build, line), 0);

	put_cue(p, CUE_ONSCREEN, (struct span){line.beg + (uint32_t)label.n, line.end});
}

static void
lane_cell(struct prose *p, enum column column, struct span cell)
{
	struct span line;

	for (bool first = true; next_line(p->build->text, &cell, &line); first = false) {
		if (column == COLUMN_SOUND)
			prose_speak(p, line, first);
		else if (column == COLUMN_PICTURE)
			picture_line(p, line);
		else if (column == COLUMN_ONSCREEN)
			screen_line(p, line);
	}
	build_end(p->build);
}

/* Whether a cell is a time and nothing else; moves the clock to it. */
static bool
take_time(struct prose *p, struct span cell)
{
	struct str s = build_str(p->build, cell);
	struct stamp stamp;

	if (!stamp_read(s, 0, &stamp) || stamp.end < s.n)
		return false;
	prose_stamp(p, &stamp, cell);
	return true;
}

/* A row of a table of anything else: its cells as one line. */
static void
plain_row(const struct table *t, const struct span *cell, size_t n, size_t time)
{
	struct prose *p = t->prose;
	bool listed = p->section == SECTION_INGREDIENTS ||
		      (!p->started && p->section != SECTION_METHOD);
	bool stamped = time < n && take_time(p, cell[time]);

	build_begin(p->build, prose_cue(p, listed && !stamped ? CUE_LIST : CUE_SPEECH));
	for (size_t i = 0; i < n; i++) {
		if (stamped && i == time)
			continue;
		build_gap(
		    p->build, (struct span){cell[i].beg - (cell[i].beg > 0), cell[i].beg});
		prose_put(p, cell[i]);
	}
	build_end(p->build);
}

static void
lanes_row(const struct table *t, const struct span *cell, size_t n, size_t time)
{
	struct prose *p = t->prose;

	if (time < n && cell[time].end > cell[time].beg && !take_time(p, cell[time]))
		build_note(p->build, cell[time],
		    "not a time; the time of the row before was used");
	p->speaker = (struct str){NULL, 0};
	for (size_t i = 0; i < n && i < t->columns; i++)
		if (t->column[i] == COLUMN_SPEAKER)
			p->speaker = build_str(p->build, cell[i]);
	for (size_t i = 0; i < n && i < t->columns; i++)
		lane_cell(p, t->column[i], cell[i]);
	p->speaker = (struct str){NULL, 0};
}

static size_t
find_column(const struct table *t, enum column column)
{
	size_t i = 0;

	while (i < t->columns && t->column[i] != column)
		i++;
	return i < t->columns ? i : COLUMNS;
}

void
table_read(struct prose *p, struct span header, struct lines *l)
{
	struct table t = {.prose = p};
	struct span cell[COLUMNS], row;
	struct lines next;
	size_t n;

	t.columns = split_row(p->build->text, header, cell);
	for (size_t i = 0; i < t.columns; i++) {
		t.column[i] = label_column(build_str(p->build, cell[i]));
		t.has_lanes = t.has_lanes || t.column[i] == COLUMN_SOUND ||
			      t.column[i] == COLUMN_PICTURE ||
			      t.column[i] == COLUMN_ONSCREEN;
	}
	lines_next(l, &row); /* the rule */
	for (next = *l; lines_next(&next, &row); *l = next) {
		if (str_find_char(build_str(p->build, row), '|') == row.end - row.beg)
			break;
		n = split_row(p->build->text, row, cell);
		if (t.has_lanes)
			lanes_row(&t, cell, n, find_column(&t, COLUMN_TIME));
		else
			plain_row(&t, cell, n, find_column(&t, COLUMN_TIME));
	}
}
