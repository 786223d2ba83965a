/* SPDX-License-Identifier: ISC */
/*
 * Other names for dishes, parts and ingredients, also in the words of steps.
 */
#include "answer/answers.h"

static bool
is_name(struct str a, struct str b)
{
	bool same = a.n == b.n;

	for (size_t i = 0; same && i < a.n; i++)
		same = to_lower(a.p[i]) == to_lower(b.p[i]);
	return same;
}

static bool
rename_dishes(struct answers *w, const struct rename *r)
{
	bool any = false;

	for (size_t i = 0; i < w->d->dishes; i++)
		if (is_name(w->d->dish[i].name, r->from)) {
			w->d->dish[i].name = r->to;
			any = true;
		}
	return any;
}

static void
reword_steps(struct answers *w, struct dish *d, const struct rename *r)
{
	for (size_t p = 0; p < d->parts; p++)
		for (size_t i = 0; i < d->part[p].steps; i++)
			edit_reword(
			    (struct edit){w->a, &d->part[p].step[i]}, r->from, r->to);
}

static bool
rename_parts(struct answers *w, const struct rename *r)
{
	bool any = false;

	for (size_t i = 0; i < w->d->dishes; i++)
		for (size_t p = 1; p < w->d->dish[i].parts; p++) {
			struct part *part = &w->d->dish[i].part[p];

			if (!is_name(part->name, r->from))
				continue;
			part->name = r->to;
			reword_steps(w, &w->d->dish[i], r);
			any = true;
		}
	return any;
}

static bool
rename_in_part(struct part *p, const struct rename *r)
{
	bool any = false;

	for (size_t i = 0; i < p->ingredients; i++)
		if (is_name(p->ingredient[i].item, r->from)) {
			p->ingredient[i].item = r->to;
			any = true;
		}
	return any;
}

static bool
rename_ingredients(struct answers *w, const struct rename *r)
{
	bool any = false;

	for (size_t i = 0; i < w->d->dishes; i++) {
		struct dish *d = &w->d->dish[i];
		bool here = false;

		for (size_t p = 0; p < d->parts; p++)
			here = rename_in_part(&d->part[p], r) || here;
		if (here)
			reword_steps(w, d, r);
		any = any || here;
	}
	return any;
}

void
answer_rename(struct answers *w, const struct rename *r)
{
	static const struct {
		const char *what;
		bool (*run)(struct answers *, const struct rename *);
	} rows[] = {[RENAME_DISH] = {"dish", rename_dishes},
	    [RENAME_PART] = {"part", rename_parts},
	    [RENAME_INGREDIENT] = {"ingredient", rename_ingredients}};

	if (!rows[r->what].run(w, r))
		answers_complain(w, r->place, SEVERITY_WARNING,
		    "no %s is called \"%.*s\"; nothing is renamed", rows[r->what].what,
		    (int)r->from.n, r->from.p);
}
