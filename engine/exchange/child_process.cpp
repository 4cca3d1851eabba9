// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/child_process.h"

#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <spawn.h>
#include <sys/personality.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <optional>
#include <utility>

namespace seamward {

namespace {

using Clock = std::chrono::steady_clock;

constexpr std::size_t most_complaints = 4096;
constexpr int first_handed_over = 3;
/// How long a cancel or a limit may go unnoticed.
constexpr std::chrono::milliseconds tick{50};

/// An open file of ours, closed at the end.
class Descriptor {
public:
    Descriptor() = default;
    explicit Descriptor(int number) : number_(number) {}
    Descriptor(Descriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
    Descriptor& operator=(Descriptor&& other) noexcept {
        std::swap(number_, other.number_);
        return *this;
    }
    ~Descriptor() { close(); }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    [[nodiscard]] int number() const { return number_; }
    [[nodiscard]] bool is_open() const { return number_ >= 0; }
    void close() {
        if (number_ >= 0) ::close(number_);
        number_ = -1;
    }

private:
    int number_ = -1;
};

/// A running program; killed and waited for at the end when it still runs.
class Child {
public:
    explicit Child(pid_t pid) : pid_(pid) {}
    ~Child() {
        if (pid_ <= 0) return;
        kill(pid_, SIGKILL);
        while (waitpid(pid_, nullptr, 0) < 0 && errno == EINTR) {}
    }
    Child(const Child&) = delete;
    Child& operator=(const Child&) = delete;

    /// Its status once it has ended.
    std::optional<int> ended() {
        int status = 0;
        const pid_t found = waitpid(pid_, &status, WNOHANG);
        if (found == 0 || (found < 0 && errno == EINTR)) return std::nullopt;
        pid_ = -1;
        return status;
    }

private:
    pid_t pid_;
};

/// While it lives, what this thread starts gets the same addresses every time. Of the thread itself nothing changes: it has its
/// addresses since its own start, and other threads keep a flag of their own. A system that refuses (containers do) is left
/// alone.
class FixedAddresses {
public:
    FixedAddresses() : before_(personality(only_ask)) {
        if (before_ >= 0) (void)personality(static_cast<unsigned long>(before_) | ADDR_NO_RANDOMIZE);
    }
    ~FixedAddresses() {
        if (before_ >= 0) (void)personality(static_cast<unsigned long>(before_));
    }
    FixedAddresses(const FixedAddresses&) = delete;
    FixedAddresses& operator=(const FixedAddresses&) = delete;

private:
    static constexpr unsigned long only_ask = 0xFFFFFFFF;
    int before_;
};

/// What a program is started with.
class Start {
public:
    explicit Start(const ChildTask& task) : task_(task) {
        posix_spawn_file_actions_init(&actions_);
        posix_spawnattr_init(&attributes_);
        sigset_t none;
        sigset_t all;
        sigemptyset(&none);
        sigfillset(&all);
        posix_spawnattr_setsigmask(&attributes_, &none);
        posix_spawnattr_setsigdefault(&attributes_, &all);
        posix_spawnattr_setflags(&attributes_, POSIX_SPAWN_SETSIGMASK | POSIX_SPAWN_SETSIGDEF);
    }
    ~Start() {
        posix_spawn_file_actions_destroy(&actions_);
        posix_spawnattr_destroy(&attributes_);
    }
    Start(const Start&) = delete;
    Start& operator=(const Start&) = delete;

    /// Hands `number` over as `as`. By way of a number above all targets, so that none overwrites another.
    bool hand_over(int number, int as) {
        const int above = first_handed_over + static_cast<int>(task_.descriptors.size());
        high_.emplace_back(fcntl(number, F_DUPFD_CLOEXEC, above));
        return high_.back().is_open() && posix_spawn_file_actions_adddup2(&actions_, high_.back().number(), as) == 0;
    }

    /// The error number, or 0. What stands open beyond is closed, whoever left it open.
    int run(pid_t& pid) {
        posix_spawn_file_actions_addclosefrom_np(&actions_, first_handed_over + static_cast<int>(task_.descriptors.size()));
        std::vector<std::string> words{task_.program.string()};
        words.insert(words.end(), task_.arguments.begin(), task_.arguments.end());
        std::vector<char*> arguments;
        for (std::string& word : words) arguments.push_back(word.data());
        arguments.push_back(nullptr);
        std::string locale = "LC_ALL=C";
        std::array<char*, 2> environment{locale.data(), nullptr};
        std::optional<FixedAddresses> fixed;
        if (task_.fixed_addresses) fixed.emplace();
        return posix_spawn(&pid, task_.program.c_str(), &actions_, &attributes_, arguments.data(), environment.data());
    }

private:
    const ChildTask& task_;
    posix_spawn_file_actions_t actions_{};
    posix_spawnattr_t attributes_{};
    std::vector<Descriptor> high_;
};

struct Pipe {
    Descriptor read, write;

    bool open() {
        std::array<int, 2> ends{};
        if (pipe2(ends.data(), O_CLOEXEC) != 0) return false;
        read = Descriptor(ends[0]);
        write = Descriptor(ends[1]);
        return true;
    }
};

/// Takes what stands in a pipe; closes it at its end. Bytes beyond `most` are dropped; whether there were any.
bool take(Descriptor& from, std::string& into, std::size_t most) {
    std::array<char, 1 << 16> block{};
    const ssize_t count = read(from.number(), block.data(), block.size());
    if (count < 0 && (errno == EINTR || errno == EAGAIN)) return false;
    if (count <= 0) {
        from.close();
        return false;
    }
    const std::size_t room = most - into.size();
    into.append(block.data(), std::min(room, static_cast<std::size_t>(count)));
    return static_cast<std::size_t>(count) > room;
}

/// Follows a running program to its end.
ChildResult follow(Child& child, Descriptor& out, Descriptor& err, const ChildTask& task, const RunContext& context) {
    ChildResult result;
    const Clock::time_point deadline = Clock::now() + task.most_time;
    const auto wait_for = [&](std::chrono::milliseconds at_most) {
        context.check();
        std::array<pollfd, 2> waiting{{{out.number(), POLLIN, 0}, {err.number(), POLLIN, 0}}};
        poll(waiting.data(), waiting.size(), static_cast<int>(at_most.count()));
        return std::pair(waiting[0].revents != 0, waiting[1].revents != 0);
    };
    while (out.is_open()) {
        const auto [said, complained] = wait_for(tick);
        if (complained) (void)take(err, result.complaints, most_complaints);
        if (said && take(out, result.output, task.most_output)) {
            result.end = ChildEnd::too_much_output;
            return result;
        }
        if (Clock::now() >= deadline) {
            result.end = ChildEnd::out_of_time;
            return result;
        }
    }
    std::optional<int> status;
    while (!(status = child.ended())) {
        if (wait_for(std::chrono::milliseconds(1)).second) (void)take(err, result.complaints, most_complaints);
        if (Clock::now() >= deadline) {
            result.end = ChildEnd::out_of_time;
            return result;
        }
    }
    while (err.is_open() && wait_for(std::chrono::milliseconds(0)).second) (void)take(err, result.complaints, most_complaints);
    result.end = WIFEXITED(*status) ? ChildEnd::exited : ChildEnd::killed_by_signal;
    result.code = WIFEXITED(*status) ? WEXITSTATUS(*status) : WTERMSIG(*status);
    return result;
}

/// The error number, or 0. The copies that it makes of the pipes' other ends are closed again: else the pipes would not end.
int launch(const ChildTask& task, Pipe& out, Pipe& err, pid_t& pid) {
    const Descriptor nothing(open("/dev/null", O_RDONLY | O_CLOEXEC));
    Start start(task);
    bool ready = nothing.is_open() && out.open() && err.open() && start.hand_over(nothing.number(), STDIN_FILENO) &&
                 start.hand_over(out.write.number(), STDOUT_FILENO) && start.hand_over(err.write.number(), STDERR_FILENO);
    for (std::size_t i = 0; ready && i < task.descriptors.size(); ++i)
        ready = start.hand_over(task.descriptors[i], first_handed_over + static_cast<int>(i));
    return ready ? start.run(pid) : errno;
}

}  // namespace

ChildResult run_child(const ChildTask& task, const RunContext& context) {
    context.check();
    Pipe out;
    Pipe err;
    pid_t pid = -1;
    const int error = launch(task, out, err, pid);
    if (error != 0) return {.end = ChildEnd::not_started, .code = error};
    Child child(pid);
    out.write.close();
    err.write.close();
    return follow(child, out.read, err.read, task, context);
}

}  // namespace seamward
