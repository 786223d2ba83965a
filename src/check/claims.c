/* SPDX-License-Identifier: ISC */
/*
 * What the host says of a whole dish: how many it feeds, how long it takes.
 */
#include "check/say.h"
#include "check/walk.h"

/* ---- yields -------------------------------------------------------------- */

void
check_missing_yield(struct check *k)
{
	for (size_t i = 0; i < k->draft->dishes; i++) {
		const struct dish *d = &k->draft->dish[i];
		size_t steps = 0, ingredients = 0;

		for (size_t p = 0; p < d->parts; p++) {
			steps += d->part[p].steps;
			ingredients += d->part[p].ingredients;
		}
		if (d->yield.present || d->yields_said || steps == 0 || ingredients == 0)
			continue;
		finding_raise(k, d->place, (struct spot){(int)i, -1, -1},
		    "%.*s: nobody says how many it feeds or makes. Readers shop and scale "
		    "by that",
		    SAY(d->name));
	}
}

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

/* The first yield of the dish in the same unit. */
static const struct said_yield *
first_yield(const struct dish *d, const struct said_yield *y)
{
	for (size_t i = 0; &d->yield_said[i] != y; i++)
		if (d->yield_said[i].value.known && str_is(d->yield_said[i].unit, y->unit))
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

/* ---- time-claim ---------------------------------------------------------- */

enum { LONGEST = 3, MINUTE_MS = 60 * 1000 };

/* Waiting that cooks leave out when they say how long a dish takes. */
static bool
is_beforehand(const struct step *s)
{
	return word_in(s->kind, "soak marinate chill");
}

/* The longest steps, longest first; how many there are. */
static size_t
longest_steps(const struct dish *d, const struct step **out)
{
	size_t n = 0;

	for (size_t p = 0; p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].steps; i++) {
			const struct step *s = &d->part[p].step[i];
			size_t at = n;

			if (!s->duration.known || s->duration.min_ms < MINUTE_MS ||
			    is_beforehand(s))
				continue;
			while (at > 0 && out[at - 1]->duration.min_ms < s->duration.min_ms)
				at--;
			if (n < LONGEST)
				n++;
			for (size_t j = n - 1; j > at; j--)
				out[j] = out[j - 1];
			if (at < LONGEST)
				out[at] = s;
		}
	return n;
}

/* "roast 55 minutes, rest 10 minutes" */
static struct str
chain_text(const struct check *k, const struct dish *d)
{
	const struct step *step[LONGEST + 1];
	size_t n = longest_steps(d, step);
	struct buf b = buf_in(k->arena);

	for (size_t i = 0; i < n; i++) {
		struct str time =
		    say_time(k, step[i]->duration.min_ms, step[i]->duration.min_ms);

		buf_fmt(
		    &b, "%s%.*s %.*s", i ? ", " : "", SAY(say_action(step[i])), SAY(time));
	}
	return buf_str(&b);
}

static int64_t
beforehand_ms(const struct dish *d)
{
	int64_t sum = 0;

	for (size_t p = 0; p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].steps; i++)
			if (is_beforehand(&d->part[p].step[i]) &&
			    d->part[p].step[i].duration.known)
				sum += d->part[p].step[i].duration.max_ms;
	return sum;
}

static void
check_claim(struct check *k, const struct dish *d, int dish)
{
	struct str claimed = say_time(k, d->claimed_ms, d->claimed_ms);
	struct str total = say_time(k, d->total_ms, d->total_ms);
	struct str chain = chain_text(k, d);
	int64_t counted = d->total_ms - beforehand_ms(d);

	if (d->claimed_ms < counted - counted / 8)
		finding_raise(k, d->claim_place, (struct spot){dish, -1, -1},
		    "said to take %.*s; the steps add up to %.*s (longest: %.*s). Readers "
		    "plan by "
		    "the claim: mend one or the other",
		    SAY(claimed), SAY(total), SAY(chain));
	else if (d->claimed_ms > d->total_ms * 2 && d->total_ms >= 10 * MINUTE_MS)
		finding_raise(k, d->claim_place, (struct spot){dish, -1, -1},
		    "said to take %.*s; the steps add up to no more than %.*s (longest: "
		    "%.*s). Is a "
		    "step missing, or the claim too long?",
		    SAY(claimed), SAY(total), SAY(chain));
}

void
check_time_claim(struct check *k)
{
	for (size_t i = 0; i < k->draft->dishes; i++)
		if (k->draft->dish[i].claimed_ms > 0 && k->draft->dish[i].total_ms > 0)
			check_claim(k, &k->draft->dish[i], (int)i);
}
