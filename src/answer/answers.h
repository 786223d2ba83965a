/* SPDX-License-Identifier: ISC */
/*
 * An answers file as it was read, and what was found of it in the draft. For
 * src/answer/ only.
 */
#ifndef TAMIS_ANSWERS_H
#define TAMIS_ANSWERS_H

#include "answer/answer.h"

struct answer {
	struct err_place place; /* in the answers file */
	int64_t at_ms;          /* -1 where the script has no times */
	struct str code, words;
	struct str value; /* what is meant; of `stet`, the reason */
	bool stet;
	bool asked;  /* a commented line that waits to be completed */
	int finding; /* the one that it answers; -1 none */
	bool judged; /* its value was put in, and may be at fault itself */
	bool misfit; /* the value is none that the code can have */
};

enum rename_what { RENAME_DISH, RENAME_PART, RENAME_INGREDIENT };

struct rename {
	struct err_place place;
	enum rename_what what;
	struct str from, to;
};

struct answers {
	const struct maker *m;
	struct draft *d;
	const struct grammar *g;
	struct arena *a;
	VEC(struct answer) answer;
	VEC(struct rename) rename;
	VEC(struct answer_problem) problem;
};

/* lines.c: reads the file; what is wrong becomes a problem. */
void answers_read(struct answers *w, struct str text);
/* Adds a problem of a line. */
__attribute__((format(printf, 4, 5))) void answers_complain(
    struct answers *w, struct err_place at, enum severity severity, const char *fmt, ...);

/* The words of the script that a finding is about. */
static inline struct str
said_words(struct arena *a, const struct script *s, const struct finding *f)
{
	return script_words(a, s, script_text(s, f->place.span));
}
/* words.c */
/* The same words, whatever their case and blanks; an ellipsis at the end of
 * `given` stands for what follows. */
bool words_fit(struct str given, struct str words);
/* Where the words stand in the script, nearest to the time; false where they
 * do not. */
bool words_find(const struct script *s, struct str given, int64_t at_ms, struct place *out);

/* value.c: what a value says. */
struct value {
	bool measured; /* amount holds */
	enum measure_kind kind;
	struct amount amount;
	bool unit_stated;
	int64_t hold_ms;  /* of a temperature, "for 2 minutes"; 0 none */
	struct str noun;  /* the word after a bare number, singular: "serving" */
	struct str heat;  /* "medium-high" */
	struct str words; /* as given */
};
struct value value_read(const struct answers *w, struct str text);

/* apply.c: puts the value where the finding is. False, with a problem, where
 * the code can't have such a value. */
bool answer_apply(struct answers *w, struct answer *x, const struct finding *f);
/* rename.c */
void answer_rename(struct answers *w, const struct rename *r);

/* edit.c: changes in the words of a step, its slots kept in their place. */
struct edit {
	struct arena *a;
	struct step *s;
};
/* Values that are printed in the step as `from` are printed as `to`. */
void edit_revalue(struct edit e, enum measure_kind kind, const struct amount *from,
    const struct amount *to, struct str food);
void edit_retime(struct edit e, const struct duration *from, const struct duration *to);
/* Words in place of words, at word borders. */
void edit_reword(struct edit e, struct str from, struct str to);
/* A sentence before or after the others. */
void edit_before(struct edit e, struct str sentence);
void edit_after(struct edit e, struct str sentence);
/* " for 10 minutes" at the end of a step of one sentence, else a sentence. */
void edit_time(struct edit e, const struct duration *d);

#endif
