/* SPDX-License-Identifier: ISC */
/*
 * Prepositions of a clause and what follows them: places, sizes, tools, lids.
 *
 *     "into a baking dish", "to about half an inch thick", "with the lid on"
 */
#include "clause/framer.h"

bool
preposition_is_lid(const struct framer *r, uint32_t at)
{
	const struct node *n = node_at(r, at);

	for (uint32_t i = n ? n->beg : 0; n && i < n->end; i++)
		if (str_is_z(r->m->c.tokens.token.v[i].norm, "lid"))
			return true;
	return false;
}

static bool
is_appliance_at(const struct framer *r, uint32_t at)
{
	const struct reading *e =
	    node_at(r, at) ? node_reading(&r->m->c, node_at(r, at), "EQUIP") : NULL;

	return e && lexeme_get(e->lexeme, "appliance").n &&
	       !str_is_z(lexeme_get(e->lexeme, "kind"), "pan");
}

/* "reserve half for the table": with these verbs, what for matters. */
static bool
keeps_purpose(const struct framer *r)
{
	static const char *const verbs[] = {
	    "reserve", "save", "keep", "set aside", "leave"};

	for (size_t i = 0; i < sizeof verbs / sizeof *verbs; i++)
		if (str_is_z(r->w->deed->action, verbs[i]))
			return true;
	return false;
}

/* "to the boil" is part of the verb; what stands before it too ("up"). */
static bool
is_boil(struct framer *r, uint32_t at)
{
	if (!word(r, at, "to") || !r->w->deed->lexeme ||
	    !str_starts(r->w->deed->lexeme->lemma, STR("bring to")))
		return false;
	for (r->at = at + 1; is(r, r->at, "ART") || is(r, r->at, "DET") ||
			     is(r, r->at, "FOODMOD") || word(r, r->at, "boil") ||
			     word(r, r->at, "simmer") || word(r, r->at, "rolling");)
		r->at++;
	r->f->particle.n = 0;
	return true;
}

/* A particle stands right after its verb or its object: "break it up". */
static bool
may_take_particle(const struct framer *r, uint32_t at)
{
	return at == r->w->deed->at + 1 ||
	       (at > 0 && (is(r, at - 1, "PRON") || is_food(r, at - 1) ||
			      made(r, at - 1, "EQ") || is(r, at - 1, "THING")));
}

/* "with the lid still on", "under a lid": the words of the lid go. */
static bool
take_lid_phrase(struct framer *r, struct str prep)
{
	uint32_t at = r->at;
	bool without = str_is_z(prep, "without");

	if (!str_is_z(prep, "with") && !str_is_z(prep, "under") && !without)
		return false;
	for (; is(r, at, "ART") || is(r, at, "DET") || is(r, at, "FOODMOD") ||
	       word(r, at, "no");
	     at++)
		without = without || word(r, at, "no");
	if (!(made(r, at, "EQ") || is(r, at, "EQUIP")) || !preposition_is_lid(r, at))
		return false;
	for (at++; is(r, at, "ADV") || word(r, at, "still"); at++)
		;
	if (word(r, at, "off") || without)
		r->f->uncovered = true;
	else
		r->f->covered = true;
	r->at = at + (word(r, at, "off") || word(r, at, "on"));
	return true;
}

static bool
is_number(const struct framer *r, uint32_t at)
{
	return made(r, at, "NUM") || made(r, at, "LEN") || made(r, at, "DIMS") ||
	       made(r, at, "AMT");
}

/* "into twelve", "into eight slices", "to half an inch thick", "to about thirty by
 * forty centimetres", in the cook's words. */
static bool
take_size(struct framer *r, struct str prep)
{
	static const char *const tails[] = {"DISH", "PIECE", "SHAPE", "FOODQ", "EATER"};
	bool into = str_is_z(prep, "into") || str_is_z(prep, "in"), more = true;
	bool to = str_is_z(prep, "to");
	struct str s = prep;

	if (!is_number(r, r->at) || !(into || (to && !made(r, r->at, "NUM"))) ||
	    str_is_z(r->w->deed->kind, "set-heat") || made(r, r->at + 1, "EQ"))
		return false;
	if (r->about)
		add(r, &s, STR("about"));
	r->about = false;
	add(r, &s, said(r, r->at++));
	while (more) {
		more = word(r, r->at, "thick") || word(r, r->at, "long") ||
		       word(r, r->at, "across") || word(r, r->at, "wide") ||
		       is(r, r->at, "FOODMOD");
		for (size_t i = 0; !more && i < sizeof tails / sizeof *tails; i++)
			more = is(r, r->at, tails[i]) || made(r, r->at, tails[i]);
		if (more)
			add(r, &s, said(r, r->at++));
	}
	if (r->f->places < PLACES_MAX)
		r->f->place[r->f->places++] = s;
	return true;
}

/* "by itself"; "most of it", "it broke at me" are no places. */
static bool
take_pronoun(struct framer *r, struct str prep)
{
	bool self = word(r, r->at, "itself") || word(r, r->at, "themselves");

	if (!self && !((str_is_z(prep, "of") || str_is_z(prep, "at")) &&
			 phrase_is_pronoun(r, r->at)))
		return false;
	if (self) {
		add(r, &r->f->manner, prep);
		add(r, &r->f->manner, said(r, r->at));
	}
	r->at++;
	return true;
}

/* A preposition and what follows it; a particle where nothing does. */
void
preposition_take(struct framer *r)
{
	struct str prep = said(r, r->at), phrase;
	uint32_t start = r->at;
	bool appliance;

	r->at++;
	while (is(r, r->at, "APPROX")) {
		r->about = true;
		r->at++;
	}
	if (take_lid_phrase(r, prep) || take_size(r, prep))
		return;
	if (made(r, r->at, "DUR") || made(r, r->at, "TEMP")) {
		frame_measure(r);
		return;
	}
	if (made(r, r->at, "HEAT")) {
		frame_heat(r);
		return;
	}
	appliance = is_appliance_at(r, r->at) || is_appliance_at(r, r->at + 1);
	if (is_boil(r, start))
		return;
	if (word(r, r->at, "there") || word(r, r->at, "here")) {
		r->at++;
		return;
	}
	if (str_is_z(prep, "of") && is_food(r, r->at)) {
		frame_object(r);
		return;
	}
	if (take_pronoun(r, prep))
		return;
	phrase = phrase_take(r);
	if (phrase.n == 0) {
		r->at = start + 1;
		if (is(r, start, "PARTICLE") && !r->f->particle.n && !r->f->places &&
		    may_take_particle(r, start))
			r->f->particle = prep;
		return;
	}
	if ((str_is_z(prep, "for") && !keeps_purpose(r)) ||
	    (r->w->deed->heats && str_is_z(prep, "with") && str_is_z(phrase, "it")))
		return;
	phrase =
	    arena_fmt(r->m->a, "%.*s %.*s", (int)prep.n, prep.p, (int)phrase.n, phrase.p);
	if (appliance)
		r->f->appliance = phrase;
	else if (r->f->places < PLACES_MAX &&
		 !phrase_holds(r->f->place, r->f->places, phrase))
		r->f->place[r->f->places++] = phrase;
}
