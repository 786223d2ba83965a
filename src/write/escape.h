/* SPDX-License-Identifier: ISC */
/*
 * Escaping for every output format, so that no word of a script acts as
 * markup. Writers pass all text of a script through here.
 */
#ifndef TAMIS_ESCAPE_H
#define TAMIS_ESCAPE_H

#include "base/buf.h"

/* A copy in valid UTF-8: a byte that begins no character, and a NUL, which
 * many readers end a string at, become U+FFFD. */
void escape_utf8(struct buf *b, struct str s);
/* One line of Markdown that reads as s: blanks and control characters become
 * single spaces, characters that mark something up get a backslash. */
void escape_markdown(struct buf *b, struct str s);
/* A path as a URI reference (RFC 3986): relative ones stay relative, absolute
 * ones begin with file://. */
void escape_uri_path(struct buf *b, struct str path);
/* One line of plain text. */
void escape_line(struct buf *b, struct str s);
/* Text of an HTML element, or of an attribute in double quotes. Blanks are
 * kept, other controls and what HTML forbids become U+FFFD. */
void escape_html(struct buf *b, struct str s);
/* One line of the text of a WebVTT cue. */
void escape_webvtt(struct buf *b, struct str s);
/* One field of RFC 4180. A text that a spreadsheet would take for a formula
 * gets an apostrophe before it. */
void escape_csv(struct buf *b, struct str s);
/* JSON text, for a script element: no "<" that could end the element. */
void escape_json_in_html(struct buf *b, struct str json);

#endif
