/* SPDX-License-Identifier: ISC */
/*
 * Making an episode ready for the archive: all work that needs no database, so
 * that many threads can do it.
 */
#include "archive/parcel.h"

#include <stdlib.h>

#include "archive/pack.h"
#include "archive/passage.h"
#include "base/fold.h"

enum { SHORTEST_WORD = 3, LONGEST_WORD = 40 };

uint64_t
parcel_hash(const struct parcel *p, struct str source)
{
	return str_hash(source) + 3 * str_hash(p->answers) + 5 * str_hash(p->region) +
	       7 * str_hash(p->profile);
}

/* ---- words -------------------------------------------------------------- */

struct words {
	struct arena *arena;
	VEC(struct str) word;
};

/* The runs of letters; what folding leaves outside ASCII ends one. */
static void
add_folded(struct words *w, struct str s)
{
	size_t beg = 0;

	for (size_t i = 0; i <= s.n; i++) {
		if (i < s.n && is_lower(s.p[i]))
			continue;
		if (i - beg >= SHORTEST_WORD && i - beg <= LONGEST_WORD)
			vec_push(w->arena, &w->word, str_cut(s, beg, i));
		beg = i + 1;
	}
}

static int
order_words(const void *left, const void *right)
{
	return str_order(*(const struct str *)left, *(const struct str *)right);
}

static void
sort_words(struct words *w)
{
	size_t n = 0;

	if (w->word.n)
		qsort(w->word.v, w->word.n, sizeof *w->word.v, order_words);
	for (size_t i = 0; i < w->word.n; i++)
		if (n == 0 || !str_is(w->word.v[n - 1], w->word.v[i]))
			w->word.v[n++] = w->word.v[i];
	w->word.n = n;
}

struct word_list
words_of_passages(struct arena *arena, struct str passages)
{
	struct words w = {.arena = arena};
	struct passage p;

	while (passage_next(&passages, &p))
		add_folded(&w, fold_word(arena, p.text));
	sort_words(&w);
	return (struct word_list){w.word.v, w.word.n};
}

bool
word_list_has(const struct word_list *w, struct str word)
{
	return w->n && bsearch(&word, w->v, w->n, sizeof *w->v, order_words);
}

/* ---- the parcel --------------------------------------------------------- */

void
parcel_make(struct arena *arena, const struct grammar *g, struct parcel *p)
{
	const struct tamis_style plain = {0};
	const struct writer *json = tamis_writer_find("json");
	struct buf text = buf_in(arena);
	struct word_list words;
	struct packed packed;

	json->write(p->draft, g, &plain, &text);
	p->json = pack_json(arena, buf_str(&text));
	p->passages = passages_of_draft(arena, p->draft);
	p->hash = parcel_hash(p, p->draft->script->source);
	packed = (struct packed){
	    .source = p->draft->script->source, .passages = p->passages, .json = p->json};
	p->pack = pack_deflate(arena, &packed);
	words = words_of_passages(arena, p->passages);
	p->word = words.v;
	p->words = words.n;
}
