/* SPDX-License-Identifier: ISC */
/*
 * The table of reports, made from reports.def.
 */
#include "write/reports.h"

#define REPORT(name) &report_##name,
static const struct report *const reports[] = {
#include "write/reports.def"
};
#undef REPORT

enum { REPORTS = sizeof reports / sizeof *reports };

const struct report *
tamis_report(size_t index)
{
	return index < REPORTS ? reports[index] : NULL;
}

const struct report *
tamis_report_find(const char *name)
{
	for (size_t i = 0; i < REPORTS; i++)
		if (strcmp(reports[i]->name, name) == 0)
			return reports[i];
	return NULL;
}
