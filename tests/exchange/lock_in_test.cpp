// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/reader/lock_in.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sched.h>
#include <signal.h>
#include <sys/mman.h>
#include <sys/ptrace.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdlib>

namespace seamward::test {
namespace {

/// What a process that has locked itself in tries; each must fail with EPERM.
struct Attempt {
    const char* name;
    long (*run)(int other);
};

const std::array<Attempt, 17> attempts{{
    {"open a file", [](int) { return static_cast<long>(open("/etc/hostname", O_RDONLY)); }},
    {"make a file", [](int) { return static_cast<long>(open("/tmp/seamward-lock-in", O_WRONLY | O_CREAT, 0600)); }},
    {"look at a file",
     [](int) {
         struct stat facts {};
         return static_cast<long>(stat("/etc/hostname", &facts));
     }},
    {"make a folder", [](int) { return static_cast<long>(mkdir("/tmp/seamward-lock-in", 0700)); }},
    {"rename", [](int) { return static_cast<long>(rename("/tmp/seamward-a", "/tmp/seamward-b")); }},
    {"remove", [](int) { return static_cast<long>(unlink("/tmp/seamward-a")); }},
    {"write elsewhere", [](int other) { return static_cast<long>(write(other, "x", 1)); }},
    {"a socket", [](int) { return static_cast<long>(socket(AF_INET, SOCK_STREAM, 0)); }},
    {"a socket of this machine", [](int) { return static_cast<long>(socket(AF_UNIX, SOCK_STREAM, 0)); }},
    {"fork", [](int) { return static_cast<long>(fork()); }},
    {"a thread", [](int) { return syscall(SYS_clone, CLONE_VM | CLONE_THREAD | CLONE_SIGHAND, 0, 0, 0, 0); }},
    {"run a program", [](int) { return static_cast<long>(execl("/bin/true", "true", nullptr)); }},
    {"signal its parent", [](int) { return static_cast<long>(kill(getppid(), 0)); }},
    {"trace its parent", [](int) { return ptrace(PTRACE_ATTACH, getppid(), nullptr, nullptr); }},
    {"memory to execute",
     [](int) { return mmap(nullptr, 4096, PROT_READ | PROT_EXEC, MAP_PRIVATE | MAP_ANONYMOUS, -1, 0) == MAP_FAILED ? -1L : 0L; }},
    {"lift a limit",
     [](int) {
         const rlimit most{RLIM_INFINITY, RLIM_INFINITY};
         return static_cast<long>(setrlimit(RLIMIT_FSIZE, &most));
     }},
    {"a pipe",
     [](int) {
         std::array<int, 2> ends{};
         return static_cast<long>(pipe(ends.data()));
     }},
}};

/// 0 when all went as it should, else the number of the attempt that did not fail, counted from 1.
int locked_in_process() {
    const int other = open("/dev/null", O_WRONLY);
    if (!limit_resources(4ULL << 30U, 60) || !forbid_the_rest()) return 200;
    for (std::size_t i = 0; i < attempts.size(); ++i) {
        errno = 0;
        if (attempts.at(i).run(other) != -1 || errno != EPERM) return static_cast<int>(i) + 1;
    }
    void* memory = std::malloc(10'000'000);  // what reading needs still works
    if (memory == nullptr || write(STDERR_FILENO, "", 0) != 0) return 201;
    std::free(memory);
    return 0;
}

TEST(LockIn, LeavesNothingButComputing) {
    const pid_t pid = fork();
    ASSERT_GE(pid, 0);
    if (pid == 0) _exit(locked_in_process());
    int status = 0;
    ASSERT_EQ(waitpid(pid, &status, 0), pid);
    ASSERT_TRUE(WIFEXITED(status)) << status;
    const int code = WEXITSTATUS(status);
    EXPECT_EQ(code, 0) << (code > 0 && code <= static_cast<int>(attempts.size())
                               ? attempts.at(static_cast<std::size_t>(code) - 1).name
                               : "locking in failed");
}

/// abort() still ends it with its signal, so that the parent can tell.
TEST(LockIn, AbortsAreSeen) {
    const pid_t pid = fork();
    ASSERT_GE(pid, 0);
    if (pid == 0) {
        if (!limit_resources(4ULL << 30U, 60) || !forbid_the_rest()) _exit(200);
        std::abort();
    }
    int status = 0;
    ASSERT_EQ(waitpid(pid, &status, 0), pid);
    EXPECT_TRUE(WIFSIGNALED(status) && WTERMSIG(status) == SIGABRT) << status;
}

}  // namespace
}  // namespace seamward::test
