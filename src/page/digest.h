/* SPDX-License-Identifier: ISC */
/*
 * The digest by which a page's policy knows its own style sheet and script
 * from anybody else's.
 */
#ifndef TAMIS_DIGEST_H
#define TAMIS_DIGEST_H

#include "base/buf.h"

/* "sha256-", and the SHA-256 of s in base64, as CSP Level 3 has it. */
void digest_put(struct buf *b, struct str s);

#endif
