/* SPDX-License-Identifier: ISC */
/*
 * Recipe cards to print or to send: a page with one card per dish, its times
 * links into the video, its structured data in the page.
 */
#include "write/writers.h"

#include "page/page.h"
#include "page/recipe.h"
#include "publish/jsonld.h"
#include "publish/video.h"
#include "write/escape.h"

static void
put_data(struct buf *out, const struct draft *d, const struct grammar *g,
    const struct tamis_style *style, size_t i)
{
	struct buf json = buf_in(out->arena);

	jsonld_put_dish(&json, d, g, style, i);
	buf_put_z(out, "<script type=\"application/ld+json\">\n");
	escape_json_in_html(out, buf_str(&json));
	buf_put_z(out, "</script>\n");
}

static const struct page_parts parts = {"recipes", "type.css card.css", NULL, false};

static void
write_card(const struct draft *d, const struct grammar *g, const struct tamis_style *style,
    struct buf *out)
{
	struct recipe_page page = {.draft = d,
	    .grammar = g,
	    .style = style,
	    .video = video_of(style),
	    .heading = 1};

	page_open(out, d, &parts);
	buf_put_z(out, "<body class=\"cards\">\n<main>\n");
	if (d->dishes == 0)
		buf_put_z(out, "<p>No recipe was found in this episode.</p>\n");
	for (size_t i = 0; i < d->dishes; i++)
		recipe_put(out, &page, i);
	buf_put_z(out, "</main>\n");
	for (size_t i = 0; i < d->dishes; i++)
		put_data(out, d, g, style, i);
	page_close(out, &parts);
}

const struct writer writer_card = {
    .name = "card",
    .extension = "html",
    .help = "a card to print, one per dish",
    .package = "card",
    .per_dish = true,
    .apart = true,
    .write = write_card,
};
