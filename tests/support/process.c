/* SPDX-License-Identifier: ISC */
/*
 * fork() and execv(), with the outputs put away.
 */
#include "process.h"

#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

pid_t
process_start(const char *const argv[], const char *output)
{
	pid_t pid = fork();
	int to;

	if (pid > 0)
		return pid;
	if (pid < 0) {
		perror("fork");
		exit(3);
	}
	to = open(output ? output : "/dev/null", O_WRONLY | O_CREAT | O_TRUNC, 0666);
	if (to >= 0 && dup2(to, STDOUT_FILENO) >= 0 && dup2(to, STDERR_FILENO) >= 0)
		execv(argv[0], (char *const *)argv);
	_exit(127);
}

static int
status_of(int status)
{
	return WIFEXITED(status) ? WEXITSTATUS(status) : 256 + WTERMSIG(status);
}

int
process_wait(pid_t pid)
{
	int status = 0;

	waitpid(pid, &status, 0);
	return status_of(status);
}

int
process_over(pid_t pid)
{
	int status = 0;

	return waitpid(pid, &status, WNOHANG) == pid ? status_of(status) : -1;
}

int
process_run(const char *const argv[], const char *output)
{
	return process_wait(process_start(argv, output));
}

double
seconds_now(void)
{
	struct timespec t;

	clock_gettime(CLOCK_MONOTONIC, &t);
	return (double)t.tv_sec + (double)t.tv_nsec / 1e9;
}

void
seconds_sleep(double s)
{
	struct timespec t = {(time_t)s, 0};

	t.tv_nsec = (long)((s - (double)t.tv_sec) * 1e9);
	nanosleep(&t, NULL);
}
