/* SPDX-License-Identifier: ISC */
/*
 * Findings as an editor's queries.
 */
#include "page/queries.h"

#include "base/print.h"
#include "write/escape.h"
#include "write/text.h"

const char *
severity_name(enum severity severity)
{
	static const char *const name[] = {
	    [SEVERITY_NOTE] = "note",
	    [SEVERITY_WARNING] = "warning",
	    [SEVERITY_ERROR] = "error",
	};

	return name[severity];
}

static const char *
status_name(enum status status)
{
	static const char *const name[] = {
	    [STATUS_OPEN] = "open",
	    [STATUS_ANSWERED] = "answered",
	    [STATUS_STET] = "stet",
	};

	return name[status];
}

static void
put_mark(struct buf *out, const struct draft *d, size_t finding, const char *id)
{
	const struct finding *f = &d->finding[finding];

	buf_fmt(out,
	    "<a class=\"mark %s %s\"%s href=\"#n%zu\" aria-label=\"Query %zu, %s\">%zu</a>",
	    severity_name(f->severity), status_name(f->status), id, finding + 1,
	    finding + 1, severity_name(f->severity), finding + 1);
}

void
query_put_mark(struct buf *out, const struct draft *d, size_t finding)
{
	struct buf id = buf_in(out->arena);

	buf_fmt(&id, " id=\"m%zu\"%c", finding + 1, '\0');
	put_mark(out, d, finding, id.v);
}

static void
put_related(struct buf *out, const struct finding *f)
{
	for (size_t i = 0; i < f->relateds; i++) {
		struct buf clock = buf_in(out->arena);

		print_clock(&clock, f->related[i].place.at_ms);
		buf_put_z(out, "<p class=\"see\">See ");
		if (clock.n)
			buf_fmt(out, "%.*s: ", (int)clock.n, clock.v);
		escape_html(out, f->related[i].message);
		buf_put_z(out, "</p>");
	}
}

static void
put_message(struct buf *out, const struct finding *f)
{
	struct buf text = buf_in(out->arena);

	text_title(&text, f->message);
	if (text.n && !strchr(".!?", text.v[text.n - 1]))
		buf_put_char(&text, '.');
	escape_html(out, buf_str(&text));
}

/* "answered" or "stet", where somebody has dealt with it. */
static void
put_status(struct buf *out, const struct finding *f)
{
	if (f->status == STATUS_OPEN)
		return;
	buf_fmt(out, " <span class=\"status\">%s", status_name(f->status));
	if (f->answer.n) {
		buf_put_z(out, ": ");
		escape_html(out, f->answer);
	}
	buf_put_z(out, "</span>");
}

static void
put_things(struct buf *out, const struct stretch *s)
{
	if (!s || s->things == 0)
		return;
	buf_put_z(out, " data-t=\"");
	for (size_t i = 0; i < s->things; i++)
		buf_fmt(out, "%s%u", i ? " " : "", s->thing[i]);
	buf_put_char(out, '"');
}

void
query_put_note(struct buf *out, const struct ties *t, size_t finding)
{
	const struct finding *f = &t->draft->finding[finding];

	buf_fmt(out, "<div class=\"query %s %s\" id=\"n%zu\"", severity_name(f->severity),
	    status_name(f->status), finding + 1);
	put_things(out, stretch_at(t, f->place.span.beg));
	buf_fmt(out,
	    "><p><a class=\"number\" href=\"#m%zu\" aria-label=\"Query %zu, to its words\">"
	    "%zu</a> <b>%s</b>",
	    finding + 1, finding + 1, finding + 1, severity_name(f->severity));
	put_status(out, f);
	buf_put_char(out, ' ');
	put_message(out, f);
	buf_put_z(out, "</p>");
	if (f->suggestion.n) {
		buf_put_z(out, "<p class=\"try\">Try: ");
		escape_html(out, f->suggestion);
		buf_put_z(out, "</p>");
	}
	put_related(out, f);
	buf_put_z(out, "</div>");
}

static void
put_item(struct buf *out, const struct draft *d, size_t finding)
{
	const struct finding *f = &d->finding[finding];
	struct buf clock = buf_in(out->arena);

	buf_fmt(out, "<li class=\"%s %s\"><a href=\"#n%zu\">", severity_name(f->severity),
	    status_name(f->status), finding + 1);
	buf_fmt(out, "<b>%s</b> ", severity_name(f->severity));
	put_message(out, f);
	buf_put_z(out, "</a>");
	put_status(out, f);
	print_clock(&clock, f->place.at_ms);
	buf_fmt(out, " <span class=\"code\">%s%s%.*s</span></li>\n", f->kind->code,
	    clock.n ? ", " : "", (int)clock.n, clock.n ? clock.v : "");
}

static void
put_oddities(struct buf *out, const struct script *s)
{
	if (s->diagnostics)
		buf_put_z(out, "<h3>About the file</h3>\n<ul class=\"odd\">\n");
	for (size_t i = 0; i < s->diagnostics; i++) {
		struct err_place p = script_line(s, s->diagnostic[i].span.beg);

		buf_fmt(out, "<li>Line %u: ", p.line);
		escape_html(out, s->diagnostic[i].text);
		buf_put_z(out, "</li>\n");
	}
	if (s->diagnostics)
		buf_put_z(out, "</ul>\n");
}

void
queries_put_list(struct buf *out, const struct draft *d)
{
	if (d->findings == 0)
		buf_put_z(out, "<p>Nothing to ask.</p>\n");
	else
		buf_put_z(out, "<ol class=\"queries\">\n");
	for (size_t i = 0; i < d->findings; i++)
		put_item(out, d, i);
	if (d->findings)
		buf_put_z(out, "</ol>\n");
	put_oddities(out, d->script);
}

void
queries_put_marks_of(struct buf *out, const struct draft *d, int dish, int part, int step)
{
	for (size_t i = 0; i < d->findings; i++) {
		const struct finding *f = &d->finding[i];

		if (f->dish == dish && f->step == step && (step < 0 || f->part == part))
			put_mark(out, d, i, "");
	}
}

static void
put_plural(struct buf *out, size_t n, const char *noun)
{
	buf_fmt(out, "%s%zu %s%s", out->n ? ", " : "", n, noun, n == 1 ? "" : "s");
}

void
queries_put_count(struct buf *out, const struct draft *d)
{
	size_t n[SEVERITY_ERROR + 1] = {0};
	struct buf b = buf_in(out->arena);

	for (size_t i = 0; i < d->findings; i++)
		n[d->finding[i].severity] += d->finding[i].status == STATUS_OPEN;
	for (int i = SEVERITY_ERROR; i >= SEVERITY_NOTE; i--)
		if (n[i])
			put_plural(&b, n[i], severity_name((enum severity)i));
	buf_put(out, b.n ? buf_str(&b) : STR("no open query"));
}
