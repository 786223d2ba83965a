/* SPDX-License-Identifier: ISC */
/*
 * Declares the report of every row in reports.def. Reports include it.
 */
#ifndef TAMIS_REPORTS_H
#define TAMIS_REPORTS_H

#include "tamis.h"

#define REPORT(name) extern const struct report report_##name;
#include "write/reports.def"
#undef REPORT

#endif
