/* SPDX-License-Identifier: ISC */
/*
 * measures                 312    309    300     0.9709  0.9615  0.9662
 */
#include "report.h"

#include "../support/source.h"
#include "base/buf.h"
#include "base/print.h"
#include "base/ratio.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>

enum { KINDS_SHOWN = 5 };

static void
print_share(const char *name, const struct share *s)
{
	struct count c = {s->all, s->all, s->right};

	printf("%-26s %6zu %6zu %6zu  %8.4f\n", name, s->all, s->all, s->right,
	    count_recall(&c));
}

void
report_table(const struct scores *s)
{
	printf("%-26s %6s %6s %6s  %8s %8s %8s\n", "", "gold", "found", "hits", "precision",
	    "recall", "F1");
	for (unsigned f = 0; f < FIGURES; f++) {
		const struct count *c = &s->total.count[f];

		printf("%-26s %6zu %6zu %6zu  %9.4f %8.4f %8.4f\n", figure_name(f), c->gold,
		    c->found, c->hits, count_precision(c), count_recall(c), count_f1(c));
	}
	print_share("role of matched measures", &s->total.roles);
	print_share("part of matched food", &s->total.parts);
	printf("\nF1 by script %22s %8s %8s %8s %8s %8s\n", "measures", "food", "+amount",
	    "heat", "dishes", "findings");
	for (size_t i = 0; i < s->script.n; i++) {
		const struct count *c = s->script.v[i].count;

		printf("%-26s %8.4f %8.4f %8.4f %8.4f %8.4f %8.4f\n",
		    file_name(s->script.v[i].script), count_f1(&c[FIGURE_MEASURES]),
		    count_f1(&c[FIGURE_INGREDIENTS]), count_f1(&c[FIGURE_AMOUNTS]),
		    count_f1(&c[FIGURE_HEAT]), count_f1(&c[FIGURE_DISHES]),
		    count_f1(&c[FIGURE_FINDINGS]));
	}
}

static int
order_slips(const void *a, const void *b)
{
	const struct slip *x = a, *y = b;
	int script;

	if (x->figure != y->figure)
		return x->figure < y->figure ? -1 : 1;
	script = str_order(x->script, y->script);
	if (script)
		return script;
	if (x->at_ms != y->at_ms)
		return x->at_ms < y->at_ms ? -1 : 1;
	return y->miss - x->miss;
}

void
report_slips(struct tally *t)
{
	const struct slip *last = NULL;

	if (t->slip.n)
		qsort(t->slip.v, t->slip.n, sizeof *t->slip.v, order_slips);
	for (size_t i = 0; i < t->slip.n; i++) {
		const struct slip *s = &t->slip.v[i];
		struct buf clock = buf_in(t->arena);

		print_clock(&clock, s->at_ms < 0 ? 0 : s->at_ms);
		if (!last || last->figure != s->figure)
			printf("\n== %s\n", figure_name(s->figure));
		if (!last || last->figure != s->figure || !str_is(last->script, s->script))
			printf("%s\n", file_name(s->script));
		printf("  %-6s %7.*s  %.*s\n", s->miss ? "missed" : "false", (int)clock.n,
		    clock.v, (int)s->text.n, s->text.p);
		last = s;
	}
}

struct kind {
	enum figure figure;
	struct str name;
	size_t n;
};

static int
order_kinds(const void *a, const void *b)
{
	const struct kind *x = a, *y = b;

	if (x->n != y->n)
		return x->n > y->n ? -1 : 1;
	return str_order(x->name, y->name);
}

static void
report_kinds_of(const struct tally *t, bool miss)
{
	struct kind *kind = arena_array(t->arena, t->slip.n, struct kind);
	size_t kinds = 0, k;

	for (size_t i = 0; i < t->slip.n; i++) {
		const struct slip *s = &t->slip.v[i];

		if (s->miss != miss)
			continue;
		for (k = 0; k < kinds; k++)
			if (kind[k].figure == s->figure && str_is(kind[k].name, s->kind))
				break;
		if (k == kinds)
			kind[kinds++] = (struct kind){s->figure, s->kind, 0};
		kind[k].n++;
	}
	if (kinds)
		qsort(kind, kinds, sizeof *kind, order_kinds);
	printf("\nmost frequent %s\n", miss ? "misses" : "false alarms");
	for (k = 0; k < kinds && k < KINDS_SHOWN; k++)
		printf("  %4zu  %s: %.*s\n", kind[k].n, figure_name(kind[k].figure),
		    (int)kind[k].name.n, kind[k].name.p);
}

void
report_kinds(const struct tally *t)
{
	report_kinds_of(t, true);
	report_kinds_of(t, false);
}

/* The figure that the file has for f; 0 where it has none. */
static double
recorded(struct str file, enum figure f)
{
	while (file.p) {
		struct str line = str_next(&file, '\n');
		struct str name = str_next(&line, '\t');
		struct ratio v;

		if (str_is_z(name, figure_name(f)) && line.p &&
		    ratio_parse(str_trim(line), &v))
			return ratio_double(v);
	}
	return 0;
}

bool
report_floor(const struct tally *t, struct arena *a, const char *path, struct err *e)
{
	struct str file;
	bool ok = true;

	if (!source_read(a, path, &file, e))
		return false;
	for (unsigned f = 0; f < FIGURES; f++) {
		double now = count_f1(&t->count[f]), then = recorded(file, f);

		if (now >= then - 0.0005)
			continue;
		printf("\nbelow the recorded figure: %s %.4f, was %.4f\n", figure_name(f),
		    now, then);
		ok = false;
	}
	return ok || err_set(e, path, "the score is below what is recorded there");
}

bool
report_record(const struct tally *t, struct arena *a, const char *path, struct err *e)
{
	struct err absent = {0};
	struct str file = STR("");
	FILE *f;

	/* The first record has no file before it. */
	source_read(a, path, &file, &absent);
	f = fopen(path, "w");
	if (!f)
		return err_set(e, path, "can't be written: %s", strerror(errno));
	fprintf(f,
	    "# F1 over corpus/; `make score` fails below, `make score-record` raises.\n");
	for (unsigned i = 0; i < FIGURES; i++) {
		double now = count_f1(&t->count[i]), then = recorded(file, i);

		fprintf(f, "%s\t%.4f\n", figure_name(i), now > then ? now : then);
	}
	return fclose(f) == 0 || err_set(e, path, "can't be written: %s", strerror(errno));
}
