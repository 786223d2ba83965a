/* SPDX-License-Identifier: ISC */
/*
 * The style sheets and scripts of src/page/, built into the program. The
 * Makefile makes the table from everything there that ends in .css or .js.
 */
#ifndef TAMIS_ASSETS_H
#define TAMIS_ASSETS_H

#include "grammar/embedded.h"

extern const struct embedded_file tamis_assets[]; /* ends with a NULL name */

#endif
