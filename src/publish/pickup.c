/* SPDX-License-Identifier: ISC */
/*
 * Makes pickups of findings: the sentence with its times, and the words that
 * would mend it, from what the author answered or what the finding suggests.
 */
#include "publish/pickup.h"

/* ---- what kind of fault a code is ------------------------------------------ */

enum mend {
	MEND_SAY,  /* a value that is said is wrong */
	MEND_FILL, /* a value that is said is not all of it */
	MEND_ADD,  /* a value is missing */
	MEND_TELL, /* a caution */
	MEND_NONE  /* nothing that words in the video can mend */
};

struct fault {
	const char *code;
	enum mend mend;
	bool safety;
	const char *before; /* what stands before the value in a caption */
};

static const struct fault faults[] = {
    {"missing-temperature", MEND_ADD, false, "Heat: "},
    {"missing-scale", MEND_FILL, false, ""},
    {"missing-time", MEND_ADD, false, "Time: "},
    {"missing-doneness", MEND_ADD, true, "Done at: "},
    {"missing-amount", MEND_ADD, false, "Amount: "},
    {"missing-yield", MEND_ADD, false, ""},
    {"missing-size", MEND_ADD, false, "Size: "},
    {"vague-amount", MEND_FILL, false, ""},
    {"unit-mismatch", MEND_SAY, false, ""},
    {"ambiguous-unit", MEND_SAY, false, ""},
    {"conflicting-amount", MEND_SAY, false, ""},
    {"conflicting-temperature", MEND_SAY, false, ""},
    {"conflicting-time", MEND_SAY, false, ""},
    {"conflicting-yield", MEND_SAY, false, ""},
    {"time-claim", MEND_SAY, false, ""},
    {"implausible-temperature", MEND_SAY, false, ""},
    {"implausible-amount", MEND_SAY, false, ""},
    {"implausible-time", MEND_SAY, false, ""},
    {"reversed-range", MEND_SAY, false, ""},
    {"self-correction", MEND_SAY, false, ""},
    {"possible-mishearing", MEND_NONE, false, ""},
    {"below-safe-temperature", MEND_SAY, true, ""},
    {"unsafe-advice", MEND_TELL, true, ""},
    {"raw-ingredient", MEND_TELL, true, ""},
    {"allergen-claim", MEND_TELL, true, ""},
    {"unlisted-ingredient", MEND_ADD, false, "Also needed: "},
};

static const struct fault *
fault_of(const struct finding *f)
{
	for (size_t i = 0; i < sizeof faults / sizeof *faults; i++)
		if (strcmp(faults[i].code, f->kind->code) == 0)
			return &faults[i];
	return NULL;
}

/* ---- the sentence, and its times -------------------------------------------- */

static bool
ends_sentence(struct str text, size_t at)
{
	char c = text.p[at];
	bool last = at + 1 == text.n || is_blank(text.p[at + 1]) || text.p[at + 1] == '\n';

	return last && (c == '.' || c == '!' || c == '?');
}

static const struct cue *
cue_at(const struct script *s, uint32_t at)
{
	const struct cue *found = s->cues ? &s->cue[0] : NULL;

	for (size_t i = 0; i < s->cues && s->cue[i].text.beg <= at; i++)
		found = &s->cue[i];
	return found;
}

enum { SENTENCE_MAX = 200 };

/* The sentence around the words. Captions may have no full stops: there, the
 * cues that hold the words. */
static struct span
sentence_around(const struct script *s, struct span words)
{
	const struct cue *first = cue_at(s, words.beg);
	const struct cue *last = cue_at(s, words.end ? words.end - 1 : 0);
	struct span x = words;
	uint32_t low = 0, high = (uint32_t)s->text.n;

	if (first)
		low = first->paragraph || first == s->cue ? first->text.beg
							  : first[-1].text.beg;
	if (last)
		high = last + 1 < s->cue + s->cues && !last[1].paragraph ? last[1].text.end
									 : last->text.end;
	while (x.beg > low && !ends_sentence(s->text, x.beg - 1))
		x.beg--;
	while (x.end < high && (x.end == x.beg || !ends_sentence(s->text, x.end - 1)))
		x.end++;
	if (x.end - x.beg > SENTENCE_MAX && first && last &&
	    last->text.end - first->text.beg < x.end - x.beg)
		x = (struct span){first->text.beg, last->text.end};
	return x;
}

/* Some 150 words a minute (common practice), where a cue has no end. */
enum { MS_A_BYTE = 67 };

/* By the share of the cue's words before it. */
static int64_t
time_of(const struct script *s, uint32_t at)
{
	const struct cue *c = cue_at(s, at);
	int64_t bytes;

	if (!c || c->beg_ms < 0)
		return -1;
	bytes = (int64_t)c->text.end - c->text.beg;
	if (bytes <= 0 || at <= c->text.beg)
		return c->beg_ms;
	at = at < c->text.end ? at : c->text.end;
	if (c->end_ms <= c->beg_ms)
		return c->beg_ms + MS_A_BYTE * ((int64_t)at - c->text.beg);
	return c->beg_ms + (c->end_ms - c->beg_ms) * ((int64_t)at - c->text.beg) / bytes;
}

/* Out is a whole second, after the last word. */
static void
set_times(struct pickup *p, const struct script *s, struct span sentence)
{
	p->in_ms = time_of(s, sentence.beg);
	p->out_ms = time_of(s, sentence.end ? sentence.end - 1 : 0);
	if (p->in_ms >= 0)
		p->out_ms = p->out_ms / 1000 * 1000 + 1000;
}

/* ---- the words that mend it ---------------------------------------------------- */

/* The value inside the words of the finding: its measure, or all of them. */
static struct span
value_inside(const struct draft *d, const struct finding *f)
{
	for (size_t i = 0; i < d->measures; i++) {
		struct span m = d->measure[i].place.span;

		if (m.beg >= f->place.span.beg && m.end <= f->place.span.end &&
		    m.end > m.beg)
			return script_text(d->script, m);
	}
	return script_text(d->script, f->place.span);
}

static struct str
mended_line(struct arena *a, const struct script *s, struct span sentence,
    struct span wrong, struct str right)
{
	struct buf b = buf_in(a);

	buf_put(&b, str_cut(s->text, sentence.beg, wrong.beg));
	buf_put(&b, right);
	buf_put(&b, str_cut(s->text, wrong.end, sentence.end));
	for (size_t i = 0; i < b.n; i++)
		if (b.v[i] == '\n')
			b.v[i] = ' ';
	return str_trim(buf_str(&b));
}

static void
mend_value(struct arena *a, const struct draft *d, struct pickup *p, struct str right)
{
	struct span words = script_text(d->script, p->finding->place.span);
	struct span wrong = value_inside(d, p->finding);
	struct str said = script_words(a, d->script, wrong);

	p->line =
	    mended_line(a, d->script, sentence_around(d->script, words), wrong, right);
	p->caption = right;
	p->correction = arena_fmt(
	    a, "\"%.*s\" should be: %.*s.", (int)said.n, said.p, (int)right.n, right.p);
}

/* "Heat: high" */
static void
mend_missing(struct arena *a, const struct draft *d, struct pickup *p, struct str right)
{
	const struct fault *x = fault_of(p->finding);
	struct str said =
	    script_words(a, d->script, script_text(d->script, p->finding->place.span));

	p->caption = arena_fmt(a, "%s%.*s", x->before, (int)right.n, right.p);
	p->correction = arena_fmt(
	    a, "At \"%.*s\": %.*s.", (int)said.n, said.p, (int)p->caption.n, p->caption.p);
}

/* What the message says behind the words that it quotes. */
static struct str
advice_of(const struct finding *f)
{
	size_t at = str_find(f->message, STR("\": "));

	if (f->answer.n)
		return f->answer;
	return at < f->message.n ? str_cut(f->message, at + 3, f->message.n) : f->message;
}

static void
mend(struct arena *a, const struct draft *d, struct pickup *p, const struct fault *x)
{
	struct str right =
	    p->finding->answer.n ? p->finding->answer : p->finding->suggestion;

	p->record = x->mend == MEND_SAY;
	p->safety = x->safety;
	if (x->mend == MEND_TELL) {
		p->caption = p->correction = advice_of(p->finding);
		if (!str_ends(p->correction, STR(".")))
			p->correction =
			    arena_fmt(a, "%.*s.", (int)p->correction.n, p->correction.p);
		p->safety =
		    str_find(p->correction, STR("ocal food codes")) == p->correction.n;
	} else if (right.n && (x->mend == MEND_SAY || x->mend == MEND_FILL)) {
		mend_value(a, d, p, right);
	} else if (right.n) {
		mend_missing(a, d, p, right);
	}
}

/* A fault of the video: not of the captions file, and not let stand. */
static bool
is_wanted(const struct finding *f)
{
	const struct fault *x = fault_of(f);

	return x && x->mend != MEND_NONE && f->severity >= SEVERITY_WARNING &&
	       f->status != STATUS_STET;
}

struct pickup *
pickups_of(struct arena *a, const struct draft *d, size_t *count)
{
	VEC(struct pickup) v = {NULL, 0, 0};

	for (size_t i = 0; i < d->findings; i++) {
		const struct finding *f = &d->finding[i];
		struct pickup p = {.finding = f};
		struct span sentence;

		if (!is_wanted(f))
			continue;
		sentence =
		    sentence_around(d->script, script_text(d->script, f->place.span));
		set_times(&p, d->script, sentence);
		p.said = script_words(a, d->script, sentence);
		mend(a, d, &p, fault_of(f));
		vec_push(a, &v, p);
	}
	*count = v.n;
	return v.v;
}
