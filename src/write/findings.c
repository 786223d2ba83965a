/* SPDX-License-Identifier: ISC */
/*
 * The findings of every episode as one JSON object, for programs; the objects
 * in it are those of the draft (draft.schema.json).
 */
#include "write/object.h"
#include "write/reports.h"

/* What was odd in the file itself. */
static void
put_diagnostics(struct node o, const struct script *s)
{
	struct node list = node_array(o, "diagnostics");

	for (size_t i = 0; i < s->diagnostics; i++) {
		struct node one = node_object(list, NULL);

		node_str(one, "message", s->diagnostic[i].text);
		object_span(one, s->diagnostic[i].span);
	}
}

/* What is wrong with the answers. */
static void
put_problems(struct node o, const struct draft *d)
{
	struct node list = node_array(o, "answer_problems");

	for (size_t i = 0; i < d->answer_problems; i++) {
		const struct answer_problem *p = &d->answer_problem[i];
		struct node one = node_object(list, NULL);

		node_str(one, "message", p->text);
		node_str(one, "severity", severity_word(p->severity));
		node_int(one, "line", p->place.line);
		node_int(one, "column", p->place.column);
	}
}

static void
put_reported(struct node list, const struct reported *r)
{
	struct node o = node_object(list, NULL);

	node_str(o, "path", r->path);
	node_str_or_null(o, "trouble", r->trouble);
	if (!r->draft)
		return;
	object_episode(o, r->draft);
	put_diagnostics(o, r->draft->script);
	node_str_or_null(o, "answers", r->answers);
	put_problems(o, r->draft);
	object_findings(o, r->draft);
}

static void
write_findings(const struct reported *r, size_t n, struct buf *out)
{
	struct node root = node_root(out->arena), list;

	node_int(root, "tamis", 1);
	list = node_array(root, "episodes");
	for (size_t i = 0; i < n; i++)
		put_reported(list, &r[i]);
	node_print(root, out);
}

const struct report report_findings = {
    .name = "json",
    .help = "one JSON object for all episodes, for programs",
    .write = write_findings,
};
