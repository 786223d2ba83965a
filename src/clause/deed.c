/* SPDX-License-Identifier: ISC */
/*
 * Reads a clause: what is done, with what heat, for how long, until when.
 */
#include "clause/sentence.h"

/* What takes longer is no step of a meal. */
#define FORTNIGHT_MS ((int64_t)14 * 24 * 3600 * 1000)

struct deed_reader {
	const struct maker *m;
	const struct clause *q;
	const struct level *top;
	struct deed *d;
};

static bool
raw_is(const struct deed_reader *r, uint32_t at, const char *class_name)
{
	return at < r->top->node.n && r->top->node.v[at].made == RAW &&
	       node_has(&r->m->c, &r->top->node.v[at], class_name);
}

static bool
word_is(const struct deed_reader *r, uint32_t at, const char *word)
{
	return at < r->top->node.n && r->top->node.v[at].made == RAW &&
	       str_is_z(node_token(&r->m->c, &r->top->node.v[at])->norm, word);
}

bool
says_token(const struct maker *m, uint32_t beg, uint32_t end, const char *word)
{
	for (uint32_t i = beg; i < end; i++)
		if (str_is_z(m->c.tokens.token.v[i].norm, word))
			return true;
	return false;
}

int64_t
ms_of(const struct amount *a, bool max)
{
	struct ratio v = max ? a->max : a->min;

	if (!a->known)
		return -1;
	if (a->unit && a->unit->has_base)
		v = unit_to_base(a->unit, v);
	return ratio_round(ratio_mul(v, ratio_int(1000)));
}

const struct unit *
scale_of(const struct maker *m, const struct said *s, bool internal)
{
	bool fahrenheit = str_is_z(str_of(m->region), "us");

	if (s->value.unit || !s->value.known)
		return s->value.unit;
	/* no food is done at 99 °F, nor at 123 °C; no oven is set to 276 °C */
	if (!fahrenheit)
		fahrenheit = ratio_order(s->value.max, ratio_int(internal ? 122 : 275)) > 0;
	else if (internal && ratio_order(s->value.min, ratio_int(100)) < 0)
		fahrenheit = false;
	return grammar_unit(
	    m->g, fahrenheit ? STR("fahrenheit") : STR("celsius"), m->region);
}

/* ---- the clause's parts ------------------------------------------------- */

static void
read_temperature(struct deed_reader *r, uint32_t at, const struct said *s)
{
	const struct node *n = &r->top->node.v[at];
	enum measure_role role = deed_role(r->m, r->q, at);
	struct temperature *t = &r->d->temperature;

	const struct measure *x =
	    measure_at(r->m, script_source(r->m->s, node_text(&r->m->c, n)));

	if (role == ROLE_AMBIENT || (x && x->converted))
		return;
	if (role == ROLE_INTERNAL) {
		struct doneness *d = &r->d->doneness;

		/* "if it says one thirty, back in it goes" */
		if (says_token(r->m, r->top->node.v[r->q->beg].beg, n->beg, "if"))
			return;
		if (d->known)
			return;
		d->known = true;
		d->min = s->value.min;
		d->max = s->value.max;
		d->unit = scale_of(r->m, s, true);
		d->unit_stated = s->unit_stated;
		if (d->place.span.end == 0)
			d->place = place_of_node(r->m, n);
		return;
	}
	if (t->present && t->unit)
		return;
	t->present = true;
	t->min = s->value.min;
	t->max = s->value.max;
	t->unit = scale_of(r->m, s, false);
	t->unit_stated = s->unit_stated;
	t->role = role;
	t->place = place_of_node(r->m, n);
}

/* "every ten minutes", "after about five minutes": no length of the step. */
static bool
is_aside_time(const struct deed_reader *r, uint32_t at)
{
	uint32_t i = at;

	while (i > r->q->beg && (raw_is(r, i - 1, "APPROX") || raw_is(r, i - 1, "ADV") ||
				    word_is(r, i - 1, "the")))
		i--;
	return i > r->q->beg &&
	       (word_is(r, i - 1, "every") || word_is(r, i - 1, "after") ||
		   word_is(r, i - 1, "in") || word_is(r, i - 1, "within") ||
		   word_is(r, i - 1, "last") || word_is(r, i - 1, "those") ||
		   word_is(r, i - 1, "these") || word_is(r, i - 1, "been") ||
		   word_is(r, i - 1, "its"));
}

static bool
is_claim(const struct maker *m, const struct node *n)
{
	const struct level *l = chart_level(&m->c, "claim");
	const struct node *at = l ? level_at(l, n->beg) : NULL;

	return at && at->end >= n->end && node_is(&m->c, at, "CLAIM");
}

/* "keeps two days in the fridge": how long it lasts, not how long it takes. */
static bool
is_keeping(const struct deed_reader *r, uint32_t at)
{
	static const char *const words[] = {
	    "keeps", "keep", "lasts", "last", "leftovers", "leftover", "good", "left"};
	uint32_t token = r->top->node.v[at].beg;
	uint32_t beg = r->top->node.v[r->q->beg].beg;

	if (!says_token(r->m, token, r->top->node.v[at].end, "days") &&
	    !says_token(r->m, token, r->top->node.v[at].end, "weeks") &&
	    !says_token(r->m, token, r->top->node.v[at].end, "week"))
		return false;
	for (size_t i = 0; i < sizeof words / sizeof *words; i++)
		if (says_token(r->m, token > beg + 8 ? token - 8 : beg, token, words[i]))
			return true;
	return false;
}

/* "two minutes a side", "on each side": twice the time. "Two minutes on the first
 * side" is not. */
static bool
says_side(const struct deed_reader *r, uint32_t at)
{
	static const char *const words[] = {
	    "a side", "each side", "per side", "either side", "both sides"};
	const struct token *t = r->m->c.tokens.token.v;
	size_t end = r->top->node.v[at].end;

	for (size_t i = end; i + 1 < r->m->c.tokens.token.n && i < end + 4; i++)
		for (size_t k = 0; k < sizeof words / sizeof *words; k++) {
			struct str word = str_of(words[k]), first = str_next(&word, ' ');

			if (str_ends(t[i].norm, str_of(words[k])) ||
			    (str_is(t[i].norm, first) && str_is(t[i + 1].norm, word)))
				return true;
		}
	return false;
}

static void
read_duration(struct deed_reader *r, uint32_t at, const struct said *s)
{
	struct duration *d = &r->d->duration;
	int64_t min = ms_of(&s->value, false), max = ms_of(&s->value, true);

	if (r->q->kind == CLAUSE_BARE &&
	    says_token(r->m, r->top->node.v[r->q->beg].beg, r->top->node.v[at].beg, "can"))
		return;
	r->d->keeping = r->d->keeping || is_keeping(r, at);
	if (r->d->keeping || is_claim(r->m, &r->top->node.v[at]) || max > FORTNIGHT_MS)
		return;
	if (is_aside_time(r, at)) {
		r->d->time_cue = true;
		return;
	}
	for (uint32_t i = at > r->q->beg + 2 ? at - 2 : r->q->beg; i < at; i++)
		r->d->more = r->d->more || raw_is(r, i, "ANOTHER");
	r->d->more =
	    r->d->more || word_is(r, at + 1, "more") || word_is(r, at + 1, "longer");
	if (says_side(r, at) && s->value.known) {
		min *= 2, max *= 2;
		d->sides = true;
	}
	if (d->present && d->known && s->value.known && r->d->more) {
		d->min_ms += min, d->max_ms += max;
		return;
	}
	if (d->present && (d->known || !s->value.known))
		return;
	d->present = true;
	d->known = s->value.known;
	d->min_ms = min;
	d->max_ms = max;
}

static void
read_heat(struct deed_reader *r, uint32_t at)
{
	const struct node *n = &r->top->node.v[at];
	struct field_nodes f;
	struct node level;

	if (!node_field(&r->m->c, n, "level", &f))
		return;
	level = (struct node){f.v[0].beg, f.v[f.n - 1].end, RAW};
	r->d->temperature.present = true;
	r->d->temperature.heat = fold_heat(r->m, &level);
	if (r->d->temperature.place.span.end == 0)
		r->d->temperature.place = place_of_node(r->m, n);
}

static void
read_until(struct deed_reader *r, uint32_t at)
{
	const struct node *first = &r->top->node.v[at + 1 < r->q->end ? at + 1 : at];
	uint32_t end = at + 1;
	struct node words = {first->beg, first->end, RAW};

	while (end < r->q->end && !raw_is(r, end, "COMMA") && !raw_is(r, end, "BECAUSE") &&
	       !raw_is(r, end, "REL") && !raw_is(r, end, "BUT") && !raw_is(r, end, "MARK"))
		words.end = r->top->node.v[end++].end;
	if (end == at + 1 || r->d->doneness.text.n)
		return;
	r->d->doneness.text = words_of(r->m, node_text(&r->m->c, &words));
	r->d->doneness.place = place_of_node(r->m, &words);
}

static void
read_equipment(struct deed_reader *r, uint32_t at)
{
	const struct reading *e = node_reading(&r->m->c, &r->top->node.v[at], "EQUIP");
	struct str appliance = e ? lexeme_get(e->lexeme, "appliance") : STR("");
	struct str implied = e ? lexeme_get(e->lexeme, "implies") : STR("");
	bool into = false;

	r->d->equipment = true;
	/* "a spoon of oil from the fryer" */
	for (uint32_t i = at > r->q->beg + 2 ? at - 2 : r->q->beg; i < at; i++)
		if (word_is(r, i, "from"))
			return;
	for (uint32_t i = at > r->q->beg + 3 ? at - 3 : r->q->beg; i < at; i++)
		into = into || raw_is(r, i, "PLACEPREP");
	if (appliance.n) {
		r->d->appliance = appliance.p;
		r->d->named = true;
		r->d->moves_into = into;
	} else if (implied.n && !r->d->appliance) {
		r->d->appliance = implied.p;
	}
}

/* "let those go soft", "let that reduce": a state that is waited for. */
static struct str
state_waited_for(const struct deed_reader *r, uint32_t at)
{
	struct str s = {NULL, 0};

	if (at <= r->q->verb || r->d->doneness.text.n)
		return s;
	if (raw_is(r, at, "STATEVERB") && !raw_is(r, at, "ACTION"))
		return words_of(r->m, node_text(&r->m->c, &r->top->node.v[at]));
	if (raw_is(r, at + 1, "STATE") &&
	    (word_is(r, at, "go") || word_is(r, at, "get") || word_is(r, at, "turn")))
		return words_of(r->m, node_text(&r->m->c, &r->top->node.v[at + 1]));
	return s;
}

static void
read_node(struct deed_reader *r, uint32_t at)
{
	const struct node *n = &r->top->node.v[at];
	const struct chart *c = &r->m->c;
	struct field_nodes f;
	struct said s;

	if (node_is(c, n, "ING") || node_is(c, n, "INGS")) {
		r->d->foods++;
		r->d->listing = r->d->listing || node_field(c, n, "amount", &f);
		r->d->oil = r->d->oil || (!node_field(c, n, "amount", &f) &&
					     says_token(r->m, n->beg, n->end, "oil"));
	} else if (node_is(c, n, "EQ"))
		read_equipment(r, at);
	else if (node_is(c, n, "HEAT"))
		read_heat(r, at);
	else if (node_is(c, n, "VDUR"))
		r->d->time_cue = true;
	else if (raw_is(r, at, "UNTIL"))
		read_until(r, at);
	else if (state_waited_for(r, at).n)
		r->d->doneness.text = state_waited_for(r, at);
	else if (raw_is(r, at, "PRON") && at > r->q->verb)
		r->d->pronoun = true;
	else if (raw_is(r, at, "EQUIP") && node_reading(c, n, "EQUIP"))
		read_equipment(r, at);
	if (node_field(c, n, "thing", &f) || node_field(c, n, "object", &f)) {
		r->d->thing = true;
		r->d->foods += node_is(c, f.v, "ING") || node_is(c, f.v, "INGS");
	}
	if (n->made != RAW && measure_of(c, r->m->region, n, &s)) {
		if (s.kind == MEASURE_TEMPERATURE)
			read_temperature(r, at, &s);
		else if (s.kind == MEASURE_DURATION)
			read_duration(r, at, &s);
	}
}

static bool
may_stand_between(const struct deed_reader *r, uint32_t at)
{
	const struct node *n = &r->top->node.v[at];
	static const char *const classes[] = {
	    "PRON", "DET", "ADV", "FILLER", "TOWORD", "QUANT"};

	if (node_is(&r->m->c, n, "ING") || node_is(&r->m->c, n, "INGS") ||
	    node_is(&r->m->c, n, "EQ"))
		return true;
	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++)
		if (raw_is(r, at, classes[i]))
			return true;
	return false;
}

/* "let it rest", "leave that to cool", "keep stirring": the second verb says
 * what is done. */
static const struct lexeme *
second_verb(const struct deed_reader *r, uint32_t *at)
{
	static const char *const classes[] = {"ACTION", "ACTION_ING"};

	for (uint32_t i = r->q->verb + 1; i < r->q->end; i++) {
		const struct node *n = &r->top->node.v[i];

		for (size_t k = 0; k < 2; k++) {
			const struct reading *a = node_reading(&r->m->c, n, classes[k]);

			if (a && !lexeme_has(a->lexeme, "light") &&
			    (n->made == RAW || node_is(&r->m->c, n, "VTO") ||
				node_is(&r->m->c, n, "VING")) &&
			    !raw_is(r, i, "PREP")) {
				*at = i;
				return a->lexeme;
			}
		}
		if (!may_stand_between(r, i))
			break;
	}
	return NULL;
}

static void
take_action(struct deed_reader *r, const struct lexeme *l)
{
	struct str appliance = lexeme_get(l, "appliance");

	r->d->lexeme = l;
	r->d->action = written_verb(r->m->a, l);
	r->d->kind = lexeme_get(l, "kind");
	r->d->heats = lexeme_has(l, "heats");
	r->d->passive = lexeme_has(l, "passive");
	if (appliance.n && !r->d->named)
		r->d->appliance = appliance.p;
}

/* "bring that up to the boil": the phrase whose object stands inside it. */
static const struct lexeme *
boil_of(const struct deed_reader *r, const struct lexeme *l)
{
	uint32_t beg = r->top->node.v[r->q->beg].beg,
		 end = r->top->node.v[r->q->end - 1].end;
	bool boil = says_token(r->m, beg, end, "boil");
	struct str phrase;
	const struct reading *a;

	if (!str_is_z(l->lemma, "bring") && !str_is_z(l->lemma, "come") &&
	    !str_is_z(l->lemma, "get"))
		return NULL;
	if (!boil && !says_token(r->m, beg, end, "simmer"))
		return NULL;
	phrase = str_of(!boil                                    ? "bring to a simmer"
			: says_token(r->m, beg, end, "the boil") ? "bring to the boil"
								 : "bring to a boil");
	if (boil && str_is_z(str_of(r->m->region), "uk"))
		phrase = STR("bring to the boil");
	a = entry_reading(
	    lexicon_find(&r->m->g->lexicon, phrase), grammar_class(r->m->g, "ACTION"));
	return a ? a->lexeme : NULL;
}

static void
settle_action(struct deed_reader *r)
{
	const struct lexeme *l = r->q->action, *second = NULL;

	r->d->at = r->q->verb;
	r->d->light = l && lexeme_has(l, "light");
	if (l && (r->d->light || str_is_z(lexeme_get(l, "kind"), "rest") ||
		     str_is_z(lexeme_get(l, "kind"), "move")))
		second = second_verb(r, &r->d->at);
	if (!second && l)
		second = boil_of(r, l);
	if (second) {
		r->d->light = false;
		l = second;
	}
	if (l)
		take_action(r, l);
}

void
deed_read(const struct maker *m, const struct clause *q, struct deed *out)
{
	struct deed_reader r = {m, q, chart_top(&m->c), out};

	*out = (struct deed){.restates = q->kind == CLAUSE_BE};
	for (uint32_t i = q->beg; i < q->end; i++)
		read_node(&r, i);
	settle_action(&r);
	out->anything = out->foods || out->equipment || out->pronoun || out->thing ||
			out->temperature.present || out->duration.present ||
			out->doneness.text.n || out->doneness.known;
}
