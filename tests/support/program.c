/* SPDX-License-Identifier: ISC */
/*
 * popen() of the program in the build folder.
 */
#include "program.h"

#include "base/buf.h"

#include <limits.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/wait.h>
#include <unistd.h>

struct str
build_folder(struct arena *a)
{
	const char *asked = getenv("B");
	char here[PATH_MAX];

	if (asked && asked[0] == '/')
		return str_of(asked);
	if (!getcwd(here, sizeof here))
		return STR("build");
	return arena_fmt(a, "%s/%s", here, asked ? asked : "build");
}

struct ran
program_run(struct arena *a, const char *folder, const char *env, const char *arguments)
{
	struct ran ran = {-1, STR("")};
	struct buf out = buf_in(a);
	char piece[8192];
	size_t n;
	int status;
	/* Whatever the person at the keyboard has kept is no part of a test. */
	FILE *f =
	    popen(arena_fmt(a, "cd '%s' && XDG_DATA_HOME='%s/no-data' %s '%s/tamis' %s",
		      folder, build_folder(a).p, env, build_folder(a).p, arguments)
		      .p,
		"r");

	if (!f)
		return ran;
	while ((n = fread(piece, 1, sizeof piece, f)) > 0)
		buf_put(&out, (struct str){piece, n});
	status = pclose(f);
	if (WIFEXITED(status))
		ran.status = WEXITSTATUS(status);
	ran.out = arena_str(a, buf_str(&out));
	return ran;
}
