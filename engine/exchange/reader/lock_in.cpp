// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/reader/lock_in.h"

#include <fcntl.h>
#include <seccomp.h>
#include <signal.h>
#include <sys/mman.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <initializer_list>

namespace seamward {

namespace {

constexpr rlim_t most_descriptors = 32;

/// At `most` by itself, at `most + slack` whatever it does; less where the system has it lower already.
bool limit(__rlimit_resource_t what, rlim_t most, rlim_t slack = 0) {
    rlimit now{};
    if (getrlimit(what, &now) != 0) return false;
    const rlimit both{std::min(most, now.rlim_max), std::min(most + slack, now.rlim_max)};
    return setrlimit(what, &both) == 0;
}

scmp_arg_cmp argument_is(unsigned position, scmp_datum_t value) { return {position, SCMP_CMP_EQ, value, 0}; }

/// The calls that reading needs, under the conditions that it needs them.
bool add_rules(scmp_filter_ctx filter) {
    const auto allow = [&](int call) { return seccomp_rule_add(filter, SCMP_ACT_ALLOW, call, 0) == 0; };
    const auto allow_if = [&](int call, scmp_arg_cmp condition) {
        return seccomp_rule_add(filter, SCMP_ACT_ALLOW, call, 1, condition) == 0;
    };
    bool good = true;
    for (const int call : {SCMP_SYS(read),           SCMP_SYS(readv),           SCMP_SYS(pread64),     SCMP_SYS(lseek),
                           SCMP_SYS(close),          SCMP_SYS(fstat),           SCMP_SYS(brk),         SCMP_SYS(munmap),
                           SCMP_SYS(mremap),         SCMP_SYS(madvise),         SCMP_SYS(futex),       SCMP_SYS(rt_sigaction),
                           SCMP_SYS(rt_sigprocmask), SCMP_SYS(rt_sigreturn),    SCMP_SYS(sigaltstack), SCMP_SYS(clock_gettime),
                           SCMP_SYS(gettimeofday),   SCMP_SYS(getpid),          SCMP_SYS(gettid),      SCMP_SYS(getrandom),
                           SCMP_SYS(sched_yield),    SCMP_SYS(restart_syscall), SCMP_SYS(exit),        SCMP_SYS(exit_group)})
        good = allow(call) && good;
    for (const int to : {answer_descriptor, STDOUT_FILENO, STDERR_FILENO}) {
        const auto number = static_cast<scmp_datum_t>(to);
        good = allow_if(SCMP_SYS(write), argument_is(0, number)) && good;
        good = allow_if(SCMP_SYS(writev), argument_is(0, number)) && good;
    }
    for (const int call : {SCMP_SYS(mmap), SCMP_SYS(mprotect)})
        good = allow_if(call, scmp_arg_cmp{2, SCMP_CMP_MASKED_EQ, PROT_EXEC, 0}) && good;
    // What fstat() is on newer systems; no look at other files by their names.
    good = allow_if(SCMP_SYS(newfstatat), argument_is(3, AT_EMPTY_PATH)) && good;
    // abort() signals to its own process.
    good = allow_if(SCMP_SYS(tgkill), argument_is(0, static_cast<scmp_datum_t>(getpid()))) && good;
    return good;
}

}  // namespace

bool keep_descriptors() {
    if (fcntl(folder_descriptor, F_GETFD) < 0 && dup2(STDIN_FILENO, folder_descriptor) < 0) return false;
    if (dup2(STDOUT_FILENO, answer_descriptor) < 0 || dup2(STDERR_FILENO, STDOUT_FILENO) < 0) return false;
    return close_range(answer_descriptor + 1, ~0U, 0) == 0;
}

bool limit_resources(std::uint64_t memory_bytes, std::uint64_t cpu_seconds) {
    bool good = prctl(PR_SET_PDEATHSIG, SIGKILL) == 0;
#ifndef SEAMWARD_SANITIZE  // the sanitizers reserve terabytes of addresses
    good = limit(RLIMIT_AS, memory_bytes) && good;
#else
    (void)memory_bytes;
#endif
    return limit(RLIMIT_CPU, cpu_seconds, 1) && limit(RLIMIT_FSIZE, 0) && limit(RLIMIT_CORE, 0) &&
           limit(RLIMIT_NOFILE, most_descriptors) && good;
}

bool forbid_the_rest() {
    if (prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) != 0) return false;
    const scmp_filter_ctx filter = seccomp_init(SCMP_ACT_ERRNO(EPERM));
    if (filter == nullptr) return false;
    const bool good = add_rules(filter) && seccomp_load(filter) == 0;
    seccomp_release(filter);
    return good;
}

}  // namespace seamward
