/* SPDX-License-Identifier: ISC */
/*
 * Texts into files, whole or not at all.
 */
#ifndef TAMIS_FILE_H
#define TAMIS_FILE_H

#include "base/arena.h"
#include "base/err.h"

/* Writes a new file beside the path and sees it on the disk; *out is its path. */
bool file_draft(
    struct arena *a, const char *path, struct str text, struct str *out, struct err *e);
/* Gives what file_draft() wrote the path's name, in place of what may have it. */
bool file_settle(struct str draft, const char *path, struct err *e);

/* Both: a reader finds the old text or the new one, whatever happens meanwhile. A
 * path that is a link is followed; a pipe or a device is written to. */
bool file_replace(const char *path, struct str text, struct err *e);
/* All bytes; false with *e clear where there is no such file. */
bool file_read(struct arena *a, const char *path, struct str *out, struct err *e);

#endif
