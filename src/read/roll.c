/* SPDX-License-Identifier: ISC */
/*
 * Finding what a caption repeats: whole lines at the end of the caption
 * before it, word for word, whatever the line breaks and the tags.
 *
 *   "so today we are"
 *   "so today we are / making leek soup"    again: 4 words
 *   "making leek soup / and soda bread"     again: 3 words
 */
#include "read/roll.h"

#include "read/line.h"

enum {
	NEAR_MS = 10000, /* a repeat after a longer pause was said twice */
	SURE_WORDS = 3,  /* so many words at a line's edge don't repeat by chance */
	SURE_REPEATS = 2 /* from so many on, and in a third of all, a file rolls */
};

struct roll {
	const struct captions *captions;
	struct cursor at;
	size_t end; /* past the last bit */
};

static struct str
bit_str(const struct captions *c, size_t i)
{
	const struct bit *b = &c->bit.v[i];

	return b->as.p ? b->as : build_str(c->build, b->at);
}

/* Moves past blanks; true where there were any. */
static bool
skip_blanks(struct roll *r)
{
	bool any = false;

	while (r->at.bit < r->end) {
		struct str s = bit_str(r->captions, r->at.bit);
		size_t at = blank_skip(s, r->at.at, s.n);

		any = any || at > r->at.at;
		if (at < s.n) {
			r->at.at = at;
			break;
		}
		r->at = (struct cursor){r->at.bit + 1, 0};
	}
	return any;
}

/* The next byte, ' ' for any run of blanks, -1 at the end. */
static int
next_byte(struct roll *r)
{
	bool blank = skip_blanks(r);

	if (r->at.bit >= r->end)
		return -1;
	if (blank)
		return ' ';
	return (unsigned char)bit_str(r->captions, r->at.bit).p[r->at.at++];
}

/* Words that `now` repeats from `before` to its end; 0 where it says anything
 * else. now is left at its first new word. */
static size_t
count_again(struct roll before, struct roll *now)
{
	size_t words = 1;
	struct roll at;
	int a, b;

	skip_blanks(&before);
	skip_blanks(now);
	if (before.at.bit >= before.end)
		return 0;
	for (;;) {
		at = *now;
		a = next_byte(&before);
		b = next_byte(now);
		if (a < 0) {
			*now = at;
			skip_blanks(now);
			return b < 0 || b == ' ' ? words : 0;
		}
		if (a != b)
			return 0;
		words += a == ' ';
	}
}

/* Compares k with what `last` shows, from its first line on and then from
 * each of its last lines. */
static void
compare(const struct captions *c, const struct caption *last, struct caption *k)
{
	size_t first = last->lines > ROLL_LINES ? last->lines - ROLL_LINES : 0;
	struct roll before = {c, {last->bit, 0}, last->bit + last->bits};

	for (size_t i = first; i <= last->lines && k->again == 0; i++) {
		struct roll now = {c, {k->bit, 0}, k->bit + k->bits};

		if (i > first)
			before.at = last->line[(i - 1) % ROLL_LINES];
		k->again = count_again(before, &now);
		if (k->again > 0)
			k->kept = now.at;
	}
}

/* Whether k, which repeats words of last, is sure to roll by itself. */
static bool
is_sure(const struct captions *c, const struct caption *last, const struct caption *k)
{
	struct roll left = {c, k->kept, k->bit + k->bits};

	skip_blanks(&left);
	return k->again >= SURE_WORDS ||
	       (left.at.bit >= left.end && last->inlined != k->inlined);
}

static bool
has_words(const struct captions *c, const struct caption *k)
{
	struct roll all = {c, {k->bit, 0}, k->bit + k->bits};

	skip_blanks(&all);
	return all.at.bit < all.end;
}

/* Forgets a repeat: all of k is new. */
static void
keep_all(struct caption *k)
{
	k->again = 0;
	k->kept = (struct cursor){k->bit, 0};
}

void
roll_undo(struct captions *c)
{
	struct caption *last = NULL, *k;
	size_t repeats = 0, pairs = 0;
	bool *sure = arena_array(c->build->arena, c->caption.n, bool);

	for (size_t i = 0; i < c->caption.n; i++) {
		k = &c->caption.v[i];
		if (!has_words(c, k))
			continue;
		if (last && k->beg_ms - last->end_ms <= NEAR_MS) {
			compare(c, last, k);
			sure[i] = k->again > 0 && is_sure(c, last, k);
		}
		pairs += last != NULL;
		repeats += k->again > 0;
		last = k;
	}
	if (repeats >= SURE_REPEATS && repeats * 3 >= pairs)
		return;
	for (size_t i = 0; i < c->caption.n; i++)
		if (!sure[i])
			keep_all(&c->caption.v[i]);
}
