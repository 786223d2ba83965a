/* SPDX-License-Identifier: ISC */
/*
 * tamis explain: the catalogue of findings, and the long text of one code.
 */
#include "cli/command.h"
#include "term/look.h"
#include "term/nearest.h"

#include <stdio.h>

enum { TEXT_WIDTH = 78 };

static const char *const severity_name[] = {"note", "warning", "error"};

static void
print_catalogue(void)
{
	const struct finding_kind *k;

	for (size_t i = 0; (k = tamis_finding_kind(i)); i++)
		printf("%-22s %-8s %s\n", k->code, severity_name[k->severity], k->summary);
}

static void
print_kind(const struct finding_kind *k)
{
	struct str rest = str_of(k->explain);
	struct arena a;
	struct buf b;

	arena_init(&a);
	b = buf_in(&a);
	buf_fmt(&b, "%s (%s)\n", k->code, severity_name[k->severity]);
	look_put_wrapped(&b, str_of(k->summary), 2, TEXT_WIDTH);
	buf_put_char(&b, '\n');
	while (rest.p)
		look_put_wrapped(&b, str_next(&rest, '\n'), 2, TEXT_WIDTH);
	fwrite(b.v, 1, b.n, stdout);
	arena_release(&a);
}

static enum outcome
explain(const char *code)
{
	struct nearest near = nearest_to(code);
	const struct finding_kind *k;

	for (size_t i = 0; (k = tamis_finding_kind(i)); i++) {
		if (strcmp(k->code, code) == 0) {
			print_kind(k);
			return OUTCOME_CLEAN;
		}
		nearest_offer(&near, k->code);
	}
	if (near.best)
		complain("no code %s; did you mean %s?", code, near.best);
	else
		complain("no code %s; tamis explain lists them", code);
	return OUTCOME_UNUSABLE;
}

static enum outcome
run_explain(const struct request *r)
{
	enum outcome worst = OUTCOME_CLEAN;

	if (r->operands == 0)
		print_catalogue();
	for (size_t i = 0; i < r->operands; i++) {
		if (i > 0)
			putchar('\n');
		if (explain(r->operand[i]) != OUTCOME_CLEAN)
			worst = OUTCOME_UNUSABLE;
	}
	return worst;
}

const struct command command_explain = {
    .name = "explain",
    .help = "list the codes of findings, or explain one",
    .usage = "tamis explain [CODE...]\n\n"
	     "Without a code: every code that tamis check can print, how grave it is, and\n"
	     "what it is about. With one: when it is raised, and what to do about it.\n",
    .options = "",
    .run = run_explain,
};
