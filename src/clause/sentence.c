/* SPDX-License-Identifier: ISC */
/*
 * Composes the written sentence of a clause from its frame: verb, object,
 * places, manner, heat, temperature, time, cue, in a recipe's order.
 */
#include "clause/composer.h"

static void
put(struct composer *c, struct str s)
{
	if (s.n == 0)
		return;
	if (c->out.n && s.p[0] != ',')
		buf_put_char(&c->out, ' ');
	buf_put(&c->out, s);
}

static void
put_after(struct composer *c, const char *word, struct str s)
{
	if (s.n == 0)
		return;
	put(c, str_of(word));
	put(c, s);
}

struct str
list_join(struct arena *a, const struct str *item, size_t count)
{
	struct buf b = buf_in(a);

	for (size_t i = 0; i < count; i++) {
		struct str s = item[i];

		/* one article serves the list */
		if (i > 0 && str_starts(s, STR("the ")) && str_starts(item[0], STR("the ")))
			s = str_cut(s, 4, s.n);
		if (i > 0)
			buf_put_z(&b, i + 1 == count ? " and " : ", ");
		buf_put(&b, s);
	}
	return buf_str(&b);
}

/* ---- the verb ------------------------------------------------------------ */

/* Is the verb's lemma of the class? */
static bool
lemma_is(const struct composer *c, const char *class_name)
{
	const struct lexeme *l = c->w->deed->lexeme;
	const struct entry *e =
	    l ? lexicon_find(&c->w->m->g->lexicon, lexicon_key(c->w->m->a, l->lemma))
	      : NULL;

	return e && entry_reading(e, grammar_class(c->w->m->g, class_name));
}

/* Cooking or waiting that needs no object: "Bake in the oven", "Stir". */
static bool
stands_alone(const struct composer *c)
{
	const struct deed *d = c->w->deed;

	if (d->heats || d->passive)
		return c->f.places || c->f.appliance.n || c->f.covered;
	return lemma_is(c, "ALONE");
}

/* What the cook does to see or to tell, and no reader needs to. */
static bool
is_idle(const struct composer *c)
{
	static const char *const kinds[] = {"measure", "store", "prepare", "open"};

	if (!c->w->deed->light && c->w->deed->lexeme && !c->w->deed->kind.n)
		return true;
	for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++)
		if (is_kind(c, kinds[i]))
			return true;
	return lemma_is(c, "IDLE") && !c->f.places;
}

static const char *
appliance_name(const char *appliance)
{
	static const char *const table[][2] = {{"air-fryer", "air fryer"}, {"fryer", "oil"},
	    {"water-bath", "water bath"}, {"slow-cooker", "slow cooker"},
	    {"pressure-cooker", "pressure cooker"}, {"stove", "pan"}};

	for (size_t i = 0; appliance && i < sizeof table / sizeof *table; i++)
		if (str_is_z(str_of(appliance), table[i][0]))
			return table[i][1];
	return appliance ? appliance : "oven";
}

/* "Heat the oven to 200 °C": a setting without food in it. */
static bool
put_setting(struct composer *c)
{
	const struct deed *d = c->w->deed;

	if (!c->f.temperature.n || has_object(c) || d->duration.present || d->heats)
		return false;
	if (d->doneness.known || d->temperature.role == ROLE_INTERNAL)
		return false;
	put(c, STR("Heat the"));
	put(c,
	    str_of(d->temperature.role == ROLE_OIL ? "oil" : appliance_name(d->appliance)));
	put_after(c, "to", c->f.temperature);
	return true;
}

/* ---- the rest ------------------------------------------------------------ */

static struct str
object_words(struct composer *c)
{
	struct arena *a = c->w->m->a;

	if (c->f.foods)
		return list_join(a, c->f.food, c->f.foods);
	if (c->w->pending.n &&
	    (str_is_z(c->f.object, "it") || str_is_z(c->f.object, "them"))) {
		c->w->used_pending = true;
		return c->w->pending;
	}
	if (str_is_z(c->f.object, "it") && c->w->it.n)
		return c->w->it;
	if (str_is_z(c->f.object, "them") && c->w->them.n)
		return c->w->them;
	return c->f.object;
}

/* "get the grill on high" */
static bool
sets_appliance(const struct composer *c)
{
	const char *appliance = c->w->deed->appliance;

	return c->f.tool && !c->f.foods && appliance && c->w->deed->light &&
	       !str_is_z(str_of(appliance), "stove");
}

static void
put_heat(struct composer *c)
{
	if (!c->f.heat.n)
		return;
	if (is_kind(c, "set-heat") || sets_appliance(c)) {
		put_after(c, "to", c->f.heat);
		return;
	}
	put_after(c, "over", c->f.heat);
	put(c, STR("heat"));
}

/* "heat the oven to 200 °C": the heat is reached, not kept. */
static bool
sets_heat(const struct composer *c)
{
	return is_kind(c, "preheat") || is_kind(c, "set-heat") ||
	       lexeme_has(c->w->deed->lexeme, "warms");
}

/* "turn them round for twelve minutes": they cook, and are turned. */
static bool
turns_food(const struct composer *c)
{
	const struct lexeme *l = c->w->clause->action;

	return l && c->w->deed->lexeme != l && c->w->deed->heats && c->f.duration.n &&
	       str_is_z(lexeme_get(l, "kind"), "flip");
}

static void
put_ends(struct composer *c)
{
	const struct frame *f = &c->f;

	put_heat(c);
	if (f->covered)
		put(c, STR(", covered,"));
	else if (f->uncovered)
		put(c, STR(", uncovered,"));
	put_after(c, sets_heat(c) ? "to" : "at", f->temperature);
	if (str_is_z(f->duration, "overnight"))
		put(c, f->duration);
	else
		put_after(c, "for", f->duration);
	if (f->doing.n)
		put_after(c, ",", f->doing);
	else if (turns_food(c))
		put(c, STR(", turning,"));
	/* "lid on for ten minutes, lid off till they're glossy" */
	if (f->covered && f->uncovered)
		put(c, STR(", then uncovered"));
	if (!f->until.n && !f->reading.n)
		return;
	if ((f->duration.n || f->doing.n) && !(f->covered && f->uncovered))
		put(c, f->or_until ? STR(", or") : STR(","));
	put(c, STR("until"));
	put(c, f->until);
	if (f->reading.n) {
		put(c, f->until.n ? STR("and it reads") : STR("it reads"));
		put(c, f->reading);
		put(c, STR("inside"));
	}
}

/* The object of waiting or cooking is left out where it is only "it". */
static bool
drops_object(const struct composer *c)
{
	if (c->w->deed->heats && c->w->deed->equipment && !c->f.foods && c->f.object.n &&
	    !str_is_z(c->f.object, "it") && !str_is_z(c->f.object, "them"))
		return c->f.duration.n || c->f.until.n;
	return !c->f.foods && !c->w->pending.n &&
	       (str_is_z(c->f.object, "it") || str_is_z(c->f.object, "them")) &&
	       (c->f.duration.n || c->f.until.n) &&
	       (c->w->deed->heats || c->w->deed->passive || is_kind(c, "rest"));
}

static bool
is_worth_it(const struct composer *c, struct str verb)
{
	const struct frame *f = &c->f;

	if (!verb.n)
		return false;
	if (is_idle(c) && !f->duration.n && !f->until.n)
		return false;
	/* "go in with a fork" brings in no food */
	if (str_is_z(verb, "add") && f->tool && !f->foods && !c->w->pending.n)
		return false;
	if (c->f.foods || c->w->pending.n)
		return true;
	if (has_object(c))
		return !c->w->deed->light || f->places || f->appliance.n || f->duration.n ||
		       f->until.n || (f->tool && f->heat.n);
	if (f->duration.n || f->until.n || f->heat.n)
		return true;
	/* "turn the heat off": the verb has its object in it */
	return stands_alone(c) || str_find(verb, STR(" the ")) < verb.n;
}

static void
tidy(struct buf *b)
{
	while (b->n && (b->v[b->n - 1] == ',' || b->v[b->n - 1] == ' '))
		b->n--;
	for (size_t i = 0; i + 1 < b->n; i++)
		while (b->v[i] == ',' && b->v[i + 1] == ',' && i + 1 < b->n) {
			memmove(b->v + i, b->v + i + 1, b->n - i - 1);
			b->n--;
		}
	for (size_t i = 0; i + 1 < b->n; i++)
		if (b->v[i] == ' ' && b->v[i + 1] == ',') {
			memmove(b->v + i, b->v + i + 1, b->n - i - 1);
			b->n--;
		}
	if (b->n)
		b->v[0] = to_upper(b->v[0]);
}

/* "add in", "bake in", "put on on a tray": the particle says nothing more. */
static bool
drops_particle(const struct composer *c, struct str verb)
{
	struct str p = c->f.particle;

	if (!p.n)
		return false;
	/* "pull them out": "remove them" */
	if (lexeme_has(c->w->deed->lexeme, "split") &&
	    str_ends(c->w->deed->lexeme->lemma, p))
		return true;
	if (str_is_z(verb, "add") || c->w->deed->heats || c->w->deed->passive)
		return str_is_z(p, "in") || str_is_z(p, "on") || str_is_z(p, "back") ||
		       str_is_z(p, "over");
	return c->f.places && str_starts(c->f.place[0], p);
}

/* "cut into" before "into twelve": the place says it. */
static struct str
without_preposition(const struct composer *c, struct str verb)
{
	size_t cut = verb.n;

	while (cut > 0 && verb.p[cut - 1] != ' ')
		cut--;
	if (cut == 0 || !c->f.places || !lexeme_has(c->w->deed->lexeme, "split") ||
	    !str_starts(c->f.place[0], str_cut(verb, cut, verb.n)))
		return verb;
	return str_cut(verb, 0, cut - 1);
}

/* "take it off" the heat, where no place is named */
static bool
leaves_heat(const struct composer *c)
{
	const struct lexeme *l = c->w->deed->lexeme;

	return l && str_is_z(l->lemma, "take off") && !c->f.foods && !c->f.places &&
	       !c->f.appliance.n && (!c->f.object.n || str_is_z(c->f.object, "it"));
}

/* The verb with its object: inside a phrase that splits ("set the onions
 * aside"), before a particle where it is a pronoun ("break it up"). */
static void
put_verb(struct composer *c, struct str verb)
{
	const struct lexeme *l = c->w->deed->lexeme;
	size_t cut;
	struct str object = drops_object(c) ? STR("") : object_words(c);
	bool pronoun = str_is_z(object, "it") || str_is_z(object, "them");
	bool in = drops_particle(c, verb);

	verb = without_preposition(c, verb);
	cut = lexeme_has(l, "split") ? str_find_char(verb, ' ') : verb.n;
	if (!object.n ||
	    (!pronoun &&
		str_find_char(str_cut(verb, cut + 1, verb.n), ' ') + cut + 1 >= verb.n))
		cut = verb.n;
	if (cut == verb.n && pronoun &&
	    (str_find_char(verb, ' ') + 4 >= verb.n || str_starts(verb, STR("bring "))))
		cut = str_find_char(verb, ' ');
	put(c, str_cut(verb, 0, cut));
	if (c->f.particle.n && !pronoun && !in && !c->f.foods)
		put(c, c->f.particle);
	put(c, object);
	put(c, str_trim(str_cut(verb, cut, verb.n)));
	if (c->f.particle.n && (pronoun || c->f.foods) && !in)
		put(c, c->f.particle);
	if (leaves_heat(c))
		put(c, STR("from the heat"));
}

/* "In a large bowl, "; what goes into something first is put there. */
static void
put_before(struct composer *c)
{
	bool into = str_starts(c->f.before, STR("into "));

	if (!c->f.before.n)
		return;
	if (into && !c->f.foods && (c->w->pending.n || str_is_z(c->f.object, "it"))) {
		put(c, STR("put"));
		put(c, c->w->pending.n ? c->w->pending : c->f.object);
		put(c, c->f.before);
		put(c, STR("and"));
		c->w->used_pending = c->w->pending.n > 0;
		c->w->pending.n = 0;
		if (c->w->used_pending)
			c->f.object.n = 0;
	} else if (into && str_is_z(composer_light_verb(c), "add")) {
		c->f.place[c->f.places++] = c->f.before;
	} else {
		put(c, c->f.before);
		put(c, STR(","));
	}
}

/* "remove from the heat" has said "off the heat". */
static bool
says_again(struct str verb, struct str place)
{
	struct str where = str_cut(place, str_find(place, STR(" the ")), place.n);

	return where.n && str_starts(place, STR("off ")) && str_ends(verb, where);
}

struct str
sentence_write(struct writing *w)
{
	struct composer c = {.w = w, .out = buf_in(w->m->a)};
	struct str verb;

	frame_read(w, &c.f);
	if (w->clause->kind != CLAUSE_NOT && put_setting(&c)) {
		tidy(&c.out);
		return buf_str(&c.out);
	}
	verb = composer_verb(&c);
	if (!is_worth_it(&c, verb))
		return STR("");
	put_before(&c);
	if (composer_heat_verb(&c).n)
		put(&c, composer_heat_verb(&c));
	else
		put_verb(&c, verb);
	put(&c, c.f.manner);
	for (size_t i = 0; i < c.f.places; i++)
		if (!says_again(verb, c.f.place[i]))
			put(&c, c.f.place[i]);
	if (!w->deed->heats || !w->deed->duration.present)
		put(&c, c.f.appliance);
	put(&c, c.f.purpose);
	put_ends(&c);
	tidy(&c.out);
	return buf_str(&c.out);
}
