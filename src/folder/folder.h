/* SPDX-License-Identifier: ISC */
/*
 * A folder that tamis writes files into, for episodes. Which files are its own
 * stands in a list beside them, with a hash of what was written: no other file is
 * replaced, and none that somebody has changed since. The list, and not a mark
 * inside each file, because JSON and CSV have no place for one, because a mark
 * stays when the text around it is changed, and because the list also knows which
 * episode a file is of.
 */
#ifndef TAMIS_FOLDER_H
#define TAMIS_FOLDER_H

#include "base/arena.h"
#include "base/err.h"

#include <sys/stat.h>

/* A line of the list. */
struct folder_entry {
	struct str hash; /* 16 hexadecimal digits */
	struct str owner, file;
	bool fresh; /* written by this run */
};

struct folder {
	struct arena *arena;
	const char *path;
	bool force; /* replaces what is not its own as well */
	bool torn;  /* the list does not end with a line feed */
	VEC(struct folder_entry) entry;
	VEC(struct stat) input; /* files that are never replaced */
};

/* A text, and for what: the stem is a slug, the owner the episode's file name. */
struct page {
	struct str stem;
	const char *extension;
	struct str owner, text;
	bool linked; /* others link to it by its name: it gets this one or none */
};

enum put {
	PUT_DONE,
	PUT_REFUSED, /* the file that is there is not ours; *e says so */
	PUT_FAILED   /* the folder or the disk; *e says so */
};

/* Reads the list. The path and all else live as long as the arena. */
bool folder_open(struct folder *f, struct arena *a, const char *path, struct err *e);
/* What is read is not written over. */
void folder_keep(struct folder *f, const char *input);
/* Writes stem.extension, or stem-2.extension and so on where the name is taken in
 * this run or by another owner; a linked page of another owner is refused. */
enum put folder_put(struct folder *f, const struct page *p, struct err *e);

#endif
