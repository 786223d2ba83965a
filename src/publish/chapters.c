/* SPDX-License-Identifier: ISC */
/*
 * Chapters as WebVTT, for a track of kind "chapters":
 *   00:00:33.000 --> 00:01:51.000
 *   Blackberry and apple crumble
 */
#include "write/writers.h"

#include <inttypes.h>

#include "publish/chapter.h"
#include "write/escape.h"

/* Hours of two digits or more, as WebVTT has them. */
static void
put_stamp(struct buf *out, int64_t ms)
{
	buf_fmt(out, "%02" PRId64 ":%02d:%02d.%03d", ms / 3600000, (int)(ms / 60000 % 60),
	    (int)(ms / 1000 % 60), (int)(ms % 1000));
}

static void
put_chapter(struct buf *out, const struct chapter *c)
{
	buf_put_char(out, '\n');
	put_stamp(out, c->beg_ms);
	buf_put_z(out, " --> ");
	put_stamp(out, c->end_ms);
	buf_put_char(out, '\n');
	escape_webvtt(out, c->title);
	buf_put_char(out, '\n');
}

static void
write_chapters(const struct draft *d, const struct grammar *g,
    const struct tamis_style *style, struct buf *out)
{
	size_t n;
	const struct chapter *c = chapters_of(out->arena, d, &n);

	(void)g;
	(void)style;
	buf_put_z(out, "WEBVTT\n");
	if (n == 0)
		buf_put_z(out, "\nNOTE The script has no times to make chapters of.\n");
	for (size_t i = 0; i < n; i++)
		put_chapter(out, &c[i]);
}

const struct writer writer_chapters = {
    .name = "chapters",
    .extension = "vtt",
    .help = "chapters of the video, a WebVTT track",
    .package = "chapters",
    .write = write_chapters,
};
