/* SPDX-License-Identifier: ISC */
/*
 * Cuts script text into raw tokens, then joins those that are one lexicon
 * entry.
 *
 *     "1½ cups self-raising flour" -> 1 | ½ | cups | self raising flour
 */
#include "scan/token.h"

#include "base/fold.h"
#include "scan/glyph.h"

enum { JOIN_MAX = 8 };

struct lexer {
	const struct grammar *g;
	const struct script *s;
	struct arena *a;
	struct str text;
	size_t at, end; /* of the cue */
	uint32_t cue;
	uint8_t flags; /* for the next token */
	struct tokens raw;
};

static char
peek(const struct lexer *x, size_t ahead)
{
	return x->at + ahead < x->end ? x->text.p[x->at + ahead] : '\0';
}

static const struct entry *
entry_of(const struct grammar *g, struct str norm)
{
	const struct entry *e = lexicon_find(&g->lexicon, norm);

	return e ? e : g->unknown;
}

static struct token *
push(struct lexer *x, size_t beg, size_t end, struct str norm)
{
	struct token t = {.text = {(uint32_t)beg, (uint32_t)end},
	    .norm = norm,
	    .entry = entry_of(x->g, norm),
	    .number = {0, 1},
	    .cue = x->cue,
	    .flags = x->flags};

	x->flags = 0;
	vec_push(x->a, &x->raw.token, t);
	return &x->raw.token.v[x->raw.token.n - 1];
}

/* Length of the digits at the front of s. */
static size_t
digits(struct str s)
{
	size_t n = 0;

	while (n < s.n && is_digit(s.p[n]))
		n++;
	return n;
}

/* "1,000" is a thousand; "1,5" one and a half; "2, 3" two numbers. */
static struct str
number_text(struct lexer *x, struct str s, size_t *length)
{
	size_t whole = digits(s), part = digits(str_cut(s, whole + 1, s.n));
	struct buf b = buf_in(x->a);

	*length = whole;
	buf_put(&b, str_cut(s, 0, whole));
	if (whole >= s.n || part == 0)
		return buf_str(&b);
	if (s.p[whole] == ',' && part == 3 && whole <= 3) {
		buf_put(&b, str_cut(s, whole + 1, whole + 4));
		*length += 4;
	} else if (s.p[whole] == '.' || (s.p[whole] == ',' && part <= 2)) {
		buf_put_char(&b, '.');
		buf_put(&b, str_cut(s, whole + 1, whole + 1 + part));
		*length += 1 + part;
	}
	return buf_str(&b);
}

static void
lex_number(struct lexer *x)
{
	size_t n, beg = x->at;
	struct str text = number_text(x, str_cut(x->text, x->at, x->end), &n);
	struct token *t = push(x, beg, beg + n, str_cut(x->text, beg, beg + n));

	t->entry = x->g->digits;
	if (!ratio_parse(text, &t->number))
		t->entry = x->g->unknown;
	x->at += n;
}

static void
lex_vulgar(struct lexer *x, struct ratio value, size_t n)
{
	struct token *t = push(x, x->at, x->at + n, STR("<vulgar>"));

	t->number = value;
	x->at += n;
}

/* A clitic that stands alone, as some captions write: "we 're", "it 's". */
static bool
is_lone_clitic(const struct lexer *x)
{
	static const char *const clitics[] = {"re", "s", "ve", "ll", "m", "d", "em"};
	struct str rest = str_cut(x->text, x->at, x->end);
	size_t n, letters = 0;

	if (rest.n < 2 || !glyph_is_apostrophe(rest, &n))
		return false;
	while (is_alpha(peek(x, n + letters)))
		letters++;
	for (size_t i = 0; i < sizeof clitics / sizeof *clitics; i++)
		if (letters == strlen(clitics[i]) &&
		    str_is(
			fold_word(x->a, str_cut(rest, n, n + letters)), str_of(clitics[i])))
			return true;
	return false;
}

/* The end of the word that begins at x->at. */
static size_t
word_end(const struct lexer *x)
{
	size_t at = x->at, n;

	while (at < x->end) {
		char c = x->text.p[at];
		struct str rest = str_cut(x->text, at, x->end);

		if (is_alpha(c))
			n = 1;
		else if (glyph_is_apostrophe(rest, &n))
			n = at + n < x->end && is_alpha(x->text.p[at + n]) ? n : 0;
		else if ((unsigned char)c < 0x80 || !glyph_is_letter(rest, &n))
			n = 0;
		if (n == 0)
			break;
		at += n;
	}
	return at;
}

/* Where the clitic of a word begins; an apostrophe may take several bytes. */
static size_t
clitic_start(struct str raw, bool negation)
{
	size_t found = raw.n, n;

	for (size_t at = 0; at < raw.n; at += n)
		if (glyph_is_apostrophe(str_cut(raw, at, raw.n), &n)) {
			found = at;
			if (!negation)
				break;
		}
	return negation ? found - 1 : found;
}

/* Pushes a word, its clitic as a token of its own: "we" "'re". */
static void
lex_word(struct lexer *x)
{
	size_t beg = x->at, end = word_end(x), cut, middle;
	struct str raw = str_cut(x->text, beg, end), norm = fold_word(x->a, raw);

	if (is_upper(raw.p[0]))
		x->flags |= TOKEN_CAPITAL;
	cut = lexicon_clitic(norm);
	x->at = end;
	if (cut == norm.n) {
		push(x, beg, end, norm);
		return;
	}
	middle = beg + clitic_start(raw, norm.p[cut] == 'n');
	push(x, beg, middle, str_cut(norm, 0, cut));
	push(x, middle, end, str_cut(norm, cut, norm.n));
}

static bool
last_is(const struct lexer *x, const char *class_name)
{
	unsigned id = grammar_class(x->g, class_name);
	size_t n = x->raw.token.n;

	return n && id < CLASSES_MAX &&
	       classset_has(&x->raw.token.v[n - 1].entry->classes, id);
}

/* Does the cue begin with a word of the class? */
static bool
begins_with(const struct lexer *x, const struct cue *c, const char *class_name)
{
	struct str s = str_trim(str_cut(x->text, c->text.beg, c->text.end));
	unsigned id = grammar_class(x->g, class_name);
	const struct entry *e;
	size_t n = 0;

	while (n < s.n && is_alpha(s.p[n]))
		n++;
	e = n ? lexicon_find(&x->g->lexicon, lexicon_key(x->a, str_cut(s, 0, n))) : NULL;
	return e && id < CLASSES_MAX && classset_has(&e->classes, id);
}

/* "that'll feed 6" */
static bool
is_told_how_many(const struct lexer *x)
{
	unsigned id = grammar_class(x->g, "SERVES");
	size_t n = x->raw.token.n;

	return n > 1 && id < CLASSES_MAX && last_is(x, "DIGITS") &&
	       classset_has(&x->raw.token.v[n - 2].entry->classes, id);
}

/* Before a pause: "feeds six", but not "and six | tablespoons of" */
static bool
ends_in_number(const struct lexer *x, const struct cue *c)
{
	static const char *const on[] = {
	    "UNIT", "TIMEUNIT", "LENGTHUNIT", "DEGREE", "CARDWORD", "SCALE"};

	if (!last_is(x, "CARDWORD"))
		return is_told_how_many(x);
	for (size_t i = 0; i < sizeof on / sizeof *on; i++)
		if (begins_with(x, c, on[i]))
			return false;
	return true;
}

/* A short unit's full stop is no end of a sentence: "2 tbsp. of". */
static bool
is_abbreviation_dot(const struct lexer *x)
{
	const struct token *t = x->raw.token.n ? &x->raw.token.v[x->raw.token.n - 1] : NULL;
	size_t at = 1;

	if (!t || t->text.end != x->at || !last_is(x, "ABBREVIATION"))
		return false;
	while (peek(x, at) == ' ')
		at++;
	return is_lower(peek(x, at)) || is_digit(peek(x, at)) || peek(x, at) == '(';
}

static bool
follows_digits(const struct lexer *x)
{
	size_t n = x->raw.token.n;

	return n && x->raw.token.v[n - 1].text.end == x->at &&
	       (x->raw.token.v[n - 1].entry == x->g->digits ||
		   str_is_z(x->raw.token.v[n - 1].norm, "<vulgar>"));
}

static void
lex_hyphen(struct lexer *x)
{
	bool before =
	    x->raw.token.n && x->raw.token.v[x->raw.token.n - 1].text.end == x->at;
	char next = peek(x, 1);

	if (is_alpha(next) || (unsigned char)next >= 0x80) {
		x->flags |= TOKEN_HYPHEN;
		x->at++;
	} else if (before && is_digit(next) && !follows_digits(x)) {
		x->at++;
	} else {
		push(x, x->at, x->at + 1, STR("-"));
		x->at++;
	}
}

static void
lex_mark(struct lexer *x)
{
	size_t n;
	struct str norm =
	    glyph_mark(str_cut(x->text, x->at, x->end), follows_digits(x), &n);

	if (str_is_z(norm, ".") && (is_abbreviation_dot(x) || last_is(x, "NOEND")))
		norm.n = 0;
	if (str_is_z(norm, ",") && last_is(x, "NOPAUSE"))
		norm.n = 0;
	if (norm.n)
		push(x, x->at, x->at + n, norm);
	x->at += n;
}

static void
lex_one(struct lexer *x)
{
	struct str rest = str_cut(x->text, x->at, x->end);
	char c = rest.p[0];
	struct ratio vulgar;
	size_t n;

	if (is_blank(c)) {
		x->flags |= TOKEN_SPACE;
		x->at++;
	} else if (is_digit(c) ||
		   (c == '.' && is_digit(peek(x, 1)) && !follows_digits(x))) {
		lex_number(x);
	} else if (is_alpha(c) || is_lone_clitic(x)) {
		lex_word(x);
	} else if (c == '-') {
		lex_hyphen(x);
	} else if (glyph_vulgar(rest, &vulgar, &n)) {
		lex_vulgar(x, vulgar, n);
	} else if ((unsigned char)c >= 0x80 && glyph_is_letter(rest, &n)) {
		lex_word(x);
	} else {
		lex_mark(x);
	}
}

/* True where nothing may be read across the border before this cue: unless a
 * spoken phrase plainly goes on ("two" | "tablespoons of"). */
static bool
parts(const struct lexer *x, const struct cue *c)
{
	const struct cue *before = c - 1;

	if (x->cue == 0)
		return false;
	if (c->kind != CUE_SPEECH || before->kind != CUE_SPEECH)
		return true;
	return c->paragraph &&
	       (ends_in_number(x, c) || (!last_is(x, "JOINS") && !last_is(x, "DIGITS")));
}

static bool
is_skipped(const struct cue *c)
{
	return c->kind == CUE_PICTURE || c->kind == CUE_TITLE;
}

static void
lex_cue(struct lexer *x, const struct cue *c)
{
	if (parts(x, c) && x->raw.token.n)
		push(x, c->text.beg, c->text.beg, STR("<break>"));
	x->at = c->text.beg;
	x->end = c->text.end;
	x->flags = TOKEN_SPACE | TOKEN_CUE;
	while (x->at < x->end)
		lex_one(x);
}

/* ---- joining ------------------------------------------------------------ */

static bool
is_wordlike(const struct token *t)
{
	return t->text.end > t->text.beg && t->norm.n &&
	       (is_lower(t->norm.p[0]) || t->norm.p[0] == '\'' ||
		   (unsigned char)t->norm.p[0] >= 0x80);
}

/* unless=A|B on an entry of several words: no entry before a word of these
 * classes, such as "in half" before "a cup". */
static bool
is_hindered(const struct lexer *x, const struct entry *e, size_t next)
{
	struct str classes =
	    e->reading.n ? lexeme_get(e->reading.v[0].lexeme, "unless") : STR("");

	while (classes.n && next < x->raw.token.n) {
		unsigned id = lexicon_class_find(&x->g->lexicon, str_next(&classes, '|'));

		if (id < CLASSES_MAX &&
		    classset_has(&x->raw.token.v[next].entry->classes, id))
			return true;
	}
	return false;
}

/* Words from raw[i] on that are one entry; 1 where only the word itself is. */
static size_t
longest(const struct lexer *x, size_t i, const struct entry **found)
{
	const struct token *t = &x->raw.token.v[i];
	char key[256];
	size_t used = 0, best = 1, most = t->entry->longest;

	*found = t->entry;
	for (size_t n = 0; n < most && i + n < x->raw.token.n && n < JOIN_MAX; n++) {
		struct str word = t[n].norm;
		const struct entry *e;

		if (!is_wordlike(&t[n]) || used + word.n + 2 > sizeof key)
			break;
		if (n)
			key[used++] = ' ';
		memcpy(key + used, word.p, word.n);
		used += word.n;
		e = n ? lexicon_find(&x->g->lexicon, (struct str){key, used}) : NULL;
		if (e && !is_hindered(x, e, i + n + 1)) {
			best = n + 1;
			*found = e;
		}
	}
	return best;
}

static void
join(struct lexer *x, struct tokens *out)
{
	for (size_t i = 0; i < x->raw.token.n;) {
		struct token t = x->raw.token.v[i];
		const struct entry *e;
		size_t n = is_wordlike(&t) ? longest(x, i, &e) : 1;

		if (n > 1) {
			t.entry = e;
			t.norm = e->form;
			t.text.end = x->raw.token.v[i + n - 1].text.end;
		}
		vec_push(x->a, &out->token, t);
		i += n;
	}
}

void
tokens_lex(
    struct tokens *t, const struct grammar *g, const struct script *s, struct arena *a)
{
	struct lexer x = {.g = g, .s = s, .a = a, .text = s->text};

	for (; x.cue < s->cues; x.cue++)
		if (!is_skipped(&s->cue[x.cue]))
			lex_cue(&x, &s->cue[x.cue]);
	*t = (struct tokens){0};
	join(&x, t);
}
