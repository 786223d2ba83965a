/* SPDX-License-Identifier: ISC */
/*
 * The table of output formats, made from writers.def.
 */
#include "write/writers.h"

#define WRITER(format) &writer_##format,
static const struct writer *const writers[] = {
#include "write/writers.def"
};
#undef WRITER

const struct writer *
tamis_writer(size_t index)
{
	return index < sizeof writers / sizeof *writers ? writers[index] : NULL;
}

const struct writer *
tamis_writer_find(const char *name)
{
	for (size_t i = 0; i < sizeof writers / sizeof *writers; i++)
		if (strcmp(writers[i]->name, name) == 0)
			return writers[i];
	return NULL;
}
