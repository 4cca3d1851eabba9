// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/lone_lot.h"

#include <poll.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <csignal>
#include <stdexcept>
#include <system_error>

namespace seamward {

namespace {

class Pipe {
public:
    Pipe() {
        if (pipe(ends_.data()) != 0) throw std::system_error(errno, std::generic_category(), "pipe");
    }
    ~Pipe() {
        close_end(0);
        close_end(1);
    }
    Pipe(const Pipe&) = delete;
    Pipe& operator=(const Pipe&) = delete;
    [[nodiscard]] int end(std::size_t which) const { return ends_[which]; }
    void close_end(std::size_t which) {
        if (ends_[which] >= 0) close(ends_[which]);
        ends_[which] = -1;
    }

private:
    std::array<int, 2> ends_{-1, -1};
};

/// Never returns: the copy of the program ends here, without what ends the program itself.
[[noreturn]] void do_and_tell(const std::string& name, const LotDoer& doer, int out, pid_t parent) {
    // Nobody waits for the answer once the parent is gone, however that ended. It may have ended before it was said so.
    prctl(PR_SET_PDEATHSIG, SIGKILL);
    if (getppid() != parent) _exit(1);
    const rlimit no_core{0, 0};
    setrlimit(RLIMIT_CORE, &no_core);
    try {
        const std::string bytes = row_bytes(doer(name, RunContext()));
        for (std::size_t at = 0; at < bytes.size();) {
            const ssize_t written = write(out, bytes.data() + at, bytes.size() - at);
            if (written < 0 && errno != EINTR) _exit(1);
            if (written > 0) at += static_cast<std::size_t>(written);
        }
        _exit(0);
    } catch (const std::exception&) {
        _exit(1);
    }
}

std::string read_all(int in, pid_t child, const RunContext& context) {
    std::string bytes;
    std::array<char, 1 << 16> piece{};
    while (true) {
        pollfd ready{in, POLLIN, 0};
        const int count = poll(&ready, 1, 100);
        try {
            context.check();
        } catch (const Cancelled&) {
            kill(child, SIGKILL);
            waitpid(child, nullptr, 0);
            throw;
        }
        if (count <= 0) continue;
        const ssize_t size = read(in, piece.data(), piece.size());
        if (size < 0 && errno == EINTR) continue;
        if (size <= 0) return bytes;
        bytes.append(piece.data(), static_cast<std::size_t>(size));
    }
}

}  // namespace

std::variant<LotRow, DiedOf> do_lot_apart(const std::string& name, const LotDoer& doer, const RunContext& context) {
    context.check();
    Pipe pipe;
    const pid_t parent = getpid();
    const pid_t child = fork();
    if (child < 0) throw std::system_error(errno, std::generic_category(), "fork");
    if (child == 0) do_and_tell(name, doer, pipe.end(1), parent);
    pipe.close_end(1);
    const std::string bytes = read_all(pipe.end(0), child, context);
    int status = 0;
    while (waitpid(child, &status, 0) < 0 && errno == EINTR) {}
    context.check();
    if (WIFSIGNALED(status)) return DiedOf{WTERMSIG(status)};
    if (WEXITSTATUS(status) != 0) throw std::runtime_error("the work on " + name + " ended without an answer");
    return row_from_bytes(bytes);
}

}  // namespace seamward
