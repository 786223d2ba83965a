/* SPDX-License-Identifier: ISC */
/*
 * Which country's units a script speaks: by the units and scales it names.
 */
#include "clause/maker.h"

struct sign {
	const char *unit;
	int us, uk;
};

/* How much a unit speaks for US customary or for metric (UK) measures. */
static const struct sign signs[] = {{"cup", 2, 0}, {"stick", 3, 0}, {"quart", 3, 0},
    {"ounce", 2, 0}, {"pound", 2, 0}, {"fahrenheit", 4, 0}, {"fluid-ounce", 1, 0},
    {"gallon", 2, 0}, {"inch", 1, 0}, {"gram", 0, 3}, {"kilogram", 0, 3},
    {"millilitre", 0, 3}, {"litre", 0, 2}, {"celsius", 0, 4}, {"centimetre", 0, 2},
    {"decilitre", 0, 3}, {"centilitre", 0, 2}, {"millimetre", 0, 2}, {"gas-mark", 0, 6}};

static void
weigh(struct str unit, int *us, int *uk)
{
	for (size_t i = 0; i < sizeof signs / sizeof *signs; i++)
		if (str_is_z(unit, signs[i].unit)) {
			*us += signs[i].us;
			*uk += signs[i].uk;
		}
}

const char *
region_of(const struct chart *c)
{
	const struct level *l = chart_level(c, "compound");
	const struct level *top = l ? l : chart_top(c);
	int us = 1, uk = 0;

	for (size_t i = 0; i < top->node.n; i++) {
		struct said said;

		if (!measure_of(c, NULL, &top->node.v[i], &said))
			continue;
		if (said.value.unit)
			weigh(said.value.unit->name, &us, &uk);
		else if (said.kind == MEASURE_TEMPERATURE && said.value.known)
			*(ratio_order(said.value.max, ratio_int(275)) > 0 ? &us : &uk) += 3;
	}
	return us >= uk ? "us" : "uk";
}
