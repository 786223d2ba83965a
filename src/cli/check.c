/* SPDX-License-Identifier: ISC */
/*
 * tamis check: what is missing, contradictory or unsafe, as
 *   soup.txt:3:21: note: corrected while speaking [self-correction]
 */
#include "archive/archive.h"
#include "base/print.h"
#include "cli/answers.h"
#include "cli/request.h"
#include "term/excerpt.h"
#include "term/nearest.h"

#include <stdio.h>
#include <unistd.h>

static void
put_position(struct buf *b, const struct episode *e, const struct script *s, uint32_t at)
{
	struct err_place p = script_line(s, at);

	buf_fmt(b, "%s:%u:%u: ", e->path, p.line, p.column);
}

static const char *const severity_name[] = {"note", "warning", "error"};

static void
put_severity(struct buf *b, enum severity severity, const struct look *look)
{
	static const enum paint paint[] = {PAINT_NOTE, PAINT_WARNING, PAINT_ERROR};

	look_paint(b, look, paint[severity]);
	buf_put_z(b, severity_name[severity]);
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

/* The code of what is odd in the file itself; no check raises it. */
#define SCRIPT "script"

/* ---- what is wanted ------------------------------------------------------ */

static bool
is_code(struct str code)
{
	if (str_is_z(code, SCRIPT))
		return true;
	for (size_t i = 0; tamis_finding_kind(i); i++)
		if (str_is_z(code, tamis_finding_kind(i)->code))
			return true;
	return false;
}

static bool
complain_of_code(struct str code)
{
	char typed[64];
	struct nearest near;

	snprintf(typed, sizeof typed, "%.*s", (int)code.n, code.p);
	near = nearest_to(typed);
	for (size_t i = 0; tamis_finding_kind(i); i++)
		nearest_offer(&near, tamis_finding_kind(i)->code);
	if (near.best)
		complain("no code %s; did you mean %s?", typed, near.best);
	else
		complain("no code %s; tamis explain lists them", typed);
	return false;
}

static bool
are_codes(const char *codes)
{
	struct str rest = str_of(codes);

	while (rest.p) {
		struct str code = str_trim(str_next(&rest, ','));

		if (!is_code(code))
			return complain_of_code(code);
	}
	return true;
}

static bool
has_code(const char *codes, const char *code)
{
	struct str rest = str_of(codes);

	while (rest.p)
		if (str_is_z(str_trim(str_next(&rest, ',')), code))
			return true;
	return false;
}

static bool
wants_diagnostics(const struct request *r, const struct tamis_selection *s)
{
	return s->lowest == SEVERITY_NOTE && (!r->only || has_code(r->only, SCRIPT)) &&
	       !(r->except && has_code(r->except, SCRIPT));
}

static bool
read_severity(const char *name, enum severity *out)
{
	for (enum severity s = SEVERITY_NOTE; s <= SEVERITY_ERROR; s++)
		if (strcmp(severity_name[s], name) == 0) {
			*out = s;
			return true;
		}
	complain("no severity %s; there are note, warning and error", name);
	return false;
}

/* ---- the run ------------------------------------------------------------- */

/* The status is 1 for what is still open and this grave. */
static enum severity
gravest_let_pass(const struct run *run)
{
	return run->request->severity ? run->selection->lowest : SEVERITY_WARNING;
}

static enum outcome
problems_outcome(const struct draft *d, enum severity gravest)
{
	for (size_t i = 0; i < d->answer_problems; i++)
		if (d->answer_problem[i].severity >= gravest)
			return OUTCOME_FINDINGS;
	return OUTCOME_CLEAN;
}

static enum outcome
render(struct episode *e, const struct draft *d, const struct run *run)
{
	enum outcome outcome = problems_outcome(d, gravest_let_pass(run));
	size_t answered = 0;

	if (run->request->ask)
		return answers_ask(e, d);
	if (!run->report && wants_diagnostics(run->request, run->selection))
		for (size_t i = 0; i < d->script->diagnostics; i++)
			put_diagnostic(e, d, &d->script->diagnostic[i], &run->look);
	if (!run->report)
		answers_put_problems(&e->out, e, d);
	for (size_t i = 0; i < d->findings; i++) {
		if (d->finding[i].status != STATUS_OPEN) {
			answered++;
			continue;
		}
		if (!run->report)
			put_finding(e, d, &d->finding[i], &run->look);
		if (d->finding[i].severity >= gravest_let_pass(run))
			outcome = OUTCOME_FINDINGS;
	}
	if (answered && !run->report)
		buf_fmt(&e->out, "%s: %zu answered in %s\n", e->path, answered,
		    e->answers_path);
	return outcome;
}

static void
finish(const struct episode *e, size_t episodes, const struct run *run)
{
	struct arena a;
	struct reported *r;
	struct buf out;

	arena_init(&a);
	out = buf_in(&a);
	r = arena_array(&a, episodes, struct reported);
	for (size_t i = 0; i < episodes; i++)
		r[i] = (struct reported){str_of(e[i].path), e[i].draft,
		    e[i].err.set ? str_of(e[i].err.text) : STR(""),
		    str_of(e[i].answers_path)};
	run->report->write(r, episodes, &out);
	fwrite(out.v, 1, out.n, stdout);
	arena_release(&a);
}

static const struct report *
report_asked(const char *name)
{
	const struct report *report = tamis_report_find(name);
	struct nearest near = nearest_to(name);

	if (report)
		return report;
	nearest_offer(&near, "text");
	for (size_t i = 0; tamis_report(i); i++)
		nearest_offer(&near, tamis_report(i)->name);
	if (near.best)
		complain("no format %s; did you mean %s?", name, near.best);
	else
		complain("no format %s; tamis check --help lists them", name);
	return NULL;
}

/* What past episodes have to say to it. */
static void
amend(struct episode *e, struct draft *d, const struct run *run)
{
	archive_compare(run->context, run->grammar, d, &e->err);
}

/* The archive asked for; else the one in the data folder, where there is one. */
static bool
open_past(const struct request *r, struct arena *a, struct archive **out)
{
	const char *path = request_archive(r, a);
	struct err e = {0};

	*out = NULL;
	if (!path || (!r->archive && access(path, R_OK) != 0))
		return true;
	*out = archive_open(path, ARCHIVE_READ, &e);
	if (!*out)
		complain_of(&e);
	return *out;
}

static enum outcome
check_with_past(struct run *run)
{
	enum outcome outcome = OUTCOME_UNUSABLE;
	struct archive *past;
	struct arena a;

	arena_init(&a);
	if (open_past(run->request, &a, &past)) {
		run->context = past;
		run->amend = past ? amend : NULL;
		outcome = episodes_run(run);
	}
	archive_close(past);
	arena_release(&a);
	return outcome;
}

static enum outcome
run_check(const struct request *r)
{
	struct tamis_selection selection = {SEVERITY_NOTE, r->only, r->except};
	struct run run = {
	    .look = look_stdout(), .render = render, .request = r, .selection = &selection};

	if (r->format && !r->ask && strcmp(r->format, "text") != 0) {
		run.report = report_asked(r->format);
		run.finish = finish;
		if (!run.report)
			return OUTCOME_UNUSABLE;
	}
	if ((r->severity && !read_severity(r->severity, &selection.lowest)) ||
	    (r->only && !are_codes(r->only)) || (r->except && !are_codes(r->except)))
		return OUTCOME_UNUSABLE;
	return check_with_past(&run);
}

static void
print_formats(void)
{
	printf("  %-10s %s\n", "text", "a line and an excerpt for each, for people");
	for (size_t i = 0; tamis_report(i); i++)
		printf("  %-10s %s\n", tamis_report(i)->name, tamis_report(i)->help);
}

const struct command command_check = {
    .name = "check",
    .help = "print what is missing, contradictory or unsafe in a script",
    .usage = "tamis check [OPTION...] EPISODE...\n\n"
	     "Prints what a recipe editor would ask about each script: the place, how\n"
	     "grave it is, the question, its code (see tamis explain), the words and\n"
	     "their time. - reads standard input. What EPISODE.answers beside an episode\n"
	     "answers is left out. Where an archive is at hand, figures far from those of\n"
	     "past episodes are asked about too.\n",
    .options = "format severity only except answers ask region profile grammar archive",
    .run = run_check,
    .print_formats = print_formats,
};
