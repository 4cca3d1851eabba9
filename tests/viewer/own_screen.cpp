// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/viewer/own_screen.h"

#include <signal.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cstdlib>
#include <stdexcept>
#include <string>

namespace seamward::viewer::test {

OwnScreen::OwnScreen() {
    std::array<int, 2> ends{};
    if (pipe(ends.data()) != 0) throw std::runtime_error("no pipe");
    server_ = fork();
    if (server_ == 0) {
        prctl(PR_SET_PDEATHSIG, SIGTERM);  // a test that crashes leaves no server behind
        close(ends[0]);
        const std::string number = std::to_string(ends[1]);
        execlp("Xvfb", "Xvfb", "-displayfd", number.c_str(), "-screen", "0", "2000x1200x24", "-nolisten", "tcp", "-noreset",
               nullptr);
        _exit(127);
    }
    close(ends[1]);
    std::string display;
    char letter = 0;
    while (read(ends[0], &letter, 1) == 1 && letter != '\n') display += letter;
    close(ends[0]);
    if (display.empty()) throw std::runtime_error("Xvfb did not start (Debian package xvfb)");
    setenv("DISPLAY", (":" + display).c_str(), 1);
    setenv("QT_QPA_PLATFORM", "xcb", 1);
    unsetenv("WAYLAND_DISPLAY");
}

OwnScreen::~OwnScreen() {
    kill(server_, SIGTERM);
    waitpid(server_, nullptr, 0);
}

}  // namespace seamward::viewer::test
