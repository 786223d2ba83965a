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
/* Up to <body>; sheets are names of style sheets: "type.css proof.css". */
void page_head(struct buf *out, struct str title, const char *sheets);
/* The same with the title of the episode, and what the page is of it. */
void page_open(
    struct buf *out, const struct draft *d, const char *what, const char *sheets);
/* A built-in file as a script; the end of the document. */
void page_script(struct buf *out, const char *name);
void page_close(struct buf *out);

#endif
