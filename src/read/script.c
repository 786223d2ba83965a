/* SPDX-License-Identifier: ISC */
/*
 * The read stage as a whole: caps, encoding, format; and the way from script
 * text back to source bytes, lines and columns.
 */
#include "read/read.h"

#include "read/reader.h"

enum { SOURCE_DEFAULT = 16 * 1024 * 1024, SNIFFED = 64 * 1024 };

/* Offsets are 32 bits wide and decoding may treble the bytes. */
#define SOURCE_MOST ((size_t)1 << 30)

#define READER(name) extern const struct reader reader_##name;
#include "read/readers.def"
#undef READER

static const struct reader *const readers[] = {
#define READER(name) &reader_##name,
#include "read/readers.def"
#undef READER
};

static const struct reader *
find_reader(struct str text)
{
	struct str start = str_cut(text, 0, SNIFFED);
	const struct reader *best = readers[0];
	int score, best_score = -1;

	for (size_t i = 0; i < sizeof readers / sizeof readers[0]; i++) {
		score = readers[i]->sniff(start);
		if (score > best_score) {
			best = readers[i];
			best_score = score;
		}
	}
	return best;
}

static struct str
base_name(struct str path)
{
	for (size_t i = path.n; i-- > 0;)
		if (path.p[i] == '/' || path.p[i] == '\\')
			return str_cut(path, i + 1, path.n);
	return path;
}

/* The piece that holds text[at]; the last one where at is the end. */
static const struct piece *
find_piece(const struct script *s, uint32_t at)
{
	size_t low = 0, high = s->pieces;

	while (high - low > 1) {
		size_t middle = low + (high - low) / 2;

		if (s->piece[middle].text <= at)
			low = middle;
		else
			high = middle;
	}
	return &s->piece[low];
}

struct span
script_source(const struct script *s, struct span text)
{
	const struct piece *first, *last;
	struct span source;

	if (text.end > s->text.n)
		text.end = (uint32_t)s->text.n;
	if (text.beg > text.end)
		text.beg = text.end;
	if (s->pieces == 0)
		return (struct span){0, 0};
	first = find_piece(s, text.beg);
	source.beg = first->source;
	if (first->text_n == first->source_n || text.beg >= first->text + first->text_n)
		source.beg += text.beg - first->text < first->source_n
				  ? text.beg - first->text
				  : first->source_n;
	source.end = source.beg;
	if (text.end == text.beg)
		return source;
	last = find_piece(s, text.end - 1);
	source.end = last->source + last->source_n;
	if (last->text_n == last->source_n)
		source.end = last->source + (text.end - last->text);
	return source;
}

/* The bytes of the piece's text that stand for source bytes in the span; empty
 * where none do. */
static struct span
piece_text(const struct piece *p, struct span source)
{
	uint32_t beg = p->source < source.beg ? source.beg - p->source : 0;
	uint32_t end = source.end > p->source ? source.end - p->source : 0;

	if (p->source >= source.end || p->source + p->source_n <= source.beg)
		return (struct span){p->text, p->text};
	if (p->text_n != p->source_n) {
		beg = 0;
		end = p->text_n;
	}
	end = end < p->text_n ? end : p->text_n;
	return (struct span){p->text + beg, p->text + (end > beg ? end : beg)};
}

struct span
script_text(const struct script *s, struct span source)
{
	struct span all = {0, 0};

	for (size_t i = 0; i < s->pieces; i++) {
		struct span one = piece_text(&s->piece[i], source);

		if (one.end == one.beg)
			continue;
		if (all.end == 0)
			all.beg = one.beg;
		all.end = one.end;
	}
	return all;
}

struct str
script_words(struct arena *a, const struct script *s, struct span text)
{
	struct str words = str_cut(s->text, text.beg, text.end);
	struct buf b = buf_in(a);

	for (size_t i = 0; i < words.n; i++) {
		char c = words.p[i] == '\n' ? ' ' : words.p[i];

		if (!is_blank(c) || (b.n && b.v[b.n - 1] != ' '))
			buf_put_char(&b, is_blank(c) ? ' ' : c);
	}
	return str_trim(buf_str(&b));
}

/* Whether the source is UTF-16, and which byte of a unit is the low one. */
static bool
is_wide(struct str source, size_t *low)
{
	*low = str_starts(source, STR("\xFE\xFF")) ? 1 : 0;
	return *low || str_starts(source, STR("\xFF\xFE"));
}

struct err_place
script_line(const struct script *s, uint32_t source_at)
{
	struct str src = s->source;
	size_t low, size = is_wide(src, &low) ? 2 : 1, line_at = 0, end = source_at;
	uint32_t line = 1;
	char before = 0, c;

	if (end > src.n)
		end = src.n;
	for (size_t i = 0; i + size <= end; i += size, before = c) {
		c = src.p[i + low];
		if (size == 2 && src.p[i + 1 - low] != 0)
			c = 0;
		if (c != '\n' && c != '\r')
			continue;
		if (c == '\r' || before != '\r')
			line++;
		line_at = i + size;
	}
	return (struct err_place){line, (uint32_t)(end - line_at) + 1};
}

static bool
check_size(size_t bytes, size_t most, const char *name, struct err *e)
{
	if (most == 0)
		most = SOURCE_DEFAULT;
	if (most > SOURCE_MOST)
		most = SOURCE_MOST;
	if (bytes <= most)
		return true;
	return err_set(e, name,
	    "the script has %zu bytes, over the source cap of %zu bytes; split it or raise "
	    "the cap",
	    bytes, most);
}

struct script *
script_read(
    struct arena *a, struct str source, const char *name, size_t max_source, struct err *e)
{
	struct script *s = arena_new(a, struct script);
	const struct reader *reader;
	struct build b;

	if (!check_size(source.n, max_source, name, e))
		return NULL;
	s->source = arena_str(a, source);
	s->name = arena_str(a, base_name(str_of(name)));
	build_init(&b, a, decode(a, s->source));
	if (b.decoded.oddity)
		build_note_source(&b, b.decoded.odd, b.decoded.oddity);
	reader = find_reader(b.text);
	s->format = reader->name;
	reader->read(&b);
	build_finish(&b, s);
	if (b.over_cap) {
		err_set(e, name, "over the cap of %d cues; split the script", CUE_CAP);
		return NULL;
	}
	return s;
}
