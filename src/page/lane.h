/* SPDX-License-Identifier: ISC */
/*
 * Lanes of an SVG picture as wide as the page: places along it are parts of
 * its width, heights are pixels, and what would run into its neighbour moves
 * to the next row. told.c and stove.c include this.
 */
#ifndef TAMIS_LANE_H
#define TAMIS_LANE_H

#include "tamis.h"

/* The width in pixels that text must find room in; the page never draws the
 * picture narrower. */
enum { LANE_WIDTH = 760, LANE_ROWS = 4 };

struct lanes {
	struct buf *out;
	int64_t span_ms; /* that the whole width stands for */
	int y;           /* where the next lane begins */
};

/* "12.34%" of the width. */
void lane_put_x(struct lanes *l, int64_t ms);
/* Pixels from the left at LANE_WIDTH. */
int lane_pixels(const struct lanes *l, int64_t ms);

/* Rows of marks and texts; the end of what stands in each, in pixels. */
struct rows {
	int end[LANE_ROWS];
	int used;
};
/* The first row with room from x on; the last where none has. */
int rows_take(struct rows *r, int x, int width);

/* Text at the left end of a lane; what comes next stands under it. */
void lane_put_label(struct lanes *l, const char *class, struct str text);
/* The pixels that a text may take. */
int lane_text_width(struct str text);
/* Attributes of a rectangle between two times. */
void lane_put_from_to(struct lanes *l, int64_t beg_ms, int64_t end_ms);
/* The number of a query, a link to its note: LANE_PIN pixels wide, its middle
 * so many pixels before a time. */
enum { LANE_PIN = 20 };
struct pin {
	int64_t ms;
	int back, y;
};
void lane_put_pin(struct lanes *l, const struct draft *d, size_t finding, struct pin at);

/* Time marks under all lanes: "0:00 1:00 2:00", or "10 min". */
void lane_put_axis(struct lanes *l, bool is_clock);

#endif
