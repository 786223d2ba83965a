/* SPDX-License-Identifier: ISC */
/*
 * How values read in a recipe: numbers, amounts, temperatures, durations and
 * time codes in the house style. Step sentences and writers share these, so
 * that a value looks the same in a list and in a sentence. Any layer may use
 * this. No locale, no float: the same value gives the same bytes everywhere.
 */
#ifndef TAMIS_PRINT_H
#define TAMIS_PRINT_H

#include "tamis.h"

/* "½", "1½", "2⅔", "150": halves, thirds, quarters and eighths as glyphs; any
 * other fraction as print_decimal() has it. */
void print_number(struct buf *b, struct ratio v);
/* "1.5", "0.33": at most 2 digits after the point, no zeros at the end. */
void print_decimal(struct buf *b, struct ratio v);
/* "2–3" with an en dash; one number where both are equal. */
void print_range(struct buf *b, struct ratio min, struct ratio max);
/* The same in decimals: "1.5–2". */
void print_decimals(struct buf *b, struct ratio min, struct ratio max);
/* "tsp", "kg", "litres", "cloves", "fluid ounces": the short form where the
 * unit has one, else the name, in the plural where `many`. Nothing for NULL. */
void print_unit(struct buf *b, const struct unit *u, bool many);
/* "1½ tsp", "2 cloves", "1.5 litres", "3", "a few slices" as "some slices";
 * nothing where no amount is present or nothing is known of it. */
void print_amount(struct buf *b, const struct amount *a);
/* In both scales, the one that was said first: "375 °F (190 °C)", "gas mark 4
 * (180 °C/350 °F)". exact: converted to the degree, for what a thermometer in
 * food, water or air reads; else to the oven setting that cooks use for it. A
 * unit of no known name, or NULL, gives "200 degrees". */
void print_temperature(
    struct buf *b, struct ratio min, struct ratio max, const struct unit *u, bool exact);
/* The same in the scales that are asked for, Celsius or Fahrenheit first, or one
 * alone; DEGREES_UNITS is DEGREES_SAID here. A gas mark stays beside its degrees. */
void print_degrees(
    struct buf *b, const struct amount *degrees, bool exact, enum tamis_degrees how);
/* "10 minutes", "1 hour 15 minutes", "20–25 minutes", "1–1½ hours"; a negative
 * min_ms is a night: "overnight". */
void print_duration(struct buf *b, int64_t min_ms, int64_t max_ms);
/* "0:21", "12:05", "1:02:03"; nothing for a negative time. */
void print_clock(struct buf *b, int64_t ms);

#endif
