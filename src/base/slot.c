/* SPDX-License-Identifier: ISC */
/*
 * "Add \2" "7\3" "2 tbsp\4 of the butter": slot 7 is the 2 tbsp.
 */
#include "base/slot.h"

#include "base/print.h"

enum { MARK_NUMBER = 2, MARK_TEXT = 3, MARK_END = 4 };

static bool
is_same_amount(const struct amount *a, const struct amount *b)
{
	return a->present == b->present && a->known == b->known && a->unit == b->unit &&
	       (!a->known ||
		   (ratio_order(a->min, b->min) == 0 && ratio_order(a->max, b->max) == 0));
}

/* The same value has one number, so that equal texts stay equal. */
static size_t
number_of(struct slots *s, struct arena *a, const struct slot *value)
{
	for (size_t i = 0; i < s->value.n; i++) {
		const struct slot *v = &s->value.v[i];

		if (v->kind == value->kind && v->exact == value->exact &&
		    str_is(v->food, value->food) &&
		    is_same_amount(&v->value, &value->value))
			return i;
	}
	vec_push(a, &s->value, *value);
	return s->value.n - 1;
}

static void
put_marked(struct slots *s, struct buf *b, const struct slot *value, struct str printed)
{
	if (printed.n == 0)
		return;
	buf_fmt(b, "%c%zu%c", MARK_NUMBER, number_of(s, b->arena, value), MARK_TEXT);
	buf_put(b, printed);
	buf_put_char(b, MARK_END);
}

void
slot_put_amount(struct slots *s, struct buf *b, const struct amount *a, struct str food)
{
	struct buf printed = buf_in(b->arena);
	struct slot value = {.kind = MEASURE_AMOUNT, .value = *a, .food = food};

	print_amount(&printed, a);
	put_marked(s, b, &value, buf_str(&printed));
}

void
slot_put_temperature(struct slots *s, struct buf *b, const struct amount *a, bool exact)
{
	struct buf printed = buf_in(b->arena);
	struct slot value = {.kind = MEASURE_TEMPERATURE, .value = *a, .exact = exact};

	print_temperature(&printed, a->min, a->max, a->unit, exact);
	put_marked(s, b, &value, buf_str(&printed));
}

/* The number between marks at text.p[at]; its bytes, marks and all, or 0. */
static size_t
read_number(const struct slots *s, struct str text, size_t at, uint64_t *number)
{
	struct str rest = str_cut(text, at + 1, text.n);
	size_t n = str_find_char(rest, MARK_TEXT);

	if (text.p[at] != MARK_NUMBER || n == rest.n ||
	    !str_to_u64(str_cut(rest, 0, n), number) || *number >= s->value.n)
		return 0;
	return n + 2;
}

struct slot *
slots_take(const struct slots *s, struct buf *b, struct str text, size_t *count)
{
	VEC(struct slot) found = {0};
	bool open = false;
	uint64_t number;

	for (size_t i = 0; i < text.n; i++) {
		size_t mark = read_number(s, text, i, &number);

		if (mark && !open) {
			vec_push(b->arena, &found, s->value.v[number]);
			found.v[found.n - 1].text.beg = (uint32_t)b->n;
			open = true;
			i += mark - 1;
		} else if (text.p[i] == MARK_END && open) {
			found.v[found.n - 1].text.end = (uint32_t)b->n;
			open = false;
		} else if ((unsigned char)text.p[i] >= ' ') {
			buf_put_char(b, text.p[i]);
		}
	}
	*count = open ? found.n - 1 : found.n;
	return found.v;
}
