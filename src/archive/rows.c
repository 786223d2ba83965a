/* SPDX-License-Identifier: ISC */
/*
 * A draft as rows: dishes, ingredients, steps, equipment, measures in base
 * units, findings, practices.
 */
#include "archive/keep.h"
#include "archive/practice.h"

/* Where the next row of a dish's table goes. */
struct nth {
	int64_t dish;
	size_t ordinal, part;
};

struct base {
	bool known;
	double min, max;
};

static const struct base no_base;

/* units.tsv: base = (value + offset) * factor. */
static double
to_base(const struct unit *u, struct ratio v)
{
	return ratio_double(ratio_mul(ratio_add(v, u->offset), u->factor));
}

static struct base
base_of(const struct amount *a, enum dimension dimension)
{
	const struct unit *u = a->unit;

	if (!a->known || !u || !u->has_base || u->dimension != dimension)
		return no_base;
	return (struct base){true, to_base(u, a->min), to_base(u, a->max)};
}

static void
row_base(struct row *r, struct base b)
{
	row_real_or_null(r, b.min, b.known);
	row_real_or_null(r, b.max, b.known);
}

/* min, max, as they were said. */
static void
row_amount(struct row *r, const struct amount *a)
{
	bool known = a->known;

	row_real_or_null(r, known ? ratio_double(a->min) : 0, known);
	row_real_or_null(r, known ? ratio_double(a->max) : 0, known);
}

/* at_ms, beg, end */
static void
row_place(struct row *r, const struct place *p)
{
	row_time(r, p->at_ms);
	row_int(r, p->span.beg);
	row_int(r, p->span.end);
}

/* ---- shared words ------------------------------------------------------- */

/* The row of the text in `term`; 0 for an empty one, or with *e set. */
static int64_t
term_id(struct keeper *k, struct str text, struct err *e)
{
	struct row r = row_open(k->archive, SQL_TERM_FIND);
	int64_t id = 0;

	if (text.n == 0)
		return 0;
	row_text(&r, text);
	if (row_next(&r, e)) {
		id = row_get_int(&r, 0);
		row_end(&r);
		return id;
	}
	r = row_open(k->archive, SQL_TERM_ADD);
	row_text(&r, text);
	return row_run(&r, e) ? sqlite3_last_insert_rowid(k->archive->db) : 0;
}

static void
row_term(struct row *r, int64_t id)
{
	row_int_or_null(r, id, id > 0);
}

/* The row of a food, and a bit for each allergen that it brings. */
struct food {
	int64_t id, allergens;
};

static int64_t
allergens_of(const struct keeper *k, const struct ingredient *in)
{
	int64_t bits = 0;

	for (size_t i = 0; i < k->archive->allergens; i++)
		if (tamis_brings(k->grammar, in, k->archive->allergen[i].code))
			bits |= (int64_t)1 << k->archive->allergen[i].bit;
	return bits;
}

static void
row_food(struct row *r, const struct ingredient *in)
{
	row_text(r, in->item);
	row_text(r, in->key);
	row_text(r, in->kind);
	row_text(r, in->group);
}

static struct food
food_of(struct keeper *k, const struct ingredient *in, struct err *e)
{
	struct row r = row_open(k->archive, SQL_FOOD_FIND);
	struct food food = {0, 0};

	row_food(&r, in);
	if (row_next(&r, e)) {
		food = (struct food){row_get_int(&r, 0), row_get_int(&r, 1)};
		row_end(&r);
		return food;
	}
	food.allergens = allergens_of(k, in);
	r = row_open(k->archive, SQL_FOOD_ADD);
	row_food(&r, in);
	row_int(&r, food.allergens);
	if (row_run(&r, e))
		food.id = sqlite3_last_insert_rowid(k->archive->db);
	return food;
}

/* ---- a dish ------------------------------------------------------------- */

static bool
keep_ingredient(struct keeper *k, const struct nth *at, const struct ingredient *in,
    int64_t food, struct err *e)
{
	struct base ml = base_of(&in->amount, DIM_VOLUME);
	struct base gram = base_of(&in->amount, DIM_MASS);
	const struct unit *u = in->amount.unit;
	int64_t unit = u ? term_id(k, u->name, e) : 0;
	struct row r = row_open(k->archive, SQL_INGREDIENT_ADD);

	row_int(&r, at->dish);
	row_int(&r, (int64_t)at->ordinal);
	row_int(&r, (int64_t)at->part);
	row_int(&r, food);
	row_amount(&r, &in->amount);
	row_term(&r, unit);
	row_base(&r, ml.known ? ml : base_of(&in->metric, DIM_VOLUME));
	row_base(&r, gram.known ? gram : base_of(&in->metric, DIM_MASS));
	row_int(&r, in->optional);
	row_place(&r, &in->place);
	return !e->set && row_run(&r, e);
}

static void
row_temperature(struct row *r, const struct keeper *k, const struct unit *u,
    struct ratio min, struct ratio max)
{
	struct ratio low = {0, 1}, high = {0, 1};
	bool known = u && min.den > 0 && tamis_celsius(k->grammar, u, min, &low) &&
		     tamis_celsius(k->grammar, u, max, &high);

	row_real_or_null(r, ratio_double(low), known);
	row_real_or_null(r, ratio_double(high), known);
}

static bool
keep_step(struct keeper *k, const struct nth *at, const struct step *s, struct err *e)
{
	const struct temperature *t = &s->temperature;
	const struct duration *d = &s->duration;
	int64_t action = term_id(k, s->action, e);
	int64_t appliance = term_id(k, str_of(s->appliance), e);
	struct row r = row_open(k->archive, SQL_STEP_ADD);

	row_int(&r, at->dish);
	row_int(&r, (int64_t)at->ordinal);
	row_int(&r, (int64_t)at->part);
	row_term(&r, action);
	row_term(&r, appliance);
	row_temperature(&r, k, t->present ? t->unit : NULL, t->min, t->max);
	row_int_or_null(&r, d->min_ms / 1000, d->known);
	row_int_or_null(&r, d->max_ms / 1000, d->known);
	row_temperature(&r, k, s->doneness.known ? s->doneness.unit : NULL, s->doneness.min,
	    s->doneness.max);
	row_int(&r, s->passive);
	row_place(&r, &s->place);
	return !e->set && row_run(&r, e);
}

static bool
keep_gear(struct keeper *k, const struct dish *d, int64_t dish, struct err *e)
{
	for (size_t i = 0; i < d->equipments; i++) {
		int64_t item = term_id(k, d->equipment[i].item, e);
		struct row r = row_open(k->archive, SQL_GEAR_ADD);

		if (item == 0)
			continue;
		row_int(&r, dish);
		row_int(&r, (int64_t)i);
		row_int(&r, item);
		row_time(&r, d->equipment[i].place.at_ms);
		row_run(&r, e);
	}
	return !e->set;
}

static bool
keep_parts(struct keeper *k, const struct dish *d, int64_t dish, const struct food *food,
    struct err *e)
{
	struct nth in = {dish, 0, 0}, step = {dish, 0, 0};

	for (size_t p = 0; p < d->parts; p++) {
		const struct part *part = &d->part[p];

		in.part = step.part = p;
		for (size_t i = 0; i < part->ingredients; i++, in.ordinal++)
			if (!keep_ingredient(
				k, &in, &part->ingredient[i], food[in.ordinal].id, e))
				return false;
		for (size_t i = 0; i < part->steps; i++, step.ordinal++)
			if (!keep_step(k, &step, &part->step[i], e))
				return false;
	}
	return true;
}

/* The foods of all parts, one after the other; their allergens in *bits. */
static const struct food *
foods_of(struct keeper *k, const struct dish *d, int64_t *bits, struct err *e)
{
	struct food *food;
	size_t n = 0;

	for (size_t p = 0; p < d->parts; p++)
		n += d->part[p].ingredients;
	food = arena_array(k->scratch, n + 1, struct food);
	n = 0;
	for (size_t p = 0; p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].ingredients; i++) {
			food[n] = food_of(k, &d->part[p].ingredient[i], e);
			*bits |= food[n++].allergens;
		}
	return food;
}

static bool
keep_dish_row(
    struct keeper *k, const struct dish *d, int ordinal, int64_t allergens, struct err *e)
{
	struct row r = row_open(k->archive, SQL_DISH_ADD);

	row_int(&r, k->episode);
	row_int(&r, ordinal);
	row_text(&r, d->name);
	row_time(&r, d->beg_ms);
	row_time(&r, d->end_ms);
	row_amount(&r, &d->yield);
	row_text_or_null(&r, d->yield_unit);
	row_time(&r, d->active_ms < 0 ? -1 : d->active_ms / 1000);
	row_time(&r, d->total_ms < 0 ? -1 : d->total_ms / 1000);
	row_time(&r, d->claimed_ms < 0 ? -1 : d->claimed_ms / 1000);
	row_int(&r, allergens);
	if (!row_run(&r, e))
		return false;
	k->dish[ordinal + 1] = sqlite3_last_insert_rowid(k->archive->db);
	return true;
}

bool
keep_dish(struct keeper *k, int dish, struct err *e)
{
	static const struct dish around = {
	    .beg_ms = -1, .end_ms = -1, .active_ms = -1, .total_ms = -1, .claimed_ms = -1};
	const struct dish *d = dish < 0 ? &around : &k->parcel->draft->dish[dish];
	int64_t allergens = 0;
	const struct food *food = foods_of(k, d, &allergens, e);

	return !e->set && keep_dish_row(k, d, dish, allergens, e) &&
	       keep_parts(k, d, k->dish[dish + 1], food, e) &&
	       keep_gear(k, d, k->dish[dish + 1], e);
}

/* ---- what stands flat in the draft -------------------------------------- */

static struct base
base_of_measure(const struct keeper *k, const struct measure *m)
{
	const struct unit *u = m->value.unit;
	struct ratio low, high;

	if (!m->value.known || !u)
		return no_base;
	if (u->dimension != DIM_TEMPERATURE)
		return base_of(&m->value, u->dimension);
	if (!tamis_celsius(k->grammar, u, m->value.min, &low) ||
	    !tamis_celsius(k->grammar, u, m->value.max, &high))
		return no_base;
	return (struct base){true, ratio_double(low), ratio_double(high)};
}

static bool
keep_measure(struct keeper *k, const struct measure *m, size_t ordinal, struct err *e)
{
	int64_t unit = m->value.unit ? term_id(k, m->value.unit->name, e) : 0;
	struct row r = row_open(k->archive, SQL_MEASURE_ADD);

	row_int(&r, k->dish[spot_of(&k->spots, m->place.span.beg) + 1]);
	row_int(&r, (int64_t)ordinal);
	row_int(&r, m->kind);
	row_int(&r, m->role);
	row_amount(&r, &m->value);
	row_term(&r, unit);
	row_base(&r, base_of_measure(k, m));
	row_int(&r, m->approximate);
	row_int(&r, m->bound);
	row_place(&r, &m->place);
	return !e->set && row_run(&r, e);
}

static bool
keep_finding(struct keeper *k, const struct finding *f, size_t ordinal, struct err *e)
{
	int64_t code = term_id(k, str_of(f->kind->code), e);
	struct row r = row_open(k->archive, SQL_FINDING_ADD);

	row_int(&r, k->dish[f->dish + 1]);
	row_int(&r, (int64_t)ordinal);
	row_int(&r, code);
	row_int(&r, f->severity);
	row_int(&r, f->status);
	row_int_or_null(&r, f->part, f->part >= 0);
	row_int_or_null(&r, f->step, f->step >= 0);
	row_place(&r, &f->place);
	return !e->set && row_run(&r, e);
}

static bool
keep_practice(struct keeper *k, const struct practice *p, size_t ordinal, struct err *e)
{
	int64_t subject = term_id(k, p->subject, e), action = term_id(k, p->action, e);
	int64_t appliance = term_id(k, p->appliance, e);
	struct row r = row_open(k->archive, SQL_PRACTICE_ADD);

	row_int(&r, k->dish[p->dish + 1]);
	row_int(&r, (int64_t)ordinal);
	row_int(&r, subject);
	row_int(&r, action);
	row_term(&r, appliance);
	row_int(&r, p->quantity);
	row_real(&r, p->min);
	row_real(&r, p->max);
	return !e->set && row_run(&r, e);
}

bool
keep_flat(struct keeper *k, struct err *e)
{
	const struct draft *d = k->parcel->draft;
	struct practices p = practices_of_draft(k->scratch, k->grammar, d);

	for (size_t i = 0; i < d->measures; i++)
		if (!keep_measure(k, &d->measure[i], i, e))
			return false;
	for (size_t i = 0; i < d->findings; i++)
		if (!keep_finding(k, &d->finding[i], i, e))
			return false;
	for (size_t i = 0; i < p.n; i++)
		if (!keep_practice(k, &p.v[i], i, e))
			return false;
	return true;
}
