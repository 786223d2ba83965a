/* SPDX-License-Identifier: ISC */
/*
 * Plain text: stamped scripts, written lists and steps. Blocks of lines
 * between blank lines, handed to prose.
 */
#include "read/line.h"
#include "read/prose.h"
#include "read/reader.h"

/* Whatever it is, it can be read as text. */
static int
sniff(struct str start)
{
	(void)start;
	return 30;
}

static void
read_plain(struct build *b)
{
	struct prose p;
	struct lines l = {.text = b->text};
	VEC(struct span) block = {0};
	struct span line;

	prose_init(&p, b, false);
	while (lines_next(&l, &line)) {
		if (line.end > line.beg) {
			vec_push(b->arena, &block, line);
			continue;
		}
		if (block.n > 0)
			prose_block(&p, block.v, block.n, true);
		block.n = 0;
	}
	if (block.n > 0)
		prose_block(&p, block.v, block.n, false);
}

const struct reader reader_plain = {"text", sniff, read_plain};
