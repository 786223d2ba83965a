/* SPDX-License-Identifier: ISC */
/*
 * The options that subcommands share, and the reading of a command line.
 * Only cli/ includes this.
 */
#ifndef TAMIS_REQUEST_H
#define TAMIS_REQUEST_H

#include "cli/command.h"

enum asked { ASKED_RUN, ASKED_HELP, ASKED_WRONG };

/* argv[0] is the subcommand's name. ASKED_WRONG: the complaint is printed. The
 * request is released whatever comes of it. */
enum asked request_read(struct request *r, const struct command *c, int argc, char **argv);
void request_release(struct request *r);
/* The value of an option of the command's own, the last one given; NULL none. */
const char *request_given(const struct request *r, const char *name);
/* The archive asked for, or the one in the user's data folder, in the arena;
 * NULL where no such folder is known. */
const char *request_archive(const struct request *r, struct arena *a);
/* The subcommand's help, on standard output. */
void request_help(const struct command *c);

#endif
