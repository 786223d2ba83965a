/* SPDX-License-Identifier: ISC */
/*
 * Lines to be completed for what is still open:
 *   # warning: 190 has no scale ...
 *   #0:44 missing-scale "a hundred and ninety"
 */
#include "answer/answers.h"
#include "base/print.h"

enum { WORDS_MAX = 60 };

#define ELLIPSIS "\xe2\x80\xa6"

/* The first words, an ellipsis for the others. */
static struct str
clipped(struct arena *a, struct str words)
{
	size_t n = WORDS_MAX;

	if (words.n <= WORDS_MAX)
		return words;
	while (n > 0 && words.p[n] != ' ')
		n--;
	return n ? arena_fmt(a, "%.*s" ELLIPSIS, (int)n, words.p) : words;
}

static void
put_quoted(struct buf *b, struct str words)
{
	buf_put_char(b, '"');
	for (size_t i = 0; i < words.n; i++) {
		if (words.p[i] == '"' || words.p[i] == '\\')
			buf_put_char(b, '\\');
		buf_put_char(b, words.p[i]);
	}
	buf_put_char(b, '"');
}

static void
put_finding(struct buf *b, const struct finding *f, struct str words)
{
	static const char *const severity[] = {"note", "warning", "error"};

	buf_fmt(
	    b, "\n# %s: %.*s\n#", severity[f->severity], (int)f->message.n, f->message.p);
	if (f->place.at_ms >= 0)
		print_clock(b, f->place.at_ms);
	else
		buf_put_char(b, '-');
	buf_fmt(b, " %s ", f->kind->code);
	put_quoted(b, clipped(b->arena, words));
	buf_put_char(b, ' ');
	buf_put(b, f->suggestion);
	buf_put_char(b, '\n');
}

static bool
is_asked(const struct answers *w, const struct finding *f, struct str words)
{
	for (size_t i = 0; i < w->answer.n; i++)
		if (w->answer.v[i].asked && str_is_z(w->answer.v[i].code, f->kind->code) &&
		    words_fit(w->answer.v[i].words, words))
			return true;
	return false;
}

static void
put_heading(struct buf *b, struct str name)
{
	buf_fmt(b,
	    "# What tamis asks about %.*s. To answer, take the # off a line, and write\n"
	    "# behind its words what is meant (190 °C, 1 tablespoon, 4 servings), or stet\n"
	    "# and the reason to let it stand. tamis check and tamis write read this "
	    "file.\n"
	    "# A new name: rename dish \"old\" to \"new\"; also part and ingredient.\n",
	    (int)name.n, name.p);
}

size_t
tamis_ask(const struct draft *d, struct str answers, struct buf *out)
{
	struct answers w = {.a = out->arena};
	size_t asked = 0;

	answers_read(&w, answers);
	for (size_t i = 0; i < d->findings; i++) {
		const struct finding *f = &d->finding[i];
		struct str words = said_words(out->arena, d->script, f);

		if (f->status != STATUS_OPEN || !words.n || is_asked(&w, f, words))
			continue;
		if (asked++ == 0 && answers.n == 0)
			put_heading(out, d->script->name);
		put_finding(out, f, words);
	}
	return asked;
}
