/* SPDX-License-Identifier: ISC */
/*
 * Cuts the top level into clauses: at the ends of sentences and before each
 * verb that is not part of an "until", "when", "because" or "which".
 */
#include "clause/cutter.h"

static const struct {
	const char *class_name;
	enum clause_kind kind;
} verbs[] = {{"VDO", CLAUSE_DO}, {"VNOT", CLAUSE_NOT}, {"VGO", CLAUSE_GO},
    {"VHAVE", CLAUSE_HAVE}, {"VBE", CLAUSE_BE}, {"VCHAT", CLAUSE_CHAT}};

bool
clause_verb_kind(const struct chart *c, const struct node *n, enum clause_kind *kind)
{
	for (size_t i = 0; i < sizeof verbs / sizeof *verbs; i++)
		if (node_is(c, n, verbs[i].class_name)) {
			*kind = verbs[i].kind;
			return true;
		}
	return false;
}

/* The verb of a noun that hides one: "a good stir". */
static const struct lexeme *
verb_behind(const struct chart *c, const struct lexeme *l)
{
	struct str action = lexeme_get(l, "action");
	const struct reading *r;

	if (!action.n)
		return l;
	r = entry_reading(lexicon_find(&c->g->lexicon, lexicon_key(c->arena, action)),
	    grammar_class(c->g, "ACTION"));
	return r ? r->lexeme : l;
}

static const struct lexeme *
action_of(const struct chart *c, const struct node *n)
{
	static const char *const classes[] = {
	    "ACTION", "ACTION_ING", "ACTION_ED", "ACTION_S", "ACTNOUN"};
	struct field_nodes f;

	if (!node_field(c, n, "verb", &f))
		return NULL;
	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++) {
		const struct reading *r = node_reading(c, f.v, classes[i]);

		if (r)
			return verb_behind(c, r->lexeme);
	}
	return NULL;
}

/* Does a noun begin with the token, so that a word before it is a preposition:
 * "melt the butter in a pan"? */
static bool
governs(const struct maker *m, uint32_t token)
{
	static const char *const classes[] = {"ART", "DET", "FOOD", "EQUIP", "QUANT"};

	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++)
		if (token_has(m, token, classes[i]))
			return true;
	return false;
}

/* "take them out", "get the pan off the heat": the phrase of the lexicon whose
 * object stands inside it; NULL where the words are no such phrase. */
static const struct lexeme *
phrase_around(const struct cutter *k, const struct lexeme *verb, uint32_t beg, uint32_t end)
{
	enum { WORDS_MAX = 3, FAR = 6 };
	const struct chart *c = &k->m->c;
	const struct token *t = c->tokens.token.v;

	for (uint32_t i = beg; i < end && i < beg + FAR; i++) {
		uint32_t first = k->top->node.v[i].beg;
		struct str phrase = verb->lemma;

		if (is_raw(k, &k->top->node.v[i], "COMMA") ||
		    is_raw(k, &k->top->node.v[i], "AND") ||
		    node_is(c, &k->top->node.v[i], "VTO") ||
		    (is_raw(k, &k->top->node.v[i], "ACTION") &&
			!is_raw(k, &k->top->node.v[i], "PARTICLE")))
			break;
		if (!is_raw(k, &k->top->node.v[i], "PARTICLE") &&
		    !is_raw(k, &k->top->node.v[i], "PREP"))
			continue;
		for (uint32_t w = first; w < first + WORDS_MAX && w < c->tokens.token.n;
		     w++) {
			const struct reading *r;

			phrase = arena_fmt(c->arena, "%.*s %.*s", (int)phrase.n, phrase.p,
			    (int)t[w].norm.n, t[w].norm.p);
			r = entry_reading(lexicon_find(&c->g->lexicon, phrase),
			    grammar_class(c->g, "ACTION"));
			if (r && lexeme_has(r->lexeme, "split") && !governs(k->m, w + 1))
				return r->lexeme;
		}
	}
	return NULL;
}

/* "the pan caught the hatch": told of another day, with nothing measured. */
static bool
is_tale(const struct cutter *k, uint32_t end)
{
	static const char *const measured[] = {"AMT", "NUM", "DUR", "TEMP", "HEAT"};
	bool past = false;

	for (uint32_t i = k->now.beg; i < end; i++) {
		const struct node *n = &k->top->node.v[i];
		struct field_nodes amount;

		for (size_t c = 0; c < sizeof measured / sizeof *measured; c++)
			if (node_is(&k->m->c, n, measured[c]))
				return false;
		if (node_field(&k->m->c, n, "amount", &amount))
			return false;
		past = past ||
		       (n->made == RAW && node_has(&k->m->c, n, "VERB_ED") &&
			   !node_has(&k->m->c, n, "ACTION_ED") &&
			   !node_has(&k->m->c, n, "PREPWORD") &&
			   !node_has(&k->m->c, n, "STATE") && !node_has(&k->m->c, n, "BE"));
	}
	return past;
}

static void
close(struct cutter *k, uint32_t end)
{
	k->now.end = end;
	if (k->open && k->now.kind == CLAUSE_BARE && is_tale(k, end))
		k->now.kind = CLAUSE_CHAT;
	if (k->open && k->now.beg < end) {
		if (k->now.verb == UINT32_MAX)
			k->now.verb = end;
		if (k->now.action && k->now.verb + 1 < end) {
			const struct lexeme *l =
			    phrase_around(k, k->now.action, k->now.verb + 1, end);

			k->now.action = l ? l : k->now.action;
		}
		vec_push(k->m->a, &k->m->clause, k->now);
	}
	k->open = false;
	k->absorbing = k->absorbed = k->until = false;
}

static void
open(struct cutter *k, uint32_t at)
{
	const struct node *n = &k->top->node.v[at];

	k->now = (struct clause){.kind = CLAUSE_BARE,
	    .beg = at,
	    .verb = UINT32_MAX,
	    .sentence = k->sentence,
	    .cue = k->m->c.tokens.token.v[n->beg].cue,
	    .dish = -1,
	    .part = -1};
	k->open = true;
	k->sentence = false;
}

/* Where the words before a verb that belong to it begin: after the last comma,
 * "and" or marker before it, within this clause. */
static uint32_t
back_up(const struct cutter *k, uint32_t verb)
{
	uint32_t at = verb;

	while (at > k->now.beg) {
		const struct node *n = &k->top->node.v[at - 1];

		if (!is_raw(k, n, "COMMA") && !is_raw(k, n, "AND") &&
		    !is_raw(k, n, "MARK") && !is_raw(k, n, "FILLER") &&
		    !is_raw(k, n, "BUT") && !is_raw(k, n, "DASH"))
			break;
		at--;
	}
	return at;
}

/* "if it's crowded it's gonna steam": what would happen is no instruction. */
static bool
has_condition(const struct cutter *k, uint32_t verb)
{
	for (uint32_t i = k->now.beg; i < verb; i++)
		if (is_raw(k, &k->top->node.v[i], "COND"))
			return true;
	return false;
}

/* A list of foods, or a heat and a time, before talk is a clause of its own. */
static bool
has_matter(const struct cutter *k, uint32_t end)
{
	for (uint32_t i = k->now.beg; i < end; i++)
		if (is_food(k, i) || node_is(&k->m->c, &k->top->node.v[i], "DUR") ||
		    node_is(&k->m->c, &k->top->node.v[i], "HEAT") ||
		    node_is(&k->m->c, &k->top->node.v[i], "TEMP"))
			return true;
	return false;
}

/* "thirty grams of butter, two onions, and you crush them": the list stands
 * for itself; "in a pan with the butter, fry" does not. */
static bool
lists_food(const struct cutter *k, uint32_t end)
{
	uint32_t i = k->now.beg;

	while (i < end && (is_raw(k, &k->top->node.v[i], "MARK") ||
			      is_raw(k, &k->top->node.v[i], "FILLER") ||
			      is_raw(k, &k->top->node.v[i], "COMMA") ||
			      is_raw(k, &k->top->node.v[i], "BOUNDARY") ||
			      is_raw(k, &k->top->node.v[i], "AND")))
		i++;
	return is_food(k, i);
}

/* "in the big bowl two cups of flour, give it a stir": the list and its place stand
 * for themselves, where the verb has an object of its own. */
static bool
has_list(const struct cutter *k, uint32_t verb)
{
	const struct node *n = &k->top->node.v[verb];
	struct field_nodes f;
	bool list = false;

	if (!node_field(&k->m->c, n, "object", &f) &&
	    !(verb + 1 < k->top->node.n && is_raw(k, n + 1, "PRON")))
		return false;
	for (uint32_t i = k->now.beg; i < verb; i++)
		list = list || (is_food(k, i) &&
				   !(i > 0 && is_raw(k, &k->top->node.v[i - 1], "PREP")) &&
				   node_field(&k->m->c, &k->top->node.v[i], "amount", &f));
	return list;
}

/* "four hundred degrees, fifteen minutes, shake them once": a setting and a time
 * stand for themselves, where nothing opens the sentence that needs the verb. */
static bool
tells_heat(const struct cutter *k, uint32_t end)
{
	const struct node *first = &k->top->node.v[k->now.beg];

	if (is_raw(k, first, "WHEN") || is_raw(k, first, "PREP") ||
	    is_raw(k, first, "UNTIL"))
		return false;
	for (uint32_t i = k->now.beg; i < end; i++)
		if (node_is(&k->m->c, &k->top->node.v[i], "DUR") ||
		    node_is(&k->m->c, &k->top->node.v[i], "TEMP"))
			return true;
	return false;
}

/* "until it's golden and it sounds hollow": the second sign belongs to the until. */
static bool
signs_on(const struct cutter *k, uint32_t at, enum clause_kind kind)
{
	static const char *const words[] = {"it", "they", "there"};

	if (kind != CLAUSE_BE && kind != CLAUSE_CHAT && kind != CLAUSE_HAVE)
		return false;
	if (at == 0 || !is_raw(k, &k->top->node.v[at - 1], "AND"))
		return false;
	for (size_t i = 0; i < sizeof words / sizeof *words; i++)
		if (str_is_z(node_token(&k->m->c, &k->top->node.v[at])->norm, words[i]))
			return true;
	return false;
}

static void
meet_verb(struct cutter *k, uint32_t at, enum clause_kind kind)
{
	const struct node *n = &k->top->node.v[at];

	if (k->absorbing && !k->absorbed) {
		k->absorbed = true;
		return;
	}
	if (k->absorbing && k->until && signs_on(k, at, kind))
		return;
	/* "let that go for ten minutes" is one doing */
	if (kind == CLAUSE_GO && k->now.verb != UINT32_MAX && at == k->now.verb + 1)
		return;
	if (k->now.verb != UINT32_MAX || (kind == CLAUSE_CHAT && has_matter(k, at)) ||
	    (kind == CLAUSE_DO && (lists_food(k, at) || has_list(k, at))) ||
	    ((kind == CLAUSE_DO || kind == CLAUSE_HAVE) && tells_heat(k, at)) ||
	    (kind == CLAUSE_GO && has_matter(k, at))) {
		uint32_t from = back_up(k, at);

		close(k, from);
		open(k, from);
	}
	k->absorbing = k->absorbed = k->until = false;
	if (kind == CLAUSE_DO && has_condition(k, at))
		kind = CLAUSE_CHAT;
	k->now.kind = kind;
	k->now.verb = at;
	k->now.action = action_of(&k->m->c, n);
	k->now.other = node_attribute(&k->m->c, n, "other").n > 0;
}

/* ", and in the fridge for an hour", "and back in the pot for two minutes": the
 * food goes to a new place and stays. */
static bool
moves_on(const struct cutter *k, uint32_t at)
{
	bool place = false, back = false;
	enum clause_kind verb;

	if (!is_raw(k, &k->top->node.v[at], "AND") &&
	    !is_raw(k, &k->top->node.v[at], "COMMA"))
		return false;
	for (at++; at < k->top->node.n; at++) {
		const struct node *n = &k->top->node.v[at];

		if (n->made == RAW &&
		    str_starts(node_token(&k->m->c, n)->norm, STR("back")))
			back = true;
		if (is_raw(k, n, "PLACEPREP"))
			break;
		if (!back && !is_raw(k, n, "AND") && !is_raw(k, n, "MARK"))
			break;
	}
	if (at >= k->top->node.n || !is_raw(k, &k->top->node.v[at], "PLACEPREP"))
		return false;
	for (uint32_t i = at + 1; i < k->top->node.n && i < at + 8; i++) {
		const struct node *n = &k->top->node.v[i];
		const struct reading *e = node_reading(&k->m->c, n, "EQUIP");

		if (is_raw(k, n, "STOP") || is_raw(k, n, "BREAK") ||
		    (clause_verb_kind(&k->m->c, n, &verb) && verb != CLAUSE_GO))
			break;
		place = place || node_reading(&k->m->c, n, "TIMECUE") ||
			(e && (back || lexeme_has(e->lexeme, "setting")));
		if (place && node_is(&k->m->c, n, "DUR"))
			return true;
	}
	return false;
}

/* "and up goes the oven to two-twenty" */
static bool
turns_setting(const struct cutter *k, uint32_t at)
{
	const struct node *n = &k->top->node.v[at];
	struct str way, verb;

	if ((!is_raw(k, n, "AND") && !is_raw(k, n, "COMMA")) || at + 2 >= k->top->node.n)
		return false;
	way = node_token(&k->m->c, n + 1)->norm;
	verb = node_token(&k->m->c, n + 2)->norm;
	return (str_is_z(way, "up") || str_is_z(way, "down")) &&
	       (str_is_z(verb, "goes") || str_is_z(verb, "comes"));
}

/* Is there more in the open clause than marks and markers? */
static bool
has_content(const struct cutter *k, uint32_t at)
{
	for (uint32_t i = k->now.beg; i < at; i++) {
		const struct node *n = &k->top->node.v[i];

		if (!is_raw(k, n, "BOUNDARY") && !is_raw(k, n, "FILLER") &&
		    !is_raw(k, n, "MARK") && !is_raw(k, n, "COMMA") && !is_raw(k, n, "AND"))
			return true;
	}
	return false;
}

/* "now", "so", "okay" between two things; "now, at two hundred" is none. */
static bool
parts_talk(const struct cutter *k, uint32_t at)
{
	const struct node *next = at + 1 < k->top->node.n ? &k->top->node.v[at + 1] : NULL;

	if (is_raw(k, &k->top->node.v[at], "MARK") && is_food(k, at + 1) &&
	    (k->now.kind == CLAUSE_CHAT || k->now.kind == CLAUSE_NOT))
		return true;
	return is_raw(k, &k->top->node.v[at], "BOUNDARY") && next &&
	       !is_raw(k, next, "COMMA") && !is_raw(k, next, "PREP") &&
	       !is_raw(k, next, "STOP") && !is_raw(k, next, "STATE") &&
	       !is_raw(k, next, "UNTIL") && !is_raw(k, next, "UPTO");
}

/* A full stop before "until it's golden" or "for ten minutes" ends nothing. */
static bool
goes_on_after(const struct cutter *k, uint32_t at)
{
	uint32_t i = at + 1;

	while (i < k->top->node.n && (is_raw(k, &k->top->node.v[i], "FILLER") ||
					 is_raw(k, &k->top->node.v[i], "APPROX")))
		i++;
	if (i >= k->top->node.n)
		return false;
	if (is_raw(k, &k->top->node.v[i], "UNTIL"))
		return true;
	if (!is_raw(k, &k->top->node.v[i], "FOR"))
		return false;
	for (i++; i < k->top->node.n && is_raw(k, &k->top->node.v[i], "APPROX"); i++)
		;
	return i < k->top->node.n && node_is(&k->m->c, &k->top->node.v[i], "DUR");
}

/* "Honey, is that the timer?" asks; "it's soft, right?" tells. */
static bool
is_question(const struct cutter *k, uint32_t at)
{
	static const char *const tags[] = {
	    "right", "okay", "no", "yeah", "eh", "yes", "huh"};
	struct str text =
	    at ? words_of(k->m, node_text(&k->m->c, &k->top->node.v[at])) : STR("");

	if (!str_starts(text, STR("?")))
		return false;
	for (size_t i = 0; i < sizeof tags / sizeof *tags; i++)
		if (str_is_z(node_token(&k->m->c, &k->top->node.v[at - 1])->norm, tags[i]))
			return false;
	return true;
}

/* The clauses of the sentence that ends here. */
static void
take_as_talk(struct cutter *k)
{
	for (size_t i = k->m->clause.n; i-- > 0;) {
		k->m->clause.v[i].kind = CLAUSE_CHAT;
		if (k->m->clause.v[i].sentence)
			break;
	}
}

static void
meet(struct cutter *k, uint32_t at)
{
	const struct node *n = &k->top->node.v[at];
	enum clause_kind kind;
	uint32_t from;

	if (is_raw(k, n, "STOP") && k->open && goes_on_after(k, at))
		return;
	if (is_raw(k, n, "BREAK") || is_raw(k, n, "STOP")) {
		bool asks = is_question(k, at);

		close(k, at);
		if (asks)
			take_as_talk(k);
		k->sentence = true;
		return;
	}
	if (k->open && at > k->now.beg && parts_talk(k, at) && has_content(k, at))
		close(k, at);
	if (k->open && k->now.verb != UINT32_MAX &&
	    (moves_on(k, at) || turns_setting(k, at))) {
		close(k, at);
		open(k, at);
	}
	if (k->open && (spell_starts(k, at, &from) || spell_lists(k, at, &from))) {
		close(k, from);
		open(k, from);
	}
	if (!k->open)
		open(k, at);
	/* "ours has never yet managed three hours" */
	if (k->now.kind == CLAUSE_BARE && str_is_z(node_token(&k->m->c, n)->norm, "never"))
		k->now.kind = CLAUSE_NOT;
	if (subordinate_starts(k, n)) {
		k->absorbing = true;
		k->absorbed = false;
		k->until = k->until || is_raw(k, n, "UNTIL");
	} else if (k->absorbing && subordinate_ends(k, at)) {
		k->absorbing = false;
	} else if (k->absorbing && (is_raw(k, n, "BE") || is_raw(k, n, "STATE") ||
				       is_raw(k, n, "STATEVERB"))) {
		k->absorbed = true;
	}
	if (clause_verb_kind(&k->m->c, n, &kind))
		meet_verb(k, at, kind);
}

void
clauses_cut(struct maker *m)
{
	struct cutter k = {.m = m, .top = chart_top(&m->c), .sentence = true};

	for (uint32_t i = 0; i < k.top->node.n; i++)
		meet(&k, i);
	close(&k, (uint32_t)k.top->node.n);
}
