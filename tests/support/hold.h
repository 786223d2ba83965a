/* SPDX-License-Identifier: ISC */
/*
 * What a group of tests holds in *state, for cmocka's set-up and tear-down.
 */
#ifndef TAMIS_TESTS_HOLD_H
#define TAMIS_TESTS_HOLD_H

/* A struct arena. */
int hold_arena(void **state);
int drop_arena(void **state);
/* The struct grammar that is built in; prints why where it can't be opened. */
int hold_grammar(void **state);
int drop_grammar(void **state);
/* A struct grammar that has tables and units and no words. */
int hold_tables(void **state);
int drop_tables(void **state);

#endif
