/* SPDX-License-Identifier: ISC */
/*
 * Reads the frame of a clause: the words around the verb, sorted by what they
 * say and put in printed form. What is no part of cooking falls away here.
 *
 *     "pop | that | in the oven | for about twenty minutes | until it's golden"
 */
#include "clause/framer.h"

#include "base/print.h"
#include "grammar/inflect.h"

static struct str
with_about(struct framer *r, struct str s)
{
	bool about = r->about;

	r->about = false;
	return about ? arena_fmt(r->m->a, "about %.*s", (int)s.n, s.p) : s;
}

/* After "four minutes": "a side", "on each side". */
static bool
skip_to_side(struct framer *r)
{
	for (uint32_t i = r->at; i < r->at + 3; i++)
		if (word(r, i, "side") || word(r, i, "sides")) {
			r->at = i + 1;
			return true;
		}
	return false;
}

bool
frame_measure(struct framer *r)
{
	const struct node *n = node_at(r, r->at);
	struct said s;
	struct buf b = buf_in(r->m->a);

	if (!n || n->made == RAW || !measure_of(&r->m->c, r->m->region, n, &s))
		return false;
	r->at++;
	if (s.kind == MEASURE_DURATION) {
		bool sides = word(r, r->at, "a") || word(r, r->at, "per") ||
			     word(r, r->at, "each") || word(r, r->at, "on");

		if (!s.value.known)
			buf_put_z(&b, "overnight");
		else
			print_duration(&b, ms_of(&s.value, false), ms_of(&s.value, true));
		if (sides && skip_to_side(r))
			buf_put_z(&b, " per side");
		if (!r->f->duration.n)
			r->f->duration = with_about(r, buf_str(&b));
	} else if (s.kind == MEASURE_TEMPERATURE) {
		bool inside = deed_role(r->m, r->w->clause, r->at - 1) == ROLE_INTERNAL;
		struct str *to = inside ? &r->f->reading : &r->f->temperature;

		s.value.unit = scale_of(r->m, &s, inside);
		slot_put_temperature(r->m->slots, &b, &s.value, inside);
		if (!to->n)
			*to = with_about(r, buf_str(&b));
	}
	r->about = false;
	return true;
}

void
frame_heat(struct framer *r)
{
	struct field_nodes f;

	if (!r->f->heat.n && node_field(&r->m->c, node_at(r, r->at), "level", &f))
		r->f->heat =
		    fold_heat(r->m, &(struct node){f.v[0].beg, f.v[f.n - 1].end, RAW});
	r->at++;
}

static bool
take_lid(struct framer *r)
{
	if (!(made(r, r->at, "EQ") || is(r, r->at, "EQUIP")) ||
	    !preposition_is_lid(r, r->at))
		return false;
	if (word(r, r->at + 1, "on") || word(r, r->at + 1, "goes") ||
	    word(r, r->at + 1, "back"))
		r->f->covered = true;
	else if (word(r, r->at + 1, "off"))
		r->f->uncovered = true;
	else
		return false;
	r->at += 2;
	return true;
}

void
frame_object(struct framer *r)
{
	struct str s;

	if (is_food(r, r->at)) {
		struct str food[FRAME_FOODS_MAX];
		size_t n = phrase_foods(r, food, FRAME_FOODS_MAX);

		for (size_t i = 0; i < n && r->f->foods < FRAME_FOODS_MAX; i++)
			if (!phrase_holds(r->f->food, r->f->foods, food[i]))
				r->f->food[r->f->foods++] = food[i];
		return;
	}
	r->f->plural = phrase_is_pronoun(r, r->at) &&
		       phrase_is_plural(node_token(&r->m->c, node_at(r, r->at))->norm);
	r->f->tool = r->f->tool || made(r, r->at, "EQ") || made(r, r->at + 1, "EQ");
	s = phrase_take(r);
	if (s.n && !r->f->object.n)
		r->f->object = s;
	if (!s.n)
		r->at++;
}

static void
take_doing(struct framer *r)
{
	add(r, &r->f->doing, said(r, r->at));
	for (r->at++;
	     is(r, r->at, "MANNER") || (is(r, r->at, "ADV") && !is(r, r->at, "MARK"));
	     r->at++)
		add(r, &r->f->doing, said(r, r->at));
}

static void
take_purpose(struct framer *r)
{
	struct str p = said(r, r->at), phrase;

	r->at++;
	phrase = phrase_take(r);
	add(r, &p, phrase);
	if (!r->f->purpose.n)
		r->f->purpose = p;
}

/* A reason, an aside, another's doing: nothing of it is written. */
static bool
cuts(const struct framer *r, uint32_t at)
{
	bool object = at == r->w->deed->at + 1 && phrase_is_pronoun(r, at);

	return is(r, at, "BECAUSE") || (is(r, at, "REL") && !object) || is(r, at, "WH") ||
	       (is(r, at, "SUBJ") && !is(r, at, "PRON")) || is(r, at, "BUT") ||
	       is(r, at, "SORRY") || is(r, at, "DOTS") || is(r, at, "COND") ||
	       made(r, at, "VCHAT") || made(r, at, "VHAVE") || made(r, at, "VBE") ||
	       is(r, at, "WHEN") || is(r, at, "NEG");
}

static bool
resumes(const struct framer *r, uint32_t at)
{
	return is(r, at, "UNTIL") ||
	       (is(r, at, "PREP") &&
		   (made(r, at + 1, "DUR") || made(r, at + 1, "TEMP") ||
		       (is(r, at + 1, "APPROX") && made(r, at + 2, "DUR"))));
}

/* "cut rounds", "roll out four flatbreads": what shaping makes, in the cook's words. */
static bool
take_pieces(struct framer *r)
{
	bool number = made(r, r->at, "NUM") || made(r, r->at, "AMT");
	uint32_t at = r->at + number;
	struct str kind = r->w->deed->kind;

	if (r->f->object.n || r->f->foods ||
	    !(str_is_z(kind, "cut") || str_is_z(kind, "shape")) ||
	    r->at > r->w->deed->at + 2)
		return false;
	if (!is(r, at, "PIECE") && !(number && is(r, at, "DISH")) && !made(r, r->at, "AMT"))
		return false;
	r->f->object = said(r, r->at++);
	if (number && (is(r, at, "PIECE") || is(r, at, "DISH")))
		add(r, &r->f->object, said(r, r->at++));
	return true;
}

/* "half of them" */
static void
take_share(struct framer *r)
{
	struct str s = said(r, r->at);

	if (!r->f->object.n)
		r->f->object = arena_fmt(r->m->a, "%.*s of %s", (int)s.n, s.p,
		    phrase_is_plural(node_token(&r->m->c, node_at(r, r->at + 2))->norm)
			? "them"
			: "it");
	r->at += 3;
}

/* "go soft" -> "soft" */
static struct str
after_go(struct str s)
{
	return str_starts(s, STR("go ")) || str_starts(s, STR("get ")) ||
		       str_starts(s, STR("turn "))
		   ? str_cut(s, str_find_char(s, ' ') + 1, s.n)
		   : s;
}

/* "pat it dry", "roll the dough thin": what the object becomes stands right behind
 * it; elsewhere it is told of another thing. */
static bool
tells_state(const struct framer *r)
{
	uint32_t at = r->at;

	if (!is(r, at, "STATE") && !made(r, at, "PREPPH"))
		return false;
	while (at > 0 && (is(r, at - 1, "ADV") || is(r, at - 1, "FILLER")))
		at--;
	return at > 0 && (is(r, at - 1, "PRON") || is_food(r, at - 1) ||
			     made(r, at - 1, "EQ") || is(r, at - 1, "THING"));
}

/* "all over the top", "up to the edges" */
static bool
leads_place(const struct framer *r)
{
	return (is(r, r->at, "OVERWORD") || is(r, r->at, "UPTO")) &&
	       (is(r, r->at + 1, "DET") || is(r, r->at + 1, "ART")) &&
	       is(r, r->at + 2, "THING");
}

/* "let them crackle" -> "they crackle", "let it go soft" -> "soft" */
static void
take_becoming(struct framer *r)
{
	struct str s = said(r, r->at++), state = after_go(s);
	size_t word = str_find_char(s, ' ');

	if (state.n < s.n)
		r->f->until = state;
	else if (r->f->plural)
		r->f->until = arena_fmt(r->m->a, "they %.*s", (int)s.n, s.p);
	else if (r->f->object.n == 0 || str_is_z(r->f->object, "it"))
		r->f->until = arena_fmt(r->m->a, "it %.*s%.*s",
		    (int)inflect_s(r->m->a, str_cut(s, 0, word)).n,
		    inflect_s(r->m->a, str_cut(s, 0, word)).p, (int)(s.n - word),
		    s.p + word);
	else
		r->f->until = s;
}

/* "thirteen minutes, tops golden": a cue without its verb. */
static bool
take_cue(struct framer *r)
{
	struct str thing = said(r, r->at);

	if (!r->w->deed->heats || r->f->until.n || !is(r, r->at, "THING") ||
	    !is(r, r->at + 1, "STATE") || (r->at > 0 && is(r, r->at - 1, "PREP")))
		return false;
	r->f->until = arena_fmt(r->m->a, "the %.*s %s %.*s", (int)thing.n, thing.p,
	    str_ends(thing, STR("s")) ? "are" : "is", (int)said(r, r->at + 1).n,
	    said(r, r->at + 1).p);
	r->at += 2;
	return true;
}

static void
take_one(struct framer *r)
{
	if (is(r, r->at, "UNTIL"))
		until_take(r);
	else if (made(r, r->at, "HEAT"))
		frame_heat(r);
	else if (take_lid(r) || take_cue(r))
		;
	else if (take_pieces(r) || frame_measure(r))
		;
	else if (made(r, r->at, "VING"))
		take_doing(r);
	else if (made(r, r->at, "VTO"))
		take_purpose(r);
	else if (is_food(r, r->at) || made(r, r->at, "EQ") || phrase_is_pronoun(r, r->at))
		frame_object(r);
	else if (made(r, r->at, "NUM") && word(r, r->at + 1, "of") &&
		 phrase_is_pronoun(r, r->at + 2))
		take_share(r);
	else if (is(r, r->at, "PREP") || is(r, r->at, "PARTICLE") ||
		 is(r, r->at, "PLACEPREP") || leads_place(r))
		preposition_take(r);
	else if (word(r, r->at, "somewhere") && is(r, r->at + 1, "STATE")) {
		add(r, &r->f->manner, STR("somewhere"));
		add(r, &r->f->manner, said(r, r->at + 1));
		r->at += 2;
	} else if (is(r, r->at, "OVERWORD") && r->f->places == 0 && !r->w->deed->heats)
		r->f->place[r->f->places++] = said(r, r->at++);
	else if (is(r, r->at, "MANNER") || is(r, r->at, "PREPADV"))
		add(r, &r->f->manner, said(r, r->at++));
	else if (is(r, r->at, "STATEVERB") && !is(r, r->at, "ACTION") && !r->f->until.n) {
		take_becoming(r);
	} else if ((word(r, r->at, "go") || word(r, r->at, "get") ||
		       word(r, r->at, "turn")) &&
		   is(r, r->at + 1, "STATE") && !r->f->until.n) {
		r->f->until = said(r, r->at + 1);
		r->at += 2;
	} else if (tells_state(r))
		add(r, &r->f->manner, said(r, r->at++));
	else if (is(r, r->at, "DET") || is(r, r->at, "ART"))
		frame_object(r);
	else
		r->at++;
}

static void
read_range(struct framer *r, uint32_t beg, uint32_t end)
{
	r->at = beg;
	r->end = end;
	r->skipping = false;
	while (r->at < r->end) {
		uint32_t before = r->at;

		if (resumes(r, r->at))
			r->skipping = false;
		else if (cuts(r, r->at))
			r->skipping = true;
		r->or_before = r->at > beg && is(r, r->at - 1, "OR");
		if (r->skipping || is(r, r->at, "COMMA")) {
			r->at++;
			continue;
		}
		if (is(r, r->at, "APPROX") && !is(r, r->at, "PREP")) {
			r->about = true;
			r->at++;
			continue;
		}
		take_one(r);
		if (r->at == before)
			r->at++;
	}
}

static void
read_before(struct framer *r, const struct clause *q, uint32_t verb)
{
	uint32_t beg = q->beg;

	while (beg < verb && (is(r, beg, "FILLER") || is(r, beg, "MARK") ||
				 is(r, beg, "COMMA") || is(r, beg, "AND")))
		beg++;
	if (beg < verb && is(r, beg, "PLACEPREP")) {
		read_range(r, beg, verb);
		for (size_t i = 0; i < r->f->places; i++)
			add(r, &r->f->before, r->f->place[i]);
		r->f->places = 0;
	} else {
		for (uint32_t i = beg; i < verb; i++)
			if (made(r, i, "HEAT") || made(r, i, "TEMP") || made(r, i, "DUR")) {
				r->at = i;
				take_one(r);
			}
	}
}

static void
read_thing(struct framer *r, const struct node *verb)
{
	struct field_nodes f;
	static const char *const fields[] = {"thing", "object"};

	for (size_t i = 0; i < 2; i++) {
		struct mention x[MENTIONS_MAX];
		size_t n;

		if (!node_field(&r->m->c, verb, fields[i], &f))
			continue;
		n = mentions_of(r->m, f.v, x, MENTIONS_MAX);
		for (size_t k = 0; k < n; k++)
			r->f->food[r->f->foods++] = phrase_food(r, f.v, &x[k]);
		if (n == 0)
			r->f->object = phrase_is_plural(node_token(&r->m->c, f.v)->norm)
					   ? STR("them")
					   : STR("it");
	}
}

void
frame_read(struct writing *w, struct frame *f)
{
	const struct clause *q = w->clause;
	struct framer r = {.w = w, .f = f, .m = w->m, .top = chart_top(&w->m->c)};
	uint32_t from = q->verb < q->end ? q->verb + 1 : q->beg;

	*f = (struct frame){0};
	r.end = q->end;
	if (q->verb < q->end) {
		read_before(&r, q, q->verb);
		read_thing(&r, &r.top->node.v[q->verb]);
	}
	r.end = q->end;
	if (w->deed->at > q->verb && w->deed->at < q->end) {
		read_range(&r, from, w->deed->at);
		from = w->deed->at + 1;
	}
	read_range(&r, from, q->end);
}
