/* SPDX-License-Identifier: ISC */
/*
 * JSON values of what the archive has, in jansson. Without memory the process
 * ends as it does for the arena. For src/archive/ only.
 */
#ifndef TAMIS_ARCHIVE_JSON_H
#define TAMIS_ARCHIVE_JSON_H

#include <jansson.h>

#include "base/buf.h"

/* Takes v over. */
void member_set(json_t *object, const char *key, json_t *v);
void member_add(json_t *array, json_t *v);
/* null for an empty one; bytes that are no UTF-8 become U+FFFD. */
void member_text(json_t *object, const char *key, struct str s);
/* Seconds; null for a time below zero. */
void member_time(json_t *object, const char *key, int64_t ms);
/* The value on one line; v is released. */
void member_print(json_t *v, struct buf *out);

#endif
