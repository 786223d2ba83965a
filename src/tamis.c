/* SPDX-License-Identifier: ISC */
/*
 * The pipeline from end to end: the public calls that run one stage after the
 * other. The catalogues (writers, findings) are served by their own folders.
 */
#include "tamis.h"

#include "answer/answer.h"
#include "assemble/assemble.h"
#include "check/check.h"
#include "check/facts.h"
#include "clause/maker.h"
#include "grammar/grammar.h"
#include "house/restyle.h"
#include "house/style.h"
#include "read/read.h"
#include "read/stamp.h"
#include "remark/remark.h"
#include "scan/show.h"

struct grammar *
tamis_grammar_open(const char *dir, const char *language, struct err *e)
{
	return grammar_open(dir, language, e);
}

void
tamis_grammar_close(struct grammar *g)
{
	grammar_close(g);
}

/* The arena moves into its own first block: freeing it frees the draft. */
static struct arena *
settle(struct arena *a)
{
	struct arena *home = arena_new(a, struct arena);

	*home = *a;
	return home;
}

struct draft *
tamis_draft(const struct grammar *g, const struct tamis_options *o, struct str source,
    const char *name, struct err *e)
{
	struct arena first, *a;
	struct script *s;
	struct maker *m;
	struct draft *d;

	arena_init(&first);
	a = settle(&first);
	s = script_read(a, source, name, o->max_source, e);
	if (!s) {
		first = *a;
		arena_release(&first);
		return NULL;
	}
	m = assemble_draft(a, g, s, o);
	remark_draft(m);
	d = m->d;
	d->arena = a;
	d->profile = o->profile;
	d->profile = facts_profile(d);
	check_draft(d, g);
	if (o->answers.n)
		answer_draft(m, o->answers);
	return d;
}

void
tamis_draft_free(struct draft *d)
{
	struct arena a;

	if (!d)
		return;
	a = *d->arena;
	arena_release(&a);
}

bool
tamis_style_read(struct tamis_style *s, struct arena *a, const struct grammar *g,
    struct str text, const char *name, struct err *e)
{
	return style_read(s, a, g, text, name, e);
}

struct draft *
tamis_restyle(
    const struct draft *d, const struct grammar *g, const struct tamis_style *style)
{
	return restyle_draft(d, g, style);
}

static bool
read_spot(struct sought *spot, const char *at, const char *word, struct err *e)
{
	size_t n = 0;

	*spot = (struct sought){-1, str_of(word)};
	return !at || (clock_read(str_of(at), &n, &spot->at_ms) == CLOCK_READ && !at[n]) ||
	       err_set(e, at, "is no time; write it as 1:20 or 1:02:03");
}

bool
tamis_tags(const struct grammar *g, const struct script *s, const char *at,
    const char *word, struct buf *out, struct err *e)
{
	struct arena scratch;
	struct chart c;
	struct sought spot;
	bool ok = true;

	if (!read_spot(&spot, at, word, e))
		return false;
	arena_init(&scratch);
	chart_make(&c, g, s, &scratch);
	if (at || word)
		ok = chart_show_spot(out, &c, spot) ||
		     err_set(e, word ? word : at, "stands nowhere there");
	else
		chart_show(out, &c);
	arena_release(&scratch);
	return ok;
}
