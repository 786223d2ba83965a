/* SPDX-License-Identifier: ISC */
/*
 * What the pages share. They load nothing: a policy in the head forbids it.
 */
#include "page/page.h"

#include "page/assets.h"
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

static void
put_sheets(struct buf *out, const char *sheets)
{
	struct str rest = str_of(sheets);

	buf_put_z(out, "<style>\n");
	while (rest.p)
		buf_put(out, asset(str_next(&rest, ' ')));
	buf_put_z(out, "</style>\n");
}

void
page_head(struct buf *out, struct str title, const char *sheets)
{
	buf_put_z(out,
	    "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
	    "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
	    "<meta name=\"color-scheme\" content=\"light dark\">\n"
	    "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
	    "style-src 'unsafe-inline'; script-src 'unsafe-inline'; base-uri 'none'; "
	    "form-action 'none'\">\n<title>");
	escape_html(out, title);
	buf_put_z(out, "</title>\n");
	put_sheets(out, sheets);
	buf_put_z(out, "</head>\n");
}

void
page_open(struct buf *out, const struct draft *d, const char *what, const char *sheets)
{
	struct buf title = buf_in(out->arena);

	page_title(&title, d);
	buf_fmt(&title, ": %s", what);
	page_head(out, buf_str(&title), sheets);
}

void
page_script(struct buf *out, const char *name)
{
	buf_put_z(out, "<script>\n");
	buf_put(out, asset(str_of(name)));
	buf_put_z(out, "</script>\n");
}

void
page_close(struct buf *out)
{
	buf_put_z(out, "</body>\n</html>\n");
}
