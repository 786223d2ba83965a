/* SPDX-License-Identifier: ISC */
/*
 * Values as they stand in messages, in the check's arena. For src/check/ only.
 */
#ifndef TAMIS_SAY_H
#define TAMIS_SAY_H

#include "check/finding.h"

/* "½ cup", "100 g", "3"; "" when nothing is known. */
struct str say_amount(const struct check *k, const struct amount *a);
/* "375 °F (190 °C)"; exact as print_temperature() has it. */
struct str say_degrees(const struct check *k, const struct amount *a, bool exact);
/* "375 °F", "gas mark 4", "200": in the one scale that was said. */
struct str say_setting(const struct check *k, const struct amount *a);
/* A temperature inside a food, in the scale of u first: "165 °F (74 °C)". */
struct str say_inside(const struct check *k, struct ratio celsius, const struct unit *u);
/* "10 minutes", "1–2 hours"; negative is a night. */
struct str say_time(const struct check *k, int64_t min_ms, int64_t max_ms);
/* A value of base units in u, to two or three digits: "120 ml". */
struct str say_about(const struct check *k, struct ratio base, const struct unit *u);
/* "a", "a and b", "a, b and c". */
struct str say_list(const struct check *k, const struct str *item, size_t items);
/* The action of a step, or "this step". */
struct str say_action(const struct step *s);
/* A duration as an amount: seconds to milliseconds; false where it is none. */
bool say_is_time(const struct amount *a, int64_t *min_ms, int64_t *max_ms);

#endif
