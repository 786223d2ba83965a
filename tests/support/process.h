/* SPDX-License-Identifier: ISC */
/*
 * Programs run beside each other from a test, and the clock.
 */
#ifndef TAMIS_TESTS_PROCESS_H
#define TAMIS_TESTS_PROCESS_H

#include <stddef.h>
#include <sys/types.h>

/* argv ends with NULL; argv[0] is the path. Both its outputs go to the file, or
 * nowhere for NULL. Ends the test when it can't be started. */
pid_t process_start(const char *const argv[], const char *output);
/* Its exit status; 256 and the signal where one ended it. */
int process_wait(pid_t pid);
/* The same, when it is over already; -1 while it runs. */
int process_over(pid_t pid);
int process_run(const char *const argv[], const char *output);

double seconds_now(void);
void seconds_sleep(double s);

#endif
