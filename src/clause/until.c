/* SPDX-License-Identifier: ISC */
/*
 * The words of an "until", without the talk in them.
 *
 *     "until it's, you know, nice and golden" -> "golden"
 */
#include "clause/framer.h"

/* Foods that no verb follows: "and some sesame seeds on top". */
static bool
adds_food(const struct framer *r, uint32_t at)
{
	struct field_nodes f;

	return is_food(r, at) && node_field(&r->m->c, node_at(r, at), "amount", &f);
}

static bool
is_degree(const struct framer *r, uint32_t at)
{
	return word(r, at, "enough") || made(r, at, "VAMT") ||
	       (at > 0 && word(r, at - 1, "so"));
}

/* "and it coats the spoon", "and there's no grit in it": a second sign. */
static bool
signs_on(const struct framer *r, uint32_t at)
{
	static const char *const words[] = {"it", "they", "there"};
	const struct node *n = node_at(r, at);

	if (at == 0 || !n || !is(r, at - 1, "AND"))
		return false;
	for (size_t i = 0; i < sizeof words / sizeof *words; i++)
		if (str_is_z(node_token(&r->m->c, n)->norm, words[i]))
			return true;
	return false;
}

/* Ends the words of an "until". */
static bool
ends_until(const struct framer *r, uint32_t at, uint32_t from)
{
	/* "thick enough that your spoon leaves a track" */
	if (word(r, at, "that") && at > from && is_degree(r, at - 1))
		return false;
	/* "golden and crispy, salt straight away"; "golden maybe two minutes" */
	if (made(r, at, "DUR") || (is(r, at, "APPROX") && made(r, at + 1, "DUR")) ||
	    (is_food(r, at) && at > from && is(r, at - 1, "STATE")))
		return true;
	if (is(r, at, "BECAUSE") || is(r, at, "REL") || is(r, at, "BUT") ||
	    is(r, at, "WHEN") || is(r, at, "MARK") || is(r, at, "UNTIL") ||
	    is(r, at, "DOTS") || is(r, at, "COND"))
		return true;
	if (is(r, at, "AND"))
		return (made(r, at + 1, "VAMT") && !is(r, at + 2, "STATE")) ||
		       made(r, at + 1, "VDO") || is(r, at + 2, "NEG") ||
		       adds_food(r, at + 1);
	if (is(r, at, "COMMA"))
		return !is(r, at + 1, "STATE") && !is(r, at + 1, "AND");
	if (made(r, at, "VDO") || made(r, at, "VHAVE") || made(r, at, "VCHAT"))
		return at > from + 1 && !signs_on(r, at);
	return r->w->loose && at > from + 12;
}

static void
put_until_word(struct framer *r, struct buf *b, uint32_t at)
{
	const struct node *n = node_at(r, at);
	struct said s;
	struct str text = said(r, at);

	if ((is(r, at, "FILLER") && !word(r, at, "there")) || word(r, at, "kinda") ||
	    word(r, at, "just") || word(r, at, "really") ||
	    (word(r, at, "all") && !word(r, at + 1, "one")) ||
	    (word(r, at, "nice") && word(r, at + 1, "and")))
		return;
	if (word(r, at, "and") && at && word(r, at - 1, "nice"))
		return;
	if (b->n && text.p[0] != '\'' && text.p[0] != ',' && !str_is_z(text, "n't"))
		buf_put_char(b, ' ');
	if (n->made != RAW && measure_of(&r->m->c, r->m->region, n, &s) &&
	    s.kind == MEASURE_TEMPERATURE) {
		s.value.unit = scale_of(r->m, &s, true);
		slot_put_temperature(r->m->slots, b, &s.value, true);
	} else if (is_food(r, at) && !str_starts(text, STR("the ")) &&
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
	    "she's ", "he's ", "they get ", "it goes ", "it turns ", "it's all ",
	    "you get "};

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
	    "we", "by", "as", "at"};
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

/* "when you poke it" as one entry of the lexicon ends well. */
static bool
is_phrase(const struct framer *r, uint32_t at)
{
	const struct node *n = node_at(r, at);

	return n && n->made == RAW && n->end == n->beg + 1 &&
	       str_find_char(node_token(&r->m->c, n)->norm, ' ') <
		   node_token(&r->m->c, n)->norm.n;
}

void
until_take(struct framer *r)
{
	struct buf b = buf_in(r->m->a);
	uint32_t from = r->at + 1;
	bool object;

	for (r->at++; r->at < r->end && !ends_until(r, r->at, from); r->at++)
		put_until_word(r, &b, r->at);
	while (b.n && (b.v[b.n - 1] == ' ' || b.v[b.n - 1] == ','))
		b.n--;
	/* "until you can smell it" */
	object = word(r, r->at - 1, "it") && r->at > from + 1 &&
		 (is(r, r->at - 2, "VERB") || is(r, r->at - 2, "ACTION"));
	object = object || is_phrase(r, r->at - 1);
	if (!object)
		drop_loose_end(&b);
	if (b.n && !r->f->until.n) {
		r->f->until = without_it_is(buf_str(&b));
		r->f->or_until = r->or_before;
	}
}

/* Does the last word of the node say how food is or becomes: "should flake"? */
static bool
tells_sign(const struct framer *r, uint32_t at)
{
	uint32_t last = node_at(r, at)->end - 1;

	return token_has(r->m, last, "STATE") || token_has(r->m, last, "STATEVERB");
}

struct str
sign_write(struct writing *w)
{
	enum { FAR = 9 };
	struct frame f = {0};
	struct framer r = {.w = w, .f = &f, .m = w->m, .top = chart_top(&w->m->c)};
	struct buf b = buf_in(w->m->a);
	struct str words;
	uint32_t from;
	bool sign;

	r.end = w->clause->end;
	r.at = w->clause->verb;
	words = said(&r, r.at);
	if (is(&r, r.at + 1, "NEG") || str_find(words, STR("should")) == words.n)
		return STR("");
	sign = tells_sign(&r, r.at);
	buf_put(&b, words);
	from = r.at + 1;
	for (r.at++; r.at < r.end && r.at < from + FAR && !ends_until(&r, r.at, from) &&
		     !is(&r, r.at, "COMMA") && !is(&r, r.at, "SUBJ");
	     r.at++)
		sign = sign || tells_sign(&r, r.at), put_until_word(&r, &b, r.at);
	if (!is_phrase(&r, r.at - 1))
		drop_loose_end(&b);
	if (!sign)
		return STR("");
	b.v[0] = to_upper(b.v[0]);
	return buf_str(&b);
}
