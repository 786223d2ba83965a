/* SPDX-License-Identifier: ISC */
/*
 * Word tables of a script's layout, all in lower case, matched without case.
 */
#include "read/label.h"

#include "read/line.h"

struct word_kind {
	const char *words;
	int kind;
};

#define COUNT(array) (sizeof(array) / sizeof(array)[0])

/* Whether s[at..] starts with the lower-case words and no letter follows. */
static bool
says(struct str s, size_t at, const char *words)
{
	size_t n;

	if (at >= s.n || to_lower(s.p[at]) != words[0])
		return false;
	n = strlen(words);
	if (at + n > s.n)
		return false;
	for (size_t i = 0; i < n; i++)
		if (to_lower(s.p[at + i]) != words[i])
			return false;
	return at + n == s.n || !is_alpha(s.p[at + n]);
}

/* Whether the words stand anywhere in s, from the start of a word on. */
static bool
mentions(struct str s, const char *words)
{
	for (size_t i = 0; i < s.n; i++)
		if ((i == 0 || !is_alpha(s.p[i - 1])) && says(s, i, words))
			return true;
	return false;
}

enum section
label_section(struct str heading)
{
	static const struct word_kind kinds[] = {{"ingredients", SECTION_INGREDIENTS},
	    {"ingredient list", SECTION_INGREDIENTS},
	    {"shopping list", SECTION_INGREDIENTS}, {"you need", SECTION_INGREDIENTS},
	    {"you will need", SECTION_INGREDIENTS}, {"you'll need", SECTION_INGREDIENTS},
	    {"you\u2019ll need", SECTION_INGREDIENTS}, {"method", SECTION_METHOD},
	    {"directions", SECTION_METHOD}, {"instructions", SECTION_METHOD},
	    {"steps", SECTION_METHOD}, {"preparation", SECTION_METHOD},
	    {"how to make", SECTION_METHOD}};

	if (heading.n > 60)
		return SECTION_OTHER;
	for (size_t i = 0; i < COUNT(kinds); i++)
		if (mentions(heading, kinds[i].words))
			return (enum section)kinds[i].kind;
	return SECTION_OTHER;
}

struct lane_label
label_lane(struct str s, size_t at)
{
	static const struct word_kind kinds[] = {{"super", LANE_ONSCREEN},
	    {"caption", LANE_ONSCREEN}, {"on screen", LANE_ONSCREEN},
	    {"on-screen", LANE_ONSCREEN}, {"onscreen", LANE_ONSCREEN},
	    {"on screen text", LANE_ONSCREEN}, {"on-screen text", LANE_ONSCREEN},
	    {"text", LANE_ONSCREEN}, {"text on screen", LANE_ONSCREEN},
	    {"lower third", LANE_ONSCREEN}, {"lower-third", LANE_ONSCREEN},
	    {"gfx", LANE_ONSCREEN}, {"graphic", LANE_ONSCREEN}, {"graphics", LANE_ONSCREEN},
	    {"title card", LANE_ONSCREEN}, {"chyron", LANE_ONSCREEN},
	    {"picture", LANE_PICTURE}, {"video", LANE_PICTURE}, {"visual", LANE_PICTURE},
	    {"shot", LANE_PICTURE}, {"audio", LANE_SOUND}, {"sound", LANE_SOUND},
	    {"vo", LANE_SOUND}, {"v.o.", LANE_SOUND}, {"voice-over", LANE_SOUND},
	    {"voiceover", LANE_SOUND}};
	struct lane_label label = {LANE_NONE, 0};

	for (size_t i = 0; i < COUNT(kinds); i++) {
		size_t end;

		if (!says(s, at, kinds[i].words))
			continue;
		end = blank_skip(s, at + strlen(kinds[i].words), s.n);
		if (end < s.n && s.p[end] == ':') {
			label.lane = (enum lane)kinds[i].kind;
			label.n = blank_skip(s, end + 1, s.n) - at;
		}
	}
	return label;
}

enum column
label_column(struct str header)
{
	static const struct word_kind kinds[] = {{"timecode", COLUMN_TIME},
	    {"time", COLUMN_TIME}, {"tc", COLUMN_TIME}, {"at", COLUMN_TIME},
	    {"timing", COLUMN_TIME}, {"on screen", COLUMN_ONSCREEN},
	    {"on-screen", COLUMN_ONSCREEN}, {"super", COLUMN_ONSCREEN},
	    {"supers", COLUMN_ONSCREEN}, {"caption", COLUMN_ONSCREEN},
	    {"captions", COLUMN_ONSCREEN}, {"graphics", COLUMN_ONSCREEN},
	    {"gfx", COLUMN_ONSCREEN}, {"picture", COLUMN_PICTURE},
	    {"video", COLUMN_PICTURE}, {"visual", COLUMN_PICTURE},
	    {"visuals", COLUMN_PICTURE}, {"shot", COLUMN_PICTURE},
	    {"shots", COLUMN_PICTURE}, {"vision", COLUMN_PICTURE},
	    {"image", COLUMN_PICTURE}, {"sound", COLUMN_SOUND}, {"audio", COLUMN_SOUND},
	    {"script", COLUMN_SOUND}, {"voice", COLUMN_SOUND}, {"voice-over", COLUMN_SOUND},
	    {"voiceover", COLUMN_SOUND}, {"words", COLUMN_SOUND},
	    {"dialogue", COLUMN_SOUND}, {"dialog", COLUMN_SOUND}, {"vo", COLUMN_SOUND},
	    {"narration", COLUMN_SOUND}, {"speech", COLUMN_SOUND},
	    {"speaker", COLUMN_SPEAKER}, {"who", COLUMN_SPEAKER}};

	for (size_t i = 0; header.n <= 60 && i < COUNT(kinds); i++)
		if (mentions(header, kinds[i].words))
			return (enum column)kinds[i].kind;
	return COLUMN_OTHER;
}

bool
label_is_fact(struct str line)
{
	static const char *const facts[] = {"serves", "makes", "yield", "yields",
	    "servings", "prep", "prep time", "preparation time", "cook time",
	    "cooking time", "total", "total time", "time", "oven"};

	for (size_t i = 0; i < COUNT(facts); i++) {
		size_t at = strlen(facts[i]);

		if (!says(line, 0, facts[i]))
			continue;
		at = blank_skip(line, at, line.n);
		if (at < line.n && (line.p[at] == ':' || is_digit(line.p[at])))
			return true;
	}
	return false;
}

bool
label_is_no_name(struct str word)
{
	static const char *const words[] = {"note", "notes", "tip", "tips", "hint", "step",
	    "steps", "ingredient", "ingredients", "method", "directions", "instructions",
	    "preparation", "for", "to", "the", "a", "an", "serve", "serves", "makes",
	    "yield", "yields", "total", "time", "prep", "cook", "cooking", "warning",
	    "caution", "important", "remember", "first", "second", "third", "next", "then",
	    "finally", "last", "lastly", "now", "so", "and", "but", "or", "because",
	    "today", "here", "optional", "garnish", "sauce", "dressing", "topping",
	    "filling", "dough", "batter", "marinade", "glaze", "crust", "equipment",
	    "tools", "you", "your", "my", "our", "we", "this", "that", "it", "question",
	    "answer", "part", "recipe", "dish", "temperature", "oven", "title", "episode",
	    "secret", "trick", "result", "option", "variation", "storage", "one", "two",
	    "three", "four", "five", "six", "scene", "music", "end", "intro", "outro",
	    "chapter", "day", "salad", "soup", "cake", "bread", "about", "with", "in", "on",
	    "at", "if", "when"};

	for (size_t i = 0; i < COUNT(words); i++)
		if (says(word, 0, words[i]) && word.n == strlen(words[i]))
			return true;
	return false;
}

static bool
is_sound_word(struct str note)
{
	static const char *const words[] = {"music", "applause", "applauding", "laughs",
	    "laughing", "laughter", "chuckles", "chuckling", "giggles", "cheers",
	    "cheering", "clapping", "sighs", "sizzling", "sizzles", "clattering", "clatter",
	    "beeping", "beeps", "beep", "ding", "dings", "ringing", "rings", "whirring",
	    "chopping", "humming", "gasps", "coughs", "silence", "inaudible", "indistinct",
	    "crosstalk", "foreign", "noise", "sound", "sounds"};

	for (size_t i = 0; i < COUNT(words); i++)
		if (mentions(note, words[i]))
			return true;
	return false;
}

size_t
label_sound(struct str s, size_t at)
{
	enum { LONGEST = 64, MOST_WORDS = 6 };
	char open = at < s.n ? s.p[at] : 0, close = open == '[' ? ']' : ')';
	struct str note = str_cut(s, at + 1, at + LONGEST);
	size_t blanks = 0;
	bool small = false, large = false;
	size_t letters = 0;

	if (open != '[' && open != '(')
		return 0;
	note.n = str_find_char(note, close);
	if (at + 1 + note.n >= s.n || s.p[at + 1 + note.n] != close)
		return 0;
	for (size_t i = 0; i < note.n; i++) {
		if (is_digit(note.p[i]))
			return 0;
		small = small || is_lower(note.p[i]);
		large = large || is_upper(note.p[i]);
		letters += is_alpha(note.p[i]);
		blanks += is_blank(note.p[i]);
	}
	if (blanks >= MOST_WORDS || letters < 3)
		return 0;
	if (open == '(' && (small || !large) && !is_sound_word(note))
		return 0;
	return note.n + 2;
}
