/* SPDX-License-Identifier: ISC */
/*
 * No room and no right: a full disk, a limit on the size of files, a folder that
 * can't be written. A small file system of our own is mounted where the system
 * lets us (as root, or in a user namespace); else those tests say that they were
 * left out.
 */
#define _GNU_SOURCE

#include "faults.h"

#include "../support/process.h"

#include <errno.h>
#include <sched.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

static void
write_map(const char *path, const char *text)
{
	FILE *f = fopen(path, "w");

	if (!f)
		return;
	fputs(text, f);
	fclose(f);
}

/* A small disk at FOLDER/disk, seen by this process and its children alone. */
static bool
mount_disk(struct site *s, const char *options)
{
	const char *disk = site_path(s, "disk");
	unsigned uid = getuid(), gid = getgid();
	char map[32];

	mkdir(disk, 0777);
	if (uid == 0 ? unshare(CLONE_NEWNS) : unshare(CLONE_NEWUSER | CLONE_NEWNS))
		return false;
	if (uid != 0) {
		snprintf(map, sizeof map, "0 %u 1", uid);
		write_map("/proc/self/uid_map", map);
		write_map("/proc/self/setgroups", "deny");
		snprintf(map, sizeof map, "0 %u 1", gid);
		write_map("/proc/self/gid_map", map);
	}
	return mount(NULL, "/", NULL, MS_REC | MS_PRIVATE, NULL) == 0 &&
	       mount("tmpfs", disk, "tmpfs", 0, options) == 0;
}

enum { LEFT_OUT = 77 };

/* In a process of its own, whose mounts end with it. */
static void
apart(struct site *s, const char *name, void (*test)(struct site *s))
{
	pid_t pid = fork();
	int status;

	if (pid == 0) {
		test(s);
		fflush(stdout);
		_exit(0);
	}
	status = process_wait(pid);
	if (status == LEFT_OUT)
		printf("%s: left out, this system lets us mount nothing\n", name);
	else
		site_need(s, status == 0, name);
}

/* ---- a full disk -------------------------------------------------------- */

static void
fill_disk(struct site *s)
{
	const char *disk = site_path(s, "disk"), *archive = site_path(s, "disk/full.db");

	if (!mount_disk(s, "size=4m"))
		_exit(LEFT_OUT);
	site_need(s, site_keep(s, archive, s->list) == 3, "the machine failed: status 3");
	site_need(s, site_said(s, "the disk is full"), "a clear error");
	site_need(
	    s, mount(NULL, disk, NULL, MS_REMOUNT, "size=256m") == 0, "a bigger disk");
	site_need(s, site_keep(s, archive, s->list) == 0, "going on with room");
	site_need(s, !site_said(s, " 0 as they were"), "what was kept is kept");
	site_verify(s, archive);
	puts("full disk: a clear error; with room, the rest");
}

void
fault_full_disk(struct site *s)
{
	apart(s, "full disk", fill_disk);
}

/* ---- a limit on files --------------------------------------------------- */

static void
limit_size(struct site *s)
{
	const char *archive = site_path(s, "limited.db");
	struct rlimit small = {6 << 20, RLIM_INFINITY},
		      none = {RLIM_INFINITY, RLIM_INFINITY};

	signal(SIGXFSZ, SIG_IGN);
	setrlimit(RLIMIT_FSIZE, &small);
	site_need(s, site_keep(s, archive, s->list) == 3, "the machine failed: status 3");
	site_need(s, site_said(s, "what was kept before is safe"), "a clear error");
	setrlimit(RLIMIT_FSIZE, &none);
	site_need(s, site_keep(s, archive, s->list) == 0, "going on without the limit");
	site_need(s, !site_said(s, " 0 as they were"), "what was kept is kept");
	site_verify(s, archive);
	puts("size limit: a clear error; without it, the rest");
}

void
fault_size_limit(struct site *s)
{
	apart(s, "size limit", limit_size);
}

/* ---- a folder that can't be written ------------------------------------- */

static void
freeze(struct site *s)
{
	const char *disk = site_path(s, "disk"), *archive = site_path(s, "disk/frozen.db");
	const char *const find[] = {s->tamis, "find", "--archive", archive, "roast", NULL};
	const char *none = site_path(s, "disk/none/archive.db");

	if (!mount_disk(s, "size=64m"))
		_exit(LEFT_OUT);
	site_need(s, site_keep(s, archive, s->half[0]) == 0, "keeping");
	site_need(
	    s, mount(NULL, disk, NULL, MS_REMOUNT | MS_RDONLY, NULL) == 0, "read-only");
	site_need(s, site_keep(s, archive, s->list) == 3, "the machine failed: status 3");
	site_need(s, site_said(s, "read-only"), "a clear error");
	site_need(s, site_keep(s, none, s->list) == 3, "no new archive there");
	site_need(s, site_said(s, "can't be"), "a clear error for a new one");
	site_need(
	    s, process_run(find, site_path(s, "said")) == 0, "searching it all the same");
	site_need(s, mount(NULL, disk, NULL, MS_REMOUNT, NULL) == 0, "writable again");
	site_need(s, site_keep(s, archive, s->list) == 0, "going on");
	site_verify(s, archive);
	puts("read-only folder: a clear error; searched all the same");
}

void
fault_read_only(struct site *s)
{
	apart(s, "read-only folder", freeze);
}
