/* SPDX-License-Identifier: ISC */
/*
 * Links into the video of an episode.
 */
#ifndef TAMIS_VIDEO_H
#define TAMIS_VIDEO_H

#include "tamis.h"

/* The URL of the style; NULL where there is none that a page may link to. */
const char *video_of(const struct tamis_style *style);
/* The URL that plays from there, by W3C Media Fragments: "...#t=33". Not
 * escaped for any format. */
void video_put(struct buf *b, const char *url, int64_t ms);

#endif
