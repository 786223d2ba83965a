/* SPDX-License-Identifier: ISC */
/*
 * What the terminal can do, and text that can't do anything to it.
 */
#include "term/look.h"

#include "base/fold.h"

#include <stdio.h>
#include <stdlib.h>
#include <sys/ioctl.h>
#include <time.h>
#include <unistd.h>

struct look
look_stdout(void)
{
	struct look look = {.width = 100};
	const char *no_colour = getenv("NO_COLOR");
	struct winsize size;

	if (!isatty(STDOUT_FILENO))
		return look;
	look.colour = !no_colour || !no_colour[0];
	if (ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col >= 40)
		look.width = size.ws_col;
	return look;
}

void
look_paint(struct buf *b, const struct look *look, enum paint paint)
{
	static const char *const code[PAINTS] = {
	    [PAINT_NONE] = "0",
	    [PAINT_STRONG] = "1",
	    [PAINT_ERROR] = "1;31",
	    [PAINT_WARNING] = "1;35",
	    [PAINT_NOTE] = "1;34",
	    [PAINT_DISH] = "1;7",
	    [PAINT_STEP] = "4",
	    [PAINT_EQUIPMENT] = "36",
	    [PAINT_INGREDIENT] = "32",
	    [PAINT_DONENESS] = "35",
	    [PAINT_MEASURE] = "1;33",
	};

	if (look->colour)
		buf_fmt(b, "\033[%sm", code[paint]);
}

size_t
look_put_char(struct buf *b, struct str s)
{
	size_t n;
	int32_t c = fold_decode(s, &n);

	if (c < 0)
		buf_put_z(b, "\xef\xbf\xbd");
	else if (c < 0x20 || (c >= 0x7f && c < 0xa0))
		buf_put_char(b, ' ');
	else
		buf_put(b, str_cut(s, 0, n));
	return n;
}

void
look_put(struct buf *b, struct str s)
{
	for (size_t at = 0; at < s.n;)
		at += look_put_char(b, str_cut(s, at, s.n));
}

static size_t
count_columns(struct str s)
{
	size_t columns = 0;

	for (size_t i = 0; i < s.n; i++)
		columns += ((unsigned char)s.p[i] & 0xc0) != 0x80;
	return columns;
}

void
look_put_wrapped(struct buf *b, struct str s, size_t indent, size_t width)
{
	struct str rest = s;
	size_t column = 0;

	while (rest.p) {
		struct str word = str_next(&rest, ' ');
		size_t columns = count_columns(word);

		if (column && column + 1 + columns > width) {
			buf_put_char(b, '\n');
			column = 0;
		}
		if (column) {
			buf_put_char(b, ' ');
			column++;
		} else {
			buf_fmt(b, "%*s", (int)indent, "");
			column = indent;
		}
		buf_put(b, word);
		column += columns;
	}
	buf_put_char(b, '\n');
}

/* ---- progress ----------------------------------------------------------- */

static double
now(void)
{
	struct timespec t;

	clock_gettime(CLOCK_MONOTONIC, &t);
	return (double)t.tv_sec + (double)t.tv_nsec / 1e9;
}

void
progress_begin(struct progress *p, const char *doing, size_t all)
{
	*p = (struct progress){
	    .shown = isatty(STDERR_FILENO), .doing = doing, .all = all, .begun = now()};
}

/* [#########-----------] kept 1234 of 50000, 512 a second, 1:35 left */
static void
draw(const struct progress *p, double spent)
{
	enum { BAR = 20 };
	double rate = spent > 0 ? (double)p->done / spent : 0;
	size_t full = p->all ? p->done * BAR / p->all : 0;
	unsigned left = rate > 0 ? (unsigned)((double)(p->all - p->done) / rate) : 0;

	fputs("\r\033[K[", stderr);
	for (size_t i = 0; i < BAR; i++)
		fputc(i < full ? '#' : '-', stderr);
	fprintf(stderr, "] %s %zu of %zu, %.0f a second, %u:%02u left", p->doing, p->done,
	    p->all, rate, left / 60, left % 60);
	fflush(stderr);
}

void
progress_step(struct progress *p)
{
	double at;

	p->done++;
	if (!p->shown)
		return;
	at = now();
	if (at - p->drawn < 0.1 && p->done < p->all)
		return;
	p->drawn = at;
	draw(p, at - p->begun);
}

void
progress_clear(struct progress *p)
{
	if (p->shown && p->drawn > 0)
		fputs("\r\033[K", stderr);
}
