/* SPDX-License-Identifier: ISC */
/*
 * Makes the ingredients and steps of every part, clause by clause: sentences
 * gather in a step until its time or its cue is told.
 */
#include "assemble/sentence.h"

#include "base/print.h"

enum { SENTENCES_MAX = 3, PENDING_MAX = 24, SETTINGS_MAX = 8, STEP_USES_MAX = 64 };

struct setting {
	const char *appliance;
	struct temperature temperature;
};

/* The step being written and what hangs over it. */
struct stepper {
	struct maker *m;
	int dish, part;
	struct step step;
	struct buf text;
	unsigned sentences;
	bool open, full; /* full: its time or cue is told */
	uint32_t use[STEP_USES_MAX];
	size_t uses;
	struct str pending[PENDING_MAX]; /* foods brought in, not yet used */
	size_t pendings;
	const struct node *pending_node;
	struct setting setting[SETTINGS_MAX]; /* of this dish's appliances */
	size_t settings;
	const char *hot;     /* the appliance that the dish was last in or on */
	bool loose;          /* the script has next to no punctuation */
	uint32_t cue;        /* of the last sentence */
	bool past;           /* a story of what happened once goes on */
	struct mention last; /* a food just said without an amount */
};

static struct part *
part_now(const struct stepper *k)
{
	return &k->m->d->dish[k->dish].part[k->part];
}

static void
push_step(struct stepper *k)
{
	struct part *p = part_now(k);
	size_t n = p->steps;

	if (n == 0 || (n >= 8 && (n & (n - 1)) == 0))
		p->step = arena_grow(k->m->a, p->step, n, n ? n * 2 : 8, sizeof *p->step);
	p->step[n] = k->step;
	p->steps++;
}

static void
close_step(struct stepper *k)
{
	if (k->open && k->text.n) {
		buf_put_char(&k->text, '.');
		k->step.text = buf_str(&k->text);
		k->step.use = arena_grow(k->m->a, k->use, k->uses, k->uses, sizeof *k->use);
		k->step.uses = k->uses;
		push_step(k);
	}
	k->open = k->full = false;
	k->sentences = 0;
	k->uses = 0;
}

static void
open_step(struct stepper *k, const struct node *at)
{
	k->step = (struct step){.recast = true, .place = place_of_node(k->m, at)};
	k->text = buf_in(k->m->a);
	k->open = true;
}

static void
add_sentence(struct stepper *k, struct str s, const struct node *at)
{
	if (!s.n || (k->open && k->text.n && str_ends(buf_str(&k->text), s)))
		return;
	if (k->open && (k->full || k->sentences >= SENTENCES_MAX))
		close_step(k);
	if (!k->open)
		open_step(k, at);
	if (k->text.n)
		buf_put_z(&k->text, ". ");
	buf_put(&k->text, s);
	k->sentences++;
}

static void
use_ingredient(struct stepper *k, int at)
{
	if (at < 0)
		return;
	part_now(k)->ingredient[at].used = true;
	for (size_t i = 0; i < k->uses; i++)
		if (k->use[i] == (uint32_t)at)
			return;
	if (k->uses < STEP_USES_MAX)
		k->use[k->uses++] = (uint32_t)at;
}

/* ---- settings: the oven's temperature stays until it is changed --------- */

static struct setting *
setting_of(struct stepper *k, const char *appliance)
{
	for (size_t i = 0; i < k->settings; i++)
		if (str_is(str_of(k->setting[i].appliance), str_of(appliance)))
			return &k->setting[i];
	if (k->settings == SETTINGS_MAX)
		return &k->setting[SETTINGS_MAX - 1];
	k->setting[k->settings] = (struct setting){.appliance = appliance};
	return &k->setting[k->settings++];
}

static bool
has_setting(const char *appliance)
{
	return appliance && !str_is(str_of(appliance), STR("stove")) &&
	       !str_is(str_of(appliance), STR("microwave"));
}

/* "350, that's 180 Celsius": the setting once more, in another scale. */
static bool
says_again(const struct deed *d, const struct temperature *set)
{
	return d->restates && !d->named && set->unit && d->temperature.unit != set->unit;
}

static void
take_heat(struct stepper *k, const struct deed *d)
{
	struct step *s = &k->step;
	const char *appliance = d->appliance          ? d->appliance
				: s->appliance        ? s->appliance
				: has_setting(k->hot) ? k->hot
						      : NULL;

	if (!s->appliance || (d->heats && d->appliance))
		s->appliance = appliance;
	if (d->temperature.present) {
		if (d->temperature.unit && (d->temperature.role == ROLE_APPLIANCE ||
					       d->temperature.role == ROLE_OIL)) {
			const char *target = d->temperature.role == ROLE_OIL ? "fryer"
					     : has_setting(appliance)        ? appliance
									     : "oven";

			if (!says_again(d, &setting_of(k, target)->temperature))
				setting_of(k, target)->temperature = d->temperature;
			if (!s->appliance)
				s->appliance = target;
		}
		if (!s->temperature.unit)
			s->temperature = d->temperature;
	} else if (d->heats && has_setting(appliance) && !s->temperature.present) {
		s->temperature = setting_of(k, appliance)->temperature;
		s->temperature.inherited = s->temperature.present;
	}
}

/* ---- what a clause adds to the open step -------------------------------- */

static bool
is_main(const struct deed *d)
{
	return d->duration.present || d->heats || d->doneness.text.n || d->doneness.known;
}

static void
take_deed(struct stepper *k, const struct deed *d)
{
	struct step *s = &k->step;
	bool main = is_main(d);

	if (d->action.n && (!s->action.n || (main && !s->duration.present))) {
		s->action = d->action;
		s->passive = d->passive;
	}
	s->heats = s->heats || d->heats;
	s->preheats = s->preheats || str_is_z(d->kind, "preheat") ||
		      (!d->heats && d->temperature.present && has_setting(d->appliance) &&
			  !d->foods && !d->duration.present);
	take_heat(k, d);
	if (d->duration.present && s->duration.present && d->duration.known &&
	    s->duration.known) {
		s->duration.min_ms += d->duration.min_ms;
		s->duration.max_ms += d->duration.max_ms;
	} else if (d->duration.present) {
		s->duration = d->duration;
	}
	if (d->doneness.text.n && !s->doneness.text.n)
		s->doneness.text = d->doneness.text;
	if (d->doneness.known && !s->doneness.known) {
		struct str text = s->doneness.text;

		s->doneness = d->doneness;
		s->doneness.text = text;
	}
	if (s->doneness.place.span.end == 0)
		s->doneness.place = d->doneness.place;
	k->full = k->full || d->duration.present ||
		  (d->heats && (d->doneness.text.n || d->doneness.known));
}

/* Kinds of action whose bare object is an ingredient: "season with pepper". */
static bool
takes_food(const struct deed *d)
{
	static const char *const kinds[] = {"add", "mix", "season", "garnish", "coat",
	    "heat", "finish", "marinate", "cut", "serve"};

	for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++)
		if (str_is_z(d->kind, kinds[i]))
			return true;
	return d->light || str_is_z(d->kind, "move");
}

static bool
is_generic(const struct maker *m, const struct mention *x)
{
	const struct entry *e = lexicon_find(&m->g->lexicon, lexicon_key(m->a, x->key));

	return str_is_z(x->group, "water") ||
	       (e && entry_reading(e, grammar_class(m->g, "GENERICFOOD")));
}

/* Seldom measured, so that a bare mention brings it in. */
static bool
is_seasoning(const struct mention *x)
{
	static const char *const groups[] = {"salt", "pepper", "herb"};

	for (size_t i = 0; i < sizeof groups / sizeof *groups; i++)
		if (str_is_z(x->group, groups[i]))
			return true;
	return false;
}

/* Is the node part of a dish's name, said where the cook turns to it? */
static bool
is_in_name(const struct maker *m, const struct node *n)
{
	const struct level *l = chart_level(&m->c, "outline");
	struct field_nodes f;

	for (size_t i = 0; l && i < l->node.n && l->node.v[i].beg <= n->beg; i++)
		if (l->node.v[i].end > n->beg && node_is(&m->c, &l->node.v[i], "OPEN") &&
		    node_field(&m->c, &l->node.v[i], "name", &f) && f.v[0].beg <= n->beg &&
		    f.v[f.n - 1].end >= n->end)
			return true;
	return false;
}

static bool
tells_yield(const struct maker *m, uint32_t beg, uint32_t end)
{
	const struct level *yields = chart_level(&m->c, "yield");

	for (size_t i = 0; yields && i < yields->node.n && yields->node.v[i].beg < end; i++)
		if (yields->node.v[i].beg >= beg &&
		    node_is(&m->c, &yields->node.v[i], "YIELD"))
			return true;
	return false;
}

/* "last week", "one time": what is said after it happened once. */
static bool
tells_past(const struct maker *m, uint32_t beg, uint32_t end)
{
	unsigned past = grammar_class(m->g, "PASTTIME");

	for (uint32_t i = beg; i < end && past < CLASSES_MAX; i++)
		if (classset_has(&m->c.tokens.token.v[i].entry->classes, past))
			return true;
	return false;
}

/* A yield, or a story of what happened once: no instruction. */
static bool
is_told(const struct maker *m, const struct clause *q)
{
	const struct level *top = chart_top(&m->c);
	uint32_t beg = top->node.v[q->beg].beg, end = top->node.v[q->end - 1].end;

	if (q->verb < q->end)
		return tells_yield(m, beg, end) ||
		       tells_past(m, beg, top->node.v[q->verb].end);
	return tells_yield(m, beg, end) || tells_past(m, beg, end);
}

/* May this mention begin a line of the ingredient list? */
static bool
introduces(const struct stepper *k, const struct clause *q, const struct deed *d,
    const struct mention *x)
{
	bool measured = x->amount.known || x->size.known;

	if (q->kind == CLAUSE_NOT || q->other || k->past ||
	    tells_past(k->m, chart_top(&k->m->c)->node.v[q->beg].beg, x->node->beg))
		return false;
	if (q->kind == CLAUSE_CHAT)
		return x->amount.known && x->amount.unit;
	if (measured || x->amount.present)
		return true;
	if (is_generic(k->m, x) || is_in_name(k->m, x->node))
		return false;
	if (q->kind == CLAUSE_DO || q->kind == CLAUSE_GO)
		return takes_food(d);
	return !x->definite && (d->listing || is_seasoning(x));
}

/* "that's four cups of milk", "there's four cups in it": tells, adds nothing. */
static bool
states_again(const struct maker *m, const struct clause *q)
{
	const struct node *verb =
	    q->verb < q->end ? &chart_top(&m->c)->node.v[q->verb] : NULL;

	return q->kind == CLAUSE_BE ||
	       (q->kind == CLAUSE_HAVE && verb &&
		   str_is_z(m->c.made.v[verb->made].rule->name, "have.there"));
}

static bool
is_pending(const struct stepper *k, struct str item)
{
	for (size_t i = 0; i < k->pendings; i++)
		if (str_is(k->pending[i], item))
			return true;
	return false;
}

static void
add_foods(
    struct stepper *k, const struct clause *q, const struct deed *d, const struct node *n)
{
	struct mention x[MENTIONS_MAX];
	size_t count = mentions_of(k->m, n, x, MENTIONS_MAX);
	bool acts = q->kind != CLAUSE_NOT && q->kind != CLAUSE_CHAT;

	if (count == 1 && !x[0].amount.known)
		k->last = x[0];
	else
		k->last = (struct mention){0};
	if (!acts && q->other)
		return;
	for (size_t i = 0; i < count; i++) {
		x[i].aside = !acts || (!x[i].more && states_again(k->m, q));
		int at = ingredient_add(
		    k->m, k->dish, k->part, &x[i], introduces(k, q, d, &x[i]));

		if (acts)
			use_ingredient(k, at);
		if (acts && at >= 0)
			vec_push(k->m->a, &k->m->counted, place_of_node(k->m, n).span);
		if (acts && q->kind != CLAUSE_DO && k->pendings < PENDING_MAX && at >= 0 &&
		    !is_pending(k, x[i].item) && !x[i].definite) {
			k->pending[k->pendings++] = x[i].item;
			if (k->pendings == 1)
				k->pending_node = n;
		}
	}
}

static void
add_equipment(struct stepper *k, const struct node *n)
{
	struct dish *d = &k->m->d->dish[k->dish];
	const struct reading *r = node_reading(&k->m->c, n, "EQUIP");
	size_t count = d->equipments;

	if (!r || lexeme_has(r->lexeme, "part"))
		return;
	for (size_t i = 0; i < count; i++)
		if (str_is(d->equipment[i].item, r->lexeme->lemma))
			return;
	if (count == 0 || (count >= 4 && (count & (count - 1)) == 0))
		d->equipment = arena_grow(k->m->a, d->equipment, count,
		    count ? count * 2 : 4, sizeof *d->equipment);
	d->equipment[count] =
	    (struct equipment){.item = r->lexeme->lemma, .place = place_of_node(k->m, n)};
	d->equipments++;
	struct field_nodes size;
	struct said dims[DIMS_MAX];

	if (node_field(&k->m->c, n, "size", &size)) {
		if (measure_dims(&k->m->c, k->m->region, size.v, dims))
			d->equipment[count].size = dims[0].value;
		else if (measure_of(&k->m->c, k->m->region, size.v, &dims[0]))
			d->equipment[count].size = dims[0].value;
	}
}

/* "The blackberries were free. You want two hundred grams": an amount alone
 * belongs to the food just said. */
static void
add_amount_alone(struct stepper *k, const struct clause *q, const struct node *n)
{
	struct said s;
	struct mention x = k->last;

	if (!x.item.n || q->kind == CLAUSE_CHAT || q->kind == CLAUSE_NOT || q->other ||
	    !measure_of(&k->m->c, k->m->region, n, &s) || s.kind != MEASURE_AMOUNT ||
	    !s.value.known || !s.value.unit || s.value.unit->dimension == DIM_COUNT)
		return;
	x.amount = s.value;
	x.definite = false;
	x.node = n;
	ingredient_add(k->m, k->dish, k->part, &x, true);
	k->last = (struct mention){0};
}

static void
add_things(struct stepper *k, const struct clause *q, const struct deed *d)
{
	const struct level *top = chart_top(&k->m->c);
	bool seen_food = false;

	for (uint32_t i = q->beg; i < q->end; i++) {
		const struct node *n = &top->node.v[i];
		struct field_nodes f;

		if (node_is(&k->m->c, n, "ING") || node_is(&k->m->c, n, "INGS")) {
			add_foods(k, q, d, n);
			seen_food = true;
		}
		if (node_field(&k->m->c, n, "thing", &f) ||
		    node_field(&k->m->c, n, "object", &f))
			if (node_is(&k->m->c, f.v, "ING") || node_is(&k->m->c, f.v, "INGS"))
				add_foods(k, q, d, f.v);
		if (!seen_food && node_is(&k->m->c, n, "AMT"))
			add_amount_alone(k, q, n);
		if (q->kind != CLAUSE_NOT && q->kind != CLAUSE_CHAT &&
		    node_is(&k->m->c, n, "EQ"))
			add_equipment(k, n);
	}
}

/* "the flour, sugar and salt" */
static struct str
list_of(const struct stepper *k)
{
	struct buf b = buf_in(k->m->a);

	for (size_t i = 0; i < k->pendings; i++) {
		buf_put_z(&b, i == 0 ? "the " : i + 1 == k->pendings ? " and " : ", ");
		buf_put(&b, k->pending[i]);
	}
	return buf_str(&b);
}

static void
flush_pending(struct stepper *k)
{
	struct str list = list_of(k);
	bool first = !k->open && part_now(k)->steps == 0;

	if (k->pendings == 0)
		return;
	add_sentence(k,
	    arena_fmt(k->m->a, "%s %.*s", first && k->pendings > 1 ? "Combine" : "Add",
		(int)list.n, list.p),
	    k->pending_node);
	if (!k->step.action.n)
		k->step.action = first && k->pendings > 1 ? STR("combine") : STR("add");
	k->pendings = 0;
}

static bool
is_worth_writing(const struct deed *d)
{
	if (!d->anything && (d->light || !d->kind.n))
		return false;
	if (d->light && !d->foods && !d->equipment && !d->thing &&
	    !d->temperature.present && !d->duration.present && !d->doneness.text.n)
		return false;
	return true;
}

/* "flip it and another five minutes": more of the step under way. */
static bool
goes_on(const struct stepper *k, const struct deed *d)
{
	return k->open && k->step.duration.known && k->step.heats && !d->foods &&
	       k->sentences < SENTENCES_MAX &&
	       ((d->more && d->duration.known) ||
		   (str_is_z(d->kind, "flip") && !d->duration.present));
}

static struct writing
writing_of(const struct stepper *k, const struct clause *q, const struct deed *d)
{
	return (struct writing){
	    .m = k->m, .clause = q, .deed = d, .loose = k->loose, .part = part_now(k)};
}

/* Does "it" or "them" mean the foods just brought in? Several are mixed or
 * cooked together; what is done to "them" by cutting is what was there. */
static bool
means_pending(const struct stepper *k, const struct deed *d)
{
	return k->pendings == 1 || (k->pendings > 1 && !str_is_z(d->kind, "cut"));
}

static void
write_clause(struct stepper *k, const struct clause *q, const struct deed *d)
{
	uint32_t verb = q->verb < q->end ? q->verb : q->beg;
	const struct node *at = &chart_top(&k->m->c)->node.v[verb];
	struct writing w = writing_of(k, q, d);
	struct str s;

	if ((d->pronoun || d->thing) && means_pending(k, d))
		w.pending = list_of(k);
	else if (d->foods == 0 || k->pendings > 1)
		flush_pending(k);
	s = sentence_write(&w);
	if (w.used_pending)
		k->pendings = 0;
	else
		flush_pending(k);
	if (goes_on(k, d))
		k->full = false;
	add_sentence(k, s, at);
	add_things(k, q, d);
	k->pendings = 0;
	if (s.n || d->temperature.present || d->duration.present)
		take_deed(k, d);
}

static void
have_clause(struct stepper *k, const struct clause *q, const struct deed *d)
{
	bool timed = d->duration.present || d->temperature.present;

	if (d->keeping)
		return;
	if (d->foods == 0)
		add_things(k, q, d);
	if (d->foods && !(timed && d->action.n) && !(d->equipment && !k->loose))
		add_things(k, q, d);
	else if (d->foods || timed || d->doneness.known)
		write_clause(k, q, d);
}

/* "don't stir it", "do not open the lid for five minutes"; what one need not
 * or cannot do is no instruction. */
static void
not_clause(struct stepper *k, const struct clause *q, struct deed *d)
{
	const struct node *verb = &chart_top(&k->m->c)->node.v[q->verb];
	struct str first = node_token(&k->m->c, verb)->norm;

	if (!d->action.n || d->light || !d->kind.n || q->action != d->lexeme ||
	    !(str_is_z(first, "do") || str_is_z(first, "don't") ||
		str_is_z(first, "never"))) {
		add_things(k, q, d);
		return;
	}
	if (d->duration.present) {
		d->action = STR("rest");
		d->passive = true;
		d->heats = false;
	}
	write_clause(k, q, d);
}

/* Keeps in mind where the food is: an oil's temperature makes a fryer of a pot. */
static void
follow_heat(struct stepper *k, const struct deed *d)
{
	if (d->temperature.unit && d->temperature.role == ROLE_OIL)
		k->hot = "fryer";
	else if (d->appliance &&
		 (d->named || d->heats || d->temperature.present ||
		     str_is_z(str_of(d->appliance), "stove")) &&
		 !(k->hot && str_is_z(str_of(k->hot), "fryer") &&
		     str_is_z(str_of(d->appliance), "stove")))
		k->hot = d->appliance;
	else if (d->temperature.heat.n && !k->hot)
		k->hot = "stove";
}

/* "let's make the cornbread": turns to a dish, does nothing yet. */
static bool
makes_named(const struct maker *m, const struct clause *q, const struct deed *d)
{
	const struct level *top = chart_top(&m->c);

	for (uint32_t i = q->beg; d->light && d->foods == 1 && i < q->end; i++)
		if (node_is(&m->c, &top->node.v[i], "ING"))
			return is_in_name(m, &top->node.v[i]);
	return false;
}

static struct str
reading_words(const struct stepper *k, const struct deed *d)
{
	struct buf b = buf_in(k->m->a);

	print_temperature(&b, d->doneness.min, d->doneness.max, d->doneness.unit, true);
	return buf_str(&b);
}

/* A thermometer's reading told apart belongs to the cooking before it. */
static void
attach_reading(struct stepper *k, const struct deed *d)
{
	struct part *p = part_now(k);
	struct step *s = k->open && k->step.heats ? &k->step : NULL;

	for (size_t i = p->steps; !s && i-- > 0;)
		if (p->step[i].heats)
			s = &p->step[i];
	if (!s || s->doneness.known)
		return;
	struct str text = s->doneness.text;

	s->doneness = d->doneness;
	s->doneness.text = text;
	if (s != &k->step)
		s->text =
		    arena_fmt(k->m->a, "%.*s It should read %.*s inside.", (int)s->text.n,
			s->text.p, (int)reading_words(k, d).n, reading_words(k, d).p);
	else if (k->text.n)
		buf_fmt(&k->text, ". It should read %.*s inside",
		    (int)reading_words(k, d).n, reading_words(k, d).p);
}

/* A verb without a subject before it. */
static bool
is_imperative(const struct maker *m, const struct clause *q)
{
	struct field_nodes f;
	const struct node *verb =
	    q->verb < q->end ? &chart_top(&m->c)->node.v[q->verb] : NULL;

	return q->kind == CLAUSE_DO && verb && node_field(&m->c, verb, "verb", &f) &&
	       f.v[0].beg == verb->beg;
}

/* A story goes on to the end of its sentence, or to "so", "okay", "today". */
static void
follow_story(struct stepper *k, const struct clause *q)
{
	const struct level *top = chart_top(&k->m->c);
	const struct node *first = &top->node.v[q->beg];
	uint32_t end = top->node.v[q->end - 1].end;

	if (q->sentence || node_has(&k->m->c, first, "BOUNDARY") || is_imperative(k->m, q))
		k->past = false;
	for (uint32_t i = first->beg; i < end; i++)
		if (str_is_z(k->m->c.tokens.token.v[i].norm, "today"))
			k->past = false;
}

static void
take_clause(struct stepper *k, const struct clause *q)
{
	struct deed d;

	follow_story(k, q);

	deed_read(k->m, q, &d);
	if (q->kind != CLAUSE_NOT && q->kind != CLAUSE_CHAT)
		deed_imply(k->m, q, k->hot, &d);
	roles_of_clause(k->m, q, &d);
	if (q->kind != CLAUSE_CHAT)
		follow_heat(k, &d);
	if (d.doneness.known && !d.heats)
		attach_reading(k, &d);
	switch (q->kind) {
	case CLAUSE_DO:
	case CLAUSE_GO:
		if (is_worth_writing(&d) && !d.keeping && !k->past && !is_told(k->m, q) &&
		    !makes_named(k->m, q, &d))
			write_clause(k, q, &d);
		else
			add_things(k, q, &d);
		break;
	case CLAUSE_NOT:
		not_clause(k, q, &d);
		break;
	case CLAUSE_CHAT:
		add_things(k, q, &d);
		break;
	case CLAUSE_HAVE:
	case CLAUSE_BE:
	case CLAUSE_BARE:
		have_clause(k, q, &d);
		break;
	}
	if (tells_past(k->m, chart_top(&k->m->c)->node.v[q->beg].beg,
		chart_top(&k->m->c)->node.v[q->end - 1].end))
		k->past = true;
}

static bool
is_listed(const struct maker *m, const struct clause *q)
{
	return m->s->cue[q->cue].kind == CUE_LIST || m->s->cue[q->cue].kind == CUE_ONSCREEN;
}

static void
move_to(struct stepper *k, const struct clause *q)
{
	if (k->dish == q->dish && k->part == q->part)
		return;
	if (k->dish >= 0) {
		flush_pending(k);
		close_step(k);
	}
	if (k->dish != q->dish) {
		if (k->dish >= 0)
			k->settings = 0;
		if (k->hot && !str_is_z(str_of(k->hot), "fryer"))
			k->hot = NULL;
	}
	k->dish = q->dish;
	k->part = q->part;
}

/* Less than one full stop in forty words: machine captions. */
static bool
is_loose(const struct maker *m)
{
	size_t stops = 0;

	for (size_t i = 0; i < m->c.tokens.token.n; i++)
		stops += str_is_z(m->c.tokens.token.v[i].norm, ".");
	return stops * 40 < m->c.tokens.token.n;
}

static void
list_clause(struct stepper *k, const struct clause *q)
{
	struct part *p = part_now(k);
	size_t before = p->ingredients;
	struct deed d;

	deed_read(k->m, q, &d);
	d.listing = true;
	add_things(k, q, &d);
	k->pendings = 0;
	k->uses = 0;
	for (size_t i = before; i < p->ingredients; i++) {
		p->ingredient[i].listed = true;
		p->ingredient[i].used = false;
	}
}

/* An oven set before the first dish is opened is set for it. */
static void
set_before(struct stepper *k, const struct clause *q)
{
	struct deed d;

	if (k->dish >= 0 || q->kind == CLAUSE_CHAT || q->kind == CLAUSE_NOT)
		return;
	deed_read(k->m, q, &d);
	if (d.temperature.unit && d.named && d.temperature.role == ROLE_APPLIANCE)
		setting_of(k, d.appliance)->temperature = d.temperature;
}

void
steps_make(struct maker *m)
{
	struct stepper k = {.m = m, .dish = -1, .part = -1, .loose = is_loose(m)};

	for (size_t i = 0; i < m->clause.n; i++) {
		const struct clause *q = &m->clause.v[i];

		if (q->dish < 0) {
			set_before(&k, q);
			continue;
		}
		move_to(&k, q);
		if (is_listed(m, q)) {
			list_clause(&k, q);
			continue;
		}
		if (k.open && k.cue != q->cue && m->s->cue[q->cue].paragraph &&
		    k.sentences) {
			flush_pending(&k);
			close_step(&k);
		}
		k.cue = q->cue;
		take_clause(&k, q);
	}
	if (k.dish >= 0) {
		flush_pending(&k);
		close_step(&k);
	}
}
