/* SPDX-License-Identifier: ISC */
/*
 * Reads the frame of a clause: the words around the verb, sorted by what they
 * say and put in printed form. What is no part of cooking falls away here.
 *
 *     "pop | that | in the oven | for about twenty minutes | until it's golden"
 */
#include "assemble/sentence.h"

#include "base/print.h"

struct framer {
	struct writing *w;
	struct frame *f;
	const struct maker *m;
	const struct level *top;
	uint32_t at, end;
	bool skipping; /* in a reason or an aside */
	bool about;    /* "about" before a measure */
	bool or_before;
};

static const struct node *
node_at(const struct framer *r, uint32_t at)
{
	return at < r->end ? &r->top->node.v[at] : NULL;
}

static bool
is(const struct framer *r, uint32_t at, const char *class_name)
{
	const struct node *n = node_at(r, at);

	return n && n->made == RAW && node_has(&r->m->c, n, class_name);
}

static bool
made(const struct framer *r, uint32_t at, const char *class_name)
{
	const struct node *n = node_at(r, at);

	return n && node_is(&r->m->c, n, class_name);
}

static bool
word(const struct framer *r, uint32_t at, const char *z)
{
	const struct node *n = node_at(r, at);

	return n && n->made == RAW && str_is_z(node_token(&r->m->c, n)->norm, z);
}

static bool
is_food(const struct framer *r, uint32_t at)
{
	return made(r, at, "ING") || made(r, at, "INGS");
}

static struct str
lower(const struct framer *r, struct str s)
{
	char *p = arena_alloc(r->m->a, s.n + 1, 1);

	for (size_t i = 0; i < s.n; i++)
		p[i] = to_lower(s.p[i]);
	return (struct str){p, s.n};
}

static struct str
said(const struct framer *r, uint32_t at)
{
	return lower(r, words_of(r->m, node_text(&r->m->c, node_at(r, at))));
}

static void
add(const struct framer *r, struct str *to, struct str more)
{
	if (more.n)
		*to = to->n ? arena_fmt(r->m->a, "%.*s %.*s", (int)to->n, to->p,
				  (int)more.n, more.p)
			    : more;
}

/* ---- foods -------------------------------------------------------------- */

static bool
is_divided(const struct framer *r, const struct mention *x)
{
	const struct part *p = r->w->part;

	for (size_t i = 0; p && i < p->ingredients; i++)
		if (str_is(p->ingredient[i].key, x->key))
			return p->ingredient[i].divided;
	return false;
}

/* "half the sugar", "the rest of the butter": the words before the food. */
static struct str
share_words(const struct framer *r, const struct node *n, const struct mention *x)
{
	struct field_nodes f;
	struct node before = *n;
	struct str share;
	static const char *const tails[] = {
	    " the", " your", " our", " my", " that", " this", " those", " these", " of"};

	if (!node_field(&r->m->c, n, "food", &f) || f.v[0].beg == n->beg)
		return x->item;
	before.end = f.v[0].beg;
	share = lower(r, words_of(r->m, node_text(&r->m->c, &before)));
	for (size_t i = 0; i < sizeof tails / sizeof *tails; i++)
		while (str_ends(share, str_of(tails[i])))
			share.n -= strlen(tails[i]);
	return arena_fmt(r->m->a, "%.*s%s the %.*s", (int)share.n, share.p,
	    str_ends(share, STR("half")) ? "" : " of", (int)x->item.n, x->item.p);
}

static struct str
food_words(const struct framer *r, const struct node *n, const struct mention *x)
{
	struct buf b = buf_in(r->m->a);

	if (x->share)
		return share_words(r, n, x);
	if (x->amount.known && is_divided(r, x)) {
		print_amount(&b, &x->amount);
		buf_put_z(&b, x->amount.unit ? " of the " : " of the ");
	} else {
		buf_put_z(&b, "the ");
	}
	buf_put(&b, x->item);
	return buf_str(&b);
}

static bool
holds(const struct str *list, size_t count, struct str words)
{
	for (size_t i = 0; i < count; i++)
		if (str_is(list[i], words))
			return true;
	return false;
}

/* A list of foods from r->at on: commas and "and" between them go. */
static size_t
take_foods(struct framer *r, struct str *out, size_t room)
{
	size_t count = 0;

	while (is_food(r, r->at)) {
		struct mention x[MENTIONS_MAX];
		const struct node *n = node_at(r, r->at);
		size_t found = mentions_of(r->m, n, x, MENTIONS_MAX);
		uint32_t next = r->at + 1;

		for (size_t i = 0; i < found && count < room; i++) {
			out[count] = food_words(r, n, &x[i]);
			count += !holds(out, count, out[count]);
		}
		while (is(r, next, "COMMA") || is(r, next, "AND") ||
		       is(r, next, "FILLER") || is(r, next, "MARK") || is(r, next, "PLUS"))
			next++;
		if (!is_food(r, next)) {
			r->at++;
			break;
		}
		r->at = next;
	}
	return count;
}

/* ---- noun phrases ------------------------------------------------------- */

static bool
is_pronoun(const struct framer *r, uint32_t at)
{
	if (!is(r, at, "PRON"))
		return false;
	return !is(r, at, "DET") || !node_at(r, at + 1) || is(r, at + 1, "PREP") ||
	       is(r, at + 1, "COMMA") || is(r, at + 1, "AND") ||
	       is(r, at + 1, "PARTICLE") || is(r, at + 1, "UNTIL") ||
	       is(r, at + 1, "ADV") || is(r, at + 1, "FILLER") || is(r, at + 1, "MARK") ||
	       node_at(r, at + 1)->made != RAW || is(r, at + 1, "STATE") ||
	       is(r, at + 1, "SUBJ");
}

static bool
is_plural(struct str s)
{
	return str_is_z(s, "them") || str_is_z(s, "those") || str_is_z(s, "these") ||
	       str_is_z(s, "em") || str_is_z(s, "'em") || str_is_z(s, "they") ||
	       str_is_z(s, "guys");
}

/* A word that may stand in a noun phrase of things that no list has. */
static bool
is_noun_word(const struct framer *r, uint32_t at)
{
	return is(r, at, "WORD") && !is(r, at, "PREP") && !is(r, at, "AND") &&
	       !is(r, at, "SUBJ") && !is(r, at, "AUX") && !is(r, at, "PRON") &&
	       !is(r, at, "FILLER") && !is(r, at, "MARK") && !is(r, at, "UNTIL") &&
	       !is(r, at, "WHEN") && !is(r, at, "REL") && !is(r, at, "BECAUSE") &&
	       !is(r, at, "COND") && !is(r, at, "BUT") && !is(r, at, "OR") &&
	       !is(r, at, "WH") && !is(r, at, "NEG") && !is(r, at, "DET") &&
	       !is(r, at, "ART");
}

static struct str take_phrase(struct framer *r);

/* "a pan of cold water", "the back of a fork" */
static struct str
with_of(struct framer *r, struct str words)
{
	uint32_t at = r->at;
	struct str more;

	if (!word(r, at, "of"))
		return words;
	r->at++;
	more = take_phrase(r);
	if (!more.n)
		r->at = at;
	if (str_starts(more, STR("the ")) && is_food(r, at + 1))
		more = str_cut(more, 4, more.n);
	return more.n ? arena_fmt(r->m->a, "%.*s of %.*s", (int)words.n, words.p,
			    (int)more.n, more.p)
		      : words;
}

static bool
is_thing(const struct framer *r, uint32_t at)
{
	static const char *const classes[] = {
	    "THING", "EQUIP", "GENERICFOOD", "DISH", "PARTHEAD", "FOOD", "FOODQ"};

	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++)
		if (is(r, at, classes[i]) || made(r, at, classes[i]))
			return true;
	return false;
}

/* "the top", "a deep cross", "its skin": the words, or "" and nothing taken. */
static struct str
take_noun(struct framer *r)
{
	struct str out = {NULL, 0};
	uint32_t at = r->at, last = 0;
	bool article = is(r, at, "ART"), definite = is(r, at, "DET");

	if (!article && !definite)
		return STR("");
	for (uint32_t i = at + 1;
	     i <= at + 4 && (is_noun_word(r, i) || made(r, i, "FOODQ")); i++)
		if (is_thing(r, i))
			last = i;
	if (last == 0)
		return STR("");
	add(r, &out, article ? said(r, at) : STR("the"));
	for (at++; at <= last; at++)
		add(r, &out, said(r, at));
	r->at = at;
	return with_of(r, out);
}

static struct str
equipment_words(struct framer *r, uint32_t det)
{
	struct str words = said(r, r->at);
	bool the = det != UINT32_MAX && !is(r, det, "ART");

	r->at++;
	if (det != UINT32_MAX)
		words = arena_fmt(r->m->a, "%.*s %.*s", the ? 3 : (int)said(r, det).n,
		    the ? "the" : said(r, det).p, (int)words.n, words.p);
	return with_of(r, words);
}

/* A noun phrase at r->at: a thing, foods, a pronoun, other words. */
static struct str
take_phrase(struct framer *r)
{
	struct str food[FRAME_FOODS_MAX];
	uint32_t at = r->at;

	while (is(r, at, "ADV") || is(r, at, "FILLER") || is(r, at, "APPROX") ||
	       made(r, at, "VAMT"))
		at++;
	if (made(r, at, "EQ")) {
		r->at = at;
		return equipment_words(r, UINT32_MAX);
	}
	if ((is(r, at, "ART") || is(r, at, "DET") || is(r, at, "QUANT")) &&
	    made(r, at + 1, "EQ")) {
		r->at = at + 1;
		return equipment_words(r, at);
	}
	if (is_food(r, at)) {
		r->at = at;
		return list_join(r->m->a, food, take_foods(r, food, FRAME_FOODS_MAX));
	}
	if (is_pronoun(r, at) && (word(r, at, "nothing") || word(r, at, "everything"))) {
		r->at = at + 1;
		return said(r, at);
	}
	if (is_pronoun(r, at)) {
		r->at = at + 1;
		return is_plural(node_token(&r->m->c, node_at(r, at))->norm) ? STR("them")
									     : STR("it");
	}
	r->at = at;
	return take_noun(r);
}

/* ---- parts of the frame -------------------------------------------------- */

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

static bool
take_measure(struct framer *r)
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
		print_temperature(
		    &b, s.value.min, s.value.max, scale_of(r->m, &s, false), false);
		if (!r->f->temperature.n)
			r->f->temperature = with_about(r, buf_str(&b));
	}
	r->about = false;
	return true;
}

static void
take_heat(struct framer *r)
{
	struct field_nodes f;

	if (!r->f->heat.n && node_field(&r->m->c, node_at(r, r->at), "level", &f))
		r->f->heat =
		    fold_heat(r->m, &(struct node){f.v[0].beg, f.v[f.n - 1].end, RAW});
	r->at++;
}

/* Foods that no verb follows: "and some sesame seeds on top". */
static bool
adds_food(const struct framer *r, uint32_t at)
{
	struct field_nodes f;

	return is_food(r, at) && node_field(&r->m->c, node_at(r, at), "amount", &f);
}

/* Ends the words of an "until". */
static bool
ends_until(const struct framer *r, uint32_t at, uint32_t from)
{
	if (is(r, at, "BECAUSE") || is(r, at, "REL") || is(r, at, "BUT") ||
	    is(r, at, "WHEN") || is(r, at, "MARK") || is(r, at, "UNTIL") ||
	    is(r, at, "DOTS") || is(r, at, "COND"))
		return true;
	if (is(r, at, "AND"))
		return made(r, at + 1, "VAMT") || made(r, at + 1, "VDO") ||
		       is(r, at + 2, "NEG") || adds_food(r, at + 1);
	if (is(r, at, "COMMA"))
		return !is(r, at + 1, "STATE") && !is(r, at + 1, "AND");
	if (made(r, at, "VDO") || made(r, at, "VHAVE") || made(r, at, "VCHAT"))
		return at > from + 1;
	return r->w->loose && at > from + 12;
}

static void
put_until_word(struct framer *r, struct buf *b, uint32_t at)
{
	const struct node *n = node_at(r, at);
	struct said s;
	struct str text = said(r, at);

	if (is(r, at, "FILLER") || word(r, at, "just") || word(r, at, "really") ||
	    word(r, at, "all") || (word(r, at, "nice") && word(r, at + 1, "and")))
		return;
	if (word(r, at, "and") && at && word(r, at - 1, "nice"))
		return;
	if (b->n && text.p[0] != '\'' && text.p[0] != ',')
		buf_put_char(b, ' ');
	if (n->made != RAW && measure_of(&r->m->c, r->m->region, n, &s) &&
	    s.kind == MEASURE_TEMPERATURE)
		print_temperature(
		    b, s.value.min, s.value.max, scale_of(r->m, &s, true), true);
	else if (is_food(r, at) && !str_starts(text, STR("the ")) &&
		 !str_starts(text, STR("your ")))
		buf_put(b, text);
	else if (str_starts(text, STR("your ")) || str_starts(text, STR("our ")))
		buf_fmt(b, "the %.*s", (int)(text.n - (text.p[0] == 'y' ? 5 : 4)),
		    text.p + (text.p[0] == 'y' ? 5 : 4));
	else
		buf_put(b, is(r, at, "DET") && !is(r, at, "PRON") ? STR("the") : text);
}

/* "until it's nice and golden" -> "until golden" */
static struct str
without_it_is(struct str s)
{
	static const char *const openings[] = {"it's ", "it is ", "they're ", "they are ",
	    "that's ", "that is ", "it 's ", "they 're ", "you know it's ", "it gets ",
	    "they get ", "it goes ", "it turns ", "it's all ", "you get "};

	for (size_t i = 0; i < sizeof openings / sizeof *openings; i++)
		if (str_starts(s, str_of(openings[i])))
			return str_cut(s, strlen(openings[i]), s.n);
	return s;
}

/* Words that cannot end a cue are taken off. */
static void
drop_loose_end(struct buf *b)
{
	static const char *const loose[] = {"and", "or", "so", "to", "the", "a", "it's",
	    "it", "you", "that", "do", "with", "of", "for", "in", "is", "'s", "they're",
	    "but", "if", "kind of", "like", "some", "this", "i", "don't", "then", "they",
	    "we"};
	bool again = true;

	while (again) {
		again = false;
		for (size_t i = 0; i < sizeof loose / sizeof *loose; i++) {
			size_t n = strlen(loose[i]);
			bool whole = b->n == n && str_is_z(buf_str(b), loose[i]);

			if (whole || (b->n > n && str_ends(buf_str(b), str_of(loose[i])) &&
					 b->v[b->n - n - 1] == ' ')) {
				b->n -= whole ? n : n + 1;
				again = true;
			}
		}
		while (b->n && (b->v[b->n - 1] == ' ' || b->v[b->n - 1] == ','))
			b->n--;
	}
}

static void
take_until(struct framer *r)
{
	struct buf b = buf_in(r->m->a);
	uint32_t from = r->at + 1;

	for (r->at++; r->at < r->end && !ends_until(r, r->at, from); r->at++)
		put_until_word(r, &b, r->at);
	while (b.n && (b.v[b.n - 1] == ' ' || b.v[b.n - 1] == ','))
		b.n--;
	drop_loose_end(&b);
	if (b.n && !r->f->until.n) {
		r->f->until = without_it_is(buf_str(&b));
		r->f->or_until = r->or_before;
	}
}

static bool
is_lid(const struct framer *r, uint32_t at)
{
	const struct node *n = node_at(r, at);

	for (uint32_t i = n ? n->beg : 0; n && i < n->end; i++)
		if (str_is_z(r->m->c.tokens.token.v[i].norm, "lid"))
			return true;
	return false;
}

static bool
take_lid(struct framer *r)
{
	if (!(made(r, r->at, "EQ") || is(r, r->at, "EQUIP")) || !is_lid(r, r->at))
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

static bool
is_appliance_at(const struct framer *r, uint32_t at)
{
	const struct reading *e =
	    node_at(r, at) ? node_reading(&r->m->c, node_at(r, at), "EQUIP") : NULL;

	return e && lexeme_get(e->lexeme, "appliance").n &&
	       !str_is_z(lexeme_get(e->lexeme, "kind"), "pan");
}

static void
take_object(struct framer *r)
{
	struct str s;

	if (is_food(r, r->at)) {
		struct str food[FRAME_FOODS_MAX];
		size_t n = take_foods(r, food, FRAME_FOODS_MAX);

		for (size_t i = 0; i < n && r->f->foods < FRAME_FOODS_MAX; i++)
			if (!holds(r->f->food, r->f->foods, food[i]))
				r->f->food[r->f->foods++] = food[i];
		return;
	}
	r->f->plural = is_pronoun(r, r->at) &&
		       is_plural(node_token(&r->m->c, node_at(r, r->at))->norm);
	s = take_phrase(r);
	if (s.n && !r->f->object.n)
		r->f->object = s;
	if (!s.n)
		r->at++;
}

/* "reserve half for the table": with these verbs, what for matters. */
static bool
keeps_purpose(const struct framer *r)
{
	static const char *const verbs[] = {
	    "reserve", "save", "keep", "set aside", "leave"};

	for (size_t i = 0; i < sizeof verbs / sizeof *verbs; i++)
		if (str_is_z(r->w->deed->action, verbs[i]))
			return true;
	return false;
}

/* "to the boil" is part of the verb; what stands before it too ("up"). */
static bool
is_boil(struct framer *r, uint32_t at)
{
	if (!word(r, at, "to") || !r->w->deed->lexeme ||
	    !str_starts(r->w->deed->lexeme->lemma, STR("bring to")))
		return false;
	for (r->at = at + 1; is(r, r->at, "ART") || is(r, r->at, "DET") ||
			     is(r, r->at, "FOODMOD") || word(r, r->at, "boil") ||
			     word(r, r->at, "simmer") || word(r, r->at, "rolling");)
		r->at++;
	r->f->particle.n = 0;
	return true;
}

/* A particle stands right after its verb or its object: "break it up". */
static bool
may_take_particle(const struct framer *r, uint32_t at)
{
	return at == r->w->deed->at + 1 ||
	       (at > 0 && (is(r, at - 1, "PRON") || is_food(r, at - 1) ||
			      made(r, at - 1, "EQ") || is(r, at - 1, "THING")));
}

/* A preposition and what follows it; a particle where nothing does. */
static void
take_preposition(struct framer *r)
{
	struct str prep = said(r, r->at), phrase;
	uint32_t start = r->at;
	bool appliance;

	r->at++;
	while (is(r, r->at, "APPROX")) {
		r->about = true;
		r->at++;
	}
	if (made(r, r->at, "DUR") || made(r, r->at, "TEMP")) {
		take_measure(r);
		return;
	}
	if (made(r, r->at, "HEAT")) {
		take_heat(r);
		return;
	}
	appliance = is_appliance_at(r, r->at) || is_appliance_at(r, r->at + 1);
	if (is_boil(r, start))
		return;
	if (word(r, r->at, "there") || word(r, r->at, "here")) {
		r->at++;
		return;
	}
	if (str_is_z(prep, "of") && is_food(r, r->at)) {
		take_object(r);
		return;
	}
	phrase = take_phrase(r);
	if (phrase.n == 0) {
		r->at = start + 1;
		if (is(r, start, "PARTICLE") && !r->f->particle.n && !r->f->places &&
		    may_take_particle(r, start))
			r->f->particle = prep;
		return;
	}
	if ((str_is_z(prep, "for") && !keeps_purpose(r)) ||
	    (r->w->deed->heats && str_is_z(prep, "with") && str_is_z(phrase, "it")))
		return;
	phrase =
	    arena_fmt(r->m->a, "%.*s %.*s", (int)prep.n, prep.p, (int)phrase.n, phrase.p);
	if (appliance)
		r->f->appliance = phrase;
	else if (r->f->places < PLACES_MAX)
		r->f->place[r->f->places++] = phrase;
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
	phrase = take_phrase(r);
	add(r, &p, phrase);
	if (!r->f->purpose.n)
		r->f->purpose = p;
}

/* A reason, an aside, another's doing: nothing of it is written. */
static bool
cuts(const struct framer *r, uint32_t at)
{
	return is(r, at, "BECAUSE") || is(r, at, "REL") || is(r, at, "WH") ||
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

/* "half of them" */
static void
take_share(struct framer *r)
{
	struct str s = said(r, r->at);

	if (!r->f->object.n)
		r->f->object = arena_fmt(r->m->a, "%.*s of %s", (int)s.n, s.p,
		    is_plural(node_token(&r->m->c, node_at(r, r->at + 2))->norm) ? "them"
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

static void
take_one(struct framer *r)
{
	if (is(r, r->at, "UNTIL"))
		take_until(r);
	else if (made(r, r->at, "HEAT"))
		take_heat(r);
	else if (take_lid(r))
		;
	else if (take_measure(r))
		;
	else if (made(r, r->at, "VING"))
		take_doing(r);
	else if (made(r, r->at, "VTO"))
		take_purpose(r);
	else if (is_food(r, r->at) || made(r, r->at, "EQ") || is_pronoun(r, r->at))
		take_object(r);
	else if (made(r, r->at, "NUM") && word(r, r->at + 1, "of") &&
		 is_pronoun(r, r->at + 2))
		take_share(r);
	else if (is(r, r->at, "PREP") || is(r, r->at, "PARTICLE") ||
		 is(r, r->at, "PLACEPREP"))
		take_preposition(r);
	else if (is(r, r->at, "MANNER") || is(r, r->at, "PREPADV"))
		add(r, &r->f->manner, said(r, r->at++));
	else if (is(r, r->at, "STATEVERB") && !is(r, r->at, "ACTION") && !r->f->until.n) {
		r->f->until = after_go(said(r, r->at));
		r->at++;
	} else if ((word(r, r->at, "go") || word(r, r->at, "get") ||
		       word(r, r->at, "turn")) &&
		   is(r, r->at + 1, "STATE") && !r->f->until.n) {
		r->f->until = said(r, r->at + 1);
		r->at += 2;
	} else if ((is(r, r->at, "STATE") || made(r, r->at, "PREPPH")) &&
		   (r->f->object.n || r->f->foods))
		add(r, &r->f->manner, said(r, r->at++));
	else if (is(r, r->at, "DET") || is(r, r->at, "ART"))
		take_object(r);
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
			r->f->food[r->f->foods++] = food_words(r, f.v, &x[k]);
		if (n == 0)
			r->f->object = is_plural(node_token(&r->m->c, f.v)->norm)
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
