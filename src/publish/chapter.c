/* SPDX-License-Identifier: ISC */
/*
 * The chapters of an episode.
 */
#include "publish/chapter.h"

#include "publish/brief.h"
#include "write/method.h"
#include "write/text.h"

/* src/write/ holds the formats of a recipe; src/publish/ those that go out
 * with an episode. One folder for all would be too long a listing. */

enum { TITLE_MOST = 60 };

struct plan {
	struct arena *arena;
	VEC(struct chapter) chapter; /* in rising order */
	int64_t last_ms;             /* no chapter begins after this */
};

/* Where a chapter at this time would stand. */
static size_t
place_of(const struct plan *p, int64_t at_ms)
{
	size_t low = 0, high = p->chapter.n;

	while (low < high) {
		size_t middle = low + (high - low) / 2;

		if (p->chapter.v[middle].beg_ms <= at_ms)
			low = middle + 1;
		else
			high = middle;
	}
	return low;
}

/* Left out where it would make itself or the one before it too short. */
static void
add(struct plan *p, int64_t at_ms, struct str title)
{
	size_t i = place_of(p, at_ms);
	struct chapter *v;

	if (at_ms < 0 || at_ms > p->last_ms || title.n == 0)
		return;
	if (i > 0 && at_ms - p->chapter.v[i - 1].beg_ms < CHAPTER_MS)
		return;
	if (i < p->chapter.n && p->chapter.v[i].beg_ms - at_ms < CHAPTER_MS)
		return;
	vec_push(p->arena, &p->chapter, (struct chapter){0});
	v = p->chapter.v;
	memmove(v + i + 1, v + i, (p->chapter.n - 1 - i) * sizeof *v);
	v[i] = (struct chapter){.beg_ms = at_ms, .title = title};
}

static void
add_dishes(struct plan *p, const struct draft *d)
{
	for (size_t i = 0; i < d->dishes; i++) {
		struct buf title = buf_in(p->arena);
		int64_t at = d->dish[i].beg_ms;

		text_dish_title(&title, &d->dish[i]);
		/* An episode that opens with its dish opens at 0:00. */
		add(p, at >= 0 && at < CHAPTER_MS ? 0 : at, buf_str(&title));
	}
}

static void
add_parts(struct plan *p, const struct dish *d)
{
	for (size_t i = 0; i < d->parts; i++) {
		struct buf title = buf_in(p->arena);

		text_title(&title, d->part[i].name);
		add(p, d->part[i].place.at_ms, buf_str(&title));
	}
}

static void
add_steps(struct plan *p, const struct dish *d)
{
	size_t n;
	const struct method_step *m = method_steps(p->arena, d, &n);

	for (size_t i = 0; i < n; i++) {
		struct buf title = buf_in(p->arena);

		if (!m[i].step->heats && !m[i].step->duration.present)
			continue;
		brief_sentence(&title, m[i].step->text, TITLE_MOST);
		add(p, m[i].step->place.at_ms, buf_str(&title));
	}
}

static void
set_ends(struct plan *p, int64_t length_ms)
{
	struct chapter *v = p->chapter.v;

	for (size_t i = 0; i + 1 < p->chapter.n; i++)
		v[i].end_ms = v[i + 1].beg_ms;
	if (p->chapter.n == 0)
		return;
	v += p->chapter.n - 1;
	/* A script without ends knows only when its last words begin. */
	v->end_ms =
	    length_ms - v->beg_ms >= CHAPTER_MS ? length_ms : v->beg_ms + CHAPTER_MS;
}

struct chapter *
chapters_of(struct arena *a, const struct draft *d, size_t *count)
{
	struct plan p = {.arena = a, .last_ms = INT64_MAX};

	*count = 0;
	if (!d->script->stamped)
		return NULL;
	if (d->script->length_ms > CHAPTER_MS)
		p.last_ms = d->script->length_ms - CHAPTER_MS;
	add_dishes(&p, d);
	for (size_t i = 0; i < d->dishes; i++)
		add_parts(&p, &d->dish[i]);
	add(&p, 0, STR("Introduction"));
	for (size_t i = 0; i < d->dishes && p.chapter.n < CHAPTERS_MIN; i++)
		add_steps(&p, &d->dish[i]);
	if (p.chapter.n == 0 || p.chapter.v[0].beg_ms != 0)
		return NULL;
	set_ends(&p, d->script->length_ms);
	*count = p.chapter.n;
	return p.chapter.v;
}
