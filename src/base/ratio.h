/* SPDX-License-Identifier: ISC */
/*
 * Exact rationals: a third is 1/3 until it is printed. Always in lowest terms
 * with den > 0. Where a result does not fit 64 bits it is brought to the
 * nearest one that does. Any layer may use this.
 */
#ifndef TAMIS_RATIO_H
#define TAMIS_RATIO_H

#include "base/str.h"

struct ratio {
	int64_t num, den;
};

static inline struct ratio
ratio_int(int64_t n)
{
	return (struct ratio){n, 1};
}

/* num/den in lowest terms; den must not be 0. */
struct ratio ratio_make(int64_t num, int64_t den);
struct ratio ratio_add(struct ratio a, struct ratio b);
struct ratio ratio_sub(struct ratio a, struct ratio b);
struct ratio ratio_mul(struct ratio a, struct ratio b);
/* b must not be 0. */
struct ratio ratio_div(struct ratio a, struct ratio b);
/* <0, 0, >0 as a is less than, equal to, greater than b. */
int ratio_order(struct ratio a, struct ratio b);
double ratio_double(struct ratio a);
/* Nearest whole number, halves away from zero. */
int64_t ratio_round(struct ratio a);
/* a to the nearest multiple of step (step > 0), halves up. */
struct ratio ratio_round_to(struct ratio a, struct ratio step);
/* "3", "1/3", "2.5", "1 1/2", "-40"; all of s. False if s is none of these. */
bool ratio_parse(struct str s, struct ratio *out);

#endif
