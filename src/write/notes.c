/* SPDX-License-Identifier: ISC */
/*
 * What stands under a written recipe.
 */
#include "write/notes.h"

#include "base/print.h"
#include "grammar/table.h"
#include "write/text.h"

struct notes {
	struct arena *arena;
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

static void
add_cautions(
    struct notes *n, const struct dish *d, const struct table *t, const char *region)
{
	int topic = table_column(t, "topic"), text = table_column(t, "text");
	int profile = table_column(t, "profile");

	for (size_t i = 0; i < t->rows; i++) {
		struct str group = table_cell(t, i, topic);
		size_t best = i;

		if (group.n == 0 || table_cell(t, i, profile).n || !has_group(d, group))
			continue;
		for (size_t k = 0; k < t->rows; k++)
			if (str_is(table_cell(t, k, topic), group) && region &&
			    str_is_z(table_cell(t, k, profile), region))
				best = k;
		add(n, table_cell(t, best, text));
	}
}

struct str *
notes_of(struct arena *a, const struct draft *draft, const struct dish *d,
    const struct grammar *g, size_t *count)
{
	const struct table *cautions = g ? grammar_table(g, "cautions") : NULL;
	struct notes n = {.arena = a};

	for (size_t i = 0; i < d->notes; i++)
		add(&n, d->note[i]);
	for (size_t i = 0; i < d->parts; i++)
		for (size_t j = 0; j < d->part[i].steps; j++)
			add_step(&n, &d->part[i].step[j]);
	if (cautions)
		add_cautions(&n, d, cautions, draft->region);
	*count = n.list.n;
	return n.list.v;
}
