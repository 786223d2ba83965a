/* SPDX-License-Identifier: ISC */
/*
 * Declares the writer of every format in writers.def. Writers include it.
 */
#ifndef TAMIS_WRITERS_H
#define TAMIS_WRITERS_H

#include "tamis.h"

#define WRITER(format) extern const struct writer writer_##format;
#include "write/writers.def"
#undef WRITER

#endif
