/* SPDX-License-Identifier: ISC */
/*
 * The page that opens a package: what was made of the episode, with links to
 * the files as `tamis publish` names them.
 */
#include "write/writers.h"

#include "page/page.h"
#include "page/queries.h"
#include "publish/pickup.h"
#include "write/escape.h"
#include "write/text.h"

static void
put_link(struct buf *out, struct str file, struct str words, const char *help)
{
	buf_put_z(out, "<li><a href=\"");
	escape_html(out, file);
	buf_put_z(out, "\">");
	escape_html(out, words);
	buf_put_z(out, "</a>");
	buf_fmt(out, " <span>%s</span></li>\n", help);
}

static void
put_dishes(struct buf *out, const struct draft *d, const struct writer *w)
{
	for (size_t i = 0; i < d->dishes; i++) {
		struct draft alone = *d;
		struct buf file = buf_in(out->arena), title = buf_in(out->arena);

		alone.dish = &d->dish[i];
		alone.dishes = 1;
		tamis_package_name(&file, w, &alone, i);
		text_dish_title(&title, &d->dish[i]);
		put_link(out, buf_str(&file), buf_str(&title), w->help);
	}
}

static bool
has_pickups(const struct draft *d)
{
	struct arena scratch;
	size_t n;

	arena_init(&scratch);
	pickups_of(&scratch, d, &n);
	arena_release(&scratch);
	return n > 0;
}

static void
put_writer(struct buf *out, const struct draft *d, const struct writer *w)
{
	struct buf file = buf_in(out->arena);

	if (!w->package || w == &writer_index || (w == &writer_pickups && !has_pickups(d)))
		return;
	if (w->per_dish) {
		put_dishes(out, d, w);
		return;
	}
	tamis_package_name(&file, w, d, 0);
	put_link(out, buf_str(&file), buf_str(&file), w->help);
}

static const struct page_parts parts = {
    "ready to publish", "type.css index.css", NULL, false};

static void
write_index(const struct draft *d, const struct grammar *g, const struct tamis_style *style,
    struct buf *out)
{
	struct buf title = buf_in(out->arena);
	const struct writer *w;

	(void)g;
	(void)style;
	page_title(&title, d);
	page_open(out, d, &parts);
	buf_put_z(out, "<body class=\"index\">\n<main>\n<h1>");
	escape_html(out, buf_str(&title));
	buf_put_z(out, "</h1>\n<p class=\"count\">Open queries: ");
	queries_put_count(out, d);
	buf_put_z(out, "</p>\n<ul>\n");
	for (size_t i = 0; (w = tamis_writer(i)); i++)
		put_writer(out, d, w);
	buf_put_z(out, "</ul>\n</main>\n");
	page_close(out, &parts);
}

const struct writer writer_index = {
    .name = "index",
    .extension = "html",
    .help = "links to all that tamis publish makes",
    .package = "index",
    .write = write_index,
};
