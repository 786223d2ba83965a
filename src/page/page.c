/* SPDX-License-Identifier: ISC */
/*
 * What the pages share. They load nothing, and run nothing but their own script:
 * a policy in the head forbids the rest.
 */
#include "page/page.h"

#include "page/assets.h"
#include "page/digest.h"
#include "write/escape.h"
#include "write/text.h"

void
page_title(struct buf *b, const struct draft *d)
{
	struct str title = str_trim(d->script->title);

	escape_line(b, title.n ? title : STR("Untitled episode"));
}

static struct str
asset(struct str name)
{
	const struct embedded_file *f = tamis_assets;

	while (f->name && !str_is_z(name, f->name))
		f++;
	return f->data;
}

static struct str
sheet_of(struct arena *a, const struct page_parts *parts)
{
	struct buf sheet = buf_in(a);
	struct str rest = str_of(parts->sheets);

	while (rest.p)
		buf_put(&sheet, asset(str_next(&rest, ' ')));
	return buf_str(&sheet);
}

static void
put_policy(struct buf *out, struct str sheet, const struct page_parts *parts)
{
	buf_put_z(out, "<meta http-equiv=\"Content-Security-Policy\" content=\""
		       "default-src 'none'; base-uri 'none'; form-action 'none'; "
		       "style-src '");
	digest_put(out, sheet);
	buf_put_char(out, '\'');
	if (parts->attributes)
		buf_put_z(out, "; style-src-attr 'unsafe-inline'");
	if (parts->script) {
		buf_put_z(out, "; script-src '");
		digest_put(out, asset(str_of(parts->script)));
		buf_put_char(out, '\'');
	}
	buf_put_z(out, "\">\n");
}

void
page_head(struct buf *out, struct str title, const struct page_parts *parts)
{
	struct str sheet = sheet_of(out->arena, parts);

	buf_put_z(out,
	    "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
	    "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
	    "<meta name=\"color-scheme\" content=\"light dark\">\n");
	put_policy(out, sheet, parts);
	buf_put_z(out, "<title>");
	escape_html(out, title);
	buf_put_z(out, "</title>\n<style>");
	buf_put(out, sheet);
	buf_put_z(out, "</style>\n</head>\n");
}

void
page_open(struct buf *out, const struct draft *d, const struct page_parts *parts)
{
	struct buf title = buf_in(out->arena);

	page_title(&title, d);
	buf_fmt(&title, ": %s", parts->what);
	page_head(out, buf_str(&title), parts);
}

void
page_close(struct buf *out, const struct page_parts *parts)
{
	if (parts->script) {
		buf_put_z(out, "<script>");
		buf_put(out, asset(str_of(parts->script)));
		buf_put_z(out, "</script>\n");
	}
	buf_put_z(out, "</body>\n</html>\n");
}
