/* SPDX-License-Identifier: ISC */
/*
 * Texts into files.
 */
#include "cli/store.h"

#include <errno.h>
#include <stdio.h>

enum outcome
store(const char *path, const char *mode, struct str text)
{
	FILE *f = fopen(path, mode);
	bool ok;

	if (!f) {
		complain("%s: can't be opened: %s", path, strerror(errno));
		return OUTCOME_MACHINE;
	}
	ok = text.n == 0 || fwrite(text.p, 1, text.n, f) == text.n;
	if (fclose(f) == 0 && ok)
		return OUTCOME_CLEAN;
	complain("%s: can't be written: %s", path, strerror(errno));
	return OUTCOME_MACHINE;
}
