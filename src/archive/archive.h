/* SPDX-License-Identifier: ISC */
/*
 * The archive: one SQLite file that holds every episode kept, and what can be
 * asked of it. The only header of this folder that others include. An archive
 * serves one thread at a time; several programs may use one file at once.
 *
 * What is asked for goes into the caller's arena and stays when the archive is
 * closed.
 */
#ifndef TAMIS_ARCHIVE_H
#define TAMIS_ARCHIVE_H

#include "tamis.h"

struct archive;

enum archive_use {
	ARCHIVE_READ,
	ARCHIVE_CHANGE, /* an archive that is there */
	ARCHIVE_MAKE    /* the file is made where there is none */
};

/* Brings a file of an older version up to date. NULL and *e set on failure. */
struct archive *archive_open(const char *path, enum archive_use use, struct err *e);
void archive_close(struct archive *a);

/* ---- keeping ------------------------------------------------------------ */

/* An episode made ready by parcel_make(), on any thread. */
struct parcel {
	/* Set by the caller. An empty date or URL leaves what was kept before. */
	struct str name;    /* the archive knows the episode by it */
	struct str region;  /* as asked for; empty where it is told from the script */
	struct str profile; /* as asked for; empty where it is the region's */
	struct str answers; /* the author's, to the findings; may be empty */
	struct str date;    /* "2026-03-14" */
	struct str video_url;
	const struct draft *draft;
	/* Made. */
	uint64_t hash;       /* parcel_hash() */
	struct str passages; /* see passage.h */
	struct str json;     /* the draft without blanks */
	struct str pack;     /* source, passages and json, deflated */
	struct str *word;    /* folded, sorted, each once */
	size_t words;
};

/* Of the script, the answers, and what was asked for. */
uint64_t parcel_hash(const struct parcel *p, struct str source);
/* All that can be made without the archive, in the arena. */
void parcel_make(struct arena *arena, const struct grammar *g, struct parcel *p);

enum kept { KEPT_NEW, KEPT_AGAIN, KEPT_AS_IT_WAS };

/* What is known of an episode before it is read again. */
struct known {
	struct str name;
	uint64_t hash;
};
struct knowns {
	struct known *v; /* sorted by name */
	size_t n;
};
bool archive_known(
    struct archive *a, struct arena *arena, struct knowns *out, struct err *e);
/* NULL where the archive has no episode of that name. */
const struct known *known_find(const struct knowns *k, struct str name);

/* Puts the episode in, in place of the one of that name. One transaction: all
 * of it or nothing. */
bool archive_keep(struct archive *a, const struct grammar *g, const struct parcel *p,
    enum kept *out, struct err *e);
/* A new date or URL for an episode that is as it was; empty ones are left. */
bool archive_redate(struct archive *a, const struct parcel *p, struct err *e);
/* Takes the episode out; *found is false where there is none. */
bool archive_forget(struct archive *a, struct str name, bool *found, struct err *e);

/* ---- one episode of it -------------------------------------------------- */

struct kept_episode {
	struct str source;          /* the bytes as they were given */
	struct str region, profile; /* as they were asked for; empty where not */
	struct str answers;
	struct str json; /* the draft that was kept, without blanks */
};
/* False and *e set where there is no such episode. */
bool archive_episode(struct archive *a, struct arena *arena, struct str name,
    struct kept_episode *out, struct err *e);
/* Whether the file, its links and its search index are sound: calls told() for
 * each thing that is not. */
bool archive_verify(struct archive *a, void (*told)(void *context, struct str what),
    void *context, struct err *e);

/* ---- finding ------------------------------------------------------------ */

/* From min to max in base units; a side that is open is infinite. */
struct figure {
	double min, max;
	enum dimension dimension;
};
/* "170-180C", "350F", "gas mark 4", "2-3 cups", "200 g", "1h30", "-45 min" (at
 * most), "2 cups-" (at least). Units as the archive knows them. */
bool figure_read(struct archive *a, struct str text, enum dimension wanted,
    struct figure *out, struct err *e);

struct with {
	struct str name;
	bool ranged; /* only an amount in the figure */
	struct figure figure;
};

/* What a dish has to be or have; whatever is empty is not asked. */
struct question {
	struct str *word; /* words, phrases, and beginnings that end in '*' */
	size_t words;
	struct with *with;
	size_t withs;
	struct str *without;
	size_t withouts;
	struct str dish, equipment, action, free_of, finding, episode, since, until;
	bool heated, timed;
	struct figure temperature, time;
	enum measure_role role; /* of the temperature; ROLE_NONE any */
	size_t limit;
};

struct hit {
	struct str dish; /* empty: said around the dishes */
	struct str episode, title, date;
	struct str sentence; /* the words that fit best */
	struct span *mark;   /* those of the question, in the sentence */
	size_t marks;
	int64_t at_ms;   /* -1 unknown */
	struct str link; /* to the second; empty where no URL was kept */
};

struct answer {
	struct hit *hit; /* best first */
	size_t hits;
	bool more;           /* there are more than were asked for */
	bool loose;          /* no dish has all the words: these have some */
	struct str *nowhere; /* words that are nowhere in the archive */
	size_t nowheres;
};
bool archive_find(struct archive *a, struct arena *arena, const struct question *q,
    struct answer *out, struct err *e);
/* The answer as one JSON object, for programs. */
void answer_json(const struct answer *a, struct buf *out);
/* Every word of the archive, in order. */
bool archive_words(struct archive *a, void (*take)(void *context, struct str word),
    void *context, struct err *e);

/* ---- the whole ---------------------------------------------------------- */

/* Adds a finding `unlike-before` for each setting, time and reading of the
 * draft that is far outside what other episodes kept used. */
bool archive_compare(
    struct archive *a, const struct grammar *g, struct draft *d, struct err *e);
/* Each dish as one line of JSON. put() returns false to stop. */
bool archive_export(struct archive *a, bool (*put)(void *context, struct str line),
    void *context, struct err *e);

/* ---- surveying ---------------------------------------------------------- */

/* Seasons of the year where the episode is from; Marches are spring in the
 * north and autumn in Australia. */
enum season { SPRING, SUMMER, AUTUMN, WINTER, NO_SEASON, SEASONS };

/* How many dishes are called so, or have it in them. */
struct tally {
	struct str name;
	size_t by[SEASONS], all;
};

/* One setting, time or reading, with its episode. */
struct dot {
	double min, max; /* degrees Celsius, or seconds */
	struct str episode;
};
enum quantity {
	QUANTITY_SETTING, /* of an oven and the like, oil, water */
	QUANTITY_TIME,
	QUANTITY_INSIDE /* of the food, when it is called done */
};
/* All of a food (or dish) and an action. */
struct habit {
	struct str subject, action;
	enum quantity quantity;
	struct dot *dot; /* by value */
	size_t dots;
	/* Of a food, where an authority publishes a minimum inside. */
	bool guarded;
	double minimum_c;
	struct str source;
};

struct survey_episode {
	struct str name, title, date, dishes; /* "leek soup, oat rolls" */
	size_t open[3];                       /* findings, by enum severity */
};
struct open_code {
	struct str code;
	size_t n;
};

/* What the show cooks; the commonest and the newest of each. */
struct survey {
	size_t episodes, dishes, dated;
	struct str first, last; /* dates; may be empty */
	struct tally *dish, *food;
	size_t dish_n, food_n;
	struct habit *habit; /* by quantity, the commonest first */
	size_t habits;
	struct survey_episode *episode; /* the newest first */
	size_t episode_n;
	struct open_code *code; /* the commonest first */
	size_t codes;
};
bool archive_survey(struct archive *a, const struct grammar *g, struct arena *arena,
    struct survey *out, struct err *e);

#endif
