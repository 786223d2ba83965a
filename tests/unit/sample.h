/* SPDX-License-Identifier: ISC */
/*
 * A draft built by hand for the writers' tests: one dish of two parts with
 * something in every field, and a second that has next to nothing.
 */
#ifndef TAMIS_TEST_SAMPLE_H
#define TAMIS_TEST_SAMPLE_H

#include "tamis.h"

#define Z(literal)                                                                         \
	{                                                                                  \
		(literal), sizeof(literal) - 1                                             \
	}
#define PLACE(cue, at, beg, end)                                                           \
	{                                                                                  \
		(at), (cue),                                                               \
		{                                                                          \
			(beg), (end)                                                       \
		}                                                                          \
	}

static const struct unit unit_gram = {
    Z("gram"), Z("grams"), Z("g"), DIM_MASS, true, true, {1, 1}, {0, 1}};
static const struct unit unit_ml = {
    Z("millilitre"), Z("millilitres"), Z("ml"), DIM_VOLUME, true, true, {1, 1}, {0, 1}};
static const struct unit unit_cup = {
    Z("cup"), Z("cups"), Z("cup"), DIM_VOLUME, false, true, {473176473, 2000000}, {0, 1}};
static const struct unit unit_teaspoon = {Z("teaspoon"), Z("teaspoons"), Z("tsp"),
    DIM_VOLUME, false, true, {157725491, 32000000}, {0, 1}};
static const struct unit unit_can = {
    Z("can"), Z("cans"), Z("can"), DIM_COUNT, false, false, {1, 1}, {0, 1}};
static const struct unit unit_celsius = {
    Z("celsius"), Z("celsius"), Z("°C"), DIM_TEMPERATURE, true, true, {1, 1}, {0, 1}};
static const struct unit unit_fahrenheit = {Z("fahrenheit"), Z("fahrenheit"), Z("°F"),
    DIM_TEMPERATURE, false, true, {5, 9}, {-32, 1}};
static const struct unit unit_minute = {
    Z("minute"), Z("minutes"), Z("min"), DIM_TIME, true, true, {60, 1}, {0, 1}};
static const struct unit unit_inch = {
    Z("inch"), Z("inches"), Z("in"), DIM_LENGTH, false, true, {127, 5}, {0, 1}};

static struct amount
amount_of(struct ratio v, const struct unit *u)
{
	return (struct amount){true, true, v, v, u};
}

static void
sample_cabbage(struct arena *a, struct part *p)
{
	struct ingredient *in = arena_array(a, 6, struct ingredient);

	p->ingredient = in;
	p->ingredients = 6;
	in[0].item = str_of("pointed cabbage");
	in[0].amount = amount_of(ratio_int(1), NULL);
	in[0].preparation = str_of("quartered");
	in[0].place = (struct place)PLACE(21000, 21500, 60, 75);
	in[1].item = str_of("white beans");
	in[1].amount = amount_of(ratio_int(2), &unit_can);
	in[1].size = amount_of(ratio_int(400), &unit_gram);
	in[1].preparation = str_of("drained");
	in[2].item = str_of("butter");
	in[2].amount = amount_of(ratio_int(40), &unit_gram);
	in[2].metric = in[2].amount;
	in[2].divided = true;
	in[3].item = str_of("vegetable stock");
	in[3].amount = amount_of(ratio_int(500), &unit_ml);
	in[3].metric = in[3].amount;
	in[4].item = str_of("breadcrumbs");
	in[4].amount = amount_of(ratio_int(1), &unit_cup);
	in[4].metric = amount_of(ratio_int(108), &unit_gram);
	in[4].optional = true;
	in[5].item = str_of("salt");
	in[5].note = str_of("to taste");
	in[5].use = arena_array(a, 2, struct place);
	in[5].uses = 2;
	in[5].use[0] = in[5].place = (struct place)PLACE(21000, 22250, 90, 94);
	in[5].use[1] = (struct place)PLACE(95000, 95000, 300, 304);
}

static void
sample_cabbage_steps(struct arena *a, struct part *p)
{
	struct step *s = arena_array(a, 3, struct step);

	p->step = s;
	p->steps = 3;
	s[0].text = str_of("Heat the oven to 200 °C (400 °F).");
	s[0].action = str_of("heat");
	s[0].recast = s[0].preheats = true;
	s[0].temperature = (struct temperature){.present = true,
	    .min = {200, 1},
	    .max = {200, 1},
	    .unit = &unit_celsius,
	    .role = ROLE_APPLIANCE,
	    .place = PLACE(30000, 31000, 100, 110)};
	s[0].place = (struct place)PLACE(30000, 30500, 95, 110);
	s[1].text = str_of("Fry the cabbage over medium heat for 8–10 minutes.");
	s[1].action = str_of("fry");
	s[1].temperature = (struct temperature){.present = true, .heat = Z("medium")};
	s[1].duration = (struct duration){true, true, 480000, 600000, false};
	s[1].use = arena_array(a, 2, uint32_t);
	s[1].use[1] = 2;
	s[1].uses = 2;
	s[1].place = (struct place)PLACE(40000, 40000, 120, 160);
	s[2].text = str_of("Chill overnight.");
	s[2].passive = s[2].recast = true;
	s[2].duration.present = true;
	s[2].doneness = (struct doneness){.text = Z("cold right through"),
	    .known = true,
	    .min = {40, 1},
	    .max = {40, 1},
	    .unit = &unit_fahrenheit,
	    .unit_stated = true};
	s[2].place = (struct place)PLACE(95000, 96125, 310, 330);
}

static void
sample_mayonnaise(struct arena *a, struct part *p)
{
	struct ingredient *in = arena_array(a, 3, struct ingredient);

	p->name = str_of("caper mayonnaise");
	p->ingredient = in;
	p->ingredients = 3;
	in[0].item = str_of("egg yolk");
	in[0].group = str_of("egg");
	in[0].amount = amount_of(ratio_int(1), NULL);
	in[1].item = str_of("mustard");
	in[1].amount = (struct amount){true, true, {1, 1}, {2, 1}, &unit_teaspoon};
	in[1].alternative = arena_new(a, struct alternative);
	in[1].alternatives = 1;
	in[1].alternative->item = str_of("wasabi");
	in[1].alternative->amount = amount_of(ratio_make(1, 2), &unit_teaspoon);
	in[2].item = str_of("capers");
	in[2].amount = (struct amount){.present = true};
	p->step = arena_new(a, struct step);
	p->steps = 1;
	p->step->text = str_of("Whisk the yolk with the mustard.");
	p->step->recast = true;
	p->step->place = (struct place)PLACE(60000, 61000, 200, 230);
}

static void
sample_dishes(struct arena *a, struct draft *d)
{
	struct dish *one = arena_array(a, 2, struct dish), *two = one + 1;

	d->dish = one;
	d->dishes = 2;
	one->name = str_of("charred cabbage with caper mayonnaise");
	one->beg_ms = 21000;
	one->end_ms = 118000;
	one->yield = (struct amount){true, true, {4, 1}, {6, 1}, NULL};
	one->yield_unit = str_of("serving");
	one->active_ms = 600000;
	one->total_ms = 3000000;
	one->claimed_ms = 1800000;
	one->part = arena_array(a, 2, struct part);
	one->parts = 2;
	sample_cabbage(a, &one->part[0]);
	sample_cabbage_steps(a, &one->part[0]);
	sample_mayonnaise(a, &one->part[1]);
	one->equipment = arena_new(a, struct equipment);
	one->equipments = 1;
	one->equipment->item = str_of("roasting tin");
	one->equipment->size = amount_of(ratio_int(9), &unit_inch);
	one->equipment->place = (struct place)PLACE(30000, 32000, 112, 118);
	one->note = arena_new(a, struct str);
	one->notes = 1;
	one->note[0] = str_of("It keeps for two days in the fridge.");
	two->beg_ms = two->end_ms = two->active_ms = two->total_ms = two->claimed_ms = -1;
	two->part = arena_new(a, struct part);
	two->parts = 1;
}

static void
sample_measures(struct arena *a, struct draft *d)
{
	struct measure *m = arena_array(a, 4, struct measure);

	d->measure = m;
	d->measures = 4;
	m[0].value = amount_of(ratio_make(1, 3), &unit_cup);
	m[0].unit_stated = true;
	m[0].text = str_of("a third of a cup");
	m[0].place = (struct place)PLACE(12345000, 12345678, 60, 76);
	m[1].kind = MEASURE_TEMPERATURE;
	m[1].value = amount_of(ratio_int(350), &unit_fahrenheit);
	m[1].role = ROLE_APPLIANCE;
	m[1].bound = BOUND_MAX;
	m[1].approximate = true;
	m[1].text = str_of("350");
	m[2].kind = MEASURE_DURATION;
	m[2].value.present = true;
	m[2].role = ROLE_REST;
	m[2].text = str_of("overnight");
	m[2].place = (struct place)PLACE(-1, -1, 310, 319);
	m[3].kind = MEASURE_COUNT;
	m[3].value = amount_of(ratio_int(3), NULL);
	m[3].text = str_of("three eggs");
}

static const struct finding_kind sample_kind = {.code = "missing-scale"};

static inline struct draft *
sample_draft(struct arena *a)
{
	struct draft *d = arena_new(a, struct draft);

	d->arena = a;
	d->script = arena_new(a, struct script);
	d->script->name = str_of("lock-keepers.vtt");
	d->script->format = "webvtt";
	d->script->length_ms = 118250;
	d->language = "en";
	d->region = "uk";
	sample_dishes(a, d);
	sample_measures(a, d);
	d->finding = arena_new(a, struct finding);
	d->findings = 1;
	d->finding->kind = &sample_kind;
	d->finding->severity = SEVERITY_WARNING;
	d->finding->message = str_of("200 has no scale; read as Celsius");
	d->finding->step = -1;
	d->finding->related = arena_new(a, struct related);
	d->finding->relateds = 1;
	d->finding->related->message = str_of("the other oven temperature");
	d->finding->place = (struct place)PLACE(30000, 31000, 100, 110);
	return d;
}

#endif
