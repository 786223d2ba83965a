/* SPDX-License-Identifier: ISC */
/*
 * What stands under a written recipe.
 */
#include "write/notes.h"

#include "base/print.h"
#include "grammar/table.h"
#include "house/portion.h"
#include "house/words.h"
#include "write/text.h"

struct notes {
	struct arena *arena;
	const struct house *house;
	VEC(struct str) list;
};

enum { LOOK_BACK = 16 };

/* Each note once; a repetition further back than LOOK_BACK may stand. */
static void
add(struct notes *n, struct str text)
{
	size_t i = n->list.n > LOOK_BACK ? n->list.n - LOOK_BACK : 0;

	for (; i < n->list.n; i++)
		if (str_is(n->list.v[i], text))
			return;
	if (str_trim(text).n)
		vec_push(n->arena, &n->list, text);
}

/* "200 at 1:15 was said without a scale; it is read as Celsius." */
static void
add_scale(struct notes *n, struct ratio min, struct ratio max, const struct unit *u,
    const struct place *at)
{
	struct buf b = buf_in(n->arena), cue = buf_in(n->arena), scale = buf_in(n->arena);

	if (!n->house->style->no_time_codes)
		text_cue(&cue, at);
	text_title(&scale, u->name);
	print_decimals(&b, min, max);
	if (cue.n)
		buf_put_z(&b, " at ");
	buf_put(&b, buf_str(&cue));
	buf_put_z(&b, " was said without a scale; it is read as ");
	buf_put(&b, buf_str(&scale));
	buf_put_char(&b, '.');
	add(n, buf_str(&b));
}

static void
add_step(struct notes *n, const struct step *s)
{
	const struct temperature *t = &s->temperature;
	const struct doneness *d = &s->doneness;

	if (text_has_degrees(t) && t->unit && !t->unit_stated && !t->inherited)
		add_scale(n, t->min, t->max, t->unit, &t->place);
	if (d->known && d->unit && !d->unit_stated)
		add_scale(n, d->min, d->max, d->unit, &d->place);
}

static bool
has_group(const struct dish *d, struct str group)
{
	for (size_t i = 0; i < d->parts; i++)
		for (size_t j = 0; j < d->part[i].ingredients; j++)
			if (str_is(d->part[i].ingredient[j].group, group))
				return true;
	return false;
}

/* The house's own text for the topic; NULL where it has none. */
static const struct tamis_caution *
own_caution(const struct tamis_style *s, struct str topic)
{
	for (size_t i = 0; i < s->cautions; i++)
		if (str_is(s->caution[i].topic, topic))
			return &s->caution[i];
	return NULL;
}

/* The row of the region, where there is one; what has no profile is for all. */
static void
add_caution(struct notes *n, const struct table *t, size_t row)
{
	const struct house *h = n->house;
	int topic = table_column(t, "topic"), profile = table_column(t, "profile");
	struct str name = table_cell(t, row, topic);
	const struct tamis_caution *own = own_caution(h->style, name);

	if (own) {
		add(n, own->text);
		return;
	}
	for (size_t k = 0; h->region && k < t->rows; k++)
		if (str_is(table_cell(t, k, topic), name) &&
		    str_is_z(table_cell(t, k, profile), h->region))
			row = k;
	add(n, words_styled(n->arena, h, table_cell(t, row, table_column(t, "text"))));
}

static void
add_cautions(struct notes *n, const struct dish *d)
{
	const struct house *h = n->house;
	const struct table *t = h->grammar ? grammar_table(h->grammar, "cautions") : NULL;
	int topic = t ? table_column(t, "topic") : -1;
	int profile = t ? table_column(t, "profile") : -1;

	for (size_t i = 0; t && i < t->rows; i++) {
		struct str name = table_cell(t, i, topic);

		if (name.n && !table_cell(t, i, profile).n && has_group(d, name))
			add_caution(n, t, i);
	}
}

/* "roasting tin (9 in/23 cm)" of all that have a size */
static void
put_pans(struct buf *b, const struct dish *d, const struct house *h)
{
	size_t n = 0;

	for (size_t i = 0; i < d->equipments; i++) {
		const struct equipment *e = &d->equipment[i];

		if (!e->size.known || e->item.n == 0)
			continue;
		buf_put_z(b, n++ ? ", " : "");
		buf_put(b, e->item);
		buf_put_z(b, " (");
		portion_put_size(b, h, &e->size);
		buf_put_char(b, ')');
	}
}

static void
put_times(struct buf *b, struct ratio scale)
{
	if (ratio_order(scale, ratio_int(2)) == 0) {
		buf_put_z(b, "twice");
	} else if (ratio_order(scale, ratio_make(1, 2)) == 0) {
		buf_put_z(b, "half");
	} else {
		print_number(b, scale);
		buf_put_z(b, ratio_order(scale, ratio_int(1)) < 0 ? " of" : " times");
	}
}

/* "Amounts are twice the script's. Times, temperatures and pan sizes ..." */
static void
add_rescaled(struct notes *n, const struct dish *d)
{
	const struct house *h = n->house;
	struct buf b = buf_in(n->arena), pans = buf_in(n->arena);

	if (d->scale.den == 0) {
		if (h->style->servings && !text_is_served(d))
			add(n,
			    STR("How many this serves was not said, so the amounts are the "
				"script's."));
		return;
	}
	buf_put_z(&b, "Amounts are ");
	put_times(&b, d->scale);
	put_pans(&pans, d, h);
	buf_put_z(&b, " the script's; times, temperatures and pan sizes are not rescaled");
	if (pans.n)
		buf_fmt(&b, ": %.*s", (int)pans.n, pans.v);
	buf_put_z(&b, ". Use pans that hold it, and go by the signs of doneness before the "
		      "clock.");
	add(n, words_styled(n->arena, h, buf_str(&b)));
}

struct str *
notes_of(struct arena *a, const struct dish *d, const struct house *h, size_t *count)
{
	struct notes n = {.arena = a, .house = h};

	add_rescaled(&n, d);
	for (size_t i = 0; i < d->notes; i++)
		add(&n, d->note[i]);
	for (size_t i = 0; i < d->parts; i++)
		for (size_t j = 0; j < d->part[i].steps; j++)
			add_step(&n, &d->part[i].step[j]);
	if (!h->style->no_cautions)
		add_cautions(&n, d);
	*count = n.list.n;
	return n.list.v;
}
