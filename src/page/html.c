/* SPDX-License-Identifier: ISC */
/*
 * The proof: one page that an editor reads before an episode goes out. Script
 * and recipes side by side, tied to each other, with queries and a timeline.
 */
#include "write/writers.h"

#include "base/print.h"
#include "page/page.h"
#include "page/queries.h"
#include "page/recipe.h"
#include "page/script.h"
#include "page/timeline.h"
#include "write/escape.h"

static void
put_slug(struct buf *out, const struct draft *d)
{
	struct buf clock = buf_in(out->arena);

	if (d->script->stamped)
		print_clock(&clock, d->script->length_ms);
	buf_put_z(out, "<p class=\"slug\">");
	escape_html(out, d->script->name);
	if (clock.n)
		buf_fmt(out, " <span>%.*s</span>", (int)clock.n, clock.v);
	buf_fmt(
	    out, " <span>%zu dish%s</span> <span>", d->dishes, d->dishes == 1 ? "" : "es");
	queries_put_count(out, d);
	buf_put_z(out, "</span></p>\n");
}

static void
put_masthead(struct buf *out, const struct draft *d)
{
	struct buf title = buf_in(out->arena);

	page_title(&title, d);
	buf_put_z(
	    out, "<header class=\"masthead\">\n<p class=\"kind\">Galley proof</p>\n<h1>");
	escape_html(out, buf_str(&title));
	buf_put_z(out, "</h1>\n");
	put_slug(out, d);
	buf_put_z(out, "</header>\n");
}

/* The strip that stays in sight: where to go, and in which units to read. */
static void
put_strip(struct buf *out, const struct tamis_style *style)
{
	const char *const units[VARIANT_UNITS] = {
	    style->units == UNITS_BOTH ? "Both" : "As said", "Metric", "US"};

	buf_put_z(out,
	    "<div class=\"strip\">\n<nav aria-label=\"Sections\"><a href=\"#timeline\">"
	    "Timeline</a> <a href=\"#script\">Script</a> <a href=\"#recipes\">Recipes</a> "
	    "<a href=\"#queries\">Queries</a></nav>\n"
	    "<fieldset class=\"units\" hidden><legend>Units</legend>");
	for (size_t i = 0; i < VARIANT_UNITS; i++)
		buf_fmt(out,
		    "<label><input type=\"radio\" name=\"units\" value=\"%zu\"%s>"
		    "<span>%s</span></label>",
		    i, i == variants_units(style) ? " checked" : "", units[i]);
	buf_put_z(out,
	    "</fieldset>\n<p id=\"told\" class=\"unseen\" aria-live=\"polite\"></p>"
	    "\n</div>\n");
}

/* Hatching, for the bars of steps that need nobody. */
static void
put_patterns(struct buf *out)
{
	static const char *const names[] = {"heat", "rest"};

	buf_put_z(out, "<svg class=\"defs\" aria-hidden=\"true\"><defs>");
	for (size_t i = 0; i < sizeof names / sizeof *names; i++)
		buf_fmt(out,
		    "<pattern id=\"hatch-%s\" width=\"9\" height=\"9\" "
		    "patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\">"
		    "<rect width=\"9\" height=\"9\"/><path d=\"M0 0V9\"/></pattern>",
		    names[i]);
	buf_put_z(out, "</defs></svg>\n");
}

static void
put_timeline(struct buf *out, const struct ties *t)
{
	struct buf inside = buf_in(out->arena);

	told_put(&inside, t);
	stove_put(&inside, t);
	buf_put_z(out, "<section id=\"timeline\" class=\"timeline\">\n<h2>Timeline</h2>\n");
	if (inside.n) {
		put_patterns(out);
		buf_put(out, buf_str(&inside));
	} else
		buf_put_z(out, "<p>The script has no times to draw.</p>\n");
	buf_put_z(out, "</section>\n");
}

static void
put_legend(struct buf *out)
{
	buf_put_z(out, "<p class=\"legend\">");
	for (int ink = INK_STEP; ink < INKS; ink++)
		buf_fmt(out, "<span class=\"%s\">%s</span> ", ink_name((enum ink)ink),
		    ink_name((enum ink)ink));
	buf_put_z(out, "</p>\n");
}

static void
put_script(struct buf *out, struct ties *t)
{
	buf_put_z(out, "<section id=\"script\" class=\"script\">\n<h2>Script</h2>\n");
	put_legend(out);
	script_put(out, t);
	buf_put_z(out, "</section>\n");
}

static void
put_recipes(struct buf *out, const struct recipe_page *page)
{
	buf_put_z(out, "<section id=\"recipes\" class=\"recipes\">\n<h2>Recipes</h2>\n");
	if (page->draft->dishes == 0)
		buf_put_z(out, "<p>No recipe was found in this episode.</p>\n");
	for (size_t i = 0; i < page->draft->dishes; i++)
		recipe_put(out, page, i);
	buf_put_z(out, "</section>\n");
}

static const struct page_parts parts = {"proof", "type.css proof.css", "proof.js", false};

static void
write_html(const struct draft *d, const struct grammar *g, const struct tamis_style *style,
    struct buf *out)
{
	struct ties t = ties_of(out->arena, d);
	struct recipe_page page = {.draft = d,
	    .grammar = g,
	    .style = style,
	    .ties = &t,
	    .variants = variants_of(&t, g, style),
	    .heading = 3};

	page_open(out, d, &parts);
	buf_put_z(out, "<body class=\"proof\">\n");
	put_masthead(out, d);
	put_strip(out, style);
	buf_put_z(out, "<main>\n");
	put_timeline(out, &t);
	put_script(out, &t);
	buf_put_z(out, "<div class=\"side\" role=\"group\" tabindex=\"0\" "
		       "aria-label=\"Recipes and queries\">\n");
	put_recipes(out, &page);
	buf_put_z(out, "<section id=\"queries\" class=\"list\">\n<h2>Queries</h2>\n");
	queries_put_list(out, d);
	buf_put_z(out, "</section>\n</div>\n</main>\n");
	page_close(out, &parts);
}

const struct writer writer_html = {
    .name = "html",
    .extension = "html",
    .help = "the proof: script, recipes, queries and timeline on one page",
    .package = "proof",
    .write = write_html,
};
