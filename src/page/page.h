/* SPDX-License-Identifier: ISC */
/*
 * What the pages share: the head of a self-contained document, the title of
 * an episode, and the files of src/page/ that are built into the program.
 */
#ifndef TAMIS_PAGE_H
#define TAMIS_PAGE_H

#include "tamis.h"

/* The title of the episode, or that it has none; one line. */
void page_title(struct buf *b, const struct draft *d);
/* The built-in files that a page is made with, and what it is. */
struct page_parts {
	const char *what;   /* of the episode: "proof", for the title */
	const char *sheets; /* "type.css proof.css" */
	const char *script; /* "proof.js"; NULL none */
	bool attributes;    /* elements have style attributes */
};

/* Up to <body>. The page's policy lets in just these parts. */
void page_head(struct buf *out, struct str title, const struct page_parts *parts);
/* The same with the title of the episode, and what the page is of it. */
void page_open(struct buf *out, const struct draft *d, const struct page_parts *parts);
/* The script and the end of the document. */
void page_close(struct buf *out, const struct page_parts *parts);

#endif
