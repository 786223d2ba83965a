/* SPDX-License-Identifier: ISC */
/*
 * Reads a style file; tamis_style_read() of tamis.h.
 */
#ifndef TAMIS_STYLE_H
#define TAMIS_STYLE_H

#include "tamis.h"

bool style_read(struct tamis_style *s, struct arena *a, const struct grammar *g,
    struct str text, const char *name, struct err *e);

#endif
