/* SPDX-License-Identifier: ISC */
/*
 * Reads the lines of an answers file:
 *   0:44 missing-scale "a hundred and ninety" 190 °C
 */
#include <stdarg.h>
#include <stdio.h>

#include "answer/answers.h"

#define OPEN_QUOTE "\xe2\x80\x9c"
#define CLOSE_QUOTE "\xe2\x80\x9d"

struct line {
	struct answers *w;
	struct str all, rest;
	uint32_t number;
	bool quiet; /* a comment: what does not read as an answer is none */
};

void
answers_complain(
    struct answers *w, struct err_place at, enum severity severity, const char *fmt, ...)
{
	char text[512];
	struct answer_problem p = {.place = at, .severity = severity};
	va_list args;

	va_start(args, fmt);
	vsnprintf(text, sizeof text, fmt, args);
	va_end(args);
	p.text = arena_str(w->a, str_of(text));
	vec_push(w->a, &w->problem, p);
}

static struct err_place
place_now(const struct line *l)
{
	return (struct err_place){l->number, (uint32_t)(l->rest.p - l->all.p) + 1};
}

static bool
expected(struct line *l, const char *what)
{
	if (!l->quiet)
		answers_complain(l->w, place_now(l), SEVERITY_ERROR,
		    "expected %s; the line is left out", what);
	return false;
}

static void
skip_blanks(struct line *l)
{
	while (l->rest.n && is_blank(l->rest.p[0]))
		l->rest = str_cut(l->rest, 1, l->rest.n);
}

static struct str
next_word(struct line *l)
{
	size_t n = 0;

	skip_blanks(l);
	while (n < l->rest.n && !is_blank(l->rest.p[n]))
		n++;
	l->rest = str_cut(l->rest, n, l->rest.n);
	return (struct str){l->rest.p - n, n};
}

/* "0:44", "1:02:03"; "-" is no time. */
static bool
read_clock(struct str word, int64_t *ms)
{
	int64_t s = 0;
	size_t colons = 0;

	*ms = -1;
	if (str_is_z(word, "-"))
		return true;
	while (word.p) {
		struct str piece = str_next(&word, ':');
		uint64_t v;

		if (!str_to_u64(piece, &v) || v > 100000 || (colons > 0 && v > 59))
			return false;
		s = s * 60 + (int64_t)v;
		colons += word.p != NULL;
	}
	*ms = s * 1000;
	return colons == 1 || colons == 2;
}

/* The bytes of a quote mark at the front; 0 for none. */
static size_t
quote_length(struct str s, const char *curly)
{
	if (s.n && s.p[0] == '"')
		return 1;
	return str_starts(s, str_of(curly)) ? strlen(curly) : 0;
}

static bool
read_quoted(struct line *l, struct str *out)
{
	struct buf b = buf_in(l->w->a);
	size_t mark;

	skip_blanks(l);
	mark = quote_length(l->rest, OPEN_QUOTE);
	if (mark == 0)
		return expected(l, "words in double quotes");
	for (size_t i = mark; i < l->rest.n; i++) {
		struct str rest = str_cut(l->rest, i, l->rest.n);

		mark = quote_length(rest, CLOSE_QUOTE);
		if (mark) {
			l->rest = str_cut(rest, mark, rest.n);
			*out = str_trim(buf_str(&b));
			return out->n > 0 || expected(l, "words between the quotes");
		}
		if (rest.p[0] == '\\' && rest.n > 1)
			i++;
		buf_put_char(&b, l->rest.p[i]);
	}
	return expected(l, "a quote that closes the words");
}

/* ---- the two kinds of line ------------------------------------------------ */

static bool
read_what(struct str word, enum rename_what *out)
{
	static const char *const names[] = {[RENAME_DISH] = "dish",
	    [RENAME_PART] = "part",
	    [RENAME_INGREDIENT] = "ingredient"};

	for (size_t i = 0; i < sizeof names / sizeof *names; i++)
		if (str_is_z(word, names[i])) {
			*out = (enum rename_what)i;
			return true;
		}
	return false;
}

static bool
read_rename(struct line *l)
{
	struct rename r = {.place = {l->number, 1}};

	if (!read_what(next_word(l), &r.what))
		return expected(l, "dish, part or ingredient");
	if (!read_quoted(l, &r.from))
		return false;
	if (!str_is_z(next_word(l), "to"))
		return expected(l, "\"to\" between the old name and the new one");
	if (!read_quoted(l, &r.to))
		return false;
	if (str_trim(l->rest).n)
		return expected(l, "nothing after the new name");
	vec_push(l->w->a, &l->w->rename, r);
	return true;
}

static bool
is_code(struct str word)
{
	for (size_t i = 0; tamis_finding_kind(i); i++)
		if (str_is_z(word, tamis_finding_kind(i)->code))
			return true;
	return false;
}

static bool
read_value(struct line *l, struct answer *x)
{
	struct str value = str_trim(l->rest);

	if (l->quiet)
		return true;
	if (!value.n)
		return expected(l, "what is meant, or stet and a reason");
	if (str_is_z(value, "stet") || str_starts(value, STR("stet "))) {
		x->stet = true;
		value = str_trim(str_cut(value, strlen("stet"), value.n));
		if (!value.n)
			return expected(l, "a reason after stet");
	}
	x->value = arena_str(l->w->a, value);
	return true;
}

static bool
read_answer(struct line *l, struct str first)
{
	struct answer x = {.place = {l->number, 1}, .finding = -1, .asked = l->quiet};
	struct str code;

	if (!read_clock(first, &x.at_ms)) {
		l->rest = first;
		return expected(l, "a time like 2:05, or rename");
	}
	code = next_word(l);
	if (!is_code(code)) {
		l->rest = code;
		return expected(l, "a code that tamis explain lists");
	}
	x.code = arena_str(l->w->a, code);
	if (!read_quoted(l, &x.words) || !read_value(l, &x))
		return false;
	vec_push(l->w->a, &l->w->answer, x);
	return true;
}

static void
read_line(struct line *l)
{
	struct str first;

	skip_blanks(l);
	if (str_starts(l->rest, STR("#"))) {
		l->quiet = true;
		l->rest = str_cut(l->rest, 1, l->rest.n);
		skip_blanks(l);
	}
	if (!l->rest.n)
		return;
	first = next_word(l);
	if (str_is_z(first, "rename") && !l->quiet)
		read_rename(l);
	else
		read_answer(l, first);
}

void
answers_read(struct answers *w, struct str text)
{
	struct line l = {.w = w};

	if (str_starts(text, STR("\xef\xbb\xbf")))
		text = str_cut(text, 3, text.n);
	while (text.p) {
		l.all = l.rest = str_trim(str_next(&text, '\n'));
		l.number++;
		l.quiet = false;
		read_line(&l);
	}
}
