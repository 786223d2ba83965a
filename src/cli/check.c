/* SPDX-License-Identifier: ISC */
/*
 * tamis check: what is missing, contradictory or unsafe, as
 *   soup.txt:3:21: note: corrected while speaking [self-correction]
 */
#include "base/print.h"
#include "cli/episodes.h"
#include "cli/excerpt.h"

static void
put_position(struct buf *b, const struct episode *e, const struct script *s, uint32_t at)
{
	struct err_place p = script_line(s, at);

	buf_fmt(b, "%s:%u:%u: ", e->path, p.line, p.column);
}

static void
put_severity(struct buf *b, enum severity severity, const struct look *look)
{
	static const char *const name[] = {"note", "warning", "error"};
	static const enum paint paint[] = {PAINT_NOTE, PAINT_WARNING, PAINT_ERROR};

	look_paint(b, look, paint[severity]);
	buf_put_z(b, name[severity]);
	buf_put_char(b, ':');
	look_paint(b, look, PAINT_NONE);
	buf_put_char(b, ' ');
}

/* "at 1:15" */
static struct str
time_text(struct arena *a, int64_t at_ms)
{
	struct buf b = buf_in(a);

	if (at_ms >= 0) {
		buf_put_z(&b, "at ");
		print_clock(&b, at_ms);
	}
	return buf_str(&b);
}

static void
put_diagnostic(struct episode *e, const struct draft *d, const struct diagnostic *odd,
    const struct look *look)
{
	put_position(&e->out, e, d->script, odd->span.beg);
	put_severity(&e->out, SEVERITY_NOTE, look);
	look_put(&e->out, odd->text);
	buf_put_z(&e->out, " [script]\n");
	excerpt_put(&e->out, d->script, odd->span, look, STR(""));
}

static void
put_related(struct episode *e, const struct draft *d, const struct related *r)
{
	struct str when = time_text(&e->arena, r->place.at_ms);

	buf_put_z(&e->out, "  see ");
	put_position(&e->out, e, d->script, r->place.span.beg);
	look_put(&e->out, r->message);
	if (when.n)
		buf_fmt(&e->out, ", %.*s", (int)when.n, when.p);
	buf_put_char(&e->out, '\n');
}

static void
put_finding(struct episode *e, const struct draft *d, const struct finding *f,
    const struct look *look)
{
	put_position(&e->out, e, d->script, f->place.span.beg);
	put_severity(&e->out, f->severity, look);
	look_put(&e->out, f->message);
	buf_fmt(&e->out, " [%s]\n", f->kind->code);
	excerpt_put(
	    &e->out, d->script, f->place.span, look, time_text(&e->arena, f->place.at_ms));
	if (f->suggestion.n) {
		buf_put_z(&e->out, "  try: ");
		look_put(&e->out, f->suggestion);
		buf_put_char(&e->out, '\n');
	}
	for (size_t i = 0; i < f->relateds; i++)
		put_related(e, d, &f->related[i]);
}

static enum outcome
render(struct episode *e, const struct draft *d, const struct run *run)
{
	enum outcome outcome = OUTCOME_CLEAN;

	for (size_t i = 0; i < d->script->diagnostics; i++)
		put_diagnostic(e, d, &d->script->diagnostic[i], &run->look);
	for (size_t i = 0; i < d->findings; i++) {
		put_finding(e, d, &d->finding[i], &run->look);
		if (d->finding[i].severity >= SEVERITY_WARNING)
			outcome = OUTCOME_FINDINGS;
	}
	return outcome;
}

static enum outcome
run_check(const struct request *r)
{
	struct run run = {.look = look_stdout(), .render = render, .request = r};

	return episodes_run(&run);
}

const struct command command_check = {
    .name = "check",
    .help = "print what is missing, contradictory or unsafe in a script",
    .usage = "tamis check [OPTION...] EPISODE...\n\n"
	     "Prints what a recipe editor would ask about each script: the place, how\n"
	     "grave it is, the question, its code (see tamis explain), the words and\n"
	     "their time. - reads standard input.\n",
    .options = "region grammar",
    .run = run_check,
};
