/* SPDX-License-Identifier: ISC */
/*
 * Phrases of a written recipe that every format for people shares.
 */
#include "write/text.h"

#include "base/print.h"
#include "grammar/inflect.h"
#include "house/piece.h"
#include "house/words.h"

/* Capitals of a to z and of the Latin letters U+00E0 to U+00FE: "éclairs". */
void
text_title(struct buf *b, struct str name)
{
	unsigned char second;

	name = str_trim(name);
	if (name.n == 0)
		return;
	second = name.n > 1 ? (unsigned char)name.p[1] : 0;
	if ((unsigned char)name.p[0] == 0xc3 && second >= 0xa0 && second <= 0xbe &&
	    second != 0xb7) {
		buf_put_char(b, name.p[0]);
		buf_put_char(b, (char)(second - 0x20));
		buf_put(b, str_cut(name, 2, name.n));
		return;
	}
	buf_put_char(b, to_upper(name.p[0]));
	buf_put(b, str_cut(name, 1, name.n));
}

void
text_dish_title(struct buf *b, const struct dish *d)
{
	text_title(b, str_trim(d->name).n ? d->name : STR("untitled dish"));
}

static bool
is_people(struct str unit)
{
	return unit.n == 0 || str_is_z(unit, "serving") || str_is_z(unit, "portion") ||
	       str_is_z(unit, "person");
}

/* The last word carries the plural: "fish cake", "fish cakes". */
static void
put_plural(struct buf *b, struct str noun)
{
	size_t last = noun.n;

	while (last > 0 && noun.p[last - 1] != ' ')
		last--;
	buf_put(b, str_cut(noun, 0, last));
	buf_put(b, inflect_plural(b->arena, str_cut(noun, last, noun.n)));
}

bool
text_is_served(const struct dish *d)
{
	return d->yield.present && d->yield.known && is_people(d->yield_unit);
}

static struct ratio
at_least_one(struct ratio v)
{
	int64_t n = ratio_round(v);

	return ratio_int(n > 0 ? n : 1);
}

void
text_yield(struct buf *b, const struct house *h, const struct dish *d)
{
	const struct amount *a = &d->yield;
	struct str unit = d->yield_unit;
	struct buf text = buf_in(b->arena);

	if (!a->present || !a->known)
		return;
	if (unit.n == 0 && a->unit)
		unit = a->unit->name;
	buf_put_z(&text, is_people(unit) ? "Serves " : "Makes ");
	if (d->scale.den && (a->min.den != 1 || a->max.den != 1)) {
		buf_put_z(&text, "about ");
		print_range(&text, at_least_one(a->min), at_least_one(a->max));
	} else {
		print_range(&text, a->min, a->max);
	}
	if (!is_people(unit)) {
		buf_put_char(&text, ' ');
		if (ratio_order(a->max, ratio_int(1)) > 0)
			put_plural(&text, unit);
		else
			buf_put(&text, unit);
	}
	words_put(b, h, buf_str(&text));
}

enum { MINUTE_MS = 60 * 1000, HOUR_MS = 60 * MINUTE_MS };

/* ", 40 of them unattended" */
static void
put_unattended(struct buf *b, int64_t total, int64_t idle)
{
	bool minutes = total % MINUTE_MS == 0 && total > MINUTE_MS && total < HOUR_MS &&
		       idle % MINUTE_MS == 0;

	buf_put_z(b, ", ");
	if (idle == total)
		buf_put_z(b, minutes ? "all of them" : "all of it");
	else if (minutes)
		buf_fmt(b, "%d of them", (int)(idle / MINUTE_MS));
	else {
		print_duration(b, idle, idle);
		buf_put_z(b, " of it");
	}
	buf_put_z(b, " unattended");
}

void
text_time(struct buf *b, const struct house *h, const struct dish *d)
{
	int64_t total = d->total_ms, idle = total - d->active_ms;
	struct buf text = buf_in(b->arena);

	if (total > 0) {
		print_duration(&text, total, total);
		if (d->active_ms >= 0 && idle > 0)
			put_unattended(&text, total, idle);
	} else if (d->claimed_ms > 0) {
		buf_put_z(&text, "said to take ");
		print_duration(&text, d->claimed_ms, d->claimed_ms);
	}
	words_put(b, h, buf_str(&text));
}

static bool
is_sized(const struct ingredient *in)
{
	return in->size.present && in->size.known;
}

/* How many, where they are counted; one steak of 10 oz, twice, is two. */
static struct ratio
count_of(const struct ingredient *in)
{
	if (in->amount.present && in->amount.known)
		return in->amount.max;
	return is_sized(in) && in->scale.den ? in->scale : ratio_int(1);
}

/* "2 (400 g/14 oz) cans", "1 (2 in/5 cm) piece" */
static void
put_sized(struct buf *b, const struct house *h, const struct ingredient *in)
{
	struct portion p = portion_of(in);
	struct amount count = in->amount;
	bool named = in->amount.unit && in->amount.unit->name.n;

	if (!count.known)
		count = (struct amount){true, true, in->scale, in->scale, NULL};
	count.unit = NULL;
	p.amount = &count;
	portion_put(b, h, &p);
	buf_put_z(b, " (");
	portion_put_size(b, h, &in->size);
	buf_put_char(b, ')');
	if (!named)
		return;
	buf_put_char(b, ' ');
	print_unit(b, in->amount.unit, ratio_order(count.max, ratio_int(1)) > 0);
}

void
text_quantity(struct buf *b, const struct house *h, const struct ingredient *in)
{
	struct portion p = portion_of(in);
	struct split egg;

	if (is_sized(in) && (in->amount.known || in->scale.den)) {
		put_sized(b, h, in);
		return;
	}
	if (piece_split(b->arena, h, in, &egg)) {
		if (egg.whole)
			print_number(b, ratio_int(egg.whole));
		else
			buf_put(b, egg.rest);
		return;
	}
	portion_put(b, h, &p);
	if (!is_sized(in))
		return;
	if (in->amount.present && in->amount.unit)
		buf_put_char(b, ' ');
	portion_put_size(b, h, &in->size);
}

void
text_item(struct buf *b, const struct house *h, const struct ingredient *in)
{
	struct split egg;

	if (!piece_split(b->arena, h, in, &egg)) {
		buf_put(b, piece_item(b->arena, h, in, count_of(in)));
		return;
	}
	if (egg.whole)
		buf_put(b, piece_item(b->arena, h, in, ratio_int(egg.whole)));
	if (egg.whole && egg.rest.n)
		buf_fmt(b, " plus %.*s ", (int)egg.rest.n, egg.rest.p);
	if (egg.rest.n)
		buf_fmt(b, "beaten %.*s", (int)in->key.n, in->key.p);
}

void
text_other(struct buf *b, const struct house *h, const struct ingredient *in)
{
	struct portion p = portion_of(in);

	if (!in->size.present)
		portion_put_other(b, h, &p);
}

void
text_note(struct buf *b, const struct ingredient *in)
{
	buf_put(b, in->note);
	if (!in->divided || str_find(in->note, STR("divided")) < in->note.n)
		return;
	if (in->note.n)
		buf_put_z(b, ", ");
	buf_put_z(b, "divided");
}

/* Puts glue and text, unless the text is empty. */
static void
put_with(struct buf *b, const char *glue, struct str text)
{
	if (text.n == 0)
		return;
	if (b->n)
		buf_put_z(b, glue);
	buf_put(b, text);
}

void
text_alternative(struct buf *b, const struct house *h, const struct ingredient *in,
    const struct alternative *a)
{
	struct buf either = buf_in(b->arena);
	struct portion p = portion_of(in);

	p.amount = &a->amount;
	p.food = NULL;
	portion_put(&either, h, &p);
	put_with(&either, " ", a->item);
	buf_put(b, buf_str(&either));
}

void
text_ingredient(struct buf *b, const struct house *h, const struct ingredient *in)
{
	struct buf line = buf_in(b->arena), part = buf_in(b->arena);

	text_quantity(&line, h, in);
	text_item(&part, h, in);
	put_with(&line, " ", buf_str(&part));
	part.n = 0;
	text_other(&part, h, in);
	if (part.n) {
		put_with(&line, " (", buf_str(&part));
		buf_put_char(&line, ')');
	}
	put_with(&line, ", ", in->preparation);
	part.n = 0;
	text_note(&part, in);
	put_with(&line, ", ", buf_str(&part));
	for (size_t i = 0; i < in->alternatives; i++) {
		part.n = 0;
		text_alternative(&part, h, in, &in->alternative[i]);
		put_with(&line, ", or ", buf_str(&part));
	}
	if (in->optional)
		put_with(&line, ", ", STR("optional"));
	buf_put(b, buf_str(&line));
}

void
text_cue(struct buf *b, const struct place *p)
{
	print_clock(b, p->cue_ms >= 0 ? p->cue_ms : p->at_ms);
}

bool
text_has_degrees(const struct temperature *t)
{
	return t->present && t->min.den > 0 && (t->unit || t->heat.n == 0);
}
