/*
 * Disturbs a program at one of its writes. Loaded with LD_PRELOAD it stands between the program and the C library,
 * counts every call that changes something below one folder, and does something to the one it is told to.
 *
 *   DISTURB_PLACE  the folder; what happens elsewhere is passed on uncounted
 *   DISTURB_LOG    a file that gets a line for each counted call
 *   DISTURB_AT     number of the call, from 1; 0 disturbs none
 *   DISTURB_HOW    kill  SIGKILL instead of that call
 *                  torn  half of that write is done, then SIGKILL
 *                  full  from that call on all that needs space fails with ENOSPC
 *                  fail  that one call fails with EIO
 *                  slow  every call takes 20 ms longer, every fsync 200 ms
 *
 * cc -shared -fPIC -O2 -o disturb.so disturb.c -ldl
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <pthread.h>
#include <signal.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/types.h>
#include <unistd.h>

enum need { SPACE, NO_SPACE, SYNC };

static pthread_mutex_t lock = PTHREAD_MUTEX_INITIALIZER;
static long count;

static int is(const char *how) {
    const char *value = getenv("DISTURB_HOW");
    return value != NULL && strcmp(value, how) == 0;
}

static int in_place(const char *path) {
    const char *place = getenv("DISTURB_PLACE");
    size_t length = place == NULL ? 0 : strlen(place);
    return length > 0 && path != NULL && strncmp(path, place, length) == 0 && (path[length] == '/' || path[length] == 0);
}

static int descriptor_in_place(int fd, char *path) {
    char link[64];
    snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
    ssize_t length = readlink(link, path, PATH_MAX - 1);
    path[length < 0 ? 0 : length] = 0;
    return in_place(path);
}

static void note(const char *call, const char *path) {
    const char *name = getenv("DISTURB_LOG");
    if (name != NULL) {
        char line[PATH_MAX + 64];
        int length = snprintf(line, sizeof line, "%s %s\n", call, path);
        long fd = syscall(SYS_openat, AT_FDCWD, name, O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0644);
        syscall(SYS_write, fd, line, length);
        syscall(SYS_close, fd);
    }
}

static void die(void) {
    syscall(SYS_kill, getpid(), SIGKILL);
    for (;;) {
        pause();
    }
}

/* Counts a call; gives the error it shall fail with, 0 for none, -1 for half a write and the end. */
static int disturbed(const char *call, const char *path, enum need need) {
    long at = getenv("DISTURB_AT") == NULL ? 0 : atol(getenv("DISTURB_AT"));
    pthread_mutex_lock(&lock);
    long number = ++count;
    note(call, path);
    if (at > 0 && number == at && is("kill")) {
        die();
    }
    pthread_mutex_unlock(&lock);
    if (is("slow")) {
        usleep(need == SYNC ? 200000 : 20000);
    }
    if (at == 0 || number < at) {
        return 0;
    }
    if (is("torn") && number == at) {
        return -1;
    }
    if (is("fail") && number == at) {
        return EIO;
    }
    return is("full") && need == SPACE ? ENOSPC : 0;
}

#define REAL(name) ((__typeof__(&name)) dlsym(RTLD_NEXT, #name))
#define GIVE_UP(result) do { if (trouble == -1) die(); if (trouble > 0) { errno = trouble; return result; } } while (0)

#define WRITE(name, parameters, fd, half, whole)                                              \
    ssize_t name parameters {                                                                 \
        char path[PATH_MAX];                                                                  \
        int trouble = descriptor_in_place(fd, path) ? disturbed(#name, path, SPACE) : 0;      \
        if (trouble == -1) (void) !REAL(name) half;                                           \
        GIVE_UP(-1);                                                                          \
        return REAL(name) whole;                                                              \
    }

WRITE(write, (int fd, const void *bytes, size_t n), fd, (fd, bytes, n / 2), (fd, bytes, n))
WRITE(pwrite, (int fd, const void *bytes, size_t n, off_t at), fd, (fd, bytes, n / 2, at), (fd, bytes, n, at))
WRITE(pwrite64, (int fd, const void *bytes, size_t n, off64_t at), fd, (fd, bytes, n / 2, at), (fd, bytes, n, at))
ssize_t sendfile64(int out, int in, off64_t *at, size_t n);
WRITE(sendfile64, (int out, int in, off64_t *at, size_t n), out, (out, in, at, n / 2), (out, in, at, n))

#define ON_DESCRIPTOR(name, parameters, fd, need, whole)                                      \
    int name parameters {                                                                     \
        char path[PATH_MAX];                                                                  \
        int trouble = descriptor_in_place(fd, path) ? disturbed(#name, path, need) : 0;       \
        GIVE_UP(-1);                                                                          \
        return REAL(name) whole;                                                              \
    }

ON_DESCRIPTOR(fsync, (int fd), fd, SYNC, (fd))
ON_DESCRIPTOR(fdatasync, (int fd), fd, SYNC, (fd))
ON_DESCRIPTOR(ftruncate, (int fd, off_t n), fd, NO_SPACE, (fd, n))
ON_DESCRIPTOR(ftruncate64, (int fd, off64_t n), fd, NO_SPACE, (fd, n))

#define ON_PATH(name, parameters, path, need, whole)                                          \
    int name parameters {                                                                     \
        int trouble = in_place(path) ? disturbed(#name, path, need) : 0;                      \
        GIVE_UP(-1);                                                                          \
        return REAL(name) whole;                                                              \
    }

ON_PATH(rename, (const char *from, const char *to), from, NO_SPACE, (from, to))
ON_PATH(link, (const char *from, const char *to), from, SPACE, (from, to))
ON_PATH(unlink, (const char *path), path, NO_SPACE, (path))
ON_PATH(rmdir, (const char *path), path, NO_SPACE, (path))
ON_PATH(mkdir, (const char *path, mode_t mode), path, SPACE, (path, mode))

#define OPEN(name)                                                                            \
    int name(const char *path, int flags, ...) {                                              \
        va_list more;                                                                         \
        va_start(more, flags);                                                                \
        mode_t mode = flags & O_CREAT ? va_arg(more, mode_t) : 0;                             \
        va_end(more);                                                                         \
        int makes = flags & O_CREAT && in_place(path) && syscall(SYS_access, path, F_OK) != 0;\
        int trouble = makes ? disturbed(#name, path, SPACE) : 0;                              \
        GIVE_UP(-1);                                                                          \
        return REAL(name)(path, flags, mode);                                                 \
    }

OPEN(open)
OPEN(open64)
