/* SPDX-License-Identifier: ISC */
/*
 * The findings of all episodes as one SARIF log, for tools that show findings
 * beside a text. Source: OASIS, Static Analysis Results Interchange Format
 * (SARIF) Version 2.1.0; the numbers in comments are its sections. Lines and
 * columns count code points; where the script is no UTF-8, lines alone.
 */
#include "base/fold.h"
#include "base/print.h"
#include "write/escape.h"
#include "write/object.h"
#include "write/reports.h"

#define SCHEMA                                                                             \
	"https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/"              \
	"sarif-schema-2.1.0.json"

static void
put_message(struct node o, const char *key, struct str text)
{
	node_str(node_object(o, key), "text", text);
}

/* 3.4: the path as a URI reference. */
static void
put_artifact(struct node o, const char *key, struct str path, size_t index)
{
	struct node location = node_object(o, key);
	struct buf uri = buf_in(o.arena);

	escape_uri_path(&uri, path);
	node_str(location, "uri", buf_str(&uri));
	node_int(location, "index", (int64_t)index);
}

/* ---- 3.30: regions ------------------------------------------------------- */

/* Code points of the line before the place, plus one; 0 where the line is no
 * UTF-8. */
static int64_t
column_of(const struct script *s, uint32_t at, const struct err_place *p)
{
	struct str before = str_cut(s->source, at - (p->column - 1), at);
	int64_t column = 1;
	size_t n;

	for (size_t i = 0; i < before.n; i += n, column++)
		if (fold_decode(str_cut(before, i, before.n), &n) <= 0)
			return 0;
	return column;
}

static void
put_region(struct node o, const struct script *s, struct span span)
{
	struct err_place beg = script_line(s, span.beg), end = script_line(s, span.end);
	int64_t beg_column = column_of(s, span.beg, &beg);
	int64_t end_column = column_of(s, span.end, &end);
	struct node region = node_object(o, "region");

	node_int(region, "startLine", beg.line);
	if (beg_column && end_column)
		node_int(region, "startColumn", beg_column);
	node_int(region, "endLine", end.line);
	if (!beg_column || !end_column)
		return;
	node_int(region, "endColumn", end_column);
	put_message(region, "snippet", str_cut(s->source, span.beg, span.end));
}

static void
put_physical(struct node o, const struct reported *r, size_t index, struct span span)
{
	struct node physical = node_object(o, "physicalLocation");

	put_artifact(physical, "artifactLocation", r->path, index);
	put_region(physical, r->draft->script, span);
}

/* 3.33: "blackberry crumble/crumble topping", a dish or a part of one. */
static void
put_logical(struct node location, const struct draft *d, const struct finding *f)
{
	struct node list, o;
	struct buf whole = buf_in(location.arena);
	struct str part = STR("");

	if (f->dish < 0 || (size_t)f->dish >= d->dishes)
		return;
	if (f->part >= 0 && (size_t)f->part < d->dish[f->dish].parts)
		part = d->dish[f->dish].part[f->part].name;
	buf_put(&whole, d->dish[f->dish].name);
	if (part.n)
		buf_fmt(&whole, "/%.*s", (int)part.n, part.p);
	list = node_array(location, "logicalLocations");
	o = node_object(list, NULL);
	node_str(o, "name", part.n ? part : d->dish[f->dish].name);
	node_str(o, "fullyQualifiedName", buf_str(&whole));
	node_str(o, "kind", part.n ? STR("part") : STR("dish"));
}

/* ---- 3.27: results ------------------------------------------------------- */

/* The message with the suggestion, as sentences. */
static struct str
message_of(struct arena *a, const struct finding *f)
{
	struct buf b = buf_in(a);

	buf_put(&b, f->message);
	if (!str_ends(f->message, STR("?")) && !str_ends(f->message, STR(".")))
		buf_put_char(&b, '.');
	if (f->suggestion.n)
		buf_fmt(&b, " Try: %.*s.", (int)f->suggestion.n, f->suggestion.p);
	return buf_str(&b);
}

static void
put_related(
    struct node result, const struct reported *r, size_t index, const struct finding *f)
{
	struct node list;

	if (f->relateds == 0)
		return;
	list = node_array(result, "relatedLocations");
	for (size_t i = 0; i < f->relateds; i++) {
		struct node o = node_object(list, NULL);

		node_int(o, "id", (int64_t)i + 1);
		put_physical(o, r, index, f->related[i].place.span);
		put_message(o, "message", f->related[i].message);
	}
}

/* 3.35: what the author has answered, or lets stand. */
static void
put_suppression(struct node result, const struct finding *f)
{
	struct node list = node_array(result, "suppressions"), o;

	if (f->status == STATUS_OPEN)
		return;
	o = node_object(list, NULL);
	node_str(o, "kind", STR("external"));
	node_str(o, "status", STR("accepted"));
	if (f->answer.n)
		node_str(o, "justification", f->answer);
}

static void
put_properties(struct node result, const struct finding *f)
{
	struct node o = node_object(result, "properties");
	struct buf clock = buf_in(result.arena);

	print_clock(&clock, f->place.at_ms);
	node_str_or_null(o, "time", buf_str(&clock));
	node_seconds(o, "at_s", f->place.at_ms);
	node_str_or_null(o, "suggestion", f->suggestion);
}

static void
put_result(
    struct node results, const struct reported *r, size_t index, const struct finding *f)
{
	struct node o = node_object(results, NULL), list, location;

	node_str(o, "ruleId", str_of(f->kind->code));
	node_str(o, "level", severity_word(f->severity));
	put_message(o, "message", message_of(o.arena, f));
	list = node_array(o, "locations");
	location = node_object(list, NULL);
	put_physical(location, r, index, f->place.span);
	put_logical(location, r->draft, f);
	put_related(o, r, index, f);
	put_suppression(o, f);
	put_properties(o, f);
}

/* ---- 3.19: the tool and its rules ---------------------------------------- */

static void
put_rule(struct node rules, const struct finding_kind *k)
{
	struct node o = node_object(rules, NULL), configuration;

	node_str(o, "id", str_of(k->code));
	put_message(o, "shortDescription", str_of(k->summary));
	put_message(o, "fullDescription", str_of(k->explain));
	configuration = node_object(o, "defaultConfiguration");
	node_str(configuration, "level", severity_word(k->severity));
}

static bool
is_raised(const struct reported *r, size_t n, const struct finding_kind *k)
{
	for (size_t i = 0; i < n; i++)
		for (size_t f = 0; r[i].draft && f < r[i].draft->findings; f++)
			if (r[i].draft->finding[f].kind == k)
				return true;
	return false;
}

/* The rules that were broken; tamis explain has them all. */
static void
put_tool(struct node run, const struct reported *r, size_t n)
{
	struct node tool = node_object(run, "tool"), driver = node_object(tool, "driver");
	const struct finding_kind *k;
	struct node rules;

	node_str(driver, "name", STR("tamis"));
	node_str(driver, "version", STR(TAMIS_VERSION));
	rules = node_array(driver, "rules");
	for (size_t i = 0; (k = tamis_finding_kind(i)); i++)
		if (is_raised(r, n, k))
			put_rule(rules, k);
}

/* ---- 3.58: what was odd in the files, or kept them from being read -------- */

static struct node
put_notification(struct node list, const char *level, struct str text)
{
	struct node o = node_object(list, NULL);

	node_str(o, "level", str_of(level));
	put_message(o, "message", text);
	return node_object(node_array(o, "locations"), NULL);
}

static void
put_problem(struct node list, const struct reported *r, const struct answer_problem *p)
{
	struct str level = severity_word(p->severity);
	struct node location = put_notification(list, level.p, p->text);
	struct node physical = node_object(location, "physicalLocation"), artifact, region;
	struct buf uri = buf_in(list.arena);

	artifact = node_object(physical, "artifactLocation");
	escape_uri_path(&uri, r->answers);
	node_str(artifact, "uri", buf_str(&uri));
	region = node_object(physical, "region");
	node_int(region, "startLine", p->place.line);
}

static void
put_notifications(struct node list, const struct reported *r, size_t index)
{
	const struct script *s = r->draft ? r->draft->script : NULL;

	if (!s) {
		struct node location = put_notification(list, "error", r->trouble);

		put_artifact(node_object(location, "physicalLocation"), "artifactLocation",
		    r->path, index);
		return;
	}
	for (size_t i = 0; i < r->draft->answer_problems; i++)
		put_problem(list, r, &r->draft->answer_problem[i]);
	for (size_t i = 0; i < s->diagnostics; i++)
		put_physical(put_notification(list, "note", s->diagnostic[i].text), r,
		    index, s->diagnostic[i].span);
}

static void
put_invocation(struct node run, const struct reported *r, size_t n)
{
	struct node o = node_object(node_array(run, "invocations"), NULL), list;
	bool all = true;

	for (size_t i = 0; i < n; i++)
		all = all && r[i].draft;
	node_bool(o, "executionSuccessful", all);
	list = node_array(o, "toolExecutionNotifications");
	for (size_t i = 0; i < n; i++)
		put_notifications(list, &r[i], i);
}

static void
put_run(struct node run, const struct reported *r, size_t n)
{
	struct node list;

	put_tool(run, r, n);
	put_invocation(run, r, n);
	list = node_array(run, "artifacts");
	for (size_t i = 0; i < n; i++) {
		struct node o = node_object(list, NULL);

		put_artifact(o, "location", r[i].path, i);
		node_str(node_array(o, "roles"), NULL, STR("analysisTarget"));
	}
	node_str(run, "columnKind", STR("unicodeCodePoints"));
	list = node_array(run, "results");
	for (size_t i = 0; i < n; i++)
		for (size_t f = 0; r[i].draft && f < r[i].draft->findings; f++)
			put_result(list, &r[i], i, &r[i].draft->finding[f]);
}

static void
write_sarif(const struct reported *r, size_t n, struct buf *out)
{
	struct node root = node_root(out->arena);

	node_str(root, "$schema", STR(SCHEMA));
	node_str(root, "version", STR("2.1.0"));
	put_run(node_object(node_array(root, "runs"), NULL), r, n);
	node_print(root, out);
}

const struct report report_sarif = {
    .name = "sarif",
    .help = "one SARIF 2.1.0 log for all episodes, for tools that show findings",
    .write = write_sarif,
};
