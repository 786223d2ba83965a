/* SPDX-License-Identifier: ISC */
/*
 * Slips of the tongue and of the captions: ranges the wrong way round, values
 * put right while speaking, sound-alikes, words that point at nothing, yields that
 * are said twice and differ.
 */
#include "check/facts.h"
#include "check/food.h"
#include "check/say.h"

void
check_reversed_range(struct check *k)
{
	for (size_t i = 0; i < k->draft->measures; i++) {
		const struct measure *m = &k->draft->measure[i];
		struct amount low = m->value, high = m->value;
		struct str a, b;

		if (!m->reversed || m->aside || !m->value.known)
			continue;
		low.max = low.min;
		high.min = high.max;
		low.unit = NULL;
		a = say_amount(k, &low);
		b = say_amount(k, &high);
		finding_raise(k, m->place, finding_spot(k, m->place),
		    "\"%.*s\" runs from high to low; %.*s to %.*s is taken, but one of the "
		    "two may "
		    "be a slip",
		    SAY(m->text), SAY(a), SAY(b));
	}
}

/* The ingredient whose amount this measure is; NULL when it is none. */
static const struct ingredient *
ingredient_at(const struct check *k, const struct measure *m, struct spot spot)
{
	const struct part *p;

	if (spot.dish < 0 || spot.part < 0)
		return NULL;
	p = &k->draft->dish[spot.dish].part[spot.part];
	for (size_t i = 0; i < p->ingredients; i++)
		for (size_t u = 0; u < p->ingredient[i].uses; u++)
			if (p->ingredient[i].use[u].span.beg <= m->place.span.beg &&
			    m->place.span.end <= p->ingredient[i].use[u].span.end)
				return &p->ingredient[i];
	return NULL;
}

static struct str
value_of(const struct check *k, const struct amount *a)
{
	bool degrees = a->unit && a->unit->dimension == DIM_TEMPERATURE;

	return degrees ? say_setting(k, a) : say_amount(k, a);
}

void
check_self_correction(struct check *k)
{
	for (size_t i = 0; i < k->draft->measures; i++) {
		const struct measure *m = &k->draft->measure[i];
		struct spot spot = finding_spot(k, m->place);
		const struct ingredient *in;
		struct str first, then, item;

		if (!m->corrected || m->aside || !m->first.known || !m->value.known)
			continue;
		in = ingredient_at(k, m, spot);
		item = in ? in->item : STR("");
		first = value_of(k, &m->first);
		then = value_of(k, &m->value);
		finding_raise(k, m->place, spot,
		    "corrected while speaking: %.*s, then %.*s%s%.*s; %.*s is used",
		    SAY(first), SAY(then), item.n ? " " : "", SAY(item), SAY(then));
	}
}

static void
raise_mishearing(struct check *k, const struct remark *r)
{
	struct spot spot = {r->dish, r->part, r->step};

	if (!r->detail.n) {
		finding_raise(k, r->place, spot,
		    "\"%.*s\" was probably misheard; the words beside it do not fit it. "
		    "Listen to "
		    "the place",
		    SAY(r->text));
		return;
	}
	finding_raise(k, r->place, spot,
	    "\"%.*s\" was probably misheard for \"%.*s\": only that fits the words beside "
	    "it. "
	    "Listen to the place",
	    SAY(r->text), SAY(r->detail))
	    ->suggestion = r->detail;
}

/* Thirteen for thirty, fifteen for fifty and so on, either way; 0 for others. */
static int64_t
sound_alike(struct ratio v)
{
	int64_t n = v.num;

	if (v.den != 1)
		return 0;
	if (n >= 13 && n <= 19)
		return (n - 10) * 10;
	if (n >= 30 && n <= 90 && n % 10 == 0)
		return n / 10 + 10;
	return 0;
}

/* A package of a size that no shop sells, where its sound-alike is sold. */
static void
check_package(struct check *k, const struct cursor *c)
{
	const struct ingredient *in = c->ingredient;
	struct amount heard = in->size, likely = in->size;
	struct str a, b, region = str_of(k->draft->region);
	int64_t other = in->size.known ? sound_alike(in->size.min) : 0;

	if (!other || ratio_order(in->size.min, in->size.max) != 0)
		return;
	likely.min = likely.max = ratio_int(other);
	if (!facts_pack_has(k, in, likely.min) || facts_pack_has(k, in, heard.min))
		return;
	a = say_amount(k, &heard);
	b = say_amount(k, &likely);
	finding_raise(k, in->place, c->at,
	    "a %.*s %.*s of %.*s is a size that shops (%.*s) do not sell; %.*s sounds "
	    "alike and "
	    "is usual. Listen to the place",
	    SAY(a), SAY(in->amount.unit->name), SAY(in->item), SAY(region), SAY(b))
	    ->suggestion = b;
}

void
check_possible_mishearing(struct check *k)
{
	struct cursor c = walk(k->draft);

	for (size_t i = 0; i < k->draft->remarks; i++)
		if (k->draft->remark[i].kind == REMARK_MISHEARD)
			raise_mishearing(k, &k->draft->remark[i]);
	while (walk_ingredient(&c))
		check_package(k, &c);
}

void
check_unclear_reference(struct check *k)
{
	for (size_t i = 0; i < k->draft->remarks; i++) {
		const struct remark *r = &k->draft->remark[i];

		if (r->kind != REMARK_UNCLEAR_REFERENCE)
			continue;
		finding_raise(k, r->place, (struct spot){r->dish, r->part, r->step},
		    "\"%.*s\" points back to something that was not there before. Was it "
		    "cut, or "
		    "does it have another name?",
		    SAY(r->text));
	}
}

/* ---- conflicting-yield --------------------------------------------------- */

static bool
yields_agree(const struct said_yield *a, const struct said_yield *b)
{
	return ratio_order(a->value.min, b->value.max) <= 0 &&
	       ratio_order(b->value.min, a->value.max) <= 0;
}

static struct str
number_of(const struct check *k, const struct said_yield *y)
{
	struct amount bare = y->value;

	bare.unit = NULL;
	return say_amount(k, &bare);
}

/* The same, or one names the other closer: "ball", "meatball". */
static bool
same_pieces(struct str a, struct str b)
{
	return str_is(a, b) || (a.n > 3 && str_ends(b, a)) || (b.n > 3 && str_ends(a, b));
}

/* The first yield of the dish in the same unit. */
static const struct said_yield *
first_yield(const struct dish *d, const struct said_yield *y)
{
	for (size_t i = 0; &d->yield_said[i] != y; i++)
		if (d->yield_said[i].value.known &&
		    same_pieces(d->yield_said[i].unit, y->unit))
			return &d->yield_said[i];
	return NULL;
}

/* Whole pieces, at least one: "1.2 million of us" is none. */
static bool
is_yield(const struct said_yield *y)
{
	return y->value.known && y->value.min.den == 1 && y->value.min.num >= 1;
}

static void
check_yields(struct check *k, const struct dish *d, int dish)
{
	for (size_t i = 1; i < d->yields_said; i++) {
		const struct said_yield *then = &d->yield_said[i],
					*first = first_yield(d, then);
		struct str a, b;

		if (!first || !is_yield(first) || !is_yield(then) ||
		    yields_agree(first, then))
			continue;
		a = number_of(k, first);
		b = number_of(k, then);
		finding_raise(k, then->place, (struct spot){dish, -1, -1},
		    "said to feed or make %.*s here, but %.*s before; the first is kept. "
		    "Which one "
		    "is right?",
		    SAY(b), SAY(a));
		finding_relate(k, first->place, "first said as %.*s", SAY(a));
	}
}

void
check_conflicting_yield(struct check *k)
{
	for (size_t i = 0; i < k->draft->dishes; i++)
		check_yields(k, &k->draft->dish[i], (int)i);
}
