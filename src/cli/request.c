/* SPDX-License-Identifier: ISC */
/*
 * A command line behind the subcommand's name, with getopt_long:
 *   --format json --output soup.json soup.vtt
 */
#include "cli/request.h"

#include "term/nearest.h"

#include <getopt.h>
#include <limits.h>
#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>

/* What getopt_long returns for options that have no letter; from OWN on for
 * those of the command's own. */
enum {
	PROFILE = 256,
	SEVERITY,
	ONLY,
	EXCEPT,
	TAGS,
	VIDEO,
	ANYWAY,
	ANSWERS,
	ASK,
	UNITS,
	SERVINGS,
	SCALE,
	STYLE,
	FORCE,
	OWN
};

/* An option that several commands may take. */
struct shared {
	struct choice choice;
	int letter;
	size_t field; /* of struct request */
};

/* clang-format off */
static const struct shared shared[] = {
	{{"format", "FORMAT", "one of the formats below; the first unless said"},
	    'f', offsetof(struct request, format)},
	{{"output", "FILE",
	    "a file, or a folder for one file per episode or for a package;\n"
	    "                           - is standard output, and the default of write"},
	    'o', offsetof(struct request, output)},
	{{"region", "REGION",
	    "whose cups and pints: us, uk, ca, au, in; else told from the script"},
	    'r', offsetof(struct request, region)},
	{{"profile", "PROFILE",
	    "whose safe temperatures: us-home, us-retail, uk, ca, au; else the region's"},
	    PROFILE, offsetof(struct request, profile)},
	{{"severity", "LEVEL",
	    "the lowest to print, and to end with status 1 for: note, warning, error;\n"
	    "                           else all are printed, and warnings end with status 1"},
	    SEVERITY, offsetof(struct request, severity)},
	{{"only", "CODES", "just these codes, with commas between them"},
	    ONLY, offsetof(struct request, only)},
	{{"except", "CODES", "all but these"},
	    EXCEPT, offsetof(struct request, except)},
	{{"answers", "FILE",
	    "what the author says to the findings; else EPISODE.answers beside\n"
	    "                           the episode, where there is one"},
	    ANSWERS, offsetof(struct request, answers)},
	{{"ask", NULL, "add what is still open to the answers, as lines to complete"},
	    ASK, offsetof(struct request, ask)},
	{{"tags", NULL, "each word with its classes and the rules that took it"},
	    TAGS, offsetof(struct request, tags)},
	{{"force", NULL, "replace files that tamis did not write, or that were changed since"},
	    FORCE, offsetof(struct request, force)},
	{{"units", "UNITS", "as-said, both, us or metric"},
	    UNITS, offsetof(struct request, units)},
	{{"servings", "N", "amounts for so many; where a dish says how many it serves"},
	    SERVINGS, offsetof(struct request, servings)},
	{{"scale", "TIMES", "amounts times this: 2, 1/2, 1.5"},
	    SCALE, offsetof(struct request, scale)},
	{{"style", "FILE", "a house style; examples/house.style describes it"},
	    STYLE, offsetof(struct request, style)},
	{{"video-url", "URL", "where the episode can be watched, for links to its seconds"},
	    VIDEO, offsetof(struct request, video)},
	{{"anyway", NULL, "even while errors are open"},
	    ANYWAY, offsetof(struct request, anyway)},
	{{"grammar", "FOLDER", "a grammar in place of the one built in"},
	    'g', offsetof(struct request, grammar)},
	{{"archive", "FILE", "an archive in place of the one in your data folder"},
	    'a', offsetof(struct request, archive)},
};
/* clang-format on */
enum { SHARED = sizeof shared / sizeof *shared, OWN_MAX = 24, COLUMN = 27 };

static bool
takes(const struct command *c, const char *name)
{
	struct str rest = str_of(c->options);

	while (rest.p)
		if (str_is_z(str_next(&rest, ' '), name))
			return true;
	return false;
}

/* What getopt_long is told: the options of c, and help. */
struct table {
	struct option option[SHARED + OWN_MAX + 2];
	char letters[2 * SHARED + 4];
};

static void
table_fill(struct table *t, const struct command *c)
{
	size_t n = 0, l = 0;

	*t = (struct table){0};
	t->letters[l++] = ':'; /* tell a missing value from an unknown option */
	for (size_t i = 0; i < SHARED; i++) {
		if (!takes(c, shared[i].choice.name))
			continue;
		t->option[n++] = (struct option){shared[i].choice.name,
		    shared[i].choice.value ? required_argument : no_argument, NULL,
		    shared[i].letter};
		if (shared[i].letter > CHAR_MAX)
			continue;
		t->letters[l++] = (char)shared[i].letter;
		if (shared[i].choice.value)
			t->letters[l++] = ':';
	}
	for (int i = 0; c->own && i < OWN_MAX && c->own[i].name; i++)
		t->option[n++] = (struct option){c->own[i].name,
		    c->own[i].value ? required_argument : no_argument, NULL, OWN + i};
	t->option[n] = (struct option){"help", no_argument, NULL, 'h'};
	t->letters[l] = 'h';
}

static void
complain_of_option(const struct command *c, const struct table *t, const char *typed)
{
	struct str word = {typed, strlen(typed)};
	struct nearest near;
	char name[64];

	word = str_cut(word, str_starts(word, STR("--")) ? 2 : 1, str_find_char(word, '='));
	snprintf(name, sizeof name, "%.*s", (int)word.n, word.p);
	near = nearest_to(name);
	for (const struct option *o = t->option; o->name; o++)
		nearest_offer(&near, o->name);
	if (near.best && word.n > 1)
		complain("%s: no option %s; did you mean --%s?", c->name, typed, near.best);
	else
		complain("%s: no option %s; see tamis %s --help", c->name, typed, c->name);
}

/* An option without a value is given as its name. */
static void
request_set(struct request *r, const struct command *c, int letter, const char *value)
{
	if (letter >= OWN) {
		const struct choice *own = &c->own[letter - OWN];

		r->given[r->givens++] =
		    (struct given){own->name, own->value ? value : own->name};
		return;
	}
	for (size_t i = 0; i < SHARED; i++)
		if (shared[i].letter == letter) {
			if (!shared[i].choice.value)
				value = shared[i].choice.name;
			memcpy((char *)r + shared[i].field, &value, sizeof value);
		}
}

enum asked
request_read(struct request *r, const struct command *c, int argc, char **argv)
{
	struct table t;
	int letter;

	table_fill(&t, c);
	*r = (struct request){0};
	arena_init(&r->arena);
	r->given = arena_array(&r->arena, (size_t)argc, struct given);
	opterr = 0;
	optind = 1;
	while ((letter = getopt_long(argc, argv, t.letters, t.option, NULL)) != -1) {
		if (letter == 'h')
			return ASKED_HELP;
		if (letter == ':') {
			complain("%s: %s needs a value", c->name, argv[optind - 1]);
			return ASKED_WRONG;
		}
		if (letter == '?') {
			complain_of_option(c, &t, argv[optind - 1]);
			return ASKED_WRONG;
		}
		request_set(r, c, letter, optarg);
	}
	r->operand = argv + optind;
	r->operands = (size_t)(argc - optind);
	return ASKED_RUN;
}

void
request_release(struct request *r)
{
	arena_release(&r->arena);
}

const char *
request_given(const struct request *r, const char *name)
{
	const char *value = NULL;

	for (size_t i = 0; i < r->givens; i++)
		if (strcmp(r->given[i].name, name) == 0)
			value = r->given[i].value;
	return value;
}

/* XDG Base Directory Specification: $XDG_DATA_HOME where it is absolute, else
 * ~/.local/share. */
const char *
request_archive(const struct request *r, struct arena *a)
{
	const char *data = getenv("XDG_DATA_HOME"), *home = getenv("HOME");

	if (r->archive)
		return r->archive;
	if (data && data[0] == '/')
		return arena_fmt(a, "%s/tamis/archive.db", data).p;
	if (home && home[0])
		return arena_fmt(a, "%s/.local/share/tamis/archive.db", home).p;
	return NULL;
}

/* The help begins in its column, on the next line where the option is long. */
static void
print_choice(const struct choice *c, int letter)
{
	char left[80], lead[8] = "     ";
	int n;

	if (letter <= CHAR_MAX)
		snprintf(lead, sizeof lead, " -%c, ", letter);
	n = snprintf(
	    left, sizeof left, " %s--%-9s %s", lead, c->name, c->value ? c->value : "");
	if (n < COLUMN)
		printf("%-*s%s\n", COLUMN, left, c->help);
	else
		printf("%s\n%*s%s\n", left, COLUMN, "", c->help);
}

void
request_help(const struct command *c)
{
	printf("%s\n", c->usage);
	for (size_t i = 0; c->own && c->own[i].name; i++)
		print_choice(&c->own[i], OWN);
	for (size_t i = 0; i < SHARED; i++)
		if (takes(c, shared[i].choice.name))
			print_choice(&shared[i].choice, shared[i].letter);
	printf("  -h, --help               this text\n");
	if (c->print_formats) {
		printf("\nFormats:\n");
		c->print_formats();
	}
}
