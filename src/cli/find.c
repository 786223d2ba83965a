/* SPDX-License-Identifier: ISC */
/*
 * tamis find: which past dish has these words, this food, this setting. Each hit
 * with the sentence, its words marked, and its time code:
 *
 *   black beans, skillet-tacos.vtt at 4:06
 *     Then a half teaspoon of [cumin] and let the [beans] bubble ...
 */
#include "archive/archive.h"
#include "base/print.h"
#include "cli/request.h"
#include "term/look.h"
#include "term/nearest.h"

#include <stdio.h>
#include <stdlib.h>

enum { LIMIT = 10, LIMIT_MAX = 10000, NEAR_WORDS = 3 };

struct finding_run {
	const struct request *request;
	struct archive *archive;
	struct arena *arena;
	struct question question;
	struct answer answer;
};

/* ---- the question ------------------------------------------------------- */

static bool
read_figure(
    struct finding_run *f, const char *value, enum dimension wanted, struct figure *out)
{
	struct err e = {0};

	if (figure_read(f->archive, str_of(value), wanted, out, &e))
		return true;
	complain_of(&e);
	return false;
}

/* "butter", "flour:2-3 cups" */
static bool
add_with(struct finding_run *f, const char *value)
{
	struct question *q = &f->question;
	struct str rest = str_of(value);
	struct with *w = &q->with[q->withs++];

	w->name = str_trim(str_next(&rest, ':'));
	if (!rest.p)
		return true;
	w->ranged = true;
	return read_figure(f, arena_str(f->arena, rest).p, DIM_COUNT, &w->figure);
}

static bool
set_kind(struct finding_run *f, const char *value)
{
	static const struct {
		const char *name;
		enum measure_role role;
	} kinds[] = {
	    {"oven", ROLE_APPLIANCE},
	    {"internal", ROLE_INTERNAL},
	    {"oil", ROLE_OIL},
	    {"liquid", ROLE_LIQUID},
	};

	for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++)
		if (strcmp(kinds[i].name, value) == 0) {
			f->question.role = kinds[i].role;
			return true;
		}
	complain("no kind %s; there are oven, internal, oil and liquid", value);
	return false;
}

static bool
set_limit(struct finding_run *f, const char *value)
{
	uint64_t n;

	if (!str_to_u64(str_of(value), &n) || n < 1 || n > LIMIT_MAX) {
		complain("%s: a limit from 1 to %d", value, LIMIT_MAX);
		return false;
	}
	f->question.limit = (size_t)n;
	return true;
}

static bool
set_finding(struct finding_run *f, const char *value)
{
	struct nearest near = nearest_to(value);
	const struct finding_kind *k;

	for (size_t i = 0; (k = tamis_finding_kind(i)); i++) {
		if (strcmp(k->code, value) == 0) {
			f->question.finding = str_of(value);
			return true;
		}
		nearest_offer(&near, k->code);
	}
	if (near.best)
		complain("no code %s; did you mean %s?", value, near.best);
	else
		complain("no code %s; tamis explain lists them", value);
	return false;
}

static bool
set_text(struct str *to, const char *value)
{
	*to = str_trim(str_of(value));
	return true;
}

/* "2026", "2026-03" or "2026-03-14" */
static bool
set_date(struct str *to, const char *value)
{
	static const char shape[] = "dddd-dd-dd";
	struct str s = str_of(value);
	bool ok = s.n == 4 || s.n == 7 || s.n == 10;

	for (size_t i = 0; ok && i < s.n; i++)
		ok = shape[i] == 'd' ? is_digit(s.p[i]) : s.p[i] == shape[i];
	if (!ok)
		complain("%s is no date; write it like 2026-03-14, 2026-03 or 2026", value);
	*to = s;
	return ok;
}

static bool
take_range(struct finding_run *f, const char *name, const char *value)
{
	struct question *q = &f->question;

	if (strcmp(name, "temperature") == 0) {
		q->heated = true;
		return read_figure(f, value, DIM_TEMPERATURE, &q->temperature);
	}
	q->timed = true;
	if (!read_figure(f, value, DIM_TIME, &q->time))
		return false;
	if (q->time.min == q->time.max)
		q->time.min = 0;
	return true;
}

static bool
take_option(struct finding_run *f, const char *name, const char *value)
{
	struct question *q = &f->question;
	const struct {
		const char *name;
		struct str *to;
	} texts[] = {
	    {"dish", &q->dish},
	    {"equipment", &q->equipment},
	    {"action", &q->action},
	    {"free-of", &q->free_of},
	    {"episode", &q->episode},
	};

	for (size_t i = 0; i < sizeof texts / sizeof *texts; i++)
		if (strcmp(name, texts[i].name) == 0)
			return set_text(texts[i].to, value);
	if (strcmp(name, "without") == 0)
		return set_text(&q->without[q->withouts++], value);
	if (strcmp(name, "ingredient") == 0)
		return add_with(f, value);
	if (strcmp(name, "kind") == 0)
		return set_kind(f, value);
	if (strcmp(name, "limit") == 0)
		return set_limit(f, value);
	if (strcmp(name, "finding") == 0)
		return set_finding(f, value);
	if (strcmp(name, "since") == 0 || strcmp(name, "until") == 0)
		return set_date(name[0] == 's' ? &q->since : &q->until, value);
	return take_range(f, name, value);
}

static bool
read_question(struct finding_run *f)
{
	const struct request *r = f->request;
	struct question *q = &f->question;

	q->limit = LIMIT;
	q->word = arena_array(f->arena, r->operands + 1, struct str);
	q->with = arena_array(f->arena, r->givens + 1, struct with);
	q->without = arena_array(f->arena, r->givens + 1, struct str);
	for (size_t i = 0; i < r->operands; i++)
		q->word[q->words++] = str_of(r->operand[i]);
	for (size_t i = 0; i < r->givens; i++)
		if (!take_option(f, r->given[i].name, r->given[i].value))
			return false;
	return true;
}

/* ---- the answer --------------------------------------------------------- */

static void
put_sentence(struct buf *b, const struct hit *h, const struct look *look)
{
	size_t at = 0;

	for (size_t i = 0; i <= h->marks; i++) {
		size_t beg = i < h->marks ? h->mark[i].beg : h->sentence.n;
		size_t end = i < h->marks ? h->mark[i].end : h->sentence.n;

		look_put(b, str_cut(h->sentence, at, beg));
		if (beg < end) {
			look_paint(b, look, PAINT_MEASURE);
			buf_put_z(b, look->colour ? "" : "[");
			look_put(b, str_cut(h->sentence, beg, end));
			buf_put_z(b, look->colour ? "" : "]");
			look_paint(b, look, PAINT_NONE);
		}
		at = end;
	}
}

static void
put_hit(struct buf *b, const struct hit *h, const struct look *look)
{
	look_paint(b, look, PAINT_STRONG);
	look_put(b, h->dish.n ? h->dish : STR("around the dishes"));
	look_paint(b, look, PAINT_NONE);
	buf_put_z(b, ", ");
	look_put(b, h->episode);
	if (h->date.n) {
		buf_put_z(b, ", ");
		look_put(b, h->date);
	}
	if (h->at_ms >= 0) {
		buf_put_z(b, ", at ");
		print_clock(b, h->at_ms);
	}
	buf_put_z(b, "\n  ");
	put_sentence(b, h, look);
	if (h->link.n) {
		buf_put_z(b, "\n  ");
		look_put(b, h->link);
	}
	buf_put_char(b, '\n');
}

/* ---- words like it ------------------------------------------------------ */

struct near_words {
	struct arena *arena;
	const char *typed;
	struct nearest best[NEAR_WORDS];
};

/* Keeps the nearest ones, the nearest first. */
static void
offer_word(void *context, struct str word)
{
	struct near_words *n = context;
	struct nearest one = nearest_to(n->typed), last;
	struct str copy;
	char z[64];

	if (word.n >= sizeof z)
		return;
	memcpy(z, word.p, word.n);
	z[word.n] = '\0';
	nearest_offer(&one, z);
	if (!one.best)
		return;
	copy = arena_str(n->arena, word);
	one.best = copy.p;
	for (size_t i = 0; i < NEAR_WORDS; i++) {
		if (n->best[i].best && n->best[i].distance <= one.distance)
			continue;
		last = n->best[i];
		n->best[i] = one;
		one = last;
		if (!one.best)
			return;
	}
}

static void
complain_of_word(struct finding_run *f, struct str word)
{
	struct str typed = arena_str(f->arena, word);
	struct near_words near = {f->arena, typed.p, {{NULL, NULL, 0}}};
	struct buf b = buf_in(f->arena);
	struct err ignored = {0};

	archive_words(f->archive, offer_word, &near, &ignored);
	for (size_t i = 0; i < NEAR_WORDS && near.best[i].best; i++) {
		buf_put_z(&b, i ? ", " : "; near it: ");
		buf_put_z(&b, near.best[i].best);
	}
	complain("%s is nowhere in the archive%.*s", typed.p, (int)b.n, b.n ? b.v : "");
}

/* ---- the command -------------------------------------------------------- */

static void
print_answer(struct finding_run *f)
{
	const struct answer *a = &f->answer;
	struct look look = look_stdout();
	struct buf b = buf_in(f->arena);

	if (f->question.free_of.n && a->hits)
		complain("free of %.*s by the names of the ingredients alone, which proves "
			 "nothing: read the labels, and ask who knows",
		    (int)f->question.free_of.n, f->question.free_of.p);
	if (a->loose && a->hits)
		complain("no dish is just as asked; these come near");
	for (size_t i = 0; i < a->hits; i++)
		put_hit(&b, &a->hit[i], &look);
	if (b.n)
		fwrite(b.v, 1, b.n, stdout);
	if (a->more)
		complain("there are more; --limit %zu shows twice as many",
		    2 * f->question.limit);
}

static bool
wants_json(const struct request *r, bool *json)
{
	const char *format = r->format;

	*json = format && strcmp(format, "json") == 0;
	if (!format || *json || strcmp(format, "text") == 0)
		return true;
	complain("no format %s; there are text and json", format);
	return false;
}

static enum outcome
find(struct finding_run *f)
{
	struct buf b = buf_in(f->arena);
	struct err e = {0};
	bool json;

	if (!wants_json(f->request, &json) || !read_question(f))
		return OUTCOME_UNUSABLE;
	if (!archive_find(f->archive, f->arena, &f->question, &f->answer, &e)) {
		complain_of(&e);
		return e.where[0] ? OUTCOME_MACHINE : OUTCOME_UNUSABLE;
	}
	if (json) {
		answer_json(&f->answer, &b);
		fwrite(b.v, 1, b.n, stdout);
	} else {
		print_answer(f);
	}
	for (size_t i = 0; i < f->answer.nowheres; i++)
		complain_of_word(f, f->answer.nowhere[i]);
	return f->answer.hits ? OUTCOME_CLEAN : OUTCOME_FINDINGS;
}

static enum outcome
run_find(const struct request *r)
{
	enum outcome outcome = OUTCOME_UNUSABLE;
	struct err e = {0};
	struct arena a;
	struct finding_run f = {.request = r, .arena = &a};
	const char *path;

	arena_init(&a);
	path = request_archive(r, &a);
	if (path)
		f.archive = archive_open(path, ARCHIVE_READ, &e);
	else
		complain("no data folder is known (HOME is not set); name an --archive");
	if (e.set)
		complain_of(&e);
	if (f.archive)
		outcome = find(&f);
	archive_close(f.archive);
	arena_release(&a);
	return outcome;
}

static void
print_formats(void)
{
	puts("  text       a hit in two lines, for people\n"
	     "  json       one object with all of it, for programs");
}

static const struct choice own[] = {
    {"ingredient", "NAME[:AMOUNT]",
	"has it: \"butter\", \"flour:2-3 cups\"; may be repeated"},
    {"without", "NAME", "has it not; may be repeated"},
    {"dish", "WORDS", "is called so, or a part of it is"},
    {"equipment", "WORDS", "uses it"},
    {"action", "WORD", "has a step that does it: \"braise\""},
    {"temperature", "RANGE", "170-180C, 350F, \"gas mark 4\", 200C- (at least)"},
    {"kind", "KIND", "of the temperature: oven, internal, oil or liquid"},
    {"time", "RANGE", "takes so long in all: 45min (at most), 1h-1h30"},
    {"free-of", "ALLERGEN",
	"no ingredient is known to bring it; no proof: read the labels"},
    {"finding", "CODE", "has an open finding of this code"},
    {"episode", "TEXT", "its name or title has this in it"},
    {"since", "DATE", "went out on this day or later: 2026-03-14, 2026-03, 2026"},
    {"until", "DATE", "or earlier"},
    {"limit", "N", "at most so many hits; 10 unless said"},
    {NULL, NULL, NULL},
};

const struct command command_find = {
    .name = "find",
    .help = "search the archive",
    .usage =
	"tamis find [OPTION...] [WORD...]\n\n"
	"Finds dishes of past episodes by the words that were said or written, best\n"
	"first: what a dish is called counts most, then what goes into it, then what was\n"
	"said beside it. A word in quotes that has blanks is a phrase; tac* goes on.\n"
	"Exit status: 0 something was found, 1 nothing.\n",
    .options = "archive format",
    .own = own,
    .run = run_find,
    .print_formats = print_formats,
};
