/* SPDX-License-Identifier: ISC */
/*
 * What the value of an answer says, read as a script would be: "400 °F",
 * "1½ tablespoons", "4 servings", "medium-high", "until the juices run clear".
 */
#include "answer/answers.h"
#include "scan/measure.h"

struct reader {
	const struct answers *w;
	struct chart chart;
	struct value *out;
};

static struct script *
script_of(struct arena *a, struct str text)
{
	struct script *s = arena_new(a, struct script);
	struct cue *cue = arena_new(a, struct cue);

	*cue = (struct cue){
	    .kind = CUE_SPEECH, .beg_ms = -1, .end_ms = -1, .text = {0, (uint32_t)text.n}};
	s->text = text;
	s->cue = cue;
	s->cues = 1;
	return s;
}

static bool
entry_has(const struct reader *r, uint32_t token, const char *class_name)
{
	unsigned id = grammar_class(r->w->g, class_name);

	return id < CLASSES_MAX &&
	       classset_has(&r->chart.tokens.token.v[token].entry->classes, id);
}

/* The word after the number: what is counted. */
static struct str
noun_at(const struct reader *r, uint32_t token)
{
	static const char *const classes[] = {"UNIT", "DISH", "FOOD", "PARTHEAD"};
	const struct token *t;

	while (token < r->chart.tokens.token.n &&
	       (entry_has(r, token, "OF") || entry_has(r, token, "AMOUNTADJ") ||
		   entry_has(r, token, "FOODMOD")))
		token++;
	if (token >= r->chart.tokens.token.n)
		return STR("");
	t = &r->chart.tokens.token.v[token];
	if (entry_has(r, token, "SERVING") || str_is_z(t->norm, "of"))
		return STR("serving");
	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++) {
		const struct reading *x =
		    entry_reading(t->entry, grammar_class(r->w->g, classes[i]));

		if (x)
			return x->lexeme->lemma;
	}
	return arena_str(r->w->a, t->norm);
}

static void
take_measure(struct reader *r, const struct said *s)
{
	struct value *v = r->out;

	if (v->measured) {
		if (v->kind == MEASURE_TEMPERATURE && s->kind == MEASURE_DURATION &&
		    s->value.known && s->value.unit && s->value.unit->has_base)
			v->hold_ms =
			    1000 * ratio_round(unit_to_base(s->value.unit, s->value.min));
		return;
	}
	v->measured = true;
	v->kind = s->kind;
	v->amount = s->value;
	v->unit_stated = s->unit_stated;
}

static void
take_number(struct reader *r, const struct node *n)
{
	struct quantity q;

	if (r->out->measured || !value_number(&r->chart, n, &q))
		return;
	r->out->measured = true;
	r->out->kind = MEASURE_COUNT;
	r->out->amount = (struct amount){true, true, q.min, q.max, NULL};
	r->out->noun = noun_at(r, n->end);
}

/* All words are of a heat level: "medium-high", "low heat". */
static struct str
heat_of(const struct reader *r)
{
	struct buf b = buf_in(r->w->a);

	for (uint32_t i = 0; i < r->chart.tokens.token.n; i++) {
		const struct token *t = &r->chart.tokens.token.v[i];

		if (entry_has(r, i, "HEATWORD") || entry_has(r, i, "STOP") ||
		    entry_has(r, i, "BREAK"))
			continue;
		if (!entry_has(r, i, "HEATLEVEL"))
			return STR("");
		if (b.n)
			buf_put_char(&b, t->flags & TOKEN_HYPHEN ? '-' : ' ');
		buf_put(&b, t->norm);
	}
	return buf_str(&b);
}

struct value
value_read(const struct answers *w, struct str text)
{
	struct value v = {.words = text};
	struct reader r = {.w = w, .out = &v};
	const struct level *l;

	chart_make(&r.chart, w->g, script_of(w->a, text), w->a);
	l = chart_level(&r.chart, "compound");
	for (size_t i = 0; l && i < l->node.n; i++) {
		const struct node *n = &l->node.v[i];
		struct said s;

		if (n->made == RAW)
			continue;
		if (measure_of(&r.chart, w->d->region, n, &s))
			take_measure(&r, &s);
		else
			take_number(&r, n);
	}
	v.heat = heat_of(&r);
	return v;
}
