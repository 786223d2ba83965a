/* SPDX-License-Identifier: ISC */
/*
 * How recipes are to be written, by the options and the style file. Only cli/
 * includes this.
 */
#ifndef TAMIS_CLI_STYLE_H
#define TAMIS_CLI_STYLE_H

#include "cli/command.h"

/* The style lives in the arena; false after a complaint. */
bool style_asked(const struct request *r, const struct grammar *g, struct arena *a,
    struct tamis_style *out);

#endif
