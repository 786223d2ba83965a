/* SPDX-License-Identifier: ISC */
/*
 * Bytes of a script or of captions to a struct script. Any stage after this
 * one may include it; the formats behind it are listed in readers.def.
 */
#ifndef TAMIS_READ_H
#define TAMIS_READ_H

#include "tamis.h"

/* Copies source into the arena, decodes it, finds its format by what it holds
 * and makes its cues. max_source: bytes, 0 the default of 16 MiB. NULL and *e
 * set when the bytes or the cues are over a cap; what is odd in the file is a
 * diagnostic of the script. */
struct script *script_read(
    struct arena *a, struct str source, const char *name, size_t max_source, struct err *e);

#endif
