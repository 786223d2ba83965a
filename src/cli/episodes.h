/* SPDX-License-Identifier: ISC */
/*
 * From the episodes named on the command line to one text for each, drafted
 * by a worker thread per core and handed on in the order they were named.
 * Only cli/ includes this.
 */
#ifndef TAMIS_EPISODES_H
#define TAMIS_EPISODES_H

#include "cli/command.h"
#include "cli/request.h"
#include "term/look.h"

#include <stdio.h>

struct episode {
	const char *path; /* as given; "-" is standard input */
	struct str name;  /* without folders */
	struct arena arena;
	struct buf out;           /* what render() made of it */
	const char *answers_path; /* NULL none */
	struct str answers;
	struct buf aside;   /* for standard error */
	const char *region; /* set by read() where it is not the request's */
	const char *profile;
	void *made; /* by read() or render(), in the arena, for take() */
	enum outcome outcome;
	struct err err;
	struct draft *draft; /* freed after take() or finish() */
};

struct run {
	struct look look;
	const struct writer *writer; /* NULL where the command needs none */
	struct tamis_style style;
	/* The source of an episode; NULL: the file of that name. Called by workers,
	 * one at a time; sets e->err on failure. */
	bool (*read)(struct episode *e, const struct run *run, struct buf *source);
	/* The episode needs no draft, as sets e->outcome; NULL: all do. */
	bool (*skip)(struct episode *e, struct str source, const struct run *run);
	/* Adds to the draft; called by workers, one at a time. May be NULL. */
	void (*amend)(struct episode *e, struct draft *d, const struct run *run);
	/* Fills e->out and returns the episode's outcome; called by workers. */
	enum outcome (*render)(
	    struct episode *e, const struct draft *d, const struct run *run);
	/* Takes e->out away, in order, after `before` others; NULL: to standard
	 * output. Not called for what can't be read. OUTCOME_MACHINE ends the run. */
	enum outcome (*take)(const struct episode *e, const struct run *run, size_t before);
	/* Told of what can't be read, in order; NULL: complains of it. */
	void (*fail)(const struct episode *e, const struct run *run);
	/* Prints one document for all episodes, after the last; else NULL. */
	void (*finish)(const struct episode *e, size_t episodes, const struct run *run);
	const struct tamis_selection *selection; /* of findings; NULL: all */
	const struct report *report;             /* what finish() prints */
	const struct request *request;
	const struct grammar *grammar; /* set by episodes_run() */
	void *context;                 /* of the command */
};

/* Reads a stream to its end; false where that fails or is over the cap. */
bool episodes_read(FILE *f, struct buf *b, const char *name, struct err *e);
/* The worst outcome of all. */
enum outcome episodes_run(struct run *run);

#endif
