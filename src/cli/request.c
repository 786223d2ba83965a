/* SPDX-License-Identifier: ISC */
/*
 * A command line behind the subcommand's name, with getopt_long:
 *   --format json --output soup.json soup.vtt
 */
#include "cli/request.h"

#include "cli/nearest.h"

#include <getopt.h>
#include <limits.h>
#include <stddef.h>
#include <stdio.h>

/* What getopt_long returns for options that have no letter. */
enum { PROFILE = 256, SEVERITY, ONLY, EXCEPT, TAGS, VIDEO, ANYWAY, ANSWERS, ASK };

struct choice {
	const char *name, *value; /* value NULL: it takes none */
	int letter;
	size_t field; /* of struct request */
	const char *help;
};

/* clang-format off */
static const struct choice choices[] = {
	{"format", "FORMAT", 'f', offsetof(struct request, format),
	    "one of the formats below; the first unless said"},
	{"output", "FILE", 'o', offsetof(struct request, output),
	    "a file, or a folder for one file per episode or for a package;\n"
	    "                           - is standard output, and the default of write"},
	{"region", "REGION", 'r', offsetof(struct request, region),
	    "whose cups and pints: us, uk, ca, au, in; else told from the script"},
	{"profile", "PROFILE", PROFILE, offsetof(struct request, profile),
	    "whose safe temperatures: us-home, us-retail, uk, ca, au; else the region's"},
	{"severity", "LEVEL", SEVERITY, offsetof(struct request, severity),
	    "the lowest to print, and to end with status 1 for: note, warning, error;\n"
	    "                           else all are printed, and warnings end with status 1"},
	{"only", "CODES", ONLY, offsetof(struct request, only),
	    "just these codes, with commas between them"},
	{"except", "CODES", EXCEPT, offsetof(struct request, except),
	    "all but these"},
	{"answers", "FILE", ANSWERS, offsetof(struct request, answers),
	    "what the author says to the findings; else EPISODE.answers beside\n"
	    "                          the episode, where there is one"},
	{"ask", NULL, ASK, offsetof(struct request, ask),
	    "add what is still open to the answers, as lines to complete"},
	{"tags", NULL, TAGS, offsetof(struct request, tags),
	    "each word with its classes and the rules that took it"},
	{"video-url", "URL", VIDEO, offsetof(struct request, video),
	    "where the episode can be watched, for links to its seconds"},
	{"anyway", NULL, ANYWAY, offsetof(struct request, anyway),
	    "even while errors are open"},
	{"grammar", "FOLDER", 'g', offsetof(struct request, grammar),
	    "a grammar in place of the one built in"},
};
/* clang-format on */
enum { CHOICES = sizeof choices / sizeof *choices };

static bool
takes(const struct command *c, const char *name)
{
	struct str rest = str_of(c->options);

	while (rest.p)
		if (str_is_z(str_next(&rest, ' '), name))
			return true;
	return false;
}

/* What getopt_long is told: the choices of c, and help. */
struct table {
	struct option option[CHOICES + 2];
	char letters[2 * CHOICES + 4];
};

static void
table_fill(struct table *t, const struct command *c)
{
	size_t n = 0, l = 0;

	*t = (struct table){0};
	t->letters[l++] = ':'; /* tell a missing value from an unknown option */
	for (size_t i = 0; i < CHOICES; i++) {
		if (!takes(c, choices[i].name))
			continue;
		t->option[n++] = (struct option){choices[i].name,
		    choices[i].value ? required_argument : no_argument, NULL,
		    choices[i].letter};
		if (choices[i].letter > CHAR_MAX)
			continue;
		t->letters[l++] = (char)choices[i].letter;
		if (choices[i].value)
			t->letters[l++] = ':';
	}
	t->option[n] = (struct option){"help", no_argument, NULL, 'h'};
	t->letters[l] = 'h';
}

static void
complain_of_option(const struct command *c, const struct table *t, const char *typed)
{
	struct str word = str_of(typed);
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
request_set(struct request *r, int letter, const char *value)
{
	for (size_t i = 0; i < CHOICES; i++)
		if (choices[i].letter == letter) {
			if (!choices[i].value)
				value = choices[i].name;
			memcpy((char *)r + choices[i].field, &value, sizeof value);
		}
}

enum asked
request_read(struct request *r, const struct command *c, int argc, char **argv)
{
	struct table t;
	int letter;

	table_fill(&t, c);
	*r = (struct request){0};
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
		request_set(r, letter, optarg);
	}
	r->operand = argv + optind;
	r->operands = (size_t)(argc - optind);
	return ASKED_RUN;
}

bool
request_style(const struct request *r, struct tamis_style *out)
{
	struct str url = str_of(r->video);

	*out = (struct tamis_style){.video = r->video};
	if (!r->video || str_starts(url, STR("https://")) ||
	    str_starts(url, STR("http://")))
		return true;
	complain("--video-url %s: it has to begin with https:// or http://", r->video);
	return false;
}

static void
print_choice(const struct choice *c)
{
	if (c->letter > CHAR_MAX)
		printf("      ");
	else
		printf("  -%c, ", c->letter);
	printf("--%-9s %-8s %s\n", c->name, c->value ? c->value : "", c->help);
}

void
request_help(const struct command *c)
{
	printf("%s\n", c->usage);
	for (size_t i = 0; i < CHOICES; i++)
		if (takes(c, choices[i].name))
			print_choice(&choices[i]);
	printf("  -h, --help               this text\n");
	if (c->print_formats) {
		printf("\nFormats:\n");
		c->print_formats();
	}
}
