/* SPDX-License-Identifier: ISC */
/*
 * What a script format has to offer. Each format is one file that ends in a
 * `const struct reader reader_NAME` and one line in readers.def.
 */
#ifndef TAMIS_READER_H
#define TAMIS_READER_H

#include "read/build.h"

struct reader {
	const char *name; /* script.format */
	/* 0 (no) to 100 (certain) that the start of a file is in this format. */
	int (*sniff)(struct str start);
	void (*read)(struct build *b);
};

#endif
