/* SPDX-License-Identifier: ISC */
/*
 * Structured data: one schema.org Recipe per dish, as JSON-LD. Properties
 * that the script does not speak of are left out.
 */
#include "publish/jsonld.h"

#include <inttypes.h>

#include "base/print.h"
#include "publish/brief.h"
#include "publish/video.h"
#include "write/method.h"
#include "write/node.h"
#include "write/text.h"
#include "write/writers.h"

enum { CLIP_NAME_MOST = 60 };

static void
put_type(struct node o, const char *type)
{
	node_str(o, "@type", str_of(type));
}

/* "PT1H5M", ISO 8601. */
static void
put_time(struct node o, const char *key, int64_t ms)
{
	struct buf b = buf_in(o.arena);
	int64_t s = ms / 1000;

	buf_put_z(&b, "PT");
	if (s >= 3600)
		buf_fmt(&b, "%" PRId64 "H", s / 3600);
	if (s / 60 % 60)
		buf_fmt(&b, "%dM", (int)(s / 60 % 60));
	if (s % 60)
		buf_fmt(&b, "%dS", (int)(s % 60));
	node_str(o, key, buf_str(&b));
}

/* "Serves 4–6" is a yield of "4–6 servings", "Makes 12 rolls" of "12 rolls". */
static void
put_yield(struct node o, const struct house *h, const struct dish *d)
{
	struct buf b = buf_in(o.arena);
	struct str text;
	bool one = d->yield.known && ratio_order(d->yield.max, ratio_int(1)) <= 0;

	text_yield(&b, h, d);
	text = buf_str(&b);
	if (text.n == 0)
		return;
	if (str_starts(text, STR("Serves ")))
		buf_put_z(&b, one ? " serving" : " servings");
	text = buf_str(&b);
	node_str(o, "recipeYield", str_cut(text, str_find_char(text, ' ') + 1, text.n));
}

static void
put_tools(struct node o, const struct dish *d)
{
	struct node list;

	if (d->equipments == 0)
		return;
	list = node_array(o, "tool");
	for (size_t i = 0; i < d->equipments; i++) {
		struct node tool = node_object(list, NULL);
		struct buf name = buf_in(o.arena);

		print_amount(&name, &d->equipment[i].size);
		if (name.n)
			buf_put_char(&name, ' ');
		buf_put(&name, d->equipment[i].item);
		put_type(tool, "HowToTool");
		node_str(tool, "name", buf_str(&name));
	}
}

static void
put_ingredients(struct node o, const struct house *h, const struct dish *d)
{
	struct node list = {0};

	for (size_t i = 0; i < d->parts; i++) {
		for (size_t j = 0; j < d->part[i].ingredients; j++) {
			struct buf line = buf_in(o.arena);

			if (!list.v)
				list = node_array(o, "recipeIngredient");
			text_ingredient(&line, h, &d->part[i].ingredient[j]);
			node_str(list, NULL, buf_str(&line));
		}
	}
}

/* Where the step is shown; endings are not known. */
static void
put_clip(struct node o, const struct step *s, const char *video)
{
	int64_t ms = s->place.cue_ms >= 0 ? s->place.cue_ms : s->place.at_ms;
	struct buf name = buf_in(o.arena), url = buf_in(o.arena);
	struct node clip;

	if (!video || ms < 0)
		return;
	clip = node_object(o, "video");
	put_type(clip, "Clip");
	brief_sentence(&name, s->text, CLIP_NAME_MOST);
	node_str(clip, "name", buf_str(&name));
	node_int(clip, "startOffset", ms / 1000);
	video_put(&url, video, ms);
	node_str(clip, "url", buf_str(&url));
}

static void
put_step(struct node list, const struct step *s, const char *video)
{
	struct node o = node_object(list, NULL);

	put_type(o, "HowToStep");
	node_str(o, "text", s->text);
	put_clip(o, s, video);
}

static struct node
put_section(struct node list, const struct dish *d, const struct part *p)
{
	struct node o = node_object(list, NULL);
	struct buf name = buf_in(list.arena);

	if (p->name.n)
		text_title(&name, p->name);
	else
		text_dish_title(&name, d);
	put_type(o, "HowToSection");
	node_str(o, "name", buf_str(&name));
	return node_array(o, "itemListElement");
}

/* A section for each run of steps of one part, as in the written method. */
static void
put_instructions(struct node o, const struct dish *d, const char *video)
{
	size_t n;
	const struct method_step *m = method_steps(o.arena, d, &n);
	struct node list, steps;

	if (n == 0)
		return;
	list = steps = node_array(o, "recipeInstructions");
	for (size_t i = 0; i < n; i++) {
		if (m[i].opens)
			steps = put_section(list, d, m[i].part);
		put_step(steps, m[i].step, video);
	}
}

static void
put_video(struct node o, const struct draft *d, const char *video)
{
	struct str title = str_trim(d->script->title);
	struct node v;

	if (!video)
		return;
	v = node_object(o, "video");
	put_type(v, "VideoObject");
	if (title.n)
		node_str(v, "name", title);
	node_str(v, "url", str_of(video));
}

void
jsonld_put_dish(struct buf *out, const struct draft *d, const struct grammar *g,
    const struct tamis_style *style, size_t dish)
{
	struct house house = house_of(d, g, style);
	const char *video = video_of(style);
	const struct dish *v = &d->dish[dish];
	struct node o = node_root(out->arena);
	struct buf name = buf_in(out->arena);

	text_dish_title(&name, v);
	node_str(o, "@context", STR("https://schema.org"));
	put_type(o, "Recipe");
	node_str(o, "name", buf_str(&name));
	node_str(o, "inLanguage", str_of(d->language));
	put_yield(o, &house, v);
	if (v->total_ms > 0 || v->claimed_ms > 0)
		put_time(o, "totalTime", v->total_ms > 0 ? v->total_ms : v->claimed_ms);
	put_video(o, d, video);
	put_tools(o, v);
	put_ingredients(o, &house, v);
	put_instructions(o, v, video);
	node_print(o, out);
}

static void
write_jsonld(const struct draft *d, const struct grammar *g,
    const struct tamis_style *style, struct buf *out)
{
	buf_put_z(out, "[\n");
	for (size_t i = 0; i < d->dishes; i++) {
		if (i > 0)
			buf_put_z(out, ",\n");
		jsonld_put_dish(out, d, g, style, i);
	}
	buf_put_z(out, "]\n");
}

const struct writer writer_jsonld = {
    .name = "jsonld",
    .extension = "jsonld",
    .help = "structured data for search engines: schema.org Recipe as JSON-LD",
    .package = "recipes",
    .apart = true,
    .write = write_jsonld,
};
