/* SPDX-License-Identifier: ISC */
/*
 * What a recipe reads like in other units and for other numbers: the draft is
 * restyled once for each variant, and each text is kept once.
 */
#include "page/variants.h"

#include "write/escape.h"
#include "write/text.h"

struct texts {
	struct str unique[VARIANTS];
	unsigned char uniques;
	unsigned char index[VARIANTS];
};

struct variants {
	struct arena *arena;
	const struct ties *ties;
	struct texts **of; /* [thing * LINE_PIECES + piece]; NULL all empty */
};

static const struct {
	struct ratio by;
	const char *words; /* where a dish has no yield to name it by */
} times[VARIANT_TIMES] = {
    {{1, 2}, "half of it"},
    {{1, 1}, "as written"},
    {{3, 2}, "one and a half times"},
    {{2, 1}, "twice"},
    {{3, 1}, "three times"},
    {{4, 1}, "four times"},
};
enum { ONCE = 1 };

/* ---- collecting --------------------------------------------------------- */

static void
add(struct variants *v, size_t variant, uint32_t thing, enum piece_of_line piece,
    struct str text)
{
	struct texts **at = &v->of[thing * LINE_PIECES + piece];
	struct buf line = buf_in(v->arena);
	size_t i = 0;

	if (text.n == 0 && !*at)
		return;
	/* The blank before a bracket counts here. */
	if (text.n && text.p[0] == ' ')
		buf_put_char(&line, ' ');
	escape_line(&line, text);
	if (!*at) {
		*at = arena_new(v->arena, struct texts);
		(*at)->uniques = variant > 0; /* it was empty up to now */
	}
	while (i < (*at)->uniques && !str_is((*at)->unique[i], buf_str(&line)))
		i++;
	if (i == (*at)->uniques)
		(*at)->unique[(*at)->uniques++] = buf_str(&line);
	(*at)->index[variant] = (unsigned char)i;
}

static void
add_part(struct variants *v, size_t variant, const struct house *h, const struct draft *d,
    size_t dish, size_t part)
{
	const struct part *p = &d->dish[dish].part[part];

	for (size_t i = 0; i < p->ingredients; i++) {
		struct line line = line_of(d->arena, h, &p->ingredient[i]);
		uint32_t thing = thing_ingredient(v->ties, dish, part, i);

		for (int k = 0; k < LINE_PIECES; k++)
			add(v, variant, thing, (enum piece_of_line)k, line.piece[k]);
	}
	for (size_t i = 0; i < p->steps; i++)
		add(v, variant, thing_step(v->ties, dish, part, i), LINE_QUANTITY,
		    p->step[i].text);
}

/* The draft is restyled in an arena of its own, which goes at once. */
static void
add_variant(struct variants *v, size_t variant, const struct grammar *g,
    const struct tamis_style *style)
{
	struct arena scratch;
	struct draft copy = *v->ties->draft;
	const struct draft *d;
	struct house h;

	arena_init(&scratch);
	copy.arena = &scratch;
	d = tamis_restyle(&copy, g, style);
	h = house_of(d, g, style);
	for (size_t i = 0; i < d->dishes; i++) {
		struct buf yield = buf_in(&scratch);

		text_yield(&yield, &h, &d->dish[i]);
		add(v, variant, thing_yield(v->ties, i), LINE_QUANTITY, buf_str(&yield));
		for (size_t k = 0; k < d->dish[i].parts; k++)
			add_part(v, variant, &h, d, i, k);
	}
	arena_release(&scratch);
}

struct variants *
variants_of(const struct ties *t, const struct grammar *g, const struct tamis_style *style)
{
	struct variants *v = arena_new(t->arena, struct variants);
	const enum tamis_units units[VARIANT_UNITS] = {
	    style->units == UNITS_BOTH ? UNITS_BOTH : UNITS_SAID, UNITS_METRIC, UNITS_US};

	v->arena = t->arena;
	v->ties = t;
	v->of = arena_array(t->arena, (size_t)t->things * LINE_PIECES + 1, struct texts *);
	for (size_t i = 0; i < VARIANTS; i++) {
		struct tamis_style one = *style;

		one.units = units[i / VARIANT_TIMES];
		one.scale = times[i % VARIANT_TIMES].by;
		one.servings = 0;
		add_variant(v, i, g, &one);
	}
	return v;
}

/* ---- lines -------------------------------------------------------------- */

static void
put_after(struct buf *b, struct str text)
{
	if (text.n == 0)
		return;
	buf_put_z(b, ", ");
	buf_put(b, text);
}

static struct str
rest_of(struct arena *a, const struct house *h, const struct ingredient *in)
{
	struct buf rest = buf_in(a), note = buf_in(a);

	put_after(&rest, in->preparation);
	text_note(&note, in);
	put_after(&rest, buf_str(&note));
	for (size_t i = 0; i < in->alternatives; i++) {
		buf_put_z(&rest, ", or ");
		text_alternative(&rest, h, in, &in->alternative[i]);
	}
	if (in->optional)
		put_after(&rest, STR("optional"));
	return buf_str(&rest);
}

struct line
line_of(struct arena *a, const struct house *h, const struct ingredient *in)
{
	struct buf quantity = buf_in(a), item = buf_in(a), other = buf_in(a);
	struct buf brackets = buf_in(a);

	text_quantity(&quantity, h, in);
	text_item(&item, h, in);
	text_other(&other, h, in);
	if (other.n)
		buf_fmt(&brackets, " (%.*s)", (int)other.n, other.v);
	return (struct line){
	    {buf_str(&quantity), buf_str(&item), buf_str(&brackets), rest_of(a, h, in)}};
}

/* ---- putting ------------------------------------------------------------ */

static void
put_texts(struct buf *out, const struct texts *t)
{
	buf_put_z(out, " data-v=\"");
	for (size_t i = 0; i < t->uniques; i++) {
		if (i > 0)
			buf_put_z(out, "&#10;");
		escape_html(out, t->unique[i]);
	}
	buf_put_z(out, "\" data-i=\"");
	for (size_t i = 0; i < VARIANTS; i++)
		buf_put_char(out, (char)('a' + t->index[i]));
	buf_put_char(out, '"');
}

void
variants_put(struct buf *out, const struct variants *v, uint32_t thing,
    enum piece_of_line piece, struct str now)
{
	static const char *const class[LINE_PIECES] = {"q", "item", "other", "rest"};
	const struct texts *t = v ? v->of[thing * LINE_PIECES + piece] : NULL;

	if (now.n == 0 && !t)
		return;
	buf_fmt(out, "<span class=\"%s\"", class[piece]);
	if (t && t->uniques > 1)
		put_texts(out, t);
	buf_put_char(out, '>');
	escape_html(out, now);
	buf_put_z(out, "</span>");
}

void
variants_put_times(struct buf *out, const struct variants *v, size_t dish)
{
	const struct texts *t =
	    v->of[thing_yield(v->ties, dish) * LINE_PIECES + LINE_QUANTITY];
	struct buf title = buf_in(out->arena);

	text_dish_title(&title, &v->ties->draft->dish[dish]);
	buf_put_z(
	    out, "<p class=\"scale\" hidden><label>Make <select aria-label=\"How much of ");
	escape_html(out, buf_str(&title));
	buf_put_z(out, "\">");
	for (size_t i = 0; i < VARIANT_TIMES; i++) {
		buf_fmt(out, "<option value=\"%zu\"%s>", i, i == ONCE ? " selected" : "");
		buf_put_z(out, times[i].words);
		if (t && t->unique[t->index[i]].n) {
			buf_put_z(out, ": ");
			escape_html(out, t->unique[t->index[i]]);
		}
		buf_put_z(out, "</option>");
	}
	buf_put_z(out, "</select></label></p>\n");
}

size_t
variants_units(const struct tamis_style *style)
{
	if (style->units == UNITS_METRIC)
		return 1;
	return style->units == UNITS_US ? 2 : 0;
}
