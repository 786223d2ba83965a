/* SPDX-License-Identifier: ISC */
/*
 * From the episodes named on the command line to one text for each, drafted
 * by a worker thread per core and handed on in the order they were named.
 * Only cli/ includes this.
 */
#ifndef TAMIS_EPISODES_H
#define TAMIS_EPISODES_H

#include "cli/command.h"
#include "cli/look.h"
#include "cli/request.h"

#include <stdio.h>

struct episode {
	const char *path; /* as given; "-" is standard input */
	struct str name;  /* without folders */
	struct arena arena;
	struct buf out;           /* what render() made of it */
	const char *answers_path; /* NULL none */
	struct str answers;
	struct buf aside;    /* for standard error */
	struct draft *draft; /* kept for run.finish; else NULL */
	enum outcome outcome;
	struct err err;
};

struct run {
	struct look look;
	const struct writer *writer; /* NULL where the command needs none */
	struct tamis_style style;
	/* Fills e->out and returns the episode's outcome; called by workers. */
	enum outcome (*render)(
	    struct episode *e, const struct draft *d, const struct run *run);
	/* Takes e->out away, in order, after `before` others; NULL: to standard
	 * output. Not called for what can't be read. */
	enum outcome (*take)(const struct episode *e, const struct run *run, size_t before);
	/* Prints one document for all episodes, after the last; else NULL. */
	void (*finish)(const struct episode *e, size_t episodes, const struct run *run);
	const struct tamis_selection *selection; /* of findings; NULL: all */
	const struct report *report;             /* what finish() prints */
	const struct request *request;
	const struct grammar *grammar; /* set by episodes_run() */
};

/* Reads a stream to its end; false where that fails or is over the cap. */
bool episodes_read(FILE *f, struct buf *b, const char *name, struct err *e);
/* The worst outcome of all. Complains of what can't be read. */
enum outcome episodes_run(struct run *run);

#endif
