/* Stands between a program and the system's library (LD_PRELOAD, Linux). It counts the calls that touch a folder, writes each down,
 * and fails one of them on demand. What to do is told by the environment:
 *
 *   OHMSTEAD_FAULT_UNDER  the folder, absolute; calls about other paths pass untouched
 *   OHMSTEAD_FAULT_LOG    a file to which a line is added for each call: kind, function, path, second path, error;
 *                         with a ! before those that were failed
 *   OHMSTEAD_FAULT_CALL   the kind of call that is counted, or "any"
 *   OHMSTEAD_FAULT_AT     which of them, from 1; nothing happens where it is 0 or missing
 *   OHMSTEAD_FAULT_LASTS  set: that call and all of its kind after it
 *   OHMSTEAD_FAULT_ERROR  the number of the error (28: no space left); "half" writes half of what was given;
 *                         "kill" ends the process before the call, "killed" after it, "hang" never comes back
 *   OHMSTEAD_FAULT_OF     the name of the one program that is meant, where others are started on the way; all are where it is missing
 *   OHMSTEAD_FAULT_COUNT  a file by which several programs, one after the other, count on where the last has ended
 *   OHMSTEAD_FAULT_AWAY   a path that is renamed aside just before that call, which then goes on
 *   OHMSTEAD_FAULT_LINK   what a link that is put in its place leads to
 */
#define _GNU_SOURCE
#undef _FILE_OFFSET_BITS
#include <dirent.h>
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <signal.h>
#include <stdarg.h>
#include <stdatomic.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/file.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/uio.h>
#include <sys/xattr.h>
#include <unistd.h>

enum { NOTHING = 0, HALF = -1, KILL = -2, KILLED = -3, HANG = -4 };

static const char *under, *counted, *away, *leads;
static size_t under_length;
static long at;
static int lasts, fault, journal = -1;
static atomic_long own, *count = &own;

__attribute__((constructor)) static void begin(void)
{
    const char *log = getenv("OHMSTEAD_FAULT_LOG"), *error = getenv("OHMSTEAD_FAULT_ERROR");
    const char *which = getenv("OHMSTEAD_FAULT_AT");
    const char *of = getenv("OHMSTEAD_FAULT_OF"), *shared = getenv("OHMSTEAD_FAULT_COUNT");
    under = of && strcmp(of, program_invocation_short_name) ? NULL : getenv("OHMSTEAD_FAULT_UNDER");
    counted = getenv("OHMSTEAD_FAULT_CALL");
    away = getenv("OHMSTEAD_FAULT_AWAY");
    leads = getenv("OHMSTEAD_FAULT_LINK");
    under_length = under ? strlen(under) : 0;
    at = which && counted ? atol(which) : 0;
    lasts = getenv("OHMSTEAD_FAULT_LASTS") != NULL;
    fault = !error ? NOTHING : !strcmp(error, "half") ? HALF
        : !strcmp(error, "kill") ? KILL : !strcmp(error, "killed") ? KILLED
        : !strcmp(error, "hang") ? HANG : atoi(error);
    if (log && under) {
        int file = (int)syscall(SYS_openat, AT_FDCWD, log, O_WRONLY | O_APPEND | O_CREAT | O_CLOEXEC, 0600);
        /* Out of the way of 0, 1 and 2, which may be closed. */
        journal = (int)syscall(SYS_fcntl, file, F_DUPFD_CLOEXEC, 40);
        syscall(SYS_close, file);
    }

    if (shared && under) {
        int file = (int)syscall(SYS_openat, AT_FDCWD, shared, O_RDWR | O_CREAT | O_CLOEXEC, 0600);
        void *place = syscall(SYS_ftruncate, file, sizeof own) ? MAP_FAILED
            : mmap(NULL, sizeof own, PROT_READ | PROT_WRITE, MAP_SHARED, file, 0);
        count = place == MAP_FAILED ? &own : place;
        syscall(SYS_close, file);
    }
}

static int is_below(const char *path)
{
    return under && !strncmp(path, under, under_length) && (path[under_length] == '/' || !path[under_length]);
}

static int of_handle(int handle, char *path)
{
    char name[40];
    snprintf(name, sizeof name, "/proc/self/fd/%d", handle);
    long length = syscall(SYS_readlinkat, AT_FDCWD, name, path, PATH_MAX - 1);
    path[length > 0 ? length : 0] = 0;
    return length > 0 && is_below(path);
}

/* By the words alone: what a link leads to is told by the handle, once it is open. */
static void without_dots(char *path)
{
    char *to = path;
    for (char *from = path; *from;) {
        char *end = from + 1 + strcspn(from + 1, "/");
        size_t length = (size_t)(end - from);
        if (length == 3 && !strncmp(from, "/..", 3)) {
            while (to > path && *--to != '/') {
            }
        } else if (length > 1 && !(length == 2 && from[1] == '.')) {
            memmove(to, from, length);
            to += length;
        }

        from = end;
    }

    *to = 0;
}

static int of_path(int folder, const char *name, char *path)
{
    char start[PATH_MAX] = "";
    if (!under || !name) {
        return 0;
    }

    if (name[0] != '/' && folder == AT_FDCWD && syscall(SYS_getcwd, start, sizeof start) < 0) {
        return 0;
    }

    if (name[0] != '/' && folder != AT_FDCWD) {
        of_handle(folder, start);
    }

    if (snprintf(path, PATH_MAX, "%s/%s", start, name) >= PATH_MAX) {
        return 0;
    }

    without_dots(path);
    return is_below(path);
}

static void note(int failed, const char *kind, const char *function, const char *path, const char *second, int error)
{
    if (journal < 0) {
        return;
    }

    char line[2 * PATH_MAX + 100];
    int length = snprintf(line, sizeof line, "%s%s\t%s\t%s\t%s\t%d\n", failed ? "!" : "", kind, function, path, second, error);
    syscall(SYS_write, journal, line, (size_t)length);
}

/* What is to be done with this call. */
static int turn(const char *kind, const char *function, const char *path)
{
    if (!at || (strcmp(counted, kind) && strcmp(counted, "any"))) {
        return NOTHING;
    }

    long number = atomic_fetch_add(count, 1) + 1;
    if (number != at && !(lasts && number > at)) {
        return NOTHING;
    }

    if (away && number == at) {
        char aside[PATH_MAX];
        snprintf(aside, sizeof aside, "%s.aside", away);
        syscall(SYS_renameat, AT_FDCWD, away, AT_FDCWD, aside);
        if (leads) {
            syscall(SYS_symlinkat, leads, AT_FDCWD, away);
        }
    }

    if (fault == KILL) {
        note(1, kind, function, path, "", 0);
        kill(getpid(), SIGKILL);
    }

    if (fault == HANG) {
        note(1, kind, function, path, "", 0);
        for (;;) {
            pause();
        }
    }

    return fault;
}

typedef void *find(void *, const char *);

/* The system's own, whose name we take: by its version, which is that of the C library's first release on this machine or of the one
 * that took the loader in. */
static find *find_real(void)
{
    static find *real;
    static const char *const versions[] = { "GLIBC_2.34", "GLIBC_2.2.5", "GLIBC_2.17", "GLIBC_2.27" };
    for (size_t i = 0; !real && i < sizeof versions / sizeof *versions; i++) {
        real = (find *)dlvsym(RTLD_NEXT, "dlsym", versions[i]);
    }

    return real;
}

#define REAL(name) \
    static typeof(&name) real; \
    if (!real) { real = (typeof(real))find_real()(RTLD_NEXT, #name); }

/* Makes the call, or fails it; the name of the result is "result". */
#define PASS(kind, name, is_ours, path, second, failure, call) \
    if (!(is_ours)) { return call; } \
    int what = turn(kind, #name, path); \
    if (what > 0) { note(1, kind, #name, path, second, what); errno = what; return failure; } \
    typeof(call) result = call; \
    { int error = errno; \
      note(what != NOTHING, kind, #name, path, second, result == failure ? error : 0); \
      if (what == KILLED) { kill(getpid(), SIGKILL); } \
      errno = error; } \
    return result

#define MODE(flags) \
    mode_t mode = 0; \
    if (((flags) & O_CREAT) || ((flags) & O_TMPFILE) == O_TMPFILE) { \
        va_list more; va_start(more, flags); mode = va_arg(more, mode_t); va_end(more); }

#define OPEN(name) \
    int name(const char *file, int flags, ...) \
    { MODE(flags) REAL(name) char path[PATH_MAX]; \
      PASS("open", name, of_path(AT_FDCWD, file, path), path, "", -1, real(file, flags, mode)); }

#define OPENAT(name) \
    int name(int folder, const char *file, int flags, ...) \
    { MODE(flags) REAL(name) char path[PATH_MAX]; \
      PASS("open", name, of_path(folder, file, path), path, "", -1, real(folder, file, flags, mode)); }

/* One call about a path, or about what is open already. */
#define OF_PATH(kind, name, parameters, folder, file, arguments) \
    int name parameters \
    { REAL(name) char path[PATH_MAX]; PASS(kind, name, of_path(folder, file, path), path, "", -1, real arguments); }

#define OF_HANDLE(kind, type, name, parameters, arguments) \
    type name parameters \
    { REAL(name) char path[PATH_MAX]; PASS(kind, name, of_handle(handle, path), path, "", -1, real arguments); }

/* Two paths; what touches the folder with either is ours. */
#define OF_TWO(kind, name, parameters, folder1, file1, folder2, file2, arguments) \
    int name parameters \
    { REAL(name) char path[PATH_MAX] = "", second[PATH_MAX] = ""; \
      int is_first = of_path(folder1, file1, path), is_second = of_path(folder2, file2, second); \
      PASS(kind, name, is_first || is_second, path, second, -1, real arguments); }

#define WRITE(name, parameters, arguments, halved) \
    ssize_t name parameters \
    { REAL(name) char path[PATH_MAX]; \
      if (!of_handle(handle, path)) { return real arguments; } \
      int what = turn("write", #name, path); \
      if (what > 0) { note(1, "write", #name, path, "", what); errno = what; return -1; } \
      ssize_t result = what == HALF && length > 1 ? real halved : real arguments; \
      int error = errno; \
      note(what != NOTHING, "write", #name, path, "", result < 0 ? error : 0); \
      if (what == KILLED) { kill(getpid(), SIGKILL); } \
      errno = error; return result; }

OPEN(open)
OPEN(open64)
OPENAT(openat)
OPENAT(openat64)

/* The end of a list and a failure look alike but for errno. */
#define LIST(name, entry) \
    struct entry *name(DIR *list) \
    { REAL(name) char path[PATH_MAX]; int before = errno; \
      if (!of_handle(dirfd(list), path)) { errno = before; return real(list); } \
      int what = turn("list", #name, path); \
      if (what > 0) { note(1, "list", #name, path, "", what); errno = what; return NULL; } \
      note(what != NOTHING, "list", #name, path, "", 0); \
      if (what == KILLED) { kill(getpid(), SIGKILL); } \
      errno = before; return real(list); }
LIST(readdir, dirent)
LIST(readdir64, dirent64)

DIR *opendir(const char *file)
{
    REAL(opendir) char path[PATH_MAX];
    PASS("open", opendir, of_path(AT_FDCWD, file, path), path, "", NULL, real(file));
}

OF_HANDLE("read", ssize_t, read, (int handle, void *bytes, size_t length), (handle, bytes, length))
OF_HANDLE("read", ssize_t, pread, (int handle, void *bytes, size_t length, off_t from), (handle, bytes, length, from))
OF_HANDLE("read", ssize_t, pread64, (int handle, void *bytes, size_t length, off64_t from), (handle, bytes, length, from))
OF_HANDLE("read", ssize_t, preadv, (int handle, const struct iovec *parts, int length, off_t from), (handle, parts, length, from))
OF_HANDLE("read", ssize_t, preadv64, (int handle, const struct iovec *parts, int length, off64_t from), (handle, parts, length, from))

WRITE(write, (int handle, const void *bytes, size_t length), (handle, bytes, length), (handle, bytes, length / 2))
WRITE(pwrite, (int handle, const void *bytes, size_t length, off_t to), (handle, bytes, length, to), (handle, bytes, length / 2, to))
WRITE(pwrite64, (int handle, const void *bytes, size_t length, off64_t to), (handle, bytes, length, to), (handle, bytes, length / 2, to))
WRITE(pwritev, (int handle, const struct iovec *parts, int length, off_t to),
    (handle, parts, length, to), (handle, parts, length / 2, to))
WRITE(pwritev64, (int handle, const struct iovec *parts, int length, off64_t to),
    (handle, parts, length, to), (handle, parts, length / 2, to))
OF_HANDLE("write", int, ftruncate, (int handle, off_t length), (handle, length))
OF_HANDLE("write", int, ftruncate64, (int handle, off64_t length), (handle, length))

/* It gives the number of the error itself, and leaves errno alone. */
#define ALLOCATE(name, offset) \
    int name(int handle, offset from, offset length) \
    { REAL(name) char path[PATH_MAX]; \
      if (!of_handle(handle, path)) { return real(handle, from, length); } \
      int what = turn("write", #name, path); \
      int result = what > 0 ? what : real(handle, from, length); \
      note(what != NOTHING, "write", #name, path, "", result); \
      if (what == KILLED) { kill(getpid(), SIGKILL); } \
      return result; }
ALLOCATE(posix_fallocate, off_t)
ALLOCATE(posix_fallocate64, off64_t)

OF_HANDLE("sync", int, fsync, (int handle), (handle))
OF_HANDLE("sync", int, fdatasync, (int handle), (handle))
OF_HANDLE("sync", int, syncfs, (int handle), (handle))
OF_HANDLE("lock", int, flock, (int handle, int operation), (handle, operation))
OF_HANDLE("mode", int, fchmod, (int handle, mode_t mode), (handle, mode))
OF_HANDLE("mode", int, fchown, (int handle, uid_t owner, gid_t group), (handle, owner, group))
OF_PATH("mode", chmod, (const char *file, mode_t mode), AT_FDCWD, file, (file, mode))
OF_PATH("mode", chown, (const char *file, uid_t owner, gid_t group), AT_FDCWD, file, (file, owner, group))
OF_PATH("mode", lchown, (const char *file, uid_t owner, gid_t group), AT_FDCWD, file, (file, owner, group))
OF_PATH("mode", fchmodat, (int folder, const char *file, mode_t mode, int flags),
    folder, file, (folder, file, mode, flags))
OF_PATH("mode", fchownat, (int folder, const char *file, uid_t owner, gid_t group, int flags),
    folder, file, (folder, file, owner, group, flags))

OF_HANDLE("mode", int, fsetxattr, (int handle, const char *name, const void *value, size_t length, int flags),
    (handle, name, value, length, flags))

OF_PATH("look", statx, (int folder, const char *file, int flags, unsigned int mask, struct statx *facts),
    folder, file, (folder, file, flags, mask, facts))

OF_PATH("unlink", unlink, (const char *file), AT_FDCWD, file, (file))
OF_PATH("unlink", unlinkat, (int folder, const char *file, int flags),
    folder, file, (folder, file, flags))
OF_PATH("unlink", rmdir, (const char *file), AT_FDCWD, file, (file))
OF_PATH("mkdir", mkdir, (const char *file, mode_t mode), AT_FDCWD, file, (file, mode))
OF_PATH("mkdir", mkdirat, (int folder, const char *file, mode_t mode), folder, file, (folder, file, mode))

OF_TWO("rename", rename, (const char *from, const char *to), AT_FDCWD, from, AT_FDCWD, to, (from, to))
OF_TWO("rename", renameat, (int folder1, const char *from, int folder2, const char *to),
    folder1, from, folder2, to, (folder1, from, folder2, to))
OF_TWO("rename", renameat2, (int folder1, const char *from, int folder2, const char *to, unsigned int flags),
    folder1, from, folder2, to, (folder1, from, folder2, to, flags))
OF_TWO("link", link, (const char *from, const char *to), AT_FDCWD, from, AT_FDCWD, to, (from, to))
OF_TWO("link", linkat, (int folder1, const char *from, int folder2, const char *to, int flags),
    folder1, from, folder2, to, (folder1, from, folder2, to, flags))
OF_PATH("link", symlinkat, (const char *leads_to, int folder, const char *file), folder, file, (leads_to, folder, file))
OF_PATH("link", symlink, (const char *leads_to, const char *file), AT_FDCWD, file, (leads_to, file))

/* The handle is closed in any case, as the system does it. The path is asked for before. */
int close(int handle)
{
    REAL(close) char path[PATH_MAX];
    int is_ours = of_handle(handle, path);
    int what = is_ours ? turn("close", "close", path) : NOTHING;
    int result = real(handle), error = errno;
    if (is_ours) {
        note(what != NOTHING, "close", "close", path, "", what > 0 ? what : result < 0 ? error : 0);
    }

    if (what == KILLED) {
        kill(getpid(), SIGKILL);
    }

    errno = what > 0 ? what : error;
    return what > 0 ? -1 : result;
}

/* A program that looks a function up in the C library itself, as .NET does for its calls of other libraries, gets ours too. */
void *dlsym(void *handle, const char *name)
{
#define OURS(known) if (!strcmp(name, #known)) { return (void *)known; }
    if (handle != RTLD_NEXT) {
        OURS(chmod) OURS(chown) OURS(close) OURS(fchmod) OURS(fchmodat) OURS(fchown) OURS(fchownat)
        OURS(fdatasync) OURS(flock) OURS(fsetxattr) OURS(fsync) OURS(ftruncate) OURS(ftruncate64) OURS(lchown)
        OURS(link) OURS(linkat) OURS(mkdir) OURS(mkdirat) OURS(open) OURS(open64) OURS(openat) OURS(openat64)
        OURS(opendir) OURS(posix_fallocate) OURS(posix_fallocate64) OURS(pread) OURS(pread64) OURS(preadv)
        OURS(preadv64) OURS(pwrite) OURS(pwrite64) OURS(pwritev) OURS(pwritev64) OURS(read) OURS(readdir)
        OURS(readdir64) OURS(rename) OURS(renameat) OURS(renameat2) OURS(rmdir) OURS(statx) OURS(symlink)
        OURS(symlinkat) OURS(syncfs) OURS(unlink) OURS(unlinkat) OURS(write)
    }

    return find_real()(handle, name);
}
