// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/own_screen.h"

#include <X11/Xlib.h>
#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <chrono>
#include <cstdlib>
#include <stdexcept>
#include <thread>

namespace seamward::viewer {

namespace {

using Clock = std::chrono::steady_clock;
constexpr std::chrono::seconds start_limit{20};  ///< a busy machine takes seconds; an idle one a fraction of one
constexpr std::chrono::seconds end_limit{3};

/// Both ends of a pipe, closed with the object and in programs that are started.
struct Pipe {
    std::array<int, 2> ends{-1, -1};

    Pipe() {
        if (pipe2(ends.data(), O_CLOEXEC) != 0) throw std::runtime_error("no display, and no pipe to start Xvfb with");
    }
    ~Pipe() {
        for (std::size_t i = 0; i < ends.size(); ++i) close_end(i);
    }
    Pipe(const Pipe&) = delete;
    Pipe& operator=(const Pipe&) = delete;

    void close_end(std::size_t i) {
        if (ends.at(i) >= 0) close(ends.at(i));
        ends.at(i) = -1;
    }
};

/// What comes out of a pipe up to the end of a line or of the pipe; nothing more after the limit.
std::string first_line(int from, Clock::time_point limit) {
    std::string line;
    char letter = 0;
    while (true) {
        const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(limit - Clock::now()).count();
        pollfd ready{from, POLLIN, 0};
        const int count = left > 0 ? poll(&ready, 1, static_cast<int>(left)) : 0;
        if (count < 0 && errno == EINTR) continue;
        if (count <= 0) return {};
        const ssize_t got = read(from, &letter, 1);
        if (got < 0 && errno == EINTR) continue;
        if (got <= 0) return {};
        if (letter == '\n') return line;
        line += letter;
    }
}

}  // namespace

OwnScreen::OwnScreen(int width, int height) {
    Pipe number;   // Xvfb writes the number of the display
    Pipe failure;  // the child writes why Xvfb cannot be run
    const std::string number_end = std::to_string(number.ends[1]);
    const std::string size = std::to_string(width) + 'x' + std::to_string(height) + "x24";
    const pid_t parent = getpid();
    server_ = fork();
    if (server_ < 0) throw std::runtime_error("no display, and no process to run Xvfb in");
    if (server_ == 0) {
        prctl(PR_SET_PDEATHSIG, SIGTERM);  // a program that crashes leaves no server behind
        if (getppid() != parent) _exit(127);
        fcntl(number.ends[1], F_SETFD, 0);
        const int nowhere = open("/dev/null", O_RDWR);
        dup2(nowhere, STDOUT_FILENO);
        dup2(nowhere, STDERR_FILENO);  // remarks on keyboards that nobody needs
        execlp("Xvfb", "Xvfb", "-displayfd", number_end.c_str(), "-screen", "0", size.c_str(), "-nolisten", "tcp", "-noreset",
               nullptr);
        const char reason = errno == ENOENT ? '0' : '1';
        [[maybe_unused]] const ssize_t written = write(failure.ends[1], &reason, 1);
        _exit(127);
    }
    number.close_end(1);
    failure.close_end(1);
    const std::string display = first_line(number.ends[0], Clock::now() + start_limit);
    if (display.empty()) {
        char reason = 0;
        const bool not_run = read(failure.ends[0], &reason, 1) == 1;
        end();
        throw std::runtime_error(not_run && reason == '0' ? "no display, and Xvfb is not installed: apt-get install xvfb"
                                                          : "no display, and Xvfb does not start: try Xvfb :99 by hand");
    }
    if (const char* before = std::getenv("DISPLAY")) before_ = before;
    setenv("DISPLAY", (':' + display).c_str(), 1);
}

OwnScreen::~OwnScreen() {
    end();
    if (before_) {
        setenv("DISPLAY", before_->c_str(), 1);
    } else {
        unsetenv("DISPLAY");
    }
}

void OwnScreen::end() const {
    kill(server_, SIGTERM);  // it takes its lock and its socket away then
    const Clock::time_point limit = Clock::now() + end_limit;
    while (waitpid(server_, nullptr, WNOHANG) == 0) {
        if (Clock::now() > limit) kill(server_, SIGKILL);
        std::this_thread::sleep_for(std::chrono::milliseconds(2));
    }
}

bool has_drawable_screen() {
    const char* name = std::getenv("DISPLAY");
    if (name == nullptr || *name == '\0') return false;
    Display* display = XOpenDisplay(nullptr);
    if (display == nullptr) return false;
    int opcode = 0;
    int event = 0;
    int error = 0;
    const bool draws = XQueryExtension(display, "GLX", &opcode, &event, &error) == True;
    XCloseDisplay(display);
    return draws;
}

}  // namespace seamward::viewer
