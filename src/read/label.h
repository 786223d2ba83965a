/* SPDX-License-Identifier: ISC */
/*
 * The few words that lay out a script, as against those that are said in it:
 * "Ingredients", "SUPER:", "Time" over a column, "[Music]". The one place in
 * src/read that knows words. For src/read only.
 */
#ifndef TAMIS_LABEL_H
#define TAMIS_LABEL_H

#include "base/str.h"

/* What a heading says of the lines under it. */
enum section { SECTION_OTHER, SECTION_INGREDIENTS, SECTION_METHOD };
enum section label_section(struct str heading);

/* A label in front of a line: "SUPER: ", "PICTURE: ", "AUDIO: ". */
enum lane { LANE_NONE, LANE_ONSCREEN, LANE_PICTURE, LANE_SOUND };
struct lane_label {
	enum lane lane;
	size_t n; /* bytes of the label with its colon and blanks */
};
struct lane_label label_lane(struct str s, size_t at);

/* What a table column holds, by the words over it. */
enum column {
	COLUMN_OTHER,
	COLUMN_TIME,
	COLUMN_PICTURE,
	COLUMN_SOUND,
	COLUMN_ONSCREEN,
	COLUMN_SPEAKER
};
enum column label_column(struct str header);

/* A line about the recipe rather than in a list: "Serves 4", "Prep: 10 min". */
bool label_is_fact(struct str line);
/* A capitalised word that never names a speaker: "Note", "Step", "For". */
bool label_is_no_name(struct str word);
/* Bytes of the sound note at s[at]: "[upbeat music]", "(applause)"; 0 none. */
size_t label_sound(struct str s, size_t at);

#endif
