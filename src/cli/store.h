/* SPDX-License-Identifier: ISC */
/*
 * Texts into files. Only cli/ includes this.
 */
#ifndef TAMIS_STORE_H
#define TAMIS_STORE_H

#include "cli/command.h"

/* mode as fopen() has it. Complains of what can't be written. */
enum outcome store(const char *path, const char *mode, struct str text);

#endif
