/* SPDX-License-Identifier: ISC */
/*
 * What the tests of faults share: the folders, the program, what must hold of an
 * archive in the end.
 */
#ifndef TAMIS_FAULTS_H
#define TAMIS_FAULTS_H

#include "base/buf.h"

enum { EPISODES = 2000, KILLS = 50 };

struct site {
	struct arena arena;
	const char *tamis, *made; /* programs */
	const char *folder;       /* of all below */
	const char *list;         /* the paths of the episodes, a line each */
	const char *half[2];      /* of every second one */
	const char *expected;     /* the export of an archive that nothing happened to */
	double begin_s;           /* a run that has nothing left to do */
	double whole_s;           /* a run that has everything to do */
};

/* FOLDER/name */
const char *site_path(struct site *s, const char *name);
/* Puts each episode of the list into the archive; the exit status. What it says
 * goes to FOLDER/said. */
int site_keep(struct site *s, const char *archive, const char *list);
/* Ends the test with the reason and what was said last, unless ok. */
void site_need(struct site *s, bool ok, const char *what);
/* The last run said this. */
bool site_said(struct site *s, const char *words);
/* Prints what the last run said. */
void site_repeat(struct site *s);
/* The archive is sound, and what is in it is what has to be. */
void site_verify(struct site *s, const char *archive);

/* Each ends the test when something does not hold. */
void fault_kills(struct site *s);
void fault_full_disk(struct site *s);
void fault_size_limit(struct site *s);
void fault_read_only(struct site *s);
void fault_crowd(struct site *s);

#endif
