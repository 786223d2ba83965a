/* SPDX-License-Identifier: ISC */
/*
 * The options that subcommands share, and the reading of a command line.
 * Only cli/ includes this.
 */
#ifndef TAMIS_REQUEST_H
#define TAMIS_REQUEST_H

#include "cli/command.h"

enum asked { ASKED_RUN, ASKED_HELP, ASKED_WRONG };

/* argv[0] is the subcommand's name. ASKED_WRONG: the complaint is printed. */
enum asked request_read(struct request *r, const struct command *c, int argc, char **argv);
/* How recipes are to be written; false after a complaint. */
bool request_style(const struct request *r, struct tamis_style *out);
/* The subcommand's help, on standard output. */
void request_help(const struct command *c);

#endif
