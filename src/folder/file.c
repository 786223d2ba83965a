/* SPDX-License-Identifier: ISC */
/*
 * A text goes into a new file beside the one that it is for, then to the disk,
 * and only then takes the name.
 */
#include "folder/file.h"

#include "base/buf.h"

#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <stdio.h>
#include <sys/stat.h>
#include <unistd.h>

enum { PIECE = 64 << 10, TRIES = 1000, LINKS = 40 };

static bool
write_all(int fd, struct str text)
{
	while (text.n) {
		ssize_t n = write(fd, text.p, text.n);

		if (n < 0 && errno == EINTR)
			continue;
		if (n <= 0)
			return false;
		text = str_cut(text, (size_t)n, text.n);
	}
	return true;
}

/* Pipes and some file systems know no disk; that is no failure. */
static bool
sync_file(int fd)
{
	return fsync(fd) == 0 || errno == EINVAL || errno == EROFS;
}

static struct str
folder_of(struct arena *a, const char *path)
{
	struct str s = str_of(path);

	while (s.n && s.p[s.n - 1] != '/')
		s.n--;
	return s.n ? arena_str(a, s) : STR("./");
}

/* Opens a file that was not there before; hidden, and told from others by the
 * process and a count. */
static int
create_beside(struct arena *a, const char *path, struct str *out)
{
	struct str folder = folder_of(a, path);
	int fd = -1;

	for (int i = 0; fd < 0 && i < TRIES; i++) {
		*out = arena_fmt(a, "%s.tamis-%ld-%d", folder.p, (long)getpid(), i);
		fd = open(out->p, O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
		if (fd < 0 && errno != EEXIST)
			return -1;
	}
	return fd;
}

bool
file_draft(
    struct arena *a, const char *path, struct str text, struct str *out, struct err *e)
{
	int fd = create_beside(a, path, out);
	bool ok;

	if (fd < 0)
		return err_set(e, path, "can't be written: %s", strerror(errno));
	ok = write_all(fd, text) && sync_file(fd);
	if (!ok)
		err_set(e, path, "can't be written: %s", strerror(errno));
	if (close(fd) != 0)
		ok = err_set(e, path, "can't be written: %s", strerror(errno));
	if (!ok)
		unlink(out->p);
	return ok;
}

bool
file_settle(struct str draft, const char *path, struct err *e)
{
	struct arena a;
	struct stat st;
	int fd;

	/* what had the name keeps its rights */
	if (lstat(path, &st) == 0 && S_ISREG(st.st_mode))
		(void)!chmod(draft.p, st.st_mode & 07777);
	if (rename(draft.p, path) != 0) {
		err_set(e, path, "can't be replaced: %s", strerror(errno));
		unlink(draft.p);
		return false;
	}
	arena_init(&a);
	fd = open(folder_of(&a, path).p, O_RDONLY | O_CLOEXEC);
	arena_release(&a);
	if (fd >= 0) {
		fsync(fd);
		close(fd);
	}
	return true;
}

static bool
write_through(const char *path, struct str text, struct err *e)
{
	int fd = open(path, O_WRONLY | O_CLOEXEC);
	bool ok;

	if (fd < 0)
		return err_set(e, path, "can't be opened: %s", strerror(errno));
	ok = write_all(fd, text);
	if (close(fd) == 0 && ok)
		return true;
	return err_set(e, path, "can't be written: %s", strerror(errno));
}

/* Where a link leads, and the next; the path itself where it is none. */
static const char *
behind_links(struct arena *a, const char *path)
{
	char to[PATH_MAX];

	for (int i = 0; i < LINKS; i++) {
		ssize_t n = readlink(path, to, sizeof to - 1);

		if (n <= 0)
			break;
		to[n] = '\0';
		path = to[0] == '/' ? arena_str(a, str_of(to)).p
				    : arena_fmt(a, "%s%s", folder_of(a, path).p, to).p;
	}
	return path;
}

bool
file_replace(const char *path, struct str text, struct err *e)
{
	struct arena a;
	struct stat st;
	struct str draft;
	bool ok;

	if (stat(path, &st) == 0 && S_ISDIR(st.st_mode))
		return err_set(e, path, "is a folder");
	if (stat(path, &st) == 0 && !S_ISREG(st.st_mode))
		return write_through(path, text, e);
	arena_init(&a);
	path = behind_links(&a, path);
	ok = file_draft(&a, path, text, &draft, e) && file_settle(draft, path, e);
	arena_release(&a);
	return ok;
}

bool
file_read(struct arena *a, const char *path, struct str *out, struct err *e)
{
	struct buf b = buf_in(a);
	int fd = open(path, O_RDONLY | O_CLOEXEC | O_NONBLOCK);
	char piece[PIECE];
	ssize_t n;

	if (fd < 0 && errno == ENOENT)
		return false;
	if (fd < 0)
		return err_set(e, path, "can't be opened: %s", strerror(errno));
	while ((n = read(fd, piece, sizeof piece)) > 0 || (n < 0 && errno == EINTR))
		if (n > 0)
			buf_put(&b, (struct str){piece, (size_t)n});
	close(fd);
	if (n < 0)
		return err_set(e, path, "can't be read: %s", strerror(errno));
	*out = arena_str(a, b.n ? buf_str(&b) : STR(""));
	return true;
}
