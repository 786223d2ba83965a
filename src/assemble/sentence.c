/* SPDX-License-Identifier: ISC */
/*
 * The written sentence of a clause: the verb in its base form, then what the
 * cook said of it without the talk, with foods, measures and heat in printed
 * form.
 *
 *     "so we're just gonna pop that in the oven for about ten minutes"
 *     "Put it in the oven for about 10 minutes"
 */
#include "assemble/sentence.h"

#include "base/print.h"

static bool
raw_is(const struct writing *w, uint32_t at, const char *class_name)
{
	const struct node *n = &w->top->node.v[at];

	return n->made == RAW && node_has(&w->m->c, n, class_name);
}

static struct str
norm_at(const struct writing *w, uint32_t at)
{
	return node_token(&w->m->c, &w->top->node.v[at])->norm;
}

static bool
word_is(const struct writing *w, uint32_t at, const char *word)
{
	return w->top->node.v[at].made == RAW && str_is_z(norm_at(w, at), word);
}

/* Puts a word, with a blank before it where one belongs. */
static void
put(struct writing *w, struct str s)
{
	if (s.n == 0)
		return;
	if (w->comma && w->out.n)
		buf_put_char(&w->out, ',');
	w->comma = false;
	if (w->out.n && w->out.v[w->out.n - 1] != ' ' && s.p[0] != '\'' && s.p[0] != ',')
		buf_put_char(&w->out, ' ');
	buf_put(&w->out, s);
}

static void
put_lower(struct writing *w, struct str s)
{
	char *p = arena_alloc(w->m->a, s.n + 1, 1);

	for (size_t i = 0; i < s.n; i++)
		p[i] = i == 0 && s.n > 1 && is_upper(s.p[1]) ? s.p[i] : to_lower(s.p[i]);
	put(w, (struct str){p, s.n});
}

static void
put_said(struct writing *w, uint32_t at)
{
	const struct node *n = &w->top->node.v[at];
	const struct token *t = node_token(&w->m->c, n);
	struct str s = words_of(w->m, node_text(&w->m->c, n));

	if (t->flags & TOKEN_HYPHEN && w->out.n && w->out.v[w->out.n - 1] != ' ') {
		buf_put_char(&w->out, '-');
		buf_put(&w->out, s);
		return;
	}
	put_lower(w, s);
}

/* The name a step calls an ingredient by: without size words, no amount. */
static void
put_food(struct writing *w, const struct mention *x, bool with_amount)
{
	if (with_amount && x->amount.known) {
		struct buf b = buf_in(w->m->a);

		print_amount(&b, &x->amount);
		put(w, buf_str(&b));
		if (x->amount.unit)
			put(w, STR("of"));
		put(w, STR("the"));
		put(w, x->item);
		return;
	}
	if (x->share)
		return;
	put(w, STR("the"));
	put(w, x->item);
}

/* "half the sugar", "the rest of the butter": as said, the food in print. */
static void
put_share(struct writing *w, const struct node *n, const struct mention *x)
{
	struct field_nodes f;

	if (node_field(&w->m->c, n, "share", &f)) {
		struct str said = words_of(w->m, node_text(&w->m->c, f.v));

		put_lower(w, said);
		if (!str_ends(said, STR("half")) && !str_ends(said, STR("of")))
			put(w, STR("of"));
	} else {
		put_lower(w, words_of(w->m, w->m->c.tokens.token.v[n->beg].text));
		if (!str_starts(node_token(&w->m->c, n)->norm, STR("half")))
			put(w, STR("of"));
	}
	put(w, STR("the"));
	put(w, x->item);
}

static bool
was_said(const struct writing *w, const struct mention *x)
{
	for (size_t i = 0; i < w->foods; i++)
		if (str_is(w->food[i], x->item))
			return true;
	return false;
}

static void
put_foods(struct writing *w, const struct node *n)
{
	struct mention x[MENTIONS_MAX];
	size_t count = mentions_of(w->m, n, x, MENTIONS_MAX);

	for (size_t i = 0; i < count; i++) {
		if (was_said(w, &x[i]) && !x[i].share && !x[i].definite)
			continue;
		if (i > 0)
			put(w, i + 1 == count ? STR("and") : STR(","));
		if (x[i].share)
			put_share(w, n, &x[i]);
		else
			put_food(w, &x[i], w->divided && w->divided(w, &x[i]));
		if (w->foods < MENTIONS_MAX)
			w->food[w->foods++] = x[i].item;
	}
}

static void
put_measure(struct writing *w, const struct node *n)
{
	struct said s;
	struct buf b = buf_in(w->m->a);

	if (!measure_of(&w->m->c, w->m->region, n, &s))
		return;
	if (!s.value.known)
		buf_put(&b, STR("overnight"));
	else if (s.kind == MEASURE_TEMPERATURE)
		print_temperature(&b, s.value.min, s.value.max,
		    scale_of(w->m, &s, w->internal), w->internal);
	else if (s.kind == MEASURE_DURATION)
		print_duration(&b, ms_of(&s.value, false), ms_of(&s.value, true));
	else
		print_amount(&b, &s.value);
	if (w->bare_time && s.kind == MEASURE_DURATION && s.value.known)
		put(w, STR("for"));
	put(w, buf_str(&b));
	w->anchor = w->out.n;
}

static void
put_heat(struct writing *w, const struct node *n)
{
	struct field_nodes f;

	if (!node_field(&w->m->c, n, "level", &f))
		return;
	if (w->out.n >= 3 && str_ends(buf_str(&w->out), STR(" on")))
		w->out.n -= 3;
	if (!str_ends(buf_str(&w->out), STR(" over")) &&
	    !str_ends(buf_str(&w->out), STR(" to")) &&
	    !str_ends(buf_str(&w->out), STR(" at")))
		put(w, w->sets_heat ? STR("to") : STR("over"));
	put(w, fold_heat(w->m, &(struct node){f.v[0].beg, f.v[f.n - 1].end, RAW}));
	if (!w->sets_heat)
		put(w, STR("heat"));
	w->anchor = w->out.n;
}

/* my, your, our, that, those before a noun: the. */
static void
put_determiner(struct writing *w, uint32_t at)
{
	bool next_is_food =
	    at + 1 < w->end && (node_is(&w->m->c, &w->top->node.v[at + 1], "ING"));

	if (!next_is_food)
		put(w, STR("the"));
}

static bool
is_plural_pronoun(struct str s)
{
	return str_is_z(s, "them") || str_is_z(s, "those") || str_is_z(s, "these") ||
	       str_is_z(s, "'em") || str_is_z(s, "em") || str_is_z(s, "they");
}

static void
put_pronoun(struct writing *w, uint32_t at)
{
	struct str s = norm_at(w, at);

	if (w->pending.n && !w->foods) {
		put(w, w->pending);
		w->used_pending = true;
	} else {
		put(w, is_plural_pronoun(s) ? STR("them") : STR("it"));
	}
	w->anchor = w->out.n;
}

/* A subordinate clause that gives a reason or an aside ends what is written. */
static bool
cuts(const struct writing *w, uint32_t at)
{
	return raw_is(w, at, "BECAUSE") || raw_is(w, at, "REL") || raw_is(w, at, "WH") ||
	       (raw_is(w, at, "SUBJ") && !raw_is(w, at, "PRON")) || raw_is(w, at, "BUT") ||
	       raw_is(w, at, "SORRY") || raw_is(w, at, "DOTS") ||
	       node_is(&w->m->c, &w->top->node.v[at], "VCHAT") ||
	       node_is(&w->m->c, &w->top->node.v[at], "VHAVE") ||
	       node_is(&w->m->c, &w->top->node.v[at], "VBE") || raw_is(w, at, "COND");
}

static bool
is_dropped(const struct writing *w, uint32_t at)
{
	return raw_is(w, at, "FILLER") ||
	       (raw_is(w, at, "MARK") && !raw_is(w, at, "MANNER")) ||
	       raw_is(w, at, "APPROX") || word_is(w, at, "just") ||
	       word_is(w, at, "really") || word_is(w, at, "very") ||
	       word_is(w, at, "quite") || word_is(w, at, "here") ||
	       word_is(w, at, "there") || raw_is(w, at, "LPAR") || raw_is(w, at, "RPAR");
}

/* "until it's nice and golden": the words of the cue, without its talk. */
static void
put_until(struct writing *w, uint32_t *at)
{
	uint32_t i = *at + 1;

	put(w, STR("until"));
	w->internal = true;
	for (; i < w->end; i++) {
		const struct node *n = &w->top->node.v[i];

		if (raw_is(w, i, "COMMA") || raw_is(w, i, "BECAUSE") ||
		    raw_is(w, i, "REL") || raw_is(w, i, "BUT") || raw_is(w, i, "MARK") ||
		    raw_is(w, i, "WHEN"))
			break;
		if (is_dropped(w, i) && !raw_is(w, i, "APPROX"))
			continue;
		if (n->made != RAW &&
		    measure_of(&w->m->c, w->m->region, n, &(struct said){0}))
			put_measure(w, n);
		else if (node_is(&w->m->c, n, "ING") || node_is(&w->m->c, n, "INGS"))
			put_foods(w, n);
		else
			put_said(w, i);
	}
	w->internal = false;
	w->anchor = w->out.n;
	*at = i - 1;
}

static bool
introduces_measure(const struct writing *w, uint32_t at)
{
	const struct node *next;

	if (at + 1 >= w->end)
		return false;
	next = &w->top->node.v[at + 1];
	if (raw_is(w, at + 1, "APPROX") && at + 2 < w->end)
		next = &w->top->node.v[at + 2];
	return node_is(&w->m->c, next, "DUR") || node_is(&w->m->c, next, "TEMP");
}

static void
put_node(struct writing *w, uint32_t *at)
{
	const struct node *n = &w->top->node.v[*at];
	const struct chart *c = &w->m->c;

	w->bare_time = node_is(c, n, "DUR") && !str_ends(buf_str(&w->out), STR(" for")) &&
		       !str_ends(buf_str(&w->out), STR(" about")) &&
		       !str_ends(buf_str(&w->out), STR(" in")) &&
		       !str_ends(buf_str(&w->out), STR(" every"));
	if (raw_is(w, *at, "UNTIL")) {
		put_until(w, at);
	} else if (node_is(c, n, "ING") || node_is(c, n, "INGS")) {
		put_foods(w, n);
		w->anchor = w->out.n;
	} else if (node_is(c, n, "HEAT")) {
		put_heat(w, n);
	} else if (n->made != RAW && measure_of(c, w->m->region, n, &(struct said){0})) {
		put_measure(w, n);
	} else if (raw_is(w, *at, "PRON") && !raw_is(w, *at, "DET")) {
		put_pronoun(w, *at);
	} else if (raw_is(w, *at, "DET")) {
		if (*at + 1 < w->end && !raw_is(w, *at + 1, "COMMA") &&
		    !raw_is(w, *at + 1, "PREP") && !raw_is(w, *at + 1, "PARTICLE") &&
		    !raw_is(w, *at + 1, "AND") && !raw_is(w, *at + 1, "FILLER") &&
		    !raw_is(w, *at + 1, "UNTIL"))
			put_determiner(w, *at);
		else
			put_pronoun(w, *at);
	} else {
		put_said(w, *at);
		if (n->made != RAW || raw_is(w, *at, "STATE") ||
		    raw_is(w, *at, "PARTICLE") || raw_is(w, *at, "MANNER"))
			w->anchor = w->out.n;
	}
}

static void
put_tail(struct writing *w, uint32_t beg)
{
	bool skipping = false;

	for (uint32_t i = beg; i < w->end; i++) {
		bool resumes = raw_is(w, i, "UNTIL") ||
			       ((word_is(w, i, "for") || word_is(w, i, "at")) &&
				   introduces_measure(w, i));

		if (skipping && !resumes)
			continue;
		if (!resumes && cuts(w, i)) {
			skipping = true;
			continue;
		}
		skipping = false;
		if (raw_is(w, i, "COMMA") || raw_is(w, i, "DASH") ||
		    raw_is(w, i, "COLON")) {
			w->comma = true;
			continue;
		}
		if (!is_dropped(w, i))
			put_node(w, &i);
	}
}

static bool
ends_in(const struct writing *w, const char *word)
{
	size_t n = strlen(word);

	return w->out.n > n && w->out.v[w->out.n - n - 1] == ' ' &&
	       str_ends(buf_str(&w->out), str_of(word));
}

/* Words that cannot end a sentence are taken off, and loose words after the
 * last thing that was understood, where the script has no punctuation. */
static void
trim(struct writing *w)
{
	static const char *const loose[] = {"and", "or", "the", "a", "an", "with", "to",
	    "of", "for", "at", "in", "into", "on", "then", "so", "as", "about", "that",
	    "from", "by", "over", "but", "it's", "is", "are", "'s", "until", "my", "your"};
	bool again = true;

	if (w->loose_talk && w->anchor && w->anchor < w->out.n)
		w->out.n = w->anchor;
	while (again) {
		again = false;
		for (size_t i = 0; i < sizeof loose / sizeof *loose; i++)
			if (ends_in(w, loose[i]) &&
			    !(w->anchor == w->out.n && (i == 10 || i == 11 || i == 12))) {
				w->out.n -= strlen(loose[i]) + 1;
				again = true;
			}
		while (w->out.n &&
		       (w->out.v[w->out.n - 1] == ',' || w->out.v[w->out.n - 1] == ' '))
			w->out.n--;
	}
}

static struct str
unhyphened(struct arena *a, struct str s)
{
	struct str out = arena_str(a, s);

	for (size_t i = 0; i < out.n; i++)
		if (out.p[i] == '-')
			((char *)out.p)[i] = ' ';
	return out;
}

/* The verb that a recipe prints for an action. */
struct str
written_verb(struct arena *a, const struct lexeme *action)
{
	struct str write = lexeme_get(action, "write");

	return write.n ? unhyphened(a, write) : action->lemma;
}

/* "In a large bowl, " or "Once the onions are soft, " before the verb. */
static void
put_prefix(struct writing *w, const struct clause *q)
{
	uint32_t beg = q->beg;
	bool place = false;

	while (beg < q->verb && (is_dropped(w, beg) || raw_is(w, beg, "COMMA") ||
				    raw_is(w, beg, "AND") || raw_is(w, beg, "DASH")))
		beg++;
	for (uint32_t i = beg; i < q->verb; i++)
		place = place || node_is(&w->m->c, &w->top->node.v[i], "EQ");
	if (beg >= q->verb || !place || !raw_is(w, beg, "PLACEPREP"))
		return;
	w->end = q->verb;
	put_tail(w, beg);
	trim(w);
	w->comma = true;
}

static void
capitalise(struct buf *b)
{
	if (b->n)
		b->v[0] = to_upper(b->v[0]);
}

struct str
sentence_write(struct writing *w, const struct clause *q, struct str verb)
{
	w->out = buf_in(w->m->a);
	w->foods = 0;
	w->anchor = 0;
	w->comma = w->internal = false;
	w->top = chart_top(&w->m->c);
	put_prefix(w, q);
	w->end = q->end;
	put(w, verb);
	w->anchor = w->out.n;
	put_tail(w, q->verb < q->end ? q->verb + 1 : q->beg);
	trim(w);
	capitalise(&w->out);
	return buf_str(&w->out);
}
