/* SPDX-License-Identifier: ISC */
/*
 * The program: finds the subcommand, runs it, sees that all it printed went
 * out, and exits. The only exit of the program.
 */
#include "cli/command.h"
#include "cli/request.h"
#include "term/nearest.h"

#include <errno.h>
#include <signal.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>

void
complain(const char *fmt, ...)
{
	va_list ap;

	fputs("tamis: ", stderr);
	va_start(ap, fmt);
	vfprintf(stderr, fmt, ap);
	va_end(ap);
	fputc('\n', stderr);
}

void
complain_of(const struct err *e)
{
	if (e->line)
		fprintf(stderr, "%s:%u:%u: %s\n", e->where, e->line, e->column, e->text);
	else if (e->where[0])
		complain("%s: %s", e->where, e->text);
	else
		complain("%s", e->text);
}

#define COMMAND(name) extern const struct command command_##name;
#include "cli/commands.def"
#undef COMMAND

const struct command *
command_at(size_t index)
{
#define COMMAND(name) &command_##name,
	static const struct command *const commands[] = {
#include "cli/commands.def"
	    NULL};
#undef COMMAND

	return commands[index];
}

static const struct command *
command_named(const char *name)
{
	for (size_t i = 0; command_at(i); i++)
		if (strcmp(command_at(i)->name, name) == 0)
			return command_at(i);
	return NULL;
}

static void
print_usage(FILE *to)
{
	fputs("tamis: from a talking cook's script to written recipes\n\n"
	      "  tamis COMMAND [OPTION...] EPISODE...\n\n"
	      "Commands:\n",
	    to);
	for (size_t i = 0; command_at(i); i++)
		fprintf(to, "  %-10s %s\n", command_at(i)->name, command_at(i)->help);
	fputs("\ntamis COMMAND --help tells more of one; tamis --version.\n"
	      "Exit status: 0 nothing at error or warning level, 1 something was found,\n"
	      "2 wrong usage or unreadable input, 3 the machine failed.\n",
	    to);
}

static enum outcome
complain_of_command(const char *typed)
{
	struct nearest near = nearest_to(typed);

	for (size_t i = 0; command_at(i); i++)
		nearest_offer(&near, command_at(i)->name);
	if (near.best)
		complain("no command %s; did you mean %s?", typed, near.best);
	else
		complain("no command %s; see tamis --help", typed);
	return OUTCOME_UNUSABLE;
}

static enum outcome
run(int argc, char **argv)
{
	enum outcome outcome = OUTCOME_UNUSABLE;
	const struct command *c;
	struct request r;

	if (argc < 2) {
		print_usage(stderr);
		return OUTCOME_UNUSABLE;
	}
	if (strcmp(argv[1], "--help") == 0 || strcmp(argv[1], "-h") == 0) {
		print_usage(stdout);
		return OUTCOME_CLEAN;
	}
	if (strcmp(argv[1], "--version") == 0) {
		puts("tamis " TAMIS_VERSION);
		return OUTCOME_CLEAN;
	}
	c = command_named(argv[1]);
	if (!c)
		return complain_of_command(argv[1]);
	switch (request_read(&r, c, argc - 1, argv + 1)) {
	case ASKED_RUN:
		outcome = c->run(&r);
		break;
	case ASKED_HELP:
		request_help(c);
		outcome = OUTCOME_CLEAN;
		break;
	case ASKED_WRONG:
		break;
	}
	request_release(&r);
	return outcome;
}

int
main(int argc, char **argv)
{
	enum outcome outcome;

	/* a file that may grow no more is as a disk that is full: an error */
	signal(SIGXFSZ, SIG_IGN);
	outcome = run(argc, argv);
	errno = 0;
	if (fflush(stdout) || ferror(stdout)) {
		complain("standard output: %s", errno ? strerror(errno) : "write failed");
		outcome = OUTCOME_MACHINE;
	}
	exit(outcome);
}
