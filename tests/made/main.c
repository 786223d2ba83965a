/* SPDX-License-Identifier: ISC */
/*
 * made: writes made-up episodes, the same ones every time.
 *   made COUNT FOLDER [FIRST]
 * One file each, by number from FIRST on, in the four kinds of script in turn,
 * some 4 KB long; FOLDER has to be there.
 */
#include "../../src/base/buf.h"
#include "made.h"

#include <stdio.h>
#include <stdlib.h>

struct maker {
	uint64_t state;
	struct arena *arena;
	struct buf out;
	unsigned at_s;    /* into the episode */
	unsigned kind;    /* of script */
	unsigned caption; /* the last one's number */
};

/* SplitMix64 (Steele, Lea, Flood 2014; the published constants). */
static uint64_t
next(struct maker *m)
{
	uint64_t z = m->state += 0x9e3779b97f4a7c15u;

	z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
	z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
	return z ^ (z >> 31);
}

static size_t
pick(struct maker *m, size_t n)
{
	return (size_t)(next(m) % n);
}

static int
between(struct maker *m, int low, int high)
{
	return low + (int)pick(m, (size_t)(high - low + 1));
}

/* ---- lines of a script -------------------------------------------------- */

enum { PLAIN, MARKDOWN, WEBVTT, SUBRIP, KINDS };

static void
put_stamp(struct maker *m, unsigned s, char point)
{
	buf_fmt(&m->out, "%02u:%02u:%02u%c000", s / 3600, s / 60 % 60, s % 60, point);
}

/* A sentence takes a second for every dozen letters. */
static void
put_line(struct maker *m, struct str text)
{
	unsigned length = 1 + (unsigned)text.n / 12;
	char point = m->kind == SUBRIP ? ',' : '.';

	if (m->kind == PLAIN)
		buf_fmt(&m->out, "[%u:%02u] ", m->at_s / 60, m->at_s % 60);
	if (m->kind == MARKDOWN)
		buf_fmt(&m->out, "**[%02u:%02u]** ", m->at_s / 60, m->at_s % 60);
	if (m->kind == SUBRIP)
		buf_fmt(&m->out, "%u\n", ++m->caption);
	if (m->kind == WEBVTT || m->kind == SUBRIP) {
		put_stamp(m, m->at_s, point);
		buf_put_z(&m->out, " --> ");
		put_stamp(m, m->at_s + length, point);
		buf_put_char(&m->out, '\n');
	}
	buf_put(&m->out, text);
	buf_put_z(&m->out, "\n\n");
	m->at_s += length;
}

/* ---- sentences ---------------------------------------------------------- */

struct filling {
	const char *food, *setting, *time;
};

/* The text with its {x} filled in. */
static struct str
fill(struct maker *m, const char *text, const struct filling *with)
{
	struct buf b = buf_in(m->arena);

	for (; *text; text++) {
		if (text[0] != '{') {
			buf_put_char(&b, *text);
			continue;
		}
		if (text[1] == 'n')
			buf_put_z(&b, made_things[pick(m, made_thing_count)]);
		else if (text[1] == 'p')
			buf_put_z(&b, made_people[pick(m, made_people_count)]);
		else if (text[1] == 'w')
			buf_put_z(&b, made_places[pick(m, made_place_count)]);
		else
			buf_put_z(&b, text[1] == 'f'   ? with->food
				      : text[1] == 'h' ? with->setting
						       : with->time);
		text += 2;
	}
	return buf_str(&b);
}

static void
put_chatter(struct maker *m)
{
	put_line(m, fill(m, made_chatter[pick(m, made_chatter_count)], NULL));
}

/* "2-4 tablespoons of" and "capers": "3 tablespoons of capers". */
static struct str
amount(struct maker *m, const struct made_food *f)
{
	struct str rest = str_of(f->amount), low = str_next(&rest, '-'),
		   high = str_next(&rest, ' ');
	uint64_t from = 1, to = 1;

	str_to_u64(low, &from);
	str_to_u64(high, &to);
	return arena_fmt(m->arena, "%d %.*s %s", between(m, (int)from, (int)to),
	    (int)rest.n, rest.p, f->food);
}

static const char *
setting(struct maker *m, const struct made_dish *d)
{
	int c = between(m, d->low_c / 5, d->high_c / 5) * 5;

	if (d->low_c == 0)
		return "";
	if (pick(m, 3) == 0)
		return arena_fmt(
		    m->arena, "%d degrees Fahrenheit", (c * 9 / 5 + 32) / 25 * 25)
		    .p;
	return arena_fmt(m->arena, "%d degrees Celsius", c).p;
}

static const char *
minutes(struct maker *m, const struct made_dish *d)
{
	int low = between(m, d->low_min, d->high_min);

	if (pick(m, 4) == 0)
		return arena_fmt(m->arena, "%d to %d minutes", low, low + 2 + low / 8).p;
	return arena_fmt(m->arena, "%d minutes", low).p;
}

static void
put_dish(struct maker *m, bool first)
{
	const struct made_dish *d = &made_dishes[pick(m, made_dish_count)];
	const struct made_food *extra[3];
	struct filling with = {NULL, setting(m, d), minutes(m, d)};
	struct str name =
	    arena_fmt(m->arena, "%s%s%s", made_before[pick(m, made_before_count)], d->name,
		made_after[pick(m, made_after_count)]);

	put_line(m, arena_fmt(m->arena,
			first ? "Today we're making %s for %d people."
			      : "Now we're going to make %s, for %d people.",
			name.p, between(m, 2, 8)));
	for (size_t i = 0; i < 4 && d->base[i]; i++)
		put_line(m, arena_fmt(m->arena, "You need %s.", d->base[i]));
	for (size_t i = 0; i < 3; i++) {
		extra[i] = &made_foods[pick(m, made_food_count)];
		put_line(
		    m, arena_fmt(m->arena, "%s goes in as well.", amount(m, extra[i]).p));
	}
	put_chatter(m);
	for (size_t i = 0; i < 5 && d->step[i]; i++) {
		with.food = extra[pick(m, 3)]->food;
		put_line(m, fill(m, d->step[i], &with));
		put_chatter(m);
	}
}

static void
put_episode(struct maker *m)
{
	size_t dishes = 1 + pick(m, 2), asides = 3 + pick(m, 8);

	if (m->kind == WEBVTT)
		buf_put_z(&m->out, "WEBVTT\n\n");
	if (m->kind == MARKDOWN)
		buf_fmt(&m->out, "# From the kitchen at %s\n\n",
		    made_places[pick(m, made_place_count)]);
	put_line(m, str_of("Hello and welcome back to the kitchen."));
	for (size_t i = 0; i < asides; i++)
		put_chatter(m);
	for (size_t i = 0; i < dishes; i++) {
		put_dish(m, i == 0);
		for (size_t k = 0; k < asides; k++)
			put_chatter(m);
	}
	put_line(m, str_of("That's all from us, see you next time."));
}

/* ---- files -------------------------------------------------------------- */

static bool
write_episode(struct arena *a, const char *folder, unsigned number)
{
	static const char *const ending[KINDS] = {"txt", "md", "vtt", "srt"};
	struct maker m = {.state = number, .arena = a, .out = buf_in(a), .at_s = 2};
	struct str path;
	FILE *f;
	bool ok;

	m.kind = number % KINDS;
	put_episode(&m);
	path = arena_fmt(a, "%s/%d-%02d-%02d-%06u.%s", folder, between(&m, 2010, 2025),
	    between(&m, 1, 12), between(&m, 1, 28), number, ending[m.kind]);
	f = fopen(path.p, "wb");
	if (!f) {
		perror(path.p);
		return false;
	}
	ok = fwrite(m.out.v, 1, m.out.n, f) == m.out.n;
	return fclose(f) == 0 && ok;
}

int
main(int argc, char **argv)
{
	uint64_t count, first = 0;
	struct arena a;

	if (argc < 3 || !str_to_u64(str_of(argv[1]), &count) ||
	    (argc > 3 && !str_to_u64(str_of(argv[3]), &first))) {
		fputs("made COUNT FOLDER [FIRST]\n", stderr);
		return 2;
	}
	arena_init(&a);
	for (uint64_t i = 0; i < count; i++) {
		if (!write_episode(&a, argv[2], (unsigned)(first + i)))
			return 3;
		arena_release(&a);
	}
	return 0;
}
