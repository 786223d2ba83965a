/* SPDX-License-Identifier: ISC */
/*
 * tamis: from a talking cook's script to written recipes. Every struct that
 * crosses a stage, and the public calls of libtamis. Read this first.
 *
 *   bytes - read -> script - scan -> mentions - assemble -> draft
 *         - remark, check -> draft + findings - write -> text
 *
 * Memory: every pointer reachable from a draft lives in its arena or in the
 * script it holds; nobody frees parts. tamis_draft_free() frees all of it.
 * The grammar is read-only once open and may be shared by threads.
 */
#ifndef TAMIS_H
#define TAMIS_H

#include "base/arena.h"
#include "base/buf.h"
#include "base/err.h"
#include "base/ratio.h"
#include "base/str.h"
#include "base/style.h"

/* ---- the script: what `read` makes ------------------------------------ */

enum cue_kind {
	CUE_SPEECH,  /* said aloud */
	CUE_TITLE,   /* the episode's title */
	CUE_HEADING, /* a heading inside the script: often a dish */
	CUE_LIST,    /* one line of a written ingredient list */
	CUE_PICTURE, /* the picture column of an A/V table: not said */
	CUE_ONSCREEN /* words put on the screen: a caption, a super */
};

/* One caption, paragraph, heading or list line. */
struct cue {
	enum cue_kind kind;
	int64_t beg_ms, end_ms; /* from the start of the episode; -1 unknown */
	struct span text;       /* into script.text */
	struct str speaker;     /* empty when unknown */
	bool paragraph;         /* a new paragraph, stamp or list item starts here */
};

/* A run of script.text and the source bytes it came from. Where text_n equals
 * source_n the bytes correspond one to one; else the run is indivisible (an
 * entity, a re-encoded character). Sorted; no gaps in text. */
struct piece {
	uint32_t text, text_n;
	uint32_t source, source_n;
};

struct script {
	struct str source;  /* the bytes as given, whatever their encoding */
	struct str name;    /* file name without folders */
	const char *format; /* "text", "markdown", "webvtt", "subrip" */
	struct str text;    /* UTF-8: the words of all cues, a '\n' after each */
	struct cue *cue;
	size_t cues;
	struct piece *piece;
	size_t pieces;
	struct diagnostic *diagnostic; /* what was odd in the file */
	size_t diagnostics;
	struct str title;  /* of the episode; empty when unknown */
	int64_t length_ms; /* end of the last cue; -1 unknown */
	bool stamped;      /* has any time at all */
};

/* A fault inside the file that the reader got past. */
struct diagnostic {
	struct span span; /* source bytes */
	struct str text;  /* what was odd and what was done about it */
};

/* Source bytes of [text.beg, text.end): first byte of the first character to
 * the end of the last. */
struct span script_source(const struct script *s, struct span text);
/* Bytes of script.text that source bytes became; {0, 0} where none did. */
struct span script_text(const struct script *s, struct span source);
/* The words of a run of script.text, single-spaced. */
struct str script_words(struct arena *a, const struct script *s, struct span text);
/* 1-based line and byte column of a source offset (in the source's own bytes). */
struct err_place script_line(const struct script *s, uint32_t source_at);

/* ---- units -------------------------------------------------------------- */

enum dimension {
	DIM_COUNT,      /* pieces, cloves, cans: no base */
	DIM_VOLUME,     /* millilitre */
	DIM_MASS,       /* gram */
	DIM_LENGTH,     /* millimetre */
	DIM_TIME,       /* second */
	DIM_TEMPERATURE /* celsius */
};

/* A row of grammars/tables/units.tsv, for one region where regions differ.
 * base = (value + offset) * factor. */
struct unit {
	struct str name; /* contract name, singular: "teaspoon"; "" for a bare count */
	struct str plural;
	struct str brief; /* printed short: "tsp"; the name where there is none */
	enum dimension dimension;
	bool metric;   /* g, kg, ml, cl, dl, l, mm, cm, celsius */
	bool has_base; /* false for a pinch, a clove, a gas mark */
	struct ratio factor, offset;
};

/* A value or a range in a unit. unit NULL is a bare count. */
struct amount {
	bool present; /* something was said: "some", "a few slices", "two cups" */
	bool known;   /* min and max hold */
	struct ratio min, max;
	const struct unit *unit;
};

/* Where a thing is said. */
struct place {
	int64_t at_ms;    /* of its first word, interpolated; -1 unknown */
	int64_t cue_ms;   /* start of the cue that holds it; -1 unknown */
	struct span span; /* source bytes */
};

/* ---- the draft: what `assemble` makes ----------------------------------- */

enum measure_kind {
	MEASURE_AMOUNT,
	MEASURE_COUNT,
	MEASURE_TEMPERATURE,
	MEASURE_DURATION,
	MEASURE_LENGTH
};
enum measure_role {
	ROLE_NONE,
	ROLE_APPLIANCE,
	ROLE_OIL,
	ROLE_LIQUID,
	ROLE_INTERNAL,
	ROLE_AMBIENT,
	ROLE_STEP,
	ROLE_REST,
	ROLE_CLAIM,
	ROLE_OTHER
};
enum bound { BOUND_NONE, BOUND_MIN, BOUND_MAX };

struct measure {
	enum measure_kind kind;
	struct amount value; /* unit as said; known is false for "overnight" */
	bool unit_stated;
	enum measure_role role;
	bool approximate;
	enum bound bound;
	struct str text; /* the words as said */
	struct place place;
	bool corrected; /* `first` was said before it and put right */
	struct amount first;
	bool reversed;  /* was said high to low */
	bool converted; /* a second value of the measure before it: "350, that's 180 C" */
	bool aside;     /* no instruction: a joke, a warning, another cook's recipe */
};

/* A value of a step said once more: "that's had its 25 minutes". */
struct restated {
	struct amount value; /* a time or a temperature, by its unit */
	struct place place;
};

struct alternative {
	struct str item;
	struct amount amount;
};

struct ingredient {
	struct str item;  /* as a recipe prints it, with what changes the purchase */
	struct str key;   /* lexicon head, folded singular: "egg"; for comparing */
	struct str group; /* lexicon group of the head: "poultry", "spice"; or empty */
	struct amount amount, metric, size;
	struct str preparation, note; /* empty when none */
	bool optional;
	bool divided;
	bool listed; /* stands in a written or spoken list */
	bool used;   /* used by a step */
	struct alternative *alternative;
	size_t alternatives;
	struct place *use; /* every mention that this line sums up */
	size_t uses;
	struct amount *said; /* the amount of each use, parallel to use */
	struct place place;
	struct str kind; /* the wider word of its lexicon entry: "chicken"; or empty */
	bool free;       /* needs no amount by nature: salt, pepper, water, oil */
	bool liquid;
	bool unasked;       /* where it has no amount, none is to be asked */
	struct ratio scale; /* the amounts are the script's times this; den 0: as said */
};

struct temperature {
	bool present;
	struct ratio min, max;
	const struct unit *unit;
	bool unit_stated;
	bool inherited; /* set by an earlier step */
	struct str
	    heat; /* "medium", "high": a level in place of degrees; may stand alone */
	enum measure_role role; /* ROLE_APPLIANCE, ROLE_OIL, ROLE_LIQUID */
	struct place place;     /* where it was said */
	bool change;            /* "turn it down to": a new setting of what is on */
};

struct doneness {
	struct str text; /* "golden brown"; empty for a thermometer reading alone */
	bool known;      /* a reading is given */
	struct ratio min, max;
	const struct unit *unit;
	bool unit_stated;
	struct place place;
	bool weak;          /* says little about when to stop: "done", "nice" */
	bool mixture;       /* speaks of a sauce, a batter, not of pieces of food */
	struct str subject; /* key of the food it speaks of; empty: what is cooked */
	int64_t hold_ms;    /* held at the reading this long; 0 not said */
};

struct duration {
	bool present; /* something was said */
	bool known;   /* false for "overnight" */
	int64_t min_ms, max_ms;
	bool sides; /* was said per side */
};

/* A value in the text of a step, so that it can be printed in another way. */
struct slot {
	struct span text;       /* bytes of step.text */
	enum measure_kind kind; /* MEASURE_AMOUNT, MEASURE_TEMPERATURE */
	struct amount value;
	bool exact;      /* a thermometer's reading, no setting of an appliance */
	struct str food; /* an amount: the key of what it is of; may be empty */
};

struct step {
	struct str text;   /* the written step */
	struct str action; /* base form: "bake" */
	bool recast;       /* false: the cleaned words, not a made sentence */
	struct temperature temperature;
	struct duration duration;
	struct doneness doneness;
	uint32_t *use; /* indexes into the part's ingredients */
	size_t uses;
	const char *appliance; /* "oven", "stove", "air-fryer", ...; NULL none */
	bool heats;            /* food is cooked in it */
	bool preheats;         /* sets an appliance without food */
	bool passive;          /* the cook only waits */
	bool beside;           /* runs while the step before it runs */
	struct place place;
	struct str kind;        /* of its action in the lexicon: "heat", "chill", "wash" */
	bool guessed;           /* nobody has named its appliance by then */
	bool heat_told;         /* "hot coals", "a smoking pan": no setting, but said */
	bool time_vague;        /* "a little while": said, but no time */
	struct restated *again; /* its time or temperature, named again */
	size_t agains;
	uint32_t *product; /* parts of the dish whose product goes in, by index */
	size_t products;
	struct slot *slot; /* in text order */
	size_t slots;
};

struct part {
	struct str name; /* "" for the dish itself */
	struct ingredient *ingredient;
	size_t ingredients;
	struct step *step;
	size_t steps;
	struct place place;
};

struct equipment {
	struct str item;
	struct amount size; /* "9 inch"; not present when none is said */
	struct place place;
	struct str kind; /* in the lexicon: "tin", "dish", "pan"; or empty */
};

/* A yield as it was said. */
struct said_yield {
	struct amount value;
	struct str unit; /* "serving" or what is counted */
	struct place place;
};

struct dish {
	struct str name;
	int64_t beg_ms, end_ms; /* -1 unknown */
	struct amount yield;    /* unit "serving" or what is counted */
	struct place yield_place;
	struct str yield_unit;
	int64_t active_ms, total_ms, claimed_ms; /* -1 unknown */
	struct place claim_place;
	struct part *part; /* part[0] is the dish itself */
	size_t parts;
	struct equipment *equipment;
	size_t equipments;
	struct str *note; /* tips worth keeping */
	size_t notes;
	struct place place;
	struct said_yield *yield_said; /* every time one was said */
	size_t yields_said;
	struct ratio scale; /* of its ingredients and yield; den 0: as said */
};

/* What only the words show: `remark` marks it, `check` asks about it. */
enum remark_kind {
	REMARK_UNSAFE_ADVICE,     /* detail: a topic of cautions.tsv, "raw-marinade" */
	REMARK_RAW_SERVED,        /* served raw; detail: the food, "egg yolk" */
	REMARK_CAUTION,           /* the host warns those at risk of raw food */
	REMARK_MISHEARD,          /* detail: the likely words, "four cups"; or empty */
	REMARK_UNCLEAR_REFERENCE, /* "the rest of the sauce", with no sauce before */
	REMARK_CLAIM_FREE_OF,     /* detail: an allergen of allergens.tsv, "gluten" */
	REMARK_NO_AMOUNT          /* "two inches of flour"; detail: the food */
};

struct remark {
	enum remark_kind kind;
	struct place place;
	struct str text;      /* the words */
	struct str detail;    /* see the kinds */
	int dish, part, step; /* indexes; -1 none */
};

enum severity { SEVERITY_NOTE, SEVERITY_WARNING, SEVERITY_ERROR };
enum status { STATUS_OPEN, STATUS_ANSWERED, STATUS_STET };

/* A row of findings.def. */
struct finding_kind {
	const char *code; /* "missing-temperature" */
	enum severity severity;
	const char *summary; /* one line */
	const char *explain; /* a paragraph for `tamis explain` */
};

struct related {
	struct place place;
	struct str message;
};

struct finding {
	const struct finding_kind *kind;
	enum severity severity;         /* may be milder than the kind's */
	struct str message, suggestion; /* suggestion empty when there is none */
	int dish, part, step;           /* indexes; -1 none */
	struct related *related;
	size_t relateds;
	enum status status;
	struct str answer; /* of one that is not open: the value or the reason */
	struct place place;
};

/* A line of the answers that is wrong, or fits nothing; never silent. */
struct answer_problem {
	struct err_place place; /* in the answers */
	enum severity severity;
	struct str text;
};

struct draft {
	struct arena *arena;
	struct script *script;
	const char *language;
	const char *region; /* "us", "uk", "ca", "au", "in" */
	bool region_stated;
	const char *profile; /* of safe temperatures: "us-home", "uk" */
	struct dish *dish;
	size_t dishes;
	struct measure *measure;
	size_t measures;
	struct finding *finding; /* script order */
	size_t findings;
	struct remark *remark; /* script order */
	size_t remarks;
	struct answer_problem *answer_problem;
	size_t answer_problems;
};

/* ---- public calls ------------------------------------------------------- */

struct grammar;

/* dir NULL: the grammar built in; else a folder laid out like grammars/.
 * NULL and *e set on failure. */
struct grammar *tamis_grammar_open(const char *dir, const char *language, struct err *e);
void tamis_grammar_close(struct grammar *g);

struct tamis_options {
	const char *region; /* NULL: inferred from the script */
	size_t max_source;  /* bytes; 0 the default, 16 MiB */
	/* Whose safe temperatures; NULL: those of the region, "us-home" where it
	 * publishes none. */
	const char *profile;
	struct str answers; /* the author's, as answer/answer.h has them; or empty */
};

/* Profiles of safe temperatures: "us-home", "uk", "ca", ...; NULL past the last. */
const char *tamis_profile(size_t index);

/* Reads, scans, assembles and checks one episode. `source` is copied. name is
 * the file name to print. NULL and *e set when the bytes are over a cap. */
struct draft *tamis_draft(const struct grammar *g, const struct tamis_options *o,
    struct str source, const char *name, struct err *e);
void tamis_draft_free(struct draft *d);

/* Takes over a style file's text (see examples/house.style); name is for messages. */
bool tamis_style_read(struct tamis_style *s, struct arena *a, const struct grammar *g,
    struct str text, const char *name, struct err *e);
/* The draft as the style asks for it, in the same arena: multiplied, printed
 * anew, respelled. Writers take it in the draft's place, with the same style. */
struct draft *tamis_restyle(
    const struct draft *d, const struct grammar *g, const struct tamis_style *style);

/* Output formats, in table order; NULL past the last. */
struct writer {
	const char *name;      /* "markdown" */
	const char *extension; /* "md" */
	const char *help;      /* one line */
	const char *package;   /* its file in a package, without ending; NULL none */
	bool per_dish;         /* a package has one file of it for each dish */
	bool apart;            /* and so has a folder that is written into */
	/* The whole draft, all dishes. */
	void (*write)(const struct draft *d, const struct grammar *g,
	    const struct tamis_style *style, struct buf *out);
};
const struct writer *tamis_writer(size_t index);
const struct writer *tamis_writer_find(const char *name);
/* The file's name in a package: "recipes.md"; where there is one for each
 * dish, d holds that dish alone and its number tells it from the others. */
void tamis_package_name(
    struct buf *b, const struct writer *w, const struct draft *d, size_t dish);
/* The catalogue of findings, in table order; NULL past the last. */
const struct finding_kind *tamis_finding_kind(size_t index);

/* A line per word: its classes and the rules that took it. Of one time (`at`, "1:20"),
 * one word, or both, also the rules that began there and failed. NULL: any; both: no
 * failures. False and *e set: no time, or no such word there. */
bool tamis_tags(const struct grammar *g, const struct script *s, const char *at,
    const char *word, struct buf *out, struct err *e);

/* Puts lines for the open findings that `answers` neither has nor asks yet, to
 * be added at its end; how many. */
size_t tamis_ask(const struct draft *d, struct str answers, struct buf *out);

/* Which findings somebody wants to see. */
struct tamis_selection {
	enum severity lowest;
	const char *only, *except; /* codes with commas between; NULL: all, none */
};
/* Takes all others out of the draft. */
void tamis_select(struct draft *d, const struct tamis_selection *s);

/* An episode of a report. */
struct reported {
	struct str path;           /* as the caller names the file */
	const struct draft *draft; /* NULL where it could not be read */
	struct str trouble;        /* why; else empty */
	struct str answers;        /* the path of its answers; empty without */
};
/* The findings of all episodes in one document, in table order; NULL past the last. */
struct report {
	const char *name; /* "sarif" */
	const char *help; /* one line */
	void (*write)(const struct reported *r, size_t n, struct buf *out);
};
const struct report *tamis_report(size_t index);
const struct report *tamis_report_find(const char *name);

/* ---- facts of the tables ------------------------------------------------ */

/* The rows of units.tsv; *region is empty for everywhere. NULL past the last. */
const struct unit *tamis_unit(const struct grammar *g, size_t index, struct str *region);
/* In degrees Celsius, gas marks as ovens.tsv has them; false where u is no
 * temperature. */
bool tamis_celsius(
    const struct grammar *g, const struct unit *u, struct ratio value, struct ratio *out);

struct allergen {
	struct str code, name; /* "tree-nut", "tree nuts" */
};
/* The allergens of allergens.tsv, in order; false past the last. */
bool tamis_allergen(const struct grammar *g, size_t index, struct allergen *out);
/* The food brings the allergen, surely or as a rule, by its names. That it does
 * not is no proof of anything: labels and qualified advice come first. */
bool tamis_brings(
    const struct grammar *g, const struct ingredient *in, struct str allergen);

/* The lowest temperature inside a food that an authority publishes as safe. */
struct safe_minimum {
	struct ratio celsius;
	struct str source;
};
/* That of the food where the region is (NULL: the US home chart); false where
 * none is known. General guidance: local food codes and qualified advice come
 * first. */
bool tamis_safe_minimum(const struct grammar *g, const char *region,
    const struct ingredient *in, struct safe_minimum *out);

#endif
