/* SPDX-License-Identifier: ISC */
/*
 * The objects that every JSON form of tamis has alike.
 */
#include "write/object.h"

void
object_span(struct node o, struct span s)
{
	struct node span = node_array(o, "span");

	node_int(span, NULL, s.beg);
	node_int(span, NULL, s.end);
}

void
object_place(struct node o, const struct place *p)
{
	node_seconds(o, "at_s", p->at_ms);
	node_seconds(o, "cue_s", p->cue_ms);
	object_span(o, p->span);
}

void
object_episode(struct node root, const struct draft *d)
{
	struct node o = node_object(root, "episode");

	node_str_or_null(o, "title", d->script->title);
	node_str(o, "source", d->script->name);
	node_str(o, "format", str_of(d->script->format));
	node_str(o, "language", str_of(d->language));
	node_str_or_null(o, "region", str_of(d->region));
	node_bool(o, "region_stated", d->region_stated);
	node_str_or_null(o, "profile", str_of(d->profile));
	node_seconds(o, "length_s", d->script->length_ms);
}

static const char *const severity_names[] = {
    [SEVERITY_NOTE] = "note",
    [SEVERITY_WARNING] = "warning",
    [SEVERITY_ERROR] = "error",
};

static const char *const status_names[] = {
    [STATUS_OPEN] = "open",
    [STATUS_ANSWERED] = "answered",
    [STATUS_STET] = "stet",
};

struct str
severity_word(enum severity severity)
{
	return str_of(severity_names[severity]);
}

static void
put_related(struct node list, const struct related *r)
{
	struct node o = node_object(list, NULL);

	node_seconds(o, "at_s", r->place.at_ms);
	object_span(o, r->place.span);
	node_str(o, "message", r->message);
}

static void
put_finding(struct node list, const struct finding *f)
{
	struct node o = node_object(list, NULL), related;

	node_str(o, "code", str_of(f->kind->code));
	node_str(o, "severity", severity_word(f->severity));
	node_str(o, "message", f->message);
	node_str_or_null(o, "suggestion", f->suggestion);
	node_index(o, "dish", f->dish);
	node_index(o, "part", f->part);
	node_index(o, "step", f->step);
	related = node_array(o, "related");
	for (size_t i = 0; i < f->relateds; i++)
		put_related(related, &f->related[i]);
	node_str(o, "status", str_of(status_names[f->status]));
	node_str_or_null(o, "answer", f->answer);
	object_place(o, &f->place);
}

void
object_findings(struct node root, const struct draft *d)
{
	struct node list = node_array(root, "findings");

	for (size_t i = 0; i < d->findings; i++)
		put_finding(list, &d->finding[i]);
}
