/* SPDX-License-Identifier: ISC */
/*
 * The shopping list as CSV (RFC 4180), one row per food and kind of unit, for
 * spreadsheets:
 *   Dairy and eggs,butter,110,110,gram,,1 block of 250 g,Crushed potatoes
 */
#include "write/writers.h"

#include "base/print.h"
#include "house/portion.h"
#include "publish/basket.h"
#include "write/escape.h"
#include "write/text.h"

static void
put_cell(struct buf *out, struct str text)
{
	buf_put_char(out, ',');
	escape_csv(out, text);
}

static void
put_number(struct buf *out, const struct amount *a, struct ratio v)
{
	struct buf b = buf_in(out->arena);

	if (a->known)
		print_decimal(&b, v);
	put_cell(out, buf_str(&b));
}

static struct str
size_of(struct arena *a, const struct house *h, const struct basket_sum *s)
{
	struct buf b = buf_in(a);

	portion_put_size(&b, h, &s->size);
	return buf_str(&b);
}

static struct str
dishes_of(struct arena *a, const struct draft *d, const struct basket_item *item)
{
	struct buf b = buf_in(a);

	for (size_t i = 0; i < item->dishes; i++) {
		if (i > 0)
			buf_put_z(&b, "; ");
		text_dish_title(&b, &d->dish[item->dish[i]]);
	}
	return buf_str(&b);
}

static void
put_row(struct buf *out, const struct draft *d, const struct house *h,
    const struct basket_item *item, const struct basket_sum *s)
{
	struct str unit = s->total.unit ? s->total.unit->name : STR("");

	escape_csv(out, item->section);
	put_cell(out, item->name);
	put_number(out, &s->total, s->total.min);
	put_number(out, &s->total, s->total.max);
	put_cell(out, unit);
	put_cell(out, size_of(out->arena, h, s));
	put_cell(out, item->pack);
	put_cell(out, dishes_of(out->arena, d, item));
	buf_put_z(out, "\r\n");
}

static void
write_shopping_csv(const struct draft *d, const struct grammar *g,
    const struct tamis_style *style, struct buf *out)
{
	static const struct basket_sum none = {0};
	struct house house = house_of(d, g, style);
	struct basket b = basket_of(out->arena, d, g);

	buf_put_z(out, "section,item,min,max,unit,size,packages,dishes\r\n");
	for (size_t i = 0; i < b.items; i++) {
		const struct basket_item *item = &b.item[i];

		for (size_t k = 0; k < item->sums; k++)
			put_row(out, d, &house, item, &item->sum[k]);
		if (item->more || item->sums == 0)
			put_row(out, d, &house, item, &none);
	}
}

const struct writer writer_shopping_csv = {
    .name = "shopping-csv",
    .extension = "csv",
    .help = "the same as a table for spreadsheets (CSV)",
    .package = "shopping",
    .write = write_shopping_csv,
};
