/* SPDX-License-Identifier: ISC */
/*
 * The whole draft as one JSON object, for programs. draft.schema.json beside
 * this file describes it. Keys never change meaning; unknown values are null.
 */
#include "write/writers.h"

#include "grammar/units.h"
#include "write/object.h"
#include "write/text.h"

/* min and max; null where they are not known. */
static void
put_bounds(struct node o, bool known, struct ratio min, struct ratio max)
{
	if (known) {
		node_ratio(o, "min", min);
		node_ratio(o, "max", max);
	} else {
		node_null(o, "min");
		node_null(o, "max");
	}
}

static void
put_amount(struct node o, const char *key, const struct amount *a)
{
	struct node amount;

	if (!a->present) {
		node_null(o, key);
		return;
	}
	amount = node_object(o, key);
	put_bounds(amount, a->known, a->min, a->max);
	node_str(amount, "unit", a->unit ? a->unit->name : STR(""));
}

static void
put_unit_or_null(struct node o, const struct unit *u)
{
	node_str_or_null(o, "unit", u ? u->name : STR(""));
}

/* ---- dishes ------------------------------------------------------------- */

static void
put_yield(struct node o, const struct dish *d)
{
	struct node yield;
	struct str unit = d->yield_unit;

	if (!d->yield.present) {
		node_null(o, "yield");
		return;
	}
	if (unit.n == 0 && d->yield.unit)
		unit = d->yield.unit->name;
	yield = node_object(o, "yield");
	put_bounds(yield, d->yield.known, d->yield.min, d->yield.max);
	node_str(yield, "unit", unit);
}

static void
put_alternatives(struct node o, const struct ingredient *in)
{
	struct node list = node_array(o, "alternatives");

	for (size_t i = 0; i < in->alternatives; i++) {
		struct node one = node_object(list, NULL);

		node_str(one, "item", in->alternative[i].item);
		put_amount(one, "amount", &in->alternative[i].amount);
	}
}

static void
put_ingredient(struct node ingredients, const struct ingredient *in)
{
	struct node o = node_object(ingredients, NULL);
	struct node uses;
	struct buf note = buf_in(o.arena);

	text_note(&note, in);
	node_str(o, "item", in->item);
	put_amount(o, "amount", &in->amount);
	if (in->metric.known)
		put_amount(o, "metric", &in->metric);
	else
		node_null(o, "metric");
	put_amount(o, "size", &in->size);
	node_str_or_null(o, "preparation", in->preparation);
	node_str_or_null(o, "note", buf_str(&note));
	node_bool(o, "optional", in->optional);
	put_alternatives(o, in);
	uses = node_array(o, "uses");
	for (size_t i = 0; i < in->uses; i++) {
		struct node use = node_object(uses, NULL);

		node_seconds(use, "at_s", in->use[i].at_ms);
		object_span(use, in->use[i].span);
	}
	object_place(o, &in->place);
}

static void
put_temperature(struct node o, const struct temperature *t)
{
	struct node temperature;

	if (text_has_degrees(t)) {
		temperature = node_object(o, "temperature");
		put_bounds(temperature, true, t->min, t->max);
		put_unit_or_null(temperature, t->unit);
		node_bool(temperature, "unit_stated", t->unit_stated);
	} else {
		node_null(o, "temperature");
	}
	node_str_or_null(o, "heat", t->heat);
}

static void
put_duration(struct node o, const struct duration *d)
{
	struct node duration;

	if (!d->present) {
		node_null(o, "duration");
		return;
	}
	duration = node_object(o, "duration");
	node_seconds(duration, "min_s", d->known ? d->min_ms : -1);
	node_seconds(duration, "max_s", d->known ? d->max_ms : -1);
}

static void
put_doneness(struct node o, const struct doneness *d)
{
	struct node doneness;

	if (!d->known && d->text.n == 0) {
		node_null(o, "doneness");
		return;
	}
	doneness = node_object(o, "doneness");
	node_str_or_null(doneness, "text", d->text);
	put_bounds(doneness, d->known, d->min, d->max);
	put_unit_or_null(doneness, d->known ? d->unit : NULL);
}

static void
put_step(struct node steps, const struct step *s)
{
	struct node o = node_object(steps, NULL);
	struct node uses;

	node_str(o, "text", s->text);
	node_str_or_null(o, "action", s->action);
	node_bool(o, "recast", s->recast);
	put_temperature(o, &s->temperature);
	put_duration(o, &s->duration);
	put_doneness(o, &s->doneness);
	uses = node_array(o, "uses");
	for (size_t i = 0; i < s->uses; i++)
		node_int(uses, NULL, s->use[i]);
	node_bool(o, "passive", s->passive);
	object_place(o, &s->place);
}

static void
put_part(struct node parts, const struct part *p)
{
	struct node o = node_object(parts, NULL);
	struct node ingredients, steps;

	node_str(o, "name", p->name);
	ingredients = node_array(o, "ingredients");
	for (size_t i = 0; i < p->ingredients; i++)
		put_ingredient(ingredients, &p->ingredient[i]);
	steps = node_array(o, "steps");
	for (size_t i = 0; i < p->steps; i++)
		put_step(steps, &p->step[i]);
}

static void
put_equipment(struct node equipment, const struct equipment *e)
{
	struct node o = node_object(equipment, NULL);

	node_str(o, "item", e->item);
	put_amount(o, "size", &e->size);
	node_seconds(o, "at_s", e->place.at_ms);
	object_span(o, e->place.span);
}

static void
put_dish(struct node dishes, const struct dish *d)
{
	struct node o = node_object(dishes, NULL);
	struct node child;

	node_str_or_null(o, "name", d->name);
	node_seconds(o, "start_s", d->beg_ms);
	node_seconds(o, "end_s", d->end_ms);
	put_yield(o, d);
	if (d->scale.den)
		node_ratio(o, "scale", d->scale);
	else
		node_null(o, "scale");
	child = node_object(o, "time");
	node_seconds(child, "active_s", d->active_ms);
	node_seconds(child, "total_s", d->total_ms);
	node_seconds(child, "claimed_s", d->claimed_ms);
	child = node_array(o, "parts");
	for (size_t i = 0; i < d->parts; i++)
		put_part(child, &d->part[i]);
	child = node_array(o, "equipment");
	for (size_t i = 0; i < d->equipments; i++)
		put_equipment(child, &d->equipment[i]);
	child = node_array(o, "notes");
	for (size_t i = 0; i < d->notes; i++)
		node_str(child, NULL, d->note[i]);
}

/* ---- measures ----------------------------------------------------------- */

static const char *const kind_names[] = {
    [MEASURE_AMOUNT] = "amount",
    [MEASURE_COUNT] = "count",
    [MEASURE_TEMPERATURE] = "temperature",
    [MEASURE_DURATION] = "duration",
    [MEASURE_LENGTH] = "length",
};

static const char *const role_names[] = {
    [ROLE_NONE] = "",
    [ROLE_APPLIANCE] = "appliance",
    [ROLE_OIL] = "oil",
    [ROLE_LIQUID] = "liquid",
    [ROLE_INTERNAL] = "internal",
    [ROLE_AMBIENT] = "ambient",
    [ROLE_STEP] = "step",
    [ROLE_REST] = "rest",
    [ROLE_CLAIM] = "claim",
    [ROLE_OTHER] = "other",
};

static const char *const bound_names[] = {
    [BOUND_NONE] = "",
    [BOUND_MIN] = "min",
    [BOUND_MAX] = "max",
};

static const char *const base_names[] = {
    [DIM_COUNT] = "",
    [DIM_VOLUME] = "millilitre",
    [DIM_MASS] = "gram",
    [DIM_LENGTH] = "millimetre",
    [DIM_TIME] = "second",
    [DIM_TEMPERATURE] = "celsius",
};

static void
put_base(struct node o, const struct amount *a)
{
	const struct unit *u = a->unit;
	struct node base;

	if (!a->known || !u || !u->has_base || u->dimension == DIM_COUNT) {
		node_null(o, "base");
		return;
	}
	base = node_object(o, "base");
	node_ratio(base, "min", unit_to_base(u, a->min));
	node_ratio(base, "max", unit_to_base(u, a->max));
	node_str(base, "unit", str_of(base_names[u->dimension]));
}

/* A bare count has the unit ""; a bare temperature or duration has none. */
static void
put_measure(struct node measures, const struct measure *m)
{
	struct node o = node_object(measures, NULL);
	bool countable = m->kind == MEASURE_AMOUNT || m->kind == MEASURE_COUNT;

	node_str(o, "kind", str_of(kind_names[m->kind]));
	put_bounds(o, m->value.known, m->value.min, m->value.max);
	if (countable && !m->value.unit)
		node_str(o, "unit", STR(""));
	else
		put_unit_or_null(o, m->value.unit);
	node_bool(o, "unit_stated", m->unit_stated);
	put_base(o, &m->value);
	node_str_or_null(o, "role", str_of(role_names[m->role]));
	node_bool(o, "approximate", m->approximate);
	node_str_or_null(o, "bound", str_of(bound_names[m->bound]));
	node_str(o, "text", m->text);
	object_place(o, &m->place);
}

/* ---- the object --------------------------------------------------------- */

static void
write_json(const struct draft *d, const struct grammar *g, const struct tamis_style *style,
    struct buf *out)
{
	struct node root = node_root(out->arena);
	struct node list;

	(void)g;
	(void)style;
	node_int(root, "tamis", 1);
	object_episode(root, d);
	list = node_array(root, "dishes");
	for (size_t i = 0; i < d->dishes; i++)
		put_dish(list, &d->dish[i]);
	list = node_array(root, "measures");
	for (size_t i = 0; i < d->measures; i++)
		put_measure(list, &d->measure[i]);
	object_findings(root, d);
	node_print(root, out);
}

const struct writer writer_json = {
    .name = "json",
    .extension = "json",
    .help = "the whole draft with where each thing was said, for programs",
    .package = "draft",
    .write = write_json,
};
