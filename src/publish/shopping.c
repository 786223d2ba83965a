/* SPDX-License-Identifier: ISC */
/*
 * The shopping list for all dishes of an episode, as plain text by section of
 * a shop:
 *   [ ] 6 tbsp olive oil
 */
#include "write/writers.h"

#include "publish/basket.h"
#include "write/escape.h"
#include "write/text.h"

static void
put_amounts(struct buf *line, const struct house *h, const struct basket_item *item)
{
	for (size_t i = 0; i < item->sums; i++) {
		if (i > 0)
			buf_put_z(line, " and ");
		basket_put_sum(line, h, &item->sum[i]);
	}
	if (item->sums)
		buf_put_char(line, ' ');
}

static void
put_item(struct buf *out, const struct house *h, const struct basket_item *item)
{
	struct buf line = buf_in(out->arena);

	put_amounts(&line, h, item);
	buf_put(&line, item->name);
	if (item->more && item->sums)
		buf_put_z(&line, ", and some more");
	if (item->optional)
		buf_put_z(&line, ", optional");
	if (item->pack.n) {
		buf_put_z(&line, ": ");
		buf_put(&line, item->pack);
	}
	buf_put_z(out, "[ ] ");
	escape_line(out, buf_str(&line));
	buf_put_char(out, '\n');
}

/* "For: Crushed potatoes; Crumble" */
static void
put_dishes(struct buf *out, const struct draft *d)
{
	for (size_t i = 0; i < d->dishes; i++) {
		struct buf title = buf_in(out->arena);

		text_dish_title(&title, &d->dish[i]);
		buf_put_z(out, i == 0 ? "For: " : "; ");
		escape_line(out, buf_str(&title));
	}
	if (d->dishes)
		buf_put_char(out, '\n');
}

static void
write_shopping(const struct draft *d, const struct grammar *g,
    const struct tamis_style *style, struct buf *out)
{
	struct house house = house_of(d, g, style);
	struct basket b = basket_of(out->arena, d, g);

	buf_put_z(out, "Shopping list\n");
	put_dishes(out, d);
	if (b.items == 0)
		buf_put_z(out, "\nNothing to buy was found in this episode.\n");
	for (size_t i = 0; i < b.items; i++) {
		if (i == 0 || !str_is(b.item[i].section, b.item[i - 1].section)) {
			buf_put_char(out, '\n');
			escape_line(out, b.item[i].section);
			buf_put_char(out, '\n');
		}
		put_item(out, &house, &b.item[i]);
	}
}

const struct writer writer_shopping = {
    .name = "shopping",
    .extension = "txt",
    .help = "what to buy for all dishes, by section of a shop",
    .package = "shopping",
    .write = write_shopping,
};
