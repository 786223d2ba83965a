/* SPDX-License-Identifier: ISC */
/*
 * For the editor of the video: what has to be recorded again, what a caption on
 * the screen can mend, with the time codes it goes between, the words that are
 * said there and those that would mend them; then the corrections as a short
 * text to pin under a video that is out already. Of what the author lets stand
 * nothing is said.
 */
#include "write/writers.h"

#include "base/print.h"
#include "publish/pickup.h"
#include "write/escape.h"

#define EN_DASH "\xe2\x80\x93"

static void
put_line(struct buf *out, const char *mark, struct str text)
{
	buf_put_z(out, mark);
	escape_markdown(out, text);
	buf_put_char(out, '\n');
}

static void
put_quote(struct buf *out, const char *mark, struct str text)
{
	struct buf b = buf_in(out->arena);

	buf_fmt(&b, "\"%.*s\"", (int)text.n, text.p);
	put_line(out, mark, buf_str(&b));
}

/* "2. Caption, 2:30–2:36" */
static void
put_title(struct buf *out, const struct pickup *p, size_t number)
{
	buf_fmt(out, "\n## %zu. %s", number, p->record ? "Record again" : "Caption");
	if (p->in_ms >= 0) {
		buf_put_z(out, ", ");
		print_clock(out, p->in_ms);
		buf_put_z(out, EN_DASH);
		print_clock(out, p->out_ms);
	}
	buf_put_z(out, "\n\n");
}

static void
put_pickup(struct buf *out, const struct pickup *p, size_t number)
{
	put_title(out, p, number);
	put_quote(out, "- Said: ", p->said);
	put_line(out, "- Why: ", p->finding->message);
	if (p->line.n && p->record)
		put_quote(out, "- Say: ", p->line);
	if (p->caption.n)
		put_quote(
		    out, p->line.n && p->record ? "- Or show: " : "- Show: ", p->caption);
	if (p->line.n && !p->record)
		put_quote(out, "- Or say: ", p->line);
	if (!p->line.n && !p->caption.n)
		put_line(out, "- Still to be settled: ",
		    STR("answer it beside the script, and the words stand here"));
}

/* "4:36 "four tablespoons" should be: 2 tablespoons." */
static void
put_correction(struct buf *out, const struct pickup *p)
{
	struct buf b = buf_in(out->arena);

	if (p->in_ms >= 0) {
		print_clock(&b, p->finding->place.at_ms);
		buf_put_char(&b, ' ');
	}
	buf_put(&b, p->correction);
	put_line(out, "> ", buf_str(&b));
	buf_put_z(out, ">\n");
}

static void
put_corrections(struct buf *out, const struct pickup *p, size_t n)
{
	size_t open = 0, known = 0;
	bool safety = false;

	for (size_t i = 0; i < n; i++) {
		known += p[i].correction.n > 0;
		open += p[i].correction.n == 0;
		safety = safety || (p[i].safety && p[i].correction.n);
	}
	buf_put_z(out, "\n## To pin under the video\n\n");
	if (known)
		buf_put_z(out, "> Corrections to this video:\n>\n");
	for (size_t i = 0; i < n; i++)
		if (p[i].correction.n)
			put_correction(out, &p[i]);
	if (safety)
		buf_put_z(out, "> Local food codes and qualified advice come first.\n");
	if (open)
		buf_fmt(out, "%sNot in it, since still to be settled: %zu.\n",
		    known ? "\n" : "", open);
}

static void
write_pickups(const struct draft *d, const struct grammar *g,
    const struct tamis_style *style, struct buf *out)
{
	size_t n;
	const struct pickup *p = pickups_of(out->arena, d, &n);
	struct buf title = buf_in(out->arena);

	(void)g;
	(void)style;
	buf_put_z(&title, "Pickups for ");
	buf_put(&title, d->script->title.n ? d->script->title : d->script->name);
	put_line(out, "# ", buf_str(&title));
	if (n == 0)
		buf_put_z(out, "\nNothing has to be recorded again or captioned.\n");
	for (size_t i = 0; i < n; i++)
		put_pickup(out, &p[i], i + 1);
	if (n)
		put_corrections(out, p, n);
}

const struct writer writer_pickups = {
    .name = "pickups",
    .extension = "md",
    .help = "what to record again or to caption, for the editor of the video",
    .package = "pickups",
    .write = write_pickups,
};
