/* SPDX-License-Identifier: ISC */
/*
 * The list is .tamis-files in the folder:
 *     9c1f2f0e5a7b3c44 <tab> soup.vtt <tab> soup-leek-broth.md
 * Lines are only ever added, each before its file takes its name; the last line
 * of a file counts, and an earlier one where the run ended in between.
 */
#include "folder/folder.h"

#include "base/buf.h"
#include "folder/file.h"

#include <errno.h>
#include <fcntl.h>
#include <inttypes.h>
#include <stdio.h>
#include <unistd.h>

#define LIST ".tamis-files"

enum { NUMBERS = 10000, HASH = 16 };

static const char head[] = "# Files that tamis wrote into this folder: a hash of the "
			   "bytes, the episode, the file.\n";

static const char *
path_in(struct folder *f, struct str name)
{
	return arena_fmt(f->arena, "%s/%.*s", f->path, (int)name.n, name.p).p;
}

static struct str
hash_of(struct folder *f, struct str text)
{
	return arena_fmt(f->arena, "%016" PRIx64, str_hash(text));
}

/* ---- the list ------------------------------------------------------------- */

/* A line that was cut short by a full disk is none. */
static void
read_entry(struct folder *f, struct str line)
{
	struct folder_entry e = {.fresh = false};

	if (line.n && line.p[0] == '#')
		return;
	e.hash = str_next(&line, '\t');
	if (line.p)
		e.owner = str_next(&line, '\t');
	if (line.p)
		e.file = str_next(&line, '\t');
	if (e.hash.n == HASH && e.file.n && !line.p)
		vec_push(f->arena, &f->entry, e);
}

bool
folder_open(struct folder *f, struct arena *a, const char *path, struct err *e)
{
	struct str text;

	*f = (struct folder){.arena = a, .path = path};
	if (!file_read(a, path_in(f, STR(LIST)), &text, e))
		return !e->set;
	f->torn = text.n && text.p[text.n - 1] != '\n';
	while (text.p) {
		struct str line = str_next(&text, '\n');

		/* the last is what stands behind the last line feed */
		if (text.p)
			read_entry(f, line);
	}
	return true;
}

void
folder_keep(struct folder *f, const char *input)
{
	struct stat st;

	if (stat(input, &st) == 0)
		vec_push(f->arena, &f->input, st);
}

/* No tab and no line feed in a field. */
static struct str
field_of(struct folder *f, struct str s)
{
	struct str out = arena_str(f->arena, s);

	for (size_t i = 0; i < out.n; i++)
		if ((unsigned char)out.p[i] < ' ')
			((char *)out.p)[i] = ' ';
	return out;
}

/* Adds a line and sees it on the disk. */
static bool
note_entry(struct folder *f, struct folder_entry entry, struct err *e)
{
	const char *path = path_in(f, STR(LIST));
	struct buf line = buf_in(f->arena);
	struct stat st;
	bool ok;
	int fd = open(path, O_WRONLY | O_APPEND | O_CREAT | O_CLOEXEC, 0666);

	if (fd < 0)
		return err_set(e, path, "can't be opened: %s", strerror(errno));
	if (fstat(fd, &st) == 0 && st.st_size == 0)
		buf_put_z(&line, head);
	buf_put_z(&line, f->torn ? "\n" : "");
	buf_fmt(&line, "%.*s\t%.*s\t%.*s\n", (int)entry.hash.n, entry.hash.p,
	    (int)entry.owner.n, entry.owner.p, (int)entry.file.n, entry.file.p);
	ok = write(fd, line.v, line.n) == (ssize_t)line.n && fsync(fd) == 0;
	if (!ok)
		err_set(e, path, "can't be written: %s", strerror(errno));
	close(fd);
	f->torn = !ok;
	if (ok)
		vec_push(f->arena, &f->entry, entry);
	return ok;
}

/* ---- whose a file is ------------------------------------------------------ */

/* The last line of the file; NULL where there is none. */
static const struct folder_entry *
entry_of(const struct folder *f, struct str file)
{
	for (size_t i = f->entry.n; i-- > 0;)
		if (str_is(f->entry.v[i].file, file))
			return &f->entry.v[i];
	return NULL;
}

static bool
is_written(const struct folder *f, struct str file, struct str hash)
{
	for (size_t i = 0; i < f->entry.n; i++)
		if (str_is(f->entry.v[i].file, file) && str_is(f->entry.v[i].hash, hash))
			return true;
	return false;
}

static bool
is_input(const struct folder *f, const struct stat *st)
{
	for (size_t i = 0; i < f->input.n; i++)
		if (f->input.v[i].st_dev == st->st_dev &&
		    f->input.v[i].st_ino == st->st_ino)
			return true;
	return false;
}

/* The first name that no other owner has and this run has not used. */
static struct str
name_of(struct folder *f, const struct page *p)
{
	struct str name;

	for (int i = 1; i < (p->linked ? 2 : NUMBERS); i++) {
		const struct folder_entry *entry;

		if (i == 1)
			name = arena_fmt(
			    f->arena, "%.*s.%s", (int)p->stem.n, p->stem.p, p->extension);
		else
			name = arena_fmt(f->arena, "%.*s-%d.%s", (int)p->stem.n, p->stem.p,
			    i, p->extension);
		entry = entry_of(f, name);
		if (!entry || (!entry->fresh && str_is(entry->owner, p->owner)))
			break;
	}
	return name;
}

static bool
is_of_another(const struct folder *f, struct str name, struct str owner)
{
	const struct folder_entry *entry = entry_of(f, name);

	return entry && !str_is(entry->owner, owner);
}

/* May the file be replaced? *same: it holds the text already. */
static enum put
look_at(struct folder *f, struct str name, const struct page *p, bool *same, struct err *e)
{
	const char *path = path_in(f, name);
	struct str there = STR("");
	struct stat st;
	bool ours, foreign;

	*same = false;
	if (lstat(path, &st) != 0)
		return PUT_DONE;
	if (is_input(f, &st) || S_ISDIR(st.st_mode)) {
		err_set(e, path,
		    S_ISDIR(st.st_mode) ? "is a folder"
					: "is an episode that is read; nothing "
					  "is written over it");
		return PUT_REFUSED;
	}
	if (S_ISREG(st.st_mode) && !file_read(f->arena, path, &there, e))
		return PUT_FAILED;
	ours = S_ISREG(st.st_mode) && is_written(f, name, hash_of(f, there));
	foreign = is_of_another(f, name, p->owner);
	*same = ours && !foreign && str_is(there, p->text);
	if ((ours && !foreign) || f->force ||
	    (S_ISREG(st.st_mode) && str_is(there, p->text)))
		return PUT_DONE;
	err_set(e, path,
	    foreign ? "was written for another episode; --force replaces it"
	    : entry_of(f, name)
		? "was changed since tamis wrote it; --force replaces it"
		: "is there and was not written by tamis; --force replaces it");
	return PUT_REFUSED;
}

enum put
folder_put(struct folder *f, const struct page *p, struct err *e)
{
	struct page page = *p;
	struct folder_entry entry = {.fresh = true};
	struct str draft;
	const char *path;
	enum put put;
	bool same;

	entry.owner = page.owner = field_of(f, p->owner);
	entry.file = name_of(f, &page);
	entry.hash = hash_of(f, p->text);
	path = path_in(f, entry.file);
	put = look_at(f, entry.file, &page, &same, e);
	if (put != PUT_DONE)
		return put;
	if (same) {
		vec_push(f->arena, &f->entry, entry);
		return PUT_DONE;
	}
	if (!file_draft(f->arena, path, p->text, &draft, e))
		return PUT_FAILED;
	if (!note_entry(f, entry, e)) {
		unlink(draft.p);
		return PUT_FAILED;
	}
	return file_settle(draft, path, e) ? PUT_DONE : PUT_FAILED;
}
