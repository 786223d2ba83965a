/* SPDX-License-Identifier: ISC */
/*
 * --units metric --servings 8 --style house.style: the file first, so that the
 * options have the last word.
 */
#include "cli/style.h"

#include "cli/episodes.h"

#include <errno.h>

enum { SERVINGS_MOST = 10000, SCALE_MOST = 1000 };

static bool
read_file(const char *path, struct buf *b, struct err *e)
{
	FILE *f = fopen(path, "rb");
	bool ok;

	if (!f)
		return err_set(e, path, "can't be opened: %s", strerror(errno));
	ok = episodes_read(f, b, path, e);
	fclose(f);
	return ok;
}

static bool
take_file(const struct request *r, const struct grammar *g, struct arena *a,
    struct tamis_style *out)
{
	struct buf text = buf_in(a);
	struct err e = {0};

	if (!r->style || (read_file(r->style, &text, &e) &&
			     tamis_style_read(out, a, g, buf_str(&text), r->style, &e)))
		return true;
	complain_of(&e);
	return false;
}

static bool
take_units(const struct request *r, struct tamis_style *out)
{
	static const struct {
		const char *name;
		enum tamis_units units;
	} known[] = {{"as-said", UNITS_SAID}, {"both", UNITS_BOTH}, {"us", UNITS_US},
	    {"metric", UNITS_METRIC}};

	for (size_t i = 0; r->units && i < sizeof known / sizeof *known; i++)
		if (strcmp(r->units, known[i].name) == 0) {
			out->units = known[i].units;
			return true;
		}
	if (!r->units)
		return true;
	complain("no units %s; there are as-said, both, us and metric", r->units);
	return false;
}

static bool
take_amounts(const struct request *r, struct tamis_style *out)
{
	uint64_t servings;

	if (r->servings && r->scale) {
		complain("--servings and --scale both rescale; give one of them");
		return false;
	}
	if (r->servings && (!str_to_u64(str_of(r->servings), &servings) || servings == 0 ||
			       servings > SERVINGS_MOST)) {
		complain("--servings %s: expected a whole number from 1 to %d", r->servings,
		    SERVINGS_MOST);
		return false;
	}
	if (r->servings)
		out->servings = (unsigned)servings;
	if (!r->scale)
		return true;
	if (ratio_parse(str_of(r->scale), &out->scale) && out->scale.num > 0 &&
	    ratio_order(out->scale, ratio_int(SCALE_MOST)) <= 0 &&
	    ratio_order(out->scale, ratio_make(1, SCALE_MOST)) >= 0)
		return true;
	complain("--scale %s: expected a number such as 2, 1/2 or 1.5, from 1/%d to %d",
	    r->scale, SCALE_MOST, SCALE_MOST);
	return false;
}

static bool
take_video(const struct request *r, struct tamis_style *out)
{
	struct str url = str_of(r->video);

	out->video = r->video;
	if (!r->video || str_starts(url, STR("https://")) ||
	    str_starts(url, STR("http://")))
		return true;
	complain("--video-url %s: it has to begin with https:// or http://", r->video);
	return false;
}

bool
style_asked(const struct request *r, const struct grammar *g, struct arena *a,
    struct tamis_style *out)
{
	*out = (struct tamis_style){0};
	return take_file(r, g, a, out) && take_units(r, out) && take_amounts(r, out) &&
	       take_video(r, out);
}
