/* SPDX-License-Identifier: ISC */
/*
 * What a check has in hand, and how it raises a finding. Every check is
 * declared here, from findings.def.
 */
#ifndef TAMIS_FINDING_H
#define TAMIS_FINDING_H

#include "grammar/grammar.h"
#include "tamis.h"

/* Indexes of a dish, its part and the part's step; -1 none. */
struct spot {
	int dish, part, step;
};

/* Something of the draft begins here. */
struct mark {
	uint32_t beg;
	struct spot spot;
};

struct check {
	const struct draft *draft;
	const struct grammar *grammar;
	struct arena *arena;
	const struct finding_kind *kind; /* of the check that runs */
	VEC(struct finding) finding;
	VEC(struct mark) mark; /* in script order */
};

/* For printf's %.*s. */
#define SAY(s) (int)(s).n, (s).p

/* Adds a finding of the running check, as severe as its kind. The result holds
 * until the next one is raised. */
__attribute__((format(printf, 4, 5))) struct finding *finding_raise(
    struct check *k, struct place at, struct spot spot, const char *fmt, ...);
/* Adds a related place to the finding raised last. */
__attribute__((format(printf, 3, 4))) void finding_relate(
    struct check *k, struct place at, const char *fmt, ...);

/* Fills k->mark; once, before the checks run. */
void finding_index(struct check *k);
/* The dish, part and step that a place belongs to: of the last thing that
 * begins at or before it. */
struct spot finding_spot(const struct check *k, struct place at);

/* The script's words between two source offsets; empty without a script. */
struct str finding_words(const struct check *k, uint32_t beg, uint32_t end);

#define FINDING(name, code, severity, summary, explain) void check_##name(struct check *k);
#include "findings.def"
#undef FINDING

#endif
