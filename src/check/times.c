/* SPDX-License-Identifier: ISC */
/*
 * How long it takes: a step far outside what its action takes, by times.tsv, and
 * a dish against what the host claims for it.
 */
#include "check/food.h"
#include "check/say.h"

/* The widest range of the rows; what is half as long again or half as short as
 * it allows has a wrong unit or number. */
struct bounds {
	int64_t min_s, max_s; /* max_s 0: none found */
};

#define WAITING "rest stand chill prove marinate soak"

static bool
is_waiting(const struct step *s)
{
	return word_in(s->kind, WAITING);
}

/* What rests may be chilled, and proved: the widest of all waiting. */
static bool
is_action(struct str action, const struct step *s)
{
	return words_are(action, s->action) || (is_waiting(s) && word_in(action, WAITING));
}

static bool
row_is_for(const struct table *t, size_t row, const struct step *s, const char *appliance)
{
	struct str where;

	if (!is_action(table_cell(t, row, 0), s))
		return false;
	where = table_cell(t, row, table_column(t, "appliance"));
	return where.n == 0 || !appliance || words_are(where, str_of(appliance));
}

static void
widen(struct bounds *b, const struct table *t, size_t row)
{
	struct ratio min = {0, 1}, max = {0, 1};

	table_number(t, row, table_column(t, "min_s"), &min);
	table_number(t, row, table_column(t, "max_s"), &max);
	if (b->max_s == 0 || ratio_round(min) < b->min_s)
		b->min_s = ratio_round(min);
	if (ratio_round(max) > b->max_s)
		b->max_s = ratio_round(max);
}

/* The row names a food of the step, or the dish itself. */
static bool
row_names(const struct cursor *c, struct str food)
{
	for (size_t i = 0; i < c->step->uses; i++)
		if (c->step->use[i] < c->part->ingredients &&
		    food_is_named(&c->part->ingredient[c->step->use[i]], food))
			return true;
	return food_is_named(
		   &(struct ingredient){.key = c->dish->name, .item = c->dish->name},
		   food) ||
	       words_end(c->part->name, food);
}

/* The widest of the rows for the action and its foods, and for any food. */
static struct bounds
bounds_of(const struct check *k, const struct cursor *c)
{
	const struct table *t = grammar_table(k->grammar, "times");
	struct bounds named = {0, 0}, any = {0, 0};

	for (size_t i = 0; t && i < t->rows; i++) {
		struct str food;

		if (!row_is_for(t, i, c->step, c->step->appliance))
			continue;
		food = table_cell(t, i, table_column(t, "food"));
		if (food.n == 0)
			widen(&any, t, i);
		else if (row_names(c, food))
			widen(&named, t, i);
	}
	/* More goes in than the one food that is named: any time of it is right. */
	if (named.max_s && any.max_s && (c->step->uses > 1 || is_waiting(c->step))) {
		named.min_s = named.min_s < any.min_s ? named.min_s : any.min_s;
		named.max_s = named.max_s > any.max_s ? named.max_s : any.max_s;
	}
	return named.max_s ? named : any;
}

/* Another step of the part does the same in the same heat, for as long as it
 * takes. */
static bool
goes_on(const struct cursor *c, int64_t min_s)
{
	for (size_t i = 0; i < c->part->steps; i++) {
		const struct step *s = &c->part->step[i];

		if (s != c->step && str_is(s->action, c->step->action) && s->appliance &&
		    step_is_in(c->step, s->appliance) && s->duration.known &&
		    s->duration.max_ms / 1000 >= min_s)
			return true;
	}
	return false;
}

/* "turn it round, another five": it had some time before. */
static bool
is_another(const struct check *k, const struct step *s)
{
	enum { BEFORE = 16 };

	for (size_t i = 0; i < k->draft->measures; i++) {
		const struct measure *m = &k->draft->measure[i];
		struct str words;
		uint32_t beg;
		int64_t min, max;

		if (m->kind != MEASURE_DURATION || is_before(m->place, s->place) ||
		    !say_is_time(&m->value, &min, &max) || min != s->duration.min_ms)
			continue;
		beg = m->place.span.beg;
		words =
		    finding_words(k, beg > BEFORE ? beg - BEFORE : 0, m->place.span.end);
		return str_find(words, STR("another")) < words.n ||
		       str_find(words, STR("more")) < words.n;
	}
	return false;
}

static void
check_time(struct check *k, const struct cursor *c)
{
	const struct duration *d = &c->step->duration;
	struct bounds b = bounds_of(k, c);
	int64_t min_s = d->min_ms / 1000, max_s = d->max_ms / 1000;
	struct str said, action = say_action(c->step), range;

	/* A short rest harms nobody; short cooking is a slip, unless it goes on
	 * with other cooking or may be of one food among several. */
	if (!c->step->heats || word_in(c->step->action, "cook") || goes_on(c, b.min_s) ||
	    is_another(k, c->step))
		b.min_s = 0;
	if (b.max_s == 0 || (min_s <= b.max_s + b.max_s / 2 && max_s >= b.min_s / 2))
		return;
	said = say_time(k, d->min_ms, d->max_ms);
	range = say_time(k, (b.min_s ? b.min_s : 1) * 1000, b.max_s * 1000);
	finding_raise(k, c->step->place, c->at,
	    "%.*s for %.*s cannot be right; %.*s is the widest that is believable (common "
	    "practice). Minutes or hours, or another number?",
	    SAY(action), SAY(said), SAY(range));
}

void
check_implausible_time(struct check *k)
{
	struct cursor c = walk(k->draft);

	while (walk_step(&c))
		if (c.step->duration.known && c.step->action.n && !c.step->preheats &&
		    !c.step->guessed)
			check_time(k, &c);
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

/* Parts may wait beside each other: all that is done by hand, and the waiting of
 * the part that waits longest. */
static int64_t
least_ms(const struct dish *d)
{
	int64_t active = 0, longest = 0;

	for (size_t p = 0; p < d->parts; p++) {
		int64_t passive = 0;

		for (size_t i = 0; i < d->part[p].steps; i++) {
			const struct step *s = &d->part[p].step[i];

			if (!s->duration.known || is_beforehand(s))
				continue;
			if (s->passive)
				passive += s->duration.min_ms;
			else
				active += s->duration.min_ms;
		}
		longest = passive > longest ? passive : longest;
	}
	return active + longest;
}

/* Of all dishes: the longer claim may be for the lot. */
static int64_t
total_of_all(const struct draft *d)
{
	int64_t sum = 0;

	for (size_t i = 0; i < d->dishes; i++)
		sum += d->dish[i].total_ms > 0 ? d->dish[i].total_ms : 0;
	return sum;
}

static void
check_claim(struct check *k, const struct dish *d, int dish)
{
	struct str claimed = say_time(k, d->claimed_ms, d->claimed_ms);
	struct str total = say_time(k, d->total_ms, d->total_ms);
	struct str chain = chain_text(k, d);
	int64_t counted = d->total_ms - beforehand_ms(d), least = least_ms(d);

	counted = least < counted ? least : counted;

	if (d->claimed_ms < counted - counted / 8)
		finding_raise(k, d->claim_place, (struct spot){dish, -1, -1},
		    "said to take %.*s; the steps add up to %.*s (longest: %.*s). Readers "
		    "plan by "
		    "the claim: mend one or the other",
		    SAY(claimed), SAY(total), SAY(chain));
	else if (d->claimed_ms > total_of_all(k->draft) * 2 &&
		 d->total_ms >= 10 * MINUTE_MS)
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
