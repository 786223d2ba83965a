/* SPDX-License-Identifier: ISC */
/*
 * From a draft to its practices, and house consistency: a setting, a time or a
 * reading of a draft beside those of the episodes kept, for the same food and
 * action. A step counts for each animal food that it heats, since what they need
 * is their own, and for the dish as a whole.
 */
#include "archive/practice.h"

#include <math.h>
#include <stdlib.h>

#include "archive/store.h"
#include "base/print.h"

struct list {
	struct arena *arena;
	const struct grammar *grammar;
	VEC(struct practice) practice;
	struct practice next; /* what the next one has in common with the last */
};

static bool
is_animal(const struct ingredient *in)
{
	static const char *const groups[] = {"poultry", "beef", "pork", "lamb", "veal",
	    "game", "offal", "ground-meat", "sausage", "fish", "shellfish", "egg"};

	for (size_t i = 0; i < sizeof groups / sizeof *groups; i++)
		if (str_is_z(in->group, groups[i]))
			return true;
	return false;
}

static void
add(struct list *l, enum quantity quantity, double min, double max)
{
	l->next.quantity = quantity;
	l->next.min = min;
	l->next.max = max;
	vec_push(l->arena, &l->practice, l->next);
}

static void
add_degrees(struct list *l, enum quantity quantity, const struct unit *u, struct ratio min,
    struct ratio max)
{
	struct ratio low, high;

	if (tamis_celsius(l->grammar, u, min, &low) &&
	    tamis_celsius(l->grammar, u, max, &high))
		add(l, quantity, ratio_double(low), ratio_double(high));
}

static void
add_step(struct list *l, const struct step *s, struct str subject)
{
	const struct temperature *t = &s->temperature;
	const struct doneness *d = &s->doneness;

	l->next.subject = subject;
	l->next.action = s->action;
	l->next.appliance = str_of(s->appliance);
	if (t->present && t->unit && t->min.den > 0) {
		l->next.place = t->inherited ? s->place : t->place;
		add_degrees(l, QUANTITY_SETTING, t->unit, t->min, t->max);
	}
	l->next.place = s->place;
	if (s->duration.known && s->duration.min_ms > 0)
		add(l, QUANTITY_TIME, (double)s->duration.min_ms / 1000,
		    (double)s->duration.max_ms / 1000);
	l->next.place = d->place;
	if (d->known)
		add_degrees(l, QUANTITY_INSIDE, d->unit, d->min, d->max);
}

static void
add_part(struct list *l, const struct dish *d, const struct part *p)
{
	for (size_t i = 0; i < p->steps; i++) {
		const struct step *s = &p->step[i];

		if (!s->heats || s->action.n == 0)
			continue;
		l->next.step = (int)i;
		for (size_t u = 0; u < s->uses; u++)
			if (is_animal(&p->ingredient[s->use[u]]))
				add_step(l, s, p->ingredient[s->use[u]].key);
		if (d->name.n)
			add_step(l, s, d->name);
	}
}

struct practices
practices_of_draft(struct arena *arena, const struct grammar *g, const struct draft *d)
{
	struct list l = {.arena = arena, .grammar = g};

	for (size_t i = 0; i < d->dishes; i++)
		for (size_t p = 0; p < d->dish[i].parts; p++) {
			l.next.dish = (int)i;
			l.next.part = (int)p;
			add_part(&l, &d->dish[i], &d->dish[i].part[p]);
		}
	return (struct practices){l.practice.v, l.practice.n};
}

/* ---- beside the past ---------------------------------------------------- */

enum { EPISODES_ENOUGH = 3, NAMED_MAX = 3, ODD_ONES = 20 };

/* How far outside the past is far: in degrees, and for times as a factor. */
static const double far_setting = 20, far_inside = 6, far_time = 2;

struct past {
	VEC(double) min;
	VEC(double) max;
	VEC(struct str) episode; /* each once */
};

struct comparing {
	struct archive *archive;
	const struct grammar *grammar;
	struct draft *draft;
	struct arena *arena;
	const struct finding_kind *kind;
};

static bool
has_episode(const struct past *p, struct str name)
{
	for (size_t i = 0; i < p->episode.n; i++)
		if (str_is(p->episode.v[i], name))
			return true;
	return false;
}

static bool
read_past(struct comparing *k, const struct practice *now, struct past *out, struct err *e)
{
	struct row r = row_open(k->archive, SQL_PAST);

	row_text(&r, now->subject);
	row_text(&r, now->action);
	row_int(&r, now->quantity);
	row_text(&r, now->appliance);
	row_text(&r, k->draft->script->name);
	while (row_next(&r, e)) {
		vec_push(k->arena, &out->min, row_get_real(&r, 0));
		vec_push(k->arena, &out->max, row_get_real(&r, 1));
		if (!has_episode(out, row_get_text(&r, 2)))
			vec_push(k->arena, &out->episode, row_copy(&r, 2, k->arena));
	}
	return !e->set;
}

static int
order_numbers(const void *left, const void *right)
{
	double a = *(const double *)left, b = *(const double *)right;

	return (a > b) - (a < b);
}

struct usual {
	double min, max;
};

/* Without the odd ones: of every twenty, one at each end. */
static struct usual
usual_of(struct past *p)
{
	size_t n = p->min.n, odd = n / ODD_ONES;

	qsort(p->min.v, n, sizeof *p->min.v, order_numbers);
	qsort(p->max.v, n, sizeof *p->max.v, order_numbers);
	return (struct usual){p->min.v[odd], p->max.v[n - 1 - odd]};
}

static bool
is_far(const struct practice *now, struct usual u)
{
	if (now->quantity == QUANTITY_TIME)
		return now->max < u.min / far_time || now->min > u.max * far_time;
	if (now->quantity == QUANTITY_INSIDE)
		return now->max < u.min - far_inside || now->min > u.max + far_inside;
	return now->max < u.min - far_setting || now->min > u.max + far_setting;
}

static void
put_quantity(struct buf *b, enum quantity q, double min, double max)
{
	static const struct unit celsius = {.name = {"celsius", 7}};

	if (q == QUANTITY_TIME)
		print_duration(b, llround(min) * 1000, llround(max) * 1000);
	else
		print_temperature(b, ratio_int(llround(min)), ratio_int(llround(max)),
		    &celsius, q == QUANTITY_INSIDE);
}

/* "a.vtt, b.vtt, c.vtt and 4 more" */
static void
put_episodes(struct buf *b, const struct past *p)
{
	size_t named = p->episode.n > NAMED_MAX + 1 ? NAMED_MAX : p->episode.n;

	for (size_t i = 0; i < named; i++) {
		if (i)
			buf_put_z(b, i + 1 == p->episode.n ? " and " : ", ");
		buf_put(b, p->episode.v[i]);
	}
	if (named < p->episode.n)
		buf_fmt(b, " and %zu more", p->episode.n - named);
}

static struct str
message_of(struct comparing *k, const struct practice *now, const struct past *past,
    struct usual u)
{
	static const char *const what[] = {
	    [QUANTITY_SETTING] = "is set",
	    [QUANTITY_TIME] = "is the time",
	    [QUANTITY_INSIDE] = "is read inside",
	};
	struct buf b = buf_in(k->draft->arena);

	put_quantity(&b, now->quantity, now->min, now->max);
	buf_fmt(&b, " %s to %.*s ", what[now->quantity], (int)now->action.n, now->action.p);
	for (size_t i = 0; i < now->subject.n; i++)
		buf_put_char(&b, now->subject.p[i] == '-' ? ' ' : now->subject.p[i]);
	buf_fmt(&b, "; %zu past episodes have ", past->episode.n);
	put_quantity(&b, now->quantity, u.min, u.max);
	buf_put_z(&b, " (");
	put_episodes(&b, past);
	buf_put_z(&b, ")");
	return buf_str(&b);
}

/* In script order, behind what stands at the same place. */
static void
insert(struct draft *d, struct finding f)
{
	struct finding *list =
	    arena_grow(d->arena, d->finding, d->findings, d->findings + 1, sizeof f);
	size_t at = d->findings++;

	for (; at > 0 && list[at - 1].place.span.beg > f.place.span.beg; at--)
		list[at] = list[at - 1];
	list[at] = f;
	d->finding = list;
}

static void
raise_finding(struct comparing *k, const struct practice *now, struct str message)
{
	insert(k->draft, (struct finding){.kind = k->kind,
			     .severity = k->kind->severity,
			     .message = message,
			     .suggestion = STR("mend the figure, or say why it is another "
					       "one this time"),
			     .dish = now->dish,
			     .part = now->part,
			     .step = now->step,
			     .place = now->place});
}

/* The step has one for this quantity already: another food of it. */
static bool
is_raised(const struct comparing *k, const struct practices *p, size_t i)
{
	const struct practice *now = &p->v[i];

	for (size_t f = 0; f < k->draft->findings; f++)
		if (k->draft->finding[f].kind == k->kind &&
		    k->draft->finding[f].place.span.beg == now->place.span.beg)
			return true;
	return false;
}

static const struct finding_kind *
kind_of(const char *code)
{
	const struct finding_kind *k;

	for (size_t i = 0; (k = tamis_finding_kind(i)); i++)
		if (strcmp(k->code, code) == 0)
			return k;
	return NULL;
}

static bool
compare_all(struct comparing *k, struct err *e)
{
	struct practices p = practices_of_draft(k->arena, k->grammar, k->draft);

	for (size_t i = 0; i < p.n; i++) {
		struct past past = {0};
		struct usual u;

		if (!read_past(k, &p.v[i], &past, e))
			return false;
		if (past.episode.n < EPISODES_ENOUGH)
			continue;
		u = usual_of(&past);
		if (is_far(&p.v[i], u) && !is_raised(k, &p, i))
			raise_finding(k, &p.v[i], message_of(k, &p.v[i], &past, u));
	}
	return true;
}

bool
archive_compare(struct archive *a, const struct grammar *g, struct draft *d, struct err *e)
{
	struct arena arena;
	struct comparing k = {.archive = a,
	    .grammar = g,
	    .draft = d,
	    .arena = &arena,
	    .kind = kind_of("unlike-before")};
	bool ok;

	arena_init(&arena);
	ok = compare_all(&k, e);
	arena_release(&arena);
	return ok;
}
