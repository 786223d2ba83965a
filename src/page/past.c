/* SPDX-License-Identifier: ISC */
/*
 * What the show cooks, on one page: dishes and foods by the season, settings and
 * times as dot plots, the newest episodes with what is open in them.
 */
#include "page/past.h"

#include "page/page.h"
#include "write/escape.h"

static void
put_cell(struct buf *out, size_t n, size_t most)
{
	if (n == 0)
		buf_put_z(out, "<td class=\"none\">\xc2\xb7</td>");
	else
		buf_fmt(out, "<td class=\"bar\" style=\"--part:%zu%%\">%zu</td>",
		    most ? n * 100 / most : 0, n);
}

static void
put_text(struct buf *out, const char *before, struct str text, const char *after)
{
	buf_put_z(out, before);
	escape_html(out, text);
	buf_put_z(out, after);
}

/* ---- the head ----------------------------------------------------------- */

static void
put_head(struct buf *out, const struct survey *s)
{
	buf_fmt(out,
	    "<header>\n<h1>What is cooked here</h1>\n<p class=\"facts\"><span>%zu "
	    "episode%s</span> <span>%zu dish%s</span>",
	    s->episodes, s->episodes == 1 ? "" : "s", s->dishes,
	    s->dishes == 1 ? "" : "es");
	if (s->first.n) {
		put_text(out, " <span>", s->first, " to ");
		put_text(out, "", s->last, "</span>");
	}
	if (s->dated < s->episodes)
		buf_fmt(out, " <span>%zu without a date</span>", s->episodes - s->dated);
	buf_put_z(out, "</p>\n</header>\n");
}

/* ---- seasons ------------------------------------------------------------ */

static void
put_tallies(struct buf *out, const char *of, const struct tally *t, size_t n)
{
	static const char *const names[] = {
	    "spring", "summer", "autumn", "winter", "undated"};
	size_t most = 0;

	for (size_t i = 0; i < n; i++)
		for (size_t k = 0; k < SEASONS; k++)
			most = t[i].by[k] > most ? t[i].by[k] : most;
	buf_fmt(out,
	    "<table class=\"seasons\">\n<thead><tr><th scope=\"col\">%s</th>"
	    "<th scope=\"col\">all</th>",
	    of);
	for (size_t k = 0; k < SEASONS; k++)
		buf_fmt(out, "<th scope=\"col\">%s</th>", names[k]);
	buf_put_z(out, "</tr></thead>\n<tbody>\n");
	for (size_t i = 0; i < n; i++) {
		put_text(out, "<tr><th scope=\"row\">", t[i].name, "</th>");
		buf_fmt(out, "<td>%zu</td>", t[i].all);
		for (size_t k = 0; k < SEASONS; k++)
			put_cell(out, t[i].by[k], most);
		buf_put_z(out, "</tr>\n");
	}
	buf_put_z(out, "</tbody>\n</table>\n");
}

static void
put_seasons(struct buf *out, const struct survey *s)
{
	buf_put_z(out,
	    "<section>\n<h2>By the season</h2>\n<p>How many dishes are called so, or have "
	    "it in them, by the season at the place of the episode.</p>\n"
	    "<div class=\"pair\">\n");
	put_tallies(out, "dish", s->dish, s->dish_n);
	put_tallies(out, "food", s->food, s->food_n);
	buf_put_z(out, "</div>\n</section>\n");
}

/* ---- habits ------------------------------------------------------------- */

static void
put_habits(struct buf *out, const struct survey *s)
{
	buf_put_z(
	    out, "<section>\n<h2>How hot</h2>\n<p>Settings of ovens, oil and water.</p>\n");
	dots_put(out, s, QUANTITY_SETTING);
	buf_put_z(out,
	    "</section>\n<section>\n<h2>How long</h2>\n<p>Times of the steps; each "
	    "mark of the scale is some times the one before.</p>\n");
	dots_put(out, s, QUANTITY_TIME);
	buf_put_z(out,
	    "</section>\n<section>\n<h2>Done inside</h2>\n<p>Readings at which food was "
	    "called "
	    "done; the bar is the minimum that the US food safety authorities publish for "
	    "homes. General guidance only: local food codes and qualified advice come "
	    "first.</p>\n");
	dots_put(out, s, QUANTITY_INSIDE);
	buf_put_z(out, "</section>\n");
}

/* ---- episodes ----------------------------------------------------------- */

static size_t
most_open(const struct survey *s)
{
	size_t most = 0;

	for (size_t i = 0; i < s->episode_n; i++)
		for (size_t k = 0; k < 3; k++)
			if (s->episode[i].open[k] > most)
				most = s->episode[i].open[k];
	return most;
}

static void
put_episodes(struct buf *out, const struct survey *s)
{
	size_t most = most_open(s);

	buf_put_z(out, "<section>\n<h2>Episodes, and what is open in them</h2>\n");
	if (s->episode_n < s->episodes)
		buf_fmt(out, "<p>The newest %zu.</p>\n", s->episode_n);
	buf_put_z(out,
	    "<table class=\"episodes\">\n<thead><tr><th scope=\"col\">episode</th>"
	    "<th scope=\"col\">date</th><th scope=\"col\">dishes</th>"
	    "<th scope=\"col\">errors</th><th scope=\"col\">warnings</th>"
	    "<th scope=\"col\">notes</th></tr></thead>\n<tbody>\n");
	for (size_t i = 0; i < s->episode_n; i++) {
		const struct survey_episode *e = &s->episode[i];

		put_text(out, "<tr><th scope=\"row\">", e->title.n ? e->title : e->name,
		    "</th>");
		put_text(out, "<td>", e->date, "</td>");
		put_text(out, "<td class=\"text\">", e->dishes, "</td>");
		for (size_t k = 3; k-- > 0;)
			put_cell(out, e->open[k], most);
		buf_put_z(out, "</tr>\n");
	}
	buf_put_z(out, "</tbody>\n</table>\n</section>\n");
}

static void
put_codes(struct buf *out, const struct survey *s)
{
	size_t most = s->codes ? s->code[0].n : 0;

	if (s->codes == 0)
		return;
	buf_put_z(out,
	    "<section>\n<h2>Asked most often</h2>\n<table class=\"codes\">\n"
	    "<thead><tr><th scope=\"col\">finding</th><th scope=\"col\">open</th>"
	    "</tr></thead>\n<tbody>\n");
	for (size_t i = 0; i < s->codes; i++) {
		put_text(out, "<tr><th scope=\"row\">", s->code[i].code, "</th>");
		put_cell(out, s->code[i].n, most);
		buf_put_z(out, "</tr>\n");
	}
	buf_put_z(out, "</tbody>\n</table>\n</section>\n");
}

static const struct page_parts parts = {NULL, "type.css past.css", NULL, true};

void
past_put(struct buf *out, const struct survey *s)
{
	page_head(out, STR("What is cooked here"), &parts);
	buf_put_z(out, "<body class=\"past\">\n<main>\n");
	put_head(out, s);
	put_seasons(out, s);
	put_habits(out, s);
	put_episodes(out, s);
	put_codes(out, s);
	buf_put_z(out, "</main>\n");
	page_close(out, &parts);
}
