/* SPDX-License-Identifier: ISC */
/*
 * Changes in the words of a step. Its slots stay at the values that they are
 * of: those behind a change move with it.
 */
#include "answer/answers.h"
#include "base/print.h"

/* text[beg..end) becomes `words`. */
static void
replace(struct edit e, size_t beg, size_t end, struct str words)
{
	struct step *s = e.s;
	struct buf b = buf_in(e.a);

	buf_put(&b, str_cut(s->text, 0, beg));
	buf_put(&b, words);
	buf_put(&b, str_cut(s->text, end, s->text.n));
	for (size_t i = 0; i < s->slots; i++) {
		struct span *t = &s->slot[i].text;

		if (t->beg >= end) {
			t->beg = (uint32_t)(t->beg + words.n - (end - beg));
			t->end = (uint32_t)(t->end + words.n - (end - beg));
		} else if (t->beg == beg && t->end == end) {
			t->end = (uint32_t)(beg + words.n);
		}
	}
	s->text = buf_str(&b);
}

static bool
is_same(const struct amount *a, const struct amount *b)
{
	return a->known == b->known && a->unit == b->unit &&
	       (!a->known ||
		   (ratio_order(a->min, b->min) == 0 && ratio_order(a->max, b->max) == 0));
}

static struct str
printed(struct arena *a, const struct slot *slot)
{
	struct buf b = buf_in(a);

	if (slot->kind == MEASURE_TEMPERATURE)
		print_temperature(
		    &b, slot->value.min, slot->value.max, slot->value.unit, slot->exact);
	else
		print_amount(&b, &slot->value);
	return buf_str(&b);
}

void
edit_revalue(struct edit e, enum measure_kind kind, const struct amount *from,
    const struct amount *to, struct str food)
{
	for (size_t i = 0; i < e.s->slots; i++) {
		struct slot *slot = &e.s->slot[i];
		bool degrees = slot->kind == MEASURE_TEMPERATURE;

		if (degrees != (kind == MEASURE_TEMPERATURE) ||
		    !is_same(&slot->value, from) || (!degrees && !str_is(slot->food, food)))
			continue;
		slot->value = *to;
		replace(e, slot->text.beg, slot->text.end, printed(e.a, slot));
	}
}

static struct str
time_words(struct arena *a, const struct duration *d)
{
	struct buf b = buf_in(a);

	print_duration(&b, d->known ? d->min_ms : -1, d->known ? d->max_ms : -1);
	return buf_str(&b);
}

void
edit_retime(struct edit e, const struct duration *from, const struct duration *to)
{
	edit_reword(e, time_words(e.a, from), time_words(e.a, to));
}

static bool
is_word_byte(char c)
{
	return is_alpha(c) || is_digit(c) || (unsigned char)c >= 0x80;
}

static bool
stands_apart(struct str text, size_t beg, size_t end)
{
	return (beg == 0 || !is_word_byte(text.p[beg - 1])) &&
	       (end == text.n || !is_word_byte(text.p[end]));
}

void
edit_reword(struct edit e, struct str from, struct str to)
{
	size_t at = 0;

	while (from.n && at + from.n <= e.s->text.n) {
		struct str text = e.s->text;
		size_t beg = at + str_find(str_cut(text, at, text.n), from);

		if (beg + from.n > text.n)
			return;
		at = beg + 1;
		if (!stands_apart(text, beg, beg + from.n))
			continue;
		replace(e, beg, beg + from.n, to);
		at = beg + to.n;
	}
}

void
edit_before(struct edit e, struct str sentence)
{
	replace(e, 0, 0, arena_fmt(e.a, "%.*s ", (int)sentence.n, sentence.p));
}

void
edit_after(struct edit e, struct str sentence)
{
	size_t end = e.s->text.n;

	replace(e, end, end, arena_fmt(e.a, " %.*s", (int)sentence.n, sentence.p));
}

void
edit_time(struct edit e, const struct duration *d)
{
	struct str words = time_words(e.a, d), text = e.s->text;
	size_t stop = str_find(text, STR(". "));

	if (stop < text.n || !str_ends(text, STR("."))) {
		edit_after(e, arena_fmt(e.a, "Allow %.*s.", (int)words.n, words.p));
		return;
	}
	replace(e, text.n - 1, text.n - 1,
	    arena_fmt(e.a, "%s%.*s", d->known ? " for " : " ", (int)words.n, words.p));
}
