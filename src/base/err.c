/* SPDX-License-Identifier: ISC */
/*
 * Filling a struct err: the first one is kept.
 */
#include "base/err.h"

#include <stdarg.h>
#include <stdio.h>

static void
fill(struct err *e, const char *where, struct err_place at)
{
	e->set = true;
	e->line = at.line;
	e->column = at.column;
	snprintf(e->where, sizeof e->where, "%s", where ? where : "");
}

bool
err_set(struct err *e, const char *where, const char *fmt, ...)
{
	va_list ap;

	if (e->set)
		return false;
	fill(e, where, (struct err_place){0, 0});
	va_start(ap, fmt);
	vsnprintf(e->text, sizeof e->text, fmt, ap);
	va_end(ap);
	return false;
}

bool
err_set_at(struct err *e, const char *where, struct err_place at, const char *fmt, ...)
{
	va_list ap;

	if (e->set)
		return false;
	fill(e, where, at);
	va_start(ap, fmt);
	vsnprintf(e->text, sizeof e->text, fmt, ap);
	va_end(ap);
	return false;
}
