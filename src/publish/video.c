/* SPDX-License-Identifier: ISC */
/*
 * Links into the video of an episode.
 */
#include "publish/video.h"

#include "base/print.h"

const char *
video_of(const struct tamis_style *style)
{
	struct str url = str_of(style->video);

	return str_starts(url, STR("https://")) || str_starts(url, STR("http://"))
		   ? style->video
		   : NULL;
}

void
video_put(struct buf *b, const char *url, int64_t ms)
{
	buf_put_z(b, url);
	buf_put_z(b, strchr(url, '#') ? "&t=" : "#t=");
	print_decimal(b, ratio_int(ms / 1000));
}
