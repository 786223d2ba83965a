/* SPDX-License-Identifier: ISC */
/*
 * What a subcommand is and what it is asked. One file per subcommand, each
 * ending in its `const struct command command_NAME`, and one row in
 * commands.def. Only cli/ includes this.
 */
#ifndef TAMIS_COMMAND_H
#define TAMIS_COMMAND_H

#include "tamis.h"

/* Exit status of the program; the worst of several episodes wins. */
enum outcome {
	OUTCOME_CLEAN,    /* nothing at error or warning level */
	OUTCOME_FINDINGS, /* something */
	OUTCOME_UNUSABLE, /* wrong usage, or an input that can't be read */
	OUTCOME_MACHINE   /* the machine failed: memory, a disk that is full */
};

/* An option as --help prints it. */
struct choice {
	const char *name;
	const char *value; /* what stands behind it: "FILE"; NULL: nothing does */
	const char *help;
};

/* An option of the command's own, as it was given. */
struct given {
	const char *name, *value;
};

/* The command line behind the subcommand's name; NULL where not given. An
 * option that takes no value is its own name. */
struct request {
	const char *format, *output, *region, *profile, *grammar, *archive;
	const char *severity, *only, *except, *answers, *ask;
	struct given *given; /* in the order of the command line */
	size_t givens;
	const char *tags;
	const char *units, *servings, *scale, *style, *force;
	const char *video, *anyway; /* anyway: not NULL where it is asked for */
	char *const *operand;
	size_t operands;
	struct arena arena; /* for what a command makes of all this */
};

struct command {
	const char *name;
	const char *help;         /* one line */
	const char *usage;        /* its operands and what it does, for its --help */
	const char *options;      /* the shared ones it takes: "format output" */
	const struct choice *own; /* those of its own, to one without a name */
	enum outcome (*run)(const struct request *r);
	void (*print_formats)(void); /* a line each; NULL without --format */
};

/* In table order; NULL past the last. */
const struct command *command_at(size_t index);

/* Prints "tamis: " and the message on standard error. */
__attribute__((format(printf, 1, 2))) void complain(const char *fmt, ...);
/* The same for an error with its place: "file:line:column: text". */
void complain_of(const struct err *e);

#endif
