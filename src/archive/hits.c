/* SPDX-License-Identifier: ISC */
/*
 * What is printed of a dish that was found: the sentence that fits the question
 * best, its words marked, its time, and the link to that second.
 */
#include "archive/ask.h"
#include "archive/pack.h"
#include "archive/passage.h"

#include <inttypes.h>

enum { SENTENCE_ENOUGH = 160, SENTENCE_MAX = 280, PHRASES_MAX = 64, HINT_MAX = 80 };

/* How much a phrase counts that is the question's own word, of an option, or
 * at the place that an option found. */
static const double worth_word = 1, worth_option = 0.6, worth_place = 1.5;
/* And that follows within the next few sentences. */
static const double worth_ahead = 0.4;
/* What is said before the dish is begun only promises it. */
static const double worth_before = 0.3;
enum { AHEAD = 4 };

struct want {
	struct phrase phrase;
	double worth;
};

/* A passage of the joined text. */
struct stretch {
	size_t at; /* where its text begins */
	int64_t beg_ms, end_ms;
};

struct sentence {
	struct span at;     /* bytes of the joined text */
	size_t first, last; /* its tokens, [first, last) */
};

/* The phrases met so far, and what they are worth. */
struct meeting {
	bool met[PHRASES_MAX];
	double worth;
};

struct search {
	struct archive *archive;
	struct arena *arena;
	struct want want[PHRASES_MAX];
	size_t wants;
	int64_t focus_ms; /* where an option was found; -1 nowhere */
	int64_t begun_ms; /* when the dish begins; -1 unknown */
	/* What is said for the dish, joined. */
	struct buf said;
	VEC(struct stretch) stretch;
	VEC(struct sentence) sentence;
	/* The best so far. */
	double best;
	struct hit *hit;
};

/* ---- what is looked for ------------------------------------------------- */

static void
add_want(struct search *s, struct str text, double worth)
{
	struct phrase p = phrase_cut(s->archive, s->arena, text);

	if (p.tokens.token.n && s->wants < PHRASES_MAX)
		s->want[s->wants++] = (struct want){p, worth};
}

static void
add_each(struct search *s, struct str words, double worth)
{
	while (words.p)
		add_want(s, str_next(&words, ' '), worth);
}

static void
add_wants(struct search *s, const struct question *q)
{
	for (size_t i = 0; i < q->words; i++)
		add_want(s, q->word[i], worth_word);
	for (size_t i = 0; i < q->withs; i++)
		add_want(s, q->with[i].name, worth_option);
	add_each(s, q->dish, worth_option);
	add_want(s, q->equipment, worth_option);
	add_want(s, q->action, worth_option);
}

/* The words at a place of the source count too: "two hundred and twenty". */
static void
take_place(struct search *s, struct row *r, struct str source)
{
	struct str words =
	    str_cut(source, (size_t)row_get_int(r, 1), (size_t)row_get_int(r, 2));

	s->focus_ms = row_get_int_or(r, 0, -1);
	if (words.n <= HINT_MAX)
		add_want(s, words, worth_option);
	row_end(r);
}

static void
find_focus(struct search *s, const struct question *q, int64_t dish, struct str source,
    struct err *e)
{
	struct row r;

	s->focus_ms = -1;
	if (q->heated) {
		struct near near = near_of(&q->temperature);

		r = row_open(s->archive, SQL_HEAT_OF);
		row_int(&r, dish);
		row_real(&r, q->temperature.min);
		row_real(&r, q->temperature.max);
		row_real(&r, near.inside);
		row_real(&r, near.setting);
		row_int(&r, q->role);
		if (row_next(&r, e))
			take_place(s, &r, source);
	} else if (q->finding.n) {
		r = row_open(s->archive, SQL_FINDING_OF);
		row_int(&r, dish);
		row_text(&r, q->finding);
		if (row_next(&r, e))
			take_place(s, &r, source);
	}
}

/* ---- sentences ---------------------------------------------------------- */

/* The stretch that holds the byte of the joined text. */
static size_t
stretch_at(const struct search *s, size_t at)
{
	size_t low = 0, high = s->stretch.n;

	while (high - low > 1) {
		size_t mid = low + (high - low) / 2;

		if (s->stretch.v[mid].at <= at)
			low = mid;
		else
			high = mid;
	}
	return low;
}

/* Time codes are of the word, as far as the passage's own times tell. */
static int64_t
time_at(const struct search *s, size_t at)
{
	size_t i = stretch_at(s, at), end;
	const struct stretch *now = &s->stretch.v[i];
	int64_t ms;

	if (now->beg_ms < 0)
		return -1;
	end = i + 1 < s->stretch.n ? s->stretch.v[i + 1].at : s->said.n;
	ms = now->end_ms > now->beg_ms ? now->end_ms - now->beg_ms : 0;
	return now->beg_ms + ms * (int64_t)(at - now->at) / (int64_t)(end - now->at + 1);
}

/* The longest phrase at token i that ends before `end`; adds the worth of those
 * that were not met before. */
static size_t
meet(struct search *s, const struct tokens *t, size_t i, size_t end, struct meeting *m)
{
	size_t longest = 0;

	for (size_t w = 0; w < s->wants; w++) {
		size_t n = phrase_at(&s->want[w].phrase, t, i);

		if (n == 0 || i + n > end)
			continue;
		longest = n > longest ? n : longest;
		m->worth += m->met[w] ? 0 : s->want[w].worth;
		m->met[w] = true;
	}
	return longest;
}

/* The worth of the phrases in the tokens [beg, end). */
static double
worth_of(struct search *s, const struct tokens *t, size_t beg, size_t end)
{
	struct meeting m = {0};

	for (size_t i = beg; i < end; i++)
		meet(s, t, i, end, &m);
	return m.worth;
}

static void
mark(struct search *s, const struct tokens *t, size_t beg, size_t end, struct hit *out)
{
	struct meeting m = {0};
	VEC(struct span) list = {0};

	for (size_t i = beg; i < end; i++) {
		size_t n = meet(s, t, i, end, &m);

		if (n == 0)
			continue;
		vec_push(s->arena, &list,
		    (struct span){t->token.v[i].at.beg, t->token.v[i + n - 1].at.end});
		i += n - 1;
	}
	out->mark = list.v;
	out->marks = list.n;
}

static bool
is_sentence_end(struct str s, size_t i)
{
	return (s.p[i] == '.' || s.p[i] == '!' || s.p[i] == '?') &&
	       (i + 1 == s.n || is_blank(s.p[i + 1]));
}

static bool
begins_stretch(const struct search *s, size_t at)
{
	return s->stretch.v[stretch_at(s, at)].at == at;
}

/* Captions without full stops end where they are long enough. */
static size_t
sentence_end(const struct search *s, size_t beg)
{
	struct str text = buf_str(&s->said);

	for (size_t i = beg; i < text.n; i++) {
		if (is_sentence_end(text, i))
			return i + 1;
		if (i - beg > SENTENCE_ENOUGH && is_blank(text.p[i]) &&
		    (begins_stretch(s, i + 1) || i - beg > SENTENCE_MAX))
			return i;
	}
	return text.n;
}

/* The sentences of what is said. */
static void
cut_sentences(struct search *s, const struct tokens *t)
{
	struct str text = buf_str(&s->said);
	size_t first = 0, last = 0;

	for (size_t beg = 0, end; beg < text.n; beg = end) {
		while (beg < text.n && is_blank(text.p[beg]))
			beg++;
		end = sentence_end(s, beg);
		while (last < t->token.n && t->token.v[last].at.beg < end)
			last++;
		vec_push(s->arena, &s->sentence,
		    (struct sentence){{(uint32_t)beg, (uint32_t)end}, first, last});
		first = last;
	}
}

/* Takes the i-th sentence when it fits better than the best. Where the words go
 * on being spoken of, the dish is made; elsewhere it is only named. */
static void
offer(struct search *s, const struct tokens *t, size_t i)
{
	const struct sentence *one = &s->sentence.v[i];
	size_t then = i + AHEAD < s->sentence.n ? i + AHEAD : s->sentence.n - 1;
	double worth = worth_of(s, t, one->first, one->last);
	int64_t beg_ms = time_at(s, one->at.beg), end_ms = time_at(s, one->at.end);

	if (worth > 0)
		worth += worth_ahead * worth_of(s, t, one->last, s->sentence.v[then].last);
	if (beg_ms >= 0 && beg_ms < s->begun_ms)
		worth -= worth_before;
	if (s->focus_ms >= 0 && beg_ms <= s->focus_ms && s->focus_ms < end_ms)
		worth += worth_place;
	if (worth <= s->best)
		return;
	s->best = worth;
	mark(s, t, one->first, one->last, s->hit);
	s->hit->sentence = str_cut(buf_str(&s->said), one->at.beg, one->at.end);
	s->hit->at_ms = time_at(s, s->hit->marks ? s->hit->mark[0].beg : one->at.beg);
	for (size_t m = 0; m < s->hit->marks; m++) {
		s->hit->mark[m].beg -= one->at.beg;
		s->hit->mark[m].end -= one->at.beg;
	}
}

static void
offer_said(struct search *s)
{
	struct tokens t = {.arena = s->arena};

	tokens_cut(s->archive, buf_str(&s->said), &t);
	cut_sentences(s, &t);
	for (size_t i = 0; i < s->sentence.n; i++)
		offer(s, &t, i);
}

/* What the recipe says, where the cook says it less well. */
static void
offer_written(struct search *s, const struct passage *p)
{
	/* The cook's own words are better than as good words of the recipe. */
	static const double less = 0.1;
	struct tokens t = {.arena = s->arena};
	double worth;

	tokens_cut(s->archive, p->text, &t);
	worth = worth_of(s, &t, 0, t.token.n) - less;
	if (worth <= s->best)
		return;
	s->best = worth;
	mark(s, &t, 0, t.token.n, s->hit);
	s->hit->at_ms = p->beg_ms;
	s->hit->sentence = p->text;
}

static void
find_sentence(struct search *s, struct str passages, int entry)
{
	struct str rest = passages;
	struct passage p;

	while (passage_next(&rest, &p)) {
		if (p.entry != entry || p.kind != PASSAGE_SAID)
			continue;
		vec_push(
		    s->arena, &s->stretch, (struct stretch){s->said.n, p.beg_ms, p.end_ms});
		buf_put(&s->said, p.text);
		buf_put_char(&s->said, ' ');
	}
	s->best = -1;
	offer_said(s);
	rest = passages;
	while (passage_next(&rest, &p))
		if (p.entry == entry && p.kind != PASSAGE_SAID && p.kind != PASSAGE_MORE &&
		    p.kind != PASSAGE_ACT && p.kind != PASSAGE_TITLE)
			offer_written(s, &p);
}

/* ---- the link ----------------------------------------------------------- */

/* "{s}" in the URL is the second; without, it goes behind as a media fragment
 * (W3C, Media Fragments URI 1.0). */
static struct str
link_to(struct arena *arena, struct str url, int64_t ms)
{
	size_t at = str_find(url, STR("{s}"));
	struct str tail = str_cut(url, at + 3, url.n);

	if (url.n == 0 || ms < 0)
		return arena_str(arena, url);
	if (at < url.n)
		return arena_fmt(arena, "%.*s%" PRId64 "%.*s", (int)at, url.p, ms / 1000,
		    (int)tail.n, tail.n ? tail.p : "");
	return arena_fmt(arena, "%.*s#t=%" PRId64, (int)url.n, url.p, ms / 1000);
}

/* ---- the hit ------------------------------------------------------------ */

static bool
read_hit(struct search *s, int64_t dish, struct packed *packed, int *entry, struct err *e)
{
	struct row r = row_open(s->archive, SQL_HIT);
	struct hit *out = s->hit;
	bool ok;

	row_int(&r, dish);
	if (!row_next(&r, e))
		return e->set
			   ? false
			   : err_set(e, s->archive->path, "lost a dish while it was read");
	*entry = (int)row_get_int(&r, 0);
	out->dish = row_copy(&r, 1, s->arena);
	out->episode = row_copy(&r, 2, s->arena);
	out->title = row_copy(&r, 3, s->arena);
	out->date = row_copy(&r, 4, s->arena);
	out->link = row_copy(&r, 5, s->arena);
	packed->source.n = (size_t)row_get_int(&r, 6);
	packed->passages.n = (size_t)row_get_int(&r, 7);
	packed->json.n = (size_t)row_get_int(&r, 8);
	ok = pack_inflate(s->arena, row_get_text(&r, 9), packed);
	s->begun_ms = row_get_int_or(&r, 10, -1);
	row_end(&r);
	return ok ||
	       err_set(e, s->archive->path, "is damaged: the text of %.*s can't be read",
		   (int)out->episode.n, out->episode.p);
}

/* What was found stays; what it was found in goes. */
static void
settle(struct hit *h, struct arena *arena)
{
	h->sentence = arena_str(arena, h->sentence);
	h->mark = arena_grow(arena, h->mark, h->marks, h->marks, sizeof *h->mark);
	h->link = link_to(arena, h->link, h->at_ms);
	h->dish = arena_str(arena, h->dish);
	h->episode = arena_str(arena, h->episode);
	h->title = arena_str(arena, h->title);
	h->date = arena_str(arena, h->date);
}

bool
hit_fill(struct archive *a, struct arena *arena, const struct question *q, int64_t dish,
    struct hit *out, struct err *e)
{
	struct arena scratch;
	struct search s = {.archive = a, .arena = &scratch, .hit = out};
	struct packed packed;
	int entry = -1;

	arena_init(&scratch);
	out->at_ms = -1;
	if (read_hit(&s, dish, &packed, &entry, e)) {
		s.said = buf_in(&scratch);
		add_wants(&s, q);
		find_focus(&s, q, dish, packed.source, e);
		find_sentence(&s, packed.passages, entry);
		settle(out, arena);
	}
	arena_release(&scratch);
	return !e->set;
}
